import { describe, expect, it } from 'vitest';
import type { CallFields } from '../../src/call/fields.ts';
import { callFromFields } from '../../src/call/from-fields.ts';
import { callToFields } from '../../src/call/to-fields.ts';
import { workedSequences } from './worked-sequences.ts';

const fieldsOf = (name: string): CallFields => {
  const row = workedSequences.find((sequence) => sequence.name === name);
  if (row === undefined) throw new Error(`no worked sequence '${name}'`);
  return row.fields;
};

/** Reads a worked call with some fields as an older set would send them, and holds it to the round trip. */
function read(name: string, changes: Partial<CallFields>) {
  const fields = { ...fieldsOf(name), ...changes };
  const { call, notices } = callFromFields(fields);
  expect(callToFields(call)).toEqual(fields);
  return { call, codes: notices.map((notice) => notice.code), notices };
}

// Habits of older sets: common practice, no source, except where a source is named.
describe('what older sets send is understood', () => {
  it("category 106, ship's business (Nippon Foundation training text of 2000 still lists it)", () => {
    const { call, codes } = read('individual-routine-request', { category: 106 });
    expect(call).toMatchObject({ kind: 'individual-call', category: 'ships-business', channel: '72' });
    expect(codes).toEqual(['call-category-withdrawn']);
  });

  it('position request and reply as routine calls', () => {
    expect(read('position-request', { category: 100 })).toMatchObject({
      call: { kind: 'position-request', category: 'routine' },
      codes: ['call-category-unusual'],
    });
    expect(read('position-reply', { category: 100 })).toMatchObject({
      call: { kind: 'position-reply', category: 'routine', time: { hour: 9, minute: 15 } },
      codes: ['call-category-unusual'],
    });
  });

  it('a position reply without the header symbol', () => {
    const { call, codes } = read('position-reply', { header: false });
    expect(call).toMatchObject({ kind: 'position-reply', position: { kind: 'reported-position' } });
    expect(codes).toEqual(['call-header-missing']);
  });

  it('a position that nobody asked for, ended by 127 or 117', () => {
    expect(read('position-reply', { end: 127 })).toMatchObject({
      call: { kind: 'position-reply', unasked: true },
      codes: [],
    });
    expect(read('position-reply', { end: 117 })).toMatchObject({
      call: { kind: 'position-reply', unasked: true },
      codes: ['call-end-unusual'],
    });
  });

  it('a position reply with ten 9s and 8888 (ITU-R M.541-8 Annex 1 §2)', () => {
    const { call, codes } = read('position-reply', { position: [99, 99, 99, 99, 99], time: [88, 88] });
    expect(call).toMatchObject({ kind: 'position-reply', position: null, time: null, unasked: false });
    expect(codes).toEqual([]);
  });

  it('routine category in an all-ships call', () => {
    const { call, codes } = read('all-ships-urgency', { category: 100 });
    expect(call).toMatchObject({ kind: 'all-ships-call', category: 'routine', channel: '16' });
    expect(codes).toEqual(['call-category-unusual']);
  });

  it('end 117 in a relay to all ships', () => {
    const { call, codes } = read('distress-acknowledgement', { telecommand1: 112, end: 117 });
    expect(call).toMatchObject({
      kind: 'distress-relay',
      to: { kind: 'all-ships' },
      distressed: '252000101',
    });
    expect(codes).toEqual(['call-end-unusual']);
  });

  it('the proposed channel repeated in "unable to comply"', () => {
    const { call, codes } = read('individual-unable-busy', { receive: [90, 0, 72], transmit: [90, 0, 72] });
    expect(call).toMatchObject({ kind: 'unable-to-comply', reason: 'busy', channel: '72' });
    expect(codes).toEqual(['call-channel-echoed']);
  });

  it('the second channel element empty, without a notice: one number stands for both directions', () => {
    const { call, codes } = read('individual-routine-request', { transmit: [126, 126, 126] });
    expect(call).toMatchObject({ kind: 'individual-call', channel: '72' });
    expect(codes).toEqual([]);
  });

  it('four-digit channels', () => {
    const { call } = read('individual-routine-request', { receive: [90, 10, 22], transmit: [90, 10, 22] });
    expect(call).toMatchObject({ channel: '1022' });
    const older = read('individual-routine-request', { receive: [91, 0, 22], transmit: [91, 0, 22] });
    expect(older.call).toMatchObject({ channel: '1022' });
    expect(older.codes).toEqual(['call-field-unread']);
  });

  it('frequencies instead of a channel are kept as digits', () => {
    const { call } = read('individual-routine-request', { receive: [2, 18, 20], transmit: [2, 18, 20] });
    expect(call).toMatchObject({ channel: null, frequencies: { receive: '021820', transmit: '021820' } });
  });
});

