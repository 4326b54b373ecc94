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
function prompts({ title, channel, lines, caution, clause }: SpokenScript) {
  const notes = lines.flatMap(({ say, note }) => (note === undefined ? [] : [[say, note]]));
  return { title, channel, notes, caution, clause };
}

describe('the operator is told what to mind', () => {
  const own = 'MMSI two three two nine nine nine eight seven one';
  const sign = 'call sign two Zulu Zulu Mike eight';
  const manners = {
    caution:
      'Use low power where it is enough, be brief, and use a working channel only; leave channels 16 and 70 free',
    clause: 'ITU-R M.1171 Annex 1 (called station once, calling station twice on VHF), unverified',
  };
  const received = {
    title: 'Acknowledgement of a distress',
    channel: '16',
    notes: [
      ['Bounty of Lorn, Bounty of Lorn, Bounty of Lorn', 'The vessel in distress'],
      ['RECEIVED MAYDAY', 'Then inform a coast station or rescue co-ordination centre'],
    ],
    clause: 'RR 2024 Nos. 32.16 and 32.28; MSC.1/Circ.1657; 47 CFR 80.1117(c), 80.1121(b)',
  };
  const announcement = [own, 'If the call was announced by DSC'];

  const cases: Record<string, readonly [Situation, ReturnType<typeof prompts>]> = {
    'in own distress': [
      { kind: 'mayday' },
      {
        title: 'Distress call and message',
        channel: '16',
        notes: [
          [
            'MAYDAY, MAYDAY, MAYDAY',
            'Full power; as soon as the alert is out, at the latest about 15 seconds later, acknowledged or not',
          ],
          [own, 'If an alert was sent by DSC'],
          [`MAYDAY, Merrow, ${sign}, ${own}`, 'The message begins'],
          ['OVER', 'Release the key and listen; repeat from the beginning if nobody answers'],
        ],
        caution:
          'Only when a vessel or person is in grave and imminent danger and needs immediate assistance, on the authority of the master',
        clause: 'RR 2024 Nos. 32.13, 32.13C and 32.13D; ITU-R M.541-11 Annex 3 §1.4.1',
      },
    ],
    'when relaying a distress': [
      { kind: 'mayday-relay', distressed: bounty },
      {
        title: 'Distress relay',
        channel: '16',
        notes: [
          [
            'ALL STATIONS, ALL STATIONS, ALL STATIONS',
            'Or the name of one coast station three times: try a coast station first',
          ],
          [own, 'If the initial alert was sent by DSC'],
          [
            'MAYDAY, Bounty of Lorn, call sign two Zulu Zulu Bravo four, MMSI two three two nine nine nine two one eight',
            'The vessel in distress; the message begins',
          ],
        ],
        caution:
          'Relay when nobody acknowledged the alert or the MAYDAY call within about 5 minutes, to a coast station first; when you see or know that a vessel in distress cannot call; or when a rescue co-ordination centre asks',
        clause: 'RR 2024 Nos. 32.16 to 32.19F; 47 CFR 80.1115(a), 80.1117(a), 80.1121(b)',
      },
    ],
    'when relaying the distress of nobody knows whom': [
      { kind: 'mayday-relay', distressed: null },
      {
        title: 'Distress relay',
        channel: '16',
        notes: [
          [
            'ALL STATIONS, ALL STATIONS, ALL STATIONS',
            'Or the name of one coast station three times: try a coast station first',
          ],
          [own, 'If the initial alert was sent by DSC'],
          ['MAYDAY, unidentified vessel', 'The message begins'],
        ],
        caution:
          'Relay when nobody acknowledged the alert or the MAYDAY call within about 5 minutes, to a coast station first; when you see or know that a vessel in distress cannot call; or when a rescue co-ordination centre asks',
        clause: 'RR 2024 Nos. 32.16 to 32.19F; 47 CFR 80.1115(a), 80.1117(a), 80.1121(b)',
      },
    ],
    'when acknowledging a distress': [
      { kind: 'received-mayday', distressed: bounty },
      {
        ...received,
        caution:
          'Listen first. If you are near the vessel and hear no coast station, acknowledge; then listen, and obey the station that controls the traffic. If nobody acknowledges within 5 minutes, pass the distress on to a coast station by any means',
      },
    ],
    'when a distress was answered already': [
      { kind: 'received-mayday', distressed: bounty, answered: true },
      {
        ...received,
        caution:
          'Listen first: the distress has been acknowledged. Speak only if you can help, without interrupting the traffic; then listen, and obey the station that controls the traffic',
      },
    ],
    'when acknowledging a relay': [
      { kind: 'received-mayday-relay', from: skerra },
      {
        title: 'Acknowledgement of a distress relay',
        channel: '16',
        notes: [
          ['Skerra Coastguard, Skerra Coastguard, Skerra Coastguard', 'The station that sent the relay'],
        ],
        caution: 'Only if you are near enough to help; otherwise keep watch on channel 16',
        clause: 'ITU-R M.541-11 Annex 3 §1.5 and §1.6',
      },
    ],
    'when cancelling a false alert': [
      { kind: 'cancel-alert', time },
      {
        title: 'Cancellation of a false alert',
        channel: '16',
        notes: [
          [
            'ALL STATIONS, ALL STATIONS, ALL STATIONS',
            'First stop the repeats: cancel on the radio; if it gives no guidance, switch it off, and on again after 10 seconds',
          ],
          ['OUT', 'Keep watch on channel 16 and answer any station that calls'],
        ],
        caution:
          'At once, on every band on which the alert was sent. If no coast station answers, inform one by other means',
        clause: 'RR 2024 Nos. 32.53B to 32.53E and Resolution 349 (Rev.WRC-23); 47 CFR 80.335(a)',
      },
    ],
    'in an urgency': [
      { kind: 'pan-pan', medicalTransport: true, channel: '67' },
      {
        title: 'Urgency call and message',
        channel: '67',
        notes: [
          ['PAN PAN, PAN PAN, PAN PAN', 'As the French word panne'],
          ['MEDICAL', 'As the French word médical; for protected medical transports only'],
          announcement,
        ],
        caution:
          'For a very urgent message about the safety of a vessel or a person, on the authority of the master; listen for at least 3 minutes afterwards on the channel used. Cancel it when it no longer applies. In grave and imminent danger send a MAYDAY',
        clause: 'RR 2024 Nos. 33.8 to 33.12 (medical transports: 33.20), unverified; 47 CFR 80.327(f)',
      },
    ],
    'with a safety message elsewhere': [
      { kind: 'securite', channel: '67' },
      {
        title: 'Safety call and message',
        channel: '16',
        notes: [
          ['SECURITE, SECURITE, SECURITE', 'As the French word sécurité'],
          announcement,
          ['[message: what, where, and until when]', 'On that channel, after the same call'],
        ],
        caution: 'For navigational and weather warnings; send a long message on a working channel',
        clause: 'RR 2024 Nos. 33.32 to 33.35, unverified',
      },
    ],
    'when calling for a talk': [
      { kind: 'routine-call', to: tern, channel: '72' },
      {
        title: 'First words: the caller begins',
        channel: '72',
        notes: [['Tern of Ardle', 'On the channel agreed; listen first, and wait while others speak']],
        ...manners,
      },
    ],
    'when calling a group': [
      { kind: 'routine-call', to: club, channel: '77', toGroup: true },
      {
        title: 'First words: the caller begins',
        channel: '77',
        notes: [
          ['Ardle Sailing Club', 'On the channel agreed; listen first, and wait while others speak'],
          ['OVER', 'Then the members answer, one after the other'],
        ],
        ...manners,
      },
    ],
    'when called for a talk': [
      { kind: 'routine-answer', to: tern, channel: '72' },
      {
        title: 'First words: the called station answers',
        channel: '72',
        notes: [['Merrow, THIS IS Tern of Ardle, Tern of Ardle, OVER', 'Wait for the caller to begin']],
        ...manners,
      },
    ],
    'in a radio check': [
      { kind: 'radio-check', to: tern, channel: '72' },
      {
        title: 'Radio check',
        channel: '72',
        notes: [
          [
            'Merrow, THIS IS Tern of Ardle, I READ YOU five, OVER',
            'Or another figure, from one, bad, to five, excellent',
          ],
        ],
        caution:
          'On a working channel and no longer than 10 seconds a transmission; test the DSC function with a DSC test call, without speech',
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
  const listen = 'Listen on the channel given in the call';
  const annex = 'ITU-R M.541-11 Annex 3';
  const cases: Record<string, readonly [Call, string, string]> = {
    'the own acknowledgement of an alert': [
      composeDistressAcknowledgement({ from: merrow.mmsi, about: alert }),
      'Keep watch on channel 16 after the acknowledgement',
      '47 CFR 80.1117',
    ],
    "another vessel's cancellation": [
      composeDistressSelfCancel({ from: bounty.mmsi }),
      'The vessel cancelled her alert: listen on channel 16 for the voice cancellation',
      'RR 2024 No. 32.53E',
    ],
    'a test': [
      composeTestCall({ from: merrow.mmsi, to: skerra.mmsi }),
      'No voice message follows this call',
      annex,
    ],
    'a call for data': [
      { ...hail, firstTelecommand: 'data' },
      'The traffic that follows is not speech',
      'ITU-R M.493-16 table A1-3, first telecommand',
    ],
    'a call to all ships': [composeAllShipsCall({ from: tern.mmsi, category: 'safety' }), listen, annex],
    'an urgency call to the own station': [
      { ...hail, category: 'urgency' },
      `${listen}: the caller begins with PAN PAN, and says who is to answer`,
      'RR 2024 No. 33.12, unverified',
    ],
    'a safety call to the own station': [
      { ...hail, category: 'safety' },
      `${listen}: the caller begins with SECURITE, and says whether an answer is expected`,
      'RR 2024 No. 33.35, unverified',
    ],
  };

  it.each(Object.entries(cases))('%s', (_, [call, caution, clause]) => {
    expect(made(call)).toEqual({
      title: 'Nothing to say',
      channel: null,
      lines: [],
      blanks: [],
      caution,
      clause,
    });
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
    expect(made(hail).title).toBe('First words: the caller begins');
    const answered = composeIndividualAcknowledgement({ call: hail });
    expect(made(answered).title).toBe('First words: the caller begins');
    const asked = composeIndividualCall({ from: tern.mmsi, to: merrow.mmsi, channel: '72' });
    expect(made(asked).title).toBe('First words: the called station answers');
    const answering = composeIndividualAcknowledgement({ call: asked });
    expect(made(answering).title).toBe('First words: the called station answers');
    expect(says(answering)[0]).toBe('Merrow, THIS IS Tern of Ardle, Tern of Ardle, OVER');
  });

  it('the other station answers a radio check', () => {
    const { lines } = made({ kind: 'radio-check', to: tern, channel: '72' });
    expect(lines.map((line) => line.who ?? 'own')).toEqual(['own', 'own', 'own', 'own', 'other', 'own']);
  });

  it('telephony by another name, or by none, is speech too', () => {
    for (const firstTelecommand of ['telephony-j3e', null] as const)
      expect(made({ ...hail, firstTelecommand }).title).toBe('First words: the caller begins');
  });

  it('a relay of the own station is spoken, one of another is acknowledged', () => {
    const relay = composeDistressRelay({ from: merrow.mmsi, distressed: bounty.mmsi });
    expect(made(relay).title).toBe('Distress relay');
    expect(made({ ...relay, from: skerra.mmsi }).title).toBe('Acknowledgement of a distress relay');
  });

  it('a vessel without an identity of her own is never taken for the sender', () => {
    const nameless = (call: Call) => spokenScript(call, { name: 'Merrow' }, { directory }).title;
    expect(nameless({ ...composeDistressAlert({ from: bounty.mmsi }), from: null })).toBe(
      'Acknowledgement of a distress',
    );
    const acknowledged = composeDistressAcknowledgement({ from: skerra.mmsi, distressed: bounty.mmsi });
    expect(nameless({ ...acknowledged, distressed: null })).toBe('Acknowledgement of a distress');
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
