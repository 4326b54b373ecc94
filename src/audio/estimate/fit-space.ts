import type { Place } from '../front-end/baseband.ts';
import { type Branches, type Correlations, createBranches } from '../trellis/phase-trellis.ts';
import { createBitPosteriors } from './forward-backward-bits.ts';
import type { Levels } from './levels.ts';

/** What a burst sounds like: when it is, how its tones lie, how strong they are and how noisy. */
export interface Fit extends Place, Levels {}

/** The same, learnt from the phasing but for so many of its first words, which were lost. */
export interface FirstFit extends Fit {
  readonly skipped: number;
}

/** Room for one burst's worth of fitting; made once, used for every burst. */
export interface FitSpace {
  readonly branches: Branches;
  readonly z: Correlations;
  readonly early: Correlations;
  readonly late: Correlations;
  readonly noise: Float64Array;
  readonly residual: Float64Array;
  readonly posteriors: ReturnType<typeof createBitPosteriors>;
}

export function createFitSpace(bits: number): FitSpace {
  return {
    branches: createBranches(bits),
    z: new Float64Array(4 * bits),
    early: new Float64Array(4 * bits),
    late: new Float64Array(4 * bits),
    noise: new Float64Array(bits),
    residual: new Float64Array(bits),
    posteriors: createBitPosteriors(bits),
  };
}
