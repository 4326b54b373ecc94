import type { Notice } from '../result/index.ts';
import {
  type CodeOf,
  type IssueMaker,
  issueMaker,
  type ParamsOf,
  type TextMaker,
  type Texts,
  textMaker,
} from '../result/internal.ts';
import {
  callTerms,
  categoryTerms,
  fieldTerms,
  symbolTerms,
  typeTerms,
  valueTerms,
  voiceTerms,
} from './terms.ts';

/** What reading a call says of its fields. A table of its own, so that a decoder does not carry the others. */
export const receivedTexts = {
  check: {
    'call-unrecognised': 'Call: format specifier and first telecommand match no kind of call in the tables',
    'call-character-missing': '{field:call-field}: a character could not be read',
    'call-field-missing': '{field:call-field} is missing',
    'call-field-unexpected': '{field:call-field} is not part of this call and was kept as received',
    'call-field-unread': '{field:call-field} is not in the form of the tables and was kept as received',
    'call-symbol-unknown': '{field:call-field}: symbol {symbol} has no name in the tables',
    'call-category-unusual': [
      'Category: {expected} is usual in this call, got {category:category}',
      '{usual:category& or }',
    ],
    'call-end-unusual': [
      'End of sequence: symbol {expected} is usual in this call[, got {symbol}]',
      '{usual}',
    ],
    'call-channel-none':
      'Channel: expected a working channel, got none; only a call to a coast station may omit it',
    'call-channel-unknown': '{field:call-field}: {channel} is not a channel',
    'call-channels-differ': [
      'Second frequency or channel element names channel {channel}, the first channel {first}: a VHF call names one channel',
      '{symbols}, or no information',
    ],
    'call-tenth-digit': '{field:call-field}: the tenth digit of an identity is 0 for a station, got {digit}',
    'call-expansion-unread': 'Expansion: data sets that are not understood were kept as received',
    'call-rest': 'Rest of the message: symbols that belong to no field were kept as received',
    'call-moored-vessel-alarm':
      'Call has the form of the automatic alarm of a moored vessel, which does not say which danger',
  },
  note: {
    'call-atis':
      'Call: format specifier {format} identifies a vessel on inland waters (ATIS) and is refused as a call',
    'call-category-acs':
      "Category: 106 is the automatic connection system (MF/HF); in sets built before M.493-16 it is ship's business",
    'call-header-missing': 'Header of the position: 55 is usual before the position of a reply, got none',
    'call-channel-echoed': 'First frequency or channel element: an answer that cannot comply needs none',
    'call-channel-old-form': '{field:call-field}: read as channel {channel}, in the form of older sets',
  },
  terms: /* @__PURE__ */ Object.assign({}, fieldTerms, categoryTerms) as typeof fieldTerms &
    typeof categoryTerms,
} as const;

const checkTerms = {
  'equipment.A': 'a class A set',
  'equipment.D': 'a class D set',
  'equipment.H': 'a hand-held set',
  'equipment.M': 'a man-overboard device',
  'equipment.coast': 'a coast station',
};

/** What checking a call says. */
export const checkTexts = {
  error: {
    'call-value': '{value:call-value}[, got {received}]',
    'call-value-type': ['{path}: expected {expected}, got {received}', '{type:value-type}'],
    'call-value-missing': 'Call: a value is missing, or is of another type than this kind of call holds',
    'call-identity-form': 'Identity: {received} has no format of ITU-R M.585',
    'call-channel-70': 'Channel: 70 carries DSC only, never speech',
  },
  check: {
    'call-class-none': 'Sender: {equipment:equipment} does not usually send this kind of call',
    'call-first-telecommand-unusual': [
      'First telecommand: {telecommand:first-telecommand} is unusual in this call',
      '{usual:first-telecommand&; }',
    ],
    'call-reason-misplaced':
      'Second telecommand: the reason "{reason:reason}" goes with "unable to comply" only',
    'call-reason-missing': 'Second telecommand: expected one of the ten reasons for being unable to comply',
    'call-second-telecommand-misplaced':
      'Second telecommand: {telecommand:second-telecommand} goes with telephony, on MF and HF also with teleprinter or Morse telegraphy',
    'call-channel-16-routine':
      'Channel: 16 is for distress, safety and calling; propose a working channel in a routine call',
    'call-restricted': 'Call in the {plan} plan: {rule}',
    'call-channel-two-frequency':
      'Channel: {channel} has two frequencies: two ships on it cannot hear each other',
    'call-cancel-of-another': 'Vessel in distress: only the vessel that sent the alert can cancel it by DSC',
    'call-relay-of-own': 'Vessel in distress: own distress is sent as an alert, not as a relay',
    'call-position-unknown': 'Position is missing: send it by voice as soon as it is known',
    'call-time-unknown': 'Time of the position is missing: the position may be old',
  },
  caution: {
    'call-class-guarded':
      'Sender: {equipment:equipment} sends this kind of call only from under a protective cover, on the order of the master',
    'call-coast-acknowledges':
      'Sender: expected the coastguard, a rescue co-ordination centre or a designated coast station, got a ship. A ship acknowledges by DSC only after consulting one of them',
    'call-relay-cases':
      'Address: a ship relays to one coast station. A DSC relay to many on VHF or MF is sent only when the vessel in distress cannot alert herself and the master judges that more help is needed',
  },
  terms: /* @__PURE__ */ Object.assign(
    {},
    checkTerms,
    callTerms,
    symbolTerms,
    valueTerms,
    typeTerms,
  ) as typeof checkTerms & typeof symbolTerms & typeof typeTerms & typeof callTerms & typeof valueTerms,
} as const;

