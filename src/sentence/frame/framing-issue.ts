import type { Issue } from '../../result/index.ts';
import { quote } from '../../result/internal.ts';
import { issue } from '../texts.ts';
import { checksumBetween, hexOf } from './checksum.ts';
import { MOST_CHARACTERS } from './format.ts';

/** Where the rules of this file come from. The standard is sold, not open: its public restatements were used. */
const FRAMING = 'IEC 61162-1, sentence structure';
const TAG = 'NMEA 0183 v4, TAG block';

export function noStart(text: string): Issue {
  return issue('sentence-no-start', {}, about(text, [0]));
}

export function leadingCharacters(text: string): Issue {
  return issue('sentence-leading-characters', {}, about(text, [0]));
}

export function trailingCharacters(text: string): Issue {
  return issue('sentence-trailing-characters', {}, about(text, ['end']));
}

export function tagUnclosed(text: string): Issue {
  return issue('sentence-tag-unclosed', {}, about(text, ['TAG block'], TAG));
}

export function tagChecksum(inside: string, computed: number): Issue {
  return issue('sentence-tag-checksum', stated(computed), about(inside, ['TAG block'], TAG));
}

export function checksumLowerCase(given: string): Issue {
  return issue('sentence-checksum-lower-case', { capitals: given.toUpperCase() }, about(given, ['checksum']));
}

/** @param code - `'sentence-unchecked'` where the sentence is taken all the same */
export function checksumMissing(
  code: 'sentence-checksum-missing' | 'sentence-unchecked',
  raw: string,
): Issue {
  return issue(code, stated(checksumBetween(raw, 1, raw.length)), about(raw, ['checksum']));
}

export function checksumWrong(given: string, computed: number): Issue {
  const more = about(given, ['checksum']);
  if (!/^\*[0-9A-Fa-f]{2}$/.test(given)) return issue('sentence-checksum-malformed', stated(computed), more);
  return computed > 0xff
    ? issue('sentence-checksum-impossible', {}, more)
    : issue('sentence-checksum-wrong', { computed: hexOf(computed) }, more);
}

/** The checksum that should be stated; nothing where a character above FF hex leaves none. */
function stated(computed: number): { readonly computed?: string } {
  return computed > 0xff ? {} : { computed: hexOf(computed) };
}

export function overLong(length: number): Issue {
  const more = { at: [MOST_CHARACTERS], received: String(length), clause: FRAMING };
  return issue('sentence-length', { limit: MOST_CHARACTERS }, more);
}

export function blankDamage(segment: string): Issue {
  return issue('sentence-blank-damage', {}, about(segment, [segment.search(/[ \t\u00a0]/)]));
}

/** Only a blank at the edge of a field is a fault; one inside may belong to a name. */
export function blankSent(field: string, trimmed: string, number: number): Issue {
  return issue(
    'sentence-blank-sent',
    { field: number, trimmed: quote(trimmed) },
    about(field, ['field', number]),
  );
}

export function addressMisshapen(address: string): Issue {
  return issue('sentence-address', {}, about(address, [0]));
}

function about(text: string, at: Issue['at'], clause = FRAMING): Pick<Issue, 'at' | 'received' | 'clause'> {
  return { at, received: quote(text), clause };
}
