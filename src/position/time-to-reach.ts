import { want } from '../result/internal.ts';
import type { Coordinates } from './coordinates.ts';
import { type Current, directionOf, vectorOf } from './mover.ts';
import { rhumbLine } from './sailings.ts';

/**
 * Time to reach a place at a speed, along a held track.
 *
 * It is arithmetic on water without land, shoals or traffic.
 *
 * @param from - start
 * @param to - where to
 * @param options - `speed` through the water, knots; `current`, when there is one
 * @returns the passage; `null` when the place cannot be reached: no speed, or the current is too strong
 * @throws RangeError when coordinates are out of range or a speed is negative
 *
 * @see {@link intercept}
 * @see {@link deadReckoning}
 *
 * @example
 * ```ts
 * import { timeToReach } from 'seahail/position';
 *
 * const from = { latitude: 56.3333, longitude: -6.5 };
 * const to = { latitude: 56.4333, longitude: -6.5 };
 * const passage = timeToReach(from, to, { speed: 6, current: { set: 90, drift: 2 } });
 * console.log(Math.round((passage?.seconds ?? 0) / 60), Math.round(passage?.steer ?? 0)); // 64 341
 * ```
 */
export function timeToReach(
  from: Coordinates,
  to: Coordinates,
  options: { readonly speed: number; readonly current?: Current | undefined },
): {
  readonly seconds: number;
  /** Length over the ground, metres. */
  readonly metres: number;
  /** Degrees true over the ground; `null` when already there. */
  readonly track: number | null;
  /** Degrees true to steer through the water, which is the track when there is no current; `null` when already there. */
  readonly steer: number | null;
} | null {
  want('timeToReach', 'options with speed', options);
  const { speed, current = { set: 0, drift: 0 } } = options;
  const { metres, course: track } = rhumbLine(from, to);
  const own = vectorOf(0, speed).north;
  if (track === null) return { seconds: 0, metres: 0, track: null, steer: null };
  // The stream, turned to the track: along it, and across it to starboard. Own way must cancel what goes across.
  const stream = vectorOf(current.set - track, current.drift);
  // Just enough way to cancel the stream is enough, whatever the last bits say.
  if (Math.abs(stream.east) > own * (1 + 1e-12)) return null;
  const across = Math.min(own, Math.abs(stream.east));
  const ahead = Math.sqrt(own - across) * Math.sqrt(own + across);
  const seconds = metres / (ahead + stream.north);
  // Less way than any number can count in seconds is none.
  if (!(seconds >= 0 && Number.isFinite(seconds))) return null;
  const steer = directionOf({ east: -stream.east, north: ahead });
  return { seconds, metres, track, steer: (track + steer) % 360 };
}
