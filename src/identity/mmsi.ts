import { classify } from './classify.ts';
import type { Mmsi } from './identity.ts';

/**
 * Whether a value is an identity as machines write it: text of nine ASCII digits in an assigned form.
 *
 * @param value - anything
 * @returns `true` exactly when {@link parseIdentity} accepts the value without having to tidy it
 *
 * @example
 * ```ts
 * import { isMmsi } from 'seahail/identity';
 *
 * console.log(isMmsi('002320014'), isMmsi('232 878 000'), isMmsi(232878000)); // true false false
 * ```
 */
export function isMmsi(value: unknown): value is Mmsi {
  return typeof value === 'string' && classify(value) !== undefined;
}

/**
 * An identity written by a programmer, as a constant for instance. For text from outside use {@link parseIdentity}.
 *
 * @param text - nine ASCII digits of an assigned form, nothing else
 * @returns the same text, typed
 * @throws RangeError when the text is anything else
 *
 * @example
 * ```ts
 * import { mmsi } from 'seahail/identity';
 *
 * const falmouthCoastguard = mmsi('002320014');
 * console.log(falmouthCoastguard); // 002320014
 * ```
 */
export function mmsi(text: string): Mmsi {
  if (!isMmsi(text)) throw new RangeError('mmsi: nine digits of an assigned form wanted');
  return text;
}
