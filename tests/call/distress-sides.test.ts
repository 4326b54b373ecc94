import { describe, expect, it } from 'vitest';
import {
  answersTo,
  type Call,
  checkCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressRelayAcknowledgement,
  composeDistressSelfCancel,
  composePositionReply,
  decodeFields,
  describeCall,
  encodeFields,
} from '../../src/call/index.ts';
import { spokenScript } from '../../src/speech/index.ts';
import { codedIn, rowIn } from './without-words.ts';

// All stations are the invented ones of the demo.
const merrow = '232999871';
const bounty = '232999218';
const coast = '002329990';
const otherCoast = '002329980';
const device = '972329901';
const position = {
  kind: 'reported-position',
  latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
  longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
} as const;
const time = { hour: 14, minute: 32 };
const alert = composeDistressAlert({ from: bounty, nature: 'flooding', position, time });
const relay = composeDistressRelay({ from: merrow, to: coast, about: alert });

const codes = (call: Call) => checkCall(call).map((notice) => notice.code);
const cautions = (call: Call, own?: string, designated = false) =>
  describeCall(call, { own, designated }).cautions.map((caution) => caution.code);
const watch = 'call-keep-watch';
const coarse = 'call-position-coarse';

// ITU-R M.493-16, from memory: the closed loop of a man-overboard device is a relay of its own distress.
describe('the relay of a man-overboard device to its own ship', () => {
  const loop: Call = {
    ...composeDistressRelay({ from: coast, to: merrow, nature: 'man-overboard', position, time }),
    from: device,
    distressed: device,
  };

  it('is acknowledged to the device', () => {
    const { answers, none } = answersTo(loop, { own: merrow, equipmentClass: 'A' });
    expect(none).toBeNull();
    expect(answers.map(({ call }) => call)).toMatchObject([
      { kind: 'distress-relay-acknowledgement', to: { mmsi: device }, from: merrow, distressed: device },
    ]);
    expect(codes(answers[0]?.call as Call)).toEqual([]);
  });

  it('is no relay of a ship, nor of her own distress', () => {
    expect(codes(loop)).toEqual([]);
    expect(checkCall({ ...loop, from: bounty, distressed: bounty }, { equipmentClass: 'M' })).toEqual([]);
    expect(codes({ ...loop, from: bounty, distressed: bounty })).toEqual([
      'call-relay-of-own',
      'call-relay-cases',
    ]);
  });

  it('and no other call to a device is taken for its acknowledgement', () => {
    expect(codes(composePositionReply({ from: merrow, to: device }))).toEqual(['identity-use']);
  });
});

describe('cautions take the side of the own station', () => {
  // RR 2024 Nos. 32.16 to 32.19H; MSC.1/Circ.1657.
  it('a ship that relays reads the three cases', () => {
    expect(cautions(relay, merrow)).toEqual(['call-when-to-relay', 'call-relay-by-voice', coarse]);
    expect(cautions(composeDistressRelay({ from: coast, about: alert }), coast)).toEqual([
      'call-relay-by-voice',
      coarse,
    ]);
  });

  // 47 CFR 80.1117(a), 80.1121(d).
  it('a ship that acknowledges is told who may', () => {
    const acknowledgement = composeDistressAcknowledgement({ from: merrow, about: alert });
    expect(cautions(acknowledgement, merrow)).toEqual(['call-who-acknowledges', watch, coarse]);
    expect(cautions(acknowledgement, bounty)).toEqual([watch, coarse]);
    expect(cautions({ ...acknowledgement, from: coast }, coast, true)).toEqual([watch, coarse]);
  });

  // 47 CFR 80.103(c), 80.1119(a); RR 2024 No. 32.27.
  it('a designated coast station acknowledges without delay, any other reports', () => {
    for (const call of [alert, relay]) {
      expect(cautions(call, coast, true)).toEqual(['call-acknowledge-without-delay', coarse]);
      expect(cautions(call, coast)).toEqual([watch, 'call-report-ashore', coarse]);
    }
  });
});

