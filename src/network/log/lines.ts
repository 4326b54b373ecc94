/** The lines of a text; they end with CR LF, LF or CR. */
export function linesOf(text: string): readonly string[] {
  const lines = text.split(/\r\n?|\n/);
  if (lines.at(-1) === '') lines.pop();
  return lines;
}

/** Frames are written in ASCII: what is not becomes a character that no frame has. */
export function latinText(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let from = 0; from < bytes.length; from += 4096)
    parts.push(String.fromCharCode(...bytes.subarray(from, from + 4096)));
  return parts.join('');
}
