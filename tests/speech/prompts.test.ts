import { describe, expect, it } from 'vitest';
import {
  type Call,
  composeAllShipsCall,
  composeAreaCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composeTestCall,
} from '../../src/call/index.ts';
import { type Situation, type SpokenScript, spokenScript } from '../../src/speech/index.ts';

// All stations are the invented ones of the demo.
const merrow = { name: 'Merrow', callSign: '2ZZM8', mmsi: '232999871' };
const tern = { name: 'Tern of Ardle', mmsi: '232999142' };
const bounty = { name: 'Bounty of Lorn', callSign: '2ZZB4', mmsi: '232999218' };
const skerra = { name: 'Skerra Coastguard', mmsi: '002329990' };
const club = { name: 'Ardle Sailing Club', mmsi: '023299905' };
const position = {
  kind: 'reported-position',
  latitude: { hemisphere: 'S', degrees: 6, minutes: 2 },
  longitude: { hemisphere: 'E', degrees: 6, minutes: 30 },
} as const;
const time = { hour: 4, minute: 2 };
const directory = (mmsi: string) => [merrow, tern, bounty, skerra, club].find((known) => known.mmsi === mmsi);
const made = (subject: Call | Situation) => spokenScript(subject, merrow, { directory });
const says = (subject: Call | Situation) => made(subject).lines.map((line) => line.say);

/** A script without its words: its lines are the places of the notes. */
function prompts({ titleText, channel, lines, cautionText, clause }: SpokenScript) {
  const notes = lines.flatMap(({ say, noteText }) => (noteText === undefined ? [] : [[say, noteText.code]]));
  return { title: titleText.code, channel, notes, caution: cautionText.code, clause };
}

