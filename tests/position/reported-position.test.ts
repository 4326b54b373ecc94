import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornerOf } from '../../src/position/box.ts';
import {
  boundsFrom,
  boxContains,
  boxOf,
  centreOf,
  decodePosition,
  encodePosition,
  formatReportedPosition,
  type ReportedPosition,
  toReportedPosition,
  uncertaintyOf,
} from '../../src/position/index.ts';
import { refinePosition } from '../../src/position/reported-position.ts';
import { valueOf as taken } from '../../src/result/index.ts';

const two = (most: number) =>
  fc.integer({ min: 0, max: most }).map((value) => String(value).padStart(2, '0'));
const digits = fc
  .tuple(
    fc.integer({ min: 0, max: 3 }),
    fc.integer({ min: 0, max: 5399 }),
    fc.integer({ min: 0, max: 10799 }),
  )
  .map(([quadrant, ns, ew]) => {
    const minutes = (value: number, width: number) =>
      String(Math.floor(value / 60)).padStart(width, '0') + String(value % 60).padStart(2, '0');
    return `${quadrant}${minutes(ns, 2)}${minutes(ew, 3)}`;
  });
const fraction = fc.tuple(two(99), two(99), two(99), two(99)).map((parts) => parts.join(''));

const read = (ten: string, eight?: string): ReportedPosition => {
  const value = taken(decodePosition(ten, eight));
  if (value.kind === 'no-position') throw new Error('no position');
  return value;
};

describe('decodePosition', () => {
  // Quadrant digit and order of the digits: ITU-R M.493-16, position coordinates, from memory.
  it.each([
    ['0', 'N', 'E'],
    ['1', 'N', 'W'],
    ['2', 'S', 'E'],
    ['3', 'S', 'W'],
  ])('quadrant %s is %s%s, also at zero', (quadrant, ns, ew) => {
    expect(read(`${quadrant}562000630`)).toEqual({
      kind: 'reported-position',
      latitude: { hemisphere: ns, degrees: 56, minutes: 20 },
      longitude: { hemisphere: ew, degrees: 6, minutes: 30 },
    });
    const zero = read(`${quadrant}000000000`);
    expect([zero.latitude.hemisphere, zero.longitude.hemisphere]).toEqual([ns, ew]);
    expect(encodePosition(zero)).toEqual({ digits: `${quadrant}000000000` });
  });

  // ITU-R M.541-11 Annex 1 §2: position unknown is the digit 9 ten times.
  it('takes ten nines as no position', () => {
    expect(decodePosition('9999999999')).toEqual({ ok: true, value: { kind: 'no-position' }, notices: [] });
    expect(encodePosition({ kind: 'no-position' })).toEqual({ digits: '9999999999' });
    expect(decodePosition('9999999999', '12345678')).toMatchObject({
      ok: true,
      notices: [{ code: 'position-fraction-alone', grade: 'check', received: "'12345678'" }],
    });
  });

  // ITU-R M.821, enhanced position resolution, from memory: four decimals of each minute. No carry is possible.
  it('adds ten-thousandths of a minute', () => {
    const position = read('1562000630', '33009999');
    expect(position.fraction).toEqual({ latitude: 3300, longitude: 9999 });
    expect(formatReportedPosition(position)).toBe('56°20.3300′ N 006°30.9999′ W');
    expect(cornerOf(position).latitude).toBeCloseTo(56 + 20.33 / 60, 12);
    expect(cornerOf(position).longitude).toBeCloseTo(-(6 + 30.9999 / 60), 12);
  });

  it.each<[unknown, string, string]>([
    ['4562000630', 'position-quadrant', 'ITU-R M.493'],
    ['9999999998', 'position-quadrant', 'ITU-R M.493'],
    ['1566000630', 'position-minutes', 'ITU-R M.493'],
    ['1562000660', 'position-minutes', 'ITU-R M.493'],
    ['1900100630', 'position-latitude-range', 'ITU-R M.493'],
    ['1562018001', 'position-longitude-range', 'ITU-R M.493'],
    ['156200063', 'position-digits', 'ITU-R M.493'],
    ['15620006300', 'position-digits', 'ITU-R M.493'],
    ['156200063x', 'position-digits', 'ITU-R M.493'],
    ['١٥٦٢٠٠٠٦٣٠', 'position-digits', 'ITU-R M.493'],
    [1562000630, 'position-digits', 'ITU-R M.493'],
    [undefined, 'position-digits', 'ITU-R M.493'],
  ])('refuses %j with %s', (input, code, clause) => {
    const result = decodePosition(input);
    expect(result).toMatchObject({ ok: false, issues: [{ code, grade: 'error', params: {} }] });
    if (!result.ok) expect(result.issues[0].clause).toContain(clause);
  });

  it.each([['3300'], ['330012000'], ['3300 200'], [''], [33001200]])('refuses the decimals %j', (input) => {
    const result = refinePosition(read('1562000630'), input);
    expect(result).toMatchObject({ ok: false, issues: [{ code: 'position-fraction-digits' }] });
    if (!result.ok) expect(result.issues[0].clause).toContain('M.821');
  });

  it('takes the pole and the 180th meridian, and nothing past them', () => {
    expect(decodePosition('0900018000', '00000000').ok).toBe(true);
    expect(decodePosition('0900018000', '00010000')).toMatchObject({
      issues: [{ code: 'position-latitude-range' }],
    });
    expect(decodePosition('0900018000', '00000001')).toMatchObject({
      issues: [{ code: 'position-longitude-range' }],
    });
  });

  it('gives back the digits it was given', () => {
    fc.assert(
      fc.property(digits, fraction, (ten, eight) => {
        expect(encodePosition(read(ten))).toEqual({ digits: ten });
        expect(encodePosition(read(ten, eight))).toEqual({ digits: ten, fraction: eight });
        expect(decodePosition(ten, eight)).toEqual(JSON.parse(JSON.stringify(decodePosition(ten, eight))));
      }),
    );
  });

  it('never throws, whatever it is given', () => {
    fc.assert(
      fc.property(fc.anything(), fc.anything(), (ten, eight) => {
        decodePosition(ten, eight);
        refinePosition(read('1562000630'), eight);
      }),
    );
    for (const name of ['__proto__', 'constructor', 'toString']) expect(decodePosition(name).ok).toBe(false);
    expect(decodePosition('1'.repeat(10_000_000)).ok).toBe(false);
  });

  it('throws when a program asks for digits of an impossible position', () => {
    const good = read('1562000630');
    expect(() => encodePosition({ ...good, latitude: { ...good.latitude, minutes: 60 } })).toThrow(
      RangeError,
    );
    expect(() => encodePosition({ ...good, latitude: { ...good.latitude, degrees: 5.5 } })).toThrow(
      RangeError,
    );
    expect(() => encodePosition({ ...good, fraction: { latitude: -1, longitude: 0 } })).toThrow(RangeError);
  });
});

