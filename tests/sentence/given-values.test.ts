import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composePositionRequest } from '../../src/call/index.ts';
import { createDirectory } from '../../src/directory/index.ts';
import type { Reading } from '../../src/report/index.ts';
import { stationUpdates } from '../../src/report/index.ts';
import {
  createSentenceReader,
  createSentenceRepairer,
  findFaults,
  formatSentence,
  parseSentence,
  type ReaderOptions,
  readSentences,
  writeAisSentences,
  writeOwnPosition,
  writeSentences,
  writeTarget,
  writeWaypoint,
} from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

// What a program without types may hand over. DEVELOPERS.md, rules 2 and 3 of every room.
const noText: readonly (readonly [string, unknown, string])[] = [
  ['undefined', undefined, 'undefined'],
  ['null', null, 'null'],
  ['a number', 5, 'number'],
  ['a list of bytes', [36, 10], 'object'],
  ['an ArrayBuffer', new ArrayBuffer(8), 'object'],
  ['another typed array', new Uint16Array([0x124]), 'object'],
  ['a DataView', new DataView(new ArrayBuffer(8)), 'object'],
  ['what cannot be looked into', revoked(), 'object'],
];

function revoked(): unknown {
  const { proxy, revoke } = Proxy.revocable({}, {});
  revoke();
  return proxy;
}

describe('neither text nor bytes', () => {
  it.each(noText)('%s: parseSentence fails', (_, value, type) => {
    expect(parseSentence(value as string)).toMatchObject({
      ok: false,
      issues: [
        {
          code: 'sentence-not-text',
          grade: 'error',
          params: { accepted: 'text' },
          at: [],
          expected: 'text',
          received: type,
        },
      ],
    });
  });

  it('bytes are no text to parseSentence', () => {
    expect(parseSentence(new Uint8Array(3) as unknown as string)).toMatchObject({
      ok: false,
      issues: [{ code: 'sentence-not-text' }],
    });
  });

  it.each(noText)('%s: readSentences and a reader tell the damage', (_, value, type) => {
    const issue = {
      code: 'sentence-not-text',
      grade: 'error',
      params: { accepted: 'stream' },
      at: [],
      expected: 'text or a Uint8Array',
      received: type,
    };
    const damaged = { kind: 'damaged', notices: [], sources: [], text: '', dropped: 0, issues: [issue] };
    expect(readSentences(value as string, { now: 7 })).toMatchObject([
      { ...damaged, line: 1, offset: 0, at: 7 },
    ]);
    const reader = createSentenceReader();
    reader.push('$GPZDA,,,,,,*48\r\n$GPZ');
    expect(reader.push(value as string, 9)).toMatchObject([{ ...damaged, line: 2, offset: 21, at: 9 }]);
    expect(reader.push('DA,,,,,,*48\r\n').map(({ kind }) => kind)).toEqual(['other']);
  });

  it.each(noText)('%s: findFaults finds no sentence', (_, value, type) => {
    const { findings, clean, characters } = findFaults(value as string);
    expect([findings.map(({ id }) => id), clean, characters]).toEqual([['no-sentence'], false, 0]);
    expect(findings[0]?.sightings).toMatchObject([
      {
        line: 1,
        field: null,
        seen: { code: 'sentence-not-text', params: { accepted: 'stream', received: type } },
      },
    ]);
  });

  it.each(noText)('%s: a repairer, which has no place to tell it, throws', (_, value, type) => {
    const repairer = createSentenceRepairer();
    expect(() => repairer.push(value as string)).toThrow(
      new TypeError(`push: expected text or a Uint8Array, got ${type}`),
    );
    expect(repairer.push('$\r\n').output).toBe('$\r\n');
  });

  it('nothing whatever makes parsing, reading and finding throw', () => {
    fc.assert(
      fc.property(
        fc.anything({ withTypedArray: true, withNullPrototype: true, withBigInt: true }),
        (value) => {
          for (const take of [parseSentence, readSentences, findFaults] as ((value: unknown) => unknown)[]) {
            const said = take(value);
            expect(JSON.parse(JSON.stringify(said))).toEqual(said);
          }
        },
      ),
    );
  });
});

