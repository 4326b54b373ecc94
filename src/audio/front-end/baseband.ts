import type { Correlations } from '../trellis/phase-trellis.ts';
import { BEFORE, bitFilter, PER_BIT, STEPS, TAPS } from './bit-filter.ts';
import { BASEBAND_RATE } from './front-end.ts';

/** Baseband samples held: 3.4 seconds, a power of two; an attempt of five alerts is read 2.9 s after its start. */
const HELD = 16_384;
const MASK: number = HELD - 1;

/** Where and how a run of bits lies in the baseband. */
export interface Place {
  /** Baseband instant of the first bit. */
  readonly start: number;
  /** Baseband samples to a bit: 4 when both clocks agree. */
  readonly perBit: number;
  /** Hertz by which both tones lie too high, after the mirror. */
  readonly offset: number;
  /** Whether the tones are the wrong way round. */
  readonly mirror: boolean;
  /** Radians by which the phase at the start lies beyond one of the steps that the trellis knows. */
  readonly phase: number;
}

/** The last few seconds of complex baseband, and the matched filter of a bit at any instant in them. */
export interface Baseband {
  push(re: number, im: number): void;
  /** Number of samples ever pushed: instants from `count - HELD` up to `count` can be read. */
  readonly count: () => number;
  /**
   * Correlations of `bits` bits with both tones, bit k beginning at baseband instant `start + k * perBit`, the whole
   * mixed down by `offset` hertz. With `mirror` the spectrum is turned over first, which makes a burst of inverted
   * polarity an ordinary one. What is not held reads as silence.
   */
  correlate(place: Place, bits: number, into: Correlations): void;
}

export function createBaseband(): Baseband {
  // The first samples stand at the end once more, so that the reach of any bit filter lies in one piece.
  const re = new Float32Array(HELD + TAPS);
  const im = new Float32Array(HELD + TAPS);
  const bank = bitFilter();
  let count = 0;
  return {
    push(x, y): void {
      const at = count & MASK;
      re[at] = x;
      im[at] = y;
      if (at < TAPS) {
        re[at + HELD] = x;
        im[at + HELD] = y;
      }
      count++;
    },
    count: () => count,
    correlate({ start, perBit, offset, mirror, phase }, bits, into): void {
      const turn = (-2 * Math.PI * offset) / BASEBAND_RATE;
      for (let k = 0; k < bits; k++) {
        const at = start + k * perBit;
        let first = Math.floor(at);
        let fine = Math.round((at - first) * STEPS);
        if (fine === STEPS) {
          first++;
          fine = 0;
        }
        let a = 0;
        let b = 0;
        let c = 0;
        let d = 0;
        const low = first - BEFORE;
        // What is not held, and what lies before or after it, is silence.
        const skipped = Math.max(0, count - HELD - low, -low);
        const last = Math.min(TAPS, count - low);
        let tap = (fine * TAPS + skipped) * 2;
        const from = low & MASK;
        for (let n = from + skipped; n < from + last; n++) {
          const x = re[n] as number;
          const y = im[n] as number;
          const g = bank[tap] as number;
          const h = bank[tap + 1] as number;
          a += x * g;
          b += y * h;
          c += x * h;
          d += y * g;
          tap += 2;
        }
        if (mirror) {
          b = -b;
          d = -d;
        }
        // The middle of the bit, where an offset of the tones turns the correlation to.
        const angle = turn * (at - start + PER_BIT / 2) - phase;
        const cos = angle === 0 ? 1 : Math.cos(angle);
        const sin = angle === 0 ? 0 : Math.sin(angle);
        into[4 * k] = (a - b) * cos - (d + c) * sin;
        into[4 * k + 1] = (a - b) * sin + (d + c) * cos;
        into[4 * k + 2] = (a + b) * cos - (d - c) * sin;
        into[4 * k + 3] = (a + b) * sin + (d - c) * cos;
      }
    },
  };
}
