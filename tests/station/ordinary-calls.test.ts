import { describe, expect, it } from 'vitest';
import {
  type Call,
  composeAllShipsCall,
  composeAreaCall,
  composeDistressAlert,
  composeGroupCall,
  composeIndividualCall,
  composePositionReply,
  composePositionRequest,
  composeTestAcknowledgement,
  composeTestCall,
  type EquipmentClass,
  type Reason,
} from '../../src/call/index.ts';
import { spokenScript } from '../../src/speech/index.ts';
import {
  createStation,
  type SettingsInput,
  type StationEvent,
  type StationSettings,
  step,
} from '../../src/station/index.ts';
import { club, coast, friend, own } from './happenings.ts';
import { effectsOf, Radio } from './radio.ts';

const SECOND = 1000;
const MINUTE = 60 * SECOND;

/** Carries what one radio sends to the other, both clocks running. */
function carry(from: Radio, to: Radio): void {
  const before = from.now;
  const { call } = from.finish();
  to.pass(from.now - before);
  to.give({ kind: 'received', call, verdict: 'clean' });
}

function pair(friendly: Partial<SettingsInput> = {}): readonly [merrow: Radio, tern: Radio] {
  return [new Radio({ mmsi: own }), new Radio({ mmsi: friend, ...friendly })];
}

const buddyCall = composeIndividualCall({ from: own, to: friend, channel: '72' });
const usual = new Radio({ mmsi: own }).state.settings.policies;

function policies(changed: Partial<StationSettings['policies']>): StationSettings['policies'] {
  return { ...usual, ...changed };
}

