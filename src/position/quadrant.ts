/** Hemisphere of a latitude and of a longitude. */
export type Quadrant = readonly ['N' | 'S', 'E' | 'W'];

/** By quadrant digit: ITU-R M.493-16, position coordinates and geographic area, as publicly restated. */
const QUADRANTS: readonly Quadrant[] = [
  ['N', 'E'],
  ['N', 'W'],
  ['S', 'E'],
  ['S', 'W'],
];

/** The hemispheres of a quadrant digit; `undefined` for 4 to 9. */
export function quadrantOf(digit: string): Quadrant | undefined {
  return QUADRANTS[Number(digit)];
}

/**
 * The quadrant digit of two hemispheres.
 *
 * @throws RangeError when one is no hemisphere
 */
export function quadrantDigit(latitude: string, longitude: string): number {
  const digit = QUADRANTS.findIndex(([ns, ew]) => ns === latitude && ew === longitude);
  if (digit < 0) {
    throw new RangeError(`hemispheres: expected N or S and E or W, got ${latitude} and ${longitude}`);
  }
  return digit;
}

/** A number with zeros in front. */
export function padded(value: number, length: number): string {
  return String(value).padStart(length, '0');
}
