import { LOSE, LOST_AT_FIRST, REGAIN } from './loss.ts';
import { DOT_PATTERN, DX_PHASING, phasingSymbol, RX_PHASING } from './sequence.ts';
import { encodeSymbol } from './symbol-code.ts';
import { softplus } from './word-metric.ts';

/** A place where phasing seems to begin. */
export interface PhasingPlace {
  /** Index of the first phasing bit; negative when the front was cut off. */
  readonly start: number;
  readonly sign: 1 | -1;
  /** Natural log of what was heard there given phasing, against random bits. */
  readonly evidence: number;
  /** The same for the dot pattern before it, in its better polarity. */
  readonly lead: number;
}

/** Phasing that was heard less than this is not worth reading on from. */
const THRESHOLD = 9;
/** Least count of phasing bits heard: the three words of the minimum phasing rule. */
const LEAST = 30;
/** Phasing shifted by a few slots resembles itself: a place counts only when it is the best this far around. */
const AROUND = 100;
/** Bits of phasing from its first to its last. */
const PHASING_BITS = 160;
/** Share of words of phasing that are worthless by themselves. */
const RUINED = 0.02;

/** The symbols of phasing, and the stream position and symbol of each of its fourteen words. */
const SYMBOLS: readonly number[] = /* @__PURE__ */ (() => [DX_PHASING, ...RX_PHASING])();
const WORDS: readonly (readonly [position: number, place: number])[] = /* @__PURE__ */ (() =>
  Array.from({ length: PHASING_BITS / 10 }, (_, position) => position).flatMap((position) => {
    const symbol = phasingSymbol(position);
    return symbol === null ? [] : [[position, SYMBOLS.indexOf(symbol)] as const];
  }))();
/** For each of the symbols, which of its bits are 1. */
const ONES: readonly (readonly number[])[] = /* @__PURE__ */ (() =>
  SYMBOLS.map((symbol) => [...encodeSymbol(symbol)].flatMap((bit, index) => (bit === '1' ? [index] : []))))();

/** What makes the evidence of any place quick to work out. */
interface Heard {
  readonly length: number;
  /** ln(2 P(0)) of each bit. */
  readonly asZero: Float64Array;
  /** ln(2 P(1)) of each bit. */
  readonly asOne: Float64Array;
  /** Likelihood of each phasing symbol at each bit against random bits, upright and turned over. */
  readonly upright: readonly Float64Array[];
  readonly turned: readonly Float64Array[];
}

/**
 * Places where phasing may begin, in order. There is no gate on hard phasing: every word counts by what was
 * heard of it, and reception may be lost for some words, for the first ones above all.
 */
export function* findPhasing(bits: Float64Array, from: number): Generator<PhasingPlace, void> {
  const heard = prepare(bits);
  let peak: Omit<PhasingPlace, 'lead'> | null = null;
  for (let start = from - PHASING_BITS + LEAST; start <= bits.length - LEAST; start++) {
    const place = placeAt(heard, start);
    if (peak !== null && start - peak.start >= AROUND) {
      yield { ...peak, lead: leadOf(heard, peak.start) };
      peak = null;
    }
    if (peak === null ? place.evidence >= THRESHOLD : place.evidence > peak.evidence) peak = place;
  }
  if (peak !== null) yield { ...peak, lead: leadOf(heard, peak.start) };
}

/** What was heard of phasing at a given place. */
export function phasingAt(bits: Float64Array, start: number): PhasingPlace {
  const heard = prepare(bits);
  return { ...placeAt(heard, start), lead: leadOf(heard, start) };
}

function prepare(bits: Float64Array): Heard {
  const asZero = bits.map((bit) => Math.LN2 - softplus(bit));
  const asOne = bits.map((bit) => Math.LN2 - softplus(-bit));
  // Sums up to each bit; ten words' worth of room before the first bit, so that a cut front counts as not heard.
  const zeros = sums(asZero);
  const gains = sums(bits);
  const upright = SYMBOLS.map(() => new Float64Array(bits.length + 10));
  const turned = SYMBOLS.map(() => new Float64Array(bits.length + 10));
  for (let at = -9; at < bits.length; at++) {
    const low = Math.max(at, 0);
    const high = Math.min(at + 10, bits.length);
    const asZeros = (zeros[high] as number) - (zeros[low] as number);
    const all = (gains[high] as number) - (gains[low] as number);
    ONES.forEach((ones, place) => {
      let gain = 0;
      for (let n = 0; n < ones.length; n++) gain += bits[at + (ones[n] as number)] ?? 0;
      (upright[place] as Float64Array)[at + 9] = (1 - RUINED) * Math.exp(asZeros + gain) + RUINED;
      (turned[place] as Float64Array)[at + 9] = (1 - RUINED) * Math.exp(asZeros + all - gain) + RUINED;
    });
  }
  return { length: bits.length, asZero, asOne, upright, turned };
}

function sums(values: Float64Array): Float64Array {
  const out = new Float64Array(values.length + 1);
  for (let at = 0; at < values.length; at++) out[at + 1] = (out[at] as number) + (values[at] as number);
  return out;
}

function placeAt(heard: Heard, start: number): Omit<PhasingPlace, 'lead'> {
  const upright = evidenceOf(heard.upright, start);
  const turned = evidenceOf(heard.turned, start);
  const evidence = Math.max(upright, turned);
  return { start, sign: turned > upright ? -1 : 1, evidence };
}

/** Natural log of what was heard given phasing, against random bits: two states with memory, received and lost. */
function evidenceOf(words: readonly Float64Array[], start: number): number {
  let received = 1 - LOST_AT_FIRST;
  let lost = LOST_AT_FIRST;
  for (const [position, place] of WORDS) {
    const here = received * ((words[place] as Float64Array)[start + 10 * position + 9] ?? 1);
    received = (1 - LOSE) * here + REGAIN * lost;
    lost = LOSE * here + (1 - REGAIN) * lost;
  }
  return Math.log(received + lost);
}

/** The dot pattern may begin with either bit (M.493). */
function leadOf({ asOne, asZero }: Heard, start: number): number {
  let even = 0;
  let odd = 0;
  for (let back = 1; back <= DOT_PATTERN.length; back++) {
    const one = asOne[start - back] ?? 0;
    const zero = asZero[start - back] ?? 0;
    even += back % 2 === 0 ? one : zero;
    odd += back % 2 === 0 ? zero : one;
  }
  // Either may be missing: a receiver can open late.
  return Math.max(even, odd, -Math.LN2);
}