describe('a call to a friend', () => {
  it('answered by itself, the owner having chosen so: ITU-R M.541, automatic answer within 3 s', () => {
    const [merrow, tern] = pair({ policies: policies({ individual: 'automatic' }) });
    // M.493-16 table A1-4.9: routine, individual, answer requested.
    merrow.give({ kind: 'call', call: buddyCall });
    carry(merrow, tern);
    // M.541: the answer starts within three seconds; here the channel is free, so at once.
    expect(tern.onAir?.call).toMatchObject({ kind: 'individual-acknowledgement', channel: '72' });
    carry(tern, merrow);
    // M.493-16, automatic channel switching: both are on the working channel.
    expect(effectsOf(merrow.effects, 'tune').map(({ channel }) => channel)).toEqual(['72']);
    expect(effectsOf(tern.effects, 'tune').map(({ channel }) => channel)).toEqual(['72']);
    expect(effectsOf(merrow.effects, 'speak')[0]?.situation).toBe('routine-call');
    // M.493-16, automated procedures: closed by hand, back to the watch on 16.
    merrow.give({ kind: 'dismiss', dialogue: 1 });
    expect(effectsOf(merrow.effects, 'tune').at(-1)?.channel).toBe('16');
    expect(merrow.phases).toEqual([]);
  });

  it('answered by hand on the channel proposed, or on another: ITU-R M.541, within 5 minutes', () => {
    for (const channel of ['72', '77']) {
      const [merrow, tern] = pair();
      merrow.give({ kind: 'call', call: buddyCall });
      carry(merrow, tern);
      expect(effectsOf(tern.effects, 'ask')[0]?.answers).toEqual(['answer', 'reject', 'dismiss']);
      tern.pass(4 * MINUTE);
      merrow.pass(4 * MINUTE);
      tern.give({ kind: 'answer', dialogue: 1, channel });
      carry(tern, merrow);
      expect(merrow.state.tunedTo).toBe(channel);
      expect(tern.state.tunedTo).toBe(channel);
    }
  });

  it('asks before it tunes to a channel that the owner does not use', () => {
    const [merrow, tern] = pair();
    merrow.give({ kind: 'call', call: buddyCall });
    carry(merrow, tern);
    tern.give({ kind: 'answer', dialogue: 1, channel: '10' });
    carry(tern, merrow);
    expect(merrow.phases).toEqual(['outgoing: agreed']);
    expect(merrow.state.tunedTo).toBeNull();
    merrow.give({ kind: 'confirm', dialogue: 1 });
    expect(merrow.state.tunedTo).toBe('10');
  });

  it('refused, with each reason: ITU-R M.493, second telecommand 100 to 109', () => {
    const reasons = [
      'no-reason',
      'busy',
      'queue',
      'station-barred',
      'no-operator',
      'operator-unavailable',
    ] as const;
    const more = [
      'equipment-disabled',
      'channel-unusable',
      'mode-unusable',
      'switching-centre-congested',
    ] as const;
    for (const reason of [...reasons, ...more]) {
      const [merrow, tern] = pair();
      merrow.give({ kind: 'call', call: buddyCall });
      carry(merrow, tern);
      tern.give({ kind: 'reject', dialogue: 1, reason });
      carry(tern, merrow);
      expect(merrow.phases).toEqual(['outgoing: refused']);
      expect(merrow.log.at(-1)).toMatchObject({
        code: 'station-refused',
        params: { call: { code: 'station-brief', params: { kind: 'unable-to-comply', reason } } },
      });
    }
  });

  it('refused by policy, for one caller alone: the answer is 104 with the reason', () => {
    const [merrow, tern] = pair({
      callers: [{ caller: own, subject: 'individual', policy: 'reject-station-barred' }],
    });
    merrow.give({ kind: 'call', call: buddyCall });
    carry(merrow, tern);
    expect(tern.onAir?.call).toMatchObject({ kind: 'unable-to-comply', reason: 'station-barred' });
    tern.finish();
    tern.give({ kind: 'received', call: { ...buddyCall, from: '232999563' }, verdict: 'clean' });
    expect(tern.phases).toEqual(['incoming: deciding']);
  });

  it('refused for its channel: another is offered', () => {
    const [merrow, tern] = pair();
    merrow.give({ kind: 'call', call: buddyCall });
    carry(merrow, tern);
    tern.give({ kind: 'reject', dialogue: 1, reason: 'channel-unusable' });
    carry(tern, merrow);
    merrow.give({ kind: 'counter-propose', dialogue: 1, channel: '77' });
    expect(merrow.onAir?.call).toMatchObject({ kind: 'individual-call', channel: '77' });
  });

  it('unanswered twice: ITU-R M.541, second try after 5 minutes', () => {
    const [merrow] = pair();
    merrow.give({ kind: 'call', call: buddyCall });
    merrow.finish();
    merrow.pass(5 * MINUTE - 1);
    expect(merrow.onAir).toBeNull();
    merrow.pass(1);
    expect(merrow.onAir?.call).toEqual(buddyCall);
    merrow.finish();
    merrow.pass(5 * MINUTE);
    expect(merrow.phases).toEqual(['outgoing: unanswered']);
    expect(effectsOf(merrow.effects, 'show').at(-1)?.topic).toBe('no-answer');
    merrow.pass(60 * MINUTE);
    expect(merrow.phases).toEqual([]);
    expect(effectsOf(merrow.effects, 'send')).toHaveLength(2);
  });

  it('to a coast station: again after 5 minutes, and after a further 15; ITU-R M.541', () => {
    const radio = new Radio({ mmsi: own });
    const starts: number[] = [];
    radio.give({ kind: 'call', call: composeIndividualCall({ from: own, to: coast }) });
    for (let attempt = 0; attempt < 3; attempt++) {
      while (radio.onAir === null) radio.pass(SECOND);
      radio.finish();
      starts.push(radio.now);
    }
    expect(Math.round(((starts[1] ?? 0) - (starts[0] ?? 0)) / MINUTE)).toBe(5);
    expect(Math.round(((starts[2] ?? 0) - (starts[1] ?? 0)) / MINUTE)).toBe(15);
    radio.pass(30 * MINUTE);
    expect(effectsOf(radio.effects, 'send')).toHaveLength(3);
  });

  it('answered late, after all was given up, still counts', () => {
    const [merrow, tern] = pair();
    merrow.give({ kind: 'call', call: buddyCall, attempts: 1 });
    carry(merrow, tern);
    tern.give({ kind: 'answer', dialogue: 1 });
    merrow.pass(6 * MINUTE);
    expect(merrow.phases).toEqual(['outgoing: unanswered']);
    carry(tern, merrow);
    expect(merrow.state.tunedTo).toBe('72');
  });

  it('called again because the answer was lost: it is answered again', () => {
    const [merrow, tern] = pair({ policies: policies({ individual: 'automatic' }) });
    merrow.give({ kind: 'call', call: buddyCall });
    carry(merrow, tern);
    tern.finish();
    expect(tern.phases).toEqual(['incoming: on-channel']);
    tern.pass(5 * MINUTE);
    tern.give({ kind: 'received', call: buddyCall, verdict: 'clean' });
    expect(tern.onAir?.call.kind).toBe('individual-acknowledgement');
  });
});

