import type { Verdict } from '../../burst/index.ts';
import type { Call } from '../../call/index.ts';
import type { Coordinates } from '../../position/index.ts';

/** One line of the watch log. An entry is never changed; a later one may correct it. */
export interface LogEntry {
  readonly kind: 'log-entry';
  /** 1, 2, 3 …, without a gap. The order of entries, even when the clock was set back. */
  readonly number: number;
  /** Epoch milliseconds. */
  readonly at: number;
  readonly what: 'heard' | 'sent' | 'done' | 'note' | 'correction';
  /** English, without a final full stop. */
  readonly text: string;
  /** The dialogue it belongs to. */
  readonly dialogue: number | null;
  /** Own position at the time, as last known; `null` when unknown. */
  readonly position: Coordinates | null;
  readonly call?: Call;
  readonly verdict?: Verdict;
  /** Number of the entry that this one corrects. */
  readonly corrects?: number;
}

/** The watch log: entries in the order of their numbers. */
export type WatchLog = readonly LogEntry[];

/**
 * A log with more entries at its end. Nothing that stands in it is changed.
 *
 * @param log - the log so far; `[]` to begin one
 * @param entries - the entries of `log` effects, in order
 * @returns a new log
 * @throws RangeError when an entry's number is not the next one: an entry is missing, or would be written twice
 *
 * @see {@link writeLogCsv}
 * @see {@link writeLogJson}
 *
 * @example
 * ```ts
 * import { createStation, extendWatchLog, step } from 'seahail/station';
 *
 * const { effects } = step(createStation({ mmsi: '232999871' }), { kind: 'note', at: 0, text: 'Watch begins' });
 * const log = extendWatchLog([], effects.flatMap((effect) => (effect.kind === 'log' ? [effect.entry] : [])));
 * console.log(log[0]?.number, log[0]?.text); // 1 Watch begins
 * ```
 */
export function extendWatchLog(log: WatchLog, entries: readonly LogEntry[]): WatchLog {
  let last = log.at(-1)?.number;
  for (const { number } of entries) {
    if (last !== undefined && number !== last + 1) {
      throw new RangeError(`extendWatchLog: entry ${last + 1} is needed next, got ${number}`);
    }
    last = number;
  }
  return [...log, ...entries];
}
