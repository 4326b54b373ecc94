import type { UnknownSymbol } from './symbol.ts';

/** Categories, apart because the notices about what was received need no other words. */
export const categoryTerms = {
  'category.routine': 'routine',
  'category.acs': "automatic connection system (older sets: ship's business)",
  'category.safety': 'safety',
  'category.urgency': 'urgency',
  'category.distress': 'distress',
} as const;

/** The words for what a call names, by field and name. Other modules spread them into the terms of their texts. */
export const callTerms = {
  // Natures of distress, fit to follow "the nature of distress is".
  'nature.fire-explosion': 'fire or explosion',
  'nature.flooding': 'flooding',
  'nature.collision': 'collision',
  'nature.grounding': 'grounding',
  'nature.listing': 'listing, in danger of capsizing',
  'nature.sinking': 'sinking',
  'nature.disabled-adrift': 'disabled and adrift',
  'nature.undesignated': 'nature not stated',
  'nature.abandoning-ship': 'abandoning ship',
  'nature.piracy': 'piracy or armed attack',
  'nature.man-overboard': 'man overboard',
  'nature.epirb-emission': 'signal of an emergency beacon',
  // Second telecommands, the reasons for being unable to comply first.
  'second-telecommand.no-reason': 'no reason given',
  'second-telecommand.switching-centre-congested': 'switching centre congested',
  'second-telecommand.busy': 'busy',
  'second-telecommand.queue': 'waiting in a queue',
  'second-telecommand.station-barred': 'station barred',
  'second-telecommand.no-operator': 'no operator available',
  'second-telecommand.operator-unavailable': 'operator unavailable for the moment',
  'second-telecommand.equipment-disabled': 'equipment out of order',
  'second-telecommand.channel-unusable': 'cannot use the channel proposed',
  'second-telecommand.mode-unusable': 'cannot use the mode proposed',
  'second-telecommand.neutral-craft': 'craft of a State not party to an armed conflict',
  'second-telecommand.medical-transport': 'medical transport',
  'second-telecommand.pay-phone': 'public telephone',
  'second-telecommand.facsimile': 'facsimile or data',
  'second-telecommand.data-modem-115': 'data by modem (115)',
  'second-telecommand.data-modem-116': 'data by modem (116)',
  'second-telecommand.acs-remaining-0': 'no automatic transmission remaining',
  'second-telecommand.acs-remaining-1': '1 automatic transmission remaining',
  'second-telecommand.acs-remaining-2': '2 automatic transmissions remaining',
  'second-telecommand.acs-remaining-3': '3 automatic transmissions remaining',
  'second-telecommand.acs-remaining-4': '4 automatic transmissions remaining',
  'second-telecommand.acs-remaining-5': '5 automatic transmissions remaining',
  // Kinds of call.
  'call-kind.distress-alert': 'distress alert',
  'call-kind.distress-acknowledgement': 'distress acknowledgement',
  'call-kind.distress-self-cancel': 'cancellation of a distress alert by its sender',
  'call-kind.distress-relay': 'distress relay',
  'call-kind.distress-relay-acknowledgement': 'distress relay acknowledgement',
  'call-kind.all-ships-call': 'all-ships call',
  'call-kind.area-call': 'call to an area',
  'call-kind.group-call': 'group call',
  'call-kind.individual-call': 'individual call',
  'call-kind.individual-acknowledgement': 'acknowledgement (able to comply)',
  'call-kind.unable-to-comply': 'acknowledgement (unable to comply)',
  'call-kind.position-request': 'position request',
  'call-kind.position-reply': 'position report',
  'call-kind.test-call': 'test call',
  'call-kind.test-acknowledgement': 'test call acknowledgement',
  'call-kind.polling-call': 'polling call',
  'call-kind.polling-acknowledgement': 'polling acknowledgement',
  'call-kind.automatic-service-call': 'telephone-service call',
  'call-kind.unrecognised-call': 'unrecognised call',
  // First telecommands and types of subsequent communication.
  'first-telecommand.telephony-simplex': 'telephony, simplex',
  'first-telecommand.telephony-duplex': 'telephony, duplex',
  'first-telecommand.polling': 'polling',
  'first-telecommand.unable-to-comply': 'unable to comply',
  'first-telecommand.end-of-call': 'end of call',
  'first-telecommand.data': 'data',
  'first-telecommand.telephony-j3e': 'telephony, single sideband',
  'first-telecommand.distress-acknowledgement': 'distress acknowledgement',
  'first-telecommand.telephony-h3e': 'telephony, single sideband with full carrier',
  'first-telecommand.distress-relay': 'distress relay',
  'first-telecommand.teleprinter-fec': 'teleprinter, to many',
  'first-telecommand.teleprinter-arq': 'teleprinter, to one',
  'first-telecommand.teleprinter-receive': 'teleprinter, receiving',
  'first-telecommand.test': 'test',
  'first-telecommand.ship-position': 'position of the ship',
  'first-telecommand.morse': 'Morse telegraphy',
  // Format specifiers.
  'format-specifier.area': 'ships in an area',
  'format-specifier.distress': 'distress',
  'format-specifier.group': 'group of ships',
  'format-specifier.all-ships': 'all ships',
  'format-specifier.individual': 'one station',
  'format-specifier.automatic-service': 'one station, automatic service',
  // Ends of sequence.
  'end-of-sequence.acknowledgement-requested': 'an answer is requested',
  'end-of-sequence.acknowledgement': 'this is an answer',
  'end-of-sequence.end-of-sequence': 'no answer is requested',
} as const;

/** All texts of this module. */
export type CallTexts = { readonly terms: typeof callTerms & typeof categoryTerms };

/** The word for a name of a field, or the number of a symbol without one. */
export function inWords<Group extends string, Name extends string>(
  terms: Readonly<Record<`${Group}.${Name}`, string>>,
  group: Group,
  name: Name | UnknownSymbol,
): string {
  const key = `${group}.${name}` as `${Group}.${Name}`;
  return Object.hasOwn(terms, key) ? terms[key] : name.replace('symbol-', 'symbol ');
}