describe('options that are none', () => {
  it.each([
    [{ position: { latitude: 999, longitude: 0 } }, RangeError],
    [{ position: { latitude: null, longitude: 0 } }, RangeError],
    [{ position: { latitude: 56, longitude: '6' } }, RangeError],
    [{ now: Number.NaN }, RangeError],
    [{ now: 1e300 }, RangeError],
    [{ now: '0' }, RangeError],
    [{ own: 232_999_142 }, TypeError],
    [{ own: null }, TypeError],
    [{ expect: { station: 232_999_142 } }, TypeError],
  ])('findFaults refuses %j before it looks', (options, error) => {
    expect(() => findFaults('', options as never)).toThrow(error);
  });

  it('identities are told to be text', () => {
    expect(() => findFaults('', { own: 232_999_142 } as never)).toThrow(
      new TypeError('own: expected an identity of nine digits as text, got number'),
    );
    expect(() => findFaults('', { expect: { station: 232_999_142 } } as never)).toThrow(
      new TypeError('station: expected an identity of nine digits as text, got number'),
    );
  });

  it.each([
    [{ direction: 'x' }, RangeError],
    [{ own: 232_999_871 }, TypeError],
    [{ waitMs: '5' }, RangeError],
    [{ waitSentences: '5' }, RangeError],
    [{ now: 8.64e15 + 2 }, RangeError],
  ])('reading refuses %j', (options, error) => {
    expect(() => readSentences('', options as never)).toThrow(error);
    expect(() => createSentenceReader(options as never)).toThrow(error);
  });

  it('an instant that is none is told, or what it is instead', () => {
    expect(() => readSentences('', { now: '0' as never })).toThrow(
      new RangeError('now: expected an instant in epoch milliseconds, got string'),
    );
    expect(() => readSentences('', { now: Number.NaN })).toThrow(
      new RangeError('now: expected an instant in epoch milliseconds, got NaN'),
    );
  });

  it('a direction is told by its two words', () => {
    const error = new RangeError("direction: expected one of received, commanded, got 'x'");
    expect(() => readSentences('', { direction: 'x' } as never)).toThrow(error);
    const call = composePositionRequest({ from: '232999871', to: '232999142' });
    expect(() => writeSentences(call, { direction: 'x' } as never)).toThrow(error);
    expect(() => writeSentences(call, {} as never)).toThrow(RangeError);
  });

  it.each([
    [{ repair: ['nonsense'] }, 'repair: expected one of tag-block, blank-damage,'],
    [{ repair: 'talker' }, 'repair: expected one of'],
    [{ reportAs: ['mark'] }, "reportAs: expected one of waypoint, target, got 'mark'"],
    [{ mostHeld: Number.POSITIVE_INFINITY }, 'mostHeld: expected a count, got Infinity'],
    [{ mostHeld: 1.5 }, 'mostHeld: expected a count, got 1.5'],
    [{ mostHeld: '8' }, 'mostHeld: expected a count, got 8'],
  ])('a repairer refuses %j', (options, message) => {
    expect(() => createSentenceRepairer(options as never)).toThrow(RangeError);
    expect(() => createSentenceRepairer(options as never)).toThrow(message);
  });

  it.each([
    [{ time: { hour: 1.5, minute: 2, second: 3 } }, 'time: expected a time of day, got 1.5:2:3'],
    [{ time: { hour: 1, minute: 2.5, second: 3 } }, 'time: expected a time of day, got 1:2.5:3'],
    [{ time: { hour: null, minute: 2, second: 3 } }, 'time: expected a time of day, got null:2:3'],
    [{ time: { hour: 1, minute: 2, second: null } }, 'time: expected a time of day, got 1:2:null'],
    [{ time: { hour: 1, minute: 2, second: '3' } }, 'time: expected a time of day, got 1:2:3'],
    [{ status: 'x' }, "status: expected one of lost, acquiring, tracking, got 'x'"],
    [{ status: 'toString' }, "status: expected one of lost, acquiring, tracking, got 'toString'"],
    [{ position: { latitude: null, longitude: null } }, 'got null, null'],
    [{ position: { latitude: '56', longitude: 0 } }, 'got 56, 0'],
  ])('writeTarget refuses %j', (change, message) => {
    const target = { number: 1, position: { latitude: 56.5, longitude: -6.25 }, name: 'TERN' };
    expect(() => writeTarget({ ...target, ...change } as never)).toThrow(RangeError);
    expect(() => writeTarget({ ...target, ...change } as never)).toThrow(message);
  });

  it('null is not the equator', () => {
    const position = { latitude: null, longitude: 0 } as never;
    expect(() => writeWaypoint({ position, name: '' })).toThrow(RangeError);
  });
});

