import type { Coordinates } from './coordinates.ts';
import { requireFinite } from './require-number.ts';

/** A place to be handed on to another program: what {@link toGpx} and {@link toGeoJson} write. */
export interface Waypoint {
  readonly position: Coordinates;
  /** Short name, for example the ship's name or identity. */
  readonly name: string;
  /** When the position was true, epoch milliseconds; `null` when that is not known, as calls have it. */
  readonly time?: number | null | undefined;
  /** For people: what the call was. */
  readonly description?: string | undefined;
  /** Where the position came from, for example `DSC position reply`. */
  readonly source?: string | undefined;
  /** Kind of waypoint, one word. */
  readonly type?: string | undefined;
  /** The position is good to within so many metres. GPX has no element for it; GeoJSON carries it as a property. */
  readonly uncertainty?: number | undefined;
  /** What a map knows it by, so that a later report moves it instead of adding another: for example nine digits. */
  readonly id?: string | null | undefined;
  /** Anything else that an app wants to find again: `properties` of GeoJSON, `extensions` of GPX. */
  readonly properties?: Readonly<Record<string, string | number | boolean | null>> | undefined;
}

/** Decimals of a degree in files: 0.11 m, finer than the step of any call. */
export const FILE_DIGITS = 6;

/** UTC in the form that GPX and RFC 3339 share, without a fraction when there is none. */
export function utcText(instant: number): string {
  requireFinite('time', instant);
  const date = new Date(instant);
  const year = date.getUTCFullYear();
  if (!(year >= 1 && year <= 9999)) {
    throw new RangeError(`time: expected an instant of the years 1 to 9999, got ${instant}`);
  }
  return date.toISOString().replace('.000Z', 'Z');
}

/** A number as files want it: no exponent, no minus at zero. */
export function fixedText(value: number): string {
  const text = value.toFixed(FILE_DIGITS);
  return Number(text) === 0 ? text.replace('-', '') : text;
}
