import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import geomagnetism from 'geomagnetism';
import { describe, expect, it } from 'vitest';
import { compassToTrue, trueToCompass } from '../../src/position/index.ts';

const turn = (from: number, to: number) => ((((to - from + 180) % 360) + 360) % 360) - 180;

describe('true, magnetic and compass', () => {
  // Marine training pages: compass error is the algebraic sum, 10° W and 5° W make 15° W, 10° W and 5° E make 5° W;
  // from compass to true east is added and west taken away.
  it.each([
    [100, -10, -5, 85],
    [100, -10, 5, 95],
    [100, 10, 5, 115],
    [2, -10, 5, 357],
    [358, 10, 5, 13],
  ])('compass %i with variation %i and deviation %i is %i true', (compass, variation, deviation, wanted) => {
    expect(compassToTrue(compass, { variation, deviation })).toBe(wanted);
    expect(trueToCompass(wanted, { variation, deviation })).toBe(compass);
    expect(compassToTrue(compassToTrue(compass, { variation: 0, deviation }), { variation })).toBe(wanted);
    expect(trueToCompass(trueToCompass(wanted, { variation }), { variation: 0, deviation })).toBe(compass);
  });

  it('leads back', () => {
    const angle = fc.double({ min: -720, max: 720, noNaN: true });
    fc.assert(
      fc.property(angle, angle, angle, (bearing, variation, deviation) => {
        const back = compassToTrue(trueToCompass(bearing, { variation, deviation }), {
          variation,
          deviation,
        });
        expect(Math.abs(turn(bearing, back))).toBeLessThan(1e-9);
        expect(back >= 0 && back < 360).toBe(true);
      }),
    );
  });

  it('throws on what is no angle', () => {
    expect(() => compassToTrue(Number.NaN, { variation: 0 })).toThrow(RangeError);
    expect(() => trueToCompass(0, { variation: Infinity, deviation: 0 })).toThrow(RangeError);
  });
});

// The recipe of the docs: variation from a general-purpose World Magnetic Model package, a development dependency here.
describe('with the World Magnetic Model 2025', () => {
  // Test values published with the model: year, height above the ellipsoid in km, latitude, longitude, declination.
  const rows = readFileSync(new URL('../../shared/position/wmm2025-test-values.txt', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#'))
    .map((line) => line.trim().split(/\s+/).map(Number) as [number, number, number, number, number]);

  const instantOf = (year: number): Date => {
    const [start, end] = [Date.UTC(Math.floor(year), 0), Date.UTC(Math.floor(year) + 1, 0)];
    return new Date(start + (year % 1) * (end - start));
  };

  it('has all 100 test values', () => {
    expect(rows.length).toBe(100);
  });

  it.each(rows)('%f, %f km, %f, %f: variation %f', (year, height, latitude, longitude, declination) => {
    const variation = geomagnetism.model(instantOf(year)).point([latitude, longitude, height]).decl;
    // Published to a hundredth of a degree.
    expect(Math.abs(turn(variation, declination))).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(turn(trueToCompass(90, { variation }), 90 - declination))).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(turn(compassToTrue(0, { variation }), declination))).toBeLessThanOrEqual(0.0051);
  });
});
