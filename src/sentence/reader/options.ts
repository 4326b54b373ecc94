import type { Symbols } from '../../call/index.ts';
import { symbolsOf } from '../../call/internal.ts';
import { requireIdentity, requireInstant, requireOneOf } from '../arguments.ts';
import { DIRECTIONS } from '../dsc/read-dsc.ts';

/** Options of a sentence reader. */
export interface ReaderOptions {
  /** Which way the `DSC` sentences travel: from the radio (`'received'`, the default) or to it (`'commanded'`). */
  readonly direction?: 'received' | 'commanded' | undefined;
  /**
   * Own identity, nine digits. Sentences never carry it: with it, calls to one station that were received
   * are addressed to it, and commanded calls come from it.
   */
  readonly own?: string | undefined;
  /** Instant of receipt, epoch milliseconds, for whatever carries no time of its own: a log that was just saved. */
  readonly now?: number | undefined;
  /** Milliseconds to wait for an announced expansion; 2000 unless given. No standard says how long. */
  readonly waitMs?: number | undefined;
  /** Sentences to let pass while waiting when nothing gives the time; 24 unless given, two seconds' worth at 4800 bit/s. */
  readonly waitSentences?: number | undefined;
  /** Whether sentences without a checksum are read, marked `'unchecked'`; not unless asked for. */
  readonly unchecked?: boolean | undefined;
}

/** {@link ReaderOptions} with nothing left open. deviation: D-sentence-7 (how long to wait) */
export interface ReaderSettings {
  readonly direction: 'received' | 'commanded';
  readonly own: Symbols | null;
  readonly now: number | null;
  readonly waitMs: number;
  readonly waitSentences: number;
  readonly unchecked: boolean;
}

/**
 * Fills in what was not said.
 *
 * @throws TypeError when the own identity is no text
 * @throws RangeError when it is not nine digits, the direction is none, or a number is negative or none
 */
export function settingsOf(options: ReaderOptions): ReaderSettings {
  const {
    direction = 'received',
    own,
    now,
    waitMs = 2000,
    waitSentences = 24,
    unchecked = false,
  } = options ?? {};
  requireOneOf('direction', direction, DIRECTIONS);
  if (own !== undefined) requireIdentity('own', own);
  if (!isNotNegative(waitMs)) throw new RangeError(`waitMs: expected milliseconds, got ${waitMs}`);
  if (!isNotNegative(waitSentences))
    throw new RangeError(`waitSentences: expected a count, got ${waitSentences}`);
  if (now !== undefined) requireInstant('now', now);
  return {
    direction,
    own: own === undefined ? null : symbolsOf(`${own}0`),
    now: now ?? null,
    waitMs,
    waitSentences,
    unchecked,
  };
}

function isNotNegative(value: number): boolean {
  return typeof value === 'number' && value >= 0;
}
