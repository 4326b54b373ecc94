import { type Coordinates, requireCoordinates } from './coordinates.ts';
import { requireNotNegative } from './require-number.ts';
import { fixedText } from './waypoint.ts';

/**
 * A position as a `geo:` URI, for a link or a code to scan.
 *
 * @param coordinates - the place
 * @param options - `uncertainty`: the position is good to within so many metres; rounded up to a tenth
 * @returns the URI, latitude first, WGS 84
 * @throws RangeError when the coordinates are out of range or the uncertainty is negative
 *
 * Source: RFC 5870 §3.3, §3.4 (180 and -180 are the same; at a pole the longitude is written 0).
 *
 * @see {@link toGeoJson}
 * @see {@link uncertaintyOf}
 *
 * @example
 * ```ts
 * import { toGeoUri } from 'seahail/position';
 *
 * console.log(toGeoUri({ latitude: 56.3388333, longitude: -6.502 })); // geo:56.338833,-6.502
 * console.log(toGeoUri({ latitude: 56.3416667, longitude: -6.508333 }, { uncertainty: 1100 })); // geo:56.341667,-6.508333;u=1100
 * ```
 */
export function toGeoUri(
  coordinates: Coordinates,
  options: { readonly uncertainty?: number | undefined } = {},
): string {
  const { latitude, longitude } = requireCoordinates(coordinates);
  const { uncertainty } = options;
  const pole = Math.abs(Number(fixedText(latitude))) === 90;
  const place = `geo:${short(fixedText(latitude))},${pole ? '0' : short(fixedText(longitude))}`;
  if (uncertainty === undefined) return place;
  requireNotNegative('uncertainty', uncertainty);
  // Half round the Earth is as uncertain as a place can be, and keeps the number free of an exponent.
  const metres = Math.min(uncertainty, 20_003_932);
  return `${place};u=${short((Math.ceil(metres * 10) / 10).toFixed(1))}`;
}

function short(text: string): string {
  return text.replace(/\.?0+$/, '');
}
