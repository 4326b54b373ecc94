declare const brand: unique symbol;

/**
 * A maritime identity: nine ASCII digits of a form that ITU-R M.585 assigns, as text, because leading zeros
 * carry meaning. Made only by {@link parseIdentity} and {@link mmsi}; functions that only read one take `string`.
 */
export type Mmsi = string & { readonly [brand]: 'Mmsi' };

/** The parts of each form of identity, by its kind. */
export interface IdentityParts {
  /** Ship station or ship earth station, `MIDxxxxxx`: one identity for all fixed sets aboard. */
  readonly ship: {
    readonly mmsi: Mmsi;
    /** Maritime identification digits, three: the administration that issued the number, not the ship's flag today. */
    readonly mid: string;
  };
  /** Group of ship stations, `0MIDxxxxx`: fleet, club, race. Members may be of any flag. */
  readonly 'ship-group': {
    readonly mmsi: Mmsi;
    /** Maritime identification digits of the administration that assigned the group number, nothing more. */
    readonly mid: string;
  };
  /** Coast station, or a group of coast stations (same form), `00MIDxxxx`. */
  readonly coast: {
    readonly mmsi: Mmsi;
    /** Maritime identification digits of the country or area where the station is. */
    readonly mid: string;
    /** A hint, never proof: many administrations do not follow the optional scheme. */
    readonly categoryHint?: 'coast-radio' | 'harbour' | 'pilot' | 'ais-repeater' | 'ais-base';
  };
  /** All coast stations of one administration, `00MID0000`. */
  readonly 'coast-all-national': {
    readonly mmsi: Mmsi;
    readonly mid: string;
  };
  /** All VHF coast stations world-wide, `009990000`. The 999 is no MID. */
  readonly 'coast-all': {
    readonly mmsi: Mmsi;
  };
  /** Aircraft in search and rescue and other safety communication, `111MIDxxx`. */
  readonly 'sar-aircraft': {
    readonly mmsi: Mmsi;
    readonly mid: string;
    /** A hint, never proof. */
    readonly categoryHint?: 'fixed-wing' | 'helicopter';
  };
  /** All search and rescue aircraft of one administration, `111MID000`. */
  readonly 'sar-aircraft-all-national': {
    readonly mmsi: Mmsi;
    readonly mid: string;
  };
  /** Craft associated with a parent ship, `98MIDxxxx`: tender, lifeboat, rescue boat. */
  readonly craft: {
    readonly mmsi: Mmsi;
    readonly mid: string;
  };
  /** AIS aid to navigation, `99MIDxxxx`. */
  readonly aton: {
    readonly mmsi: Mmsi;
    readonly mid: string;
    /** A hint, never proof. A synthetic aid (real mark, AIS sent from elsewhere) counts as physical. */
    readonly categoryHint?: 'physical' | 'virtual' | 'mobile';
  };
  /** Hand-held VHF transceiver with DSC and satellite positioning, `8MIDxxxxx`. */
  readonly handheld: {
    readonly mmsi: Mmsi;
    /** Maritime identification digits of the administration that assigned the number. */
    readonly mid: string;
  };
  /** AIS search and rescue transmitter, `970xxyyyy`. Free form: no country in it, and two devices may have the same. */
  readonly 'ais-sart': {
    readonly mmsi: Mmsi;
    /** Two digits; `'00'` is for tests. */
    readonly manufacturer: string;
    /** Four digits. */
    readonly serial: string;
  };
  /** Man-overboard device, AIS or DSC, `972xxyyyy`. Free form: no country in it. */
  readonly mob: {
    readonly mmsi: Mmsi;
    /** Two digits; `'00'` is for tests. */
    readonly manufacturer: string;
    /** Four digits. */
    readonly serial: string;
  };
  /** The AIS transmitter inside an EPIRB, `974xxyyyy`; not an identity for its 406 MHz transmitter. */
  readonly 'epirb-ais': {
    readonly mmsi: Mmsi;
    /** Two digits; `'00'` is for tests. */
    readonly manufacturer: string;
    /** Four digits. */
    readonly serial: string;
  };
  /** Autonomous maritime radio device of group B, `979xxxxxx`: a net marker, for instance. */
  readonly 'amrd-b': {
    readonly mmsi: Mmsi;
    /** The six digits after 979: pseudo-random, so two devices may have the same. */
    readonly serial: string;
  };
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
export type Identity<Kind extends keyof IdentityParts = keyof IdentityParts> = {
  [K in Kind]: { readonly kind: K } & IdentityParts[K];
}[Kind];

/** Name of a form of identity, e.g. `'ship-group'`. */
export type IdentityKind = Identity['kind'];
