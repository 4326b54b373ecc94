import type { Notice } from '../result/index.ts';
import { type CodeOf, type IssueMaker, issueMaker, type ParamsOf } from '../result/internal.ts';
import type { faultTexts } from './fault/texts.ts';

const networkTerms = {
  'distress-field.telecommand': 'the telecommand',
  'distress-field.nature': 'the nature of distress',
  'frames.1': 'frame',
  'frames.*': 'frames',
};

/** What reading and writing messages says; names of fields are those of the public list of parameter groups. */
export const networkTexts = {
  error: {
    'network-not-a-frame': [
      'Frame: expected {expected}, got {received}',
      'an identifier of 29 bits and up to 8 bytes',
    ],
    'network-packet-torn': [
      'Fast packet of PGN {pgn} from {source}: expected {expected}, got {received}',
      '{announced} frames',
    ],
    'network-packet-no-start': [
      'Fast packet of PGN {pgn} from {source}: expected {expected}, got {received} {received:frames} after it',
      'a first frame',
    ],
    'network-log-not-text': ['Log: expected {expected}, got {received}', 'text or bytes'],
    'network-log-line': ['Line: expected {expected}, got {received}', 'a CAN frame of a text log'],
    'network-log-link-type': ['Capture file: expected {expected}, got another', 'link type 227'],
    'network-log-cut-off': 'Capture file ends within a record',
  },
  check: {
    'network-message-short': ['PGN {pgn} ends before its last field, after {received} bytes', 'all fields'],
    'network-identity-tenth-digit': [
      'PGN {pgn} {field} does not hold an identity and its tenth digit: expected {expected}, got {received}',
      'five numbers of two digits each, the last digit 0',
    ],
    'network-ais-identity': [
      'PGN {pgn} {field} is not an identity: expected {expected}, got {received}',
      'nine digits',
    ],
    'network-distress-one-field': [
      'PGN {pgn} {field} is read as {meaning:distress-field}: expected {expected}, got {received}',
      'a nature of distress and a telecommand, which share this field',
    ],
    'network-distress-nature-lost': [
      'PGN {pgn} {field} carries the telecommand {received} and loses the nature of distress {nature}',
      'one of them',
    ],
    'network-position-range': [
      'PGN {pgn} {field} is not a position: expected {expected}, got {received}',
      'at most 90 and 180 degrees',
    ],
    'network-position-half': [
      'PGN {pgn} {field} is half a position: expected {expected}, got only {received}',
      'latitude and longitude',
    ],
    'network-frequency': ['PGN {pgn} {field} is not used: expected {expected}, got {received}', 'six digits'],
    'network-telephone-unexpected': [
      'PGN {pgn} {field} is not used: expected {expected}, got {received}',
      'up to 16 digits in an automatic call',
    ],
    'network-text-cut-off': [
      'PGN {pgn} {field} is shorter than it says and is not used: expected {expected}, got {received}',
      '{length} bytes',
    ],
    'network-date-early': [
      'PGN {pgn} {field} is 1024 weeks early and is not used: expected {expected}, got {received}',
      'the date of the log',
    ],
  },
  terms: networkTerms as typeof networkTerms,
} as const;

/** All texts of this module. */
export type NetworkTexts = typeof networkTexts & typeof faultTexts;

/** Any code of reading and writing messages. */
type NetworkCode = CodeOf<typeof networkTexts>;

/** Makes an issue or notice of reading and writing messages. */
export const issue: IssueMaker<typeof networkTexts> = /* @__PURE__ */ issueMaker(networkTexts);

/** Where the rules of the network are known from; its text was not to be had. */
export const CLAUSE = 'IEC 61162-3, public list of parameter groups';

/** A notice about one field of a message. */
export function fieldNotice<Code extends NetworkCode>(
  code: Code,
  params: ParamsOf<typeof networkTexts, Code> & { readonly pgn: number; readonly field: string },
  received: string,
): Notice {
  const { pgn, field } = params;
  return issue(code, params, { at: [`PGN ${pgn}`, field], received, clause: CLAUSE });
}
