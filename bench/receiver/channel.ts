import type { Random } from './random.ts';

/** What happens to a burst between encoder and receiver. */
export interface Path {
  readonly sampleRate: number;
  /** Energy per bit over noise density in dB; the noise is white. Infinity for none. */
  readonly ebN0Db: number;
  /** Hertz added to both tones. */
  readonly offsetHz?: number;
  /** Parts per million by which the bits come too fast. */
  readonly clockPpm?: number;
  /** dB by which 2100 Hz is raised over 1300 Hz, the mean power kept. */
  readonly balanceDb?: number;
  /** Constant added to each sample, in amplitudes of the tones. */
  readonly dc?: number;
  /** All samples are multiplied by this. */
  readonly gain?: number;
  /** Seconds of noise before and behind. */
  readonly before: number;
  readonly behind: number;
}

/**
 * The sound of some bits at the end of a path, written without any part of the receiver: phase added up sample by sample.
 */
export function throughPath(bits: string, path: Path, random: Random): Float32Array {
  const { sampleRate, offsetHz = 0, clockPpm = 0, balanceDb = 0, dc = 0, gain = 1 } = path;
  const baud = 1200 * (1 + clockPpm * 1e-6);
  const low = 10 ** (-balanceDb / 40);
  const high = 1 / low;
  const level = Math.sqrt(2 / (low * low + high * high));
  const count = Math.ceil((path.before + path.behind + bits.length / baud) * sampleRate);
  const samples = new Float32Array(count);
  // Amplitude 1: energy of a bit is 1 / 2 / 1200, variance of the noise N0 * rate / 2.
  const sigma = Math.sqrt(((1 / 2400) * 10 ** (-path.ebN0Db / 10) * sampleRate) / 2);
  let phase = 2 * Math.PI * random.even();
  let last = 0;
  for (let n = 0; n < count; n++) {
    const time = n / sampleRate - path.before;
    let sound = dc + sigma * random.normal();
    if (time >= 0 && time * baud < bits.length) {
      // Phase is carried to the boundary between two bits and on from there.
      while (last < time) {
        const bit = Math.floor(last * baud + 1e-9);
        const until = Math.min(time, (bit + 1) / baud);
        phase += 2 * Math.PI * ((bits[bit] === '1' ? 1300 : 2100) + offsetHz) * (until - last);
        last = until;
      }
      const one = bits[Math.min(bits.length - 1, Math.floor(time * baud))] === '1';
      sound += level * (one ? low : high) * Math.sin(phase);
    }
    samples[n] = gain * sound;
  }
  return samples;
}
