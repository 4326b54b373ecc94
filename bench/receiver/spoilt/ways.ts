import type { Random } from '../random.ts';

/** Bits as they come in: `0`, `1`, and `?` for one not heard. */
export type Spoil = (bits: string, other: string, random: Random) => string;

/** Everything that is sent before the message itself: 20 dots and 12 words of phasing. */
const FRONT = 140;

const noise = (random: Random, count: number): string =>
  Array.from({ length: Math.max(count, 0) }, () => (random.even() < 0.5 ? '0' : '1')).join('');

/** A share from 0 to 1, most often a small one: light faults are the ones that leave a call to judge. */
const light = (random: Random): number => random.even() ** 3;

/** What follows where a burst is gone: noise, silence, one tone for good, the dot pattern. */
function nothing(random: Random, count: number): string {
  const kind = random.below(6);
  if (kind < 3) return noise(random, count);
  if (kind === 3) return '?'.repeat(count);
  if (kind === 4) return String(random.below(2)).repeat(count);
  return '10'.repeat(count).slice(0, count);
}

/** Bits wrong at a rate that changes along the burst. */
function flipped(bits: string, random: Random, rate: (index: number) => number): string {
  return [...bits]
    .map((bit, index) => (random.even() < rate(index) ? (bit === '1' ? '0' : '1') : bit))
    .join('');
}

/** Every way in which a burst of bits is spoilt. `other` is the burst of another call. */
export const WAYS: Readonly<Record<string, Spoil>> = {
  'tail cut': (bits, _, random) => {
    // Most often near the end, where a chance match is nearest.
    const at = Math.floor(bits.length - light(random) * (bits.length - FRONT));
    return bits.slice(0, at) + nothing(random, bits.length - at + 200);
  },
  'head cut': (bits, _, random) => {
    const at = random.below(FRONT + 40);
    const front = random.even() < 0.3 ? '' : random.even() < 0.5 ? noise(random, at) : '?'.repeat(at);
    return front + bits.slice(at);
  },
  slip: (bits, _, random) => {
    let spoilt = bits;
    for (let slips = 1 + random.below(2); slips > 0; slips--) {
      const at = Math.floor(spoilt.length - light(random) * (spoilt.length - 20));
      const count = 1 + random.below(3);
      spoilt =
        random.even() < 0.5
          ? spoilt.slice(0, at) + spoilt.slice(at + count)
          : spoilt.slice(0, at) + noise(random, count) + spoilt.slice(at);
    }
    return spoilt + noise(random, 60);
  },
  'burst of errors': (bits, _, random) => {
    let spoilt = bits;
    for (let bursts = 1 + random.below(3); bursts > 0; bursts--) {
      const length = 5 + Math.floor(light(random) * 120);
      const at = random.below(spoilt.length);
      spoilt = spoilt.slice(0, at) + noise(random, length) + spoilt.slice(at + length);
    }
    return spoilt.slice(0, bits.length);
  },
  collision: (bits, other, random) => {
    // The other burst begins anywhere before or behind, is heard from somewhere on, and perhaps not to its end.
    const late = random.below(2 * bits.length) - bits.length;
    const from = Math.floor(bits.length - light(random) * (bits.length - FRONT));
    const until = random.even() < 0.5 ? bits.length : from + random.below(bits.length - from + 1);
    return [...bits]
      .map((bit, index) => (index < from || index >= until ? bit : (other[index - late] ?? bit)))
      .join('')
      .concat(other.slice(Math.max(bits.length - late, 0)));
  },
  fade: (bits, _, random) => {
    const period = 40 + 400 * random.even();
    const phase = random.even();
    const depth = 0.02 + 0.48 * light(random);
    return flipped(bits, random, (index) => {
      const wave = 0.5 + 0.5 * Math.sin(2 * Math.PI * (index / period + phase));
      return depth * wave ** 3;
    });
  },
  squelch: (bits, _, random) => {
    let spoilt = bits;
    for (let gaps = 1 + random.below(3); gaps > 0; gaps--) {
      const length = 5 + Math.floor(light(random) * 170);
      const at = 20 + random.below(spoilt.length);
      const gap = random.even() < 0.5 ? '?' : String(random.below(2));
      spoilt = spoilt.slice(0, at) + gap.repeat(length) + spoilt.slice(at + length);
    }
    return spoilt.slice(0, bits.length);
  },
  'wrong bits': (bits, _, random) => {
    const rate = 0.12 * light(random);
    return flipped(bits, random, () => rate);
  },
};

/**
 * Two sets that send in the same instant, to the bit, the other one heard from some word on and perhaps not to its end.
 * Where both send the same at the change, what is received is a call of neither with nothing to show it, and one in 128
 * has a right error check: this way is counted separately, since no decoder of bits can do better.
 */
export const IN_STEP: Spoil = (bits, other, random) => {
  const from = 20 + 10 * (12 + random.below((bits.length - FRONT) / 10));
  const until = random.even() < 0.7 ? Number.POSITIVE_INFINITY : from + 10 * random.below(30);
  return Array.from({ length: Math.max(bits.length, other.length) }, (_, index) =>
    index < from || index >= until ? bits[index] : other[index],
  )
    .map((bit) => bit ?? noise(random, 1))
    .join('');
};

/** A few bits wrong besides, in three of ten cases. */
export function besides(bits: string, random: Random): string {
  if (random.even() < 0.7) return bits;
  const rate = 0.03 * random.even();
  return flipped(bits, random, (index) => (bits[index] === '?' ? 0 : rate));
}
