import { hexOf, hexValue } from './checksum.ts';

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
