import type { CodedText } from '../result/index.ts';
import type { Bounds } from './bounds.ts';
import { boundsWords } from './texts.ts';
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
  return boundsText(bounds).message;
}

/**
 * The words of {@link describeBounds} as `translate` of `seahail/locale` takes them.
 *
 * @param bounds - what {@link boundsFrom} found
 * @returns range, bearing and age, with the code and params of each
 *
 * @example
 * ```ts
 * import { translate } from 'seahail/locale';
 * import { dutch } from 'seahail/locale/nl';
 * import { boundsFrom, boundsText, toReportedPosition } from 'seahail/position';
 *
 * const merrow = { latitude: 56.3667, longitude: -6.4 };
 * const kittiwake = toReportedPosition({ latitude: 56.36, longitude: -6.39 });
 * const bounds = boundsFrom(merrow, kittiwake, { at: null, now: Date.UTC(2026, 5, 1, 14, 4), speed: 3 });
 * console.log(translate(boundsText(bounds), dutch).text);
 * // binnen 1.8 zeemijl, ware peiling 090 tot 181 graden, tijd van de positie niet bekend, verplaatsing sindsdien niet meegerekend
 * ```
 */
export function boundsText(bounds: Bounds): CodedText {
  const parts = [rangeText(bounds), bearingText(bounds), ageText(bounds)];
  if (bounds.movement === null) parts.push(boundsWords('position-bounds-still', {}));
  return boundsWords('position-bounds', { parts });
}

function rangeText({ least, greatest }: Bounds): CodedText {
  const digits = greatest < MILE / 2 ? 2 : 1;
  const scale = 10 ** digits;
  const near = (Math.floor((least / MILE) * scale) / scale).toFixed(digits);
  const far = (Math.ceil((greatest / MILE) * scale) / scale).toFixed(digits);
  // Spelled out: a person who is not a navigator reads M as metres.
  if (Number(near) === 0) return boundsWords('position-bounds-within', { far });
  if (near === far) return boundsWords('position-bounds-at', { far });
  return boundsWords('position-bounds-between', { near, far });
}

function bearingText({ sector }: Bounds): CodedText {
  if (sector === null) return boundsWords('position-bounds-no-bearing', {});
  const written = (degrees: number) => String(degrees % 360).padStart(3, '0');
  const [from, to] = [written(Math.floor(sector.from)), written(Math.ceil(sector.to))];
  return from === to
    ? boundsWords('position-bounds-bearing', { from })
    : boundsWords('position-bounds-sector', { from, to });
}

function ageText({ age }: Bounds): CodedText {
  if (age === null) return boundsWords('position-bounds-no-time', {});
  const minutes = Math.trunc(age / 60);
  if (minutes < 0) return boundsWords('position-bounds-ahead', {});
  if (minutes === 0) return boundsWords('position-bounds-new', {});
  if (minutes < 120) return boundsWords('position-bounds-minutes', { minutes });
  const rest = String(minutes % 60).padStart(2, '0');
  return boundsWords('position-bounds-hours', { hours: Math.floor(minutes / 60), minutes: rest });
}
