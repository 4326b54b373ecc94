import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boundsFrom,
  type Coordinates,
  closestApproach,
  deadReckoning,
  destination,
  intercept,
  type Mover,
  parsePosition,
  rangeAndBearing,
  timeToReach,
} from '../../src/position/index.ts';
import { overGround } from '../../src/position/mover.ts';
import { alongRhumb, rhumbLine } from '../../src/position/sailings.ts';
import { valueOf as taken } from '../../src/result/index.ts';
import { geodesicLines } from '../oracle/position-geodesic-lines.ts';
import { courseAndMiles, sailed, stepped } from '../oracle/position-sailing.ts';

const MILE = 1852;
const turn = (from: number, to: number) => ((((to - from + 180) % 360) + 360) % 360) - 180;
const apart = (one: Coordinates, other: Coordinates) => rangeAndBearing(one, other).metres;
const bearings = fc.double({ min: 0, max: 360, noNaN: true, maxExcluded: true });
const places = (most: number) =>
  fc.record({
    latitude: fc.double({ min: -most, max: most, noNaN: true }),
    longitude: fc.double({ min: -180, max: 180, noNaN: true }),
  });
const speeds = fc.double({ min: 0.5, max: 30, noNaN: true });
const current = fc.option(fc.record({ set: bearings, drift: fc.double({ min: 0, max: 4, noNaN: true }) }), {
  nil: undefined,
});

interface Sailing {
  method: string;
  from: string;
  to: string;
  course: number;
  miles: number;
  source: string;
}
const sailings = JSON.parse(
  readFileSync(new URL('../../shared/position/sailing-problems.json', import.meta.url), 'utf8'),
) as { destinations: Sailing[]; courses: Sailing[] };

describe('rhumb lines', () => {
  it.each(sailings.destinations)('$method: $from, $miles miles on $course ($source)', (problem) => {
    const from = taken(parsePosition(problem.from));
    const to = taken(parsePosition(problem.to));
    const byHand = sailed(problem.method, from, problem.course, problem.miles);
    expect(Math.abs(byHand.latitude - to.latitude) * 60).toBeLessThanOrEqual(0.55);
    expect(Math.abs(turn(byHand.longitude, to.longitude)) * 60).toBeLessThanOrEqual(0.5);
    // By hand a minute of latitude is a mile; on WGS 84 it is 1842.9 to 1861.7 m. Mid-latitude sailing has an error of
    // its own. Together up to 0.7 % of the run, and that is the whole difference.
    const run = problem.miles * MILE;
    expect(apart(alongRhumb(from, problem.course, run), to)).toBeLessThan(0.007 * run);
  });

  it.each(sailings.courses)('$method: $from to $to ($source)', (problem) => {
    const from = taken(parsePosition(problem.from));
    const to = taken(parsePosition(problem.to));
    const byHand = courseAndMiles(problem.method, from, to);
    expect(Math.abs(byHand.course - problem.course)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(byHand.miles - problem.miles)).toBeLessThanOrEqual(0.5);
    const line = rhumbLine(from, to);
    expect(Math.abs(turn(line.course as number, problem.course))).toBeLessThan(0.3);
    expect(Math.abs(line.metres / MILE / problem.miles - 1)).toBeLessThan(0.006);
  });

  it('are those of small steps on the ellipsoid', () => {
    fc.assert(
      fc.property(
        places(80),
        bearings,
        fc.double({ min: 0, max: 500_000, noNaN: true }),
        (from, course, metres) => {
          const slow = stepped(from, course, metres);
          expect(apart(alongRhumb(from, course, metres), slow)).toBeLessThan(0.001);
        },
      ),
    );
  });

  it('lead back: along the line to a place is the place', () => {
    fc.assert(
      fc.property(places(88), places(88), (from, to) => {
        const { metres, course } = rhumbLine(from, to);
        if (course === null) return;
        expect(apart(alongRhumb(from, course, metres), to)).toBeLessThan(0.001);
        expect(metres).toBeGreaterThanOrEqual(apart(from, to) - 1e-6);
      }),
      { numRuns: 300 },
    );
  });

  it('keep their digits on courses close to east and west', () => {
    const from = { latitude: 56.34, longitude: 179.9 };
    for (const course of [90, 270, 90.0001, 89.99, 90.0000001, 269.9999]) {
      const to = alongRhumb(from, course, 100_000);
      expect(apart(to, stepped(from, course, 100_000))).toBeLessThan(0.001);
      const line = rhumbLine(from, to);
      expect(line.metres).toBeCloseTo(100_000, 3);
      expect(line.course).toBeCloseTo(course, 7);
    }
  });

  it('become geodesics within one degree of a pole', () => {
    const high = { latitude: 89.5, longitude: 20 };
    expect(alongRhumb(high, 45, 200_000)).toEqual(destination(high, 45, 200_000));
    expect(alongRhumb({ latitude: 88, longitude: 20 }, 10, 200_000)).toEqual(
      destination({ latitude: 88, longitude: 20 }, 10, 200_000),
    );
    expect(rhumbLine(high, { latitude: 89.5, longitude: -160 }).metres).toBeCloseTo(
      apart(high, { latitude: 89.5, longitude: -160 }),
      6,
    );
    expect(rhumbLine(high, high)).toEqual({ metres: 0, course: null });
  });
});

