import type { IdentityKind, Mmsi } from '../identity/index.ts';

/**
 * Where a piece of knowledge came from: a person, a list that was read in, a broadcast of the ship's own data by AIS,
 * or a call that carried only the identity. In this order of trust: nothing replaces a text of higher trust.
 */
export type StationOrigin = 'typed' | 'imported' | 'ais' | 'heard';

/** A text that has no place of its own in {@link KnownStation}: another column of a list, another property of a card. */
export type ExtraField = NonNullable<KnownStation['extra']>[number];

/** One station of a {@link Directory}. Plain data. */
export interface KnownStation {
  readonly mmsi: Mmsi;
  /** Form of the identity, for convenience: it follows from the digits. */
  readonly kind: IdentityKind;
  /** Name on one line. */
  readonly name?: string;
  /** Upper-case call sign. */
  readonly callSign?: string;
  /** Free text, lines parted by `\n`. */
  readonly notes?: string;
  /** Group identities the station belongs to, in order of their digits, none twice. */
  readonly groups: readonly Mmsi[];
  /** Where the entry (the most trusted origin so far) and each text came from. */
  readonly origins: {
    readonly entry: StationOrigin;
    readonly name?: StationOrigin;
    readonly callSign?: StationOrigin;
    readonly notes?: StationOrigin;
  };
  /** When last heard on a call or by AIS, epoch milliseconds. */
  readonly heardAt?: number;
  /** When last called from here, epoch milliseconds. */
  readonly calledAt?: number;
  /** What was imported beside the known fields, in order of its labels. */
  readonly extra?: readonly { readonly label: string; readonly text: string }[];
}

/** Origin of a {@link KnownStation} and of its texts. */
export type StationOrigins = KnownStation['origins'];

/** Something learnt about a station, to be remembered. */
export interface StationUpdate {
  /** Nine digits of an assigned form. */
  readonly mmsi: string;
  readonly origin: StationOrigin;
  /** Empty text from a person clears the field; from elsewhere it says nothing. */
  readonly name?: string | undefined;
  /** As {@link StationUpdate.name}. */
  readonly callSign?: string | undefined;
  /** As {@link StationUpdate.name}. */
  readonly notes?: string | undefined;
  /** Group identities to add to those known. */
  readonly groups?: readonly string[] | undefined;
  /** Whole epoch milliseconds; the latest stays. */
  readonly heardAt?: number | undefined;
  /** Whole epoch milliseconds; the latest stays. */
  readonly calledAt?: number | undefined;
  /** A field with a known label replaces the one before. */
  readonly extra?: KnownStation['extra'] | undefined;
}

/** Known stations, one for each identity, in order of digits. Plain data: store it as JSON. */
export interface Directory {
  readonly kind: 'directory';
  readonly stations: readonly KnownStation[];
}
