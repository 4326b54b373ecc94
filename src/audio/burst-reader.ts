import { decodeSymbolMetrics } from '../burst/index.ts';
import type { Reception } from '../burst/index.ts';
import type { Result } from '../result/index.ts';
import type { Baseband } from './baseband.ts';
import { evidenceOfPhasing } from './evidence.ts';
import { createFitSpace, type Fit, improveFit, setNoise } from './fit.ts';
import { fillBranches } from './phase-trellis.ts';
import { PHASING, PHASING_BITS, UNBROKEN } from './phasing.ts';
import { createWordSpace, likelihoodOfStream, smoothWords } from './smooth-words.ts';
import { locate } from './sync.ts';

const WORD = 10;

/** Words read of each burst: the longest call with expansion has fewer. */
export const WORDS_READ = 106;

/** Words of the shortest call (a distress alert, M.493-15): the part that is sure to be there, used to learn level and clock. */
const SURE_WORDS = 52;

export interface BurstReader {
  check(start: number, mirror: boolean): { readonly fit: Fit; readonly evidence: number };
  read(fit: Fit): { readonly fit: Fit; readonly reception: Result<Reception> };
  /** ln likelihoods of the last burst read. */
  readonly metrics: Float32Array;
}

export function createBurstReader(baseband: Baseband): BurstReader {
  const space = createFitSpace(WORDS_READ * WORD);
  const wordSpace = createWordSpace(WORDS_READ);
  const metrics = new Float32Array(128 * WORDS_READ);
  return {
    metrics,
    check(start, mirror) {
      const fit = improveFit(
        baseband,
        locate(baseband, start, mirror, space),
        PHASING_BITS,
        UNBROKEN * WORD,
        2,
        space,
      );
      return { fit, evidence: evidenceOfPhasing(baseband, fit, space) };
    },
    read(first) {
      const fit = improveFit(baseband, first, PHASING_BITS, SURE_WORDS * WORD, 3, space);
      const bits = WORDS_READ * WORD;
      baseband.correlate(fit, bits, space.z);
      setNoise(fit, space, bits, false);
      fillBranches(space.branches, space.z, { one: fit.one, zero: fit.zero, noise: space.noise }, 0, bits);
      smoothWords(space.branches, WORDS_READ, PHASING, wordSpace, metrics);
      const free = likelihoodOfStream(space.branches, WORDS_READ, []);
      const rescore = (candidates: readonly (readonly number[])[]): number[] =>
        candidates.map((symbols) => likelihoodOfStream(space.branches, WORDS_READ, symbols) - free);
      return { fit, reception: decodeSymbolMetrics(metrics, { rescore }) };
    },
  };
}
