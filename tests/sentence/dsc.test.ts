import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digitsOf } from '../../src/call/fields.ts';
import { type CallFields, encodeFields } from '../../src/call/index.ts';
import type { Reading } from '../../src/report/index.ts';
import { dseFields, readDse } from '../../src/sentence/dsc/dse.ts';
import { codeOfSymbol, letterOfEnd, stationKey } from '../../src/sentence/dsc/field.ts';
import { inEleven } from '../../src/sentence/dsc/layout.ts';
import { writePlaceField } from '../../src/sentence/dsc/place-field.ts';
import { readDsc } from '../../src/sentence/dsc/read-dsc.ts';
import { readSentences } from '../../src/sentence/index.ts';
import { type DscLine, meaningOfFields } from '../oracle/sentence.ts';
import { line } from './arbitrary.ts';

const code = fc.integer({ min: 0, max: 99 }).map((value) => String(value).padStart(2, '0'));
const digits = (...lengths: number[]): fc.Arbitrary<string> =>
  fc
    .constantFrom(...lengths)
    .chain((length) => fc.array(fc.integer({ min: 0, max: 9 }), { minLength: length, maxLength: length }))
    .map((list) => list.join(''));
const identity = digits(9).map((nine) => `${nine}0`);
const dscLine: fc.Arbitrary<DscLine> = fc.record({
  format: fc.constantFrom('12', '14', '16', '20', '23'),
  station: identity,
  category: fc.constantFrom('', '00', '08', '10', '12'),
  fourth: fc.oneof(code, fc.constantFrom('00', '04', '10', '12', '21')),
  fifth: code,
  sixth: fc.oneof(fc.constant(''), digits(6, 8, 10, 12, 16), digits(1, 2, 7, 9, 14)),
  seventh: fc.oneof(fc.constant(''), digits(4)),
  ship: fc.oneof(fc.constant(''), identity),
  nature: fc.oneof(fc.constant(''), code),
  end: fc.constantFrom('R', 'B', 'S'),
  expansion: fc.constant(''),
});

/** 00 to 27 are the symbols 100 to 127; the air's "no information" is no text. */
const codeText = (symbol: number | null): string | null =>
  symbol === null ? null : String(symbol % 100).padStart(2, '0');

function plain(fields: CallFields): Record<string, string | null> {
  const frequencies = [fields.receive, fields.transmit].map((element) => digitsOf(element) ?? '');
  const number = digitsOf(fields.telephone?.slice(1) ?? null);
  return {
    nature: codeText(fields.nature),
    telecommand: codeText(fields.telecommand1),
    secondTelecommand: codeText(fields.telecommand2),
    subsequent: codeText(fields.subsequent),
    position: digitsOf(fields.position),
    frequencies: frequencies.join(''),
    time: digitsOf(fields.time),
    telephone: fields.telephone?.[0] === 105 ? (number?.slice(1) ?? null) : number,
    end: String(fields.end),
  };
}

