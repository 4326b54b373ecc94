import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyFields } from '../../src/call/fields.ts';
import {
  answersTo,
  type Call,
  type CallKind,
  composeAllShipsCall,
  composeAreaCall,
  composeAutomaticServiceCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressRelayAcknowledgement,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePollingAcknowledgement,
  composePollingCall,
  composePositionReply,
  composePositionRequest,
  composeTestAcknowledgement,
  composeTestCall,
  composeUnableToComply,
  decodeFields,
  describeCall,
  encodeFields,
} from '../../src/call/index.ts';
import { german } from '../../src/locale/de.ts';
import { english } from '../../src/locale/en.ts';
import { french } from '../../src/locale/fr.ts';
import { translate } from '../../src/locale/index.ts';
import { dutch } from '../../src/locale/nl.ts';
import { anyFields } from './arbitrary.ts';
import { codedIn } from './without-words.ts';

// All stations are the invented ones of the demo.
const merrow = '232999871';
const tern = '232999142';
const bounty = '232999218';
const coast = '002329990';
const club = '023299905';
const names: Record<string, string> = {
  [tern]: 'Tern of Ardle',
  [bounty]: 'Bounty of Lorn',
  [coast]: 'Skerra Coastguard',
  [club]: 'Ardle Sailing Club',
};
const options = {
  own: merrow,
  directory: (mmsi: string) => (Object.hasOwn(names, mmsi) ? names[mmsi] : undefined),
};
const position = {
  kind: 'reported-position',
  latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
  longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
} as const;
const time = { hour: 14, minute: 32 };
const area = {
  kind: 'geographic-area',
  north: { hemisphere: 'N', degrees: 57 },
  west: { hemisphere: 'W', degrees: 7 },
  southward: 2,
  eastward: 3,
} as const;

const alert = composeDistressAlert({ from: bounty, nature: 'flooding', position, time });
const relay = composeDistressRelay({ from: coast, about: alert });
const hail = composeIndividualCall({ from: merrow, to: tern, channel: '72' });
const request = composePositionRequest({ from: merrow, to: tern });
const test = composeTestCall({ from: merrow, to: coast });
const polling = composePollingCall({ from: merrow, to: tern });

const said: Record<CallKind, readonly [Call, string]> = {
  'distress-alert': [
    alert,
    'call-is-alert from=Bounty of Lorn (232999218) nature=flooding place=56°20′ N 006°30′ W time=14:32 UTC',
  ],
  'distress-acknowledgement': [
    composeDistressAcknowledgement({ from: coast, about: alert }),
    'call-is-distress-acknowledgement from=Skerra Coastguard (002329990) vessel=Bounty of Lorn (232999218) nature=flooding place=56°20′ N 006°30′ W time=14:32 UTC',
  ],
  'distress-self-cancel': [
    composeDistressSelfCancel({ from: merrow }),
    'call-is-self-cancel from=(call-own-station) nature=undesignated place=(call-place-lack lack=not-given) time=(call-time-lack lack=not-given)',
  ],
  'distress-relay': [
    relay,
    'call-is-relay from=Skerra Coastguard (002329990) to=(call-all-ships) vessel=Bounty of Lorn (232999218) nature=flooding place=56°20′ N 006°30′ W time=14:32 UTC',
  ],
  'distress-relay-acknowledgement': [
    composeDistressRelayAcknowledgement({ from: tern, to: coast, about: relay }),
    'call-is-relay-acknowledgement from=Tern of Ardle (232999142) to=Skerra Coastguard (002329990) vessel=Bounty of Lorn (232999218) nature=flooding place=56°20′ N 006°30′ W time=14:32 UTC',
  ],
  'all-ships-call': [
    composeAllShipsCall({ from: tern, category: 'urgency', secondTelecommand: 'medical-transport' }),
    'call-is-announcement opening=urgency from=Tern of Ardle (232999142) to=(call-all-ships) where=(call-where-channel channel=16) remark=medical-transport',
  ],
  'area-call': [
    composeAreaCall({ from: coast, area, category: 'safety' }),
    'call-is-announcement opening=safety from=Skerra Coastguard (002329990) to=(call-area corner=57° N 007° W southward=2 eastward=3) where=(call-where-channel channel=16)',
  ],
  'group-call': [
    composeGroupCall({ from: tern, to: club, channel: '77' }),
    'call-is-announcement opening=routine from=Tern of Ardle (232999142) to=(call-group group=Ardle Sailing Club (023299905)) where=(call-where-channel channel=77)',
  ],
  'individual-call': [
    hail,
    'call-is-announcement opening=routine from=(call-own-station) to=Tern of Ardle (232999142) where=(call-where-channel channel=72)',
  ],
  'individual-acknowledgement': [
    composeIndividualAcknowledgement({ call: hail, channel: '77' }),
    'call-is-able from=Tern of Ardle (232999142) to=(call-own-station) where=(call-where-channel channel=77)',
  ],
  'unable-to-comply': [
    composeUnableToComply({ call: hail, reason: 'busy' }),
    'call-is-unable from=Tern of Ardle (232999142) to=(call-own-station) reason=busy',
  ],
  'position-request': [
    request,
    'call-is-position-request from=(call-own-station) to=Tern of Ardle (232999142)',
  ],
  'position-reply': [
    composePositionReply({ call: request, position, time }),
    'call-is-position-reply from=Tern of Ardle (232999142) to=(call-own-station) place=56°20′ N 006°30′ W time=14:32 UTC',
  ],
  'test-call': [test, 'call-is-test from=(call-own-station) to=Skerra Coastguard (002329990)'],
  'test-acknowledgement': [
    composeTestAcknowledgement({ call: test }),
    'call-is-test-acknowledgement from=Skerra Coastguard (002329990) to=(call-own-station)',
  ],
  'polling-call': [polling, 'call-is-polling from=(call-own-station) to=Tern of Ardle (232999142)'],
  'polling-acknowledgement': [
    composePollingAcknowledgement({ call: polling }),
    'call-is-polling-acknowledgement from=Tern of Ardle (232999142) to=(call-own-station)',
  ],
  'automatic-service-call': [
    composeAutomaticServiceCall({ from: merrow, to: coast, telephone: '5550123' }),
    'call-is-telephone part=request from=(call-own-station) to=Skerra Coastguard (002329990) telephone=5550123',
  ],
  'unrecognised-call': [
    decodeFields({ ...emptyFields, format: 113, self: [23, 29, 99, 14, 20], category: 112 }).call,
    'call-is-unrecognised from=Tern of Ardle (232999142) to=(call-unnamed-station)',
  ],
};

