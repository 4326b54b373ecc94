import { describe, expect, it } from 'vitest';
import type { Reading, Sentence } from '../../src/report/index.ts';
import { checksumOf } from '../../src/sentence/frame/checksum.ts';
import {
  createSentenceReader,
  formatSentence,
  parseSentence,
  readSentences,
  writeWaypoint,
} from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

// Rules: IEC 61162-1 and NMEA 0183 v4, as publicly restated; the length of a line that is held is our own choice.
const clock = '$GPZDA,140412.00,02,01,2026,00,00*61';
const sentenceOf = (text: string): Sentence | null => {
  const result = parseSentence(text);
  return result.ok ? result.value : null;
};
const codes = (text: string): string[] => {
  const result = parseSentence(text);
  return (result.ok ? result.notices : result.issues).map(({ code }) => code);
};

/** A sentence without its checksum, whose checksum is the given one. */
function bodyWith(checksum: string): string {
  const characters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789'];
  const found = characters
    .flatMap((one) => characters.map((other) => `GPXYZ,${one}${other}`))
    .find((body) => checksumOf(body) === checksum);
  return `$${found ?? ''}`;
}

describe('the digits of a checksum', () => {
  it.each(['00', '09', '0A', '0F', '19', '1A', '29', '2F', '30', '7A'])(
    '%s are read, small ones too',
    (digits) => {
      expect(codes(`${bodyWith(digits)}*${digits}`)).toEqual([]);
      expect(codes(`${bodyWith(digits)}*${digits.toLowerCase()}`)).toEqual(
        /[A-F]/.test(digits) ? ['sentence-checksum-lower-case'] : [],
      );
    },
  );

  // The neighbours of the digits in the table of characters: by their place they would have the same value.
  it.each([
    ['0A', '0:'],
    ['09', '0@'],
    ['09', '0`'],
    ['30', '2G'],
    ['30', '2g'],
    ['1F', '2/'],
  ])('%s are not %s', (digits, written) => {
    expect(codes(`${bodyWith(digits)}*${written}`)).toEqual(['sentence-checksum-malformed']);
  });
});

