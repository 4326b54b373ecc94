/**
 * Text as people type it made plain: digits of any script as 0 to 9, compatibility forms folded, upper
 * case, single blanks. Returns undefined for anything longer than a channel or frequency could ever be.
 */
export function plainText(text: string): string | undefined {
  const trimmed = text.length > 200 ? text : text.trim();
  if (trimmed.length > 40) return undefined;
  return trimmed
    .normalize('NFKC')
    .replace(/\p{Nd}/gu, digitValue)
    .replace(/\p{Pd}/gu, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toUpperCase();
}

/** Unicode keeps the ten digits of a script together: the value is the number of digits just below. */
function digitValue(digit: string): string {
  const code = digit.codePointAt(0) as number;
  let value = 0;
  while (value < 9 && /^\p{Nd}$/u.test(String.fromCodePoint(code - value - 1))) value += 1;
  return String(value);
}
