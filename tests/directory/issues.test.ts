import { describe, expect, it } from 'vitest';
import {
  createDirectory,
  readDirectoryCsv,
  readDirectoryJson,
  readVcards,
  type StationUpdate,
} from '../../src/directory/index.ts';

// What a person reads about a file that was read in, word for word. The wording is ours.

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
    expect(readDirectoryCsv(text)).toStrictEqual({
      ok: false,
      issues: [
        {
          code: 'directory-csv-header',
          message: 'List has no column for identities in its first line',
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
    expect(notice(`mmsi,name\n${row}\n`)).toStrictEqual([
      {
        code: 'directory-csv-quotes',
        message: 'Row has quotes that do not enclose a whole field: the line is left out',
        at: ['line 2', 'quotes'],
        received: `'${row}'`,
        clause: 'RFC 4180 §2',
      },
    ]);
  });

  it('about an identity that stands in two rows', () => {
    expect(notice('mmsi,name\n232999142,Tern\n\n232999142,Pellinore\n')).toStrictEqual([
      {
        code: 'directory-csv-twice',
        message: 'Row repeats the identity of line 2: one number belongs to one station',
        at: ['line 4', 'mmsi'],
        received: "'232999142'",
        clause: 'ITU-R M.585-10',
      },
    ]);
  });

  it('about a row that ends before the identity', () => {
    expect(notice('name,harbour,mmsi\nTern,Ardle\n')).toStrictEqual([
      {
        code: 'directory-csv-short',
        message: 'Row ends before the identity',
        at: ['line 2', 'mmsi'],
        received: "'Tern,Ardle'",
        clause: 'RFC 4180 §2',
      },
    ]);
  });

  it('about a group and a time', () => {
    expect(notice('mmsi,groups,called\n232999142,232999563,yesterday\n')).toStrictEqual([
      {
        code: 'directory-csv-group',
        message: 'Group is not the identity of a group',
        at: ['line 2', 'groups'],
        received: "'232999563'",
        clause: 'ITU-R M.585-10',
      },
      {
        code: 'directory-csv-time',
        message: 'Time is not an ISO 8601 instant with a zone',
        at: ['line 2', 'calledAt'],
        received: "'yesterday'",
        clause: 'ISO 8601',
      },
    ]);
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
    expect(readDirectoryJson(text)).toStrictEqual({
      ok: false,
      issues: [
        {
          code: 'directory-json-shape',
          message: 'Text is not a stored directory',
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
    expect(notices({ mmsi, name: 'Tern' })).toStrictEqual([
      {
        code: 'directory-json-field',
        message: 'Stored station has no valid identity and is left out',
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
    expect(notices({ mmsi: '232999142', ...fields })).toStrictEqual([
      {
        code: 'directory-json-field',
        message: 'Stored field is not valid and is left out',
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
    expect(readVcards(text)).toStrictEqual({
      ok: false,
      issues: [
        {
          code: 'directory-vcard-none',
          message: 'Text contains no vCard',
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
    const line = { code: 'directory-vcard-line', message: 'Line is not a vCard property', clause };
    const end = { code: 'directory-vcard-end', received: "'VCARD'", clause };
    expect(told).toStrictEqual([
      { ...line, at: ['line 1'], received: "'stray'" },
      { ...line, at: ['line 4'], received: "'no property'" },
      { ...end, message: 'Card begins before the previous one has ended', at: ['line 5'] },
      { ...end, message: 'Card has no end', at: ['line 5'] },
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
    expect(told).toStrictEqual([
      {
        code: 'directory-vcard-version',
        message: 'Card version: expected 4.0',
        at: ['line 2', 'VERSION'],
        received: "'3.0'",
        clause: 'RFC 6350 §6.7.9',
      },
      {
        code: 'directory-vcard-group',
        message: 'Group is not the identity of a group',
        at: ['line 4', 'X-MMSI-GROUP'],
        received: "'232999563'",
        clause: 'ITU-R M.585-10',
      },
      {
        code: 'identity-leading-zeros',
        message: 'Identity is missing digits: spreadsheets drop leading zeros; perhaps 002329990',
        at: ['line 8', 'X-MMSI'],
        expected: '9 digits',
        received: "'2329990'",
        clause: 'ITU-R M.585-10',
        suggestion: '002329990',
      },
      {
        code: 'directory-vcard-identity',
        message: 'Card has no X-MMSI and is left out',
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
