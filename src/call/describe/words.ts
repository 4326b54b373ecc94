import type {
  Category,
  EndOfSequence,
  FirstTelecommand,
  FormatSpecifier,
  NatureOfDistress,
  Reason,
  SecondTelecommand,
} from '../symbol.ts';

/** Categories for people. */
export const categoryWords: Readonly<Record<Category, string>> = {
  routine: 'routine',
  acs: "automatic connection system (older sets: ship's business)",
  safety: 'safety',
  urgency: 'urgency',
  distress: 'distress',
};

/** Natures of distress for people, fit to follow "the nature of distress is". */
export const natureWords: Readonly<Record<NatureOfDistress, string>> = {
  'fire-explosion': 'fire or explosion',
  flooding: 'flooding',
  collision: 'collision',
  grounding: 'grounding',
  listing: 'listing, in danger of capsizing',
  sinking: 'sinking',
  'disabled-adrift': 'disabled and adrift',
  undesignated: 'nature not stated',
  'abandoning-ship': 'abandoning ship',
  piracy: 'piracy or armed attack',
  'man-overboard': 'man overboard',
  'epirb-emission': 'signal of an emergency beacon',
};

/** First telecommands and types of subsequent communication for people. */
export const firstTelecommandWords: Readonly<Record<FirstTelecommand, string>> = {
  'telephony-simplex': 'telephony, simplex',
  'telephony-duplex': 'telephony, duplex',
  polling: 'polling',
  'unable-to-comply': 'unable to comply',
  'end-of-call': 'end of call',
  data: 'data',
  'telephony-j3e': 'telephony, single sideband',
  'distress-acknowledgement': 'distress acknowledgement',
  'telephony-h3e': 'telephony, single sideband with full carrier',
  'distress-relay': 'distress relay',
  'teleprinter-fec': 'teleprinter, to many',
  'teleprinter-arq': 'teleprinter, to one',
  'teleprinter-receive': 'teleprinter, receiving',
  test: 'test',
  'ship-position': 'position of the ship',
  morse: 'Morse telegraphy',
};

/** Reasons for being unable to comply, for people. */
export const reasonWords: Readonly<Record<Reason, string>> = {
  'no-reason': 'no reason given',
  'switching-centre-congested': 'switching centre congested',
  busy: 'busy',
  queue: 'waiting in a queue',
  'station-barred': 'station barred',
  'no-operator': 'no operator available',
  'operator-unavailable': 'operator unavailable for the moment',
  'equipment-disabled': 'equipment out of order',
  'channel-unusable': 'cannot use the channel proposed',
  'mode-unusable': 'cannot use the mode proposed',
};

/** Second telecommands for people. */
export const secondTelecommandWords: Readonly<Record<SecondTelecommand, string>> = {
  ...reasonWords,
  'neutral-craft': 'craft of a State not party to an armed conflict',
  'medical-transport': 'medical transport',
  'pay-phone': 'public telephone',
  facsimile: 'facsimile or data',
  'data-modem-115': 'data by modem (115)',
  'data-modem-116': 'data by modem (116)',
  'acs-remaining-0': 'no automatic transmission remaining',
  'acs-remaining-1': '1 automatic transmission remaining',
  'acs-remaining-2': '2 automatic transmissions remaining',
  'acs-remaining-3': '3 automatic transmissions remaining',
  'acs-remaining-4': '4 automatic transmissions remaining',
  'acs-remaining-5': '5 automatic transmissions remaining',
};

/** Format specifiers for people. */
export const formatWords: Readonly<Record<FormatSpecifier, string>> = {
  area: 'ships in an area',
  distress: 'distress',
  group: 'group of ships',
  'all-ships': 'all ships',
  individual: 'one station',
  'automatic-service': 'one station, automatic service',
};

/** Ends of sequence for people. */
export const endWords: Readonly<Record<EndOfSequence, string>> = {
  'acknowledgement-requested': 'an answer is requested',
  acknowledgement: 'this is an answer',
  'end-of-sequence': 'no answer is requested',
};

/** The words for a name, or the number of a symbol without one. */
export function inWords<Name extends string>(words: Readonly<Record<Name, string>>, name: string): string {
  return Object.hasOwn(words, name) ? words[name as Name] : name.replace('symbol-', 'symbol ');
}