describe('words of a coast station', () => {
  const skerra = { name: 'Skerra Coastguard', mmsi: coast };
  const caution = (call: Call, designated: boolean) =>
    spokenScript(call, skerra, { designated }).cautionText.code;

  it('that is designated answer without delay, and nobody else is informed first: 47 CFR 80.1119(a)', () => {
    expect(caution(alert, true)).toBe('speech-coast-acknowledges');
    expect(caution(relay, true)).toBe(caution(alert, true));
    expect(spokenScript(alert, skerra, { designated: true }).lines.at(-1)).toEqual({
      say: 'RECEIVED MAYDAY',
      gloss: { code: 'speech-received', params: {}, message: expect.any(String) },
    });
  });

  it('that is not designated are those of a ship: 47 CFR 80.103(c)', () => {
    const ship = spokenScript(alert, { name: 'Merrow', mmsi: merrow });
    expect(caution(alert, false)).toBe(ship.cautionText.code);
    expect(spokenScript(alert, { mmsi: merrow }, { designated: true }).caution).toBe(ship.caution);
    expect(spokenScript(alert, skerra).lines.at(-1)?.noteText?.code).toBe('speech-note-inform');
  });

  it('leave the traffic to the station that answered', () => {
    const heard = composeDistressAcknowledgement({ from: otherCoast, about: alert });
    expect(caution(heard, true)).toBe('speech-coast-listens');
  });
});

describe('words after the acknowledgement of a relay', () => {
  const answer = composeDistressRelayAcknowledgement({ from: coast, about: relay });
  const own = { name: 'Merrow', callSign: '2ZZM8', mmsi: merrow };

  it('are the own relay, to the station that acknowledged', () => {
    const { titleText, lines } = spokenScript(answer, own, {
      directory: () => ({ name: 'Skerra Coastguard' }),
    });
    expect(titleText.code).toBe('speech-title-relay');
    expect(lines.slice(0, 2).map((line) => line.say)).toEqual([
      'MAYDAY RELAY, MAYDAY RELAY, MAYDAY RELAY',
      'Skerra Coastguard, Skerra Coastguard, Skerra Coastguard',
    ]);
    expect(lines.map((line) => line.say)).toContain('vessel flooding');
  });

  it('are said too when the own wire left the address out, and for an unidentified vessel', () => {
    const unsaid: Call = { ...answer, to: { kind: 'station', mmsi: null }, distressed: null };
    expect(spokenScript(unsaid, own).lines[6]?.say).toBe('MAYDAY, unidentified vessel');
  });

  it('are none for others, nor for the station that acknowledged', () => {
    const toAll: Call = { ...answer, to: { kind: 'all-ships' } };
    for (const [call, mmsi] of [
      [answer, bounty],
      [answer, coast],
      [toAll, merrow],
      [{ ...answer, to: { kind: 'station', mmsi: null } }, undefined],
    ] as const)
      expect(spokenScript(call, { mmsi })).toMatchObject({
        lines: [],
        cautionText: { code: 'speech-relay-acknowledged', params: { where: 'vhf' } },
        clause: '47 CFR 80.1121(a)',
      });
  });
});

// Radio Regulations Appendix 15 and ITU-R M.541-11, from memory: 2182 kHz is the frequency for voice beside 2187.5 kHz.
describe('distress on MF and HF', () => {
  const band = '2182 kHz for calls on 2187.5 kHz';

  it.each([
    'telephony-j3e',
    'telephony-h3e',
    'teleprinter-fec',
    'teleprinter-arq',
    'teleprinter-receive',
    'morse',
  ] as const)('%s is not spoken on channel 16', (subsequent) => {
    const call: Call = { ...alert, subsequent };
    expect(describeCall(call, { own: merrow }).cautions).toMatchObject([
      { code: 'call-keep-watch', params: { where: 'mf-hf' }, text: expect.stringContaining(band) },
      { code: 'call-coast-answers', params: { where: 'mf-hf' }, text: expect.stringContaining(band) },
      { code: 'call-pass-on-mf-hf', params: {} },
      { code: 'call-position-coarse', params: {} },
    ]);
    expect(spokenScript(call, { mmsi: bounty })).toMatchObject({
      channel: null,
      caution: expect.stringContaining(band),
      cautionText: {
        code: 'speech-on-the-band',
        params: { where: 'mf-hf', caution: { code: 'speech-only-in-danger' } },
      },
    });
  });

  it('notes and cautions without words name the frequency too', () => {
    const cancel = composeDistressSelfCancel({ from: merrow, subsequent: 'telephony-j3e' });
    expect(spokenScript(cancel, { mmsi: merrow }).lines.at(-1)).toMatchObject({
      note: expect.stringContaining(band),
      noteText: { code: 'speech-note-keep-watch', params: { where: 'mf-hf' } },
    });
    expect(spokenScript(cancel, { mmsi: bounty })).toMatchObject({
      channel: null,
      caution: expect.stringContaining(band),
    });
  });

  it('telephony of VHF, data, and a type not told stay on channel 16', () => {
    for (const subsequent of ['telephony-simplex', 'telephony-duplex', 'data', null] as const)
      expect(spokenScript({ ...alert, subsequent }, { mmsi: bounty }).channel).toBe('16');
  });
});

