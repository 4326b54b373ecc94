import {
  type Coordinates,
  decodePosition,
  parsePosition,
  type ReportedPosition,
  type TimeOfDay,
  toReportedPosition,
} from 'seahail/position';
import { failure, type Issue, type Result, success } from 'seahail/result';

/** One line: who, where and when. */
export interface StationLine {
  readonly name: string;
  readonly distress: boolean;
  readonly position: ReportedPosition;
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
      at(line, {
        code: 'time-of-day',
        message: `Time '${when.slice(0, 20)}' is no time of day, hours and minutes wanted`,
        at: [],
      }),
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

/** A position typed as it was reported, or the ten digits of a call. */
function placeOf(text: string): Result<ReportedPosition> {
  if (/^\d{10}$/.test(text)) {
    const read = decodePosition(text);
    if (!read.ok) return read;
    if (read.value.kind === 'reported-position') return success(read.value);
    return failure({ code: 'no-position', message: 'Position is ten nines: the station had none', at: [] });
  }
  const read = parsePosition(text);
  if (!read.ok) return read;
  const fine = hasFraction(read.value);
  const decimals = /[.,](\d+)\s*['′]/.exec(text)?.[1]?.length;
  const guessed: Issue[] =
    fine && decimals !== undefined && decimals < 4
      ? [
          {
            code: 'few-decimals',
            message: `Minutes have ${decimals} decimals where a call carries 4: she may be farther off than drawn`,
            at: [],
            clause: 'ITU-R M.821-1',
          },
        ]
      : [];
  return success(toReportedPosition(read.value, { enhanced: fine }), guessed);
}

function hasFraction({ latitude, longitude }: Coordinates): boolean {
  return [latitude, longitude].some((degrees) => Math.abs(degrees * 60 - Math.round(degrees * 60)) > 1e-6);
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
