import { decodeBits, encodeCall, type Verdict } from '../../burst/index.ts';
import type { Call } from '../../call/index.ts';

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

/**
 * A transmission as one receiver hears it: bits that fell together with another transmission come at random, others
 * wrong now and then; what is left is decoded by the real decoder.
 *
 * @param jams - spans of simulated time in which something else was on the receiver's air
 * @param bitErrorRate - share of bits that come wrong without any jam
 * @param random - gives values from 0 up to 1
 */
export function receive(
  { call, bits, start }: Transmission,
  jams: readonly (readonly [from: number, to: number])[],
  bitErrorRate: number,
  random: () => number,
): Heard | null {
  const flips = new Set<number>();
  for (const [from, to] of jams) {
    const first = Math.max(0, Math.floor((from - start) * BITS_PER_MILLISECOND));
    const last = Math.min(bits.length, Math.ceil((to - start) * BITS_PER_MILLISECOND));
    for (let bit = first; bit < last; bit++) if (random() < 0.5) flips.add(bit);
  }
  for (let bit = nextError(-1); bit < bits.length; bit = nextError(bit)) flips.add(bit);
  // What comes as it was sent is decoded as it was sent: tests/station/simulation.test.ts holds the burst room to it.
  if (flips.size === 0) return { call, verdict: 'clean' };
  const spoilt = [...bits].map((bit, index) => (flips.has(index) ? (bit === '1' ? '0' : '1') : bit)).join('');
  const decoded = decodeBits(spoilt);
  return decoded.ok ? { call: decoded.value.call, verdict: decoded.value.quality.verdict } : null;

  // The gap to the next error of independent errors is geometric: one draw an error, not one a bit.
  function nextError(after: number): number {
    if (!(bitErrorRate > 0)) return Infinity;
    return after + 1 + Math.floor(Math.log(1 - random()) / Math.log1p(-Math.min(bitErrorRate, 0.5)));
  }
}
