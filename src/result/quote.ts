/** Text made fit for a message: in single quotes, control characters escaped, at most 40 characters. */
export function quote(text: string): string {
  const cut = text.length > 40 ? `${text.slice(0, 39)}…` : text;
  let out = '';
  for (const character of cut) {
    const code = character.codePointAt(0) ?? 0;
    const plain =
      code >= 0x20 && code !== 0x7f && !(code >= 0x80 && code < 0xa0) && !(code >= 0xd800 && code < 0xe000);
    out += plain ? character : `\\u{${code.toString(16)}}`;
  }
  return `'${out}'`;
}
