import { failure, type Issue, type Result, success } from '../result/index.ts';
import { safely } from '../result/internal.ts';
import { decodeHard } from './decode-bits.ts';
import { decodeWhere, type GivenBits } from './decode-soft.ts';
import { listOf, wrongInput } from './input.ts';
import type { Reception } from './reception.ts';
import { encodeSymbol, isSymbol } from './symbol-code.ts';

/**
 * Decode the first call in a row of ten-bit symbols, DX and RX taking turns, with gaps.
 *
 * @param symbols - an array, typed or not: 0 to 127, `null` where ten bits made no valid symbol; phasing may stand
 *   anywhere in it
 * @returns the call and how sure it is, as {@link decodeSoft}, but `start` and `end` count symbols
 *
 * @see {@link decodeBits}
 *
 * @example
 * ```ts
 * import { decodeStream, encodeCall } from 'seahail/burst';
 * import { composeTestCall } from 'seahail/call';
 * import { valueOf } from 'seahail/result';
 *
 * const { stream } = encodeCall(composeTestCall({ from: '232999871', to: '002329990' }));
 * const hit = stream.map((symbol, position) => (position >= 20 && position < 25 ? null : symbol));
 * const { call, quality } = valueOf(decodeStream(hit));
 * console.log(call.kind, quality.words.differing); // test-call 5
 * ```
 */
export function decodeStream(symbols: ArrayLike<number | null>): Result<Reception> {
  return safely(
    () => decoded(symbols),
    () => failure(wrongInput({ subject: 'symbols', accepted: 'symbols' }, symbols)),
  );
}

function decoded(symbols: ArrayLike<number | null>): Result<Reception> {
  const result = decodeWhere(givenSymbols(symbols), {}, decodeHard);
  if (!result.ok) return result;
  const { quality } = result.value;
  const counted = { ...quality, start: Math.floor(quality.start / 10), end: Math.ceil(quality.end / 10) };
  const notices = result.notices.map((notice) =>
    notice.code === 'burst-cut-short' ? { ...notice, at: [counted.end] } : notice,
  );
  return success({ ...result.value, quality: counted }, notices);
}

/** The bits of some symbols, or the issue with what is none. */
export function givenSymbols(symbols: unknown): GivenBits | Issue {
  const list = listOf(symbols);
  if (list === null) return wrongInput({ subject: 'symbols', accepted: 'symbols' }, symbols);
  const bits = new Float64Array(10 * list.length);
  for (let position = 0; position < list.length; position++) {
    const symbol = list[position];
    if (symbol === null) continue;
    if (!isSymbol(symbol))
      return wrongInput({ subject: 'symbol', which: position, accepted: 'symbol' }, symbol, [position]);
    [...encodeSymbol(symbol)].forEach((bit, index) => {
      bits[10 * position + index] = bit === '1' ? 1 : -1;
    });
  }
  return { length: bits.length, read: (from, to) => bits.subarray(from, to) };
}
