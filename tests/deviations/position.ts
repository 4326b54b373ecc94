import { expect } from 'vitest';
import { areaBox, boxOf, estimateLink, geographicArea, reportedPosition } from '../../src/position/index.ts';

export const deviations: Record<string, () => void> = {
  'D-position-1': () => {
    const area = geographicArea('1510070305');
    expect(area.ok && areaBox(area.value)).toEqual({ south: 48, west: -7, north: 51, east: -2 });
  },
  'D-position-2': () => {
    const position = reportedPosition('0000000000');
    if (!position.ok || position.value.kind === 'no-position') throw new Error('no position');
    expect(boxOf(position.value)).toEqual({ south: 0, west: 0, north: 1 / 60, east: 1 / 60 });
    expect(boxOf(position.value, 'unknown')).toEqual({
      south: -1 / 120,
      west: -1 / 120,
      north: 1 / 60,
      east: 1 / 60,
    });
  },
  'D-position-3': () => {
    const hemispheres = ['0', '1', '2', '3'].map((quadrant) => {
      const position = reportedPosition(`${quadrant}561200630`, '12345678');
      if (!position.ok || position.value.kind === 'no-position') throw new Error('no position');
      const { latitude, longitude, fraction } = position.value;
      expect(fraction).toEqual({ latitude: 1234, longitude: 5678 });
      return latitude.hemisphere + longitude.hemisphere;
    });
    expect(hemispheres).toEqual(['NE', 'NW', 'SE', 'SW']);
  },
  'D-position-4': () => {
    const end = { height: 10 };
    const loss = (metres: number) => estimateLink({ watts: 25, from: end, to: end, metres }).loss;
    expect(loss(20_000)).toBeCloseTo(130.76, 1);
    // Far beyond the horizon 17.6 dB to a unit of normalised distance: half a decibel a kilometre, less ten in a decade.
    expect((loss(200_000) - loss(150_000)) / 50).toBeCloseTo(0.5, 1);
  },
};