describe('no automatic action', () => {
  const everything = policies({
    individual: 'automatic',
    position: 'automatic',
    group: 'automatic',
    'all-ships': 'automatic',
  });
  const calls: readonly Call[] = [
    buddyCall,
    composePositionRequest({ from: own, to: friend }),
    composeTestCall({ from: own, to: friend }),
  ];

  it.each(['repaired', 'doubtful'] as const)('on a call received %s: ITU-R M.493, error check', (verdict) => {
    for (const call of calls) {
      const tern = new Radio({ mmsi: friend, policies: everything });
      tern.give({ kind: 'received', call, verdict });
      expect(tern.onAir).toBeNull();
      expect(tern.state.tunedTo).toBeNull();
      expect(tern.phases).toEqual([verdict === 'repaired' ? 'incoming: deciding' : 'incoming: shown']);
    }
  });

  it('on a call that does not say for whom it is, nor on one for somebody else', () => {
    const tern = new Radio({ mmsi: friend, policies: everything });
    tern.give({
      kind: 'received',
      call: { ...buddyCall, to: { kind: 'station', mmsi: null } },
      verdict: 'clean',
    });
    expect(tern.onAir).toBeNull();
    tern.give({
      kind: 'received',
      call: { ...buddyCall, to: { kind: 'station', mmsi: coast } },
      verdict: 'clean',
    });
    expect(tern.state.dialogues).toHaveLength(1);
    const toSomeGroup = {
      ...composeGroupCall({ from: own, to: club, channel: '77' }),
      to: { kind: 'group', mmsi: null },
    } as const;
    tern.give({ kind: 'received', call: toSomeGroup, verdict: 'clean' });
    expect(tern.phases).toContain('incoming: agreed');
    expect(tern.state.tunedTo).toBeNull();
  });

  it('later than three seconds after the call: ITU-R M.541', () => {
    const tern = new Radio({ mmsi: friend, policies: everything });
    tern.give({ kind: 'channel', busy: true });
    tern.give({ kind: 'received', call: buddyCall, verdict: 'clean' });
    tern.pass(2999);
    expect(tern.phases).toEqual(['incoming: waiting-channel']);
    tern.pass(1);
    expect(tern.phases).toEqual(['incoming: deciding']);
    tern.give({ kind: 'channel', busy: false });
    expect(tern.onAir).toBeNull();
  });

  it('without an own identity', () => {
    const tern = new Radio({ mmsi: null, policies: everything });
    tern.give({
      kind: 'received',
      call: { ...buddyCall, to: { kind: 'station', mmsi: null } },
      verdict: 'clean',
    });
    expect(tern.onAir).toBeNull();
    expect(effectsOf(tern.give({ kind: 'call', call: buddyCall }), 'issue')[0]?.issue.code).toBe(
      'station-identity-missing',
    );
  });
});

describe('a call to a group', () => {
  const call = composeGroupCall({ from: own, to: club, channel: '77' });

  it('reaches its members and nobody else: ITU-R M.493-16 table A1-4.8', () => {
    const member = new Radio({ mmsi: friend, groups: [club] });
    member.give({ kind: 'received', call, verdict: 'clean' });
    expect(effectsOf(member.effects, 'ask')[0]).toMatchObject({
      question: 'tune-to',
      code: 'station-ask-tune',
      params: { channel: '77' },
    });
    member.give({ kind: 'confirm', dialogue: 1 });
    expect(member.state.tunedTo).toBe('77');
    expect(member.onAir, 'a group call is not answered').toBeNull();
    const stranger = new Radio({ mmsi: friend });
    stranger.give({ kind: 'received', call, verdict: 'clean' });
    expect(stranger.phases).toEqual([]);
  });

  it('takes the caller to the channel as soon as it is sent', () => {
    const merrow = new Radio({ mmsi: own, groups: [club] });
    merrow.give({ kind: 'call', call });
    merrow.finish();
    expect(merrow.state.tunedTo).toBe('77');
    expect(merrow.phases).toEqual(['outgoing: on-channel']);
  });

  it('tunes by itself where the owner chose so', () => {
    const member = new Radio({ mmsi: friend, groups: [club], policies: policies({ group: 'automatic' }) });
    member.give({ kind: 'received', call, verdict: 'clean' });
    expect(member.state.tunedTo).toBe('77');
  });
});

