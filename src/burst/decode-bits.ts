import type { Issue, Result } from '../result/index.ts';
import { type DecodeOptions, decodeFirst, decodeWhere } from './decode-soft.ts';
import { listOf, wrongInput } from './input.ts';
import { separate } from './judgement.ts';
import type { Received } from './receive.ts';
import type { Reception } from './reception.ts';
import { encodeSymbol } from './symbol-code.ts';

/** Share of bits taken to be wrong until a call tells better. */
const FIRST_GUESS = 0.04;
const BIT = "0, 1 or not heard ('?' in a text, null in an array)";

/**
 * Decode the first call in a row of hard bits, wherever in it the call stands and whichever way round the tones are.
 *
 * @param bits - a text of `0` and `1` (`?` for a bit not heard, white space ignored), or an array of 0, 1 and `null`;
 *   1 is Y (1300 Hz)
 * @param options - where to look
 * @returns the call and how sure it is, as {@link decodeSoft}
 *
 * @see {@link decodeStream}
 *
 * @example
 * ```ts
 * import { decodeBits, encodeCall } from 'seahail/burst';
 * import { composeTestCall } from 'seahail/call';
 * import { valueOf } from 'seahail/result';
 *
 * const { bits } = encodeCall(composeTestCall({ from: '232999871', to: '002329990' }));
 * const { call, quality } = valueOf(decodeBits(`0110100${bits}11010`));
 * console.log(call.from, quality.start, quality.end); // 232999871 27 647
 * ```
 */
export function decodeBits(
  bits: string | ArrayLike<number | null>,
  options: DecodeOptions = {},
): Result<Reception> {
  return decodeWhere(hardBits(bits), options, decodeHard);
}

/** Decode bits of 1, -1 and 0 (not heard), with the share of wrong bits that the call itself shows. */
export function decodeHard(hard: Float64Array, options: DecodeOptions): Received | null {
  const first = decodeFirst(weighted(hard, FIRST_GUESS), separate, options);
  if (first === null) return null;
  const { start } = first.reception.quality;
  return decodeFirst(weighted(hard, wrongShare(hard, first)), separate, { start });
}

function weighted(hard: Float64Array, wrong: number): Float64Array {
  const weight = Math.log((1 - wrong) / wrong);
  return hard.map((bit) => bit * weight);
}

/** Share of the call's bits that came wrong, never quite 0 nor quite a half. */
function wrongShare(hard: Float64Array, { reception, stream }: Received): number {
  const { start, polarity } = reception.quality;
  let heard = 0;
  let wrong = 0;
  [...stream.map(encodeSymbol).join('')].forEach((bit, index) => {
    const value = hard[start + index] ?? 0;
    if (value === 0) return;
    heard++;
    if (((bit === '1') === (polarity === 'normal')) !== value > 0) wrong++;
  });
  return Math.min((wrong + 0.5) / (heard + 1), 0.45);
}

function hardBits(bits: unknown): Float64Array | Issue {
  const list = typeof bits === 'string' ? [...bits.replace(/\s/g, '')] : listOf(bits);
  if (list === null)
    return wrongInput('bits', "a text of '0', '1' and '?' or an array of 0, 1 and null", bits);
  const values = new Float64Array(list.length);
  for (let index = 0; index < values.length; index++) {
    const bit = list[index];
    if (bit === 1 || bit === '1') values[index] = 1;
    else if (bit === 0 || bit === '0') values[index] = -1;
    else if (bit !== null && bit !== '?') return wrongInput(`bit ${index}`, BIT, bit, [index]);
  }
  return values;
}
