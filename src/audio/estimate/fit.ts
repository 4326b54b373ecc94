import type { Baseband } from '../front-end/baseband.ts';
import { fillBranches } from '../trellis/phase-trellis.ts';
import type { Fit, FitSpace } from './fit-space.ts';
import { forwardBackwardBits } from './forward-backward-bits.ts';
import { KEPT, levelsOf, residualsOf } from './levels.ts';
import { offsetError, phaseError, timingError } from './timing.ts';

/** Energy per bit over noise, at most, that bits are weighed by: above 13 dB the model's own faults matter more than noise. */
const GREATEST_RATIO = 20;

/** How many measurements of noise the burst's own noise is worth beside the six of a bit and its two neighbours. */
const PRIOR_WEIGHT = 12;

/** Baseband samples, radians and hertz by which a fit still changes when another round would not change a reading. */
const SETTLED = 0.08;

/** Improves a fit by expectation and maximisation over `bits` bits, the first of which are `known`. */
export function improveFit(
  baseband: Baseband,
  first: Fit,
  known: string,
  bits: number,
  rounds: number,
  space: FitSpace,
): Fit {
  let fit = first;
  for (let round = 0; round < rounds; round++) {
    const { z, posteriors } = space;
    baseband.correlate(fit, bits, z);
    setNoise(fit, space, bits, round > 0);
    fillBranches(space.branches, z, { one: fit.one, zero: fit.zero, noise: space.noise }, bits);
    forwardBackwardBits(space.branches, bits, known, posteriors);
    const timing = timingError(baseband, fit, bits, space);
    const levels = levelsOf(z, bits, posteriors, space.residual);
    const phase = phaseError(z, posteriors.turn, bits, fit);
    const offset = offsetError(posteriors.carrier, bits, Math.min(round === 0 ? 40 : 120, bits / 2));
    fit = {
      ...fit,
      ...levels,
      start: fit.start + timing.start,
      perBit: fit.perBit + timing.perBit,
      phase: fit.phase + phase,
      offset: fit.offset + offset,
    };
    const late = Math.abs(timing.start) + Math.abs(timing.perBit) * bits;
    if (round > 0 && late < SETTLED && Math.abs(phase) < SETTLED && Math.abs(offset) < SETTLED) break;
  }
  return fit;
}

/** Fills in how likely each phase makes each bit's sound, for a fit that is final: each bit with the noise around it. */
export function weighBits(baseband: Baseband, fit: Fit, known: string, bits: number, space: FitSpace): void {
  const { branches, z, posteriors } = space;
  const model = { one: fit.one, zero: fit.zero, noise: space.noise };
  baseband.correlate(fit, bits, z);
  setNoise(fit, space, bits, false);
  fillBranches(branches, z, model, bits);
  forwardBackwardBits(branches, bits, known, posteriors);
  residualsOf(z, fit, bits, posteriors, space.residual);
  setNoise(fit, space, bits, true);
  fillBranches(branches, z, model, bits);
}

/** Noise of each bit: the burst's, drawn towards what the bit and its neighbours showed, so that a click counts for little. */
export function setNoise(fit: Fit, space: FitSpace, bits: number, local: boolean): void {
  const floor = Math.min(fit.one, fit.zero) ** 2 / GREATEST_RATIO;
  const { noise, residual } = space;
  for (let k = 0; k < bits; k++) {
    let sum = 0;
    let count = 0;
    if (local) {
      for (let i = Math.max(0, k - 1); i <= Math.min(bits - 1, k + 1); i++) {
        sum += (residual[i] as number) / KEPT;
        count += 2;
      }
    }
    noise[k] = Math.max((PRIOR_WEIGHT * fit.noise + sum) / (PRIOR_WEIGHT + count), floor);
  }
}