describe('a position request', () => {
  const call = composePositionRequest({ from: own, to: friend });
  const fix = { kind: 'fix', position: { latitude: 56.35, longitude: -6.51 }, source: 'instrument' } as const;

  it('granted: ITU-R M.493-16 table A1-4.7, position reply with its time', () => {
    const [merrow, tern] = pair({ policies: policies({ position: 'automatic' }) });
    tern.give(fix);
    merrow.give({ kind: 'call', call });
    carry(merrow, tern);
    expect(tern.onAir?.call).toMatchObject({
      kind: 'position-reply',
      position: { latitude: { degrees: 56, minutes: 21 }, longitude: { degrees: 6, minutes: 30 } },
      time: { hour: 18, minute: 0 },
    });
    carry(tern, merrow);
    expect(effectsOf(merrow.effects, 'show').at(-1)?.topic).toBe('position-received');
    expect(merrow.phases).toEqual([]);
  });

  it('granted by hand out of the box', () => {
    const tern = new Radio({ mmsi: friend });
    tern.give(fix);
    tern.give({ kind: 'received', call, verdict: 'clean' });
    expect(tern.onAir).toBeNull();
    tern.give({ kind: 'answer', dialogue: 1 });
    expect(tern.onAir?.call.kind).toBe('position-reply');
  });

  it('refused: "unable to comply" with its reason', () => {
    const [merrow, tern] = pair({ policies: policies({ position: 'reject-no-reason' }) });
    tern.give(fix);
    merrow.give({ kind: 'call', call });
    carry(merrow, tern);
    carry(tern, merrow);
    expect(merrow.phases).toEqual(['outgoing: refused']);
  });

  it('no fix: position and time go out as unknown; ITU-R M.541-11 Annex 1 (9s and 8s)', () => {
    const [merrow, tern] = pair({ policies: policies({ position: 'automatic' }) });
    merrow.give({ kind: 'call', call });
    carry(merrow, tern);
    expect(tern.onAir?.call).toMatchObject({ kind: 'position-reply', position: null, time: null });
  });

  it('granted by an older set whose reply does not end as an answer: it counts', () => {
    const merrow = new Radio({ mmsi: own });
    merrow.give({ kind: 'call', call });
    merrow.finish();
    const reply = { ...composePositionReply({ from: friend, to: own }), unsolicited: true };
    merrow.give({ kind: 'received', call: reply, verdict: 'clean' });
    expect(merrow.phases).toEqual([]);
    merrow.give({ kind: 'received', call: reply, verdict: 'clean' });
    expect(merrow.phases, 'and without a request it is a report').toEqual(['incoming: shown']);
  });

  it('with a position of 4 hours warns, of 23.5 hours sends none: ITU-R M.493-16, from memory', () => {
    const tern = new Radio({ mmsi: friend, policies: policies({ position: 'automatic' }) });
    tern.give({ ...fix, source: 'person' });
    expect(effectsOf(tern.pass(4 * 60 * MINUTE - 1), 'sound')).toEqual([]);
    expect(effectsOf(tern.pass(1), 'show')[0]?.topic).toBe('position-old');
    tern.give({ kind: 'received', call, verdict: 'clean' });
    expect(tern.finish().call).toMatchObject({ time: { hour: 18, minute: 0 } });
    expect(effectsOf(tern.pass(19.5 * 60 * MINUTE), 'show').at(-1)?.topic).toBe('position-erased');
    tern.give({ kind: 'received', call, verdict: 'clean' });
    expect(tern.finish().call).toMatchObject({ position: null, time: null });
  });
});

describe('a test call to the coast', () => {
  it('answered: ITU-R M.493-16 table A1-4.7, first telecommand 118', () => {
    const merrow = new Radio({ mmsi: own });
    const skerra = new Radio({ mmsi: coast, equipment: 'coast' });
    merrow.give({ kind: 'call', call: composeTestCall({ from: own, to: coast }) });
    carry(merrow, skerra);
    carry(skerra, merrow);
    expect(merrow.phases).toEqual([]);
    expect(effectsOf(merrow.effects, 'show').at(-1)?.topic).toBe('answered');
  });

  it('to the identity of all coast stations of a country is answered by one of them under her own', () => {
    const merrow = new Radio({ mmsi: own });
    const call = composeTestCall({ from: own, to: '002320000' });
    merrow.give({ kind: 'call', call });
    merrow.finish();
    const answer = composeTestAcknowledgement({ call, from: coast });
    merrow.give({ kind: 'received', call: answer, verdict: 'clean' });
    expect(merrow.phases).toEqual([]);
  });

  it('unanswered is told soon, and is not repeated by itself', () => {
    const merrow = new Radio({ mmsi: own });
    merrow.give({ kind: 'call', call: composeTestCall({ from: own, to: coast }) });
    merrow.finish();
    merrow.pass(MINUTE);
    expect(merrow.phases).toEqual(['outgoing: unanswered']);
    expect(merrow.onAir).toBeNull();
  });
});

