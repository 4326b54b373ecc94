/**
 * How serious a finding is. `'note'`: tidied or as usual, nothing to do. `'check'`: a person should look before
 * relying on it. `'error'`: it cannot be used like this. `'caution'`: a rule to observe.
 */
export type Grade = 'note' | 'check' | 'error' | 'caution';

/** A value in a text: digits, a name, a limit or the word for a term; another coded text; or a list of them. */
export type Param = string | number | CodedText | readonly Param[];

/** A text with the data it is made from, so that `translate` of `seahail/locale` can say it in another language. */
export interface CodedText {
  /** Stable kebab-case name of what is said. */
  readonly code: string;
  /** The data in the text, by name; typed for each code by `TextParams` of `seahail/locale`. */
  readonly params: Readonly<Record<string, Param>>;
  /** The text in English. */
  readonly message: string;
}

/**
 * One finding about one input: what is wrong or doubtful, where, and which rule says so.
 *
 * `code` is stable and listed in the docs; programs branch on it. `message` is English
 * derived from the other fields and may be reworded in any release.
 */
export interface Issue extends CodedText {
  /** Stable kebab-case name of the finding, e.g. `'identity-digit-count'`. */
  readonly code: string;
  /** How serious it is, whether it comes as an issue or as a notice. */
  readonly grade: Grade;
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
