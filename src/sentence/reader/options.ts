import { type Symbols, symbolsOf } from '../../call/index.ts';
import type { Direction } from '../dsc/station-field.ts';

/** What a reader of sentences is told. */
export interface ReaderOptions {
  /** Which way the `DSC` sentences travel: from the radio (`'received'`, the default) or to it (`'commanded'`). */
  readonly direction?: Direction;
  /**
   * Own identity, nine digits. Sentences never carry it: with it, calls to one station that were received
   * are addressed to it, and commanded calls come from it.
   */
  readonly own?: string;
  /** Instant of receipt, epoch milliseconds, for whatever carries no time of its own: a log that was just saved. */
  readonly now?: number;
  /** Milliseconds to wait for an announced expansion; 2000 unless given. No standard says how long. */
  readonly wait?: number;
  /** Sentences to let pass while waiting when nothing tells the time; 24 unless given, two seconds' worth at 4800 bit/s. */
  readonly waitSentences?: number;
  /** Whether sentences without a checksum are read, marked `'unchecked'`; not unless asked for. */
  readonly unchecked?: boolean;
}

/** {@link ReaderOptions} with nothing left open. deviation: D-sentence-7 (how long to wait) */
export interface ReaderSettings {
  readonly direction: Direction;
  readonly own: Symbols | null;
  readonly now: number | null;
  readonly wait: number;
  readonly waitSentences: number;
  readonly unchecked: boolean;
}

/**
 * Fills in what was not said.
 *
 * @throws RangeError when the own identity is not nine digits or a number is negative or none
 */
export function settingsOf(options: ReaderOptions): ReaderSettings {
  const { direction = 'received', own, now, wait = 2000, waitSentences = 24, unchecked = false } = options;
  if (own !== undefined && !/^\d{9}$/.test(own))
    throw new RangeError(`own: nine digits are needed, not '${own}'`);
  if (!(wait >= 0)) throw new RangeError(`wait: milliseconds are needed, not ${wait}`);
  if (!(waitSentences >= 0)) throw new RangeError(`waitSentences: a count is needed, not ${waitSentences}`);
  if (now !== undefined && !Number.isFinite(now))
    throw new RangeError(`now: an instant is needed, not ${now}`);
  return {
    direction,
    own: own === undefined ? null : symbolsOf(`${own}0`),
    now: now ?? null,
    wait,
    waitSentences,
    unchecked,
  };
}
