import { want } from '../result/internal.ts';
import { requireFinite, requireNotNegative, requireWhole } from './require-number.ts';

/** A time of day without a date, UTC, as calls carry it. */
export interface TimeOfDay {
  /** 0 to 23. */
  readonly hour: number;
  /** 0 to 59. */
  readonly minute: number;
}

const DAY = 86_400_000;
const MINUTE = 60_000;

/**
 * Gives a time of day its date: the latest such minute that is not later than the receipt, clocks being doubtful.
 *
 * A position and time may be keyed in by hand and stay in a set for almost a day, so an age of many hours is possible
 * and is told, not hidden.
 *
 * @param time - hour and minute, UTC, of the position
 * @param receivedAt - instant of receipt, epoch milliseconds
 * @param options - `clockDoubtSeconds`: by how many seconds the two clocks may differ; 300 unless stated
 * @returns the instant and its age at receipt
 * @throws RangeError when the hour or minute is no time of day or an instant is not finite
 *
 * @example
 * ```ts
 * import { resolveTime } from 'seahail/position';
 *
 * const received = Date.UTC(2026, 5, 1, 0, 3);
 * const fix = resolveTime({ hour: 23, minute: 49 }, received);
 * console.log(new Date(fix.at).toISOString()); // 2026-05-31T23:49:00.000Z
 * console.log(fix.age / 60); // 14
 * ```
 */
export function resolveTime(
  time: TimeOfDay,
  receivedAt: number,
  options: { readonly clockDoubtSeconds?: number | undefined } = {},
): {
  /** Start of that minute, epoch milliseconds. */
  readonly at: number;
  /** Seconds from then to the receipt; zero when the time lies in the future by no more than the clock doubt. */
  readonly age: number;
} {
  want('resolveTime', 'a time of day', time, 'hour');
  const { hour, minute } = time;
  const { clockDoubtSeconds: doubt = 300 } = options;
  requireWhole('hour', hour, 23);
  requireWhole('minute', minute, 59);
  requireFinite('receivedAt', receivedAt);
  requireNotNegative('clockDoubtSeconds', doubt);
  const latest = receivedAt + doubt * 1000;
  const midnight = Math.floor(latest / DAY) * DAY;
  const today = midnight + (hour * 60 + minute) * MINUTE;
  const at = today <= latest ? today : today - DAY;
  return { at, age: Math.max(0, receivedAt - at) / 1000 };
}
