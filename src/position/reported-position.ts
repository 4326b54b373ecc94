import { failure, type Result, success } from '../result/index.ts';
import { type CodeOf, type Failure, quote } from '../result/internal.ts';
import { padded, quadrantDigit, quadrantOf } from './quadrant.ts';
import { digitIssue, type digitTexts, rangeIssue, type rangeTexts } from './texts.ts';

/** A position as a selective call carries it: digits, not a point. For the places it covers see {@link boxOf}. */
export interface ReportedPosition {
  readonly kind: 'reported-position';
  readonly latitude: {
    readonly hemisphere: 'N' | 'S';
    /** Whole degrees, 0 to 90. */
    readonly degrees: number;
    /** Whole minutes, 0 to 59. */
    readonly minutes: number;
  };
  readonly longitude: {
    readonly hemisphere: 'E' | 'W';
    /** Whole degrees, 0 to 180. */
    readonly degrees: number;
    /** Whole minutes, 0 to 59. */
    readonly minutes: number;
  };
  /** Present when the call had the enhanced position with it. */
  readonly fraction?: {
    readonly latitude: number;
    readonly longitude: number;
  };
}

/** The ten nines of a station that has no position to give. */
export interface NoPosition {
  readonly kind: 'no-position';
}

/**
 * The same position with a check that it is one of a call: a fix in degrees is easily handed in where its report belongs.
 *
 * @throws RangeError when it is anything else
 */
export function requireReported(position: ReportedPosition): ReportedPosition {
  if (position?.kind === 'reported-position') return position;
  throw new RangeError(
    'position: expected the position of a call; toReportedPosition makes one of coordinates',
  );
}

const DIGITS_CLAUSE = 'ITU-R M.493-16, position coordinates';
const FRACTION_CLAUSE = 'ITU-R M.821, enhanced position resolution';
const NO_POSITION = '9999999999';

/**
 * Reads the position digits of a call, and the enhanced digits that may follow in the expansion.
 *
 * @param digits - ten digits: quadrant (0 NE, 1 NW, 2 SE, 3 SW), latitude degrees and minutes (4), longitude degrees
 * and minutes (5); ten nines mean that the station has no position
 * @param fraction - eight digits, ten-thousandths of a minute of latitude and of longitude
 * @returns the position or {@link NoPosition}; issues when the digits cannot be a position. Never throws.
 *
 * Source: ITU-R M.493 and M.821, from memory.
 *
 * @see {@link boxOf}
 * @see {@link centreOf}
 * @see {@link boundsFrom}
 *
 * @example
 * ```ts
 * import { formatReportedPosition, decodePosition } from 'seahail/position';
 * import { valueOf } from 'seahail/result';
 *
 * const position = valueOf(decodePosition('1562000630', '33001200'));
 * console.log(formatReportedPosition(position)); // 56°20.3300′ N 006°30.1200′ W
 * ```
 */
export function decodePosition(digits: unknown, fraction?: unknown): Result<ReportedPosition | NoPosition> {
  if (typeof digits !== 'string' || !/^\d{10}$/.test(digits)) {
    return wrong('position-digits', digits, DIGITS_CLAUSE, ['digits']);
  }
  if (digits === NO_POSITION) {
    if (fraction === undefined) return success({ kind: 'no-position' });
    const alone = { at: ['fraction'], received: shown(fraction), clause: FRACTION_CLAUSE };
    return success({ kind: 'no-position' }, [digitIssue('position-fraction-alone', {}, alone)]);
  }
  const quadrant = quadrantOf(digits.charAt(0));
  if (quadrant === undefined) {
    return wrong('position-quadrant', digits[0], DIGITS_CLAUSE, ['digits', 0]);
  }
  const [latitudeDegrees, latitudeMinutes] = [Number(digits.slice(1, 3)), Number(digits.slice(3, 5))];
  const [longitudeDegrees, longitudeMinutes] = [Number(digits.slice(5, 8)), Number(digits.slice(8, 10))];
  const pastAt = (code: CodeOf<typeof rangeTexts>, from: number, to: number): Failure =>
    past(code, digits.slice(from, to), DIGITS_CLAUSE, ['digits', from]);
  if (latitudeMinutes > 59) return pastAt('position-minutes', 3, 5);
  if (longitudeMinutes > 59) return pastAt('position-minutes', 8, 10);
  if (latitudeDegrees * 60 + latitudeMinutes > 90 * 60) {
    return pastAt('position-latitude-range', 1, 5);
  }
  if (longitudeDegrees * 60 + longitudeMinutes > 180 * 60) {
    return pastAt('position-longitude-range', 5, 10);
  }
  const whole: ReportedPosition = {
    kind: 'reported-position',
    latitude: { hemisphere: quadrant[0], degrees: latitudeDegrees, minutes: latitudeMinutes },
    longitude: { hemisphere: quadrant[1], degrees: longitudeDegrees, minutes: longitudeMinutes },
  };
  return fraction === undefined ? success(whole) : refinePosition(whole, fraction);
}

