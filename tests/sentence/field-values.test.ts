import { describe, expect, it } from 'vitest';
import type { GnssFix, Reading } from '../../src/report/index.ts';
import { readSentences, writeTarget, writeWaypoint } from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

// Field layouts: IEC 61162-1 as restated in equipment papers. Places are invented.
const first = (body: string): Reading => readSentences(line(body))[0] as Reading;
const fixOf = (body: string): GnssFix | null => {
  const reading = first(body);
  return reading.kind === 'own-position' ? reading.fix : null;
};
const place = '5620.3300,N,00630.1200,W';
const positionOf = (fields: string): unknown => {
  const reading = first(`CDWPL,${fields},X`);
  return reading.kind === 'waypoint' ? reading.waypoint.position : null;
};

describe('four fields of a place', () => {
  it.each([
    ['9000.0000,N,18000.0000,E', 90, 180],
    ['9000.0000,S,18000.0000,W', -90, -180],
    ['0000.0000,S,00000.0000,W', 0, 0],
    ['5630,N,00615,W', 56.5, -6.25],
    ['5630.,N,00615.,W', 56.5, -6.25],
    ['5630.00000000000,N,00615.0000000000,W', 56.5, -6.25],
    ['0059.4,N,00100.6,E', 0.99, 1.01],
  ])('%s are a place', (fields, latitude, longitude) => {
    expect(positionOf(fields)).toEqual({ latitude, longitude });
  });

  it.each([
    '9000.0001,N,00630.0000,W',
    '9100.0000,N,00630.0000,W',
    '5630.0000,N,18000.0001,E',
    '5660.0000,N,00630.0000,W',
    '5630.0000,N,00660.0000,W',
    '5630.0000,n,00630.0000,W',
    '5630.0000,E,00630.0000,W',
    '5630.0000,N,00630.0000,N',
    '5630.0000,,00630.0000,W',
    '5630.0000,N,00630.0000,',
    '563,N,00630.0000,W',
    '5630.0000,N,0630,W',
    '5630,0000,N,00630.0000',
    '563/.0000,N,00630.0000,W',
    '563:.0000,N,00630.0000,W',
    '5630/0000,N,00630.0000,W',
    '5630.00.0,N,00630.0000,W',
    '5630.000000000000,N,00630.0000,W',
    '',
  ])('%s are none', (fields) => {
    expect(positionOf(fields)).toBeNull();
  });

  it.each([
    [90, 180, '9000.0000,N,18000.0000,E'],
    [-90, -180, '9000.0000,S,18000.0000,W'],
    [0, 0, '0000.0000,N,00000.0000,E'],
    [-0.000_001, -0.000_001, '0000.0001,S,00000.0001,W'],
    [56.999_999_9, 6.5, '5700.0000,N,00630.0000,E'],
  ])('%d and %d are written', (latitude, longitude, fields) => {
    expect(writeWaypoint({ position: { latitude, longitude }, name: '' }).slice(7, -4)).toBe(fields);
  });

  it.each([
    [90.1, 0],
    [-90.1, 0],
    [0, 180.1],
    [0, -180.1],
    [Number.NaN, 0],
    [0, Number.NaN],
  ])('%d and %d are refused', (latitude, longitude) => {
    const message = `position: expected latitude within 90 and longitude within 180 degrees, got ${latitude}, ${longitude}`;
    expect(() => writeWaypoint({ position: { latitude, longitude }, name: '' })).toThrow(
      new RangeError(message),
    );
  });
});

