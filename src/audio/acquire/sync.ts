import type { Fit, FitSpace } from '../estimate/fit-space.ts';
import { energyOf, KEPT, type Levels } from '../estimate/levels.ts';
import type { Baseband, Place } from '../front-end/baseband.ts';
import { PER_BIT } from '../front-end/bit-filter.ts';
import { BAUD } from '../tone.ts';
import { PHASING_BITS, UNBROKEN } from './phasing.ts';

const WORD = 10;

/** How far from where the searcher pointed the phasing may lie, and the steps tried, coarse at first, in baseband samples. */
const REACH = 4;
const COARSE_STEP = 2;
const STEP = 0.5;

/**
 * Start, tone offset, level and noise of a burst from its unbroken phasing, found by correlating all of it.
 *
 * Words are correlated each on its own, so that a tone offset hardly matters, then combined coherently by the turn from
 * word to word, which is the offset.
 *
 * @param near - baseband instants of the first word that is looked at, of one burst or of several by the same transmitter
 * @param skipped - words of phasing before that one
 * @param least - share of the energy that must be coherent after the coarse steps: 0.3 is all of it
 * @returns the fit of the first of them, the others being as far from it as they were; `null` when less is coherent
 */
export function locate(
  baseband: Baseband,
  near: readonly [number, ...number[]],
  mirror: boolean,
  space: FitSpace,
  skipped: number,
  least: number,
): Fit | null {
  const known = PHASING_BITS.slice(skipped * WORD, UNBROKEN * WORD);
  const bursts = near.map(() => new Float64Array((2 * known.length) / WORD));
  const inAll = { energy: 0 };
  const correlateAll = (place: Place): void => {
    inAll.energy = 0;
    near.forEach((start, n) => {
      baseband.correlate({ ...place, start: place.start + start - near[0] }, known.length, space.z);
      correlateWords(space.z, bursts[n] as Float64Array, known);
      for (let k = 0; k < known.length; k++) inAll.energy += energyOf(space.z, 4 * k);
    });
  };
  let best: Place = { start: near[0], perBit: PER_BIT, offset: 0, mirror, phase: 0 };
  let bestScore = -1;
  const tryAt = (start: number): void => {
    const place = { ...best, start, offset: 0 };
    correlateAll(place);
    const { score, offset } = combineCoherently(bursts);
    if (score > bestScore) {
      bestScore = score;
      best = { ...place, offset };
    }
  };
  for (let shift = -REACH; shift <= REACH; shift += COARSE_STEP) tryAt(near[0] + shift);
  const { start: middle } = best;
  if (!(bestScore >= least * inAll.energy)) return null;
  for (let shift = STEP; shift < COARSE_STEP; shift += STEP) {
    tryAt(middle - shift);
    tryAt(middle + shift);
  }
  correlateAll(best);
  const offset = best.offset + fineOffset(bursts);
  return { ...best, offset, ...levels(inAll.energy, bursts) };
}

/** Share of the energy of unbroken phasing that is coherent at the offset of a fit: 0.3 is all of it, noise has about 0.01. */
export function coherentShare(baseband: Baseband, fit: Fit, space: FitSpace): number {
  const known = PHASING_BITS.slice(0, UNBROKEN * WORD);
  const words = new Float64Array(2 * UNBROKEN);
  baseband.correlate(fit, known.length, space.z);
  correlateWords(space.z, words, known);
  let energy = 1e-20;
  for (let k = 0; k < known.length; k++) energy += energyOf(space.z, 4 * k);
  let coherent = 0;
  words.forEach((value, at) => {
    coherent += value * (value + 2 * (words[at - 2] ?? 0));
  });
  return coherent / energy;
}

/** Words looked at where the characters of a call should have begun, and how coherent, beside the phasing, four of them are at least when it goes on. */
const MORE_WORDS = 8;
const AS_COHERENT = 0.6;

