import { describe, expect, it } from 'vitest';
import type { Reading } from '../../src/report/index.ts';
import { checksumOf } from '../../src/sentence/frame/checksum.ts';
import {
  createSentenceReader,
  type ReaderOptions,
  readSentences,
  type SentenceReader,
} from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

// Stations and places are invented. What is the same event: common practice, no source.
const eventsOf = (readings: readonly Reading[]): string[] =>
  readings.flatMap((reading) => (reading.kind === 'call' ? [`${reading.event}.${reading.repeat}`] : []));
const events = (...bodies: readonly string[]): string[] =>
  eventsOf(readSentences(bodies.map((body) => line(body)).join('')));
const report = 'CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,';
const alert = 'CDDSC,12,2329992180,,05,00,1562000630,1042,,,S,';

describe('a report or alert sent again', () => {
  it.each([
    ['the same', report, report],
    ['with its padding zero lost', report, report.replace('1420', '142')],
    ['an alert with a category', alert, alert.replace(',,05', ',12,05')],
    [
      'an alert without position and time',
      'CDDSC,12,2329992180,,05,00,,,,,S,',
      'CDDSC,12,2329992180,,05,00,,,,,S,',
    ],
    [
      'a relay',
      'CDDSC,16,0023299900,12,12,00,,,2329992180,05,S,',
      'CDDSC,16,0023299900,12,12,00,,,2329992180,05,S,',
    ],
    ['an alert of the older layout', 'CDDSC,2329992180,12,12,05,00,,S', 'CDDSC,2329992180,12,12,05,00,,S'],
    ['with an expansion announced', report, `${report}E`],
  ])('is the same event: %s', (_, one, other) => {
    expect(events(one, other)).toEqual(['1.0', '1.1']);
  });

  it.each([
    ['of another station', report, report.replace('142', '563')],
    ['of another category', report, report.replace(',08,', ',00,')],
    ['of another place', report, report.replace('0630', '0631')],
    ['of another time', report, report.replace('1404', '1405')],
    ['with another end', report, report.replace(',B,', ',S,')],
    ['of another second telecommand', report, report.replace(',26,', ',00,')],
    ['of another nature', alert, alert.replace(',05,', ',06,')],
    ['of another kind', alert, alert.replace('CDDSC,12,2329992180,,', 'CDDSC,16,2329992180,12,')],
    [
      'for another ship',
      'CDDSC,16,0023299900,12,12,00,,,2329992180,05,S,',
      'CDDSC,16,0023299900,12,12,00,,,2329991420,05,S,',
    ],
    [
      'with another nature of her distress',
      'CDDSC,16,0023299900,12,12,00,,,2329992180,05,S,',
      'CDDSC,16,0023299900,12,12,00,,,2329992180,06,S,',
    ],
    ['without a time', report.replace('1404', ''), report.replace('1404', '')],
    ['without a known time', report.replace('1404', '8888'), report.replace('1404', '8888')],
    [
      'without a known place',
      report.replace('1562000630', '9999999999'),
      report.replace('1562000630', '9999999999'),
    ],
    ['without a place', report.replace('1562000630', ''), report.replace('1562000630', '')],
    [
      'without a whole place',
      report.replace('1562000630', '156200063'),
      report.replace('1562000630', '156200063'),
    ],
  ])('is another event: %s', (_, one, other) => {
    expect(events(one, other)).toEqual(['1.0', '2.0']);
  });

  it('is counted on', () => {
    expect(events(report, alert, report, alert, report)).toEqual(['1.0', '2.0', '1.1', '2.1', '1.2']);
  });

  it('is remembered among sixty-four, the latest of them', () => {
    const reports = Array.from({ length: 64 }, (_, index) =>
      report.replace('2329991420', `23299${String(index).padStart(4, '0')}0`),
    );
    const [first = '', second = ''] = reports;
    const other = report.replace('2329991420', '2329999990');
    expect(events(...reports, first).at(-1)).toBe('1.1');
    expect(events(...reports, other, first).at(-1)).toBe('66.0');
    expect(events(...reports, other, second).at(-1)).toBe('2.1');
    expect(events(...reports, first, other, first).at(-1)).toBe('1.2');
  });

  const received = (...at: readonly number[]): string[] => {
    const reader = createSentenceReader();
    return eventsOf(at.flatMap((instant) => reader.push(line(report), instant)));
  };
  const halfDay = 43_200_000;

  it('half a day later is the same event still, and later another, whichever clock came first', () => {
    expect(received(0, halfDay)).toEqual(['1.0', '1.1']);
    expect(received(0, halfDay + 1)).toEqual(['1.0', '2.0']);
    expect(received(halfDay + 1, 0)).toEqual(['1.0', '2.0']);
    expect(received(0, halfDay, 2 * halfDay)).toEqual(['1.0', '1.1', '1.2']);
  });

  it('by another clock cannot be told to be late', () => {
    const tagged = (seconds: number): string =>
      `\\c:${seconds}*${checksumOf(`c:${seconds}`)}\\${line(report)}`;
    expect(eventsOf(readSentences(tagged(1_000_000) + tagged(1_100_000)))).toEqual(['1.0', '2.0']);
    const reader = createSentenceReader();
    expect(eventsOf([...reader.push(tagged(1_000_000)), ...reader.push(line(report), 0)])).toEqual([
      '1.0',
      '1.1',
    ]);
    expect(eventsOf(readSentences(line(report) + tagged(1_100_000)))).toEqual(['1.0', '1.1']);
  });
});

