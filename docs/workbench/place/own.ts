import type { TimeOfDay } from 'seahail/position';
import { failure, type Issue, type Result, success } from 'seahail/result';
import { ownIssue } from '../frame/own-issue.ts';
import { parseTime } from './stations.ts';

/** The time of day that it is now. */
export function parseNow(text: string): Result<TimeOfDay> {
  const time = parseTime(text);
  return time === null || time === undefined
    ? failure(no('time-of-day', text, 'Time of day', '14:46'))
    : success(time);
}

/** Midnight, UTC, at the beginning of a calendar day, epoch milliseconds. */
export function parseDay(text: string): Result<number> {
  const day = text.trim();
  const midnight = /^\d{4}-\d{2}-\d{2}$/.test(day) ? Date.parse(`${day}T00:00:00Z`) : Number.NaN;
  // Some days that no month has are taken for days of the next one.
  return Number.isNaN(midnight) || new Date(midnight).toISOString().slice(0, 10) !== day
    ? failure(no('day', text, 'Date', '2026-06-01'))
    : success(midnight);
}

/** The greatest speed that anybody may have made, knots. */
export function parseSpeed(text: string): Result<number> {
  const speed = text.trim() === '' ? Number.NaN : Number(text.replace(',', '.'));
  return speed >= 0 && speed < 1000 ? success(speed) : failure(no('speed', text, 'Speed in knots', '6'));
}

/** Variation in degrees, east positive; `null` when blank. */
export function parseVariation(text: string): Result<number | null> {
  if (text.trim() === '') return success(null);
  const [, sign, digits, letter] = /^\s*([+-])?(\d{1,3}(?:[.,]\d+)?)\s*°?\s*([EW])?\s*$/i.exec(text) ?? [];
  const degrees = Number((digits ?? '').replace(',', '.'));
  if (digits === undefined || degrees > 180 || (sign !== undefined && letter !== undefined))
    return failure(no('variation', text, 'Variation', '1.5 W'));
  return success(sign === '-' || letter?.toUpperCase() === 'W' ? -degrees : degrees);
}

function no(code: string, text: string, what: string, expected: string): Issue {
  const given = text.trim() === '' ? 'nothing' : `'${text.slice(0, 20)}'`;
  return ownIssue(code, `${what}: expected one such as ${expected}, got ${given}`, { expected });
}
