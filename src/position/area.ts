import { failure, type Issue, type Result, success } from '../result/index.ts';
import { quote } from '../result/internal.ts';
import type { Coordinates } from './coordinates.ts';
import { boxBetween, boxContains, type GeoBox } from './geo-box.ts';
import { padded, quadrantDigit, quadrantOf } from './quadrant.ts';
import { shown } from './reported-position.ts';
import { digitIssue, rangeIssue } from './texts.ts';

/**
 * The area that a geographic-area call is addressed to: a rectangle on the Mercator chart, named by its north-west
 * corner and two sides, all in whole degrees. The hemisphere letters are kept even at zero.
 */
export interface GeographicArea {
  readonly kind: 'geographic-area';
  /** Northern edge: latitude of the corner. */
  readonly north: { readonly hemisphere: 'N' | 'S'; readonly degrees: number };
  /** Western edge: longitude of the corner. */
  readonly west: { readonly hemisphere: 'E' | 'W'; readonly degrees: number };
  /** Degrees of latitude that the area reaches southward, 0 to 99. */
  readonly southward: number;
  /** Degrees of longitude that the area reaches eastward, 0 to 99. */
  readonly eastward: number;
}

// ITU-R M.493-16, geographic area address, as publicly restated: quadrant of the north-west corner, latitude (2),
// longitude (3), extent southward (2), extent eastward (2).
const CLAUSE = 'ITU-R M.493-16, geographic area address';

/**
 * Reads the ten digits of a geographic area.
 *
 * @param digits - quadrant, corner latitude (2) and longitude (3), degrees southward (2) and eastward (2)
 * @returns the area; a notice when it reaches past a pole or has no size. Never throws.
 *
 * @see {@link boxOf}
 * @see {@link encodeArea}
 *
 * @example
 * ```ts
 * import { boxContains, boxOf, decodeArea } from 'seahail/position';
 * import { valueOf } from 'seahail/result';
 *
 * const box = boxOf(valueOf(decodeArea('1570070203')));
 * console.log(boxContains(box, { latitude: 56.34, longitude: -6.5 })); // true
 * console.log(boxContains(box, { latitude: 56.34, longitude: -3.5 })); // false
 * ```
 */
export function decodeArea(digits: unknown): Result<GeographicArea> {
  if (typeof digits !== 'string' || !/^\d{10}$/.test(digits)) {
    return failure(
      digitIssue('position-area-digits', {}, { at: ['digits', 0], received: shown(digits), clause: CLAUSE }),
    );
  }
  const quadrant = quadrantOf(digits.charAt(0));
  const found = (from: number, to: number) => ({
    at: ['digits', from],
    received: quote(digits.slice(from, to)),
    clause: CLAUSE,
  });
  if (quadrant === undefined) return failure(digitIssue('position-quadrant', {}, found(0, 1)));
  const area: GeographicArea = {
    kind: 'geographic-area',
    north: { hemisphere: quadrant[0], degrees: Number(digits.slice(1, 3)) },
    west: { hemisphere: quadrant[1], degrees: Number(digits.slice(3, 6)) },
    southward: Number(digits.slice(6, 8)),
    eastward: Number(digits.slice(8)),
  };
  if (area.north.degrees > 90) {
    return failure(rangeIssue('position-latitude-range', {}, found(1, 3)));
  }
  if (area.west.degrees > 180) {
    return failure(rangeIssue('position-longitude-range', {}, found(3, 6)));
  }
  const notices: Issue[] = [];
  if (northOf(area) - area.southward < -90) {
    notices.push(digitIssue('position-area-past-pole', {}, found(6, 8)));
  }
  if (area.southward === 0 || area.eastward === 0) {
    notices.push(digitIssue('position-area-empty', {}, found(6, 10)));
  }
  return success(area, notices);
}

/**
 * The ten digits of a geographic area, as they go into a call.
 *
 * @param area - corner and sides
 * @returns quadrant, corner and extents
 * @throws RangeError when a field is outside its range
 *
 * @example
 * ```ts
 * import { encodeArea } from 'seahail/position';
 *
 * const digits = encodeArea({
 *   kind: 'geographic-area',
 *   north: { hemisphere: 'N', degrees: 57 },
 *   west: { hemisphere: 'W', degrees: 7 },
 *   southward: 2,
 *   eastward: 3,
 * });
 * console.log(digits); // 1570070203
 * ```
 */
export function encodeArea(area: GeographicArea): string {
  if (area?.north === undefined) throw new TypeError('encodeArea: expected a geographic area');
  const quadrant = quadrantDigit(area.north.hemisphere, area.west.hemisphere);
  const digits =
    `${quadrant}${padded(area.north.degrees, 2)}${padded(area.west.degrees, 3)}` +
    `${padded(area.southward, 2)}${padded(area.eastward, 2)}`;
  const read = decodeArea(digits);
  if (!read.ok) throw new RangeError(read.issues[0].message);
  return digits;
}

/** The edges of an area as a box, cut off at the south pole. */
export function areaBox(area: GeographicArea): GeoBox {
  const north = northOf(area);
  const west = (area.west.hemisphere === 'E' ? area.west.degrees : -area.west.degrees) + 0;
  return boxBetween(Math.max(-90, north - area.southward), west, north, west + area.eastward);
}

/** Whether a place lies in an area or on its edge, also across the 180th meridian. */
export function areaContains(area: GeographicArea, place: Coordinates): boolean {
  return boxContains(areaBox(area), place);
}

function northOf({ north }: GeographicArea): number {
  return (north.hemisphere === 'N' ? north.degrees : -north.degrees) + 0;
}
