import { boxOf, centreOf, type RoundingAssumption } from './box.ts';
import { type Coordinates, fullAngle, signedAngle } from './coordinates.ts';
import { boxBetween, type GeoBox, middleOf, widthOf } from './geo-box.ts';
import { destination, rangeAndBearing } from './geodesic.ts';
import type { ReportedPosition } from './reported-position.ts';
import { extremeOf } from './search.ts';

/** Nearest and farthest point of a box, metres from a place: zero when the place lies in it. */
export function rangeToBox(
  from: Coordinates,
  box: GeoBox,
): { readonly least: number; readonly greatest: number } {
  const [near, far] = longitudeOffsets(from.longitude, box);
  const inside = near === 0 && from.latitude >= box.south && from.latitude <= box.north;
  // On one parallel the distance grows with the difference of longitude, so the nearest and the farthest point lie on
  // the nearest and the farthest meridian; along a meridian it has one turning point.
  const along = (offset: number) => (latitude: number) => {
    const longitude = signedAngle(from.longitude + offset);
    return rangeAndBearing(from, { latitude, longitude }).metres;
  };
  const away = along(near);
  return {
    least: inside ? 0 : -extremeOf((latitude) => -away(latitude), box.south, box.north),
    greatest: extremeOf(along(far), box.south, box.north),
  };
}

/** The least and the greatest difference of longitude between a meridian and those of a box, 0 to 180 degrees. */
function longitudeOffsets(longitude: number, box: GeoBox): readonly [number, number] {
  const width = widthOf(box);
  const west = signedAngle(box.west - longitude);
  const ends = [Math.abs(west), Math.abs(signedAngle(west + width))] as const;
  const holds = (offset: number) => (((offset - west) % 360) + 360) % 360 <= width;
  return [holds(0) ? 0 : Math.min(...ends), holds(180) ? 180 : Math.max(...ends)];
}

/** Smaller than any radius of curvature of the Earth: an angle or a width worked with it is never too small. */
const LEAST_RADIUS = 6_335_000;
/** Beyond this every direction leads to about the same place. */
const NEAR_ANTIPODE = 19_800_000;
/** Metres that the last bits of coordinates may be off; beside a box of a hand's breadth they turn a bearing. */
const GRAIN = 1e-7;
const DEGREE = Math.PI / 180;

/**
 * The sector that holds every bearing from a place to a box: `margin` are the metres the other may have left the box,
 * `doubt` those the place itself may be wrong, `range` the nearest and farthest point of the box.
 *
 * @returns the sector; `null` where no bearing has a meaning: inside the margins, at a pole, near the antipode
 */
export function sectorToBox(
  from: Coordinates,
  box: GeoBox,
  { margin, doubt, range }: { margin: number; doubt: number; range: { least: number; greatest: number } },
): { readonly from: number; readonly to: number } | null {
  const reach = margin + doubt;
  if (range.least <= reach || range.greatest + reach > NEAR_ANTIPODE) return null;
  const convergence = widthAt(from.latitude, doubt);
  if (convergence === null) return null;
  const middle = rangeAndBearing(from, middleOf(box)).bearing;
  if (middle === null) return null;

  /** How far the discs of the margins about a point of the box stand out to one side of the middle. */
  const outward = (side: 1 | -1) => (latitude: number, longitude: number) => {
    const { metres, bearing } = rangeAndBearing(from, { latitude, longitude: signedAngle(longitude) });
    const disc = Math.sin((reach + GRAIN) / LEAST_RADIUS) / Math.sin(metres / LEAST_RADIUS);
    return side * signedAngle((bearing ?? middle) - middle) + Math.asin(Math.min(1, disc)) / DEGREE;
  };
  const farthest = (side: 1 | -1) => {
    const of = outward(side);
    const [west, east] = [box.west, box.west + widthOf(box)];
    return Math.max(
      extremeOf((latitude) => of(latitude, west), box.south, box.north),
      extremeOf((latitude) => of(latitude, east), box.south, box.north),
      extremeOf((longitude) => of(box.south, longitude), west, east),
      extremeOf((longitude) => of(box.north, longitude), west, east),
    );
  };
  const [left, right] = [farthest(-1) + convergence, farthest(1) + convergence];
  if (left + right >= 180) return null;
  return { from: fullAngle(middle - left), to: fullAngle(middle + right) };
}

/**
 * Degrees of longitude that a distance from a place reaches to either side, which is also how far true north may turn
 * when the place is so doubtful; `null` when a pole lies within the distance.
 */
function widthAt(latitude: number, metres: number): number | null {
  if (Math.abs(latitude) === 90) return null;
  const ratio = Math.sin(metres / LEAST_RADIUS) / Math.cos(latitude * DEGREE);
  return ratio >= 1 ? null : Math.asin(ratio) / DEGREE;
}

/** The box that holds every place within a distance of a box: all round the Earth when a pole comes within it. */
export function widenedBox(box: GeoBox, metres: number): GeoBox {
  if (metres === 0) return box;
  const edge = (latitude: number, pole: 90 | -90): number => {
    const from = { latitude, longitude: 0 };
    const { metres: toPole } = rangeAndBearing(from, { latitude: pole, longitude: 0 });
    return toPole > metres ? destination(from, pole > 0 ? 0 : 180, metres).latitude : pole;
  };
  const [north, south] = [edge(box.north, 90), edge(box.south, -90)];
  const beside = widthAt(Math.max(Math.abs(box.north), Math.abs(box.south)), metres);
  if (north === 90 || south === -90 || beside === null) return { south, west: -180, north, east: 180 };
  return boxBetween(south, box.west - beside, north, box.west + widthOf(box) + beside);
}

/**
 * How far from the middle of its box the true place of a reported position may be: half a diagonal.
 *
 * @param position - what a call carried
 * @param assumption - how the digits were made, `'truncated'` unless stated
 * @returns metres, for example for the `u` of {@link toGeoUri}
 *
 * @example
 * ```ts
 * import { centreOf, decodePosition, toGeoUri, uncertaintyOf } from 'seahail/position';
 * import { valueOf } from 'seahail/result';
 *
 * const position = valueOf(decodePosition('1562000630'));
 * if (position.kind === 'reported-position') {
 *   console.log(toGeoUri(centreOf(position), { uncertainty: uncertaintyOf(position) })); // geo:56.341667,-6.508333;u=1061.5
 * }
 * ```
 */
export function uncertaintyOf(
  position: ReportedPosition,
  assumption: RoundingAssumption = 'truncated',
): number {
  return rangeToBox(centreOf(position, assumption), boxOf(position, assumption)).greatest;
}
