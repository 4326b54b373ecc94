import { CENTRE_HZ } from '../tone.ts';
import { createDecimator } from './decimator.ts';
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
  push(samples: Float32Array, from: number, to: number): void;
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
  const decimator = createDecimator(inputRate);
  const sampleRate = inputRate / decimator.factor;
  const half = HALF_LENGTH_S * sampleRate;
  const taps = 2 * Math.ceil(half);
  const phases = Math.ceil(PHASES_PER_SECOND / sampleRate);
  const rows = new Map<number, Float32Array>();
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
      let row = rows.get(phase);
      if (row === undefined) {
        row = filterRow(sampleRate, taps, phase / phases);
        rows.set(phase, row);
      }
      for (let n = 0; n < taps; n++) {
        const x = held[start + n] as number;
        re += x * (row[2 * n] as number);
        im += x * (row[2 * n + 1] as number);
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
      held.set(samples.subarray(next, next + size), filled);
      filled += size;
      next += size;
      make();
    }
  }

  return {
    push(samples, from, to): void {
      decimator.push(samples, from, to, take);
    },
  };
}

/** The complex taps for input samples first - taps/2 + 1 to first + taps/2, for an instant so much of a sample after the first. */
function filterRow(sampleRate: number, taps: number, late: number): Float32Array {
  const row = new Float32Array(2 * taps);
  const re = new Float64Array(taps);
  const im = new Float64Array(taps);
  const window = new Float64Array(taps);
  let sumRe = 0;
  let sumIm = 0;
  let sumWindow = 0;
  for (let n = 0; n < taps; n++) {
    const t = (late - (n - taps / 2 + 1)) / sampleRate;
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
    row[2 * n] = (re[n] as number) - (sumRe / sumWindow) * (window[n] as number);
    row[2 * n + 1] = (im[n] as number) - (sumIm / sumWindow) * (window[n] as number);
  }
  return row;
}
