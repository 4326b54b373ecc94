import type { Issue, Notice } from './issue.ts';

/** The good outcome: a value, and whatever a person should be told about it. */
export interface Success<T> {
  readonly ok: true;
  readonly value: T;
  readonly notices: readonly Notice[];
}

/** The bad outcome: at least one issue, first the one to mend first. */
export interface Failure {
  readonly ok: false;
  readonly issues: readonly [Issue, ...Issue[]];
}

/** What every `parse…`, `find…` and `decode…` function returns. Plain data: it survives JSON and structured clone. */
export type Result<T> = Success<T> | Failure;

/** A {@link Success} with the given value and notices. */
export function success<T>(value: T, notices: readonly Notice[] = []): Success<T> {
  return { ok: true, value, notices };
}

/** A {@link Failure} with one issue or more. */
export function failure(first: Issue, ...others: Issue[]): Failure {
  return { ok: false, issues: [first, ...others] };
}

/**
 * A {@link Failure} from a list that a caller has checked not to be empty.
 *
 * @throws TypeError when it is no list
 * @throws RangeError when it is empty
 */
export function failures(issues: readonly Issue[]): Failure {
  if (!Array.isArray(issues)) throw new TypeError('failures: expected a list of issues');
  const [first, ...others] = issues;
  if (first === undefined) throw new RangeError('failures: expected at least one issue');
  return { ok: false, issues: [first, ...others] };
}
