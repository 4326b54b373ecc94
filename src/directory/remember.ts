import { type Mmsi, usesOf } from '../identity/index.ts';
import { classify } from '../identity/internal.ts';
import { quote, want } from '../result/internal.ts';
import type {
  Directory,
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
  want('remember', 'a directory', directory, 'stations');
  const { stations } = directory;
  const placeOf = placesIn(stations);
  const drafts = new Map<string, Draft>();
  for (const update of [updates].flat()) {
    want('remember', 'an update of a station', update);
    const draft = drafts.get(update.mmsi) ?? draftOf(update, stations[placeOf(update.mmsi) ?? -1]);
    learn(draft, update);
    drafts.set(draft.mmsi, draft);
  }
  let changed: KnownStation[] | undefined;
  const added: KnownStation[] = [];
  for (const draft of drafts.values()) {
    const after = stationOf(draft);
    if (JSON.stringify(draft.before) === JSON.stringify(after)) continue;
    changed ??= stations.slice();
    const place = placeOf(draft.mmsi);
    if (place === undefined) added.push(after);
    else changed[place] = after;
  }
  return changed === undefined
    ? directory
    : { kind: 'directory', stations: inOrder(changed, added, ordered.has(stations)) };
}

/** Lists made here, which are in order of digits: a station in them is found without reading all of them. */
const ordered: WeakSet<readonly KnownStation[]> = /* @__PURE__ */ new WeakSet();

/** How to find the place of an identity in a list. */
function placesIn(stations: readonly KnownStation[]): (mmsi: string) => number | undefined {
  if (!ordered.has(stations)) {
    const places = new Map<string, number>(stations.map(({ mmsi }, place) => [mmsi, place]));
    return (mmsi) => places.get(mmsi);
  }
  return (mmsi) => {
    const place = firstFrom(stations, mmsi);
    return stations[place]?.mmsi === mmsi ? place : undefined;
  };
}

/** Place of the first station whose digits are not below these. */
function firstFrom(stations: readonly KnownStation[], mmsi: string): number {
  let [from, to] = [0, stations.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((stations[middle] as KnownStation).mmsi < mmsi) from = middle + 1;
    else to = middle;
  }
  return from;
}

function inOrder(
  changed: KnownStation[],
  added: readonly KnownStation[],
  isOrdered: boolean,
): readonly KnownStation[] {
  if (!isOrdered || added.length > 1) {
    for (const one of added) changed.push(one);
    changed.sort((a, b) => (a.mmsi < b.mmsi ? -1 : 1));
  } else for (const one of added) changed.splice(firstFrom(changed, one.mmsi), 0, one);
  ordered.add(changed);
  return changed;
}

/** From the most trusted to the least. */
const trust: readonly StationOrigin[] = ['typed', 'imported', 'ais', 'heard'];

/** Whether knowledge of one origin may stand in the place of knowledge of another. */
function mayReplace(origin: StationOrigin, present: StationOrigin | undefined): boolean {
  return present === undefined || trust.indexOf(origin) <= trust.indexOf(present);
}

/** A station while updates come in: each costs what it brings, however much is known already. */
interface Draft {
  readonly before: KnownStation | undefined;
  readonly mmsi: Mmsi;
  readonly kind: KnownStation['kind'];
  entry: StationOrigin;
  readonly texts: Map<TextField, { readonly text: string; readonly origin: StationOrigin }>;
  readonly groups: Set<Mmsi>;
  readonly extra: Map<string, string>;
  heardAt: number | undefined;
  calledAt: number | undefined;
}

const TEXT_FIELDS = ['name', 'callSign', 'notes'] as const;
type TextField = (typeof TEXT_FIELDS)[number];

