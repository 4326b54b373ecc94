import type { Baseband } from '../front-end/baseband.ts';
import { PER_BIT } from '../front-end/bit-filter.ts';
import { BAUD } from '../tone.ts';
import type { Correlations } from '../trellis/phase-trellis.ts';
import type { Fit, FitSpace } from './fit-space.ts';
import { type Levels, real } from './levels.ts';

/** Baseband samples by which the bits are also read too early and too late. */
const EARLY = 0.5;

/** Clocks are expected within 100 parts per million of each other (30 by the standards, the rest for sound cards). */
const CLOCK_VARIANCE: number = /* @__PURE__ */ (PER_BIT * 100e-6) ** 2;

/** Line through the timing errors of the bits, each weighted by its information. */
export function timingError(
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
      // Taken without turning the phase back: the phase must fit at every change of tone, and that is most of the timing information.
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
export function phaseError(z: Correlations, turn: Float64Array, bits: number, { one, zero }: Levels): number {
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
export function offsetError(carrier: Float64Array, bits: number, lag: number): number {
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
  return (Math.atan2(im, re) * BAUD) / (3 * 2 * Math.PI * lag);
}

function clamp(value: number, most: number): number {
  return Math.max(-most, Math.min(most, value));
}
