import { describe, expect, it } from 'vitest';
import type { Reading } from '../../src/report/index.ts';
import { checksumOf } from '../../src/sentence/frame/checksum.ts';
import { createSentenceReader, readSentences } from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

// Stations and places are invented. Pairing rules: IEC 61162-1, note 1 to the DSC sentence; the rest common practice, no source.
const reply = (ship: string, mark = 'E'): string =>
  line(`CDDSC,20,${ship}0,08,21,26,1562000630,1404,,,B,${mark}`);
const finer = (ship: string, talker = 'CD'): string => line(`${talker}DSE,1,1,A,${ship}0,00,33001200`);
const fix = line('GPGLL,5620.0000,N,00630.0000,W,140412.00,A,A');
const tern = '232999142';
const pellinore = '232999563';

const shown = (readings: readonly Reading[]): string[] =>
  readings
    .filter((reading): reading is Reading<'call'> => reading.kind === 'call')
    .map(({ event, repeat, stage, call, notices }) => {
      const fraction =
        call.kind === 'position-reply' && call.position?.fraction !== undefined ? 'fine' : 'whole';
      const said = notices.map(({ code }) => code.replace('sentence-expansion-', ''));
      return [`${event}.${repeat}`, stage, fraction, ...said].join(' ');
    });

function at(...steps: readonly (readonly [seconds: number, text: string])[]): string[] {
  const reader = createSentenceReader();
  return shown([...steps.flatMap(([seconds, text]) => reader.push(text, seconds * 1000)), ...reader.flush()]);
}

describe('a call and its expansion', () => {
  it('is given out at once as provisional, then final', () => {
    const reader = createSentenceReader();
    expect(shown(reader.push(reply(tern)))).toEqual(['1.0 provisional whole']);
    expect(shown(reader.push(finer(tern)))).toEqual(['1.0 final fine']);
    expect(reader.flush()).toEqual([]);
  });

  it('never holds a distress alert back', () => {
    const reader = createSentenceReader();
    const [alert] = reader.push(line('CDDSC,12,2329992180,,05,00,1562000630,1042,,,S,E'));
    expect(alert).toMatchObject({ kind: 'call', stage: 'provisional', call: { kind: 'distress-alert' } });
  });

  it('waits two seconds by the receipt, however many sentences pass', () => {
    const busy = fix.repeat(100);
    expect(at([0, reply(tern)], [1.9, busy + finer(tern)])).toEqual([
      '1.0 provisional whole',
      '1.0 final fine late',
    ]);
    expect(at([0, reply(tern)], [2.1, finer(tern)])).toEqual([
      '1.0 provisional whole',
      '1.0 final whole missing',
    ]);
  });

  it('is settled when only time goes by', () => {
    expect(at([0, reply(tern)], [2.1, ''])).toEqual(['1.0 provisional whole', '1.0 final whole missing']);
    expect(at([0, reply(tern)], [1, ''], [1.5, finer(tern)])).toEqual([
      '1.0 provisional whole',
      '1.0 final fine',
    ]);
  });

  it('waits by the time of TAG blocks too', () => {
    const tagged = (seconds: number, text: string): string => {
      const inside = `c:${1_767_225_600 + seconds}`;
      return `\\${inside}*${checksumOf(inside)}\\${text}`;
    };
    const run = (seconds: number): string[] =>
      shown(readSentences(tagged(0, reply(tern)) + tagged(seconds, finer(tern))));
    expect(run(2)).toEqual(['1.0 final fine']);
    expect(run(3)).toEqual(['1.0 final whole missing']);
  });

  it('is joined when it was not announced, and says so', () => {
    expect(shown(readSentences(reply(tern, '') + finer(tern)))).toEqual(['1.0 final fine unannounced']);
  });

  it('is never joined across stations', () => {
    expect(shown(readSentences(reply(tern) + finer(pellinore)))).toEqual(['1.0 final whole missing']);
    const other = readSentences(reply(tern) + finer(pellinore))[1];
    expect(other).toMatchObject({ kind: 'expansion', station: pellinore });
    expect(other?.notices[0]?.code).toBe('sentence-expansion-other-station');
  });

  it('keeps two calls apart whose expansions cross', () => {
    const text = reply(tern) + reply(pellinore) + finer(pellinore) + finer(tern);
    expect(shown(readSentences(text))).toEqual(['1.0 final fine late', '2.0 final fine']);
  });

  it('prefers the talker of the call, then the latest call', () => {
    const other = line(`CVDSC,20,${tern}0,08,21,26,1562100630,1405,,,B,E`);
    const joined = readSentences(other + reply(tern) + finer(tern, 'CV'));
    expect(joined[0]).toMatchObject({ talker: 'CV', call: { position: { fraction: { latitude: 3300 } } } });
  });

  it('of several sentences is complete when all are in', () => {
    const part = (number: number, sets: string): string => line(`CDDSE,2,${number},A,${tern}0,${sets}`);
    const [one, two] = [part(1, '00,33001200'), part(2, '02,0125')];
    for (const order of [one + two, two + one]) {
      expect(shown(readSentences(reply(tern) + order))).toEqual(['1.0 final fine']);
    }
    expect(shown(readSentences(reply(tern) + one))).toEqual(['1.0 final fine incomplete']);
  });

  it('of several sentences goes on with its own call alone', () => {
    const first = line(`CDDSE,2,1,A,${tern}0,00,33001200`);
    const second = (station: string): string => line(`CDDSE,2,2,A,${station},02,0125`);
    expect(shown(readSentences(reply(tern) + first + second(`${pellinore}0`) + second('')))).toEqual([
      '1.0 final fine late',
    ]);
    expect(shown(readSentences(reply(tern) + first + second(`${pellinore}0`)))).toEqual([
      '1.0 final fine incomplete',
    ]);
  });

  it('is told to be incomplete where nothing announced it either', () => {
    const [, given] = readSentences(reply(tern, '') + line(`CDDSE,2,1,A,${tern}0,00,33001200`));
    expect(given).toBeUndefined();
    expect(shown(readSentences(reply(tern, '') + line(`CDDSE,2,1,A,${tern}0,00,33001200`)))).toEqual([
      '1.0 final fine incomplete',
    ]);
  });

  it('without any data in it is told to be incomplete, with none of it applied', () => {
    const [given] = readSentences(reply(tern) + line(`CDDSE,2,1,A,${tern}0`));
    expect(given?.notices).toMatchObject([
      { code: 'sentence-expansion-incomplete', params: { applied: ['none'] }, received: '1' },
    ]);
  });

  it('leaves what was given out before as it was', () => {
    const reader = createSentenceReader();
    const [before] = reader.push(reply(tern));
    const [after] = reader.push(finer(tern));
    expect([before?.sources.length, after?.sources.length]).toEqual([1, 2]);
  });

  it.each(['12329991420', 'x232999142', '2329991421'])(
    'of the station %s is named as it is, in quotes',
    (station) => {
      const [given] = readSentences(line(`CDDSE,1,1,A,${station},00,33001200`));
      expect(given?.notices.at(-1)).toMatchObject({
        code: 'sentence-expansion-alone',
        received: `'${station}'`,
      });
    },
  );

  it('is not waited for by a clock that did not see the call', () => {
    const inside = 'c:1767225600';
    const tagged = `\\${inside}*${checksumOf(inside)}\\${reply(tern)}`;
    const clock = line('GPZDA,140412.00,02,01,2026,00,00');
    const pairs = (before: string, between: string): string[] =>
      shown(readSentences(before + between + finer(tern)));
    expect(pairs(reply(tern), clock)).toEqual(['1.0 final fine late']);
    expect(pairs(tagged, clock)).toEqual(['1.0 final fine late']);
    expect(pairs(clock + reply(tern), line('GPZDA,140415.00,02,01,2026,00,00'))).toEqual([
      '1.0 final whole missing',
    ]);
  });

  it('alone is kept apart', () => {
    expect(readSentences(finer(tern))[0]).toMatchObject({
      kind: 'expansion',
      station: tern,
      notices: [{ code: 'sentence-expansion-alone' }],
    });
  });

  it('sent again is the same event', () => {
    const pair = reply(tern) + finer(tern);
    expect(shown(readSentences(pair + pair))).toEqual(['1.0 final fine', '1.1 final fine']);
  });

  it('sent again after half a day is another event', () => {
    expect(at([0, reply(tern, '')], [43_201, reply(tern, '')])).toEqual([
      '1.0 final whole',
      '2.0 final whole',
    ]);
    expect(at([0, reply(tern, '')], [43_199, reply(tern, '')])).toEqual([
      '1.0 final whole',
      '1.1 final whole',
    ]);
  });

  it('holds at most thirty-two calls open', () => {
    const reader = createSentenceReader();
    const ship = (index: number): string => `2329990${String(index).padStart(2, '0')}`;
    const given = Array.from({ length: 40 }, (_, index) => reader.push(reply(ship(index)), 0)).flat();
    expect(given.filter((reading) => reading.kind === 'call' && reading.stage === 'final')).toHaveLength(8);
    expect(reader.flush()).toHaveLength(32);
  });
});

