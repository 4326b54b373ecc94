import type { CodedText } from '../result/index.ts';
import { requireOptions, want } from '../result/internal.ts';
import { boxOf, type RoundingAssumption } from './box.ts';
import { rangeToBox, sectorToBox, widenedBox } from './box-geodesy.ts';
import { type Coordinates, requireCoordinates, type WrittenPosition } from './coordinates.ts';
import type { GeoBox } from './geo-box.ts';
import type { ReportedPosition } from './reported-position.ts';
import { requireFinite, requireNotNegative } from './require-number.ts';
import { boundsWords } from './texts.ts';
import { MILE, metresRun } from './units.ts';

/** What a position says about where she is, seen from own position. */
export interface Bounds {
  readonly kind: 'bounds';
  /** Least range in metres; zero when she may be alongside. */
  readonly least: number;
  /** Greatest range in metres. */
  readonly greatest: number;
  /** Every bearing she may have; `null` where a bearing means nothing, as when own ship may lie within the area. */
  readonly sector: {
    readonly from: number;
    readonly to: number;
  } | null;
  /** Where the fix was, from the resolution of the digits and the uncertainty given. */
  readonly box: GeoBox;
  /** Metres she may have run since, counted in range and bearing; `null` when her speed or the time is not known. */
  readonly movement: number | null;
  /** Holds every place she may be: the box and the movement around it. */
  readonly area: GeoBox;
  /** Seconds since the fix, negative when its time lies ahead of `now`; `null` when its time is not known. */
  readonly age: number | null;
  /** How the digits were taken to be made. */
  readonly assumption: RoundingAssumption;
}

const OPTIONS = ['at', 'now', 'speed', 'clockDoubtSeconds', 'uncertainty', 'ownDoubt', 'assumption'] as const;

/** Half a meridian: no two places on WGS 84 are farther apart. */
const HALF_ROUND = 20_003_931.459;

/**
 * How far and which way she may be, at the least and at the most: from the steps of the reported digits, the age of the
 * fix, the doubt of the clock, the speed she may have made and the doubt of own position.
 *
 * Nothing is left out to look exact: a position of whole minutes is a box of a mile and more, and close by no bearing
 * can be taken from it. The bounds are aids to judgement, not a fix: keep a look-out.
 *
 * @param own - own position
 * @param position - the position a call carried or a person wrote, or plain coordinates with an `uncertainty`
 * @param options - instants, speed and doubts
 * @returns least and greatest range, bearing sector, area
 * @throws RangeError when coordinates are out of range or a number is negative or not finite
 * @throws TypeError for plain coordinates without an `uncertainty`, without options, or with an option that is unknown
 *
 * @see {@link describeBounds}
 * @see {@link resolveTime}
 *
 * @example
 * ```ts
 * import { boundsFrom, describeBounds, decodePosition } from 'seahail/position';
 * import { valueOf } from 'seahail/result';
 *
 * const merrow = { latitude: 56.3667, longitude: -6.4 };
 * const tern = valueOf(decodePosition('1561800632'));
 * const now = Date.UTC(2026, 5, 1, 14, 4);
 * if (tern.kind === 'reported-position') {
 *   const bounds = boundsFrom(merrow, tern, { at: now - 14 * 60_000, now, speed: 6 });
 *   console.log(describeBounds(bounds)); // between 3.6 and 8.3 nautical miles, bearing 208 to 254 degrees true, fix 14 minutes old
 * }
 * ```
 */
export function boundsFrom(
  own: Coordinates,
  position: ReportedPosition | WrittenPosition | Coordinates,
  options: {
    /** Instant of the fix, epoch milliseconds, as {@link resolveTime} gives it; `null` when the call had no time. */
    readonly at: number | null;
    /** Instant of the bounds, epoch milliseconds. */
    readonly now: number;
    /** The greatest speed she may have made since, knots. Without it, or without a time, the bounds are those of the fix. */
    readonly speed?: number | undefined;
    /** Seconds by which `at` may be wrong; 60 unless stated, as the time of a call has no seconds. */
    readonly clockDoubtSeconds?: number | undefined;
    /**
     * Metres by which her fix may be wrong. Must be stated for plain coordinates, which do not say how fine they are;
     * else it comes on top of the resolution, and is 0 unless stated.
     */
    readonly uncertainty?: number | undefined;
    /** Metres by which own position may be wrong; 0 unless stated. */
    readonly ownDoubt?: number | undefined;
    /** `'unknown'` unless stated, so that the bounds hold for sets that cut and for sets that round. */
    readonly assumption?: RoundingAssumption | undefined;
  },
): Bounds {
  requireCoordinates(own);
  requireOptions('boundsFrom', options, OPTIONS, 'at and now');
  const {
    at,
    now,
    speed,
    clockDoubtSeconds = 60,
    ownDoubt = 0,
    uncertainty = 0,
    assumption = 'unknown',
  } = options;
  requireFinite('now', now);
  if (at !== null) requireFinite('at', at);
  if (speed !== undefined) requireNotNegative('speed', speed);
  requireNotNegative('clockDoubtSeconds', clockDoubtSeconds);
  requireNotNegative('ownDoubt', ownDoubt);
  requireNotNegative('uncertainty', uncertainty);
  const apart = at === null ? null : Math.abs(now - at) / 1000;
  // Nowhere on Earth is farther away than half round it.
  const movement =
    apart === null || speed === undefined
      ? null
      : Math.min(HALF_ROUND, Math.abs(metresRun(speed, apart + clockDoubtSeconds)));
  const margin = (movement ?? 0) + uncertainty;
  const box = boxOf(withStep(position, options), assumption);
  const range = rangeToBox(own, box);
  const reach = margin + ownDoubt;
  return {
    kind: 'bounds',
    least: Math.max(0, range.least - reach),
    greatest: Math.min(HALF_ROUND, range.greatest + reach),
    sector: sectorToBox(own, box, { margin, doubt: ownDoubt, range }),
    box: widenedBox(box, uncertainty),
    movement,
    area: widenedBox(box, margin),
    age: at === null ? null : (now - at) / 1000,
    assumption,
  };
}

/** Plain coordinates are a point, and how far it may be off has to be stated. */
function withStep(
  position: ReportedPosition | WrittenPosition | Coordinates,
  { uncertainty }: Parameters<typeof boundsFrom>[2],
): ReportedPosition | WrittenPosition {
  if (!isPlain(position)) return position;
  if (uncertainty !== undefined) return { ...position, step: 0 };
  throw new TypeError('boundsFrom: expected the uncertainty of plain coordinates in metres, got none');
}

function isPlain(position: ReportedPosition | WrittenPosition | Coordinates): position is Coordinates {
  const { latitude, step } = (position ?? {}) as Partial<WrittenPosition>;
  return typeof latitude === 'number' && step === undefined;
}

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
  want('boundsText', 'bounds, as boundsFrom gives them', bounds, 'least');
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
