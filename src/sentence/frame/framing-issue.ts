import type { Issue } from '../../result/index.ts';
import { quote } from '../../result/index.ts';
import { checksumBetween, hexOf } from './checksum.ts';
import { MOST_CHARACTERS } from './format.ts';

/** Where the rules of this file come from. The standard is sold, not open: its public restatements were used. */
const FRAMING = 'IEC 61162-1, sentence structure';
const TAG = 'NMEA 0183 v4, TAG block';

export function noStart(text: string): Issue {
  return {
    code: 'sentence-no-start',
    message: `The line ${quote(text)} holds no sentence`,
    at: [0],
    expected: 'a $ or ! that opens a sentence',
    received: quote(text),
    clause: FRAMING,
  };
}

export function leadingCharacters(text: string): Issue {
  return {
    code: 'sentence-leading-characters',
    message: `The characters ${quote(text)} before the sentence are left out`,
    at: [0],
    received: quote(text),
    clause: FRAMING,
  };
}

export function trailingCharacters(text: string): Issue {
  return {
    code: 'sentence-trailing-characters',
    message: `The characters ${quote(text)} behind the checksum are left out`,
    at: ['end'],
    received: quote(text),
    clause: FRAMING,
  };
}

export function tagUnclosed(text: string): Issue {
  return {
    code: 'sentence-tag-unclosed',
    message: `The TAG block ${quote(text)} has no second backslash and is left out`,
    at: ['TAG block'],
    expected: 'a backslash in front of the sentence',
    received: quote(text),
    clause: TAG,
  };
}

export function tagChecksum(inside: string, computed: number): Issue {
  return {
    code: 'sentence-tag-checksum',
    message: `The TAG block ${quote(inside)} does not end in its checksum: its parameters are left aside`,
    at: ['TAG block'],
    ...wanted(computed),
    received: quote(inside),
    clause: TAG,
  };
}

export function checksumLowerCase(given: string): Issue {
  return {
    code: 'sentence-checksum-lower-case',
    message: `The checksum ${quote(given)} is written in lower case`,
    at: ['checksum'],
    expected: quote(given.toUpperCase()),
    received: quote(given),
    clause: FRAMING,
  };
}

export function checksumMissing(raw: string): Issue {
  return {
    code: 'sentence-checksum-missing',
    message: `The sentence ${quote(raw)} has no checksum`,
    at: ['checksum'],
    ...wanted(checksumBetween(raw, 1, raw.length)),
    received: quote(raw),
    clause: FRAMING,
  };
}

export function checksumWrong(given: string, computed: number): Issue {
  const malformed = !/^\*[0-9A-Fa-f]{2}$/.test(given);
  const { expected } = wanted(computed, quote);
  let says = 'cannot hold: the sentence has a character above FF hex, which no wire carries';
  if (malformed) says = 'is not a star and two hexadecimal digits';
  else if (expected !== undefined) says = `is not that of its sentence, ${expected}`;
  return {
    code: malformed ? 'sentence-checksum-malformed' : 'sentence-checksum-wrong',
    message: `The checksum ${quote(given)} ${says}`,
    at: ['checksum'],
    ...(expected === undefined ? {} : { expected }),
    received: quote(given),
    clause: FRAMING,
  };
}

/** The checksum that should be stated; nothing where a character above FF hex leaves none. */
function wanted(computed: number, write = (text: string): string => text): { expected?: string } {
  return computed > 0xff ? {} : { expected: write(`*${hexOf(computed)}`) };
}

export function overLong(length: number): Issue {
  return {
    code: 'sentence-length',
    message: `The sentence has ${length} characters with its line end, more than ${MOST_CHARACTERS}`,
    at: [MOST_CHARACTERS],
    expected: `at most ${MOST_CHARACTERS} characters`,
    received: String(length),
    clause: FRAMING,
  };
}

export function blankDamage(segment: string): Issue {
  return {
    code: 'sentence-blank-damage',
    message: `The checksum of ${quote(segment)} holds only without its blanks: they got in after it was sent`,
    at: [segment.search(/[ \t\u00a0]/)],
    expected: 'no blank',
    received: quote(segment),
    clause: FRAMING,
  };
}

/** Only a blank at the edge of a field is a fault; one inside may belong to a name. */
export function blankSent(field: string, trimmed: string, number: number): Issue {
  return {
    code: 'sentence-blank-sent',
    message: `Field ${number} was sent with a blank, ${quote(field)}: the checksum holds with it`,
    at: ['field', number],
    expected: quote(trimmed),
    received: quote(field),
    clause: FRAMING,
  };
}

export function addressMisshapen(address: string): Issue {
  return {
    code: 'sentence-address',
    message: `The address ${quote(address)} is neither talker and formatter nor a maker’s code`,
    at: [0],
    expected: 'two characters of talker and three of formatter, or P and a maker’s code',
    received: quote(address),
    clause: FRAMING,
  };
}
