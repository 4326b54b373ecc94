import { setNoise } from '../estimate/fit.ts';
import type { Fit, FitSpace } from '../estimate/fit-space.ts';
import type { Baseband } from '../front-end/baseband.ts';
import { fillBranches, normalise, PHASES, step, walkPhase } from '../trellis/phase-trellis.ts';

const WORD = 10;

/** One spoilt word may speak against the phasing by so much and no more. */
const LEAST_PER_WORD = -3;

/**
 * How much better the phasing explains the sound than any other bits would, as a natural logarithm.
 *
 * It does not depend on level or noise: 32 is one chance in 10^14.
 *
 * @param known - bits of phasing from where the fit begins, blanks where any may stand
 *
 * deviation: D-audio-3 (the standard's rule of three right characters is not asked for).
 */
export function evidenceOfPhasing(baseband: Baseband, fit: Fit, space: FitSpace, known: string): number {
  const bits = known.length;
  baseband.correlate(fit, bits, space.z);
  setNoise(fit, space, bits, false);
  fillBranches(space.branches, space.z, { one: fit.one, zero: fit.zero, noise: space.noise }, bits);
  const asPhasing = forwardByWord(space, bits, known);
  const asAnything = forwardByWord(space, bits, '');
  let evidence = 0;
  for (let word = 0; word < asPhasing.length; word++) {
    evidence += Math.max(LEAST_PER_WORD, (asPhasing[word] as number) - (asAnything[word] as number));
  }
  return evidence;
}

/** ln of how likely each word's sound is after the sound before it. */
function forwardByWord(space: FitSpace, bits: number, known: string): number[] {
  const { likelihood } = space.branches;
  const now = new Float64Array(PHASES).fill(1 / PHASES);
  const next = new Float64Array(PHASES);
  const found: number[] = [];
  for (let k = 0; k < bits; k++) {
    next.fill(0);
    const given = known[k];
    const free = given !== '0' && given !== '1';
    if (given !== '1') step(now, 0, likelihood, 2 * k * PHASES, 0, next, 0);
    if (given !== '0') step(now, 0, likelihood, (2 * k + 1) * PHASES, 1, next, 0);
    walkPhase(next, 0, now, 0, 1);
    const word = Math.floor(k / WORD);
    found[word] = (found[word] ?? 0) + normalise(now, 0) - (free ? Math.LN2 : 0);
  }
  return found;
}