describe('a sentence', () => {
  it('of 82 characters with its line end is not too long, one of 83 is', () => {
    const text = (length: number): string => line(`GPTXT,${'x'.repeat(length)}`).trim();
    expect(text(70)).toHaveLength(80);
    expect(codes(text(70))).toEqual([]);
    expect(codes(text(71))).toEqual(['sentence-length']);
  });

  it('is taken apart completely', () => {
    expect(sentenceOf(line('AIVDM,1,1,,A,13N=;o@P0,0', '!').trim())).toEqual({
      kind: 'sentence',
      start: '!',
      form: 'standard',
      talker: 'AI',
      formatter: 'VDM',
      fields: ['1', '1', '', 'A', '13N=;o@P0', '0'],
      checksum: 'right',
      tag: null,
      raw: line('AIVDM,1,1,,A,13N=;o@P0,0', '!').trim(),
    });
    expect(sentenceOf(line('GPXYZ').trim())).toMatchObject({ start: '$', formatter: 'XYZ', fields: [] });
    expect(sentenceOf(`12:04 ${clock} x`)?.raw).toBe(clock);
  });

  it('with a second star in it has another checksum', () => {
    expect(codes(line('GPTXT,a*b').trim())).toEqual(['sentence-checksum-malformed']);
  });

  it.each([
    ['a line end', '\n', []],
    ['the other line end', '\r', []],
    ['empty lines', '\n\r\r\n', []],
    ['a line end before more', '\r\n.\r\n', ["'\\u{d}\\u{a}.'"]],
    ['a blank before the line end', ' \r\n', ["' '"]],
    ['another sentence', clock, [`'${clock}'`]],
  ])('followed by %s has its line end taken off and nothing else', (_, rest, received) => {
    const result = parseSentence(clock + rest);
    expect(result.ok && result.value.raw).toBe(clock);
    expect(result.ok && result.notices.map((notice) => [notice.code, notice.received])).toEqual(
      received.map((text) => ['sentence-trailing-characters', text]),
    );
  });

  it('with line ends without number in front of more is read in one pass', () => {
    expect(codes(`${clock}${'\r'.repeat(200_000)}x`)).toEqual(['sentence-trailing-characters']);
  });

  it('that blanks got into is mended where it stands, whatever is around it', () => {
    const wrapped = '$GPZDA,1404 12.00,02,01,2026,00,00*61';
    expect(codes(`12:04 ${wrapped}`)).toEqual(['sentence-leading-characters', 'sentence-blank-damage']);
    expect(readSentences(`${clock}${wrapped}${clock}\r\n`)).toMatchObject([
      { kind: 'clock', notices: [] },
      { kind: 'clock', notices: [{ code: 'sentence-blank-damage', at: [11], received: `'${wrapped}'` }] },
      { kind: 'clock', notices: [] },
    ]);
  });

  it('is read the same with options that are null', () => {
    expect(parseSentence(clock, null as never)).toEqual(parseSentence(clock));
  });

  it('cut off behind its star is damaged', () => {
    expect(codes(`${clock.slice(0, -2)}`)).toEqual(['sentence-checksum-malformed']);
    expect(codes('$*00')).toEqual(['sentence-address']);
    expect(codes('$')).toEqual(['sentence-checksum-missing']);
    expect(codes('00$GPZDA,1')).toEqual(['sentence-checksum-missing']);
  });

  it('that lost its end does not swallow the next one', () => {
    const readings = readSentences(`$GPGLL,5620.0${clock}\r\n`);
    expect(readings).toMatchObject([
      { kind: 'damaged', text: '$GPGLL,5620.0', issues: [{ code: 'sentence-checksum-missing' }] },
      { kind: 'clock' },
    ]);
  });

  it('without a checksum may have blanks behind it', () => {
    const result = parseSentence('$GPZDA,140412.00,02,01,2026,00,00  \r\n', { unchecked: true });
    expect(result.ok && [result.value.raw, result.value.fields.at(-1)]).toEqual([clock.slice(0, -3), '00']);
  });

  it('has blanks and tabs taken from the edges of its fields, and those inside kept', () => {
    const sentence = sentenceOf(line('CDWPL,\t5620.0 , N,00630.0,W,TERN OF ARDLE').trim());
    expect(sentence?.fields).toEqual(['5620.0', 'N', '00630.0', 'W', 'TERN OF ARDLE']);
    expect(codes(line('CDWPL,\t5620.0 , N,00630.0,W,TERN OF ARDLE').trim())).toEqual([
      'sentence-blank-sent',
      'sentence-blank-sent',
    ]);
  });

  it.each(['/', ':', '@', '[', 'a'])('has no %s in its address', (character) => {
    expect(codes(line(`GPZD${character},1`).trim())).toEqual(['sentence-address']);
    expect(codes(line(`${character}PZDA,1`).trim())).toEqual(['sentence-address']);
  });

  it.each(['0', '9', 'A', 'Z'])('may have %s in its address', (character) => {
    expect(sentenceOf(line(`G${character}ZDA,1`).trim())?.talker).toBe(`G${character}`);
  });
});

