import type { Issue } from 'seahail/result';

/** An issue of the page itself, about one of its blanks; in English only. */
export function ownIssue(code: string, message: string, more: Partial<Issue> = {}): Issue {
  return { code, grade: 'error', params: {}, message, at: [], ...more };
}
