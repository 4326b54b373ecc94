import type { IdentityKind } from './identity.ts';

/**
 * What an identity may do in a call.
 *
 * A coast station's identity may stand as own only on a coast station; a man-overboard device's only in calls of its
 * distress; {@link checkIdentity} looks at such circumstances.
 *
 * @param identity - an identity, or anything with its kind
 * @returns three answers
 *
 * Source: ITU-R M.585-10 and M.493-16, from memory in parts.
 *
 * @example
 * ```ts
 * import { usesOf } from 'seahail/identity';
 *
 * console.log(usesOf({ kind: 'ship-group' }).group, usesOf({ kind: 'ship-group' }).own); // true false
 * ```
 */
export function usesOf(identity: { readonly kind: IdentityKind }): {
  /** Allowed as the calling station's own identity. */
  readonly own: boolean;
  /** Allowed as the address of a call to one station; every 00 form is addressed this way. */
  readonly individual: boolean;
  /** Allowed as the address of a group call. */
  readonly group: boolean;
} {
  switch (identity.kind) {
    case 'ship':
    case 'coast':
    case 'sar-aircraft':
    case 'craft':
    case 'handheld':
      return { own: true, individual: true, group: false };
    case 'mob': // deviation: D-identity-6
      return { own: true, individual: false, group: false };
    case 'coast-all-national': // deviation: D-identity-7
    case 'coast-all':
      return { own: false, individual: true, group: false };
    case 'ship-group':
    case 'sar-aircraft-all-national':
      return { own: false, individual: false, group: true };
    case 'aton':
    case 'ais-sart':
    case 'epirb-ais':
    case 'amrd-b':
      return { own: false, individual: false, group: false };
  }
}
