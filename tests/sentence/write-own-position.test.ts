import { describe, expect, it } from 'vitest';
import type { GnssFix } from '../../src/report/index.ts';
import { readSentences, writeOwnPosition } from '../../src/sentence/index.ts';
import { checksumByBits } from '../oracle/sentence.ts';

// Field layouts: IEC 61162-1, RMC and GLL sentences, as restated in equipment papers; mode letters P, R and F from memory.
const fix: GnssFix = {
  formatter: 'RMC',
  // 0.3388 degrees are 20.328 minutes, 0.502 are 30.12.
  position: { latitude: 56.3388, longitude: -6.502 },
  quality: 'autonomous',
  time: { hour: 14, minute: 10, second: 30 },
  instant: Date.UTC(2026, 5, 1, 14, 10, 30),
  speed: 5.2,
  course: 123.4,
};
const undated: GnssFix = { ...fix, formatter: 'GLL', instant: null, speed: null, course: null };

/** The fields after the address, once the checksum is found right. */
function fieldsOf(sentence: string): string[] {
  const [body = '', checksum] = sentence.slice(1).split('*');
  expect(checksum).toBe(checksumByBits(body));
  return body.split(',').slice(1);
}

const written = (change: Partial<GnssFix>): string[] => fieldsOf(writeOwnPosition({ ...fix, ...change }));

describe('an own position', () => {
  it('with its date is an RMC sentence of twelve fields', () => {
    const sentence = writeOwnPosition(fix);
    expect(sentence).toBe('$GNRMC,141030.00,A,5620.3280,N,00630.1200,W,5.2,123.4,010626,,,A*5B');
    expect(fieldsOf(sentence)).toHaveLength(12);
    expect(readSentences(sentence)).toMatchObject([{ kind: 'own-position', fix, notices: [] }]);
  });

  it('without a date is a GLL sentence of seven', () => {
    const sentence = writeOwnPosition(undated);
    expect(sentence).toBe('$GNGLL,5620.3280,N,00630.1200,W,141030.00,A,A*6C');
    expect(fieldsOf(sentence)).toHaveLength(7);
    expect(readSentences(sentence)).toMatchObject([{ kind: 'own-position', fix: undated, notices: [] }]);
  });

  it.each(['GP', 'IN'])('has the talker %s', (talker) => {
    expect(writeOwnPosition(fix, { talker }).slice(0, 7)).toBe(`$${talker}RMC,`);
    expect(writeOwnPosition(undated, { talker }).slice(0, 7)).toBe(`$${talker}GLL,`);
  });

  it.each([
    [{ latitude: -0.5, longitude: 179.999999 }, ['0030.0000', 'S', '17959.9999', 'E']],
    [{ latitude: 90, longitude: -180 }, ['9000.0000', 'N', '18000.0000', 'W']],
    [{ latitude: 0, longitude: 0 }, ['0000.0000', 'N', '00000.0000', 'E']],
  ])('at %j is told in degrees and minutes', (position, fields) => {
    expect(written({ position }).slice(2, 6)).toEqual(fields);
    expect(written({ position, instant: null }).slice(0, 4)).toEqual(fields);
  });

  it.each([
    [null, '', ''],
    [0, '0.0', '0.0'],
    [0.04, '0.0', '0.0'],
    [0.06, '0.1', '0.1'],
    [360, '360.0', '360.0'],
  ])('with a speed and a course of %s has them to a tenth', (value, speed, course) => {
    expect(written({ speed: value, course: value }).slice(6, 8)).toEqual([speed, course]);
  });

  it('may have a speed without a course, and any speed up to 10000 knots', () => {
    expect(written({ speed: 10_000, course: null }).slice(6, 8)).toEqual(['10000.0', '']);
    expect(written({ speed: null, course: 7.25 }).slice(6, 8)).toEqual(['', '7.3']);
  });

  it.each([
    [Date.UTC(2025, 11, 31, 23, 59, 59, 999), '235959.99', '311225'],
    [Date.UTC(2026, 0, 1), '000000.00', '010126'],
    [Date.UTC(2005, 1, 28, 9, 8, 7), '090807.00', '280205'],
    [Date.UTC(1999, 9, 10), '000000.00', '101099'],
  ])('at the instant %i has its time of day, %s, and its date, %s, in UTC', (instant, utc, date) => {
    for (const time of [fix.time, null]) {
      const fields = written({ time, instant });
      expect([fields[0], fields[8]]).toEqual([utc, date]);
    }
  });

  it('without an instant has its time of day, empty when it has none', () => {
    const utcOf = (time: GnssFix['time']) => written({ time, instant: null })[4];
    expect(utcOf(null)).toBe('');
    expect(utcOf({ hour: 1, minute: 2, second: 3.25 })).toBe('010203.25');
  });
});

