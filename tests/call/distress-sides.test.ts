import { describe, expect, it } from 'vitest';
import {
  answersTo,
  type Call,
  callFromFields,
  callToFields,
  checkCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressRelayAcknowledgement,
  composeDistressSelfCancel,
  composePositionReply,
  describeCall,
} from '../../src/call/index.ts';
import { spokenScript } from '../../src/speech/index.ts';

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
const cautions = (call: Call, own?: string) =>
  describeCall(call, { own }).cautions.map((caution) => caution.text);
const watch =
  'Keep watch on channel 16, do not transmit over distress traffic, tell the master, and log the call';
const coarse =
  'The position may be cut to whole minutes, typed by hand or hours old: do not steer by it alone';

// ITU-R M.493-15, from memory: the closed loop of a man-overboard device is a relay of its own distress.
describe('the relay of a man-overboard device to its own ship', () => {
  const loop: Call = {
    ...composeDistressRelay({ from: coast, to: merrow, nature: 'man-overboard', position, time }),
    from: device,
    distressed: device,
  };

  it('is acknowledged to the device', () => {
    const { answers, none } = answersTo(loop, { own: merrow });
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
  // IMO COMSAR/Circ.25; 47 CFR 80.1121(b), (c).
  it('a ship that relays is told the one case', () => {
    expect(cautions(relay, merrow)).toEqual([
      'Only when the vessel in distress cannot alert herself and the master judges that more help is needed, never because an alert was heard',
      'The relay follows in speech on channel 16',
      coarse,
    ]);
    expect(cautions(composeDistressRelay({ from: coast, about: alert }), coast)).toEqual([
      'The relay follows in speech on channel 16',
      coarse,
    ]);
  });

  // 47 CFR 80.1117(a), 80.1121(d).
  it('a ship that acknowledges is told who may', () => {
    const acknowledgement = composeDistressAcknowledgement({ from: merrow, about: alert });
    expect(cautions(acknowledgement, merrow)).toEqual([
      'Coast stations acknowledge an alert by selective calling; a ship only after consulting a rescue co-ordination centre',
      watch,
      coarse,
    ]);
    expect(cautions(acknowledgement, bounty)).toEqual([watch, coarse]);
    expect(cautions({ ...acknowledgement, from: coast }, coast)).toEqual([watch, coarse]);
  });

  // ITU-R M.541 Annex 3, from memory.
  it('a coast station is told to answer at once', () => {
    const atOnce =
      'Acknowledge at once, by selective calling and by voice on channel 16; then lead the traffic or pass it to the rescue co-ordination centre, and log the call';
    expect(cautions(alert, coast)).toEqual([atOnce, coarse]);
    expect(cautions(relay, coast)).toEqual([atOnce, coarse]);
  });
});

describe('words of a coast station', () => {
  const skerra = { name: 'Skerra Coastguard', mmsi: coast };
  const clause = 'ITU-R M.541 Annex 3, from memory';

  it('answer at once, with nobody to tell first', () => {
    const atOnce = 'At once; then lead the traffic, or pass it to the rescue co-ordination centre';
    const script = spokenScript(alert, skerra);
    expect(script).toMatchObject({ caution: atOnce, clause });
    expect(script.lines.at(-1)).toEqual({ say: 'RECEIVED MAYDAY' });
    expect(spokenScript(relay, skerra)).toMatchObject({ caution: atOnce, clause });
  });

  it('leave the traffic to the station that answered', () => {
    const heard = composeDistressAcknowledgement({ from: otherCoast, about: alert });
    expect(spokenScript(heard, skerra).caution).toBe(
      'The alert has been answered already: listen, and take up the traffic when the station that leads it or the rescue co-ordination centre asks',
    );
  });
});

describe('words after the acknowledgement of a relay', () => {
  const answer = composeDistressRelayAcknowledgement({ from: coast, about: relay });
  const own = { name: 'Merrow', callSign: '2ZZM8', mmsi: merrow };

  it('are the own relay, to the station that acknowledged', () => {
    const { title, lines } = spokenScript(answer, own, { directory: () => ({ name: 'Skerra Coastguard' }) });
    expect(title).toBe('Distress relay');
    expect(lines.slice(0, 2).map((line) => line.say)).toEqual([
      'MAYDAY RELAY, MAYDAY RELAY, MAYDAY RELAY',
      'Skerra Coastguard, Skerra Coastguard, Skerra Coastguard',
    ]);
    expect(lines.map((line) => line.say)).toContain('vessel flooding');
  });

  it('are said too when the own wire left the address out, and for a vessel not known', () => {
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
        caution: 'The relay was acknowledged: listen on channel 16',
        clause: '47 CFR 80.1121(a)',
      });
  });
});

