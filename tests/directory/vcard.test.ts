import { Buffer } from 'node:buffer';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  escapeText,
  readContentLines,
  unescapeText,
  writeContentLine,
} from '../../src/directory/content-line.ts';
import { createDirectory, readVcards, type StationUpdate, writeVcards } from '../../src/directory/index.ts';
import { updates } from './arbitrary.ts';

const read = (
  text: unknown,
): { updates: readonly StationUpdate[]; notices: readonly (readonly unknown[])[] } => {
  const result = readVcards(text);
  if (!result.ok) throw new Error(result.issues[0].message);
  return { updates: result.value, notices: result.notices.map(({ at, code }) => [...at, code]) };
};
const card = (...lines: readonly string[]): string =>
  ['BEGIN:VCARD', 'VERSION:4.0', ...lines, 'END:VCARD', ''].join('\r\n');

describe('content lines', () => {
  // RFC 6350 §3.2, the example of folding, from memory.
  it('are unfolded', () => {
    const long = 'NOTE:This is a long description that exists on a long line.';
    const folded = 'NOTE:This is a long description\r\n  that exists o\r\n n a long line.';
    expect(readContentLines(folded)).toEqual(readContentLines(long));
    expect(readContentLines(folded)[0]?.value).toBe('This is a long description that exists on a long line.');
  });

  // RFC 6350 §4 and §6.2.1, examples of escaped text, from memory.
  it.each([
    [
      'Mythical Manager\\nHyjinx Software Division\\nBabsCo\\, Inc.\\n',
      'Mythical Manager\nHyjinx Software Division\nBabsCo, Inc.\n',
    ],
    ['Mr. John Q. Public\\, Esq.', 'Mr. John Q. Public, Esq.'],
  ])('hold %s', (value, text) => {
    expect(unescapeText(value)).toBe(text);
    expect(escapeText(text)).toBe(value);
  });

  it('are folded at 75 octets without cutting a character, and read back', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
        const value = escapeText(text.replace(/\r\n?/g, '\n'));
        const written = writeContentLine('NOTE', value);
        for (const line of written.split('\r\n')) {
          expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
          expect(line).not.toContain('\ufffd');
        }
        expect(readContentLines(written)).toEqual([{ line: 1, name: 'NOTE', parameters: '', value }]);
        expect(unescapeText(value)).toBe(text.replace(/\r\n?/g, '\n'));
      }),
    );
  });

  it('may have a group and parameters with quoted colons', () => {
    expect(readContentLines('item1.tel;TYPE="a:b";PREF=1:tel:+44')).toEqual([
      { line: 1, name: 'TEL', parameters: ';TYPE="a:b";PREF=1', value: 'tel:+44' },
    ]);
  });
});

