import { type Coordinates, fullAngle, signedAngle } from './coordinates.ts';
import { extremeOf } from './extreme.ts';
import { type GeoBox, widthOf } from './geo-box.ts';
import { rangeAndBearing } from './geodesic.ts';

/** Smaller than any radius of curvature of the Earth: an angle worked with it is never too small. */
const LEAST_RADIUS = 6_335_000;
/** Beyond this every direction leads to about the same place. */
const NEAR_ANTIPODE = 19_800_000;
/** Metres that the last bits of coordinates may be off; beside a box of a hand's breadth they turn a bearing. */
const GRAIN = 1e-7;
const DEGREE = Math.PI / 180;

/**
 * The sector that holds every bearing from a place, or a doubtful place, to a box and a margin around it.
 *
 * @param from - where the bearing is taken
 * @param box - where the other is, without the margin
 * @param margin - metres the other may have left the box
 * @param doubt - metres the place itself may be wrong
 * @param range - nearest and farthest point of the box
 * @returns the sector; `null` where no bearing has a meaning: inside the margins, at a pole, near the antipode
 */
export function sectorToBox(
  from: Coordinates,
  box: GeoBox,
  { margin, doubt, range }: { margin: number; doubt: number; range: { least: number; greatest: number } },
): { readonly from: number; readonly to: number } | null {
  const reach = margin + doubt;
  if (range.least <= reach || range.greatest + reach > NEAR_ANTIPODE) return null;
  const convergence = turnOfNorth(from.latitude, doubt);
  if (convergence === null) return null;
  const width = widthOf(box);
  const middle = bearingTo(from, (box.south + box.north) / 2, box.west + width / 2);
  if (middle === null) return null;

  /** How far the discs of the margins about a point of the box stand out to one side of the middle. */
  const outward = (side: 1 | -1) => (latitude: number, longitude: number) => {
    const { metres, bearing } = rangeAndBearing(from, { latitude, longitude: signedAngle(longitude) });
    const disc = Math.sin((reach + GRAIN) / LEAST_RADIUS) / Math.sin(metres / LEAST_RADIUS);
    return side * signedAngle((bearing ?? middle) - middle) + Math.asin(Math.min(1, disc)) / DEGREE;
  };
  const farthest = (side: 1 | -1) => {
    const of = outward(side);
    const [west, east] = [box.west, box.west + width];
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

/** By how many degrees true north itself may turn when a place is doubtful; `null` when a pole lies within the doubt. */
function turnOfNorth(latitude: number, doubt: number): number | null {
  if (Math.abs(latitude) === 90) return null;
  if (doubt === 0) return 0;
  const ratio = Math.sin(doubt / LEAST_RADIUS) / Math.cos(latitude * DEGREE);
  return ratio >= 1 ? null : Math.asin(ratio) / DEGREE;
}

function bearingTo(from: Coordinates, latitude: number, longitude: number): number | null {
  return rangeAndBearing(from, { latitude, longitude: signedAngle(longitude) }).bearing;
}