describe('the operator is told what to mind', () => {
  const own = 'MMSI two three two nine nine nine eight seven one';
  const sign = 'call sign two Zulu Zulu Mike eight';
  const manners = {
    caution: 'speech-manners',
    clause: 'ITU-R M.1171 Annex 1 (called station once, calling station twice on VHF), unverified',
  };
  const received = {
    title: 'speech-title-received',
    channel: '16',
    notes: [
      ['Bounty of Lorn, Bounty of Lorn, Bounty of Lorn', 'speech-note-vessel'],
      ['RECEIVED MAYDAY', 'speech-note-inform'],
    ],
    clause: 'RR 2024 Nos. 32.16 and 32.28; MSC.1/Circ.1657; 47 CFR 80.1117(c), 80.1121(b)',
  };
  const announcement = [own, 'speech-note-announced'];

  const cases: Record<string, readonly [Situation, ReturnType<typeof prompts>]> = {
    'in own distress': [
      { kind: 'mayday' },
      {
        title: 'speech-title-distress',
        channel: '16',
        notes: [
          ['MAYDAY, MAYDAY, MAYDAY', 'speech-note-at-once'],
          [own, 'speech-note-alerted'],
          [`MAYDAY, Merrow, ${sign}, ${own}`, 'speech-note-message'],
          ['OVER', 'speech-note-repeat'],
        ],
        caution: 'speech-only-in-danger',
        clause: 'RR 2024 Nos. 32.13, 32.13C and 32.13D; ITU-R M.541-11 Annex 3 §1.4.1',
      },
    ],
    'when relaying a distress': [
      { kind: 'mayday-relay', distressed: bounty },
      {
        title: 'speech-title-relay',
        channel: '16',
        notes: [
          ['ALL STATIONS, ALL STATIONS, ALL STATIONS', 'speech-note-coast-first'],
          [own, 'speech-note-alerted'],
          [
            'MAYDAY, Bounty of Lorn, call sign two Zulu Zulu Bravo four, MMSI two three two nine nine nine two one eight',
            'speech-note-vessel-message',
          ],
        ],
        caution: 'speech-when-to-relay',
        clause: 'RR 2024 Nos. 32.16 to 32.19F; 47 CFR 80.1115(a), 80.1117(a), 80.1121(b)',
      },
    ],
    'when relaying the distress of nobody knows whom': [
      { kind: 'mayday-relay', distressed: null },
      {
        title: 'speech-title-relay',
        channel: '16',
        notes: [
          ['ALL STATIONS, ALL STATIONS, ALL STATIONS', 'speech-note-coast-first'],
          [own, 'speech-note-alerted'],
          ['MAYDAY, unidentified vessel', 'speech-note-message'],
        ],
        caution: 'speech-when-to-relay',
        clause: 'RR 2024 Nos. 32.16 to 32.19F; 47 CFR 80.1115(a), 80.1117(a), 80.1121(b)',
      },
    ],
    'when acknowledging a distress': [
      { kind: 'received-mayday', distressed: bounty },
      {
        ...received,
        caution: 'speech-acknowledge-when-near',
      },
    ],
    'when a distress was answered already': [
      { kind: 'received-mayday', distressed: bounty, answered: true },
      {
        ...received,
        caution: 'speech-already-acknowledged',
      },
    ],
    'when acknowledging a relay': [
      { kind: 'received-mayday-relay', from: skerra },
      {
        title: 'speech-title-relay-received',
        channel: '16',
        notes: [['Skerra Coastguard, Skerra Coastguard, Skerra Coastguard', 'speech-note-relay-sender']],
        caution: 'speech-relay-when-near',
        clause: 'ITU-R M.541-11 Annex 3 §1.5 and §1.6',
      },
    ],
    'when cancelling a false alert': [
      { kind: 'cancel-alert', time },
      {
        title: 'speech-title-cancel',
        channel: '16',
        notes: [
          ['ALL STATIONS, ALL STATIONS, ALL STATIONS', 'speech-note-stop-repeats'],
          ['OUT', 'speech-note-keep-watch'],
        ],
        caution: 'speech-cancel-at-once',
        clause: 'RR 2024 Nos. 32.53B to 32.53E and Resolution 349 (Rev.WRC-23); 47 CFR 80.335(a)',
      },
    ],
    'in an urgency': [
      { kind: 'pan-pan', medicalTransport: true, channel: '67' },
      {
        title: 'speech-title-urgency',
        channel: '67',
        notes: [
          ['PAN PAN, PAN PAN, PAN PAN', 'speech-note-panne'],
          ['MEDICAL', 'speech-note-medical'],
          announcement,
        ],
        caution: 'speech-urgency',
        clause: 'RR 2024 Nos. 33.8 to 33.12 (medical transports: 33.20), unverified; 47 CFR 80.327(f)',
      },
    ],
    'with a safety message elsewhere': [
      { kind: 'securite', channel: '67' },
      {
        title: 'speech-title-safety',
        channel: '16',
        notes: [
          ['SECURITE, SECURITE, SECURITE', 'speech-note-securite'],
          announcement,
          ['[message: what, where, and until when]', 'speech-note-on-that-channel'],
        ],
        caution: 'speech-safety',
        clause: 'RR 2024 Nos. 33.32 to 33.35, unverified',
      },
    ],
    'when calling for a talk': [
      { kind: 'routine-call', to: tern, channel: '72' },
      {
        title: 'speech-title-caller',
        channel: '72',
        notes: [['Tern of Ardle', 'speech-note-listen-first']],
        ...manners,
      },
    ],
    'when calling a group': [
      { kind: 'routine-call', to: club, channel: '77', toGroup: true },
      {
        title: 'speech-title-caller',
        channel: '77',
        notes: [
          ['Ardle Sailing Club', 'speech-note-listen-first'],
          ['OVER', 'speech-note-members'],
        ],
        ...manners,
      },
    ],
    'when called for a talk': [
      { kind: 'routine-answer', to: tern, channel: '72' },
      {
        title: 'speech-title-called',
        channel: '72',
        notes: [['Merrow, THIS IS Tern of Ardle, Tern of Ardle, OVER', 'speech-note-wait']],
        ...manners,
      },
    ],
    'in a radio check': [
      { kind: 'radio-check', to: tern, channel: '72' },
      {
        title: 'speech-title-radio-check',
        channel: '72',
        notes: [['Merrow, THIS IS Tern of Ardle, I READ YOU five, OVER', 'speech-note-figure']],
        caution: 'speech-radio-check',
        clause: 'IMO A.918(22) part A1 and ITU-R M.1171 (tests of at most 10 s), unverified',
      },
    ],
  };

  it.each(Object.entries(cases))('%s', (_, [situation, wanted]) => {
    expect(prompts(made(situation))).toEqual(wanted);
  });
});