function draftOf({ mmsi, origin }: StationUpdate, before: KnownStation | undefined): Draft {
  const identity = classify(mmsi);
  if (identity === undefined)
    throw new RangeError(`mmsi: expected an identity of an assigned form, got ${told(mmsi)}`);
  const entry = before?.origins.entry ?? origin;
  const texts: Draft['texts'] = new Map();
  for (const field of TEXT_FIELDS) {
    const text = before?.[field];
    if (text !== undefined) texts.set(field, { text, origin: before?.origins[field] ?? entry });
  }
  return {
    before,
    mmsi: identity.mmsi,
    kind: identity.kind,
    entry,
    texts,
    groups: new Set(before?.groups),
    extra: new Map(before?.extra?.map(({ label, text }) => [label, text])),
    heardAt: before?.heardAt,
    calledAt: before?.calledAt,
  };
}

function learn(draft: Draft, update: StationUpdate): void {
  const { origin } = update;
  if (!trust.includes(origin))
    throw new RangeError(`origin: expected ${trust.join(', ')}, got ${told(origin)}`);
  if (mayReplace(origin, draft.entry)) draft.entry = origin;
  for (const field of TEXT_FIELDS) {
    const given = update[field];
    if (given === undefined) continue;
    const text = field === 'notes' ? manyLines(given) : oneLine(given);
    if ((text === '' && origin !== 'typed') || !mayReplace(origin, draft.texts.get(field)?.origin)) continue;
    if (text === '') draft.texts.delete(field);
    else draft.texts.set(field, { text: field === 'callSign' ? text.toUpperCase() : text, origin });
  }
  for (const digits of update.groups ?? []) {
    const group = classify(digits);
    if (group === undefined || !usesOf(group).group)
      throw new RangeError(`groups: expected the identity of a group, got ${told(digits)}`);
    draft.groups.add(group.mmsi);
  }
  for (const field of update.extra ?? []) {
    const label = oneLine(field.label);
    const text = manyLines(field.text);
    if (label !== '' && text !== '') draft.extra.set(label, text);
  }
  draft.heardAt = latest(draft.heardAt, update.heardAt);
  draft.calledAt = latest(draft.calledAt, update.calledAt);
}

function stationOf(draft: Draft): KnownStation {
  const { mmsi, kind, groups, extra, heardAt, calledAt } = draft;
  const texts: { [Field in TextField]?: string } = {};
  const origins: { -readonly [Field in keyof StationOrigins]: StationOrigins[Field] } = {
    entry: draft.entry,
  };
  for (const field of TEXT_FIELDS) {
    const known = draft.texts.get(field);
    if (known === undefined) continue;
    texts[field] = known.text;
    origins[field] = known.origin;
  }
  return {
    mmsi,
    kind,
    ...texts,
    groups: [...groups].sort(),
    origins,
    ...(heardAt !== undefined && { heardAt }),
    ...(calledAt !== undefined && { calledAt }),
    ...(extra.size > 0 && {
      extra: [...extra].sort(([a], [b]) => (a < b ? -1 : 1)).map(([label, text]) => ({ label, text })),
    }),
  };
}

function latest(before: number | undefined, added: number | undefined): number | undefined {
  if (added === undefined) return before;
  if (!isInstant(added))
    throw new RangeError(`heardAt, calledAt: expected whole epoch milliseconds, got ${told(added)}`);
  return before === undefined ? added : Math.max(before, added);
}

/** Whether a value is whole epoch milliseconds in the range of dates. */
export function isInstant(value: unknown): value is number {
  return Number.isInteger(value) && Math.abs(value as number) <= 8.64e15;
}

/** What was given, for a message: text in quotes, anything else by its type. */
function told(value: unknown): string {
  return typeof value === 'string' ? quote(value) : `a value of type ${typeof value}`;
}

function oneLine(text: string): string {
  return required(text)
    .replace(/[\s\p{Cc}]+/gu, ' ')
    .trim();
}

function manyLines(text: string): string {
  return required(text)
    .replace(/\r\n?/g, '\n')
    .replace(/(?!\n)\p{Cc}/gu, ' ')
    .trim();
}

function required(text: string): string {
  if (typeof text !== 'string') throw new TypeError(`update: expected text, got ${told(text)}`);
  return text;
}
