/**
 * Steps of sub-carrier phase in one turn. A bit moves the phase by exactly a third of a turn (the shift of 800 Hz at 1200
 * baud), so any multiple of three keeps the trellis closed.
 */
export const PHASES = 18;
const THIRD: number = PHASES / 3;
const HALF: number = PHASES / 2;

/** How sure the sound can ever be about one bit: exponents are held to this, whatever the level. */
const GREATEST_EXPONENT = 60;

/** No phase and bit is ever less likely than the best one by more than this, so that ten bits stay clear of underflow. */
const LEAST = 1e-26;

/** Chance, per bit, that the phase has wandered one step to either side: 7e-4 rad² a bit, kept for every number of steps. */
const RANDOM_WALK = 0.005 * (PHASES / 24) ** 2;

/** Chance, per bit, that the phase is simply lost. */
const LOST = 1e-7;

/** The sound of a run of bits, as the trellis needs it. */
export interface Branches {
  /** Likelihood of phase s at the start of bit k and of that bit: index (2k + bit) * PHASES + s, scaled by exp(-scale[k]). */
  readonly likelihood: Float64Array;
  /** Natural logarithm taken out of each bit's likelihoods. */
  readonly scale: Float64Array;
}

/** Correlations of each bit with both tones, four numbers a bit: re, im with 1300 Hz (1), re, im with 2100 Hz (0). */
export type Correlations = Float64Array;

/** What is known of the signal besides its bits: amplitude of each tone, and noise power of each bit. */
export interface SignalModel {
  readonly one: number;
  readonly zero: number;
  /** Variance of a correlation by noise, one for each bit. */
  readonly noise: Float64Array;
}

export function createBranches(bits: number): Branches {
  return { likelihood: new Float64Array(bits * 2 * PHASES), scale: new Float64Array(bits) };
}

const COS: Float64Array = /* @__PURE__ */ Float64Array.from({ length: PHASES }, (_, s) =>
  Math.cos((2 * Math.PI * s) / PHASES),
);
const SIN: Float64Array = /* @__PURE__ */ Float64Array.from({ length: PHASES }, (_, s) =>
  Math.sin((2 * Math.PI * s) / PHASES),
);

/**
 * Fills in, for the first `bits` bits, how likely each phase and bit makes the correlations, against no signal at all:
 * exp(2 A Re(z e^{-j phase}) / N - A² / N), the exact likelihood of a tone of known phase in white noise.
 */
export function fillBranches(branches: Branches, z: Correlations, model: SignalModel, bits: number): void {
  const { likelihood, scale } = branches;
  for (let k = 0; k < bits; k++) {
    const noise = model.noise[k] as number;
    let top = Number.NEGATIVE_INFINITY;
    for (let bit = 0; bit < 2; bit++) {
      const at = 4 * k + (bit === 1 ? 0 : 2);
      const size = Math.sqrt((z[at] as number) ** 2 + (z[at + 1] as number) ** 2);
      const amplitude = bit === 1 ? model.one : model.zero;
      const gain = Math.min((2 * amplitude) / noise, GREATEST_EXPONENT / (size + 1e-300));
      top = Math.max(top, gain * size - (amplitude * amplitude) / noise);
    }
    scale[k] = top;
    for (let bit = 0; bit < 2; bit++) {
      const at = 4 * k + (bit === 1 ? 0 : 2);
      const re = z[at] as number;
      const im = z[at + 1] as number;
      const amplitude = bit === 1 ? model.one : model.zero;
      const gain = Math.min(
        (2 * amplitude) / noise,
        GREATEST_EXPONENT / (Math.sqrt(re * re + im * im) + 1e-300),
      );
      const level = Math.exp(-(amplitude * amplitude) / noise - top);
      const row = (2 * k + bit) * PHASES;
      for (let s = 0; s < HALF; s++) {
        const e = Math.exp(gain * (re * (COS[s] as number) + im * (SIN[s] as number)));
        likelihood[row + s] = Math.max(level * e, LEAST);
        likelihood[row + s + HALF] = Math.max(level / e, LEAST);
      }
    }
  }
}

/** Adds to `to` what `from` becomes after a bit whose likelihoods stand at `row`: B moves the phase a third on, Y a third back. */
export function step(
  from: Float64Array,
  f: number,
  likelihood: Float64Array,
  row: number,
  bit: number,
  to: Float64Array,
  t: number,
): void {
  const on = bit === 1 ? PHASES - THIRD : THIRD;
  const wrap = PHASES - on;
  for (let s = 0; s < wrap; s++)
    to[t + s + on] = (to[t + s + on] as number) + (from[f + s] as number) * (likelihood[row + s] as number);
  for (let s = wrap; s < PHASES; s++)
    to[t + s - wrap] =
      (to[t + s - wrap] as number) + (from[f + s] as number) * (likelihood[row + s] as number);
}

/** Adds to `to` the same seen backwards: what follows the bit, carried to its start. */
export function stepBack(
  from: Float64Array,
  f: number,
  likelihood: Float64Array,
  row: number,
  bit: number,
  to: Float64Array,
  t: number,
): void {
  const on = bit === 1 ? PHASES - THIRD : THIRD;
  const wrap = PHASES - on;
  for (let s = 0; s < wrap; s++)
    to[t + s] = (to[t + s] as number) + (from[f + s + on] as number) * (likelihood[row + s] as number);
  for (let s = wrap; s < PHASES; s++)
    to[t + s] = (to[t + s] as number) + (from[f + s - wrap] as number) * (likelihood[row + s] as number);
}

/** The random walk of the phase over `bits` bit times: `from` into `to`, which must be two arrays. */
export function walkPhase(from: Float64Array, f: number, to: Float64Array, t: number, bits: number): void {
  const side = RANDOM_WALK * bits;
  const stay = 1 - 2 * side;
  let sum = 0;
  for (let s = 0; s < PHASES; s++) sum += from[f + s] as number;
  const lost = (sum * LOST * bits) / PHASES + 1e-300;
  for (let s = 0; s < PHASES; s++) {
    const before = from[f + (s === 0 ? PHASES - 1 : s - 1)] as number;
    const after = from[f + (s === PHASES - 1 ? 0 : s + 1)] as number;
    to[t + s] = stay * (from[f + s] as number) + side * (before + after) + lost;
  }
}

/** Scales PHASES values to a sum of 1 and returns the natural logarithm of what they summed to. */
export function normalise(values: Float64Array, at: number): number {
  let sum = 0;
  for (let s = 0; s < PHASES; s++) sum += values[at + s] as number;
  for (let s = 0; s < PHASES; s++) values[at + s] = (values[at + s] as number) / sum;
  return Math.log(sum);
}

/** Cosine and sine of each phase step. */
export function phaseCosine(s: number): number {
  return COS[s] as number;
}
export function phaseSine(s: number): number {
  return SIN[s] as number;
}
