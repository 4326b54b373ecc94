import { want } from '../result/internal.ts';
import { fullAngle } from './coordinates.ts';
import { requireFinite } from './require-number.ts';

/**
 * A compass bearing or heading as a true one, or a magnetic one where `deviation` is left out: east is added, west is
 * subtracted.
 *
 * Variation is that of the place where the bearing is taken or steered, on the day: from the chart, or from a World
 * Magnetic Model. Close to the magnetic poles it means little. Deviation belongs to the compass and to the heading of
 * the vessel: take it from the deviation card for the heading she is on, not for the bearing.
 *
 * @param compass - degrees
 * @param error - variation, and deviation (0 unless stated), degrees, east positive
 * @returns degrees true, 0 up to 360
 * @throws RangeError when a number is not finite
 *
 * @see {@link trueToCompass}
 *
 * @example
 * ```ts
 * import { compassToTrue } from 'seahail/position';
 *
 * console.log(compassToTrue(120, { variation: -10, deviation: 5 })); // 115
 * console.log(compassToTrue(3, { variation: -5 })); // 358
 * ```
 */
export function compassToTrue(
  compass: number,
  error: { readonly variation: number; readonly deviation?: number | undefined },
): number {
  want('compassToTrue', 'options with variation', error);
  return turned(compass, 1, error.variation, error.deviation);
}

/**
 * A true bearing or course as a compass one, or a magnetic one where `deviation` is left out: the reverse of
 * {@link compassToTrue}.
 *
 * @param trueBearing - degrees
 * @param error - variation, and deviation (0 unless stated), degrees, east positive
 * @returns degrees by compass, 0 up to 360
 * @throws RangeError when a number is not finite
 *
 * @example
 * ```ts
 * import { trueToCompass } from 'seahail/position';
 *
 * console.log(trueToCompass(115, { variation: -10, deviation: 5 })); // 120
 * console.log(trueToCompass(358, { variation: -5 })); // 3
 * ```
 */
export function trueToCompass(
  trueBearing: number,
  error: { readonly variation: number; readonly deviation?: number | undefined },
): number {
  want('trueToCompass', 'options with variation', error);
  return turned(trueBearing, -1, error.variation, error.deviation);
}

function turned(bearing: number, sign: 1 | -1, variation: number, deviation = 0): number {
  for (const angle of [bearing, variation, deviation]) requireFinite('bearing and error', angle);
  const sum = bearing + sign * (variation + deviation);
  requireFinite('bearing and error', sum);
  return fullAngle(sum);
}
