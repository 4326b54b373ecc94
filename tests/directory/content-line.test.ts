import { describe, expect, it } from 'vitest';
import {
  escapeText,
  firstComponent,
  readContentLines,
  unescapeText,
  writeContentLine,
} from '../../src/directory/content-line.ts';

describe('a content line', () => {
  // RFC 6350 §3.2: at most 75 octets, the blank of a continuation line among them.
  it.each([
    ['75 octets', 'a'.repeat(70), ['a'.repeat(70)]],
    ['76 octets', 'a'.repeat(71), ['a'.repeat(70), 'a']],
    ['a full second line', 'a'.repeat(70 + 74), ['a'.repeat(70), 'a'.repeat(74)]],
    ['a third line', 'a'.repeat(70 + 75), ['a'.repeat(70), 'a'.repeat(74), 'a']],
    ['nothing', '', ['']],
  ])('is folded where it must be: %s', (_, value, [first, ...others]) => {
    expect(writeContentLine('NOTE', value)).toBe(
      `NOTE:${first}\r\n${others.map((other) => ` ${other}\r\n`).join('')}`,
    );
  });

  // RFC 3629 §3: the table of octets for a code point.
  it.each([
    ['\u007f', 1],
    ['\u0080', 2],
    ['\u07ff', 2],
    ['\u0800', 3],
    ['\uffff', 3],
    ['\u{10000}', 4],
    ['\u{10ffff}', 4],
  ])('counts %j as the octets it has in UTF-8: %i', (character, octets) => {
    const fits = 'a'.repeat(70 - octets) + character;
    expect(writeContentLine('NOTE', fits)).toBe(`NOTE:${fits}\r\n`);
    const tooLong = 'a'.repeat(71 - octets);
    expect(writeContentLine('NOTE', tooLong + character)).toBe(`NOTE:${tooLong}\r\n ${character}\r\n`);
    const second = character.repeat(Math.floor(74 / octets));
    expect(writeContentLine('NOTE', `${'a'.repeat(70)}${second}${character}`)).toBe(
      `NOTE:${'a'.repeat(70)}\r\n ${second}\r\n ${character}\r\n`,
    );
  });

  // RFC 6350 §3.3; line ends other than CR LF are common practice, no source.
  it.each(['\r\n', '\r', '\n'])('ends with %j, and is numbered where it starts', (end) => {
    const text = ['BEGIN:VCARD', 'NOTE:blue', ' \thull', '', '\tred', 'item1.fn;LANGUAGE=en:Tern'].join(end);
    expect(readContentLines(text)).toEqual([
      { line: 1, name: 'BEGIN', parameters: '', value: 'VCARD' },
      { line: 2, name: 'NOTE', parameters: '', value: 'blue\thullred' },
      { line: 6, name: 'FN', parameters: ';LANGUAGE=en', value: 'Tern' },
    ]);
  });

  it('may follow a byte order mark', () => {
    expect(readContentLines('\ufeffFN:Tern\ufeff')).toEqual([
      { line: 1, name: 'FN', parameters: '', value: 'Tern\ufeff' },
    ]);
    expect(readContentLines('FN:T\ufeffern')[0]?.value).toBe('T\ufeffern');
  });

  it.each([
    ' folded after nothing:x',
    'no colon',
    ';X=1:no name',
    'two words;X=1:no name',
    'FN;X="never closed:x',
    ':x',
  ])('has no name where it is none, and keeps its text: %s', (text) => {
    expect(readContentLines(text)).toEqual([{ line: 1, name: '', parameters: '', value: text }]);
  });
});

describe('a TEXT value', () => {
  // RFC 6350 §3.4: a line end is \n or \N; comma, semicolon and backslash are escaped.
  it('is read with either letter for a line end, and written with the small one', () => {
    expect(unescapeText(String.raw`blue\nhull\Nred\, white\; \\n`)).toBe('blue\nhull\nred, white; \\n');
    expect(escapeText('blue\nred, white; \\n')).toBe(String.raw`blue\nred\, white\; \\n`);
  });

  it.each([
    ['label;text', ['label', 'text']],
    [String.raw`a\;b;c;d`, [String.raw`a\;b`, 'c;d']],
    [String.raw`a\\;b`, [String.raw`a\\`, 'b']],
    ['only a label', ['only a label', '']],
    [';text', ['', 'text']],
    ['', ['', '']],
  ])('has two components: %s', (value, components) => {
    expect(firstComponent(value)).toEqual(components);
  });
});
