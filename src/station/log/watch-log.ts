import type { Verdict } from '../../burst/index.ts';
import type { Call } from '../../call/index.ts';
import { guarded, writeRecords } from '../../directory/internal.ts';
import type { Coordinates } from '../../position/index.ts';
import { want } from '../../result/internal.ts';
import { LAST_INSTANT } from '../model/form.ts';
import type { StationText } from '../texts.ts';

/** One line of the watch log. An entry is never changed; a later one may correct it. */
export interface LogEntry extends Partial<Pick<StationText, 'code' | 'params'>> {
  readonly kind: 'log-entry';
  /** 1, 2, 3 …, without a gap. The order of entries, even when the clock was set back. */
  readonly number: number;
  /** Epoch milliseconds. */
  readonly at: number;
  readonly what: 'received' | 'sent' | 'done' | 'note' | 'correction';
  /** English of `code` and `params`, without a final full stop; without a code what a person wrote. */
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

/**
 * A log with more entries at its end. Existing entries are never changed.
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
export function extendWatchLog(log: readonly LogEntry[], entries: readonly LogEntry[]): readonly LogEntry[] {
  want('extendWatchLog', 'a list of log entries', log, 'map');
  want('extendWatchLog', 'a list of entries to add', entries, 'map');
  let last = log.at(-1)?.number;
  for (const { number } of entries) {
    if (last !== undefined && number !== last + 1) {
      throw new RangeError(`extendWatchLog: expected entry ${last + 1} next, got ${number}`);
    }
    last = number;
  }
  return [...log, ...entries];
}

const columns = [
  'number',
  'time',
  'what',
  'text',
  'call',
  'from',
  'to',
  'verdict',
  'latitude',
  'longitude',
  'dialogue',
  'corrects',
] as const;

/**
 * The watch log as CSV after RFC 4180, its first record the names of the columns.
 *
 * Times are UTC. Latitude and longitude are the own position at the time, degrees, north and east positive. Open
 * identities as text: a spreadsheet that reads them as numbers loses their leading zeros.
 *
 * @param log - entries in order
 * @returns the text, with CRLF after every record
 *
 * @see {@link writeLogJson}
 * @see {@link extendWatchLog}
 *
 * @example
 * ```ts
 * import { createStation, step, writeLogCsv } from 'seahail/station';
 *
 * const { effects } = step(createStation({ mmsi: null }), { kind: 'note', at: 0, text: 'Fog, 2 cables' });
 * const log = effects.flatMap((effect) => (effect.kind === 'log' ? [effect.entry] : []));
 * console.log(writeLogCsv(log).split('\r\n')[1]); // 1,1970-01-01T00:00:00.000Z,note,"Fog, 2 cables",,,,,,,,
 * ```
 */
export function writeLogCsv(log: readonly LogEntry[]): string {
  want('writeLogCsv', 'a list of log entries', log, 'map');
  return writeRecords([columns, ...log.map(recordOf)]);
}

/**
 * The watch log as JSON text, every field of every entry kept.
 *
 * @param log - entries in order
 * @returns an array of entries, one on each line
 *
 * @see {@link writeLogCsv}
 *
 * @example
 * ```ts
 * import { writeLogJson } from 'seahail/station';
 *
 * console.log(writeLogJson([]).trim()); // []
 * ```
 */
export function writeLogJson(log: readonly LogEntry[]): string {
  want('writeLogJson', 'a list of log entries', log, 'map');
  return log.length === 0 ? '[]\n' : `[\n${log.map((entry) => JSON.stringify(entry)).join(',\n')}\n]\n`;
}

function recordOf(entry: LogEntry): readonly string[] {
  const { call, position } = entry;
  return [
    `${entry.number}`,
    timeOf(entry.at),
    entry.what,
    guarded(entry.text),
    call?.kind ?? '',
    guarded(call?.from ?? ''),
    guarded(addressOf(entry)),
    entry.verdict ?? '',
    position === null ? '' : position.latitude.toFixed(6),
    position === null ? '' : position.longitude.toFixed(6),
    `${entry.dialogue ?? ''}`,
    `${entry.corrects ?? ''}`,
  ];
}

function addressOf({ call }: LogEntry): string {
  const to = call?.to ?? null;
  if (to === null) return '';
  return 'mmsi' in to ? (to.mmsi ?? '') : to.kind;
}

/** ISO 8601; an instant beyond what a calendar can hold stays a number. */
function timeOf(at: number): string {
  return Math.abs(at) <= LAST_INSTANT ? new Date(at).toISOString() : `${at}`;
}
