/**
 * ITU-R M.585-10 Annexes 1 and 2 (from memory where the forms table says so), read aloud one form after the other, digit
 * by digit: slow, literal, and sharing nothing with the shipped code.
 */
export function kindByTheBook(digits: string): string {
  const all = [...digits];
  if (all.length !== 9 || all.some((digit) => !'0123456789'.includes(digit))) return 'not nine digits';
  const number = all.map((digit) => Number(digit));
  const at = (place: number): number => number[place - 1] as number; // places count from 1, as in the annexes
  const midAt = (place: number): boolean => at(place) >= 2 && at(place) <= 7;
  const are = (from: number, ...wanted: number[]): boolean =>
    wanted.every((digit, k) => at(from + k) === digit);

  if (are(1, 0, 0, 9, 9, 9, 0, 0, 0, 0)) return 'coast-all';
  if (are(1, 0, 0) && midAt(3)) return are(6, 0, 0, 0, 0) ? 'coast-all-national' : 'coast';
  if (are(1, 0) && midAt(2)) return 'ship-group';
  if (are(1, 1, 1, 1) && midAt(4)) return are(7, 0, 0, 0) ? 'sar-aircraft-all-national' : 'sar-aircraft';
  if (are(1, 8) && midAt(2)) return 'handheld';
  if (are(1, 9, 7, 0)) return 'ais-sart';
  if (are(1, 9, 7, 2)) return 'mob';
  if (are(1, 9, 7, 4)) return 'epirb-ais';
  if (are(1, 9, 7, 9)) return 'amrd-b';
  if (are(1, 9, 8) && midAt(3)) return 'craft';
  if (are(1, 9, 9) && midAt(3)) return 'aton';
  if (midAt(1)) return 'ship';
  return 'unassigned';
}

/** IMO Res. A.1117(30): seven digits, the last is the last digit of the sum of the others times 7 down to 2. */
export function imoNumberByTheBook(digits: string): boolean {
  if (digits.length !== 7) return false;
  const [a, b, c, d, e, f, check] = [...digits].map((digit) => Number(digit)) as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const sum = `${7 * a + 6 * b + 5 * c + 4 * d + 3 * e + 2 * f}`;
  return Number(sum[sum.length - 1]) === check;
}
