// What the CAN network or an AIS receiver brings is read, whatever it is: nothing throws, what comes out is plain data
// with listed codes, and each reading says where it was (DEVELOPERS.md, rules 1, 3 and 5; docs/guide/network.md).
import { isDeepStrictEqual } from 'node:util';
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import {
  createNetworkReader,
  decodeMessage,
  findNetworkFaults,
  isNetworkLog,
  type NetworkFrame,
  readNetworkLog,
} from '../../../src/network/index.ts';
import { stationUpdates } from '../../../src/report/index.ts';
import { findFaults, readSentences } from '../../../src/sentence/index.ts';
import { type Attack, notebook, show } from '../support/attack.ts';
import { pick } from '../support/calls.ts';
import { codes } from '../support/doors.ts';
import { junk } from '../support/junk.ts';

/** Streams of `npm run attack`. */
export const usual = 40_000;

/** Parameter groups of positions, calls, waypoints and AIS, by their numbers in public tables; the last few are nobody's. */
const groups = [
  129808, 129025, 129029, 129026, 127250, 127258, 126992, 129033, 130074, 129285, 129038, 129039, 129040,
  129041, 129793, 129794, 129798, 129802, 129809, 129810, 60928, 59904, 65280, 130816, 126208,
];
const byte = (random: Random): number =>
  pick(random, [0, 1, 0x20, 0x7f, 0x80, 0xfe, 0xff, random.below(256)]);
const bytesOf = (random: Random, count: number): Uint8Array =>
  Uint8Array.from({ length: count }, () => byte(random));

/** Identifier of 29 bits: priority, parameter group, source (SAE J1939-21, restated in the Linux kernel). */
const identifier = (random: Random): number =>
  pick(random, [2, 3, 6, 7]) * 2 ** 26 + pick(random, groups) * 256 + random.below(4);

/** Frames of one sender's message: the first says how long it is, each counts on; some are lost, doubled or changed. */
function framesOf(random: Random): NetworkFrame[] {
  const id = random.below(12) === 0 ? Math.floor(random.even() * 2 ** 32) : identifier(random);
  if (random.below(3) === 0) return [{ id, data: bytesOf(random, random.below(9)) }];
  const length = random.below(224);
  const sequence = random.below(8) << 5;
  const frames: NetworkFrame[] = [
    { id, data: Uint8Array.of(sequence, length, ...bytesOf(random, 6)), at: random.below(1e6) },
  ];
  for (let at = 6, number = 1; at < length; at += 7, number += 1)
    frames.push({ id, data: Uint8Array.of(sequence | (number & 31), ...bytesOf(random, 7)) });
  return frames.flatMap((frame) => {
    if (random.below(40) === 0) return [];
    return random.below(40) === 0 ? [frame, frame] : [frame];
  });
}

const hex = (data: Uint8Array): string =>
  Array.from(data, (one) => one.toString(16).padStart(2, '0')).join('');

/** Lines as the CAN tools of Linux write them, some damaged. */
function textLog(random: Random): string {
  const lines = Array.from({ length: 1 + random.below(4) }, () => framesOf(random))
    .flat()
    .map(
      ({ id, data }) =>
        `(${random.below(2 ** 31)}.${random.below(1e6)}) can0 ${id.toString(16)}#${hex(data)}`,
    );
  return damaged(random, lines.join(pick(random, ['\n', '\r\n', '\r', '\n\n'])));
}

function damaged(random: Random, text: string): string {
  const characters = [...text];
  for (let hits = random.below(6); hits > 0; hits -= 1)
    characters.splice(
      random.below(characters.length + 1),
      random.below(3),
      pick(random, ['#', ' ', '\u0000', '\ud800', '(', '[8]', 'ff', ',', '*', '\n', '\\', 'é']),
    );
  return characters.join('');
}

