import geographiclib from 'geographiclib-geodesic';
import { type Coordinates, rangeAndBearing } from 'seahail/position';
import { type Figure, ratioOf } from './ratio.ts';

export function positionFigures(): Figure[] {
  // Places within an hour's sail of the Skerra Sound, and a few around the world.
  const own: Coordinates = { latitude: 56.3333, longitude: -6.5 };
  const others = Array.from(
    { length: 100 },
    (_, n): Coordinates =>
      n % 10 === 0
        ? { latitude: ((n * 37) % 140) - 70, longitude: ((n * 91) % 360) - 180 }
        : { latitude: 56.2 + 0.003 * n, longitude: -6.7 + 0.004 * ((n * 7) % 100) },
  );
  const { WGS84 } = geographiclib.Geodesic;
  const subject = () => {
    let sum = 0;
    for (const other of others) sum += rangeAndBearing(own, other).metres;
    return sum;
  };
  const yardstick = () => {
    let sum = 0;
    for (const { latitude, longitude } of others) {
      sum += WGS84.Inverse(own.latitude, own.longitude, latitude, longitude).s12 as number;
    }
    return sum;
  };
  return [
    {
      what: 'rangeAndBearing',
      beside: 'the geodesic call it makes',
      ratio: ratioOf({ subject, yardstick }),
      goal: 1.1,
    },
  ];
}
