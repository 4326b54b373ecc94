/**
 * The arithmetic of Radio Regulations Appendix 18: which numbers exist, and their frequencies.
 * Checked row by row against 47 CFR 80.871(d) (2015 edition), which prints all 57 numbers.
 */

/** Numbers 01 to 28 and 60 to 88. */
export function inAppendix18(number: number): boolean {
  return (number >= 1 && number <= 28) || (number >= 60 && number <= 88);
}

/**
 * True when Appendix 18 lists a number of it with one frequency: 06, 08-17, 67-77 and, by note zz) of WRC-15, 87 and 88.
 * 1087 and 1088 are other names for them; a set built to the older plan takes the plain number for a pair with
 * 161.975 or 162.025 MHz.
 */
export function isSingleFrequency(number: number): boolean {
  return number === 6 || (number >= 8 && number <= 17) || (number >= 67 && number <= 77) || number >= 87;
}

/**
 * True when the number has two legs to tell apart: the two-frequency channels, and 87 and 88,
 * whose upper legs are AIS 1 and AIS 2.
 */
export function hasLegs(number: number): boolean {
  return inAppendix18(number) && (!isSingleFrequency(number) || number >= 87);
}

/** Lower (ship) leg in kHz: 50 kHz steps from 156.050 for 01-28, from 156.025 for 60-88. */
export function lowerLegKHz(number: number): number {
  return number < 60 ? 156_000 + 50 * number : 153_025 + 50 * number;
}

/** The coast leg lies 4.6 MHz above the ship leg. */
export const LEG_DISTANCE_KHZ = 4600;

/** Digits of ITU-R M.1084 Annex 4: `'06'`, `'1022'`, `'2078'`. */
export function m1084Digits(number: number, leg: 'as-listed' | 'ship' | 'coast'): string {
  return `${leg === 'ship' ? '10' : leg === 'coast' ? '20' : ''}${String(number).padStart(2, '0')}`;
}