describe('a time of day', () => {
  const timeOf = (text: string): unknown => fixOf(`GPGLL,${place},${text},A,A`)?.time;

  it.each([
    ['000000', 0, 0, 0],
    ['235960', 23, 59, 60],
    ['140412.', null],
    ['140412.00', 14, 4, 12],
    ['140412.75', 14, 4, 12.75],
    ['140412.125', 14, 4, 12.125],
    ['140412.00x', null],
    ['140412x00', null],
    ['140412x.5', null],
    ['140412.000000000', 14, 4, 12],
    ['140412.0000000000', null],
    ['240000', null],
    ['146000', null],
    ['140461', null],
    ['14041', null],
    ['1404/2', null],
    ['1404:2', null],
    ['140 12', null],
    ['', null],
  ])('%j', (text, ...parts) => {
    const [hour, minute, second] = parts;
    expect(timeOf(text)).toEqual(hour === null ? null : { hour, minute, second });
  });

  const target = { number: 7, position: { latitude: 56.5, longitude: -6.25 }, name: 'TERN' };
  const written = (hour: number, minute: number, second: number): string | undefined =>
    writeTarget({ ...target, time: { hour, minute, second } }).split(',')[7];

  it.each([
    [0, 0, 0, '000000.00'],
    [23, 59, 60.99, '235960.99'],
    [9, 8, 7.999, '090807.99'],
    [14, 4, 12.29, '140412.29'],
    [14, 4, 0.07, '140400.07'],
  ])('%d:%d:%d is written %s, hundredths cut off', (hour, minute, second, field) => {
    expect(written(hour, minute, second)).toBe(field);
  });

  it.each([
    [-1, 0, 0],
    [24, 0, 0],
    [0, -1, 0],
    [0, 60, 0],
    [0, 0, -1],
    [0, 0, 61],
    [Number.NaN, 0, 0],
    [0, Number.NaN, 0],
    [0, 0, Number.NaN],
  ])('%d:%d:%d is refused', (hour, minute, second) => {
    expect(() => written(hour, minute, second)).toThrow(
      new RangeError(`time: expected a time of day, got ${hour}:${minute}:${second}`),
    );
  });
});

describe('date and time', () => {
  const clockOf = (fields: string): unknown => {
    const reading = first(`GPZDA,${fields},00,00`);
    return reading.kind === 'clock' ? reading.instant : reading.kind;
  };

  it.each([
    ['140412.50,29,02,2028', Date.UTC(2028, 1, 29, 14, 4, 12, 500)],
    ['140412.50,28,02,2026', Date.UTC(2026, 1, 28, 14, 4, 12, 500)],
    ['000000.00,31,12,2026', Date.UTC(2026, 11, 31)],
    ['000000.00,01,01,2026', Date.UTC(2026, 0, 1)],
    ['140412.50,29,02,2026', 'other'],
    ['140412.50,00,02,2026', 'other'],
    ['140412.50,32,01,2026', 'other'],
    ['140412.50,01,00,2026', 'other'],
    ['140412.50,01,13,2026', 'other'],
    ['140412.50,1,02,2026', 'other'],
    ['140412.50,011,02,2026', 'other'],
    ['140412.50,01,2,2026', 'other'],
    ['140412.50,01,002,2026', 'other'],
    ['140412.50,01,02,26', 'other'],
    ['140412.50,01,02,02026', 'other'],
    ['140412.50,01,02,x2026', 'other'],
    ['140412.50', 'other'],
  ])('%s of ZDA', (fields, instant) => {
    expect(clockOf(fields)).toBe(instant);
  });

  it.each([
    ['290228', Date.UTC(2028, 1, 29, 14, 4, 12)],
    ['311299', Date.UTC(1999, 11, 31, 14, 4, 12)],
    ['310426', null],
    ['1060260', null],
    ['01062', null],
    ['', null],
  ])('%s of RMC', (date, instant) => {
    expect(fixOf(`GPRMC,140412,A,${place},5.2,184.0,${date},1.5,W,A`)?.instant).toBe(instant);
  });

  it('of a day are the nearest to what is known: half a day either way', () => {
    const near = (known: string, time: string): unknown => {
      const reading = readSentences(line(`GPZDA,${known}`) + line(`GPGLL,${place},${time},A,A`))[1];
      return reading?.kind === 'own-position' && reading.fix.instant;
    };
    const known = '060000.00,02,06,2026,00,00';
    expect(near(known, '180000')).toBe(Date.UTC(2026, 5, 2, 18));
    expect(near(known, '180001')).toBe(Date.UTC(2026, 5, 1, 18, 0, 1));
    const evening = '180000.00,02,06,2026,00,00';
    expect(near(evening, '060000')).toBe(Date.UTC(2026, 5, 2, 6));
    expect(near(evening, '055959')).toBe(Date.UTC(2026, 5, 3, 5, 59, 59));
  });
});

