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
    .toUpperCase();
}

/**
 * Unicode keeps the ten digits of a script together, and may put the next script right after it: the value is
 * the number of digits just below, tens left out.
 */
function digitValue(digit: string): string {
  const code = digit.codePointAt(0) as number;
  let below = 0;
  while (/\p{Nd}/u.test(String.fromCodePoint(code - below - 1))) below += 1;
  return String(below % 10);
}
