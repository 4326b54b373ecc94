import { decodeBits, encodeCall, type Verdict } from '../burst/index.ts';
import type { Call } from '../call/index.ts';

/** One call on channel 70, from its first bit to its last. */
export interface Transmission {
  readonly sender: number;
  readonly call: Call;
  readonly bits: string;
  /** Milliseconds of simulated time. */
  readonly start: number;
  readonly end: number;
}

/** ITU-R M.493: 1200 baud on VHF. */
const BITS_PER_MILLISECOND = 1.2;

/** The bursts of a call sent a number of times without a gap. */
export function transmissionsOf(
  sender: number,
  call: Call,
  times: number,
  start: number,
): readonly Transmission[] {
  const { bits } = encodeCall(call);
  const length = bits.length / BITS_PER_MILLISECOND;
  return Array.from({ length: times }, (_, index) => ({
    sender,
    call,
    bits,
    start: start + index * length,
    end: start + (index + 1) * length,
  }));
}

/** What was heard of a transmission; `null` when nothing could be made of it. */
export interface Heard {
  readonly call: Call;
  readonly verdict: Verdict;
}

/** Spans of simulated time in which something else was on a receiver's air. */
export type Jams = readonly (readonly [from: number, to: number])[];

/**
 * The receivers of one transmission. Bits that fell together with another transmission come at random, the same for
 * all receivers with the same jams; others come wrong now and then, at each receiver on its own. What is left is
 * decoded by the real decoder.
 *
 * @param bitErrorRate - share of bits that come wrong without any jam
 * @param random - gives values from 0 up to 1
 * @returns what a receiver heard, given its jams
 */
export function receiversOf(
  { call, bits, start }: Transmission,
  bitErrorRate: number,
  random: () => number,
): (jams: Jams) => Heard | null {
  // What comes as it was sent is decoded as it was sent: tests/station/simulation.test.ts holds the burst room to it.
  const decoded = new Map<string, Heard | null>([[bits, { call, verdict: 'clean' }]]);
  const jammed = new Map<string, string>();
  return (jams) => {
    const key = jams.join();
    const spoilt = jammed.get(key) ?? flip(bits, jammedBits(jams));
    jammed.set(key, spoilt);
    const received = flip(spoilt, strayErrors());
    const known = decoded.get(received);
    if (known !== undefined) return known;
    const heard = decode(received);
    decoded.set(received, heard);
    return heard;
  };

  function jammedBits(jams: Jams): number[] {
    const flips: number[] = [];
    for (const [from, to] of jams) {
      const first = Math.max(0, Math.floor((from - start) * BITS_PER_MILLISECOND));
      const last = Math.min(bits.length, Math.ceil((to - start) * BITS_PER_MILLISECOND));
      for (let bit = first; bit < last; bit++) if (random() < 0.5) flips.push(bit);
    }
    return flips;
  }

  /** The gap to the next of independent errors is geometric: one draw an error, not one a bit. */
  function strayErrors(): number[] {
    const flips: number[] = [];
    if (!(bitErrorRate > 0)) return flips;
    const scale = Math.log1p(-Math.min(bitErrorRate, 0.5));
    for (let bit = -1; ; ) {
      bit += 1 + Math.floor(Math.log(1 - random()) / scale);
      if (bit >= bits.length) return flips;
      flips.push(bit);
    }
  }
}

function flip(bits: string, flips: readonly number[]): string {
  if (flips.length === 0) return bits;
  const turned = [...bits];
  for (const bit of flips) turned[bit] = turned[bit] === '1' ? '0' : '1';
  return turned.join('');
}

function decode(bits: string): Heard | null {
  const decoded = decodeBits(bits);
  return decoded.ok ? { call: decoded.value.call, verdict: decoded.value.quality.verdict } : null;
}
