import { describe, expect, it } from 'vitest';
import {
  composeDistressAlert,
  composeDistressRelay,
  composeIndividualCall,
  decodeFields,
  encodeFields,
} from '../../src/call/index.ts';
import {
  adviseOnDistress,
  checkSetup,
  createStation,
  type Effect,
  restoreStation,
  type SettingsInput,
} from '../../src/station/index.ts';
import { bothGrounds, coast, friend, own, troubled } from './happenings.ts';
import { effectsOf, Radio } from './radio.ts';

const MINUTE = 60_000;
const alert = composeDistressAlert({ from: troubled, nature: 'flooding' });
const relayTo = (to?: string) => ({ ...composeDistressRelay({ from: own, to, about: alert }), from: null });
const toAll = relayTo();
const unanswered = { unanswered: true } as const;

function afterAlert(settings: Partial<SettingsInput> = {}, minutes = 0): Radio {
  const radio = new Radio({ mmsi: own, equipment: 'A', ...settings });
  radio.give({ kind: 'received', call: alert, verdict: 'clean' });
  radio.pass(minutes * MINUTE);
  return radio;
}

function adviceOf(radio: Radio) {
  const advice = adviseOnDistress(radio.state, 1);
  if (advice === null) throw new Error('no distress');
  return advice;
}

const codes = (effects: readonly Effect[]) => effectsOf(effects, 'issue').map(({ issue }) => issue.code);
const shown = (effects: readonly Effect[]) =>
  effectsOf(effects, 'show')
    .filter(({ topic }) => topic === 'watch-left')
    .map(({ code, params }) => ({ code, params }));

// Radio Regulations 2024 in restatements; 47 CFR 2025.
describe('passing a distress on', () => {
  it('to one coast station after five minutes without an acknowledgement: RR 32.16, 32.17, 32.19B', () => {
    const radio = afterAlert();
    expect(adviceOf(radio).relay.allowed).toBe(false);
    radio.pass(5 * MINUTE);
    const advice = adviceOf(radio);
    expect(advice.relay).toMatchObject({ allowed: true, clause: expect.stringContaining('32.16') });
    expect(advice.now.map(({ code }) => code)).toContain('station-inform-if-silent');
    expect(codes(radio.give({ kind: 'call', call: relayTo(coast), because: unanswered }))).toEqual([]);
    radio.give({ kind: 'confirm', dialogue: 2 });
    expect(radio.onAir?.call).toMatchObject({ kind: 'distress-relay', to: { kind: 'station', mmsi: coast } });
  });

  it('in United States waters by voice or any other means: 47 CFR 80.1121(b) against 80.1117(a)', () => {
    const { relay } = adviceOf(afterAlert({}, 5));
    expect(relay.code).toBe('station-relay-to-coast');
    // The words matter: they are what keeps a ship in those waters from relaying by DSC.
    expect(relay.why).toMatch(
      /by voice, or by any other means\. In United States waters do not relay by DSC$/,
    );
    expect(relay.clause).toContain('80.1117(a), 80.1121(b)');
  });

  it('not to all ships or another ship because nobody answered: RR 32.19G', () => {
    for (const call of [toAll, relayTo(friend)]) {
      const radio = afterAlert({}, 5);
      expect(codes(radio.give({ kind: 'call', call, because: unanswered }))).toEqual([
        'station-relay-address',
      ]);
    }
    expect(adviceOf(afterAlert({}, 5)).relayToMany.allowed).toBe(false);
  });

  it('to many only for a vessel that cannot alert herself, with more help needed: MSC.1/Circ.1657, 47 CFR 80.1121(b)', () => {
    const radio = afterAlert({}, 5);
    expect(codes(radio.give({ kind: 'call', call: toAll, because: bothGrounds }))).toEqual([]);
  });

  it('not while the five minutes run, nor when a coast station has answered: RR 32.16', () => {
    for (const radio of [afterAlert(), afterAlert({}, 4)]) {
      const refused = radio.give({ kind: 'call', call: relayTo(coast), because: unanswered });
      expect(effectsOf(refused, 'issue')).toMatchObject([
        { issue: { code: 'station-relay-not-now', params: { why: { code: 'station-relay-wait' } } } },
      ]);
    }
    const radio = afterAlert({}, 5);
    radio.give({ kind: 'traffic', dialogue: 1 });
    expect(adviceOf(radio).relay.allowed).toBe(false);
  });

  it('also where no alert was received, as after a MAYDAY heard by voice: RR 32.16 "an alert or a call"', () => {
    const radio = new Radio({ mmsi: own, equipment: 'A' });
    expect(codes(radio.give({ kind: 'call', call: relayTo(coast), because: unanswered }))).toEqual([]);
  });
});

