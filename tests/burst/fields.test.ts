import { describe, expect, it } from 'vitest';
import { decodeCharacters, encodeCharacters } from '../../src/burst/information.ts';
import { emptyFields } from '../../src/call/fields.ts';
import type { CallFields, Symbols } from '../../src/call/index.ts';

// Invented identities and place; compositions: ITU-R M.493, orders as in worked-sequences.json.
const own = [23, 29, 99, 87, 10];
const friend = [23, 29, 99, 14, 20];
const lost = [23, 29, 99, 21, 80];
const place = [5, 62, 0, 6, 30];
const time = [9, 15];
const channel = [90, 0, 72];
const none = [126, 126, 126];
const toShip = { format: 120, address: friend, category: 108, self: own };

type Row = readonly [name: string, characters: Symbols, fields: Partial<CallFields>];

const rows: Row[] = [
  ['nothing', [], {}],
  ['a format specifier alone', [112], { format: 112 }],
  ['a format specifier and an end', [112, 127], { format: 112, end: 127 }],
  ['an unknown format specifier', [99, 1, 2, 127], { format: 99, rest: [1, 2], end: 127 }],
  [
    'an unknown format specifier with much behind it',
    [99, ...friend, 108, ...own, 100, 126, ...channel, 127],
    { format: 99, rest: [...friend, 108, ...own, 100, 126, ...channel], end: 127 },
  ],
  ['no format specifier', [null, 1, 2, 127], { format: null, rest: [1, 2], end: 127 }],
  ['an alert cut off behind its sender', [112, ...lost, 127], { format: 112, self: lost, end: 127 }],
  ['an alert cut off in its sender', [112, 23, 29, 127], { format: 112, rest: [23, 29], end: 127 }],
  [
    'an alert with more behind it',
    [112, ...lost, 105, ...place, ...time, 100, 7, 127],
    { format: 112, self: lost, nature: 105, position: place, time, subsequent: 100, rest: [7], end: 127 },
  ],
  [
    'an alert of unread nature',
    [112, ...lost, null, ...place, ...time, 100, 127],
    { format: 112, self: lost, nature: null, position: place, time, subsequent: 100, end: 127 },
  ],
  [
    'an alert whose last symbol is unread',
    [112, ...lost, 105, ...place, ...time, null, 127],
    { format: 112, self: lost, nature: 105, position: place, time, end: 127 },
  ],
  [
    'an all-ships call without a body',
    [116, 108, ...own, 100, 127],
    { format: 116, category: 108, self: own, telecommand1: 100, end: 127 },
  ],
  [
    'an all-ships call',
    [116, 108, ...own, 100, 126, ...channel, ...none, 127],
    {
      format: 116,
      category: 108,
      self: own,
      telecommand1: 100,
      telecommand2: 126,
      receive: channel,
      transmit: none,
      end: 127,
    },
  ],
  ...[102, 114, 120, 123].map(
    (format): Row => [
      `format specifier ${format}, with an address`,
      [format, ...friend, 108, ...own, 100, 126, ...channel, ...none, 117],
      {
        ...toShip,
        format,
        telecommand1: 100,
        telecommand2: 126,
        receive: channel,
        transmit: none,
        end: 117,
      },
    ],
  ),
  [
    'an acknowledgement of an alert',
    [116, 112, ...own, 110, ...lost, 105, ...place, ...time, 100, 127],
    {
      format: 116,
      category: 112,
      self: own,
      telecommand1: 110,
      distressed: lost,
      nature: 105,
      position: place,
      time,
      subsequent: 100,
      end: 127,
    },
  ],
  [
    'a relay whose first telecommand is unread',
    [116, 112, ...own, null, ...lost, 105, ...place, ...time, 100, 127],
    {
      format: 116,
      category: 112,
      self: own,
      distressed: lost,
      nature: 105,
      position: place,
      time,
      subsequent: 100,
      end: 127,
    },
  ],
  [
    'a relay whose category is unread, told by its length',
    [116, null, ...own, 112, ...lost, 105, ...place, ...time, 100, 127],
    {
      format: 116,
      self: own,
      telecommand1: 112,
      distressed: lost,
      nature: 105,
      position: place,
      time,
      subsequent: 100,
      end: 127,
    },
  ],
  [
    'a relay of distress category cut off',
    [116, 112, ...own, 112, ...lost, 105, 127],
    { format: 116, category: 112, self: own, telecommand1: 112, distressed: lost, nature: 105, end: 127 },
  ],
  [
    'telecommand 112 of another category and length',
    [116, 108, ...own, 112, 126, ...channel, ...none, 127],
    {
      format: 116,
      category: 108,
      self: own,
      telecommand1: 112,
      telecommand2: 126,
      receive: channel,
      transmit: none,
      end: 127,
    },
  ],
  [
    'an unread first telecommand of another category',
    [120, ...friend, 108, ...own, null, 126, ...channel, ...none, 117],
    { ...toShip, telecommand2: 126, receive: channel, transmit: none, end: 117 },
  ],
  [
    'telecommand 100 of distress category',
    [120, ...friend, 112, ...own, 100, 126, ...channel, ...none, 117],
    {
      ...toShip,
      category: 112,
      telecommand1: 100,
      telecommand2: 126,
      receive: channel,
      transmit: none,
      end: 117,
    },
  ],
  [
    'unread category and second telecommand',
    [120, ...friend, null, ...own, 100, null, ...channel, ...none, 117],
    { ...toShip, category: null, telecommand1: 100, receive: channel, transmit: none, end: 117 },
  ],
  [
    'a position reply of six symbols, which is no position',
    [120, ...friend, 108, ...own, 121, 126, ...place, 1, 122],
    {
      ...toShip,
      telecommand1: 121,
      telecommand2: 126,
      receive: place.slice(0, 3),
      transmit: [...place.slice(3), 1],
      end: 122,
    },
  ],
  [
    'five symbols that are no position, none being asked for',
    [120, ...friend, 108, ...own, 109, 126, ...place, 117],
    {
      ...toShip,
      telecommand1: 109,
      telecommand2: 126,
      receive: place.slice(0, 3),
      rest: place.slice(3),
      end: 117,
    },
  ],
  [
    'header 55 with too little behind it',
    [120, ...friend, 108, ...own, 109, 126, 55, 1, 2, 117],
    { ...toShip, telecommand1: 109, telecommand2: 126, receive: [55, 1, 2], end: 117 },
  ],
  [
    'no element at all',
    [120, ...friend, 108, ...own, 118, 126, 117],
    { ...toShip, telecommand1: 118, telecommand2: 126, end: 117 },
  ],
  ...[39, 50].map(
    (first): Row => [
      `an element of six digits that begins with ${first}`,
      [120, ...friend, 108, ...own, 109, 126, first, 1, 2, first, 3, 4, 117],
      {
        ...toShip,
        telecommand1: 109,
        telecommand2: 126,
        receive: [first, 1, 2],
        transmit: [first, 3, 4],
        end: 117,
      },
    ],
  ),
  ...[40, 49].map(
    (first): Row => [
      `an element of eight digits that begins with ${first}`,
      [120, ...friend, 108, ...own, 109, 126, first, 1, 2, 3, first, 3, 4, 5, 117],
      {
        ...toShip,
        telecommand1: 109,
        telecommand2: 126,
        receive: [first, 1, 2, 3],
        transmit: [first, 3, 4, 5],
        end: 117,
      },
    ],
  ),
  ...[105, 106].map(
    (mark): Row => [
      `a telephone number of mark ${mark} with eight symbols`,
      [123, ...friend, 100, ...own, 109, 126, ...channel, mark, 1, 2, 3, 4, 5, 6, 7, 8, 117],
      {
        ...toShip,
        format: 123,
        category: 100,
        telecommand1: 109,
        telecommand2: 126,
        receive: channel,
        telephone: [mark, 1, 2, 3, 4, 5, 6, 7, 8],
        end: 117,
      },
    ],
  ),
  [
    'more than a telephone number may have',
    [123, ...friend, 100, ...own, 109, 126, ...channel, 105, 1, 2, 3, 4, 5, 6, 7, 8, 9, 117],
    {
      ...toShip,
      format: 123,
      category: 100,
      telecommand1: 109,
      telecommand2: 126,
      receive: channel,
      transmit: [105, 1, 2],
      rest: [3, 4, 5, 6, 7, 8, 9],
      end: 117,
    },
  ],
  [
    'the mark of a telephone number outside the automatic service',
    [120, ...friend, 108, ...own, 109, 126, ...channel, 105, 1, 2, 117],
    {
      ...toShip,
      telecommand1: 109,
      telecommand2: 126,
      receive: channel,
      transmit: [105, 1, 2],
      end: 117,
    },
  ],
];