describe('deadReckoning', () => {
  // "Test set for geodesics", doi:10.5281/zenodo.32156.
  it('ends within 15 nm on the 500 lines of the test set, along the geodesic', () => {
    let worst = 0;
    for (const line of geodesicLines()) {
      const from = { latitude: line.latitude1, longitude: line.longitude1 };
      // Knots and seconds that make the published metres without rounding: one second at 3600/1852 knots to the metre.
      const run = {
        course: line.azimuth1,
        speed: 3600 / MILE,
        seconds: line.metres,
        line: 'geodesic' as const,
      };
      worst = Math.max(
        worst,
        apart(deadReckoning(from, run), { latitude: line.latitude2, longitude: line.longitude2 }),
      );
    }
    expect(worst).toBeLessThanOrEqual(15e-9);
  });

  // D² tan L / 2R: a held course and the geodesic are 0.6 miles apart after 50 miles at latitude 60.
  it('parts from the geodesic as far as a held course does', () => {
    const from = { latitude: 60, longitude: -6 };
    const run = { course: 90, speed: 10, seconds: 18_000 };
    const distance = apart(deadReckoning(from, run), deadReckoning(from, { ...run, line: 'geodesic' }));
    expect(distance / MILE).toBeCloseTo((50 ** 2 * Math.tan(Math.PI / 3)) / (2 * 3437.75), 1);
  });

  it('adds the current as a vector', () => {
    // A 3-4-5 triangle.
    const track = overGround({ course: 90, speed: 4, current: { set: 0, drift: 3 } });
    expect(track.speed).toBeCloseTo(5, 12);
    expect(track.course).toBeCloseTo(53.1301, 4);
    expect(overGround({ course: 90, speed: 4, current: { set: 270, drift: 4 } })).toEqual({
      course: null,
      speed: 0,
    });
    const from = { latitude: 56.3, longitude: -6.5 };
    const run = { course: 90, speed: 4, seconds: 3600, current: { set: 0, drift: 3 } };
    expect(apart(deadReckoning(from, run), alongRhumb(from, 53.13010235415598, 5 * MILE))).toBeLessThan(1e-6);
  });

  it('goes back where it came from', () => {
    fc.assert(
      fc.property(places(80), bearings, speeds, current, (from, course, speed, stream) => {
        const run = { course, speed, ...(stream === undefined ? {} : { current: stream }) };
        const there = deadReckoning(from, { ...run, seconds: 7200 });
        expect(apart(deadReckoning(there, { ...run, seconds: -7200 }), from)).toBeLessThan(0.001);
      }),
    );
  });

  it('throws on numbers that mean nothing', () => {
    const from = { latitude: 56.3, longitude: -6.5 };
    for (const bad of [
      { course: Number.NaN },
      { speed: -1 },
      { seconds: Infinity },
      { current: { set: 0, drift: -1 } },
    ]) {
      expect(() => deadReckoning(from, { course: 0, speed: 1, seconds: 1, ...bad })).toThrow(RangeError);
      for (const line of ['loxodrome', 'toString', null] as unknown as 'rhumb'[]) {
        expect(() => deadReckoning(from, { course: 0, speed: 1, seconds: 1, line })).toThrow(
          'line: expected rhumb or geodesic',
        );
        expect(() => deadReckoning(from, { course: 0, speed: 0, seconds: 0, line })).toThrow(RangeError);
      }
    }
    expect(() => deadReckoning({ latitude: 91, longitude: 0 }, { course: 0, speed: 0, seconds: 1 })).toThrow(
      RangeError,
    );
  });
});

