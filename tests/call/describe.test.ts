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
import { anyFields } from './arbitrary.ts';

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
    'Distress alert from Bounty of Lorn (232999218): flooding, 56°20′ N 006°30′ W, 14:32 UTC',
  ],
  'distress-acknowledgement': [
    composeDistressAcknowledgement({ from: coast, about: alert }),
    'Distress acknowledgement from Skerra Coastguard (002329990) of the alert of Bounty of Lorn (232999218): flooding, 56°20′ N 006°30′ W, 14:32 UTC',
  ],
  'distress-self-cancel': [
    composeDistressSelfCancel({ from: merrow }),
    'Distress alert cancelled by its sender, this station: nature not stated, position not known, time not known',
  ],
  'distress-relay': [
    relay,
    'Distress relay from Skerra Coastguard (002329990) to all ships for Bounty of Lorn (232999218): flooding, 56°20′ N 006°30′ W, 14:32 UTC',
  ],
  'distress-relay-acknowledgement': [
    composeDistressRelayAcknowledgement({ from: tern, to: coast, about: relay }),
    'Distress relay acknowledged by Tern of Ardle (232999142) to Skerra Coastguard (002329990), for Bounty of Lorn (232999218): flooding, 56°20′ N 006°30′ W, 14:32 UTC',
  ],
  'all-ships-call': [
    composeAllShipsCall({ from: tern, category: 'urgency', secondTelecommand: 'medical-transport' }),
    'Urgency call from Tern of Ardle (232999142) to all ships: channel 16, medical transport',
  ],
  'area-call': [
    composeAreaCall({ from: coast, area, category: 'safety' }),
    'Safety call from Skerra Coastguard (002329990) to ships in the area from 57° N 007° W, 2° southward and 3° eastward: channel 16',
  ],
  'group-call': [
    composeGroupCall({ from: tern, to: club, channel: '77' }),
    'Routine call from Tern of Ardle (232999142) to group Ardle Sailing Club (023299905): channel 77',
  ],
  'individual-call': [hail, 'Routine call from this station to Tern of Ardle (232999142): channel 72'],
  'individual-acknowledgement': [
    composeIndividualAcknowledgement({ call: hail, channel: '77' }),
    'Answer from Tern of Ardle (232999142) to this station: able to comply, channel 77',
  ],
  'unable-to-comply': [
    composeUnableToComply({ call: hail, reason: 'busy' }),
    'Answer from Tern of Ardle (232999142) to this station: unable to comply, busy',
  ],
  'position-request': [request, 'Position request from this station to Tern of Ardle (232999142)'],
  'position-reply': [
    composePositionReply({ call: request, position, time }),
    'Position of Tern of Ardle (232999142), in reply to this station: 56°20′ N 006°30′ W, 14:32 UTC',
  ],
  'test-call': [test, 'Test call from this station to Skerra Coastguard (002329990)'],
  'test-acknowledgement': [
    composeTestAcknowledgement({ call: test }),
    'Test call of this station answered by Skerra Coastguard (002329990)',
  ],
  'polling-call': [polling, 'Polling call from this station to Tern of Ardle (232999142): are you in range'],
  'polling-acknowledgement': [
    composePollingAcknowledgement({ call: polling }),
    'Polling of this station answered by Tern of Ardle (232999142): in range',
  ],
  'automatic-service-call': [
    composeAutomaticServiceCall({ from: merrow, to: coast, telephone: '5550123' }),
    'Telephone-service call from this station to Skerra Coastguard (002329990): number 5550123',
  ],
  'unrecognised-call': [
    decodeFields({ ...emptyFields, format: 113, self: [23, 29, 99, 14, 20], category: 112 }).call,
    'Unrecognised call, from Tern of Ardle (232999142) to an unnamed station',
  ],
};

describe('every kind of call in one sentence', () => {
  it.each(Object.entries(said))('%s', (kind, [call, sentence]) => {
    expect(call.kind).toBe(kind);
    expect(describeCall(call, options).sentence).toBe(sentence);
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
