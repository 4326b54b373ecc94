import { describe, expect, it } from 'vitest';
import {
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressSelfCancel,
  type EquipmentClass,
} from '../../src/call/index.ts';
import { centreOf, rangeAndBearing, timeToReach, toReportedPosition } from '../../src/position/index.ts';
import { adviseOnDistress, type SettingsInput } from '../../src/station/index.ts';
import { bothGrounds, coast, friend, own, troubled } from './happenings.ts';
import { effectsOf, Radio } from './radio.ts';

const MINUTE = 60_000;
const place = { latitude: 56.42, longitude: -6.5 };
const alert = composeDistressAlert({
  from: troubled,
  nature: 'flooding',
  position: toReportedPosition(place),
  time: { hour: 17, minute: 58 },
});
const fromCoast = composeDistressAcknowledgement({ from: coast, about: alert });

function afterAlert(settings: Partial<SettingsInput> = {}): Radio {
  const radio = new Radio({ mmsi: own, ...settings });
  radio.give({ kind: 'fix', position: { latitude: 56.34, longitude: -6.5 }, source: 'instrument' });
  radio.give({ kind: 'received', call: alert, verdict: 'clean' });
  return radio;
}

function adviceNow(radio: Radio) {
  const advice = adviseOnDistress(radio.state, radio.state.dialogues[0]?.id ?? 0);
  if (advice === null) throw new Error('no distress in hand');
  return advice;
}

