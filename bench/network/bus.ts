import { composePositionReply } from 'seahail/call';
import { type NetworkFrame, writeAisFrames, writeCallFrames } from 'seahail/network';
import type { AisReport } from 'seahail/report';
import { valueOf } from 'seahail/result';
import { randomFrom } from '../sentence/log.ts';

/** Single-frame groups of a busy bus, with how many of a hundred messages they are. Common practice, no source. */
const SINGLE: readonly (readonly [pgn: number, share: number])[] = [
  [127250, 18],
  [127251, 14],
  [127245, 10],
  [127257, 8],
  [127488, 8],
  [129025, 10],
  [129026, 5],
  [130306, 8],
  [128259, 3],
  [128267, 3],
];
/** Fast packets of random bytes with their length and share. */
const FAST: readonly (readonly [pgn: number, length: number, share: number])[] = [
  [129029, 43, 1],
  [127489, 26, 4],
  [129540, 147, 1],
];
/** AIS messages with their share. */
const AIS: readonly (readonly [message: number, station: AisReport['station'], share: number])[] = [
  [1, 'ship-class-a', 3],
  [18, 'ship-class-b', 2],
  [24, 'ship-class-b', 1],
  [5, 'ship-class-a', 1],
];

/** The fast packets of {@link busyBus}. */
export const FAST_GROUPS: ReadonlySet<number> = new Set([
  129029, 127489, 129540, 129038, 129039, 129809, 129794, 129808,
]);

const SINGLE_HUNDRED = SINGLE.flatMap(([pgn, share]) => Array.from({ length: share }, () => pgn));
const FAST_MIX = [...FAST, ...AIS].flatMap((row) => Array.from({ length: row[2] }, () => row));

/**
 * Invented frames of a busy bus: instruments, engines, satellites, AIS and a call now and then, from ten senders whose
 * fast packets lie between each other's frames. Bytes are random, but positions and AIS reports are possible ones.
 */
export function busyBus(count: number, seed = 1): NetworkFrame[] {
  const random = randomFrom(seed);
  const below = (most: number): number => Math.floor(random() * most);
  const call = composePositionReply({ from: '232999142', to: '232999871', position: null, time: null });
  const frames: NetworkFrame[] = [];
  const waiting: NetworkFrame[][] = [];
  let sequence = 0;
  const at = (): number => 1_780_323_000_000 + frames.length * 0.5;
  const id = (pgn: number, source: number): number => 3 * 2 ** 26 + pgn * 256 + source;
  while (frames.length < count) {
    const single = SINGLE_HUNDRED[below(100)];
    if (single !== undefined) {
      const data = Uint8Array.from({ length: 8 }, () => below(256));
      if (single === 129025) data[3] = data[7] = below(16);
      frames.push({ id: id(single, below(10)), data, at: at() });
    } else {
      sequence = (sequence + 1) % 8;
      if (below(100) === 0) {
        waiting.push([...valueOf(writeCallFrames(call, { source: 3, sequence }))]);
      } else {
        const [kind, what] = FAST_MIX[below(FAST_MIX.length)] as (typeof FAST_MIX)[number];
        waiting.push(
          typeof what === 'number'
            ? packet(id(kind, below(10)), what, sequence, below)
            : [...writeAisFrames(reportOf(kind, what, below), { source: below(10), sequence })],
        );
      }
    }
    // One frame of each packet under way: they lie between each other.
    for (const rest of waiting) {
      const next = rest.shift();
      if (next !== undefined) frames.push({ ...next, at: at() });
    }
    while (waiting[0]?.length === 0) waiting.shift();
  }
  return frames;
}

function reportOf(
  message: number,
  station: AisReport['station'],
  below: (most: number) => number,
): AisReport {
  return {
    message,
    station,
    mmsi: String(232_999_000 + below(1000)),
    position: { latitude: 56 + below(1e6) / 1e6, longitude: -7 + below(1e6) / 1e6 },
    speed: below(300) / 10,
    course: below(3600) / 10,
    heading: below(360),
    name: `VESSEL ${below(1000)}`,
    type: 36,
  };
}

function packet(
  id: number,
  length: number,
  sequence: number,
  below: (most: number) => number,
): NetworkFrame[] {
  const frames = 1 + Math.ceil((length - 6) / 7);
  return Array.from({ length: frames }, (_, number) => {
    const data = Uint8Array.from({ length: 8 }, () => below(256));
    data[0] = sequence * 32 + number;
    if (number === 0) data[1] = length;
    return { id, data };
  });
}
