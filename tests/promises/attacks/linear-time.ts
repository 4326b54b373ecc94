// Every parser runs in time linear in its input (DEVELOPERS.md, rule 10): eight times the input, at most ten times the
// work. Work is counted, not timed; a long run compares processor time as well, as a ratio.
import { randomFrom } from '../../../bench/receiver/random.ts';
import { createReceiver, readWav } from '../../../src/audio/index.ts';
import { decodeBits, decodeSoft, decodeStream } from '../../../src/burst/index.ts';
import { checkCall, decodeFields, describeCall } from '../../../src/call/index.ts';
import { channelsAt, findChannel, parseDesignator } from '../../../src/channel/index.ts';
import { unitedStatesPlan } from '../../../src/channel/united-states.ts';
import {
  createDirectory,
  findStations,
  readDirectoryCsv,
  readDirectoryJson,
  readVcards,
} from '../../../src/directory/index.ts';
import { checkCallSign, decodeCallAddress, parseIdentity } from '../../../src/identity/index.ts';
import {
  createNetworkReader,
  findNetworkFaults,
  type NetworkFrame,
  readNetworkLog,
} from '../../../src/network/index.ts';
import { decodeArea, decodePosition, parsePosition, toGeoJson, toGpx } from '../../../src/position/index.ts';
import { stationUpdates } from '../../../src/report/index.ts';
import {
  createSentenceReader,
  createSentenceRepairer,
  findFaults,
  parseSentence,
  readSentences,
} from '../../../src/sentence/index.ts';
import { createStation, restoreStation, step } from '../../../src/station/index.ts';
import { bitsOf } from '../support/air.ts';
import { type Attack, notebook } from '../support/attack.ts';
import { callOf } from '../support/calls.ts';
import { countingWork } from '../support/work.ts';

/** Size of the smaller input of `npm run attack`, in characters or elements; decoders take an eighth of it. */
export const usual = 16_000;

/** From so long an input on, processor time is compared as well. */
const TIMED = 16_000;

const bytesOf = (text: string): Uint8Array => Uint8Array.from(text, (one) => one.charCodeAt(0) & 0xff);
const repeated = (piece: string, size: number): string =>
  piece.repeat(Math.max(1, Math.ceil(size / piece.length)));
const call = '$CDDSC,20,2329991420,00,00,26,900072,,,,R,*2A';
const announced = '$CDDSC,20,2329991420,08,21,26,1561800632,1350,,,B,E*73';
const expansion = '$CDDSE,1,1,A,2329991420,00,50005000*19';
const part = '!AIVDM,9,1,1,B,H3N=8qQ@E8r0tJ058@hD0000000,0*1C';

/** Texts that a wire or a log may bring, by name. */
const texts: Readonly<Record<string, (size: number) => string>> = {
  'calls, CR LF': (size) => repeated(`${call}\r\n`, size),
  'calls, bare LF': (size) => repeated(`${call}\n`, size),
  'calls, bare CR': (size) => repeated(`${call}\r`, size),
  'no line end': (size) => repeated(call, size),
  'empty lines': (size) => repeated('\n', size),
  'expansions announced': (size) => repeated(`${announced}\r\n`, size),
  'expansions alone': (size) => repeated(`${expansion}\r\n`, size),
  pairs: (size) => repeated(`${announced}\r\n${expansion}\r\n`, size),
  'AIS never whole': (size) => repeated(`${part}\r\n`, size),
  dollars: (size) => repeated('$', size),
  backslashes: (size) => repeated('\\', size),
  commas: (size) => `$CDDSC${repeated(',', size)}`,
  blanks: (size) => `$CDDSC,${repeated(' ', size)}*00\r\n`,
  stars: (size) => repeated('*', size),
  digits: (size) => repeated('9', size),
  'control characters': (size) => repeated('\u0000\u0007', size),
};

/** Logs of the network: `candump` lines, and what is none. */
const networkLogs: Readonly<Record<string, (size: number) => string>> = {
  fixes: (size) => repeated('(1780323000.000000) can0 09F80123#004B942188F71FFC\n', size),
  'one packet again and again': (size) => repeated('can0 19FB1001#20C8010203040506\n', size),
  'no line end': (size) => repeated('can0 19FB1001#20C8010203040506 ', size),
  'digits only': (size) => repeated('9', size),
  'empty lines': (size) => repeated('\n', size),
  'blanks only': (size) => repeated(' ', size),
};

const plain = ['no line end', 'commas', 'blanks', 'digits'];

