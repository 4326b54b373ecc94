import { type Mmsi, usesOf } from '../identity/index.ts';
import { classify } from '../identity/internal.ts';
import { quote } from '../result/index.ts';
import type {
  Directory,
  ExtraField,
  KnownStation,
  StationOrigin,
  StationOrigins,
  StationUpdate,
} from './known-station.ts';

/**
 * A directory holding what the updates tell.
 *
 * @param updates - as {@link remember} takes them
 * @returns the directory; empty without updates
 * @throws RangeError and TypeError as {@link remember}
 *
 * @see {@link readDirectoryJson}
 *
 * @example
 * ```ts
 * import { createDirectory } from 'seahail/directory';
 *
 * const directory = createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Tern of Ardle' });
 * console.log(directory.stations[0]?.name); // Tern of Ardle
 * ```
 */
export function createDirectory(updates: StationUpdate | readonly StationUpdate[] = []): Directory {
  return remember({ kind: 'directory', stations: [] }, updates);
}

/**
 * The directory with what was learnt added. A text replaces one of the same or a less trusted origin, so what a
 * person typed stays until a person types again.
 *
 * @param directory - stays as it is
 * @param updates - one, or a list: a station heard, typed, read from a file
 * @returns the new directory; the same object where nothing is new
 * @throws RangeError when an identity is no text of an assigned form, a group is not the identity of a group, an
 * origin is none of the four, or a time is no whole number of epoch milliseconds
 * @throws TypeError when a name, call sign, note or extra field is not text
 *
 * @see {@link mergeDirectories}
 * @see {@link forget}
 * @see {@link trimDirectory}
 *
 * @example
 * ```ts
 * import { createDirectory, remember } from 'seahail/directory';
 *
 * const typed = createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Tern' });
 * const later = remember(typed, { mmsi: '232999142', origin: 'ais', name: 'TERN OF ARDLE', callSign: '2ZZT4' });
 * console.log(later.stations[0]?.name, later.stations[0]?.callSign); // Tern 2ZZT4
 * ```
 */
export function remember(directory: Directory, updates: StationUpdate | readonly StationUpdate[]): Directory {
  const stations = new Map<string, KnownStation>(
    directory.stations.map((station) => [station.mmsi, station]),
  );
  let changed = false;
  for (const update of [updates].flat()) {
    const before = stations.get(update.mmsi);
    const after = updated(before, update);
    if (JSON.stringify(before) === JSON.stringify(after)) continue;
    stations.set(after.mmsi, after);
    changed = true;
  }
  if (!changed) return directory;
  return { kind: 'directory', stations: [...stations.values()].sort((a, b) => (a.mmsi < b.mmsi ? -1 : 1)) };
}

/** From the most trusted to the least. */
const trust: readonly StationOrigin[] = ['typed', 'imported', 'ais', 'heard'];

/** Whether knowledge of one origin may stand in the place of knowledge of another. */
function mayReplace(origin: StationOrigin, present: StationOrigin | undefined): boolean {
  return present === undefined || trust.indexOf(origin) <= trust.indexOf(present);
}

function updated(before: KnownStation | undefined, update: StationUpdate): KnownStation {
  const identity = classify(update.mmsi);
  if (identity === undefined)
    throw new RangeError(`remember: identity of an assigned form wanted, given ${told(update.mmsi)}`);
  const { origin } = update;
  if (!trust.includes(origin))
    throw new RangeError(`remember: origin ${trust.join(', ')} wanted, given ${told(origin)}`);
  const entry = mayReplace(origin, before?.origins.entry) ? origin : (before?.origins.entry ?? origin);
  const texts: { name?: string; callSign?: string; notes?: string } = {};
  const origins: { -readonly [Field in keyof StationOrigins]: StationOrigins[Field] } = { entry };
  for (const field of ['name', 'callSign', 'notes'] as const) {
    const given = update[field];
    const text = given === undefined ? '' : field === 'notes' ? manyLines(given) : oneLine(given);
    const said = text !== '' || (given !== undefined && origin === 'typed');
    const present = before?.[field];
    if (said && mayReplace(origin, before?.origins[field])) {
      if (text === '') continue;
      texts[field] = field === 'callSign' ? text.toUpperCase() : text;
      origins[field] = origin;
    } else if (present !== undefined) {
      texts[field] = present;
      origins[field] = before?.origins[field] ?? origin;
    }
  }
  const heardAt = latest(before?.heardAt, update.heardAt);
  const calledAt = latest(before?.calledAt, update.calledAt);
  const extra = extraOf(before?.extra, update.extra);
  return {
    mmsi: identity.mmsi,
    kind: identity.kind,
    ...texts,
    groups: groupsOf(before?.groups, update.groups),
    origins,
    ...(heardAt !== undefined && { heardAt }),
    ...(calledAt !== undefined && { calledAt }),
    ...(extra.length > 0 && { extra }),
  };
}

function groupsOf(before: readonly Mmsi[] = [], added: readonly string[] = []): readonly Mmsi[] {
  const groups = new Set(before);
  for (const digits of added) {
    const group = classify(digits);
    if (group === undefined || !usesOf(group).group)
      throw new RangeError('remember: identity of a group wanted');
    groups.add(group.mmsi);
  }
  return [...groups].sort();
}

function latest(before: number | undefined, added: number | undefined): number | undefined {
  if (added === undefined) return before;
  if (!isInstant(added)) throw new RangeError('remember: epoch milliseconds wanted');
  return before === undefined ? added : Math.max(before, added);
}

/** Whether a value is whole epoch milliseconds in the range of dates. */
export function isInstant(value: unknown): value is number {
  return Number.isInteger(value) && Math.abs(value as number) <= 8.64e15;
}

function extraOf(
  before: readonly ExtraField[] = [],
  added: readonly ExtraField[] = [],
): readonly ExtraField[] {
  const fields = new Map(before.map(({ label, text }) => [label, text]));
  for (const field of added) {
    const label = oneLine(field.label);
    const text = manyLines(field.text);
    if (label !== '' && text !== '') fields.set(label, text);
  }
  return [...fields].sort(([a], [b]) => (a < b ? -1 : 1)).map(([label, text]) => ({ label, text }));
}

/** What was given, for a message: text in quotes, anything else by its type. */
function told(value: unknown): string {
  return typeof value === 'string' ? quote(value) : `a value of type ${typeof value}`;
}

function oneLine(text: string): string {
  return wanted(text)
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .trim();
}

function manyLines(text: string): string {
  return wanted(text)
    .replace(/\r\n?/g, '\n')
    .replace(/(?!\n)\p{Cc}/gu, ' ')
    .trim();
}

function wanted(text: string): string {
  if (typeof text !== 'string') throw new TypeError(`remember: text wanted, given ${told(text)}`);
  return text;
}
