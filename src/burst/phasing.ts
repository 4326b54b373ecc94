import { DOT_PATTERN, DX_PHASING, RX_PHASING } from './sequence.ts';
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
const THRESHOLD = 10;
/** Least count of phasing bits heard: the three words of the minimum phasing rule. */
const LEAST = 30;
/** Phasing shifted by a few slots resembles itself: a place counts only when it is the best this far around. */
const AROUND = 100;
/** Bits of phasing from its first to its last. */
const PHASING_BITS = 160;

/** The bits of phasing that are known before anything is heard, by distance from its first bit. */
const known: { readonly ones: readonly number[]; readonly zeros: readonly number[] } =
  /* @__PURE__ */ (() => {
    const ones: number[] = [];
    const zeros: number[] = [];
    RX_PHASING.forEach((symbol, slot) => {
      const words: [number, number][] = [[20 * slot + 10, symbol]];
      if (slot < 6) words.push([20 * slot, DX_PHASING]);
      for (const [at, word] of words)
        [...encodeSymbol(word)].forEach((bit, index) => {
          (bit === '1' ? ones : zeros).push(at + index);
        });
    });
    return { ones, zeros };
  })();

/** Sums that make the evidence of any place quick to add up. */
interface Heard {
  readonly length: number;
  /** ln(2 P(0)) of each bit. */
  readonly asZero: Float64Array;
  /** ln(2 P(1)) of each bit. */
  readonly asOne: Float64Array;
}

/**
 * Places where phasing may begin, in order. There is no gate on hard phasing: every word counts by what was
 * heard of it.
 */
export function* findPhasing(bits: Float64Array, from: number): Generator<PhasingPlace, void> {
  const heard = prepare(bits);
  let peak: PhasingPlace | null = null;
  for (let start = from - PHASING_BITS + LEAST; start <= bits.length - LEAST; start++) {
    const place = placeAt(heard, start);
    if (peak !== null && start - peak.start >= AROUND) {
      yield peak;
      peak = null;
    }
    if (peak === null ? place.evidence >= THRESHOLD : place.evidence > peak.evidence) peak = place;
  }
  if (peak !== null) yield peak;
}

/** What was heard of phasing at a given place. */
export function phasingAt(bits: Float64Array, start: number): PhasingPlace {
  return placeAt(prepare(bits), start);
}

function prepare(bits: Float64Array): Heard {
  return {
    length: bits.length,
    asZero: bits.map((bit) => Math.LN2 - softplus(bit)),
    asOne: bits.map((bit) => Math.LN2 - softplus(-bit)),
  };
}

function placeAt(heard: Heard, start: number): PhasingPlace {
  const upright = evidenceOf(heard.asOne, heard.asZero, start);
  const turned = evidenceOf(heard.asZero, heard.asOne, start);
  const evidence = Math.max(upright, turned);
  return { start, sign: turned > upright ? -1 : 1, evidence, lead: leadOf(heard, start) };
}

function evidenceOf(one: Float64Array, zero: Float64Array, start: number): number {
  let sum = 0;
  for (const at of known.ones) sum += one[start + at] ?? 0;
  for (const at of known.zeros) sum += zero[start + at] ?? 0;
  return sum;
}

/** The dot pattern may begin with either bit (M.493, from memory). */
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
