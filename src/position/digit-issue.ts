import type { Issue } from '../result/index.ts';
import { quote } from '../result/internal.ts';

/** An issue about the digits of a call: subject, place, expected value and clause. */
export function digitIssue(
  code: string,
  thing: 'Position' | 'Area',
  at: readonly (string | number)[],
  {
    expected,
    received,
    clause,
  }: { readonly expected: string; readonly received: unknown; readonly clause: string },
): Issue {
  const shown = typeof received === 'string' ? quote(received) : `a value of type ${typeof received}`;
  return {
    code,
    message: `${thing}: expected ${expected}, got ${shown}`,
    at,
    expected,
    received: shown,
    clause,
  };
}
