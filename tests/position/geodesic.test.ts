import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import geographiclib from 'geographiclib-geodesic';
import { describe, expect, it } from 'vitest';
import { type Coordinates, destination, parsePosition, rangeAndBearing } from '../../src/position/index.ts';
import { valueOf as taken } from '../../src/result/index.ts';
import { geodesicLines } from '../oracle/position-geodesic-lines.ts';
import { greatCircle, vertex } from '../oracle/position-sphere.ts';

const shared = (name: string) =>
  JSON.parse(readFileSync(new URL(`../../shared/position/${name}`, import.meta.url), 'utf8'));
const NANOMETRE = 1e-9;
const turnOf = (from: number, to: number) => ((((to - from + 180) % 360) + 360) % 360) - 180;
const sideways = (got: number, wanted: number, reducedLength: number) =>
  (Math.abs(turnOf(wanted, got)) * Math.PI * Math.abs(reducedLength)) / 180;

/** The four ways a line of the test set lies in the other hemispheres. */
const mirrors = [
  { name: 'as published', ns: 1, ew: 1, shift: 0 },
  { name: 'mirrored south', ns: -1, ew: 1, shift: 0 },
  { name: 'mirrored west', ns: 1, ew: -1, shift: 0 },
  { name: 'both, starting at 180 degrees', ns: -1, ew: -1, shift: 180 },
];

describe('the test set for geodesics, doi:10.5281/zenodo.32156', () => {
  const lines = geodesicLines();

  it('has 500 lines', () => {
    expect(lines.length).toBe(500);
  });

  describe.each(mirrors)('$name', ({ ns, ew, shift }) => {
    const start = (line: (typeof lines)[number]): Coordinates => ({
      latitude: ns * line.latitude1,
      longitude: shift,
    });
    const end = (line: (typeof lines)[number]): Coordinates => ({
      latitude: ns * line.latitude2,
      longitude: turnOf(0, ew * line.longitude2 + shift),
    });
    const azimuth = (degrees: number) => (ns > 0 ? ew * degrees : 180 - ew * degrees);

    it('rangeAndBearing is within 15 nm in distance and sideways', () => {
      let [distance, side] = [0, 0];
      for (const line of lines) {
        const found = rangeAndBearing(start(line), end(line));
        distance = Math.max(distance, Math.abs(found.metres - line.metres));
        side = Math.max(
          side,
          sideways(found.bearing ?? Number.NaN, azimuth(line.azimuth1), line.reducedLength),
        );
        side = Math.max(
          side,
          sideways(found.finalBearing ?? Number.NaN, azimuth(line.azimuth2), line.reducedLength),
        );
        expect(turnOf(found.finalBearing ?? 0, found.backBearing ?? 0)).toBeCloseTo(-180, 9);
      }
      expect(distance).toBeLessThanOrEqual(15 * NANOMETRE);
      // A shifted end of the line is rounded to the grid of the doubles there: 180 + x has fewer places than x.
      expect(side).toBeLessThanOrEqual(15 * NANOMETRE);
    });

    it('destination ends within 15 nm', () => {
      let worst = 0;
      for (const line of lines) {
        const found = destination(start(line), azimuth(line.azimuth1), line.metres);
        worst = Math.max(worst, rangeAndBearing(found, end(line)).metres);
      }
      expect(worst).toBeLessThanOrEqual(15 * NANOMETRE);
    });
  });
});

describe('published survey lines', () => {
  interface Line {
    name: string;
    source: string;
    ellipsoid: string;
    latitude1: string;
    longitude1: string;
    latitude2: string;
    longitude2: string;
    metres: number;
    azimuth1: string;
    azimuth2: string;
    toleranceSeconds: number;
  }
  const { ellipsoids, lines } = shared('survey-lines.json') as {
    ellipsoids: Record<string, { a: number; inverseFlattening: number }>;
    lines: Line[];
  };
  const angle = (text: string) => {
    const [degrees, minutes = 0, seconds = 0] = text.replace('-', '').split(' ').map(Number) as [
      number,
      number?,
      number?,
    ];
    return (text.startsWith('-') ? -1 : 1) * (degrees + minutes / 60 + seconds / 3600);
  };

  // The room knows WGS 84 only. The lines on other ellipsoids hold the engine below it to the published figures.
  it.each(lines)('$name on $ellipsoid ($source)', (line) => {
    const { a, inverseFlattening } = ellipsoids[line.ellipsoid] as { a: number; inverseFlattening: number };
    const [lat1, lon1] = [angle(line.latitude1), angle(line.longitude1)];
    const [lat2, lon2] = [angle(line.latitude2), angle(line.longitude2)];
    const engine = new geographiclib.Geodesic.Geodesic(a, 1 / inverseFlattening).Inverse(
      lat1,
      lon1,
      lat2,
      lon2,
    );
    expect(Math.abs((engine.s12 as number) - line.metres)).toBeLessThan(0.001);
    expect(Math.abs(turnOf(engine.azi1 as number, angle(line.azimuth1))) * 3600).toBeLessThan(
      line.toleranceSeconds,
    );
    expect(Math.abs(turnOf(engine.azi2 as number, angle(line.azimuth2))) * 3600).toBeLessThan(
      line.toleranceSeconds,
    );
    if (line.ellipsoid !== 'wgs-84' && line.ellipsoid !== 'grs-80') return;
    // WGS 84 and GRS 80 differ by 0.1 mm in the polar radius: no difference on these lines.
    const ours = rangeAndBearing({ latitude: lat1, longitude: lon1 }, { latitude: lat2, longitude: lon2 });
    expect(Math.abs(ours.metres - line.metres)).toBeLessThan(0.001);
    expect(Math.abs(turnOf(ours.bearing as number, angle(line.azimuth1))) * 3600).toBeLessThan(
      line.toleranceSeconds,
    );
    expect(Math.abs(turnOf(ours.finalBearing as number, angle(line.azimuth2))) * 3600).toBeLessThan(
      line.toleranceSeconds,
    );
  });
});