describe('waiting for an expansion', () => {
  const call = line(`${report}E`);
  const expansion = line('CDDSE,1,1,A,2329991420,00,33001200');
  const fix = line('GPGLL,5620.0000,N,00630.0000,W,140412.00,A,A');
  const isFine = (readings: readonly Reading[]): boolean =>
    readings.some(
      (reading) =>
        reading.kind === 'call' &&
        reading.call.kind === 'position-reply' &&
        reading.call.position?.fraction !== undefined,
    );
  const stages = (readings: readonly Reading[]): string[] =>
    readings.flatMap((reading) => (reading.kind === 'call' ? [reading.stage] : []));

  it('goes on for twenty-four sentences where no time is known', () => {
    expect(isFine(readSentences(call + fix.repeat(23) + expansion))).toBe(true);
    expect(isFine(readSentences(call + fix.repeat(24) + expansion))).toBe(false);
    expect(isFine(readSentences(call + fix.repeat(2) + expansion, { waitSentences: 2 }))).toBe(false);
    expect(isFine(readSentences(call + fix.repeat(2) + expansion, { waitSentences: 3 }))).toBe(true);
    expect(isFine(readSentences(call + expansion, { waitSentences: 0 }))).toBe(false);
  });

  const waited = (milliseconds: number, options: ReaderOptions = {}): boolean => {
    const reader: SentenceReader = createSentenceReader(options);
    return isFine([...reader.push(call, 0), ...reader.push(expansion, milliseconds)]);
  };

  it('goes on for two seconds where it is, or as long as told', () => {
    expect([waited(2000), waited(2001)]).toEqual([true, false]);
    expect([waited(50, { waitMs: 50 }), waited(51, { waitMs: 50 })]).toEqual([true, false]);
    expect([waited(0, { waitMs: 0 }), waited(1, { waitMs: 0 })]).toEqual([true, false]);
  });

  it('ends with the stream', () => {
    const reader = createSentenceReader();
    reader.push(call);
    expect(stages(reader.flush())).toEqual(['final']);
    expect(reader.flush()).toEqual([]);
  });

  it('is no wait for what was not announced', () => {
    const reader = createSentenceReader();
    expect(stages(reader.push(line(report)))).toEqual(['final']);
    expect(reader.flush()).toEqual([]);
  });

  it('joins a query only to a call that announced it', () => {
    const query = line('CDDSE,1,1,Q,2329991420,02,');
    expect(readSentences(line(report) + query).map(({ kind }) => kind)).toEqual(['call', 'expansion']);
    expect(readSentences(line(report) + query)[1]?.notices).toEqual([]);
    expect(readSentences(call + query).map(({ kind }) => kind)).toEqual(['call']);
    expect(readSentences(query)[0]?.notices).toEqual([]);
  });

  it('keeps the sentences and their order of number', () => {
    const part = (number: number, sets: string): string => line(`CDDSE,2,${number},A,2329991420,${sets}`);
    const [reading] = readSentences(call + part(2, '02,0125') + part(1, '00,33001200'));
    expect(reading).toMatchObject({
      kind: 'call',
      call: { expansion: { speed: 12.5 }, position: { fraction: { latitude: 3300 } } },
      sources: [{ formatter: 'DSC' }, { formatter: 'DSE' }, { formatter: 'DSE' }],
      notices: [],
    });
  });

  it('is never ended by another last digit of the identity', () => {
    const of = (digit: number, text: string): string => text.replace('1420', `142${digit}`);
    const pair = (one: number, other: number): boolean =>
      isFine(
        readSentences(line(of(one, `${report}E`)) + line(of(other, 'CDDSE,1,1,A,2329991420,00,33001200'))),
      );
    expect([pair(0, 0), pair(3, 3), pair(3, 0), pair(0, 3), pair(1, 3)]).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
  });

  it('goes to the latest of two calls of a station, and then to the earlier', () => {
    const later = line(`${report.replace('1404', '1405')}E`);
    const readings = readSentences(call + later + expansion);
    expect(
      readings.map((reading) => reading.kind === 'call' && reading.notices.map(({ code }) => code)),
    ).toEqual([['sentence-expansion-missing'], []]);
    expect(isFine(readSentences(call + later + expansion + expansion).slice(0, 1))).toBe(true);
  });
});

