import type { Issue } from '../../result/index.ts';
import { quote } from '../../result/internal.ts';
import { checksumBetween, hexOf } from './checksum.ts';
import { MOST_CHARACTERS } from './format.ts';

/** Where the rules of this file come from. The standard is sold, not open: its public restatements were used. */
const FRAMING = 'IEC 61162-1, sentence structure';
const TAG = 'NMEA 0183 v4, TAG block';

export function noStart(text: string): Issue {
  return {
    code: 'sentence-no-start',
    message: `Line: expected a $ or ! that opens a sentence, got ${quote(text)}`,
    at: [0],
    expected: 'a $ or ! that opens a sentence',
    received: quote(text),
    clause: FRAMING,
  };
}

export function leadingCharacters(text: string): Issue {
  return {
    code: 'sentence-leading-characters',
    message: `Characters ${quote(text)} before the sentence are ignored`,
    at: [0],
    received: quote(text),
    clause: FRAMING,
  };
}

export function trailingCharacters(text: string): Issue {
  return {
    code: 'sentence-trailing-characters',
    message: `Characters ${quote(text)} after the checksum are ignored`,
    at: ['end'],
    received: quote(text),
    clause: FRAMING,
  };
}

export function tagUnclosed(text: string): Issue {
  return {
    code: 'sentence-tag-unclosed',
    message: `TAG block ${quote(text)} has no second backslash and is ignored`,
    at: ['TAG block'],
    expected: 'a backslash before the sentence',
    received: quote(text),
    clause: TAG,
  };
}

export function tagChecksum(inside: string, computed: number): Issue {
  return {
    code: 'sentence-tag-checksum',
    message: `TAG block ${quote(inside)} does not end in its checksum and is ignored`,
    at: ['TAG block'],
    ...expectation(computed),
    received: quote(inside),
    clause: TAG,
  };
}

export function checksumLowerCase(given: string): Issue {
  return {
    code: 'sentence-checksum-lower-case',
    message: `Checksum ${quote(given)} is in lower case`,
    at: ['checksum'],
    expected: quote(given.toUpperCase()),
    received: quote(given),
    clause: FRAMING,
  };
}

export function checksumMissing(raw: string): Issue {
  return {
    code: 'sentence-checksum-missing',
    message: `Sentence ${quote(raw)} has no checksum`,
    at: ['checksum'],
    ...expectation(checksumBetween(raw, 1, raw.length)),
    received: quote(raw),
    clause: FRAMING,
  };
}

export function checksumWrong(given: string, computed: number): Issue {
  const malformed = !/^\*[0-9A-Fa-f]{2}$/.test(given);
  const { expected } = expectation(computed, quote);
  let message = `Checksum ${quote(given)} is invalid: the sentence has a character above FF hex`;
  if (malformed) message = `Checksum: expected a star and two hexadecimal digits, got ${quote(given)}`;
  else if (expected !== undefined) message = `Checksum: expected ${expected}, got ${quote(given)}`;
  return {
    code: malformed ? 'sentence-checksum-malformed' : 'sentence-checksum-wrong',
    message,
    at: ['checksum'],
    ...(expected === undefined ? {} : { expected }),
    received: quote(given),
    clause: FRAMING,
  };
}

/** The checksum that should be stated; nothing where a character above FF hex leaves none. */
function expectation(computed: number, write = (text: string): string => text): { expected?: string } {
  return computed > 0xff ? {} : { expected: write(`*${hexOf(computed)}`) };
}

export function overLong(length: number): Issue {
  return {
    code: 'sentence-length',
    message: `Sentence: expected at most ${MOST_CHARACTERS} characters with its line end, got ${length}`,
    at: [MOST_CHARACTERS],
    expected: `at most ${MOST_CHARACTERS} characters`,
    received: String(length),
    clause: FRAMING,
  };
}

export function blankDamage(segment: string): Issue {
  return {
    code: 'sentence-blank-damage',
    message: `Sentence ${quote(segment)} passes its checksum only without its spaces: they were added after it was sent`,
    at: [segment.search(/[ \t\u00a0]/)],
    expected: 'no space',
    received: quote(segment),
    clause: FRAMING,
  };
}

/** Only a blank at the edge of a field is a fault; one inside may belong to a name. */
export function blankSent(field: string, trimmed: string, number: number): Issue {
  return {
    code: 'sentence-blank-sent',
    message: `Field ${number} was sent with spaces around it, ${quote(field)}`,
    at: ['field', number],
    expected: quote(trimmed),
    received: quote(field),
    clause: FRAMING,
  };
}

export function addressMisshapen(address: string): Issue {
  return {
    code: 'sentence-address',
    message: `Address: expected talker and formatter, or P and a manufacturer code, got ${quote(address)}`,
    at: [0],
    expected: 'two characters of talker and three of formatter, or P and a manufacturer code',
    received: quote(address),
    clause: FRAMING,
  };
}
