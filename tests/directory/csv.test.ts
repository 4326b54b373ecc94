import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readRecords, writeRecords } from '../../src/directory/csv-record.ts';
import {
  createDirectory,
  type Directory,
  readDirectoryCsv,
  type StationUpdate,
  writeDirectoryCsv,
} from '../../src/directory/index.ts';
import { updates } from './arbitrary.ts';

const recordsOf = (text: string) => [...readRecords(text)];

const read = (
  text: unknown,
): { updates: readonly StationUpdate[]; notices: readonly (readonly unknown[])[] } => {
  const result = readDirectoryCsv(text);
  if (!result.ok) throw new Error(result.issues[0].message);
  return {
    updates: result.value,
    notices: result.notices.map(({ at, code, suggestion }) =>
      suggestion === undefined ? [...at, code] : [...at, code, suggestion],
    ),
  };
};

const imported = (directory: Directory): Directory =>
  createDirectory(
    directory.stations.map(
      ({ origins: _origins, kind: _kind, ...station }): StationUpdate => ({ ...station, origin: 'imported' }),
    ),
  );

describe('CSV', () => {
  // RFC 4180 §2, the examples of rules 1 to 7, with CRLF written out.
  it.each([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
  ])('reads %j as RFC 4180 says', (text, records) => {
    expect(recordsOf(text).map(({ fields }) => fields)).toEqual(records);
  });

  it('reads back what it wrote', () => {
    fc.assert(
      fc.property(fc.array(fc.array(fc.string({ unit: 'binary' }), { minLength: 2 })), (records) => {
        const filled = records.map((fields, row) => [`row ${row}`, 'two', 'three', ...fields]);
        const head = ['a', 'b', 'c'];
        const text = writeRecords([head, ...filled]);
        expect(recordsOf(text).map(({ fields }) => fields)).toEqual([head, ...filled]);
      }),
    );
  });
});

