import { describe, expect, it } from 'vitest';
import type { AisReport, Reading } from '../../src/report/index.ts';
import { createSentenceReader, readSentences } from '../../src/sentence/index.ts';
import { armour, bitsOf, sentencesOf } from '../oracle/sentence-ais.ts';
import { line } from './arbitrary.ts';

// Values and lengths: ITU-R M.1371-6 Annex 7, from memory. Stations are invented.
const wire = (bodies: readonly string[]): string => bodies.map((body) => line(body, '!')).join('');
const reportIn = (readings: readonly Reading[]): Partial<AisReport> =>
  readings.flatMap((reading) => (reading.kind === 'ais' ? [reading.report] : []))[0] ?? {};
const read = (table: string, values: Record<string, number | string>): Partial<AisReport> =>
  reportIn(
    readSentences(
      wire(
        sentencesOf(
          bitsOf(table, { message: Number(table.replace(/\D/, '')), mmsi: 232_999_142, ...values }),
        ),
      ),
    ),
  );
/** The first so many bits of a message in which everything is told. */
function cutTo(table: string, length: number): Partial<AisReport> {
  const bits = bitsOf(table, {
    message: Number(table.replace(/\D/, '')),
    mmsi: 232_999_142,
    part: table === '24B' ? 1 : 0,
    second: 41,
    offPosition: 1,
    virtual: 1,
    name: 'SKERRA SOUND NORTH C',
    nameMore: 'ARDINAL',
  });
  return reportIn(readSentences(wire(sentencesOf(bits.slice(0, length)))));
}

describe('an AIS value', () => {
  it.each([
    ['1', 'speed', 1022, 102.2],
    ['1', 'speed', 1023, undefined],
    ['1', 'course', 3599, 359.9],
    ['1', 'course', 3600, undefined],
    ['1', 'heading', 359, 359],
    ['1', 'heading', 360, undefined],
    ['1', 'second', 59, 59],
    ['1', 'second', 60, undefined],
    ['5', 'imo', 999_999, undefined],
    ['5', 'imo', 1_000_000, '1000000'],
    ['5', 'imo', 9_999_999, '9999999'],
    ['5', 'imo', 10_000_000, undefined],
    ['5', 'type', 0, undefined],
    ['9', 'altitude', 4094, 4094],
    ['9', 'altitude', 4095, undefined],
    ['9', 'speed', 1022, 1022],
    ['9', 'speed', 1023, undefined],
    ['27', 'speed', 62, 62],
    ['27', 'speed', 63, undefined],
    ['27', 'course', 359, 359],
    ['27', 'course', 360, undefined],
    ['24B', 'type', 0, undefined],
  ] as const)('%s: %s sent as %i', (table, field, sent, told) => {
    expect(read(table, { part: 1, [field]: sent })[field]).toBe(told);
  });

  it.each([
    [0, 'under-way-using-engine'],
    [1, 'at-anchor'],
    [2, 'not-under-command'],
    [3, 'restricted-manoeuvrability'],
    [4, 'constrained-by-draught'],
    [5, 'moored'],
    [6, 'aground'],
    [7, 'fishing'],
    [8, 'under-way-sailing'],
    [9, undefined],
    [13, undefined],
    [14, 'locating-device-active'],
    [15, undefined],
  ])('status %i is %s', (status, told) => {
    expect(read('3', { status }).status).toBe(told);
    expect(read('27', { status }).status).toBe(told);
    expect('status' in read('3', { status })).toBe(told !== undefined);
  });

  it.each([
    [970_999_001, 'locating-device'],
    [971_999_001, 'ship-class-a'],
    [972_999_001, 'locating-device'],
    [974_999_001, 'locating-device'],
    [297_000_001, 'ship-class-a'],
    [999_999_999, 'ship-class-a'],
  ])('identity %i is of a %s', (mmsi, station) => {
    expect(read('1', { mmsi })).toMatchObject({ mmsi: String(mmsi), station });
  });

  it.each([
    [54_000_000, 108_000_000, { latitude: 90, longitude: 180 }],
    [-54_000_000, -108_000_000, { latitude: -90, longitude: -180 }],
    [54_600_000, 0, undefined],
    [0, 108_600_000, undefined],
    [54_000_001, 0, undefined],
    [0, -108_000_001, undefined],
  ])('a place of %i and %i ten-thousandths of a minute', (latitude, longitude, position) => {
    expect(read('18', { latitude, longitude, second: 7 })).toEqual({
      message: 18,
      mmsi: '232999142',
      station: 'ship-class-b',
      speed: 0,
      course: 0,
      heading: 0,
      ...(position && { position, accurate: false, second: 7 }),
    });
  });

  it.each([
    [54_600_000, 0],
    [0, 108_600_000],
  ])('of no place, %i and %i, needs no notice: it is sent so on purpose', (latitude, longitude) => {
    const bits = bitsOf('18', { message: 18, mmsi: 232_999_142, latitude, longitude });
    expect(readSentences(wire(sentencesOf(bits)))[0]?.notices).toEqual([]);
  });

  it.each([
    // The lowest numbers of 28 and 27 bits in two's complement.
    [0, -(2 ** 27), `0, ${-(2 ** 27) / 600_000}`],
    [-(2 ** 26), 0, `${-(2 ** 26) / 600_000}, 0`],
  ])('of %i and %i is told as it was sent', (latitude, longitude, received) => {
    const bits = bitsOf('18', { message: 18, mmsi: 232_999_142, latitude, longitude });
    expect(readSentences(wire(sentencesOf(bits)))[0]?.notices).toMatchObject([
      { code: 'sentence-ais-position', at: ['AIS'], received },
    ]);
  });

  it('9 is of a rescue aircraft', () => {
    expect(read('9', {}).station).toBe('rescue-aircraft');
  });

  it('18 has no name and no type, whatever its last bits are', () => {
    const bits = bitsOf('18', { message: 18, mmsi: 232_999_142 });
    const report = reportIn(readSentences(wire(sentencesOf(`${bits.slice(0, 139)}${'1'.repeat(29)}`))));
    expect(Object.keys(report)).toEqual([
      'message',
      'mmsi',
      'station',
      'speed',
      'course',
      'heading',
      'position',
      'accurate',
      'second',
    ]);
  });

  it.each([0, 1])('21 is virtual or off its place when the bit is 1: %i', (bit) => {
    const told = { offPosition: bit === 1, virtual: bit === 1 };
    expect(read('21', { offPosition: bit, virtual: bit })).toMatchObject(told);
    expect(read('21', { offPosition: 1 - bit, virtual: bit })).toMatchObject({ virtual: bit === 1 });
  });

  it.each([
    ['SKERRA SOUND NORTH C', 'ARDINAL', 'SKERRA SOUND NORTH CARDINAL'],
    ['SKERRA SOUND NORTHER', ' CARDINAL', 'SKERRA SOUND NORTHER CARDINAL'],
    ['SKERRA SOUND IN THE ', 'NORTH', 'SKERRA SOUND IN THE NORTH'],
    ['TERN', 'ARDINAL', 'TERN'],
    ['', 'ARDINAL', undefined],
  ])('21 of the name %j and more of it, %j, is %j', (name, nameMore, told) => {
    expect(read('21', { name, nameMore }).name).toBe(told);
  });

  it('27 tells whether the place is good to ten metres', () => {
    expect(read('27', { accuracy: 1 }).accurate).toBe(true);
  });

  it('text ends at its first @ and has no blanks around it', () => {
    expect(read('5', { name: ' TERN@X', callSign: '@2ZZT4' })).toEqual({
      message: 5,
      mmsi: '232999142',
      station: 'ship-class-a',
      name: 'TERN',
    });
  });
});

