import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  answersTo,
  type Call,
  checkCall,
  composeAllShipsCall,
  composeAutomaticServiceCall,
  composeDistressAlert,
  composeDistressRelay,
  composeGroupCall,
  composeIndividualCall,
  composePollingCall,
  composePositionRequest,
  composeTestCall,
  decodeFields,
  encodeFields,
} from '../../src/call/index.ts';
import { unitedKingdomPlan } from '../../src/channel/united-kingdom.ts';
import { unitedStatesPlan } from '../../src/channel/united-states.ts';
import { german } from '../../src/locale/de.ts';
import { english } from '../../src/locale/en.ts';
import { translate } from '../../src/locale/index.ts';
import { anyFields } from './arbitrary.ts';
import { saying } from './without-words.ts';
import { workedSequences } from './worked-sequences.ts';

const own = '232999142';
const friend = '232999871';
const coast = '002329990';
const hail = composeIndividualCall({ from: friend, to: own, channel: '72' });
const place = {
  kind: 'reported-position',
  latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
  longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
} as const;

// Compositions of the answers: ITU-R M.493-16 tables A1-4.7 and A1-4.9, from memory.
describe('a plan of the waters', () => {
  const asked = (channel: string, from = friend) =>
    answersTo(
      { ...composeIndividualCall({ from, to: own }), channel },
      {
        own,
        plan: unitedKingdomPlan,
        channels: ['10', '77'],
      },
    ).answers.flatMap((answer) => (answer.meaning === 'unable' ? [] : [saying(answer)]));

  it('leaves out what two ships cannot talk on', () => {
    expect(asked('72')).toEqual(['able 72', 'able-instead 77']);
    // A pair (the other ship listens on the coast side), the coastguard's own, and calls only.
    for (const channel of ['26', '16', '70']) expect(asked(channel)).toEqual(['able-instead 77']);
  });

  // 47 CFR 80.371: the United States have one side of channel 22 only, as 1022.
  it('leaves out what it does not have', () => {
    const call = { ...hail, channel: '22' };
    const { answers } = answersTo(call, { own, plan: unitedStatesPlan, channels: ['22', '72'] });
    expect(answers.slice(0, 2).map(saying)).toEqual(['able-instead 72', 'unable no-reason']);
  });

  it('has no say in what a coast station names', () => {
    expect(asked('26', coast)[0]).toBe('able 26');
  });
});

describe('an individual call', () => {
  const answered = () => answersTo(hail, { own, channels: ['72', '77'] });

  it('is answered able, able elsewhere, or unable with each of the ten reasons', () => {
    const { answers, none } = answered();
    expect(none).toBeNull();
    expect(answers.map(saying)).toEqual([
      'able 72',
      'able-instead 77',
      'unable no-reason',
      'unable switching-centre-congested',
      'unable busy',
      'unable queue',
      'unable station-barred',
      'unable no-operator',
      'unable operator-unavailable',
      'unable equipment-disabled',
      'unable channel-unusable',
      'unable mode-unusable',
    ]);
  });

  // Radio Regulations Appendix 18 note j): channel 70 carries selective calls only.
  it('is never answered able on channel 70', () => {
    const asked = answersTo(
      { ...composeIndividualCall({ from: friend, to: own }), channel: '70' },
      {
        own,
        channels: ['72'],
      },
    );
    expect(asked.answers.slice(0, 2).map(saying)).toEqual(['able-instead 72', 'unable no-reason']);
  });

  it('is answered in other languages too', () => {
    const { answers } = answered();
    for (const answer of answers)
      expect(translate({ ...answer, text: answer.label }, english).text).toBe(answer.label);
    expect(answers.slice(1, 3).map((answer) => translate(answer, german).text)).toEqual([
      'Kann nachkommen, stattdessen auf Kanal 77',
      'Kann nicht nachkommen: kein Grund angegeben',
    ]);
    const other = answersTo(hail, { own: '232999563' }).none;
    expect(other && translate(other, english).text).toBe(other?.reason);
  });

  it('is answered by the symbols of the worked sequences', () => {
    const worked = (name: string) => workedSequences.find((row) => row.name === name);
    const request = worked('individual-routine-request')?.call as Call;
    const sent = answersTo(request, { own: '208000202' }).answers.map((answer) => encodeFields(answer.call));
    expect(sent).toContainEqual(worked('individual-able-to-comply')?.fields);
    expect(sent).toContainEqual(worked('individual-unable-busy')?.fields);
  });

  it('is answered with nothing to object to', () => {
    for (const { call, label } of answered().answers) expect(checkCall(call), label).toEqual([]);
  });

  it('heard on a wire that does not name the called station is for the own station', () => {
    const heard = { ...hail, to: { kind: 'station', mmsi: null } } as const;
    expect(answersTo(heard, { own }).answers[0]?.call.from).toBe(own);
  });
});

