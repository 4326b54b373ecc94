import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Reading } from '../../src/report/index.ts';
import { createSentenceReader, parseSentence, readSentences } from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

const path = join(import.meta.dirname, '../../shared/sentence/worked-sentences.json');
const worked = (JSON.parse(readFileSync(path, 'utf8')) as { cases: { sentences: string[] }[] }).cases.flatMap(
  (entry) => entry.sentences,
);

function readIn(pieces: readonly (string | Uint8Array)[], at?: number): Reading[] {
  const reader = createSentenceReader();
  return [...pieces.flatMap((piece) => reader.push(piece, at)), ...reader.flush()];
}

/** Cuts a text at the given places. */
function cut(text: string, places: readonly number[]): string[] {
  const sorted = [0, ...places.map((place) => Math.floor(place * text.length)), text.length].sort(
    (a, b) => a - b,
  );
  return sorted.slice(1).map((end, index) => text.slice(sorted[index], end));
}

const piece = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...worked) },
  {
    weight: 1,
    arbitrary: fc.constantFrom('\r\n', '\n', '\r', '\n\r', '  ', '$', '!', '\\', '*', '$$$$', '\\\\\\'),
  },
  { weight: 1, arbitrary: fc.string({ maxLength: 40 }) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 3000 }).map((length) => 'x'.repeat(length)) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 300 }).map((length) => '\\a$b'.repeat(length)) },
);
const stream = fc
  .array(fc.tuple(piece, fc.constantFrom('\r\n', '\r\n', '\n', '\r', '')), { maxLength: 30 })
  .map((parts) => parts.flat().join(''));

describe('a reader', () => {
  it('gives the same readings wherever the chunks are cut', () => {
    fc.assert(
      fc.property(
        stream,
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 40 }),
        (text, places) => {
          const pieces = cut(text, places);
          expect(pieces.join('')).toBe(text);
          expect(readIn(pieces)).toEqual(readIn([text]));
        },
      ),
      { numRuns: 300 },
    );
  });

  it('gives the same readings byte by byte', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        const single = [...bytes].map((byte) => Uint8Array.of(byte));
        expect(readIn(single, 0)).toEqual(readIn([bytes], 0));
      }),
    );
  });

  it('never throws on any bytes or text, and its readings survive JSON', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.uint8Array({ maxLength: 2000 }), fc.string({ maxLength: 2000 }), stream),
        (input) => {
          const readings = readSentences(input);
          expect(JSON.parse(JSON.stringify(readings))).toEqual(readings);
        },
      ),
    );
  });

  it('never throws on sound sentences with any fields', () => {
    const formatter = fc.constantFrom(
      'DSC',
      'DSE',
      'RMC',
      'GLL',
      'GGA',
      'GNS',
      'ZDA',
      'WPL',
      'TLL',
      'VDM',
      'VDO',
    );
    const field = fc.oneof(
      fc.constantFrom(
        '',
        '12',
        '20',
        '02',
        '16',
        '23',
        'E',
        'S',
        'A',
        'N',
        'W',
        '2329998710',
        '1562000630',
        '55',
        '1404',
      ),
      fc.string({ unit: fc.constantFrom(...'0123456789'), maxLength: 17 }),
      fc.string({ unit: fc.constantFrom(...'0123456789.ANESWQR^:-'), maxLength: 12 }),
      fc.constantFrom('__proto__', 'constructor', 'toString', 'hasOwnProperty'),
    );
    const sentence = fc
      .tuple(formatter, fc.array(field, { maxLength: 16 }))
      .map(([name, fields]) => line([`CD${name}`, ...fields].join(',')));
    fc.assert(
      fc.property(
        fc.array(sentence, { maxLength: 12 }),
        fc.constantFrom('received', 'commanded'),
        (lines, direction) => {
          const readings = readSentences(lines.join(''), { direction, own: '232999871', now: 0 });
          expect(readings.filter((reading) => reading.kind === 'damaged')).toEqual([]);
          expect(JSON.parse(JSON.stringify(readings))).toEqual(readings);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])('takes %s for what it is', (name) => {
    expect(parseSentence(name).ok).toBe(false);
    expect(readSentences(line(`GP${name},1`))[0]?.kind).toBe('damaged');
    expect(readSentences(line(`CDWPL,5620.0,N,00630.0,W,${name}`))[0]).toMatchObject({ waypoint: { name } });
  });

  it('drops ten megabytes without a line end, counts them, and goes on', () => {
    const reader = createSentenceReader();
    const block = 'x'.repeat(1 << 20);
    for (let count = 0; count < 10; count += 1) expect(reader.push(block)).toEqual([]);
    const after = reader.push(`\r\n${worked[0]}\r\n`);
    expect(after).toMatchObject([
      { kind: 'damaged', dropped: 10 << 20, issues: [{ code: 'sentence-line-endless' }] },
      { kind: 'call', line: 2, offset: (10 << 20) + 2 },
    ]);
  });

  it('gives a damaged line the last time that is known', () => {
    const clock = line('GPRMC,140000,A,5620.00,N,00630.00,W,0.0,0.0,010626,,');
    const at = Date.UTC(2026, 5, 1, 14, 0);
    const damaged = (text: string, now?: number) =>
      readSentences(text, now === undefined ? {} : { now }).find(({ kind }) => kind === 'damaged')?.at;
    expect(damaged(`${clock}$CDDSC,20*00\r\n${clock}`, 1)).toBe(at);
    expect(damaged(`$CDDSC,20*00\r\n${clock}`, 1)).toBe(1);
    expect(damaged(`$CDDSC,20*00\r\n${clock}`)).toBeNull();
  });

  it.each([
    ['$', 1],
    ['\\', 1],
    ['*', 1],
    ['$GPGLL,', 1],
    [' ', 1],
  ])('takes a single line of %s in time linear in its length', (unit, megabytes) => {
    const text = unit.repeat((megabytes << 20) / unit.length);
    expect(readSentences(text).every((reading) => reading.kind === 'damaged')).toBe(true);
    expect(parseSentence(text).ok).toBe(false);
  });

  it('loses no undamaged call when every third line is damaged', () => {
    const alert = (ship: number): string =>
      line(`CDDSC,12,23299${String(ship).padStart(4, '0')}0,,05,00,1562000630,1042,,,S,`);
    fc.assert(
      fc.property(
        fc.array(
          fc.constantFrom(
            (text: string) => text.slice(0, 20),
            (text: string) => text.slice(20),
            (text: string) => text.replace('$', ''),
            (text: string) => text.replace('5', '6'),
            (text: string) => text.replace('\r\n', ''),
            (text: string) => `\\s:BROKEN${text}`,
            (text: string) => text.replace('*', '!'),
            (text: string) => `${'#'.repeat(5000)}${text.slice(5)}`,
            (text: string) => text.replace(/\*..\r\n/, ''),
          ),
          { minLength: 1, maxLength: 20 },
        ),
        (damages) => {
          const lines = damages.flatMap((damage, index) => [
            alert(index * 3),
            alert(index * 3 + 1),
            damage(alert(index * 3 + 2)),
          ]);
          const whole = damages.flatMap((_, index) => [index * 3, index * 3 + 1]);
          const heard = readSentences(lines.join('')).flatMap((reading) =>
            reading.kind === 'call' ? Number(reading.call.from?.slice(5)) : [],
          );
          expect(heard).toEqual(expect.arrayContaining(whole));
        },
      ),
    );
  });
});
