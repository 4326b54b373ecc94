import { givenInWords } from '../result/internal.ts';
import { requireWithin } from './require-number.ts';

/**
 * A place on the Earth: WGS 84, degrees, north and east positive.
 *
 * Latitude runs from -90 to 90 and longitude from -180 to 180; both 180 and -180 are accepted for the same meridian.
 */
export interface Coordinates {
  /** Degrees, north positive, -90 to 90. */
  readonly latitude: number;
  /** Degrees, east positive, -180 to 180. */
  readonly longitude: number;
}

/** Coordinates as they were written, and how finely. */
export interface WrittenPosition extends Coordinates {
  /** What the last digit is worth, degrees: 1/60 for whole minutes, 0.000001 for six decimals of a degree. */
  readonly step: number;
}

/**
 * The same place with a check that it is one: for functions that are handed coordinates by a program.
 *
 * @throws RangeError when latitude or longitude is not a number in its range
 */
export function requireCoordinates(coordinates: Coordinates): Coordinates {
  const { latitude, longitude } = coordinates ?? ({} as Coordinates);
  if (latitude === undefined && longitude === undefined) {
    throw new RangeError(
      `position: expected latitude and longitude in degrees, got ${givenInWords(coordinates)}`,
    );
  }
  requireWithin('latitude', latitude, 90);
  requireWithin('longitude', longitude, 180);
  return coordinates;
}

/** Any angle brought to -180 up to but not including 180. */
export function signedAngle(degrees: number): number {
  const turned = (((degrees + 180) % 360) + 360) % 360;
  return turned >= 360 ? -180 : turned - 180;
}

/** Any angle brought to 0 up to but not including 360, as bearings are written. */
export function fullAngle(degrees: number): number {
  const turned = Math.abs(degrees) < 360 ? degrees : degrees % 360;
  const positive = turned < 0 ? turned + 360 : turned;
  return positive >= 360 ? 0 : positive + 0;
}