describe('a TAG block', () => {
  const block = (inside: string): string => `\\${inside}*${checksumOf(inside)}\\`;

  it('is believed by its checksum and tells what it can', () => {
    expect(sentenceOf(`${block('s:VHF1, c:1780322700,n:12.5,r:7,t:a:b,odd')}${clock}`)?.tag).toEqual({
      parameters: [
        ['s', 'VHF1'],
        ['c', '1780322700'],
        ['n', '12.5'],
        ['r', '7'],
        ['t', 'a:b'],
        ['', 'odd'],
      ],
      source: 'VHF1',
      time: 1_780_322_700_000,
      lineCount: 12.5,
      relativeTime: 7,
      text: 'a:b',
    });
  });

  it('may be empty, and its checksum in small letters', () => {
    expect(sentenceOf(`\\*00\\${clock}`)?.tag).toEqual({ parameters: [['', '']] });
    expect(checksumOf('s:P')).toBe('19');
    expect(sentenceOf(`\\s:${'\u0012'}*5b\\${clock}`)?.tag?.source).toBe('\u0012');
  });

  it('has a parameter for each of its texts, with a letter or not', () => {
    expect(sentenceOf(`${block('r:7.25,:9,x:1-2-3')}${clock}`)?.tag).toEqual({
      parameters: [
        ['r', '7.25'],
        ['', '9'],
        ['x', '1-2-3'],
      ],
      relativeTime: 7.25,
    });
  });

  it.each(['c:soon', 'n:1e3', 'r:-1', 'g:1-2', 'g:1-2-x', 'g:1-2-3-4', `c:${'1'.repeat(16)}`, 'n:1.'])(
    '%s tells no number',
    (inside) => {
      expect(sentenceOf(`${block(inside)}${clock}`)?.tag).toEqual({
        parameters: [inside.split(':')],
      });
    },
  );

  it.each([
    ['99999999999', 99_999_999_999_000],
    ['100000000000', 100_000_000_000],
  ])('time %s is %i', (sent, time) => {
    expect(sentenceOf(`${block(`c:${sent}`)}${clock}`)?.tag?.time).toBe(time);
  });

  it('behind another counts, unless it is damaged', () => {
    expect(sentenceOf(`${block('s:A')}${block('s:B')}${clock}`)?.tag?.source).toBe('B');
    expect(sentenceOf(`${block('s:A')}\\s:B*00\\${clock}`)?.tag?.source).toBe('A');
    expect(sentenceOf(`\\s:A*1g\\${clock}`)?.tag).toBeNull();
    expect(sentenceOf(`\\s:A*${checksumOf('s:A')}x\\${clock}`)?.tag).toBeNull();
  });

  it('is not believed when its checksum has a character that is no digit, whatever its place would make of it', () => {
    const inside = bodyWith('1F').slice(1);
    expect(sentenceOf(`\\${inside}*1F\\${clock}`)?.tag?.parameters).toHaveLength(2);
    expect(sentenceOf(`\\${inside}*2/\\${clock}`)?.tag).toBeNull();
  });

  it('may stand there four times, not five', () => {
    expect(sentenceOf(block('s:A').repeat(4) + clock)?.tag?.source).toBe('A');
    expect(codes(block('s:A').repeat(5) + clock)).toEqual(['sentence-no-start']);
    const fifth = parseSentence(block('').repeat(5) + clock);
    expect(!fifth.ok && fifth.issues[0]?.received).toBe(`'${block('').repeat(4)}'`);
  });
});

