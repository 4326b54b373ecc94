import { fullAngle } from './coordinates.ts';
import { requireFinite } from './require-number.ts';

/**
 * A magnetic bearing as a true one.
 *
 * Variation is that of the place where the bearing is taken or steered, on the day: from the chart, or from a World
 * Magnetic Model. Close to the magnetic poles it means little.
 *
 * @param magnetic - degrees
 * @param variation - degrees, east positive
 * @returns degrees true, 0 up to 360
 * @throws RangeError when a number is not finite
 *
 * @example
 * ```ts
 * import { magneticToTrue } from 'seahail/position';
 *
 * console.log(magneticToTrue(3, -5)); // 358
 * ```
 */
export function magneticToTrue(magnetic: number, variation: number): number {
  return turned(magnetic, 1, variation);
}

/**
 * A true bearing as a magnetic one: the reverse of {@link magneticToTrue}.
 *
 * @param trueBearing - degrees
 * @param variation - degrees, east positive
 * @returns degrees magnetic, 0 up to 360
 * @throws RangeError when a number is not finite
 *
 * @example
 * ```ts
 * import { trueToMagnetic } from 'seahail/position';
 *
 * console.log(trueToMagnetic(358, -5)); // 3
 * ```
 */
export function trueToMagnetic(trueBearing: number, variation: number): number {
  return turned(trueBearing, -1, variation);
}

/**
 * A compass bearing or heading as a magnetic one.
 *
 * Deviation belongs to the compass and to the heading of the vessel: take it from the deviation card for the heading
 * she is on, not for the bearing.
 *
 * @param compass - degrees
 * @param deviation - degrees, east positive
 * @returns degrees magnetic, 0 up to 360
 * @throws RangeError when a number is not finite
 *
 * @example
 * ```ts
 * import { compassToMagnetic } from 'seahail/position';
 *
 * console.log(compassToMagnetic(100, -3)); // 97
 * ```
 */
export function compassToMagnetic(compass: number, deviation: number): number {
  return turned(compass, 1, deviation);
}

/**
 * A magnetic bearing as a compass one: the reverse of {@link compassToMagnetic}.
 *
 * @param magnetic - degrees
 * @param deviation - degrees, east positive
 * @returns degrees by compass, 0 up to 360
 * @throws RangeError when a number is not finite
 *
 * @example
 * ```ts
 * import { magneticToCompass } from 'seahail/position';
 *
 * console.log(magneticToCompass(97, -3)); // 100
 * ```
 */
export function magneticToCompass(magnetic: number, deviation: number): number {
  return turned(magnetic, -1, deviation);
}

/** What stands between a compass and true north. */
export interface CompassError {
  /** Degrees, east positive. */
  readonly variation: number;
  /** Degrees, east positive. */
  readonly deviation: number;
}

/**
 * A compass bearing or heading as a true one: east is added, west is taken away.
 *
 * @param compass - degrees
 * @param error - variation and deviation, degrees, east positive
 * @returns degrees true, 0 up to 360
 * @throws RangeError when a number is not finite
 *
 * @example
 * ```ts
 * import { compassToTrue } from 'seahail/position';
 *
 * console.log(compassToTrue(120, { variation: -10, deviation: 5 })); // 115
 * ```
 */
export function compassToTrue(compass: number, { variation, deviation }: CompassError): number {
  return turned(compass, 1, variation, deviation);
}

/**
 * A true bearing or course as a compass one: the reverse of {@link compassToTrue}.
 *
 * @param trueBearing - degrees
 * @param error - variation and deviation, degrees, east positive
 * @returns degrees by compass, 0 up to 360
 * @throws RangeError when a number is not finite
 *
 * @example
 * ```ts
 * import { trueToCompass } from 'seahail/position';
 *
 * console.log(trueToCompass(115, { variation: -10, deviation: 5 })); // 120
 * ```
 */
export function trueToCompass(trueBearing: number, { variation, deviation }: CompassError): number {
  return turned(trueBearing, -1, variation, deviation);
}

function turned(bearing: number, sign: 1 | -1, variation: number, deviation = 0): number {
  for (const angle of [bearing, variation, deviation]) requireFinite('bearing and error', angle);
  const sum = bearing + sign * (variation + deviation);
  requireFinite('bearing and error', sum);
  return fullAngle(sum);
}