describe('a call with nothing to say after it says what to do', () => {
  const alert = composeDistressAlert({ from: bounty.mmsi });
  const hail = composeIndividualCall({ from: tern.mmsi, to: merrow.mmsi, channel: '72' });
  const listen = 'speech-listen';
  const annex = 'ITU-R M.541-11 Annex 3';
  const cases: Record<string, readonly [Call, string, string]> = {
    'the own acknowledgement of an alert': [
      composeDistressAcknowledgement({ from: merrow.mmsi, about: alert }),
      'speech-watch-after-acknowledgement',
      '47 CFR 80.1117',
    ],
    "another vessel's cancellation": [
      composeDistressSelfCancel({ from: bounty.mmsi }),
      'speech-alert-cancelled',
      'RR 2024 No. 32.53E',
    ],
    'a test': [composeTestCall({ from: merrow.mmsi, to: skerra.mmsi }), 'speech-nothing-follows', annex],
    'a call for data': [
      { ...hail, firstTelecommand: 'data' },
      'speech-not-speech',
      'ITU-R M.493-16 table A1-3, first telecommand',
    ],
    'a call to all ships': [composeAllShipsCall({ from: tern.mmsi, category: 'safety' }), listen, annex],
    'an urgency call to the own station': [
      { ...hail, category: 'urgency' },
      'speech-listen-for-pan-pan',
      'RR 2024 No. 33.12, unverified',
    ],
    'a safety call to the own station': [
      { ...hail, category: 'safety' },
      'speech-listen-for-securite',
      'RR 2024 No. 33.35, unverified',
    ],
  };

  it.each(Object.entries(cases))('%s', (_, [call, caution, clause]) => {
    const script = made(call);
    expect(script).toMatchObject({ channel: null, lines: [], blanks: [] });
    expect(prompts(script)).toMatchObject({ title: 'speech-title-nothing', caution, clause });
  });
});

describe('who speaks, to whom, and where', () => {
  const hail = composeIndividualCall({ from: merrow.mmsi, to: tern.mmsi, channel: '72' });
  const urgent = composeIndividualCall({
    from: merrow.mmsi,
    to: skerra.mmsi,
    channel: '67',
    category: 'urgency',
  });

  it('an urgency or safety call to one station is spoken to that station, on its channel', () => {
    expect(made(urgent).channel).toBe('67');
    expect(says(urgent).slice(0, 2)).toEqual([
      'PAN PAN, PAN PAN, PAN PAN',
      'Skerra Coastguard, Skerra Coastguard, Skerra Coastguard',
    ]);
    expect(says({ ...urgent, category: 'safety' })[1]).toBe(
      'Skerra Coastguard, Skerra Coastguard, Skerra Coastguard',
    );
    expect(says({ ...urgent, secondTelecommand: 'medical-transport' })[1]).toBe('MEDICAL');
  });

  it('to many it is spoken to all stations, on 16 when no channel is named', () => {
    const area = {
      kind: 'geographic-area',
      north: { hemisphere: 'N', degrees: 57 },
      west: { hemisphere: 'W', degrees: 7 },
      southward: 2,
      eastward: 3,
    } as const;
    const all = 'ALL STATIONS, ALL STATIONS, ALL STATIONS';
    const warning = composeAreaCall({ from: merrow.mmsi, area, category: 'safety' });
    expect([made(warning).channel, says(warning)[1]]).toEqual(['16', all]);
    expect(made({ ...warning, channel: null }).channel).toBe('16');
    const call = composeAllShipsCall({ from: merrow.mmsi, category: 'urgency' });
    expect(made({ ...call, channel: null }).channel).toBe('16');
    expect(says(call)[1]).toBe(all);
  });

  it('a safety message on 16 follows there at once, however 16 is named', () => {
    const lines = says({ kind: 'securite', message: 'Drifting container', channel: '16' });
    expect(lines.slice(-2)).toEqual(['Drifting container', 'OUT']);
    expect(says({ kind: 'securite', message: 'Drifting container', channel: null })).toEqual(lines);
    expect(lines).toHaveLength(8);
  });

  it('the sender of a group call begins, its members wait', () => {
    const group = composeGroupCall({ from: merrow.mmsi, to: club.mmsi, channel: '77' });
    expect(says(group)).toEqual(['Ardle Sailing Club', 'THIS IS', 'Merrow, Merrow', 'OVER']);
    const heard = made({ ...group, from: tern.mmsi });
    expect(heard.lines.map((line) => line.say)).toEqual([
      'Ardle Sailing Club, THIS IS Tern of Ardle, Tern of Ardle, OVER',
      'Tern of Ardle',
      'THIS IS',
      'Merrow',
      'OVER',
    ]);
  });

  it('the caller speaks first when she called and when she was answered', () => {
    expect(made(hail).titleText.code).toBe('speech-title-caller');
    const answered = composeIndividualAcknowledgement({ call: hail });
    expect(made(answered).titleText.code).toBe('speech-title-caller');
    const asked = composeIndividualCall({ from: tern.mmsi, to: merrow.mmsi, channel: '72' });
    expect(made(asked).titleText.code).toBe('speech-title-called');
    const answering = composeIndividualAcknowledgement({ call: asked });
    expect(made(answering).titleText.code).toBe('speech-title-called');
    expect(says(answering)[0]).toBe('Merrow, THIS IS Tern of Ardle, Tern of Ardle, OVER');
  });

  it('the other station answers a radio check', () => {
    const { lines } = made({ kind: 'radio-check', to: tern, channel: '72' });
    expect(lines.map((line) => line.who ?? 'own')).toEqual(['own', 'own', 'own', 'own', 'other', 'own']);
  });

  it('telephony by another name, or by none, is speech too', () => {
    for (const firstTelecommand of ['telephony-j3e', null] as const)
      expect(made({ ...hail, firstTelecommand }).titleText.code).toBe('speech-title-caller');
  });

  it('a relay of the own station is spoken, one of another is acknowledged', () => {
    const relay = composeDistressRelay({ from: merrow.mmsi, distressed: bounty.mmsi });
    expect(made(relay).titleText.code).toBe('speech-title-relay');
    expect(made({ ...relay, from: skerra.mmsi }).titleText.code).toBe('speech-title-relay-received');
  });

  it('a vessel without an identity of her own is never taken for the sender', () => {
    const nameless = (call: Call) => spokenScript(call, { name: 'Merrow' }, { directory }).titleText.code;
    expect(nameless({ ...composeDistressAlert({ from: bounty.mmsi }), from: null })).toBe(
      'speech-title-received',
    );
    const acknowledged = composeDistressAcknowledgement({ from: skerra.mmsi, distressed: bounty.mmsi });
    expect(nameless({ ...acknowledged, distressed: null })).toBe('speech-title-received');
  });
});

