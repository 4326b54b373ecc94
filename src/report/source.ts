/** The text between two backslashes before a sentence (NMEA 0183 version 4 and IEC 61162-450, TAG block). */
export type TagBlock = NonNullable<Sentence['tag']>;

/**
 * One sentence of IEC 61162-1, taken apart but not yet understood.
 *
 * Fields are strings and stay strings: leading zeros carry meaning (a quadrant, a coast station,
 * an early hour).
 */
export interface Sentence {
  readonly kind: 'sentence';
  /** `'$'` for fields split by commas, `'!'` for encapsulated data (AIS). */
  readonly start: '$' | '!';
  /** `'standard'` (talker and formatter), `'query'` (`ttllQ`) or `'proprietary'` (`P` and a maker's code). */
  readonly form: 'standard' | 'query' | 'proprietary';
  /** Talker: two characters, e.g. `'CD'`; `'P'` in a proprietary sentence. */
  readonly talker: string;
  /** Sentence formatter: three characters, e.g. `'DSC'`; everything after the `P` in a proprietary sentence. */
  readonly formatter: string;
  /** The fields after the address, blanks around them removed, `^hh` escapes left as they are. */
  readonly fields: readonly string[];
  /** `'right'`, or `'unchecked'` when it was missing and the caller asked to have such lines. */
  readonly checksum: 'right' | 'unchecked';
  /** The TAG block that stood in front, if any. */
  readonly tag: {
    /** Parameter `s`: which device sent the sentence. */
    readonly source?: string;
    /** Parameter `d`: for which device it is. */
    readonly destination?: string;
    /** Parameter `c`: when, in epoch milliseconds. */
    readonly time?: number;
    /** Parameter `g`: which sentences belong together. */
    readonly group?: { readonly number: number; readonly total: number; readonly id: number };
    /** Parameter `n`: line count. */
    readonly lineCount?: number;
    /** Parameter `r`: relative time, in the unit of the sender. */
    readonly relativeTime?: number;
    /** Parameter `t`. */
    readonly text?: string;
    /** Every parameter as it stood, letter and value, in order. */
    readonly parameters: readonly (readonly [letter: string, value: string])[];
  } | null;
  /** The sentence as it stood, from its start character to the end of its checksum. */
  readonly raw: string;
}

/** One message of the network of IEC 61162-3, put together from its frames but not yet understood. */
export interface NetworkMessage {
  readonly kind: 'network-message';
  /** Parameter group number. */
  readonly pgn: number;
  /** 0 (highest) to 7. */
  readonly priority: number;
  /** Address of the sender. */
  readonly source: number;
  /** Address it is for; 255 for everyone. */
  readonly destination: number;
  /** The bytes, two hexadecimal digits each. */
  readonly payload: string;
  /** For people: parameter group, sender and payload in one line. */
  readonly raw: string;
}
