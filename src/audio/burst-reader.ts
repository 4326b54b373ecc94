import type { Reception, Rescore } from '../burst/index.ts';
import { decodeSymbolMetrics } from '../burst/index.ts';
import type { Result } from '../result/index.ts';
import { evidenceOfPhasing } from './acquire/evidence.ts';
import { MOST_WORDS, PHASING, PHASING_BITS, UNBROKEN } from './acquire/phasing.ts';
import { locate } from './acquire/sync.ts';
import { improveFit, weighBits } from './estimate/fit.ts';
import { createFitSpace, type Fit } from './estimate/fit-space.ts';
import type { Baseband } from './front-end/baseband.ts';
import { createWordSpace, smoothWords, streamLikelihood } from './trellis/smooth-words.ts';

const WORD = 10;
const SYMBOLS = 128;

/** Words of the shortest call (a distress alert, M.493-16): the part that is sure to be there, used to learn level and clock. */
const SURE_WORDS = 52;

/** Looks at bursts in the baseband: first at the phasing, later at the whole. */
export interface BurstReader {
  /** How the burst that seems to begin at `start` sounds, and how much its phasing speaks for it. */
  check(start: number, mirror: boolean): { readonly fit: Fit; readonly evidence: number };
  /** The call in a burst, of which `words` words can be heard; and how the burst sounds on the whole. */
  read(first: Fit, words: number): { readonly fit: Fit; readonly reception: Result<Reception> };
}

export function createBurstReader(baseband: Baseband): BurstReader {
  const space = createFitSpace(MOST_WORDS * WORD);
  const wordSpace = createWordSpace(MOST_WORDS);
  const metrics = new Float32Array(SYMBOLS * MOST_WORDS);
  return {
    check(start, mirror) {
      const near = locate(baseband, start, mirror, space);
      const fit = improveFit(baseband, near, PHASING_BITS, UNBROKEN * WORD, 2, space);
      return { fit, evidence: evidenceOfPhasing(baseband, fit, space) };
    },
    read(first, words) {
      const fit = improveFit(baseband, first, PHASING_BITS, Math.min(words, SURE_WORDS) * WORD, 4, space);
      weighBits(baseband, fit, PHASING_BITS, words * WORD, space);
      smoothWords(space.branches, words, PHASING, wordSpace, metrics);
      const rescore: Rescore = (streams) => streams.map(streamLikelihood(space.branches, words));
      return { fit, reception: decodeSymbolMetrics(metrics.subarray(0, SYMBOLS * words), { rescore }) };
    },
  };
}
