import { boxBetween, type GeoBox, widthOf } from './geo-box.ts';
import { destination, rangeAndBearing } from './geodesic.ts';

/** Smaller than any radius of curvature of the Earth, so that the width is never too small. */
const LEAST_RADIUS = 6_335_000;

/** The box that holds every place within a distance of a box: all round the Earth when a pole comes within it. */
export function widenedBox(box: GeoBox, metres: number): GeoBox {
  if (metres === 0) return box;
  const toPole = (latitude: number, pole: 90 | -90) =>
    rangeAndBearing({ latitude, longitude: 0 }, { latitude: pole, longitude: 0 }).metres;
  const north =
    toPole(box.north, 90) > metres
      ? destination({ latitude: box.north, longitude: 0 }, 0, metres).latitude
      : 90;
  const south =
    toPole(box.south, -90) > metres
      ? destination({ latitude: box.south, longitude: 0 }, 180, metres).latitude
      : -90;
  const highest = Math.max(Math.abs(box.north), Math.abs(box.south));
  const ratio = Math.sin(metres / LEAST_RADIUS) / Math.cos((highest * Math.PI) / 180);
  if (north === 90 || south === -90 || ratio >= 1) return { south, west: -180, north, east: 180 };
  const beside = (Math.asin(ratio) * 180) / Math.PI;
  return boxBetween(south, box.west - beside, north, box.west + widthOf(box) + beside);
}