describe('the clock of a base station', () => {
  const clock = { year: 2026, month: 6, day: 30, hour: 23, minute: 59, second: 59 };

  it.each([
    [{}, Date.UTC(2026, 5, 30, 23, 59, 59)],
    [{ month: 1, day: 1, hour: 0, minute: 0, second: 0 }, Date.UTC(2026, 0, 1)],
    [{ month: 12, day: 31 }, Date.UTC(2026, 11, 31, 23, 59, 59)],
    [{ year: 1900 }, Date.UTC(1900, 5, 30, 23, 59, 59)],
    [{ year: 9999 }, Date.UTC(9999, 5, 30, 23, 59, 59)],
    [{ year: 0 }, undefined],
    [{ year: 1899 }, undefined],
    [{ year: 10_000 }, undefined],
    [{ month: 0 }, undefined],
    [{ month: 13 }, undefined],
    [{ day: 0 }, undefined],
    [{ day: 31 }, undefined],
    [{ hour: 24 }, undefined],
    [{ minute: 60 }, undefined],
    [{ second: 60 }, undefined],
    [{ day: 29, hour: 24 }, undefined],
    [{ hour: 0, minute: 60 }, undefined],
    [{ hour: 0, second: 60 }, undefined],
    [{ month: 2, day: 29 }, undefined],
    [{ year: 2028, month: 2, day: 29 }, Date.UTC(2028, 1, 29, 23, 59, 59)],
  ])('with %j', (change, instant) => {
    expect(read('4', { ...clock, ...change }).instant).toBe(instant);
  });
});

