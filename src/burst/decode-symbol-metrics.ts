import { failure, type Result } from '../result/index.ts';
import { safely } from '../result/internal.ts';
import type { CallHeard } from './attempt.ts';
import { boundedValues, report, softBits } from './decode-soft.ts';
import { wrongInput, wrongNumber } from './input.ts';
import { compared, type Rescore, related } from './judgement.ts';
import { receive, type Words } from './receive.ts';
import type { Reception } from './reception.ts';

/** What else a receiver knows. */
export interface SymbolMetricOptions {
  /**
   * Likelihood of all that was heard, given each of some whole streams (symbols from the first phasing symbol to
   * the last of the call): natural log, against random bits throughout. Called once, with at most 64 streams; a
   * stream of which it says nothing, or no number, stays as likely as its words make it.
   */
  readonly rescore?: Rescore | undefined;
  /** Natural log of what was heard of the dot pattern, against random bits; 0 by default. */
  readonly lead?: number | undefined;
}

/**
 * Decode a call from what a receiver heard of each ten-bit word, phasing and polarity being known.
 *
 * A receiver that knows how neighbouring bits hang together says more with this than with single bits.
 *
 * @param metrics - `metrics[128 * position + symbol]`: natural log of the likelihood of the word at a stream
 *   position given the symbol, against the mean over all 1024 words of ten bits; position 0 is the first phasing
 *   symbol; a word that was not heard has 128 zeros
 * @param options - a second, better look at the likeliest readings
 * @returns as {@link decodeSoft}; `start` is 0 and `end` ten times the count of symbols used
 */
export function decodeSymbolMetrics(
  metrics: ArrayLike<number>,
  options: SymbolMetricOptions = {},
): Result<Reception> {
  const values = safely(
    () => softBits(metrics),
    () => wrongInput({ subject: 'metrics', accepted: 'numbers' }, metrics),
  );
  if (!(values instanceof Float64Array)) return failure(values);
  // A caller without types may give null for no options.
  const { rescore, lead = 0 } = options ?? {};
  const wrong =
    wrongNumber('lead', lead) ??
    (rescore === undefined || typeof rescore === 'function'
      ? null
      : wrongInput({ subject: 'option', which: 'rescore', accepted: 'function' }, rescore, ['rescore']));
  if (wrong !== null) return failure(wrong);
  return report(hearCall(values, rescore, lead).alone);
}

/**
 * What a receiver heard of a call, and how it reads alone.
 *
 * @param given - metrics as for {@link decodeSymbolMetrics}, which are copied
 */
export function hearCall(given: ArrayLike<number>, rescore: Rescore | undefined, lead = 0): CallHeard {
  const metrics = boundedValues(given, 0, given.length);
  const tempering = rescore === undefined ? related : compared;
  const end = 10 * Math.floor(metrics.length / 128);
  const words: Words = { metrics, lead, tempering, polarity: 'normal', start: 0, given: end };
  return { words, rescore, alone: receive(words, rescore) };
}
