import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digitsOf } from '../../src/call/fields.ts';
import { type CallFields, encodeFields } from '../../src/call/index.ts';
import type { Reading } from '../../src/report/index.ts';
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
