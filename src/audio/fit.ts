import type { Baseband, Place } from './baseband.ts';
import { PER_BIT } from './bit-filter.ts';
import { type Branches, type Correlations, createBranches, fillBranches } from './phase-trellis.ts';
import { createBitPosteriors, smoothBits } from './smooth-bits.ts';

/** What a burst sounds like: when it is, how its tones lie, how strong they are and how noisy. */
export interface Fit extends Place {
  /** Amplitude of the 1300 Hz tone (1) and of the 2100 Hz tone (0). */
  readonly one: number;
  readonly zero: number;
  /** Variance that noise gives a correlation. */
  readonly noise: number;
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

/** Energy per bit over noise, at most, that bits are weighed by: above 13 dB the model's own faults matter more than noise. */
const GREATEST_RATIO = 20;

/** Inverse of the tones' correlation matrix over one bit: |rho| = sin(2 pi / 3) / (2 pi / 3) = 0.4135. */
const RHO_RE: number = /* @__PURE__ */ Math.sin((4 * Math.PI) / 3) / ((4 * Math.PI) / 3);
const RHO_IM: number = /* @__PURE__ */ (1 - Math.cos((4 * Math.PI) / 3)) / ((4 * Math.PI) / 3);
const RHO_SQUARED: number = /* @__PURE__ */ RHO_RE * RHO_RE + RHO_IM * RHO_IM;

/**
 * Share of white noise that the front end lets through to the energy of a bit. What it takes away lies beyond the reach of
 * the tones and helps nobody: the noise that counts is what there was before.
 */
export const KEPT = 0.876;

const EARLY = 0.5;

/** Clocks are expected within 100 parts per million of each other (30 by the standards, the rest for sound cards). */
const CLOCK_VARIANCE: number = /* @__PURE__ */ (PER_BIT * 100e-6) ** 2;

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
    fillBranches(space.branches, z, { one: fit.one, zero: fit.zero, noise: space.noise }, 0, bits);
    smoothBits(space.branches, bits, known, posteriors);
    const timing = timingError(baseband, fit, bits, space);
    const levels = levelsOf(z, bits, space);
    fit = {
      ...fit,
      ...levels,
      start: fit.start + timing.start,
      perBit: fit.perBit + timing.perBit,
      phase: fit.phase + phaseError(z, posteriors.turn, bits, fit),
      offset: fit.offset + offsetError(posteriors.carrier, bits, round === 0 ? 40 : 120),
    };
  }
  return fit;
}