describe('own position', () => {
  it.each([
    ['A', 'autonomous'],
    ['D', 'differential'],
    ['P', 'precise'],
    ['R', 'real-time-kinematic'],
    ['F', 'float-real-time-kinematic'],
    ['E', 'estimated'],
    ['M', 'manual'],
    ['S', 'simulated'],
    ['N', 'none'],
    ['X', 'none'],
    ['', 'unstated'],
  ])('of mode %j is %s', (mode, quality) => {
    expect(fixOf(`GPGLL,${place},140412.00,A,${mode}`)?.quality).toBe(quality);
    expect(fixOf(`GPRMC,140412.00,A,${place},5.2,184.0,010626,1.5,W,${mode}`)?.quality).toBe(quality);
    const gnss = mode === '' ? 'none' : quality;
    expect(fixOf(`GNGNS,140412.00,${place},${mode},12,0.9,3.0,50.1,,`)?.quality).toBe(gnss);
  });

  it.each([
    ['0', 'none'],
    ['1', 'autonomous'],
    ['2', 'differential'],
    ['3', 'precise'],
    ['4', 'real-time-kinematic'],
    ['5', 'float-real-time-kinematic'],
    ['6', 'estimated'],
    ['7', 'manual'],
    ['8', 'simulated'],
    ['9', 'none'],
    ['', 'none'],
    ['A', 'none'],
  ])('of quality %j is %s', (digit, quality) => {
    expect(fixOf(`GPGGA,140412.00,${place},${digit},09,0.9,3.0,M,50.1,M,,`)?.quality).toBe(quality);
  });

  it('marked void says whether it is simulated', () => {
    expect(fixOf(`GPGLL,${place},140412.00,V,S`)?.quality).toBe('simulated');
    expect(fixOf(`GPGLL,${place},140412.00,V,A`)?.quality).toBe('none');
  });

  it('of several satellite systems is as good as the best of them', () => {
    const best = [
      ['NR', 'real-time-kinematic'],
      ['FR', 'real-time-kinematic'],
      ['PF', 'float-real-time-kinematic'],
      ['DP', 'precise'],
      ['AD', 'differential'],
      ['MA', 'autonomous'],
      ['EM', 'manual'],
      ['SE', 'estimated'],
      ['NS', 'simulated'],
      ['RA', 'real-time-kinematic'],
    ];
    for (const [letters, quality] of best) {
      expect([letters, fixOf(`GNGNS,140412.00,${place},${letters},12,0.9,3.0,50.1,,`)?.quality]).toEqual([
        letters,
        quality,
      ]);
    }
  });

  it('is told whole', () => {
    const position = { latitude: 56 + 20.33 / 60, longitude: -(6 + 30.12 / 60) };
    const time = { hour: 14, minute: 4, second: 12 };
    expect(fixOf(`GPRMC,140412.00,A,${place},5.2,184.0,010626,1.5,W,A`)).toEqual({
      formatter: 'RMC',
      position,
      quality: 'autonomous',
      time,
      instant: Date.UTC(2026, 5, 1, 14, 4, 12),
      speed: 5.2,
      course: 184,
    });
    expect(fixOf(`GPGLL,${place},140412.00,A,A`)).toEqual({
      formatter: 'GLL',
      position,
      quality: 'autonomous',
      time,
      instant: null,
      speed: null,
      course: null,
    });
    expect(fixOf(`GPGGA,140412.00,${place},1,09,0.9,3.0,M,50.1,M,,`)).toMatchObject({
      formatter: 'GGA',
      position,
      time,
    });
    expect(fixOf(`GNGNS,140412.00,${place},A,12,0.9,3.0,50.1,,`)).toMatchObject({
      formatter: 'GNS',
      position,
      time,
    });
  });

  it.each([
    ['5.2', 5.2],
    ['5', 5],
    ['5.', 5],
    ['.5', null],
    ['-5', null],
    ['5x', null],
    ['x5', null],
    ['', null],
    ['0000000000000005', 5],
    ['00000000000000005', null],
  ])('has speed and course %j', (text, number) => {
    const fix = fixOf(`GPRMC,140412.00,A,${place},${text},${text},010626,1.5,W,A`);
    expect([fix?.speed, fix?.course]).toEqual([number, number]);
  });

  it('without a time has no instant', () => {
    expect(fixOf(`GPRMC,,A,${place},5.2,184.0,010626,1.5,W,A`)).toMatchObject({ time: null, instant: null });
    expect(readSentences(line(`GPGLL,${place},,A,A`), { now: 0 })[0]).toMatchObject({
      fix: { time: null, instant: null },
    });
  });

  it.each(['RMC', 'GLL', 'GGA', 'GNS'])('of a %s without fields is none', (formatter) => {
    expect(first(`GP${formatter}`)).toMatchObject({
      kind: 'own-position',
      fix: { formatter, position: null, quality: 'none', time: null, instant: null, speed: null },
      notices: [{ code: 'sentence-fix-not-valid', received: "''" }],
    });
  });

  it('that is not to be believed sets no clock', () => {
    const readings = readSentences(
      line(`GPRMC,140412.00,V,${place},5.2,184.0,010626,1.5,W,N`) + line('GPVTG,,T,,M,,N,,K,N'),
    );
    expect(readings[1]?.at).toBeNull();
  });
});

