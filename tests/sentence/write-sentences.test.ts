import { describe, expect, it } from 'vitest';
import {
  type Call,
  type CallFields,
  composeDistressAlert,
  composeDistressSelfCancel,
  composeTestCall,
  decodeFields,
  encodeFields,
} from '../../src/call/index.ts';
import { writeSentences } from '../../src/sentence/index.ts';

// What a DSC sentence has a place for: IEC 61162-1, DSC sentence, as restated in equipment papers; a field holds digits,
// so that symbols above 99 have none in it.
const strange = (change: Partial<CallFields>): Call => {
  const fields = encodeFields(composeTestCall({ from: '232999871', to: '002329990' }));
  return decodeFields({ ...fields, ...change }).call;
};
const CLAUSE = 'IEC 61162-1, DSC sentence';
const lost = (content: string, received: string): object => ({
  code: 'sentence-content-lost',
  params: { content, count: received.split(' ').length },
  at: ['DSC'],
  received,
  clause: CLAUSE,
});
const received = (change: Partial<CallFields>): unknown =>
  writeSentences(strange(change), { direction: 'received' }).notices;
const fieldsOf = (change: Partial<CallFields>): string[] =>
  writeSentences(strange(change), { direction: 'received' }).sentences[0]?.slice(1, -3).split(',') ?? [];

describe('the station in field 2', () => {
  const odd = { symbols: [23, 29, 99, 14, 105], text: '23 29 99 14 105' };

  it('of a received call is the caller, whose loss is told; the called station has no place', () => {
    expect(received({ self: odd.symbols })).toMatchObject([lost('self', odd.text)]);
    expect(received({ address: odd.symbols })).toEqual([]);
  });

  it('of a commanded call is the called station, without which it is refused; the caller has no place', () => {
    expect(() => writeSentences(strange({ address: odd.symbols }), { direction: 'commanded' })).toThrow(
      new RangeError('writeSentences: Address: a DSC sentence cannot carry symbols 23 29 99 14 105'),
    );
    expect(writeSentences(strange({ self: odd.symbols }), { direction: 'commanded' }).notices).toEqual([]);
  });

  it('of an area call is the area, both ways', () => {
    const call = strange({ format: 102, address: [15, 11, 8, 4, 5], telecommand1: 100 });
    for (const direction of ['received', 'commanded'] as const) {
      const { sentences, notices } = writeSentences(call, { direction });
      expect(sentences[0]?.split(',').slice(1, 3)).toEqual(['02', '1511080405']);
      expect(notices).toEqual([]);
    }
  });

  it('of a received area call is told to be lost when it is no area', () => {
    expect(received({ format: 102, address: odd.symbols, telecommand1: 100 })).toMatchObject([
      lost('address', odd.text),
    ]);
  });

  it('of a commanded self-cancellation is empty, and yet her own distress is read', () => {
    const about = composeDistressAlert({ from: '232999218', nature: 'sinking' });
    const cancel = composeDistressSelfCancel({ about, from: '232999218' });
    const options = { direction: 'commanded', allowDistress: true } as const;
    expect(writeSentences(cancel, options).sentences[0]?.split(',').slice(1, 9)).toEqual([
      '16',
      '',
      '12',
      '10',
      '00',
      '9999999999',
      '8888',
      '2329992180',
    ]);
    expect(writeSentences(cancel, options).notices).toEqual([]);
  });
});

