import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatPosition, parsePosition, toGeoUri } from '../../src/position/index.ts';

interface Written {
  accepted: { text: string; latitude: number; longitude: number; note: string }[];
  refused: { text: string; code: string; suggestion?: string; reason: string }[];
}
const written = JSON.parse(
  readFileSync(new URL('../../shared/position/written-positions.json', import.meta.url), 'utf8'),
) as Written;

const places = fc.record({
  latitude: fc.double({ min: -90, max: 90, noNaN: true }),
  longitude: fc.double({ min: -180, max: 180, noNaN: true }),
});

describe('parsePosition', () => {
  it.each(written.accepted)('reads $text ($note)', ({ text, latitude, longitude }) => {
    const read = parsePosition(text);
    expect(read).toMatchObject({ ok: true, notices: [] });
    if (!read.ok) return;
    expect(read.value.latitude).toBeCloseTo(latitude, 9);
    expect(read.value.longitude).toBeCloseTo(longitude, 9);
  });

  it.each(written.refused)('refuses "$text": $reason', ({ text, code, suggestion }) => {
    const read = parsePosition(text);
    expect(read.ok ? read.value : read.issues[0]).toMatchObject({ code });
    if (!read.ok) expect(read.issues[0].suggestion).toBe(suggestion);
  });

  // RFC 5870 §6.1, §6.2 and §6.3, from memory; crs in any case §3.4.1, other parameters §3.4.4.
  it.each([
    ['geo:13.4125,103.8667', 13.4125, 103.8667, null],
    ['geo:48.2010,16.3695,183', 48.201, 16.3695, ',183'],
    ['geo:48.198634,16.371648;crs=wgs84;u=40', 48.198634, 16.371648, ';u=40'],
    ['geo:90,-22.43;crs=WGS84', 90, -22.43, null],
    ['GEO:66,30;u=6.500;FOo=this%2dthat', 66, 30, ';u=6.500;FOo=this%2dthat'],
    [' geo:-56,-0 ', -56, 0, null],
    ['geo:56.5,-6.25,-3.5;CRS=Wgs84', 56.5, -6.25, ',-3.5'],
  ])('reads the URI %s', (text, latitude, longitude, rest) => {
    const read = parsePosition(text);
    if (!read.ok) throw new Error(read.issues[0].message);
    expect(read.value).toMatchObject({ latitude, longitude });
    expect(read.notices).toMatchObject(
      rest === null
        ? []
        : [{ code: 'position-geo-rest', grade: 'note', params: {}, at: [], received: `'${rest}'` }],
    );
  });

  it.each([
    ['geo:323482,4306480;crs=EPSG:32618', 'position-geo-crs', []],
    ['geo:56.3,-6.5;crs=nad27;u=5', 'position-geo-crs', []],
    ['geo:91,0', 'position-latitude-range', undefined],
    ['geo:56.3,-181', 'position-longitude-range', undefined],
    ['geo:56.3', 'position-word', [0]],
    ['geo:56.3,6.5,7,8', 'position-word', [0]],
    ['geo:56.3,6.5;', 'position-word', [0]],
    ['geo:', 'position-word', [0]],
  ])('refuses the URI %s: %s', (text, code, at) => {
    const read = parsePosition(text);
    if (read.ok) throw new Error('read');
    expect(read.issues[0].code).toBe(code);
    if (at !== undefined) expect(read.issues[0].at).toEqual(at);
  });

  it('reads back what toGeoUri writes, to half a unit of its sixth decimal', () => {
    fc.assert(
      fc.property(
        places,
        fc.option(fc.double({ min: 0, max: 1e5, noNaN: true }), { nil: undefined }),
        (place, uncertainty) => {
          const read = parsePosition(toGeoUri(place, { uncertainty }));
          if (!read.ok) throw new Error(read.issues[0].message);
          expect(read.notices).toHaveLength(uncertainty === undefined ? 0 : 1);
          expect(Math.abs(read.value.latitude - place.latitude)).toBeLessThan(5.1e-7);
          if (Math.abs(read.value.latitude) < 90)
            expect(Math.abs(read.value.longitude - place.longitude)).toBeLessThan(5.1e-7);
        },
      ),
    );
  });

  it.each<[unknown, string, object]>([
    [undefined, 'position-not-text', { expected: 'text', received: 'undefined', at: [] }],
    ['5'.repeat(201), 'position-too-long', { params: { count: 201 }, at: [] }],
    ['56.5 N @ 6.5 W', 'position-character', { received: "'@'", at: [7] }],
    ['56 61 N 6 0 W', 'position-minutes', { received: '61', at: [0] }],
    ['56 20 60 N 6 0 0 W', 'position-seconds', { received: '60', at: [0] }],
    ['95 N 6 W', 'position-latitude-range', { received: '95', at: [0] }],
    ['56 N 181 W', 'position-longitude-range', { received: '181', at: [5] }],
    ['+56.5 N 6.5 W', 'position-sign-and-letter', { at: [0] }],
    ['Lat 6.5 W Lon 56.3 N', 'position-label-and-letter', { received: "'latitude W'", at: [] }],
    ['56 N 6 S', 'position-hemisphere', { received: "'N S'", at: [] }],
  ])('says of %j where the fault is and what was found: %s', (text, code, more) => {
    const read = parsePosition(text);
    expect(read.ok || read.issues).toMatchObject([{ code, grade: 'error', params: {}, ...more }]);
  });

  it('offers only suggestions that it would read itself', () => {
    for (const { suggestion } of written.refused) {
      if (suggestion !== undefined) expect(parsePosition(suggestion).ok, suggestion).toBe(true);
    }
  });

  it('gives plain zeros, which survive JSON', () => {
    const read = parsePosition('0 S 0 W');
    expect(read.ok && Object.is(read.value.latitude, 0) && Object.is(read.value.longitude, 0)).toBe(true);
  });

  it('reads back what formatPosition writes, to half a unit of the last decimal', () => {
    const perDegree = { 'degrees-minutes': 60, 'degrees-minutes-seconds': 3600, 'decimal-degrees': 1 };
    const styles = fc.constantFrom<NonNullable<NonNullable<Parameters<typeof formatPosition>[1]>['style']>>(
      'degrees-minutes',
      'degrees-minutes-seconds',
      'decimal-degrees',
    );
    fc.assert(
      fc.property(places, styles, fc.integer({ min: 0, max: 9 }), (place, style, digits) => {
        const text = formatPosition(place, { style, digits });
        const read = parsePosition(text);
        if (!read.ok) throw new Error(`${text}: ${read.issues[0].message}`);
        const unit = 0.5 / perDegree[style] / 10 ** digits + 1e-13;
        expect(Math.abs(read.value.latitude - place.latitude)).toBeLessThanOrEqual(unit);
        expect(Math.abs(read.value.longitude - place.longitude)).toBeLessThanOrEqual(unit);
        expect(formatPosition(read.value, { style, digits }).replace(/[NSEW]/g, '')).toBe(
          text.replace(/[NSEW]/g, ''),
        );
      }),
      { numRuns: 500 },
    );
  });

  it('reads any plain decimal pair as it stands', () => {
    fc.assert(
      fc.property(places, ({ latitude, longitude }) => {
        const text = `${latitude.toFixed(8)}, ${longitude.toFixed(8)}`;
        expect(parsePosition(text)).toMatchObject({
          ok: true,
          value: { latitude: Number(latitude.toFixed(8)) + 0 },
        });
      }),
    );
  });

  it('never throws, whatever it is given', () => {
    const pieces = fc.constantFrom(
      ...'0159.,-+°\'"NSEWo :;/()',
      ' ',
      'lat',
      'deg',
      '′',
      '−',
      '٣',
      '\u0000',
      '\ud800',
    );
    const near = fc.array(pieces, { maxLength: 40 }).map((parts) => parts.join(''));
    fc.assert(
      fc.property(fc.oneof(fc.anything(), fc.string({ unit: 'binary' }), near), (input) => {
        const read = parsePosition(input);
        if (read.ok) {
          expect(Math.abs(read.value.latitude)).toBeLessThanOrEqual(90);
          expect(Math.abs(read.value.longitude)).toBeLessThanOrEqual(180);
        } else {
          expect(read.issues[0].code).toMatch(/^position-/);
        }
        expect(structuredClone(read)).toEqual(JSON.parse(JSON.stringify(read)));
      }),
      { numRuns: 2000 },
    );
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', '56 N 6 constructor'])(
    'finds no meaning in %s',
    (text) => {
      expect(parsePosition(text).ok).toBe(false);
    },
  );

  it('refuses long input at once', () => {
    for (const text of [' '.repeat(10_000_000), '5'.repeat(10_000_000), '-'.repeat(201)]) {
      expect(parsePosition(text)).toMatchObject({ ok: false, issues: [{ code: 'position-too-long' }] });
    }
  });
});

describe('formatPosition', () => {
  it('carries what it rounds up', () => {
    expect(formatPosition({ latitude: 55.99999, longitude: -6.99999 })).toBe('56°00.00′ N 007°00.00′ W');
    expect(
      formatPosition(
        { latitude: 55.99999, longitude: -6.99999 },
        { style: 'degrees-minutes-seconds', digits: 0 },
      ),
    ).toBe('56°00′00″ N 007°00′00″ W');
    expect(formatPosition({ latitude: 0, longitude: 179.999999 }, { digits: 1 })).toBe(
      '00°00.0′ N 180°00.0′ E',
    );
  });

  it('throws on what is no place and no format', () => {
    expect(() => formatPosition({ latitude: 91, longitude: 0 })).toThrow(RangeError);
    expect(() => formatPosition({ latitude: Number.NaN, longitude: 0 })).toThrow(RangeError);
    expect(() => formatPosition({ latitude: 0, longitude: 0 }, { digits: 10 })).toThrow(RangeError);
    expect(() =>
      formatPosition(
        { latitude: 0, longitude: 0 },
        { style: 'toString' as NonNullable<NonNullable<Parameters<typeof formatPosition>[1]>['style']> },
      ),
    ).toThrow(RangeError);
  });
});
