import type { StationUpdate } from '../directory/index.ts';
import { parseIdentity } from '../identity/index.ts';
import { want } from '../result/internal.ts';
import type { Reading, Readings } from './reading.ts';

/**
 * What readings tell of stations, ready for a directory: who was heard and when, and the names and call signs
 * that AIS carries. So a boat on the display can be called by her identity.
 *
 * Own ship (`VDO`) and identities of no assigned form are left out.
 *
 * @param readings - of a reader, or of a whole log
 * @returns updates for `remember` of `seahail/directory`, in the order of the readings
 *
 * @example
 * ```ts
 * import { createDirectory } from 'seahail/directory';
 * import { readSentences } from 'seahail/sentence';
 * import { stationUpdates } from 'seahail/report';
 *
 * const readings = readSentences('$CDDSC,20,2329991420,08,21,26,,,,,R,*2D\r\n', { now: 0 });
 * console.log(createDirectory(stationUpdates(readings)).stations[0]?.mmsi); // 232999142
 * ```
 */
export function stationUpdates(readings: readonly Reading<keyof Readings, unknown>[]): StationUpdate[] {
  want('stationUpdates', 'a list of readings', readings, 'flatMap');
  return readings.flatMap((reading) => {
    const update = updateOf(reading);
    if (update === null || !parseIdentity(update.mmsi).ok) return [];
    return reading.at === null ? update : { ...update, heardAt: Math.round(reading.at) };
  });
}

function updateOf(reading: Reading<keyof Readings, unknown>): StationUpdate | null {
  if (reading.kind === 'call') {
    const { from } = reading.call;
    return from === null || reading.direction === 'commanded' ? null : { mmsi: from, origin: 'heard' };
  }
  if (reading.kind !== 'ais' || reading.own) return null;
  const { mmsi, name, callSign } = reading.report;
  return {
    mmsi,
    origin: 'ais',
    ...(name === undefined ? {} : { name }),
    ...(callSign === undefined ? {} : { callSign }),
  };
}
