import { CENTRE_HZ } from '../tone.ts';
import { createThinner } from './decimator.ts';
import { kaiser, sinc } from './kaiser.ts';

/** Complex samples per second that the receiver works on: four to a bit. */
export const BASEBAND_RATE = 4800;

/** Edges of the band kept around 1700 Hz: flat to 1200 Hz, nothing beyond 2200 Hz (the tones' own mirror begins there). */
const HALF_BAND_HZ = 1700;
const HALF_LENGTH_S = 1.5e-3;
const KAISER_BETA = 4.5;

/** Filter phases per second: between neighbours the signal moves less than -55 dB. */
const PHASES_PER_SECOND = 8e6;

/** Turns real samples of any rate into complex baseband around 1700 Hz. */
export interface FrontEnd {
  /** Takes samples and calls `emit` for every baseband sample that they complete. */
  push(samples: ArrayLike<number>, from: number, to: number): void;
}

/**
 * A front end: band-pass filter, mixer and sample-rate changer in one polyphase filter.
 *
 * Baseband sample m belongs to the instant m / 4800 s after the first input sample, without delay. It depends only on
 * the input around that instant, so the way the input is cut into chunks cannot matter.
 *
 * @param inputRate - samples per second of the input
 * @param emit - is given real and imaginary part of each baseband sample in turn
 */
export function createFrontEnd(inputRate: number, emit: (re: number, im: number) => void): FrontEnd {
  const thinner = createThinner(inputRate);
  const sampleRate = inputRate / thinner.factor;
  const half = HALF_LENGTH_S * sampleRate;
  const taps = 2 * Math.ceil(half);
  const phases = Math.ceil(PHASES_PER_SECOND / sampleRate);
  const kernel = filterBank(sampleRate, taps, phases);
  const turnRe = new Float64Array(48);
  const turnIm = new Float64Array(48);
  for (let m = 0; m < 48; m++) {
    // 1700 / 4800 = 17 / 48 of a cycle from one baseband sample to the next.
    turnRe[m] = Math.cos((-2 * Math.PI * ((17 * m) % 48)) / 48);
    turnIm[m] = Math.sin((-2 * Math.PI * ((17 * m) % 48)) / 48);
  }

  const room = taps + 4096;
  const held = new Float32Array(room);
  // held[0] is input sample `base`; the stream is taken as silent before sample 0.
  let base = -taps;
  let filled = taps;
  let m = 0;

  function make(): void {
    for (;;) {
      const at = (m * sampleRate) / BASEBAND_RATE;
      let first = Math.floor(at);
      let phase = Math.round((at - first) * phases);
      if (phase === phases) {
        first++;
        phase = 0;
      }
      const start = first - taps / 2 + 1 - base;
      if (start + taps > filled) return;
      let re = 0;
      let im = 0;
      let k = phase * taps * 2;
      for (let n = start; n < start + taps; n++) {
        const x = held[n] as number;
        re += x * (kernel[k] as number);
        im += x * (kernel[k + 1] as number);
        k += 2;
      }
      const cos = turnRe[m % 48] as number;
      const sin = turnIm[m % 48] as number;
      m++;
      emit(re * cos - im * sin, re * sin + im * cos);
    }
  }

  function take(samples: Float32Array, count: number): void {
    for (let next = 0; next < count; ) {
      if (filled === room) {
        // Everything older than one filter length has been used.
        held.copyWithin(0, room - taps - 1);
        base += room - taps - 1;
        filled = taps + 1;
      }
      const size = Math.min(room - filled, count - next);
      for (let n = 0; n < size; n++) held[filled + n] = samples[next + n] as number;
      filled += size;
      next += size;
      make();
    }
  }

  return {
    push(samples, from, to): void {
      thinner.push(samples, from, to, take);
    },
  };
}

/** For each phase, the complex taps for input samples first - taps/2 + 1 to first + taps/2. */
function filterBank(sampleRate: number, taps: number, phases: number): Float32Array {
  const bank = new Float32Array(phases * taps * 2);
  const re = new Float64Array(taps);
  const im = new Float64Array(taps);
  const window = new Float64Array(taps);
  for (let phase = 0; phase < phases; phase++) {
    let sumRe = 0;
    let sumIm = 0;
    let sumWindow = 0;
    for (let n = 0; n < taps; n++) {
      const t = (phase / phases - (n - taps / 2 + 1)) / sampleRate;
      window[n] = kaiser(t / HALF_LENGTH_S, KAISER_BETA);
      // Twice the real band-pass: the mirror at negative frequencies is thrown away, its half of the amplitude is not.
      const h = ((4 * HALF_BAND_HZ) / sampleRate) * sinc(2 * HALF_BAND_HZ * t) * (window[n] as number);
      re[n] = h * Math.cos(2 * Math.PI * CENTRE_HZ * t);
      im[n] = h * Math.sin(2 * Math.PI * CENTRE_HZ * t);
      sumRe += re[n] as number;
      sumIm += im[n] as number;
      sumWindow += window[n] as number;
    }
    for (let n = 0; n < taps; n++) {
      // A null at zero hertz, so that an offset of the sound card does not count as sound.
      bank[(phase * taps + n) * 2] = (re[n] as number) - (sumRe / sumWindow) * (window[n] as number);
      bank[(phase * taps + n) * 2 + 1] = (im[n] as number) - (sumIm / sumWindow) * (window[n] as number);
    }
  }
  return bank;
}
