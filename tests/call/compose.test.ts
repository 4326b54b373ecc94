import { describe, expect, it } from 'vitest';
import {
  type Call,
  composeAllShipsCall,
  composeAreaCall,
  composeAutomaticServiceCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressRelayAcknowledgement,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePollingAcknowledgement,
  composePollingCall,
  composePositionReply,
  composePositionRequest,
  composeTestAcknowledgement,
  composeTestCall,
  composeUnableToComply,
  encodeFields,
} from '../../src/call/index.ts';
import type { GeographicArea, ReportedPosition } from '../../src/position/index.ts';
import { workedSequences } from './worked-sequences.ts';

const place: ReportedPosition = {
  kind: 'reported-position',
  latitude: { hemisphere: 'N', degrees: 50, minutes: 7 },
  longitude: { hemisphere: 'W', degrees: 5, minutes: 29 },
};
const rock: ReportedPosition = {
  kind: 'reported-position',
  latitude: { hemisphere: 'N', degrees: 36, minutes: 8 },
  longitude: { hemisphere: 'W', degrees: 5, minutes: 21 },
};

const alert = composeDistressAlert({
  from: '252000101',
  nature: 'flooding',
  position: place,
  time: { hour: 14, minute: 32 },
});
const hail = composeIndividualCall({ from: '252000101', to: '208000202', channel: '72' });
const request = composePositionRequest({ from: '252000101', to: '208000202' });
const test = composeTestCall({ from: '202000303', to: '003669999' });
const fix = { position: rock, time: { hour: 9, minute: 15 } };
const finer = { ...rock, fraction: { latitude: 4125, longitude: 9070 } };

const composedAs: Record<string, Call> = {
  'distress-alert-full': alert,
  'distress-alert-default': composeDistressAlert({ from: '208000202' }),
  'distress-acknowledgement': composeDistressAcknowledgement({ from: '002320014', about: alert }),
  'individual-routine-request': hail,
  'individual-able-to-comply': composeIndividualAcknowledgement({ call: hail }),
  'individual-unable-busy': composeUnableToComply({ call: hail, reason: 'busy' }),
  'position-request': request,
  'position-reply': composePositionReply({ call: request, ...fix }),
  'position-reply-enhanced': composePositionReply({ call: request, ...fix, position: finer }),
  'all-ships-urgency': composeAllShipsCall({ from: '252000101', category: 'urgency' }),
  'test-call': test,
  'test-acknowledgement': composeTestAcknowledgement({ call: test }),
  'group-routine': composeGroupCall({ from: '202000303', to: '025200077', channel: '77' }),
};

describe('composing', () => {
  it.each(workedSequences.map((row) => [row.name, row] as const))('%s', (name, row) => {
    expect(encodeFields(composedAs[name] as Call), `${row.clause}; ${row.restated ?? ''}`).toEqual(
      row.fields,
    );
  });
});

// RR 2024 Nos. 32.53B to 32.53E: the cancellation is the own ship's acknowledgement.
describe('a self-cancel', () => {
  it('is an acknowledgement of oneself', () => {
    const cancel = composeDistressSelfCancel({ from: '252000101', about: alert });
    expect(encodeFields(cancel)).toEqual({
      ...encodeFields(composeDistressAcknowledgement({ from: '002320014', about: alert })),
      self: [25, 20, 0, 10, 10],
    });
  });
});

// ITU-R M.493-16 tables A1-4.3 and A1-4.4, from memory.
describe('a relay', () => {
  it('to a coast station wants an answer and gets one with the same message', () => {
    const relay = composeDistressRelay({ from: '208000202', to: '002320014', about: alert });
    expect(encodeFields(relay)).toMatchObject({
      format: 120,
      address: [0, 23, 20, 1, 40],
      category: 112,
      telecommand1: 112,
      distressed: [25, 20, 0, 10, 10],
      nature: 101,
      position: [15, 0, 70, 5, 29],
      time: [14, 32],
      end: 117,
    });
    const answer = composeDistressRelayAcknowledgement({ from: '002320014', about: relay });
    expect(encodeFields(answer)).toEqual({
      ...encodeFields(relay),
      address: [20, 80, 0, 20, 20],
      self: [0, 23, 20, 1, 40],
      end: 122,
    });
  });

  it('goes to all ships, a group or an area, about a vessel that may be unknown', () => {
    const area: GeographicArea = {
      kind: 'geographic-area',
      north: { hemisphere: 'N', degrees: 51 },
      west: { hemisphere: 'W', degrees: 7 },
      southward: 3,
      eastward: 5,
    };
    const to = (target: Parameters<typeof composeDistressRelay>[0]['to']) =>
      encodeFields(composeDistressRelay({ from: '002320014', to: target, nature: 'sinking' }));
    expect(to(undefined)).toMatchObject({
      format: 116,
      address: null,
      distressed: Array(5).fill(126),
      end: 127,
    });
    expect(to('025200077')).toMatchObject({ format: 114, address: [2, 52, 0, 7, 70], end: 127 });
    // Japan, MPT Notification 567 of 1990: north-west corner; whole degrees from memory.
    expect(to(area)).toMatchObject({ format: 102, address: [15, 10, 7, 3, 5], end: 127 });
  });
});

