import { describe, expect, it } from 'vitest';
import {
  type Call,
  callToFields,
  composeAllShipsCall,
  composeAreaCall,
  composeAutomaticServiceCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualCall,
  composePositionReply,
  composePositionRequest,
  composeTestAcknowledgement,
  composeTestCall,
  composeUnableToComply,
  symbolsOf,
} from '../../src/call/index.ts';

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
      'from: an identity of nine digits is needed, as text',
    ],
    'an identity of eight digits': [
      () => composeDistressAlert({ from: '23299987' }),
      RangeError,
      "from: '23299987' is no maritime identity of nine digits",
    ],
    'an identity of ten digits': [
      () => composeTestCall({ from, to: '2329991420' }),
      RangeError,
      "to: '2329991420' is no maritime identity of nine digits",
    ],
    'a group as sender': [
      () => composeTestCall({ from: club, to }),
      RangeError,
      "from: 023299905 cannot be a station's own identity",
    ],
    'a group called as one station': [
      () => composeIndividualCall({ from, to: club }),
      RangeError,
      'to: 023299905 is not the identity of one station',
    ],
    'a ship called as a group': [
      () => composeGroupCall({ from, to, channel: '77' }),
      RangeError,
      'to: 232999142 is not the identity of a group',
    ],
    'a coast station in distress': [
      () => composeDistressAlert({ from: coast }),
      RangeError,
      'distressed: 002329990 is not the identity of a vessel',
    ],
    'a group in distress': [
      () => composeDistressRelay({ from: coast, distressed: club }),
      RangeError,
      'distressed: 023299905 is not the identity of a vessel',
    ],
    'a coast station that cancels an alert': [
      () => composeDistressSelfCancel({ from: coast }),
      RangeError,
      'distressed: 002329990 is not the identity of a vessel',
    ],
    'an acknowledgement of nobody': [
      () => composeDistressAcknowledgement({ from: coast }),
      RangeError,
      'distressed: an acknowledgement names the vessel',
    ],
    'an acknowledgement of the own alert': [
      () => composeDistressAcknowledgement({ from, about: alert }),
      RangeError,
      'distressed: own distress is taken back by a self-cancel',
    ],
    'an answer to nobody': [
      () => composeTestAcknowledgement({ call: { ...test, from: null } }),
      TypeError,
      'to: an identity of nine digits is needed, as text',
    ],
    'an answer from nobody': [
      () => composeTestAcknowledgement({ call: { ...test, to: { kind: 'station', mmsi: null } } }),
      TypeError,
      'from: an identity of nine digits is needed, as text',
    ],
    'a routine call to all ships': [
      () => composeAllShipsCall({ from, category: untyped('routine') }),
      RangeError,
      "category: one of urgency, safety is needed, not 'routine'",
    ],
    'a routine call to an area': [
      () => composeAreaCall({ from, area: untyped(null), category: untyped('routine') }),
      RangeError,
      "category: one of urgency, safety is needed, not 'routine'",
    ],
    'a call to one station in distress': [
      () => composeIndividualCall({ from, to, category: untyped('distress') }),
      RangeError,
      "category: one of routine, safety, urgency is needed, not 'distress'",
    ],
    'an urgent request for a position': [
      () => composePositionRequest({ from, to, category: untyped('urgency') }),
      RangeError,
      "category: one of safety, routine is needed, not 'urgency'",
    ],
    'a reason that is none': [
      () => composeUnableToComply({ call: hail, reason: untyped('tired') }),
      RangeError,
      "reason: one of no-reason, switching-centre-congested, busy, queue, station-barred, no-operator, operator-unavailable, equipment-disabled, channel-unusable, mode-unusable is needed, not 'tired'",
    ],
    'a channel as a number': [
      () => composeIndividualCall({ from, to, channel: untyped(72) }),
      TypeError,
      'channel: text such as 72 or 22A is needed',
    ],
    'a channel without digits': [
      () => composeIndividualCall({ from, to, channel: 'WX3' }),
      RangeError,
      "channel: no digits of a call name 'WX3'",
    ],
    'a channel of one digit, put into a call by hand': [
      () => callToFields({ ...hail, channel: '7' }),
      RangeError,
      "channel: two to four digits such as '06' or '1022' are needed, not '7'",
    ],
    'a frequency of two digits': [
      () => callToFields({ ...hail, channel: null, frequencies: { receive: '21', transmit: null } }),
      RangeError,
      "frequency: six or eight digits are needed, not '21'",
    ],
    'an hour of 24': [
      () => composeDistressAlert({ from, time: { hour: 24, minute: 0 } }),
      RangeError,
      'time: an hour 0–23 and a minute 0–59 are needed, not 24:0',
    ],
    'half a minute': [
      () => composeDistressAlert({ from, time: { hour: 12, minute: 0.5 } }),
      RangeError,
      'time: an hour 0–23 and a minute 0–59 are needed, not 12:0.5',
    ],
    'a speed of 1000 knots': [
      () => composeDistressAlert({ from, expansion: { speed: 1000 } }),
      RangeError,
      'speed: 0 to 999.9 is needed, not 1000',
    ],
    'a speed astern': [
      () => composeDistressAlert({ from, expansion: { speed: -0.1 } }),
      RangeError,
      'speed: 0 to 999.9 is needed, not -0.1',
    ],
    'a course of 360 degrees': [
      () => composeDistressAlert({ from, expansion: { course: 360 } }),
      RangeError,
      'course: 0 to 359.9 is needed, not 360',
    ],
    'a course left of north': [
      () => composeDistressAlert({ from, expansion: { course: -1 } }),
      RangeError,
      'course: 0 to 359.9 is needed, not -1',
    ],
    'ten thousand persons': [
      () => composeDistressAlert({ from, expansion: { personsOnBoard: 10_000 } }),
      RangeError,
      'persons on board: 0 to 9999 is needed, not 10000',
    ],
    'a source of the fix in four digits': [
      () => composeDistressAlert({ from, expansion: { source: '0200' } }),
      RangeError,
      "source of the fix: six digits are needed, not '0200'",
    ],
    'a telephone number with a plus sign': [
      () => composeAutomaticServiceCall({ from, to: coast, telephone: '+5550123' }),
      RangeError,
      "telephone number: 1 to 16 digits are needed, not '+5550123'",
    ],
    'a telephone number of 17 digits': [
      () => composeAutomaticServiceCall({ from, to: coast, telephone: '12345678901234567' }),
      RangeError,
      "telephone number: 1 to 16 digits are needed, not '12345678901234567'",
    ],
    'an identity of eight digits, put into a call by hand': [
      () => callToFields({ ...hail, from: '23299987' }),
      RangeError,
      "identity: nine digits are needed, not '23299987'",
    ],
    'an odd count of digits': [
      () => symbolsOf('123'),
      RangeError,
      "digits: an even count is needed, not '123'",
    ],
  };

  it.each(Object.entries(cases))('%s', (_, [compose, kind, message]) => {
    expect(compose).toThrow(new kind(message));
    expect(compose).toThrow(kind);
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
    ['a source of the fix', { expansion: { source: 'x020000' } }],
    ['a source of the fix', { expansion: { source: '020000x' } }],
  ])('%s is looked at from end to end: %j', (_, change) => {
    expect(() => callToFields({ ...hail, ...change } as Call)).toThrow(RangeError);
  });
});

