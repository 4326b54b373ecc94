import { describe, expect, it } from 'vitest';
import { emptyFields } from '../../src/call/fields.ts';
import {
  type Call,
  type CallFields,
  composeDistressAlert,
  composeDistressRelay,
  composeIndividualCall,
  composePositionRequest,
  decodeFields,
  encodeFields,
} from '../../src/call/index.ts';
import { same } from '../../src/call/same.ts';

// All stations are the invented ones of the demo.
const bounty = [23, 29, 99, 21, 80];
const coast = [0, 23, 29, 99, 0];
const unknown = [126, 126, 126, 126, 126];
const kind = (fields: Partial<CallFields>) => decodeFields({ ...emptyFields, ...fields }).call.kind;

// ITU-R M.493-16 Annex 1 tables A1-4.2 to A1-4.4, from memory; a symbol lost or wrong on the air must not hide a distress.
describe('a distress call to many or one', () => {
  it.each([102, 114, 116, 120])(
    'under format specifier %i is a relay by its telecommand, with any sign of distress',
    (format) => {
      const relay = { format, self: coast, telecommand1: 112, end: 127 };
      for (const sign of [
        { category: 112 },
        { distressed: bounty },
        { nature: 101 },
        { distressed: unknown },
      ]) {
        expect(kind({ ...relay, ...sign })).toBe('distress-relay');
        expect(kind({ ...relay, ...sign, end: 122 })).toBe('distress-relay-acknowledgement');
      }
    },
  );

  it('is an acknowledgement under format specifier 116 only', () => {
    const heard = { self: coast, category: 112, telecommand1: 110, distressed: bounty, end: 127 };
    expect(kind({ ...heard, format: 116 })).toBe('distress-acknowledgement');
    expect(kind({ ...heard, format: 116, category: null, nature: 101 })).toBe('distress-acknowledgement');
    for (const format of [102, 114, 120]) expect(kind({ ...heard, format })).toBe('unrecognised-call');
  });

  it('is taken back by the ship it is about, and by no unknown one', () => {
    const heard = { format: 116, category: 112, telecommand1: 110, end: 127 };
    expect(kind({ ...heard, self: bounty, distressed: bounty })).toBe('distress-self-cancel');
    expect(kind({ ...heard, self: null, distressed: unknown })).toBe('distress-acknowledgement');
    expect(kind({ ...heard, self: null, distressed: null })).toBe('distress-acknowledgement');
  });

  it('with a ship or a nature and another telecommand is not understood, and no other call either', () => {
    for (const sign of [{ distressed: bounty }, { nature: 101 }])
      for (const format of [102, 114, 116, 120])
        expect(kind({ format, telecommand1: 100, ...sign })).toBe('unrecognised-call');
  });

  it('a category alone, or a telecommand alone, makes none', () => {
    expect(kind({ format: 116, category: 112, telecommand1: 100 })).toBe('all-ships-call');
    for (const telecommand1 of [110, 112])
      expect(kind({ format: 120, category: 100, telecommand1 })).toBe('individual-call');
  });
});

// Older sets answer with the position and any end of sequence: common practice, no source.
describe('a call about a position', () => {
  it('is a reply when it gives one or ends as an answer, else a request', () => {
    const call = { format: 120, telecommand1: 121 };
    expect(kind({ ...call, end: 117 })).toBe('position-request');
    expect(kind({ ...call, end: 122 })).toBe('position-reply');
    expect(kind({ ...call, end: 117, position: [15, 62, 0, 6, 30] })).toBe('position-reply');
  });
});

describe('a call that is not understood', () => {
  const { call } = decodeFields({ ...emptyFields, format: 113, self: bounty, rest: [9] });

  it('goes out as it came, whatever is written into it', () => {
    expect(call).toEqual({
      kind: 'unrecognised-call',
      to: null,
      from: '232999218',
      asReceived: { ...emptyFields, format: 113, self: bounty, rest: [9] },
    });
    const changed = { ...call, from: '232999871' } as Call;
    expect(encodeFields(changed)).toEqual({ ...emptyFields, format: 113, self: bounty, rest: [9] });
  });

  it('says whom it was for, where the format specifier does', () => {
    expect(decodeFields({ ...emptyFields, format: 116, nature: 101 }).call.to).toEqual({
      kind: 'all-ships',
    });
    const address = [23, 29, 99, 14, 20];
    expect(decodeFields({ ...emptyFields, format: 120, address, nature: 101 }).call.to).toEqual({
      kind: 'station',
      mmsi: '232999142',
    });
  });
});

describe('what was received beside a call', () => {
  it('is sent again while the call still means the same, else the call is composed anew', () => {
    const request = composePositionRequest({ from: '232999871', to: '232999142' });
    const received = { ...encodeFields(request), category: 100, rest: [9] };
    const { call } = decodeFields(received);
    expect(encodeFields({ ...call })).toEqual(received);
    expect(encodeFields({ ...call, category: 'safety' } as Call)).toEqual(encodeFields(request));
  });

  it('is nothing when the tables compose the call so', () => {
    const hail = composeIndividualCall({ from: '232999871', to: '232999142' });
    expect(Object.keys(decodeFields(encodeFields(hail)).call)).not.toContain('asReceived');
    expect(Object.keys(hail)).not.toContain('expansion');
  });
});

describe('a relay and its address', () => {
  it('are read back together', () => {
    const about = composeDistressAlert({ from: '232999218' });
    for (const to of ['002329990', '023299905', undefined]) {
      const relay = composeDistressRelay({ from: '232999871', to, about });
      expect(decodeFields(encodeFields(relay)).call).toEqual(relay);
    }
  });
});

describe('two values are the same', () => {
  it.each([
    [1, 1],
    [Number.NaN, Number.NaN],
    [null, null],
    [
      [1, [2, null]],
      [1, [2, null]],
    ],
    [
      { a: 1, b: { c: [] } },
      { b: { c: [] }, a: 1 },
    ],
  ])('%j and %j', (one, other) => {
    expect(same(one, other)).toBe(true);
  });

  it.each([
    [1, 2],
    [1, '1'],
    [null, {}],
    [{}, null],
    [undefined, {}],
    [{}, undefined],
    [{}, 'text'],
    ['text', {}],
    [[], {}],
    [{}, []],
    [[1], [1, 2]],
    [[1, 2], [1]],
    [
      [1, 2],
      [1, 3],
    ],
    [{ a: 1 }, { a: 2 }],
    [{ a: 1 }, { a: 1, b: 2 }],
    [{ a: 1, b: 2 }, { a: 1 }],
    [{ a: undefined }, { b: undefined }],
    [{ toString: undefined }, { valueOf: undefined }],
  ])('not so %j and %j', (one, other) => {
    expect(same(one, other)).toBe(false);
  });
});
