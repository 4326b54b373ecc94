import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createBitPosteriors, forwardBackwardBits } from '../../src/audio/estimate/forward-backward-bits.ts';
import {
  createWordSpace,
  forwardBackwardWords,
  streamLikelihood,
} from '../../src/audio/trellis/forward-backward-words.ts';
import { createBranches, fillBranches, PHASES, walkPhase } from '../../src/audio/trellis/phase-trellis.ts';
import { slowBitPosteriors } from '../oracle/audio-phase.ts';

const part = fc.double({ min: -1.5, max: 1.5, noNaN: true });
const run = (bits: number) =>
  fc.array(fc.tuple(fc.tuple(part, part), fc.tuple(part, part)), { minLength: bits, maxLength: bits });

/** What the trellis is given for some correlations, tone of 0 first in `tones`. */
function branchesOf(
  tones: readonly (readonly [readonly [number, number], readonly [number, number]])[],
  noise: number,
) {
  const branches = createBranches(tones.length);
  const z = Float64Array.from(tones.flatMap(([zero, one]) => [...one, ...zero]));
  fillBranches(
    branches,
    z,
    { one: 1, zero: 0.8, noise: new Float64Array(tones.length).fill(noise) },
    tones.length,
  );
  return branches;
}

const oneBit = Array.from({ length: PHASES }, (_, s) => {
  const from = new Float64Array(PHASES);
  from[s] = 1;
  const to = new Float64Array(PHASES);
  walkPhase(from, 0, to, 0, 1);
  return [...to];
});

describe('phase trellis', () => {
  it('gives each bit the probability that weighing every run of bits gives', () => {
    fc.assert(
      fc.property(run(6), fc.double({ min: 0.3, max: 3, noNaN: true }), (tones, noise) => {
        const posteriors = createBitPosteriors(6);
        forwardBackwardBits(branchesOf(tones, noise), 6, '', posteriors);
        const slow = slowBitPosteriors(tones, [0.8, 1], noise, PHASES, oneBit);
        for (let k = 0; k < 6; k++) expect(posteriors.one[k]).toBeCloseTo(slow[k] as number, 6);
      }),
      { numRuns: 25 },
    );
  });

  it('gives each word the likelihood that the same word has as a whole stream', () => {
    fc.assert(
      fc.property(run(10), fc.double({ min: 0.3, max: 3, noNaN: true }), (tones, noise) => {
        const branches = branchesOf(tones, noise);
        const metrics = new Float32Array(128);
        forwardBackwardWords(branches, 1, [], createWordSpace(1), metrics);
        const likelihood = streamLikelihood(branches, 1);
        for (let symbol = 0; symbol < 128; symbol++) {
          // Reception is lost at first in 15 of 100 bursts: then the bits are free.
          expect(likelihood([symbol])).toBeCloseTo(
            Math.log(0.85 * Math.exp(metrics[symbol] as number) + 0.15),
            3,
          );
        }
      }),
      { numRuns: 25 },
    );
  });

  it('takes a mean over all words of ten bits for its zero', () => {
    // Sound that says nothing: all words alike.
    const branches = branchesOf(
      new Array(30).fill([
        [0, 0],
        [0, 0],
      ]),
      1e9,
    );
    const metrics = new Float32Array(3 * 128);
    forwardBackwardWords(branches, 3, [], createWordSpace(3), metrics);
    for (const metric of metrics) expect(metric).toBeCloseTo(0, 6);
    expect(streamLikelihood(branches, 3)([5, 6, 7])).toBeCloseTo(0, 6);
  });
});