describe('toReportedPosition', () => {
  it('cuts, and never rounds', () => {
    const fix = { latitude: 56 + 20.99999 / 60, longitude: -(6 + 59.9999 / 60) };
    expect(encodePosition(toReportedPosition(fix))).toEqual({ digits: '1562000659' });
    expect(encodePosition(toReportedPosition(fix, { enhanced: true }))).toEqual({
      digits: '1562000659',
      fraction: '99999999',
    });
  });

  it('keeps the hemisphere of a fix close to zero', () => {
    expect(encodePosition(toReportedPosition({ latitude: -0.001, longitude: -0.001 }))).toEqual({
      digits: '3000000000',
    });
  });

  it('gives back the digits that made the place', () => {
    fc.assert(
      fc.property(digits, fraction, (ten, eight) => {
        const position = read(ten, eight);
        const again = encodePosition(toReportedPosition(cornerOf(position), { enhanced: true }));
        // A zero has lost its hemisphere in the coordinates.
        const free = (text: string) => text.slice(1);
        expect(free(again.digits)).toBe(free(ten));
        expect(again.fraction).toBe(eight);
      }),
    );
  });

  it('makes a box that holds the fix', () => {
    const place = fc.record({
      latitude: fc.double({ min: -90, max: 90, noNaN: true }),
      longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    });
    fc.assert(
      fc.property(place, fc.boolean(), (fix, enhanced) => {
        const position = toReportedPosition(fix, { enhanced });
        for (const assumption of ['truncated', 'unknown'] as const) {
          const box = boxOf(position, assumption);
          // The cut allows for the last bits of a double: two micrometres on the ground.
          const slack = 2e-11;
          const wide = {
            ...box,
            south: box.south - slack,
            north: box.north + slack,
            west: box.west - slack,
            east: box.east + slack,
          };
          expect(boxContains(wide, fix), JSON.stringify([position, box])).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('boxOf and centreOf', () => {
  const minute = 1 / 60;
  const near = (value: number) => expect.closeTo(value, 10) as number;

  // Cutting draws every report towards 0° N 0° E, so the box lies outward, in the direction of the quadrant.
  it.each([
    ['0000000000', { south: 0, west: 0, north: minute, east: minute }],
    ['1000000000', { south: 0, west: -minute, north: minute, east: 0 }],
    ['2000000000', { south: -minute, west: 0, north: 0, east: minute }],
    ['3000000000', { south: -minute, west: -minute, north: 0, east: 0 }],
  ])('%s cut off lies outward', (ten, box) => {
    const wanted = {
      south: near(box.south),
      west: near(box.west),
      north: near(box.north),
      east: near(box.east),
    };
    expect(boxOf(read(ten))).toEqual(wanted);
  });

  it('knows three ways a set may have made the digits', () => {
    const position = read('1562000630');
    const latitudes = (assumption: 'truncated' | 'rounded' | 'unknown') => {
      const box = boxOf(position, assumption);
      return [
        (box.south - 56) * 60,
        (box.north - 56) * 60,
        (centreOf(position, assumption).latitude - 56) * 60,
      ];
    };
    expect(latitudes('truncated')).toEqual([near(20), near(21), near(20.5)]);
    expect(latitudes('rounded')).toEqual([near(19.5), near(20.5), near(20)]);
    expect(latitudes('unknown')).toEqual([near(19.5), near(21), near(20.25)]);
  });

  it('takes the finer step of an enhanced position', () => {
    const box = boxOf(read('1562000630', '33001200'));
    expect((box.north - box.south) * 60).toBeCloseTo(0.0001, 10);
  });

  it('crosses Greenwich and the 180th meridian where rounding may', () => {
    expect(boxOf(read('0000000000'), 'rounded')).toEqual({
      south: near(-minute / 2),
      west: near(-minute / 2),
      north: near(minute / 2),
      east: near(minute / 2),
    });
    const edge = boxOf(read('0560018000'), 'rounded');
    expect(edge.west).toBeCloseTo(180 - minute / 2, 10);
    expect(edge.east).toBeCloseTo(-180 + minute / 2, 10);
    expect(boxContains(edge, { latitude: 56, longitude: -179.995 })).toBe(true);
    expect(boxContains(edge, { latitude: 56, longitude: 0 })).toBe(false);
    expect(Math.abs(centreOf(read('0560018000'), 'rounded').longitude)).toBeCloseTo(180, 10);
  });

  it('ends at the pole, and cut digits of 180° are exact', () => {
    expect(boxOf(read('0895917959'))).toMatchObject({ north: 90, east: 180 });
    expect(boxOf(read('0900018000'))).toEqual({ south: 90, west: 180, north: 90, east: 180 });
    expect(boxOf(read('0900018000'), 'unknown').north).toBe(90);
  });
});

describe('a fix in the place of a report', () => {
  const fix = { latitude: 56.3499, longitude: -6.502 } as unknown as ReportedPosition;
  it.each<[string, (given: ReportedPosition) => unknown]>([
    ['encodePosition', encodePosition],
    ['formatReportedPosition', formatReportedPosition],
    ['cornerOf', cornerOf],
    ['centreOf', centreOf],
    ['boxOf', boxOf],
    ['uncertaintyOf', uncertaintyOf],
    [
      'boundsFrom',
      // Plain coordinates are good for bounds once their uncertainty is stated: tests/position/bounds.test.ts.
      (given) =>
        boundsFrom(
          { latitude: 56, longitude: -6 },
          given === fix ? (5 as unknown as ReportedPosition) : given,
          { at: 0, now: 0 },
        ),
    ],
  ])('%s names what is wanted, and what makes it', (_, use) => {
    for (const given of [fix, null, undefined, '1562000630', 5, {}] as ReportedPosition[])
      expect(() => use(given)).toThrow(
        new RangeError(
          'position: expected the position of a call; toReportedPosition makes one of coordinates',
        ),
      );
  });
});
