import type { Bounds } from './bounds.ts';
import { MILE } from './units.ts';

/**
 * Bounds in words, for people. Ranges in nautical miles and bearings in whole degrees are rounded outward, never inward.
 *
 * @param bounds - what {@link boundsFrom} found
 * @returns range, bearing and age, in one phrase without a full stop
 *
 * @example
 * ```ts
 * import { boundsFrom, describeBounds, toReportedPosition } from 'seahail/position';
 *
 * const merrow = { latitude: 56.3667, longitude: -6.4 };
 * const kittiwake = toReportedPosition({ latitude: 56.36, longitude: -6.39 });
 * const now = Date.UTC(2026, 5, 1, 14, 4);
 * console.log(describeBounds(boundsFrom(merrow, kittiwake, { at: now, now, speed: 3 })));
 * // within 1.8 nautical miles, bearing unknown, fix less than a minute old
 * ```
 */
export function describeBounds(bounds: Bounds): string {
  const parts = [rangeText(bounds), bearingText(bounds), ageText(bounds)];
  if (bounds.movement === null) parts.push('not allowing for movement since the fix');
  return parts.join(', ');
}

function rangeText({ least, greatest }: Bounds): string {
  const digits = greatest < MILE / 2 ? 2 : 1;
  const scale = 10 ** digits;
  const near = (Math.floor((least / MILE) * scale) / scale).toFixed(digits);
  const far = (Math.ceil((greatest / MILE) * scale) / scale).toFixed(digits);
  // Spelled out: a person who is not a navigator reads M as metres.
  if (Number(near) === 0) return `within ${far} nautical miles`;
  return `${near === far ? `at ${far}` : `between ${near} and ${far}`} nautical miles`;
}

function bearingText({ sector }: Bounds): string {
  if (sector === null) return 'bearing unknown';
  const from = Math.floor(sector.from) % 360;
  const to = Math.ceil(sector.to) % 360;
  const written = (degrees: number) => String(degrees).padStart(3, '0');
  const text = from === to ? written(from) : `${written(from)} to ${written(to)}`;
  return `bearing ${text} degrees true`;
}

function ageText({ age }: Bounds): string {
  if (age === null) return 'time of the fix not known';
  const minutes = Math.trunc(age / 60);
  if (minutes < 0) return 'time of the fix lies ahead of the clock';
  if (minutes === 0) return 'fix less than a minute old';
  if (minutes < 120) return `fix ${minutes} ${minutes === 1 ? 'minute' : 'minutes'} old`;
  return `fix ${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min old`;
}
