import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checksumOf } from '../../src/sentence/frame/checksum.ts';
import { formatSentence, parseSentence, readSentences } from '../../src/sentence/index.ts';
import { checksumByBits } from '../oracle/sentence.ts';
import { line } from './arbitrary.ts';

const clock = '$GPZDA,140412.00,02,01,2026,00,00*61';
const codes = (text: string, unchecked = false): string[] => {
  const result = parseSentence(text, { unchecked });
  return (result.ok ? result.notices : result.issues).map((finding) => finding.code);
};

describe('a checksum', () => {
  it('is the exclusive OR of the characters (IEC 61162-1, as publicly restated)', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary-ascii' }), (body) => {
        expect(checksumOf(body)).toBe(checksumByBits(body));
      }),
    );
  });

  it('refuses characters that no sentence can carry', () => {
    expect(() => checksumOf('Ā')).toThrow(RangeError);
  });
});

// Each step of tolerance leaves its notice (common practice, no source), and the sentence is the same.
describe('a forgiven line', () => {
  it.each([
    ['nothing to forgive', clock, []],
    ['a line end', `${clock}\r\n`, []],
    ['characters in front', `12:04 ${clock}`, ['sentence-leading-characters']],
    ['a blank in front', ` ${clock}`, ['sentence-leading-characters']],
    ['a blank behind', `${clock} \r\n`, ['sentence-trailing-characters']],
    ['characters behind', `${clock}00`, ['sentence-trailing-characters']],
    ['another sentence behind', `${clock}${clock}`, ['sentence-trailing-characters']],
    ['blanks that got in', '$GPZDA,1404 12.00,02,01,2026,00,00*61', ['sentence-blank-damage']],
    ['a wrapped line', '$GPZDA,140412.00,02,01,2026,00, 00 *6 1', ['sentence-blank-damage']],
    ['an open TAG block', `\\s:R${clock}`, ['sentence-tag-unclosed']],
    ['a wrong TAG block', `\\s:R*00\\${clock}`, ['sentence-tag-checksum']],
    ['a TAG block without checksum', `\\s:R\\${clock}`, ['sentence-tag-checksum']],
  ])('with %s', (_, text, expected) => {
    const result = parseSentence(text);
    expect(result.ok && [result.value.talker, result.value.formatter, result.value.fields]).toEqual([
      'GP',
      'ZDA',
      ['140412.00', '02', '01', '2026', '00', '00'],
    ]);
    expect(codes(text)).toEqual(expected);
  });

  it('with a blank that was sent says which field', () => {
    const result = parseSentence(line('CDDSC,20,2329991420,00,03,26,,,,,R, '));
    expect(result.ok && result.notices).toMatchObject([{ code: 'sentence-blank-sent', at: ['field', 11] }]);
    expect(result.ok && result.value.fields[10]).toBe('');
  });

  it('with lower-case checksum digits', () => {
    expect(codes('$CDDSC,16,3389999050,08,00,26,900008,,,,S,*2b')).toEqual(['sentence-checksum-lower-case']);
  });

  it('of more than 82 characters', () => {
    const long = line(
      `GPGGA,140412.00,5025.000000000,N,00301.000000000,W,1,09,0.9,3.0,M,50.1,M,,${'0'.repeat(10)}`,
    );
    expect(codes(long)).toEqual(['sentence-length']);
  });

  it('without checksum only when asked, marked', () => {
    const bare = '$GPZDA,140412.00,02,01,2026,00,00';
    expect(codes(bare)).toEqual(['sentence-checksum-missing']);
    expect(parseSentence(bare).ok).toBe(false);
    const result = parseSentence(bare, { unchecked: true });
    expect(result.ok && [result.value.checksum, result.value.fields[3]]).toEqual(['unchecked', '2026']);
    expect(codes(bare, true)).toEqual(['sentence-unchecked']);
  });

  it('with a TAG block in front tells its parameters', () => {
    const inside = 's:RADIO1,d:PLOT,c:1767225600,g:1-2-34,n:7,r:12,t:hello,x:1';
    const result = parseSentence(`\\${inside}*${checksumOf(inside)}\\${clock}`);
    expect(result.ok && result.value.tag).toMatchObject({
      source: 'RADIO1',
      destination: 'PLOT',
      time: 1_767_225_600_000,
      group: { number: 1, total: 2, id: 34 },
      lineCount: 7,
      relativeTime: 12,
      text: 'hello',
    });
    expect(result.ok && result.value.tag?.parameters.at(-1)).toEqual(['x', '1']);
  });
});

