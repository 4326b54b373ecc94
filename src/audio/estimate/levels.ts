import type { Correlations } from '../trellis/phase-trellis.ts';
import type { BitPosteriors } from './forward-backward-bits.ts';

/** Inverse of the tones' correlation matrix over one bit: |rho| = sin(2 pi / 3) / (2 pi / 3) = 0.4135. */
const RHO_RE: number = /* @__PURE__ */ Math.sin((4 * Math.PI) / 3) / ((4 * Math.PI) / 3);
const RHO_IM: number = /* @__PURE__ */ (1 - Math.cos((4 * Math.PI) / 3)) / ((4 * Math.PI) / 3);
const RHO_SQUARED: number = /* @__PURE__ */ RHO_RE * RHO_RE + RHO_IM * RHO_IM;

/**
 * Share of white noise that the front end lets through to the energy of a bit. What it takes away lies beyond the reach of
 * the tones and helps nobody: the noise that counts is what there was before.
 */
export const KEPT = 0.876;

/** Amplitude of the 1300 Hz tone (1) and of the 2100 Hz tone (0), and the variance that noise gives a correlation. */
export interface Levels {
  readonly one: number;
  readonly zero: number;
  readonly noise: number;
}

/** Amplitude of both tones and the noise left, from the posteriors of one round. */
export function levelsOf(
  z: Correlations,
  bits: number,
  posteriors: BitPosteriors,
  residual: Float64Array,
): Levels {
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
  return {
    one,
    zero,
    noise: residualsOf(z, { one, zero }, bits, posteriors, residual) / (2 * bits * KEPT) + 1e-12,
  };
}

/** Energy of each bit that the model leaves unexplained; returns the sum. */
export function residualsOf(
  z: Correlations,
  { one, zero }: Pick<Levels, 'one' | 'zero'>,
  bits: number,
  posteriors: BitPosteriors,
  residual: Float64Array,
): number {
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
export function real(a: Float64Array, b: Float64Array, at: number): number {
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