// Senders cut what they do not need; a message is read when its last field that is told here is whole.
describe('a message cut short', () => {
  it.each([
    ['1', 137],
    ['2', 137],
    ['3', 137],
    ['4', 134],
    ['5', 240],
    ['9', 128],
    ['18', 133],
    ['19', 271],
    ['21', 219],
    ['24A', 132],
    ['24B', 132],
    ['27', 94],
  ])('%s is read from %i bits', (table, least) => {
    expect(cutTo(table, least)).toHaveProperty('mmsi', '232999142');
    expect(cutTo(table, least - 1)).toEqual({});
  });

  it.each([
    ['1', 143, 'second', 41],
    ['9', 134, 'second', 41],
    ['18', 139, 'second', 41],
    ['21', 259, 'second', 41],
    ['21', 260, 'offPosition', true],
    ['21', 270, 'virtual', true],
  ] as const)('%s tells from %i bits its %s', (table, least, field, value) => {
    expect(cutTo(table, least)[field]).toBe(value);
    expect(cutTo(table, least - 1)[field]).toBeUndefined();
  });

  it('has as much of its text as came', () => {
    expect(cutTo('21', 272).name).toBe('SKERRA SOUND NORTH C');
    expect(cutTo('21', 272 + 6).name).toBe('SKERRA SOUND NORTH CA');
    expect(cutTo('24A', 132).name).toBe('SKERRA SOUND NO');
  });
});

describe('the armour of AIS', () => {
  const bits = bitsOf('1', { message: 1, mmsi: 232_999_142 });
  const withCharacter = (character: string): Reading[] => {
    const [payload] = armour(bits);
    return readSentences(line(`AIVDM,1,1,,A,${payload.slice(0, -1)}${character},0`, '!'));
  };

  it.each(['0', 'W', '`', 'w'])('has %s', (character) => {
    expect(withCharacter(character)[0]?.kind).toBe('ais');
  });

  it.each(['/', 'X', '_', 'x'])('has no %s', (character) => {
    expect(withCharacter(character)[0]?.notices[0]?.code).toBe('sentence-ais-payload');
  });

  it.each([
    ['A', 'A'],
    ['1', 'A'],
    ['B', 'B'],
    ['2', 'B'],
    ['', null],
    ['3', null],
  ])('on channel %j is on %s', (sent, channel) => {
    expect(readSentences(wire(sentencesOf(bits, 'VDM', sent)))[0]).toMatchObject({ channel });
  });
});