describe('every kind of call in one sentence', () => {
  it.each(Object.entries(said))('%s', (kind, [call, sentence]) => {
    expect(call.kind).toBe(kind);
    expect(codedIn(describeCall(call, options).sentenceText)).toBe(sentence);
  });
});

describe('a description in other languages', () => {
  it.each(Object.entries(said))('%s: the English one is the one the library gives', (_, [call]) => {
    const { sentence, sentenceText, rows, cautions } = describeCall(call, options);
    expect(translate(sentenceText, english)).toEqual({ lang: 'en', text: sentence });
    for (const caution of cautions) expect(translate(caution, english).text).toBe(caution.text);
    for (const { label, labelText, value, valueText } of rows) {
      expect(translate(labelText, english).text).toBe(label);
      if (valueText !== undefined) expect(translate(valueText, english).text).toBe(value);
      for (const catalogue of [german, french, dutch])
        expect(translate(labelText, catalogue).lang).toBe(catalogue.lang);
    }
  });

  it('is translated down to the names inside', () => {
    const { sentenceText, rows } = describeCall(request, options);
    expect(translate(sentenceText, german).text).toBe(
      'Positionsabfrage, Absender diese Funkstelle, Empfänger Tern of Ardle (232999142)',
    );
    expect(translate(sentenceText, dutch).text).toBe(
      'Positieverzoek van dit station aan Tern of Ardle (232999142)',
    );
    expect(rows.slice(0, 3).map(({ valueText }) => valueText && translate(valueText, french).text)).toEqual([
      'une station',
      undefined,
      'catégorie sécurité',
    ]);
  });
});

describe('the table of fields', () => {
  it('holds every symbol of the call, in the order on the air', () => {
    for (const [call] of Object.values(said)) {
      const { rows } = describeCall(call);
      const fields = encodeFields(call);
      expect(rows.flatMap((row) => row.symbols ?? []).length).toBeGreaterThan(5);
      for (const row of rows) expect(row.clause, row.label).toMatch(/M\.493|M\.821/);
      expect(rows[0]).toMatchObject({ label: 'Format specifier', symbols: [fields.format] });
    }
  });

  // Worked sequence "position-reply-enhanced"; names of fields: ITU-R M.493-16 Annex 1, from memory.
  it('names each value', () => {
    const finer = { ...position, fraction: { latitude: 4125, longitude: 9070 } };
    const { rows } = describeCall(composePositionReply({ call: request, position: finer, time }), options);
    expect(rows.map(({ label, value, symbols }) => [label, value, symbols])).toEqual([
      ['Format specifier', 'one station', [120]],
      ['Address', 'this station', [23, 29, 99, 87, 10]],
      ['Category', 'safety', [108]],
      ['Self-identification', 'Tern of Ardle (232999142)', [23, 29, 99, 14, 20]],
      ['First telecommand', 'position of the ship', [121]],
      ['Second telecommand', 'no information', [126]],
      ['Header of the position', 'a position follows', [55]],
      ['Position', '56°20′ N 006°30′ W', [15, 62, 0, 6, 30]],
      ['Time of the position', '14:32 UTC', [14, 32]],
      ['End of sequence', 'this is an answer', [122]],
      ['Expansion: finer position', 'latitude .4125′, longitude .9070′', [41, 25, 90, 70]],
    ]);
  });
});

describe('cautions', () => {
  it('stand at every distress call and every position', () => {
    for (const [call] of Object.values(said)) {
      const { cautions } = describeCall(call);
      const wanted =
        call.kind.startsWith('distress') || 'position' in call || call.kind === 'unrecognised-call';
      expect(cautions.length > 0, call.kind).toBe(wanted);
      for (const caution of cautions) expect(caution.clause).toMatch(/\w/);
    }
  });

  // 47 CFR 80.335; ITU-R M.541-11 Annex 3.
  it('speak to the sender of an own alert, not to its receivers', () => {
    const alert = composeDistressAlert({ from: merrow, nature: 'flooding' });
    const codes = (own: string) => describeCall(alert, { own }).cautions.map((caution) => caution.code);
    expect(codes(merrow)).toEqual(['call-alert-in-danger-only', 'call-voice-follows']);
    expect(codes('232999142')).toContain('call-keep-watch');
  });
});

describe('describing whatever is received', () => {
  it('never throws, for the call or its answers', () => {
    fc.assert(
      fc.property(anyFields, (fields) => {
        const { call } = decodeFields(fields);
        const description = describeCall(call, options);
        expect(description.sentence).toMatch(/^[A-Z][^\n]*[^.]$/);
        expect(structuredClone(description)).toEqual(description);
        for (const answer of answersTo(call, { own: merrow }).answers) describeCall(answer.call, options);
      }),
      { numRuns: 500 },
    );
  });
});