/** What to observe about a call that was received or is to be sent. */
export const cautionTexts = {
  caution: {
    'call-alert-in-danger-only':
      'Send a distress alert only in grave and imminent danger, on the authority of the master, and never as a test. Cancel a false alert at once by voice {where:distress-voice}',
    'call-voice-follows':
      'Send the distress call and message by voice {where:distress-voice} as soon as the alert is out, acknowledged or not',
    'call-keep-watch':
      'Keep watch {where:distress-voice}. Do not transmit over distress traffic. Inform the master. Log the call',
    'call-coast-answers':
      'Leave the DSC acknowledgement to the coastguard. If you are near the vessel and hear no coast station acknowledge, do so yourself by voice {where:distress-voice}. Then inform a coast station',
    'call-acknowledge-without-delay':
      'Acknowledge without delay, by DSC and by voice {where:distress-voice}. In the United States leave the rescue co-ordination centre a short interval first. Then inform the rescue co-ordination centre. Take charge of the traffic or hand it over. Log the call',
    'call-report-ashore':
      'Report the call to the coastguard at once, by telephone or any other means. Only the coastguard, a rescue co-ordination centre or a designated coast station acknowledges by DSC',
    'call-who-acknowledges':
      'The coastguard, a rescue co-ordination centre or a designated coast station acknowledges an alert by DSC. A ship does so only to stop an alert that goes on, from a vessel in the vicinity. Consult a rescue co-ordination centre or coast station first',
    'call-pass-on':
      'If nobody acknowledges within 5 minutes, pass the distress on to one coast station: by DSC where your rules allow it, by voice or by any other means. In United States waters do not use DSC for this. Do not send a DSC relay to all ships or to an area for an alert that you received by DSC',
    'call-pass-on-mf-hf':
      'If nobody acknowledges within 5 minutes, pass the distress on to one coast station. On HF use a DSC relay. On MF use DSC where your rules allow it, voice or any other means. Do not send a DSC relay to all ships or to an area on MF for an alert that you received by DSC',
    'call-when-to-relay':
      'A ship relays a distress when nobody acknowledges it within 5 minutes, when the vessel cannot alert herself, or when a rescue co-ordination centre asks. Address one coast station. Address all ships only when the vessel cannot alert herself and the master judges that more help is needed',
    'call-relay-by-voice': 'Send the relay by voice {where:distress-voice} as well',
    'call-cancel-by-voice':
      'Cancel the alert at once by voice {where:distress-voice}. Give the time at which it was sent',
    'call-acknowledge-relay-by-voice':
      'Acknowledge a relay from a coast station or another ship by voice {where:distress-voice}',
    'call-perhaps-distress': 'Part of a call about distress was received. Keep watch {where:distress-voice}',
    'call-check-moored-vessel':
      'This may be the automatic alarm of a moored vessel: fire, flooding, collision, grounding, listing, sinking or adrift. It does not say which danger. Check the vessel or alert those who can. There is no DSC answer to it',
    'call-position-coarse':
      'Do not navigate by the position alone. It may be cut off to whole minutes, typed by hand or hours old',
    'call-place-not-given': 'No position was given. The vessel may still be near',
    'call-place-not-read': 'A position was given but could not be read. The vessel may still be near',
    'call-place-impossible':
      'The position received is impossible. Treat it as unknown. Do not guess it from the digits',
  },
  terms: voiceTerms as typeof voiceTerms,
} as const;

