import type { UtcTime } from '../../report/internal.ts';

const DAY = 86_400_000;

/** `hhmmss` with decimals or not; `null` when it is none. */
export function readUtc(text: string): UtcTime | null {
  const hour = twoDigitsAt(text, 0);
  const minute = twoDigitsAt(text, 2);
  const whole = twoDigitsAt(text, 4);
  if (!(hour < 24 && minute < 60 && whole < 61)) return null;
  if (text.length === 6 || (text.length === 9 && text.endsWith('.00')))
    return { hour, minute, second: whole };
  if (text.length > 16 || !/^\.\d+$/.test(text.slice(6))) return null;
  return { hour, minute, second: Number(text.slice(4)) };
}

/** The number of two digits of a text, `NaN` when they are none. */
export function twoDigitsAt(text: string, index: number): number {
  const tens = text.charCodeAt(index) - 0x30;
  const units = text.charCodeAt(index + 1) - 0x30;
  return tens >= 0 && tens <= 9 && units >= 0 && units <= 9 ? tens * 10 + units : Number.NaN;
}

/**
 * `hhmmss.ss`.
 *
 * @throws RangeError when hour, minute or second are out of range, or hour or minute not whole
 */
export function utcField({ hour, minute, second }: UtcTime): string {
  const isSecond = typeof second === 'number' && second >= 0 && second < 61;
  if (!isWhole(hour, 24) || !isWhole(minute, 60) || !isSecond) {
    throw new RangeError(`time: expected a time of day, got ${hour}:${minute}:${second}`);
  }
  const hundredths = Math.floor(second * 100 + 1e-6);
  const [whole, rest] = [Math.floor(hundredths / 100), hundredths % 100];
  return `${[hour, minute, whole].map(twoDigits).join('')}.${twoDigits(rest)}`;
}

function isWhole(value: number, end: number): boolean {
  return Number.isInteger(value) && value >= 0 && value < end;
}

/** The instant of a date and a time of day, epoch milliseconds; `null` when there is no such date. */
export function instantOf(year: number, month: number, day: number, time: UtcTime): number | null {
  const midnight = Date.UTC(year, month - 1, day);
  if (month < 1 || month > 12 || day < 1) return null;
  // Only the last days of a month may not exist: the others need no calendar.
  if (day > 28 && new Date(midnight).getUTCDate() !== day) return null;
  return midnight + millisecondsOf(time);
}

/** The instant with this time of day that lies nearest to another instant. */
export function instantNear(time: UtcTime, reference: number): number {
  const today = Math.floor(reference / DAY) * DAY + millisecondsOf(time);
  if (today - reference > DAY / 2) return today - DAY;
  return reference - today > DAY / 2 ? today + DAY : today;
}

function millisecondsOf({ hour, minute, second }: UtcTime): number {
  return (hour * 60 + minute) * 60_000 + Math.round(second * 1000);
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0');
}
