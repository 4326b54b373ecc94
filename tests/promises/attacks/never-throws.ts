// `parseX`, `findX`, `decodeX` and `readX` never throw, whatever they are given; `composeX`, `formatX`, `encodeX` and
// `writeX` throw a TypeError or a RangeError (DEVELOPERS.md, rule 3; docs/guide/result.md). What is given back is plain
// data (rule 1), and its issues have listed codes.
import { isDeepStrictEqual } from 'node:util';
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import { createReceiver } from '../../../src/audio/index.ts';
import { internationalPlan } from '../../../src/channel/international.ts';
import { createDirectory } from '../../../src/directory/index.ts';
import { createNetworkReader } from '../../../src/network/index.ts';
import { createSentenceReader, createSentenceRepairer } from '../../../src/sentence/index.ts';
import { createStation, step } from '../../../src/station/index.ts';
import { type Attack, notebook } from '../support/attack.ts';
import { pick } from '../support/calls.ts';
import { codes, functions } from '../support/doors.ts';
import { happening } from '../support/histories.ts';
import { aboutJunk, junk, TRAP } from '../support/junk.ts';

/** Calls of `npm run attack`. */
export const usual = 200_000;

/** What reads data from outside, beside the verbs: each is documented to take anything. */
const moreReaders = new Set([
  'identity.decodeCallAddress',
  'identity.isMmsi',
  'identity.checkCallSign',
  'administrations.administrationOf',
  'position.decodePosition',
  'position.refinePosition',
  'position.decodeArea',
  'channel.channelsAt',
  'channel.decodeChannel',
  'call.decodeFields',
  'call.checkCall',
  'station.restoreStation',
]);
const readers = Object.keys(functions).filter(
  (name) =>
    // A directory is the program's own.
    name !== 'directory.findStations' &&
    (/\.(parse|find|decode|read)[A-Z]/.test(name) || moreReaders.has(name)),
);
const makers = Object.keys(functions).filter((name) =>
  /\.(compose|format|encode|write|create|to[A-Z])/.test(name),
);

const good: readonly unknown[] = [
  internationalPlan,
  createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Tern of Ardle' }),
  '232 999 142',
  "56°20.33' N 006°30.12' W",
  '$CDDSC,20,2329991420,00,00,26,900072,,,,R,*2A\r\n',
  '22A',
  'mmsi,name\n232999142,Tern\n',
  Array.from({ length: 300 }, (_, at) => at & 1),
  { own: '232999871' },
  Uint8Array.from('RIFF\u0000\u0000\u0000\u0000WAVE', (one) => one.charCodeAt(0)),
];

/** The refusal of what a program, not the outside, gives: an instant, an option, or what no port delivers. */
const refusal = (error: unknown): boolean =>
  (error instanceof TypeError || error instanceof RangeError) &&
  /^(at|id|now|own|wait|waitSentences|direction|channel|push|reader|repairer|receiver|stationUpdates|create\w+)\b.*:/i.test(
    error.message,
  );

/**
 * Whether options, which are the program's own and not from outside, throw when they are looked at: that error is the
 * program's.
 */
function blames(options: readonly unknown[]): boolean {
  try {
    for (const one of options) {
      if (typeof one !== 'object' || one === null) continue;
      for (const key of ['length', 'own', 'now', 'direction', ...Object.keys(one)])
        String((one as Record<string, unknown>)[key]);
    }
    return false;
  } catch {
    return true;
  }
}

/** Issues and notices, wherever they are in an answer. */
function codesIn(value: unknown, found: string[] = []): string[] {
  if (value === null || typeof value !== 'object' || ArrayBuffer.isView(value)) return found;
  const { code, message } = value as { code?: unknown; message?: unknown };
  if (typeof code === 'string' && typeof message === 'string') found.push(code);
  for (const one of Object.values(value)) codesIn(one, found);
  return found;
}

