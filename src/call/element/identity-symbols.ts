import { type Identity, parseIdentity } from '../../identity/index.ts';
import { digitsOf, type Symbols, symbolsOf } from '../fields.ts';
import { noSymbols } from '../no-symbols.ts';
import { NO_INFORMATION } from '../symbol.ts';

/**
 * The nine digits of an identity in five symbols, or `null` when they carry none. The tenth digit,
 * 0 for a station and otherwise kept for terminals on board (ITU-R M.1080, from memory), is not looked at.
 */
export function identityOf(symbols: Symbols | null): string | null {
  return symbols?.length === 5 ? (digitsOf(symbols)?.slice(0, 9) ?? null) : null;
}

/**
 * An identity as five symbols: its nine digits and a 0 (ITU-R M.493-16 Annex 1 §6).
 *
 * @throws RangeError when the identity is not nine digits, TypeError when it is a number, which loses leading zeros
 */
export function identitySymbols(mmsi: string | null): number[] | null {
  if (mmsi === null) return null;
  if (typeof mmsi !== 'string') throw new TypeError('identity: expected text of nine digits');
  if (!/^\d{9}$/.test(mmsi)) throw noSymbols('identity', `'${mmsi}'`);
  return symbolsOf(`${mmsi}0`);
}

/** Identity of the ship in distress when it is not known: "no information" five times. */
export const UNKNOWN_SHIP: Symbols = /* @__PURE__ */ Object.freeze([
  NO_INFORMATION,
  NO_INFORMATION,
  NO_INFORMATION,
  NO_INFORMATION,
  NO_INFORMATION,
]);

/** The identity that nine digits are, `undefined` when ITU-R M.585 assigns none of that form. */
export function stationIdentity(mmsi: string | null): Identity | undefined {
  if (mmsi === null || !/^\d{9}$/.test(mmsi)) return undefined;
  const read = parseIdentity(mmsi);
  return read.ok ? read.value : undefined;
}

export function isManOverboardDevice(mmsi: string | null): boolean {
  return stationIdentity(mmsi)?.kind === 'mob';
}

/** Whether nine digits are those of one coast station. */
export function isAshore(mmsi: string | null): boolean {
  return stationIdentity(mmsi)?.kind === 'coast';
}
