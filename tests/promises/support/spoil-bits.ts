// A channel that spoils bits, one way at a time. Nothing of the code under test is used.
import type { Random } from '../../../bench/receiver/random.ts';
import { type Airborne, bitsOf, check } from './air.ts';
import { callOf, pick, type SentCall } from './calls.ts';

/** What a receiver is given: bits (`null`: not heard), or how much more likely a one than a zero each is. */
export interface Spoilt {
  readonly heard: readonly (number | null)[] | Float64Array;
  /** Calls whose bits are in it: any of them, read as sent, is right. */
  readonly sent: readonly SentCall[];
}

type Bits = (number | null)[];

const noise = (random: Random, count: number): Bits => Array.from({ length: count }, () => random.below(2));
const dots = (random: Random, count: number): Bits => {
  const first = random.below(2);
  return Array.from({ length: count }, (_, at) => (at & 1) ^ first);
};

/** What a receiver gives when nothing is sent: noise, a constant, dots, nothing heard, or no more bits at all. */
function emptiness(random: Random, count: number): Bits {
  switch (random.below(6)) {
    case 0:
      return Array.from({ length: count }, () => 0);
    case 1:
      return Array.from({ length: count }, () => 1);
    case 2:
      return dots(random, count);
    case 3:
      return Array.from({ length: count }, () => null);
    case 4:
      return [];
    default:
      return noise(random, count);
  }
}

/** Independent errors, at a rate that the code mostly corrects. */
function flipped(random: Random, bits: readonly (number | null)[], rate: number): Bits {
  return bits.map((bit) => (bit !== null && random.even() < rate ? 1 - bit : bit));
}

const rates = [0, 0, 0, 0, 0, 0.001, 0.003, 0.01, 0.03];
const lightly = (random: Random, bits: readonly (number | null)[]): Bits =>
  flipped(random, bits, pick(random, rates));

const burst = (random: Random, call: Airborne): Bits => [...bitsOf(call, random.below(2))];

/** With something before and behind, as found in a recording. */
function placed(random: Random, bits: Bits): Bits {
  return [...emptiness(random, random.below(60)), ...bits, ...emptiness(random, random.below(300))];
}

/** Mostly small, so that much is still read: what is hard lies between whole and hopeless. */
const mostlySmall = (random: Random, below: number): number => Math.floor(below * random.even() ** 2.5);

/** Where a word of the call begins, phasing left out. */
const wordAt = (random: Random, bits: Bits): number =>
  bits.length - 10 * mostlySmall(random, (bits.length - 160) / 10);

