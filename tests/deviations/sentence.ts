import { expect } from 'vitest';
import type { Reading } from '../../src/report/index.ts';
import { checksumOf } from '../../src/sentence/frame/checksum.ts';
import { findFaults, parseSentence, readSentences, writeOwnPosition } from '../../src/sentence/index.ts';

const line = (body: string): string => `$${body}*${checksumOf(body)}\r\n`;
const calls = (...bodies: string[]): Reading<'call'>[] =>
  readSentences(bodies.map(line).join('')).filter((reading) => reading.kind === 'call');
const first = (...bodies: string[]): Reading<'call'> => calls(...bodies)[0] as Reading<'call'>;

/** What `docs/deviations.md` says of the sentence room. */
export const deviations: Record<string, () => void> = {
  'D-sentence-1': () => {
    for (const time of ['1767225600', '1767225600000']) {
      const read = parseSentence(`\\c:${time}*${checksumOf(`c:${time}`)}\\${line('GPZDA,,,,,,').trim()}`);
      expect(read.ok && read.value.tag?.time).toBe(1_767_225_600_000);
    }
  },
  'D-sentence-2': () => {
    expect(first('CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,').call).toMatchObject({
      position: { latitude: { degrees: 56, minutes: 20 } },
    });
    expect(first('CDDSC,20,2329991420,00,00,26,900072,,,,R,').call).toMatchObject({ channel: '72' });
    expect(first('CDDSC,20,2329991420,08,09,26,550573001015,,,,R,').call.asReceived).toMatchObject({
      header: true,
      position: [5, 73, 0, 10, 15],
    });
  },
  'D-sentence-3': () => {
    const area = first('CTDSC,02,1510080405,12,12,09,1494000631,0911,3169999040,01,S,').call;
    expect([area.from, area.to?.kind]).toEqual([null, 'area']);
    const doubtful = first('CTDSC,02,2350123450,10,09,26,,,,,S,');
    expect(doubtful.notices.map((notice) => notice.code)).toContain('sentence-area-or-identity');
    expect(first('CTDSC,02,2329991420,10,09,26,,,,,S,').call.from).toBe('232999142');
  },
  'D-sentence-4': () => {
    expect(first('CDDSC,2329999010,12,12,05,,,S').call).toMatchObject({
      kind: 'distress-alert',
      nature: 'sinking',
    });
  },
  'D-sentence-5': () => {
    const call = 'CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E';
    expect(first(call, 'CDDSE,1,1,A,2329991420,02,0125,04,TERN').call.expansion).toEqual({
      speed: 12.5,
      stationName: 'TERN',
    });
    expect(first(call, 'CDDSE,1,1,A,2329991420,00,123').call).not.toHaveProperty('position.fraction');
    const query = readSentences(line('CDDSE,1,1,Q,2329991420,00,'))[0] as Reading;
    expect(query).toMatchObject({ kind: 'expansion', flag: 'query' });
  },
  'D-sentence-6': () => {
    for (const [year, read] of [
      ['79', 2079],
      ['80', 1980],
    ]) {
      const fix = readSentences(line(`GPRMC,000000.00,A,5620.0,N,00630.0,W,,,0101${year},,,A`))[0];
      expect(fix?.kind === 'own-position' && new Date(fix.fix.instant ?? 0).getUTCFullYear()).toBe(read);
    }
  },
  'D-sentence-12': () => {
    const fix = readSentences(line('GPRMC,000000.00,A,5620.0,N,00630.0,W,,,010126,,,E'))[0];
    expect(fix?.kind === 'own-position' && writeOwnPosition(fix.fix, { talker: 'GP' })).toMatch(
      /^\$GPRMC,000000\.00,V,.*,E\*/,
    );
  },
  'D-sentence-7': () => {
    const call = 'CDDSC,20,2329991420,08,21,26,1562000630,1404,,,B,E';
    const gap = Array<string>(24).fill('GPGLL,,,,,,V,N');
    expect(first(call, ...gap.slice(1), 'CDDSE,1,1,A,2329991420,00,33001200').call).toHaveProperty(
      'position.fraction',
    );
    expect(first(call, ...gap, 'CDDSE,1,1,A,2329991420,00,33001200').call).not.toHaveProperty(
      'position.fraction',
    );
  },
  'D-sentence-8': () => {
    const alert = 'CDDSC,12,2329992180,,05,00,1562000630,1042,,,S,';
    expect(calls(alert, alert).map(({ event, repeat }) => [event, repeat])).toEqual([
      [1, 0],
      [1, 1],
    ]);
    const ordinary = 'CDDSC,20,2329991420,00,00,26,900072,,,,R,';
    expect(calls(ordinary, ordinary).map(({ event }) => event)).toEqual([1, 2]);
  },
  'D-sentence-9': () => {
    for (const body of [
      'CDDSC,12,2329992180,12,05,00,,,,,S,',
      'CDDSC,20,2329991420,00,00,26,900072,,,,R,',
      'CDDSC,20,2329991420,08,21,26,,,,,R,',
    ]) {
      expect(first(body).call).not.toHaveProperty('asReceived');
    }
  },
  'D-sentence-11': () => {
    const log = (minute: string): string[] =>
      findFaults(
        line('GPRMC,140500.00,A,5621.1000,N,00632.4000,W,5.2,184.0,010626,1.5,W,A') +
          line(`CDDSC,20,2329991420,08,21,26,0562000630,${minute},,,B,E`) +
          line('CDDSE,1,1,A,2329991420,00,33001200'),
      ).findings.map(({ id, certainty }) => `${id} ${certainty}`);
    expect(log('1404')).toEqual(['wrong-quadrant likely']);
    expect(log('1308')).toEqual(['wrong-quadrant likely', 'wrong-time likely']);
    expect(log('1320')).toEqual(['wrong-quadrant likely']);
  },
};
