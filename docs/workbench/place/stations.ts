import {
  boundsFrom,
  type Coordinates,
  centreOf,
  decodePosition,
  formatPosition,
  formatReportedPosition,
  parsePosition,
  type ReportedPosition,
  type TimeOfDay,
  toReportedPosition,
  type WrittenPosition,
} from 'seahail/position';
import { failure, type Issue, type Result, success } from 'seahail/result';
import { ownIssue } from '../frame/own-issue.ts';

/** As a call carries it, or as finely as somebody typed it. */
export type StationPosition = ReportedPosition | WrittenPosition;

/** One line: who, where and when. */
export interface StationLine {
  readonly name: string;
  readonly distress: boolean;
  readonly position: StationPosition;
  readonly time: TimeOfDay | null;
  /** What a person should know about the reading of the line. */
  readonly notices: readonly Issue[];
}

/** A line `name; position; time`. */
export function parseStation(text: string, line: number): Result<StationLine> {
  const [name = '', place = '', when = ''] = text.split(';').map((part) => part.trim());
  const position = placeOf(place);
  if (!position.ok)
    return failure(at(line, position.issues[0]), ...position.issues.slice(1).map((issue) => at(line, issue)));
  const time = parseTime(when);
  if (time === undefined) {
    return failure(
      at(
        line,
        ownIssue(
          'time-of-day',
          `Time '${when.slice(0, 20)}' is not a time of day: expected hours and minutes`,
        ),
      ),
    );
  }
  return success({
    name: name.replace(/^!\s*/, '') || `line ${line}`,
    distress: name.startsWith('!'),
    position: position.value,
    time,
    notices: position.notices.map((notice) => at(line, notice)),
  });
}

/** Minutes that a digit of a call is worth: whole ones, or ten-thousandths in the finer form. */
const CALL_STEPS = [1, 1e-4] as const;

/** A position typed as it was reported, or the ten digits of a call. */
function placeOf(text: string): Result<StationPosition> {
  if (/^\d{10}$/.test(text)) {
    const read = decodePosition(text);
    if (!read.ok) return read;
    if (read.value.kind === 'reported-position') return success(read.value);
    return failure(ownIssue('no-position', 'Position is ten nines: the station had none'));
  }
  const read = parsePosition(text);
  if (!read.ok) return read;
  const minutes = read.value.step * 60;
  const step = CALL_STEPS.find((each) => Math.abs(minutes / each - 1) < 1e-6);
  return success(step === undefined ? read.value : toReportedPosition(read.value, { enhanced: step < 1 }));
}

/** The middle of where a position places her, and the greatest distance from it, metres. */
export function middleOf(position: StationPosition): { readonly centre: Coordinates; readonly off: number } {
  const centre = 'step' in position ? position : centreOf(position);
  const assumption = 'step' in position ? 'unknown' : 'truncated';
  return { centre, off: Math.ceil(boundsFrom(centre, position, { at: null, now: 0, assumption }).greatest) };
}

/** The digits as they were reported. */
export function formatStationPosition(position: StationPosition): string {
  if (!('step' in position)) return formatReportedPosition(position);
  return formatPosition(position, {
    digits: Math.min(4, Math.max(0, Math.round(-Math.log10(position.step * 60)))),
  });
}

/** `null` when blank, `undefined` when it is none. */
export function parseTime(text: string): TimeOfDay | null | undefined {
  if (text.trim() === '') return null;
  const [, hour, minute] = /^\s*(\d{1,2})[:. h]?(\d{2})\s*(?:utc|z)?\s*$/i.exec(text) ?? [];
  if (hour === undefined || Number(hour) > 23 || Number(minute) > 59) return undefined;
  return { hour: Number(hour), minute: Number(minute) };
}

function at(line: number, issue: Issue): Issue {
  return { ...issue, message: `Line ${line}: ${issue.message}`, at: [`line ${line}`, ...issue.at] };
}
