import { type CallHeard, hearCall } from '../burst/internal.ts';
import { evidenceOfPhasing } from './acquire/evidence.ts';
import { MOST_WORDS, PHASING, PHASING_BITS, UNBROKEN } from './acquire/phasing.ts';
import { locate } from './acquire/sync.ts';
import { improveFit, weighBits } from './estimate/fit.ts';
import { createFitSpace, type FirstFit, type Fit, type FitSpace } from './estimate/fit-space.ts';
import type { Baseband } from './front-end/baseband.ts';
import { PER_BIT } from './front-end/bit-filter.ts';
import { BASEBAND_RATE } from './front-end/front-end.ts';
import { type Correlations, fillBranches, type SignalModel } from './trellis/phase-trellis.ts';
import { createWordSpace, smoothWords, streamLikelihood } from './trellis/smooth-words.ts';

const WORD = 10;
const SYMBOLS = 128;

/** Words of the shortest call (a distress alert, M.493-16): the part that is sure to be there, used to learn level and clock. */
const SURE_WORDS = 52;

/** Words of phasing that may be lost before the rest is judged alone. */
const SKIPS: readonly number[] = [0, 4, 8];

/** Phasing that speaks so much for itself (natural log) is not looked at in part, nor is any of less coherence than this. */
const PLAIN_EVIDENCE = 60;
const PARTLY_COHERENT = 1.5;

/** A burst that was read: how it sounds on the whole, and what was heard of its call. */
export interface ReadBurst {
  readonly fit: Fit;
  readonly heard: CallHeard;
}

/** Looks at bursts in the baseband: first at the phasing, later at the whole. */
export interface BurstReader {
  /** How the burst that seems to begin at `start` sounds, its DX phasing being so coherent (0 to 6), and how much its phasing speaks for it. */
  check(
    start: number,
    mirror: boolean,
    coherence: number,
  ): { readonly fit: FirstFit; readonly evidence: number };
  /** The call in a burst, of which `words` words can be heard; and how the burst sounds on the whole. */
  read(first: FirstFit, words: number): ReadBurst;
  /** How the calls of an attempt sound that begin at `starts`, all of the same transmitter: most of them cannot be found alone. */
  locateAttempt(starts: readonly [number, ...number[]], mirror: boolean): readonly FirstFit[];
}

export function createBurstReader(baseband: Baseband): BurstReader {
  const space = createFitSpace(MOST_WORDS * WORD);
  const wordSpace = createWordSpace(MOST_WORDS);
  const metrics = new Float32Array(SYMBOLS * MOST_WORDS);

  function checkFrom(start: number, mirror: boolean, skipped: number): { fit: FirstFit; evidence: number } {
    const known = PHASING_BITS.slice(skipped * WORD);
    const near = locate(baseband, [start + skipped * WORD * PER_BIT], mirror, space, skipped);
    const fit = improveFit(baseband, near, known, (UNBROKEN - skipped) * WORD, 2, space);
    const evidence = evidenceOfPhasing(baseband, fit, space, known);
    return { fit: { ...movedBy(fit, -skipped), skipped }, evidence };
  }

  return {
    check(start, mirror, coherence) {
      let best = checkFrom(start, mirror, 0);
      if (best.evidence >= PLAIN_EVIDENCE || coherence < PARTLY_COHERENT) return best;
      for (const skipped of SKIPS.slice(1)) {
        const other = checkFrom(start, mirror, skipped);
        if (other.evidence > best.evidence) best = other;
      }
      return best;
    },
    read({ skipped, ...first }, words) {
      const count = words - skipped;
      const known = PHASING_BITS.slice(skipped * WORD);
      const learnt = Math.min(count, SURE_WORDS) * WORD;
      const fit = improveFit(baseband, movedBy(first, skipped), known, learnt, 4, space);
      weighBits(baseband, fit, known, count * WORD, space);
      // Of the words before, nothing was heard.
      metrics.fill(0, 0, SYMBOLS * skipped);
      smoothWords(
        space.branches,
        count,
        PHASING.slice(skipped),
        wordSpace,
        metrics.subarray(SYMBOLS * skipped),
      );
      const sound = soundOf(space, fit, count * WORD);
      const rescore = (streams: readonly (readonly number[])[]): number[] => {
        fillBranches(space.branches, sound.z, sound, count * WORD);
        const likelihood = streamLikelihood(space.branches, count);
        return streams.map((symbols) => likelihood(symbols.slice(skipped)));
      };
      return {
        fit: movedBy(fit, -skipped),
        heard: hearCall(metrics.subarray(0, SYMBOLS * words), rescore),
      };
    },
    locateAttempt(starts, mirror) {
      const fit = locate(baseband, starts, mirror, space, 0);
      return starts.map((start) => ({ ...fit, start: fit.start + start - starts[0], skipped: 0 }));
    },
  };
}

/** What the likelihoods of so many bits were made of, to make them once more when other bursts were read meanwhile. */
function soundOf(space: FitSpace, { one, zero }: Fit, bits: number): SignalModel & { z: Correlations } {
  return { one, zero, noise: space.noise.slice(0, bits), z: space.z.slice(0, 4 * bits) };
}

/** The same burst, its place counted from so many words further on. */
function movedBy(fit: Fit, words: number): Fit {
  const way = words * WORD * fit.perBit;
  return {
    ...fit,
    start: fit.start + way,
    phase: fit.phase + (2 * Math.PI * fit.offset * way) / BASEBAND_RATE,
  };
}
