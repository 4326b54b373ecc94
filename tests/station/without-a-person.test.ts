import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Call,
  composeDistressAlert,
  composeDistressRelay,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePositionReply,
  composePositionRequest,
  composeTestCall,
} from '../../src/call/index.ts';
import { toReportedPosition } from '../../src/position/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { simulate, writeTimeLine } from '../../src/simulation/index.ts';
import {
  createStation,
  openQuestions,
  restoreStation,
  type SettingsInput,
  type StationEvent,
  type StationState,
  step,
  writeLogCsv,
} from '../../src/station/index.ts';
import { bothGrounds, club, coast, friend, heardCall, own, troubled } from './happenings.ts';
import { effectsOf, Radio } from './radio.ts';

const MINUTE = 60_000;
const DAY = 24 * 60 * MINUTE;
const toOwn = { kind: 'station', mmsi: own } as const;

/** A radio with what came back from its store after a while. */
function restoredAfter(radio: Radio, gap: number, vouched = false): Radio {
  const stored: unknown = JSON.parse(JSON.stringify(radio.state));
  const back = new Radio({ mmsi: own }, radio.now + gap);
  back.state = valueOf(restoreStation(stored, vouched ? { vouchedAt: back.now } : {}));
  back.give({ kind: 'clock' });
  return back;
}

function alerting(): Radio {
  const radio = new Radio({ mmsi: own });
  radio.give({ kind: 'prepare-alert' });
  radio.give({ kind: 'press-alert' });
  radio.pass(3000);
  radio.finish();
  return radio;
}

/** A state with one dialogue that nobody opened. */
function forged(dialogue: object, settings: SettingsInput = { mmsi: own }): StationState {
  const state = createStation(settings);
  const stored = { ...state, dialogues: [{ id: 1, openedAt: 0, changedAt: 0, waits: {}, ...dialogue }] };
  return valueOf(restoreStation(stored));
}

function sendsOf(state: StationState, minutes = 60): readonly Call[] {
  const radio = new Radio({ mmsi: own }, state.now);
  radio.state = state;
  radio.give({ kind: 'clock' });
  radio.pass(minutes * MINUTE);
  return effectsOf(radio.effects, 'send').map(({ call }) => call);
}

const alert = composeDistressAlert({ from: own });
const acknowledgementOf = (distressed: string): Call => ({
  kind: 'distress-acknowledgement',
  to: { kind: 'all-ships' },
  from: own,
  distressed,
  nature: 'undesignated',
  position: null,
  time: null,
  subsequent: 'telephony-simplex',
});
const call = composeIndividualCall({ from: friend, to: own, channel: '72' });
const relay = composeDistressRelay({ from: own, to: coast, about: composeDistressAlert({ from: troubled }) });