describe('a directory as vCards', () => {
  it('has what RFC 6350 requires: version 4.0 right after the beginning, one FN, CRLF', () => {
    const text = writeVcards(createDirectory({ mmsi: '002329990', origin: 'heard', callSign: '2ZZC' }));
    expect(text).toBe(
      'BEGIN:VCARD\r\nVERSION:4.0\r\nFN:00 232 9990\r\nX-MMSI:002329990\r\nX-CALL-SIGN:2ZZC\r\nEND:VCARD\r\n',
    );
    expect(writeVcards(createDirectory({ mmsi: '023299905', origin: 'typed' }))).toContain('KIND:group\r\n');
  });

  it('is read back but for times of contact', () => {
    fc.assert(
      fc.property(updates, (list) => {
        const directory = createDirectory(list);
        const { updates: back, notices } = read(writeVcards(directory));
        expect(notices).toEqual([]);
        const expected = directory.stations.map(
          ({ origins: _o, kind: _k, heardAt: _h, calledAt: _c, ...station }): StationUpdate => ({
            ...station,
            origin: 'imported',
          }),
        );
        expect(createDirectory(back)).toEqual(createDirectory(expected));
      }),
      { numRuns: 500 },
    );
  });

  it('keeps properties it has no place for', () => {
    const { updates: got, notices } = read(
      card(
        'FN:Tern',
        'FN:Tern of Ardle',
        'X-MMSI:232999142',
        'TEL;TYPE=cell:+441632960000',
        'NOTE:blue',
        'NOTE:hull',
        'N:;Tern;;;',
      ),
    );
    expect(got).toEqual([
      {
        mmsi: '232999142',
        origin: 'imported',
        name: 'Tern',
        notes: 'blue\nhull',
        groups: [],
        extra: [
          { label: 'FN', text: 'Tern of Ardle' },
          { label: 'TEL;TYPE=cell', text: '+441632960000' },
        ],
      },
    ]);
    expect(notices).toEqual([]);
  });

  it('is written in full, each property once', () => {
    const directory = createDirectory({
      mmsi: '232999142',
      origin: 'typed',
      name: 'Tern; of, Ardle',
      callSign: '2ZZT4',
      notes: 'blue\nhull',
      groups: ['023299905', '023299906'],
      heardAt: 1000,
      extra: [{ label: 'a;b', text: 'c;d' }],
    });
    expect(writeVcards(directory)).toBe(
      card(
        String.raw`FN:Tern\; of\, Ardle`,
        'X-MMSI:232999142',
        'X-CALL-SIGN:2ZZT4',
        'X-MMSI-GROUP:023299905',
        'X-MMSI-GROUP:023299906',
        String.raw`NOTE:blue\nhull`,
        String.raw`X-EXTRA:a\;b;c\;d`,
      ),
    );
  });

  it('is read with blanks after what must be, and has fields only where it says something', () => {
    const text = ['begin:vcard  ', 'version:4.0 ', 'fn:232 999 142', 'x-mmsi:232999142', 'end:vcard'].join(
      '\n',
    );
    expect(readVcards(text)).toStrictEqual({
      ok: true,
      value: [{ mmsi: '232999142', origin: 'imported', groups: [] }],
      notices: [],
    });
  });

  it('names the groups of a station, each that is one', () => {
    const { updates: got } = read(
      card('X-MMSI:232999142', 'X-MMSI-GROUP:023299905', 'X-MMSI-GROUP:Ardle', 'X-MMSI-GROUP:0 232 99906'),
    );
    expect(got[0]?.groups).toEqual(['023299905', '023299906']);
  });

  it('loses no card but the bad ones, and tells the line of each', () => {
    const text = [
      'stray',
      card('FN:Somebody else'),
      card('FN:Skerra', 'X-MMSI:2329990').replace('4.0', '3.0'),
      'BEGIN:VCARD\nVERSION:4.0\nX-MMSI:232999142\nX-MMSI-GROUP:232999142\nno property\n',
      card('X-MMSI:232999563'),
      'BEGIN:VCARD\nVERSION:4.0\nX-MMSI:232999218',
    ].join('\n');
    const { updates: got, notices } = read(text);
    expect(got.map(({ mmsi }) => mmsi)).toEqual(['232999142', '232999563', '232999218']);
    expect(notices.map(([, ...rest]) => rest)).toEqual([
      ['directory-vcard-line'],
      ['BEGIN', 'directory-vcard-identity'],
      ['VERSION', 'directory-vcard-version'],
      ['X-MMSI', 'identity-leading-zeros'],
      ['directory-vcard-line'],
      ['directory-vcard-begin'],
      ['X-MMSI-GROUP', 'directory-group'],
      ['directory-vcard-end'],
    ]);
  });

  it('reads nothing from blank text, and refuses text without a card', () => {
    expect(read('\r\n')).toEqual({ updates: [], notices: [] });
    for (const value of ['FN:Tern', 'mmsi,name', null, 5, {}]) {
      expect(readVcards(value)).toMatchObject({ ok: false, issues: [{ code: 'directory-vcard-none' }] });
    }
  });

  it('never throws, and ends for ten million characters', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(typeof readVcards(text).ok).toBe('boolean');
        expect(readVcards(`BEGIN:VCARD\nX-MMSI:232999142\n${text}`).ok).toBe(true);
      }),
    );
    for (const piece of ['\n ', 'A', ';A="', '\\', 'BEGIN:VCARD\n', ';', 'X-EXTRA:a\\;b;c\n', ':"']) {
      const text = `BEGIN:VCARD\nX-MMSI:232999142\nNOTE${piece.repeat(Math.ceil(300_000 / piece.length))}`;
      expect(readVcards(text).ok).toBe(true);
    }
    for (const long of ['x', 'NOTE;"', 'X-EXTRA:']) {
      expect(readVcards(`BEGIN:VCARD\n${long}${'x'.repeat(10_000_000)}`).ok).toBe(true);
    }
  });
});

// RFC 6350 §3.3 and §3.4: a content line ends at CRLF, so no value may hold a line end of its own. The directory here is
// made by hand, as a program without types may make one.
describe('cards of a directory that did not come through remember', () => {
  it.each([
    ['a name', { name: 'Tern\rEND:VCARD\rBEGIN:VCARD' }],
    ['an identity', { name: 'Tern', mmsi: '232999142\r\nEND:VCARD\r\nBEGIN:VCARD\r\nX-MMSI:232999563' }],
    ['a group', { groups: ['023299905\r\nEND:VCARD\r\nBEGIN:VCARD\r\nX-MMSI:232999563'] }],
    ['a call sign', { callSign: '2ZZT4\nEND:VCARD\nBEGIN:VCARD' }],
    ['a note', { notes: 'a\rb\u0085c\u000bd' }],
    ['an extra field', { extra: [{ label: 'x\r\nEND:VCARD', text: 'y\r\nBEGIN:VCARD' }] }],
  ])('are one card each, whatever is in %s', (_, change) => {
    const station = { mmsi: '232999142', kind: 'ship', groups: [], origins: { entry: 'typed' }, ...change };
    const text = writeVcards({ kind: 'directory', stations: [station] } as never);
    const lines = text.split('\r\n');
    expect(lines.filter((line) => /^(BEGIN|END):/.test(line))).toEqual(['BEGIN:VCARD', 'END:VCARD']);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/\p{Cc}/u);
  });
});
