import type { Symbols } from '../../call/index.ts';
import type { EndOfSequence } from '../../call/internal.ts';
import { endsOfSequence, nameOfSymbol } from '../../call/internal.ts';

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
  const name = end === null ? '' : nameOfSymbol(endsOfSequence, end);
  return Object.hasOwn(END_LETTERS, name) ? END_LETTERS[name as EndOfSequence] : '';
}

/**
 * The symbol of a two-digit code: its last two digits are sent, so 00–27 are 100–127
 * (IEC 61162-1, note to the `DSC` sentence), and 28–99 can only be themselves.
 *
 * @returns `null` when the text is not two digits
 */
export function symbolOfCode(code: string): number | null {
  if (code.length !== 2) return null;
  const tens = code.charCodeAt(0) - 0x30;
  const units = code.charCodeAt(1) - 0x30;
  if (!(tens >= 0 && tens <= 9 && units >= 0 && units <= 9)) return null;
  const value = tens * 10 + units;
  return value <= 27 ? value + 100 : value;
}

/** The last two digits of a symbol 28–127, or `null`: any other symbol shares its digits with one that has a meaning. */
export function codeOfSymbol(symbol: number): string | null {
  const hasCode = Number.isInteger(symbol) && symbol >= 28 && symbol <= 127;
  return hasCode ? String(symbol % 100).padStart(2, '0') : null;
}

/** Symbols 00–99 of an even count of digits, or `null` when the text is anything else. */
export function symbolsOfDigits(text: string): Symbols | null {
  const { length } = text;
  if (length === 0 || length % 2 !== 0) return null;
  const symbols: number[] = [];
  for (let index = 0; index < length; index += 2) {
    const tens = text.charCodeAt(index) - 0x30;
    const units = text.charCodeAt(index + 1) - 0x30;
    if (!(tens >= 0 && tens <= 9 && units >= 0 && units <= 9)) return null;
    symbols.push(tens * 10 + units);
  }
  return symbols;
}
