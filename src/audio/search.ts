import type { Baseband } from './baseband.ts';
import { PER_BIT } from './bit-filter.ts';
import { energyOf } from './fit.ts';
import { PHASING_BITS } from './phasing.ts';
import { THIRD_COS, THIRD_SIN } from './sync.ts';

/** Places looked at: two to a bit. */
const HOP: number = PER_BIT / 2;
const WORD = 10;
const WORD_HOPS: number = (WORD * PER_BIT) / HOP;
const DX_WORDS = 6;

/** Rings of correlations and coherences, in hops; a power of two that holds six words of DX phasing. */
const HELD = 512;
const MASK: number = HELD - 1;

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

/**
 * @param found - is given the baseband instant of the first phasing bit, near enough for `locate`, the polarity, and the sum of coherences, 0 to 6
 */
export function createSearcher(
  baseband: Baseband,
  found: (start: number, mirror: boolean, strength: number) => void,
): Searcher {
  const z = new Float64Array(4);
  const ring = new Float32Array(4 * HELD);
  const energy = new Float32Array(HELD);
  const coherence = [new Float32Array(HELD), new Float32Array(HELD)];
  const peak = [0, 0];
  const peakAt = [0, 0];
  const pattern = thirdsOf(PHASING_BITS.slice(0, WORD));
  let hop = 0;

  function take(): void {
    baseband.correlate({ start: hop * HOP, perBit: PER_BIT, offset: 0, mirror: false, phase: 0 }, 1, z);
    const slot = hop & MASK;
    for (let i = 0; i < 4; i++) ring[4 * slot + i] = z[i] as number;
    energy[slot] = energyOf(z, 0);
    const start = hop - WORD_HOPS + PER_BIT / HOP;
    if (start < 0) return;
    let total = 0;
    let re = 0;
    let im = 0;
    let mirrorRe = 0;
    let mirrorIm = 0;
    for (let i = 0; i < WORD; i++) {
      const at = (start + (i * PER_BIT) / HOP) & MASK;
      total += energy[at] as number;
      const { one, cos, sin } = pattern[i] as Turn;
      const own = 4 * at + (one ? 0 : 2);
      const x = ring[own] as number;
      const y = ring[own + 1] as number;
      re += x * cos + y * sin;
      im += y * cos - x * sin;
      const other = 4 * at + (one ? 2 : 0);
      const u = ring[other] as number;
      const v = ring[other + 1] as number;
      mirrorRe += u * cos - v * sin;
      mirrorIm += v * cos + u * sin;
    }
    const scale = 1 / (WORD * total + 1e-20);
    (coherence[0] as Float32Array)[start & MASK] = (re * re + im * im) * scale;
    (coherence[1] as Float32Array)[start & MASK] = (mirrorRe * mirrorRe + mirrorIm * mirrorIm) * scale;
    judge(start, 0);
    judge(start, 1);
  }

  /** Adds up the six words that end with the one at `start`, and reports a peak once it is past. */
  function judge(start: number, mirror: 0 | 1): void {
    const values = coherence[mirror] as Float32Array;
    let sum = 0;
    for (let word = 0; word < DX_WORDS; word++)
      sum += values[(start - 2 * WORD_HOPS * word) & MASK] as number;
    if (sum > WORTH_A_LOOK && sum > (peak[mirror] as number)) {
      peak[mirror] = sum;
      peakAt[mirror] = start;
    } else if (peak[mirror] !== 0 && start - (peakAt[mirror] as number) > 2 * (PER_BIT / HOP)) {
      const strength = peak[mirror] as number;
      peak[mirror] = 0;
      found(((peakAt[mirror] as number) - 2 * WORD_HOPS * (DX_WORDS - 1)) * HOP, mirror === 1, strength);
    }
  }

  return {
    advance(): void {
      while (hop * HOP + 9 <= baseband.count()) {
        take();
        hop++;
      }
    },
  };
}

interface Turn {
  readonly one: boolean;
  readonly cos: number;
  readonly sin: number;
}

/** Phase at the start of each bit of a word, in thirds of a turn. */
function thirdsOf(bits: string): readonly Turn[] {
  let thirds = 0;
  return [...bits].map((bit) => {
    const turn = { one: bit === '1', cos: THIRD_COS[thirds] as number, sin: THIRD_SIN[thirds] as number };
    thirds = (thirds + (bit === '1' ? 2 : 1)) % 3;
    return turn;
  });
}
