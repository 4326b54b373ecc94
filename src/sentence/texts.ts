import type { Notice } from '../result/index.ts';
import { type CodeOf, type IssueMaker, issueMaker, type ParamsOf, quote } from '../result/internal.ts';
import type { faultTexts } from './fault/texts.ts';

const sentenceTerms = {
  'sentence-input.text': 'text',
  'sentence-input.stream': 'text or a Uint8Array',
  'expansion-set.100': 'decimals of the position',
  'expansion-set.101': 'source of the fix',
  'expansion-set.102': 'speed',
  'expansion-set.103': 'course',
  'expansion-set.104': 'name',
  'expansion-set.105': 'finer area',
  'expansion-set.106': 'persons on board',
  'expansion-set.none': 'nothing',
  'expansion-set.*': 'another data set',
  'sentences.1': 'sentence',
  'sentences.*': 'sentences',
  'bits.1': 'bit',
  'bits.*': 'bits',
};

/** What reading sentences says. */
export const sentenceTexts = {
  error: {
    'sentence-not-text': ['Input: expected {expected}, got {received}', '{accepted:sentence-input}'],
    'sentence-no-start': ['Line: expected {expected}, got {received}', 'a $ or ! that opens a sentence'],
    'sentence-line-endless': [
      'Line: expected {expected}, got {received} characters without the start of a sentence',
      'a line end within {limit} characters',
    ],
    'sentence-address': [
      'Address: expected {expected}, got {received}',
      'two characters of talker and three of formatter, or P and a manufacturer code',
    ],
    'sentence-checksum-wrong': ['Checksum: expected {expected}, got {received}', "'*{computed}'"],
    'sentence-checksum-impossible':
      'Checksum {received} is invalid: the sentence has a character above FF hex',
    'sentence-checksum-malformed': [
      'Checksum: expected a star and two hexadecimal digits, got {received}',
      "['*{computed}']",
    ],
    'sentence-checksum-missing': ['Sentence {received} has no checksum', '[*{computed}]'],
  },
  check: {
    'sentence-unchecked': ['Sentence {received} has no checksum: it may be incomplete', '[*{computed}]'],
    'sentence-blank-damage': [
      'Sentence {received} passes its checksum only without its spaces: they were added after it was sent',
      'no space',
    ],
    'sentence-fields-missing': [
      'DSC sentence: expected {expected}, got {received}, the missing ones are read as empty',
      '{limit} fields',
    ],
    'sentence-fields-surplus': [
      'DSC sentence: expected {expected}, got {received}, the others are ignored',
      '{limit} fields',
    ],
    'sentence-code': ['{formatter} field {field}: expected {expected}, got {received}', 'two digits'],
    'sentence-identity': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'nine digits and a 0',
    ],
    'sentence-address-unexpected': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'an empty field',
    ],
    'sentence-area': ['{formatter} field {field}: expected {expected}, got {received}', 'ten digits'],
    'sentence-area-or-identity': [
      '{formatter} field {field}: {received} is read as an area and may be a station',
      'an area',
    ],
    'sentence-place': [
      '{formatter} field {field}: expected {expected}, got {received}',
      '10 digits of position, or 6, 8, 12 or 16 of frequency',
    ],
    'sentence-time': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'four digits, hours and minutes UTC',
    ],
    'sentence-ship-unexpected': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'empty fields',
    ],
    'sentence-acknowledgement': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'R, B or S',
    ],
    'sentence-expansion-mark': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'E or nothing',
    ],
    'sentence-expansion-count': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'a count from 1 to 9 and a number up to it',
    ],
    'sentence-expansion-flag': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'A, Q or R',
    ],
    'sentence-expansion-code': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'two digits',
    ],
    'sentence-expansion-data': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'as many digits as the set has',
    ],
    'sentence-expansion-missing': [
      'Expansion: none of its DSE sentences came, the call stays as it is',
      'DSE sentences directly after the call',
    ],
    'sentence-expansion-incomplete': [
      'Expansion: only {received} of its DSE sentences came, applied: {applied:expansion-set}',
      'DSE sentences directly after the call',
    ],
    'sentence-expansion-unannounced': [
      'Expansion for {station} was applied, although the call did not announce it',
      'E',
    ],
    'sentence-expansion-late': [
      'Expansion for {station} did not follow its call directly: {received} {received:sentences} came between',
      'the very next sentence',
    ],
    'sentence-expansion-alone': 'Expansion for {received} matches no call that was read',
    'sentence-expansion-other-station': [
      'Expansion for {received} is not applied to the call of {expected}',
      '{waiting}',
    ],
    'sentence-fix-not-valid': [
      '{formatter} field {field}: {received} is marked as not valid and is not used',
      'a valid fix',
    ],
    'sentence-fix-simulated': [
      '{formatter} field {field}: {received} is simulated and is not used',
      'a valid fix',
    ],
    'sentence-fix-unreadable': [
      '{formatter} field {field}: expected {expected}, got {received}',
      'ddmm.mm,N,dddmm.mm,E',
    ],
    'sentence-fix-manual': ['{formatter} field {field}: {received} was entered by hand', 'a fix'],
    'sentence-fix-estimated': ['{formatter} field {field}: {received} is dead reckoning, not a fix', 'a fix'],
    'sentence-ais-count': 'AIS sentence {received} cannot be read: its count of parts is malformed',
    'sentence-ais-payload': 'AIS sentence {received} cannot be read: its payload is malformed',
    'sentence-ais-incomplete': 'AIS sentence {received} is part of a message whose other parts are missing',
    'sentence-ais-short': [
      'AIS message {message}: expected {expected}, got {received} {received:bits}',
      'at least {least} bits',
    ],
    'sentence-ais-identity': 'AIS identity {received} has more than nine digits',
    'sentence-ais-position': 'AIS position {received} is out of range and is left out',
  },
  note: {
    'sentence-leading-characters': 'Characters {received} before the sentence are ignored',
    'sentence-trailing-characters': 'Characters {received} after the checksum are ignored',
    'sentence-tag-unclosed': [
      'TAG block {received} has no second backslash and is ignored',
      'a backslash before the sentence',
    ],
    'sentence-tag-checksum': [
      'TAG block {received} does not end in its checksum and is ignored',
      '[*{computed}]',
    ],
    'sentence-checksum-lower-case': ['Checksum {received} is in lower case', "'{capitals}'"],
    'sentence-length': [
      'Sentence: expected {expected} with its line end, got {received}',
      'at most {limit} characters',
    ],
    'sentence-blank-sent': ['Field {field} was sent with spaces around it, {received}', '{trimmed}'],
    'sentence-legacy-layout': [
      'DSC sentence: expected {expected}, got {received}, the identity comes first, as in the older layout',
      '{limit} fields',
    ],
    'sentence-identity-nine-digits': [
      '{formatter} field {field}: expected {expected}, got {received}',
      "'{identity}0'",
    ],
    'sentence-ais-unread': 'AIS message {received} is not supported',
  },
  terms: sentenceTerms as typeof sentenceTerms,
} as const;