describe('urgency and safety to all ships', () => {
  it('needs a second thought, then goes to voice on 16: ITU-R M.541', () => {
    const merrow = new Radio({ mmsi: own });
    merrow.give({
      kind: 'call',
      call: composeAllShipsCall({ from: own, category: 'urgency', channel: '16' }),
    });
    expect(merrow.onAir).toBeNull();
    expect(effectsOf(merrow.effects, 'ask')[0]?.caution?.code).toBe('station-caution-sending');
    merrow.give({ kind: 'confirm', dialogue: 1 });
    merrow.finish();
    expect(effectsOf(merrow.effects, 'speak')[0]).toMatchObject({ situation: 'pan-pan', channel: '16' });
  });

  it('sounds an alarm of its own, urgency until silenced: ITU-R M.493, alarms, from memory', () => {
    const tern = new Radio({ mmsi: friend });
    const sounds = (['urgency', 'safety'] as const).map((category) => {
      const call = composeAllShipsCall({ from: own, category, channel: '16' });
      return effectsOf(tern.give({ kind: 'received', call, verdict: 'clean' }), 'sound')[0];
    });
    expect(sounds).toMatchObject([
      { alarm: 'urgency', lasts: 'until-silenced' },
      { alarm: 'safety', lasts: 'short' },
    ]);
    expect(effectsOf(tern.give({ kind: 'silence' }), 'silence').map(({ alarm }) => alarm)).toEqual([
      'urgency',
    ]);
  });
});

describe('starting a call', () => {
  const area = composeAreaCall({
    from: own,
    category: 'safety',
    channel: '16',
    area: {
      kind: 'geographic-area',
      north: { hemisphere: 'N', degrees: 57 },
      west: { hemisphere: 'W', degrees: 7 },
      southward: 1,
      eastward: 1,
    },
  });

  // ITU-R M.493-16, classes of equipment, from memory: D and H have no area calls, M nothing but its distress.
  it.each<[EquipmentClass, Call, boolean]>([
    ['A', area, true],
    ['D', area, false],
    ['H', area, false],
    ['D', buddyCall, true],
    ['H', buddyCall, true],
    ['M', buddyCall, false],
  ])('class %s, %o: %s', (equipment, call, allowed) => {
    const radio = new Radio({ mmsi: own, equipment });
    const refused = effectsOf(radio.give({ kind: 'call', call }), 'issue');
    expect(refused.map(({ issue }) => issue.code)).toEqual(allowed ? [] : ['station-class-cannot-send']);
  });

  it('refuses what cannot be sent, and says why', () => {
    const radio = new Radio({ mmsi: own });
    const codeFor = (call: Call) => effectsOf(radio.give({ kind: 'call', call }), 'issue')[0]?.issue.code;
    const base: Call<'individual-call'> = buddyCall;
    expect(codeFor({ ...base, to: { kind: 'station', mmsi: null } })).toBe('station-address-missing');
    expect(codeFor({ ...base, to: { kind: 'station', mmsi: own } })).toBe('station-call-to-itself');
    // RR Appendix 18 note j) for 70; 16 for distress, safety and calling; 2087 carries AIS (47 CFR 80.371(c)).
    for (const channel of ['70', '16', '2087'])
      expect(codeFor({ ...base, channel })).toBe('station-channel-barred');
    for (const channel of ['99', '0000', 'M2', 'x'])
      expect(codeFor({ ...base, channel })).toBe('station-channel-form');
    expect(codeFor({ ...base, kind: 'individual-acknowledgement' })).toBe('station-not-a-beginning');
    expect(radio.state.dialogues).toEqual([]);
  });

  it('refuses acts on dialogues that are not there, or not now', () => {
    const radio = new Radio({ mmsi: own });
    expect(effectsOf(radio.give({ kind: 'dismiss', dialogue: 9 }), 'issue')[0]?.issue.code).toBe(
      'station-no-such-dialogue',
    );
    radio.give({ kind: 'call', call: buddyCall });
    expect(effectsOf(radio.give({ kind: 'confirm', dialogue: 1 }), 'issue')[0]?.issue).toMatchObject({
      code: 'station-not-now',
      params: { dialogue: 1, phase: 'sending' },
    });
    expect(
      effectsOf(radio.give({ kind: 'answer', dialogue: 1, channel: '70' }), 'issue')[0]?.issue.code,
    ).toBe('station-channel-barred');
    expect(effectsOf(radio.give({ kind: 'sent', dialogue: 7 }), 'issue')[0]?.issue.code).toBe(
      'station-not-on-air',
    );
    const nowhere = { latitude: 91, longitude: 0 };
    expect(
      effectsOf(radio.give({ kind: 'fix', position: nowhere, source: 'person' }), 'issue')[0]?.issue.code,
    ).toBe('station-fix-form');
  });

  it('wants an identity that can be a station’s own: ITU-R M.585-10', () => {
    for (const mmsi of [club, '002320000', '123', '970123456', '']) {
      expect(() => createStation({ mmsi }), mmsi).toThrow(RangeError);
    }
  });

  it('keeps an identity that is stored once: ITU-R M.493-16, from memory', () => {
    const radio = new Radio({ mmsi: null });
    const change = (mmsi: string | null) =>
      effectsOf(radio.give({ kind: 'settings', settings: { ...radio.state.settings, mmsi } }), 'issue')[0]
        ?.issue.code;
    expect(change(club)).toBe('station-identity-form');
    expect(change(own)).toBeUndefined();
    expect(change(friend)).toBe('station-identity-fixed');
    expect(radio.state.settings.mmsi).toBe(own);
  });
});

