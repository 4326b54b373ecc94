const MOST = 40;

/**
 * Text made fit for a message: in single quotes, control characters escaped, at most 40 characters between the
 * quotes, escapes counted as they stand.
 */
export function quote(text: string): string {
  let out = '';
  // What leaves room for the mark, should there be more.
  let cut = '';
  for (const character of text) {
    // Controls, and halves of a pair without the other.
    const plain = !/[\p{Cc}\p{Cs}]/u.test(character);
    out += plain ? character : `\\u{${(character.codePointAt(0) as number).toString(16)}}`;
    if (out.length > MOST) return `'${cut}…'`;
    if (out.length < MOST) cut = out;
  }
  return `'${out}'`;
}
