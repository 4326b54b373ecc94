import { expect } from 'vitest';
import { boxOf, decodePosition, estimateLink } from '../../src/position/index.ts';

export const deviations: Record<string, () => void> = {
  'D-position-2': () => {
    const position = decodePosition('0000000000');
    if (!position.ok || position.value.kind === 'no-position') throw new Error('no position');
    expect(boxOf(position.value)).toEqual({ south: 0, west: 0, north: 1 / 60, east: 1 / 60 });
    expect(boxOf(position.value, 'unknown')).toEqual({
      south: -1 / 120,
      west: -1 / 120,
      north: 1 / 60,
      east: 1 / 60,
    });
  },
  'D-position-4': () => {
    const end = { height: 10 };
    const loss = (metres: number) => estimateLink({ watts: 25, from: end, to: end, metres }).loss;
    expect(loss(20_000)).toBeCloseTo(130.76, 1);
    // Far beyond the horizon 17.6 dB to a unit of normalised distance: half a decibel a kilometre, less ten in a decade.
    expect((loss(200_000) - loss(150_000)) / 50).toBeCloseTo(0.5, 1);
  },
};