describe('the fields of a DSC sentence', () => {
  it('mean what notes 1 to 11 say of them (IEC 61162-1, as restated in equipment papers)', () => {
    fc.assert(
      fc.property(dscLine, (given) => {
        const [reading] = readSentences(line(`CDDSC,${Object.values(given).join(',')}`)) as Reading<'call'>[];
        const read = plain(encodeFields((reading as Reading<'call'>).call));
        const wanted = meaningOfFields(given);
        for (const [name, value] of Object.entries(wanted)) {
          // What the sentence leaves empty is filled in with the air's "no information".
          if (value === null || value === '') continue;
          if (name === 'frequencies') expect(read[name]?.startsWith(value)).toBe(true);
          else expect([name, read[name]]).toEqual([name, value]);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('carry every symbol from 28 to 127 by its last two digits', () => {
    for (let value = 0; value <= 99; value += 1) {
      const text = String(value).padStart(2, '0');
      const [reading] = readSentences(
        line(`CDDSC,14,2329991420,00,${text},26,900072,,,,S,`),
      ) as Reading<'call'>[];
      expect(encodeFields((reading as Reading<'call'>).call).telecommand1).toBe(
        value <= 27 ? value + 100 : value,
      );
    }
  });

  it('of a received call name the caller, of a commanded one the called', () => {
    const sentence = line('CDDSC,20,2329991420,00,00,26,900072,,,,R,');
    const own = '232999871';
    expect(readSentences(sentence, { own })[0]).toMatchObject({
      direction: 'received',
      call: { from: '232999142', to: { kind: 'station', mmsi: own } },
    });
    expect(readSentences(sentence, { own, direction: 'commanded' })[0]).toMatchObject({
      direction: 'commanded',
      call: { from: own, to: { kind: 'station', mmsi: '232999142' } },
    });
  });

  it.each([
    ['CDDSC,20,XX,00,00,26,900072,,,,R,', 'sentence-identity'],
    ['CDDSC,20,23299914,00,00,26,900072,,,,R,', 'sentence-identity'],
    ['CDDSC,20,2329991420,0,00,26,900072,,,,R,', 'sentence-code'],
    ['CDDSC,20,2329991420,00,00,26,9000,,,,R,', 'sentence-place'],
    ['CDDSC,20,2329991420,08,21,26,150200318,1404,,,B,', 'sentence-place'],
    ['CDDSC,20,2329991420,08,21,26,1502000318,14,,,B,', 'sentence-time'],
    ['CDDSC,20,2329991420,00,00,26,900072,,,,X,', 'sentence-acknowledgement'],
    ['CDDSC,20,2329991420,00,00,26,900072,,,,R,F', 'sentence-expansion-mark'],
    ['CDDSC,20,2329991420,00,00,26,900072,,,,R,,7', 'sentence-fields-surplus'],
    ['CDDSC,20,2329991420,00,00,26,900072,,', 'sentence-fields-missing'],
    ['CDDSC,12,2329991420,,05,00,1562000630,1404,2329991420,05,S,', 'sentence-ship-unexpected'],
  ])('%s leaves %s and is kept as it stood', (body, notice) => {
    const [reading] = readSentences(line(body)) as Reading<'call'>[];
    expect(reading?.kind).toBe('call');
    expect(reading?.notices.map(({ code: name }) => name)).toContain(notice);
    expect(reading?.sources[0]?.raw).toBe(line(body).trim());
  });

  it('of a commanded call to all name nobody', () => {
    const [reading] = readSentences(line('CDDSC,16,2329991420,08,00,26,900016,,,,S,'), {
      direction: 'commanded',
    });
    expect(reading?.notices.map(({ code: name }) => name)).toContain('sentence-address-unexpected');
  });
});

// The layouts: IEC 61162-1, `DSC` sentence, as restated in equipment papers; the codes: ITU-R M.493.
describe('twelve fields', () => {
  const twelve = (tenth: string, eleventh: string, twelfth: string): string[] => [
    ...['20', '2329991420', '00', '21', '26', '1562000630', '1404', '', ''],
    tenth,
    eleventh,
    twelfth,
  ];

  it.each([
    ['', 'R', ''],
    ['', 'B', 'E'],
    ['', 'S', ''],
  ])('are eleven with an empty one before %j %j %j', (...last) => {
    expect(inEleven(twelve(...last))).toEqual([...twelve(...last).slice(0, 9), ...last.slice(1)]);
  });

  it.each([
    ['B', 'R', ''],
    ['', 'X', ''],
    ['', 'RB', ''],
    ['', 'XR', ''],
    ['', '', 'E'],
    ['', 'R', 'X'],
    ['', 'R', 'EE'],
  ])('stay twelve with %j %j %j', (...last) => {
    expect(inEleven(twelve(...last))).toEqual(twelve(...last));
  });

  it('are not made of eleven or thirteen', () => {
    const eleven = twelve('', 'R', '').slice(0, 11);
    expect(inEleven(eleven)).toEqual(eleven);
    expect(inEleven([...twelve('', 'R', ''), ''])).toEqual([...twelve('', 'R', ''), '']);
  });
});

describe('fields that are empty, missing or too many', () => {
  const context = { direction: 'received', own: null } as const;
  const read = (body: string): [string, unknown][] =>
    readDsc(body.split(','), context).notices.map(({ code: name, received }) => [name, received]);

  it.each([
    ['20,2329991420,08,18,26,,,,,R,', []],
    ['20,2329991420,08,18,26,,,,,R,,', []],
    ['20,2329991420,08,18,26,,,,,R,,,', [['sentence-fields-surplus', '13']]],
    ['20,2329991420,08,18,26,,,,,R,,7', [['sentence-fields-surplus', '12']]],
    [
      '20,2329991420,08,18,26',
      [
        ['sentence-fields-missing', '5'],
        ['sentence-acknowledgement', "''"],
      ],
    ],
  ])('%s', (body, notices) => {
    expect(read(body)).toEqual(notices);
  });

  it('of the older layout are empty', () => {
    const { fields, notices } = readDsc(['2329991420', '20', '08'], context);
    expect([fields.format, fields.category, fields.telecommand1, fields.end]).toEqual([120, 108, null, null]);
    expect(notices.map(({ code: name }) => name)).toEqual([
      'sentence-legacy-layout',
      'sentence-acknowledgement',
    ]);
  });
});

describe('the call that is meant', () => {
  const context = { direction: 'received', own: null } as const;
  const fieldsOf = (body: string): CallFields => readDsc(body.split(','), context).fields;
  const codes = (body: string): unknown[] =>
    readDsc(body.split(','), context).notices.map(({ code: name, at, received }) => [name, at, received]);

  it('is an alert without category, unless the sentence has another than 12', () => {
    expect(fieldsOf('12,2329992180,12,05,00,1562000630,1404,,,S,').category).toBeNull();
    expect(fieldsOf('12,2329992180,,05,00,1562000630,1404,,,S,').category).toBeNull();
    expect(fieldsOf('12,2329992180,08,05,00,1562000630,1404,,,S,').category).toBe(108);
  });

  it('is an alert whose ship and nature say nothing, and are told once', () => {
    expect(codes('12,2329992180,,05,00,1562000630,1404,,x,S,')).toEqual([
      ['sentence-ship-unexpected', ['DSC', 'field', 8], "',x'"],
    ]);
    expect(codes('12,2329992180,,05,00,1562000630,1404,23x,,S,')).toEqual([
      ['sentence-identity', ['DSC', 'field', 8], "'23x'"],
    ]);
  });

  // Telecommands 110 and 112 (distress acknowledgement and relay) belong to a ship in distress; 126 126 is no information.
  it.each([
    ['12', '2329992180', '05', [23, 29, 99, 21, 80]],
    ['08', '2329992180', '', [23, 29, 99, 21, 80]],
    ['08', '', '05', [126, 126, 126, 126, 126]],
    ['12', '', '', [126, 126, 126, 126, 126]],
    ['08', '', '', null],
  ])('is about a ship with category %s, ship %j and nature %j', (category, ship, nature, distressed) => {
    const fields = fieldsOf(`16,0023299900,${category},12,00,,,${ship},${nature},S,`);
    expect(fields.distressed).toEqual(distressed);
    expect([fields.subsequent, fields.telecommand2]).toEqual(distressed ? [100, null] : [null, 100]);
    expect(fields.nature).toBe(nature === '' ? null : 105);
  });

  it('has a ship and a nature without being about them', () => {
    const fields = fieldsOf('20,2329991420,08,18,26,,,2329992180,05,R,');
    expect([fields.distressed, fields.nature, fields.telecommand2]).toEqual([[23, 29, 99, 21, 80], 105, 126]);
  });

  it('has the symbols 28 to 127, and no other, as codes', () => {
    expect([27, 28, 99, 100, 127, 128, 99.5].map(codeOfSymbol)).toEqual([
      null,
      '28',
      '99',
      '00',
      '27',
      null,
      null,
    ]);
  });

  it('has a letter for three ends of sequence', () => {
    expect([117, 122, 127, 126, null].map(letterOfEnd)).toEqual(['R', 'B', 'S', '', '']);
  });

  it('has its place after 55 only where the place has digits', () => {
    const fields = fieldsOf('16,2329991420,08,00,26,551562000630,1404,,,S,');
    expect([fields.header, writePlaceField(fields)]).toEqual([true, '551562000630']);
    expect(writePlaceField({ ...fields, position: [126, 126, 126, 126, 126] })).toBe('');
  });

  it('is of the station without the padding zero, where it has ten digits', () => {
    expect(['2329991420', '2329991421', '232999142', '23299914200', '2329991420x'].map(stationKey)).toEqual([
      '232999142',
      '2329991421',
      '232999142',
      '23299914200',
      '2329991420x',
    ]);
  });
});

// IEC 61162-1, `DSE` sentence, as publicly restated.
describe('a DSE sentence', () => {
  const told = (body: string): [string, unknown, unknown][] =>
    readDse(body.split(',')).notices.map(({ code: name, at, received }) => [name, at, received]);

  it('with no field at all is told so, and is the only one', () => {
    const { notices, ...read } = readDse([]);
    expect(read).toEqual({ total: 1, number: 1, flag: 'unknown', station: '', sets: [] });
    expect(notices.map(({ code: name, received }) => [name, received])).toEqual([
      ['sentence-expansion-count', "','"],
      ['sentence-expansion-flag', "''"],
    ]);
  });

  it.each(['11,1', '9,11', '2,12', '1,2', '0,0', '1,0', 'x,1', '1,'])('has no counts in %s', (pair) => {
    expect(told(`${pair},A,2329991420`)).toEqual([
      ['sentence-expansion-count', ['DSE', 'field', 1], `'${pair}'`],
    ]);
    expect(readDse(`${pair},A,2329991420`.split(','))).toMatchObject({ total: 1, number: 1 });
  });

  it('may leave out a pair, but not the code of data', () => {
    const { sets, notices } = readDse('1,1,A,2329991420,,,00,33001200'.split(','));
    expect([sets, notices]).toEqual([[{ specifier: 100, symbols: [33, 0, 12, 0] }], []]);
    expect(told('1,1,A,2329991420,,33001200')).toEqual([
      ['sentence-expansion-code', ['DSE', 'field', 5], "''"],
    ]);
  });

  it('has eight digits in set 00 (ITU-R M.821), and keeps what is not', () => {
    expect(told('1,1,A,2329991420,00,330012')).toEqual([
      ['sentence-expansion-data', ['DSE', 'field', 6], "'330012'"],
    ]);
    expect(readDse('1,1,A,2329991420,00,330012'.split(',')).sets).toEqual([
      { specifier: 100, symbols: [], text: '330012' },
    ]);
    expect(told('1,1,A,2329991420,02,0125')).toEqual([]);
  });
});

describe('the fields of DSE sentences', () => {
  const asked = { specifier: 100, symbols: [110] };
  const given = { specifier: 102, symbols: [1, 25] };

  it('are those of nine sentences at most, and the sets beyond are left', () => {
    const turns = Array.from({ length: 9 }, (_, index) => (index % 2 === 0 ? asked : given));
    const { sentences, left } = dseFields('2329991420', [...turns, asked, given, asked]);
    expect(sentences).toHaveLength(9);
    expect(sentences[0]).toEqual(['9', '1', 'Q', '2329991420', '00', '']);
    expect(sentences[8]).toEqual(['9', '9', 'Q', '2329991420', '00', '', '00', '', '00', '']);
    expect(left).toEqual([given]);
  });

  it('fill a sentence of 82 characters, and a text that is longer is left', () => {
    // IEC 61162-1: 82 with $ and line end. `$CDDSE,1,1,A,2329991420,04,` and `*hh` CR LF are 32 of them.
    const named = (length: number) =>
      dseFields('2329991420', [{ specifier: 104, symbols: [], text: 'x'.repeat(length) }]);
    expect(named(50)).toEqual({ sentences: [['1', '1', 'A', '2329991420', '04', 'x'.repeat(50)]], left: [] });
    expect(named(51)).toMatchObject({ sentences: [], left: [{ specifier: 104 }] });
  });

  it('have an apostrophe for the comma of a name, and of no other text', () => {
    const text = "1'2,3";
    const { sentences } = dseFields('2329991420', [
      { specifier: 104, symbols: [], text },
      { specifier: 103, symbols: [], text },
    ]);
    expect(sentences).toEqual([['1', '1', 'A', '2329991420', '04', "1^272'3", '03', "1'2^2C3"]]);
    expect(readDse(sentences[0] as string[]).sets).toMatchObject([{ text }, { text }]);
  });
});
