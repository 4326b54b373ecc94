import type { GeographicArea, ReportedPosition, TimeOfDay } from '../../position/index.ts';
import {
  decodeArea,
  decodePosition,
  encodeArea,
  encodePosition,
  refinePosition,
} from '../../position/internal.ts';
import { type CallFields, digitsOf, type Symbols, symbolsOf } from '../fields.ts';
import { noSymbols } from '../no-symbols.ts';
import { same } from '../same.ts';
import { NO_INFORMATION } from '../symbol.ts';

/** Position unknown: the digit 9 ten times (ITU-R M.541-11 Annex 1 §2). */
export const UNKNOWN_POSITION: Symbols = /* @__PURE__ */ Object.freeze([99, 99, 99, 99, 99]);
/** Time unknown: 8888 (ITU-R M.541-11 Annex 1 §2). */
export const UNKNOWN_TIME: Symbols = /* @__PURE__ */ Object.freeze([88, 88]);

/** The position in five symbols, finer when eight more digits came with it; `null` when unknown or unreadable. */
export function positionOf(symbols: Symbols | null, fraction: string | null): ReportedPosition | null {
  const whole = decodePosition(digitsOf(symbols));
  return whole.ok && whole.value.kind !== 'no-position' ? refined(whole.value, fraction) : null;
}

/** A position of whole minutes with eight more digits, unless they lead to an impossible one. */
export function refined(position: ReportedPosition, fraction: string | null): ReportedPosition {
  const finer = fraction === null ? null : refinePosition(position, fraction);
  return finer?.ok ? finer.value : position;
}

/** A position as five symbols, ten 9s when it is not known. */
export function positionSymbols(position: ReportedPosition | null): Symbols {
  if (position === null) return UNKNOWN_POSITION;
  return symbolsOf(withSymbols('position', () => encodePosition(position).digits));
}

/** The eight digits that make a possible position finer, `null` when it has none. */
export function fractionOf(position: ReportedPosition | null): string | null {
  const fraction = position?.fraction;
  return fraction === undefined ? null : fourDigits(fraction.latitude) + fourDigits(fraction.longitude);
}

function fourDigits(value: number): string {
  return String(value).padStart(4, '0');
}

/** Hours and minutes UTC of two symbols; `null` when unknown or unreadable. */
export function timeOf(symbols: Symbols | null): TimeOfDay | null {
  if (symbols?.length !== 2) return null;
  const [hour, minute] = symbols;
  return isBelow(24, hour) && isBelow(60, minute) ? { hour, minute } : null;
}

/**
 * A time as two symbols, 88 88 when it is not known.
 *
 * @throws RangeError when the hour or the minute is out of range
 */
export function timeSymbols(time: TimeOfDay | null): Symbols {
  if (time === null) return UNKNOWN_TIME;
  if (!isBelow(24, time.hour) || !isBelow(60, time.minute)) {
    throw noSymbols('time', `${time.hour}:${time.minute}`);
  }
  return [time.hour, time.minute];
}

/** Why a position or a time is not there: the station gave none, a character was lost, or what came can be none. */
export type Lack = 'not-given' | 'not-read' | 'impossible';

export function placeLack(call: Received): Lack {
  return lackOf(call.asReceived?.position ?? null, UNKNOWN_POSITION);
}

export function timeLack(call: Received): Lack {
  return lackOf(call.asReceived?.time ?? null, UNKNOWN_TIME);
}

/** Why symbols give no value, where `unknown` are those that a station sends when it has none. */
export function lackOf(symbols: Symbols | null, unknown: Symbols): Lack {
  if (symbols === null || same(symbols, unknown)) return 'not-given';
  if (symbols.every((symbol) => symbol === NO_INFORMATION)) return 'not-given';
  return symbols.includes(null) ? 'not-read' : 'impossible';
}

interface Received {
  readonly asReceived?: Pick<CallFields, 'position' | 'time'>;
}

/** The rectangle in the address of an area call, `null` when it has none. */
export function areaOf(symbols: Symbols | null): GeographicArea | null {
  const read = decodeArea(digitsOf(symbols));
  return read.ok ? read.value : null;
}

/** A rectangle as the address of an area call. */
export function areaSymbols(area: GeographicArea | null): Symbols | null {
  return area === null ? null : symbolsOf(withSymbols('area', () => encodeArea(area)));
}

function withSymbols(value: 'position' | 'area', digits: () => string): string {
  try {
    return digits();
  } catch (error) {
    throw noSymbols(value, undefined, error);
  }
}

function isBelow(end: number, value: number | null | undefined): value is number {
  return Number.isInteger(value) && Number(value) >= 0 && Number(value) < end;
}
