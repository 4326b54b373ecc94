import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Call,
  composeAllShipsCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePositionRequest,
  composeTestCall,
  composeUnableToComply,
  decodeFields,
} from '../../src/call/index.ts';
import { german } from '../../src/locale/de.ts';
import { english } from '../../src/locale/en.ts';
import { translate } from '../../src/locale/index.ts';
import { type Situation, spell, spokenScript } from '../../src/speech/index.ts';
import { anyFields } from '../call/arbitrary.ts';

// Vessels are the invented ones of the demo.
const merrow = { name: 'Merrow', callSign: '2ZZM8', mmsi: '232999871' };
const tern = { name: 'Tern of Ardle', mmsi: '232999142' };
const bounty = { name: 'Bounty of Lorn', callSign: '2ZZB4', mmsi: '232999218' };
const skerra = { name: 'Skerra Coastguard', mmsi: '002329990' };
const directory = (mmsi: string) => [merrow, tern, bounty, skerra].find((station) => station.mmsi === mmsi);
const position = {
  kind: 'reported-position',
  latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
  longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
} as const;
const time = { hour: 14, minute: 32 };
const says = (subject: Call | Situation, vessel: Parameters<typeof spokenScript>[1] = merrow) =>
  spokenScript(subject, vessel, { directory }).lines.map((line) => line.say);

const spelling = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../shared/call/spelling.json'), 'utf8'),
) as {
  readonly letters: Record<string, string>;
  readonly figures: Record<string, { readonly plain: string; readonly figureCode: string }>;
};

// Radio Regulations Appendix 14; plain figures and the same letters in IMO A.918(22); from memory.
describe('spelling', () => {
  it('has all 26 letters and 10 figures', () => {
    expect(Object.keys(spelling.letters).join('')).toBe('ABCDEFGHIJKLMNOPQRSTUVWXYZ');
    expect(Object.keys(spelling.figures).join('')).toBe('0123456789');
  });

  it.each(Object.entries(spelling.letters))('%s is %s', (letter, word) => {
    expect(spell(letter)).toBe(word);
    expect(spell(letter.toLowerCase())).toBe(word);
  });

  it.each(Object.entries(spelling.figures))('%s as plain word and in the figure code', (figure, words) => {
    expect(spell(figure)).toBe(words.plain);
    expect(spell(figure, 'figure-code')).toBe(words.figureCode);
  });

  it('passes over blanks and marks on letters, and marks what has no word', () => {
    expect(spell('Éa 1')).toBe('Echo Alfa one');
    expect(spell('20.3')).toBe('two zero decimal three');
    expect(spell('A-1')).toBe('Alfa [-] one');
    expect(spell('ß')).toBe('Sierra Sierra');
    expect(spell('toString')).toMatch(/^Tango Oscar Sierra/);
  });

  it('spells anything without throwing, and nothing of nothing', () => {
    expect(spell('')).toBe('');
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(spell(text)).toBeTypeOf('string');
      }),
    );
  });
});

