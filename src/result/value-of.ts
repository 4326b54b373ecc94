import type { Issue } from './issue.ts';
import type { Result } from './result.ts';

/**
 * The value of a result, for callers that would rather have an exception.
 *
 * @param result - what a `parse…`, `find…` or `decode…` function returned
 * @returns the value, its notices dropped
 * @throws Error whose message is the first issue's and whose `issues` property holds all of them
 * @throws TypeError when it is no result, such as a promise of one
 *
 * @example
 * ```ts
 * import { parseIdentity } from 'seahail/identity';
 * import { valueOf } from 'seahail/result';
 *
 * console.log(valueOf(parseIdentity('232 999 871')).mmsi); // 232999871
 * ```
 */
export function valueOf<T>(result: Result<T>): T {
  if (typeof result?.ok !== 'boolean')
    throw new TypeError('valueOf: expected a result, as a parse…, find… or decode… function returns it');
  if (result.ok) return result.value;
  const error: Error & { issues?: readonly Issue[] } = new Error(result.issues[0].message);
  error.issues = result.issues;
  throw error;
}
