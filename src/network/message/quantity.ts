import type { Quantity } from '../field/field.ts';

/** The number, or `undefined` for one that is not available or out of range. */
export function known(value: Quantity | undefined): number | undefined {
  return typeof value === 'number' ? value : undefined;
}

const DAY = 86_400_000;

/** Epoch milliseconds of a date and a time of day as the network has them; `null` when one is missing. */
export function instantOf(days: Quantity, seconds: Quantity): number | null {
  return typeof days === 'number' && typeof seconds === 'number'
    ? days * DAY + Math.round(seconds * 1000)
    : null;
}

/** Degrees of radians, to the tenth of the network's resolution. */
export function signedDegrees(radians: number): number {
  return Math.round(((radians * 180) / Math.PI) * 1000) / 1000;
}

/** The same from 0 up to 360. */
export function degreesOf(radians: number): number {
  const degrees = signedDegrees(radians);
  return degrees >= 360 ? degrees - 360 : degrees;
}

/** Knots of metres a second, to the thousandth. */
export function knotsOf(metresPerSecond: number): number {
  return Math.round((metresPerSecond * 3600 * 1000) / 1852) / 1000;
}

/** Degrees of a number of 64 bits with a resolution of 1e-16 degrees. */
export function degreesOfWide([high, low]: readonly [number, number]): number {
  return (high * 2 ** 32 + low) / 1e16;
}