describe('several dialogues at once', () => {
  it('have one before the person, distress first, and the person may choose another', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({
      kind: 'received',
      call: { ...buddyCall, from: friend, to: { kind: 'station', mmsi: own } },
      verdict: 'clean',
    });
    radio.give({ kind: 'call', call: composeTestCall({ from: own, to: coast }) });
    expect(radio.state.active).toBe(1);
    radio.give({ kind: 'prepare-alert' });
    expect(radio.state.active).toBe(3);
    radio.give({ kind: 'select', dialogue: 2 });
    expect(radio.state.active).toBe(2);
  });

  it('stay bounded: the oldest ordinary one makes room, and the log says so', () => {
    const radio = new Radio({ mmsi: own });
    for (let caller = 0; caller < 60; caller++) {
      const call = {
        ...buddyCall,
        from: `2329${99000 + caller}`,
        to: { kind: 'station', mmsi: own },
      } as const;
      radio.give({ kind: 'received', call, verdict: 'clean' });
    }
    expect(radio.state.dialogues).toHaveLength(32);
    expect(radio.log.some(({ code }) => code === 'station-closed-for-room')).toBe(true);
  });
});

describe('tuning', () => {
  it('is left to the person where the owner wants that: ITU-R M.493-16, automatic channel switching', () => {
    const [merrow, tern] = [new Radio({ mmsi: own, tuning: 'by-hand' }), new Radio({ mmsi: friend })];
    merrow.give({ kind: 'call', call: buddyCall });
    carry(merrow, tern);
    tern.give({ kind: 'answer', dialogue: 1 });
    carry(tern, merrow);
    expect(merrow.phases).toEqual(['outgoing: agreed']);
    expect(effectsOf(merrow.effects, 'tune')).toEqual([]);
  });

  it('never takes the radio to the channel of the calls: Radio Regulations Appendix 18, 70 is for DSC only', () => {
    const merrow = new Radio({ mmsi: own });
    const call = { ...composeIndividualCall({ from: own, to: coast }), from: null };
    merrow.give({ kind: 'call', call });
    merrow.finish();
    const answer = {
      ...call,
      kind: 'individual-acknowledgement',
      from: coast,
      to: { kind: 'station', mmsi: own },
    } as const;
    merrow.give({ kind: 'received', call: { ...answer, channel: '70' }, verdict: 'clean' });
    expect(merrow.state.tunedTo).toBeNull();
    expect(merrow.phases).toEqual([]);
  });

  it('does not pull the radio away from where somebody put it since', () => {
    const merrow = new Radio({ mmsi: own, groups: [club] });
    merrow.give({ kind: 'call', call: composeGroupCall({ from: own, to: club, channel: '77' }) });
    merrow.finish();
    merrow.give({ kind: 'tuned', channel: '06' });
    merrow.give({ kind: 'dismiss', dialogue: 1 });
    expect(effectsOf(merrow.effects, 'tune').map(({ channel }) => channel)).toEqual(['77']);
  });

  it('after ten minutes without an act puts the call away and leaves the radio where it is: ITU-R M.493', () => {
    const merrow = new Radio({ mmsi: own, groups: [club] });
    merrow.give({ kind: 'call', call: composeGroupCall({ from: own, to: club, channel: '77' }) });
    merrow.finish();
    const effects = merrow.pass(10 * MINUTE);
    expect(effectsOf(effects, 'show')[0]).toMatchObject({
      code: 'station-closed-idle',
      params: { channel: '77' },
    });
    expect(effectsOf(effects, 'tune')).toEqual([]);
    expect(merrow.phases).toEqual([]);
  });
});

