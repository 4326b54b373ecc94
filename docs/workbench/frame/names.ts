/** The invented stations of the Skerra Sound, so that examples have names. */
const stations: ReadonlyMap<string, string> = new Map([
  ['232999871', 'Merrow'],
  ['232999142', 'Tern of Ardle'],
  ['232999563', 'Pellinore'],
  ['823299904', 'Kittiwake II'],
  ['023299905', 'Ardle Sailing Club'],
  ['002329990', 'Skerra Coastguard'],
  ['232999218', 'Bounty of Lorn'],
]);

/** The name of an invented station, `undefined` for every real one. */
export function inventedName(mmsi: string): string | undefined {
  return stations.get(mmsi);
}
