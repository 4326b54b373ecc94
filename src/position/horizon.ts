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
 * How far apart two antennas may be before the Earth blocks the line between them, in a standard atmosphere; or, by sight, how
 * far away the sea horizon is, or an object that rises above it.
 *
 * It is not the range of a radio: that may be less with little power and more when the air bends the waves.
 *
 * @param height - of an antenna or an eye above the sea, metres
 * @param other - of the other antenna, or of the object seen, metres; 0 unless stated
 * @param by - `'radio'` unless stated, or `'sight'`
 * @returns metres
 * @throws RangeError when a height is negative or not finite
 *
 * Source: US Federal Standard 1037C, radio horizon range: 2.23 (√h1 + √h2) miles; American Practical Navigator, 1995
 * and 2002 editions, by sight: 2.07 √h miles.
 *
 * @see {@link estimateLink}
 *
 * @example
 * ```ts
 * import { horizonRange } from 'seahail/position';
 *
 * console.log((horizonRange(16, 4) / 1852).toFixed(2)); // 13.38
 * console.log((horizonRange(2, 0, 'sight') / 1852).toFixed(2)); // 2.93
 * ```
 */
export function horizonRange(height: number, other = 0, by: 'radio' | 'sight' = 'radio'): number {
  return (by === 'radio' ? RADIO : SIGHT) * (rootOf(height) + rootOf(other)) * MILE;
}

function rootOf(height: number): number {
  requireNotNegative('height', height);
  return Math.sqrt(height);
}
