import type { Call, Symbols } from '../call/index.ts';

/**
 * How far a reception can be relied on.
 *
 * - `clean`: at least 0.9999 sure, the characters as received satisfy the error check as received, the call has the
 *   length and the end of sequence of a composition with its format specifier, and a distress or all-ships format
 *   specifier was received twice. Only this is fit for automatic action.
 * - `repaired`: at least 0.99 sure, but one of the other conditions does not hold.
 * - `doubtful`: anything less, and every call whose error check is wrong. Show it as received in error; act on nothing.
 */
export type Verdict = 'clean' | 'repaired' | 'doubtful';

/** A received call and how sure it is. Plain data: it survives JSON and structured clone. */
export interface Reception {
  readonly call: Call;
  /** Information symbols: format specifier twice, up to and with one end of sequence; `null` for one left open. */
  readonly information: Symbols;
  /** How sure it is. */
  readonly quality: {
    readonly verdict: Verdict;
    /** Probability that the whole call is right, 0–1; with a wrong error check, any character may be the wrong one. */
    readonly probability: number;
    /** Natural log of how much more likely this reading is than the next best one; at most 14. */
    readonly margin: number;
    /** Information symbols of the next best reading; `null` when none comes near. */
    readonly runnerUp: readonly number[] | null;
    /**
     * What became of the error check.
     *
     * - `as-sent`: the characters, each read from its own copies alone, are those of the call and satisfy the check
     * - `used-for-repair`: they do not, and the check was used up in finding the call
     * - `wrong`: check and characters were received and do not agree: one of them is wrong, no telling which
     * - `not-read`: nothing was heard of the check itself
     */
    readonly errorCheck:
      | { readonly kind: 'as-sent' | 'used-for-repair' | 'not-read' }
      | {
          readonly kind: 'wrong';
          /** Error-check character as received, 0–127. */
          readonly received: number;
          /** Error-check character that the characters as received would need, 0–127. */
          readonly computed: number;
        };
    /** Each character, format specifier once, end of sequence and then the error check last. */
    readonly characters: readonly {
      /** Symbol 0–127, or `null` when left open. */
      readonly symbol: number | null;
      /**
       * How a character was read.
       *
       * - `both-copies`: every copy, read alone, says the same
       * - `one-copy`: at least one copy, read alone, says so, and another does not
       * - `soft`: no copy says so alone, all of them added up do
       * - `repaired`: not even added up; the error check or the field's expectation decided
       * - `unread`: left open
       */
      readonly source: 'both-copies' | 'one-copy' | 'soft' | 'repaired' | 'unread';
      /** Probability that the symbol is right, 0–1. */
      readonly probability: number;
    }[];
    /** Words (ten-bit symbols) of the call, phasing included, and how many of them alone say something else. */
    readonly words: { readonly sent: number; readonly differing: number };
    /** `inverted` when the two tones came the wrong way round. */
    readonly polarity: 'normal' | 'inverted';
    /** How many calls of one attempt, the same to the bit, it rests on, as far as they can be told apart: 1 unless several were joined. */
    readonly calls: number;
    /** State of the expansion: none received, read with its own error check right, or heard and not readable. */
    readonly expansion: 'none' | 'read' | 'broken';
    /** Index of the first phasing bit in what was given; negative when the front was cut off. */
    readonly start: number;
    /** Index just after the last bit used, where a next call may begin. */
    readonly end: number;
  };
}

/** How sure a reception is. */
export type ReceptionQuality = Reception['quality'];

/** State of the error check. */
export type ErrorCheck = ReceptionQuality['errorCheck'];

/** One character of a call and how sure it is. */
export type CharacterQuality = ReceptionQuality['characters'][number];

/** How a character was read. */
export type CharacterSource = CharacterQuality['source'];
