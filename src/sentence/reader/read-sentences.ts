import type { Reading } from '../../report/index.ts';
import type { ReaderOptions } from './options.ts';
import { createSentenceReader } from './reader.ts';

/**
 * Reads a whole text: a saved log, a pasted sentence.
 *
 * Of a call that is read in two steps, whole minutes first, only the last reading is given, in the place
 * of the first.
 *
 * @param text - sentences, one a line, or the bytes of such a file
 * @param options - direction, own identity, instant of receipt
 * @returns what each line says, damaged lines included; whatever is neither text nor bytes is told as damage
 * @throws RangeError when an option is out of range, TypeError when the own identity is no text
 *
 * @see {@link createSentenceReader}
 * @see {@link findFaults}
 *
 * @example
 * ```ts
 * import { readSentences } from 'seahail/sentence';
 *
 * const log = '$CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E*7C\r\n$CDDSE,1,1,A,2329991420,00,33001200*1A\r\n';
 * for (const reading of readSentences(log)) {
 *   if (reading.kind === 'call') console.log(reading.stage, reading.call.kind); // final position-reply
 * }
 * ```
 */
export function readSentences(text: string | Uint8Array, options: ReaderOptions = {}): Reading[] {
  const reader = createSentenceReader(options);
  const readings: Reading[] = [];
  const places = new Map<string, number>();
  for (const reading of reader.push(text).concat(reader.flush())) {
    let place = readings.length;
    if (reading.kind === 'call') {
      const key = `${reading.event} ${reading.repeat}`;
      place = places.get(key) ?? place;
      places.set(key, place);
    }
    readings[place] = reading;
  }
  return readings;
}
