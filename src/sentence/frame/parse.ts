import type { Sentence } from '../../report/index.ts';
import type { TagBlock } from '../../report/internal.ts';
import { failure, type Notice, type Result, success } from '../../result/index.ts';
import { issue } from '../texts.ts';
import {
  about,
  checksumBetween,
  checksumMissing,
  checksumWrong,
  FRAMING,
  hexValue,
  TAG,
  trailingCharacters,
} from './checksum.ts';
import { type Cut, dissect, readTagBlock } from './dissect.ts';
import { notText } from './encoding.ts';
import { MOST_CHARACTERS } from './format.ts';

/** A sentence cut out of a line, and where the next one opens: the end of the line when there is none. */
export interface Taken {
  readonly result: Result<Sentence>;
  /** Where the sentence begins and ends, its checksum included; when it is damaged or has none, where it may. */
  readonly start: number;
  readonly end: number;
  readonly next: number;
}

const DOLLAR = 0x24;
const EXCLAMATION = 0x21;
const BACKSLASH = 0x5c;
const COMMA = 0x2c;
/** TAG blocks in front of one sentence that are looked at, so that a run of backslashes costs nothing. */
const MOST_TAG_BLOCKS = 4;

/**
 * Reads one line as a sentence, forgiving what is safe to forgive and saying so in a notice each time.
 *
 * Taken with a notice: characters before the start, blanks or characters after the checksum, lower-case
 * checksum digits, blanks inside (sent so, or got in later), more than 82 characters, a TAG block whose
 * own checksum is wrong. Taken only when asked for: a missing checksum. Everything else is an issue, a value
 * that is no text included.
 *
 * @param line - one line, with or without its line end
 * @param options - how forgiving to be
 * @returns the sentence with its notices, or what is wrong with the line
 *
 * @see {@link formatSentence}
 * @see {@link readSentences}
 *
 * @example
 * ```ts
 * import { parseSentence } from 'seahail/sentence';
 *
 * const result = parseSentence('$GPZDA,140412.00,02,01,2026,00,00*61');
 * console.log(result.ok && result.value.fields[3]); // 2026
 * ```
 */
export function parseSentence(
  line: string,
  options: {
    /** Whether a sentence without a checksum is taken, marked `'unchecked'`. Default `false`. */
    readonly unchecked?: boolean | undefined;
  } = {},
): Result<Sentence> {
  if (typeof line !== 'string') return failure(notText(line, 'text'));
  const { result, next } = takeSentence(line, 0, options?.unchecked ?? false);
  if (!result.ok || next >= line.length) return result;
  return success(result.value, [...result.notices, trailingCharacters(line.slice(next))]);
}

/** Takes the first sentence at or after `from`. One line can hold several when a line end was lost. */
export function takeSentence(line: string, from: number, unchecked: boolean): Taken {
  const notices: Notice[] = [];
  let tag: TagBlock | null = null;
  let start = skipToOpening(line, from, notices);
  for (let blocks = 0; line.charCodeAt(start) === BACKSLASH; blocks += 1) {
    if (blocks === MOST_TAG_BLOCKS) return nothing(line.slice(from, start), from, start);
    const close = findOpening(line, start + 1);
    if (line.charCodeAt(close) === BACKSLASH) {
      const { block, notice } = readTagBlock(line.slice(start + 1, close));
      if (notice !== null) notices.push(notice);
      tag = block ?? tag;
      start = skipToOpening(line, close + 1, notices);
    } else {
      notices.push(issue('sentence-tag-unclosed', {}, about(line.slice(start, close), ['TAG block'], TAG)));
      start = close;
    }
  }
  if (start === line.length) return nothing(line.slice(from), from, start);

  const star = line.indexOf('*', start);
  const cut = soundBody(line, start, star);
  if (cut !== null) return complete(line, start, star, cut, tag, notices);
  const limit = findOpening(line, start + 1);
  if (star < 0 || star > limit) return withoutChecksum(line, start, limit, tag, notices, unchecked);
  return withoutBlanks(line, start, limit, tag, notices) ?? wrong(line, start, star, limit);
}

