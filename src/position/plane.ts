import { type Coordinates, signedAngle } from './coordinates.ts';
import type { Plane } from './mover.ts';
import { MILE } from './units.ts';

/** Up to this range, these runs and this latitude two held courses are straight lines on one sheet of paper. */
const LIMIT = { range: 20 * MILE, run: 20 * MILE, latitude: 75 } as const;
// WGS 84: a = 6 378 137 m, 1/f = 298.257 223 563.
const EQUATORIAL_RADIUS = 6_378_137;
const ECCENTRICITY_SQUARED = (2 - 1 / 298.257223563) / 298.257223563;
const DEGREE = Math.PI / 180;

/** One place seen from another on the plane chart of their middle latitude, metres. */
export function onPlane(from: Coordinates, to: Coordinates): Plane {
  const middle = ((from.latitude + to.latitude) / 2) * DEGREE;
  const squeeze = 1 - ECCENTRICITY_SQUARED * Math.sin(middle) ** 2;
  const meridian = (EQUATORIAL_RADIUS * (1 - ECCENTRICITY_SQUARED)) / squeeze ** 1.5;
  const parallel = (EQUATORIAL_RADIUS * Math.cos(middle)) / Math.sqrt(squeeze);
  return {
    east: signedAngle(to.longitude - from.longitude) * DEGREE * parallel,
    north: (to.latitude - from.latitude) * DEGREE * meridian,
  };
}

/** Whether plane geometry is good enough: places, range now, and the longest run that was asked for, metres. */
export function isPlane(places: readonly Coordinates[], range: number, run: number): boolean {
  return (
    range <= LIMIT.range &&
    run <= LIMIT.run &&
    places.every(({ latitude }) => Math.abs(latitude) <= LIMIT.latitude)
  );
}
