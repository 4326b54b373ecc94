import { requireNotNegative } from './require-number.ts';
import { MILE } from './units.ts';

/** Miles to a root of a metre, radio: US Federal Standard 1037C, "radio horizon range", an Earth of 4/3 its radius. */
const RADIO = 2.23;
/**
 * Miles to a root of a metre, sight: American Practical Navigator, 1995 and 2002. The 1.17 for feet in the same books
 * comes to 2.12, and other tables have 2.08: refraction is not the same every day.
 */
const SIGHT = 2.07;

/**
 * How far apart two antennas may be before the Earth stands between them, in a standard atmosphere.
 *
 * It is not the range of a radio: that may be less with little power and more when the air bends the waves.
 *
 * @param height - of one antenna above the sea, metres
 * @param other - of the other, metres
 * @returns metres
 * @throws RangeError when a height is negative or not finite
 *
 * Source: US Federal Standard 1037C, radio horizon range: 2.23 (√h1 + √h2) miles.
 *
 * @see {@link estimateLink}
 * @see {@link visibleHorizon}
 *
 * @example
 * ```ts
 * import { radioHorizon } from 'seahail/position';
 *
 * console.log((radioHorizon(16, 4) / 1852).toFixed(2)); // 13.38
 * ```
 */
export function radioHorizon(height: number, other: number): number {
  return RADIO * (rootOf(height) + rootOf(other)) * MILE;
}

/**
 * How far the sea horizon is, or an object that rises above it.
 *
 * @param eye - height of eye above the sea, metres
 * @param object - height of the object above the sea, metres; 0 unless stated
 * @returns metres
 * @throws RangeError when a height is negative or not finite
 *
 * Source: American Practical Navigator, 1995 and 2002 editions: 2.07 √h miles.
 *
 * @example
 * ```ts
 * import { visibleHorizon } from 'seahail/position';
 *
 * console.log((visibleHorizon(2) / 1852).toFixed(2)); // 2.93
 * ```
 */
export function visibleHorizon(eye: number, object = 0): number {
  return SIGHT * (rootOf(eye) + rootOf(object)) * MILE;
}

function rootOf(height: number): number {
  requireNotNegative('height', height);
  return Math.sqrt(height);
}
