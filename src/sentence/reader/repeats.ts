import { stationKey } from '../dsc/identity-field.ts';
import { inEleven } from '../dsc/layout.ts';
import type { Receipt } from './receipt.ts';

/** Numbers calls, and knows one that was sent again. */
export interface Repeats {
  /** Number of the call, from 1, and how often it came before. */
  number(texts: readonly string[], receipt: Receipt): { readonly event: number; readonly repeat: number };
}

interface Known {
  readonly event: number;
  readonly repeat: number;
  readonly receipt: Receipt;
}

/** Alerts and reports remembered in order to know their repeats. */
const MOST_REMEMBERED = 64;
/** A time of day comes round again: what says the same after half a day is not the same. */
const HALF_DAY = 43_200_000;

/** A count at its beginning. Its memory is bounded. */
export function createRepeats(): Repeats {
  const remembered = new Map<string, Known>();
  let events = 0;

  function remember(key: string, known: Known): void {
    remembered.delete(key);
    remembered.set(key, known);
    if (remembered.size <= MOST_REMEMBERED) return;
    const [oldest] = remembered.keys();
    remembered.delete(oldest as string);
  }

  return {
    number(texts, receipt) {
      const key = repeatKey(texts);
      const before = key === null ? undefined : remembered.get(key);
      if (key !== null && before !== undefined && !isHalfDayApart(before.receipt, receipt)) {
        const again = { event: before.event, repeat: before.repeat + 1 };
        remember(key, { ...again, receipt });
        return again;
      }
      events += 1;
      const first = { event: events, repeat: 0 };
      if (key !== null) remember(key, { ...first, receipt });
      return first;
    },
  };
}

/** The station in field 2, or in the first field of the older layout, without its padding zero. */
export function callStation(texts: readonly string[]): string {
  const first = texts[0] ?? '';
  return stationKey(first.length > 2 ? first : (texts[1] ?? ''));
}

function isHalfDayApart(one: Receipt, other: Receipt): boolean {
  return (
    one.at !== null &&
    other.at !== null &&
    one.clock === other.clock &&
    Math.abs(other.at - one.at) > HALF_DAY
  );
}

/**
 * What makes two sentences the same event: station, kind, nature, ship, position and time, for alerts and
 * for reports with a time (common practice, no source). Other calls may well be made twice.
 * deviation: D-sentence-8
 */
function repeatKey(texts: readonly string[]): string | null {
  const [format, , category, first, second, place = '', time = '', ship, nature, end] = inEleven(texts);
  const distress = format === '12' || category === '12';
  const dated = place.length === 10 && time !== '' && time !== '8888' && place !== '9999999999';
  if (!distress && !dated) return null;
  const says = `${first},${second},${place},${time},${ship},${nature},${end}`;
  return `${format},${callStation(texts)},${distress ? '' : category},${says}`;
}