describe('an alert is received', () => {
  it('sounds, tunes to 16 and leaves the acknowledgement to coast stations: 47 CFR 80.1117, 80.1121', () => {
    const radio = afterAlert();
    expect(effectsOf(radio.effects, 'sound')[0]).toMatchObject({
      alarm: 'distress',
      lasts: 'until-silenced',
    });
    expect(effectsOf(radio.effects, 'tune')[0]?.channel).toBe('16');
    const advice = adviceNow(radio);
    expect(advice.whoAcknowledges.clause).toContain('80.1117(a)');
    expect(advice.dscAcknowledgement.allowed).toBe(false);
    expect(advice.relay).toMatchObject({
      allowed: false,
      clause: expect.stringContaining('MSC.1/Circ.1657'),
    });
    expect(advice.waitFor?.clause).toContain('47 CFR 80.1121(b)');
    expect(advice.relayToMany.allowed).toBe(false);
    expect(advice.caution.code).toBe('station-caution-distress');
  });

  it('gives the position from which range, bearing and time to reach follow', () => {
    const radio = afterAlert();
    const { position } = adviceNow(radio);
    const fix = radio.state.fix?.position;
    if (position === null || fix === undefined) throw new Error('a position is missing');
    const there = centreOf(position);
    // The box of a whole-minute report reaches half a minute north of its digits: 56°25.5′ from 56°20.4′ N.
    const { metres, bearing } = rangeAndBearing(fix, there);
    expect(metres / 1852).toBeCloseTo(5.1, 1);
    expect(bearing).toBeGreaterThan(350);
    expect((timeToReach(fix, there, { speed: 6 })?.seconds ?? 0) / 60).toBeCloseTo(51, -1);
  });

  it('with a coast acknowledgement asks whether the vessel can help: MSC.1/Circ.1657', () => {
    const radio = afterAlert();
    radio.pass(30_000);
    radio.give({ kind: 'received', call: fromCoast, verdict: 'clean' });
    expect(radio.phases).toEqual(['heard-distress: coast-answered']);
    expect(adviceNow(radio).question?.answers).toEqual(['assist', 'stand-by']);
    const effects = radio.give({ kind: 'assist', dialogue: 1 });
    expect(effectsOf(effects, 'speak')[0]).toMatchObject({ situation: 'received-mayday', channel: '16' });
    radio.give({ kind: 'spoken', dialogue: 1 });
    radio.give({ kind: 'dismiss', dialogue: 1 });
    expect(radio.log).toContainEqual(
      expect.objectContaining({ code: 'station-acknowledged-by-voice', params: { vessel: troubled } }),
    );
  });

  it('with a coast acknowledgement and unable to help: log and reset, MSC.1/Circ.1657', () => {
    const radio = afterAlert();
    radio.give({ kind: 'received', call: fromCoast, verdict: 'clean' });
    radio.give({ kind: 'stand-by', dialogue: 1 });
    expect(radio.phases).toEqual([]);
    expect(radio.log.at(-1)?.code).toBe('station-not-assisting');
  });

  it('without any acknowledgement listens five minutes: 47 CFR 80.1121(b)', () => {
    const radio = afterAlert();
    radio.pass(5 * MINUTE - 1);
    expect(radio.phases).toEqual(['heard-distress: listening']);
    radio.pass(1);
    expect(radio.phases).toEqual(['heard-distress: undecided']);
    expect(adviceNow(radio).question?.answers).toContain('no-traffic');
    expect(adviceNow(radio).voiceAcknowledgement.allowed).toBe(true);
  });

  it('no traffic and no more alerts: log and reset, MSC.1/Circ.1657', () => {
    const radio = afterAlert();
    radio.pass(5 * MINUTE);
    radio.give({ kind: 'no-traffic', dialogue: 1 });
    expect(radio.phases).toEqual([]);
  });

  it('no traffic and the alert goes on: inform a coast station, MSC.1/Circ.1657', () => {
    const radio = afterAlert();
    radio.pass(4 * MINUTE);
    radio.give({ kind: 'received', call: alert, verdict: 'clean' });
    radio.pass(MINUTE);
    radio.give({ kind: 'no-traffic', dialogue: 1 });
    expect(radio.phases).toEqual(['heard-distress: inform-coast']);
    expect(adviceNow(radio).now[0]?.code).toBe('station-inform-coast');
  });

  it('sounds no second alarm for a repeat, even when it was put away: ITU-R M.493, alarms', () => {
    const radio = afterAlert();
    radio.give({ kind: 'silence' });
    radio.pass(4 * MINUTE);
    expect(effectsOf(radio.give({ kind: 'received', call: alert, verdict: 'clean' }), 'sound')).toEqual([]);
    radio.give({ kind: 'dismiss', dialogue: 1 });
    radio.pass(4 * MINUTE);
    expect(effectsOf(radio.give({ kind: 'received', call: alert, verdict: 'clean' }), 'sound')).toEqual([]);
    expect(radio.phases).toEqual(['heard-distress: listening']);
  });

  it('sounds again for another vessel, another nature, or the same much later', () => {
    const others = [
      { wait: 0, call: { ...alert, from: friend } },
      { wait: 0, call: { ...alert, nature: 'sinking' as const } },
    ];
    for (const { wait, call } of others) {
      const radio = afterAlert();
      radio.give({ kind: 'silence' });
      radio.pass(wait);
      expect(effectsOf(radio.give({ kind: 'received', call, verdict: 'clean' }), 'sound')).toHaveLength(1);
    }
    const later = afterAlert();
    later.give({ kind: 'silence' });
    later.give({ kind: 'dismiss', dialogue: 1 });
    later.pass(6 * 60 * MINUTE);
    expect(effectsOf(later.give({ kind: 'received', call: alert, verdict: 'clean' }), 'sound')).toHaveLength(
      1,
    );
  });

  it('with errors is shown, and nothing is done: ITU-R M.493, calls received with errors', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'received', call: { ...alert, from: null }, verdict: 'doubtful' });
    expect(radio.phases).toEqual(['heard-distress: shown']);
    expect(effectsOf(radio.effects, 'tune')).toEqual([]);
    expect(effectsOf(radio.effects, 'show')[0]?.topic).toBe('damaged-call');
  });

  it('repaired alarms, but the person tunes', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'received', call: alert, verdict: 'repaired' });
    expect(effectsOf(radio.effects, 'sound')).toHaveLength(1);
    expect(effectsOf(radio.effects, 'tune')).toEqual([]);
    expect(effectsOf(radio.effects, 'show').map(({ topic }) => topic)).toContain('tune-by-hand');
  });

  it('taken back by the vessel herself ends the flow, unless that call had errors', () => {
    const radio = afterAlert();
    const call = composeDistressSelfCancel({ from: troubled });
    radio.give({ kind: 'received', call, verdict: 'doubtful' });
    expect(radio.phases).toEqual(['heard-distress: listening']);
    radio.give({ kind: 'received', call, verdict: 'clean' });
    expect(radio.phases).toEqual(['heard-distress: cancelled']);
  });

  it('holds routine calls back for those five minutes: 47 CFR 80.1121(a)', () => {
    const radio = afterAlert();
    radio.give({
      kind: 'call',
      call: {
        kind: 'individual-call',
        to: { kind: 'station', mmsi: friend },
        from: null,
        category: 'routine',
        firstTelecommand: 'telephony-simplex',
        secondTelecommand: null,
        channel: '72',
      },
    });
    expect(radio.onAir).toBeNull();
    expect(effectsOf(radio.effects, 'show').at(-1)?.topic).toBe('held-for-distress');
    radio.pass(5 * MINUTE);
    expect(radio.onAir).not.toBeNull();
  });
});

