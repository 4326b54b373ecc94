import { givenInWords } from '../result/internal.ts';

// JSON makes null of a number that is none, and null counts as 0 in arithmetic: each of these asks for a number first.

/** @throws RangeError when a number that a program passed is not finite */
export function requireFinite(name: string, value: number): void {
  requireThat(Number.isFinite(value), name, 'a finite number', value);
}

/** @throws RangeError when a number that a program passed is negative or not finite */
export function requireNotNegative(name: string, value: number): void {
  requireThat(Number.isFinite(value) && value >= 0, name, 'zero or more', value);
}

/** @throws RangeError when a number that a program passed is not above zero, or not finite */
export function requirePositive(name: string, value: number): void {
  requireThat(Number.isFinite(value) && value > 0, name, 'more than zero', value);
}

/** @throws RangeError when a number that a program passed is not whole or not from 0 to `most` */
export function requireWhole(name: string, value: number, most: number): void {
  const isSo = Number.isInteger(value) && value >= 0 && value <= most;
  requireThat(isSo, name, `a whole number from 0 to ${most}`, value);
}

/** @throws RangeError when a number that a program passed is not from `-most` to `most` */
export function requireWithin(name: string, value: number, most: number): void {
  requireThat(Number.isFinite(value) && Math.abs(value) <= most, name, `-${most} to ${most}`, value);
}

function requireThat(isSo: boolean, name: string, expected: string, value: number): void {
  if (!isSo) throw new RangeError(`${name}: expected ${expected}, got ${givenInWords(value)}`);
}