describe('who acknowledges by DSC', () => {
  it('a coast station that is not designated has the flow of a ship and reports: 47 CFR 80.103(c), 80.1119(a)', () => {
    const radio = afterAlert({ mmsi: coast, equipment: 'coast' });
    const advice = adviceOf(radio);
    expect(advice.now[0]?.code).toBe('station-report');
    expect(advice.dscAcknowledgement).toMatchObject({ allowed: false, clause: '47 CFR 80.103(c)' });
    expect(advice.question?.answers).toEqual(['traffic', 'assist']);
    expect(codes(radio.give({ kind: 'acknowledge', dialogue: 1 }))).toEqual([
      'station-acknowledgement-not-allowed',
    ]);
    radio.pass(5 * MINUTE);
    expect(adviceOf(radio).dscAcknowledgement.allowed).toBe(false);
    expect(createStation({ mmsi: coast, equipment: 'coast' }).settings.designated).toBe(false);
  });

  it('a ship waits without a word on coast stations being "given five minutes": MSC.1/Circ.1657', () => {
    for (const minutes of [0, 5]) {
      const radio = afterAlert({}, minutes);
      expect(JSON.stringify(adviceOf(radio))).not.toContain('given five minutes');
      radio.give({ kind: 'traffic', dialogue: 1 });
      expect(JSON.stringify(adviceOf(radio))).not.toMatch(/given five minutes|up to five minutes/);
    }
  });

  it('a ship only for a vessel in the vicinity, after a centre or coast station: MSC.1/Circ.1657, 47 CFR 80.1121(d)', () => {
    const radio = afterAlert({}, 4);
    radio.give({ kind: 'received', call: alert, verdict: 'clean' });
    radio.pass(MINUTE);
    const { dscAcknowledgement } = adviceOf(radio);
    expect(dscAcknowledgement.allowed).toBe(true);
    expect(dscAcknowledgement.code).toBe('station-dsc-to-stop');
    expect(dscAcknowledgement.why).toContain('in the vicinity');
    expect(dscAcknowledgement.why).toContain('rescue co-ordination centre or coast station');
  });
});

// US Coast Guard safety alert of 2010; ITU-R M.493 considering j).
describe('a watch on another channel', () => {
  it('the radio says so when a call takes it off a watched channel', () => {
    const radio = new Radio({ mmsi: own, watched: ['13'] });
    radio.give({ kind: 'tuned', channel: '13' });
    const effects = radio.give({ kind: 'received', call: alert, verdict: 'clean' });
    expect(shown(effects)).toEqual([
      { code: 'station-watch-left', params: { channel: '16', watched: ['13'] } },
    ]);
    expect(effectsOf(effects, 'tune')[0]?.channel).toBe('16');
    expect(radio.log.map(({ code, params }) => ({ code, params }))).toContainEqual(shown(effects)[0]);
  });

  it('also when the channel is changed by hand, and where the channel before is not known', () => {
    const radio = new Radio({ mmsi: own, watched: ['13', '22A'] });
    expect(radio.state.settings.watched).toEqual(['13', '1022']);
    expect(shown(radio.give({ kind: 'tuned', channel: '72' }))[0]?.params).toEqual({
      channel: '72',
      watched: ['13', '1022'],
    });
    expect(shown(radio.give({ kind: 'tuned', channel: '13' }))).toEqual([]);
    expect(shown(radio.give({ kind: 'tuned', channel: '13' }))).toEqual([]);
    expect(shown(radio.give({ kind: 'tuned', channel: '77' }))[0]?.params).toEqual({
      channel: '77',
      watched: ['13'],
    });
    expect(shown(radio.give({ kind: 'tuned', channel: '72' }))).toEqual([]);
  });

  it('without a list nothing is said', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'tuned', channel: '13' });
    expect(shown(radio.give({ kind: 'received', call: alert, verdict: 'clean' }))).toEqual([]);
  });

  it('the set-up check warns of automatic channel change', () => {
    const seen = { now: 0, fix: null, time: 0, testAnsweredAt: null, replyOnPlotter: null };
    const item = (settings: Partial<SettingsInput>) =>
      checkSetup(createStation({ mmsi: own, ...settings }).settings, seen).find(
        ({ subject }) => subject === 'watch',
      );
    expect(item({})).toMatchObject({
      status: 'unknown',
      code: 'station-setup-channel-change',
      grade: 'check',
      toDo: { code: 'station-do-list-watch' },
    });
    expect(item({ watched: ['13'] })).toMatchObject({
      status: 'not-ready',
      code: 'station-setup-watch-at-risk',
      params: { watched: ['13'] },
    });
    expect(item({ watched: ['13'], tuning: 'by-hand' })).toMatchObject({
      status: 'ready',
      code: 'station-setup-by-hand',
      grade: 'note',
      toDo: null,
    });
    expect(item({})?.clause).toContain('US Coast Guard safety alert of 2010');
  });

  it('a channel for no talk is no watched channel', () => {
    for (const watched of [['70'], ['x'], '13' as unknown as string[]])
      expect(() => createStation({ mmsi: own, watched })).toThrow(RangeError);
  });
});

it('a state stored before these settings is not damaged', () => {
  const { designated: _, watched: __, ...settings } = createStation({ mmsi: own }).settings;
  const stored = { ...createStation({ mmsi: own }), settings };
  expect(restoreStation(stored)).toMatchObject({
    ok: true,
    notices: [],
    value: { settings: { designated: false, watched: [] } },
  });
});

it('the alarm of a moored vessel sounds at least the urgency alarm and has no DSC answer: 47 CFR 80.179(e)', () => {
  const { call } = decodeFields({
    ...encodeFields(composeIndividualCall({ from: troubled, to: own })),
    telecommand1: 126,
    telecommand2: 126,
    receive: [126, 126, 126],
    transmit: [126, 126, 126],
    end: 127,
  });
  const radio = new Radio({ mmsi: own, policies: { individual: 'automatic' } });
  const effects = radio.give({ kind: 'received', call, verdict: 'clean' });
  expect(effectsOf(effects, 'sound')[0]).toMatchObject({ alarm: 'urgency' });
  expect(effectsOf(effects, 'ask')).toEqual([]);
  expect(effectsOf(effects, 'send')).toEqual([]);
  expect(effectsOf(effects, 'show')[0]).toMatchObject({
    code: 'station-received',
    params: { call: { code: 'station-brief-moored', params: { from: troubled } } },
  });
});