// Radio Regulations Nos. 32.13C (call) and 32.13D (message), from memory.
describe('distress', () => {
  const words = [
    'MAYDAY, MAYDAY, MAYDAY',
    'THIS IS',
    'Merrow, Merrow, Merrow',
    'call sign two Zulu Zulu Mike eight',
    'MMSI two three two nine nine nine eight seven one',
    'MAYDAY, Merrow, call sign two Zulu Zulu Mike eight, MMSI two three two nine nine nine eight seven one',
    'My position five six degrees two zero minutes north, zero zero six degrees three zero minutes west at one four three two UTC',
    'I am sinking',
    'I require immediate assistance',
    'four persons on board',
    'We take to the raft',
    'OVER',
  ];

  it('call and message', () => {
    const situation: Situation = {
      kind: 'mayday',
      nature: 'sinking',
      position,
      time,
      personsOnBoard: 4,
      information: 'We take to the raft',
    };
    expect(says(situation)).toEqual(words);
  });

  it('says one person, and tenths of a minute where they are known', () => {
    const finer = { ...position, fraction: { latitude: 3399, longitude: 0 } };
    const lines = says({ kind: 'mayday', position: finer, personsOnBoard: 1 });
    expect(lines).toContain('one person on board');
    expect(lines).toContain(
      'My position five six degrees two zero decimal three minutes north, zero zero six degrees three zero decimal zero minutes west',
    );
  });

  it('follows the own alert, with blanks for what the alert does not say', () => {
    const script = spokenScript(composeDistressAlert({ from: merrow.mmsi }), { mmsi: merrow.mmsi });
    expect(script.channel).toBe('16');
    expect(script.lines[3]?.say).toBe('call sign [call sign]');
    expect(script.blanks).toEqual([
      'call sign',
      'position, or bearing and distance from a known place',
      'nature of distress',
      'number',
    ]);
  });

  it('follows the acknowledgement of the own alert all the same (ITU-R M.541 Annex 3)', () => {
    const alert = composeDistressAlert({ from: merrow.mmsi, nature: 'sinking', position, time });
    const heard = composeDistressAcknowledgement({ from: skerra.mmsi, about: alert });
    expect(says(heard).slice(0, 9)).toEqual(words.slice(0, 9));
  });

  // 47 CFR 80.1117(c); ITU-R M.541 Annex 3 section 1.
  it('of another vessel is acknowledged by voice', () => {
    const alert = composeDistressAlert({ from: bounty.mmsi, nature: 'flooding' });
    const received = [
      'MAYDAY',
      'Bounty of Lorn, Bounty of Lorn, Bounty of Lorn',
      'call sign two Zulu Zulu Bravo four',
      'THIS IS',
      'Merrow, Merrow, Merrow',
      'call sign two Zulu Zulu Mike eight',
      'RECEIVED MAYDAY',
    ];
    expect(says(alert)).toEqual(received);
    expect(says({ kind: 'received-mayday', distressed: bounty })).toEqual(received);
    expect(spokenScript(alert, merrow).lines[1]?.say).toMatch(
      /^(two three two nine nine nine two one eight(, )?){3}$/,
    );
  });

  // MSC.1/Circ.1657: once a coast station has acknowledged, only a vessel that can help speaks.
  it('of another vessel that was answered is left to those who can help', () => {
    const alert = composeDistressAlert({ from: bounty.mmsi, nature: 'flooding' });
    const answered = composeDistressAcknowledgement({ from: skerra.mmsi, about: alert });
    expect(spokenScript(alert, merrow).cautionText.code).toBe('speech-acknowledge-when-near');
    expect(spokenScript(answered, merrow).cautionText.code).toBe('speech-already-acknowledged');
    expect(says(answered)).toEqual(says(alert));
  });

  // Radio Regulations Nos. 32.19D to 32.19F, from memory.
  it('is relayed', () => {
    const relay = composeDistressRelay({
      from: merrow.mmsi,
      distressed: bounty.mmsi,
      nature: 'fire-explosion',
      position,
    });
    expect(says(relay)).toEqual([
      'MAYDAY RELAY, MAYDAY RELAY, MAYDAY RELAY',
      'ALL STATIONS, ALL STATIONS, ALL STATIONS',
      'THIS IS',
      'Merrow, Merrow, Merrow',
      'call sign two Zulu Zulu Mike eight',
      'MMSI two three two nine nine nine eight seven one',
      'MAYDAY, Bounty of Lorn, call sign two Zulu Zulu Bravo four, MMSI two three two nine nine nine two one eight',
      'Position five six degrees two zero minutes north, zero zero six degrees three zero minutes west',
      'vessel on fire',
      'Vessel requires immediate assistance',
      '[number] persons on board',
      'OVER',
    ]);
    const unknown = composeDistressRelay({ from: merrow.mmsi, to: skerra.mmsi });
    expect(says(unknown)[1]).toBe('Skerra Coastguard, Skerra Coastguard, Skerra Coastguard');
    expect(says(unknown)[6]).toBe('MAYDAY, unidentified vessel');
  });

  // Radio Regulations No. 32.53E, from memory.
  it('alert is cancelled', () => {
    const words = [
      'ALL STATIONS, ALL STATIONS, ALL STATIONS',
      'THIS IS',
      'Merrow, Merrow, Merrow',
      'call sign two Zulu Zulu Mike eight',
      'MMSI two three two nine nine nine eight seven one',
      'PLEASE CANCEL MY DISTRESS ALERT OF one four three two UTC',
      'OUT',
    ];
    expect(says({ kind: 'cancel-alert', time })).toEqual(words);
    const cancel = composeDistressSelfCancel({ from: merrow.mmsi, time: { hour: 9, minute: 15 } });
    expect(says(cancel)[5]).toBe('PLEASE CANCEL MY DISTRESS ALERT OF [time] UTC');
  });
});

