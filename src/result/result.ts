import type { Issue, Notice } from './issue.ts';

/** What every `parse…`, `find…` and `decode…` function returns. Plain data: it survives JSON and structured clone. */
export type Result<T> =
  | {
      readonly ok: true;
      readonly value: T;
      /** What a person should be told about it. */
      readonly notices: readonly Notice[];
    }
  | {
      readonly ok: false;
      /** At least one; the one to correct first comes first. */
      readonly issues: readonly [Issue, ...Issue[]];
    };

/** The good outcome. */
export type Success<T> = Extract<Result<T>, { readonly ok: true }>;

/** The bad outcome. */
export type Failure = Extract<Result<never>, { readonly ok: false }>;

/**
 * A result that is good.
 *
 * @param value - what was found
 * @param notices - what a person should be told about it
 * @returns the result
 */
export function success<T>(
  value: T,
  notices: readonly Notice[] = [],
): { readonly ok: true; readonly value: T; readonly notices: readonly Notice[] } {
  return { ok: true, value, notices };
}

/**
 * A result that is bad.
 *
 * @param first - the issue to correct first
 * @param others - any further ones
 * @returns the result
 */
export function failure(
  first: Issue,
  ...others: Issue[]
): { readonly ok: false; readonly issues: readonly [Issue, ...Issue[]] } {
  return { ok: false, issues: [first, ...others] };
}

/**
 * A bad result from a list that a caller has checked not to be empty.
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
