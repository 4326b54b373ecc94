import { MOST_CALLS } from '../../burst/internal.ts';
import { energyOf } from '../estimate/levels.ts';
import type { Baseband } from '../front-end/baseband.ts';
import { BEFORE, PER_BIT, TAPS } from '../front-end/bit-filter.ts';
import { ALERT_BITS, PHASING_BITS } from './phasing.ts';
import { THIRD_COS, THIRD_SIN } from './sync.ts';

/** Places looked at: two to a bit. */
const HOP: number = PER_BIT / 2;
const WORD = 10;
const WORD_HOPS: number = (WORD * PER_BIT) / HOP;
const DX_WORDS = 6;

const BIT_HOPS: number = PER_BIT / HOP;

/** Hops that are looked back on, and room for many more, so that they seldom have to be moved. */
const KEPT_HOPS: number = 2 * WORD_HOPS * DX_WORDS;
const ROOM: number = 8 * KEPT_HOPS;

/** Baseband samples that must follow a hop before its bit can be correlated. */
const READS_AHEAD: number = TAPS - BEFORE;

/**
 * Sum of six coherences that is worth a closer look. White noise has 0.3 ± 0.12 and passes about once a minute; a burst
 * at Eb/N0 = 0 dB has 2.2 ± 0.3; three clean words out of six (the rest lost to a squelch) have 3.
 */
const WORTH_A_LOOK = 1.2;

/** Looks for DX phasing (125, six times, every other word) in the baseband, in both polarities, wherever it may start. */
export interface Searcher {
  /** Takes in every hop that the baseband has completed. */
  advance(): void;
}

/** Hops from one call of an attempt to the next, and how many calls it has; sums of coherence that are kept, a power of two. */
const CALL_HOPS: number = ALERT_BITS * BIT_HOPS;
const SUMS = 8192;

/** Hops after which the characters of a call have begun; share of the sum that its phasing must have lost by then. */
const SIDELOBE_HOPS: number = 2 * WORD_HOPS * (DX_WORDS + 1);
const STILL_PHASING = 0.75;

/**
 * Sum of the coherences of five calls that is worth a closer look. White noise has 1.5 ± 0.27 and passes less than once in ten
 * minutes; five alerts at Eb/N0 = -7 dB have 4.6 ± 0.5.
 */
const ATTEMPT_WORTH_A_LOOK = 3.3;

/**
 * @param found - is given the baseband instant of the first phasing bit, near enough for `locate`, the polarity, and the sum of coherences, 0 to 6
 * @param foundAttempt - the same for the last of five calls, each one alert's length after the other
 */
