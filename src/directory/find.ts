import { formatIdentity } from '../identity/index.ts';
import { want } from '../result/internal.ts';
import type { Directory, KnownStation } from './known-station.ts';

/**
 * The entry of one identity.
 *
 * @param directory - where to look
 * @param mmsi - nine digits
 * @returns the entry, or `undefined`
 *
 * @example
 * ```ts
 * import { createDirectory, stationOf } from 'seahail/directory';
 *
 * const directory = createDirectory({ mmsi: '002329990', origin: 'typed', name: 'Skerra Coastguard' });
 * console.log(stationOf(directory, '002329990')?.name); // Skerra Coastguard
 * ```
 */
export function stationOf(directory: Directory, mmsi: string): KnownStation | undefined {
  want('stationOf', 'a directory', directory, 'stations');
  return directory.stations.find((station) => station.mmsi === mmsi);
}

/**
 * What to show for an identity: its name, or its digits grouped for people.
 *
 * @param directory - where to look
 * @param mmsi - nine digits; another text comes back as it is
 * @returns the name, or the digits
 *
 * @example
 * ```ts
 * import { createDirectory, nameOf } from 'seahail/directory';
 *
 * console.log(nameOf(createDirectory(), '232999142')); // 232 999 142
 * ```
 */
export function nameOf(directory: Directory, mmsi: string): string {
  want('nameOf', 'a directory', directory, 'stations');
  const name = stationOf(directory, mmsi)?.name;
  if (name !== undefined) return name;
  return typeof mmsi === 'string' && /^\d{9}$/.test(mmsi) ? formatIdentity(mmsi) : mmsi;
}

/**
 * Stations that fit what a person types into a search field: a piece of the name, of the call sign, or some digits of
 * the identity. Case and accents do not matter, blanks and hyphens between digits neither.
 *
 * @param directory - where to look
 * @param query - a fragment; blank finds every station
 * @returns best fit first: whole, then beginning, then beginning of a word, then anywhere; within each by name
 *
 * @see {@link stationOf}
 * @see {@link nameOf}
 *
 * @example
 * ```ts
 * import { createDirectory, findStations } from 'seahail/directory';
 *
 * const directory = createDirectory([
 *   { mmsi: '232999142', origin: 'typed', name: 'Tern of Ardle' },
 *   { mmsi: '232999563', origin: 'typed', name: 'Pellinore' },
 * ]);
 * console.log(findStations(directory, 'ardle').map((station) => station.name)); // [ 'Tern of Ardle' ]
 * console.log(findStations(directory, '999 5').map((station) => station.name)); // [ 'Pellinore' ]
 * ```
 */
export function findStations(directory: Directory, query: string): readonly KnownStation[] {
  want('findStations', 'a directory', directory, 'stations');
  if (typeof query !== 'string') return [];
  const words = fold(query);
  const digits = /^[\d\s.-]+$/.test(query) ? query.replace(/\D/g, '') : '';
  return directory.stations
    .map((station) => {
      const name = fold(station.name ?? '');
      const ranks = [rank(name, words), rank(fold(station.callSign ?? ''), words)];
      if (digits !== '') ranks.push(rank(station.mmsi, digits));
      return { station, name, rank: Math.min(...ranks) };
    })
    .filter((found) => found.rank < none)
    .sort((a, b) => a.rank - b.rank || order(a.name, b.name) || order(a.station.mmsi, b.station.mmsi))
    .map((found) => found.station);
}

const none = 4;

function rank(text: string, query: string): number {
  if (text === query) return 0;
  if (text.startsWith(query)) return 1;
  if (text.includes(` ${query}`)) return 2;
  return text.includes(query) ? 3 : none;
}

function fold(text: string): string {
  return text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();
}

function order(a: string, b: string): number {
  return a === b ? 0 : a < b ? -1 : 1;
}

/**
 * The known members of a group.
 *
 * @param directory - where to look
 * @param group - nine digits of the group
 * @returns members in order of digits; others may belong to the group unknown
 *
 * @example
 * ```ts
 * import { createDirectory, membersOf } from 'seahail/directory';
 *
 * const club = createDirectory({ mmsi: '232999142', origin: 'typed', name: 'Tern', groups: ['023299905'] });
 * console.log(membersOf(club, '023299905').map((station) => station.name)); // [ 'Tern' ]
 * ```
 */
export function membersOf(directory: Directory, group: string): readonly KnownStation[] {
  want('membersOf', 'a directory', directory, 'stations');
  return directory.stations.filter((station) => station.groups.some((each) => each === group));
}

/**
 * Stations heard or called lately, latest first.
 *
 * @param directory - where to look
 * @param by - `'heardAt'`: heard on a call or by AIS; `'calledAt'`: called from here
 * @param most - length of the list at most
 * @returns stations that have that instant
 *
 * @example
 * ```ts
 * import { createDirectory, recentStations } from 'seahail/directory';
 *
 * const directory = createDirectory([
 *   { mmsi: '232999142', origin: 'heard', heardAt: 1000 },
 *   { mmsi: '232999563', origin: 'heard', heardAt: 2000 },
 * ]);
 * console.log(recentStations(directory, 'heardAt').map((station) => station.mmsi)); // [ '232999563', '232999142' ]
 * ```
 */
export function recentStations(
  directory: Directory,
  by: 'heardAt' | 'calledAt',
  most = 20,
): readonly KnownStation[] {
  want('recentStations', 'a directory', directory, 'stations');
  return directory.stations
    .filter((station) => station[by] !== undefined)
    .sort((a, b) => (b[by] ?? 0) - (a[by] ?? 0) || order(a.mmsi, b.mmsi))
    .slice(0, most);
}
