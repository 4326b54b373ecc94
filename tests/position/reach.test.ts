import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { estimateLink, horizonRange } from '../../src/position/index.ts';

const MILE = 1852;
const FOOT = 0.3048;

describe('horizons', () => {
  // US Federal Standard 1037C, radio horizon range: 2.23 √h metres, 1.23 √h feet. American Practical Navigator: 2.07 √h
  // metres. Columns: height in metres, sight, radio, and the radio horizon of 4.12 √h km (ITU-R, from memory) in miles.
  it.each([
    [2, 2.93, 3.15, 3.15],
    [4, 4.14, 4.46, 4.45],
    [10, 6.55, 7.05, 7.03],
    [25, 10.35, 11.15, 11.12],
    [50, 14.64, 15.77, 15.73],
    [100, 20.7, 22.3, 22.25],
    [200, 29.27, 31.54, 31.46],
  ])('from %i m', (height, sight, radio, kilometres) => {
    expect(horizonRange(height, 0, 'sight') / MILE).toBeCloseTo(sight, 2);
    expect(horizonRange(height, 0) / MILE).toBeCloseTo(radio, 2);
    expect(Math.abs(horizonRange(0, height) / MILE / kilometres - 1)).toBeLessThan(0.004);
  });

  // Published radar-horizon note: antenna 25 ft 6.15 miles, target 625 ft, together 36.9 miles.
  it('25 ft and 625 ft', () => {
    expect(horizonRange(25 * FOOT, 0) / MILE).toBeCloseTo(6.15, 1);
    expect(horizonRange(25 * FOOT, 625 * FOOT) / MILE).toBeCloseTo(36.9, 0);
  });

  // Seamanship handbook, geographic range by 1.17 √ft: eye 16 ft 4.7, object 125 ft 13.1, together 17.8 miles. The
  // constant for metres in the same trade is 2.3 % shorter, and the rule for feet is not another Earth.
  it('the rule for feet is 2.3 % longer', () => {
    expect(horizonRange(16 * FOOT, 125 * FOOT, 'sight') / MILE / 17.8).toBeCloseTo(
      2.07 / (1.17 / Math.sqrt(FOOT)),
      2,
    );
  });

  it('throws on heights below the sea', () => {
    expect(() => horizonRange(-1, 0)).toThrow(RangeError);
    expect(() => horizonRange(1, Number.NaN, 'sight')).toThrow(RangeError);
  });
});

describe('estimateLink', () => {
  const WAVELENGTH = 299.792458 / 156.525;
  const ship = { height: 15 };
  const link = (change: Partial<Parameters<typeof estimateLink>[0]>): Parameters<typeof estimateLink>[0] => ({
    watts: 25,
    from: ship,
    to: ship,
    metres: 10 * MILE,
    ...change,
  });

  // ITU-R P.525: free-space loss 32.4 + 20 log f(MHz) + 20 log d(km).
  it('is free space close by', () => {
    expect(estimateLink(link({ metres: 200 })).loss).toBeCloseTo(
      32.4 + 20 * Math.log10(156.525) + 20 * Math.log10(0.2),
      1,
    );
  });

  // Plane-Earth two-ray loss: 40 log d - 20 log h1 - 20 log h2, heights with the surface wave's 7.3 m added squarely.
  it('is two rays over a plane while the Earth is flat enough', () => {
    const height = Math.hypot(4, 7.34);
    for (const metres of [3000, 4000, 5000]) {
      const wanted = 40 * Math.log10(metres) - 40 * Math.log10(height);
      const free = 20 * Math.log10((4 * Math.PI * metres) / WAVELENGTH);
      expect(wanted).toBeGreaterThan(free);
      expect(
        Math.abs(estimateLink(link({ metres, from: { height: 4 }, to: { height: 4 } })).loss - wanted),
      ).toBeLessThan(0.6);
    }
  });

  it('knows the three powers: 6.2 dB and 14 dB below 25 W', () => {
    const margin = (watts: number) => estimateLink(link({ watts })).margin;
    expect(margin(25) - margin(6)).toBeCloseTo(6.2, 1);
    expect(margin(25) - margin(1)).toBeCloseTo(13.98, 2);
  });

  // Planning radius of a sea area A1, 2.5 (√H + √h) miles with h = 4 m: IMO Resolution A.801(19), from memory.
  it.each([50, 100, 200])('a coast station %i m high hears 25 W at its planning radius', (height) => {
    const metres = 2.5 * (Math.sqrt(height) + 2) * MILE;
    const estimate = estimateLink({ watts: 25, from: { height: 4 }, to: { height }, metres });
    expect(estimate.margin).toBeGreaterThan(0);
    expect(estimateLink({ watts: 25, from: { height: 4 }, to: { height }, metres: 2 * metres }).verdict).toBe(
      'unlikely',
    );
  });

  // Common practice, no source: two hand-held sets hear each other over a few miles of open sea, not over twenty.
  it('a hand-held set is for near by', () => {
    const handHeld = { height: 1.5, gain: -5 };
    const at = (miles: number) =>
      estimateLink({ watts: 6, from: handHeld, to: handHeld, metres: miles * MILE }).verdict;
    expect([at(1), at(3), at(8), at(20)]).toEqual(['likely', 'likely', 'doubtful', 'unlikely']);
  });

  it('loses with distance, gains with height and power, without a jump', () => {
    const heights = fc.double({ min: 0, max: 500, noNaN: true });
    fc.assert(
      fc.property(
        heights,
        heights,
        fc.double({ min: 100, max: 300_000, noNaN: true }),
        (low, high, metres) => {
          const loss = (distance: number, height: number) =>
            estimateLink({ watts: 1, from: { height }, to: { height: high }, metres: distance }).loss;
          expect(loss(metres * 1.01, low)).toBeGreaterThan(loss(metres, low));
          expect(loss(metres * 1.01, low) - loss(metres, low)).toBeLessThan(2.5);
          expect(loss(metres, low + 1)).toBeLessThanOrEqual(loss(metres, low) + 0.3);
        },
      ),
      { numRuns: 500 },
    );
  });

  it('adds up', () => {
    const estimate = estimateLink(
      link({ from: { height: 15, gain: 2 }, to: { height: 4, gain: -3 }, sensitivity: -110 }),
    );
    expect(estimate.received).toBeCloseTo(43.979 - 1 - estimate.loss, 3);
    expect(estimate.margin).toBeCloseTo(estimate.received + 110, 9);
    expect(estimate.horizon).toBe(horizonRange(15, 4));
  });

  it('throws on numbers that mean nothing', () => {
    for (const bad of [
      { watts: 0 },
      { metres: 0 },
      { metres: Number.NaN },
      { from: { height: -1 } },
      { sensitivity: Number.NaN },
    ]) {
      expect(() => estimateLink(link(bad))).toThrow(RangeError);
    }
  });
});
