import { classify } from './classify.ts';
import type { Mmsi } from './identity.ts';

/**
 * Whether a value is an identity as machines write it: text of nine ASCII digits in an assigned form.
 *
 * @param value - anything
 * @returns `true` exactly when {@link parseIdentity} accepts the value without having to tidy it
 */
export function isMmsi(value: unknown): value is Mmsi {
  return classify(value as string) !== undefined;
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
 * const skerraCoastguard = mmsi('002329990');
 * console.log(skerraCoastguard); // 002329990
 * ```
 */
export function mmsi(text: string): Mmsi {
  if (!isMmsi(text)) throw new RangeError('mmsi: expected nine digits in an assigned format');
  return text;
}
