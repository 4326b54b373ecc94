import type { TagBlock } from './tag-block.ts';

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
  /** Who speaks: two characters, e.g. `'CD'`; `'P'` in a proprietary sentence. */
  readonly talker: string;
  /** What is said: three characters, e.g. `'DSC'`; everything after the `P` in a proprietary sentence. */
  readonly formatter: string;
  /** The fields after the address, blanks around them removed, `^hh` escapes left as they are. */
  readonly fields: readonly string[];
  /** `'right'`, or `'unchecked'` when it was missing and the caller asked to have such lines. */
  readonly checksum: 'right' | 'unchecked';
  /** The TAG block that stood in front, if any. */
  readonly tag: TagBlock | null;
  /** The sentence as it stood, from its start character to the end of its checksum. */
  readonly raw: string;
}
