import { quote, want } from '../../result/internal.ts';
import { checksumOf, hexOf, hexValue } from './checksum.ts';

/** Longest sentence, its start character and line end counted (IEC 61162-1). */
export const MOST_CHARACTERS = 82;

/**
 * Writes one sentence the strict way: capitals, no blanks, checksum, at most 82 characters with its line end.
 *
 * @param parts - talker, formatter and fields
 * @returns the sentence without its line end (CR LF), which the caller adds on the wire
 * @throws RangeError when talker or formatter are misshapen, a field holds a reserved character, or the
 *   sentence would be too long
 *
 * @see {@link parseSentence}
 *
 * @example
 * ```ts
 * import { formatSentence } from 'seahail/sentence';
 *
 * const fields = ['140412.00', '02', '01', '2026', '00', '00'];
 * console.log(formatSentence({ talker: 'GP', formatter: 'ZDA', fields })); // $GPZDA,140412.00,02,01,2026,00,00*61
 * ```
 */
export function formatSentence(parts: {
  /** `'$'` unless the data is encapsulated. */
  readonly start?: '$' | '!' | undefined;
  /** Two capitals or digits, e.g. `'CD'`. */
  readonly talker: string;
  /** Three capitals, e.g. `'WPL'`. */
  readonly formatter: string;
  /** Fields in order, already escaped where they hold text. */
  readonly fields: readonly string[];
}): string {
  want('formatSentence', 'the parts of a sentence', parts, 'fields');
  const { start = '$', talker, formatter, fields } = parts;
  if (!/^[A-Z][A-Z0-9]$/.test(talker))
    throw new RangeError(`talker: expected two capitals or digits, got ${quote(talker)}`);
  if (!/^[A-Z]{3}$/.test(formatter))
    throw new RangeError(`formatter: expected three capitals, got ${quote(formatter)}`);
  for (const field of fields) {
    if (!/^[ -~]*$/.test(field) || /[!$*,\\~]/.test(field)) {
      throw new RangeError(`field: expected printable characters and none of !$*,\\~, got ${quote(field)}`);
    }
  }
  const body = [talker + formatter, ...fields].join(',');
  const sentence = `${start}${body}*${checksumOf(body)}`;
  if (sentence.length + 2 > MOST_CHARACTERS) {
    throw new RangeError(
      `sentence: expected at most ${MOST_CHARACTERS} characters with its line end, got ${sentence.length + 2}`,
    );
  }
  return sentence;
}

/** Characters that mean something to the framing and so cannot stand in a field (IEC 61162-1). */
const RESERVED = '!$*,\\^~';

/**
 * Text made fit for a field: reserved and non-ASCII characters, and blanks at the edges, as `^hh`, their
 * code in ISO 8859-1. Characters beyond ISO 8859-1 have no such code and become `?`.
 */
export function escapeText(text: string): string {
  let out = '';
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    if (code > 0xff) out += '?';
    else if (code < 0x20 || code > 0x7e || RESERVED.includes(character)) out += `^${hexOf(code)}`;
    else out += character;
  }
  return out.replace(/^ /, '^20').replace(/ $/, '^20');
}

/** The text that a field encodes. A `^` without two hexadecimal digits after it stays a `^`. */
export function unescapeText(field: string): string {
  if (!field.includes('^')) return field;
  let out = '';
  for (let index = 0; index < field.length; index += 1) {
    const high = hexValue(field.charCodeAt(index + 1));
    const low = hexValue(field.charCodeAt(index + 2));
    if (field[index] === '^' && high >= 0 && low >= 0) {
      out += String.fromCharCode(high * 16 + low);
      index += 2;
    } else {
      out += field[index];
    }
  }
  return out;
}
