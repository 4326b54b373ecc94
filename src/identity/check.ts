import type { Notice } from '../result/index.ts';
import { type TermOf, want } from '../result/internal.ts';
import type { Identity, IdentityKind } from './identity.ts';
import { type fieldTexts, issue } from './texts.ts';

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
  want('usesOf', 'an identity', identity, 'kind');
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

/** Where an identity is to be used. */
export interface IdentityField {
  /**
   * `'own'`: programmed into a set as its own; `'individual'`, `'group'`: address of a call to one station or to a
   * group; `'distressed'`: the vessel in distress named in an acknowledgement or relay.
   */
  readonly use: 'own' | 'individual' | 'group' | 'distressed';
  /** The set the identity is for, `'fixed'` (aboard a ship) unless told otherwise. Matters for `use: 'own'`. */
  readonly station?: 'fixed' | 'handheld' | 'coast' | undefined;
  /** Nine digits of the calling station itself, to notice calls to oneself. */
  readonly own?: string | undefined;
}

/**
 * Whether an identity is sensible in a field: the third question, after well-formed ({@link parseIdentity}) and
 * assigned (`checkAssigned` of `seahail/identity/administrations`).
 *
 * Many sets take an own identity only once, and only a dealer can change it afterwards: ask for it twice where it is
 * about to be stored in a radio. National rules and the radio licence decide what a set may carry.
 *
 * @param identity - the identity as {@link parseIdentity} gave it
 * @param field - where it is to be used
 * @returns nothing where it is sensible; grade `'check'` for what a person should look at again, `'error'` where the
 * form of the identity is not for this use at all
 * @throws RangeError when the use or the station is none of those named
 *
 * Source: ITU-R M.585-10, M.493-16, from memory in parts; notices are common practice.
 *
 * @see {@link usesOf}
 *
 * @example
 * ```ts
 * import { checkIdentity, parseIdentity } from 'seahail/identity';
 * import { valueOf } from 'seahail/result';
 *
 * const club = valueOf(parseIdentity('023299905'));
 * console.log(checkIdentity(club, { use: 'own' })[0]?.message); // Own identity begins with 0, which marks a group: a ship's begins with 2 to 7
 * ```
 */
export function checkIdentity(identity: Identity, field: IdentityField): readonly Notice[] {
  want('checkIdentity', 'an identity', identity, 'kind');
  want('checkIdentity', 'its use', field);
  wantField(field);
  const { use, station = 'fixed' } = field;
  const refusal =
    use === 'own'
      ? whyNotOwn(identity.kind, station)
      : use === 'distressed'
        ? whyNotDistressed(identity.kind)
        : whyNotCalled(identity.kind, use);
  const received = `'${identity.mmsi}'`;
  if (refusal !== undefined)
    return [issue('identity-use', { reason: refusal }, { received, clause: 'ITU-R M.585-10' })];
  const usual = { received, clause: 'common practice' };
  if ((use === 'individual' || use === 'group') && field.own === identity.mmsi) {
    return [issue('identity-own-called', {}, usual)];
  }
  const doubt = use === 'own' ? doubtAboutOwn(identity, station) : undefined;
  return doubt === undefined ? [] : [issue('identity-station', { reason: doubt }, usual)];
}

const USES = ['own', 'individual', 'group', 'distressed'];
const STATIONS = ['fixed', 'handheld', 'coast'];

/** Throws on a use or station that is none. */
export function wantField({ use, station = 'fixed' }: IdentityField): void {
  if (!USES.includes(use))
    throw new RangeError(`checkIdentity: expected use to be one of ${USES.join(', ')}`);
  if (!STATIONS.includes(station))
    throw new RangeError(`checkIdentity: expected station to be one of ${STATIONS.join(', ')}`);
}

type Station = NonNullable<IdentityField['station']>;

function whyNotOwn(kind: IdentityKind, station: Station): TermOf<typeof fieldTexts, 'use'> | undefined {
  if (station === 'coast') return kind === 'coast' ? undefined : 'own-not-coast';
  switch (kind) {
    case 'ship-group':
      return 'own-group';
    case 'coast':
    case 'coast-all':
    case 'coast-all-national':
      return 'own-coast';
    case 'sar-aircraft-all-national':
      return 'own-aircraft-group';
    default:
      return usesOf({ kind }).own ? undefined : 'own-ais';
  }
}

function whyNotDistressed(kind: IdentityKind): TermOf<typeof fieldTexts, 'use'> | undefined {
  return usesOf({ kind }).own && kind !== 'coast' ? undefined : 'distressed';
}

function whyNotCalled(
  kind: IdentityKind,
  use: 'individual' | 'group',
): TermOf<typeof fieldTexts, 'use'> | undefined {
  const uses = usesOf({ kind });
  if (uses[use]) return undefined;
  if (uses.group) return 'called-group';
  if (uses.individual) return 'called-single';
  return kind === 'mob' ? 'called-mob' : 'called-ais';
}

function doubtAboutOwn(
  identity: Identity,
  station: Station,
): TermOf<typeof fieldTexts, 'station'> | undefined {
  // Ofcom guidance for UK ship radio licensing keeps a block apart for portable sets. deviation: D-identity-9
  const ukPortable = identity.mmsi.startsWith('2359');
  switch (identity.kind) {
    case 'ship':
      if (station === 'fixed') return ukPortable ? 'uk-portable' : undefined;
      return ukPortable ? undefined : 'ship-handheld';
    case 'handheld':
      return station === 'fixed' ? 'handheld-fixed' : undefined;
    case 'craft':
      return station === 'fixed' ? 'craft' : undefined;
    case 'mob':
      return 'mob';
    case 'sar-aircraft':
      return 'aircraft';
    default:
      return undefined;
  }
}
