import type { GnssFix } from '../../report/index.ts';
import { want } from '../../result/internal.ts';
import { coordinateFields } from '../field/coordinate-fields.ts';
import { utcField } from '../field/utc-field.ts';
import { formatSentence } from '../frame/format.ts';
import { DOUBTS, MODE_LETTERS } from './receiver-fix.ts';

/**
 * Writes an own position so that a radio on a serial port learns where it is: as an `RMC` sentence when it has its
 * instant, else as `GLL`, which has no speed and course.
 *
 * A radio sends this position in a distress alert. Write only what a receiver of this vessel gave, and stop when it
 * stops: the radio must notice that its position is old. A position that is estimated, typed or simulated is written as
 * not valid (status V), with its mode.
 *
 * @param fix - as a reader gives it
 * @param options - the talker; `'GN'` unless given
 * @returns the sentence without its line end
 * @throws RangeError when position, time, speed or course is out of range, or the year is not 1980 to 2079
 *
 * Source: IEC 61162-1, `RMC` and `GLL` sentences, as restated in equipment papers.
 *
 * @example
 * ```ts
 * import { writeOwnPosition } from 'seahail/sentence';
 *
 * const position = { latitude: 56.3388, longitude: -6.502 };
 * const instant = Date.UTC(2026, 5, 1, 14, 10, 30);
 * const time = { hour: 14, minute: 10, second: 30 };
 * const fix = { formatter: 'RMC', position, quality: 'autonomous', time, instant, speed: 5.2, course: 123.4 } as const;
 * console.log(writeOwnPosition(fix)); // $GNRMC,141030.00,A,5620.3280,N,00630.1200,W,5.2,123.4,010626,,,A*5B
 * ```
 */
export function writeOwnPosition(
  fix: GnssFix,
  { talker = 'GN' }: { readonly talker?: string | undefined } = {},
): string {
  want('writeOwnPosition', 'a fix', fix, 'position');
  const { position, quality, time, instant, speed, course } = fix;
  // deviation: D-sentence-12 (a doubt keeps it out of a radio's alert).
  const status = position !== null && DOUBTS[quality] === undefined ? 'A' : 'V';
  const place = position === null ? ['', '', '', ''] : coordinateFields(position);
  const mode = MODE_LETTERS[quality];
  if (mode === undefined) throw new RangeError(`quality: expected one of a fix, got ${quality}`);
  if (instant === null) {
    const utc = time === null ? '' : utcField(time);
    return formatSentence({ talker, formatter: 'GLL', fields: [...place, utc, status, mode] });
  }
  const [utc, date] = utcAndDate(instant);
  const motion = [tenths('speed', speed, 10_000), tenths('course', course, 360)];
  const fields = [utc, status, ...place, ...motion, date, '', '', mode];
  return formatSentence({ talker, formatter: 'RMC', fields });
}

function tenths(name: string, value: number | null, most: number): string {
  if (value === null) return '';
  if (!(value >= 0 && value <= most)) throw new RangeError(`${name}: expected 0 to ${most}, got ${value}`);
  return value.toFixed(1);
}

/** `hhmmss.ss` and `ddmmyy`. */
function utcAndDate(instant: number): [string, string] {
  if (!Number.isFinite(instant)) throw new RangeError(`instant: expected epoch milliseconds, got ${instant}`);
  const iso = new Date(instant).toISOString();
  // deviation: D-sentence-6
  if (iso < '1980' || iso > '2080') throw new RangeError(`instant: expected 1980 to 2079, got ${iso}`);
  return [iso.slice(11, 22).replaceAll(':', ''), iso.slice(8, 10) + iso.slice(5, 7) + iso.slice(2, 4)];
}
