import { describe, expect, it } from 'vitest';
import { emptyFields } from '../../src/call/fields.ts';
import {
  type AnsweringStation,
  answersTo,
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
  composePollingCall,
  composePositionReply,
  composePositionRequest,
  composeTestCall,
  composeUnableToComply,
  decodeFields,
} from '../../src/call/index.ts';
import { unitedKingdomPlan } from '../../src/channel/united-kingdom.ts';
import { saying } from './without-words.ts';

// All stations are the invented ones of the demo.
const own = '232999142';
const friend = '232999871';
const bounty = '232999218';
const club = '023299905';
const coast = '002329990';
const area = {
  kind: 'geographic-area',
  north: { hemisphere: 'N', degrees: 57 },
  west: { hemisphere: 'W', degrees: 7 },
  southward: 2,
  eastward: 3,
} as const;
const alert = composeDistressAlert({ from: bounty });
const relay = composeDistressRelay({ from: coast, to: own, about: alert });
const hail = composeIndividualCall({ from: friend, to: own, channel: '72' });
const request = composePositionRequest({ from: friend, to: own });
const service = composeAutomaticServiceCall({ from: friend, to: own, telephone: '5550123', channel: '26' });

describe('why no selective call answers', () => {
  const ashore: AnsweringStation = { own: coast, designated: true };
  const many = {
    code: 'call-no-answer-to-many',
    clause: 'ITU-R M.493-16 tables A1-4.5, A1-4.6 and A1-4.8',
  };
  const ends = {
    code: 'call-no-answer-distress-end',
    clause: '47 CFR 80.1121',
  };
  const answers = {
    code: 'call-no-answer-is-answer',
    clause: 'ITU-R M.493-16 Annex 1, end of sequence',
  };
  const nobody = {
    code: 'call-no-answer-sender',
    clause: 'ITU-R M.493-16 Annex 1, self-identification',
  };
  const unknownRelay = {
    code: 'call-no-answer-relay-sender',
    clause: 'ITU-R M.493-16 table A1-4.4',
  };
  const cases: Record<string, readonly [Call, AnsweringStation, { code: string; clause: string }]> = {
    'an alert, heard by a ship': [
      alert,
      { own },
      {
        code: 'call-no-answer-ship-alert',
        clause: 'RR 2024 No. 32.16; 47 CFR 80.1117(a), 80.1121(b)',
      },
    ],
    'a relay for all ships, heard by a coast station that is not designated': [
      composeDistressRelay({ from: friend, about: alert }),
      { own: coast },
      { code: 'call-no-answer-designated', clause: '47 CFR 80.103(c), 80.1119(a)' },
    ],
    'an alert that names no vessel': [
      { ...alert, from: null },
      ashore,
      {
        code: 'call-no-answer-alert-sender',
        clause: 'ITU-R M.493-16 table A1-4.2',
      },
    ],
    'an alert under the identity of a coast station': [
      { ...alert, from: '002320014' },
      ashore,
      {
        code: 'call-no-answer-alert-sender',
        clause: 'ITU-R M.493-16 table A1-4.2',
      },
    ],
    'a relay for all ships, heard by a ship': [
      composeDistressRelay({ from: coast, about: alert }),
      { own },
      {
        code: 'call-no-answer-ship-relay',
        clause: 'ITU-R M.541-11 Annex 3 §1.5 and §1.6',
      },
    ],
    'a relay from nobody': [{ ...relay, from: null }, { own }, unknownRelay],
    'a relay from a group': [{ ...relay, from: club }, { own }, unknownRelay],
    'a relay about a group': [{ ...relay, distressed: club }, { own }, unknownRelay],
    'an acknowledgement of an alert': [
      composeDistressAcknowledgement({ from: coast, about: alert }),
      { own },
      ends,
    ],
    'a cancelled alert': [composeDistressSelfCancel({ from: bounty }), { own }, ends],
    'an acknowledgement of a relay': [
      composeDistressRelayAcknowledgement({ from: coast, to: { kind: 'all-ships' }, about: relay }),
      { own },
      ends,
    ],
    'a group call': [composeGroupCall({ from: friend, to: club, channel: '77' }), { own }, many],
    'a call to all ships': [composeAllShipsCall({ from: friend, category: 'safety' }), { own }, many],
    'an area call': [composeAreaCall({ from: coast, area, category: 'safety' }), { own }, many],
    'an answer': [composeIndividualAcknowledgement({ call: hail }), { own: friend }, answers],
    'a refusal': [composeUnableToComply({ call: hail }), { own: friend }, answers],
    'a position': [composePositionReply({ call: request }), { own: friend }, answers],
    'an answer of the telephone service': [
      { ...service, end: 'answer' },
      { own },
      { code: 'call-no-answer-is-answer', clause: 'ITU-R M.493-16 table A1-4.9' },
    ],
    'a call for another station': [
      hail,
      { own: bounty },
      { code: 'call-no-answer-other', clause: 'ITU-R M.493-16 Annex 1, address' },
    ],
    'a call from nobody': [{ ...hail, from: null }, { own }, nobody],
    'a test under the identity of a group': [
      { ...composeTestCall({ from: friend, to: own }), from: club },
      { own },
      nobody,
    ],
    'what fits no kind of call': [
      decodeFields({ ...emptyFields, format: 113 }).call,
      { own },
      { code: 'call-no-answer-not-understood', clause: 'ITU-R M.493-16 Annex 1' },
    ],
  };

  it.each(Object.entries(cases))('%s', (_, [call, station, none]) => {
    expect(answersTo(call, station)).toMatchObject({ answers: [], none: { ...none, params: {} } });
  });
});

