import { type IssueMaker, issueMaker } from '../result/internal.ts';

const burstTerms = {
  'burst-subject.bits': 'Bits',
  'burst-subject.bit': 'Bit',
  'burst-subject.soft-bits': 'Soft values',
  'burst-subject.symbols': 'Symbols',
  'burst-subject.symbol': 'Symbol',
  'burst-subject.calls': 'Calls',
  'burst-subject.atis': 'ATIS bits',
  'burst-subject.option': 'Option',
  'burst-accepted.bits': "a text of '0', '1' and '?' or an array of 0, 1 and null",
  'burst-accepted.bit': "0, 1 or missing ('?' in a text, null in an array)",
  'burst-accepted.numbers': 'an array of numbers',
  'burst-accepted.symbols': 'an array of integers from 0 to 127 and null',
  'burst-accepted.symbol': 'an integer from 0 to 127 or null',
  'burst-accepted.calls': 'an array of 1 to 5 calls',
  'burst-accepted.atis': 'text of 0 and 1',
  'burst-accepted.number': 'a finite number',
  'burst-accepted.kinds': 'bits, soft-bits or symbols',
};

/** What reading a burst says. */
export const burstTexts = {
  error: {
    'burst-input': [
      '{subject:burst-subject}[ {which}]: expected {expected}, got {received}',
      '{accepted:burst-accepted}',
    ],
    'burst-not-found': ['No call could be read ({sure} % sure at best)', 'phasing and what follows it'],
    'burst-atis-not-found': 'ATIS burst not found',
  },
  check: {
    'burst-check-wrong': [
      'Error check: expected {expected}, got {received}. Show the call as received in error. Do not act on it',
      '{computed}',
    ],
    'burst-doubtful': [
      'Call is only {received} sure. Show it as received in error. Do not act on it',
      'at least 99 % sure',
    ],
    'burst-repaired': 'Call is {sure} % sure but was not received cleanly. Never act on it automatically',
    'burst-format-once': [
      'Format specifier of a call without an address: expected {expected}, got {received}',
      'two copies or more',
    ],
    'burst-cut-short': 'Input ends before the call does',
    'burst-expansion-broken': 'Expansion after the call could not be read: the call itself is not affected',
  },
  note: {
    'burst-inverted': 'Every bit is inverted: the two tones are swapped at the receiver',
    'burst-expansion-layout': ['Expansion: expected the layout {expected}, got {received}', "'{usual}'"],
  },
  terms: burstTerms as typeof burstTerms,
} as const;

/** All texts of this module. */
export type BurstTexts = typeof burstTexts;

/** Makes an issue or notice of this module. */
export const issue: IssueMaker<typeof burstTexts> = /* @__PURE__ */ issueMaker(burstTexts);