/** What answers to a call are, and why there is none. */
export const answerTexts = {
  said: {
    'call-answer-able': 'Able to comply[, channel {channel}]',
    'call-answer-able-instead': 'Able to comply[, channel {channel}] instead',
    'call-answer-unable': 'Unable: {reason:reason}',
    'call-answer-position': 'Position: {position}',
    'call-answer-position-unknown': 'Position: not known',
    'call-answer-test': 'Test received',
    'call-answer-polling': 'In range',
    'call-answer-alert': 'Acknowledge the alert',
    'call-answer-relay': 'Acknowledge the relay',
    'call-no-answer-own': 'the call is from this station itself',
    'call-no-answer-other': 'the call is for another station',
    'call-no-answer-sender': 'the call does not say which station sent it',
    'call-no-answer-alert-sender': 'the alert does not say which vessel sent it',
    'call-no-answer-relay-sender': 'the relay does not say who sent it or which vessel it is about',
    'call-no-answer-is-answer': 'the call is itself an answer',
    'call-no-answer-not-understood': 'the call was not understood',
    'call-no-answer-to-many': 'a call to many has no DSC answer: listen on the channel that it gives',
    'call-no-answer-distress-end': 'it ends an alert or relay and has no answer: keep watch on channel 16',
    'call-no-answer-moored-vessel':
      'it may be the automatic alarm of a moored vessel, which has no DSC answer: check the vessel or alert those who can',
    'call-no-answer-class': 'equipment of this class has no DSC answer to it: answer by voice',
    'call-no-answer-class-relay':
      'equipment of this class does not acknowledge a relay by DSC: acknowledge by voice on channel 16, to the station that sent it',
    'call-no-answer-ship-relay':
      'a ship acknowledges a relay by voice on channel 16, to the station that sent it',
    'call-no-answer-ship-alert':
      'a DSC acknowledgement stops the repeats of an alert and is left to the coastguard: keep watch on channel 16. If nobody acknowledges within 5 minutes, acknowledge by voice when near and pass the distress on to a coast station by any means',
    'call-no-answer-designated':
      'only the coastguard, a rescue co-ordination centre or a designated coast station acknowledges by DSC. Keep watch on channel 16 and report the call to the coastguard at once',
  },
  terms: callTerms as typeof callTerms,
} as const;

const describeTerms = {
  'opening.none': 'Call',
  'opening.routine': 'Routine call',
  'opening.acs': 'Automatic connection system call',
  'opening.safety': 'Safety call',
  'opening.urgency': 'Urgency call',
  'opening.distress': 'Distress call',
  'lack.not-given': 'not known',
  'lack.not-read': 'could not be read',
  'lack.impossible': 'received is impossible',
  'telephone-part.request': 'call',
  'telephone-part.answer': 'answer',
  'telephone-part.end': 'end',
  'expansion.100': 'finer position',
  'expansion.101': 'source and datum of the fix',
  'expansion.102': 'speed over ground',
  'expansion.103': 'course over ground',
  'expansion.104': 'another name of the station',
  'expansion.105': 'finer area',
  'expansion.106': 'persons on board',
};

