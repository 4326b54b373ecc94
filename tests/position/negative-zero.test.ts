import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cornerOf } from '../../src/position/box.ts';
import * as position from '../../src/position/index.ts';
import { overGround } from '../../src/position/mover.ts';
import { alongRhumb, rhumbLine } from '../../src/position/sailings.ts';

// A value that is written as 0 and is not equal to it breaks stored data and comparisons: RFC 8259 §6 lets JSON lose the
// sign. Common practice, no other source.
const angle = (most: number): fc.Arbitrary<number> =>
  fc.constantFrom(-0, 0, 1e-12, -1e-12, 1e-300, 45, -45, most, -most, most / 2);
const place = fc.record({ latitude: angle(90), longitude: angle(180) });
const course = fc.constantFrom(-0, 0, 90, 180, 270, 360, -90, 720, 1e-300);
const amount = fc.constantFrom(-0, 0, 1e-300, 1e-9, 1, 1852, 1e7);

function hasNegativeZero(value: unknown): boolean {
  if (typeof value === 'object' && value !== null) return Object.values(value).some(hasNegativeZero);
  return Object.is(value, -0);
}

describe('no minus zero comes out of', () => {
  const cases: Record<
    string,
    (from: position.Coordinates, to: position.Coordinates, way: number, run: number) => unknown
  > = {
    rangeAndBearing: (from, to) => position.rangeAndBearing(from, to),
    destination: (from, _, way, run) => position.destination(from, way, run),
    rhumbLine: (from, to) => rhumbLine(from, to),
    alongRhumb: (from, _, way, run) => alongRhumb(from, way, run),
    deadReckoning: (from, _, way, run) =>
      position.deadReckoning(from, { course: way, speed: run / 1e6, seconds: 60 }),
    'deadReckoning at rest': (from, _, way) =>
      position.deadReckoning(from, { course: way, speed: 0, seconds: -0 }),
    closestApproach: (from, to, way, run) =>
      position.closestApproach(
        { position: from, course: way, speed: run / 1e6 },
        { position: to, course: 90, speed: 5 },
      ),
    overGround: (_, __, way, run) => overGround({ course: way, speed: run, current: { set: -0, drift: 0 } }),
    timeToReach: (from, to, _, run) => position.timeToReach(from, to, { speed: run }),
    toReportedPosition: (from) => position.toReportedPosition(from),
    'toReportedPosition and its box': (from) => {
      const reported = position.toReportedPosition(from);
      return [position.boxOf(reported), position.centreOf(reported), cornerOf(reported)];
    },
  };

  it.each(Object.entries(cases))('%s', (name, run) => {
    const property = fc.property(place, place, course, amount, (from, to, way, metres) => {
      let result: unknown;
      try {
        result = run(from, to, way, metres);
      } catch (error) {
        if (!(error instanceof RangeError)) throw error;
      }
      if (hasNegativeZero(result)) throw new Error(JSON.stringify({ from, to, way, metres }));
    });
    fc.assert(property, { numRuns: name === 'closestApproach' ? 40 : 300 });
  });
});

describe('very slow vessels', () => {
  // Found by trial: bounds far from zero never came within the tolerance that was asked for.
  it.each([8e-6, 1e-6, 1e-9, 1e-300])('of %d knots are met, or not, in a bounded search', (speed) => {
    const own = { position: { latitude: 56.3, longitude: -6.5 }, speed };
    const target = { position: { latitude: 40, longitude: -20 }, course: 30, speed: speed / 2 };
    for (const { seconds } of position.intercept(own, target).solutions) expect(seconds).toBeGreaterThan(0);
    expect(position.closestApproach({ ...own, course: 0 }, target).metres).toBeGreaterThan(0);
  });
});