/** Whether phasing goes on where the first characters should stand: no call begins so many words before the fit. */
export function goesOn(baseband: Baseband, fit: Fit, space: FitSpace, skipped: number): boolean {
  const known = PHASING_BITS.slice(0, MORE_WORDS * WORD);
  const words = new Float64Array(2 * MORE_WORDS);
  const start = fit.start + (UNBROKEN - skipped) * WORD * fit.perBit;
  baseband.correlate({ ...fit, start, phase: 0 }, known.length, space.z);
  correlateWords(space.z, words, known);
  const power = fit.one ** 2;
  const least = (AS_COHERENT * power) / (power + 2 * KEPT * fit.noise);
  for (let word = 0; word < MORE_WORDS; word += 2) {
    let energy = 0;
    for (let k = word * WORD; k < (word + 1) * WORD; k++) energy += energyOf(space.z, 4 * k);
    const coherent = WORD * ((words[2 * word] as number) ** 2 + (words[2 * word + 1] as number) ** 2);
    if (!(coherent > least * energy)) return false;
  }
  return true;
}

/** Correlation of each word of phasing with its sound, re and im, all against one common phase. */
function correlateWords(z: Float64Array, words: Float64Array, known: string): void {
  let thirds = 0;
  for (let word = 0; word < words.length / 2; word++) {
    let re = 0;
    let im = 0;
    for (let k = word * WORD; k < (word + 1) * WORD; k++) {
      const one = known[k] === '1';
      const at = 4 * k + (one ? 0 : 2);
      const cos = THIRD_COS[thirds] as number;
      const sin = THIRD_SIN[thirds] as number;
      re += (z[at] as number) * cos + (z[at + 1] as number) * sin;
      im += (z[at + 1] as number) * cos - (z[at] as number) * sin;
      thirds = (thirds + (one ? 2 : 1)) % 3;
    }
    words[2 * word] = re / WORD;
    words[2 * word + 1] = im / WORD;
  }
}

export const THIRD_COS: readonly number[] = [1, -0.5, -0.5];
export const THIRD_SIN: readonly number[] = [0, 0.8660254037844386, -0.8660254037844386];

/** Energy of the words taken together whatever the offset, and the offset in hertz (unambiguous to 60 Hz). */
function combineCoherently(bursts: readonly Float64Array[]): { score: number; offset: number } {
  let energy = 0;
  let re = 0;
  let im = 0;
  for (const words of bursts) {
    for (let word = 0; word < words.length / 2; word++) {
      const a = words[2 * word] as number;
      const b = words[2 * word + 1] as number;
      energy += a * a + b * b;
      if (word === 0) continue;
      const c = words[2 * word - 2] as number;
      const d = words[2 * word - 1] as number;
      re += a * c + b * d;
      im += b * c - a * d;
    }
  }
  return {
    score: energy + 2 * Math.hypot(re, im),
    offset: (Math.atan2(im, re) * BAUD) / (2 * Math.PI * WORD),
  };
}

/** Hertz still to be added, within 12 Hz: the top of the spectrum of the words, those of each burst added in phase. */
function fineOffset(bursts: readonly Float64Array[]): number {
  const step = 0.5;
  const power = (hertz: number): number => {
    let sum = 0;
    for (const words of bursts) {
      let re = 0;
      let im = 0;
      for (let word = 0; word < words.length / 2; word++) {
        const angle = (-2 * Math.PI * hertz * word * WORD) / BAUD;
        const a = words[2 * word] as number;
        const b = words[2 * word + 1] as number;
        re += a * Math.cos(angle) - b * Math.sin(angle);
        im += a * Math.sin(angle) + b * Math.cos(angle);
      }
      sum += re * re + im * im;
    }
    return sum;
  };
  let best = 0;
  let most = power(0);
  for (let hertz = -12; hertz <= 12; hertz += step) {
    const here = power(hertz);
    if (here > most) [best, most] = [hertz, here];
  }
  const before = power(best - step);
  const after = power(best + step);
  const bend = 2 * most - before - after;
  return bend > 0 ? best + (step * (after - before)) / (2 * bend) : best;
}

/** Amplitude and noise from what the words hold in all and what they hold in step. */
function levels(energy: number, bursts: readonly Float64Array[]): Levels {
  const count = bursts.reduce((sum, words) => sum + words.length / 2, 0);
  let inStep = 0;
  for (const words of bursts) for (const value of words) inStep += value ** 2 / count;
  const inAll = energy / (count * WORD);
  // inStep = A² + N / 10, inAll = A² + 2 N, less what the front end took.
  const noise = Math.max((inAll - inStep) / (2 * KEPT - 1 / WORD), inAll * 1e-6, 1e-12);
  const amplitude = Math.sqrt(Math.max(inStep - noise / WORD, noise / WORD));
  return { one: amplitude, zero: amplitude, noise };
}