/**
 * Adds the enhanced digits, which often arrive after the position itself, to a position of whole minutes.
 *
 * @param position - the position of the call; decimals that it already has are replaced
 * @param fraction - eight digits, ten-thousandths of a minute of latitude and of longitude
 * @returns the finer position; an issue when the digits are not eight or lead past a pole or the 180th meridian
 *
 * Source: ITU-R M.821, from memory.
 */
export function refinePosition(position: ReportedPosition, fraction: unknown): Result<ReportedPosition> {
  if (typeof fraction !== 'string' || !/^\d{8}$/.test(fraction)) {
    return wrong('position-fraction-digits', fraction, FRACTION_CLAUSE, ['fraction']);
  }
  const [north, east] = [Number(fraction.slice(0, 4)), Number(fraction.slice(4))];
  const { latitude, longitude } = position;
  if (latitude.degrees === 90 && north > 0) {
    return past('position-latitude-range', fraction.slice(0, 4), FRACTION_CLAUSE, ['fraction', 0]);
  }
  if (longitude.degrees === 180 && east > 0) {
    return past('position-longitude-range', fraction.slice(4), FRACTION_CLAUSE, ['fraction', 4]);
  }
  return success({
    kind: position.kind,
    latitude,
    longitude,
    fraction: { latitude: north, longitude: east },
  });
}

/**
 * The digits of a position, as they go into a call.
 *
 * @param position - a position, or none
 * @returns the ten digits, and the eight of the expansion when the position has decimals
 * @throws RangeError when a field is outside its range, or it is no position of a call
 *
 * @example
 * ```ts
 * import { encodePosition, toReportedPosition } from 'seahail/position';
 *
 * const position = toReportedPosition({ latitude: 56.338833, longitude: -6.502 });
 * console.log(encodePosition(position).digits); // 1562000630
 * ```
 */
export function encodePosition(position: ReportedPosition | NoPosition): {
  /** Ten digits: quadrant, latitude degrees and minutes, longitude degrees and minutes. */
  readonly digits: string;
  /** Eight digits: four decimals of the latitude minute, four of the longitude minute. */
  readonly fraction?: string;
} {
  if (position?.kind === 'no-position') return { digits: NO_POSITION };
  const { latitude, longitude, fraction } = requireReported(position);
  const quadrant = quadrantDigit(latitude.hemisphere, longitude.hemisphere);
  const digits =
    `${quadrant}${padded(latitude.degrees, 2)}${padded(latitude.minutes, 2)}` +
    `${padded(longitude.degrees, 3)}${padded(longitude.minutes, 2)}`;
  const fine = fraction && `${padded(fraction.latitude, 4)}${padded(fraction.longitude, 4)}`;
  const read = decodePosition(digits, fine);
  if (!read.ok) throw new RangeError(read.issues[0].message);
  return fine === undefined ? { digits } : { digits, fraction: fine };
}

/**
 * A reported position for people, in no finer steps than it came in.
 *
 * @param position - a position, or none
 * @returns text such as `56°20′ N 006°30′ W` or `56°20.3300′ N 006°30.1200′ W`; `no position` for ten nines
 * @throws RangeError when it is no position of a call
 *
 * @example
 * ```ts
 * import { formatReportedPosition } from 'seahail/position';
 *
 * console.log(formatReportedPosition({ kind: 'no-position' })); // no position
 * ```
 */
export function formatReportedPosition(position: ReportedPosition | NoPosition): string {
  if (position?.kind === 'no-position') return 'no position';
  const { latitude, longitude, fraction } = requireReported(position);
  const decimals = (value: number | undefined) => (value === undefined ? '' : `.${padded(value, 4)}`);
  return (
    `${padded(latitude.degrees, 2)}°${padded(latitude.minutes, 2)}${decimals(fraction?.latitude)}′ ${latitude.hemisphere} ` +
    `${padded(longitude.degrees, 3)}°${padded(longitude.minutes, 2)}${decimals(fraction?.longitude)}′ ${longitude.hemisphere}`
  );
}

function wrong(
  code: CodeOf<typeof digitTexts>,
  received: unknown,
  clause: string,
  at: (string | number)[],
): Failure {
  return failure(digitIssue(code, {}, { at, received: shown(received), clause }));
}

function past(
  code: CodeOf<typeof rangeTexts>,
  received: string,
  clause: string,
  at: (string | number)[],
): Failure {
  return failure(rangeIssue(code, {}, { at, received: quote(received), clause }));
}

/** What was given in the place of digits. */
export function shown(received: unknown): string {
  return typeof received === 'string' ? quote(received) : typeof received;
}
