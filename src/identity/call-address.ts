import { failure, type Notice, type Result, success } from '../result/index.ts';
import { givenInWords, quote } from '../result/internal.ts';
import { classify } from './classify.ts';
import type { Identity } from './identity.ts';
import { issue } from './texts.ts';

/**
 * The ten digits in which a call carries an identity: the nine and a tenth digit, ITU-R M.493-16 (from memory).
 *
 * @param mmsi - nine ASCII digits, of any form
 * @param tenthDigit - one ASCII digit; `'0'` unless several sets share the identity (ITU-R M.1080)
 * @returns ten ASCII digits, two to each of the five symbols
 * @throws RangeError when either text has another shape
 *
 * @see {@link decodeCallAddress}
 *
 * @example
 * ```ts
 * import { encodeCallAddress } from 'seahail/identity';
 *
 * console.log(encodeCallAddress('002329990')); // 0023299900
 * ```
 */
export function encodeCallAddress(mmsi: string, tenthDigit = '0'): string {
  if (typeof mmsi !== 'string' || !/^\d{9}$/.test(mmsi))
    throw new RangeError(`encodeCallAddress: expected nine digits, got ${givenInWords(mmsi)}`);
  if (typeof tenthDigit !== 'string' || !/^\d$/.test(tenthDigit))
    throw new RangeError('encodeCallAddress: expected one tenth digit');
  return mmsi + tenthDigit;
}

/**
 * Take the ten digits of a call's address or self-identification apart. Nothing received is thrown away: a tenth
 * digit other than 0 and nine digits of no assigned form are kept, each with a notice.
 *
 * Not for the address of an area call: its ten digits are a position.
 *
 * @param tenDigits - ten ASCII digits
 * @returns the nine digits, the tenth, and the identity where there is one; an issue for any other shape
 *
 * Source: ITU-R M.493-16 and M.1080, from memory; what tenth digits 1 to 9 mean is not confirmed.
 *
 * @see {@link encodeCallAddress}
 * @see {@link parseIdentity}
 *
 * @example
 * ```ts
 * import { decodeCallAddress } from 'seahail/identity';
 *
 * const address = decodeCallAddress('0023299900');
 * if (address.ok) console.log(address.value.digits, address.value.identity?.kind); // 002329990 coast
 * ```
 */
export function decodeCallAddress(tenDigits: unknown): Result<{
  /** The first nine digits, as received. */
  readonly digits: string;
  /** The tenth digit: `'0'`, unless several sets share one identity or the call was damaged. */
  readonly tenthDigit: string;
  /** The identity, where the nine digits have an assigned form. */
  readonly identity?: Identity;
}> {
  const text = typeof tenDigits === 'string' ? tenDigits : '';
  const received = typeof tenDigits === 'string' ? quote(tenDigits) : typeof tenDigits;
  const about = { received, clause: 'ITU-R M.493-16' };
  if (!/^\d{10}$/.test(text)) {
    return failure(issue('identity-address-shape', {}, about));
  }
  const digits = text.slice(0, 9);
  const tenthDigit = text.slice(9);
  const identity = classify(digits);
  const notices: Notice[] = [];
  if (tenthDigit !== '0') {
    // deviation: D-identity-5
    notices.push(issue('identity-tenth-digit', { digit: tenthDigit }, about));
  }
  if (identity === undefined) {
    notices.push(issue('identity-address-unassigned', { digits }, { received, clause: 'ITU-R M.585-10' }));
  }
  return success({ digits, tenthDigit, ...(identity !== undefined && { identity }) }, notices);
}