const csvRows = (row: (at: number) => string) => (size: number) =>
  `mmsi,name,groups\n${Array.from({ length: Math.ceil(size / 30) }, (_, at) => row(at)).join('\n')}`;
const shipAt = (at: number): string => String(232_000_001 + at);

type Reader = (size: number) => () => unknown;

const onTexts = (
  name: string,
  read: (text: string) => unknown,
  only: readonly string[] = Object.keys(texts),
): Record<string, Reader> =>
  Object.fromEntries(
    Object.entries(texts)
      .filter(([what]) => only.includes(what))
      .map(([what, make]) => [
        `${name}: ${what}`,
        (size) => {
          const text = make(size);
          return () => read(text);
        },
      ]),
  );

const cutIn = (text: string, length: number): string[] =>
  Array.from({ length: Math.ceil(text.length / length) }, (_, at) =>
    text.slice(at * length, (at + 1) * length),
  );

/** Calls one behind the other, each read where the one before ended (docs: `end`, where a next call may begin). */
const burstsInARow = (size: number): (() => unknown) => {
  const random = randomFrom(1);
  const bits: number[] = [];
  while (bits.length < size) bits.push(...bitsOf(callOf(random, 'test-call')));
  return () => {
    for (let from = 0, tries = 0; from < bits.length && tries < bits.length / 600; tries += 1) {
      const result = decodeBits(bits, { from });
      if (!result.ok) return;
      from = Math.max(from + 1, result.value.quality.end);
    }
  };
};

const listening = (samples: Float64Array) => () => {
  const receiver = createReceiver({ sampleRate: 8000, onReception: () => {} });
  receiver.push(samples);
  receiver.flush();
};