describe('a refused line', () => {
  it.each([
    ['', 'sentence-no-start'],
    ['no sentence here', 'sentence-no-start'],
    ['\\s:RADIO1*00\\', 'sentence-no-start'],
    ['$GPZDA,140412.00,02,01,2026,00,00*60', 'sentence-checksum-wrong'],
    ['$GPZDA,140412.00,02,01,2026,00,00*6', 'sentence-checksum-malformed'],
    ['$GPZDA,140412.00,02,01,2026,00,00*XY', 'sentence-checksum-malformed'],
    [line('GPZD,1'), 'sentence-address'],
    [line('gpzda,1'), 'sentence-address'],
    [line('PAB,1'), 'sentence-address'],
  ])('%s', (text, code) => {
    expect(codes(text)[0]).toBe(code);
    expect(parseSentence(text).ok).toBe(false);
  });

  it('says the checksum it should have had', () => {
    const result = parseSentence('$CDDSC,20,2329999010,08,21,26,1502000318,1404,,,B,E*7E');
    expect(!result.ok && result.issues[0]).toMatchObject({ expected: "'*7A'", received: "'*7E'" });
  });
});

describe('an address', () => {
  it.each([
    ['GPZDA', 'standard', 'GP', 'ZDA'],
    ['U0DSC', 'standard', 'U0', 'DSC'],
    ['CDGPQ', 'query', 'CD', 'GPQ'],
    ['PABC', 'proprietary', 'P', 'ABC'],
    ['PABCX1', 'proprietary', 'P', 'ABCX1'],
  ])('%s is %s', (address, form, talker, formatter) => {
    const result = parseSentence(line(`${address},1`));
    expect(result.ok && result.value).toMatchObject({ form, talker, formatter });
  });

  it('of a query or a maker is never read as the sentence it resembles', () => {
    for (const address of ['PDSC', 'PCDDSC']) {
      expect(readSentences(line(`${address},12,2329992180,,05,00,1562000630,1042,,,S,`))[0]?.kind).toBe(
        'other',
      );
    }
  });
});

describe('strict writing', () => {
  it('is what strict reading takes', () => {
    const parts = { talker: 'GP', formatter: 'ZDA', fields: ['140412.00', '02', '01', '2026', '00', '00'] };
    expect(formatSentence(parts)).toBe(clock);
  });

  it.each([
    [{ talker: 'gp', formatter: 'ZDA', fields: [] }],
    [{ talker: 'GPS', formatter: 'ZDA', fields: [] }],
    [{ talker: 'GP', formatter: 'ZD', fields: [] }],
    [{ talker: 'GP', formatter: 'ZDA', fields: ['a,b'] }],
    [{ talker: 'GP', formatter: 'ZDA', fields: ['a\r\n'] }],
    [{ talker: 'GP', formatter: 'ZDA', fields: ['x'.repeat(71)] }],
  ])('refuses %j', (parts) => {
    expect(() => formatSentence(parts)).toThrow(RangeError);
  });

  it('goes up to 82 characters with the line end (IEC 61162-1)', () => {
    const longest = formatSentence({ talker: 'GP', formatter: 'TXT', fields: ['x'.repeat(70)] });
    expect(`${longest}\r\n`).toHaveLength(82);
  });
});
