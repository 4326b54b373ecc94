import { createReceiver, type HeardBurst } from '../../../src/audio/index.ts';
import { type Random, randomFrom } from '../random.ts';
import { anyCall } from './any-call.ts';
import { emptyTally, isWrong, type Tally } from './tally.ts';

const RATE = 8000;
const NOISE_S = 0.12;

/** What becomes of the sound of a burst, sample by sample; `at` in samples, `length` of the burst. */
interface Sounds {
  readonly own: Float32Array;
  readonly other: Float32Array;
  readonly noise: () => number;
  readonly random: Random;
}
type SpoilSound = (sounds: Sounds) => Float32Array;

const between = (random: Random, low: number, high: number): number => low + random.even() * (high - low);

/** A share from 0 to 1, most often a small one: light faults are the ones that leave a call to judge. */
const light = (random: Random): number => random.even() ** 3;
/** Where a burst is cut: most often near its end. */
const cutAt = (random: Random, length: number): number => Math.floor((1 - 0.75 * light(random)) * length);

/** Every way in which the sound of a burst is spoilt. */
const WAYS: Readonly<Record<string, SpoilSound>> = {
  'tail cut, noise': ({ own, random }) => own.subarray(0, cutAt(random, own.length)),
  'tail cut, loud noise': ({ own, noise, random }) => {
    const at = cutAt(random, own.length);
    const loud = between(random, 5, 60);
    return own.map((sample, n) => (n < at ? sample : loud * noise()));
  },
  'tail faded': ({ own, random }) => {
    const from = cutAt(random, own.length);
    const slope = between(random, 200, 3000);
    return own.map((sample, n) => sample * Math.exp(-Math.max(n - from, 0) / slope));
  },
  'tail silent': ({ own, random }) => {
    const at = cutAt(random, own.length);
    return own.map((sample, n) => (n < at ? sample : Number.NaN));
  },
  'head cut': ({ own, random }) => {
    const at = between(random, 0, 0.26) * own.length;
    return own.map((sample, n) => (n < at ? 0 : sample));
  },
  slip: ({ own, random }) => {
    const at = cutAt(random, own.length);
    const step = Math.round((between(random, -3, 3) * RATE) / 1200);
    return own.map((sample, n) => (n < at ? sample : (own[n + step] ?? 0)));
  },
  'burst of noise': ({ own, noise, random }) => {
    const sound = own.slice();
    for (let bursts = 1 + random.below(3); bursts > 0; bursts--) {
      const from = random.below(own.length);
      const to = from + (0.004 + 0.1 * light(random)) * RATE;
      const loud = between(random, 5, 60);
      for (let n = from; n < Math.min(to, own.length); n++) sound[n] = loud * noise();
    }
    return sound;
  },
  capture: ({ own, other, random }) => {
    const at = cutAt(random, own.length);
    const until = random.even() < 0.5 ? own.length : between(random, at, own.length);
    const late = Math.floor(between(random, -1, 1) * own.length);
    return own.map((sample, n) => (n < at || n >= until ? sample : (other[n - late] ?? 0)));
  },
  collision: ({ own, other, random }) => {
    const late = Math.floor(between(random, -1, 1) * own.length);
    const level = 10 ** (between(random, -20, 3) / 20);
    return own.map((sample, n) => sample + level * (other[n - late] ?? 0));
  },
  fade: ({ own, random }) => {
    const period = between(random, 0.05, 0.6) * RATE;
    const phase = random.even();
    return own.map((sample, n) => sample * Math.abs(Math.sin(Math.PI * (n / period + phase))));
  },
  squelch: ({ own, random }) => {
    const sound = own.slice();
    for (let gaps = 1 + random.below(3); gaps > 0; gaps--) {
      const from = random.below(own.length);
      sound.fill(Number.NaN, from, from + (0.004 + 0.14 * light(random)) * RATE);
    }
    return sound;
  },
};

/** Lets the receiver hear bursts that were spoilt in every way, `trials` each, at 6 to 25 dB Eb/N0. */
export function spoiltSound(trials: number, seed: number): Record<string, Tally> {
  return Object.fromEntries(
    Object.entries(WAYS).map(([way, spoil], number) => {
      const random = randomFrom(seed + 1000 * number);
      const tally = emptyTally();
      for (let trial = 0; trial < trials; trial++) {
        const [sent, other] = [anyCall(random), anyCall(random)];
        const ebN0 = 10 ** (between(random, 6, 25) / 10);
        const sigma = Math.sqrt(((1 / 2400 / ebN0) * RATE) / 2);
        const noise = (): number => sigma * random.normal();
        const spoilt = spoil({
          own: toneOf(sent.bits, random),
          other: toneOf(other.bits, random),
          noise,
          random,
        });
        const room = Math.floor(NOISE_S * RATE);
        const samples = Float32Array.from({ length: spoilt.length + 2 * room }, (_, n) => {
          const sample = spoilt[n - room] ?? 0;
          // Silence: the squelch takes the noise away too.
          return Number.isNaN(sample) ? 0 : 0.1 * (sample + noise());
        });
        const heard: HeardBurst[] = [];
        const receiver = createReceiver({ sampleRate: RATE, onReception: (burst) => heard.push(burst) });
        receiver.push(samples);
        receiver.flush();
        if (heard.length === 0) tally.silent++;
        for (const { reception } of heard) {
          const { verdict } = reception.quality;
          tally[verdict][0]++;
          if (isWrong(reception.information, [sent, other])) tally[verdict][1]++;
        }
      }
      return [way, tally];
    }),
  );
}

/** Continuous-phase sound of some bits, amplitude 1. */
function toneOf(bits: string, random: Random): Float32Array {
  const samples = new Float32Array(Math.floor((bits.length * RATE) / 1200));
  let phase = 2 * Math.PI * random.even();
  for (let n = 0; n < samples.length; n++) {
    samples[n] = Math.sin(phase);
    // The part of this sample's time that lies in each of two bits.
    const from = (n * 1200) / RATE;
    const to = ((n + 1) * 1200) / RATE;
    const edge = Math.min(Math.max(Math.ceil(from + 1e-9), from), to);
    const tone = (at: number): number => (bits[Math.floor(at)] === '1' ? 1300 : 2100);
    phase += ((2 * Math.PI) / 1200) * ((edge - from) * tone(from + 1e-9) + (to - edge) * tone(edge + 1e-9));
  }
  return samples;
}
