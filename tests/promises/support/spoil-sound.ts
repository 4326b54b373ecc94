// A channel that spoils sound, one way at a time: its own continuous-phase tones, noise, cuts, fades and collisions.
// Nothing of the code under test is used. Tones and rate: IMO GMDSS Manual 3.4 (1300 and 2100 Hz, 1200 baud); the lower
// tone is a one, from memory of ITU-R M.493.
import type { Random } from '../../../bench/receiver/random.ts';
import { type Airborne, bitsOf } from './air.ts';
import { callOf, pick, type SentCall } from './calls.ts';

/** Sound and the calls that are in it: each of them, read as sent, is right. */
export interface Sound {
  readonly samples: Float64Array;
  readonly sampleRate: number;
  readonly sent: readonly SentCall[];
}

const mostlySmall = (random: Random, below: number): number => below * random.even() ** 2.5;
const ratesOfSampling = [8000, 8000, 8000, 11_025, 16_000, 22_050];

/** Bits as two tones with continuous phase, amplitude 1. */
function tones(random: Random, bits: Uint8Array, sampleRate: number): Float64Array {
  const baud = 1200 * (1 + (random.even() - 0.5) * 1e-4);
  const offset = 20 * (random.even() - 0.5);
  const samples = new Float64Array(Math.floor((bits.length / baud) * sampleRate));
  let phase = 2 * Math.PI * random.even();
  for (let at = 0; at < samples.length; at += 1) {
    samples[at] = Math.sin(phase);
    const bit = bits[Math.min(bits.length - 1, Math.floor((at / sampleRate) * baud))];
    phase += (2 * Math.PI * ((bit === 1 ? 1300 : 2100) + offset)) / sampleRate;
  }
  return samples;
}

const burst = (random: Random, call: Airborne, sampleRate: number): Float64Array =>
  tones(random, bitsOf(call, random.below(2)), sampleRate);

/** Standard deviation of white noise for tones of amplitude 1: energy of a bit over noise density, in dB. */
const sigmaOf = (ebN0Db: number, sampleRate: number): number =>
  Math.sqrt(((1 / 2 / 1200 / 10 ** (ebN0Db / 10)) * sampleRate) / 2);

interface Bench {
  readonly random: Random;
  readonly sampleRate: number;
  /** Samples of so many bits. */
  readonly bits: (count: number) => number;
}

/** Lays the pieces on silence, 0.1 s before the first and 0.3 s behind the last, and adds noise. */
function mixed(
  { random, sampleRate }: Bench,
  pieces: readonly { readonly at: number; readonly samples: Float64Array; readonly gain?: number }[],
  ebN0Db: number,
  noiseAt: (sample: number) => number = () => 1,
): Float64Array {
  const lead = Math.floor(0.1 * sampleRate);
  const length =
    lead + Math.max(...pieces.map(({ at, samples }) => at + samples.length)) + Math.floor(0.3 * sampleRate);
  const out = new Float64Array(length);
  for (const { at, samples, gain = 1 } of pieces) {
    for (let index = 0; index < samples.length; index += 1)
      out[lead + at + index] = (out[lead + at + index] as number) + gain * (samples[index] as number);
  }
  const sigma = sigmaOf(ebN0Db, sampleRate);
  const volume = 0.02 + 0.3 * random.even();
  for (let at = 0; at < length; at += 1) {
    out[at] = volume * ((out[at] as number) + sigma * noiseAt(at - lead) * random.normal());
  }
  return out;
}

const strength = (random: Random): number => pick(random, [3, 5, 7, 10, 15, 25]);

type Way = (bench: Bench) => { readonly samples: Float64Array; readonly sent: readonly SentCall[] };

