import { type Coordinates, signedAngle } from './coordinates.ts';
import { extremeOf } from './extreme.ts';
import { type GeoBox, widthOf } from './geo-box.ts';
import { rangeAndBearing } from './geodesic.ts';

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
