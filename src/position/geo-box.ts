import { type Coordinates, requireCoordinates, signedAngle } from './coordinates.ts';

/**
 * A piece of the Earth between two parallels and two meridians, edges included.
 *
 * `west` is greater than `east` when the box lies across the 180th meridian, as in RFC 7946 §5.2;
 * a box all round the Earth has `west` -180 and `east` 180.
 */
export interface GeoBox {
  readonly south: number;
  readonly west: number;
  readonly north: number;
  readonly east: number;
}

/** How many degrees of longitude a box spans, 0 to 360. */
export function widthOf(box: GeoBox): number {
  return box.west <= box.east ? box.east - box.west : box.east - box.west + 360;
}

/** The place half-way between the edges of a box. */
export function middleOf(box: GeoBox): Coordinates {
  return { latitude: (box.south + box.north) / 2, longitude: signedAngle(box.west + widthOf(box) / 2) };
}

/**
 * Whether a place lies in a box or on its edge. At a pole the longitude does not count.
 *
 * @param box - edges in degrees, also across the 180th meridian
 * @param place - the place
 * @returns `true` inside and on the edge
 * @throws RangeError when the coordinates are out of range
 *
 * @example
 * ```ts
 * import { boxContains, boxOf, toReportedPosition } from 'seahail/position';
 *
 * const fix = { latitude: 56.349, longitude: -6.509 };
 * console.log(boxContains(boxOf(toReportedPosition(fix)), fix)); // true
 * ```
 */
export function boxContains(box: GeoBox, place: Coordinates): boolean {
  const { latitude, longitude } = requireCoordinates(place);
  if (latitude < box.south || latitude > box.north) return false;
  if (Math.abs(latitude) === 90) return true;
  if (box.west <= box.east) {
    const inside = (degrees: number) => degrees >= box.west && degrees <= box.east;
    return inside(longitude) || (Math.abs(longitude) === 180 && inside(-longitude));
  }
  return longitude >= box.west || longitude <= box.east;
}

/** The box between two longitudes that need not be in range: `west` 179.9, `east` 180.1 gives a box across 180. */
export function boxBetween(south: number, west: number, north: number, east: number): GeoBox {
  if (east - west >= 360) return { south, west: -180, north, east: 180 };
  const inRange = (degrees: number) => degrees >= -180 && degrees <= 180;
  if (inRange(west) && inRange(east)) return { south, west, north, east };
  return { south, west: signedAngle(west), north, east: signedAngle(east) };
}