// ITU-R M.493, from memory: a VHF channel begins with symbol 90 and applies to both directions.
describe('the frequencies in field 6', () => {
  const all = { format: 116, address: null, telecommand1: 100 };
  const channel = [90, 0, 72];

  it('are one channel when both elements name it', () => {
    expect(fieldsOf({ ...all, receive: channel, transmit: channel })[6]).toBe('900072');
    expect(received({ ...all, receive: channel, transmit: channel })).toEqual([]);
    expect(received({ ...all, telecommand1: 10, receive: channel, transmit: channel })).toMatchObject([
      lost('telecommand1', '10'),
    ]);
  });

  it.each([
    ['a second channel that has no digits', channel, [90, 0, 126], [lost('transmit', '90 00 126')]],
    ['a second frequency alone', null, [5, 7, 126], [lost('transmit', '05 07 126')]],
    [
      'two frequencies without digits',
      [5, 7, 126],
      [5, 7, 126],
      [lost('receive', '05 07 126'), lost('transmit', '05 07 126')],
    ],
    ['the symbols for none', [126, 126, 126], [126, 126, 126], []],
  ])('of %s have what is lost told', (_, receive, transmit, notices) => {
    expect(received({ ...all, receive, transmit })).toMatchObject(notices);
    expect(received({ ...all, receive, transmit })).toHaveLength(notices.length);
  });
});

describe('the ship in distress in field 8', () => {
  it('may be named without a nature', () => {
    const distressed = [23, 29, 99, 21, 80];
    const change = { format: 116, address: null, category: 112, telecommand1: 110, telecommand2: null };
    const all = { ...change, distressed, subsequent: 126, nature: null };
    expect(fieldsOf(all).slice(1, 10)).toEqual([
      '16',
      '2329998710',
      '12',
      '10',
      '26',
      '',
      '',
      '2329992180',
      '',
    ]);
  });

  it('of which a symbol was not read is left out, and that symbol is told as two dashes', () => {
    const change = { category: 112, telecommand1: 110, distressed: [23, 29, null, 21, 80] };
    expect(fieldsOf(change)[8]).toBe('');
    expect(received(change)).toMatchObject([lost('distressed', '23 29 –– 21 80')]);
  });
});

describe('the number in field 7', () => {
  // ITU-R M.493, from memory: symbol 105 before an odd count of digits, 106 before an even one.
  it.each([
    [[106, 12, 34], '1234'],
    [[105, 1, 23], '123'],
    [[106, 12, 110], ''],
    [null, ''],
  ])('of the symbols %j is %j', (telephone, text) => {
    expect(fieldsOf({ format: 123, telecommand1: 100, telephone })[7]).toBe(text);
  });
});

describe('what is said of a loss', () => {
  it('of a data set: which, and of how many symbols', () => {
    const expansion = [{ specifier: 102, symbols: [126, 4] }];
    expect(received({ expansion })).toMatchObject([
      {
        code: 'sentence-expansion-lost',
        params: { specifier: 102, count: 2 },
        at: ['DSC'],
        received: '102',
        clause: CLAUSE,
      },
    ]);
    expect(fieldsOf({ expansion })[11]).toBe('');
  });

  it('of the kind of call: which it was, and what its sentence reads as', () => {
    expect(received({ nature: 0 })).toMatchObject([
      lost('nature', '00'),
      {
        code: 'sentence-kind-lost',
        params: { written: 'unrecognised-call' },
        at: ['DSC'],
        received: 'test-call',
        clause: CLAUSE,
      },
    ]);
  });

  it('of symbol 126 nothing: it says that there is no information', () => {
    const alert = { format: 112, address: null, telecommand1: null, telecommand2: null, nature: 101 };
    expect(received({ ...alert, category: 126 })).toEqual([]);
    expect(received({ ...alert, category: 108 })).toMatchObject([lost('category', '108')]);
  });
});

// 47 CFR 80.335 and Radio Regulations No. 32.10A on false alerts, from memory.
describe('a commanded call is one of distress by any of its fields', () => {
  it.each([
    ['the format of an alert', { format: 112, category: null, telecommand1: null, telecommand2: null }],
    ['a ship in distress', { distressed: [23, 29, 99, 21, 80] }],
    ['the distress category', { category: 112 }],
    ['a nature of distress', { nature: 105 }],
  ])('%s', (_, change) => {
    expect(() => writeSentences(strange(change), { direction: 'commanded' })).toThrow(/allowDistress: true/);
  });
});