describe('a restored station transmits nothing without a person', () => {
  const incoming = {
    procedure: 'incoming',
    call,
    verdict: 'clean',
    times: 1,
    automatic: true,
    channel: null,
  };
  const outgoing = { procedure: 'outgoing', attempts: 0, allowed: 1, answer: null, channel: null };
  it.each<[what: string, dialogue: object]>([
    [
      'an incoming call answered by a distress alert',
      { ...incoming, phase: 'waiting-channel', answer: alert },
    ],
    [
      'an incoming call answered under another identity',
      {
        ...incoming,
        phase: 'waiting-channel',
        answer: composeIndividualAcknowledgement({ call, from: '232999563' }),
      },
    ],
    [
      'an answer to a call that was received in error',
      {
        ...incoming,
        phase: 'waiting-channel',
        verdict: 'doubtful',
        answer: composeIndividualAcknowledgement({ call }),
      },
    ],
    [
      'a call that was never sent and waits for its answer',
      { ...outgoing, phase: 'waiting-answer', call: composeTestCall({ from: own, to: coast }) },
    ],
    ['an alert as an outgoing call', { ...outgoing, phase: 'waiting-channel', call: alert }],
    ['a relay without grounds', { ...outgoing, phase: 'waiting-channel', call: relay }],
    [
      'a call under another identity',
      { ...outgoing, phase: 'waiting-channel', call: composeTestCall({ from: friend, to: coast }) },
    ],
    [
      'an honest call that waits for its channel',
      { ...outgoing, phase: 'waiting-channel', call: composeTestCall({ from: own, to: coast }) },
    ],
    [
      'an alert whose key was held',
      {
        procedure: 'own-distress',
        phase: 'countdown',
        nature: 'fire',
        call: null,
        attempts: 0,
        alertedAt: null,
        acknowledgement: null,
        stopped: false,
        cancelWanted: false,
        spoken: false,
      },
    ],
    [
      'an acknowledgement of distress from a class D ship',
      {
        procedure: 'heard-distress',
        phase: 'acknowledge-waiting',
        distressed: troubled,
        call: composeDistressAlert({ from: troubled }),
        verdict: 'clean',
        alerts: 3,
        lastAlertAt: 0,
        acknowledgedBy: null,
        answer: acknowledgementOf(troubled),
      },
    ],
  ])('%s', (_, dialogue) => {
    expect(sendsOf(forged(dialogue))).toEqual([]);
  });

  it.each([1, 3 * DAY, 365 * DAY, 3650 * DAY])('an honest own alert, %i ms later', (gap) => {
    const radio = restoredAfter(alerting(), gap);
    expect(radio.phases).toEqual(['own-distress: interrupted']);
    expect(effectsOf(radio.effects, 'sound')[0]).toMatchObject({
      alarm: 'distress',
      lasts: 'until-silenced',
    });
    expect(effectsOf(radio.effects, 'ask')[0]).toMatchObject({
      question: 'repeat-alert',
      answers: ['press-alert', 'cancel-alert', 'stop-alert'],
    });
    radio.pass(60 * MINUTE);
    expect(effectsOf(radio.effects, 'send')).toEqual([]);
    radio.give({ kind: 'press-alert' });
    radio.pass(3000);
    expect(radio.onAir?.call.kind).toBe('distress-alert');
  });

  it('an own alert that a person was asked to cancel is asked about again, and never repeated', () => {
    const radio = alerting();
    radio.give({ kind: 'cancel-alert' });
    const back = restoredAfter(radio, 10 * MINUTE);
    expect(effectsOf(back.effects, 'ask')[0]?.question).toBe('cancel-alert');
    back.pass(60 * MINUTE);
    expect(back.phases).toEqual(['own-distress: stopped']);
    expect(effectsOf(back.effects, 'send')).toEqual([]);
  });

  it('a call in hand is not repeated', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'call', call: composeIndividualCall({ from: own, to: friend, channel: '72' }) });
    radio.finish();
    const back = restoredAfter(radio, MINUTE);
    back.pass(60 * MINUTE);
    expect(effectsOf(back.effects, 'send')).toEqual([]);
  });

  it('a relay with its grounds asks again', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'call', call: relay, because: bothGrounds });
    radio.give({ kind: 'channel', busy: true });
    radio.give({ kind: 'confirm', dialogue: 1 });
    const back = restoredAfter(radio, 1000, true);
    expect(back.phases).toEqual(['outgoing: confirming']);
    expect(effectsOf(back.effects, 'sound')[0]?.alarm).toBe('distress');
    back.give({ kind: 'confirm', dialogue: 1 });
    back.give({ kind: 'channel', busy: false });
    expect(back.onAir?.call.kind).toBe('distress-relay');
  });

  it('says what it set aside, and holds all of it', () => {
    const stored = { ...createStation({ mmsi: own }), dialogues: [{ id: 1, phase: 'sending', odd: 'kept' }] };
    const result = restoreStation(stored);
    expect(result.ok && result.notices).toMatchObject([
      { code: 'station-state-set-aside', received: JSON.stringify(stored.dialogues[0]) },
    ]);
  });

  it('keeps a call whose stored answer does not fit', () => {
    const state = forged({ ...incoming, phase: 'waiting-channel', answer: alert });
    expect(state.dialogues).toMatchObject([{ phase: 'deciding', call, answer: null }]);
  });
});