describe('a flood of alerts', () => {
  it('never puts the own distress away', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'prepare-alert' });
    for (let vessel = 0; vessel < 60; vessel++) {
      const call = { ...alert, from: `2329${91000 + vessel}` };
      radio.give({ kind: 'received', call, verdict: 'clean' });
    }
    expect(radio.state.dialogues).toHaveLength(32);
    expect(radio.phases).toContain('own-distress: prepared');
    expect(radio.state.active).toBe(1);
    expect(radio.state.heardAlerts).toHaveLength(20);
  });
});

describe('acknowledging by DSC', () => {
  it.each<EquipmentClass>(['D', 'H', 'M'])(
    'is never for class %s: ITU-R M.493-16, classes, unverified',
    (equipment) => {
      const radio = afterAlert({ equipment });
      radio.pass(4 * MINUTE);
      radio.give({ kind: 'received', call: alert, verdict: 'clean' });
      radio.pass(2 * MINUTE);
      const effects = radio.give({ kind: 'acknowledge', dialogue: 1 });
      expect(effectsOf(effects, 'issue')[0]?.issue.code).toBe('station-acknowledgement-not-allowed');
    },
  );

  it('is for class A only when the alert goes on unacknowledged, and past a question: 47 CFR 80.1121(d)', () => {
    const radio = afterAlert({ equipment: 'A' });
    const tooEarly = radio.give({ kind: 'acknowledge', dialogue: 1 });
    expect(effectsOf(tooEarly, 'issue')).toHaveLength(1);
    radio.pass(4 * MINUTE);
    radio.give({ kind: 'received', call: alert, verdict: 'clean' });
    radio.pass(2 * MINUTE);
    const asked = radio.give({ kind: 'acknowledge', dialogue: 1 });
    expect(effectsOf(asked, 'ask')[0]?.question).toBe('acknowledge-distress');
    expect(radio.onAir).toBeNull();
    radio.give({ kind: 'confirm', dialogue: 1 });
    expect(radio.onAir?.call).toMatchObject({
      kind: 'distress-acknowledgement',
      from: own,
      distressed: troubled,
    });
    radio.finish();
    expect(radio.phases).toEqual(['heard-distress: assisting']);
  });

  it('is for a designated coast station without delay, by hand: 47 CFR 80.103(c), 80.1119(a)', () => {
    const radio = afterAlert({ mmsi: coast, equipment: 'coast', designated: true });
    expect(adviceNow(radio).now[0]?.code).toBe('station-coast-acknowledges');
    radio.pass(10 * MINUTE);
    expect(radio.onAir, 'never automatically').toBeNull();
    radio.give({ kind: 'acknowledge', dialogue: 1 });
    radio.give({ kind: 'confirm', dialogue: 1 });
    expect(radio.onAir?.call).toMatchObject({
      kind: 'distress-acknowledgement',
      from: coast,
      nature: 'flooding',
    });
  });
});

