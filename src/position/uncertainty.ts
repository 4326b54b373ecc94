import { boxOf, centreOf, type RoundingAssumption } from './box.ts';
import { rangeToBox } from './box-range.ts';
import type { ReportedPosition } from './reported-position.ts';

/**
 * How far from the middle of its box the true place of a reported position may be: half a diagonal.
 *
 * @param position - what a call carried
 * @param assumption - how the digits were made, `'truncated'` unless stated
 * @returns metres, for example for the `u` of {@link toGeoUri}
 *
 * @example
 * ```ts
 * import { centreOf, decodePosition, toGeoUri, uncertaintyOf } from 'seahail/position';
 * import { valueOf } from 'seahail/result';
 *
 * const position = valueOf(decodePosition('1562000630'));
 * if (position.kind === 'reported-position') {
 *   console.log(toGeoUri(centreOf(position), { uncertainty: uncertaintyOf(position) })); // geo:56.341667,-6.508333;u=1061.5
 * }
 * ```
 */
export function uncertaintyOf(
  position: ReportedPosition,
  assumption: RoundingAssumption = 'truncated',
): number {
  return rangeToBox(centreOf(position, assumption), boxOf(position, assumption)).greatest;
}
