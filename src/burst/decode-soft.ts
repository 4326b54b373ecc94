import { failure, type Issue, type Result, success } from '../result/index.ts';
import { safely } from '../result/internal.ts';
import { LONGEST_STREAM } from './character-table.ts';
import { listOf, wrongInput, wrongNumber } from './input.ts';
import { related, type Tempering } from './judgement.ts';
import { notFound } from './notices.ts';
import { findPhasing, type PhasingPlace, phasingAt } from './phasing.ts';
import { type Received, receive } from './receive.ts';
import type { Reception } from './reception.ts';
import { wordMetric } from './word-metric.ts';

/** No bit is surer than this (natural log): receivers are less certain than they think. */
const SUREST = 12;
/** A burst that is less likely than this to be one is not reported. */
const LIKELY = 0.5;
/** Bits that can matter before an index: those of phasing and dot pattern whose front was cut off. */
const BEFORE = 200;
/** Bits that are made fit to calculate with at first, and at a time when no call is found in those: stretches overlap. */
const FIRST_STRETCH = 8192;
const STRETCH = 32_768;

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
export function decodeSoft(
  llrs: ArrayLike<number>,
  options: {
    /** Index of the first phasing bit, when it is known; otherwise it is searched for. */
    readonly start?: number | undefined;
    /** Index from which on to search, 0 by default: the `end` of the reception before. */
    readonly from?: number | undefined;
  } = {},
): Result<Reception> {
  return safely(
    () => decodeWhere(givenSoft(llrs), options, decodeRelated),
    () => failure(wrongInput({ subject: 'soft-bits', accepted: 'numbers' }, llrs)),
  );
}

/** Where to look. */
export type DecodeOptions = NonNullable<Parameters<typeof decodeSoft>[1]>;

/** Bits as they were given; a stretch of them is made fit to calculate with when it is needed. */
export interface GivenBits {
  readonly length: number;
  /** The bits from one index up to another, or the issue with one of them. */
  read(from: number, to: number): Float64Array | Issue;
}

/** A stretch of bits and where it lies. */
export interface Stretch {
  readonly bits: Float64Array;
  /** Index of its first bit in what was given. */
  readonly offset: number;
}

/** Decodes the first call of a stretch of bits. */
export type Decode = (stretch: Stretch, options: DecodeOptions) => Received | null;

/** Decode soft bits whose errors hang together. */
export const decodeRelated: Decode = (stretch, options) => decodeFirst(stretch, related, options);

/** Decode bits, or say why they or the options cannot be read. */
export function decodeWhere(
  given: GivenBits | Issue,
  options: DecodeOptions | null,
  decode: Decode,
): Result<Reception> {
  const wrong = wrongNumber('start', options?.start) ?? wrongNumber('from', options?.from);
  const found = 'code' in given ? given : (wrong ?? receiveWhere(given, options, decode));
  return found !== null && 'code' in found ? failure(found) : report(found);
}

/** The first call in some bits, or the issue with one of them. Only as much is looked at as the first call needs. */
export function receiveWhere(
  given: GivenBits,
  options: DecodeOptions | null,
  decode: Decode,
): Received | null | Issue {
  const { length } = given;
  const start = options?.start === undefined ? undefined : Math.trunc(options.start);
  let from = Math.max(0, Math.trunc(start ?? options?.from ?? 0));
  let best: Received | null = null;
  let stretch = FIRST_STRETCH;
  for (let low = Math.max(0, Math.min(from, length) - BEFORE); ; stretch = STRETCH) {
    const high = Math.min(low + stretch, length);
    const bits = given.read(low, high);
    if (!(bits instanceof Float64Array)) return bits;
    const found = decode({ bits, offset: low }, start === undefined ? { from } : { start });
    const last = high === length || start !== undefined;
    // What begins near the end of the stretch is looked at again with all that follows.
    const next = high - 10 * LONGEST_STREAM - BEFORE;
    const isWhole = last || (found !== null && found.reception.quality.start < next);
    if (isWhole && isLikely(found)) return found;
    if (best === null || (found !== null && found.evidence > best.evidence)) best = found;
    if (last) return best;
    from = Math.max(from, next);
    low = from - BEFORE;
  }
}

function isLikely(received: Received | null): received is Received {
  return received !== null && received.callProbability >= LIKELY;
}

/** The reception as a result. */
export function report(received: Received | null): Result<Reception> {
  if (received === null || received.callProbability < LIKELY)
    return failure(notFound(received?.callProbability ?? 0));
  return success(received.reception, received.notices);
}

/**
 * The first call worth reporting, or else the best that was found.
 *
 * @param most - how many shapes of call are looked into at each place
 */
export function decodeFirst(
  stretch: Stretch,
  tempering: Tempering,
  options: NonNullable<Parameters<typeof decodeSoft>[1]>,
  most?: number,
): Received | null {
  const { bits, offset } = stretch;
  if (options.start !== undefined)
    return decodeAt(stretch, tempering, phasingAt(bits, options.start - offset), most);
  let best: Received | null = null;
  for (const place of findPhasing(bits, Math.max(0, (options.from ?? 0) - offset))) {
    if (isLikely(best) && offset + place.start >= best.reception.quality.end) return best;
    const received = decodeAt(stretch, tempering, place, most);
    if (received === null || (best !== null && best.evidence >= received.evidence)) continue;
    best = received;
    if (best.reception.quality.verdict !== 'doubtful') return best;
  }
  return best;
}

function decodeAt(
  { bits, offset }: Stretch,
  tempering: Tempering,
  { start, sign, lead }: PhasingPlace,
  most?: number,
): Received | null {
  const metrics = new Float64Array(128 * LONGEST_STREAM);
  for (let word = 0; word < LONGEST_STREAM; word++)
    wordMetric(bits, start + 10 * word, sign, metrics, 128 * word);
  return receive({
    metrics,
    lead,
    tempering,
    polarity: sign === 1 ? 'normal' : 'inverted',
    start: offset + start,
    given: offset + bits.length,
    most,
  });
}

/** Soft values as they were given, or the issue with what is none. */
export function givenSoft(llrs: unknown): GivenBits | Issue {
  const list = listOf(llrs);
  if (list === null) return wrongInput({ subject: 'soft-bits', accepted: 'numbers' }, llrs);
  return { length: list.length, read: (from, to) => boundedValues(list, from, to) };
}

/** Values from one index up to another, made fit to calculate with. */
export function boundedValues(list: ArrayLike<unknown>, from: number, to: number): Float64Array {
  const values = new Float64Array(to - from);
  for (let at = from; at < to; at++) {
    const given = list[at];
    const number = typeof given === 'number' && !Number.isNaN(given) ? given : 0;
    values[at - from] = Math.max(-SUREST, Math.min(SUREST, number));
  }
  return values;
}