describe('the time of a position', () => {
  const received = Date.UTC(2026, 5, 1, 14, 10);
  const wanted = { at: Date.UTC(2026, 5, 1, 14, 4), age: 360 };

  it.each([
    ['the caller', () => createSentenceReader().push(reply(tern), received)],
    ['a TAG block', () => readSentences(`\\c:${received}*${checksumOf(`c:${received}`)}\\${reply(tern)}`)],
    [
      'RMC',
      () => readSentences(line('GPRMC,141000.00,A,5620.0,N,00630.0,W,,,010626,,,A') + reply(tern)).slice(1),
    ],
    ['ZDA', () => readSentences(line('GPZDA,141000.00,01,06,2026,00,00') + reply(tern)).slice(1)],
    ['the option', () => readSentences(reply(tern), { now: received })],
  ])('is resolved by the receipt that %s tells', (_, read) => {
    expect(read()[0]).toMatchObject({ kind: 'call', at: received, positionTime: wanted });
  });

  it('stays open when nothing tells', () => {
    expect(readSentences(reply(tern))[0]).toMatchObject({ at: null, positionTime: null });
  });
});

describe('options', () => {
  it.each([
    { own: '12' },
    { waitMs: -1 },
    { waitMs: Number.NaN },
    { waitSentences: -1 },
    { now: Number.NaN },
  ])('%j is refused', (options) => {
    expect(() => createSentenceReader(options)).toThrow(RangeError);
  });

  it('an instant that is none is refused', () => {
    expect(() => createSentenceReader().push('', Number.NaN)).toThrow(RangeError);
  });
});
