import { describe, expect, it } from 'vitest';
import { digitsOf, emptyFields, symbolsOf } from '../../src/call/fields.ts';
import {
  type Call,
  type CallFields,
  checkCall,
  composeAutomaticServiceCall,
  composeDistressAlert,
  composeIndividualCall,
  composeUnableToComply,
  decodeFields,
  encodeFields,
} from '../../src/call/index.ts';
import { natures, symbolOfName } from '../../src/call/symbol.ts';

// All stations are the invented ones of the demo.
const from = '232999871';
const to = '232999142';
const coast = '002329990';
const hail = composeIndividualCall({ from, to, channel: '72' });
const alert = composeDistressAlert({ from });
const service = composeAutomaticServiceCall({ from, to: coast, telephone: '5550123', channel: '26' });
const read = (sent: Call, change: Partial<CallFields>) =>
  decodeFields({ ...encodeFields(sent), ...change }).call;

// ITU-R M.493-16 Annex 1, from memory.
describe('the channel elements of a call', () => {
  const elements = (receive: CallFields['receive'], transmit: CallFields['transmit']) => {
    const { channel, frequencies } = read(hail, { receive, transmit }) as typeof hail;
    return frequencies === undefined ? channel : { channel, ...frequencies };
  };
  const nothing = [126, 126, 126];

  it('name one VHF channel when the second repeats the first, says nothing or is not there', () => {
    for (const second of [[90, 0, 72], nothing, null]) expect(elements([90, 0, 72], second)).toBe('72');
    expect(elements([90, 0, 6], nothing)).toBe('06');
    expect(elements([90, 10, 22], nothing)).toBe('1022');
  });

  it('name none when they differ, or when the second is read in part: the digits are kept', () => {
    const kept = { channel: null, receive: '900072', transmit: null };
    expect(elements([90, 0, 72], [90, 0, 6])).toEqual({ ...kept, transmit: '900006' });
    expect(elements([90, 0, 72], [126, 126, null])).toEqual(kept);
  });

  it('carry frequencies of three or four symbols, in either place', () => {
    expect(elements([2, 18, 20], nothing)).toEqual({ channel: null, receive: '021820', transmit: null });
    expect(elements(nothing, [2, 18, 20])).toEqual({ channel: null, receive: null, transmit: '021820' });
    expect(elements([90, 0, 72, 0], nothing)).toEqual({ channel: null, receive: '90007200', transmit: null });
  });

  it('say nothing when they are longer, shorter, or no digits', () => {
    for (const symbols of [[90, 0], [90, 0, 72, 0, 0], [], [90, 0, null], [90, 0, 100], nothing, null])
      expect(elements(symbols, nothing), JSON.stringify(symbols)).toBeNull();
  });

  // deviation: D-channel-7
  it('of older sets lead with 91 or 92, and then with nothing but zeros', () => {
    expect(elements([91, 0, 22], nothing)).toBe('1022');
    expect(elements([92, 0, 22], nothing)).toBe('2022');
    for (const first of [
      [91, 10, 22],
      [93, 0, 22],
      [19, 10, 2],
    ])
      expect(elements(first, nothing)).toMatchObject({ channel: null });
  });

  it('are both sent in an answer that cannot comply but names a channel', () => {
    const echoed = { ...composeUnableToComply({ call: hail }), channel: '72' };
    expect(encodeFields(echoed)).toMatchObject({ receive: [90, 0, 72], transmit: [90, 0, 72] });
  });
});

describe('the place and time of a call', () => {
  const position = [15, 62, 0, 6, 30];

  it('a position of five symbols, and no other count', () => {
    expect(read(alert, { position })).toMatchObject({
      position: {
        latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
        longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
      },
    });
    for (const symbols of [position.slice(0, 4), [...position, 0], [], [15, 62, 0, 6, 126]])
      expect(read(alert, { position: symbols })).toMatchObject({ position: null });
  });

  // ITU-R M.821-1, from memory: eight digits, ten-thousandths of a minute.
  it('finer minutes go with it, unless they would lead past the pole', () => {
    const finer = { expansion: [{ specifier: 100, symbols: [41, 25, 90, 70] }] };
    expect(read(alert, { position, ...finer })).toMatchObject({
      position: { fraction: { latitude: 4125, longitude: 9070 } },
    });
    const pole = read(alert, { position: [19, 0, 0, 6, 30], ...finer });
    expect(pole).toMatchObject({ position: { latitude: { degrees: 90 } } });
    expect(pole).not.toHaveProperty('position.fraction');
    const other = read(alert, { position, expansion: [{ specifier: 107, symbols: [41, 25, 90, 70] }] });
    expect(other).toMatchObject({ position: { latitude: { minutes: 20 } } });
    expect(other).not.toHaveProperty('position.fraction');
  });

  it('a time of two symbols within the day, and no other count', () => {
    expect(read(alert, { time: [0, 0] })).toMatchObject({ time: { hour: 0, minute: 0 } });
    expect(read(alert, { time: [23, 59] })).toMatchObject({ time: { hour: 23, minute: 59 } });
    for (const time of [
      [24, 0],
      [23, 60],
      [88, 88],
      [9],
      [9, 15, 0],
      [null, 15],
      [9, null],
      [-1, 15],
      [9, -1],
      [9.5, 15],
      [9, 1.5],
    ])
      expect(read(alert, { time }), JSON.stringify(time)).toMatchObject({ time: null });
  });

  it('an area of five symbols, and no other count', () => {
    const area = (address: CallFields['address']) =>
      decodeFields({ ...emptyFields, format: 102, address }).call.to;
    expect(area([15, 70, 7, 2, 3])).toMatchObject({ kind: 'area', area: { southward: 2, eastward: 3 } });
    for (const address of [
      [15, 70, 7, 2],
      [15, 70, 7, 2, 3, 0],
      [15, 70, 7, 2, null],
      [19, 90, 7, 2, 3],
      null,
    ])
      expect(area(address)).toEqual({ kind: 'area', area: null });
  });
});

