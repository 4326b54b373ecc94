import { want } from '../result/internal.ts';
import type { Directory, ExtraField, KnownStation, StationUpdate } from './known-station.ts';
import { remember } from './remember.ts';

/**
 * The directory without one station.
 *
 * @param directory - stays as it is
 * @param mmsi - nine digits
 * @returns the new directory; the same object where the station was not in it
 *
 * @example
 * ```ts
 * import { createDirectory, forget } from 'seahail/directory';
 *
 * const one = createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Tern of Ardle' });
 * console.log(forget(one, '232999142').stations.length); // 0
 * ```
 */
export function forget(directory: Directory, mmsi: string): Directory {
  want('forget', 'a directory', directory, 'stations');
  const stations = directory.stations.filter((station) => station.mmsi !== mmsi);
  return stations.length === directory.stations.length ? directory : { kind: 'directory', stations };
}

/**
 * The directory with one station no longer a member of a group.
 *
 * @param directory - stays as it is
 * @param mmsi - nine digits of the member
 * @param group - nine digits of the group
 * @returns the new directory
 *
 * @example
 * ```ts
 * import { createDirectory, leaveGroup, membersOf } from 'seahail/directory';
 *
 * const club = createDirectory({ mmsi: '232999142', origin: 'typed', groups: ['023299905'] });
 * console.log(membersOf(leaveGroup(club, '232999142', '023299905'), '023299905').length); // 0
 * ```
 */
export function leaveGroup(directory: Directory, mmsi: string, group: string): Directory {
  want('leaveGroup', 'a directory', directory, 'stations');
  const stations = directory.stations.map((station) =>
    station.mmsi === mmsi ? { ...station, groups: station.groups.filter((each) => each !== group) } : station,
  );
  return { kind: 'directory', stations };
}

/**
 * Two directories in one. Each text comes from the more trusted origin; from equal origins mine is kept. Where a person
 * typed different texts in both, theirs is kept beside it as an extra field (`'other name'` and so on): nothing that
 * was typed is lost.
 *
 * @param mine - stays as it is
 * @param theirs - stays as it is
 * @returns the new directory
 *
 * @example
 * ```ts
 * import { createDirectory, mergeDirectories } from 'seahail/directory';
 *
 * const mine = createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Tern' });
 * const theirs = createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Tern of Ardle' });
 * console.log(mergeDirectories(mine, theirs).stations[0]?.extra); // [ { label: 'other name', text: 'Tern of Ardle' } ]
 * ```
 */
export function mergeDirectories(mine: Directory, theirs: Directory): Directory {
  want('mergeDirectories', 'a directory', mine, 'stations');
  want('mergeDirectories', 'another directory', theirs, 'stations');
  const known = new Map<string, KnownStation>(mine.stations.map((station) => [station.mmsi, station]));
  const updates = theirs.stations.flatMap((station) => updatesFrom(known.get(station.mmsi), station));
  return remember(mine, updates);
}

const fields = [
  ['name', 'other name'],
  ['callSign', 'other call sign'],
  ['notes', 'other notes'],
] as const;

function updatesFrom(mine: KnownStation | undefined, theirs: KnownStation): readonly StationUpdate[] {
  const { mmsi, groups, heardAt, calledAt } = theirs;
  const texts: StationUpdate[] = [];
  const extra: ExtraField[] = [...(theirs.extra ?? [])];
  for (const [field, label] of fields) {
    const text = theirs[field];
    const origin = theirs.origins[field];
    if (text === undefined || origin === undefined || text === mine?.[field]) continue;
    if (origin !== mine?.origins[field]) texts.push({ mmsi, origin, [field]: text });
    else if (origin === 'typed') extra.push({ label, text });
  }
  return [
    { mmsi, origin: theirs.origins.entry, groups, extra: joined(mine?.extra, extra), heardAt, calledAt },
    ...texts,
  ];
}

/** Extra fields of both sides: what theirs add to a label of mine follows in lines of its own. */
function joined(mine: readonly ExtraField[] = [], theirs: readonly ExtraField[]): readonly ExtraField[] {
  const texts = new Map(mine.map(({ label, text }) => [label, text]));
  for (const { label, text } of theirs) {
    const known = texts.get(label);
    if (known === undefined) texts.set(label, text);
    else if (!`\n${known}\n`.includes(`\n${text}\n`)) texts.set(label, `${known}\n${text}`);
  }
  return [...texts].map(([label, text]) => ({ label, text }));
}

/**
 * The directory with stations that were only heard, or seen by AIS, left out until at most so many stations remain:
 * first those silent longest. Stations typed, imported or called are never left out.
 *
 * @param directory - stays as it is
 * @param most - largest count
 * @returns the new directory; the same object where it is small enough
 *
 * @example
 * ```ts
 * import { createDirectory, trimDirectory } from 'seahail/directory';
 *
 * const busy = createDirectory([
 *   { mmsi: '232999142', origin: 'heard', heardAt: 1000 },
 *   { mmsi: '232999563', origin: 'heard', heardAt: 2000 },
 * ]);
 * console.log(trimDirectory(busy, 1).stations.map((station) => station.mmsi)); // [ '232999563' ]
 * ```
 */
export function trimDirectory(directory: Directory, most: number): Directory {
  want('trimDirectory', 'a directory', directory, 'stations');
  const spare = directory.stations.length - most;
  if (!(spare > 0)) return directory;
  const leaving = new Set<string>(
    directory.stations
      .filter(
        ({ origins, calledAt }) =>
          (origins.entry === 'heard' || origins.entry === 'ais') && calledAt === undefined,
      )
      .sort((a, b) => (a.heardAt ?? -Infinity) - (b.heardAt ?? -Infinity) || (a.mmsi < b.mmsi ? -1 : 1))
      .slice(0, spare)
      .map(({ mmsi }) => mmsi),
  );
  return { kind: 'directory', stations: directory.stations.filter(({ mmsi }) => !leaving.has(mmsi)) };
}
