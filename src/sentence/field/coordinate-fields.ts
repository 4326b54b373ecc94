import type { Coordinates } from '../../position/index.ts';

/** Ten-thousandths of a minute in a degree: the four decimals that sentences are written with here. */
const UNITS_PER_DEGREE = 600_000;
/** Longer than any coordinate: its digits are exact as one whole number. */
const MOST_AXIS_CHARACTERS = 16;
const POINT = 0x2e;

/**
 * Four fields (`ddmm.mm`, N/S, `dddmm.mm`, E/W) as coordinates, or `null` when they are empty or no place.
 */
export function readCoordinates(texts: readonly string[], from: number): Coordinates | null {
  const latitude = readAxis(texts, from, 2, 'N', 'S', 90);
  const longitude = readAxis(texts, from + 2, 3, 'E', 'W', 180);
  return latitude === null || longitude === null ? null : { latitude, longitude };
}

/**
 * Coordinates as four fields, minutes to four decimals (0.2 m of latitude), rounded.
 *
 * @throws RangeError when the latitude is not within 90 or the longitude not within 180 degrees
 */
export function coordinateFields(position: Coordinates): [string, string, string, string] {
  requireCoordinates(position);
  const { latitude, longitude } = position;
  return [
    axisField(latitude, 2),
    latitude < 0 ? 'S' : 'N',
    axisField(longitude, 3),
    longitude < 0 ? 'W' : 'E',
  ];
}

/** @throws RangeError unless both are numbers in their range: `null` is not the equator */
export function requireCoordinates({ latitude, longitude }: Coordinates): void {
  if (isWithin(latitude, 90) && isWithin(longitude, 180)) return;
  throw new RangeError(
    `position: expected latitude within 90 and longitude within 180 degrees, got ${latitude}, ${longitude}`,
  );
}

function isWithin(degrees: number, most: number): boolean {
  return typeof degrees === 'number' && Math.abs(degrees) <= most;
}

function readAxis(
  texts: readonly string[],
  from: number,
  degreeDigits: number,
  positive: string,
  negative: string,
  most: number,
): number | null {
  const letter = texts[from + 1];
  if (letter !== positive && letter !== negative) return null;
  const text = texts[from] as string;
  const wholeDigits = degreeDigits + 2;
  if (text.length < wholeDigits || text.length > MOST_AXIS_CHARACTERS) return null;
  let degrees = 0;
  // Minutes without their point: whole, so that one division gives the number nearest to what is written.
  let digits = 0;
  for (let index = 0; index < text.length; index += 1) {
    const code = text.charCodeAt(index);
    if (index === wholeDigits) {
      if (code !== POINT) return null;
      continue;
    }
    if (code < 0x30 || code > 0x39) return null;
    if (index < degreeDigits) degrees = degrees * 10 + code - 0x30;
    else digits = digits * 10 + code - 0x30;
  }
  const minutes = digits / 10 ** Math.max(0, text.length - wholeDigits - 1);
  const size = degrees + minutes / 60;
  if (minutes >= 60 || size > most) return null;
  return letter === negative ? -size + 0 : size;
}

function axisField(degrees: number, degreeDigits: number): string {
  const units = Math.round(Math.abs(degrees) * UNITS_PER_DEGREE);
  const whole = Math.floor(units / UNITS_PER_DEGREE);
  const minutes = ((units % UNITS_PER_DEGREE) / 10_000).toFixed(4).padStart(7, '0');
  return String(whole).padStart(degreeDigits, '0') + minutes;
}
