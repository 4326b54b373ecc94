import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Call,
  checkCall,
  composeAllShipsCall,
  composeAreaCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualCall,
  composePositionRequest,
  composeTestCall,
  composeUnableToComply,
  decodeFields,
} from '../../src/call/index.ts';
import { internationalPlan } from '../../src/channel/international.ts';
import { netherlandsInlandPlan, netherlandsSeaPlan } from '../../src/channel/netherlands.ts';
import { unitedKingdomPlan } from '../../src/channel/united-kingdom.ts';
import { anyFields } from './arbitrary.ts';

const from = '232999871';
const to = '232999142';
const coast = '002329990';
const codes = (call: Call, options?: NonNullable<Parameters<typeof checkCall>[1]>) =>
  checkCall(call, options).map((notice) => notice.code);
const hail = composeIndividualCall({ from, to, channel: '72' });

const place = {
  kind: 'reported-position',
  latitude: { hemisphere: 'N', degrees: 56, minutes: 20 },
  longitude: { hemisphere: 'W', degrees: 6, minutes: 30 },
} as const;
const alert = composeDistressAlert({ from: '232999218', position: place, time: { hour: 14, minute: 32 } });

describe('nothing is said of', () => {
  it.each([
    ['a routine call on a working channel between ships', hail],
    ['a call to a coast station without a channel', composeIndividualCall({ from, to: coast })],
    ['a test call', composeTestCall({ from, to: coast })],
    ['a position request', composePositionRequest({ from, to })],
    ['a group call', composeGroupCall({ from, to: '023299905', channel: '77' })],
    ['an urgency call on 16', composeAllShipsCall({ from, category: 'urgency' })],
    ['an alert with position and time', alert],
    ['the acknowledgement of a coast station', composeDistressAcknowledgement({ from: coast, about: alert })],
    ['an answer with a reason', composeUnableToComply({ call: hail })],
  ])('%s', (_, call) => {
    expect(checkCall(call)).toEqual([]);
  });
});

describe('channels', () => {
  // A coast station names the working channel: ITU-R M.541-11, from memory. Channel 70: Radio Regulations App. 18 note j).
  it('are left to a coast station in its own waters, 70 excepted', () => {
    const from = (station: string, channel: string) =>
      codes(
        { ...composeAllShipsCall({ from: station, category: 'safety' }), channel },
        { plan: unitedKingdomPlan },
      );
    expect(from(coast, '10')).toEqual([]);
    expect(from('232999871', '10')).toEqual(['channel-restricted']);
    expect(from(coast, '70')).toEqual(['channel-calls-only']);
  });

  const on = (channel: string | null) => ({ ...hail, channel });

  it('70 carries no speech (Radio Regulations Appendix 18 note j)', () => {
    expect(codes(on('70'))).toEqual(['call-channel-70']);
    expect(codes(on('70'), { plan: internationalPlan })).toEqual(['channel-calls-only']);
  });

  it('16 is not for routine traffic (Radio Regulations Art. 52, from memory)', () => {
    expect(codes(on('16'))).toEqual(['call-channel-16-routine']);
    expect(codes(on('16'), { plan: internationalPlan })[0]).toBe('channel-distress-and-calling');
    expect(codes(composeAllShipsCall({ from, category: 'safety' }), { plan: internationalPlan })).toEqual([]);
  });

  it('a two-frequency channel does not join two ships (Radio Regulations Appendix 18)', () => {
    expect(codes(on('26'))).toEqual(['call-channel-two-frequency']);
    expect(codes(on('26'), { plan: internationalPlan })[0]).toBe('channel-two-frequency');
    expect(codes({ ...hail, to: { kind: 'station', mmsi: coast }, channel: '26' })).toEqual([]);
  });

  it('a ship that calls a ship names one (ITU-R M.541-11, from memory)', () => {
    expect(codes(on(null))).toEqual(['call-channel-none']);
  });

  // Netherlands, Regeling 2015 annex 2 note 9: no selective calls but those about distress, urgency and safety.
  it('selective calls are restricted in inland waters, whether they name a channel or not', () => {
    const plan = netherlandsInlandPlan;
    const restricted = 'call-restricted';
    // Of a channel that is named, the plan says the same.
    expect(codes(on('77'), { plan })).toContain('channel-selective-calls-restricted');
    for (const call of [on(null), composePositionRequest({ from, to }), composeTestCall({ from, to })])
      expect(codes(call, { plan })).toContain(restricted);
    const urgent = { ...composeAllShipsCall({ from, category: 'urgency' }), channel: null };
    for (const call of [alert, urgent, composeDistressRelay({ from, about: alert, to: coast })])
      expect(codes(call, { plan }).join()).not.toContain('restricted');
    expect(codes(on(null), { plan: netherlandsSeaPlan })).toEqual(['call-channel-none']);
  });

  it('a channel that the plan does not have', () => {
    expect(codes(on('1022'), { plan: internationalPlan })).toEqual(['channel-not-in-plan']);
  });
});

describe('stations (ITU-R M.585-10)', () => {
  it('a call to oneself', () => {
    expect(codes({ ...hail, to: { kind: 'station', mmsi: from } })).toEqual(['identity-own-called']);
  });

  it('a group called as one station, a station called as a group', () => {
    expect(codes({ ...hail, to: { kind: 'station', mmsi: '023299905' } })).toEqual(['identity-use']);
    const group = composeGroupCall({ from, to: '023299905', channel: '77' });
    expect(codes({ ...group, to: { kind: 'group', mmsi: to } })).toEqual(['identity-use']);
    expect(codes({ ...group, to: { kind: 'group', mmsi: coast } })).toEqual(['identity-use']);
  });

  it('an identity of no assigned form', () => {
    expect(codes({ ...hail, from: '123456789' })).toEqual(['call-identity-form']);
  });

  it('a value that has no symbols at all', () => {
    expect(codes({ ...hail, from: '12345678' })).toEqual(['call-value', 'call-identity-form']);
  });
});