describe('a line', () => {
  const placed = (reading: Reading): unknown[] =>
    reading.kind === 'damaged'
      ? [reading.line, reading.offset, reading.text.length, reading.dropped]
      : [reading.line, reading.offset, reading.kind];
  const kinds = (text: string): unknown[] => readSentences(text).map(placed);

  it('is held up to 1024 characters, and dropped beyond', () => {
    expect(kinds(`${'x'.repeat(1024)}\r\n`)).toEqual([[1, 0, 1024, 0]]);
    expect(kinds('x'.repeat(1024))).toEqual([[1, 0, 1024, 0]]);
    expect(kinds(`${'x'.repeat(1025)}\r\n`)).toEqual([[1, 0, 0, 1025]]);
    expect(kinds('x'.repeat(1025))).toEqual([[1, 0, 0, 1025]]);
  });

  it('that is dropped ends where a sentence begins', () => {
    expect(kinds(`${'x'.repeat(3000)}${clock}\r\n${clock}\r\n`)).toEqual([
      [1, 0, 0, 3000],
      [1, 3000, 'clock'],
      [2, 3038, 'clock'],
    ]);
  });

  it('that grows too long is cut before its last sentence, the TAG block included', () => {
    const block = `\\s:A*${checksumOf('s:A')}\\`;
    expect(kinds(`${'x'.repeat(1000)}${clock}\r\n`)).toEqual([
      [1, 0, 1000, 0],
      [1, 1000, 'clock'],
    ]);
    expect(kinds(`${'x'.repeat(1000)}${block}${clock}\r\n`)).toEqual([
      [1, 0, 1000, 0],
      [1, 1000, 'clock'],
    ]);
    expect(kinds(`${'x'.repeat(1020)}${block}${clock}\r\n`)).toEqual([
      [1, 0, 1020, 0],
      [1, 1020, 'clock'],
    ]);
    expect(kinds(`${'x'.repeat(980)}${clock}${block}${clock}\r\n`)).toEqual([
      [1, 0, 'clock'],
      [1, 1016, 'clock'],
    ]);
    expect(kinds(`${'x'.repeat(1000)}!${'x'.repeat(10)}${clock}\r\n`)).toEqual([
      [1, 0, 1011, 0],
      [1, 1011, 'clock'],
    ]);
  });

  it.each([
    ['CR LF', '\r\n', 38],
    ['LF', '\n', 37],
    ['CR', '\r', 37],
  ])('may end in %s', (_, end, offset) => {
    expect(kinds(`${clock}${end}${clock}${end}`)).toEqual([
      [1, 0, 'clock'],
      [2, offset, 'clock'],
    ]);
  });

  it('that is empty counts', () => {
    expect(kinds(`\n\r\r\n${clock}`)).toEqual([[4, 4, 'clock']]);
    expect(kinds(`\n\n${clock}`)).toEqual([[3, 2, 'clock']]);
  });

  it('whose CR and LF come in two pieces is one line', () => {
    const reader = createSentenceReader();
    expect(reader.push(`${clock}\r`)).toMatchObject([{ line: 1, offset: 0 }]);
    expect(reader.push(`\n${clock}\r`)).toMatchObject([{ line: 2, offset: 38 }]);
    expect(reader.push(`${clock}\r\n`)).toMatchObject([{ line: 3, offset: 75 }]);
  });

  it('that begins after a CR keeps its own LF, whatever piece that comes in', () => {
    const reader = createSentenceReader();
    expect([`\r${clock}`, '\n', `${clock}\n`].flatMap((piece) => reader.push(piece))).toMatchObject([
      { line: 2, offset: 1 },
      { line: 3, offset: 38 },
    ]);
  });

  it.each([
    ['between two pieces of it', ['x'.repeat(600), 'x'.repeat(425)], [[1, 0, 0, 1025]]],
    ['with a start and nothing after it', [`$${'x'.repeat(2000)}`], [[1, 0, 0, 2001]]],
    [
      'in three pieces',
      ['x'.repeat(3000), 'x'.repeat(10), `x${clock}`],
      [
        [1, 0, 0, 3011],
        [1, 3011, 'clock'],
      ],
    ],
    [
      'to the start of a piece',
      ['x'.repeat(3000), clock],
      [
        [1, 0, 0, 3000],
        [1, 3000, 'clock'],
      ],
    ],
  ])('that is dropped is told once: %s', (_, pieces, expected) => {
    const reader = createSentenceReader();
    const readings = [...pieces, '\r\n'].flatMap((piece) => reader.push(piece));
    expect(readings.map(placed)).toEqual(expected);
  });

  it('keeps the TAG block of a sentence that begins where the line is cut', () => {
    const block = `\\s:A*${checksumOf('s:A')}\\`;
    expect(block).toHaveLength(8);
    for (const before of [`$${'x'.repeat(1015)}`, 'x'.repeat(1016)]) {
      const readings = readSentences(`${before}${block}${clock}\r\n`);
      expect(readings).toMatchObject([
        { kind: 'damaged', text: before },
        { kind: 'clock', offset: 1016, notices: [], sources: [{ tag: { source: 'A' } }] },
      ]);
    }
  });

  it('of bytes is the same as of text, however many come at once', () => {
    const text = `${clock}\r\n`.repeat(300);
    expect(readSentences(new TextEncoder().encode(text))).toEqual(readSentences(text));
    expect(readSentences(text)).toHaveLength(300);
  });

  it('shows the first four things that are wrong with it', () => {
    const damage = (times: number): number | undefined => {
      const [reading] = readSentences('$GPGLL*00'.repeat(times));
      return reading?.kind === 'damaged' ? reading.issues.length : undefined;
    };
    expect([1, 4, 5].map(damage)).toEqual([1, 4, 4]);
  });

  it('that goes on with a TAG block and no sentence shows that block alone as damage', () => {
    expect(readSentences(`${clock}\\s:R\r\n`)).toMatchObject([
      { kind: 'clock' },
      { kind: 'damaged', text: '\\s:R', issues: [{ code: 'sentence-no-start', received: "'\\s:R'" }] },
    ]);
  });

  it('with damage between two sound sentences gives what is damaged once, as it stood', () => {
    const readings = readSentences(`${clock}$GPGLL,1*00$GPGLL,2*00${clock}$GPGLL,3*00\r\n`);
    expect(readings.map((reading) => (reading.kind === 'damaged' ? reading.text : reading.kind))).toEqual([
      'clock',
      '$GPGLL,1*00$GPGLL,2*00',
      'clock',
      '$GPGLL,3*00',
    ]);
    expect(readings.map((reading) => (reading.kind === 'damaged' ? reading.issues.length : 0))).toEqual([
      0, 2, 0, 1,
    ]);
  });
});

