/** What a text of fixed width says: cut at the first NUL, its filling of FF, `@` and spaces left out; `null` without any. */
export function plainText(raw: string): string | null {
  const [upToNul = ''] = raw.split('\0', 1);
  const text = upToNul.replace(/[\xff@ ]+$/, '');
  return text === '' ? null : text;
}

/** Reads a text with its two header bytes: length, counting both, and 1 for one byte a character or 0 for UTF-16. */
export function readVariableText(raw: string): {
  readonly text: string | null;
  /** Whether its length byte promised more than there was. */
  readonly cut: boolean;
} {
  const length = raw.charCodeAt(0);
  const body = raw.slice(2);
  // Nothing at all at the end of a message is no cut; a length of 0 and 1 is met and means nothing.
  const cut = raw.length > 0 && length > raw.length;
  return { text: plainText(raw.charCodeAt(1) === 0 ? utf16(body) : body), cut };
}

/**
 * Writes a text with its header bytes: one byte a character, or UTF-16 where the text needs it.
 *
 * @throws RangeError when it has more than 253 bytes
 */
export function writeVariableText(text: string): string {
  const narrow = /^[\0-\xfe]*$/.test(text);
  const body = narrow
    ? text
    : Array.from({ length: text.length }, (_, index) => {
        const unit = text.charCodeAt(index);
        return String.fromCharCode(unit & 0xff, unit >>> 8);
      }).join('');
  if (body.length > 253) throw new RangeError(`text: expected at most 253 bytes, got ${body.length}`);
  return String.fromCharCode(body.length + 2, narrow ? 1 : 0) + body;
}

function utf16(bytes: string): string {
  let text = '';
  for (let index = 0; index + 1 < bytes.length; index += 2)
    text += String.fromCharCode(bytes.charCodeAt(index) + 256 * bytes.charCodeAt(index + 1));
  return text;
}

const DIGITS: readonly number[] = /* @__PURE__ */ Array.from('0123456789abcdef', (digit) =>
  digit.charCodeAt(0),
);

/** Two hexadecimal digits for each byte. */
export function hexOf(bytes: Uint8Array): string {
  let text = '';
  let index = 0;
  for (; index + 4 <= bytes.length; index += 4)
    text += String.fromCharCode(
      high(bytes, index),
      low(bytes, index),
      high(bytes, index + 1),
      low(bytes, index + 1),
      high(bytes, index + 2),
      low(bytes, index + 2),
      high(bytes, index + 3),
      low(bytes, index + 3),
    );
  for (; index < bytes.length; index++) text += String.fromCharCode(high(bytes, index), low(bytes, index));
  return text;
}

function high(bytes: Uint8Array, index: number): number {
  return DIGITS[(bytes[index] as number) >> 4] as number;
}

function low(bytes: Uint8Array, index: number): number {
  return DIGITS[(bytes[index] as number) & 15] as number;
}
