// Every streaming reader, and the station, hold bounded memory however long they are fed (DEVELOPERS.md, rule 10):
// what is held after four times the stream is what was held after the first quarter. Heap is measured after a
// collection, not time; the streams are made so that whatever is kept for good would be.
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import { createReceiver } from '../../../src/audio/index.ts';
import { decodeStream } from '../../../src/burst/index.ts';
import { createNetworkReader } from '../../../src/network/index.ts';
import { createSentenceReader, createSentenceRepairer } from '../../../src/sentence/index.ts';
import { createStation, step } from '../../../src/station/index.ts';
import { stream } from '../support/air.ts';
import { type Attack, notebook } from '../support/attack.ts';
import { callOf, digits, shipOf } from '../support/calls.ts';
import { heardCall } from '../support/histories.ts';

/** Pieces in the first quarter of each stream, of `npm run attack`; a receiver gets a twentieth, of a tenth of a second. */
export const usual = 20_000;

/** More than this is kept for good. Caches that fill once are full after the first quarter. */
const MOST = 1_500_000;

function sentence(body: string, start = '$'): string {
  const sum = [...body].reduce((left, one) => left ^ one.charCodeAt(0), 0);
  return `${start}${body}*${sum.toString(16).toUpperCase().padStart(2, '0')}\r\n`;
}

/** Calls of ever new ships whose expansions never come, parts of AIS messages never whole, lines that never end. */
function textOf(random: Random): string {
  switch (random.below(4)) {
    case 0:
      return sentence(`CDDSC,20,${shipOf(random)}0,08,21,26,15618${digits(random, 5)},1350,,,B,E`);
    case 1:
      return sentence(`CDDSE,3,${1 + random.below(3)},A,${shipOf(random)}0,00,${digits(random, 8)}`);
    case 2:
      return sentence(`AIVDM,9,${1 + random.below(8)},${random.below(10)},A,H${digits(random, 50)},0`, '!');
    default:
      return digits(random, 80);
  }
}

/** Sets up a stream and gives what feeds it one piece more. */
const streams: Readonly<Record<string, (random: Random) => () => void>> = {
  createSentenceReader: (random) => {
    const reader = createSentenceReader({ own: '232999871' });
    let at = 0;
    return () => {
      at += 10;
      reader.push(textOf(random), at);
    };
  },
  'createSentenceReader, no time': (random) => {
    const reader = createSentenceReader();
    return () => void reader.push(textOf(random));
  },
  createSentenceRepairer: (random) => {
    const repairer = createSentenceRepairer();
    return () => void repairer.push(textOf(random));
  },
  createNetworkReader: (random) => {
    const reader = createNetworkReader();
    return () => {
      const id = [0x19f91000, 0x19fb1000, 0x19fa0400][random.below(3)] as number;
      const count = random.below(3) === 0 ? random.below(32) : 0;
      const data = Uint8Array.from({ length: 8 }, () => random.below(256));
      data[0] = (random.below(8) << 5) | count;
      if (count === 0) data[1] = 200;
      reader.push({ id: id + random.below(256), data });
    };
  },
  step: (random) => {
    let state = createStation({ mmsi: '232999871' });
    let at = 0;
    return () => {
      at += random.below(60_000);
      ({ state } = step(state, { kind: 'received', at, call: heardCall(random), verdict: 'clean' }));
    };
  },
  decodeStream: (random) => () => void decodeStream(stream(callOf(random))),
  createReceiver: (random) => {
    const receiver = createReceiver({ sampleRate: 8000, onReception: () => {} });
    return () => void receiver.push(Float32Array.from({ length: 800 }, () => 0.1 * random.normal()));
  },
};

const slow: Readonly<Record<string, number>> = { createReceiver: 20, decodeStream: 40, step: 8 };

function collector(): () => void {
  setFlagsFromString('--expose-gc');
  return runInNewContext('gc') as () => void;
}

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  const collect = collector();
  const held = (): number => {
    collect();
    collect();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    return heapUsed + arrayBuffers;
  };
  const table: Record<string, string> = {};
  for (const [name, open] of Object.entries(streams)) {
    const feed = open(randomFrom(seed));
    const pieces = Math.max(20, Math.ceil(count / (slow[name] ?? 1)));
    for (let piece = 0; piece < pieces; piece += 1) feed();
    const before = held();
    for (let piece = 0; piece < 3 * pieces; piece += 1) feed();
    const growth = held() - before;
    notes.count('streams');
    table[name] = `${pieces} pieces, then ${3 * pieces} more: ${(growth / 1000).toFixed(0)} kB more held`;
    if (growth > MOST) notes.broken(`memory grows: ${name}`, table[name]);
    // What a stream holds is held until it was measured.
    feed();
  }
  return notes.outcome(table);
};
