/** A station as it is spoken of. What is not known becomes a blank, in brackets. */
export interface SpokenStation {
  readonly name?: string | null | undefined;
  readonly callSign?: string | null | undefined;
  /** Nine digits. */
  readonly mmsi?: string | null | undefined;
}

/**
 * Where names of stations come from: a directory of `seahail/directory` or any list of stations, or a function that
 * finds by nine digits a name, or a station with its name and call sign, or nothing.
 */
export type StationNames =
  | { readonly stations: readonly SpokenStation[] }
  | ((mmsi: string) => SpokenStation | string | undefined);

/** What is known of a station by its nine digits, `undefined` when nothing is. */
export function stationNamed(names: StationNames | undefined, mmsi: string): SpokenStation | undefined {
  if (names === undefined) return undefined;
  const found =
    typeof names === 'function' ? names(mmsi) : names.stations.find((station) => station.mmsi === mmsi);
  return typeof found === 'string' ? { name: found } : found;
}