describe('text in a field', () => {
  const written = (name: string): string =>
    writeWaypoint({ position: { latitude: 0, longitude: 0 }, name }).slice(32, -3);
  const nameOf = (reading: Reading | undefined): unknown =>
    reading?.kind === 'waypoint' && reading.waypoint.name;
  const read = (field: string): unknown =>
    nameOf(readSentences(line(`CDWPL,0000.0000,N,00000.0000,E,${field}`))[0]);

  it.each([
    ['TERN', 'TERN'],
    ['!$*,\\^~', '^21^24^2A^2C^5C^5E^7E'],
    ['Å\u001f\u007f', '^C5^1F^7F'],
    ['ÿĀ船🚢', '^FF???'],
    [' a b ', '^20a b^20'],
    ['}', '}'],
    ['', ''],
  ])('%j is written as %s', (name, field) => {
    expect(written(name)).toBe(field);
  });

  it.each([
    ['^41^5E^e5', 'A^å'],
    ['A^', 'A^'],
    ['^4', '^4'],
    ['^4G^G4', '^4G^G4'],
    ['141', '141'],
    ['^^41', '^A'],
  ])('%s is read as %s', (field, name) => {
    expect(read(field)).toBe(name);
  });
});

describe('what strict writing refuses is told', () => {
  const parts = { talker: 'GP', formatter: 'TXT', fields: ['x'] };

  it.each([
    [{ talker: 'gp' }, "talker: expected two capitals or digits, got 'gp'"],
    [{ talker: 'G' }, "talker: expected two capitals or digits, got 'G'"],
    [{ talker: 'XGP' }, "talker: expected two capitals or digits, got 'XGP'"],
    [{ talker: '0P' }, "talker: expected two capitals or digits, got '0P'"],
    [{ formatter: 'TEXT' }, "formatter: expected three capitals, got 'TEXT'"],
    [{ formatter: 'xTXT' }, "formatter: expected three capitals, got 'xTXT'"],
    [{ formatter: 'TX1' }, "formatter: expected three capitals, got 'TX1'"],
    ...['a!', 'a$', 'a*', 'a,', 'a\\', 'a~', 'é'].map(
      (field) =>
        [
          { fields: ['x', field] },
          `field: expected printable characters and none of !$*,\\~, got '${field}'`,
        ] as const,
    ),
    [{ fields: ['\tb'] }, "field: expected printable characters and none of !$*,\\~, got '\\u{9}b'"],
    [{ talker: 'G'.repeat(99) }, `talker: expected two capitals or digits, got '${'G'.repeat(39)}…'`],
    [{ fields: ['x'.repeat(71)] }, 'sentence: expected at most 82 characters with its line end, got 83'],
  ] as const)('%j', (change, message) => {
    expect(() => formatSentence({ ...parts, ...change })).toThrow(new RangeError(message));
  });

  it('and encapsulated data begins with an exclamation mark when asked for', () => {
    expect(formatSentence({ ...parts, start: '!' })).toBe(line('GPTXT,x', '!').trim());
  });

  it('and a character beyond FF hex has no checksum', () => {
    expect(checksumOf('ÿ')).toBe('FF');
    expect(() => checksumOf('Ā')).toThrow(new RangeError('body: expected no character above FF hex'));
  });
});
