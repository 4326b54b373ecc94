import type { Coordinates } from '../position/index.ts';

/** How a receiver came to its position; `'unstated'` in sentences of older editions. */
export type FixQuality = GnssFix['quality'];

/** Own position, course and speed from one sentence. */
export interface GnssFix {
  /** Sentence, or parameter group of the network, that it came in. */
  readonly formatter: 'RMC' | 'GLL' | 'GGA' | 'GNS' | `PGN ${number}`;
  /** `null` when the receiver marks it as not to be used, or when it could not be read. */
  readonly position: Coordinates | null;
  readonly quality:
    | 'none'
    | 'autonomous'
    | 'differential'
    | 'precise'
    | 'real-time-kinematic'
    | 'float-real-time-kinematic'
    | 'estimated'
    | 'manual'
    | 'simulated'
    | 'unstated';
  /** Time of day, UTC. */
  readonly time: {
    /** 0–23. */
    readonly hour: number;
    /** 0–59. */
    readonly minute: number;
    /** 0 up to but not including 61: a leap second is 60. */
    readonly second: number;
  } | null;
  /** Epoch milliseconds when the sentence carries a date too (`RMC`), else `null`. */
  readonly instant: number | null;
  /** Speed over ground, knots (`RMC` only). */
  readonly speed: number | null;
  /** Course over ground, degrees true (`RMC` only). */
  readonly course: number | null;
}

/** A time of day, UTC, as positioning sentences carry it. */
export type UtcTime = NonNullable<GnssFix['time']>;

/**
 * Quality by its number in `GGA` and in PGN 129029 (0 to 2 seen in equipment papers, the rest from memory); `'unstated'`
 * has none.
 */
export const FIX_QUALITIES: readonly FixQuality[] = [
  'none',
  'autonomous',
  'differential',
  'precise',
  'real-time-kinematic',
  'float-real-time-kinematic',
  'estimated',
  'manual',
  'simulated',
];
