import { usesOf } from '../identity/index.ts';
import { classify } from '../identity/internal.ts';
import { failure, type Result, success } from '../result/index.ts';
import { quote, want } from '../result/internal.ts';
import type { Directory, ExtraField, StationOrigin, StationUpdate } from './known-station.ts';
import { createNoticeList, type NoticeList } from './list-reading.ts';
import { createDirectory, isInstant } from './remember.ts';
import { issue } from './texts.ts';

/**
 * Write a directory as JSON, to be stored: nothing is left out.
 *
 * @param directory - what to write
 * @returns JSON text for {@link readDirectoryJson}
 *
 * @example
 * ```ts
 * import { createDirectory, readDirectoryJson, writeDirectoryJson } from 'seahail/directory';
 *
 * const stored = writeDirectoryJson(createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Tern of Ardle' }));
 * const back = readDirectoryJson(stored);
 * if (back.ok) console.log(back.value.stations[0]?.origins.name); // typed
 * ```
 */
export function writeDirectoryJson(directory: Directory): string {
  want('writeDirectoryJson', 'a directory', directory, 'stations');
  return JSON.stringify(directory);
}

/**
 * Read a stored directory. A station or field that another program or a damaged file left unusable is left out with a
 * notice; everything else is read.
 *
 * @param text - JSON text of {@link writeDirectoryJson}
 * @returns the directory, or an issue where the text is no stored directory at all
 *
 * @example
 * ```ts
 * import { readDirectoryJson } from 'seahail/directory';
 *
 * const back = readDirectoryJson('{"kind":"directory","stations":[{"mmsi":2329990}]}');
 * if (back.ok) console.log(back.notices[0]?.at); // [ 'stations', 0, 'mmsi' ]
 * ```
 */
export function readDirectoryJson(text: unknown): Result<Directory> {
  const stored = typeof text === 'string' ? jsonOf(text) : undefined;
  const { kind, stations } = objectOf(stored);
  if (kind !== 'directory' || !Array.isArray(stations)) {
    const received = typeof text === 'string' ? quote(text) : typeof text;
    return failure(issue('directory-json-shape', {}, { received }));
  }
  const notices = createNoticeList();
  const updates = stations.flatMap((station: unknown, place) => updatesOf(objectOf(station), place, notices));
  return success(createDirectory(updates), notices.all());
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function updatesOf(
  station: Readonly<Record<string, unknown>>,
  place: number,
  notices: NoticeList,
): readonly StationUpdate[] {
  /** The field where it is usable; one that is there and is not gives a notice. */
  const take = <T>(
    value: unknown,
    usable: (value: unknown) => value is T,
    ...at: (string | number)[]
  ): T | undefined => {
    if (value === undefined || usable(value)) return value;
    const received = typeof value === 'string' ? quote(value) : typeof value;
    const code = at[0] === 'mmsi' ? 'directory-json-station' : 'directory-json-field';
    notices.push(issue(code, {}, { at: ['stations', place, ...at], received }));
    return undefined;
  };
  const each = <T>(field: string, usable: (value: unknown) => value is T): readonly T[] =>
    (take(station[field], Array.isArray, field) ?? []).flatMap((value: unknown, index) => {
      const taken = take(value ?? null, usable, field, index);
      return taken === undefined ? [] : [taken];
    });

  const mmsi = take(station.mmsi ?? null, isIdentity, 'mmsi');
  if (mmsi === undefined) return [];
  const origins = objectOf(station.origins);
  const origin = take(origins.entry, isOrigin, 'origins', 'entry') ?? 'imported';
  const heardAt = take(station.heardAt, isInstant, 'heardAt');
  const calledAt = take(station.calledAt, isInstant, 'calledAt');
  const texts = (['name', 'callSign', 'notes'] as const).flatMap((field): readonly StationUpdate[] => {
    const text = take(station[field], isText, field);
    const from = take(origins[field], isOrigin, 'origins', field) ?? origin;
    return text === undefined ? [] : [{ mmsi, origin: from, [field]: text }];
  });
  return [
    {
      mmsi,
      origin,
      groups: each('groups', isGroup),
      extra: each('extra', isExtra),
      heardAt,
      calledAt,
    },
    ...texts,
  ];
}

function objectOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
}

function isText(value: unknown): value is string {
  return typeof value === 'string';
}

function isIdentity(value: unknown): value is string {
  return isText(value) && classify(value) !== undefined;
}

function isGroup(value: unknown): value is string {
  const identity = isText(value) ? classify(value) : undefined;
  return identity !== undefined && usesOf(identity).group;
}

function isOrigin(value: unknown): value is StationOrigin {
  return value === 'typed' || value === 'imported' || value === 'ais' || value === 'heard';
}

function isExtra(value: unknown): value is ExtraField {
  const { label, text } = objectOf(value);
  return isText(label) && isText(text);
}
