import type { Issue } from '../result/index.ts';
import { quote } from '../result/internal.ts';

/** An array, typed or not; `null` for anything else. */
export function listOf(given: unknown): ArrayLike<unknown> | null {
  if (Array.isArray(given)) return given;
  return ArrayBuffer.isView(given) && 'length' in given ? (given as unknown as ArrayLike<unknown>) : null;
}

/** The issue for input of another kind than expected. */
export function wrongInput(what: string, expected: string, given: unknown, at: Issue['at'] = []): Issue {
  const received = typeof given === 'string' ? quote(given) : plain(given);
  return {
    code: 'burst-input',
    message: `${what}: expected ${expected}, got ${received}`,
    at,
    expected,
    received,
  };
}

/** The issue with an option that should be a number; `null` when it is one or is left out. */
export function wrongNumber(name: string, given: unknown): Issue | null {
  return given === undefined || Number.isFinite(given)
    ? null
    : wrongInput(name, 'a finite number', given, [name]);
}

function plain(given: unknown): string {
  return typeof given === 'number' || given === null ? String(given) : typeof given;
}
