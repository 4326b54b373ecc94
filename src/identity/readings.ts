import { classify } from './classify.ts';
import type { ParseCode } from './texts.ts';

/** A code, the nine digits that may have been meant, and the params of the code. */
export type Finding = readonly [
  code: ParseCode,
  suggestion?: string | undefined,
  params?: Readonly<Record<string, string | number>>,
];

/** What digits may have been meant as, where they are not an identity as they stand; best reading first. */
export function readingsOf(digits: string): readonly Finding[] {
  const readings: Finding[] = [];
  if (/^([2-7]\d{6,7}|9990000)$/.test(digits)) {
    readings.push(['identity-leading-zeros', digits.padStart(9, '0')]);
  }
  if (isImoNumber(digits)) readings.push(imoNumber);
  // ITU-R M.493-16, from memory: on the air an identity is its nine digits and a 0.
  if (/^\d{9}0$/.test(digits) && classify(digits.slice(0, 9)) !== undefined) {
    readings.push(['identity-call-address', digits.slice(0, 9)]);
  }
  // Fifth and sixth digit 01 to 26 may be a letter, and the code that of a call sign: then no ship comes first.
  const [, letter = ''] = /^9[2-7]\d\d(\d\d)\d{4}$/.exec(digits) ?? [];
  if (letter !== '') {
    if (letter > '00' && letter < '27') readings.push(['identity-atis-call-sign']);
    readings.push(['identity-atis', digits.slice(1)]);
  }
  return readings;
}

/** Seven digits with that check digit, or the label in front. */
export const imoNumber: Finding = ['identity-imo-number'];

/** The same doubt once for each reading of the given digits, or once without one. */
export function doubt(code: ParseCode, ...digits: readonly string[]): readonly Finding[] {
  const readings = digits.flatMap((each): readonly Finding[] =>
    classify(each) === undefined ? readingsOf(each) : [[code, each]],
  );
  const doubts = readings.map((reading): Finding => (reading === imoNumber ? reading : [code, reading[1]]));
  return doubts.some(([own]) => own === code) ? doubts : [[code], ...doubts];
}

/** Whether seven digits have the check digit of an IMO ship number, IMO Res. A.1117(30): weights 7 to 2, last digit of the sum. */
function isImoNumber(digits: string): boolean {
  const sum = [7, 6, 5, 4, 3, 2].reduce((total, weight, place) => total + weight * Number(digits[place]), 0);
  return /^\d{7}$/.test(digits) && sum % 10 === Number(digits[6]);
}