describe('timeToReach', () => {
  it('is distance over speed without a current', () => {
    const from = { latitude: 56.3, longitude: -6.5 };
    const passage = timeToReach(from, alongRhumb(from, 33, 12 * MILE), { speed: 6 });
    expect(passage?.seconds).toBeCloseTo(7200, 6);
    expect(passage?.track).toBeCloseTo(33, 9);
    expect(passage?.steer).toBeCloseTo(33, 9);
  });

  it('is what dead reckoning confirms, with any current', () => {
    fc.assert(
      fc.property(
        places(80),
        bearings,
        fc.double({ min: 1, max: 60_000, noNaN: true }),
        speeds,
        current,
        (from, course, metres, speed, stream) => {
          const to = alongRhumb(from, course, metres);
          const options = { speed, ...(stream === undefined ? {} : { current: stream }) };
          const passage = timeToReach(from, to, options);
          if (passage === null) {
            expect(stream?.drift).toBeGreaterThanOrEqual(speed * (1 - 1e-9));
            return;
          }
          if (passage.seconds > 1e6) return;
          const end = deadReckoning(from, {
            ...options,
            course: passage.steer as number,
            seconds: passage.seconds,
          });
          expect(apart(end, to)).toBeLessThan(0.001);
        },
      ),
    );
  });

  it('knows when it cannot be done', () => {
    const from = { latitude: 56.3, longitude: -6.5 };
    const to = { latitude: 56.4, longitude: -6.5 };
    expect(timeToReach(from, to, { speed: 0 })).toBeNull();
    expect(timeToReach(from, to, { speed: 2, current: { set: 180, drift: 2 } })).toBeNull();
    expect(timeToReach(from, to, { speed: 2, current: { set: 90, drift: 3 } })).toBeNull();
    expect(timeToReach(from, to, { speed: 0, current: { set: 0, drift: 3 } })?.seconds).toBeGreaterThan(0);
    expect(timeToReach(from, from, { speed: 0 })).toEqual({
      seconds: 0,
      metres: 0,
      track: null,
      steer: null,
    });
  });
});