// ITU-R M.493 before -16, from memory (deviation: D-call-16).
describe('the signal of an emergency beacon, from a set of an older edition', () => {
  const flooding = encodeFields(composeDistressAlert({ from: bounty, nature: 'flooding' }));
  const heard = decodeFields({ ...flooding, nature: 112, subsequent: 126 });
  const beacon = heard.call as Extract<Call, { kind: 'distress-alert' }>;

  it('says nothing of what follows, and so does what is sent about it', () => {
    expect(heard).toMatchObject({ call: { nature: 'epirb-emission', subsequent: null }, notices: [] });
    expect(composeDistressRelay({ from: coast, about: beacon }).subsequent).toBeNull();
    expect(encodeFields(beacon)).toEqual({ ...flooding, nature: 112, subsequent: 126 });
  });
});

// RR 2024 No. 32.53E.
describe('the cancellation of an own alert', () => {
  const cancel = composeDistressSelfCancel({ from: merrow, about: { ...alert, from: merrow } });
  const said = (alertTime?: typeof time | null) =>
    spokenScript(cancel, { mmsi: merrow }, { alertTime }).lines[5]?.say;

  it('names the time of the alert where it is told, and never that of the position', () => {
    expect(said({ hour: 9, minute: 15 })).toBe('PLEASE CANCEL MY DISTRESS ALERT OF zero nine one five UTC');
    const typed = spokenScript(
      { kind: 'cancel-alert', time: null },
      {},
      { alertTime: { hour: 9, minute: 15 } },
    );
    expect(typed.lines[5]?.say).toBe('PLEASE CANCEL MY DISTRESS ALERT OF zero nine one five UTC');
    for (const none of [undefined, null])
      expect(said(none)).toBe('PLEASE CANCEL MY DISTRESS ALERT OF [time] UTC');
  });
});

describe('a position or time that is not there', () => {
  const heard = (change: object) => decodeFields({ ...encodeFields(alert), ...change }).call;
  const places = {
    'not given': [[99, 99, 99, 99, 99], 'not-given'],
    'told to be no information': [[126, 126, 126, 126, 126], 'not-given'],
    'left out': [null, 'not-given'],
    'not read whole': [[15, null, 0, 6, 30], 'not-read'],
    'past the pole': [[19, 62, 0, 6, 30], 'impossible'],
    'no digits': [[15, 62, 0, 6, 120], 'impossible'],
    'no information in part': [[126, 62, 0, 6, 30], 'impossible'],
  } as const;

  it.each(Object.entries(places))('position %s', (_, [symbols, lack]) => {
    const call = heard({ position: symbols });
    const { sentenceText, rows, cautions } = describeCall(call);
    expect(codedIn(sentenceText)).toBe(
      `call-is-alert from=232999218 nature=flooding place=(call-place-lack lack=${lack}) time=14:32 UTC`,
    );
    if (symbols !== null) expect(rows.map(rowIn)).toContain(`position call-place-lack lack=${lack}`);
    expect(cautions.at(-1)?.code).toBe(`call-place-${lack}`);
    expect(codes(call).includes('call-position-unknown')).toBe(lack === 'not-given');
  });

  it.each([
    ['not given', [88, 88], 'not-given'],
    ['not read whole', [14, null], 'not-read'],
    ['of no day', [25, 0], 'impossible'],
  ] as const)('time %s', (_, symbols, lack) => {
    const call = heard({ time: symbols });
    expect(codedIn(describeCall(call).sentenceText)).toContain(`time=(call-time-lack lack=${lack})`);
    expect(describeCall(call).rows.map(rowIn)).toContain(`time call-time-lack lack=${lack}`);
    expect(codes(call).includes('call-time-unknown')).toBe(lack === 'not-given');
  });

  it('that lost a character is told once', () => {
    expect(codes(heard({ position: [15, null, 0, 6, 30] }))).toEqual(['call-character-missing']);
  });

  it('of a reply as of an alert', () => {
    const reply = encodeFields(composePositionReply({ from: bounty, to: merrow, position, time }));
    const { call } = decodeFields({ ...reply, position: [15, null, 0, 6, 30] });
    expect(codedIn(describeCall(call).sentenceText)).toContain(
      'place=(call-place-lack lack=not-read) time=14:32 UTC',
    );
  });
});
