/**
 * Text fit for element content and for an attribute in double quotes; what XML cannot hold becomes U+FFFD.
 *
 * @throws TypeError when a program without types passed anything but text
 */
export function xmlText(text: string): string {
  if (typeof text !== 'string') throw new TypeError(`expected text, got a value of type ${typeof text}`);
  let out = '';
  for (const character of text) out += escapedCharacter(character);
  return out;
}

function escapedCharacter(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  const named = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&apos;' }[character];
  if (named !== undefined) return named;
  // As references, tab and line ends pass through the normalisation of attributes and of line ends.
  if (code === 0x9 || code === 0xa || code === 0xd) return `&#${code};`;
  // XML 1.0 §2.2, production Char; the C1 controls are allowed there but discouraged.
  const allowed =
    code >= 0x20 &&
    !(code >= 0x7f && code < 0xa0) &&
    !(code >= 0xd800 && code < 0xe000) &&
    code !== 0xfffe &&
    code !== 0xffff;
  return allowed ? character : '\ufffd';
}
