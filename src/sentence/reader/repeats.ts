import { createRepeats, HALF_DAY, type Numbered } from '../../report/internal.ts';
import { stationKey } from '../dsc/field.ts';
import { inEleven } from '../dsc/layout.ts';
import { textAt } from '../field/text-at.ts';

/** When something was received, and by whose clock: only instants of one clock can be compared. */
export interface Receipt {
  readonly at: number | null;
  readonly clock: 'caller' | 'tag' | 'stream' | 'none';
}

/** Numbers the calls of a stream, from 1, and knows one that was sent again. Its memory is bounded. */
export function createSentenceRepeats(): (texts: readonly string[], receipt: Receipt) => Numbered {
  const numberOf = createRepeats(isHalfDayApart);
  return (texts, receipt) => numberOf(repeatKey(texts), receipt);
}

/** The station in field 2, or in the first field of the older layout, without its padding zero. */
export function callStation(texts: readonly string[]): string {
  const first = textAt(texts, 0);
  return stationKey(first.length > 2 ? first : textAt(texts, 1));
}

/** Milliseconds from one receipt to another; `null` when no clock saw both. */
export function between(one: Receipt, other: Receipt): number | null {
  return one.clock !== 'none' && one.clock === other.clock ? Number(other.at) - Number(one.at) : null;
}

function isHalfDayApart(one: Receipt, other: Receipt): boolean {
  return Math.abs(between(one, other) ?? 0) > HALF_DAY;
}

/**
 * What makes two sentences the same event: station, kind, nature, ship, position and time, for alerts and
 * for reports with a time (common practice, no source). Other calls may well be made twice.
 * deviation: D-sentence-8
 */
function repeatKey(texts: readonly string[]): string | null {
  const eleven = inEleven(texts);
  const [format, , category] = eleven;
  const place = textAt(eleven, 5);
  const time = textAt(eleven, 6);
  const distress = format === '12' || category === '12';
  const dated = place.length === 10 && time !== '' && time !== '8888' && place !== '9999999999';
  if (!distress && !dated) return null;
  return `${format},${callStation(texts)},${distress || category},${eleven.slice(3, 10).join()}`;
}
