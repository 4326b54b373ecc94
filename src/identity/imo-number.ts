/** Whether seven digits have the check digit of an IMO ship number, IMO Res. A.1117(30): weights 7 to 2, last digit of the sum. */
export function isImoNumber(digits: string): boolean {
  const sum = [7, 6, 5, 4, 3, 2].reduce((total, weight, place) => total + weight * Number(digits[place]), 0);
  return /^\d{7}$/.test(digits) && sum % 10 === Number(digits[6]);
}
