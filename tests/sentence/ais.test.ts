import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AisReport, Reading } from '../../src/report/index.ts';
import { readSentences } from '../../src/sentence/index.ts';
import { bitsOf, lengths, sentencesOf, tables } from '../oracle/sentence-ais.ts';
import { line } from './arbitrary.ts';

const wire = (bodies: readonly string[]): string => bodies.map((body) => line(body, '!')).join('');
const reportOf = (reading: Reading | undefined): AisReport | null =>
  reading?.kind === 'ais' ? reading.report : null;
const codes = (readings: readonly Reading[]): string[] =>
  readings.flatMap(({ notices }) => notices.map(({ code }) => code));

const mmsi = fc.integer({ min: 1_000_000, max: 969_999_999 });
const longitude = fc.integer({ min: -108_000_000, max: 108_000_000 });
const latitude = fc.integer({ min: -54_000_000, max: 54_000_000 });
const text = (most: number): fc.Arbitrary<string> =>
  fc.string({ unit: fc.constantFrom(...'ABCXYZ 0129-/.'), maxLength: most });
const tenths = (most: number): fc.Arbitrary<number> => fc.integer({ min: 0, max: most });
const trimmed = (value: string): string | undefined => (value.trim() === '' ? undefined : value.trim());

describe('the tables of the oracle', () => {
  it.each(Object.entries(lengths))('message %s has %i bits (ITU-R M.1371-6, from memory)', (table, bits) => {
    expect(tables[table]?.reduce((sum, [, width]) => sum + width, 0)).toBe(bits);
  });
});

