import type { Issue } from '../result/index.ts';
import { type ParamsOf, quote } from '../result/internal.ts';
import { type burstTexts, issue } from './texts.ts';

/** An array, typed or not; `null` for anything else. */
export function listOf(given: unknown): ArrayLike<unknown> | null {
  if (Array.isArray(given)) return given;
  return ArrayBuffer.isView(given) && 'length' in given ? (given as unknown as ArrayLike<unknown>) : null;
}

/** The issue for input of another kind than expected. */
export function wrongInput(
  params: ParamsOf<typeof burstTexts, 'burst-input'>,
  given: unknown,
  at: Issue['at'] = [],
): Issue {
  return issue('burst-input', params, {
    at,
    received: typeof given === 'string' ? quote(given) : plain(given),
  });
}

/** The issue with an option that should be a number; `null` when it is one or is left out. */
export function wrongNumber(name: string, given: unknown): Issue | null {
  return given === undefined || Number.isFinite(given)
    ? null
    : wrongInput({ subject: 'option', which: name, accepted: 'number' }, given, [name]);
}

function plain(given: unknown): string {
  return typeof given === 'number' || given === null ? String(given) : typeof given;
}
