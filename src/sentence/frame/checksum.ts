import type { Issue } from '../../result/index.ts';
import { quote } from '../../result/internal.ts';
import { issue } from '../texts.ts';

/**
 * The checksum as a number 0–255: exclusive OR of the character codes from `from` up to, not including, `to`.
 * More than 255, which no checksum equals, when a character lies above FF hex, even where two such cancel.
 */
export function checksumBetween(text: string, from: number, to: number): number {
  let sum = 0;
  let all = 0;
  for (let index = from; index < to; index += 1) {
    const code = text.charCodeAt(index);
    sum ^= code;
    all |= code;
  }
  return all > 0xff ? all : sum;
}

/**
 * The checksum of a sentence or a TAG block: two hexadecimal digits, capitals.
 *
 * Exclusive OR of what follows the start character (`$`, `!` or `\`) and before the `*`, commas
 * included (IEC 61162-1, checksum field, as restated in public framing notes).
 *
 * @throws RangeError when a character lies above FF hex, which no sentence can carry
 */
export function checksumOf(body: string): string {
  const sum = checksumBetween(body, 0, body.length);
  if (sum > 0xff) throw new RangeError('body: expected no character above FF hex');
  return hexOf(sum);
}

/** A byte as two hexadecimal digits, capitals. */
export function hexOf(byte: number): string {
  return byte.toString(16).toUpperCase().padStart(2, '0');
}

/** The value of one hexadecimal digit by its character code, or `NaN`, which no checksum equals. */
export function hexValue(code: number): number {
  if (code >= 0x30 && code <= 0x39) return code - 0x30;
  if (code >= 0x41 && code <= 0x46) return code - 0x37;
  if (code >= 0x61 && code <= 0x66) return code - 0x57;
  return Number.NaN;
}

/** Where the rules of this file come from. The standard is sold, not open: its public restatements were used. */
export const FRAMING = 'IEC 61162-1, sentence structure';
export const TAG = 'NMEA 0183 v4, TAG block';

export function trailingCharacters(text: string): Issue {
  return issue('sentence-trailing-characters', {}, about(text, ['end']));
}

export function tagChecksum(inside: string, computed: number): Issue {
  return issue('sentence-tag-checksum', stated(computed), about(inside, ['TAG block'], TAG));
}

/** @param code - `'sentence-unchecked'` where the sentence is taken all the same */
export function checksumMissing(
  code: 'sentence-checksum-missing' | 'sentence-unchecked',
  raw: string,
): Issue {
  return issue(code, stated(checksumBetween(raw, 1, raw.length)), about(raw, ['checksum']));
}

/** @param given - the `*` and what follows it, two characters at most */
export function checksumWrong(given: string, computed: number): Issue {
  const more = about(given, ['checksum']);
  if (!/[0-9A-Fa-f]{2}/.test(given)) return issue('sentence-checksum-malformed', stated(computed), more);
  return computed > 0xff
    ? issue('sentence-checksum-impossible', {}, more)
    : issue('sentence-checksum-wrong', { computed: hexOf(computed) }, more);
}

/** The checksum that should be stated; nothing where a character above FF hex leaves none. */
function stated(computed: number): { readonly computed?: string } {
  return computed > 0xff ? {} : { computed: hexOf(computed) };
}

/** The place of an issue about framing, the text there, and the rule. */
export function about(
  text: string,
  at: Issue['at'],
  clause: string = FRAMING,
): Pick<Issue, 'at' | 'received' | 'clause'> {
  return { at, received: quote(text), clause };
}
