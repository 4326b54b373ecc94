import fc from 'fast-check';
import { identityForms } from '../../src/identity/index.ts';

const digit = fc.integer({ min: 0, max: 9 });
const midDigit = fc.integer({ min: 2, max: 7 });

/** Nine digits filled into a form of the published table. */
export function fromPattern(pattern: string): fc.Arbitrary<string> {
  return fc
    .tuple(
      ...[...pattern].map((place) =>
        place === 'M' ? midDigit : /\d/.test(place) ? fc.constant(Number(place)) : digit,
      ),
    )
    .map((digits) => digits.join(''));
}

/** Nine digits of an assigned form. */
export const assigned: fc.Arbitrary<string> = fc.oneof(
  ...identityForms.map((form) => fromPattern(form.pattern)),
);

/** Nine digits, half of them near a prefix that matters. */
export const nineDigits: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom('', '', '0', '00', '000', '00999', '1', '11', '111', '8', '9', '97', '98', '99'),
    fc.constantFrom('', '0', '00', '000', '0000'),
    fc.array(digit, { minLength: 9, maxLength: 9 }),
  )
  .map(([head, tail, digits]) => head + digits.join('').slice(0, 9 - head.length - tail.length) + tail);

/** Names that every object has, and other unlikely input. */
export const hostile: readonly string[] = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'valueOf',
  'prototype',
];
