import { type Identity, parseIdentity } from '../../identity/index.ts';

/** The identity that nine digits are, `undefined` when ITU-R M.585 assigns none of that form. */
export function stationIdentity(mmsi: string | null): Identity | undefined {
  if (mmsi === null || !/^\d{9}$/.test(mmsi)) return undefined;
  const read = parseIdentity(mmsi);
  return read.ok ? read.value : undefined;
}

/** Whether nine digits are those of a man-overboard device. */
export function isManOverboardDevice(mmsi: string | null): boolean {
  return stationIdentity(mmsi)?.kind === 'mob';
}

/** Whether nine digits are those of one coast station. */
export function isAshore(mmsi: string | null): boolean {
  return stationIdentity(mmsi)?.kind === 'coast';
}
