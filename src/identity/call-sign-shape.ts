/**
 * Call signs of ship stations, Radio Regulations 19.50 and 19.55 (from memory): a two-character prefix that is never
 * two digits nor begins with 0, 1 or Q, then two letters, two letters and a digit, or a letter and four digits;
 * or a prefix ending in a letter and four digits. The first digit after a letter is never 0 or 1.
 * deviation: D-identity-4
 */
export const shipCallSign: RegExp =
  /^(?:(?:[A-PR-Z][A-Z2-9]|[2-9][A-Z])(?:[A-Z]{2}[2-9]?|[A-Z][2-9]\d{3})|[A-PR-Z2-9][A-Z][2-9]\d{3})$/;
