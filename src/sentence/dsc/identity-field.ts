import type { Symbols } from '../../call/index.ts';
import type { Notice } from '../../result/index.ts';
import { fieldNotice } from '../field/field-notice.ts';
import { symbolsOfDigits } from './symbol-code.ts';

/**
 * An identity field as five symbols: nine digits and a padding zero (ITU-R M.493 and IEC 61162-1).
 *
 * Nine digits are taken for an identity without its padding, with a notice: they are even printed so in
 * equipment papers. Any other text is left alone, with a notice; an empty field is `null` without one.
 */
export function readIdentityField(
  text: string,
  formatter: string,
  field: number,
  notices: Notice[],
): Symbols | null {
  if (text === '') return null;
  const symbols =
    text.length === 10 ? symbolsOfDigits(text) : text.length === 9 ? symbolsOfDigits(`${text}0`) : null;
  if (symbols === null) {
    notices.push(fieldNotice('sentence-identity', { formatter, field }, text));
  } else if (text.length === 9) {
    notices.push(fieldNotice('sentence-identity-nine-digits', { formatter, field, identity: text }, text));
  }
  return symbols;
}

/** The text by which sentences of one station are matched: its padding zero taken off. */
export function stationKey(text: string): string {
  return text.length === 10 && text.charCodeAt(9) === 0x30 ? text.slice(0, 9) : text;
}