describe('the largest values that fit', () => {
  const sets = (expansion: NonNullable<Call['expansion']>) =>
    callToFields(composeDistressAlert({ from, expansion })).expansion;

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
    expect(callToFields(composeDistressAlert({ from, time: { hour: 23, minute: 59 } })).time).toEqual([
      23, 59,
    ]);
    expect(callToFields(composeDistressAlert({ from, time: { hour: 0, minute: 0 } })).time).toEqual([0, 0]);
  });

  it('a telephone number of one digit and of 16', () => {
    const dialled = (telephone: string) =>
      callToFields(composeAutomaticServiceCall({ from, to: coast, telephone })).telephone;
    expect(dialled('1')).toEqual([105, 1]);
    expect(dialled('1234567890123456')).toEqual([106, 12, 34, 56, 78, 90, 12, 34, 56]);
  });

  it('frequencies of six and of eight digits', () => {
    const frequencies = { receive: '02182000', transmit: '021820' };
    expect(callToFields({ ...hail, channel: null, frequencies })).toMatchObject({
      receive: [2, 18, 20, 0],
      transmit: [2, 18, 20],
    });
  });
});

describe('what is left out is filled in by the book', () => {
  it('a position nobody asked for: safety, nothing known', () => {
    expect(composePositionReply({ from, to })).toEqual({
      kind: 'position-reply',
      to: { kind: 'station', mmsi: to },
      from,
      category: 'safety',
      position: null,
      time: null,
      unasked: true,
    });
  });
});