describe('telecommands (Japan, MPT Notification 567 of 1990, notes)', () => {
  it('a reason stands only with "unable to comply"', () => {
    expect(codes({ ...hail, secondTelecommand: 'busy' })).toEqual(['call-reason-misplaced']);
    expect(codes({ ...composeUnableToComply({ call: hail }), reason: null })).toEqual([
      'call-reason-missing',
    ]);
    expect(codes({ ...composeUnableToComply({ call: hail }), reason: 'pay-phone' })).toEqual([
      'call-reason-missing',
    ]);
  });

  it('medical transport goes with telephony', () => {
    expect(
      codes(composeAllShipsCall({ from, category: 'urgency', secondTelecommand: 'medical-transport' })),
    ).toEqual([]);
    expect(codes({ ...hail, firstTelecommand: 'data', secondTelecommand: 'medical-transport' })).toEqual([
      'call-second-telecommand-misplaced',
    ]);
  });

  it('a category the table does not have', () => {
    expect(codes({ ...composePositionRequest({ from, to }), category: 'routine' })).toEqual([
      'call-category-unusual',
    ]);
    expect(codes({ ...composeAllShipsCall({ from, category: 'safety' }), category: 'routine' })).toContain(
      'call-category-unusual',
    );
  });

  it('a telecommand the table does not have', () => {
    expect(codes({ ...hail, firstTelecommand: 'morse' })).toEqual(['call-first-telecommand-unusual']);
  });
});

// Duties of the classes: ITU-R M.493-16, from memory; no area calls on class D: UK VHF handbook.
describe('equipment', () => {
  const area = {
    kind: 'geographic-area',
    north: { hemisphere: 'N', degrees: 57 },
    west: { hemisphere: 'W', degrees: 7 },
    southward: 2,
    eastward: 3,
  } as const;
  it.each([
    [
      'an area call from class D',
      composeAreaCall({ from, area, category: 'safety' }),
      'D',
      ['call-class-none'],
    ],
    [
      'a relay to all ships from class A',
      composeDistressRelay({ from, about: alert }),
      'A',
      ['call-class-guarded', 'call-relay-cases'],
    ],
    ['a group call from class D', composeGroupCall({ from, to: '023299905', channel: '77' }), 'D', []],
    ['an alert from a hand-held set', { ...alert, from: '823299904' }, 'H', []],
  ] as const)('%s', (_, call, equipmentClass, expected) => {
    expect(codes(call, { equipmentClass })).toEqual(expected);
  });

  it('a coast station needs not be told to be one', () => {
    expect(codes({ ...alert, from: coast })).toEqual(['call-class-none']);
  });
});

describe('areas', () => {
  it('without a size, or past the pole (ITU-R M.493-16, geographic area, from memory)', () => {
    const area = {
      kind: 'geographic-area',
      north: { hemisphere: 'S', degrees: 60 },
      west: { hemisphere: 'W', degrees: 7 },
      southward: 40,
      eastward: 0,
    } as const;
    const call = composeAreaCall({ from: coast, area, category: 'safety' });
    expect(codes(call)).toEqual(['position-area-past-pole', 'position-area-empty']);
  });
});

describe('distress', () => {
  it('a ship does not usually acknowledge (47 CFR 80.1117(a))', () => {
    expect(codes(composeDistressAcknowledgement({ from, about: alert }))).toEqual([
      'call-coast-acknowledges',
    ]);
  });

  it('a ship relays to one coast station, to many in one case only (MSC.1/Circ.1657, 47 CFR 80.1121)', () => {
    expect(codes(composeDistressRelay({ from, about: alert }))).toEqual(['call-relay-cases']);
    expect(codes(composeDistressRelay({ from: coast, about: alert }))).toEqual([]);
    expect(codes({ ...composeDistressRelay({ from: coast, about: alert }), from: '232999218' })).toContain(
      'call-relay-of-own',
    );
  });

  it("one's own alert alone is cancelled (RR 2024 Nos. 32.53B to 32.53E)", () => {
    const cancel = composeDistressSelfCancel({ from: '232999218', about: alert });
    expect(codes(cancel)).toEqual([]);
    expect(codes({ ...cancel, distressed: to })).toContain('call-cancel-of-another');
  });

  it('what could be told is missed', () => {
    expect(codes(composeDistressAlert({ from }))).toEqual(['call-position-unknown']);
    expect(codes({ ...alert, time: null })).toEqual(['call-time-unknown']);
  });
});

describe('checking', () => {
  it('never throws, and every notice names its clause and place', () => {
    fc.assert(
      fc.property(
        anyFields,
        fc.constantFrom(undefined, 'A', 'D', 'H', 'M', 'coast'),
        (fields, equipmentClass) => {
          const { call } = decodeFields(fields);
          const options = { equipmentClass, plan: internationalPlan } as NonNullable<
            Parameters<typeof checkCall>[1]
          >;
          for (const notice of checkCall(call, options)) {
            expect(notice.clause).toMatch(/\w/);
            expect(notice.message).toMatch(/^[^.].*[^.]$/s);
          }
        },
      ),
      { numRuns: 500 },
    );
  });
});