// ITU-R M.821-1, sets 100 to 106, from memory.
describe('the sets of an expansion', () => {
  const said = (...expansion: CallFields['expansion']) => read(hail, { expansion }).expansion;

  it.each([
    [{ specifier: 101, symbols: [2, 0, 0] }, { source: '020000' }],
    [{ specifier: 102, symbols: [0, 62] }, { speed: 6.2 }],
    [{ specifier: 103, symbols: [35, 99] }, { course: 359.9 }],
    [{ specifier: 104, symbols: [], text: '' }, { stationName: '' }],
    [{ specifier: 106, symbols: [1, 20] }, { personsOnBoard: 120 }],
    [{ specifier: 105, symbols: [110] }, { requested: [105] }],
    // ITU-R M.821-1 §2.1.2.6, as publicly restated: four digits each of latitude, longitude and two sides in hundredths
    // of a minute, then speed and course in tenths.
    [
      { specifier: 105, symbols: [12, 34, 59, 99, 0, 0, 30, 50, 1, 25, 18, 40] },
      {
        area: { latitude: 12.34, longitude: 59.99, southward: 0, eastward: 30.5, speed: 12.5, course: 184 },
      },
    ],
    [{ specifier: 107, symbols: [126] }, { unavailable: [107] }],
  ])('%j', (set, data) => {
    expect(said(set)).toEqual(data);
  });

  it.each([
    { specifier: 100, symbols: [41, 25, 90, 70] },
    { specifier: 101, symbols: [2, 0] },
    { specifier: 101, symbols: [2, 0, 0, 0] },
    { specifier: 102, symbols: [62] },
    { specifier: 102, symbols: [0, 62, 0] },
    { specifier: 103, symbols: [36, 0] },
    { specifier: 103, symbols: [3, 0, 0] },
    { specifier: 104, symbols: [10], text: 'MERROW' },
    { specifier: 104, symbols: [] },
    { specifier: 105, symbols: [], text: 'MERROW' },
    { specifier: 105, symbols: [0, 62] },
    { specifier: 105, symbols: [60, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0] },
    { specifier: 105, symbols: [0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 36, 0] },
    { specifier: 105, symbols: [2, 0, 0] },
    { specifier: 106, symbols: [3] },
    { specifier: 107, symbols: [12, 34, 59, 99, 0, 0, 30, 50, 1, 25, 18, 40] },
    { specifier: 102, symbols: [110, 110] },
    { specifier: 102, symbols: [126, 0] },
    ...[101, 102, 105, 106].map((specifier) => ({ specifier, symbols: [0, null] })),
  ])('%j says nothing', (set) => {
    const { asReceived, ...call } = read(hail, { expansion: [set] });
    expect(call).toEqual(hail);
    expect(asReceived?.expansion).toEqual([set]);
  });

  it('of two alike the first counts', () => {
    for (const [specifier, symbols, data] of [
      [101, [2, 0, 0], { source: '020000' }],
      [102, [0, 62], { speed: 6.2 }],
      [103, [27, 5], { course: 270.5 }],
      [106, [0, 3], { personsOnBoard: 3 }],
    ] as const) {
      const other = symbols.map((symbol) => symbol + 1);
      expect(said({ specifier, symbols }, { specifier, symbols: other })).toEqual(data);
    }
    expect(
      said({ specifier: 104, symbols: [], text: 'A' }, { specifier: 104, symbols: [], text: 'B' }),
    ).toEqual({
      stationName: 'A',
    });
  });

  it('go out in the order of their specifiers', () => {
    const expansion = { requested: [102, 100], unavailable: [101], personsOnBoard: 3, stationName: 'MERROW' };
    expect(encodeFields({ ...hail, expansion }).expansion).toEqual([
      { specifier: 100, symbols: [110] },
      { specifier: 101, symbols: [126] },
      { specifier: 102, symbols: [110] },
      { specifier: 104, symbols: [], text: 'MERROW' },
      { specifier: 106, symbols: [0, 3] },
    ]);
  });
});

