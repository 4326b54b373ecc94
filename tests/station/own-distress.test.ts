import { describe, expect, it } from 'vitest';
import type { Call } from '../../src/call/index.ts';
import { composeDistressAcknowledgement, composeDistressRelay } from '../../src/call/index.ts';
import { coast, friend, own } from './happenings.ts';
import { effectsOf, Radio } from './radio.ts';

const MINUTE = 60_000;

function inDistress(): Radio {
  const radio = new Radio({ mmsi: own });
  radio.give({ kind: 'fix', position: { latitude: 56.35, longitude: -6.51 }, source: 'instrument' });
  radio.give({ kind: 'prepare-alert', nature: 'flooding' });
  radio.give({ kind: 'press-alert' });
  radio.pass(3000);
  return radio;
}

function acknowledgement(radio: Radio) {
  return composeDistressAcknowledgement({ from: coast, about: radio.onAir?.call as Call<'distress-alert'> });
}

describe('sending a distress alert', () => {
  it('takes two deliberate acts: Japan MPT Notification 567 of 1990, distress key', () => {
    const radio = new Radio({ mmsi: own });
    expect(effectsOf(radio.give({ kind: 'press-alert' }), 'issue')[0]?.issue.code).toBe('station-no-alert');
    radio.give({ kind: 'prepare-alert' });
    radio.pass(MINUTE);
    expect(radio.onAir, 'the cover alone sends nothing').toBeNull();
    radio.give({ kind: 'press-alert' });
    radio.pass(2999);
    radio.give({ kind: 'release-alert' });
    radio.pass(MINUTE);
    expect(radio.onAir, 'held too short').toBeNull();
    radio.give({ kind: 'press-alert' });
    radio.pass(2999);
    expect(radio.onAir).toBeNull();
    radio.pass(1);
    expect(radio.onAir?.call.kind).toBe('distress-alert');
  });

  it('is five calls in a row: ITU-R M.541-11 Annex 1, distress attempt on VHF', () => {
    const { onAir } = inDistress();
    expect(onAir?.times).toBe(5);
    expect(onAir?.call).toMatchObject({
      nature: 'flooding',
      time: { hour: 18, minute: 0 },
      subsequent: 'telephony-simplex',
    });
    expect(onAir?.call).toMatchObject({ position: { latitude: { degrees: 56, minutes: 21 } } });
  });

  it('goes out without any input as undesignated, position and time unknown: ITU-R M.541-11 Annex 1', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'prepare-alert' });
    radio.give({ kind: 'press-alert' });
    radio.pass(3000);
    expect(radio.onAir?.call).toMatchObject({ nature: 'undesignated', position: null, time: null });
  });

  it('waits one second at most for channel 70: ETSI EN 300 338, from memory', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'channel', busy: true });
    radio.give({ kind: 'prepare-alert' });
    radio.give({ kind: 'press-alert' });
    radio.pass(3999);
    expect(radio.onAir).toBeNull();
    radio.pass(1);
    expect(radio.onAir?.call.kind).toBe('distress-alert');
  });

  it('breaks off an own call that is on the air after that second', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'prepare-alert' });
    radio.give({ kind: 'press-alert' });
    radio.pass(2500);
    radio.give({
      kind: 'call',
      call: { kind: 'test-call', to: { kind: 'station', mmsi: coast }, from: null, category: 'safety' },
    });
    expect(radio.onAir?.call.kind).toBe('test-call');
    const effects = radio.pass(1500);
    expect(effectsOf(effects, 'stop-sending')).toHaveLength(1);
    expect(radio.onAir?.call.kind).toBe('distress-alert');
  });

  it('repeats after 3.5 to 4.5 minutes from the start, and stops when acknowledged at the third: ITU-R M.541', () => {
    const radio = inDistress();
    const starts = [radio.now];
    const after = radio.finish();
    expect(effectsOf(radio.effects, 'tune').at(-1)?.channel, 'then channel 16').toBe('16');
    for (let attempt = 2; attempt <= 3; attempt++) {
      while (radio.onAir === null) radio.pass(1000);
      starts.push(radio.now);
      if (attempt < 3) radio.finish();
    }
    for (const [index, start] of starts.entries()) {
      if (index === 0) continue;
      const wait = start - (starts[index - 1] as number);
      expect(wait).toBeGreaterThanOrEqual(3.5 * MINUTE);
      expect(wait).toBeLessThanOrEqual(4.5 * MINUTE + 1000);
    }
    const call = acknowledgement(radio);
    radio.finish();
    radio.pass(2000);
    const effects = radio.give({ kind: 'received', call, verdict: 'clean' });
    expect(radio.phases).toEqual(['own-distress: acknowledged']);
    expect(effectsOf(effects, 'show').map(({ topic }) => topic)).toContain('acknowledged');
    radio.pass(60 * MINUTE);
    expect(radio.onAir, 'no more repeats').toBeNull();
    expect(after.call.kind).toBe('distress-alert');
  });

  it('draws another interval for another station and attempt', () => {
    const waits = new Set<number>();
    for (let seed = 1; seed <= 20; seed++) {
      const radio = new Radio({ mmsi: own, seed });
      radio.give({ kind: 'prepare-alert' });
      radio.give({ kind: 'press-alert' });
      radio.pass(3000);
      waits.add(radio.state.dialogues[0]?.waits['alert-repeat'] ?? 0);
    }
    expect(waits.size).toBe(20);
  });

  it('asks for the voice message as soon as the alert is out: RR 2024 No. 32.13, ITU-R M.541-11 Annex 3 §1.4.1', () => {
    const radio = inDistress();
    radio.finish();
    expect(effectsOf(radio.effects, 'speak').at(-1)).toMatchObject({ situation: 'mayday', channel: '16' });
    const reminded = (effects: ReturnType<typeof radio.pass>) =>
      effectsOf(effects, 'show').some(({ code }) => code === 'station-alert-speak');
    expect(reminded(radio.pass(14_999))).toBe(false);
    expect(reminded(radio.pass(1)), 'at the latest after 15 s, a UK procedure summary of about 2000').toBe(
      true,
    );
    const spoken = inDistress();
    spoken.finish();
    spoken.give({ kind: 'spoken', dialogue: 1 });
    expect(reminded(spoken.pass(15_000))).toBe(false);
  });

  it('asks for the voice message at once when acknowledged sooner', () => {
    const radio = inDistress();
    const call = acknowledgement(radio);
    radio.finish();
    const effects = radio.give({ kind: 'received', call, verdict: 'clean' });
    expect(effectsOf(effects, 'speak')[0]?.situation).toBe('mayday');
  });

  it('carries new data in later attempts: ITU-R M.493-16, from memory', () => {
    const radio = inDistress();
    radio.finish();
    radio.give({ kind: 'describe-alert', nature: 'sinking' });
    radio.give({ kind: 'fix', position: { latitude: 56.4, longitude: -6.6 }, source: 'instrument' });
    while (radio.onAir === null) radio.pass(1000);
    expect(radio.onAir.call).toMatchObject({ nature: 'sinking', position: { latitude: { minutes: 24 } } });
  });

  it('never carries a position of 23.5 hours, however the clock got there: ITU-R M.493-16, from memory', () => {
    const radio = inDistress();
    radio.finish();
    radio.now += 24 * 60 * MINUTE;
    radio.give({ kind: 'clock' });
    radio.give({ kind: 'press-alert' });
    radio.pass(3000);
    expect(radio.onAir?.call).toMatchObject({ kind: 'distress-alert', position: null, time: null });
  });

  it('asks for the voice message when acknowledged during the attempt, and when a cancellation is declined: ITU-R M.541', () => {
    const during = inDistress();
    const first = during.give({ kind: 'received', call: acknowledgement(during), verdict: 'clean' });
    expect(effectsOf(first, 'speak')[0]).toMatchObject({ situation: 'mayday', channel: '16' });

    const declined = inDistress();
    const call = acknowledgement(declined);
    declined.finish();
    declined.give({ kind: 'cancel-alert' });
    const asked = declined.give({ kind: 'received', call, verdict: 'clean' });
    expect(effectsOf(asked, 'speak'), 'not while the person is asked whether it was false').toEqual([]);
    const after = declined.give({ kind: 'decline', dialogue: 1 });
    expect(effectsOf(after, 'speak')[0]).toMatchObject({ situation: 'mayday', channel: '16' });
  });

  it('is not stopped by an acknowledgement with errors, but asks: ITU-R M.493, calls received with errors', () => {
    const radio = inDistress();
    const call = acknowledgement(radio);
    radio.finish();
    for (const verdict of ['repaired', 'doubtful'] as const) {
      const effects = radio.give({ kind: 'received', call, verdict });
      expect(effectsOf(effects, 'ask')[0]?.question).toBe('stop-alert');
      expect(radio.phases).toEqual(['own-distress: waiting-acknowledgement']);
    }
    radio.give({ kind: 'stop-alert' });
    radio.pass(30 * MINUTE);
    expect(radio.onAir).toBeNull();
  });

  it('is not stopped by a relay, nor by the acknowledgement of another distress', () => {
    const radio = inDistress();
    const alert = radio.onAir?.call as Call<'distress-alert'>;
    radio.finish();
    const relay = composeDistressRelay({ from: friend, to: { kind: 'all-ships' }, about: alert });
    radio.give({ kind: 'received', call: relay, verdict: 'clean' });
    const other = composeDistressAcknowledgement({ from: coast, about: { ...alert, from: friend } });
    radio.give({ kind: 'received', call: other, verdict: 'clean' });
    expect(radio.phases[0]).toBe('own-distress: waiting-acknowledgement');
  });

  it('holds other calls back until it is acknowledged: ITU-R M.541', () => {
    const radio = inDistress();
    const call = acknowledgement(radio);
    radio.finish();
    radio.give({
      kind: 'received',
      verdict: 'clean',
      call: { kind: 'test-call', to: { kind: 'station', mmsi: own }, from: friend, category: 'safety' },
    });
    expect(radio.onAir).toBeNull();
    expect(radio.phases[1], 'and no call is answered by itself').toBe('incoming: deciding');
    radio.give({ kind: 'answer', dialogue: radio.latest });
    expect(radio.onAir).toBeNull();
    radio.give({ kind: 'received', call, verdict: 'clean' });
    expect(radio.onAir).toMatchObject({ call: { kind: 'test-acknowledgement' } });
  });

  it('without an identity does nothing: ITU-R M.493, self-identification, from memory', () => {
    const radio = new Radio({ mmsi: null });
    expect(effectsOf(radio.give({ kind: 'prepare-alert' }), 'issue')[0]?.issue.code).toBe(
      'station-identity-missing',
    );
  });
});

