import type { Symbols } from '../../call/index.ts';
import { type EndOfSequence, endsOfSequence } from '../../call/internal.ts';
import type { Notice } from '../../result/index.ts';
import { textAt } from '../field/text-at.ts';
import { twoDigitsAt } from '../field/utc-field.ts';
import { fieldNotice } from '../texts.ts';

/** The letters of field 10 (IEC 61162-1, `DSC` sentence). */
const END_LETTERS: Readonly<Record<EndOfSequence, string>> = {
  'acknowledgement-requested': 'R',
  acknowledgement: 'B',
  'end-of-sequence': 'S',
};

/** The end of sequence that a letter means, `null` when it is another letter. */
export function endOfLetter(letter: string): number | null {
  for (const [symbol, name] of endsOfSequence.rows) if (END_LETTERS[name] === letter) return symbol;
  return null;
}

/** The letter of an end of sequence, empty when it has none. */
export function letterOfEnd(end: number | null): string {
  return Object.values(END_LETTERS).find((letter) => endOfLetter(letter) === end) ?? '';
}

/**
 * The symbol of a two-digit code, `null` of any other text: its last two digits are sent, so 00–27 are 100–127
 * (IEC 61162-1, note to the `DSC` sentence), and 28–99 can only be themselves.
 */
export function symbolOfCode(code: string): number | null {
  const value = twoDigitsAt(code, 0);
  if (code.length !== 2 || Number.isNaN(value)) return null;
  return value <= 27 ? value + 100 : value;
}

/** The last two digits of a symbol 28–127, or `null`: any other symbol shares its digits with one that has a meaning. */
export function codeOfSymbol(symbol: number): string | null {
  const hasCode = Number.isInteger(symbol) && symbol >= 28 && symbol <= 127;
  return hasCode ? String(symbol % 100).padStart(2, '0') : null;
}

/** Symbols 00–99 of an even count of digits, none of none, or `null` when the text is anything else. */
export function symbolsOfDigits(text: string): Symbols | null {
  const { length } = text;
  const symbols: number[] = [];
  for (let index = 0; index < length; index += 2) {
    const symbol = twoDigitsAt(text, index);
    if (Number.isNaN(symbol)) return null;
    symbols.push(symbol);
  }
  return symbols;
}

/** The symbol of a field that holds a two-digit code, counted from 1; `null` when it is empty or, with a notice, no code. */
export function readCode(texts: readonly string[], field: number, notices: Notice[]): number | null {
  const text = textAt(texts, field - 1);
  if (text === '') return null;
  const symbol = symbolOfCode(text);
  if (symbol === null) {
    notices.push(fieldNotice('sentence-code', { formatter: 'DSC', field }, text));
  }
  return symbol;
}

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
