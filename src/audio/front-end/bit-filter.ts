import { BAUD, SHIFT_HZ } from '../tone.ts';
import { BASEBAND_RATE } from './front-end.ts';
import { kaiser, sinc } from './kaiser.ts';

/** Baseband samples to a bit. */
export const PER_BIT: number = BASEBAND_RATE / BAUD;

/** Baseband samples that a bit filter reads, beginning {@link BEFORE} samples before the one at or before its instant. */
export const TAPS = 12;
export const BEFORE = 3;

/** Steps of timing between two baseband samples. */
export const STEPS = 64;

const HALF_INTERPOLATOR = 4;
const KAISER_BETA = 5;

/**
 * The matched filter of one bit at any instant: correlation with 1300 Hz over one bit, from baseband samples.
 *
 * Taps of step p, as re, im pairs, stand at p * 2 * TAPS. Correlation with 2100 Hz takes the conjugate taps. A tone
 * of amplitude 1 gives 1.
 */
let made: Float64Array | undefined;
export function bitFilter(): Float64Array {
  made ??= makeBitFilter();
  return made;
}

function makeBitFilter(): Float64Array {
  const bank = new Float64Array(STEPS * TAPS * 2);
  const fine = 16;
  for (let step = 0; step < STEPS; step++) {
    for (let tap = 0; tap < TAPS; tap++) {
      let re = 0;
      let im = 0;
      for (let n = 0; n < fine * PER_BIT; n++) {
        const u = (n + 0.5) / fine;
        const v = u + step / STEPS - (tap - BEFORE);
        const weight = (sinc(v) * kaiser(v / HALF_INTERPOLATOR, KAISER_BETA)) / (fine * PER_BIT);
        const angle = (2 * Math.PI * SHIFT_HZ * u) / BASEBAND_RATE;
        re += weight * Math.cos(angle);
        im += weight * Math.sin(angle);
      }
      bank[(step * TAPS + tap) * 2] = re;
      bank[(step * TAPS + tap) * 2 + 1] = im;
    }
  }
  return bank;
}