/** Fills in how likely each phase makes each bit's sound, for a fit that is final: each bit with the noise around it. */
export function weighBits(baseband: Baseband, fit: Fit, known: string, bits: number, space: FitSpace): void {
  const { branches, z, posteriors } = space;
  const model = { one: fit.one, zero: fit.zero, noise: space.noise };
  baseband.correlate(fit, bits, z);
  setNoise(fit, space, bits, false);
  fillBranches(branches, z, model, 0, bits);
  smoothBits(branches, bits, known, posteriors);
  residualsOf(z, fit, bits, space);
  setNoise(fit, space, bits, true);
  fillBranches(branches, z, model, 0, bits);
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
const PRIOR_WEIGHT = 12;

/** Amplitude of both tones and the noise left, from the posteriors of one round. */
function levelsOf(
  z: Correlations,
  bits: number,
  space: FitSpace,
): { one: number; zero: number; noise: number } {
  const { posteriors } = space;
  let one = 0;
  let zero = 0;
  let ones = 0;
  for (let k = 0; k < bits; k++) {
    const at = 4 * k;
    one += real(posteriors.turn, z, at);
    zero += real(posteriors.turn, z, at + 2);
    ones += posteriors.one[k] as number;
  }
  one = Math.max(one / (ones + 1e-9), 1e-9);
  zero = Math.max(zero / (bits - ones + 1e-9), 1e-9);
  return { one, zero, noise: residualsOf(z, { one, zero }, bits, space) / (2 * bits * KEPT) + 1e-12 };
}

/** Energy of each bit that the model leaves unexplained; returns the sum. */
function residualsOf(
  z: Correlations,
  { one, zero }: Pick<Fit, 'one' | 'zero'>,
  bits: number,
  space: FitSpace,
): number {
  const { posteriors, residual } = space;
  let left = 0;
  for (let k = 0; k < bits; k++) {
    const at = 4 * k;
    const p = posteriors.one[k] as number;
    const explained = 2 * (one * real(posteriors.turn, z, at) + zero * real(posteriors.turn, z, at + 2));
    residual[k] = Math.max(energyOf(z, at) - explained + one * one * p + zero * zero * (1 - p), 0);
    left += residual[k] as number;
  }
  return left;
}

/** Re of the product of two complex numbers. */
function real(a: Float64Array, b: Float64Array, at: number): number {
  return (a[at] as number) * (b[at] as number) - (a[at + 1] as number) * (b[at + 1] as number);
}

/** Energy of one bit's sound within the two tones, noise counting twice its variance. */
export function energyOf(z: Correlations, at: number): number {
  const a = z[at] as number;
  const b = z[at + 1] as number;
  const c = z[at + 2] as number;
  const d = z[at + 3] as number;
  // rho = <tone 1, tone 0>; z1* rho z0 needs the real part only.
  const cross = RHO_RE * (a * c + b * d) - RHO_IM * (a * d - b * c);
  return (a * a + b * b + c * c + d * d - 2 * cross) / (1 - RHO_SQUARED);
}

/** Line through the timing errors of the bits, each weighed by what it tells. */
function timingError(
  baseband: Baseband,
  fit: Fit,
  bits: number,
  space: FitSpace,
): { start: number; perBit: number } {
  const { early, late, z, posteriors } = space;
  baseband.correlate({ ...fit, start: fit.start - EARLY }, bits, early);
  baseband.correlate({ ...fit, start: fit.start + EARLY }, bits, late);
  let s0 = 0;
  let s1 = 0;
  let curve = 0;
  const middle = (bits - 1) / 2;
  for (let k = 0; k < bits; k++) {
    for (let bit = 0; bit < 2; bit++) {
      const at = 4 * k + (bit === 1 ? 0 : 2);
      const amplitude = bit === 1 ? fit.one : fit.zero;
      // Taken without turning the phase back: that the phase must fit at every change of tone is most of what tells the time.
      const before = real(posteriors.turn, early, at);
      const after = real(posteriors.turn, late, at);
      const here = real(posteriors.turn, z, at);
      s0 += amplitude * (after - before);
      s1 += amplitude * (after - before) * (k - middle);
      curve += amplitude * (2 * here - after - before);
    }
  }
  if (!(curve > 0)) return { start: 0, perBit: 0 };
  const mean = clamp((s0 / curve) * (EARLY / 2), 0.5);
  // Both as parts of ln likelihood: what the sound says of the clock, and what is known of clocks beforehand.
  const pull = s1 / fit.noise / EARLY + (PER_BIT - fit.perBit) / CLOCK_VARIANCE;
  const stiffness = (curve * 2 * bits * bits) / (12 * fit.noise * EARLY * EARLY) + 1 / CLOCK_VARIANCE;
  const slope = pull / stiffness;
  return { start: mean - slope * middle, perBit: slope };
}

/** Radians between the phase and the trellis's steps, on the mean of all bits. */
function phaseError(z: Correlations, turn: Float64Array, bits: number, { one, zero }: Fit): number {
  let re = 0;
  let im = 0;
  for (let k = 0; k < bits; k++) {
    for (let bit = 0; bit < 2; bit++) {
      const at = 4 * k + (bit === 1 ? 0 : 2);
      const amplitude = bit === 1 ? one : zero;
      re += amplitude * real(turn, z, at);
      im +=
        amplitude *
        ((turn[at] as number) * (z[at + 1] as number) + (turn[at + 1] as number) * (z[at] as number));
    }
  }
  return Math.atan2(im, re);
}

/** Hertz left in the phase, from how far three times the phase turns over `lag` bits. */
function offsetError(carrier: Float64Array, bits: number, lag: number): number {
  let re = 0;
  let im = 0;
  for (let k = 0; k + lag < bits; k++) {
    const a = carrier[2 * k] as number;
    const b = carrier[2 * k + 1] as number;
    const c = carrier[2 * (k + lag)] as number;
    const d = carrier[2 * (k + lag) + 1] as number;
    re += c * a + d * b;
    im += d * a - c * b;
  }
  return (Math.atan2(im, re) * 1200) / (3 * 2 * Math.PI * lag);
}

function clamp(value: number, most: number): number {
  return Math.max(-most, Math.min(most, value));
}
