import { stationOf } from '../identity/directory-find.ts';
import type { Directory } from '../identity/known-station.ts';
import type { SpokenStation } from './speak/script.ts';

/**
 * Where names of stations come from: a directory of `seahail/identity/directory`, or a function that finds by nine
 * digits a name, or a station with its name and call sign, or nothing.
 */
export type StationNames = Directory | ((mmsi: string) => SpokenStation | string | undefined);

/** What is known of a station by its nine digits, `undefined` when nothing is. */
export function stationNamed(names: StationNames | undefined, mmsi: string): SpokenStation | undefined {
  if (names === undefined) return undefined;
  const found = typeof names === 'function' ? names(mmsi) : stationOf(names, mmsi);
  return typeof found === 'string' ? { name: found } : found;
}