describe('a relay is heard', () => {
  const relayed = composeDistressRelay({ from: coast, to: { kind: 'all-ships' }, about: alert });
  const byShip = composeDistressRelay({ from: friend, to: { kind: 'all-ships' }, about: alert });

  it('from a coast station: she has the distress in hand and asks for help, ITU-R M.541-11 Annex 3, from memory', () => {
    const radio = new Radio({ mmsi: own, equipment: 'A' });
    const effects = radio.give({ kind: 'received', call: relayed, verdict: 'clean' });
    expect(radio.phases).toEqual(['heard-distress: coast-answered']);
    expect(effectsOf(effects, 'sound')).toHaveLength(1);
    const advice = adviceNow(radio);
    expect(advice.now[0]?.code).toBe('station-answer-relay');
    expect(advice.voiceAcknowledgement.allowed).toBe(true);
    expect(advice.dscAcknowledgement.allowed).toBe(false);
    expect(effectsOf(radio.give({ kind: 'assist', dialogue: 1 }), 'speak')[0]).toMatchObject({
      situation: 'received-mayday-relay',
      channel: '16',
    });
  });

  it('from a coast station after the alert: sounds again, and ends the waiting for an acknowledgement', () => {
    const radio = afterAlert();
    radio.give({ kind: 'silence' });
    radio.pass(MINUTE);
    const effects = radio.give({ kind: 'received', call: relayed, verdict: 'clean' });
    expect(radio.phases).toEqual(['heard-distress: coast-answered']);
    expect(effectsOf(effects, 'sound')).toHaveLength(1);
    expect(effectsOf(radio.give({ kind: 'received', call: relayed, verdict: 'clean' }), 'sound')).toEqual([]);
  });

  it('from a ship, or with errors: the five minutes go on, 47 CFR 80.1121(b)', () => {
    const radio = afterAlert();
    radio.give({ kind: 'received', call: byShip, verdict: 'clean' });
    radio.give({ kind: 'received', call: relayed, verdict: 'doubtful' });
    expect(radio.phases).toEqual(['heard-distress: listening']);
    expect(radio.state.dialogues[0]?.call).toMatchObject({ from: friend });
  });

  it('by a coast station: acknowledged in the form for relays, which the ship takes: ITU-R M.493-16 table A1-4.4', () => {
    const ship = new Radio({ mmsi: own, equipment: 'A' });
    const toCoast = { ...composeDistressRelay({ from: own, to: coast, about: alert }), from: null };
    ship.give({ kind: 'call', call: toCoast, because: bothGrounds });
    ship.give({ kind: 'confirm', dialogue: 1 });
    const { call } = ship.finish();
    // Spoken at once, and not repeated after the times of routine calls.
    expect(effectsOf(ship.effects, 'speak').map(({ situation }) => situation)).toEqual(['mayday-relay']);
    ship.pass(60 * MINUTE);
    expect(ship.onAir).toBeNull();
    const shore = new Radio({ mmsi: coast, equipment: 'coast', designated: true });
    shore.give({ kind: 'received', call, verdict: 'clean' });
    shore.give({ kind: 'acknowledge', dialogue: 1 });
    shore.give({ kind: 'confirm', dialogue: 1 });
    const answer = shore.finish().call;
    expect(answer).toMatchObject({
      kind: 'distress-relay-acknowledgement',
      to: { kind: 'station', mmsi: own },
      from: coast,
      distressed: troubled,
    });
    const again = new Radio({ mmsi: own, equipment: 'A' });
    again.give({ kind: 'call', call: toCoast, because: bothGrounds });
    again.give({ kind: 'confirm', dialogue: 1 });
    again.finish();
    again.give({ kind: 'received', call: answer, verdict: 'clean' });
    expect(again.phases).toEqual(['outgoing: on-channel']);
    expect(effectsOf(again.effects, 'speak')).toHaveLength(1);
  });

  it('by a coast station that acknowledges the alert itself: the relay has done its work', () => {
    const ship = new Radio({ mmsi: own, equipment: 'A' });
    const toCoast = { ...composeDistressRelay({ from: own, to: coast, about: alert }), from: null };
    ship.give({ kind: 'call', call: toCoast, because: bothGrounds });
    ship.give({ kind: 'confirm', dialogue: 1 });
    ship.finish();
    ship.give({ kind: 'received', call: { ...fromCoast, distressed: friend }, verdict: 'clean' });
    expect(ship.phases).toContain('outgoing: waiting-answer');
    ship.give({ kind: 'received', call: fromCoast, verdict: 'clean' });
    expect(ship.phases).not.toContain('outgoing: waiting-answer');
  });

  it('from the own man-overboard device: act at once, ITU-R M.493-16 class M, closed loop, from memory', () => {
    const device = '972009914';
    const call = { ...composeDistressRelay({ from: own, to: friend, about: alert }), from: device } as const;
    const closed = {
      ...call,
      to: { kind: 'station', mmsi: own },
      distressed: device,
      nature: 'man-overboard',
    } as const;
    const radio = new Radio({ mmsi: own, equipment: 'A' });
    radio.give({ kind: 'received', call: closed, verdict: 'clean' });
    expect(adviceNow(radio).now[0]?.code).toBe('station-own-device');
    expect(adviceNow(radio).question?.answers).toEqual(['dismiss', 'acknowledge']);
    radio.give({ kind: 'acknowledge', dialogue: 1 });
    radio.give({ kind: 'confirm', dialogue: 1 });
    expect(radio.onAir?.call).toMatchObject({
      kind: 'distress-relay-acknowledgement',
      to: { kind: 'station', mmsi: device },
    });
    const small = new Radio({ mmsi: own });
    small.give({ kind: 'received', call: closed, verdict: 'clean' });
    expect(adviceNow(small).question?.answers).toEqual(['dismiss']);
  });
});