describe('cancelling a false alert', () => {
  it('is a self-cancellation and then the voice: ITU-R M.541-11; 47 CFR 80.335', () => {
    const radio = inDistress();
    const alert = radio.finish();
    const asked = radio.give({ kind: 'cancel-alert' });
    expect(effectsOf(asked, 'ask')[0]).toMatchObject({
      question: 'cancel-alert',
      answers: ['confirm', 'decline'],
    });
    radio.give({ kind: 'confirm', dialogue: 1 });
    const cancel = radio.onAir;
    expect(cancel).toMatchObject({
      times: 1,
      call: { kind: 'distress-self-cancel', from: own, distressed: own },
    });
    expect(cancel?.call).toMatchObject({
      nature: 'flooding',
      position: (alert.call as Call<'distress-alert'>).position,
    });
    radio.finish();
    const speak = effectsOf(radio.effects, 'speak').at(-1);
    expect(speak).toMatchObject({
      situation: 'cancel-alert',
      channel: '16',
      alertTime: { hour: 18, minute: 0 },
    });
    expect(speak?.clause).toContain('80.335');
    radio.give({ kind: 'spoken', dialogue: 1 });
    expect(radio.phases).toEqual([]);
    expect(radio.log.at(-1)?.code).toBe('station-cancelled');
    radio.pass(60 * MINUTE);
    expect(radio.onAir).toBeNull();
  });

  it('waits for the end of the attempt that is on the air', () => {
    const radio = inDistress();
    radio.give({ kind: 'cancel-alert' });
    expect(radio.onAir?.call.kind).toBe('distress-alert');
    radio.finish();
    expect(radio.phases).toEqual(['own-distress: cancel-asked']);
  });

  it('lets the alert stand when nobody confirms', () => {
    const radio = inDistress();
    radio.finish();
    radio.give({ kind: 'cancel-alert' });
    for (let seconds = 0; seconds < 270 && radio.onAir === null; seconds++) radio.pass(1000);
    expect(radio.onAir?.call.kind).toBe('distress-alert');
  });

  it('sends nothing when nothing had gone out', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'channel', busy: true });
    radio.give({ kind: 'prepare-alert' });
    radio.give({ kind: 'press-alert' });
    radio.pass(3500);
    radio.give({ kind: 'cancel-alert' });
    expect(radio.phases).toEqual([]);
    radio.pass(MINUTE);
    expect(radio.effects.filter(({ kind }) => kind === 'send')).toEqual([]);
  });

  it('asks for the voice even when the set cannot send', () => {
    const radio = inDistress();
    radio.finish();
    radio.give({ kind: 'cancel-alert' });
    radio.give({ kind: 'confirm', dialogue: 1 });
    radio.onAir = null;
    const effects = radio.give({ kind: 'send-failed', dialogue: 1 });
    expect(effectsOf(effects, 'speak')[0]?.situation).toBe('cancel-alert');
  });

  it('says in the log what was cancelled by what: ITU-R M.541-11; 47 CFR 80.335 and 80.409', () => {
    const cancelling = (): Radio => {
      const radio = inDistress();
      radio.finish();
      radio.give({ kind: 'cancel-alert' });
      radio.give({ kind: 'confirm', dialogue: 1 });
      return radio;
    };
    const failed = cancelling();
    failed.onAir = null;
    const effects = failed.give({ kind: 'send-failed', dialogue: 1 });
    expect(failed.phases).toEqual(['own-distress: cancel-voice-only']);
    expect(effectsOf(effects, 'show')[0]?.code).toBe('station-cancel-failed');
    expect(effectsOf(effects, 'speak')[0]?.situation).toBe('cancel-alert');
    const silent = failed.state;
    failed.give({ kind: 'spoken', dialogue: 1 });
    expect(failed.log.at(-1)?.code).toBe('station-cancelled-by-voice');
    failed.state = silent;
    failed.pass(10 * MINUTE);
    expect(failed.log.at(-1)?.code).toBe('station-not-cancelled');
    const unspoken = cancelling();
    unspoken.finish();
    unspoken.give({ kind: 'dismiss', dialogue: 1 });
    expect(unspoken.log.at(-1)?.code).toBe('station-cancelled-by-dsc');
  });

  it('is not sent again when it was acknowledged while the question was open: ITU-R M.541', () => {
    const radio = new Radio({ mmsi: own, timers: { 'alert-repeat': 30_000 } });
    radio.give({ kind: 'prepare-alert' });
    radio.give({ kind: 'press-alert' });
    radio.pass(3000);
    const acknowledged = acknowledgement(radio);
    radio.finish();
    radio.give({ kind: 'cancel-alert' });
    radio.give({ kind: 'received', call: acknowledged, verdict: 'clean' });
    radio.pass(40_000);
    expect(radio.onAir).toBeNull();
    radio.give({ kind: 'decline', dialogue: 1 });
    expect(radio.phases).toEqual(['own-distress: acknowledged']);
  });
});