describe('a station whose app vouches for its store', () => {
  it('goes on repeating an own alert within a repeat', () => {
    const back = restoredAfter(alerting(), 3 * MINUTE, true);
    expect(back.phases).toEqual(['own-distress: waiting-acknowledgement']);
    back.pass(2 * MINUTE);
    expect(effectsOf(back.effects, 'send')[0]?.call.kind).toBe('distress-alert');
  });

  it.each([5 * MINUTE, 3 * DAY])('asks the person after %i ms', (gap) => {
    const back = restoredAfter(alerting(), gap, true);
    expect(back.phases).toEqual(['own-distress: interrupted']);
    back.pass(60 * MINUTE);
    expect(effectsOf(back.effects, 'send')).toEqual([]);
  });

  it('asks the person when its clock went back', () => {
    expect(restoredAfter(alerting(), -MINUTE, true).phases).toEqual(['own-distress: interrupted']);
  });
});

describe('only a clean call to this station is acted on without a person', () => {
  const automatic = { individual: 'automatic', group: 'automatic' } as const;

  it('a repaired repeat with an unread address is not answered', () => {
    const radio = new Radio({ mmsi: own, policies: automatic });
    radio.give({ kind: 'received', call, verdict: 'clean' });
    radio.finish();
    radio.give({
      kind: 'received',
      call: { ...call, to: { kind: 'station', mmsi: null } },
      verdict: 'repaired',
    });
    expect(radio.onAir).toBeNull();
    radio.give({ kind: 'received', call, verdict: 'repaired' });
    expect(radio.onAir).toBeNull();
  });

  it('a clean repeat is answered again', () => {
    const radio = new Radio({ mmsi: own, policies: automatic });
    radio.give({ kind: 'received', call, verdict: 'clean' });
    radio.finish();
    radio.give({ kind: 'received', call, verdict: 'clean' });
    expect(radio.onAir?.call.kind).toBe('individual-acknowledgement');
  });

  it.each(['repaired', 'doubtful'] as const)('a %s answer does not retune the radio', (verdict) => {
    const radio = new Radio({ mmsi: own });
    const asked = composeIndividualCall({ from: own, to: friend, channel: '72' });
    radio.give({ kind: 'call', call: asked });
    radio.finish();
    const answer = composeIndividualAcknowledgement({ call: asked });
    expect(effectsOf(radio.give({ kind: 'received', call: answer, verdict }), 'tune')).toEqual([]);
    const clean = radio.give({ kind: 'received', call: answer, verdict: 'clean' });
    expect([...effectsOf(clean, 'tune'), ...effectsOf(radio.effects, 'ask')]).not.toEqual([]);
  });

  it('a repaired announcement does not retune the radio', () => {
    const radio = new Radio({ mmsi: own, groups: [club], policies: automatic });
    const announced = composeGroupCall({ from: friend, to: club, channel: '72' });
    expect(effectsOf(radio.give({ kind: 'received', call: announced, verdict: 'repaired' }), 'tune')).toEqual(
      [],
    );
  });
});

