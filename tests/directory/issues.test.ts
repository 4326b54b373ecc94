import { describe, expect, it } from 'vitest';
import {
  createDirectory,
  readDirectoryCsv,
  readDirectoryJson,
  readVcards,
  type StationUpdate,
} from '../../src/directory/index.ts';

// What is said about a file that was read in: codes and params; the wording is in english/directory.txt.

describe('what readDirectoryCsv tells', () => {
  const notice = (text: string) => {
    const result = readDirectoryCsv(text);
    if (!result.ok) throw new Error(result.issues[0].message);
    return result.notices;
  };

  it.each([
    ['', "''"],
    ['name,call sign\nTern,2ZZT4', "'name,call sign'"],
    ['"mmsi\n232999142', `'"mmsi'`],
    [null, 'object'],
    [232999142, 'number'],
  ])('about %j, which has no column of identities', (text, received) => {
    expect(readDirectoryCsv(text)).toMatchObject({
      ok: false,
      issues: [
        {
          code: 'directory-csv-header',
          grade: 'error',
          params: {},
          at: ['line 1'],
          expected: 'a column named mmsi',
          received,
          clause: 'RFC 4180 §2',
        },
      ],
    });
  });

  // RFC 4180 §2, rules 5 to 7: quotes stand around the whole field or not at all.
  it.each(['232999563,"Pellin"ore', '232999563,"Pellinore'])('about the quotes of %s', (row) => {
    expect(notice(`mmsi,name\n${row}\n`)).toMatchObject([
      {
        code: 'directory-csv-quotes',
        grade: 'check',
        at: ['line 2', 'quotes'],
        received: `'${row}'`,
        clause: 'RFC 4180 §2',
      },
    ]);
  });

  it('about an identity that stands in two rows', () => {
    expect(notice('mmsi,name\n232999142,Tern\n\n232999142,Pellinore\n')).toMatchObject([
      {
        code: 'directory-csv-twice',
        grade: 'check',
        params: { line: 2 },
        at: ['line 4', 'mmsi'],
        received: "'232999142'",
        clause: 'ITU-R M.585-10',
      },
    ]);
  });

  it('about a row that ends before the identity', () => {
    expect(notice('name,harbour,mmsi\nTern,Ardle\n')).toMatchObject([
      {
        code: 'directory-csv-short',
        at: ['line 2', 'mmsi'],
        received: "'Tern,Ardle'",
        clause: 'RFC 4180 §2',
      },
    ]);
  });

  it('about a group and a time', () => {
    expect(notice('mmsi,groups,called\n232999142,232999563,yesterday\n')).toMatchObject([
      {
        code: 'directory-group',
        at: ['line 2', 'groups'],
        received: "'232999563'",
        clause: 'ITU-R M.585-10',
      },
      {
        code: 'directory-csv-time',
        at: ['line 2', 'calledAt'],
        received: "'yesterday'",
        clause: 'ISO 8601',
      },
    ]);
  });
});

describe('what is said of a text with more findings than are kept', () => {
  it.each([
    [1000, []],
    [1001, [{ code: 'directory-more-notices', grade: 'check', params: { count: 1 }, at: [] }]],
    [3000, [{ code: 'directory-more-notices', grade: 'check', params: { count: 2000 }, at: [] }]],
  ])('of %i: the first thousand, and how many more', (count, more) => {
    const result = readDirectoryCsv(`mmsi\n${'"2329"99142\n'.repeat(count)}`);
    if (!result.ok) throw new Error(result.issues[0].message);
    const kept = result.notices.slice(0, 1000);
    expect(kept.filter(({ code }) => code === 'directory-csv-quotes')).toHaveLength(1000);
    expect(result.notices.slice(1000)).toMatchObject(more);
  });
});