describe('the words to speak', () => {
  it('belong to the call that the effect names: seahail/call makes them', () => {
    const [merrow, tern] = pair();
    merrow.give({ kind: 'call', call: buddyCall });
    carry(merrow, tern);
    tern.give({ kind: 'answer', dialogue: 1 });
    carry(tern, merrow);
    const [asks] = effectsOf(merrow.effects, 'speak');
    const [answers] = effectsOf(tern.effects, 'speak');
    expect([asks?.situation, answers?.situation]).toEqual(['routine-call', 'routine-answer']);
    for (const [effect, mmsi] of [
      [asks, own],
      [answers, friend],
    ] as const) {
      const script = spokenScript(effect?.call as Call, { mmsi });
      expect(script.channel).toBe('72');
      expect(script.lines.length).toBeGreaterThan(0);
    }
  });

  it('are none where a ship listens only', () => {
    const tern = new Radio({ mmsi: friend });
    const call = composeAllShipsCall({ from: own, category: 'urgency', channel: '16' });
    tern.give({ kind: 'received', call, verdict: 'clean' });
    tern.give({ kind: 'confirm', dialogue: 1 });
    expect(tern.state.tunedTo).toBe('16');
    expect(effectsOf(tern.effects, 'speak')).toEqual([]);
  });
});

describe('channels of a talk', () => {
  it('are taken by any of their names, and sent by their digits: ITU-R M.1084', () => {
    const radio = new Radio({ mmsi: own, channels: ['78A', '72'] });
    expect(radio.state.settings.channels).toEqual(['1078', '72']);
    radio.give({ kind: 'call', call: { ...buddyCall, channel: '78A' } });
    expect(radio.onAir?.call).toMatchObject({ channel: '1078' });
    expect(() => new Radio({ mmsi: coast, equipment: 'coast', channels: ['M2'] })).toThrow(RangeError);
    expect(() => new Radio({ mmsi: own, channels: ['70'] })).toThrow(RangeError);
  });

  it.each(['16', '2087', '99', '22', '10'])('proposed as %s are not agreed to by itself', (channel) => {
    const radio = new Radio({ mmsi: own, policies: policies({ individual: 'automatic' }), channels: ['72'] });
    const call = { ...buddyCall, from: friend, to: { kind: 'station', mmsi: own }, channel } as const;
    radio.give({ kind: 'received', call, verdict: 'clean' });
    expect(radio.onAir).toBeNull();
    expect(effectsOf(radio.effects, 'tune')).toEqual([]);
    expect(radio.phases).toEqual(['incoming: deciding']);
    const refused = radio.give({ kind: 'reject', dialogue: 1, reason: 'channel-unusable' });
    expect(effectsOf(refused, 'send')[0]?.call).toMatchObject({ kind: 'unable-to-comply' });
  });

  it('that no call can name are refused when a person names them', () => {
    const radio = new Radio({ mmsi: own });
    const call = { ...buddyCall, from: friend, to: { kind: 'station', mmsi: own } } as const;
    radio.give({ kind: 'received', call, verdict: 'clean' });
    for (const channel of ['99', '0000', 'x', '16', '70'])
      expect(effectsOf(radio.give({ kind: 'answer', dialogue: 1, channel }), 'issue')).toHaveLength(1);
    expect(radio.phases).toEqual(['incoming: deciding']);
  });
});

describe('an answer', () => {
  it('goes to the call it answers when two wait: by category', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'call', call: buddyCall });
    radio.finish();
    radio.give({ kind: 'call', call: composePositionRequest({ from: own, to: friend }) });
    radio.finish();
    const call = {
      kind: 'unable-to-comply',
      from: friend,
      to: { kind: 'station', mmsi: own },
      category: 'routine',
      reason: 'busy',
      channel: null,
    } as const;
    radio.give({ kind: 'received', call, verdict: 'clean' });
    expect(radio.phases).toEqual(['outgoing: refused', 'outgoing: waiting-answer']);
  });
});

describe('while a distress is in hand', () => {
  it('tests and position requests wait, their answers too: 47 CFR 80.1121(a)', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'received', call: composeDistressAlert({ from: '232999218' }), verdict: 'clean' });
    radio.give({ kind: 'call', call: composeTestCall({ from: own, to: coast }) });
    radio.give({ kind: 'call', call: composePositionRequest({ from: own, to: friend }) });
    radio.give({ kind: 'received', call: composeTestCall({ from: friend, to: own }), verdict: 'clean' });
    expect(radio.onAir).toBeNull();
    const urgent = composeAllShipsCall({ from: own, category: 'urgency', channel: '16' });
    radio.give({ kind: 'call', call: urgent });
    radio.give({ kind: 'confirm', dialogue: radio.latest });
    expect(radio.onAir?.call.kind).toBe('all-ships-call');
  });
});