describe('the fields of a call', () => {
  it.each(rows)('of %s', (_, characters, fields) => {
    expect(decodeCharacters(characters)).toEqual({ ...emptyFields, ...fields });
  });

  it.each(rows.filter(([, characters]) => !characters.includes(null)))('go back to %s', (_, characters) => {
    expect(encodeCharacters(decodeCharacters(characters))).toEqual(characters);
  });

  it.each<Row>([
    ['the head of a call with an address', [120, ...friend, null, 117], { format: 120, address: friend }],
    ['its first telecommand', [120, ...friend, 108, ...own, null, 117], toShip],
    [
      'its second telecommand',
      [120, ...friend, 108, ...own, 100, null, 117],
      { ...toShip, telecommand1: 100 },
    ],
  ])('keep an unread symbol that nothing follows in the rest: %s', (_, characters, fields) => {
    expect(decodeCharacters(characters)).toEqual({ ...emptyFields, ...fields, rest: [null], end: 117 });
    expect(encodeCharacters(decodeCharacters(characters))).toEqual(characters);
  });

  it('keep several unread symbols in a row that nothing follows in the rest', () => {
    const characters = [120, ...friend, 108, ...own, null, null, 117];
    const fields = decodeCharacters(characters);
    expect(fields).toEqual({ ...emptyFields, ...toShip, rest: [null, null], end: 117 });
    expect(encodeCharacters(fields)).toEqual(characters);
  });

  it.each<[string, Partial<CallFields>, Symbols]>([
    [
      'category and telecommands',
      { address: friend, self: own, receive: channel },
      [...friend, null, ...own, null, null, ...channel],
    ],
    [
      'the telecommands alone',
      { address: friend, category: 108, self: own, transmit: none },
      [...friend, 108, ...own, null, null, ...none],
    ],
    [
      'no second telecommand of a relay',
      { address: friend, category: 112, self: own, distressed: lost, position: place },
      [...friend, 112, ...own, null, ...lost, null, ...place],
    ],
    ['nothing behind the last', { address: friend }, friend],
  ])('show as unread what must have been sent: %s', (_, fields, message) => {
    expect(encodeCharacters({ ...emptyFields, format: 120, ...fields, end: 117 })).toEqual([
      120,
      ...message,
      117,
    ]);
  });

  it('show only the nature as unread in an alert, which has no category and no telecommand', () => {
    const fields = { ...emptyFields, format: 112, self: lost, position: place, time, end: 127 };
    expect(encodeCharacters(fields)).toEqual([112, ...lost, null, ...place, ...time, 127]);
  });

  it('keep an end of sequence or a message without the other', () => {
    expect(encodeCharacters({ ...emptyFields, format: 112, self: lost })).toEqual([112, ...lost, null]);
    expect(encodeCharacters({ ...emptyFields, end: 127 })).toEqual([null, 127]);
  });
});
