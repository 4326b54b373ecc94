/**
 * One finding about one input: what is wrong or doubtful, where, and which rule says so.
 *
 * `code` is stable and listed in the docs; programs branch on it. `message` is English
 * derived from the other fields and may be reworded in any release.
 */
export interface Issue {
  /** Stable kebab-case name of the finding, e.g. `'identity-digit-count'`. */
  readonly code: string;
  /** One English sentence: `<Subject>: expected <what>, got <what>` or `<Subject> <fact>`, without a final full stop. */
  readonly message: string;
  /** Where: field names and zero-based positions from the outside in, e.g. `['line 3', 'position', 0]`. */
  readonly at: readonly (string | number)[];
  /** What the rule asks for, in words. */
  readonly expected?: string;
  /** What was found, quoted as it stood (long input is shortened). */
  readonly received?: string;
  /** Document and section the rule comes from, or `'common practice'`. */
  readonly clause?: string;
  /** A value the caller may offer to a person. Never applied by the library itself. */
  readonly suggestion?: string;
}

/** A finding that does not stop the work: something a person should be told. Same shape as {@link Issue}. */
export type Notice = Issue;
