import { type CallHeard, hearCall } from '../burst/internal.ts';
import { evidenceOfPhasing } from './acquire/evidence.ts';
import { MOST_WORDS, PHASING, PHASING_BITS, SURE_WORDS, UNBROKEN } from './acquire/phasing.ts';
import { coherentShare, goesOn, locate } from './acquire/sync.ts';
import { improveFit, weighBits } from './estimate/fit.ts';
import { createFitSpace, type FirstFit, type Fit, type FitSpace } from './estimate/fit-space.ts';
import type { Baseband } from './front-end/baseband.ts';
import { PER_BIT } from './front-end/bit-filter.ts';
import { BASEBAND_RATE } from './front-end/front-end.ts';
import {
  createWordSpace,
  forwardBackwardWords,
  streamLikelihood,
  type WordSpace,
} from './trellis/forward-backward-words.ts';
import { type Correlations, fillBranches, type SignalModel } from './trellis/phase-trellis.ts';

const WORD = 10;
const SYMBOLS = 128;

/**
 * Words of phasing that may be lost before the rest is judged alone, and the coherent share of energy below which that is not
 * worth while: of bursts at Eb/N0 = -2 dB that are found, the whole phasing has 0.059 or more; other sound has 0.024 ± 0.01.
 */
const SKIPS = [
  [0, 0.04],
  [4, 0.05],
  [8, 0.08],
] as const;

/** Phasing that speaks so much for itself (natural log) is not looked at in part, nor is any of less coherence than this. */
const PLAIN_EVIDENCE = 60;
const PARTLY_COHERENT = 1.5;

/**
 * Share of the energy that is coherent in the third best of the five places of an attempt, at least. Attempts at Eb/N0 = -7 dB
 * have 0.026 or more; two calls that happen to lie so, whatever their strength, leave three places with noise: 0.018 or less.
 */
const ATTEMPT_COHERENT = 0.02;

/** A burst that was read: how it sounds on the whole, and what was heard of its call. */
export interface ReadBurst {
  readonly fit: Fit;
  readonly heard: CallHeard;
}

/** Looks at bursts in the baseband: first at the phasing, later at the whole. */
export interface BurstReader {
  /** How the burst that seems to begin at `start` sounds, its DX phasing being so coherent (0 to 6), and how much its phasing speaks for it; `null` when it clearly is none. */
  check(
    start: number,
    mirror: boolean,
    coherence: number,
  ): { readonly fit: FirstFit; readonly evidence: number } | null;
  /** The call in a burst, of which `words` words can be heard; and how the burst sounds on the whole. */
  read(first: FirstFit, words: number): ReadBurst;
  /** How the calls of an attempt sound that begin at `starts`, all of the same transmitter, most of which cannot be found alone; `null` when fewer than three are there. */
  locateAttempt(starts: readonly [number, ...number[]], mirror: boolean): readonly FirstFit[] | null;
}

/** Working space, of use to one burst at a time: one for all receivers, made when the first needs it. */
let made: ReturnType<typeof createSpaces> | undefined;
function createSpaces(): { space: FitSpace; wordSpace: WordSpace; metrics: Float32Array } {
  return {
    space: createFitSpace(MOST_WORDS * WORD),
    wordSpace: createWordSpace(MOST_WORDS),
    metrics: new Float32Array(SYMBOLS * MOST_WORDS),
  };
}

export function createBurstReader(baseband: Baseband): BurstReader {
  made ??= createSpaces();
  const { space, wordSpace, metrics } = made;

  function checkFrom(
    start: number,
    mirror: boolean,
    [skipped, least]: (typeof SKIPS)[number],
  ): { fit: FirstFit; evidence: number } | 'goes on' | null {
    const known = PHASING_BITS.slice(skipped * WORD);
    const near = locate(baseband, [start + skipped * WORD * PER_BIT], mirror, space, skipped, least);
    if (near === null) return null;
    if (goesOn(baseband, near, space, skipped)) return 'goes on';
    const fit = improveFit(baseband, near, known, (UNBROKEN - skipped) * WORD, 2, space);
    const evidence = evidenceOfPhasing(baseband, fit, space, known);
    return { fit: { ...movedBy(fit, -skipped), skipped }, evidence };
  }

  return {
    check(start, mirror, coherence) {
      let best: ReturnType<BurstReader['check']> = null;
      for (const skip of SKIPS) {
        const one = checkFrom(start, mirror, skip);
        if (one === 'goes on') return null;
        if (one !== null && (best === null || one.evidence > best.evidence)) best = one;
        if ((best !== null && best.evidence >= PLAIN_EVIDENCE) || coherence < PARTLY_COHERENT) break;
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
      forwardBackwardWords(
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
      const fit = locate(baseband, starts, mirror, space, 0, 0) as Fit;
      const fits = starts.map((start) => ({ ...fit, start: fit.start + start - starts[0], skipped: 0 }));
      const shares = fits.map((each) => coherentShare(baseband, each, space)).sort((a, b) => b - a);
      return (shares[2] as number) < ATTEMPT_COHERENT ? null : fits;
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
