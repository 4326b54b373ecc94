import { describe, expect, it } from 'vitest';
import { type CallFields, decodeFields } from '../../src/call/index.ts';
import type { Notice } from '../../src/result/index.ts';
import { type Said, withoutWords } from './without-words.ts';
import { workedSequences } from './worked-sequences.ts';

/** What is said of a worked sequence that was received with some fields changed. */
function said(from: string, change: Partial<CallFields>): readonly Notice[] {
  const worked = workedSequences.find((row) => row.name === from);
  return decodeFields({ ...(worked?.fields as CallFields), ...change }).notices;
}

// Compositions and names of fields: ITU-R M.493-16 Annex 1, from memory.
const tables = 'ITU-R M.493-16 Annex 1';

describe('a call that differs from its composition', () => {
  const cases: Record<string, readonly [string, Partial<CallFields>, readonly Said[]]> = {
    'of no format specifier in the tables, with a hole in it': [
      'position-reply',
      { format: 118, time: [9, null] },
      [
        {
          code: 'call-unrecognised',
          params: {},
          at: ['format'],
          received: '118, 121',
          clause: tables,
        },
        {
          code: 'call-character-missing',
          params: { field: 'time' },
          at: ['time'],
          received: '09 ––',
          clause: tables,
        },
      ],
    ],
    // ETSI EN 300 698 Annex B, read in a restatement.
    'of an identification on a voice channel of inland waters': [
      'position-reply',
      { format: 121 },
      [
        {
          code: 'call-atis',
          params: { format: 121 },
          at: ['format'],
          received: '121',
          clause: 'ETSI EN 300 698 Annex B, restated',
        },
      ],
    ],
    'without a nature of distress, with a character of the position lost': [
      'distress-alert-full',
      { nature: null, position: [15, null, 70, 5, 29] },
      [
        {
          code: 'call-character-missing',
          params: { field: 'position' },
          at: ['position'],
          received: '15 –– 70 05 29',
          clause: tables,
        },
        {
          code: 'call-field-missing',
          params: { field: 'nature' },
          at: ['nature'],
          received: 'none',
          clause: `${tables} table A1-4.1`,
        },
      ],
    ],
    'with symbols that have no names': [
      'individual-routine-request',
      { category: 107, telecommand1: 102, telecommand2: 114 },
      [
        ['category', 107],
        ['telecommand1', 102],
        ['telecommand2', 114],
      ].map(([field, symbol]) => ({
        code: 'call-symbol-unknown',
        params: { field: field as string, symbol: symbol as number },
        at: [field as string],
        received: String(symbol),
        clause: `${tables} table of symbols`,
      })),
    ],
    'in distress with symbols that have no names': [
      'distress-alert-full',
      { nature: 111, subsequent: 102 },
      [
        ['nature', 111],
        ['subsequent', 102],
      ].map(([field, symbol]) => ({
        code: 'call-symbol-unknown',
        params: { field: field as string, symbol: symbol as number },
        at: [field as string],
        received: String(symbol),
        clause: `${tables} table of symbols`,
      })),
    ],
    'of the automatic connection system': [
      'individual-routine-request',
      { category: 106 },
      [
        {
          code: 'call-category-acs',
          params: {},
          at: ['category'],
          received: '106',
          clause: `${tables} §6`,
        },
      ],
    ],
    'of a category that calls to all ships do not have': [
      'all-ships-urgency',
      { category: 100 },
      [
        {
          code: 'call-category-unusual',
          params: { usual: ['urgency', 'safety'], category: 'routine' },
          at: ['category'],
          expected: 'urgency or safety',
          received: 'routine',
          clause: `${tables} table A1-4.5`,
        },
      ],
    ],
    'that cannot comply, and names the channel all the same': [
      'individual-unable-busy',
      { receive: [90, 0, 72] },
      [
        {
          code: 'call-channel-echoed',
          params: {},
          at: ['receive'],
          received: '90 00 72',
          clause: `${tables} tables A1-4.7 and A1-4.9`,
        },
      ],
    ],
    'with the end of a request where it is for many': [
      'group-routine',
      { end: 117 },
      [
        {
          code: 'call-end-unusual',
          params: { usual: 127, symbol: 117 },
          at: ['end'],
          expected: '127',
          received: '117',
          clause: `${tables} table A1-4.8`,
        },
      ],
    ],
    'that gives a position without its header': [
      'position-reply',
      { header: false },
      [
        {
          code: 'call-header-missing',
          params: {},
          at: ['header'],
          received: 'none',
          clause: `${tables} table A1-4.7`,
        },
      ],
    ],
    'with a header where no position follows': [
      'test-call',
      { header: true },
      [
        {
          code: 'call-field-unexpected',
          params: { field: 'header' },
          at: ['header'],
          received: '55',
          clause: `${tables} table A1-4.7`,
        },
      ],
    ],
    'with symbols behind the message': [
      'test-call',
      { rest: [12, 3] },
      [
        {
          code: 'call-rest',
          params: {},
          at: ['rest'],
          received: '12 03',
          clause: `${tables} table A1-4.7`,
        },
      ],
    ],
    'with a data set that is not understood': [
      'position-request',
      { expansion: [{ specifier: 105, symbols: [1, 2, 3] }] },
      [
        {
          code: 'call-expansion-unread',
          params: {},
          at: ['expansion'],
          received: '105',
          clause: 'ITU-R M.821-1, unverified',
        },
      ],
    ],
    'from a station with a tenth digit': [
      'individual-routine-request',
      { self: [25, 20, 0, 10, 15] },
      [
        {
          code: 'call-tenth-digit',
          params: { field: 'self', digit: 5 },
          at: ['self'],
          received: '25 20 00 10 15',
          clause: 'ITU-R M.1080, unverified',
        },
      ],
    ],
    'with an identity that is none': [
      'individual-routine-request',
      { self: [25, 20, 0, 10, 126] },
      [
        {
          code: 'call-field-unread',
          params: { field: 'self' },
          at: ['self'],
          received: '25 20 00 10 126',
          clause: `${tables} tables A1-4.7 and A1-4.9`,
        },
      ],
    ],
    'with a time that is none': [
      'position-reply',
      { time: [24, 0] },
      [
        {
          code: 'call-field-unread',
          params: { field: 'time' },
          at: ['time'],
          received: '24 00',
          clause: `${tables} table A1-4.7`,
        },
      ],
    ],
    'with a position in a call that has none': [
      'individual-routine-request',
      { position: [15, 62, 0, 6, 30] },
      [
        {
          code: 'call-field-unexpected',
          params: { field: 'position' },
          at: ['position'],
          received: '15 62 00 06 30',
          clause: `${tables} tables A1-4.7 and A1-4.9`,
        },
      ],
    ],
  };

  it.each(Object.entries(cases))('%s', (_, [from, change, notices]) => {
    expect(withoutWords(said(from, change))).toEqual(notices);
  });
});