// Radio Regulations Appendix 15 and ITU-R M.541, from memory: 2182 kHz is the frequency for voice beside 2187.5 kHz.
describe('distress on MF and HF', () => {
  const band = 'the distress frequency of the band for voice (2182 kHz with 2187.5 kHz)';

  it.each([
    'telephony-j3e',
    'telephony-h3e',
    'teleprinter-fec',
    'teleprinter-arq',
    'teleprinter-receive',
    'morse',
  ] as const)('%s is not spoken on channel 16', (subsequent) => {
    const call: Call = { ...alert, subsequent };
    expect(cautions(call, merrow)).toEqual([
      `Keep watch on ${band}, do not transmit over distress traffic, tell the master, and log the call`,
      `Leave the acknowledgement by selective calling to a coast station; near the vessel and with no coast station heard, acknowledge by voice on ${band} and tell a coast station`,
      'Do not relay an alert on MF because it was heard; one on HF that nobody acknowledges within 5 minutes is relayed to a coast station',
      coarse,
    ]);
    expect(spokenScript(call, { mmsi: bounty })).toMatchObject({
      channel: null,
      caution: `On ${band}. Only where a vessel or person is in grave and imminent danger and needs immediate assistance, by order of the person responsible for the vessel`,
    });
  });

  it('notes and cautions without words name the frequency too', () => {
    const cancel = composeDistressSelfCancel({ from: merrow, subsequent: 'telephony-j3e' });
    expect(spokenScript(cancel, { mmsi: merrow }).lines.at(-1)?.note).toBe(
      `Stay on ${band} and answer whoever calls`,
    );
    expect(spokenScript(cancel, { mmsi: bounty })).toMatchObject({
      channel: null,
      caution: `The alert was taken back: listen on ${band} for the cancellation by voice`,
    });
  });

  it('telephony of VHF, data, and a type not told stay on channel 16', () => {
    for (const subsequent of ['telephony-simplex', 'telephony-duplex', 'data', null] as const)
      expect(spokenScript({ ...alert, subsequent }, { mmsi: bounty }).channel).toBe('16');
  });
});

// ITU-R M.493-15, from memory (deviation: D-call-16).
describe('the signal of an emergency beacon', () => {
  const beacon = composeDistressAlert({ from: bounty, nature: 'epirb-emission' });

  it('says nothing of what follows, and so does what is sent about it', () => {
    expect(beacon.subsequent).toBeNull();
    expect(composeDistressRelay({ from: coast, about: beacon }).subsequent).toBeNull();
    expect(callFromFields(callToFields(beacon))).toEqual({ call: beacon, notices: [] });
    const stated = composeDistressAlert({
      from: bounty,
      nature: 'epirb-emission',
      subsequent: 'telephony-simplex',
    });
    expect(stated.subsequent).toBe('telephony-simplex');
  });
});

// Radio Regulations No. 32.53E, from memory.
describe('the cancellation of an own alert', () => {
  const cancel = composeDistressSelfCancel({ from: merrow, about: { ...alert, from: merrow } });
  const said = (alertTime?: typeof time | null) =>
    spokenScript(cancel, { mmsi: merrow }, { alertTime }).lines[5]?.say;

  it('names the time of the alert where it is told, and never that of the position', () => {
    expect(said({ hour: 9, minute: 15 })).toBe('PLEASE CANCEL MY DISTRESS ALERT OF zero nine one five UTC');
    for (const none of [undefined, null])
      expect(said(none)).toBe('PLEASE CANCEL MY DISTRESS ALERT OF [time] UTC');
  });
});

describe('a position or time that is not there', () => {
  const heard = (change: object) => callFromFields({ ...callToFields(alert), ...change }).call;
  const places = {
    'not given': [[99, 99, 99, 99, 99], 'position not known'],
    'told to be no information': [[126, 126, 126, 126, 126], 'position not known'],
    'left out': [null, 'position not known'],
    'not read whole': [[15, null, 0, 6, 30], 'position could not be read'],
    'past the pole': [[19, 62, 0, 6, 30], 'position received is impossible'],
    'no digits': [[15, 62, 0, 6, 120], 'position received is impossible'],
  } as const;

  it.each(Object.entries(places))('position %s', (_, [symbols, words]) => {
    const call = heard({ position: symbols });
    const { sentence, rows, cautions } = describeCall(call);
    expect(sentence).toBe(`Distress alert from 232999218: flooding, ${words}, 14:32 UTC`);
    if (symbols !== null) expect(rows.find((row) => row.label === 'Position')?.value).toBe(words);
    expect(cautions.at(-1)?.text).toBe(
      {
        'position not known': 'No position was given, which does not mean that the vessel is far away',
        'position could not be read':
          'A position was given but could not be read, which does not mean that the vessel is far away',
        'position received is impossible':
          'What came as position is no place: take the position as not known, and do not guess it from the digits',
      }[words],
    );
    expect(codes(call).includes('call-position-unknown')).toBe(words === 'position not known');
  });

  it.each([
    ['not given', [88, 88], 'time not known'],
    ['not read whole', [14, null], 'time could not be read'],
    ['of no day', [25, 0], 'time received is impossible'],
  ] as const)('time %s', (_, symbols, words) => {
    const call = heard({ time: symbols });
    expect(describeCall(call).sentence).toMatch(new RegExp(`, ${words}$`));
    expect(describeCall(call).rows.find((row) => row.label === 'Time of the position')?.value).toBe(words);
    expect(codes(call).includes('call-time-unknown')).toBe(words === 'time not known');
  });

  it('of a reply as of an alert', () => {
    const reply = callToFields(composePositionReply({ from: bounty, to: merrow, position, time }));
    const { call } = callFromFields({ ...reply, position: [15, null, 0, 6, 30] });
    expect(describeCall(call).sentence).toContain('position could not be read, 14:32 UTC');
  });
});