describe('closestApproach', () => {
  const YARD = 0.9144;
  const own = { latitude: 36, longitude: -75 };
  /** The other ship of a manoeuvring-board problem, own ship stopped: her relative course and speed from two fixes. */
  const relative = (first: [number, number], last: [number, number], minutes: number): Mover => {
    const position = destination(own, first[0], first[1] * YARD);
    const { metres, course } = rhumbLine(position, destination(own, last[0], last[1] * YARD));
    return { position, course: course as number, speed: metres / MILE / (minutes / 60) };
  };

  // Maneuvering Board Manual (Pub. 217), Part One, example 1: fixes at 0908 and 0920; answers by graph.
  it('Pub. 217 example 1', () => {
    const other = relative([275, 12_000], [260, 9000], 12);
    expect(Math.abs(other.course - 130)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(other.speed - 10)).toBeLessThanOrEqual(0.1);
    const pass = closestApproach({ position: own, course: 0, speed: 0 }, other);
    expect(Math.abs((pass.bearing as number) - 220)).toBeLessThanOrEqual(0.5);
    expect(Math.abs(pass.metres / YARD - 6900)).toBeLessThanOrEqual(25);
    // 0937 is 29 minutes after 0908.
    expect((pass.seconds as number) / 60).toBeCloseTo(29, 0);
    expect(pass.geometry).toBe('plane');
    // The two fixes between them lie on the same track to the width of a pencil.
    for (const [minute, bearing, range] of [
      [5, 270, 10_700],
      [8, 266.5, 10_000],
    ] as const) {
      const fix = destination(own, bearing, range * YARD);
      expect(
        apart(deadReckoning(other.position, { ...other, seconds: minute * 60 }), fix) / YARD,
      ).toBeLessThan(150);
    }
  });

  // Maneuvering Board Manual (Pub. 217), Part One, example 2: data of the manual, answers computed in the plane.
  it('Pub. 217 example 2', () => {
    const other = relative([255, 20_000], [270, 11_200], 14);
    expect(other.course).toBeCloseTo(57.5, 0);
    expect(other.speed).toBeCloseTo(20.4, 0);
    const pass = closestApproach({ position: own, course: 0, speed: 0 }, other);
    expect(pass.bearing).toBeCloseTo(327.5, 0);
    expect(Math.abs(pass.metres / YARD - 6021)).toBeLessThan(30);
    expect((pass.seconds as number) / 60).toBeCloseTo(27.7, 0);
  });

  const mover = (most: number) =>
    fc.record({
      course: bearings,
      speed: fc.double({ min: 0, max: 30, noNaN: true }),
      latitude: fc.double({ min: -most, max: most, noNaN: true }),
    });

  it.each([
    ['plane', 74, 19 * MILE, 10],
    ['ellipsoid', 70, 200 * MILE, 1],
  ] as const)('finds the least range: %s', (_, most, farthest, slack) => {
    fc.assert(
      fc.property(
        mover(most),
        mover(most),
        bearings,
        fc.double({ min: 0, max: farthest, noNaN: true }),
        (a, b, bearing, range) => {
          const position = { latitude: a.latitude, longitude: 179.9 };
          const one: Mover = { position, course: a.course, speed: a.speed };
          const other: Mover = {
            position: destination(position, bearing, range),
            course: b.course,
            speed: b.speed,
          };
          const pass = closestApproach(one, other);
          expect(pass.metres).toBeLessThanOrEqual(pass.range + slack);
          if (pass.seconds === null || Math.abs(pass.seconds) > 200_000) return;
          const at = (seconds: number) =>
            apart(
              deadReckoning(one.position, { ...one, seconds }),
              deadReckoning(other.position, { ...other, seconds }),
            );
          expect(at(pass.seconds)).toBeCloseTo(pass.metres, 6);
          for (const minutes of [-60, -10, -2, -0.5, 0.5, 2, 10, 60]) {
            expect(at(pass.seconds + minutes * 60)).toBeGreaterThanOrEqual(pass.metres - slack);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('switches at 20 miles, at 20 miles run and at latitude 75', () => {
    const at = (latitude: number, miles: number, speed: number) => {
      const position = { latitude, longitude: 10 };
      const other = { position: destination(position, 90, miles * MILE), course: 270, speed: 10 };
      return closestApproach({ position, course: 90, speed }, other).geometry;
    };
    expect([at(56, 19.9, 10), at(56, 20.1, 10)]).toEqual(['plane', 'ellipsoid']);
    expect([at(74.9, 10, 10), at(75.1, 10, 10)]).toEqual(['plane', 'ellipsoid']);
    const chase = (speed: number) =>
      closestApproach(
        { position: { latitude: 56, longitude: 10 }, course: 0, speed },
        { position: { latitude: 56.1, longitude: 10 }, course: 0, speed: 10 },
      ).geometry;
    expect([chase(16), chase(12)]).toEqual(['plane', 'ellipsoid']);
  });

  it('gives the same answer on both sides of the switch', () => {
    for (const latitude of [0, 30, 56, 70]) {
      const position = { latitude, longitude: -180 };
      const [near, far] = [19.99, 20.01].map((miles) => {
        const other = { position: destination(position, 300, miles * MILE), course: 110, speed: 9 };
        return closestApproach({ position, course: 20, speed: 7 }, other);
      });
      expect([near?.geometry, far?.geometry]).toEqual(['plane', 'ellipsoid']);
      // Two hundredths of a mile farther away changes time and range by a thousandth.
      expect(Math.abs((near?.seconds as number) / (far?.seconds as number) - 1)).toBeLessThan(0.003);
      expect(Math.abs((near?.metres as number) - (far?.metres as number))).toBeLessThan(0.02 * MILE + 5);
    }
  });

  it('knows collision, parallel courses, and what is past', () => {
    const position = { latitude: 56.3, longitude: -6.5 };
    const ahead = { position: alongRhumb(position, 90, 5 * MILE), course: 270, speed: 10 };
    const meeting = closestApproach({ position, course: 90, speed: 10 }, ahead);
    expect(meeting.seconds).toBeCloseTo(900, 1);
    expect(meeting.metres).toBeLessThan(1);
    expect(meeting.bearing).toBeNull();
    const together = closestApproach({ position, course: 45, speed: 6 }, { ...ahead, course: 45, speed: 6 });
    expect(together.seconds).toBeNull();
    expect(together.metres).toBeCloseTo(together.range, 9);
    const opening = closestApproach({ position, course: 270, speed: 10 }, { ...ahead, course: 90 });
    expect(opening.seconds).toBeCloseTo(-900, 1);
    const drifting = { set: 33, drift: 2 };
    const inStream = closestApproach(
      { position, course: 90, speed: 10, current: drifting },
      { ...ahead, current: drifting },
    );
    // The stream carries both a little north, where the degrees of longitude between them are shorter.
    expect(inStream.seconds).toBeCloseTo(900, 0);
  });
});

describe('intercept', () => {
  const position = { latitude: 56.3, longitude: -6.5 };

  // Made up; worked by the sine rule: sin(lead) = (12/18) sin 60°, so 35.264° of lead, 28 min 59 s, 8.6969 miles.
  it('the sine rule: target at 060°, 10 miles, course 180 at 12 knots, own speed 18', () => {
    const target = { position: alongRhumb(position, 60, 10 * MILE), course: 180, speed: 12 };
    const { solutions, tangent, geometry } = intercept({ position, speed: 18 }, target);
    expect([solutions.length, tangent, geometry]).toEqual([1, false, 'plane']);
    expect(Math.abs((solutions[0]?.steer as number) - 95.264)).toBeLessThan(0.1);
    expect(Math.abs((solutions[0]?.seconds as number) - 1739.4)).toBeLessThan(5);
    expect(Math.abs((solutions[0]?.metres as number) / MILE - 8.6969)).toBeLessThan(0.03);
  });

  it('a slower ship has two solutions, one, or none', () => {
    // The target passes at a distance: she bears 045, steers 270. The slowest speed that will do is 12 sin 45°.
    const target = { position: alongRhumb(position, 45, 10 * MILE), course: 270, speed: 12 };
    const least = 12 * Math.sin(Math.PI / 4);
    const at = (speed: number) => intercept({ position, speed }, target);
    expect(at(least + 0.5).solutions.length).toBe(2);
    expect(at(least - 0.5)).toMatchObject({ solutions: [], tangent: false });
    // Steered at right angles to the line of sight at the tangent: 315.
    const both = at(least + 0.02).solutions;
    expect(
      both.map(({ steer }) => Math.round(steer as number)).every((steer) => Math.abs(steer - 315) <= 5),
    ).toBe(true);
  });

  it('tangent: on the equator, where the plane is exact, the two solutions become one', () => {
    const equator = { latitude: 0, longitude: 0 };
    // She bears 000, 3 miles away in the plane, and steers 090 at 5: nothing slower than 5 will do, and 5 only never.
    const target = { position: { latitude: 0.05, longitude: -0.05 }, course: 90, speed: 5 };
    const { metres, course } = rhumbLine(equator, target.position);
    const least = 5 * Math.abs(Math.sin(((90 - (course as number) - 180) * Math.PI) / 180));
    expect(metres).toBeGreaterThan(0);
    const found = intercept({ position: equator, speed: least }, target);
    const around = [least * 0.9999, least * 1.0001].map(
      (speed) => intercept({ position: equator, speed }, target).solutions.length,
    );
    expect(around).toEqual([0, 2]);
    expect(found.solutions.length === 1 ? found.tangent : !found.tangent).toBe(true);
  });

  it('says tangent when the sums come out even', () => {
    // p = (0, -c), the target at 45° across with twice the square: (p·u)² = (u² - S²) p² when S = |u| sin 45°.
    const target = { position: { latitude: 0, longitude: 0.05 }, course: 315, speed: 10 };
    const { solutions, tangent } = intercept(
      { position: { latitude: 0, longitude: 0 }, speed: 10 * Math.sin(Math.PI / 4) },
      target,
    );
    expect([solutions.length, tangent]).toEqual([1, true]);
    // Both reach the meridian half way: she runs north-west, own ship north.
    expect(turn(0, solutions[0]?.steer as number)).toBeCloseTo(0, 3);
  });

  it('far away too: none, one, then two that part as own speed grows', () => {
    const target = { position: alongRhumb(position, 45, 90 * MILE), course: 270, speed: 12 };
    const at = (speed: number) => intercept({ position, speed }, target);
    let [none, some] = [6, 11];
    expect([at(none).solutions.length, at(some).solutions.length, at(some).geometry]).toEqual([
      0,
      2,
      'ellipsoid',
    ]);
    while (some - none > 1e-9) {
      const speed = (none + some) / 2;
      if (at(speed).solutions.length === 0) none = speed;
      else some = speed;
    }
    // A held course on the ellipsoid moves the least speed of the plane, 12 sin 45°, by a little.
    expect(some).toBeCloseTo(12 * Math.sin(Math.PI / 4), 0);
    expect(at(some)).toMatchObject({ tangent: true, solutions: [{}] });
    const [early, late] = at(some * 1.00001).solutions;
    expect((late?.seconds as number) - (early?.seconds as number)).toBeGreaterThan(10);
    expect(at(some * 1.00001).tangent).toBe(false);
  });

  it('is confirmed by dead reckoning of both, with any current, near and far', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -72, max: 72, noNaN: true }),
        fc.tuple(bearings, fc.double({ min: 10, max: 80 * MILE, noNaN: true })),
        fc.record({ course: bearings, speed: speeds }),
        speeds,
        current,
        (latitude, [bearing, range], moving, speed, stream) => {
          const own = {
            position: { latitude, longitude: -179.9 },
            speed,
            ...(stream === undefined ? {} : { current: stream }),
          };
          const target = { position: destination(own.position, bearing, range), ...moving };
          for (const { seconds, position: there, steer, metres } of intercept(own, target).solutions) {
            expect(apart(deadReckoning(target.position, { ...target, seconds }), there)).toBeLessThan(1e-6);
            if (metres > 1e6) continue;
            const end = deadReckoning(own.position, { ...own, course: steer as number, seconds });
            expect(apart(end, there)).toBeLessThan(1);
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  it('a faster ship always has exactly one solution', () => {
    fc.assert(
      fc.property(
        bearings,
        fc.double({ min: 100, max: 10 * MILE, noNaN: true }),
        bearings,
        (bearing, range, course) => {
          const target = { position: destination(position, bearing, range), course, speed: 6 };
          expect(intercept({ position, speed: 15 }, target).solutions.length).toBe(1);
        },
      ),
    );
  });

  it('finds nothing when nobody moves, and waits for who drifts', () => {
    for (const range of [MILE, 100 * MILE]) {
      const still = { position: alongRhumb(position, 10, range), course: 0, speed: 0 };
      expect(intercept({ position, speed: 0 }, still)).toMatchObject({ solutions: [], tangent: false });
      const carried = intercept({ position, speed: 0, current: { set: 10, drift: 4 } }, still).solutions;
      expect(carried.length).toBeLessThanOrEqual(1);
      for (const { seconds } of carried) expect(seconds).toBeCloseTo(range / ((4 * MILE) / 3600), 0);
    }
  });

  it('is already there', () => {
    const { solutions } = intercept({ position, speed: 5 }, { position, course: 10, speed: 8 });
    expect(solutions).toEqual([{ seconds: 0, position, metres: 0, track: null, steer: null }]);
  });
});

// By definition: JSON has neither NaN nor Infinity nor -0.
describe('numbers that no vessel has', () => {
  const here = { latitude: 56.3, longitude: -6.5 };
  const there = { latitude: 56.4, longitude: -6.5 };

  it.each([1e155, 1e300])('give a time at %f knots, in a stream that is nearly as fast', (speed) => {
    const current = { set: 90, drift: speed / 2 };
    const seconds = timeToReach(here, there, { speed, current })?.seconds ?? -1;
    expect(seconds).toBeGreaterThanOrEqual(0);
    expect(seconds).toBeLessThan(1e-100);
  });

  it('give bounds with a movement of 0, or of no more than half round the Earth', () => {
    const bounds = (speed: number) => boundsFrom(here, there, { at: 0, now: 60_000, speed, uncertainty: 0 });
    expect(bounds(-0).movement).toBe(0);
    expect(bounds(1e300).movement).toBeLessThan(2.1e7);
  });
});
