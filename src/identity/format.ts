import { givenInWords } from '../result/internal.ts';
import { classify } from './classify.ts';
import type { Identity } from './identity.ts';

/**
 * Write an identity, for people by its parts: prefix, MID, then the rest (a ship's six digits in two threes).
 * {@link parseIdentity} reads both styles back.
 *
 * @param identity - an identity, or its nine ASCII digits; digits of no assigned form are grouped in threes
 * @param style - `'people'` unless told otherwise
 * @returns nine digits, with blanks between the parts for people
 * @throws RangeError when a text is not nine ASCII digits
 *
 * @example
 * ```ts
 * import { formatIdentity } from 'seahail/identity';
 *
 * console.log(formatIdentity('232999871')); // 232 999 871
 * console.log(formatIdentity('002329990')); // 00 232 9990
 * console.log(formatIdentity('023299905')); // 0 232 99905
 * ```
 */
export function formatIdentity(identity: Identity | string, style: 'people' | 'machine' = 'people'): string {
  const digits = typeof identity === 'string' ? identity : identity?.mmsi;
  if (typeof digits !== 'string' || !/^\d{9}$/.test(digits))
    throw new RangeError(`formatIdentity: expected nine digits, got ${givenInWords(identity)}`);
  if (style === 'machine') return digits;
  const [first, second] = cuts(classify(digits));
  return `${digits.slice(0, first)} ${digits.slice(first, second)} ${digits.slice(second)}`;
}

function cuts(identity: Identity | undefined): readonly [number, number] {
  switch (identity?.kind) {
    case 'ship-group':
    case 'handheld':
      return [1, 4];
    case 'coast':
    case 'coast-all-national':
    case 'coast-all':
    case 'craft':
    case 'aton':
      return [2, 5];
    case 'ais-sart':
    case 'mob':
    case 'epirb-ais':
      return [3, 5];
    default:
      return [3, 6];
  }
}