describe('a target', () => {
  const position = { latitude: 56.5, longitude: -6.25 };
  const fields = '5630.0000,N,00615.0000,W';
  const targetOf = (body: string): Reading<'target'>['target'] | string => {
    const reading = first(body);
    return reading.kind === 'target' ? reading.target : reading.kind;
  };

  it.each([
    ['L', 'lost'],
    ['Q', 'acquiring'],
    ['T', 'tracking'],
    ['X', null],
    ['', null],
  ] as const)('of status %j is %s', (letter, status) => {
    expect(targetOf(`RATLL,07,${fields},TERN,140412.00,${letter},R`)).toEqual({
      number: 7,
      position,
      name: 'TERN',
      time: { hour: 14, minute: 4, second: 12 },
      status,
      reference: true,
    });
  });

  it('of which only number and place are told', () => {
    expect(targetOf(`RATLL,7,${fields}`)).toEqual({
      number: 7,
      position,
      name: '',
      time: null,
      status: null,
      reference: false,
    });
  });

  it.each([`RATLL,,${fields}`, `RATLL,107,${fields}`, `RATLL,x7,${fields}`, 'RATLL,07,,,,', 'RATLL'])(
    '%s is none',
    (body) => {
      expect(targetOf(body)).toBe('other');
    },
  );

  it.each([
    [{ status: 'lost', reference: true }, '07,5630.0000,N,00615.0000,W,TERN,,L,R'],
    [{ status: 'acquiring' }, '07,5630.0000,N,00615.0000,W,TERN,,Q,'],
    [{ status: null }, '07,5630.0000,N,00615.0000,W,TERN,,,'],
    [{ number: 0 }, '00,5630.0000,N,00615.0000,W,TERN,,T,'],
    [{ number: 99 }, '99,5630.0000,N,00615.0000,W,TERN,,T,'],
  ] as const)('with %j is written', (change, written) => {
    expect(writeTarget({ number: 7, position, name: 'TERN', ...change })).toBe(
      line(`CDTLL,${written}`).trim(),
    );
    expect(writeTarget({ number: 7, position, name: 'TERN', ...change }, { talker: 'RA' })).toBe(
      line(`RATLL,${written}`).trim(),
    );
  });

  it.each([-1, 100, 1.5, Number.NaN])('of number %d is refused', (number) => {
    expect(() => writeTarget({ number, position, name: '' })).toThrow(
      new RangeError(`number: expected 0 to 99, got ${number}`),
    );
  });

  it('and a waypoint without a name has none', () => {
    expect(first(`CDWPL,${fields}`)).toMatchObject({ kind: 'waypoint', waypoint: { position, name: '' } });
    expect(first('CDWPL').kind).toBe('other');
  });
});

describe('a sentence of another kind', () => {
  it.each([
    'GPXYZ,5620.0000,N,00630.0000,W,TERN',
    'GPXYZ,01,5620.0000,N,00630.0000,W,TERN,140412.00,T,R',
    'GPXYZ,140412.00,02,01,2026,00,00',
  ])('is kept as it is, whatever its fields resemble: %s', (body) => {
    expect(first(body).kind).toBe('other');
  });

  it('of the same fields is a waypoint, a target or a clock by its name alone', () => {
    expect(first('GPWPL,5620.0000,N,00630.0000,W,TERN').kind).toBe('waypoint');
    expect(first('RATLL,01,5620.0000,N,00630.0000,W,TERN,140412.00,T,R').kind).toBe('target');
    expect(first('GPZDA,140412.00,02,01,2026,00,00').kind).toBe('clock');
  });
});
