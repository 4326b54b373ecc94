import type { Coordinates } from '../../position/index.ts';

/** Whether a value is an object with keys of its own to look into. */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Text, or `null`. */
export function readText(value: unknown): string | null {
  return typeof value === 'string' ? value : null;
}

/** An instant that a clock can have, epoch milliseconds, or `null`. */
export function readInstant(value: unknown): number | null {
  return typeof value === 'number' && Math.abs(value) <= LAST_INSTANT ? value : null;
}

/** A place on Earth, or `null`. */
export function readCoordinates(value: unknown): Coordinates | null {
  if (!isRecord(value)) return null;
  const { latitude, longitude } = value;
  if (typeof latitude !== 'number' || typeof longitude !== 'number') return null;
  return Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180 ? { latitude, longitude } : null;
}

/** Greatest time value of ECMA-262, milliseconds to either side of 1970. */
export const LAST_INSTANT = 8.64e15;
