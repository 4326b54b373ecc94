import { describe, expect, it } from 'vitest';
import type { Reading } from '../../src/report/index.ts';
import { readSentences } from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

// Field layouts: IEC 61162-1 as restated in equipment papers. Status rules: V, mode N and quality 0 are not to be used.
const read = (body: string): Reading => readSentences(line(body))[0] as Reading;
const place = '5620.3300,N,00630.1200,W';

describe('own position', () => {
  it.each([
    [`GPRMC,140412.00,A,${place},5.2,184.0,010626,1.5,W,A`, 'autonomous'],
    [`GPRMC,140412.00,A,${place},5.2,184.0,010626,1.5,W`, 'unstated'],
    [`GNRMC,140412.00,A,${place},5.2,184.0,010626,1.5,W,D,S`, 'differential'],
    [`GPGLL,${place},140412.00,A`, 'unstated'],
    [`GPGLL,${place},140412.00,A,D`, 'differential'],
    [`GPGGA,140412.00,${place},2,09,0.9,3.0,M,50.1,M,,`, 'differential'],
    [`GPGGA,140412.00,${place},4,09,0.9,3.0,M,50.1,M,,`, 'real-time-kinematic'],
    [`GNGNS,140412.00,${place},AN,12,0.9,3.0,50.1,,`, 'autonomous'],
    [`GNGNS,140412.00,${place},NDA,12,0.9,3.0,50.1,,`, 'differential'],
    [`INGLL,${place},140412.00,A,E`, 'estimated'],
    [`INGLL,${place},140412.00,A,M`, 'manual'],
  ])('%s is used', (body, quality) => {
    expect(read(body)).toMatchObject({ kind: 'own-position', fix: { quality } });
    const reading = read(body);
    if (reading.kind !== 'own-position') throw new TypeError('not a fix');
    expect(reading.fix.position?.latitude).toBeCloseTo(56 + 20.33 / 60, 10);
    expect(reading.fix.position?.longitude).toBeCloseTo(-(6 + 30.12 / 60), 10);
    expect(reading.fix.time).toEqual({ hour: 14, minute: 4, second: 12 });
  });

  it.each([
    [`GPRMC,140412.00,V,${place},5.2,184.0,010626,1.5,W,A`],
    [`GPRMC,140412.00,A,${place},5.2,184.0,010626,1.5,W,N`],
    [`GPRMC,140412.00,A,${place},5.2,184.0,010626,1.5,W,S`],
    [`GPRMC,140412.00,,${place},5.2,184.0,010626,1.5,W,A`],
    [`GPGLL,${place},140412.00,V,N`],
    [`GPGLL,${place},140412.00`],
    [`GPGGA,140412.00,${place},0,09,0.9,3.0,M,50.1,M,,`],
    [`GPGGA,140412.00,${place},8,09,0.9,3.0,M,50.1,M,,`],
    [`GPGGA,140412.00,${place},,09,0.9,3.0,M,50.1,M,,`],
    [`GPGGA,140412.00,${place},0x1,09,0.9,3.0,M,50.1,M,,`],
    [`GPGGA,140412.00,${place},1e0,09,0.9,3.0,M,50.1,M,,`],
    [`GNGNS,140412.00,${place},NN,12,0.9,3.0,50.1,,`],
    [`GNGNS,140412.00,${place},,12,0.9,3.0,50.1,,`],
  ])('%s is not used', (body) => {
    expect(read(body)).toMatchObject({ kind: 'own-position', fix: { position: null, speed: null } });
    // Mode S of RMC and quality 8 of GGA are a simulator.
    expect(read(body).notices[0]?.code).toBe(
      /W,S$|,8,09/.test(body) ? 'sentence-fix-simulated' : 'sentence-fix-not-valid',
    );
  });

  it.each([
    'GPGLL,9020.3300,N,00630.1200,W,140412.00,A,A',
    'GPGLL,5660.0000,N,00630.1200,W,140412.00,A,A',
    'GPGLL,5620.3300,X,00630.1200,W,140412.00,A,A',
    'GPGLL,5620.3300,N,18000.0001,W,140412.00,A,A',
    'GPGLL,620.3300,N,00630.1200,W,140412.00,A,A',
    'GPGLL,56 0.3300,N,00630.1200,W,140412.00,A,A',
    'GPGLL,,,,,140412.00,A,A',
  ])('%s cannot be read', (body) => {
    expect(read(body)).toMatchObject({ kind: 'own-position', fix: { position: null } });
    expect(read(body).notices.at(-1)?.code).toBe('sentence-fix-unreadable');
  });

  it('takes date, course and speed from RMC', () => {
    expect(read(`GPRMC,140412.50,A,${place},5.2,184.0,010626,1.5,W,A`)).toMatchObject({
      fix: { instant: Date.UTC(2026, 5, 1, 14, 4, 12, 500), speed: 5.2, course: 184 },
    });
  });

  it('gives a time without a date the nearest date that is known', () => {
    const text = line('GPZDA,235959.00,31,12,2026,00,00') + line(`GPGLL,${place},000001.00,A,A`);
    expect(readSentences(text)[1]).toMatchObject({ fix: { instant: Date.UTC(2027, 0, 1, 0, 0, 1) } });
    const before = line('GPZDA,000001.00,01,01,2027,00,00') + line(`GPGLL,${place},235959.00,A,A`);
    expect(readSentences(before)[1]).toMatchObject({ fix: { instant: Date.UTC(2026, 11, 31, 23, 59, 59) } });
    expect(read(`GPGLL,${place},000001.00,A,A`)).toMatchObject({ fix: { instant: null } });
  });

  it.each([
    'GPZDA,240000.00,01,06,2026,00,00',
    'GPZDA,140412.00,31,06,2026,00,00',
    'GPZDA,140412.00,101,06,2026,00,00',
    'GPZDA,140412.00,1,06,2026,00,00',
    'GPZDA,140412.00,01,6,2026,00,00',
    'GPZDA,140412.00,01,06,20266,00,00',
    'GPZDA,140412.00,01,06,26,00,00',
    'GPZDA,,,,,,',
    'GPZDA,140412.00',
    'GPZDA',
  ])('%s tells no instant', (body) => {
    expect(read(body).kind).toBe('other');
  });

  it('takes the instant from ZDA', () => {
    expect(read('GPZDA,140412.00,01,06,2026,00,00')).toMatchObject({
      kind: 'clock',
      instant: Date.UTC(2026, 5, 1, 14, 4, 12),
    });
    expect(read('GPZDA,140412.00,01,06,2026')).toMatchObject({ kind: 'clock' });
  });

  // deviation: D-sentence-6
  it.each([
    ['010679', Date.UTC(2079, 5, 1, 14, 4, 12)],
    ['010680', Date.UTC(1980, 5, 1, 14, 4, 12)],
    ['0106261', null],
    ['1010626', null],
    ['01062', null],
    ['', null],
  ])('takes the date %j of RMC for the instant %s', (date, instant) => {
    expect(read(`GPRMC,140412.00,A,${place},5.2,184.0,${date},,,A`)).toMatchObject({ fix: { instant } });
  });

  it.each(['140412x.50', '140412.', '140412.5x', '14041', '240412.00', '146012.00', '140461.00'])(
    'takes no time from %s',
    (utc) => {
      expect(read(`GPGLL,${place},${utc},A,A`)).toMatchObject({
        kind: 'own-position',
        fix: { time: null, quality: 'autonomous' },
      });
    },
  );

  it.each(['GPGLL', 'GPGLL,5620.3300', 'GPGLL,5620.3300,N', 'GPGLL,5620.3300,N,00630.1200'])(
    'takes no place from %s',
    (body) => {
      expect(read(body)).toMatchObject({ kind: 'own-position', fix: { position: null, time: null } });
    },
  );

  it('of an RMC that ends early has what is there', () => {
    expect(read(`GPRMC,140412.00,A,${place}`)).toMatchObject({
      kind: 'own-position',
      fix: { quality: 'unstated', instant: null, speed: null, course: null },
    });
  });

  // GNS has a letter for each satellite system (IEC 61162-1, as restated); which is the better: common practice, no source.
  it.each([
    ['RF', 'real-time-kinematic'],
    ['FP', 'float-real-time-kinematic'],
    ['PD', 'precise'],
    ['DA', 'differential'],
    ['AM', 'autonomous'],
    ['ME', 'manual'],
    ['ES', 'estimated'],
    ['SN', 'simulated'],
    ['NX', 'none'],
    ['', 'none'],
  ])('takes the modes %s of GNS, in either order, for %s', (modes, quality) => {
    const reversed = [...modes].toReversed().join('');
    for (const letters of [modes, reversed]) {
      expect(read(`GNGNS,140412.00,${place},${letters},12,0.9,3.0,50.1,,`)).toMatchObject({
        fix: { quality },
      });
    }
  });
});