describe('an AIS message', () => {
  // Widely published sample sentences of position reports, from memory; their checksums hold.
  it.each([
    [
      '!AIVDM,1,1,,B,177KQJ5000G?tO`K>RA1wUbN0TKH,0*5C',
      { mmsi: '477553000', speed: 0, course: 51, heading: 181, status: 'moored', second: 15 },
      [47.58283, -122.34583],
    ],
    [
      '!AIVDM,1,1,,A,14eG;o@034o8sd<L9i:a;WF>062D,0*7D',
      {
        mmsi: '316001245',
        speed: 19.6,
        course: 235,
        heading: 235,
        status: 'under-way-using-engine',
        second: 7,
      },
      [49.20028, -123.87775],
    ],
  ])('%s', (sentence, report, [north, east]) => {
    const [reading] = readSentences(sentence);
    expect(reportOf(reading)).toMatchObject({ message: 1, station: 'ship-class-a', ...report });
    expect(reportOf(reading)?.position?.latitude).toBeCloseTo(north as number, 4);
    expect(reportOf(reading)?.position?.longitude).toBeCloseTo(east as number, 4);
  });

  it.each(['1', '2', '3', '4', '9', '18', '19', '21'])('%s tells identity, place and motion', (table) => {
    const values = fc.record({
      mmsi,
      longitude,
      latitude,
      speed: tenths(1022),
      course: tenths(3599),
      heading: fc.integer({ min: 0, max: 359 }),
      second: fc.integer({ min: 0, max: 59 }),
      accuracy: fc.integer({ min: 0, max: 1 }),
      name: text(20),
      type: fc.integer({ min: 1, max: 31 }),
    });
    fc.assert(
      fc.property(
        values,
        fc.constantFrom('VDM', 'VDO'),
        fc.constantFrom('A', 'B'),
        (given, formatter, channel) => {
          const bits = bitsOf(table, {
            ...given,
            message: Number(table),
            year: 2026,
            month: 6,
            day: 1,
            hour: 14,
            minute: 4,
          });
          const [reading, ...more] = readSentences(wire(sentencesOf(bits, formatter, channel)));
          const report = reportOf(reading) as AisReport;
          const has = (name: string): boolean => tables[table]?.some(([row]) => row === name) ?? false;
          expect(more).toEqual([]);
          expect(reading).toMatchObject({ channel, own: formatter === 'VDO' });
          expect(report.mmsi).toBe(String(given.mmsi).padStart(9, '0'));
          expect(report.position).toEqual({
            latitude: given.latitude / 600_000,
            longitude: given.longitude / 600_000,
          });
          expect(report.accurate).toBe(given.accuracy === 1);
          expect(report.speed).toBe(has('speed') ? given.speed / (table === '9' ? 1 : 10) : undefined);
          expect(report.course).toBe(has('course') ? given.course / 10 : undefined);
          expect(report.heading).toBe(has('heading') ? given.heading : undefined);
          expect(report.name).toBe(has('name') ? trimmed(given.name) : undefined);
          expect(report.type).toBe(has('type') ? given.type : undefined);
          if (table === '4') expect(report.instant).toBe(Date.UTC(2026, 5, 1, 14, 4, given.second));
          else expect(report.second).toBe(given.second);
        },
      ),
    );
  });

  it('5 tells name, call sign, number and type in two sentences', () => {
    fc.assert(
      fc.property(
        fc.record({
          mmsi,
          imo: fc.integer({ min: 1_000_000, max: 9_999_999 }),
          callSign: text(7),
          name: text(20),
          type: fc.integer({ min: 1, max: 255 }),
        }),
        (given) => {
          const bodies = sentencesOf(bitsOf('5', { ...given, message: 5 }));
          expect(bodies).toHaveLength(2);
          const [reading, ...more] = readSentences(wire(bodies));
          expect(more).toEqual([]);
          expect(reading?.kind === 'ais' && reading.sources).toHaveLength(2);
          expect(reportOf(reading)).toEqual(
            JSON.parse(
              JSON.stringify({
                message: 5,
                mmsi: String(given.mmsi).padStart(9, '0'),
                station: 'ship-class-a',
                imo: String(given.imo),
                callSign: trimmed(given.callSign),
                name: trimmed(given.name),
                type: given.type,
              }),
            ),
          );
        },
      ),
    );
  });

  it('24 tells the name in part A and the call sign in part B', () => {
    const a = wire(
      sentencesOf(bitsOf('24A', { message: 24, mmsi: 232_999_142, part: 0, name: 'TERN OF ARDLE' })),
    );
    const b = wire(
      sentencesOf(
        bitsOf('24B', {
          message: 24,
          mmsi: 232_999_142,
          part: 1,
          type: 37,
          vendor: 'ABC1234',
          callSign: '2ZZT4',
        }),
      ),
    );
    expect(readSentences(a + b).map(reportOf)).toEqual([
      { message: 24, mmsi: '232999142', station: 'ship-class-b', name: 'TERN OF ARDLE' },
      { message: 24, mmsi: '232999142', station: 'ship-class-b', type: 37, callSign: '2ZZT4' },
    ]);
  });

  it('27 tells place in tenths of a minute', () => {
    const bits = bitsOf('27', {
      message: 27,
      mmsi: 232_999_142,
      longitude: -3901,
      latitude: 33_803,
      speed: 12,
      course: 184,
      status: 8,
    });
    expect(reportOf(readSentences(wire(sentencesOf(bits)))[0])).toEqual({
      message: 27,
      mmsi: '232999142',
      station: 'ship',
      position: { latitude: 33_803 / 600, longitude: -3901 / 600 },
      accurate: false,
      speed: 12,
      course: 184,
      status: 'under-way-sailing',
    });
  });

  it('21 has a name of up to thirty-four characters', () => {
    const values = {
      message: 21,
      mmsi: 992_351_234,
      name: 'SKERRA SOUND NORTH C',
      nameMore: 'ARDINAL',
      type: 20,
      virtual: 1,
      offPosition: 0,
    };
    expect(reportOf(readSentences(wire(sentencesOf(bitsOf('21', values))))[0])).toMatchObject({
      station: 'aid-to-navigation',
      name: 'SKERRA SOUND NORTH CARDINAL',
      virtual: true,
      offPosition: false,
    });
  });

  it('marks as not available leaves out', () => {
    const bits = bitsOf('1', {
      message: 1,
      mmsi: 232_999_142,
      status: 15,
      speed: 1023,
      longitude: 108_600_000,
      latitude: 54_600_000,
      course: 3600,
      heading: 511,
      second: 60,
    });
    expect(reportOf(readSentences(wire(sentencesOf(bits)))[0])).toEqual({
      message: 1,
      mmsi: '232999142',
      station: 'ship-class-a',
    });
  });

  it('from 970, 972 and 974 comes from a locating device (ITU-R M.585-10 Annex 2, from memory)', () => {
    const bits = bitsOf('1', {
      message: 1,
      mmsi: 972_999_001,
      status: 14,
      latitude: 33_800_000,
      longitude: -3_900_000,
    });
    expect(reportOf(readSentences(wire(sentencesOf(bits)))[0])).toMatchObject({
      station: 'locating-device',
      status: 'locating-device-active',
    });
  });
});

