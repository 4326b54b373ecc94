import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { resolveTime } from '../../src/position/index.ts';

const MINUTE = 60_000;
const received = Date.UTC(2026, 5, 1, 0, 3, 20);

describe('resolveTime', () => {
  // Common practice, no source: the latest such minute that is not later than the receipt.
  it.each([
    [0, 3, Date.UTC(2026, 5, 1, 0, 3), 20],
    [23, 49, Date.UTC(2026, 4, 31, 23, 49), 14 * 60 + 20],
    [0, 8, Date.UTC(2026, 5, 1, 0, 8), 0],
    [0, 9, Date.UTC(2026, 4, 31, 0, 9), (23 * 60 + 54) * 60 + 20],
    [12, 0, Date.UTC(2026, 4, 31, 12, 0), (12 * 60 + 3) * 60 + 20],
  ])('%i:%i received at 00:03:20', (hour, minute, at, age) => {
    expect(resolveTime({ hour, minute }, received)).toEqual({ at, age });
  });

  it('lets the caller say how far clocks may differ', () => {
    expect(resolveTime({ hour: 0, minute: 4 }, received, { clockDoubtSeconds: 0 }).at).toBe(
      Date.UTC(2026, 4, 31, 0, 4),
    );
    expect(resolveTime({ hour: 0, minute: 4 }, received, { clockDoubtSeconds: 40 }).at).toBe(
      Date.UTC(2026, 5, 1, 0, 4),
    );
  });

  it('finds a minute with that hour and minute, within the last day', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 23 }),
        fc.integer({ min: 0, max: 59 }),
        fc.integer({ min: 0, max: 4e12 }),
        fc.integer({ min: 0, max: 3600 }),
        (hour, minute, now, clockDoubtSeconds) => {
          const { at, age } = resolveTime({ hour, minute }, now, { clockDoubtSeconds });
          const date = new Date(at);
          expect([date.getUTCHours(), date.getUTCMinutes(), Math.abs(at % MINUTE)]).toEqual([
            hour,
            minute,
            0,
          ]);
          expect(at).toBeLessThanOrEqual(now + clockDoubtSeconds * 1000);
          expect(at).toBeGreaterThan(now + clockDoubtSeconds * 1000 - 24 * 60 * MINUTE);
          expect(age).toBe(Math.max(0, now - at) / 1000);
        },
      ),
    );
  });

  it('throws on what is no time of day', () => {
    for (const time of [
      { hour: 24, minute: 0 },
      { hour: 88, minute: 88 },
      { hour: 1, minute: 60 },
      { hour: 1.5, minute: 0 },
    ]) {
      expect(() => resolveTime(time, received)).toThrow(RangeError);
    }
    expect(() => resolveTime({ hour: 1, minute: 1 }, Number.NaN)).toThrow(RangeError);
    expect(() => resolveTime({ hour: 1, minute: 1 }, received, { clockDoubtSeconds: -1 })).toThrow(
      RangeError,
    );
  });
});
