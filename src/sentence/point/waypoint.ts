import type { Reading } from '../../report/index.ts';
import { coordinateFields, readCoordinates } from '../field/coordinate-fields.ts';
import { escapeText, unescapeText } from '../frame/escape.ts';
import { formatSentence } from '../frame/format.ts';

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
  { position, name }: Reading<'waypoint'>['waypoint'],
  { talker = 'CD' }: { readonly talker?: string | undefined } = {},
): string {
  return formatSentence({
    talker,
    formatter: 'WPL',
    fields: [...coordinateFields(position), escapeText(name)],
  });
}

/** The fields of a `WPL` sentence, or `null` when they hold no place. */
export function readWaypoint(texts: readonly string[]): Reading<'waypoint'>['waypoint'] | null {
  const position = readCoordinates(texts, 0);
  return position === null ? null : { position, name: unescapeText(texts[4] ?? '') };
}
