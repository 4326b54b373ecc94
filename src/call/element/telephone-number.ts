import { digitsOf, type Symbols, symbolsOf } from '../fields.ts';
import { noSymbols } from '../no-symbols.ts';

/** Precedes an odd count of digits; ITU-R M.493-16 §8, read in a restatement. */
const ODD = 105;
const EVEN = 106;
/** The first symbols of a telephone number. */
export const PARITY_MARKS: Symbols = [ODD, EVEN];

/** The digits dialled, `null` when there are none or they cannot be read (ITU-R M.493-16). */
export function telephoneOf(symbols: Symbols | null): string | null {
  if (symbols === null) return null;
  const [parity, ...pairs] = symbols;
  const digits = digitsOf(pairs);
  if (digits === null || digits === '') return null;
  if (parity === EVEN) return digits;
  return parity === ODD ? digits.slice(1) : null;
}

/**
 * A number of 1–16 digits as symbols; an odd count is filled with a 0 in front.
 *
 * @throws RangeError when it is not 1–16 digits
 */
export function telephoneSymbols(number: string | null): number[] | null {
  if (number === null) return null;
  if (!/^\d{1,16}$/.test(number)) throw noSymbols('telephone', `'${number}'`);
  return number.length % 2 === 0 ? [EVEN, ...symbolsOf(number)] : [ODD, ...symbolsOf(`0${number}`)];
}
