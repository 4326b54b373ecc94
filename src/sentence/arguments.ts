import { quote } from '../result/internal.ts';

/** Greatest distance from 1970, milliseconds, that a date can be told at (ECMA-262, time values). */
const MOST_INSTANT = 8.64e15;

/** Throws unless the value is an instant, in epoch milliseconds, that has a date. */
export function requireInstant(name: string, value: number): void {
  if (typeof value !== 'number' || !(Math.abs(value) <= MOST_INSTANT))
    throw new RangeError(
      `${name}: expected an instant in epoch milliseconds, got ${typeof value === 'number' ? value : typeof value}`,
    );
}

/** Throws unless an identity was handed over as text of nine digits: in a number its leading zeros are lost. */
export function requireIdentity(name: string, value: string): void {
  if (typeof value !== 'string')
    throw new TypeError(`${name}: expected an identity of nine digits as text, got ${typeof value}`);
  if (!/^\d{9}$/.test(value)) throw new RangeError(`${name}: expected nine digits, got ${quote(value)}`);
}

/** Throws unless the value is one of those the option allows. */
export function requireOneOf<Value extends string>(
  name: string,
  value: Value,
  allowed: readonly NoInfer<Value>[],
): void {
  if (!allowed.includes(value))
    throw new RangeError(`${name}: expected one of ${allowed.join(', ')}, got ${quote(String(value))}`);
}