describe('an option that is none', () => {
  it.each([
    [{ own: '12' }, "own: expected nine digits, got '12'"],
    [{ own: 'x232999871' }, "own: expected nine digits, got 'x232999871'"],
    [{ own: '2329998710' }, "own: expected nine digits, got '2329998710'"],
    [{ waitMs: -1 }, 'waitMs: expected milliseconds, got -1'],
    [{ waitSentences: -1 }, 'waitSentences: expected a count, got -1'],
    [{ waitSentences: Number.NaN }, 'waitSentences: expected a count, got NaN'],
    [{ now: Number.POSITIVE_INFINITY }, 'now: expected an instant in epoch milliseconds, got Infinity'],
  ])('%j is refused', (options, message) => {
    expect(() => createSentenceReader(options)).toThrow(new RangeError(message));
  });

  it('as the instant of a piece is refused', () => {
    expect(() => createSentenceReader().push('', Number.POSITIVE_INFINITY)).toThrow(
      new RangeError('at: expected an instant in epoch milliseconds, got Infinity'),
    );
  });
});

describe('a reading', () => {
  it('was received when the caller says, else the TAG block, else the stream, else the option', () => {
    const text = line('GPVTG,,T,,M,,N,,K,N');
    const tagged = `\\c:1767225600*${checksumOf('c:1767225600')}\\${text}`;
    const clock = line('GPZDA,140412.00,02,01,2026,00,00');
    const last = (log: string, at?: number, options?: ReaderOptions): unknown =>
      createSentenceReader(options).push(log, at).at(-1)?.at;
    expect(last(clock + tagged, 5, { now: 7 })).toBe(5);
    expect(last(clock + tagged, undefined, { now: 7 })).toBe(1_767_225_600_000);
    expect(last(clock + text, undefined, { now: 7 })).toBe(Date.UTC(2026, 0, 2, 14, 4, 12));
    expect(last(text, undefined, { now: 7 })).toBe(7);
    expect(last(text)).toBeNull();
  });

  it('of a query or a maker is never own position, a clock, AIS or a waypoint', () => {
    for (const body of ['PRMC,1', 'PGGLL,1', 'PZDA,1', 'CDWPQ,1', 'PAVDM,1']) {
      expect([body, readSentences(line(body))[0]?.kind]).toEqual([body, 'other']);
    }
  });

  it('of a call is told whole', () => {
    const text = line(report);
    const [reading] = readSentences(text, { own: '232999871', now: Date.UTC(2026, 5, 1, 14, 10) });
    expect(reading).toEqual({
      kind: 'call',
      line: 1,
      offset: 0,
      at: Date.UTC(2026, 5, 1, 14, 10),
      notices: [],
      event: 1,
      repeat: 0,
      stage: 'final',
      call: {
        kind: 'position-reply',
        to: { kind: 'station', mmsi: '232999871' },
        from: '232999142',
        category: 'safety',
        position: {
          kind: 'reported-position',
          latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
          longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
        },
        time: { hour: 14, minute: 4 },
        unsolicited: false,
      },
      direction: 'received',
      talker: 'CD',
      positionTime: { at: Date.UTC(2026, 5, 1, 14, 4), age: 360 },
      sources: [
        {
          kind: 'sentence',
          start: '$',
          form: 'standard',
          talker: 'CD',
          formatter: 'DSC',
          fields: ['20', '2329991420', '08', '21', '26', '1562000630', '1404', '', '', 'B', ''],
          checksum: 'right',
          tag: null,
          raw: text.trim(),
        },
      ],
    });
  });

  it('of a call without a time has no time of its position', () => {
    const at = Date.UTC(2026, 5, 1, 14, 10);
    const positionTime = (body: string): unknown => {
      const [reading] = readSentences(line(body), { now: at });
      return reading?.kind === 'call' && reading.positionTime;
    };
    expect(positionTime(report.replace('1404', '8888'))).toBeNull();
    expect(positionTime('CDDSC,20,2329991420,00,00,26,900072,,,,R,')).toBeNull();
  });

  it('of a lone expansion is told whole', () => {
    const text = line('CDDSE,1,1,A,2329991420,00,33001200');
    const [reading] = readSentences(text, { now: 7 });
    expect(reading).toMatchObject({
      kind: 'expansion',
      line: 1,
      offset: 0,
      at: 7,
      station: '232999142',
      flag: 'automatic',
      sets: [{ specifier: 100, symbols: [33, 0, 12, 0] }],
      sources: [{ raw: text.trim() }],
    });
  });
});