describe('AIS that cannot be used costs a notice', () => {
  const five = sentencesOf(bitsOf('5', { message: 5, mmsi: 232_999_142, name: 'TERN' })) as [string, string];

  it.each([
    ['an unknown number', sentencesOf('000110'.padEnd(168, '0')), 'sentence-ais-unread'],
    ['too few bits', sentencesOf('000001'.padEnd(66, '0')), 'sentence-ais-short'],
    ['ten digits', sentencesOf(bitsOf('1', { message: 1, mmsi: 1_000_000_000 })), 'sentence-ais-identity'],
    [
      'no place',
      sentencesOf(bitsOf('1', { message: 1, mmsi: 1, longitude: 108_000_001 })),
      'sentence-ais-position',
    ],
    [
      'a character outside the armour',
      ['AIVDM,1,1,,A,13N=;o@P0lwhmLHLkMa7<?vX0000,0'],
      'sentence-ais-payload',
    ],
    ['an impossible count', ['AIVDM,1,2,,A,13N=;o@P0lwhmLHLkMa7<?vH0000,0'], 'sentence-ais-count'],
    ['fill bits of 6', ['AIVDM,1,1,,A,13N=;o@P0lwhmLHLkMa7<?vH0000,6'], 'sentence-ais-payload'],
    ['a second part missing', [five[0]], 'sentence-ais-incomplete'],
    ['a first part missing', [five[1]], 'sentence-ais-incomplete'],
    ['parts in reverse', [five[1], five[0]], 'sentence-ais-incomplete'],
  ])('%s', (_, bodies, code) => {
    const readings = readSentences(wire(bodies));
    expect(codes(readings)).toContain(code);
    expect(JSON.stringify(readings)).toContain(
      JSON.stringify(line(bodies[0] as string, '!').trim()).slice(1, -1),
    );
  });

  it('and parts of two messages are never joined', () => {
    const other = sentencesOf(bitsOf('5', { message: 5, mmsi: 232_999_563, name: 'PELLINORE' })) as [
      string,
      string,
    ];
    const gap = Array<string>(25).fill(sentencesOf(bitsOf('1', { message: 1, mmsi: 1 }))[0] as string);
    const readings = readSentences(wire([five[0], ...gap, other[1]]));
    expect(readings.filter((reading) => reportOf(reading)?.message === 5)).toEqual([]);
  });

  it('and interleaved messages of both channels are kept apart', () => {
    const other = sentencesOf(
      bitsOf('5', { message: 5, mmsi: 232_999_563, name: 'PELLINORE' }),
      'VDM',
      'B',
    ) as [string, string];
    const readings = readSentences(wire([five[0], other[0], five[1], other[1]]));
    expect(readings.map(reportOf).map((report) => report?.name)).toEqual(['TERN', 'PELLINORE']);
  });
});
