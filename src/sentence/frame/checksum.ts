/**
 * The checksum as a number 0–255: exclusive OR of the character codes from `from` up to, not including, `to`.
 * More than 255, which no checksum equals, when a character lies above FF hex, even where two such cancel.
 */
export function checksumBetween(text: string, from: number, to: number): number {
  let sum = 0;
  let all = 0;
  for (let index = from; index < to; index += 1) {
    const code = text.charCodeAt(index);
    sum ^= code;
    all |= code;
  }
  return all > 0xff ? all : sum;
}

/**
 * The checksum of a sentence or a TAG block: two hexadecimal digits, capitals.
 *
 * Exclusive OR of what follows the start character (`$`, `!` or `\`) and before the `*`, commas
 * included (IEC 61162-1, checksum field, as restated in public framing notes).
 *
 * @param body - the characters to be counted
 * @returns two of the characters 0–9 and A–F
 * @throws RangeError when a character lies above FF hex, which no sentence can carry
 */
export function checksumOf(body: string): string {
  const sum = checksumBetween(body, 0, body.length);
  if (sum > 0xff) throw new RangeError('body: expected no character above FF hex');
  return hexOf(sum);
}

/** A byte as two hexadecimal digits, capitals. */
export function hexOf(byte: number): string {
  return byte.toString(16).toUpperCase().padStart(2, '0');
}

/** The value of one hexadecimal digit by its character code, or `NaN`, which no checksum equals. */
export function hexValue(code: number): number {
  if (code >= 0x30 && code <= 0x39) return code - 0x30;
  if (code >= 0x41 && code <= 0x46) return code - 0x37;
  if (code >= 0x61 && code <= 0x66) return code - 0x57;
  return Number.NaN;
}