// Only what a receiver calls valid may reach a distress alert.
describe('the status of an own position', () => {
  it.each([
    ['autonomous', 'A', 'A'],
    ['unstated', 'A', 'A'],
    ['differential', 'A', 'D'],
    ['precise', 'A', 'P'],
    ['real-time-kinematic', 'A', 'R'],
    ['float-real-time-kinematic', 'A', 'F'],
    ['none', 'V', 'N'],
    ['simulated', 'V', 'S'],
    // deviation: D-sentence-12
    ['estimated', 'V', 'E'],
    ['manual', 'V', 'M'],
  ] as const)('of quality %s is %s, of mode %s', (quality, status, mode) => {
    expect([written({ quality })[1], written({ quality })[11]]).toEqual([status, mode]);
    expect(written({ quality, instant: null }).slice(5)).toEqual([status, mode]);
  });

  it('without a place is V, its four fields empty', () => {
    expect(written({ position: null }).slice(1, 6)).toEqual(['V', '', '', '', '']);
    expect(written({ position: null, instant: null }).slice(0, 6)).toEqual([
      '',
      '',
      '',
      '',
      '141030.00',
      'V',
    ]);
  });
});

describe('an own position is refused', () => {
  it.each([
    [
      { instant: Date.UTC(1979, 11, 31, 23, 59, 59) },
      'instant: expected 1980 to 2079, got 1979-12-31T23:59:59.000Z',
    ],
    [{ instant: Date.UTC(2080, 0, 1) }, 'instant: expected 1980 to 2079, got 2080-01-01T00:00:00.000Z'],
    [{ instant: Number.NaN }, 'instant: expected epoch milliseconds, got NaN'],
    [{ instant: '2026' as never }, 'instant: expected epoch milliseconds, got 2026'],
    [{ quality: 'bogus' as 'none' }, 'quality: expected one of a fix, got bogus'],
    [{ speed: -0.1 }, 'speed: expected 0 to 10000, got -0.1'],
    [{ speed: 10_000.1 }, 'speed: expected 0 to 10000, got 10000.1'],
    [{ speed: Number.NaN }, 'speed: expected 0 to 10000, got NaN'],
    [{ course: -0.1 }, 'course: expected 0 to 360, got -0.1'],
    [{ course: 360.1 }, 'course: expected 0 to 360, got 360.1'],
    [{ instant: null, time: { hour: 24, minute: 0, second: 0 } }, 'time: expected a time of day, got 24:0:0'],
    [
      { position: { latitude: 91, longitude: 0 } },
      'position: expected latitude within 90 and longitude within 180 degrees, got 91, 0',
    ],
  ])('with %j', (change, message) => {
    expect(() => writeOwnPosition({ ...fix, ...change })).toThrow(new RangeError(message));
  });

  it('no sooner than its year needs more than two digits', () => {
    expect(written({ instant: Date.UTC(1980, 0, 1) })[8]).toBe('010180');
    expect(written({ instant: Date.UTC(2079, 11, 31, 23, 59, 59) })[8]).toBe('311279');
  });

  it('with an instant that has no date', () => {
    expect(() => writeOwnPosition({ ...fix, instant: Number.NaN })).toThrow(RangeError);
  });
});
