import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { english } from '../../src/locale/en.ts';
import { translate } from '../../src/locale/index.ts';
import {
  type Bounds,
  boundsFrom,
  boundsText,
  boxContains,
  boxOf,
  type Coordinates,
  centreOf,
  decodePosition,
  describeBounds,
  destination,
  type GeoBox,
  parsePosition,
  type ReportedPosition,
  rangeAndBearing,
  toReportedPosition,
  uncertaintyOf,
} from '../../src/position/index.ts';
import { valueOf as taken } from '../../src/result/index.ts';

const now = Date.UTC(2026, 5, 1, 14, 4);
const read = (digits: string, fraction?: string): ReportedPosition => {
  const value = taken(decodePosition(digits, fraction));
  if (value.kind === 'no-position') throw new Error('no position');
  return value;
};
const turn = (from: number, to: number) => ((((to - from + 180) % 360) + 360) % 360) - 180;
const longitudeIn = (degrees: number) =>
  degrees > 180 ? degrees - 360 : degrees < -180 ? degrees + 360 : degrees;

/** A place of a box: `x` from west to east and `y` from south to north, 0 to 1. */
const placeIn = (box: GeoBox, x: number, y: number): Coordinates => {
  const width = box.west <= box.east ? box.east - box.west : box.east - box.west + 360;
  return { latitude: box.south + y * (box.north - box.south), longitude: longitudeIn(box.west + x * width) };
};

/** The place of a box nearest in latitude and in longitude, as shares. */
const shareOf = (box: GeoBox, own: Coordinates): { x: number; y: number } => {
  const width = box.west <= box.east ? box.east - box.west : box.east - box.west + 360;
  const height = box.north - box.south;
  const clamped = (part: number, whole: number) => (whole === 0 ? 0 : Math.max(0, Math.min(1, part / whole)));
  const eastward = width / 2 + turn(box.west + width / 2, own.longitude);
  return { x: clamped(eastward, width), y: clamped(own.latitude - box.south, height) };
};

/** Whether a true place of own ship and of the other agree with the bounds. The slack is the last bits of doubles. */
function holds(bounds: Bounds, own: Coordinates, other: Coordinates): void {
  const { metres, bearing } = rangeAndBearing(own, other);
  expect(metres).toBeGreaterThanOrEqual(bounds.least - 1e-5);
  expect(metres).toBeLessThanOrEqual(bounds.greatest + 1e-5);
  if (bounds.sector !== null && bearing !== null) {
    const { from, to } = bounds.sector;
    const width = (to - from + 360) % 360;
    const inside = (bearing - from + 360 + 1e-6) % 360;
    expect(inside, `${bearing} in ${from} to ${to}`).toBeLessThanOrEqual(width + 2e-6);
  }
  const { area } = bounds;
  const wide = { ...area, south: area.south - 1e-9, north: area.north + 1e-9 };
  const eastward = (degrees: number) => ({ ...other, longitude: longitudeIn(other.longitude + degrees) });
  expect([0, 1e-9, -1e-9].some((slack) => boxContains(wide, eastward(slack)))).toBe(true);
}

const minutes = (value: number, width: number) =>
  String(Math.floor(value / 60)).padStart(width, '0') + String(value % 60).padStart(2, '0');
const anywhere = fc
  .tuple(
    fc.integer({ min: 0, max: 3 }),
    fc.integer({ min: 0, max: 5400 }),
    fc.integer({ min: 0, max: 10800 }),
  )
  .map(([quadrant, ns, ew]) => `${quadrant}${minutes(ns, 2)}${minutes(ew, 3)}`);
/** The corners of the world, where boxes and bearings go wrong first. */
const awkward = fc.constantFrom(
  ...['0', '1', '2', '3'].flatMap((quadrant) => [
    `${quadrant}000000000`,
    `${quadrant}000018000`,
    `${quadrant}000017959`,
    `${quadrant}561217959`,
    `${quadrant}561200000`,
    `${quadrant}895917959`,
    `${quadrant}895900000`,
    `${quadrant}900000000`,
    `${quadrant}895012345`,
    `${quadrant}000012345`,
  ]),
);
const assumption = fc.constantFrom('truncated', 'rounded', 'unknown' as const);
const share = fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true }));