/** Samples of sound are the one exception to plain data. */
function withoutSamples(value: unknown): unknown {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return value;
  if (ArrayBuffer.isView(value)) return [];
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, withoutSamples(one)]));
}

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  const given = (random: Random): unknown => (random.below(3) === 0 ? pick(random, good) : junk(random));

  /** What came out of a reader must be plain data with listed codes. */
  const checkAnswer = (name: string, answer: unknown, how: () => string): void => {
    const plain = withoutSamples(answer);
    try {
      if (plain !== undefined && !isDeepStrictEqual(JSON.parse(JSON.stringify(plain)), plain))
        notes.broken(`not plain data: ${name}`, how());
      structuredClone(plain);
    } catch (error) {
      notes.broken(`not plain data: ${name}`, `${how()}: ${String(error)}`);
      return;
    }
    for (const code of codesIn(answer)) if (!codes.has(code)) notes.broken(`code not listed: ${code}`, how());
  };

  for (let tried = 0; tried < count; tried += 1) {
    const random = randomFrom(seed * 1_000_003 + tried);
    const with_ = Array.from({ length: random.below(4) }, () => given(random));
    const how = (): string =>
      `(${with_.map((one) => aboutJunk(one)).join(', ')}), seed ${seed}, try ${tried}`;
    switch (tried % 4) {
      case 0: {
        const name = pick(random, makers);
        try {
          (functions[name] as (...all: unknown[]) => unknown)(...with_);
        } catch (error) {
          const own = error instanceof Error && error.message === TRAP;
          if (!own && !(error instanceof TypeError || error instanceof RangeError))
            notes.broken(`throws another error: ${name}`, `${how()}: ${String(error)}`);
        }
        notes.count('makers called');
        break;
      }
      case 1: {
        const name = pick(random, Object.keys(streams));
        try {
          checkAnswer(name, (streams[name] as Stream)(with_), how);
        } catch (error) {
          if (!refusal(error)) notes.broken(`throws: ${name}`, `${how()}: ${String(error)}`);
        }
        notes.count('streams fed');
        break;
      }
      default: {
        const name = pick(random, readers);
        try {
          checkAnswer(name, (functions[name] as (...all: unknown[]) => unknown)(...with_), how);
        } catch (error) {
          const options = with_.slice(1);
          if (!refusal(error) && !blames(options))
            notes.broken(`throws: ${name}`, `${how()}: ${String(error)}`);
        }
        notes.count('readers called');
      }
    }
  }
  return notes.outcome({ readers: readers.length, makers: makers.length });
};

type Stream = (pieces: readonly unknown[]) => unknown;

/** Streaming readers and the station, each set up right and fed junk. */
const streams: Readonly<Record<string, Stream>> = {
  createSentenceReader: (pieces) => {
    const reader = createSentenceReader({ own: '232999871' });
    return [...pieces.flatMap((one) => reader.push(one as never, pieces[0] as never)), ...reader.flush()];
  },
  createSentenceRepairer: (pieces) => {
    const repairer = createSentenceRepairer();
    return [...pieces.map((one) => repairer.push(one as never)), repairer.flush()];
  },
  createNetworkReader: (pieces) => {
    const reader = createNetworkReader({});
    return pieces.flatMap((one) => reader.push(one as never));
  },
  createReceiver: (pieces) => {
    const heard: unknown[] = [];
    const receiver = createReceiver({
      sampleRate: 8000,
      onReception: (one) => heard.push(one),
      onIssue: (one) => heard.push(one),
    });
    for (const one of pieces) receiver.push(one as never);
    receiver.flush();
    return heard;
  },
  step: (pieces) => {
    let state = createStation({ mmsi: '232999871' });
    const random = randomFrom(pieces.length);
    const turns = pieces.map((one) => {
      const event = happening(random, state);
      const key = pick(random, Object.keys(event ?? {}));
      state = step(state, { ...event, [key]: one } as never).state;
      return step(state, one as never);
    });
    return turns.map(({ effects }) => effects);
  },
};
