import {
  type Branches,
  normalise,
  PHASES,
  phaseCosine,
  phaseSine,
  step,
  stepBack,
  walkPhase,
} from '../trellis/phase-trellis.ts';

/** What the whole run of sound says of each bit and of the phase, when every word of bits is possible. */
export interface BitPosteriors {
  /** Probability that bit k is 1. */
  readonly one: Float64Array;
  /** Mean of e^(-j phase) over the cases in which bit k is 1 (re, im) and in which it is 0 (re, im): four numbers a bit. */
  readonly turn: Float64Array;
  /** Mean of e^(3j phase), free of the bits, since each bit turns the phase by a third: re, im. */
  readonly carrier: Float64Array;
}

export function createBitPosteriors(bits: number): BitPosteriors & { readonly forward: Float64Array } {
  return {
    one: new Float64Array(bits),
    turn: new Float64Array(4 * bits),
    carrier: new Float64Array(2 * bits),
    forward: new Float64Array((bits + 1) * PHASES),
  };
}

/**
 * Forward and backward pass over single bits (Bahl and others, 1974) with the phase as hidden state: neither carrier
 * phase nor bits need to be known.
 *
 * @param known - `'0'` or `'1'` for each bit known beforehand, from the first on; any other character, or none, for a free bit
 */
export function forwardBackwardBits(
  branches: Branches,
  bits: number,
  known: string,
  into: BitPosteriors & { readonly forward: Float64Array },
): void {
  const { likelihood } = branches;
  const { forward } = into;
  const moved = new Float64Array(PHASES);
  const ahead = new Float64Array(PHASES);
  const backward = new Float64Array(PHASES);
  forward.fill(1 / PHASES, 0, PHASES);
  for (let k = 0; k < bits; k++) {
    moved.fill(0);
    const given = known[k];
    if (given !== '0') step(forward, k * PHASES, likelihood, (2 * k + 1) * PHASES, 1, moved, 0);
    if (given !== '1') step(forward, k * PHASES, likelihood, 2 * k * PHASES, 0, moved, 0);
    walkPhase(moved, 0, forward, (k + 1) * PHASES, 1);
    normalise(forward, (k + 1) * PHASES);
  }
  backward.fill(1);
  for (let k = bits - 1; k >= 0; k--) {
    walkPhase(backward, 0, ahead, 0, 1);
    backward.fill(0);
    const given = known[k];
    let total = 0;
    let carrierRe = 0;
    let carrierIm = 0;
    let chanceOfOne = 0;
    for (let bit = 1; bit >= 0; bit--) {
      let turnRe = 0;
      let turnIm = 0;
      if (given !== (bit === 1 ? '0' : '1')) {
        moved.fill(0);
        stepBack(ahead, 0, likelihood, (2 * k + bit) * PHASES, bit, moved, 0);
        for (let s = 0; s < PHASES; s++) {
          const p = (forward[k * PHASES + s] as number) * (moved[s] as number);
          total += p;
          if (bit === 1) chanceOfOne += p;
          turnRe += p * phaseCosine(s);
          turnIm -= p * phaseSine(s);
          carrierRe += p * phaseCosine((3 * s) % PHASES);
          carrierIm += p * phaseSine((3 * s) % PHASES);
          backward[s] = (backward[s] as number) + (moved[s] as number);
        }
      }
      into.turn[4 * k + (bit === 1 ? 0 : 2)] = turnRe;
      into.turn[4 * k + (bit === 1 ? 1 : 3)] = turnIm;
    }
    into.one[k] = chanceOfOne / total;
    for (let i = 0; i < 4; i++) into.turn[4 * k + i] = (into.turn[4 * k + i] as number) / total;
    into.carrier[2 * k] = carrierRe / total;
    into.carrier[2 * k + 1] = carrierIm / total;
    normalise(backward, 0);
  }
}