const readers: Readonly<Record<string, Reader>> = {
  ...onTexts('readSentences', (text) => readSentences(text, { own: '232999871' })),
  ...onTexts('readSentences, bytes', (text) => readSentences(bytesOf(text)), [
    'calls, bare LF',
    'blanks',
    'control characters',
  ]),
  ...onTexts('createSentenceReader, by 7', (text) => {
    const reader = createSentenceReader();
    for (const piece of cutIn(text, 7)) reader.push(piece, 0);
    reader.flush();
  }),
  ...onTexts('createSentenceRepairer, by 64', (text) => {
    const repairer = createSentenceRepairer({
      repair: ['blank-damage', 'identity-nine-digits', 'expansion-late'],
    });
    for (const piece of cutIn(text, 64)) repairer.push(piece);
    repairer.flush();
  }),
  ...onTexts('findFaults', (text) => findFaults(text)),
  ...onTexts('parseSentence', (text) => parseSentence(text), plain),
  ...onTexts('parseIdentity', parseIdentity, plain),
  ...onTexts('parsePosition', parsePosition, plain),
  ...onTexts('readDirectoryCsv', readDirectoryCsv),
  ...onTexts('readVcards', readVcards),
  stationUpdates: (size) => {
    const readings = readSentences(repeated(`${call}\r\n`, size));
    return () => stationUpdates(readings);
  },
  'parseIdentity: digits apart': (size) => {
    const text = repeated('2 3-', size);
    return () => parseIdentity(text);
  },
  checkCallSign: (size) => () => checkCallSign('M'.repeat(size)),
  decodeCallAddress: (size) => () => decodeCallAddress('2'.repeat(size)),
  'parsePosition: degrees': (size) => () => parsePosition('5° '.repeat(size / 3)),
  decodePosition: (size) => () => decodePosition('1'.repeat(size), '1'.repeat(size)),
  decodeArea: (size) => () => decodeArea('1'.repeat(size)),
  findChannel: (size) => () => findChannel(unitedStatesPlan, `${' '.repeat(size)}22a`),
  parseDesignator: (size) => () => parseDesignator('ch '.repeat(size / 3)),
  channelsAt: (size) => () => channelsAt(unitedStatesPlan, `156.5${'0'.repeat(size)}`),
  'readDirectoryCsv: ships': (size) => {
    const text = csvRows((at) => `${shipAt(at)},Tern ${at},023299905`)(size);
    return () => readDirectoryCsv(text);
  },
  'readDirectoryCsv: one ship again': (size) => {
    const text = csvRows((at) => `232999142,Tern ${at},0232999${String(at % 100).padStart(2, '0')}`)(size);
    return () => readDirectoryCsv(text);
  },
  'readDirectoryCsv: open quotes': (size) => {
    const text = csvRows(() => '"232999142,Tern')(size);
    return () => readDirectoryCsv(text);
  },
  'readDirectoryCsv: bad bytes': (size) => {
    const bytes = bytesOf(`mmsi\n${'\u00ff\u00fe'.repeat(size / 2)}`);
    return () => readDirectoryCsv(bytes as never);
  },
  'readDirectoryJson: ships': (size) => {
    const stations = Array.from({ length: Math.ceil(size / 80) }, (_, at) => jsonStation(shipAt(at), at));
    const text = JSON.stringify({ kind: 'directory', stations });
    return () => readDirectoryJson(text);
  },
  'readDirectoryJson: one ship again': (size) => {
    const stations = Array.from({ length: Math.ceil(size / 80) }, (_, at) => jsonStation('232999142', at));
    const text = JSON.stringify({ kind: 'directory', stations });
    return () => readDirectoryJson(text);
  },
  'readDirectoryJson: nested': (size) => {
    const text = `{"kind":"directory","stations":${'['.repeat(Math.min(size, 4000))}${']'.repeat(Math.min(size, 4000))}}`;
    return () => readDirectoryJson(text);
  },
  'readVcards: cards': (size) => {
    const text = repeated('BEGIN:VCARD\r\nVERSION:4.0\r\nFN:Tern\r\nX-MMSI:232999142\r\nEND:VCARD\r\n', size);
    return () => readVcards(text);
  },
  'readVcards: one folded line': (size) => {
    const text = `BEGIN:VCARD\r\nVERSION:4.0\r\nNOTE:${'a\r\n '.repeat(size / 4)}\r\nEND:VCARD\r\n`;
    return () => readVcards(text);
  },
  'readVcards: never an end': (size) => {
    const text = repeated('BEGIN:VCARD\r\n', size);
    return () => readVcards(text);
  },
  findStations: (size) => {
    const known = createDirectory(
      Array.from({ length: Math.ceil(size / 80) }, (_, at) => ({
        mmsi: shipAt(at),
        origin: 'typed',
        name: `Tern ${at}`,
      })),
    );
    return () => findStations(known, 'tern');
  },
  'decodeBits: noise': (size) => {
    const random = randomFrom(2);
    const bits = Array.from({ length: size }, () => random.below(2));
    return () => decodeBits(bits);
  },
  'decodeBits: dots': (size) => () => decodeBits('10'.repeat(size / 2)),
  'decodeBits: bare phasing': (size) => {
    const phasing = [...bitsOf({ characters: [118, 118, 127] })].slice(0, 160).join('');
    return () => decodeBits(repeated(phasing, size));
  },
  'decodeBits: calls in a row': burstsInARow,
  'decodeSoft: noise': (size) => {
    const random = randomFrom(3);
    const soft = Float64Array.from({ length: size }, () => 3 * random.normal());
    return () => decodeSoft(soft);
  },
  'decodeStream: symbols': (size) => () => decodeStream(Array.from({ length: size }, (_, at) => at % 128)),
  'decodeStream: phasing': (size) => () =>
    decodeStream(Array.from({ length: size }, (_, at) => (at % 2 === 0 ? 125 : 111 - ((at >> 1) % 8)))),
  'createReceiver: noise': (size) => {
    const random = randomFrom(4);
    return listening(Float64Array.from({ length: size * 4 }, () => 0.1 * random.normal()));
  },
  'createReceiver: silence': (size) => listening(new Float64Array(size * 4)),
  'createReceiver: bare phasing': (size) => {
    const bits = [...bitsOf({ characters: [118, 118, 127] })].slice(0, 180);
    const samples = new Float64Array(size * 4);
    for (let at = 0, phase = 0; at < samples.length; at += 1) {
      samples[at] = 0.3 * Math.sin(phase);
      phase +=
        (2 * Math.PI * (bits[Math.floor((at * 1200) / 8000) % bits.length] === 1 ? 1300 : 2100)) / 8000;
    }
    return listening(samples);
  },
  'readWav: chunks': (size) => {
    const chunk = 'LIST\u0002\u0000\u0000\u0000ab';
    const bytes = bytesOf(`RIFF\u0000\u0000\u0000\u0000WAVE${repeated(chunk, size)}`);
    return () => readWav(bytes);
  },
  'readWav: samples': (size) => {
    const head = bytesOf(
      'RIFF\u0000\u0000\u0000\u0000WAVEfmt \u0010\u0000\u0000\u0000\u0001\u0000\u0001\u0000\u0080\u003e\u0000\u0000\u0000\u007d\u0000\u0000\u0002\u0000\u0010\u0000data\u0000\u0000\u0000\u0000',
    );
    const bytes = new Uint8Array(head.length + size);
    bytes.set(head);
    return () => readWav(bytes);
  },
  ...Object.fromEntries(
    Object.entries(networkLogs).flatMap(([what, make]) =>
      Object.entries({ readNetworkLog, findNetworkFaults }).map(([name, read]): [string, Reader] => [
        `${name}: ${what}`,
        (size) => {
          const log = make(size);
          return () => read(log);
        },
      ]),
    ),
  ),
  'createNetworkReader: packets never whole': (size) => {
    const frames = Array.from({ length: size / 16 }, (_, at): NetworkFrame => {
      const first = Uint8Array.of((at % 8) << 5, 200, 1, 2, 3, 4, 5, 6);
      return { id: 0x19fb1000 + (at % 250), data: first };
    });
    return () => {
      const reader = createNetworkReader();
      for (const frame of frames) reader.push(frame);
      reader.flush();
    };
  },
  'restoreStation: dialogues': (size) => {
    const state = step(createStation({ mmsi: '232999871' }), {
      kind: 'received',
      at: 1,
      call: {
        kind: 'test-call',
        from: '232999142',
        to: { kind: 'station', mmsi: '232999563' },
        category: 'safety',
      },
      verdict: 'clean',
    }).state;
    const dialogue = {
      id: 1,
      procedure: 'incoming',
      phase: 'shown',
      openedAt: 0,
      changedAt: 0,
      waits: {},
      call: null,
    };
    const stored = {
      ...state,
      dialogues: Array.from({ length: size / 100 }, (_, id) => ({ ...dialogue, id })),
    };
    return () => restoreStation(stored);
  },
  'decodeFields: rest': (size) => {
    const fields = {
      ...decodeFields({} as never).call.asReceived,
      rest: Array.from({ length: size }, (_, at) => at % 128),
    };
    return () => {
      const { call } = decodeFields(fields as never);
      describeCall(call);
      checkCall(call);
    };
  },
  'toGpx, toGeoJson': (size) => {
    const marks = Array.from({ length: size / 50 }, (_, at) => ({
      position: { latitude: 56, longitude: -6 - at / 1e5 },
      name: `Tern & ${at}`,
    }));
    return () => [toGpx(marks, { creator: 'Merrow' }), toGeoJson(marks)];
  },
};

