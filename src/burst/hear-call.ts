import type { CallHeard } from './attempt.ts';
import { boundedValues } from './decode-soft.ts';
import { compared, type Rescore, related } from './judgement.ts';
import { receive, type Words } from './receive.ts';

/**
 * What a receiver heard of a call, and how it reads alone, phasing and polarity being known. A receiver that knows how
 * neighbouring bits hang together says more with words than with single bits.
 *
 * @param given - `given[128 * position + symbol]`: natural log of the likelihood of the word at a stream position given
 *   the symbol, against the mean over all 1024 words of ten bits; position 0 is the first phasing symbol, and a word
 *   that was not heard has 128 zeros; they are copied
 * @param rescore - likelihood of all that was heard, given each of at most 64 whole streams (symbols from the first
 *   phasing symbol to the last of the call): natural log, against random bits throughout; called once, and a stream of
 *   which it says nothing, or no number, stays as likely as its words make it
 * @param lead - natural log of what was heard of the dot pattern, against random bits
 */
export function hearCall(given: ArrayLike<number>, rescore: Rescore | undefined, lead = 0): CallHeard {
  const metrics = boundedValues(given, 0, given.length);
  const tempering = rescore === undefined ? related : compared;
  const end = 10 * Math.floor(metrics.length / 128);
  const words: Words = { metrics, lead, tempering, polarity: 'normal', start: 0, given: end };
  return { words, rescore, alone: receive(words, rescore) };
}