/** Each way a burst can be spoilt in sound. */
const ways: Readonly<Record<string, Way>> = {
  noise: (bench) => {
    const call = callOf(bench.random);
    const samples = burst(bench.random, call, bench.sampleRate);
    return {
      samples: mixed(bench, [{ at: 0, samples }], pick(bench.random, [0, 1, 2, 3, 4, 6])),
      sent: [call],
    };
  },
  'tail cut': (bench) => {
    const { random } = bench;
    const call = callOf(random);
    const samples = burst(random, call, bench.sampleRate);
    const kept = samples.length - Math.floor(mostlySmall(random, samples.length - bench.bits(160)));
    // Behind the cut: noise as before, silence, or noise of an open squelch, much louder.
    const behind = pick(random, [1, 0, 5]);
    const noiseAt = (at: number): number => (at < kept ? 1 : behind);
    return {
      samples: mixed(bench, [{ at: 0, samples: samples.slice(0, kept) }], strength(random), noiseAt),
      sent: [call],
    };
  },
  'head cut': (bench) => {
    const { random } = bench;
    const call = callOf(random);
    const samples = burst(random, call, bench.sampleRate);
    const lost = Math.floor(mostlySmall(random, bench.bits(260)));
    return {
      samples: mixed(bench, [{ at: lost, samples: samples.slice(lost) }], strength(random)),
      sent: [call],
    };
  },
  // A sound card drops or repeats a piece.
  slip: (bench) => {
    const { random } = bench;
    const call = callOf(random);
    const samples = burst(random, call, bench.sampleRate);
    const at = samples.length - Math.floor(mostlySmall(random, samples.length - bench.bits(160)));
    const piece = Math.floor(bench.bits(0.3 + 4 * random.even()));
    const slipped =
      random.below(2) === 0
        ? [...samples.slice(0, at), ...samples.slice(at + piece)]
        : [...samples.slice(0, at), ...samples.slice(Math.max(0, at - piece))];
    return {
      samples: mixed(bench, [{ at: 0, samples: Float64Array.from(slipped) }], strength(random)),
      sent: [call],
    };
  },
  'burst of noise': (bench) => {
    const { random } = bench;
    const call = callOf(random);
    const samples = burst(random, call, bench.sampleRate);
    const from = Math.floor(random.even() * samples.length);
    const until = from + bench.bits(5 + mostlySmall(random, 150));
    const loud = pick(random, [5, 15, 40]);
    const noiseAt = (at: number): number => (at >= from && at < until ? loud : 1);
    return { samples: mixed(bench, [{ at: 0, samples }], strength(random), noiseAt), sent: [call] };
  },
  'tone over it': (bench) => {
    const { random, sampleRate } = bench;
    const call = callOf(random);
    const samples = burst(random, call, sampleRate);
    const hertz = 300 + 2700 * random.even();
    const tone = Float64Array.from(
      { length: Math.floor(bench.bits(20 + mostlySmall(random, 400))) },
      (_, at) => Math.sin((2 * Math.PI * hertz * at) / sampleRate),
    );
    const at = Math.floor(random.even() * samples.length);
    const gain = 0.2 + 1.5 * random.even();
    return {
      samples: mixed(
        bench,
        [
          { at: 0, samples },
          { at, samples: tone, gain },
        ],
        strength(random),
      ),
      sent: [call],
    };
  },
  fade: (bench) => {
    const { random, sampleRate } = bench;
    const call = callOf(random);
    const samples = burst(random, call, sampleRate);
    const hertz = 1 + 12 * random.even();
    const phase = 2 * Math.PI * random.even();
    const faded = samples.map(
      (sample, at) => sample * Math.abs(Math.cos((Math.PI * hertz * at) / sampleRate + phase)),
    );
    return { samples: mixed(bench, [{ at: 0, samples: faded }], strength(random)), sent: [call] };
  },
  'fade out': (bench) => {
    const { random } = bench;
    const call = callOf(random);
    const samples = burst(random, call, bench.sampleRate);
    const from = samples.length - mostlySmall(random, samples.length - bench.bits(160));
    const length = bench.bits(5 + 60 * random.even());
    const faded = samples.map((sample, at) => (at < from ? sample : sample * Math.exp((from - at) / length)));
    return { samples: mixed(bench, [{ at: 0, samples: faded }], strength(random)), sent: [call] };
  },
  collision: (bench) => {
    const { random } = bench;
    const one = callOf(random);
    const other = callOf(random);
    const first = burst(random, one, bench.sampleRate);
    const at = first.length - Math.floor(mostlySmall(random, first.length));
    const gain = 10 ** (pick(random, [-12, -8, -4, 0, 4, 8]) / 20);
    const pieces = [
      { at: 0, samples: first },
      { at, samples: burst(random, other, bench.sampleRate), gain },
    ];
    return { samples: mixed(bench, pieces, strength(random)), sent: [one, other] };
  },
  // Frequency modulation lets the stronger through alone.
  capture: (bench) => {
    const { random } = bench;
    const one = callOf(random);
    const other = callOf(random);
    const first = burst(random, one, bench.sampleRate);
    const second = burst(random, other, bench.sampleRate);
    const taken = first.length - Math.floor(mostlySmall(random, first.length - bench.bits(160)));
    const into = Math.floor(random.even() * Math.min(taken, second.length));
    const pieces = [
      { at: 0, samples: first.slice(0, taken) },
      { at: taken, samples: second.slice(into) },
    ];
    return { samples: mixed(bench, pieces, strength(random)), sent: [one, other] };
  },
  'capture in step': (bench) => {
    const { random, sampleRate } = bench;
    const one = callOf(random);
    const other = callOf(random, one.kind);
    const first = bitsOf(one);
    const second = bitsOf(other);
    const taken = first.length - 10 * Math.floor(mostlySmall(random, (first.length - 160) / 10));
    const bits = Uint8Array.from(
      { length: Math.max(taken, second.length) },
      (_, at) => (at < taken ? first[at] : second[at]) ?? 0,
    );
    return {
      samples: mixed(bench, [{ at: 0, samples: tones(random, bits, sampleRate) }], strength(random)),
      sent: [one, other],
    };
  },
  squelch: (bench) => {
    const { random } = bench;
    const call = callOf(random);
    const samples = burst(random, call, bench.sampleRate);
    const opens = mostlySmall(random, bench.bits(150));
    const closes = samples.length - mostlySmall(random, bench.bits(250));
    const mixedDown = mixed(bench, [{ at: 0, samples }], strength(random));
    const lead = Math.floor(0.1 * bench.sampleRate);
    return {
      samples: mixedDown.map((sample, at) => (at - lead < opens || at - lead > closes ? 0 : sample)),
      sent: [call],
    };
  },
  clipped: (bench) => {
    const { random } = bench;
    const call = callOf(random);
    const samples = mixed(
      bench,
      [{ at: 0, samples: burst(random, call, bench.sampleRate) }],
      strength(random),
    );
    const most = 0.005 + 0.05 * random.even();
    return { samples: samples.map((sample) => Math.max(-most, Math.min(most, sample)) / most), sent: [call] };
  },
};

export const waysInSound: Readonly<Record<string, (random: Random) => Sound>> = Object.fromEntries(
  Object.entries(ways).map(([name, way]) => [
    name,
    (random: Random): Sound => {
      const sampleRate = pick(random, ratesOfSampling);
      return { ...way({ random, sampleRate, bits: (count) => (count / 1200) * sampleRate }), sampleRate };
    },
  ]),
);
