import { instantOf, readUtc } from '../field/utc-field.ts';

/** The instant of a `ZDA` sentence, epoch milliseconds, or `null` when it has none. */
export function readClock(texts: readonly string[]): number | null {
  const [utc = '', day = '', month = '', year = ''] = texts;
  const time = readUtc(utc);
  if (time === null || !/^\d{2}$/.test(day) || !/^\d{2}$/.test(month) || !/^\d{4}$/.test(year)) return null;
  return instantOf(Number(year), Number(month), Number(day), time);
}
