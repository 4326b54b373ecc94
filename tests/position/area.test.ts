import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaBox, areaContains } from '../../src/position/area.ts';
import { decodeArea, encodeArea } from '../../src/position/index.ts';
import { valueOf as taken } from '../../src/result/index.ts';

const area = (digits: string) => taken(decodeArea(digits));

describe('decodeArea', () => {
  // ITU-R M.493-16, geographic area address, from memory: corner 51 N 007 W, 3 degrees south, 5 degrees east.
  it('reads corner and sides', () => {
    expect(area('1510070305')).toEqual({
      kind: 'geographic-area',
      north: { hemisphere: 'N', degrees: 51 },
      west: { hemisphere: 'W', degrees: 7 },
      southward: 3,
      eastward: 5,
    });
    expect(areaBox(area('1510070305'))).toEqual({ south: 48, west: -7, north: 51, east: -2 });
  });

  it('counts south and east from the corner in every quadrant', () => {
    expect(areaBox(area('0510070305'))).toEqual({ south: 48, west: 7, north: 51, east: 12 });
    expect(areaBox(area('2510070305'))).toEqual({ south: -54, west: 7, north: -51, east: 12 });
    expect(areaBox(area('3510070305'))).toEqual({ south: -54, west: -7, north: -51, east: -2 });
    expect(areaBox(area('1010020305'))).toEqual({ south: -2, west: -2, north: 1, east: 3 });
  });

  it('reaches across the 180th meridian', () => {
    const across = area('0001780505');
    expect(areaBox(across)).toEqual({ south: -5, west: 178, north: 0, east: -177 });
    for (const longitude of [178, 179, 180, -180, -179, -177]) {
      expect(areaContains(across, { latitude: -2, longitude }), String(longitude)).toBe(true);
    }
    for (const longitude of [177.9, -176.9, 0]) {
      expect(areaContains(across, { latitude: -2, longitude }), String(longitude)).toBe(false);
    }
    expect(areaContains(area('0001800505'), { latitude: -2, longitude: 180 })).toBe(true);
    expect(areaContains(area('0001750505'), { latitude: -2, longitude: -180 })).toBe(true);
  });

  it.each<[unknown, string]>([
    ['9999999999', 'position-quadrant'],
    ['1910070305', 'position-latitude-range'],
    ['1511810305', 'position-longitude-range'],
    ['151007030', 'position-area-digits'],
    [1510070305, 'position-area-digits'],
  ])('refuses %j', (digits, code) => {
    expect(decodeArea(digits)).toMatchObject({
      ok: false,
      issues: [{ code, clause: expect.stringContaining('M.493') }],
    });
  });

  it('takes odd areas with a notice', () => {
    expect(decodeArea('2800000005')).toMatchObject({
      ok: true,
      notices: [{ code: 'position-area-empty', grade: 'check', received: "'0005'" }],
    });
    expect(decodeArea('2800001505')).toMatchObject({
      ok: true,
      notices: [{ code: 'position-area-past-pole', grade: 'check', received: "'15'" }],
    });
    expect(areaBox(area('2800001505')).south).toBe(-90);
    expect(areaContains(area('2800001505'), { latitude: -90, longitude: 100 })).toBe(true);
  });

  it('gives back the digits it was given', () => {
    const upTo = (most: number, width: number) =>
      fc.integer({ min: 0, max: most }).map((value) => String(value).padStart(width, '0'));
    const ten = fc
      .tuple(upTo(3, 1), upTo(90, 2), upTo(180, 3), upTo(99, 2), upTo(99, 2))
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(ten, (digits) => {
        expect(encodeArea(area(digits))).toBe(digits);
      }),
    );
  });

  it('holds what lies between its edges and nothing else', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -180, max: 179 }),
        fc.integer({ min: 0, max: 99 }),
        fc.double({ min: 0.001, max: 0.999, noNaN: true }),
        fc.boolean(),
        (west, eastward, share, inside) => {
          const digits = `${west < 0 ? 1 : 0}56${String(Math.abs(west)).padStart(3, '0')}02${String(eastward).padStart(2, '0')}`;
          const degrees = west + (inside ? share * eastward : eastward + share * (360 - eastward));
          if (inside && eastward === 0) return;
          const longitude = degrees > 180 ? degrees - 360 : degrees;
          expect(areaContains(area(digits), { latitude: 55, longitude })).toBe(inside);
        },
      ),
    );
  });

  it('never throws, whatever it is given; throws on areas that no call can name', () => {
    fc.assert(
      fc.property(fc.anything(), (input) => {
        decodeArea(input);
      }),
    );
    expect(() => encodeArea({ ...area('1510070305'), southward: 100 })).toThrow(RangeError);
    expect(() => encodeArea({ ...area('1510070305'), eastward: 1.5 })).toThrow(RangeError);
    expect(() => areaContains(area('1510070305'), { latitude: 0, longitude: 200 })).toThrow(RangeError);
  });
});