describe('a directory as CSV', () => {
  it('is read back, identities, texts, groups, times and extra fields', () => {
    fc.assert(
      fc.property(updates, fc.constantFrom('people' as const, 'machine' as const), (list, style) => {
        const directory = createDirectory(list);
        const { updates: back, notices } = read(writeDirectoryCsv(directory, style));
        expect(notices).toEqual([]);
        expect(createDirectory(back)).toEqual(imported(directory));
      }),
      { numRuns: 500 },
    );
  });

  it('takes the header in any order, case and wording, and semicolons or tabs', () => {
    for (const separator of [',', ';', '\t']) {
      const text = [
        ['Call-Sign', 'Vessel name', 'harbour', 'MMSI'],
        ['2ZZT4', 'Tern', 'Ardle', '232 999 142'],
      ]
        .map((row) => row.join(separator))
        .join('\n');
      expect(read(text)).toEqual({
        updates: [
          {
            mmsi: '232999142',
            origin: 'imported',
            name: 'Tern',
            callSign: '2ZZT4',
            groups: [],
            extra: [{ label: 'harbour', text: 'Ardle' }],
          },
        ],
        notices: [],
      });
    }
  });

  it('loses no row but the bad ones, and tells the line and field of each', () => {
    const text = [
      'mmsi,name,groups,heard',
      '232999142,Tern,023299905,2026-05-01T10:00:00Z',
      '2329990,Skerra Coastguard,,',
      '232999563,"Pellin"ore,,',
      '',
      '232999218,"Bounty',
      'of Lorn",232999142,yesterday',
      ',nobody,,',
      '823299904,Kittiwake II,"023299905; 0 232 99906",,surplus',
      '232999871,"never closed,,',
      '232999872,Last,,',
    ].join('\r\n');
    const { updates: got, notices } = read(text);
    expect(got.map(({ mmsi }) => mmsi)).toEqual(['232999142', '232999218', '823299904', '232999872']);
    expect(got[1]?.name).toBe('Bounty\r\nof Lorn');
    expect(got[2]).toMatchObject({
      groups: ['023299905', '023299906'],
      extra: [{ label: 'column 5', text: 'surplus' }],
    });
    expect(notices).toEqual([
      ['line 3', 'mmsi', 'identity-leading-zeros', '002329990'],
      ['line 4', 'quotes', 'directory-csv-quotes'],
      ['line 6', 'groups', 'directory-group'],
      ['line 6', 'heardAt', 'directory-csv-time'],
      ['line 8', 'mmsi', 'identity-empty'],
      ['line 10', 'quotes', 'directory-csv-quotes'],
    ]);
  });

  it('tells a row that ends before the identity', () => {
    expect(read('name,mmsi\nTern\n').notices).toEqual([['line 2', 'mmsi', 'directory-csv-short']]);
  });

  it('takes a time only as ISO 8601 instant with its zone', () => {
    const times = [
      '2026-05-01T10:00:00Z',
      '2026-05-01T12:00+02:00',
      '7/5/2026',
      '2026-05-01T10:00:00',
      '2026',
      '2026-99-01T00:00Z',
    ];
    const got = read(`mmsi,heard\n${times.map((time) => `232999142,${time}\n`).join('')}`);
    const tenOclock = Date.UTC(2026, 4, 1, 10);
    expect(got.updates.map(({ heardAt }) => heardAt)).toEqual([
      tenOclock,
      tenOclock,
      ...Array(4).fill(undefined),
    ]);
    const aboutTimes = got.notices.filter(([, field]) => field === 'heardAt');
    expect(aboutTimes.map(([line]) => line)).toEqual(['line 4', 'line 5', 'line 6', 'line 7']);
  });

  // ISO 8601, the months of the Gregorian calendar.
  it.each([
    ['2026-02-30T00:00Z', undefined],
    ['2026-02-29T00:00Z', undefined],
    ['2026-04-31T23:59:59Z', undefined],
    ['2026-02-28T24:00Z', Date.UTC(2026, 2, 1)],
    ['2028-02-29T12:00:00+02:00', Date.UTC(2028, 1, 29, 10)],
    ['+002026-03-31T23:30:00-02:00', Date.UTC(2026, 3, 1, 1, 30)],
    ['2000-02-29T00:00:00.5Z', Date.UTC(2000, 1, 29) + 500],
    ['1900-02-29T00:00Z', undefined],
  ])('takes the day of %s only where its month has one', (time, heardAt) => {
    const { updates: got, notices } = read(`mmsi,heard\n232999142,${time}\n`);
    expect(got[0]?.heardAt).toBe(heardAt);
    expect(notices).toEqual(heardAt === undefined ? [['line 2', 'heardAt', 'directory-csv-time']] : []);
  });

  it.each(['MMSI number', 'MMSI no.', 'mmsi_number', 'MMSI-Nr', 'Mmsi (own set)'])(
    'takes a header that begins with mmsi: %s',
    (header) => {
      expect(read(`Name,${header}\nTern,232999142\n`)).toMatchObject({
        updates: [{ mmsi: '232999142', name: 'Tern' }],
        notices: [],
      });
    },
  );

  it('takes the column named mmsi alone before one that says more', () => {
    expect(read('MMSI group,MMSI\n023299905,232999142\n').updates).toMatchObject([
      { mmsi: '232999142', extra: [{ label: 'MMSI group', text: '023299905' }] },
    ]);
  });

  it.each(['Boat', 'ship', 'VESSEL', 'Station', 'Boat name', 'ship-name'])(
    'takes a name from the column %s',
    (header) => {
      expect(read(`mmsi,${header}\n232999142,Tern\n`).updates).toMatchObject([{ name: 'Tern' }]);
    },
  );

  it('tells where two rows have one identity, and reads both', () => {
    const { updates: got, notices } = read(
      'mmsi,name\n232999142,Tern\n232999563,Pellinore\n232 999 142,Tern of Ardle\n232999142,Tern\n',
    );
    expect(got.map(({ name }) => name)).toEqual(['Tern', 'Pellinore', 'Tern of Ardle', 'Tern']);
    expect(notices).toEqual([
      ['line 4', 'mmsi', 'directory-csv-twice'],
      ['line 5', 'mmsi', 'directory-csv-twice'],
    ]);
  });

  it('keeps columns of the same name apart', () => {
    expect(read('mmsi,name,Vessel,,\n232999142,Tern,Ardle,a,b\n').updates[0]?.extra).toEqual([
      { label: 'Vessel', text: 'Ardle' },
      { label: 'column 4', text: 'a' },
      { label: 'column 5', text: 'b' },
    ]);
  });

  it('hands a spreadsheet no formula', () => {
    const text = writeDirectoryCsv(
      createDirectory({ mmsi: '232999142', origin: 'ais', name: '=HYPERLINK("x")' }),
    );
    expect(text).toContain(`"'=HYPERLINK(""x"")"`);
    expect(read(text).updates[0]?.name).toBe('=HYPERLINK("x")');
  });

  it('refuses a list without a column of identities', () => {
    for (const value of ['', 'name,call sign\nTern,2ZZT4', '__proto__\n1', '"open', null, 7, {}]) {
      expect(readDirectoryCsv(value)).toMatchObject({
        ok: false,
        issues: [{ code: 'directory-csv-header' }],
      });
    }
  });

  it('never throws, and loses no good row beside any other text', () => {
    const line = fc.string({ unit: 'grapheme' }).map((text) => text.replace(/[\r\n"]/g, ' '));
    fc.assert(
      fc.property(
        fc.array(fc.oneof(line, fc.constant('"'), fc.constant('x,"'), fc.constant('x"'))),
        (lines) => {
          const { updates: got } = read(
            ['mmsi,name', ...lines.filter((each) => !each.startsWith('"')), '232999142,Tern'].join('\n'),
          );
          if (lines.every((each) => !each.includes('"')))
            expect(got.at(-1)).toMatchObject({ mmsi: '232999142', name: 'Tern' });
        },
      ),
    );
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(readDirectoryCsv(`mmsi\n${text}`).ok).toBe(true);
        expect(typeof readDirectoryCsv(text).ok).toBe('boolean');
      }),
    );
  });

  it('ends for ten million characters', () => {
    for (const piece of [
      '"',
      '"\n',
      '"""\n',
      'a"\n',
      ',',
      '\n',
      '"a""\n',
      '232999142,x\n',
      ';',
      'x,"\n',
      '\r',
    ]) {
      const text = `mmsi,name\n${piece.repeat(Math.ceil(300_000 / piece.length))}`;
      expect(readDirectoryCsv(text).ok).toBe(true);
    }
    expect(readDirectoryCsv('x'.repeat(10_000_000)).ok).toBe(false);
    expect(readDirectoryCsv(`mmsi\n"${'x'.repeat(10_000_000)}`).ok).toBe(true);
  });
});

