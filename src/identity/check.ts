import { failure, type Issue, type Notice, type Result, success } from '../result/index.ts';
import type { Identity, IdentityKind } from './identity.ts';
import { usesOf } from './uses.ts';

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
 * @returns the identity, with notices for what a person should look at again; an issue where the form of the
 * identity is not for this use at all
 * @throws RangeError when the use or the station is none of those named
 *
 * Source: ITU-R M.585-10, M.493-16, from memory in parts; notices are common practice.
 *
 * @see {@link usesOf}
 *
 * @example
 * ```ts
 * import { checkIdentity, parseIdentity } from 'seahail/identity';
 *
 * const club = parseIdentity('023299905');
 * const answer = club.ok ? checkIdentity(club.value, { use: 'own' }) : club;
 * if (!answer.ok) console.log(answer.issues[0].message); // Own identity begins with 0, which marks a group: a ship's begins with 2 to 7
 * ```
 */
export function checkIdentity(identity: Identity, field: IdentityField): Result<Identity> {
  wantField(field);
  const { use, station = 'fixed' } = field;
  const refusal =
    use === 'own'
      ? whyNotOwn(identity.kind, station)
      : use === 'distressed'
        ? whyNotDistressed(identity.kind)
        : whyNotCalled(identity.kind, use);
  if (refusal !== undefined) return failure(finding(identity, 'identity-use', refusal, 'ITU-R M.585-10'));
  if ((use === 'individual' || use === 'group') && field.own === identity.mmsi) {
    return failure(
      finding(
        identity,
        'identity-own-called',
        'Address is the own identity: expected another station',
        'common practice',
      ),
    );
  }
  const doubt = use === 'own' ? doubtAboutOwn(identity, station) : undefined;
  const notices: Notice[] =
    doubt === undefined ? [] : [finding(identity, 'identity-station', doubt, 'common practice')];
  return success(identity, notices);
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

function whyNotOwn(kind: IdentityKind, station: Station): string | undefined {
  if (station === 'coast') {
    return kind === 'coast'
      ? undefined
      : 'Own identity is not a coast station: theirs begin with 00 and a MID';
  }
  switch (kind) {
    case 'ship-group':
      return "Own identity begins with 0, which marks a group: a ship's begins with 2 to 7";
    case 'coast':
    case 'coast-all':
    case 'coast-all-national':
      return "Own identity begins with 00, which marks coast stations: a ship's begins with 2 to 7";
    case 'sar-aircraft-all-national':
      return 'Own identity is a group of aircraft: expected a single station';
    default:
      return usesOf({ kind }).own ? undefined : aisDevice('Own identity');
  }
}

function whyNotDistressed(kind: IdentityKind): string | undefined {
  if (usesOf({ kind }).own && kind !== 'coast') return undefined;
  return 'Vessel in distress has an identity that no vessel, aircraft or person uses in calls';
}

function whyNotCalled(kind: IdentityKind, use: 'individual' | 'group'): string | undefined {
  const uses = usesOf({ kind });
  if (uses[use]) return undefined;
  if (uses.group) return 'Address is a group: a group call reaches it, not a call to one station';
  if (uses.individual) return 'Address is not a group: the identity of a group of ships begins with one 0';
  return kind === 'mob'
    ? 'Address is a man-overboard device, which does not take ordinary calls'
    : aisDevice('Address');
}

function aisDevice(field: string): string {
  return `${field} belongs to an AIS device, which takes no part in calls`;
}

function doubtAboutOwn(identity: Identity, station: Station): string | undefined {
  // Ofcom guidance for UK ship radio licensing keeps a block apart for portable sets. deviation: D-identity-9
  const ukPortable = identity.mmsi.startsWith('2359');
  switch (identity.kind) {
    case 'ship':
      if (station === 'fixed') {
        return ukPortable
          ? 'Own identity begins with 2359, usually a UK portable radio: check the licence'
          : undefined;
      }
      return ukPortable
        ? undefined
        : 'Own identity is a ship: countries differ on whether a hand-held radio may use it, check the licence';
    case 'handheld':
      return station === 'fixed'
        ? 'Own identity is for a hand-held radio, but this radio is fixed'
        : undefined;
    case 'craft':
      return station === 'fixed'
        ? "Own identity is for a tender or survival craft, not for the ship's radio"
        : undefined;
    case 'mob':
      return 'Own identity is for a man-overboard device, but this radio is not one';
    case 'sar-aircraft':
      return 'Own identity is for an aircraft, but this radio is aboard a vessel';
    default:
      return undefined;
  }
}

function finding(identity: Identity, code: string, message: string, clause: string): Issue {
  return { code, message, at: [], received: `'${identity.mmsi}'`, clause };
}
