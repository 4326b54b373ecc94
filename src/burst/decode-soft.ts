import { failure, type Issue, type Result, success } from '../result/index.ts';
import { LONGEST_STREAM } from './character-table.ts';
import { listOf, wrongInput, wrongNumber } from './input.ts';
import { related, type Trust } from './judgement.ts';
import { notFound } from './notices.ts';
import { findPhasing, type PhasingPlace, phasingAt } from './phasing.ts';
import { type Received, receive } from './receive.ts';
import type { Reception } from './reception.ts';
import { wordMetric } from './word-metric.ts';

/** Where to look. */
export interface DecodeOptions {
  /** Index of the first phasing bit, when it is known; otherwise it is searched for. */
  readonly start?: number | undefined;
  /** Index from which on to search, 0 by default: the `end` of the reception before. */
  readonly from?: number | undefined;
}

/** No bit is surer than this (natural log): receivers are less certain than they think. */
const SUREST = 12;
/** A burst that is less likely than this to be one is not reported. */
const LIKELY = 0.5;

/**
 * Decode the first call in a row of soft bits.
 *
 * All copies, the ten-bit code, what is expected in each field and the error check are weighed together as one
 * code over the whole call, every length against every other and against there being no call. Phasing is
 * searched softly, in either polarity; the length is found by the decoder.
 *
 * @param llrs - log-likelihood per bit, ln P(1) - ln P(0), natural logarithm, 1 being Y (1300 Hz); a value that is
 *   not a number counts as not heard
 * @param options - where to look
 * @returns the call and how sure it is; a doubtful call is a success too, with unreadable characters left open
 *
 * @see {@link decodeBits}
 * @see {@link decodeSymbolMetrics}
 *
 * @example
 * ```ts
 * import { decodeSoft, encodeCall } from 'seahail/burst';
 * import { composeTestCall } from 'seahail/call';
 * import { valueOf } from 'seahail/result';
 *
 * const { bits } = encodeCall(composeTestCall({ from: '232999871', to: '002329990' }));
 * const llrs = [...bits].map((bit) => (bit === '1' ? 4 : -4));
 * const { call, quality } = valueOf(decodeSoft(llrs));
 * console.log(call.kind, quality.verdict); // test-call clean
 * ```
 */
export function decodeSoft(llrs: ArrayLike<number>, options: DecodeOptions = {}): Result<Reception> {
  return decodeWhere(softBits(llrs), options, (bits, where) => decodeFirst(bits, related, where));
}

/** Decode bits, or say why they or the options cannot be read. */
export function decodeWhere(
  bits: Float64Array | Issue,
  options: DecodeOptions | null,
  decode: (bits: Float64Array, options: DecodeOptions) => Received | null,
): Result<Reception> {
  if (!(bits instanceof Float64Array)) return failure(bits);
  const wrong = wrongNumber('start', options?.start) ?? wrongNumber('from', options?.from);
  return wrong === null ? report(decode(bits, options ?? {})) : failure(wrong);
}

/** The reception as a result. */
export function report(received: Received | null): Result<Reception> {
  if (received === null || received.callProbability < LIKELY)
    return failure(notFound(received?.callProbability ?? 0));
  return success(received.reception, received.notices);
}

/** The first call worth reporting, or else the best that was found. */
export function decodeFirst(bits: Float64Array, trust: Trust, options: DecodeOptions): Received | null {
  if (options.start !== undefined) return decodeAt(bits, trust, phasingAt(bits, Math.trunc(options.start)));
  let best: Received | null = null;
  for (const place of findPhasing(bits, Math.max(0, Math.trunc(options.from ?? 0)))) {
    const received = decodeAt(bits, trust, place);
    if (received === null || (best !== null && best.evidence >= received.evidence)) continue;
    best = received;
    if (best.reception.quality.verdict !== 'doubtful') return best;
  }
  return best;
}

function decodeAt(bits: Float64Array, trust: Trust, { start, sign, lead }: PhasingPlace): Received | null {
  const metrics = new Float64Array(128 * LONGEST_STREAM);
  for (let word = 0; word < LONGEST_STREAM; word++)
    wordMetric(bits, start + 10 * word, sign, metrics, 128 * word);
  return receive({
    metrics,
    lead,
    trust,
    polarity: sign === 1 ? 'normal' : 'inverted',
    start,
    given: bits.length,
  });
}

/** Values made fit to calculate with, or the issue with what was given. */
export function softBits(llrs: unknown): Float64Array | Issue {
  const list = listOf(llrs);
  if (list === null) return wrongInput('soft values', 'an array of numbers', llrs);
  return Float64Array.from(list, (value) => {
    const number = typeof value === 'number' ? value : 0;
    return Number.isNaN(number) ? 0 : Math.max(-SUREST, Math.min(SUREST, number));
  });
}
