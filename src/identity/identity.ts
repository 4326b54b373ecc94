declare const brand: unique symbol;

/**
 * A maritime identity: nine ASCII digits of a form that ITU-R M.585 assigns, as text, because leading zeros
 * carry meaning. Made only by {@link parseIdentity} and {@link mmsi}; functions that only read one take `string`.
 */
export type Mmsi = string & { readonly [brand]: 'Mmsi' };

/** Ship station or ship earth station, `MIDxxxxxx`: one identity for all fixed sets aboard. */
export interface ShipIdentity {
  readonly kind: 'ship';
  readonly mmsi: Mmsi;
  /** Maritime identification digits, three: the administration that issued the number, not the ship's flag today. */
  readonly mid: string;
}

/** Group of ship stations, `0MIDxxxxx`: fleet, club, race. Members may be of any flag. */
export interface ShipGroupIdentity {
  readonly kind: 'ship-group';
  readonly mmsi: Mmsi;
  /** Maritime identification digits of the administration that assigned the group number, nothing more. */
  readonly mid: string;
}

/** What the sixth digit of a coast station says where an administration follows the optional scheme. */
export type CoastCategory = 'coast-radio' | 'harbour' | 'pilot' | 'ais-repeater' | 'ais-base';

/** Coast station, or a group of coast stations (same form), `00MIDxxxx`. */
export interface CoastIdentity {
  readonly kind: 'coast';
  readonly mmsi: Mmsi;
  /** Maritime identification digits of the country or area the station stands in. */
  readonly mid: string;
  /** A hint, never proof: many administrations do not follow the optional scheme. */
  readonly categoryHint?: CoastCategory;
}

/** All coast stations of one administration, `00MID0000`. */
export interface NationalCoastIdentity {
  readonly kind: 'coast-all-national';
  readonly mmsi: Mmsi;
  readonly mid: string;
}

/** All VHF coast stations world-wide, `009990000`. The 999 is no MID. */
export interface AllCoastIdentity {
  readonly kind: 'coast-all';
  readonly mmsi: Mmsi;
}

/** What the seventh digit of a search and rescue aircraft says where the optional scheme is followed. */
export type AircraftCategory = 'fixed-wing' | 'helicopter';

/** Aircraft in search and rescue and other safety communication, `111MIDxxx`. */
export interface SarAircraftIdentity {
  readonly kind: 'sar-aircraft';
  readonly mmsi: Mmsi;
  readonly mid: string;
  /** A hint, never proof. */
  readonly categoryHint?: AircraftCategory;
}

/** All search and rescue aircraft of one administration, `111MID000`. */
export interface NationalSarAircraftIdentity {
  readonly kind: 'sar-aircraft-all-national';
  readonly mmsi: Mmsi;
  readonly mid: string;
}

/** Craft associated with a parent ship, `98MIDxxxx`: tender, lifeboat, rescue boat. */
export interface CraftIdentity {
  readonly kind: 'craft';
  readonly mmsi: Mmsi;
  readonly mid: string;
}

/** What the sixth digit of an aid to navigation says where the optional scheme is followed. */
export type AtonCategory = 'physical' | 'virtual' | 'mobile';

/** AIS aid to navigation, `99MIDxxxx`. */
export interface AtonIdentity {
  readonly kind: 'aton';
  readonly mmsi: Mmsi;
  readonly mid: string;
  /** A hint, never proof. A synthetic aid (real mark, AIS sent from elsewhere) counts as physical. */
  readonly categoryHint?: AtonCategory;
}

/** Hand-held VHF transceiver with DSC and satellite positioning, `8MIDxxxxx`. */
export interface HandheldIdentity {
  readonly kind: 'handheld';
  readonly mmsi: Mmsi;
  /** Maritime identification digits of the administration that assigned the number. */
  readonly mid: string;
}

/** AIS search and rescue transmitter, `970xxyyyy`. Free form: no country in it, and two devices may have the same. */
export interface AisSartIdentity {
  readonly kind: 'ais-sart';
  readonly mmsi: Mmsi;
  /** Two digits; `'00'` is for tests. */
  readonly manufacturer: string;
  /** Four digits. */
  readonly serial: string;
}

/** Man-overboard device, AIS or DSC, `972xxyyyy`. Free form: no country in it. */
export interface MobIdentity {
  readonly kind: 'mob';
  readonly mmsi: Mmsi;
  /** Two digits; `'00'` is for tests. */
  readonly manufacturer: string;
  /** Four digits. */
  readonly serial: string;
}

/** The AIS transmitter inside an EPIRB, `974xxyyyy`; not an identity for its 406 MHz transmitter. */
export interface EpirbAisIdentity {
  readonly kind: 'epirb-ais';
  readonly mmsi: Mmsi;
  /** Two digits; `'00'` is for tests. */
  readonly manufacturer: string;
  /** Four digits. */
  readonly serial: string;
}

/** Autonomous maritime radio device of group B, `979xxxxxx`: a net marker, for instance. */
export interface AmrdBIdentity {
  readonly kind: 'amrd-b';
  readonly mmsi: Mmsi;
  /** The six digits after 979: pseudo-random, so two devices may have the same. */
  readonly serial: string;
}

/**
 * A maritime identity with its parts, by form of ITU-R M.585-10. Plain data: it survives JSON and structured clone.
 *
 * @example
 * ```ts
 * import { parseIdentity, type Identity } from 'seahail/identity';
 *
 * function issuedBy(identity: Identity): string {
 *   return 'mid' in identity ? `number issued under MID ${identity.mid}` : 'no country in this number';
 * }
 *
 * const result = parseIdentity('972009914');
 * if (result.ok) console.log(issuedBy(result.value)); // no country in this number
 * ```
 */
export type Identity =
  | ShipIdentity
  | ShipGroupIdentity
  | CoastIdentity
  | NationalCoastIdentity
  | AllCoastIdentity
  | SarAircraftIdentity
  | NationalSarAircraftIdentity
  | CraftIdentity
  | AtonIdentity
  | HandheldIdentity
  | AisSartIdentity
  | MobIdentity
  | EpirbAisIdentity
  | AmrdBIdentity;

/** Name of a form of identity, e.g. `'ship-group'`. */
export type IdentityKind = Identity['kind'];
