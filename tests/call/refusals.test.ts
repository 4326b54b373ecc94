import { describe, expect, it } from 'vitest';
import { symbolsOf } from '../../src/call/fields.ts';
import * as room from '../../src/call/index.ts';
import {
  answersTo,
  type Call,
  composeAllShipsCall,
  composeAreaCall,
  composeAutomaticServiceCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePollingAcknowledgement,
  composePositionReply,
  composePositionRequest,
  composeTestAcknowledgement,
  composeTestCall,
  composeUnableToComply,
  describeCall,
  encodeFields,
} from '../../src/call/index.ts';
import { spokenScript } from '../../src/speech/index.ts';

// All stations are the invented ones of the demo.
const from = '232999871';
const to = '232999142';
const club = '023299905';
const coast = '002329990';
const hail = composeIndividualCall({ from, to, channel: '72' });
const alert = composeDistressAlert({ from });
const test = composeTestCall({ from, to: coast });
const untyped = <Value>(value: unknown) => value as Value;

describe('a programmer is told what a call cannot hold, and what it can', () => {
  const cases: Record<string, readonly [() => unknown, ErrorConstructor, string]> = {
    'no own identity': [
      () => composeDistressAlert({ from: untyped(undefined) }),
      TypeError,
      'from: expected an identity, text of nine digits',
    ],
    'an identity of eight digits': [
      () => composeDistressAlert({ from: '23299987' }),
      RangeError,
      "from: expected a maritime identity of nine digits, got '23299987'",
    ],
    'an identity of ten digits': [
      () => composeTestCall({ from, to: '2329991420' }),
      RangeError,
      "to: expected a maritime identity of nine digits, got '2329991420'",
    ],
    'a group as sender': [
      () => composeTestCall({ from: club, to }),
      RangeError,
      'from: expected an identity that one station can have, got 023299905',
    ],
    'a group called as one station': [
      () => composeIndividualCall({ from, to: club }),
      RangeError,
      'to: expected the identity of one station, got 023299905',
    ],
    'a ship called as a group': [
      () => composeGroupCall({ from, to, channel: '77' }),
      RangeError,
      'to: expected the identity of a group, got 232999142',
    ],
    'a coast station in distress': [
      () => composeDistressAlert({ from: coast }),
      RangeError,
      'from: expected the identity of a vessel, got 002329990',
    ],
    'a group in distress': [
      () => composeDistressRelay({ from: coast, distressed: club }),
      RangeError,
      'distressed: expected the identity of a vessel, got 023299905',
    ],
    'a coast station that cancels an alert': [
      () => composeDistressSelfCancel({ from: coast }),
      RangeError,
      'from: expected the identity of a vessel, got 002329990',
    ],
    'an acknowledgement of nobody': [
      () => composeDistressAcknowledgement({ from: coast }),
      RangeError,
      'Vessel in distress: expected nine digits, got none',
    ],
    'an acknowledgement of the own alert': [
      () => composeDistressAcknowledgement({ from, about: alert }),
      RangeError,
      'Vessel in distress: expected another vessel, got the own identity; cancel an own alert with composeDistressSelfCancel',
    ],
    'an answer to nobody': [
      () => composeTestAcknowledgement({ call: { ...test, from: null } }),
      TypeError,
      'to: expected an identity, text of nine digits',
    ],
    'an answer from nobody': [
      () => composeTestAcknowledgement({ call: { ...test, to: { kind: 'station', mmsi: null } } }),
      TypeError,
      'from: expected an identity, text of nine digits',
    ],
    'a routine call to all ships': [
      () => composeAllShipsCall({ from, category: untyped('routine') }),
      RangeError,
      "category: expected one of urgency, safety, got 'routine'",
    ],
    'a routine call to an area': [
      () => composeAreaCall({ from, area: untyped(null), category: untyped('routine') }),
      RangeError,
      "category: expected one of urgency, safety, got 'routine'",
    ],
    'a call to one station in distress': [
      () => composeIndividualCall({ from, to, category: untyped('distress') }),
      RangeError,
      "category: expected one of routine, safety, urgency, got 'distress'",
    ],
    'an urgent request for a position': [
      () => composePositionRequest({ from, to, category: untyped('urgency') }),
      RangeError,
      "category: expected one of safety, routine, got 'urgency'",
    ],
    'a reason that is none': [
      () => composeUnableToComply({ call: hail, reason: untyped('tired') }),
      RangeError,
      "reason: expected one of no-reason, switching-centre-congested, busy, queue, station-barred, no-operator, operator-unavailable, equipment-disabled, channel-unusable, mode-unusable, got 'tired'",
    ],
    'a channel as a number': [
      () => composeIndividualCall({ from, to, channel: untyped(72) }),
      TypeError,
      'channel: expected text such as 72 or 22A',
    ],
    'a channel without digits': [
      () => composeIndividualCall({ from, to, channel: 'WX3' }),
      RangeError,
      "channel: expected a channel with digits of ITU-R M.1084, got 'WX3'",
    ],
    // Radio Regulations Appendix 18 note j).
    'channel 70, which carries no speech': [
      () => composeIndividualCall({ from, to, channel: '70' }),
      RangeError,
      'channel: 70 carries selective calls only, never speech',
    ],
    // Radio Regulations Art. 52, from memory.
    'channel 16 for routine talk': [
      () => composeIndividualCall({ from, to, channel: '16' }),
      RangeError,
      'channel: a routine call expected a working channel, got 16',
    ],
    'channel 16 for the routine talk of a group': [
      () => composeGroupCall({ from, to: club, channel: '16' }),
      RangeError,
      'channel: a routine call expected a working channel, got 16',
    ],
    'a channel of one digit, put into a call by hand': [
      () => encodeFields({ ...hail, channel: '7' }),
      RangeError,
      "channel: expected two to four digits such as '06' or '1022', got '7'",
    ],
    'a frequency of two digits': [
      () => encodeFields({ ...hail, channel: null, frequencies: { receive: '21', transmit: null } }),
      RangeError,
      "frequency: expected six or eight digits, got '21'",
    ],
    'an hour of 24': [
      () => composeDistressAlert({ from, time: { hour: 24, minute: 0 } }),
      RangeError,
      'time: expected an hour 0–23 and a minute 0–59, got 24:0',
    ],
    'half a minute': [
      () => composeDistressAlert({ from, time: { hour: 12, minute: 0.5 } }),
      RangeError,
      'time: expected an hour 0–23 and a minute 0–59, got 12:0.5',
    ],
    'a speed of 1000 knots': [
      () => composeDistressAlert({ from, expansion: { speed: 1000 } }),
      RangeError,
      'speed: expected 0 to 999.9, got 1000',
    ],
    'a speed astern': [
      () => composeDistressAlert({ from, expansion: { speed: -0.1 } }),
      RangeError,
      'speed: expected 0 to 999.9, got -0.1',
    ],
    'a course of 360 degrees': [
      () => composeDistressAlert({ from, expansion: { course: 360 } }),
      RangeError,
      'course: expected 0 to 359.9, got 360',
    ],
    'a course left of north': [
      () => composeDistressAlert({ from, expansion: { course: -1 } }),
      RangeError,
      'course: expected 0 to 359.9, got -1',
    ],
    'ten thousand persons': [
      () => composeDistressAlert({ from, expansion: { personsOnBoard: 10_000 } }),
      RangeError,
      'persons on board: expected 0 to 9999, got 10000',
    ],
    'a source of the fix in four digits': [
      () => composeDistressAlert({ from, expansion: { source: '0200' } }),
      RangeError,
      "source of the fix: expected six digits, got '0200'",
    ],
    'a telephone number with a plus sign': [
      () => composeAutomaticServiceCall({ from, to: coast, telephone: '+5550123' }),
      RangeError,
      "telephone number: expected 1 to 16 digits, got '+5550123'",
    ],
    'a telephone number of 17 digits': [
      () => composeAutomaticServiceCall({ from, to: coast, telephone: '12345678901234567' }),
      RangeError,
      "telephone number: expected 1 to 16 digits, got '12345678901234567'",
    ],
    'an identity of eight digits, put into a call by hand': [
      () => encodeFields({ ...hail, from: '23299987' }),
      RangeError,
      "identity: expected nine digits, got '23299987'",
    ],
    'a call to oneself': [
      () => composeIndividualCall({ from, to: from, channel: '72' }),
      RangeError,
      'to: expected another station, got the own identity 232999871',
    ],
    'an answer to another kind of call': [
      () => composeTestAcknowledgement({ call: untyped(hail) }),
      RangeError,
      "call: expected test-call, got 'individual-call'",
    ],
    'a refusal of a test': [
      () => composeUnableToComply({ call: untyped(test) }),
      RangeError,
      "call: expected individual-call or position-request, got 'test-call'",
    ],
    'a consent to a test': [
      () => composeIndividualAcknowledgement({ call: untyped(test) }),
      RangeError,
      "call: expected individual-call, got 'test-call'",
    ],
    'a position in answer to a test': [
      () => composePositionReply({ call: untyped(test) }),
      RangeError,
      "call: expected position-request, got 'test-call'",
    ],
    'polling answered that was a test': [
      () => composePollingAcknowledgement({ call: untyped(test) }),
      RangeError,
      "call: expected polling-call, got 'test-call'",
    ],
    'an answer to nothing': [
      () => composeTestAcknowledgement(untyped({})),
      TypeError,
      'call: expected a call, got undefined',
    ],
    'a distress told by a routine call': [
      () => composeDistressRelay({ from, about: untyped(hail) }),
      RangeError,
      "about: expected distress-alert or distress-acknowledgement or distress-self-cancel or distress-relay or distress-relay-acknowledgement, got 'individual-call'",
    ],
    'an end that is none': [
      () => composeAutomaticServiceCall({ from, to: coast, end: untyped('toString') }),
      RangeError,
      "end: expected one of request, answer, end, got 'toString'",
    ],
    'an end that is none, put into a call by hand': [
      () => encodeFields({ ...composeAutomaticServiceCall({ from, to: coast }), end: untyped('bogus') }),
      RangeError,
      "end: expected one of request, answer, end, got 'bogus'",
    ],
    'a data set that is none': [
      () => composeTestCall({ from, to, expansion: { requested: [999] } }),
      RangeError,
      'requested: expected a data set from 100 to 106, got 999',
    ],
    'a data set below the first': [
      () => composeTestCall({ from, to, expansion: { unavailable: [100, 99] } }),
      RangeError,
      'unavailable: expected a data set from 100 to 106, got 99',
    ],
    'half a data set': [
      () => composeTestCall({ from, to, expansion: { requested: [100.5] } }),
      RangeError,
      'requested: expected a data set from 100 to 106, got 100.5',
    ],
    'data sets as text': [
      () => composeTestCall({ from, to, expansion: { requested: untyped(['x']) } }),
      TypeError,
      'expansion.requested: expected a list of numbers, got array',
    ],
    'one data set without its list': [
      () => composeTestCall({ from, to, expansion: { requested: untyped(105) } }),
      TypeError,
      'expansion.requested: expected a list of numbers, got 105',
    ],
    'a second telecommand as an object': [
      () => composeIndividualCall({ from, to, channel: '72', secondTelecommand: untyped({}) }),
      TypeError,
      'secondTelecommand: expected text or null, got object',
    ],
    'an expansion with a misspelt name': [
      () => composeTestCall({ from, to, expansion: untyped({ speed: 5, personOnBoard: 4 }) }),
      TypeError,
      "expansion: expected speed, course, personsOnBoard, source, stationName, area, requested, unavailable, got 'personOnBoard'",
    ],
    'an expansion as a number': [
      () => composeTestCall({ from, to, expansion: untyped(5) }),
      TypeError,
      'expansion: expected an object, got 5',
    ],
    'a name of the station as a number': [
      () => composeTestCall({ from, to, expansion: { stationName: untyped(5) } }),
      TypeError,
      'expansion.stationName: expected text, got 5',
    ],
    'a speed as text': [
      () => composeTestCall({ from, to, expansion: { speed: untyped('5') } }),
      TypeError,
      "expansion.speed: expected a number, got '5'",
    ],
    'half a person': [
      () => composeDistressAlert({ from, expansion: { personsOnBoard: 2.5 } }),
      RangeError,
      'persons on board: expected a whole number, got 2.5',
    ],
    'fewer persons than none': [
      () => composeDistressAlert({ from, expansion: { personsOnBoard: -1 } }),
      RangeError,
      'persons on board: expected 0 to 9999, got -1',
    ],
    'a position as a number': [
      () => composeDistressAlert({ from, position: untyped(5) }),
      TypeError,
      'position: expected a reported position or null, got 5',
    ],
    'a position without its parts': [
      () => composePositionReply({ from, to, position: untyped({ latitude: {} }) }),
      TypeError,
      'position: expected a reported position or null, got object',
    ],
    'a time as a number': [
      () => composeDistressAlert({ from, time: untyped(14) }),
      TypeError,
      'time: expected an hour and a minute, or null, got 14',
    ],
    'an area call without an area': [
      () => composeAreaCall(untyped({ from, category: 'safety' })),
      TypeError,
      'area: expected a geographic area, got undefined',
    ],
    'an area without its corner': [
      () => composeAreaCall({ from, category: 'safety', area: untyped({}) }),
      TypeError,
      'to.area: expected a geographic area or null, got object',
    ],
    'a relay to something else': [
      () => composeDistressRelay({ from, to: untyped({}) }),
      TypeError,
      'to: expected nine digits, a geographic area or all ships, got object',
    ],
    'a relay to nobody': [
      () => composeDistressRelay({ from, to: untyped(null) }),
      TypeError,
      'to: expected nine digits, a geographic area or all ships, got null',
    ],
    'an identity as a number, put into a call by hand': [
      () => encodeFields({ ...hail, from: untyped(232999871) }),
      TypeError,
      'identity: expected text of nine digits',
    ],
    'a channel as a number, put into a call by hand': [
      () => encodeFields({ ...hail, channel: untyped(72) }),
      TypeError,
      'channel: expected text such as 72 or 1022',
    ],
    'no call to answer': [
      () => answersTo(untyped(undefined), { own: to }),
      TypeError,
      'answersTo: expected a call, got undefined',
    ],
    'nobody to answer': [
      () => answersTo(hail, untyped(undefined)),
      TypeError,
      'answersTo: expected the answering station, got undefined',
    ],
    'no call to describe': [
      () => describeCall(untyped('hail')),
      TypeError,
      "describeCall: expected a call, got 'hail'",
    ],
    'no call to speak after': [
      () => spokenScript(untyped(null), {}),
      TypeError,
      'spokenScript: expected a call or a situation, got null',
    ],
    'nobody to speak': [
      () => spokenScript(hail, untyped(undefined)),
      TypeError,
      'spokenScript: expected the own vessel, got undefined',
    ],
    'a kind of call that is none, put into a call by hand': [
      () => encodeFields(untyped({ ...hail, kind: 'bogus' })),
      TypeError,
      "kind: expected a kind of call, got 'bogus'",
    ],
    'a relay to eight digits': [
      () => composeDistressRelay({ from, to: '23299914' }),
      RangeError,
      "to: expected a maritime identity of nine digits, got '23299914'",
    ],
    // ITU-R M.493-16 table A1-3, read in a restatement.
    'a second telecommand of the automatic connection system': [
      () => composeIndividualCall({ from, to, secondTelecommand: 'acs-remaining-0' }),
      RangeError,
      'Second telecommand: expected one for VHF, got acs-remaining-0 of the automatic connection system (MF/HF)',
    ],
    'a nature of distress of older editions': [
      () => composeDistressAlert({ from, nature: 'epirb-emission' }),
      RangeError,
      'Nature of distress: expected one of ITU-R M.493-16, got epirb-emission, which that edition removed',
    ],
    'an odd count of digits': [
      () => symbolsOf('123'),
      RangeError,
      "digits: expected an even count, got '123'",
    ],
  };

  it.each(Object.entries(cases))('%s', (_, [compose, kind, message]) => {
    expect(compose).toThrow(new kind(message));
    expect(compose).toThrow(kind);
  });

  const composers = Object.entries(room).filter(([name]) => name.startsWith('compose'));

  it('by every function that composes, when it is given no options, or none that it needs', () => {
    expect(composers).toHaveLength(18);
    for (const [name, compose] of composers) {
      const composeWith = compose as (options?: unknown) => unknown;
      for (const nothing of [undefined, null, 5])
        expect(() => composeWith(nothing), name).toThrow(
          new TypeError(`options: expected an object, got ${nothing}`),
        );
      // A misspelt nature must not make an alert that tells none.
      expect(() => composeWith({ from: '232999218', natur: 'sinking' }), name).toThrow(
        /^options: expected from, .*expansion, got 'natur'$/,
      );
      // The thing that is missing comes first.
      expect(() => composeWith({}), name).toThrow(/^(from|to|call|category): /);
    }
  });

  it('by a function that composes, when an option is one of another', () => {
    const from = '232999218';
    expect(() => room.composeDistressAlert({ from, reason: 'busy' } as never)).toThrow(
      new TypeError("options: expected from, nature, position, time, subsequent, expansion, got 'reason'"),
    );
    expect(() => room.composeDistressAlert({ from, to: '002329990' } as never)).toThrow(/, got 'to'$/);
    expect(() => room.composeDistressAcknowledgement({ from, to: '002329990' } as never)).toThrow(
      /, got 'to'$/,
    );
    expect(() => room.composeTestCall({ from, to: '002329990', channel: '72' } as never)).toThrow(
      new TypeError("options: expected from, to, expansion, got 'channel'"),
    );
  });

  it.each(['1234x', 'x1234', '-1', '1 23', '٣٤'])('%s is no even count of digits', (digits) => {
    expect(() => symbolsOf(digits)).toThrow(RangeError);
  });

  it.each([
    ['an identity', { from: 'x232999871' }],
    ['an identity', { from: '232999871x' }],
    ['a channel', { channel: 'x72' }],
    ['a channel', { channel: '72x' }],
    ['a channel', { channel: '022' }],
    ['a channel', { channel: '10222' }],
    ['a frequency', { channel: null, frequencies: { receive: 'x021820', transmit: null } }],
    ['a frequency', { channel: null, frequencies: { receive: '021820x', transmit: null } }],
    ['a frequency', { channel: null, frequencies: { receive: null, transmit: '0218200' } }],
    ['a frequency', { channel: null, frequencies: { receive: null, transmit: '0218200000' } }],
    ['a source of the fix', { expansion: { source: '02000000' } }],
    ['a source of the fix', { expansion: { source: 'x020000' } }],
    ['a source of the fix', { expansion: { source: '020000x' } }],
  ])('%s is looked at from end to end: %j', (_, change) => {
    expect(() => encodeFields({ ...hail, ...change } as Call)).toThrow(RangeError);
  });
});

