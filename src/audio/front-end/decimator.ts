import { kaiser, sinc } from './kaiser.ts';

/** What the band-pass filter after it needs: nothing changed below 3500 Hz, nothing folded back below 3900 Hz. */
const LEAST_RATE = 11_000;
const EDGE_HZ = 5300;
const HALF_LENGTH_S = 4.05e-4;
const KAISER_BETA = 4.5;

/** Keeps every so-manieth sample of a fast stream, high frequencies taken out first. */
export interface Decimator {
  /** Samples of input to one of output; 1 when there is nothing to thin. */
  readonly factor: number;
  /** Takes samples, and hands on those that are kept: sample m is for the instant of input sample m * factor. */
  push(
    samples: Float32Array,
    from: number,
    to: number,
    next: (kept: Float32Array, count: number) => void,
  ): void;
}

export function createDecimator(sampleRate: number): Decimator {
  const factor = Math.floor(sampleRate / LEAST_RATE) || 1;
  const half = factor === 1 ? 0 : Math.ceil(HALF_LENGTH_S * sampleRate);
  const kernel = lowPass(sampleRate, half);
  const room = 2 * half + 4096;
  const held = new Float32Array(room);
  const kept = new Float32Array(Math.ceil(room / factor));
  // held[0] is input sample `base`; before sample 0 all is silent.
  let base = -half;
  let filled = half;
  let due = 0;

  return {
    factor,
    push(samples, from, to, next): void {
      for (let at = from; at < to; ) {
        if (filled === room) {
          const used = due - half - base;
          held.copyWithin(0, used);
          base += used;
          filled -= used;
        }
        const count = Math.min(room - filled, to - at);
        held.set(samples.subarray(at, at + count), filled);
        filled += count;
        at += count;
        let made = 0;
        for (let middle = due - base; middle + half < filled; middle += factor) {
          let sum = (kernel[0] as number) * (held[middle] as number);
          for (let k = 1; k <= half; k++) {
            sum += (kernel[k] as number) * ((held[middle - k] as number) + (held[middle + k] as number));
          }
          kept[made++] = sum;
          due += factor;
        }
        next(kept, made);
      }
    },
  };
}

/** One side of a symmetrical low-pass filter, its middle first. */
function lowPass(sampleRate: number, half: number): Float32Array {
  const kernel = Float32Array.from({ length: half + 1 }, (_, k) => {
    const t = k / sampleRate;
    return half === 0
      ? 1
      : ((2 * EDGE_HZ) / sampleRate) * sinc(2 * EDGE_HZ * t) * kaiser(t / HALF_LENGTH_S, KAISER_BETA);
  });
  return kernel;
}