describe('a writer that is given something else', () => {
  const call = composePositionRequest({ from: '232999871', to: '232999142' });

  it.each([
    ['writeSentences: expected options with direction', (value: never) => writeSentences(call, value)],
    ['formatSentence: expected the parts of a sentence', formatSentence],
    ['writeOwnPosition: expected a fix', writeOwnPosition],
    ['writeWaypoint: expected a waypoint', writeWaypoint],
    ['writeTarget: expected a target', writeTarget],
    ['writeAisSentences: expected an AIS report', writeAisSentences],
  ] as [string, (value: never) => unknown][])('says: %s', (message, write) => {
    expect(() => write(undefined as never)).toThrow(new TypeError(`${message}, got undefined`));
    expect(() => write(null as never)).toThrow(new TypeError(`${message}, got null`));
    expect(() => write(5 as never)).toThrow(TypeError);
  });

  it('names what an object must have', () => {
    for (const write of [formatSentence, writeOwnPosition, writeWaypoint, writeTarget, writeAisSentences])
      expect(() => write({} as never)).toThrow(/: expected .*, got an object$/);
  });
});

describe('instants', () => {
  // ECMA-262, time values: at most 8.64e15 milliseconds on either side of 1970.
  it.each([8.64e15 + 1, -8.64e15 - 1, 1e300])('%d is none: a reader refuses it', (at) => {
    expect(() => createSentenceReader().push('', at)).toThrow(
      new RangeError(`at: expected an instant in epoch milliseconds, got ${at}`),
    );
    expect(() => createSentenceReader({ now: at })).toThrow(RangeError);
  });

  it.each([8.64e15, -8.64e15])('%d is the last: a directory takes what was heard then', (at) => {
    const text = line('CDDSC,20,2329991420,08,21,26,,,,,R,');
    const readings = [...createSentenceReader().push(text, at), ...readSentences(text, { now: at })];
    expect(createDirectory(stationUpdates(readings)).stations[0]?.heardAt).toBe(at);
  });
});

describe('an option that is said to be undefined', () => {
  // Types too: this file is compiled with exactOptionalPropertyTypes.
  it('is as one that is left out', () => {
    const text = line('CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,');
    const reader: ReaderOptions = {
      direction: undefined,
      own: undefined,
      now: undefined,
      waitMs: undefined,
      waitSentences: undefined,
      unchecked: undefined,
    };
    expect(readSentences(text, reader)).toEqual(readSentences(text));
    expect(parseSentence('$GPZDA,,,,,,', { unchecked: undefined })).toMatchObject({ ok: false });
    expect(
      findFaults(text, { own: undefined, position: undefined, now: undefined, expect: undefined }),
    ).toEqual(findFaults(text));
    expect(findFaults(text, { expect: { station: undefined } })).toEqual(findFaults(text, { expect: {} }));
    const repairer: NonNullable<Parameters<typeof createSentenceRepairer>[0]> = {
      repair: undefined,
      reportAs: undefined,
      mostHeld: undefined,
    };
    expect(createSentenceRepairer(repairer).push(text)).toEqual(createSentenceRepairer().push(text));
    const call = composePositionRequest({ from: '232999871', to: '232999142' });
    expect(writeSentences(call, { direction: 'received', talker: undefined })).toEqual(
      writeSentences(call, { direction: 'received' }),
    );
    const target: Pick<Reading<'target'>['target'], 'number' | 'position' | 'name'> = {
      number: 1,
      position: { latitude: 1, longitude: 2 },
      name: 'X',
    };
    expect(
      writeTarget(
        { ...target, time: undefined, status: undefined, reference: undefined },
        { talker: undefined },
      ),
    ).toBe(writeTarget(target));
  });
});