describe('what a distress says again', () => {
  it('with errors after a cancellation does nothing: ITU-R M.493, calls received with errors', () => {
    const radio = afterAlert();
    radio.give({
      kind: 'received',
      call: composeDistressSelfCancel({ from: troubled, about: alert }),
      verdict: 'clean',
    });
    radio.give({ kind: 'silence' });
    const effects = radio.give({ kind: 'received', call: alert, verdict: 'doubtful' });
    expect(radio.phases).toEqual(['heard-distress: cancelled']);
    expect(effectsOf(effects, 'sound')).toEqual([]);
  });

  it('a coast acknowledgement after a damaged alert: acknowledged, as when it is heard alone', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'received', call: alert, verdict: 'doubtful' });
    radio.give({ kind: 'received', call: fromCoast, verdict: 'clean' });
    expect(radio.phases).toEqual(['heard-distress: coast-answered']);
  });

  it('a finer position of the same attempt replaces the coarse one, and counts as no repeat', () => {
    const radio = afterAlert();
    const finer = { ...alert, position: toReportedPosition(place, { enhanced: true }) };
    radio.pass(1000);
    const effects = radio.give({ kind: 'received', call: finer, verdict: 'clean' });
    expect(radio.state.dialogues[0]).toMatchObject({ alerts: 1, call: { position: finer.position } });
    expect(effectsOf(effects, 'show')[0]).toMatchObject({ topic: 'distress-repeated', call: finer });
  });

  it('traffic is heard: answer as the station that controls it directs, MSC.1/Circ.1657', () => {
    const radio = afterAlert();
    radio.give({ kind: 'traffic', dialogue: 1 });
    expect(adviceNow(radio).voiceAcknowledgement.code).toBe('station-voice-traffic');
  });
});

describe('a designated coast station', () => {
  it('is asked to acknowledge, takes charge of the traffic, and closes the distress: RR 32.27, 47 CFR 80.1119(a)', () => {
    const radio = new Radio({ mmsi: coast, equipment: 'coast', designated: true });
    radio.give({ kind: 'received', call: alert, verdict: 'clean' });
    expect(adviceNow(radio)).toMatchObject({
      question: { answers: ['acknowledge', 'traffic'] },
      waitFor: null,
    });
    radio.give({ kind: 'acknowledge', dialogue: 1 });
    radio.give({ kind: 'confirm', dialogue: 1 });
    radio.finish();
    const advice = adviceNow(radio);
    expect(advice.now[0]?.code).toBe('station-coast-leads');
    expect(advice.question?.answers).toEqual(['dismiss', 'acknowledge']);
    radio.give({ kind: 'dismiss', dialogue: 1 });
    expect(radio.phases).toEqual([]);
  });

  it('is never told what only a ship is told', () => {
    const radio = new Radio({ mmsi: coast, equipment: 'coast', designated: true });
    radio.give({ kind: 'received', call: alert, verdict: 'clean' });
    const listening = adviceNow(radio);
    radio.pass(6 * MINUTE);
    for (const advice of [listening, adviceNow(radio)]) {
      const said = JSON.stringify([advice.now, advice.question, advice.waitFor]);
      expect(said).not.toMatch(/this vessel|inform a coast station|five minutes/i);
    }
  });
});

describe('relaying a distress', () => {
  const relay = {
    ...composeDistressRelay({ from: own, to: { kind: 'all-ships' }, about: alert }),
    from: null,
  };

  it('needs both grounds, and a second thought: MSC.1/Circ.1657', () => {
    const radio = new Radio({ mmsi: own, equipment: 'A' });
    const refused = radio.give({ kind: 'call', call: relay });
    expect(effectsOf(refused, 'issue')[0]?.issue.code).toBe('station-relay-reason');
    const half = { cannotAlertHerself: true } as unknown as typeof bothGrounds;
    const halfway = radio.give({ kind: 'call', call: relay, because: half });
    expect(effectsOf(halfway, 'issue')[0]?.issue.code).toBe('station-relay-reason');
    radio.give({ kind: 'call', call: relay, because: bothGrounds });
    expect(radio.onAir).toBeNull();
    radio.give({ kind: 'confirm', dialogue: 1 });
    expect(radio.onAir?.call.kind).toBe('distress-relay');
    radio.finish();
    expect(effectsOf(radio.effects, 'tune').at(-1)?.channel).toBe('16');
    expect(effectsOf(radio.effects, 'speak').at(-1)?.situation).toBe('mayday-relay');
  });

  it('to all ships is not for class D: ITU-R M.493-16, classes, from memory', () => {
    const radio = new Radio({ mmsi: own });
    const refused = radio.give({ kind: 'call', call: relay, because: bothGrounds });
    expect(effectsOf(refused, 'issue')[0]?.issue.code).toBe('station-class-cannot-send');
  });
});
