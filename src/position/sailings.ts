import { type Coordinates, fullAngle, requireCoordinates, signedAngle } from './coordinates.ts';
import { destination, rangeAndBearing } from './geodesic.ts';
import type { Plane } from './mover.ts';
import { MILE } from './units.ts';

/** Up to this range, these runs and this latitude two held courses are straight lines on one sheet of paper. */
const LIMIT = { range: 20 * MILE, run: 20 * MILE, latitude: 75 } as const;
// WGS 84: a = 6 378 137 m, 1/f = 298.257 223 563.
const EQUATORIAL_RADIUS = 6_378_137;
const ECCENTRICITY_SQUARED = (2 - 1 / 298.257223563) / 298.257223563;
const ECCENTRICITY = Math.sqrt(ECCENTRICITY_SQUARED);
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

/** Nearer a pole than this a held true course is a spiral that nobody steers: the geodesic is taken. */
const POLAR = 89;
/** Below this difference of latitude, in degrees, the difference of meridional parts would lose its digits. */
const LEVEL = 1e-3;

/**
 * The line of constant true course between two places: what a ship steers who holds her course. Up to about 50 miles
 * it does not differ in practice from the shortest line. It takes the shorter way round, also across the 180th meridian.
 *
 * @returns metres on the WGS 84 ellipsoid and the course; within one degree of a pole those of the geodesic
 * @throws RangeError when coordinates are out of range
 *
 * Source: Mercator sailing with the meridional parts of the ellipsoid, American Practical Navigator, The Sailings, from memory.
 */
export function rhumbLine(
  from: Coordinates,
  to: Coordinates,
): {
  readonly metres: number;
  /** Degrees true, the same all along, 0 up to 360; `null` when both ends are the same place. */
  readonly course: number | null;
} {
  requireCoordinates(from);
  requireCoordinates(to);
  if (isPolar(from) || isPolar(to)) {
    const { metres, bearing } = rangeAndBearing(from, to);
    return { metres, course: bearing };
  }
  const north = northing(from.latitude, to.latitude);
  const east =
    signedAngle(to.longitude - from.longitude) * DEGREE * parallelRadius(from.latitude, to.latitude, north);
  if (north === 0 && east === 0) return { metres: 0, course: null };
  return { metres: Math.hypot(north, east), course: fullAngle(Math.atan2(east, north) / DEGREE) };
}

/**
 * The place reached by holding a true course for a distance of zero or more metres.
 *
 * @returns where the run ends; when it would come within one degree of a pole, the end of the geodesic
 * @throws RangeError when coordinates are out of range, the course is not finite or the distance is negative
 *
 * Source: as {@link rhumbLine}.
 */
export function alongRhumb(from: Coordinates, course: number, metres: number): Coordinates {
  const direct = destination(from, course, metres);
  const north = metres * Math.cos(course * DEGREE);
  const room = northing(from.latitude, north > 0 ? POLAR : -POLAR);
  if (isPolar(from) || Math.abs(north) >= Math.abs(room)) return direct;
  const start = { latitude: from.latitude, longitude: 0 };
  const { latitude } = destination(start, north > 0 ? 0 : 180, Math.abs(north));
  const radius = parallelRadius(from.latitude, latitude, north);
  const east = (metres * Math.sin(course * DEGREE)) / radius / DEGREE;
  return { latitude, longitude: signedAngle(from.longitude + east) };
}

function isPolar({ latitude }: Coordinates): boolean {
  return Math.abs(latitude) >= POLAR;
}

/** Metres along the meridian between two latitudes, north positive. */
function northing(from: number, to: number): number {
  const { metres } = rangeAndBearing({ latitude: from, longitude: 0 }, { latitude: to, longitude: 0 });
  return to < from ? -metres : metres;
}

/** The mean radius of the parallels between two latitudes: metres of northing to a radian of meridional parts. */
function parallelRadius(from: number, to: number, north: number): number {
  if (Math.abs(to - from) >= LEVEL) return north / (meridionalParts(to) - meridionalParts(from));
  const middle = ((from + to) / 2) * DEGREE;
  return (EQUATORIAL_RADIUS * Math.cos(middle)) / Math.sqrt(1 - (ECCENTRICITY * Math.sin(middle)) ** 2);
}

/** In radians: artanh(sin L) - e artanh(e sin L), which is the handbook's logarithm of a tangent. */
function meridionalParts(latitude: number): number {
  const sine = Math.sin(latitude * DEGREE);
  return Math.asinh(Math.tan(latitude * DEGREE)) - ECCENTRICITY * Math.atanh(ECCENTRICITY * sine);
}
