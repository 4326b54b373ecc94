import { type Coordinates, requireCoordinates } from './coordinates.ts';
import type { ReportedPosition } from './reported-position.ts';

/**
 * The report a set would send of its own fix: minutes are cut off, never rounded, so that decimals can follow.
 *
 * @param coordinates - the fix
 * @param options - `enhanced`: keep ten-thousandths of a minute, for calls with an expansion
 * @returns the position as a call carries it; a latitude or longitude of exactly zero counts as north or east
 * @throws RangeError when the coordinates are out of range
 *
 * Source: ITU-R M.493-16 (whole minutes) and M.821 (four decimals), from memory.
 *
 * @see {@link encodePosition}
 * @see {@link decodePosition}
 *
 * @example
 * ```ts
 * import { formatReportedPosition, toReportedPosition } from 'seahail/position';
 *
 * const fix = { latitude: 56.3499, longitude: -6.502 };
 * console.log(formatReportedPosition(toReportedPosition(fix))); // 56°20′ N 006°30′ W
 * console.log(formatReportedPosition(toReportedPosition(fix, { enhanced: true }))); // 56°20.9940′ N 006°30.1200′ W
 * ```
 */
export function toReportedPosition(
  coordinates: Coordinates,
  options: { readonly enhanced?: boolean | undefined } = {},
): ReportedPosition {
  const { latitude, longitude } = requireCoordinates(coordinates);
  const ns = cut(latitude);
  const ew = cut(longitude);
  const whole: ReportedPosition = {
    kind: 'reported-position',
    latitude: { hemisphere: latitude < 0 ? 'S' : 'N', degrees: ns.degrees, minutes: ns.minutes },
    longitude: { hemisphere: longitude < 0 ? 'W' : 'E', degrees: ew.degrees, minutes: ew.minutes },
  };
  return options.enhanced ? { ...whole, fraction: { latitude: ns.fraction, longitude: ew.fraction } } : whole;
}

function cut(degrees: number): { degrees: number; minutes: number; fraction: number } {
  // A double of 180 degrees is good to 2e-8 of a ten-thousandth of a minute. Without the small
  // allowance 20.33' typed by a person would be cut to 20.3299'.
  const units = Math.floor(Math.abs(degrees) * 600_000 + 1e-6);
  return {
    degrees: Math.floor(units / 600_000),
    minutes: Math.floor(units / 10_000) % 60,
    fraction: units % 10_000,
  };
}