describe('the number of a telephone call', () => {
  const dialled = (telephone: CallFields['telephone']) =>
    (read(service, { telephone }) as typeof service).telephone;

  // deviation: D-call-6
  it('is read behind the symbol for an odd or even count, and behind no other', () => {
    expect(dialled([106, 12, 34])).toBe('1234');
    expect(dialled([105, 1, 23])).toBe('123');
    for (const telephone of [
      [107, 12, 34],
      [106],
      [105],
      [],
      [106, 12, null],
      [105, 1, null],
      [106, 12, 100],
      null,
    ])
      expect(dialled(telephone), JSON.stringify(telephone)).toBeNull();
  });

  it.each([
    ['request', 117],
    ['answer', 122],
    ['end', 127],
  ] as const)('the call is read as sent: %s', (end, symbol) => {
    const call = { ...service, end };
    const fields = encodeFields(call);
    expect(fields.end).toBe(symbol);
    expect(fields.transmit).toBeNull();
    expect(decodeFields(fields)).toEqual({ call, notices: [] });
  });

  it('the call is read as a request when its end was not read, or is of no table', () => {
    for (const end of [null, 100]) expect(read(service, { end })).toMatchObject({ end: 'request' });
  });
});

describe('what was received of a call of no kind', () => {
  it('keeps the data of its expansion, where it has any', () => {
    const heard = { ...emptyFields, format: 113, self: [23, 29, 99, 87, 10] };
    expect(decodeFields(heard).call).toEqual({
      kind: 'unrecognised-call',
      to: null,
      from,
      asReceived: heard,
    });
    const expansion = [{ specifier: 106, symbols: [0, 3] }];
    expect(decodeFields({ ...heard, expansion }).call).toEqual({
      kind: 'unrecognised-call',
      to: null,
      from,
      expansion: { personsOnBoard: 3 },
      asReceived: { ...heard, expansion },
    });
  });
});

describe('identities', () => {
  it('of five symbols are read, whatever the tenth digit, and no others', () => {
    const sender = (self: CallFields['self']) => read(hail, { self }).from;
    expect(sender([23, 29, 99, 87, 10])).toBe(from);
    expect(sender([23, 29, 99, 87, 19])).toBe(from);
    for (const self of [
      [23, 29, 99, 87],
      [23, 29, 99, 87, 10, 0],
      [23, 29, 99, 87, null],
      [23, 29, 99, 87, 126],
      null,
    ])
      expect(sender(self)).toBeNull();
  });

  it('are nine digits and nothing around them', () => {
    for (const written of ['232 999 871', ' 232999871', '232999871 ', '2329998710'])
      expect(checkCall({ ...hail, from: written }).map((notice) => notice.code)).toEqual([
        'call-value',
        'call-identity-form',
      ]);
  });
});

describe('symbols', () => {
  it('carry digits from 00 to 99', () => {
    expect(digitsOf([0, 5, 99])).toBe('000599');
    expect(digitsOf([])).toBe('');
    for (const symbols of [[100], [-1], [1.5], [null], null]) expect(digitsOf(symbols)).toBeNull();
    expect(symbolsOf('000599')).toEqual([0, 5, 99]);
    // The characters on either side of 0 and 9.
    for (const digits of ['/0', '0/', ':0', '0:']) expect(() => symbolsOf(digits)).toThrow(RangeError);
  });

  it('that are text, or none at all, carry none', () => {
    const self = ['23', '29', '99', '87', '10'] as unknown as number[];
    expect(read(hail, { self }).from).toBeNull();
    expect(read(hail, { self: Array(5) }).from).toBeNull();
  });

  it('have names from 0 to 127', () => {
    const nature = (symbol: number) => (read(alert, { nature: symbol }) as typeof alert).nature;
    expect([nature(0), nature(127), nature(101)]).toEqual(['symbol-0', 'symbol-127', 'flooding']);
    expect([nature(-1), nature(128), nature(1.5)]).toEqual([null, null, null]);
  });

  it.each(['xsymbol-5', 'symbol-5x', 'symbol-1234', 'symbol-0005'])('are not named %s', (name) => {
    expect(() => symbolOfName(natures, name as 'symbol-5')).toThrow(RangeError);
  });
});