describe('a step never throws', () => {
  const odd = ['970123456', '974123456', coast, club, '999999999', own, null];
  it.each(odd.flatMap((from) => odd.map((distressed) => [from, distressed] as const)))(
    'over a relay from %s about %s',
    (from, distressed) => {
      for (const settings of [
        { mmsi: own, equipment: 'A' },
        { mmsi: coast, equipment: 'coast' },
      ] as const) {
        const radio = new Radio(settings);
        const to = { kind: 'station', mmsi: settings.mmsi } as const;
        const heard = { ...relay, to, from, distressed } as const;
        radio.give({ kind: 'received', call: heard, verdict: 'clean' });
        const asked = radio.give({ kind: 'acknowledge', dialogue: radio.latest });
        radio.give({ kind: 'confirm', dialogue: radio.latest });
        const rejected = effectsOf(asked, 'issue').map(({ issue }) => issue.code);
        if (rejected.length > 0) expect(rejected).toEqual([expect.stringMatching(/^station-/)]);
        else expect(radio.onAir?.call).toMatchObject({ kind: 'distress-relay-acknowledgement', distressed });
      }
    },
  );

  it.each(odd)('relaying a distress received from %s', (from) => {
    const about = { ...composeDistressAlert({ from: troubled }), from };
    const radio = new Radio({ mmsi: own });
    const passedOn = composeDistressRelay({ from: own, to: coast, about });
    radio.give({ kind: 'call', call: passedOn, because: bothGrounds });
    radio.give({ kind: 'confirm', dialogue: radio.latest });
    expect(radio.onAir?.call).toMatchObject({ kind: 'distress-relay', distressed: from });
  });

  const nonsense = fc.oneof(
    fc.constantFrom<unknown>(null, undefined, {}, [], 'x', 1.5, Number.NaN, true, { toString: null }),
    fc.jsonValue(),
  );

  it('over a call with nonsense in any place, and changes nothing', () => {
    fc.assert(
      fc.property(heardCall, fc.nat(), nonsense, (honest, place, value) => {
        const spoilt = JSON.parse(JSON.stringify(honest)) as Record<string, unknown>;
        const names = Object.keys(spoilt);
        spoilt[names[place % names.length] as string] = value;
        let state = createStation({ mmsi: own, equipment: 'A' });
        const events = [
          { kind: 'received', call: spoilt, verdict: 'clean' },
          { kind: 'call', call: spoilt },
        ];
        for (const event of events) state = step(state, { ...event, at: 0 } as unknown as StationEvent).state;
        for (const kind of ['answer', 'confirm', 'acknowledge', 'assist', 'clock'])
          state = step(state, { kind, at: 0, dialogue: 1 } as StationEvent).state;
      }),
      { numRuns: 1000 },
    );
  });

  it('over what is no event, or throws when it is read', () => {
    const throwing = Object.defineProperty({}, 'kind', {
      get: () => {
        throw new Error('read');
      },
    });
    const state = createStation({ mmsi: own });
    for (const [event, code] of [
      [null, 'station-event-form'],
      [undefined, 'station-event-form'],
      [7, 'station-event-form'],
      [[], 'station-event-form'],
      [{}, 'station-event-kind'],
      [throwing, 'station-event-unreadable'],
    ] as const)
      expect(step(state, event as unknown as StationEvent)).toMatchObject({
        state,
        effects: [{ kind: 'issue', issue: { code } }],
      });
    expect(restoreStation(throwing)).toMatchObject({ ok: false });
  });

  it('over any call that can be received, and takes it for an event', () => {
    fc.assert(
      fc.property(heardCall, (honest) => {
        const { effects } = step(createStation({ mmsi: own }), {
          kind: 'received',
          at: 0,
          call: honest,
          verdict: 'clean',
        });
        expect(effectsOf(effects, 'issue')).toEqual([]);
      }),
    );
  });
});

describe('one call in two readings', () => {
  const place = { latitude: 56.338833, longitude: -6.502 };
  const coarse = toReportedPosition(place);
  const fine = toReportedPosition(place, { enhanced: true });

  it('is one answer', () => {
    const radio = new Radio({ mmsi: own });
    const asked = composePositionRequest({ from: own, to: friend });
    radio.give({ kind: 'call', call: asked });
    radio.finish();
    const reply = (position: typeof fine) => composePositionReply({ call: asked, position });
    const heard = { kind: 'received', verdict: 'clean', event: 1 } as const;
    const first = radio.give({ ...heard, call: reply(coarse), stage: 'provisional' });
    expect(effectsOf(first, 'show').map(({ topic }) => topic)).toEqual(['position-received']);
    const last = radio.give({ ...heard, call: reply(fine), stage: 'final' });
    expect(effectsOf(last, 'show')).toMatchObject([{ topic: 'position-received', call: { position: fine } }]);
  });

  it('is one alert, acted on at once', () => {
    const radio = new Radio({ mmsi: own });
    const heard = { kind: 'received', verdict: 'clean', event: 'a1' } as const;
    const distress = (position: typeof fine) => composeDistressAlert({ from: troubled, position });
    const first = radio.give({ ...heard, call: distress(coarse), stage: 'provisional' });
    expect(effectsOf(first, 'sound')).toHaveLength(1);
    expect(radio.phases).toEqual(['heard-distress: listening']);
    radio.now += 2000;
    const last = radio.give({ ...heard, call: distress(fine), stage: 'final' });
    expect(effectsOf(last, 'sound')).toEqual([]);
    expect(effectsOf(last, 'advise')).toHaveLength(1);
    expect(radio.state.dialogues).toMatchObject([{ alerts: 1, call: { position: fine } }]);
    // The same alert sent again is a repeat, though its source counts it as the same event.
    radio.now += 4 * MINUTE;
    radio.give({ ...heard, call: distress(fine), stage: 'final' });
    expect(radio.state.dialogues).toMatchObject([{ alerts: 2 }]);
  });

  it('that says no more the second time is not shown again', () => {
    const radio = new Radio({ mmsi: own });
    const heard = {
      kind: 'received',
      verdict: 'clean',
      event: 4,
      call: composeDistressAlert({ from: troubled }),
    } as const;
    radio.give({ ...heard, stage: 'provisional' });
    expect(radio.give({ ...heard, stage: 'final' })).toEqual([]);
  });

  it('is remembered over a restore', () => {
    const radio = new Radio({ mmsi: own });
    const heard = {
      kind: 'received',
      verdict: 'clean',
      event: 4,
      call: composeDistressAlert({ from: troubled }),
    } as const;
    radio.give({ ...heard, stage: 'provisional' });
    const back = restoredAfter(radio, 1000);
    back.give({ ...heard, stage: 'final' });
    expect(back.state.dialogues).toHaveLength(1);
    expect(back.state.dialogues).toMatchObject([{ alerts: 1 }]);
  });
});