describe('boundsFrom', () => {
  it('leaves no possible position outside: random search', () => {
    fc.assert(
      fc.property(
        fc.record({
          digits: fc.oneof(anywhere, awkward),
          decimals: fc.constantFrom(undefined, '00000000', '50005000', '99999999'),
          assumption,
          away: fc.oneof(
            fc.double({ min: 0, max: 5000, noNaN: true }),
            fc.double({ min: 0, max: 200_000, noNaN: true }),
          ),
          towards: fc.double({ min: 0, max: 360, noNaN: true }),
          speed: fc.constantFrom(undefined, 0, 3, 30),
          age: fc.integer({ min: -60, max: 7200 }),
          clockDoubtSeconds: fc.constantFrom(0, 60, 300),
          ownDoubt: fc.constantFrom(0, 10, 1000),
        }),
        fc.array(
          fc.tuple(
            share,
            share,
            share,
            share,
            fc.integer({ min: 0, max: 359 }),
            fc.integer({ min: 0, max: 359 }),
          ),
          {
            minLength: 20,
            maxLength: 20,
          },
        ),
        (made, truths) => {
          const exact = decodePosition(made.digits, made.decimals);
          const reported =
            exact.ok && exact.value.kind === 'reported-position' ? exact.value : read(made.digits);
          const own = destination(centreOf(reported, made.assumption), made.towards, made.away);
          const options: Parameters<typeof boundsFrom>[2] = {
            at: now - made.age * 1000,
            now,
            clockDoubtSeconds: made.clockDoubtSeconds,
            ownDoubt: made.ownDoubt,
            assumption: made.assumption,
            ...(made.speed === undefined ? {} : { speed: made.speed }),
          };
          const bounds = boundsFrom(own, reported, options);
          for (const [x, y, ran, erred, course, error] of truths) {
            const fix = placeIn(boxOf(reported, made.assumption), x, y);
            const other = destination(fix, course, ran * (bounds.movement ?? 0));
            const trueOwn = destination(own, error, erred * made.ownDoubt);
            holds(bounds, trueOwn, other);
          }
        },
      ),
      { numRuns: 400 },
    );
  });

  it('leaves no possible position outside: every tenth of the box, eight courses, at the corners of the world', () => {
    const cases: [string, Coordinates][] = [
      ['0000000000', { latitude: -0.01, longitude: -0.01 }],
      ['3000000000', { latitude: 0.005, longitude: 0.03 }],
      ['0561217959', { latitude: 56.2, longitude: -179.99 }],
      ['1561218000', { latitude: 56.25, longitude: 179.95 }],
      ['0895900000', { latitude: 89.98, longitude: 170 }],
      ['0900000000', { latitude: 89.99, longitude: 90 }],
      ['2895912345', { latitude: -89.9, longitude: -56 }],
      ['1561800632', { latitude: 56.3667, longitude: -6.4 }],
      ['1561800632', { latitude: 56.3, longitude: -6.5 }],
    ];
    for (const [digits, own] of cases) {
      for (const speed of [0, 12]) {
        const bounds = boundsFrom(own, read(digits), { at: now - 600_000, now, speed });
        for (let x = 0; x <= 10; x += 1) {
          for (let y = 0; y <= 10; y += 1) {
            const fix = placeIn(bounds.box, x / 10, y / 10);
            for (let course = 0; course < (speed === 0 ? 1 : 360); course += 45) {
              holds(bounds, own, destination(fix, course, bounds.movement as number));
            }
          }
        }
      }
    }
  });

  it('is tight: the ends are reached within 1 % or 10 m, and the sector within 2 %', () => {
    fc.assert(
      fc.property(
        fc.record({
          digits: fc.oneof(anywhere, awkward),
          assumption,
          away: fc.double({ min: 0, max: 60_000, noNaN: true }),
          towards: fc.double({ min: 0, max: 360, noNaN: true }),
          speed: fc.constantFrom(0, 6, 25),
        }),
        (made) => {
          const reported = read(made.digits);
          const own = destination(centreOf(reported, made.assumption), made.towards, made.away);
          const at = now - 900_000;
          const bounds = boundsFrom(own, reported, {
            at,
            now,
            speed: made.speed,
            assumption: made.assumption,
          });
          const ran = bounds.movement as number;
          let [least, greatest, left, right] = [Infinity, 0, 0, 0];
          const middle =
            bounds.sector && bounds.sector.from + ((bounds.sector.to - bounds.sector.from + 360) % 360) / 2;
          // A grid, and the rows and columns of the place of the box that is level with own ship.
          const level = shareOf(bounds.box, own);
          const steps = Array.from({ length: 41 }, (_, i) => i / 40);
          for (const x of [...steps, level.x]) {
            for (const y of [...steps, level.y]) {
              const line = rangeAndBearing(own, placeIn(bounds.box, x, y));
              least = Math.min(least, Math.max(0, line.metres - ran));
              greatest = Math.max(greatest, line.metres + ran);
              if (middle === null || line.bearing === null) continue;
              // Straight across the line of sight from the point of tangency she stands out farthest.
              const out = (Math.asin(Math.min(1, ran / line.metres)) * 180) / Math.PI;
              left = Math.max(left, -turn(middle, line.bearing) + out);
              right = Math.max(right, turn(middle, line.bearing) + out);
            }
          }
          expect(least - bounds.least).toBeLessThanOrEqual(Math.max(0.01 * bounds.least, 10));
          expect(bounds.greatest - greatest).toBeLessThanOrEqual(Math.max(0.01 * bounds.greatest, 10));
          if (bounds.sector === null) return;
          const width = (bounds.sector.to - bounds.sector.from + 360) % 360;
          expect(width - left - right).toBeLessThanOrEqual(0.02 * width + 1e-6);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('gives no bearing when own ship may lie in the area, at a pole, or far round the world', () => {
    const tern = read('1561800632');
    const inside = boundsFrom({ latitude: 56.31, longitude: -6.54 }, tern, { at: now, now });
    expect(inside).toMatchObject({ least: 0, sector: null, movement: null, age: 0 });
    const near = { latitude: 56.34, longitude: -6.54 };
    expect(boundsFrom(near, tern, { at: now - 3_600_000, now }).sector).not.toBeNull();
    expect(boundsFrom(near, tern, { at: now - 3_600_000, now, speed: 6 })).toMatchObject({
      least: 0,
      sector: null,
    });
    expect(boundsFrom(near, tern, { at: now, now, ownDoubt: 5000 }).sector).toBeNull();
    expect(boundsFrom({ latitude: 90, longitude: 0 }, tern, { at: now, now }).sector).toBeNull();
    expect(boundsFrom({ latitude: -56.3, longitude: 173.46 }, tern, { at: now, now }).sector).toBeNull();
    expect(
      boundsFrom({ latitude: 89.9999, longitude: 0 }, read('0895900000'), { at: now, now, ownDoubt: 100 })
        .sector,
    ).toBeNull();
  });

  it('counts the doubt of own position and of the clock', () => {
    const own = { latitude: 56.5, longitude: -6.4 };
    const tern = read('1561800632');
    const plain = boundsFrom(own, tern, { at: now - 600_000, now, speed: 6, clockDoubtSeconds: 0 });
    const doubted = boundsFrom(own, tern, {
      at: now - 600_000,
      now,
      speed: 6,
      clockDoubtSeconds: 300,
      ownDoubt: 50,
    });
    // 6 knots for 300 s is 926 m.
    expect(plain.least - doubted.least).toBeCloseTo(976, 6);
    expect(doubted.greatest - plain.greatest).toBeCloseTo(976, 6);
    // A fix from the future is a wrong clock: its age is negative, her movement is not.
    const ahead = boundsFrom(own, tern, { at: now + 600_000, now, speed: 6, clockDoubtSeconds: 0 });
    expect([ahead.age, ahead.movement]).toEqual([-600, plain.movement]);
  });

  it('does not invent movement: without speed or time the bounds are those of the fix', () => {
    const own = { latitude: 56.5, longitude: -6.4 };
    const timeless = boundsFrom(own, read('1561800632'), { at: null, now, speed: 30 });
    expect(timeless).toMatchObject({ movement: null, age: null });
    expect(boundsText(timeless).params).toMatchObject({
      parts: [{}, {}, { code: 'position-bounds-no-time' }, { code: 'position-bounds-still' }],
    });
  });

  it('throws on numbers that mean nothing', () => {
    const own = { latitude: 56.5, longitude: -6.4 };
    const tern = read('1561800632');
    expect(() => boundsFrom({ latitude: 95, longitude: 0 }, tern, { at: now, now })).toThrow(RangeError);
    for (const bad of [
      { speed: -1 },
      { clockDoubtSeconds: Number.NaN },
      { ownDoubt: Infinity },
      { now: Number.NaN },
      { at: Infinity },
    ]) {
      expect(() => boundsFrom(own, tern, { at: now, now, ...bad })).toThrow(RangeError);
    }
  });
});

describe('the box of one minute', () => {
  // Worked from the WGS 84 radii of curvature M = a(1-e²)/(1-e² sin²)^1.5 and N cos, an independent way to the same box:
  // latitude of the equatorward edge, sides north-south and east-west, half a diagonal, a diagonal, and the root mean
  // square from the middle, in metres.
  it.each([
    [0, 1842.9, 1855.3, 1308, 2615, 755],
    [30, 1847.5, 1608.1, 1225, 2449, 707],
    [45, 1852.2, 1314.1, 1136, 2271, 656],
    [51, 1854.1, 1170.0, 1096, 2192, 633],
    [60, 1856.9, 930.0, 1038, 2077, 600],
    [70, 1859.4, 636.4, 983, 1965, 567],
    [80, 1861.0, 323.2, 944, 1889, 545],
  ])('at %i degrees', (latitude, northSouth, eastWest, half, diagonal, rms) => {
    const reported = toReportedPosition({ latitude, longitude: 10 });
    const box = boxOf(reported);
    const corner = (y: number, x: number) => placeIn(box, x, y);
    expect(rangeAndBearing(corner(0, 0), corner(1, 0)).metres).toBeCloseTo(northSouth, 0);
    expect(rangeAndBearing(corner(0, 0), corner(0, 1)).metres).toBeCloseTo(eastWest, 0);
    expect(Math.abs(uncertaintyOf(reported) - half)).toBeLessThanOrEqual(1);
    const across = rangeAndBearing(corner(0, 0), corner(1, 1)).metres;
    expect(Math.abs(across - diagonal)).toBeLessThanOrEqual(1);
    expect(Math.abs(across / Math.sqrt(12) - rms)).toBeLessThanOrEqual(1);
  });

  // asin(half diagonal / range): the worst bearing error that a box at 51° can make.
  it.each([
    [5, 6.8],
    [10, 3.4],
    [20, 1.7],
  ])('at %i miles spoils a bearing by at most %f degrees', (miles, degrees) => {
    const reported = toReportedPosition({ latitude: 51, longitude: 10 });
    const centre = centreOf(reported);
    let worst = 0;
    for (let bearing = 0; bearing < 360; bearing += 1) {
      const own = destination(centre, bearing, miles * 1852);
      const { sector } = boundsFrom(own, reported, { at: now, now, assumption: 'truncated' });
      const back = rangeAndBearing(own, centre).bearing as number;
      if (sector !== null)
        worst = Math.max(worst, Math.abs(turn(back, sector.from)), Math.abs(turn(back, sector.to)));
    }
    expect(worst).toBeLessThanOrEqual(degrees + 0.05);
    expect(worst).toBeGreaterThan(degrees - 0.15);
  });
});

describe('describeBounds', () => {
  const bounds: Bounds = {
    kind: 'bounds',
    least: 3.17 * 1852,
    greatest: 4.51 * 1852,
    sector: { from: 210.4, to: 230.2 },
    box: { south: 56, west: -6, north: 56, east: -6 },
    movement: 100,
    area: { south: 56, west: -6, north: 56, east: -6 },
    age: 14 * 60 + 59,
    assumption: 'unknown',
  };

  const said = (code: string, params: object = {}) => ({ code: `position-bounds-${code}`, params });
  const range = said('between', { near: '3.1', far: '4.6' });
  const bearing = said('sector', { from: '210', to: '231' });
  const age = said('minutes', { minutes: 14 });

  it.each<[string, Partial<Bounds>, readonly object[]]>([
    ['rounds outward', {}, [range, bearing, age]],
    ['alongside', { least: 0, sector: null }, [said('within', { far: '4.6' }), said('no-bearing'), age]],
    [
      'close by, in hundredths of a mile',
      { least: 100, greatest: 500 },
      [said('between', { near: '0.05', far: '0.27' }), bearing, age],
    ],
    [
      'across north',
      { sector: { from: 350.5, to: 9.5 } },
      [range, said('sector', { from: '350', to: '010' }), age],
    ],
    [
      'up to north',
      { sector: { from: 355, to: 359.5 }, age: 59 },
      [range, said('sector', { from: '355', to: '000' }), said('new')],
    ],
    [
      'on one bearing, at one range',
      { least: 1852, greatest: 1852, sector: { from: 90, to: 90 }, age: 60 },
      [said('at', { far: '1.0' }), said('bearing', { from: '090' }), said('minutes', { minutes: 1 })],
    ],
    ['a fix of hours', { age: 23.5 * 3600 }, [range, bearing, said('hours', { hours: 23, minutes: '30' })]],
    // The time of a call has no seconds: within a minute the clocks agree.
    ['a fix just ahead of the clock', { age: -59 }, [range, bearing, said('new')]],
    ['a fix ahead of the clock', { age: -3600 }, [range, bearing, said('ahead')]],
    ['a fix without time', { age: null, movement: null }, [range, bearing, said('no-time'), said('still')]],
  ])('%s', (_, change, parts) => {
    const text = boundsText({ ...bounds, ...change });
    expect(text).toMatchObject({ code: 'position-bounds', params: { parts } });
    expect(describeBounds({ ...bounds, ...change })).toBe(text.message);
    // The English catalogue says what the module says itself.
    expect(translate(text, english).text).toBe(text.message);
  });
});

describe('bounds of a position that is not from a call', () => {
  const own = { latitude: 56.3667, longitude: -6.4 };
  const options: Parameters<typeof boundsFrom>[2] = { at: now, now, clockDoubtSeconds: 0 };

  // -6.533333 degrees are 6 degrees 31.99998 minutes: cut to whole minutes it would be half a mile off.
  it('leaves a typed decimal where it is', () => {
    const typed = taken(parsePosition('56.363333, -6.533333'));
    const { box, least, greatest } = boundsFrom(own, typed, options);
    expect(typed.step).toBeCloseTo(1e-6, 12);
    expect(box.west).toBeCloseTo(-6.533333, 5);
    expect(box.east).toBeCloseTo(-6.533333, 5);
    const { metres } = rangeAndBearing(own, typed);
    expect(least).toBeLessThanOrEqual(metres);
    expect(greatest).toBeGreaterThanOrEqual(metres);
    expect(greatest - least).toBeLessThan(1);
  });

  it.each<[string, number]>([
    ['56°20′ N 006°30′ W', 1 / 60],
    ['5620N 00630W', 1 / 60],
    ['56 20.5 N 006 30 W', 1 / 60],
    ['56°20.33′ N 006°30.12′ W', 1 / 6000],
    ['56°20′19″ N 006°30′07″ W', 1 / 3600],
    ['56 N 6 W', 1],
    ['+5620.33-00630.12/', 1 / 6000],
    ['geo:56.3388,-6.502', 1e-3],
  ])('takes %s for as fine as its coarser half is written', (text, step) => {
    expect(taken(parsePosition(text)).step).toBeCloseTo(step, 12);
  });

  it('makes a box of typed whole minutes, like those of a call', () => {
    const typed = taken(parsePosition('56°18′ N 006°32′ W'));
    const called = boundsFrom(own, read('1561800632'), options);
    const { box, least, greatest, sector } = boundsFrom(own, typed, options);
    for (const side of ['south', 'west', 'north', 'east'] as const)
      expect(box[side]).toBeCloseTo(called.box[side], 9);
    expect(least).toBeCloseTo(called.least, 3);
    expect(greatest).toBeCloseTo(called.greatest, 3);
    expect(sector?.from).toBeCloseTo(called.sector?.from as number, 6);
  });

  it('does not know the hemisphere of a zero', () => {
    expect(boxOf({ latitude: 0, longitude: 0, step: 1 / 60 }, 'rounded')).toEqual({
      south: -1 / 120,
      west: -1 / 120,
      north: 1 / 120,
      east: 1 / 120,
    });
    expect(boxOf({ latitude: 90, longitude: 180, step: 1 }, 'truncated')).toMatchObject({
      south: 90,
      north: 90,
    });
  });

  it('asks how far plain coordinates may be off', () => {
    const place = { latitude: 56.3, longitude: -6.53 };
    expect(() => boundsFrom(own, place, options)).toThrow(TypeError);
    expect(() => boundsFrom(own, place, { ...options, uncertainty: -1 })).toThrow(RangeError);
    const { metres } = rangeAndBearing(own, place);
    const { least, greatest, sector, box } = boundsFrom(own, place, { ...options, uncertainty: 500 });
    expect(least).toBeCloseTo(metres - 500, 6);
    expect(greatest).toBeCloseTo(metres + 500, 6);
    expect(sector).not.toBeNull();
    expect(boxContains(box, destination(place, 0, 499))).toBe(true);
    expect(boundsFrom(own, place, { ...options, uncertainty: 1e9 })).toMatchObject({
      least: 0,
      sector: null,
    });
  });

  it('holds every place within the uncertainty', () => {
    const places = fc.record({
      latitude: fc.double({ min: -90, max: 90, noNaN: true }),
      longitude: fc.double({ min: -180, max: 180, noNaN: true }),
    });
    fc.assert(
      fc.property(
        places,
        places,
        fc.double({ min: 0, max: 100_000, noNaN: true }),
        fc.double({ min: 0, max: 360, noNaN: true }),
        share,
        (from, place, uncertainty, bearing, part) => {
          const she = destination(place, bearing, uncertainty * part);
          const bounds = boundsFrom(from, place, { ...options, uncertainty });
          const { metres } = rangeAndBearing(from, she);
          expect(metres).toBeGreaterThanOrEqual(bounds.least - 1e-3);
          expect(metres).toBeLessThanOrEqual(bounds.greatest + 1e-3);
        },
      ),
    );
  });
});

describe('what a program is told that makes a likely mistake', () => {
  const own = { latitude: 56.3667, longitude: -6.4 };
  const place = read('1561800632');
  const bounds = (...given: readonly unknown[]) => boundsFrom(...(given as Parameters<typeof boundsFrom>));
  it.each<[string, () => unknown, string]>([
    ['a result', () => bounds(parsePosition('56 N 6 W'), place, { at: 0, now: 0 }), 'look at .ok first'],
    ['lat and lng', () => bounds({ lat: 56, lng: -6 }, place, { at: 0, now: 0 }), 'latitude and longitude'],
    ['a Date', () => bounds(own, place, { at: null, now: new Date(0) }), 'getTime()'],
    ['no options', () => bounds(own, place), 'expected options with at and now, got undefined'],
    ['an unknown option', () => bounds(own, place, { at: 0, now: 0, ownDubt: 1 }), "got 'ownDubt'"],
    ['a promise', () => bounds(Promise.resolve(own), place, { at: 0, now: 0 }), 'await it first'],
  ])('%s', (_, use, words) => {
    expect(use).toThrow(words);
  });
});