describe('distress calls told apart', () => {
  const relay = fieldsOf('distress-acknowledgement');

  it('an acknowledgement of oneself is a cancellation (47 CFR 80.335, edition of 2005)', () => {
    const { call, codes } = read('distress-acknowledgement', { self: relay.distressed });
    expect(call).toMatchObject({ kind: 'distress-self-cancel', from: '252000101', distressed: '252000101' });
    expect(codes).toEqual([]);
  });

  it.each([
    [120, [25, 20, 0, 20, 20], 117, 'distress-relay', 'station'],
    [120, [25, 20, 0, 20, 20], 122, 'distress-relay-acknowledgement', 'station'],
    [116, null, 127, 'distress-relay', 'all-ships'],
    [116, null, 122, 'distress-relay-acknowledgement', 'all-ships'],
    [102, [15, 10, 7, 3, 5], 127, 'distress-relay', 'area'],
  ])('format %i %j with end %i is a %s to %s', (format, address, end, kind, to) => {
    const { call, codes } = read('distress-acknowledgement', { format, address, end, telecommand1: 112 });
    expect(call).toMatchObject({ kind, to: { kind: to } });
    expect(codes).toEqual([]);
  });

  it('a ship in distress of unknown identity is 126 five times (from memory)', () => {
    const unknown = [126, 126, 126, 126, 126];
    const { call, codes } = read('distress-acknowledgement', { telecommand1: 112, distressed: unknown });
    expect(call).toMatchObject({ kind: 'distress-relay', distressed: null });
    expect(codes).toEqual([]);
  });
});

describe('what could not be read', () => {
  it('leaves null values and a notice for each field', () => {
    const { call, notices } = read('distress-alert-full', { nature: null, position: [15, null, 70, 5, 29] });
    expect(call).toMatchObject({ kind: 'distress-alert', nature: null, position: null, from: '252000101' });
    expect(notices.map(({ code, at }) => [code, ...at])).toEqual([
      ['call-character-missing', 'position'],
      ['call-field-missing', 'nature'],
    ]);
  });

  it('keeps symbols without a name under their number', () => {
    const { call, codes } = read('distress-alert-full', { nature: 111 });
    expect(call).toMatchObject({ nature: 'symbol-111' });
    expect(codes).toEqual(['call-symbol-unknown']);
  });

  it('is no position when its minutes are 60 or more', () => {
    const { call, codes } = read('position-reply', { position: [13, 66, 0, 5, 21] });
    expect(call).toMatchObject({ position: null });
    expect(codes).toEqual(['call-field-unread']);
  });

  it('leaves a call unrecognised when its format specifier is unknown', () => {
    const { call, codes } = read('position-reply', { format: 118 });
    expect(call).toMatchObject({ kind: 'unrecognised-call', to: null, from: '208000202' });
    expect(codes).toEqual(['call-unrecognised']);
  });

  it('keeps a tenth digit other than 0 beside the call', () => {
    const { call, codes } = read('individual-routine-request', { self: [25, 20, 0, 10, 15] });
    expect(call.from).toBe('252000101');
    expect(codes).toEqual(['call-tenth-digit']);
  });

  it('keeps a category without a name, with one notice', () => {
    expect(read('test-call', { category: 107 })).toMatchObject({
      call: { category: 'symbol-107' },
      codes: ['call-symbol-unknown'],
    });
  });

  it('keeps symbols behind the message', () => {
    expect(read('test-call', { rest: [12, 34] }).codes).toEqual(['call-rest']);
  });
});

// Sets of ITU-R M.821-1, from memory.
describe('the expansion', () => {
  it('refines the position', () => {
    expect(read('position-reply-enhanced', {}).call).toMatchObject({
      position: { fraction: { latitude: 4125, longitude: 9070 } },
    });
  });

  it('carries source, speed, course, name and persons on board', () => {
    const expansion = [
      { specifier: 101, symbols: [2, 0, 0] },
      { specifier: 102, symbols: [0, 62] },
      { specifier: 103, symbols: [27, 5] },
      { specifier: 104, symbols: [], text: 'MERROW' },
      { specifier: 106, symbols: [0, 3] },
    ];
    const { call, codes } = read('distress-alert-full', { expansion });
    expect(call.expansion).toEqual({
      source: '020000',
      speed: 6.2,
      course: 270.5,
      stationName: 'MERROW',
      personsOnBoard: 3,
    });
    expect(codes).toEqual([]);
  });

  it('asks for data, or says there is none', () => {
    const expansion = [
      { specifier: 100, symbols: [110] },
      { specifier: 102, symbols: [126] },
    ];
    expect(read('position-request', { expansion }).call.expansion).toEqual({
      requested: [100],
      unavailable: [102],
    });
  });

  it('keeps what it does not understand, with a notice', () => {
    const { call, codes } = read('position-request', { expansion: [{ specifier: 105, symbols: [1, 2, 3] }] });
    expect(call.expansion).toBeUndefined();
    expect(codes).toEqual(['call-expansion-unread']);
  });
});

describe('the telephone service (digits and their parity symbol from memory)', () => {
  it.each([
    [[106, 1, 23, 45], '012345'],
    [[105, 1, 23, 45], '12345'],
  ])('%j is %s', (telephone, number) => {
    const { call } = read('individual-routine-request', { format: 123, transmit: null, telephone });
    expect(call).toMatchObject({ kind: 'automatic-service-call', telephone: number, end: 'request' });
  });
});