/** A capture file of SocketCAN frames (libpcap file format), some records cut or lengthened. */
function capture(random: Random): Uint8Array {
  const words: number[] = [
    0xd4,
    0xc3,
    0xb2,
    0xa1,
    2,
    0,
    4,
    0,
    ...Array.from({ length: 12 }, () => 0),
    227,
    0,
    0,
    0,
  ];
  for (const { id, data } of framesOf(random)) {
    const length = random.below(20) === 0 ? random.below(70_000) : 8 + data.length;
    const four = (value: number): number[] => [0, 8, 16, 24].map((shift) => (value >>> shift) & 0xff);
    words.push(...four(random.below(2 ** 31)), ...four(random.below(1e6)), ...four(length), ...four(length));
    words.push(...four((id | 0x8000_0000) >>> 0).reverse(), data.length, 0, 0, 0, ...data);
  }
  const bytes = Uint8Array.from(words);
  for (let hits = random.below(3); hits > 0; hits -= 1) bytes[random.below(bytes.length)] = byte(random);
  return bytes.subarray(0, random.below(4) === 0 ? random.below(bytes.length) : bytes.length);
}

/** Sentences of AIS: right checksum, payload of any length and any characters; parts of several. */
function aisText(random: Random): string {
  const lines = Array.from({ length: 1 + random.below(6) }, () => {
    const total = 1 + random.below(4);
    const payload = Array.from({ length: random.below(70) }, () =>
      String.fromCharCode(random.below(30) === 0 ? 32 + random.below(95) : 48 + random.below(72)),
    ).join('');
    const type = String.fromCharCode(48 + random.below(28));
    const body = `AIVDM,${total},${1 + random.below(total)},${random.below(10)},A,${type}${payload},${random.below(7)}`;
    const sum = [...body].reduce((left, one) => left ^ one.charCodeAt(0), 0);
    return `!${body}*${(sum & 0xff).toString(16).toUpperCase().padStart(2, '0')}`;
  });
  return damaged(random, `${lines.join('\r\n')}\r\n`);
}

const ways: Readonly<Record<string, (random: Random) => unknown>> = {
  frames: (random) => {
    const reader = createNetworkReader(random.below(2) === 0 ? {} : { own: '232999871', other: 'skip' });
    const frames = Array.from({ length: 1 + random.below(6) }, () => framesOf(random));
    // Senders take turns on the bus.
    const mixed = frames.flat().sort(() => random.even() - 0.7);
    const readings = mixed.flatMap((frame) =>
      reader.push(random.below(60) === 0 ? (junk(random) as NetworkFrame) : frame),
    );
    const all = [...readings, ...reader.flush()];
    return [
      all,
      stationUpdates(all),
      all.flatMap(({ sources }) => sources.map((one) => decodeMessage(one) ?? null)),
    ];
  },
  'text logs': (random) => {
    const log = textLog(random);
    return [isNetworkLog(log), readNetworkLog(log, { own: '232999871' }), findNetworkFaults(log)];
  },
  'capture files': (random) => {
    const log = capture(random);
    return [isNetworkLog(log), readNetworkLog(log), findNetworkFaults(log)];
  },
  'AIS sentences': (random) => {
    const text = aisText(random);
    const readings = readSentences(text, { own: '232999871', now: 0 });
    return [readings, stationUpdates(readings), findFaults(text)];
  },
};

function codesIn(value: unknown, found: Set<string> = new Set()): Set<string> {
  if (value === null || typeof value !== 'object') return found;
  const { code, message } = value as { code?: unknown; message?: unknown };
  if (typeof code === 'string' && typeof message === 'string') found.add(code);
  for (const one of Object.values(value)) codesIn(one, found);
  return found;
}

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  const names = Object.keys(ways);
  for (let tried = 0; tried < count; tried += 1) {
    const name = names[tried % names.length] as string;
    const how = show({ seed, tried, name });
    notes.count(name);
    try {
      const answer = (ways[name] as (random: Random) => unknown)(randomFrom(seed * 1_000_003 + tried));
      if (!isDeepStrictEqual(JSON.parse(JSON.stringify(answer)), answer))
        notes.broken(`not plain data: ${name}`, how);
      for (const code of codesIn(answer)) if (!codes.has(code)) notes.broken(`code not listed: ${code}`, how);
    } catch (error) {
      notes.broken(`throws: ${name}`, `${how}: ${error instanceof Error ? error.stack : String(error)}`);
    }
  }
  return notes.outcome();
};