describe('urgency and safety', () => {
  // Radio Regulations No. 33.12 (medical transports 33.20), from memory.
  it('PAN PAN', () => {
    const call = composeAllShipsCall({
      from: merrow.mmsi,
      category: 'urgency',
      secondTelecommand: 'medical-transport',
    });
    expect(says(call)).toEqual([
      'PAN PAN, PAN PAN, PAN PAN',
      'MEDICAL',
      'ALL STATIONS, ALL STATIONS, ALL STATIONS',
      'THIS IS',
      'Merrow, Merrow, Merrow',
      'call sign two Zulu Zulu Mike eight',
      'MMSI two three two nine nine nine eight seven one',
      'My position [position, or bearing and distance from a known place]',
      '[message: what is wrong, and what help is needed]',
      'OVER',
    ]);
    expect(says({ kind: 'pan-pan', to: skerra, message: 'Mast broken, I require a tow', position })).toEqual([
      'PAN PAN, PAN PAN, PAN PAN',
      'Skerra Coastguard, Skerra Coastguard, Skerra Coastguard',
      'THIS IS',
      'Merrow, Merrow, Merrow',
      'call sign two Zulu Zulu Mike eight',
      'MMSI two three two nine nine nine eight seven one',
      'My position five six degrees two zero minutes north, zero zero six degrees three zero minutes west',
      'Mast broken, I require a tow',
      'OVER',
    ]);
  });

  const opening = [
    'SECURITE, SECURITE, SECURITE',
    'ALL STATIONS, ALL STATIONS, ALL STATIONS',
    'THIS IS',
    'Merrow, Merrow, Merrow',
    'call sign two Zulu Zulu Mike eight',
    'MMSI two three two nine nine nine eight seven one',
  ];

  // Radio Regulations No. 33.35, from memory.
  it('SECURITE, with the message or the channel where it follows', () => {
    expect(says({ kind: 'securite', message: 'Drifting container' })).toEqual([
      ...opening,
      'Drifting container',
      'OUT',
    ]);
    expect(says({ kind: 'securite', message: 'Drifting container', channel: '67' })).toEqual([
      ...opening,
      'For the message listen on VHF channel six seven',
      'OUT',
      'Drifting container',
    ]);
  });

  // ITU-R M.541 Annex 3: the message is sent on the channel that the selective call named; from memory.
  it('SECURITE on the channel that a selective call named already', () => {
    const call = composeAllShipsCall({ from: merrow.mmsi, category: 'safety', channel: '67' });
    const { channel, lines } = spokenScript(call, merrow, { directory });
    expect(channel).toBe('67');
    expect(lines.map((line) => line.say)).toEqual([
      ...opening,
      '[message: what, where, and until when]',
      'OUT',
    ]);
  });

  // Radio Regulations Nos. 33.12 and 33.35: a called station hears PAN PAN or SECURITE first; from memory.
  it.each([
    ['urgency', 'speech-listen-for-pan-pan'],
    ['safety', 'speech-listen-for-securite'],
  ] as const)('of %s to one station is listened to before it is answered', (category, code) => {
    const call = composeIndividualCall({ from: tern.mmsi, to: merrow.mmsi, category, channel: '16' });
    for (const subject of [call, composeIndividualAcknowledgement({ call })]) {
      expect(spokenScript(subject, merrow, { directory })).toMatchObject({
        lines: [],
        cautionText: { code },
      });
    }
  });

  it('of another station is listened to', () => {
    const heard = spokenScript(composeAllShipsCall({ from: tern.mmsi, category: 'urgency' }), merrow);
    expect(heard).toMatchObject({
      lines: [],
      channel: null,
      cautionText: { code: 'speech-listen' },
    });
  });
});

