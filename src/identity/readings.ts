import { classify } from './classify.ts';
import { isImoNumber } from './imo-number.ts';

/** A code, what to tell a person (following the word "Identity"), and the nine digits that may have been meant. */
export type Finding = readonly [code: string, message: string, suggestion?: string | undefined];

/** What digits may have been meant as, where they are not an identity as they stand; best reading first. */
export function readingsOf(digits: string): readonly Finding[] {
  const readings: Finding[] = [];
  if (/^([2-7]\d{6,7}|9990000)$/.test(digits)) {
    readings.push([
      'identity-leading-zeros',
      'is missing digits: spreadsheets drop leading zeros',
      digits.padStart(9, '0'),
    ]);
  }
  if (isImoNumber(digits)) readings.push(imoNumber);
  // ITU-R M.493-16, from memory: on the air an identity is its nine digits and a 0.
  if (/^\d{9}0$/.test(digits) && classify(digits.slice(0, 9)) !== undefined) {
    readings.push(['identity-call-address', 'has ten digits, the form used on the air', digits.slice(0, 9)]);
  }
  // Fifth and sixth digit 01 to 26 may be a letter, and the code that of a call sign: then no ship comes first.
  const [, letter = ''] = /^9[2-7]\d\d(\d\d)\d{4}$/.exec(digits) ?? [];
  if (letter !== '') {
    const message = 'looks like an inland waterway ATIS code';
    if (letter > '00' && letter < '27') readings.push(['identity-atis', `${message} of a call sign`]);
    readings.push(['identity-atis', message, digits.slice(1)]);
  }
  return readings;
}

/** Seven digits with that check digit, or the label in front. */
export const imoNumber: Finding = ['identity-imo-number', 'looks like an IMO number, not an MMSI'];

/** The same doubt once for each reading of the given digits, or once without one. */
export function doubt(code: string, message: string, ...digits: readonly string[]): readonly Finding[] {
  const readings = digits.flatMap((each): readonly Finding[] =>
    classify(each) === undefined ? readingsOf(each) : [[code, message, each]],
  );
  const doubts = readings.map(
    (reading): Finding => (reading === imoNumber ? reading : [code, message, reading[2]]),
  );
  return doubts.some(([own]) => own === code) ? doubts : [[code, message], ...doubts];
}