describe('nothing is said of', () => {
  it.each([
    [
      'an address, a sender or channels that a sentence left out',
      'individual-routine-request',
      { address: null, self: null, receive: null, transmit: null },
    ],
    [
      'a telecommand or a type of communication of "no information"',
      'group-routine',
      { telecommand1: 126, telecommand2: 126 },
    ],
    ['category 112 beside a distress alert', 'distress-alert-full', { category: 112 }],
    [
      'a second channel element that says nothing',
      'individual-routine-request',
      { transmit: [126, 126, 126] },
    ],
    ['a second channel element that repeats the first', 'all-ships-urgency', { transmit: [90, 0, 16] }],
  ] as const)('%s', (_, from, change) => {
    expect(said(from, change)).toEqual([]);
  });
});

describe('each place of a finding', () => {
  const found = (from: string, change: Partial<CallFields>) =>
    said(from, change).map(({ code, at, params }) => [code, at.join(), params]);

  it('a symbol for "no information" where a category or a nature is wanted', () => {
    expect(found('test-call', { category: 126 })).toEqual([
      ['call-symbol-unknown', 'category', { field: 'category', symbol: 126 }],
    ]);
    expect(found('distress-alert-full', { nature: 126 })).toEqual([
      ['call-symbol-unknown', 'nature', { field: 'nature', symbol: 126 }],
    ]);
  });

  it('symbols after the message, the first thirty of them', () => {
    const [notice] = said('test-call', { rest: Array.from({ length: 40 }, (_, index) => index) });
    expect(notice?.received).toBe(
      '00 01 02 03 04 05 06 07 08 09 10 11 12 13 14 15 16 17 18 19 20 21 22 23 24 25 26 27 28 29',
    );
  });

  it('a tenth digit in any of the three identities, and no other difference in them', () => {
    expect(found('individual-routine-request', { address: [20, 80, 0, 20, 21] })).toEqual([
      ['call-tenth-digit', 'address', { field: 'address', digit: 1 }],
    ]);
    expect(found('distress-acknowledgement', { distressed: [25, 20, 0, 10, 11] })).toEqual([
      ['call-tenth-digit', 'distressed', { field: 'distressed', digit: 1 }],
    ]);
    for (const self of [
      [25, 20, 0, 10],
      [25, 20, 0, 10, 10, 0],
    ])
      expect(found('individual-routine-request', { self })).toEqual([
        ['call-field-unread', 'self', { field: 'self' }],
      ]);
    // 126 five times is a ship that is not known; what only resembles it is no identity with another tenth digit.
    for (const distressed of [
      [126, 126, 126, 126, 120],
      [126, 126, 126, 126, 126, 126],
      [126, 126, 126, 126],
    ])
      expect(found('distress-acknowledgement', { distressed })).toEqual([
        ['call-field-unread', 'distressed', { field: 'distressed' }],
      ]);
  });

  it('an address in a relay to all ships, which has none', () => {
    const relay = { telecommand1: 112, address: [20, 80, 0, 20, 20] };
    expect(found('distress-acknowledgement', relay)).toEqual([
      ['call-field-unexpected', 'address', { field: 'address' }],
    ]);
  });

  it('a second channel element that is none, or that does not belong', () => {
    expect(found('individual-routine-request', { transmit: [90, 0] })).toEqual([
      ['call-field-unread', 'transmit', { field: 'transmit' }],
    ]);
    expect(found('position-reply', { transmit: [126, 126, 126] })).toEqual([
      ['call-field-unexpected', 'transmit', { field: 'transmit' }],
    ]);
  });

  it('an end of sequence that was not read', () => {
    expect(found('test-call', { end: null })).toEqual([
      ['call-end-unusual', 'end', { usual: 117, symbol: undefined }],
    ]);
  });
});
