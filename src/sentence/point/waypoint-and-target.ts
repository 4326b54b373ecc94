import type { Reading } from '../../report/index.ts';
import { want } from '../../result/internal.ts';
import { requireOneOf } from '../arguments.ts';
import { coordinateFields, readCoordinates } from '../field/coordinate-fields.ts';
import { textAt } from '../field/text-at.ts';
import { readUtc, utcField } from '../field/utc-field.ts';
import { escapeText, formatSentence, unescapeText } from '../frame/format.ts';

/**
 * Writes a waypoint as a `WPL` sentence, for a display that knows no `DSC`.
 *
 * A reported position may be wrong, old or cut to whole minutes: the person who steers by the waypoint must know that.
 *
 * @param waypoint - where and what it is called
 * @param options - the talker
 * @returns the sentence without its line end
 * @throws RangeError when the position is none or the name makes the sentence longer than 82 characters
 *
 * Source: IEC 61162-1, `WPL` sentence, as restated in equipment papers.
 *
 * @see {@link writeTarget}
 * @see {@link createSentenceRepairer}
 *
 * @example
 * ```ts
 * import { writeWaypoint } from 'seahail/sentence';
 *
 * const position = { latitude: 56.3388, longitude: -6.502 };
 * console.log(writeWaypoint({ position, name: '232999142' })); // $CDWPL,5620.3280,N,00630.1200,W,232999142*7A
 * ```
 */
export function writeWaypoint(
  waypoint: Reading<'waypoint'>['waypoint'],
  { talker = 'CD' }: { readonly talker?: string | undefined } = {},
): string {
  want('writeWaypoint', 'a waypoint', waypoint, 'position');
  return formatSentence({
    talker,
    formatter: 'WPL',
    fields: [...coordinateFields(waypoint.position), escapeText(waypoint.name)],
  });
}

/** The fields of a `WPL` sentence, or `null` when they hold no place. */
export function readWaypoint(texts: readonly string[]): Reading<'waypoint'>['waypoint'] | null {
  const position = readCoordinates(texts, 0);
  return position === null ? null : { position, name: unescapeText(textAt(texts, 4)) };
}

const STATUSES = ['lost', 'acquiring', 'tracking'] as const;
const LETTER = { lost: 'L', acquiring: 'Q', tracking: 'T' } as const;

/**
 * Writes a target as a `TLL` sentence, for a display that knows no `DSC` and draws targets.
 *
 * A position from a call is a single report and no fix, not a track: the display will draw it like one all the same.
 * Write it once, with its time. A display takes a target that is repeated for one that is tracked, and shows a
 * stopped vessel with a course and a speed. A waypoint claims less: see {@link writeWaypoint}.
 *
 * @param target - number, place, name and status
 * @param options - the talker
 * @returns the sentence without its line end
 * @throws RangeError when the number is not 0–99, the position, time or status is none, or the sentence would be too long
 *
 * Source: IEC 61162-1, `TLL` sentence, as restated in equipment papers.
 *
 * @see {@link writeWaypoint}
 * @see {@link createSentenceRepairer}
 *
 * @example
 * ```ts
 * import { writeTarget } from 'seahail/sentence';
 *
 * const target = { number: 1, position: { latitude: 56.5, longitude: -6.25 }, name: 'TERN' };
 * console.log(writeTarget(target)); // $CDTLL,01,5630.0000,N,00615.0000,W,TERN,,T,*0C
 * ```
 */
export function writeTarget(
  target: Pick<Reading<'target'>['target'], 'number' | 'position' | 'name'> & {
    readonly [Field in 'time' | 'status' | 'reference']?: Reading<'target'>['target'][Field] | undefined;
  },
  { talker = 'CD' }: { readonly talker?: string | undefined } = {},
): string {
  want('writeTarget', 'a target', target, 'position');
  const { number, position, name, time = null, status = 'tracking', reference = false } = target;
  if (!Number.isInteger(number) || number < 0 || number > 99) {
    throw new RangeError(`number: expected 0 to 99, got ${number}`);
  }
  if (status !== null) requireOneOf('status', status, STATUSES);
  const fields = [
    String(number).padStart(2, '0'),
    ...coordinateFields(position),
    escapeText(name),
    time === null ? '' : utcField(time),
    status === null ? '' : LETTER[status],
    reference ? 'R' : '',
  ];
  return formatSentence({ talker, formatter: 'TLL', fields });
}

/** The fields of a `TLL` sentence, or `null` when they hold no place or no number. */
export function readTarget(texts: readonly string[]): Reading<'target'>['target'] | null {
  const position = readCoordinates(texts, 1);
  const number = textAt(texts, 0);
  if (position === null || !/^\d{1,2}$/.test(number)) return null;
  return {
    number: Number(number),
    position,
    name: unescapeText(textAt(texts, 5)),
    time: readUtc(textAt(texts, 6)),
    status: STATUSES.find((status) => LETTER[status] === texts[7]) ?? null,
    reference: texts[8] === 'R',
  };
}