describe('enquiries', () => {
  it('a position request: the position, or a refusal', () => {
    const call = composePositionRequest({ from: friend, to: own });
    const { answers } = answersTo(call, { own, position: place, time: { hour: 9, minute: 15 } });
    // A request proposes no channel and no mode, so that two of the ten reasons fall away.
    expect(answers.map(saying).join()).not.toMatch(/channel-unusable|mode-unusable/);
    expect(answers).toHaveLength(9);
    expect(answers[0]).toMatchObject({
      meaning: 'position',
      code: 'call-answer-position',
      params: { position: '56°20′ N 006°30′ W' },
      call: { kind: 'position-reply', position: place, unsolicited: false },
    });
    expect(answers[1]?.call).toMatchObject({
      kind: 'unable-to-comply',
      category: 'safety',
      reason: 'no-reason',
    });
    expect(answersTo(call, { own }).answers[0]).toMatchObject({
      meaning: 'position',
      code: 'call-answer-position-unknown',
    });
  });

  it('a test call and polling: one answer each', () => {
    const test = answersTo(composeTestCall({ from: friend, to: own }), { own }).answers;
    expect(test.map((answer) => answer.call.kind)).toEqual(['test-acknowledgement']);
    const polling = answersTo(composePollingCall({ from: friend, to: own }), { own }).answers;
    expect(polling.map((answer) => answer.call.kind)).toEqual(['polling-acknowledgement']);
  });

  it('a telephone call: able or unable, under the same format specifier', () => {
    const call = composeAutomaticServiceCall({ from: friend, to: coast, telephone: '5550123' });
    const { answers } = answersTo(call, { own: coast });
    expect(answers).toHaveLength(11);
    expect(encodeFields(answers[3]?.call as Call)).toMatchObject({
      format: 123,
      telecommand1: 104,
      telecommand2: 102,
      end: 122,
    });
  });
});

describe('no DSC answer, with its reason', () => {
  const alert = composeDistressAlert({ from: '232999218' });

  it('to an alert, except from a designated coast station (47 CFR 80.103(c), 80.1117(a))', () => {
    const { answers, none } = answersTo(alert, { own });
    expect(answers).toEqual([]);
    expect(none?.code).toBe('call-no-answer-ship-alert');
    expect(none?.clause).toContain('47 CFR 80.1117(a), 80.1121(b)');
    expect(
      answersTo(alert, { own: coast, designated: true }).answers.map((answer) => answer.call),
    ).toMatchObject([{ kind: 'distress-acknowledgement', from: coast, distressed: '232999218' }]);
  });

  it('to a relay for all ships; one to the own station has one', () => {
    expect(answersTo(composeDistressRelay({ from: coast, about: alert }), { own }).none?.code).toBe(
      'call-no-answer-ship-relay',
    );
    const toOne = composeDistressRelay({ from: coast, to: own, about: alert });
    expect(answersTo(toOne, { own, equipmentClass: 'A' }).answers.map((answer) => answer.call)).toMatchObject(
      [{ kind: 'distress-relay-acknowledgement', to: { mmsi: coast } }],
    );
  });

  // ITU-R M.493-16, equipment classes, from memory: class D and hand-held sets do not acknowledge distress.
  it.each([undefined, 'D', 'H', 'M'] as const)(
    'to a relay for a ship with equipment of class %s',
    (equipmentClass) => {
      const toOne = composeDistressRelay({ from: coast, to: own, about: alert });
      const { answers, none } = answersTo(toOne, { own, equipmentClass });
      expect(answers).toEqual([]);
      expect(none).toMatchObject({
        code: 'call-no-answer-class-relay',
        clause: 'ITU-R M.493-16 table A1-4.4, unverified',
      });
    },
  );

  it('that a class of equipment does not send', () => {
    const test = composeTestCall({ from: friend, to: own });
    expect(answersTo(test, { own, equipmentClass: 'M' }).none).toMatchObject({
      code: 'call-no-answer-class',
      clause: 'ITU-R M.493-16, unverified',
    });
    // Where no set would answer, the class is not the reason.
    expect(answersTo(test, { own: friend, equipmentClass: 'M' }).none?.code).toBe('call-no-answer-own');
    expect(answersTo(test, { own, equipmentClass: 'H' }).answers).toHaveLength(1);
  });

  it('to calls to many', () => {
    for (const call of [
      composeGroupCall({ from: friend, to: '023299905', channel: '77' }),
      composeAllShipsCall({ from: friend, category: 'safety' }),
    ]) {
      expect(answersTo(call, { own }).none?.code).toBe('call-no-answer-to-many');
    }
  });

  it('to answers, to other stations, and to nobody', () => {
    const [able] = answersTo(hail, { own }).answers;
    expect(answersTo(able?.call as Call, { own: friend }).none?.code).toBe('call-no-answer-is-answer');
    expect(answersTo(hail, { own: '232999563' }).none?.code).toBe('call-no-answer-other');
    expect(answersTo({ ...hail, from: null }, { own }).none?.code).toBe('call-no-answer-sender');
  });
});

describe('answering whatever is received', () => {
  it('gives answers or a reason, and every answer can be sent', () => {
    fc.assert(
      fc.property(anyFields, fc.constantFrom(own, coast), (fields, station) => {
        const { call } = decodeFields(fields);
        const target = call.to?.kind === 'station' ? { ...call, to: { kind: 'station', mmsi: null } } : call;
        const { answers, none } = answersTo(target as Call, { own: station, position: place });
        expect(answers.length > 0).toBe(none === null);
        for (const answer of answers) {
          const sent = encodeFields(answer.call);
          expect(decodeFields(sent).call.kind).toBe(answer.call.kind);
          expect(Object.values(sent).flat()).not.toContain(undefined);
          expect([sent.format, sent.category, sent.end]).not.toContain(null);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