/** What describes a call: a sentence, and the labels and values of its fields. */
export const describeTexts = {
  said: {
    'call-is-alert': 'Distress alert from {from}: {nature:nature}, {place}, {time}',
    'call-is-distress-acknowledgement':
      'Distress acknowledgement from {from} of the alert of {vessel}: {nature:nature}, {place}, {time}',
    'call-is-self-cancel': 'Distress alert cancelled by its sender, {from}: {nature:nature}, {place}, {time}',
    'call-is-relay': 'Distress relay from {from} to {to} for {vessel}: {nature:nature}, {place}, {time}',
    'call-is-relay-acknowledgement':
      'Distress relay acknowledged by {from} to {to}, for {vessel}: {nature:nature}, {place}, {time}',
    'call-is-announcement':
      '{opening:opening} from {from} to {to}: {where}[, {how:first-telecommand}][, {reason:reason}][, {remark:second-telecommand}]',
    'call-is-able':
      'Answer from {from} to {to}: able to comply, {where}[, {how:first-telecommand}][, {reason:reason}][, {remark:second-telecommand}]',
    'call-is-unable':
      'Answer from {from} to {to}: unable to comply[, {reason:reason}][, {remark:second-telecommand}]',
    'call-is-unable-unstated': 'Answer from {from} to {to}: unable to comply, reason not stated',
    'call-is-position-request': 'Position request from {from} to {to}',
    'call-is-position-reply': 'Position of {from}, in reply to {to}: {place}, {time}',
    'call-is-position-report': 'Position of {from}, sent unsolicited to {to}: {place}, {time}',
    'call-is-test': 'Test call from {from} to {to}',
    'call-is-test-acknowledgement': 'Test call of {to} answered by {from}',
    'call-is-polling': 'Polling call from {from} to {to}: are you in range',
    'call-is-polling-acknowledgement': 'Polling of {to} answered by {from}: in range',
    'call-is-telephone': 'Telephone-service {part:telephone-part} from {from} to {to}: number {telephone}',
    'call-is-telephone-unnumbered': 'Telephone-service {part:telephone-part} from {from} to {to}: no number',
    'call-is-moored-vessel-alarm':
      'Possible automatic alarm of a moored vessel, {from}, to {to}: danger not stated',
    'call-is-atis': 'Identification of a vessel on inland waters (ATIS), not a call',
    'call-is-unrecognised': 'Unrecognised call, from {from} to {to}',

    'call-own-station': 'this station',
    'call-unnamed-station': 'an unnamed station',
    'call-unidentified-vessel': 'an unidentified vessel',
    'call-group': 'group {group}',
    'call-unnamed-group': 'an unnamed group',
    'call-all-ships': 'all ships',
    'call-all-stations': 'all stations',
    'call-area': 'ships in the area from {corner}, {southward}° southward and {eastward}° eastward',
    'call-unknown-area': 'ships in an unknown area',
    'call-symbol': 'symbol {symbol}',
    'call-symbol-opening': 'Symbol {symbol} call',
    'call-nature-unknown': 'nature not known',
    'call-place-lack': 'position {lack:lack}',
    'call-time-lack': 'time {lack:lack}',
    'call-where-channel': 'channel {channel}',
    'call-where-channels': 'channels {first} and {second}',
    'call-where-none': 'no channel named',
    'call-where-frequencies': 'frequency digits {receive} and {transmit}',
    'call-where-both': '{first} and {second}',
    'call-no-digits': 'none',
    'call-element-none': 'no channel',
    'call-element-digits': 'frequency digits {digits}',

    'call-label': '{field:call-field}',
    'call-label-expansion': 'Expansion: {set:expansion}',
    'call-label-unknown-set': 'Expansion: set {set}',
    'call-says-format': '{format:format-specifier}',
    'call-says-category': '{category:category}',
    'call-says-first-telecommand': '{telecommand:first-telecommand}',
    'call-says-second-telecommand': '{telecommand:second-telecommand}',
    'call-says-reason': '{reason:reason}',
    'call-says-nature': '{nature:nature}',
    'call-says-end': '{end:end-of-sequence}',
    'call-says-position-follows': 'a position follows',
    'call-says-no-information': 'no information',
    'call-says-unknown': 'not known',
    'call-says-not-understood': 'not understood',
    'call-says-kept': 'kept as received',
    'call-says-asked-for': 'asked for',
    'call-says-unavailable': 'not available',
    'call-says-minutes': 'latitude .{latitude}′, longitude .{longitude}′',
    'call-says-speed': '{speed} knots',
    'call-says-course': '{course}° true',
    'call-says-area':
      'corner {latitude}′ of latitude and {longitude}′ of longitude, sides {southward}′ south and {eastward}′ east, moving at {speed} knots, {course}° true',
  },
  terms: /* @__PURE__ */ Object.assign(
    {},
    describeTerms,
    callTerms,
    symbolTerms,
    categoryTerms,
    fieldTerms,
  ) as typeof describeTerms &
    typeof symbolTerms &
    typeof callTerms &
    typeof categoryTerms &
    typeof fieldTerms,
} as const;

/** Makes a text that describes a call. */
export const describing: TextMaker<typeof describeTexts> = /* @__PURE__ */ textMaker(describeTexts);

/** All texts of this module. */
export type CallTexts = typeof receivedTexts &
  typeof checkTexts &
  typeof cautionTexts &
  typeof answerTexts &
  typeof describeTexts;

/** Makes a notice about one part of a call: where, by which clause, and what was received there. */
type NoticeMaker<T extends Texts> = <Code extends CodeOf<T>>(
  code: Code,
  params: ParamsOf<T, Code>,
  at: string,
  clause: string,
  received?: string,
) => Notice;

function noticeMaker<T extends Texts>(texts: T): NoticeMaker<T> {
  const issue = issueMaker(texts);
  return (code, params, at, clause, received) =>
    issue(code, params, { at: [at], clause, ...(received !== undefined && { received }) });
}

/** Makes a notice about what was received. */
export const receivedNotice: NoticeMaker<typeof receivedTexts> = /* @__PURE__ */ noticeMaker(receivedTexts);

/** Makes a notice of checking. */
export const checkNotice: NoticeMaker<typeof checkTexts> = /* @__PURE__ */ noticeMaker(checkTexts);

/** The same about a value, or about the call as such. */
export const valueNotice: IssueMaker<typeof checkTexts> = /* @__PURE__ */ issueMaker(checkTexts);