describe('a message in distress', () => {
  const message = (change: Partial<Extract<Situation, { kind: 'mayday' }>>) =>
    says({ kind: 'mayday', position, ...change }).slice(6);

  it('says what the vessel says, and leaves blank what is not known', () => {
    expect(message({})).toEqual([
      'My position zero six degrees zero two minutes south, zero zero six degrees three zero minutes east',
      '[nature of distress]',
      'I require immediate assistance',
      '[number] persons on board',
      'OVER',
    ]);
    expect(message({ time, assistance: 'I require a pump', personsOnBoard: 12, information: '  ' })).toEqual([
      'My position zero six degrees zero two minutes south, zero zero six degrees three zero minutes east at zero four zero two UTC',
      '[nature of distress]',
      'I require a pump',
      'one two persons on board',
      'OVER',
    ]);
  });

  it('takes brackets in the words of a person for no blank', () => {
    const script = made({ kind: 'pan-pan', message: ' [Mast] broken ' });
    expect(script.lines.map((line) => line.say)).toContain('Mast broken');
    expect(script.blanks).toEqual(['position, or bearing and distance from a known place']);
    expect(made({ kind: 'pan-pan', message: ' [] ' }).blanks).toContain(
      'message: what is wrong, and what help is needed',
    );
  });

  it('says the time of a position with it, in urgency too', () => {
    expect(says({ kind: 'pan-pan', position, time })[6]).toMatch(/ east at zero four zero two UTC$/);
  });

  it('carries over what an alert said of the persons on board', () => {
    const alert = composeDistressAlert({ from: merrow.mmsi, expansion: { personsOnBoard: 3 } });
    expect(says(alert)).toContain('three persons on board');
    expect(says({ ...alert, nature: 'symbol-111' })).toContain('[nature of distress]');
  });

  it('names a station by its identity, or leaves a blank', () => {
    expect(says({ kind: 'radio-check', to: {}, channel: null })[0]).toBe('[name of the station]');
    expect(says({ kind: 'radio-check', to: { mmsi: '232999563' }, channel: null })[0]).toBe(
      'two three two nine nine nine five six three',
    );
    const script = spokenScript({ kind: 'mayday' }, {});
    expect(script.lines.slice(2, 5).map((line) => line.say)).toEqual([
      '[name of the station], [name of the station], [name of the station]',
      'call sign [call sign]',
      'MMSI [MMSI]',
    ]);
  });

  it('says figures in the code of the Radio Regulations when asked to', () => {
    const { lines } = spokenScript({ kind: 'mayday' }, merrow, { figures: 'figure-code' });
    expect(lines[3]?.say).toBe('call sign Bissotwo Zulu Zulu Mike Oktoeight');
  });
});
