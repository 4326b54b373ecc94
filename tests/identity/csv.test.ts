import { describe, expect, it } from 'vitest';
import { readRecords, writeRecords } from '../../src/identity/csv.ts';

const fieldsOf = (text: string): readonly (readonly string[])[] =>
  readRecords(text).map(({ fields }) => fields);

describe('CSV records', () => {
  // RFC 4180 §2 rule 1 names CR LF; the other two are common practice, no source.
  it.each(['\r\n', '\r', '\n'])('are parted by %j, a broken one costs its own line only', (end) => {
    const text = ['mmsi,name', '232999142,"Tern', '232999563,Pellinore', ''].join(end);
    expect(readRecords(text)).toEqual([
      { line: 1, fields: ['mmsi', 'name'] },
      { line: 2, fields: [], broken: '232999142,"Tern' },
      { line: 3, fields: ['232999563', 'Pellinore'] },
    ]);
  });

  it('may begin with the byte order mark of a spreadsheet, also before quotes', () => {
    expect(fieldsOf('\ufeff"mmsi",name')).toEqual([['mmsi', 'name']]);
    expect(fieldsOf('mmsi,name\ufeff')).toEqual([['mmsi', 'name\ufeff']]);
  });

  it('are left out where every field is blank', () => {
    expect(readRecords('a,b\n , \t\n,\nc,')).toEqual([
      { line: 1, fields: ['a', 'b'] },
      { line: 4, fields: ['c', ''] },
    ]);
  });

  it.each([
    ['one column with a heading', 'mmsi\n232999142,Tern', ['232999142', 'Tern']],
    ['semicolons and tabs in quotes of the heading', '"a;b;c","d\t\t"\nx,y;z', ['x', 'y;z']],
    ['semicolons further down', 'mmsi,notes\n232999142,a; b; c; d; e', ['232999142', 'a; b; c; d; e']],
  ])('are parted by commas: %s', (_, text, second) => {
    expect(fieldsOf(text)[1]).toEqual(second);
  });

  it.each([
    ['semicolons', 'mmsi;name, harbour;notes\n232999142;Tern;x', ['232999142', 'Tern', 'x']],
    ['tabs', 'mmsi\tname, harbour\tnotes\n232999142\tTern\tx', ['232999142', 'Tern', 'x']],
    ['semicolons, with a quoted heading', '"x, y";mmsi\nTern;232999142', ['Tern', '232999142']],
  ])('are parted by %s where the heading has more of them', (_, text, second) => {
    expect(fieldsOf(text)[1]).toEqual(second);
  });

  it('are written with quotes only where RFC 4180 §2 rules 6 and 7 ask for them, or another program may', () => {
    expect(writeRecords([['plain', 'a,b', 'a"b', 'a\nb', 'a;b', 'a\tb', '']])).toBe(
      'plain,"a,b","a""b","a\nb","a;b","a\tb",\r\n',
    );
  });
});