describe('the largest values that fit', () => {
  const sets = (expansion: NonNullable<Call['expansion']>) =>
    encodeFields(composeDistressAlert({ from, expansion })).expansion;

  // ITU-R M.821-1: tenths of a knot and of a degree in four digits, from memory.
  it('speed, course, persons', () => {
    expect(sets({ speed: 999.9, course: 359.9, personsOnBoard: 9999 })).toEqual([
      { specifier: 102, symbols: [99, 99] },
      { specifier: 103, symbols: [35, 99] },
      { specifier: 106, symbols: [99, 99] },
    ]);
    expect(sets({ speed: 0, course: 0, personsOnBoard: 0 })).toEqual(
      [102, 103, 106].map((specifier) => ({ specifier, symbols: [0, 0] })),
    );
  });

  it('time', () => {
    expect(encodeFields(composeDistressAlert({ from, time: { hour: 23, minute: 59 } })).time).toEqual([
      23, 59,
    ]);
    expect(encodeFields(composeDistressAlert({ from, time: { hour: 0, minute: 0 } })).time).toEqual([0, 0]);
  });

  it('a telephone number of one digit and of 16', () => {
    const dialled = (telephone: string) =>
      encodeFields(composeAutomaticServiceCall({ from, to: coast, telephone })).telephone;
    expect(dialled('1')).toEqual([105, 1]);
    expect(dialled('1234567890123456')).toEqual([106, 12, 34, 56, 78, 90, 12, 34, 56]);
  });

  it('frequencies of six and of eight digits', () => {
    const frequencies = { receive: '02182000', transmit: '021820' };
    expect(encodeFields({ ...hail, channel: null, frequencies })).toMatchObject({
      receive: [2, 18, 20, 0],
      transmit: [2, 18, 20],
    });
  });
});