function complete(
  line: string,
  start: number,
  star: number,
  cut: Cut,
  tag: TagBlock | null,
  notices: Notice[],
): Taken {
  const end = star + 3;
  const raw = line.slice(start, end);
  if (Math.max(line.charCodeAt(end - 1), line.charCodeAt(end - 2)) >= 0x61) {
    const given = line.slice(star, end);
    const capitals = given.toUpperCase();
    notices.push(issue('sentence-checksum-lower-case', { capitals }, about(given, ['checksum'])));
  }
  if (raw.length + 2 > MOST_CHARACTERS) {
    const more = { at: [MOST_CHARACTERS], received: String(raw.length + 2), clause: FRAMING };
    notices.push(issue('sentence-length', { limit: MOST_CHARACTERS }, more));
  }
  const next = findOpening(line, end);
  let last = next;
  while (isLineEnd(line.charCodeAt(last - 1))) last -= 1;
  if (end < last) notices.push(trailingCharacters(line.slice(end, last)));
  return { result: dissect(cut, 'right', tag, raw, notices), start, end, next };
}

function nothing(text: string, from: number, next: number): Taken {
  const why = issue('sentence-no-start', {}, about(text, [0]));
  return { result: failure(why), start: from, end: next, next };
}

/** Takes all blanks out and tries again: text that was wrapped or copied after it left the talker. */
function withoutBlanks(
  line: string,
  start: number,
  limit: number,
  tag: TagBlock | null,
  notices: Notice[],
): Taken | null {
  const segment = line.slice(start, limit);
  const cleaned = segment.replace(/[ \t\u00a0]/g, '');
  const star = cleaned.indexOf('*');
  const cut = soundBody(cleaned, 0, star);
  if (cut === null) return null;
  notices.push(issue('sentence-blank-damage', {}, about(segment, [segment.search(/[ \t\u00a0]/)])));
  return { result: complete(cleaned, 0, star, cut, tag, notices).result, start, end: limit, next: limit };
}

function withoutChecksum(
  line: string,
  start: number,
  limit: number,
  tag: TagBlock | null,
  notices: Notice[],
  unchecked: boolean,
): Taken {
  const raw = line.slice(start, limit).trimEnd();
  const place = { start, end: limit, next: limit };
  if (!unchecked) return { result: failure(checksumMissing('sentence-checksum-missing', raw)), ...place };
  notices.push(checksumMissing('sentence-unchecked', raw));
  return { result: dissect(cutBody(raw, 0, raw.length), 'unchecked', tag, raw, notices), ...place };
}

function wrong(line: string, start: number, star: number, limit: number): Taken {
  const given = line.slice(star, Math.min(star + 3, limit));
  const why = checksumWrong(given, checksumBetween(line, start + 1, star));
  return { result: failure(why), start, end: limit, next: limit };
}

/** What is between the start character and the `*`, `null` unless the checksum holds. */
function soundBody(line: string, start: number, star: number): Cut | null {
  if (star < 0) return null;
  const body = cutBody(line, start, star);
  const stated = hexValue(line.charCodeAt(star + 1)) * 16 + hexValue(line.charCodeAt(star + 2));
  return body.sum === stated ? body : null;
}

/** Fields are cut and the checksum is taken in one pass: nearly every line is one sound sentence and nothing else. */
function cutBody(line: string, start: number, end: number): Cut & { readonly sum: number } {
  const texts: string[] = [];
  let from = start + 1;
  let sum = 0;
  let all = 0;
  let least = COMMA;
  for (let index = from; index < end; index += 1) {
    const code = line.charCodeAt(index);
    if (code <= COMMA) {
      if (code < least) least = code;
      if (code === COMMA) {
        texts.push(line.slice(from, index));
        from = index + 1;
      }
    }
    sum ^= code;
    all |= code;
  }
  texts.push(line.slice(from, end));
  return { texts, blank: least <= 0x20, sum: all > 0xff ? all : sum };
}

function isLineEnd(code: number): boolean {
  return code === 0x0a || code === 0x0d;
}

/** The next `$`, `!` or backslash at or after `from`, or the end of the text. */
function findOpening(text: string, from: number): number {
  for (let index = from; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (code === DOLLAR || code === EXCLAMATION || code === BACKSLASH) return index;
  }
  return text.length;
}

function skipToOpening(line: string, from: number, notices: Notice[]): number {
  const opening = findOpening(line, from);
  if (opening > from)
    notices.push(issue('sentence-leading-characters', {}, about(line.slice(from, opening), [0])));
  return opening;
}
