import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CsvRecord, readRecords, writeRecords } from '../../src/directory/csv-record.ts';

const recordsOf = (text: string) => [...readRecords(text)];

const fieldsOf = (text: string): readonly (readonly string[])[] =>
  recordsOf(text).map(({ fields }) => fields);

describe('CSV records', () => {
  // RFC 4180 §2 rule 1 names CR LF; the other two are common practice, no source.
  it.each(['\r\n', '\r', '\n'])('are parted by %j, a broken one costs its own line only', (end) => {
    const text = ['mmsi,name', '232999142,"Tern', '232999563,Pellinore', ''].join(end);
    expect(recordsOf(text)).toEqual([
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
    expect(recordsOf('a,b\n , \t\n,\nc,')).toEqual([
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

/** RFC 4180 §2 the slow way: a record is tried from every line that no record before it has taken. */
function slowly(text: string): readonly CsvRecord[] {
  const field = /"(?:[^"]|"")*"|(?!")[^,\r\n]*/.source;
  const wellQuoted = new RegExp(`^(?:${field})(?:,(?:${field}))*(?![^\\r\\n])`);
  const records: CsvRecord[] = [];
  let line = 1;
  let rest = text;
  while (rest !== '') {
    const [whole] = wellQuoted.exec(rest) ?? [];
    const [own = ''] = /^[^\r\n]*/.exec(rest) ?? [];
    const fields = [...`,${whole ?? ''}`.matchAll(new RegExp(`,(${field})`, 'g'))].map(([, text = '']) =>
      text.startsWith('"') ? text.slice(1, -1).replaceAll('""', '"') : text,
    );
    if (whole === undefined) records.push({ line, fields: [], broken: own });
    else if (fields.some((each) => each.trim() !== '')) records.push({ line, fields });
    const [taken = ''] = /^(?:\r\n|\r|\n)?/.exec(rest.slice((whole ?? own).length)) ?? [];
    const length = (whole ?? own).length + taken.length;
    line += rest.slice(0, length).match(/\r\n|\r|\n/g)?.length ?? 0;
    rest = rest.slice(length);
  }
  return records;
}

describe('records with broken quotes', () => {
  it('are told apart as by trying each line anew', () => {
    const piece = fc.constantFrom('"', '""', '"""', ',', '\n', '\r\n', 'x', 'x,"', '","', 'x"y', '"z');
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 20 }), (pieces) => {
        const text = `a,b\n${pieces.join('')}`;
        expect(recordsOf(text)).toEqual(slowly(text));
      }),
      { numRuns: 3000 },
    );
  });

  // No clock: a megabyte, tried anew from every line to its end, would outlast any test.
  it.each([
    ['never closed', 'x","\n', ''],
    ['closed in the wrong place at last', 'x","\n', 'x"z'],
    ['with other fields between', 'x","",y,"\n', ''],
  ])('cost one line each, in a megabyte of them: %s', (_, piece, end) => {
    const count = Math.ceil(1_000_000 / piece.length);
    const records = recordsOf(`mmsi,name\n${piece.repeat(count)}${end}`);
    expect(records.filter(({ broken }) => broken !== undefined).length).toBeGreaterThan(count - 3);
  });
});
