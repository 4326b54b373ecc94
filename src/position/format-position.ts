import { requireOptions } from '../result/internal.ts';
import { type Coordinates, requireCoordinates } from './coordinates.ts';
import { requireWhole } from './require-number.ts';

const DIGITS = { 'degrees-minutes': 2, 'degrees-minutes-seconds': 1, 'decimal-degrees': 6 } as const;
/** How many of the last part make a degree. */
const PARTS = { 'degrees-minutes': 60, 'degrees-minutes-seconds': 3600, 'decimal-degrees': 1 } as const;

/**
 * Writes a position for people: degrees and decimal minutes with hemisphere letters unless asked otherwise.
 *
 * What it writes is read back by {@link parsePosition} to within half a unit of the last decimal.
 *
 * @param coordinates - the place
 * @param format - style and decimals
 * @returns text such as `56°20.33′ N 006°30.12′ W`
 * @throws RangeError when the coordinates are out of range or `digits` is not 0 to 9
 *
 * @see {@link formatReportedPosition}
 *
 * @example
 * ```ts
 * import { formatPosition } from 'seahail/position';
 *
 * const place = { latitude: 56.3388333, longitude: -6.502 };
 * console.log(formatPosition(place)); // 56°20.33′ N 006°30.12′ W
 * console.log(formatPosition(place, { digits: 3 })); // 56°20.330′ N 006°30.120′ W
 * console.log(formatPosition(place, { style: 'degrees-minutes-seconds' })); // 56°20′19.8″ N 006°30′07.2″ W
 * console.log(formatPosition(place, { style: 'decimal-degrees' })); // 56.338833° N 6.502000° W
 * ```
 */
export function formatPosition(
  coordinates: Coordinates,
  format: {
    /** `'degrees-minutes'` unless stated: the way of charts and voice. */
    readonly style?: ('degrees-minutes' | 'degrees-minutes-seconds' | 'decimal-degrees') | undefined;
    /** Decimals of the last part, 0 to 9. Unless stated: 2 of a minute, 1 of a second, 6 of a degree. */
    readonly digits?: number | undefined;
  } = {},
): string {
  const { latitude, longitude } = requireCoordinates(coordinates);
  requireOptions('formatPosition', format, ['style', 'digits']);
  const style = format.style ?? 'degrees-minutes';
  if (!Object.hasOwn(DIGITS, style)) {
    throw new RangeError(`style: expected a known style, got ${String(style)}`);
  }
  const digits = format.digits ?? DIGITS[style];
  requireWhole('digits', digits, 9);
  const ns = latitude < 0 ? 'S' : 'N';
  const ew = longitude < 0 ? 'W' : 'E';
  return `${written(latitude, 2, style, digits)} ${ns} ${written(longitude, 3, style, digits)} ${ew}`;
}

function written(
  degrees: number,
  width: number,
  style: NonNullable<NonNullable<Parameters<typeof formatPosition>[1]>['style']>,
  digits: number,
): string {
  const scale = 10 ** digits;
  const perDegree = PARTS[style] * scale;
  // Rounded once, as a whole number of the last decimal, so that 59.996' becomes the next degree and never 60.00'.
  const units = Math.round(Math.abs(degrees) * perDegree);
  if (style === 'decimal-degrees') return `${(units / scale).toFixed(digits)}°`;
  const whole = String(Math.floor(units / perDegree)).padStart(width, '0');
  const rest = units % perDegree;
  if (style === 'degrees-minutes') return `${whole}°${part(rest, scale, digits)}′`;
  const minutes = Math.floor(rest / (60 * scale));
  return `${whole}°${String(minutes).padStart(2, '0')}′${part(rest % (60 * scale), scale, digits)}″`;
}

function part(units: number, scale: number, digits: number): string {
  return (units / scale).toFixed(digits).padStart(digits === 0 ? 2 : digits + 3, '0');
}
