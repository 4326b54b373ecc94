import { requireSymbol } from './symbol-code.ts';

/**
 * The error-check character: exclusive-or (even parity by column) of the characters it counts.
 *
 * Counted are one format specifier, every character after it, and one end-of-sequence character; not
 * counted are phasing, the second format specifier and the repeated copies.
 * Source: ITU-R M.493, error-check character.
 *
 * @param characters - symbols 0–127, format specifier once, up to and with the end of sequence
 * @returns a symbol 0–127
 * @throws RangeError when a character is not an integer from 0 to 127
 *
 * @see {@link encodeCall}
 *
 * @example
 * ```ts
 * import { errorCheckOf } from 'seahail/burst';
 *
 * console.log(errorCheckOf([112, 25, 20, 0, 10, 10, 101, 15, 0, 70, 5, 29, 14, 32, 100, 127])); // 124
 * ```
 */
export function errorCheckOf(characters: readonly number[]): number {
  if (!Array.isArray(characters))
    throw new TypeError(`errorCheckOf: expected a list of symbols, got ${typeof characters}`);
  let check = 0;
  for (const character of characters) {
    requireSymbol(character);
    check ^= character;
  }
  return check;
}