/** Each way a burst can be spoilt in bits. */
export const waysInBits: Readonly<Record<string, (random: Random) => Spoilt>> = {
  'independent errors': (random) => {
    const call = callOf(random);
    const rate = pick(random, [0.002, 0.005, 0.01, 0.02, 0.03, 0.05]);
    return { heard: placed(random, flipped(random, burst(random, call), rate)), sent: [call] };
  },
  'tail cut': (random) => {
    const call = callOf(random);
    const bits = burst(random, call);
    const kept = bits.length - mostlySmall(random, bits.length - 160);
    return {
      heard: lightly(random, [...bits.slice(0, kept), ...emptiness(random, bits.length - kept + 200)]),
      sent: [call],
    };
  },
  'tail cut between words': (random) => {
    const call = callOf(random);
    const bits = burst(random, call);
    const kept = wordAt(random, bits);
    return {
      heard: [...bits.slice(0, kept), ...emptiness(random, bits.length - kept + 200)],
      sent: [call],
    };
  },
  'head cut': (random) => {
    const call = callOf(random);
    const bits = burst(random, call);
    const lost = mostlySmall(random, 260);
    return {
      heard: lightly(random, [...emptiness(random, lost), ...bits.slice(lost), ...emptiness(random, 100)]),
      sent: [call],
    };
  },
  slip: (random) => {
    const call = callOf(random);
    const bits = burst(random, call);
    for (let slips = 1 + mostlySmall(random, 3); slips > 0; slips -= 1) {
      const at = bits.length - mostlySmall(random, bits.length - 160);
      if (random.below(2) === 0) bits.splice(at, 1 + random.below(3));
      else bits.splice(at, 0, ...noise(random, 1 + random.below(3)));
    }
    return { heard: placed(random, lightly(random, bits)), sent: [call] };
  },
  'burst of errors': (random) => {
    const call = callOf(random);
    const bits = burst(random, call);
    for (let bursts = 1 + mostlySmall(random, 3); bursts > 0; bursts -= 1) {
      const length = 5 + mostlySmall(random, 150);
      const at = random.below(bits.length);
      const mode = random.below(4);
      for (let bit = at; bit < Math.min(at + length, bits.length); bit += 1) {
        bits[bit] =
          mode === 0 ? 0 : mode === 1 ? 1 : mode === 2 ? 1 - (bits[bit] as number) : random.below(2);
      }
    }
    return { heard: placed(random, lightly(random, bits)), sent: [call] };
  },
  fade: (random) => {
    const call = callOf(random);
    const bits = burst(random, call);
    const worst = 0.4 * random.even() ** 2;
    const period = 30 + random.below(400);
    const phase = random.even() * 2 * Math.PI;
    const faded = bits.map((bit, at) => {
      const depth = (1 + Math.cos((2 * Math.PI * at) / period + phase)) / 2;
      return bit !== null && random.even() < worst * depth ** 4 ? 1 - bit : bit;
    });
    return { heard: placed(random, faded), sent: [call] };
  },
  'bits not heard': (random) => {
    const call = callOf(random);
    const bits = burst(random, call);
    const length = 10 + mostlySmall(random, 250);
    const at = random.below(bits.length);
    for (let bit = at; bit < Math.min(at + length, bits.length); bit += 1) bits[bit] = null;
    return { heard: placed(random, lightly(random, bits)), sent: [call] };
  },
  collision: (random) => {
    const one = callOf(random);
    const other = callOf(random);
    const first = burst(random, one);
    const second = burst(random, other);
    const offset = first.length - mostlySmall(random, first.length);
    const heard: Bits = [];
    for (let at = 0; at < Math.max(first.length, offset + second.length); at += 1) {
      const mine = first[at];
      const theirs = second[at - offset];
      heard.push(
        mine === undefined
          ? (theirs ?? random.below(2))
          : theirs === undefined
            ? mine
            : pick(random, [mine, theirs]),
      );
    }
    return { heard: placed(random, heard), sent: [one, other] };
  },
  capture: (random) => {
    const one = callOf(random);
    const other = callOf(random);
    const first = burst(random, one);
    const second = burst(random, other);
    const taken = first.length - mostlySmall(random, first.length - 100);
    const back = random.below(2) === 0 ? taken + random.below(200) : Infinity;
    const offset = random.below(taken);
    const heard = Array.from(
      { length: Math.max(Math.min(back, first.length), second.length + offset) },
      (_, at) => (at < taken || at >= back ? first[at] : second[at - offset]) ?? random.below(2),
    );
    return { heard: placed(random, lightly(random, heard)), sent: [one, other] };
  },
  // Two sets answer the same call in the same instant, and the stronger changes while they send.
  'capture in step': (random) => {
    const one = callOf(random);
    const other = callOf(random, random.below(3) === 0 ? undefined : one.kind);
    const first = burst(random, one);
    const second = burst(random, other);
    const taken = wordAt(random, first);
    const back = random.below(3) === 0 ? taken + 10 * random.below(30) : Infinity;
    const heard = Array.from(
      { length: Math.max(Math.min(back, first.length), second.length) },
      (_, at) => (at < taken || at >= back ? first[at] : second[at]) ?? random.below(2),
    );
    return { heard: placed(random, lightly(random, heard)), sent: [one, other] };
  },
  squelch: (random) => {
    const call = callOf(random);
    const bits = burst(random, call);
    const opens = mostlySmall(random, 150);
    const closes = bits.length - mostlySmall(random, 200);
    const shut = pick(random, [0, 1, null]);
    return {
      heard: placed(
        random,
        lightly(
          random,
          bits.map((bit, at) => (at < opens || at >= closes ? shut : bit)),
        ),
      ),
      sent: [call],
    };
  },
  'wrong check sent': (random) => {
    const call = callOf(random);
    const bits = burst(random, { ...call, wrongCheck: check(call.characters) ^ (1 + random.below(127)) });
    return { heard: placed(random, lightly(random, bits)), sent: [] };
  },
  'soft, noise': (random) => soft(random, () => 1, 0),
  'soft, fade': (random) => {
    const period = 60 + random.below(500);
    const phase = random.even() * 2 * Math.PI;
    return soft(random, (at) => Math.abs(Math.cos((Math.PI * at) / period + phase)), 0);
  },
  'soft, tail cut': (random) => {
    const kept = 400 + random.below(400);
    return soft(random, (at) => (at < kept ? 1 : 0), 200);
  },
};

/** Antipodal signalling of known amplitude in white noise: what is given is the true log-likelihood ratio. */
function soft(random: Random, amplitudeAt: (bit: number) => number, behind: number): Spoilt {
  const call = callOf(random);
  const sigma = 10 ** (-pick(random, [0, 2, 4, 6, 8, 10]) / 20) / Math.SQRT2;
  const bits = [...burst(random, call), ...noise(random, behind)];
  const heard = Float64Array.from(bits, (bit, at) => {
    const amplitude = amplitudeAt(at);
    const level = amplitude * (bit === 1 ? 1 : -1) + sigma * random.normal();
    return (2 * amplitude * level) / sigma ** 2;
  });
  return { heard, sent: [call] };
}
