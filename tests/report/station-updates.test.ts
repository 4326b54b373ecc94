import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createDirectory } from '../../src/directory/index.ts';
import { stationUpdates } from '../../src/report/index.ts';
import { readSentences } from '../../src/sentence/index.ts';
import { bitsOf, sentencesOf } from '../oracle/sentence-ais.ts';
import { line, mmsi } from '../sentence/arbitrary.ts';

const ais = (table: string, values: Record<string, number | string>, formatter = 'VDM'): string =>
  sentencesOf(bitsOf(table, values), formatter)
    .map((body) => line(body, '!'))
    .join('');

describe('what readings tell a directory', () => {
  it('is the name and call sign of AIS, and who was heard', () => {
    const log =
      ais('24A', { message: 24, mmsi: 232_999_142, part: 0, name: 'TERN OF ARDLE' }) +
      ais('24B', { message: 24, mmsi: 232_999_142, part: 1, callSign: '2ZZT4' }) +
      line('CDDSC,20,2329995630,00,00,26,900072,,,,R,');
    const { stations } = createDirectory(stationUpdates(readSentences(log, { now: 1000 })));
    expect(stations).toMatchObject([
      { mmsi: '232999142', name: 'TERN OF ARDLE', callSign: '2ZZT4', heardAt: 1000 },
      { mmsi: '232999563', origins: { entry: 'heard' }, heardAt: 1000 },
    ]);
  });

  it('is nothing of own ship, of orders to the radio, or of unassigned identities', () => {
    const own = ais('24A', { message: 24, mmsi: 232_999_871, part: 0, name: 'MERROW' }, 'VDO');
    const order = line('CDDSC,20,2329995630,00,00,26,900072,,,,R,');
    const odd = ais('1', { message: 1, mmsi: 1 });
    expect(
      stationUpdates(readSentences(own + order + odd, { direction: 'commanded', own: '232999871' })),
    ).toEqual([]);
  });

  it('is no more than was heard', () => {
    const heard = line('CDDSC,20,2329995630,00,00,26,900072,,,,R,');
    const silent = line('CDDSC,20,,00,00,26,900072,,,,R,');
    const placed = ais('1', { message: 1, mmsi: 232_999_142 });
    expect(stationUpdates(readSentences(heard + silent + placed + line('GPVTG,,T,,M,,N,,K,N')))).toEqual([
      { mmsi: '232999563', origin: 'heard' },
      { mmsi: '232999142', origin: 'ais' },
    ]);
    expect(stationUpdates(readSentences(heard, { now: 999.6 }))).toEqual([
      { mmsi: '232999563', origin: 'heard', heardAt: 1000 },
    ]);
  });

  it('is always fit to be remembered', () => {
    fc.assert(
      fc.property(
        mmsi,
        fc.constantFrom('1', '5', '24A'),
        fc.double({ noNaN: true, min: 0, max: 1e12 }),
        (digits, table, now) => {
          const message = Number(table.replace('A', ''));
          const log =
            ais(table, { message, mmsi: Number(digits), name: 'X' }) +
            line(`CDDSC,20,${digits}0,00,00,26,,,,,R,`);
          expect(() => createDirectory(stationUpdates(readSentences(log, { now })))).not.toThrow();
        },
      ),
      { numRuns: 300 },
    );
  });
});