describe('a list of stations', () => {
  const whole = (text: string): readonly StationUpdate[] => {
    const result = readDirectoryCsv(text);
    if (!result.ok || result.notices.length > 0) throw new Error('read');
    return result.value;
  };

  it('is written in full, extra columns in order of their labels', () => {
    const directory = createDirectory([
      {
        mmsi: '232999142',
        origin: 'typed',
        name: 'Tern of Ardle',
        callSign: '2ZZT4',
        notes: 'blue hull',
        groups: ['023299905', '023299906'],
        heardAt: Date.UTC(2026, 4, 1, 10),
        calledAt: Date.UTC(2026, 4, 1, 11),
        extra: [{ label: 'sail', text: '7' }],
      },
      { mmsi: '232999563', origin: 'typed', extra: [{ label: 'harbour', text: 'Ardle' }] },
    ]);
    expect(writeDirectoryCsv(directory)).toBe(
      [
        'mmsi,name,call sign,notes,groups,heard,called,harbour,sail',
        '232999142,Tern of Ardle,2ZZT4,blue hull,"023299905; 023299906",2026-05-01T10:00:00.000Z,2026-05-01T11:00:00.000Z,,7',
        '232999563,,,,,,,Ardle,',
        '',
      ].join('\r\n'),
    );
    expect(writeDirectoryCsv(createDirectory())).toBe('mmsi,name,call sign,notes,groups,heard,called\r\n');
  });

  it('has fields only where it says something', () => {
    expect(whole('mmsi,name,notes,harbour\n232999142, ,\t,  \n')).toStrictEqual([
      { mmsi: '232999142', origin: 'imported', groups: [] },
    ]);
  });

  it('may have blanks around its labels and times', () => {
    expect(whole('MMSI , heard , harbour \n232999142, 2026-05-01T10:00:00Z ,Ardle\n')).toStrictEqual([
      {
        mmsi: '232999142',
        origin: 'imported',
        groups: [],
        heardAt: Date.UTC(2026, 4, 1, 10),
        extra: [{ label: 'harbour', text: 'Ardle' }],
      },
    ]);
  });

  it('may have two columns with one label', () => {
    expect(whole('mmsi,berth,berth,sail\n232999142,7,8,9\n')[0]?.extra).toEqual([
      { label: 'berth', text: '7' },
      { label: 'berth column 3', text: '8' },
      { label: 'sail', text: '9' },
    ]);
  });

  it.each([
    ['one, as people write it', '0 232 99905', ['023299905']],
    ['two, with a semicolon', '023299905; 0 232 99906', ['023299905', '023299906']],
    ['two, with blanks', '023299905  023299906', ['023299905', '023299906']],
    ['two, with signs too many', '; 023299905; ;023299906;', ['023299905', '023299906']],
    ['none', ';', []],
    ['an aircraft group', '111232000', ['111232000']],
  ])('may name groups: %s', (_, cell, groups) => {
    expect(whole(`mmsi,groups\n232999142,"${cell}"\n`)[0]?.groups).toEqual(groups);
  });

  it('leaves out what is no group, and keeps the others', () => {
    const { updates: got, notices } = read('mmsi,groups\n232999142,"Ardle;023299905;232999563"\n');
    expect(got[0]?.groups).toEqual(['023299905']);
    expect(notices).toEqual([
      ['line 2', 'groups', 'directory-group'],
      ['line 2', 'groups', 'directory-group'],
    ]);
  });

  it('loses an apostrophe only where it guards a sign in front', () => {
    const names = ["'=x", "''-x", "'plain", "Pull'-n-Go"];
    expect(
      whole(`mmsi,name\n${names.map((name, row) => `23299914${row},${name}\n`).join('')}`).map(
        ({ name }) => name,
      ),
    ).toEqual(['=x', "'-x", "'plain", "Pull'-n-Go"]);
  });
});

// Common practice, no source: spreadsheets in East Asian input modes take full-width signs for formula signs too.
describe('cells that begin with a full-width sign', () => {
  it.each(['＝1+1', '＋1', '－1', '＠SUM', "'＝1"])(
    '%s is marked as text and read back as it was',
    (name) => {
      const directory = createDirectory({ mmsi: '232999142', origin: 'typed', name });
      const [, row = ''] = writeDirectoryCsv(directory).split('\r\n');
      expect(row.split(',')[1]).toBe(`'${name}`);
      const back = readDirectoryCsv(writeDirectoryCsv(directory));
      expect(back.ok && back.value[0]?.name).toBe(name);
    },
  );
});