describe('a message in several sentences', () => {
  const five = (sequence: string, name = 'TERN'): [string, string] =>
    sentencesOf(bitsOf('5', { message: 5, mmsi: 232_999_142, name }), 'VDM', 'A', sequence) as [
      string,
      string,
    ];
  const other = sentencesOf(bitsOf('1', { message: 1, mmsi: 232_999_563 }));
  const names = (bodies: readonly string[]): unknown[] =>
    readSentences(wire(bodies)).flatMap((reading) =>
      reading.kind === 'ais' && reading.report.message === 5 ? [reading.report.name] : [],
    );

  it('is waited for while nineteen others pass, no longer', () => {
    const [first, second] = five('3');
    const passing = (count: number): string[] => Array<string>(count).fill(other[0] as string);
    expect(names([first, ...passing(19), second])).toEqual(['TERN']);
    expect(names([first, ...passing(20), second])).toEqual([]);
  });

  it('takes up waiting anew with every part', () => {
    const [payload, fill] = armour(bitsOf('5', { message: 5, mmsi: 232_999_142, name: 'TERN' }));
    const part = (number: number, text: string, bits: number): string =>
      `AIVDM,3,${number},3,A,${text},${bits}`;
    const between = Array<string>(15).fill(other[0] as string);
    const bodies = [
      part(1, payload.slice(0, 30), 0),
      ...between,
      part(2, payload.slice(30, 60), 0),
      ...between,
      part(3, payload.slice(60), fill),
    ];
    expect(names(bodies)).toEqual(['TERN']);
    expect(readSentences(wire(bodies)).map(({ sources }) => sources.length)).toContain(3);
  });

  it('is not joined from two sequences, talkers, counts or from own ship and others', () => {
    const [first, second] = five('3');
    expect(names([first, second])).toEqual(['TERN']);
    expect(names([first, five('4')[1]])).toEqual([]);
    expect(names([first, second.replace('AIVDM', 'ABVDM')])).toEqual([]);
    expect(names([first, second.replace('AIVDM', 'AIVDO')])).toEqual([]);
    expect(names([first, second.replace('AIVDM,2,2', 'AIVDM,3,2')])).toEqual([]);
  });

  it('begun anew is read from its second beginning', () => {
    const [first] = five('3', 'GONE');
    expect(names([first, ...five('3')])).toEqual(['TERN']);
    expect(readSentences(wire([first, ...five('3')])).map(({ kind }) => kind)).toEqual(['other', 'ais']);
  });

  it('gives up the oldest when more than twenty are begun', () => {
    const begun = [...'0123456789'].flatMap((sequence) =>
      ['A', 'B'].map((channel) => five(sequence)[0].replace(',A,', `,${channel},`)),
    );
    const last = five('0')[0].replace('AIVDM', 'ABVDM');
    const given = (bodies: readonly string[], more: string): string[] =>
      readSentences(wire([...bodies, more]))
        .filter(({ notices }) => notices.some(({ code }) => code === 'sentence-ais-incomplete'))
        .map((reading) => (reading.kind === 'other' && reading.sources[0]?.raw.slice(1, 16)) || '');
    expect(given(begun, last)).toHaveLength(21);
    expect(given(begun, last)[0]).toBe((begun[0] as string).slice(0, 15));
    expect(names([...begun, five('0')[1]])).toEqual(['TERN']);
    expect(names([...begun, last, five('0')[1]])).toEqual([]);
  });

  it('given up makes room at once: a part that was told before it does not count', () => {
    const [payload] = armour(bitsOf('5', { message: 5, mmsi: 232_999_142, name: 'TERN' }));
    const part = (number: number): string =>
      line(`AIVDM,3,${number},3,A,${payload.slice(number * 20, number * 20 + 20)},0`, '!');
    const [begun] = five('3');
    const others = Array.from({ length: 20 }, (_, index) =>
      line(begun.replace(',3,A,', `,${index % 10},${index < 10 ? 'A' : 'B'},`), '!'),
    );
    const reader = createSentenceReader();
    const given = (text: string): string[] =>
      reader.push(text).flatMap(({ notices }) => notices.map(({ code }) => code));
    expect([part(1), ...others.slice(0, 18), part(2), ...others.slice(18, 19)].flatMap(given)).toEqual([]);
    expect(given(others[19] as string)).toEqual(['sentence-ais-incomplete', 'sentence-ais-incomplete']);
    expect(given(part(3))).toEqual(['sentence-ais-incomplete']);
  });

  it('is not begun with its second part, which is given up at once', () => {
    const [, second] = five('3');
    const reader = createSentenceReader();
    for (const _ of [1, 2]) {
      expect(reader.push(line(second, '!'))).toMatchObject([
        { kind: 'other', notices: [{ code: 'sentence-ais-incomplete' }] },
      ]);
    }
    expect(reader.flush()).toEqual([]);
  });

  it.each(['0,1', '10,1', '11,1', 'x1,1', 'x,1', ',1', '1,', '2,0', '2,10', '2,11', '2,1x', '1,2'])(
    'of total and number %j is none',
    (counts) => {
      const [reading] = readSentences(line(`AIVDM,${counts},,A,${armour(bitsOf('1', {}))[0]},0`, '!'));
      expect(reading?.notices.map(({ code }) => code)).toEqual(['sentence-ais-count']);
    },
  );

  it.each([
    ['no payload', 'AIVDM,1,1,,A,,0', 'payload'],
    ['no count of fill bits', 'AIVDM,1,1,,A,13N=;o@P0lwhmLHLkMa7<?vH0000,', 'payload'],
    ['fill bits of two digits', 'AIVDM,1,1,,A,13N=;o@P0lwhmLHLkMa7<?vH0000,00', 'payload'],
    ['a payload alone', 'AIVDM,1,1,,A,13N=;o@P0lwhmLHLkMa7<?vH0000', 'payload'],
    ['a channel and no more', 'AIVDM,1,1,,A', 'payload'],
    ['nothing', 'AIVDM', 'count'],
  ])('with %s cannot be read', (_, body, part) => {
    expect(readSentences(line(body, '!'))[0]?.notices[0]?.code).toBe(`sentence-ais-${part}`);
  });

  it('keeps where each sentence stood and what was said of it', () => {
    const [first, second] = five('3');
    const blank = `${second} `;
    expect(readSentences(line(first, '!') + line(blank, '!'), { now: 5 })).toMatchObject([
      { kind: 'ais', line: 1, offset: 0, at: 5, notices: [{ code: 'sentence-blank-sent' }] },
    ]);
    const unread = sentencesOf('001000'.padEnd(420, '0'));
    expect(readSentences(wire(unread), { now: 5 })).toMatchObject([
      { kind: 'other', line: 1, at: 5, notices: [{ code: 'sentence-ais-unread' }] },
      { kind: 'other', line: 2, at: 5, notices: [{ code: 'sentence-ais-unread' }] },
    ]);
  });
});