describe('each answer says what it means, and by which table', () => {
  const first = (call: Call, station: AnsweringStation) => {
    const { answers, none } = answersTo(call, station);
    expect(none).toBeNull();
    return answers.map((each) => [each.meaning, saying(each), each.clause])[0];
  };
  const table = (row: string) => `ITU-R M.493-16 Annex 1 ${row}, unverified`;

  it('to a call, with its channel where it names one', () => {
    expect(first(hail, { own })).toEqual(['able', 'able 72', table('tables A1-4.7 and A1-4.9')]);
    expect(first({ ...hail, channel: null }, { own })?.[1]).toBe('able');
    expect(first(service, { own })).toEqual(['able', 'able 26', table('table A1-4.9')]);
  });

  it('to a request, a test, polling', () => {
    const position = {
      kind: 'reported-position',
      latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
      longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
    } as const;
    expect(first(request, { own, position })).toEqual([
      'position',
      'position 56°20′ N 006°30′ W',
      table('table A1-4.7'),
    ]);
    const test = composeTestCall({ from: friend, to: own });
    expect(first(test, { own })).toEqual(['test', 'test', table('table A1-4.7')]);
    const polling = composePollingCall({ from: friend, to: own });
    expect(first(polling, { own })).toEqual(['polling', 'polling', table('table A1-4.9')]);
  });

  it('to an alert from a coast station, to a relay from the station called', () => {
    expect(first(alert, { own: coast, designated: true })).toEqual([
      'distress-acknowledgement',
      'alert',
      table('table A1-4.2'),
    ]);
    expect(first(relay, { own, equipmentClass: 'A' })).toEqual([
      'relay-acknowledgement',
      'relay',
      table('table A1-4.4'),
    ]);
    const toAll = composeDistressRelay({ from: friend, about: alert });
    expect(first(toAll, { own: coast, designated: true })?.[0]).toBe('relay-acknowledgement');
    expect(first({ ...relay, distressed: null }, { own, equipmentClass: 'A' })?.[0]).toBe(
      'relay-acknowledgement',
    );
  });
});

describe('the channels that are offered', () => {
  const offered = (call: Call, station: Omit<AnsweringStation, 'own'>) =>
    answersTo(call, { own, ...station }).answers.flatMap((each) =>
      each.meaning === 'unable' ? [] : [`${each.meaning}: ${saying(each)}`],
    );

  it('name the one asked for once', () => {
    expect(offered(hail, { channels: ['72', '77'] })).toEqual([
      'able: able 72',
      'able-on-another-channel: able-instead 77',
    ]);
  });

  it('are never 70, asked for or offered', () => {
    expect(offered({ ...hail, channel: '70' }, { channels: ['70', '77'] })).toEqual([
      'able-on-another-channel: able-instead 77',
    ]);
  });

  // Radio Regulations Appendix 18; ITU-R M.541-11 Annex 3, from memory.
  it('fit the waters, and 16 fits safety traffic but no routine', () => {
    const plan = unitedKingdomPlan;
    expect(offered({ ...hail, channel: '16' }, { plan })).toEqual([]);
    expect(offered({ ...hail, channel: '16', category: 'safety' }, { plan })).toEqual(['able: able 16']);
    expect(offered({ ...hail, channel: '77', category: 'safety' }, { plan })).toEqual(['able: able 77']);
    expect(offered({ ...hail, channel: '2099' }, { plan })).toEqual([]);
    expect(offered({ ...hail, channel: null }, { plan })).toEqual(['able: able']);
  });

  it('are left to a coast station, whichever side it is on', () => {
    const plan = unitedKingdomPlan;
    const toCoast = composeIndividualCall({ from: friend, to: coast, channel: '26' });
    expect(answersTo(toCoast, { own: coast, plan }).answers.map(saying)[0]).toBe('able 26');
    expect(offered(composeIndividualCall({ from: coast, to: own, channel: '26' }), { plan })).toEqual([
      'able: able 26',
    ]);
  });
});

describe('an answer of the telephone service', () => {
  it('goes back to the caller, without what was received beside the call', () => {
    const heard = { ...service, category: null, expansion: { speed: 6.2 } };
    const { answers } = answersTo(heard, { own });
    const back = {
      kind: 'automatic-service-call',
      to: { kind: 'station', mmsi: friend },
      from: own,
      category: 'routine',
      channel: '26',
      telephone: '5550123',
      end: 'answer',
    };
    expect(answers[0]?.call).toEqual({
      ...back,
      firstTelecommand: 'telephony-duplex',
      secondTelecommand: null,
    });
    expect(answers[3]).toMatchObject({
      meaning: 'unable',
      code: 'call-answer-unable',
      params: { reason: 'busy' },

      call: { ...back, firstTelecommand: 'unable-to-comply', secondTelecommand: 'busy' },
      clause: 'ITU-R M.493-16 Annex 1 table A1-4.9, unverified',
    });
  });
});
