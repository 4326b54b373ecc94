// The package is UMD: its members hang on the default import and cannot be named in the import,
// and its declarations mark every output as optional. All of that stays in this file.
import geographiclib from 'geographiclib-geodesic';
import { type Coordinates, fullAngle, requireCoordinates } from './coordinates.ts';
import { requireFinite, requireNotNegative } from './require-number.ts';

/** How far, and which way, along the shortest line on the WGS 84 ellipsoid. */
export interface RangeAndBearing {
  /** Length of the geodesic in metres. */
  readonly metres: number;
  /** Degrees true at the start towards the end, 0 up to 360; `null` where no direction has a meaning. */
  readonly bearing: number | null;
  /** Degrees true at the end, onwards in the same direction; `null` where no direction has a meaning. */
  readonly finalBearing: number | null;
  /** Degrees true at the end, back towards the start; `null` where no direction has a meaning. */
  readonly backBearing: number | null;
}

/**
 * Distance and true bearings of the shortest line between two places, on the WGS 84 ellipsoid.
 *
 * A bearing is `null` when the places are the same and, at its own end, when that end is a pole. Between exact
 * antipodes several lines are equally short and one of them is given.
 *
 * @param from - start
 * @param to - end
 * @returns metres and the bearings at both ends
 * @throws RangeError when coordinates are out of range
 *
 * Source: C. F. F. Karney, Algorithms for geodesics, J. Geodesy 87 (2013), as implemented by geographiclib-geodesic.
 *
 * @see {@link destination}
 * @see {@link boundsFrom}
 *
 * @example
 * ```ts
 * import { rangeAndBearing } from 'seahail/position';
 *
 * const line = rangeAndBearing({ latitude: 50.06632, longitude: -5.71475 }, { latitude: 58.64402, longitude: -3.07009 });
 * console.log(line.metres.toFixed(3)); // 969954.166
 * console.log(line.bearing?.toFixed(4)); // 9.1419
 * ```
 */
export function rangeAndBearing(from: Coordinates, to: Coordinates): RangeAndBearing {
  requireCoordinates(from);
  requireCoordinates(to);
  const line = geographiclib.Geodesic.WGS84.Inverse(from.latitude, from.longitude, to.latitude, to.longitude);
  const metres = line.s12 as number;
  if (metres === 0) return { metres, bearing: null, finalBearing: null, backBearing: null };
  const atPole = (place: Coordinates) => Math.abs(place.latitude) === 90;
  const [start, end] = [line.azi1 as number, line.azi2 as number];
  return {
    metres,
    bearing: atPole(from) ? null : fullAngle(start),
    finalBearing: atPole(to) ? null : fullAngle(end),
    backBearing: atPole(to) ? null : fullAngle(end + 180),
  };
}

/**
 * The place that lies a distance away in a direction, on the WGS 84 ellipsoid.
 *
 * @param from - start; at a pole the bearing counts from the meridian of the given longitude
 * @param bearing - degrees true at the start
 * @param metres - distance, zero or more
 * @returns the end of the geodesic, longitude from -180 to 180
 * @throws RangeError when coordinates are out of range, the bearing is not finite or the distance is negative
 *
 * Source: as {@link rangeAndBearing}.
 *
 * @example
 * ```ts
 * import { destination, formatPosition } from 'seahail/position';
 *
 * const there = destination({ latitude: 56.3333, longitude: -6.5 }, 90, 5 * 1852);
 * console.log(formatPosition(there)); // 56°19.99′ N 006°21.02′ W
 * ```
 */
export function destination(from: Coordinates, bearing: number, metres: number): Coordinates {
  requireCoordinates(from);
  requireFinite('bearing', bearing);
  requireNotNegative('metres', metres);
  const line = geographiclib.Geodesic.WGS84.Direct(from.latitude, from.longitude, bearing, metres);
  return { latitude: (line.lat2 as number) + 0, longitude: (line.lon2 as number) + 0 };
}
