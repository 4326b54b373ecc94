/**
 * What a day of a busy bus takes, from a part of it: `node scripts/bench.mjs network/day [millions of frames]`. One reader
 * takes all frames. 200 million are more than a bus of 250 kbit/s carries in a day, as a frame of eight bytes has 131 bits.
 */
import { createNetworkReader, type NetworkReaderOptions } from 'seahail/network';
import { busyBus } from './bus.ts';

const DAY_FRAMES = 200_000_000;
const FRAMES = busyBus(100_000);

const millions = Number(process.argv[2] ?? 20);
for (const other of ['keep', 'skip'] as const) {
  console.log(`other: '${other}'`, measured({ own: '232999871', other }));
}

function measured(options: NetworkReaderOptions): Record<string, number> {
  const reader = createNetworkReader(options);
  let readings = 0;
  const pass = (from: number): void => {
    for (const { id, data, at = 0 } of FRAMES) readings += reader.push({ id, data, at: at + from }).length;
  };
  pass(0);
  const before = heap();
  const begun = process.cpuUsage();
  const passes = millions * 10;
  for (let count = 1; count <= passes; count++) pass(count * 60_000);
  const { user, system } = process.cpuUsage(begun);
  const microseconds = (user + system) / (passes * FRAMES.length);
  return {
    'readings a frame': round(readings / ((passes + 1) * FRAMES.length)),
    'microseconds a frame': round(microseconds),
    'minutes for a day': round((microseconds * DAY_FRAMES) / 60e6),
    'heap grown, kB': round((heap() - before) / 1000),
  };
}

function heap(): number {
  globalThis.gc?.();
  return process.memoryUsage().heapUsed;
}

function round(value: number): number {
  return Number(value.toPrecision(3));
}