describe('after a restore', () => {
  it('open questions are those that were asked', () => {
    const radio = alerting();
    radio.give({ kind: 'received', call, verdict: 'clean' });
    const state = valueOf(restoreStation(JSON.parse(JSON.stringify(radio.state))));
    const back = restoredAfter(radio, 0);
    expect(openQuestions(state).map(({ question }) => question)).toEqual(['repeat-alert', 'answer-call']);
    const asked = effectsOf(back.effects, 'ask').map(({ clause: _, caution: __, ...rest }) => rest);
    expect(openQuestions(state)).toEqual(asked);
  });

  it('everything in hand is shown and asked again, once', () => {
    const radio = new Radio({ mmsi: own });
    radio.give({ kind: 'received', call: composeDistressAlert({ from: troubled }), verdict: 'clean' });
    radio.give({ kind: 'received', call, verdict: 'clean' });
    const back = restoredAfter(radio, 1000);
    expect(back.effects.map(({ kind }) => kind)).toEqual(['sound', 'show', 'advise', 'show', 'ask', 'wake']);
    expect(effectsOf(back.give({ kind: 'clock' }), 'ask')).toEqual([]);
  });
});

it('effects of an own relay carry the caution', () => {
  const radio = new Radio({ mmsi: own });
  radio.give({ kind: 'call', call: relay, because: bothGrounds });
  radio.give({ kind: 'confirm', dialogue: 1 });
  radio.finish();
  const about = radio.effects.filter(({ dialogue }) => dialogue !== null);
  expect(about.filter(({ caution }) => caution === null)).toEqual([]);
});

describe('what a stranger writes', () => {
  const at = { position: { latitude: 56.34, longitude: -6.5 }, antennaHeight: 5 };
  it('does not break the time line', () => {
    const text = 'One\r\n18:00:00  Merrow  two\u2028three\u0007';
    const merrow = { name: 'Merrow', settings: { mmsi: own }, ...at };
    const event = { kind: 'note', text } as const;
    const lines = writeTimeLine(
      simulate([merrow], [{ afterSeconds: 1, station: 'Merrow', event }], { seed: 1 }),
    );
    expect(lines.filter((line) => /[\p{Cc}\u2028\u2029]/u.test(line))).toEqual([]);
  });

  it('is no formula in the log', () => {
    const entry = {
      kind: 'log-entry',
      number: 1,
      at: 0,
      what: 'note',
      dialogue: null,
      position: null,
    } as const;
    const odd = { ...call, from: '=1+1', to: { ...toOwn, mmsi: '＝A1' } };
    for (const text of ['=1', '＝1', '＋1', '－1', '＠1']) {
      const [, row] = writeLogCsv([{ ...entry, text, call: odd }]).split('\r\n');
      expect(row).toContain(`'${text}`);
      expect(row).toContain("'=1+1,'＝A1");
    }
  });

  it('simulate refuses a place that is none', () => {
    for (const latitude of [Number.NaN, 91, Infinity])
      expect(() =>
        simulate([{ name: 'x', settings: { mmsi: own }, ...at, position: { latitude, longitude: 0 } }], [], {
          seed: 1,
        }),
      ).toThrow(RangeError);
  });
});