describe('a call to many that nobody followed', () => {
  it('is not said to be unanswered: such calls are never answered, ITU-R M.493-16 table A1-4.8', () => {
    const radio = new Radio({ mmsi: own, groups: [club] });
    const call = composeGroupCall({ from: friend, to: club, channel: '77' });
    radio.give({ kind: 'received', call, verdict: 'clean' });
    radio.pass(10 * MINUTE);
    expect(radio.log.at(-1)).toMatchObject({
      code: 'station-not-followed',
      params: { call: { code: 'station-brief', params: { kind: 'group-call', to: club } } },
    });
  });
});

describe('settings', () => {
  it('that are left out stay, and one that makes no sense changes none', () => {
    const radio = new Radio({ mmsi: own, seed: 8, policies: { position: 'automatic' } });
    radio.give({ kind: 'settings', settings: { channels: ['77'] } });
    expect(radio.state.settings).toMatchObject({ mmsi: own, seed: 8, channels: ['77'] });
    expect(radio.state.settings.policies).toMatchObject({ position: 'automatic', test: 'automatic' });
    const settings = { seed: 9, channels: ['zz'] };
    const [refused] = effectsOf(radio.give({ kind: 'settings', settings }), 'issue');
    expect(refused?.issue.code).toBe('station-settings-form');
    expect(radio.state.settings.seed).toBe(8);
  });

  it.each([
    ['a setting', { grops: ['023299987'] }, 'grops'],
    [
      'the field of a row',
      { callers: [{ caller: friend, subjects: 'position', policy: 'by-hand' }] },
      'callers',
    ],
    ['a subject', { policies: { positon: 'automatic' } }, 'policies'],
  ])('that misspell %s are refused', (_, misspelt, named) => {
    expect(() => createStation({ mmsi: own, ...misspelt } as SettingsInput)).toThrow(
      new RangeError(`createStation: invalid setting ${named}`),
    );
    const radio = new Radio({ mmsi: own });
    const [refused] = effectsOf(radio.give({ kind: 'settings', settings: misspelt as object }), 'issue');
    expect(refused?.issue).toMatchObject({ code: 'station-settings-form', at: [named] });
    expect(radio.state.settings).toEqual(createStation({ mmsi: own }).settings);
  });

  it('are copied: nobody changes a station from outside', () => {
    const channels = ['72'];
    const state = createStation({ mmsi: own, channels });
    channels.push('70');
    expect(state.settings.channels).toEqual(['72']);
  });
});

const part = (kind: string, name: string) => ({
  code: 'station-event-part',
  params: { kind, part: name },
  at: [name],
});

describe('an event that is none', () => {
  it.each<[event: unknown, issue: object]>([
    [undefined, { code: 'station-event-form', received: 'undefined' }],
    [{}, { code: 'station-event-kind', received: "'undefined'" }],
    [
      { kind: 'toString', at: 0 },
      { code: 'station-event-kind', received: "'toString'" },
    ],
    [{ kind: 'clock', at: '5' }, part('clock', 'at')],
    [{ kind: 'received', at: 0 }, part('received', 'call')],
    [{ kind: 'received', at: 0, call: buddyCall, verdict: 'fine' }, part('received', 'verdict')],
    [{ kind: 'fix', at: 0 }, part('fix', 'position')],
    [
      { kind: 'fix', at: 0, position: { latitude: 56, longitude: -6 }, source: Number.NaN },
      part('fix', 'source'),
    ],
    [{ kind: 'note', at: 0, text: 'Fog', corrects: Number.NaN }, part('note', 'corrects')],
    [{ kind: 'call', at: 0, call: null }, part('call', 'call')],
    [{ kind: 'settings', at: 0 }, part('settings', 'settings')],
    [{ kind: 'prepare-alert', at: 0, nature: 'boredom' }, part('prepare-alert', 'nature')],
  ])('%j is refused, and changes nothing', (event, issue) => {
    const state = createStation({ mmsi: own });
    const turn = step(state, event as StationEvent);
    expect(turn.state).toBe(state);
    expect(turn.effects).toMatchObject([{ kind: 'issue', issue: { grade: 'error', ...issue } }]);
  });

  it('a refusal without its reason says so', () => {
    const radio = new Radio({ mmsi: own });
    const call = { ...buddyCall, from: friend, to: { kind: 'station', mmsi: own } } as const;
    radio.give({ kind: 'received', call, verdict: 'clean' });
    const event = { kind: 'reject', dialogue: 1, reason: 'tired' as Reason } as const;
    expect(effectsOf(radio.give(event), 'issue')[0]?.issue.code).toBe('station-reason-missing');
  });
});
