import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatPosition, type PositionStyle, parsePosition } from '../../src/position/index.ts';

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
    const styles = fc.constantFrom<PositionStyle>(
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
      formatPosition({ latitude: 0, longitude: 0 }, { style: 'toString' as PositionStyle }),
    ).toThrow(RangeError);
  });
});