// ITU-R M.493-16: 102 for an area, 112 for a distress, 114 for a group, 116 for all ships, 120 for one station.
describe('a call to an address that its kind does not have', () => {
  it.each([
    [112, null, { kind: 'all-stations' }],
    [114, [2, 32, 99, 90, 50], { kind: 'group', mmsi: club }],
    [116, null, { kind: 'all-ships' }],
    [120, [0, 23, 29, 99, 0], { kind: 'station', mmsi: coast }],
  ] as const)('goes out under the format specifier of the address: %i', (format, address, to) => {
    for (const call of [hail, alert]) {
      const fields = encodeFields(untyped({ ...call, to }));
      expect(fields).toMatchObject({ format, address });
      expect(fields).toEqual({ ...encodeFields(call), format, address });
    }
  });
});

describe('what is left out is filled in by the book', () => {
  it('a request for a position asks for no decimals', () => {
    expect(composePositionRequest({ from, to })).not.toHaveProperty('expansion');
  });

  it('a position nobody asked for: safety, nothing known', () => {
    expect(composePositionReply({ from, to })).toEqual({
      kind: 'position-reply',
      to: { kind: 'station', mmsi: to },
      from,
      category: 'safety',
      position: null,
      time: null,
      unsolicited: true,
    });
  });
});