describe('what readDirectoryJson tells', () => {
  const notices = (...stations: readonly unknown[]) => {
    const result = readDirectoryJson(JSON.stringify({ kind: 'directory', stations }));
    if (!result.ok) throw new Error(result.issues[0].message);
    return result.notices;
  };

  it.each([
    ['hello', "'hello'"],
    ['{"kind":"log","stations":[]}', `'{"kind":"log","stations":[]}'`],
    ['{"kind":"directory"}', `'{"kind":"directory"}'`],
    [7, 'number'],
    [['{"kind":"directory","stations":[]}'], 'object'],
  ])('about %j, which is no stored directory', (text, received) => {
    expect(readDirectoryJson(text)).toMatchObject({
      ok: false,
      issues: [
        {
          code: 'directory-json-shape',
          grade: 'error',
          at: [],
          expected: 'JSON of a directory',
          received,
        },
      ],
    });
  });

  it.each([
    [232999142, 'number'],
    ['123456789', "'123456789'"],
  ])('about a station whose identity is %j', (mmsi, received) => {
    expect(notices({ mmsi, name: 'Tern' })).toMatchObject([
      {
        code: 'directory-json-station',
        at: ['stations', 0, 'mmsi'],
        received,
      },
    ]);
  });

  it.each<[object, readonly (string | number)[], string]>([
    [{ name: 7 }, ['name'], 'number'],
    [{ heardAt: '2026-05-01' }, ['heardAt'], "'2026-05-01'"],
    [{ heardAt: 0.5 }, ['heardAt'], 'number'],
    [{ calledAt: 9e15 }, ['calledAt'], 'number'],
    [{ origins: { entry: 'rumour' } }, ['origins', 'entry'], "'rumour'"],
    [{ name: 'Tern', origins: { name: 'rumour' } }, ['origins', 'name'], "'rumour'"],
    [{ groups: '023299905' }, ['groups'], "'023299905'"],
    [{ groups: ['023299905', '232999563'] }, ['groups', 1], "'232999563'"],
    [{ groups: ['hello'] }, ['groups', 0], "'hello'"],
    [{ extra: [{ label: 'hull', text: 7 }] }, ['extra', 0], 'object'],
  ])('about the field in %j', (fields, at, received) => {
    expect(notices({ mmsi: '232999142', ...fields })).toMatchObject([
      {
        code: 'directory-json-field',
        grade: 'check',
        at: ['stations', 0, ...at],
        received,
      },
    ]);
  });
});

describe('what readVcards tells', () => {
  const notices = (...lines: readonly string[]) => {
    const result = readVcards(lines.join('\r\n'));
    if (!result.ok) throw new Error(result.issues[0].message);
    return result.notices;
  };

  it.each([
    ['FN:Tern', "'FN:Tern'"],
    ['BEGIN:VCALENDAR\r\nEND:VCALENDAR', String.raw`'BEGIN:VCALENDAR\u{d}\u{a}END:VCALENDAR'`],
    ['BEGIN:XVCARD', "'BEGIN:XVCARD'"],
    ['BEGIN:VCARDS', "'BEGIN:VCARDS'"],
    [null, 'object'],
  ])('about %j, which holds no card', (text, received) => {
    expect(readVcards(text)).toMatchObject({
      ok: false,
      issues: [
        {
          code: 'directory-vcard-none',
          grade: 'error',
          at: [],
          expected: 'BEGIN:VCARD',
          received,
          clause: 'RFC 6350 §6.1.1',
        },
      ],
    });
  });

  it('about lines that are no properties, and cards without an end', () => {
    const told = notices(
      'stray',
      'BEGIN:VCARD',
      'X-MMSI:232999142',
      'no property',
      'BEGIN:VCARD',
      'X-MMSI:232999563',
    );
    const clause = 'RFC 6350 §3.3';
    const line = { code: 'directory-vcard-line', clause };
    const card = { received: "'VCARD'", clause };
    expect(told).toMatchObject([
      { ...line, at: ['line 1'], received: "'stray'" },
      { ...line, at: ['line 4'], received: "'no property'" },
      { ...card, code: 'directory-vcard-begin', at: ['line 5'] },
      { ...card, code: 'directory-vcard-end', at: ['line 5'] },
    ]);
  });

  it('about the properties of a card', () => {
    const told = notices(
      'BEGIN:VCARD',
      'VERSION:3.0',
      'X-MMSI:232999142',
      'X-MMSI-GROUP:232999563',
      'END:VCARD',
      'BEGIN:VCARD',
      'VERSION:4.0',
      'X-MMSI:2329990',
      'END:VCARD',
      'BEGIN:VCARD',
      'VERSION:4.0',
      'FN:Somebody else',
      'END:VCARD',
    );
    expect(told).toMatchObject([
      {
        code: 'directory-vcard-version',
        at: ['line 2', 'VERSION'],
        received: "'3.0'",
        clause: 'RFC 6350 §6.7.9',
      },
      {
        code: 'directory-group',
        at: ['line 4', 'X-MMSI-GROUP'],
        received: "'232999563'",
        clause: 'ITU-R M.585-10',
      },
      {
        code: 'identity-leading-zeros',
        at: ['line 8', 'X-MMSI'],
        expected: '9 digits',
        received: "'2329990'",
        clause: 'ITU-R M.585-10',
        suggestion: '002329990',
      },
      {
        code: 'directory-vcard-identity',
        at: ['line 10', 'BEGIN'],
        received: "'VCARD'",
        clause: 'RFC 6350 §6.10',
      },
    ]);
  });
});

describe('what a programmer is told who remembers', () => {
  it.each<[string, Partial<StationUpdate>]>([
    ["mmsi: expected an identity of an assigned form, got '232 999 142'", { mmsi: '232 999 142' }],
    ['groups: expected the identity of a group', { groups: ['232999563'] }],
    ['groups: expected the identity of a group', { groups: ['hello'] }],
    ['heardAt, calledAt: expected whole epoch milliseconds', { heardAt: Number.NaN }],
  ])('%s', (message, update) => {
    const call = () => createDirectory({ mmsi: '232999142', origin: 'typed', ...update });
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
