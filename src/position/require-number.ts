import { givenInWords } from '../result/internal.ts';

// JSON makes null of a number that is none, and null counts as 0 in arithmetic: each of these asks for a number first.

/** @throws RangeError when a number that a program passed is not finite */
export function requireFinite(name: string, value: number): void {
  if (!Number.isFinite(value))
    throw new RangeError(`${name}: expected a finite number, got ${givenInWords(value)}`);
}

/** @throws RangeError when a number that a program passed is negative or not finite */
export function requireNotNegative(name: string, value: number): void {
  if (!(Number.isFinite(value) && value >= 0)) {
    throw new RangeError(`${name}: expected zero or more, got ${givenInWords(value)}`);
  }
}

/** @throws RangeError when a number that a program passed is not above zero, or not finite */
export function requirePositive(name: string, value: number): void {
  if (!(Number.isFinite(value) && value > 0)) {
    throw new RangeError(`${name}: expected more than zero, got ${givenInWords(value)}`);
  }
}

/** @throws RangeError when a number that a program passed is not whole or not from 0 to `most` */
export function requireWhole(name: string, value: number, most: number): void {
  if (Number.isInteger(value) && value >= 0 && value <= most) return;
  throw new RangeError(`${name}: expected a whole number from 0 to ${most}, got ${givenInWords(value)}`);
}

/** @throws RangeError when a number that a program passed is not from `-most` to `most` */
export function requireWithin(name: string, value: number, most: number): void {
  if (Number.isFinite(value) && Math.abs(value) <= most) return;
  throw new RangeError(`${name}: expected -${most} to ${most}, got ${givenInWords(value)}`);
}
