import type { Issue } from '../../result/index.ts';
import { issue } from '../texts.ts';
import type { FrontEnd } from './front-end.ts';

/** Larger values are no sound, and would spoil everything near them. */
const LARGEST = 1e4;
/** A sample this near full scale counts as clipped, and this share of them in one second is worth a word. */
const FULL_SCALE = 0.999;
const CLIPPED_SHARE = 0.01;

const BLOCK = 4096;

/** Level of one second of the stream, whether a call or not. Plain data. */
export interface SoundLevel {
  readonly kind: 'sound-level';
  /** Where the second begins, in samples since the stream began. */
  readonly startSample: number;
  /** Mean level in dB, 0 for a sine of amplitude 1; `null` when every sample was 0. */
  readonly levelDb: number | null;
  /** Largest sample in dB, 0 for full scale; `null` when every sample was 0. */
  readonly peakDb: number | null;
  /** Share of samples at full scale, 0 to 1: above 0.01 the issue `audio-clipped` is told too. */
  readonly clippedShare: number;
}

/** Guard before the front end: removes what is not a sample, and reports faults in the rest. */
export interface SampleGuard {
  take(samples: ArrayLike<number>, frontEnd: FrontEnd): void;
  /** The stream is over: says so when there was nothing in it. */
  end(): void;
}

/** A guard that speaks up at most once a second for each kind of fault, by the stream's own clock. */
export function createSampleGuard(
  sampleRate: number,
  onIssue: (issue: Issue) => void,
  onLevel: (level: SoundLevel) => void,
): SampleGuard {
  const block = new Float32Array(BLOCK);
  const second = Math.ceil(sampleRate);
  let count = 0;
  let clipped = 0;
  let power = 0;
  let highest = 0;
  let unusable = false;
  let heard = false;

  function endOfSecond(): void {
    if (clipped > CLIPPED_SHARE * second) {
      const sample = count - second;
      const more = { at: ['sample', sample], clause: 'common practice' };
      onIssue(issue('audio-clipped', { sample, clipped, count: second }, more));
    }
    onLevel({
      kind: 'sound-level',
      startSample: count - second,
      levelDb: power === 0 ? null : 10 * Math.log10((2 * power) / second),
      peakDb: highest === 0 ? null : 20 * Math.log10(highest),
      clippedShare: clipped / second,
    });
    clipped = 0;
    power = 0;
    highest = 0;
    unusable = false;
  }

  function unusableSample(given: unknown, place: number): void {
    if (unusable) return;
    unusable = true;
    const value = typeof given === 'number' ? given : Number.NaN;
    const more = { at: ['sample', place], received: String(value) };
    onIssue(issue('audio-sample-unusable', { sample: place, limit: LARGEST }, more));
  }

  /** Fills the block with the next samples. */
  function fill(samples: ArrayLike<number>, from: number, size: number): void {
    if (samples instanceof Float32Array) {
      block.set(samples.subarray(from, from + size));
      return;
    }
    for (let n = 0; n < size; n++) {
      const given: unknown = samples[from + n];
      block[n] = typeof given === 'number' ? given : Number.NaN;
    }
  }

  function takeBlock(samples: ArrayLike<number>, from: number, size: number): void {
    fill(samples, from, size);
    let sum = 0;
    let most = 0;
    let full = 0;
    for (let n = 0; n < size; n++) {
      const value = block[n] as number;
      const peak = Math.abs(value);
      if (peak <= LARGEST) {
        if (peak >= FULL_SCALE) full++;
        if (peak > most) most = peak;
        sum += value * value;
      } else {
        unusableSample(samples[from + n], count + n);
        block[n] = 0;
      }
    }
    power += sum;
    clipped += full;
    if (most > highest) highest = most;
    if (most > 0) heard = true;
  }

  return {
    take(samples, frontEnd): void {
      for (let next = 0; next < samples.length; ) {
        const size = Math.min(BLOCK, samples.length - next, second - (count % second));
        takeBlock(samples, next, size);
        next += size;
        count += size;
        if (count % second === 0) endOfSecond();
        frontEnd.push(block, 0, size);
      }
    },
    end(): void {
      if (heard) return;
      onIssue(count === 0 ? issue('audio-no-samples', {}) : issue('audio-silent', { count }));
    },
  };
}