const writingTerms = {
  'lost-content.format': 'Format specifier',
  'lost-content.address': 'Address',
  'lost-content.category': 'Category',
  'lost-content.self': 'Self-identification',
  'lost-content.telecommand1': 'First telecommand',
  'lost-content.telecommand2': 'Second telecommand',
  'lost-content.distressed': 'Vessel in distress',
  'lost-content.nature': 'Nature of distress',
  'lost-content.position': 'Position',
  'lost-content.time': 'Time of the position',
  'lost-content.subsequent': 'Type of subsequent communication',
  'lost-content.receive': 'First frequency or channel element',
  'lost-content.transmit': 'Second frequency or channel element',
  'lost-content.telephone': 'Telephone number',
  'lost-content.rest': 'Rest of the message',
  'lost-content.end': 'End of sequence',
  'symbols.1': 'symbol',
  'symbols.*': 'symbols',
};

/** What writing sentences says. A table of its own, so that an app that only reads does not carry it. */
export const writingTexts = {
  check: {
    'sentence-content-lost': '{content:lost-content}: a DSC sentence cannot carry {count:symbols} {received}',
    'sentence-expansion-lost':
      'Expansion: a DSE sentence cannot carry data set {specifier} of {count} {count:symbols}',
    'sentence-kind-lost': ['The DSC sentence of this call ({expected}) reads as {received}', '{written}'],
  },
  terms: writingTerms as typeof writingTerms,
} as const;

/** All texts of this module. */
export type SentenceTexts = typeof sentenceTexts & typeof writingTexts & typeof faultTexts;

/** Any code of reading sentences. */
export type SentenceCode = CodeOf<typeof sentenceTexts>;

/** Makes an issue or notice of reading sentences. */
export const issue: IssueMaker<typeof sentenceTexts> = /* @__PURE__ */ issueMaker(sentenceTexts);

/** Makes a notice of writing sentences. */
export const lossNotice: IssueMaker<typeof writingTexts> = /* @__PURE__ */ issueMaker(writingTexts);

/** A notice about one field of a sentence, fields counted from 1. */
export function fieldNotice<Code extends SentenceCode>(
  code: Code,
  params: ParamsOf<typeof sentenceTexts, Code> & { readonly formatter: string; readonly field: number },
  received: string,
): Notice {
  const { formatter, field } = params;
  return issue(code, params, {
    at: [formatter, 'field', field],
    received: quote(received),
    clause: `IEC 61162-1, ${formatter} sentence`,
  });
}
