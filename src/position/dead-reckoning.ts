import { want } from '../result/internal.ts';
import { type Coordinates, requireCoordinates } from './coordinates.ts';
import { destination } from './geodesic.ts';
import { type Current, overGround } from './mover.ts';
import { requireFinite } from './require-number.ts';
import { alongRhumb } from './sailings.ts';
import { metresRun } from './units.ts';

/**
 * Where a vessel is after a run of course and speed, with a current when one is given (an estimated position then).
 *
 * A held course is a rhumb line. It parts from the geodesic by about D² tan L / 2R: 0.6 miles in 50 at latitude 60°.
 *
 * @param from - the last known place
 * @param run - course, speed, time and current
 * @returns the place; longitude from -180 to 180
 * @throws RangeError when coordinates are out of range, a number is not finite or the line is neither of the two
 *
 * @example
 * ```ts
 * import { deadReckoning, formatPosition } from 'seahail/position';
 *
 * const merrow = { latitude: 56.3333, longitude: -6.5 };
 * console.log(formatPosition(deadReckoning(merrow, { course: 0, speed: 6, seconds: 1200 }))); // 56°21.99′ N 006°30.00′ W
 * ```
 */
export function deadReckoning(
  from: Coordinates,
  run: {
    /** Degrees true. */
    readonly course: number;
    /** Knots. */
    readonly speed: number;
    /** Seconds run; negative asks where she came from. */
    readonly seconds: number;
    /** Makes course and speed those through the water. */
    readonly current?: Current | undefined;
    /** `'rhumb'` unless stated: the course is held. `'geodesic'`: the shortest line that starts with this course. */
    readonly line?: 'rhumb' | 'geodesic' | undefined;
  },
): Coordinates {
  want('deadReckoning', 'a run with course, speed and seconds', run);
  const { seconds, line = 'rhumb' } = run;
  requireFinite('seconds', seconds);
  if (line !== 'rhumb' && line !== 'geodesic') {
    throw new RangeError(`line: expected rhumb or geodesic, got ${line}`);
  }
  const track = overGround(run);
  const { latitude, longitude } = requireCoordinates(from);
  if (track.course === null || seconds === 0) return { latitude: latitude + 0, longitude: longitude + 0 };
  const metres = metresRun(track.speed, Math.abs(seconds));
  const course = seconds < 0 ? track.course + 180 : track.course;
  return line === 'rhumb' ? alongRhumb(from, course, metres) : destination(from, course, metres);
}