export function createSearcher(
  baseband: Baseband,
  found: (start: number, mirror: boolean, strength: number) => void,
  foundAttempt: (start: number, mirror: boolean) => void,
): Searcher {
  const z = new Float64Array(4);
  const place = { start: 0, perBit: PER_BIT, offset: 0, mirror: false, phase: 0 };
  const tones = new Float64Array(4 * ROOM);
  const energy = new Float64Array(ROOM);
  const coherence = [new Float64Array(ROOM), new Float64Array(ROOM)] as const;
  const peak = [0, 0];
  const peakAt = [0, 0];
  const sums = [new Float32Array(SUMS), new Float32Array(SUMS)] as const;
  const attemptPeak = [0, 0];
  const attemptPeakAt = [0, 0];
  // Hop number of the first place in the arrays above.
  let base = 0;
  let hop = 0;

  function take(): void {
    if (hop - base === ROOM) {
      for (const list of [energy, ...coherence]) list.copyWithin(0, ROOM - KEPT_HOPS);
      tones.copyWithin(0, 4 * (ROOM - KEPT_HOPS));
      base += ROOM - KEPT_HOPS;
    }
    place.start = hop * HOP;
    baseband.correlate(place, 1, z);
    tones.set(z, 4 * (hop - base));
    energy[hop - base] = energyOf(z, 0);
    const start = hop - base - WORD_HOPS + PER_BIT / HOP;
    if (start < 0) return;
    let total = 0;
    for (let bit = 0; bit < WORD; bit++) total += energy[start + bit * BIT_HOPS] as number;
    const scale = 1 / (WORD * total + 1e-20);
    coherence[0][start] = powerOf(tones, 4 * start, OWN) * scale;
    coherence[1][start] = powerOf(tones, 4 * start, MIRRORED) * scale;
    if (start < 2 * WORD_HOPS * (DX_WORDS - 1)) return;
    judge(start, 0);
    judge(start, 1);
  }

  /** Adds up the six words that end with the one at `start`, and reports a peak once it is past. */
  function judge(start: number, mirror: 0 | 1): void {
    let sum = 0;
    for (let word = 0; word < DX_WORDS; word++)
      sum += coherence[mirror][start - 2 * WORD_HOPS * word] as number;
    const here = base + start;
    if (sum > WORTH_A_LOOK && sum > (peak[mirror] as number)) {
      peak[mirror] = sum;
      peakAt[mirror] = here;
    } else if (peak[mirror] !== 0 && here - (peakAt[mirror] as number) > 2 * BIT_HOPS) {
      const strength = peak[mirror] as number;
      peak[mirror] = 0;
      found(startOf(peakAt[mirror] as number), mirror === 1, strength);
    }
    sums[mirror][here % SUMS] = sum;
    judgeAttempt(here, mirror);
  }

  /** Adds up five places that end with this one, and reports a peak when no sidelobe of it can be higher any more. */
  function judgeAttempt(here: number, mirror: 0 | 1): void {
    let sum = 0;
    for (let call = 0; call < MOST_CALLS && call * CALL_HOPS <= here; call++)
      sum += sums[mirror][(here - call * CALL_HOPS) % SUMS] as number;
    if (sum > ATTEMPT_WORTH_A_LOOK && sum > (attemptPeak[mirror] as number)) {
      attemptPeak[mirror] = sum;
      attemptPeakAt[mirror] = here;
    } else if (attemptPeak[mirror] !== 0 && here - (attemptPeakAt[mirror] as number) === SIDELOBE_HOPS) {
      // Where phasing goes on and on there is no attempt.
      if (sum < STILL_PHASING * (attemptPeak[mirror] as number))
        foundAttempt(startOf(attemptPeakAt[mirror] as number), mirror === 1);
      attemptPeak[mirror] = 0;
    }
  }

  function startOf(last: number): number {
    return (last - 2 * WORD_HOPS * (DX_WORDS - 1)) * HOP;
  }

  return {
    advance(): void {
      while (hop * HOP + READS_AHEAD <= baseband.count()) {
        take();
        hop++;
      }
    },
  };
}

/** Places of the correlations to be added, from that of the first bit, in three lots: those whose phase is 0, 1 and 2 thirds on. */
type Lots = readonly [Int32Array, Int32Array, Int32Array];

const OWN: Lots = /* @__PURE__ */ lotsOf(PHASING_BITS.slice(0, WORD), false);
const MIRRORED: Lots = /* @__PURE__ */ lotsOf(PHASING_BITS.slice(0, WORD), true);

/** Where the tones of a word stand and how far its phase has come: the mirror swaps the tones and turns the other way. */
function lotsOf(bits: string, mirror: boolean): Lots {
  const lots: [number[], number[], number[]] = [[], [], []];
  let thirds = 0;
  for (let bit = 0; bit < bits.length; bit++) {
    const one = bits[bit] === '1';
    const lot = mirror ? (3 - thirds) % 3 : thirds;
    lots[lot as 0 | 1 | 2].push(4 * bit * BIT_HOPS + (one === mirror ? 2 : 0));
    thirds = (thirds + (one ? 2 : 1)) % 3;
  }
  return [Int32Array.from(lots[0]), Int32Array.from(lots[1]), Int32Array.from(lots[2])];
}

/** Power of a word's correlations added in phase, the first at `from`. */
function powerOf(tones: Float64Array, from: number, lots: Lots): number {
  let re = 0;
  let im = 0;
  for (let lot = 0; lot < 3; lot++) {
    const places = lots[lot] as Int32Array;
    let x = 0;
    let y = 0;
    for (let n = 0; n < places.length; n++) {
      const at = from + (places[n] as number);
      x += tones[at] as number;
      y += tones[at + 1] as number;
    }
    const cos = THIRD_COS[lot] as number;
    const sin = THIRD_SIN[lot] as number;
    re += x * cos + y * sin;
    im += y * cos - x * sin;
  }
  return re * re + im * im;
}
