import { failure, type Issue, type Result } from '../result/index.ts';
import { safely } from '../result/internal.ts';
import type { decodeSoft } from './decode-soft.ts';
import { decodeFirst, decodeWhere, type GivenBits, type Stretch } from './decode-soft.ts';
import { listOf, wrongInput } from './input.ts';
import { separate } from './judgement.ts';
import type { Received } from './receive.ts';
import type { Reception } from './reception.ts';
import { encodeSymbol } from './symbol-code.ts';

/** Assumed share of wrong bits until a call gives a better estimate. */
const FIRST_GUESS = 0.04;
/** Shapes of call looked into until it is known how many bits are wrong. */
const FIRST_SHAPES = 2;

/**
 * Decode the first call in a row of hard bits, wherever it begins and whichever way round the tones are.
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
  options: NonNullable<Parameters<typeof decodeSoft>[1]> = {},
): Result<Reception> {
  return safely(
    () => decodeWhere(givenHard(bits), options, decodeHard),
    () => failure(wrongInput({ subject: 'bits', accepted: 'bits' }, bits)),
  );
}

/** Decode bits of 1, -1 and 0 (not heard), with the share of wrong bits that the call itself shows. */
export function decodeHard(
  { bits, offset }: Stretch,
  options: NonNullable<Parameters<typeof decodeSoft>[1]>,
): Received | null {
  const first = decodeFirst(weighted(bits, offset, FIRST_GUESS), separate, options, FIRST_SHAPES);
  if (first === null) return null;
  const { start } = first.reception.quality;
  return decodeFirst(weighted(bits, offset, wrongShare(bits, offset, first)), separate, { start });
}

function weighted(hard: Float64Array, offset: number, wrong: number): Stretch {
  const weight = Math.log((1 - wrong) / wrong);
  return { bits: hard.map((bit) => bit * weight), offset };
}

/** Share of the call's bits that came wrong where reception was not lost, never quite 0 nor quite a half. */
export function wrongShare(
  hard: Float64Array,
  offset: number,
  { reception, stream, received }: Received,
): number {
  const { start, polarity } = reception.quality;
  let heard = 0;
  let wrong = 0;
  [...stream.map(encodeSymbol).join('')].forEach((bit, index) => {
    const value = hard[start - offset + index] ?? 0;
    if (value === 0) return;
    const share = received[Math.floor(index / 10)] as number;
    heard += share;
    if (((bit === '1') === (polarity === 'normal')) !== value > 0) wrong += share;
  });
  return Math.min((wrong + 0.5) / (heard + 1), 0.45);
}

/** Hard bits as they were given, or the issue with what is none. */
export function givenHard(bits: unknown): GivenBits | Issue {
  const list = typeof bits === 'string' ? bits.replace(/\s/g, '') : listOf(bits);
  if (list === null) return wrongInput({ subject: 'bits', accepted: 'bits' }, bits);
  return {
    length: list.length,
    read(from, to): Float64Array | Issue {
      const values = new Float64Array(to - from);
      for (let index = from; index < to; index++) {
        const bit = list[index];
        if (bit === 1 || bit === '1') values[index - from] = 1;
        else if (bit === 0 || bit === '0') values[index - from] = -1;
        else if (bit !== null && bit !== '?')
          return wrongInput({ subject: 'bit', which: index, accepted: 'bit' }, bit, [index]);
      }
      return values;
    },
  };
}