describe('other calls', () => {
  it('an area call', () => {
    const area: GeographicArea = {
      kind: 'geographic-area',
      north: { hemisphere: 'N', degrees: 51 },
      west: { hemisphere: 'W', degrees: 7 },
      southward: 3,
      eastward: 5,
    };
    const call = composeAreaCall({ from: '002320014', area, category: 'safety' });
    expect(encodeFields(call)).toMatchObject({
      format: 102,
      address: [15, 10, 7, 3, 5],
      category: 108,
      end: 127,
    });
  });

  it('polling and its answer', () => {
    const call = composePollingCall({ from: '252000101', to: '208000202' });
    expect(encodeFields(call)).toMatchObject({ category: 100, telecommand1: 103, end: 117 });
    expect(encodeFields(composePollingAcknowledgement({ call }))).toMatchObject({
      telecommand1: 103,
      end: 122,
    });
  });

  it('a telephone call', () => {
    const call = composeAutomaticServiceCall({
      from: '252000101',
      to: '002320014',
      telephone: '123456',
      channel: '26',
    });
    expect(encodeFields(call)).toMatchObject({
      format: 123,
      receive: [90, 0, 26],
      transmit: null,
      telephone: [106, 12, 34, 56],
    });
  });

  it('a position request that asks for decimals too', () => {
    expect(
      encodeFields(composePositionRequest({ from: '252000101', to: '208000202', finer: true })).expansion,
    ).toEqual([{ specifier: 100, symbols: [110] }]);
  });

  it('a course that rounds up to a full circle is north', () => {
    const { expansion } = encodeFields(
      composeDistressAlert({ from: '252000101', expansion: { course: 359.96 } }),
    );
    expect(expansion).toEqual([{ specifier: 103, symbols: [0, 0] }]);
  });

  it('a position nobody asked for ends like a call that wants no answer', () => {
    const report = composePositionReply({ from: '252000101', to: '208000202', ...fix });
    expect(encodeFields(report)).toMatchObject({ category: 108, end: 127 });
  });

  it('names a channel by the digits of ITU-R M.1084', () => {
    const named = (channel: string) =>
      composeIndividualCall({ from: '252000101', to: '208000202', channel }).channel;
    expect(['6', '06', '22A', '1022', '72'].map(named)).toEqual(['06', '06', '1022', '1022', '72']);
  });
});

describe('what cannot be composed throws', () => {
  const from = '252000101';
  const to = '208000202';
  const cases: Record<string, () => unknown> = {
    'an identity of eight digits': () => composeDistressAlert({ from: '25200010' }),
    'an identity of no assigned form': () => composeTestCall({ from, to: '123456789' }),
    'a group as own identity': () => composeTestCall({ from: '025200077', to }),
    'a coast station in distress': () => composeDistressAlert({ from: '002320014' }),
    'a call to one station with the identity of a group': () =>
      composeIndividualCall({ from, to: '025200077' }),
    'a group call with the identity of a ship': () => composeGroupCall({ from, to, channel: '77' }),
    'a channel without digits': () => composeIndividualCall({ from, to, channel: 'WX3' }),
    'a channel that is none': () => composeIndividualCall({ from, to, channel: 'seven' }),
    'a routine call to all ships': () => composeAllShipsCall({ from, category: 'routine' as 'safety' }),
    'an unknown nature': () => composeDistressAlert({ from, nature: 'alien' as 'sinking' }),
    'a reason that is none': () => composeUnableToComply({ call: hail, reason: 'tired' as 'busy' }),
    'a minute of 60': () => composeDistressAlert({ from, time: { hour: 12, minute: 60 } }),
    'a position past the pole': () =>
      composeDistressAlert({
        from,
        position: { ...place, latitude: { hemisphere: 'N', degrees: 91, minutes: 0 } },
      }),
    'a speed of 1000 knots': () => composeDistressAlert({ from, expansion: { speed: 1000 } }),
    'a course of 360 degrees': () => composeDistressAlert({ from, expansion: { course: 360 } }),
    'an answer to nobody': () => composeTestAcknowledgement({ call: { ...test, from: null } }),
    'an acknowledgement that names no vessel': () => composeDistressAcknowledgement({ from: '002320014' }),
    'an acknowledgement of oneself': () => composeDistressAcknowledgement({ from, about: alert }),
    'a telephone number of letters': () =>
      composeAutomaticServiceCall({ from, to: '002320014', telephone: 'ABC' }),
  };
  it.each(Object.entries(cases))('%s', (_, compose) => {
    expect(compose).toThrow(/^\w[\w ]*: /);
  });
});