describe('published great-circle problems', () => {
  interface Problem {
    from: string;
    to: string;
    miles: number;
    course?: number;
    vertexLatitude?: string;
    vertexLongitude?: string;
    wgs84Miles?: number;
    source: string;
  }
  const { problems } = shared('great-circle-problems.json') as { problems: Problem[] };

  it.each(problems)('$from to $to: $miles miles ($source)', (problem) => {
    const from = taken(parsePosition(problem.from));
    const to = taken(parsePosition(problem.to));
    const sphere = greatCircle(from, to);
    expect(Math.abs(sphere.miles - problem.miles)).toBeLessThanOrEqual(0.5);
    if (problem.course !== undefined)
      expect(Math.abs(turnOf(sphere.course, problem.course))).toBeLessThanOrEqual(0.1);
    if (problem.vertexLatitude !== undefined) {
      const wanted = taken(parsePosition(`${problem.vertexLatitude} ${problem.vertexLongitude ?? '0 E'}`));
      const top = vertex(from, to);
      // The answers work the vertex from a course rounded to a tenth of a degree, which moves it by up to 0.65'.
      expect(Math.abs(top.latitude - wanted.latitude) * 60).toBeLessThanOrEqual(0.65);
      if (problem.vertexLongitude !== undefined) {
        expect(Math.abs(turnOf(top.longitude, wanted.longitude)) * 60).toBeLessThanOrEqual(3.1);
      }
    }

    // The Earth is no sphere: a mile of the sphere stands for 1842.9 m of meridian at the equator and 1861.7 m at the
    // pole, so the shortest line on WGS 84 differs by up to about 0.56 %. That is the whole difference.
    const ellipsoid = rangeAndBearing(from, to);
    if (problem.wgs84Miles !== undefined) expect(ellipsoid.metres / 1852).toBeCloseTo(problem.wgs84Miles, 2);
    expect(Math.abs(ellipsoid.metres / 1852 / sphere.miles - 1)).toBeLessThan(0.0056);
    expect(Math.abs(turnOf(ellipsoid.bearing as number, sphere.course))).toBeLessThan(0.3);
  });
});

describe('rangeAndBearing', () => {
  const place = fc.record({
    latitude: fc.double({ min: -90, max: 90, noNaN: true }),
    longitude: fc.double({ min: -180, max: 180, noNaN: true }),
  });

  it('agrees with the sphere to 0.56 %', () => {
    fc.assert(
      fc.property(place, place, (from, to) => {
        const sphere = greatCircle(from, to).miles * 1852;
        // acos itself loses a few metres for short lines and near the antipode.
        expect(Math.abs(rangeAndBearing(from, to).metres - sphere)).toBeLessThan(0.0058 * sphere + 200);
      }),
      { numRuns: 500 },
    );
  });

  it('leads back: destination along the bearing is the place asked for', () => {
    fc.assert(
      fc.property(place, place, (from, to) => {
        const { bearing, metres } = rangeAndBearing(from, to);
        if (bearing === null) return;
        expect(bearing >= 0 && bearing < 360).toBe(true);
        expect(rangeAndBearing(destination(from, bearing, metres), to).metres).toBeLessThan(1e-7);
      }),
      { numRuns: 500 },
    );
  });

  it('is the same length both ways, with the bearings changed over', () => {
    fc.assert(
      fc.property(place, place, (from, to) => {
        const [out, back] = [rangeAndBearing(from, to), rangeAndBearing(to, from)];
        expect(Math.abs(out.metres - back.metres)).toBeLessThan(1e-7);
        if (out.metres > 19_900_000 || out.bearing === null || back.backBearing === null) return;
        expect(Math.abs(turnOf(out.bearing, back.backBearing))).toBeLessThan(1e-7);
      }),
      { numRuns: 300 },
    );
  });

  it('gives no bearing where none has a meaning', () => {
    const skerra = { latitude: 56.34, longitude: -6.5 };
    const none = { metres: 0, bearing: null, finalBearing: null, backBearing: null };
    expect(rangeAndBearing(skerra, skerra)).toEqual(none);
    expect(rangeAndBearing({ latitude: 10, longitude: 180 }, { latitude: 10, longitude: -180 })).toEqual(
      none,
    );
    expect(rangeAndBearing({ latitude: 90, longitude: 10 }, { latitude: 90, longitude: -70 })).toEqual(none);
    const toPole = rangeAndBearing(skerra, { latitude: 90, longitude: 0 });
    expect(toPole).toMatchObject({ bearing: 0, finalBearing: null, backBearing: null });
    expect(rangeAndBearing({ latitude: -90, longitude: 0 }, skerra)).toMatchObject({ bearing: null });
  });

  it('throws on what is no place', () => {
    for (const bad of [
      { latitude: 91, longitude: 0 },
      { latitude: 0, longitude: 181 },
      { latitude: Number.NaN, longitude: 0 },
    ]) {
      expect(() => rangeAndBearing(bad, { latitude: 0, longitude: 0 })).toThrow(RangeError);
      expect(() => rangeAndBearing({ latitude: 0, longitude: 0 }, bad)).toThrow(RangeError);
      expect(() => destination(bad, 0, 0)).toThrow(RangeError);
    }
    expect(() => destination({ latitude: 0, longitude: 0 }, Number.NaN, 0)).toThrow(RangeError);
    expect(() => destination({ latitude: 0, longitude: 0 }, 0, -1)).toThrow(RangeError);
  });
});
