import { describe, expect, it } from 'vitest';
import { parseSentence, readSentences } from '../../src/sentence/index.ts';

// The whole issue or notice as programs get it; its wording is pinned in tests/locale. Rules: IEC 61162-1 and NMEA 0183 v4, as publicly restated.
describe('of a line with', () => {
  it.each([
    [
      'characters in front',
      '12:04 $GPZDA,140412.00,02,01,2026,00,00*61',
      {
        code: 'sentence-leading-characters',
        grade: 'note',
        params: {},
        at: [0],
        received: "'12:04 '",
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
    [
      'characters behind',
      '$GPZDA,140412.00,02,01,2026,00,00*61 x',
      {
        code: 'sentence-trailing-characters',
        grade: 'note',
        params: {},
        at: ['end'],
        received: "' x'",
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
    [
      'a TAG block left open',
      '\\s:R$GPZDA,140412.00,02,01,2026,00,00*61',
      {
        code: 'sentence-tag-unclosed',
        grade: 'note',
        params: {},
        at: ['TAG block'],
        expected: 'a backslash before the sentence',
        received: "'\\s:R'",
        clause: 'NMEA 0183 v4, TAG block',
      },
    ],
    [
      'a TAG block with a wrong checksum',
      '\\s:R*00\\$GPZDA,140412.00,02,01,2026,00,00*61',
      {
        code: 'sentence-tag-checksum',
        grade: 'note',
        params: { computed: '1B' },
        at: ['TAG block'],
        expected: '*1B',
        received: "'s:R*00'",
        clause: 'NMEA 0183 v4, TAG block',
      },
    ],
    [
      'a TAG block without a checksum',
      '\\s:R\\$GPZDA,140412.00,02,01,2026,00,00*61',
      {
        code: 'sentence-tag-checksum',
        grade: 'note',
        params: { computed: '1B' },
        at: ['TAG block'],
        expected: '*1B',
        received: "'s:R'",
        clause: 'NMEA 0183 v4, TAG block',
      },
    ],
    [
      'a checksum in small letters',
      '$CDDSC,16,3389999050,08,00,26,900008,,,,S,*2b',
      {
        code: 'sentence-checksum-lower-case',
        grade: 'note',
        params: { capitals: '*2B' },
        at: ['checksum'],
        expected: "'*2B'",
        received: "'*2b'",
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
    [
      'blanks that got in',
      '$GPZDA,1404 12.00,02,01,2026,00,00*61',
      {
        code: 'sentence-blank-damage',
        grade: 'check',
        params: {},
        at: [11],
        expected: 'no space',
        received: "'$GPZDA,1404 12.00,02,01,2026,00,00*61'",
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
    [
      'a blank that was sent',
      '$CDDSC,20,2329991420,00,03 ,26,,,,,R,*05',
      {
        code: 'sentence-blank-sent',
        grade: 'note',
        params: { field: 4, trimmed: "'03'" },
        at: ['field', 4],
        expected: "'03'",
        received: "'03 '",
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
    [
      '84 characters',
      '$GPGGA,140412.00,5025.0,N,00301.0,W,1,09,0.9,3.0,M,50.1,M,,00000000000000000000*7B',
      {
        code: 'sentence-length',
        grade: 'note',
        params: { limit: 82 },
        at: [82],
        expected: 'at most 82 characters',
        received: '84',
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
    [
      'no checksum',
      '$GPZDA,140412.00,02,01,2026,00,00',
      {
        code: 'sentence-checksum-missing',
        grade: 'error',
        params: { computed: '61' },
        at: ['checksum'],
        expected: '*61',
        received: "'$GPZDA,140412.00,02,01,2026,00,00'",
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
    [
      'a wrong checksum',
      '$GPZDA,140412.00,02,01,2026,00,00*60',
      {
        code: 'sentence-checksum-wrong',
        grade: 'error',
        params: { computed: '61' },
        at: ['checksum'],
        expected: "'*61'",
        received: "'*60'",
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
    [
      'one digit of checksum',
      '$GPZDA,140412.00,02,01,2026,00,00*6',
      {
        code: 'sentence-checksum-malformed',
        grade: 'error',
        params: { computed: '61' },
        at: ['checksum'],
        expected: "'*61'",
        received: "'*6'",
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
    [
      'an address too short',
      '$GPZD,1*14',
      {
        code: 'sentence-address',
        grade: 'error',
        params: {},
        at: [0],
        expected: 'two characters of talker and three of formatter, or P and a manufacturer code',
        received: "'GPZD'",
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
    [
      'no sentence',
      'no sentence here',
      {
        code: 'sentence-no-start',
        grade: 'error',
        params: {},
        at: [0],
        expected: 'a $ or ! that opens a sentence',
        received: "'no sentence here'",
        clause: 'IEC 61162-1, sentence structure',
      },
    ],
  ] as const)('%s it is said', (_, text, finding) => {
    const result = parseSentence(text);
    expect((result.ok ? result.notices : result.issues).map(({ message: _, ...data }) => data)).toEqual([
      finding,
    ]);
  });

  it('no end it is said how much was left out', () => {
    expect(readSentences(`${'x'.repeat(2000)}\r\n`)).toMatchObject([
      {
        kind: 'damaged',
        sources: [],
        line: 1,
        offset: 0,
        at: null,
        notices: [],
        text: '',
        dropped: 2000,
        issues: [
          {
            code: 'sentence-line-endless',
            grade: 'error',
            params: { limit: 1024 },
            at: [0],
            expected: 'a line end within 1024 characters',
            received: '2000',
            clause: 'IEC 61162-1, sentence structure',
          },
        ],
      },
    ]);
  });
});
