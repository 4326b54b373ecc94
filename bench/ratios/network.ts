import { createNetworkReader, formatFrameLine, type NetworkFrame, readNetworkLog } from 'seahail/network';
import { busyBus, FAST_GROUPS } from '../network/bus.ts';
import { type Figure, ratioOf } from './ratio.ts';

const FRAMES = 20_000;

export function networkFigures(): Figure[] {
  const frames = busyBus(FRAMES);
  const text = frames.map((frame) => formatFrameLine(frame)).join('\n');
  const added = 'a loop that adds up their bytes and keeps nothing';
  const joined = 'a loop that splits identifiers, joins fast packets and copies payloads, without a check';
  return [
    {
      what: 'frames of a busy bus read, text log',
      beside: 'splitting it into words and hexadecimal bytes',
      ratio: ratioOf({ subject: () => readNetworkLog(text).length, yardstick: () => split(text) }),
      goal: 6,
    },
    {
      what: 'frames of a busy bus read, one by one',
      beside: joined,
      ratio: ratioOf({ subject: () => read(frames), yardstick: () => join(frames) }),
      goal: 6,
    },
    {
      what: 'frames of a busy bus read, one by one',
      beside: added,
      ratio: ratioOf({ subject: () => read(frames), yardstick: () => sum(frames) }),
    },
    {
      what: 'frames of a busy bus read, groups without a reading skipped',
      beside: added,
      ratio: ratioOf({ subject: () => read(frames, 'skip'), yardstick: () => sum(frames) }),
      goal: 6,
    },
  ];
}

function read(frames: readonly NetworkFrame[], other?: 'skip'): number {
  const reader = createNetworkReader({ own: '232999871', other });
  let readings = 0;
  for (const frame of frames) readings += reader.push(frame).length;
  return readings + reader.flush().length;
}

function split(text: string): number {
  let sum = 0;
  for (const line of text.split('\n')) {
    const data = line.slice(line.indexOf('#') + 1);
    for (let at = 0; at < data.length; at += 2) sum += Number.parseInt(data.slice(at, at + 2), 16);
  }
  return sum;
}

/**
 * What no reader of this bus can do without: which parameter group a frame has and from whom, the bytes of fast packets
 * in one piece, a payload that outlives the frame. It takes for granted that frames come in order and none is lost.
 */
function join(frames: readonly NetworkFrame[]): number {
  const open = new Map<number, { payload: Uint8Array; left: number }>();
  let bytes = 0;
  for (const { id, data, at } of frames) {
    const format = (id >>> 16) & 255;
    const specific = (id >>> 8) & 255;
    const pgn = ((id >>> 8) & 0x3ff00) + (format < 240 ? 0 : specific);
    let payload = data;
    if (FAST_GROUPS.has(pgn)) {
      const header = data[0] as number;
      const key = (header >>> 5) * 2 ** 29 + id;
      let from = (header & 31) * 7 - 2;
      if (from < 0) {
        const length = data[1] as number;
        open.set(key, { payload: new Uint8Array(length), left: Math.ceil((length + 1) / 7) });
        from = -2;
      }
      const packet = open.get(key);
      if (packet === undefined) continue;
      for (let index = from < 0 ? 2 : 1; index < data.length; index++)
        packet.payload[from + index] = data[index] as number;
      if (--packet.left > 0) continue;
      open.delete(key);
      payload = packet.payload;
    } else payload = data.slice();
    const destination = format < 240 ? specific : 255;
    const message = { pgn, priority: id >>> 26, source: id & 255, destination, at, payload };
    bytes += message.payload.length;
  }
  return bytes;
}

function sum(frames: readonly NetworkFrame[]): number {
  let total = 0;
  for (const { id, data } of frames) {
    total += id;
    for (let index = 0; index < data.length; index++) total += data[index] as number;
  }
  return total;
}
