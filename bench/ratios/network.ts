import { createNetworkReader, frameLine, type NetworkFrame, readNetworkLog } from 'seahail/network';
import { busyBus } from '../network/bus.ts';
import { type Figure, ratioOf } from './ratio.ts';

const FRAMES = 5000;

export function networkFigures(): Figure[] {
  const frames = busyBus(FRAMES);
  const text = frames.map((frame) => frameLine(frame)).join('\n');
  return [
    {
      what: 'frames of a busy bus read, text log',
      beside: 'splitting it into words and hexadecimal bytes',
      ratio: ratioOf({ subject: () => readNetworkLog(text).length, yardstick: () => split(text) }),
      goal: 6,
    },
    {
      what: 'frames of a busy bus read, one by one',
      beside: 'a loop that keeps each frame as plain data, its bytes as hexadecimal text',
      ratio: ratioOf({ subject: () => read(frames), yardstick: () => hex(frames) }),
      goal: 6,
    },
    {
      what: 'frames of a busy bus read, one by one',
      beside: 'a loop that adds up their bytes and keeps nothing',
      ratio: ratioOf({ subject: () => read(frames), yardstick: () => sum(frames) }),
    },
  ];
}

function read(frames: readonly NetworkFrame[]): number {
  const reader = createNetworkReader({ own: '232999871' });
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

const HEX: readonly string[] = Array.from({ length: 256 }, (_, byte) => byte.toString(16).padStart(2, '0'));

/** The least that JSON-safe data of a frame takes. */
function hex(frames: readonly NetworkFrame[]): number {
  const kept: { id: number; at: number | undefined; payload: string }[] = [];
  for (const { id, data, at } of frames) {
    let payload = '';
    for (const byte of data) payload += HEX[byte];
    kept.push({ id, at, payload });
  }
  return kept.length;
}

function sum(frames: readonly NetworkFrame[]): number {
  let total = 0;
  for (const { id, data } of frames) {
    total += id;
    for (const byte of data) total += byte;
  }
  return total;
}
