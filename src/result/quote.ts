const MOST = 40;

/**
 * Text made fit for a message: in single quotes, control characters escaped, at most 40 characters between the
 * quotes, escapes counted as they stand.
 *
 * @throws TypeError when it is no text
 */
export function quote(text: string): string {
  if (typeof text !== 'string') throw new TypeError('quote: a text is needed');
  let out = '';
  // What leaves room for the mark, should there be more.
  let cut = '';
  for (const character of text) {
    const code = character.codePointAt(0) ?? 0;
    const plain =
      code >= 0x20 && code !== 0x7f && !(code >= 0x80 && code < 0xa0) && !(code >= 0xd800 && code < 0xe000);
    out += plain ? character : `\\u{${code.toString(16)}}`;
    if (out.length > MOST) return `'${cut}…'`;
    if (out.length < MOST) cut = out;
  }
  return `'${out}'`;
}