function jsonStation(mmsi: string, at: number): object {
  return {
    mmsi,
    kind: 'ship',
    name: `Tern ${at}`,
    groups: [],
    origins: { entry: 'typed', name: 'typed' },
    extra: [{ label: `Berth ${at}`, text: 'x' }],
  };
}

const cpu = (run: () => unknown): number => {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return user + system;
};

/** Least processor time of some runs, in microseconds. */
const leastCpu = (run: () => unknown, times: number): number =>
  Math.min(...Array.from({ length: times }, () => cpu(run)));

/**
 * The smaller input and the larger one: decoders do more for each bit than readers for each character. The smaller one
 * holds more than the longest call, whose end would cost less than its middle.
 */
function inputs(name: string, size: number): readonly [() => unknown, () => unknown] {
  const make = readers[name] as Reader;
  const length =
    name === 'decodeBits: bare phasing'
      ? size / 2.4
      : /phasing/.test(name)
        ? size / 24
        : /^(decode|createReceiver)/.test(name)
          ? size / 8
          : size;
  return [make(length), make(8 * length)];
}

export const attack: Attack = ({ count: size }) => {
  const notes = notebook();
  const table: Record<string, string> = {};
  const names = Object.keys(readers);
  countingWork((workOf) => {
    for (const name of names) {
      const [small, large] = inputs(name, size);
      // The first run fills what is made once.
      small();
      const work = [workOf(small), workOf(large)] as const;
      const growth = work[1] / work[0];
      notes.count('readers');
      table[name] = `work ${work[0]} to ${work[1]}: ${growth.toFixed(1)} times`;
      if (growth > 10) notes.broken(`more than linear: ${name}`, table[name]);
    }
  });
  for (const name of size < TIMED ? [] : names) {
    const [small, large] = inputs(name, size);
    const time = leastCpu(large, 3);
    const ratio = time / Math.max(1, leastCpu(small, 9));
    table[name] += `; processor time ${(time / 1000).toFixed(1)} ms, ${ratio.toFixed(1)} times`;
    // Short times say nothing; and one more look before a verdict.
    if (time > 30_000 && ratio > 10 && leastCpu(large, 5) / leastCpu(small, 40) > 10) {
      notes.broken(`slower than linear: ${name}`, table[name] as string);
    }
  }
  return notes.outcome(table);
};