// ITU-R M.1171 Annex 1: on VHF the called station once, the calling station twice; from memory.
describe('routine contact', () => {
  const hail = composeIndividualCall({ from: merrow.mmsi, to: tern.mmsi, channel: '72' });
  const answer = composeIndividualAcknowledgement({ call: hail, channel: '77' });

  it('is begun by the caller on the channel agreed', () => {
    const caller = spokenScript(answer, merrow, { directory });
    expect(caller.channel).toBe('77');
    expect(caller.lines.map((line) => [line.who ?? 'own', line.say])).toEqual([
      ['own', 'Tern of Ardle'],
      ['own', 'THIS IS'],
      ['own', 'Merrow, Merrow'],
      ['own', 'OVER'],
      ['other', 'Merrow, THIS IS Tern of Ardle, OVER'],
    ]);
  });

  it('is answered by the called', () => {
    const called = spokenScript(answer, tern, { directory });
    expect(called.lines.map((line) => [line.who ?? 'own', line.say])).toEqual([
      ['other', 'Tern of Ardle, THIS IS Merrow, Merrow, OVER'],
      ['own', 'Merrow'],
      ['own', 'THIS IS'],
      ['own', 'Tern of Ardle'],
      ['own', 'OVER'],
    ]);
  });

  it('opens a group call too, and needs no names to be known', () => {
    const group = composeGroupCall({ from: merrow.mmsi, to: '023299905', channel: '77' });
    expect(says(group)[0]).toBe('zero two three two nine nine nine zero five');
    const answering = spokenScript(group, tern, { directory }).lines[0];
    expect(answering).toMatchObject({
      who: 'other',
      say: 'zero two three two nine nine nine zero five, THIS IS Merrow, Merrow, OVER',
    });
  });

  it('does not follow a refusal, a test, a request for a position or data', () => {
    for (const call of [
      composeUnableToComply({ call: hail }),
      composeTestCall({ from: merrow.mmsi, to: skerra.mmsi }),
      composePositionRequest({ from: merrow.mmsi, to: tern.mmsi }),
      { ...hail, firstTelecommand: 'data' } as Call,
    ]) {
      expect(spokenScript(call, merrow).lines).toEqual([]);
    }
  });

  // IMO A.918(22) part A1, "how do you read me", one to five; from memory.
  it('a radio check', () => {
    expect(says({ kind: 'radio-check', to: tern, channel: '72' })).toEqual([
      'Tern of Ardle',
      'THIS IS',
      'Merrow, call sign two Zulu Zulu Mike eight',
      'RADIO CHECK, HOW DO YOU READ ME, OVER',
      'Merrow, THIS IS Tern of Ardle, I READ YOU five, OVER',
      'Tern of Ardle, THIS IS Merrow, THANK YOU, OUT',
    ]);
  });
});

// Words to speak stay English (IMO A.918(22)); what each does is said beside it, in any language.
describe('a gloss', () => {
  const situation: Situation = { kind: 'mayday', nature: 'sinking', position, time, personsOnBoard: 4 };
  const script = spokenScript(situation, merrow);

  it('says what each line does', () => {
    expect(script.lines.map(({ gloss: { code, params } }) => [code, params])).toEqual([
      ['speech-say-mayday-thrice', {}],
      ['speech-say-this-is', {}],
      ['speech-own-thrice', {}],
      ['speech-own-sign', {}],
      ['speech-own-mmsi', {}],
      ['speech-own-message', {}],
      ['speech-own-position-time', {}],
      ['speech-own-nature', { nature: 'sinking' }],
      ['speech-own-assistance', {}],
      ['speech-persons', {}],
      ['speech-over', {}],
    ]);
    for (const nature of [null, 'undesignated', 'epirb-emission'] as const)
      expect(spokenScript({ kind: 'mayday', nature }, merrow).lines[7]?.gloss).toMatchObject({
        code: 'speech-own-nature',
        params: {},
      });
  });

  it('is translated, and the words are not', () => {
    for (const { gloss } of script.lines) expect(translate(gloss, english).text).toBe(gloss.message);
    expect(script.lines.map(({ gloss }) => translate(gloss, german)).slice(6, 8)).toEqual([
      { lang: 'de', text: 'Die eigene Position und ihre Uhrzeit in UTC sagen' },
      { lang: 'de', text: 'Sagen, was passiert ist: Sinken' },
    ]);
    const { cautionText, titleText } = script;
    for (const said of [cautionText, titleText]) expect(translate(said, english).text).toBe(said.message);
  });

  it('and a caution in a caution', () => {
    const alert = composeDistressAlert({ from: merrow.mmsi, subsequent: 'telephony-j3e' });
    const { cautionText, caution } = spokenScript(alert, merrow);
    expect(translate(cautionText, english).text).toBe(caution);
    expect(translate(cautionText, german).text).toMatch(
      /^Sprechen auf der Not-Sprechfrequenz des Bandes \(.*\)\. Einen Notanruf nur senden, wenn/,
    );
  });
});

describe('every script', () => {
  it('has a caution, a clause, and its blanks listed, whatever was received and whoever speaks', () => {
    fc.assert(
      fc.property(
        anyFields,
        fc.record({
          name: fc.option(fc.string()),
          callSign: fc.option(fc.string()),
          mmsi: fc.option(fc.string()),
        }),
        (fields, vessel) => {
          const script = spokenScript(decodeFields(fields).call, vessel, { directory });
          expect(script.caution).toMatch(/\w/);
          for (const { gloss } of script.lines) expect(gloss.message).toMatch(/^[A-Z].*[^.]$/);
          expect(script.clause).toMatch(/\w/);
          expect(structuredClone(script)).toEqual(script);
          const text = script.lines.map((line) => line.say).join(' ');
          for (const missing of script.blanks) expect(text).toContain(`[${missing}]`);
        },
      ),
      { numRuns: 500 },
    );
  });
});
