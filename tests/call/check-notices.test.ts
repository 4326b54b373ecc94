import { describe, expect, it } from 'vitest';
import {
  type Call,
  checkCall,
  composeAllShipsCall,
  composeAreaCall,
  composeAutomaticServiceCall,
  composeDistressAcknowledgement,
  composeDistressAlert,
  composeDistressRelay,
  composeDistressSelfCancel,
  composeGroupCall,
  composeIndividualAcknowledgement,
  composeIndividualCall,
  composePositionReply,
  composeTestCall,
  composeUnableToComply,
} from '../../src/call/index.ts';
import { unnamedChannelNotices } from '../../src/call/internal.ts';
import { internationalPlan } from '../../src/channel/international.ts';
import { netherlandsInlandPlan } from '../../src/channel/netherlands.ts';
import { type Said, withoutWords } from './without-words.ts';

// All stations are the invented ones of the demo.
const merrow = '232999871';
const tern = '232999142';
const bounty = '232999218';
const club = '023299905';
const coast = '002329990';
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
const hail = composeIndividualCall({ from: merrow, to: tern, channel: '72' });
const unable = composeUnableToComply({ call: hail });
const alert = composeDistressAlert({ from: bounty, position, time });
const relay = composeDistressRelay({ from: merrow, about: alert });

const finerArea = {
  latitude: 12.34,
  longitude: 59.99,
  southward: 0,
  eastward: 30.5,
  speed: 12.5,
  course: 184,
};

const codes = (call: Call, options?: NonNullable<Parameters<typeof checkCall>[1]>) =>
  checkCall(call, options).map((notice) => notice.code);

describe('each finding in full', () => {
  const notes = 'Japan, MPT Notification 567 of 1990, table of telecommands';
  const classes = 'ITU-R M.493-16, equipment classes, unverified';
  const relayCases: Said = {
    code: 'call-relay-cases',
    params: {},
    at: ['to'],
    clause: 'RR 2024 Nos. 32.16 to 32.19H; MSC.1/Circ.1657; 47 CFR 80.1121(b)',
  };
  const cases: Record<
    string,
    readonly [Call, NonNullable<Parameters<typeof checkCall>[1]>, readonly Said[]]
  > = {
    'channel 70 for speech': [
      { ...hail, channel: '70' },
      {},
      [
        {
          code: 'call-channel-70',
          params: {},
          at: ['channel'],
          received: '70',
          clause: 'Radio Regulations Appendix 18 note j)',
        },
      ],
    ],
    'channel 70 for speech, by a plan': [
      { ...hail, channel: '70' },
      { plan: internationalPlan },
      [
        expect.objectContaining({
          code: 'channel-calls-only',
          params: { channel: '70' },
          at: ['channel'],
          received: '70',
          clause: 'RR Appendix 18 note j)',
        }),
      ],
    ],
    'channel 16 for routine traffic': [
      { ...hail, channel: '16' },
      {},
      [
        {
          code: 'call-channel-16-routine',
          params: {},
          at: ['channel'],
          received: '16',
          clause: 'Radio Regulations Art. 52 and Appendix 18, unverified',
        },
      ],
    ],
    'a two-frequency channel between ships': [
      { ...hail, channel: '26' },
      {},
      [
        {
          code: 'call-channel-two-frequency',
          params: { channel: '26' },
          at: ['channel'],
          received: '26',
          clause: 'Radio Regulations Appendix 18',
        },
      ],
    ],
    'no channel between ships': [
      { ...hail, channel: null },
      {},
      [
        {
          code: 'call-channel-none',
          params: {},
          at: ['channel'],
          clause: 'ITU-R M.541-11 Annex 3, unverified',
        },
      ],
    ],
    'an identity of no form, which also cannot be sent': [
      { ...hail, from: '12345678' },
      {},
      [
        {
          code: 'call-value',
          params: { value: 'identity' },
          at: [],
          received: "'12345678'",
          clause: 'ITU-R M.493-16 Annex 1',
        },
        {
          code: 'call-identity-form',
          params: {},
          at: ['from'],
          received: '12345678',
          clause: 'ITU-R M.585-10 Annex 1',
        },
      ],
    ],
    'a name that no symbol has': [
      { ...hail, category: 'bogus' as 'routine' },
      {},
      [
        {
          code: 'call-value',
          params: { value: 'name' },
          at: [],
          received: "'bogus'",
          clause: 'ITU-R M.493-16 Annex 1',
        },
      ],
    ],
    'an area of no size on earth': [
      {
        ...composeAreaCall({ from: coast, area, category: 'safety' }),
        to: { kind: 'area', area: { ...area, southward: 100 } },
      },
      {},
      [
        {
          code: 'call-value',
          params: { value: 'area' },
          at: [],
          clause: 'ITU-R M.493-16 Annex 1',
        },
      ],
    ],
    'a position past the pole': [
      { ...alert, position: { ...position, latitude: { ...position.latitude, degrees: 91 } } },
      {},
      [
        {
          code: 'call-value',
          params: { value: 'position' },
          at: [],
          clause: 'ITU-R M.493-16 Annex 1',
        },
      ],
    ],
    'a finer area with a whole degree of minutes': [
      { ...alert, expansion: { area: { ...finerArea, southward: 60 } } },
      {},
      [
        {
          code: 'call-value',
          params: { value: 'area-minutes' },
          at: [],
          received: '60',
          clause: 'ITU-R M.493-16 Annex 1',
        },
      ],
    ],
    'a finer area that moves at a thousand knots': [
      { ...alert, expansion: { area: { ...finerArea, speed: 1000 } } },
      {},
      [
        {
          code: 'call-value',
          params: { value: 'speed' },
          at: [],
          received: '1000',
          clause: 'ITU-R M.493-16 Annex 1',
        },
      ],
    ],
    // The shipping regulation of the Netherlands, as the plan names it.
    'a routine call on waters that allow no selective calls': [
      composeTestCall({ from: merrow, to: coast }),
      { plan: netherlandsInlandPlan },
      [
        {
          code: 'call-restricted',
          params: {
            plan: 'Netherlands, inland',
            rule: expect.objectContaining({ message: netherlandsInlandPlan.channels[0]?.selectiveCallRule }),
          },
          at: ['kind'],
          clause: netherlandsInlandPlan.edition,
        },
      ],
    ],
    'a reason without "unable to comply"': [
      { ...hail, secondTelecommand: 'busy' },
      {},
      [
        {
          code: 'call-reason-misplaced',
          params: { reason: 'busy' },
          at: ['secondTelecommand'],
          received: 'busy',
          clause: `${notes}, notes 2 and 3`,
        },
      ],
    ],
    '"unable to comply" without a reason': [
      { ...unable, reason: null },
      {},
      [
        {
          code: 'call-reason-missing',
          params: {},
          at: ['reason'],
          received: 'none',
          clause: `${notes}, notes 2 and 3`,
        },
      ],
    ],
    '"unable to comply" with something that is no reason': [
      { ...unable, reason: 'pay-phone' },
      {},
      [
        {
          code: 'call-reason-missing',
          params: {},
          at: ['reason'],
          received: 'pay-phone',
          clause: `${notes}, notes 2 and 3`,
        },
      ],
    ],
    'a medical transport by data': [
      { ...hail, firstTelecommand: 'data', secondTelecommand: 'medical-transport' },
      {},
      [
        {
          code: 'call-second-telecommand-misplaced',
          params: { telecommand: 'medical-transport' },
          at: ['secondTelecommand'],
          received: 'medical-transport',
          clause: `${notes}, note 7, order of the notes unverified`,
        },
      ],
    ],
    'a first telecommand of other calls': [
      composeAllShipsCall({ from: merrow, category: 'safety', firstTelecommand: 'data' }),
      {},
      [
        {
          code: 'call-first-telecommand-unusual',
          params: { telecommand: 'data', usual: ['telephony-simplex', 'telephony-duplex', 'telephony-j3e'] },
          at: ['firstTelecommand'],
          expected: 'telephony, simplex; telephony, duplex; telephony, single sideband',
          received: 'data',
          clause: 'ITU-R M.493-16 Annex 1 table A1-4.5',
        },
      ],
    ],
    'an area call from a class D set': [
      composeAreaCall({ from: merrow, area, category: 'safety' }),
      { equipmentClass: 'D' },
      [
        {
          code: 'call-class-none',
          params: { equipment: 'D' },
          at: ['kind'],
          received: 'area-call',
          clause: classes,
        },
      ],
    ],
    'a relay to all ships from a class A set': [
      relay,
      { equipmentClass: 'A' },
      [
        {
          code: 'call-class-guarded',
          params: { equipment: 'A' },
          at: ['kind'],
          received: 'distress-relay',
          clause: classes,
        },
        relayCases,
      ],
    ],
    "a relay of the own vessel's distress": [
      { ...relay, from: bounty },
      {},
      [
        {
          code: 'call-relay-of-own',
          params: {},
          at: ['distressed'],
          clause: 'ITU-R M.493-16 table A1-4.3',
        },
        relayCases,
      ],
    ],
    'an acknowledgement from a ship': [
      composeDistressAcknowledgement({ from: merrow, about: alert }),
      {},
      [
        {
          code: 'call-coast-acknowledges',
          params: {},
          at: ['from'],
          clause: 'MSC.1/Circ.1657; 47 CFR 80.103(c), 80.1121(d)',
        },
      ],
    ],
    "a cancellation of another vessel's alert": [
      { ...composeDistressSelfCancel({ from: bounty, about: alert }), distressed: tern },
      {},
      [
        {
          code: 'call-cancel-of-another',
          params: {},
          at: ['distressed'],
          clause: 'RR 2024 Nos. 32.53B to 32.53E',
        },
      ],
    ],
    'an alert without a position': [
      composeDistressAlert({ from: bounty }),
      {},
      [
        {
          code: 'call-position-unknown',
          params: {},
          at: ['position'],
          clause: 'ITU-R M.541-11 Annex 1',
        },
      ],
    ],
    'an alert without the time of its position': [
      { ...alert, time: null },
      {},
      [
        {
          code: 'call-time-unknown',
          params: {},
          at: ['time'],
          clause: 'ITU-R M.541-11 Annex 1',
        },
      ],
    ],
    'an area without a size': [
      composeAreaCall({ from: coast, area: { ...area, eastward: 0 }, category: 'safety' }),
      {},
      [
        expect.objectContaining({
          code: 'position-area-empty',
          at: ['to', 'area'],
          expected: 'an area with two sides',
          received: "'0200'",
          clause: 'ITU-R M.493-16, geographic area address',
        }),
      ],
    ],
  };

  it.each(Object.entries(cases))('%s', (_, [call, options, notices]) => {
    const found = withoutWords(checkCall(call, options));
    expect(found).toEqual(notices);
    expect(found.map(Object.keys)).toEqual(JSON.parse(JSON.stringify(found)).map(Object.keys));
  });

  it('a rule of some channels of a plan only is found too', () => {
    const channels = netherlandsInlandPlan.channels.map((channel, index) =>
      index === 0 ? { ...channel, selectiveCallRule: null } : channel,
    );
    const plan = { ...netherlandsInlandPlan, channels };
    expect(codes(composeTestCall({ from: merrow, to: coast }), { plan })).toEqual(['call-restricted']);
  });
});

describe('where a finding is', () => {
  it('each identity of a call is looked at in its place', () => {
    const places = (call: Call) => checkCall(call).map(({ code, at }) => [code, ...at]);
    expect(places({ ...hail, to: { kind: 'station', mmsi: merrow } })).toEqual([
      ['identity-own-called', 'to'],
    ]);
    const group = composeGroupCall({ from: merrow, to: club, channel: '77' });
    expect(places({ ...group, to: { kind: 'group', mmsi: coast } })).toEqual([['identity-use', 'to']]);
    expect(places({ ...relay, from: coast, distressed: club })).toEqual([['identity-use', 'distressed']]);
    for (const equipmentClass of [undefined, 'D', 'M'] as const)
      expect(
        checkCall({ ...composeTestCall({ from: merrow, to: tern }), from: club }, { equipmentClass })[0],
      ).toMatchObject({
        code: 'identity-use',
        at: ['from'],
      });
    // Identities of hand-held sets begin with 8: ITU-R M.585-10; odd in a fixed set, and nobody said that it is one.
    const held = { ...hail, from: '823299904' };
    expect(checkCall(held, { equipmentClass: 'D' })).toMatchObject([
      { code: 'identity-station', at: ['from'] },
    ]);
    expect(codes(held, { equipmentClass: 'H' })).toEqual([]);
    expect(codes(held)).toEqual([]);
    expect(codes({ ...alert, from: '823299904' }, { equipmentClass: 'M' })).toEqual([]);
  });

  it('and no identity is taken for an area, though its digits could be one', () => {
    expect(codes({ ...hail, to: { kind: 'station', mmsi: '201010100' } })).toEqual([]);
  });

  it('and none where the call does not say who', () => {
    expect(codes({ ...hail, from: null, to: { kind: 'station', mmsi: null } })).toEqual([]);
    expect(codes({ ...relay, from: null, distressed: null })).toEqual([]);
    expect(codes(composeDistressAcknowledgement({ from: coast, about: alert }))).toEqual([]);
    const unsaid = composeDistressAcknowledgement({ from: coast, about: alert });
    expect(codes({ ...unsaid, from: null })).toEqual([]);
  });
});

describe('a position', () => {
  it('is missed in a distress, and in no reply of a station that has none', () => {
    expect(codes(composePositionReply({ from: merrow, to: tern }))).toEqual([]);
  });
});

describe('working channels', () => {
  // Radio Regulations Appendix 18: 16 for distress, urgency and safety; from memory.
  it('16 may follow a safety or urgency call, also to one station', () => {
    for (const category of ['safety', 'urgency', 'distress'] as const)
      expect(codes({ ...hail, category, channel: '16' })).not.toContain('call-channel-16-routine');
  });

  it('a coast station is called without one, whoever of the two is ashore', () => {
    expect(codes({ ...hail, to: { kind: 'station', mmsi: coast }, channel: null })).toEqual([]);
    expect(codes({ ...hail, from: coast, channel: null })).toEqual([]);
    // An urgency or safety call itself says where the message will be spoken: ITU-R M.541-11 Annex 3, from memory.
    for (const category of ['safety', 'urgency', 'distress'] as const)
      expect(codes({ ...hail, from: coast, category, channel: null })).toContain('call-channel-none');
    expect(codes({ ...hail, to: { kind: 'station', mmsi: null }, channel: null })).toEqual([
      'call-channel-none',
    ]);
  });

  it('nothing is said of a call that names one', () => {
    for (const call of [hail, composeGroupCall({ from: merrow, to: club, channel: '77' })])
      expect(unnamedChannelNotices(call)).toEqual([]);
  });

  // ITU-R M.585-10: 00 and the digits of a country, then four zeros, are all its coast stations; from memory.
  it('of two frequencies go with a coast station, or with all of a country', () => {
    for (const to of [coast, '002320000'])
      expect(codes({ ...hail, to: { kind: 'station', mmsi: to }, channel: '26' })).toEqual([]);
    expect(codes({ ...hail, from: coast, channel: '26' })).toEqual([]);
  });

  // The answer of a coast station names the working channel: ITU-R M.541-11 Annex 3, from memory.
  it('an answer names one even between ship and coast, and so does a call to a group', () => {
    const answer = composeIndividualAcknowledgement({
      call: composeIndividualCall({ from: merrow, to: coast }),
    });
    expect(codes(answer)).toEqual(['call-channel-none']);
    const group = composeGroupCall({ from: merrow, to: club, channel: '77' });
    expect(codes({ ...group, channel: null })).toEqual(['call-channel-none']);
  });

  it('frequencies of MF and HF stand for one, and data needs none', () => {
    const frequencies = { receive: '021820', transmit: '021820' };
    expect(codes({ ...hail, channel: null, frequencies })).toEqual([]);
    expect(codes({ ...hail, channel: null, firstTelecommand: 'data' })).toEqual([]);
    expect(codes({ ...hail, channel: null, firstTelecommand: 'telephony-duplex' })).toEqual([
      'call-channel-none',
    ]);
  });

  it('none is asked of calls that announce no traffic, nor judged in them', () => {
    const dialled = composeAutomaticServiceCall({ from: merrow, to: tern, telephone: '5550123' });
    for (const plan of [undefined, internationalPlan]) {
      for (const call of [composeTestCall({ from: merrow, to: coast }), alert, { ...dialled, channel: '16' }])
        expect(codes(call, { plan })).toEqual([]);
      expect(codes({ ...unable, channel: '70' }, { plan })).toEqual(['call-channel-echoed']);
    }
  });
});

describe('telecommands', () => {
  // Japan, MPT Notification 567 of 1990, note 7; order of the notes from memory.
  it.each(['medical-transport', 'neutral-craft'] as const)(
    '%s goes with what carries speech',
    (secondTelecommand) => {
      const urgent = composeAllShipsCall({ from: merrow, category: 'urgency', secondTelecommand });
      for (const firstTelecommand of ['telephony-simplex', 'telephony-duplex', 'telephony-j3e'] as const)
        expect(codes({ ...urgent, firstTelecommand })).toEqual([]);
      for (const firstTelecommand of ['teleprinter-arq', 'morse'] as const)
        expect(codes({ ...hail, firstTelecommand, secondTelecommand })).not.toContain(
          'call-second-telecommand-misplaced',
        );
      expect(codes({ ...urgent, firstTelecommand: null })).toEqual(['call-second-telecommand-misplaced']);
    },
  );

  it('a reason stands in an answer of the telephone service that cannot comply', () => {
    const dialled = composeAutomaticServiceCall({ from: merrow, to: coast, telephone: '5550123' });
    const refused = {
      ...dialled,
      firstTelecommand: 'unable-to-comply',
      secondTelecommand: 'busy',
      end: 'answer',
    } as const;
    expect(codes(refused)).not.toContain('call-reason-misplaced');
    expect(codes({ ...refused, firstTelecommand: 'data' })).toContain('call-reason-misplaced');
  });

  it('other second telecommands stand with any', () => {
    expect(codes({ ...hail, firstTelecommand: 'data', secondTelecommand: 'facsimile' })).toEqual([]);
  });

  it('a symbol without a name is told once, as such', () => {
    expect(codes({ ...hail, firstTelecommand: 'symbol-102' })).toEqual(['call-symbol-unknown']);
  });
});

// Duties of the classes: ITU-R M.493-16, from memory.
describe('equipment', () => {
  it('is named', () => {
    const says = (call: Call, options: NonNullable<Parameters<typeof checkCall>[1]>) =>
      checkCall(call, options)
        .filter((notice) => notice.code === 'call-class-none')
        .map((notice) => notice.params?.equipment);
    expect(says(relay, { equipmentClass: 'H' })).toEqual(['H']);
    expect(says(hail, { equipmentClass: 'M' })).toEqual(['M']);
    expect(says(hail, { equipmentClass: 'A' })).toEqual([]);
    expect(says({ ...alert, from: coast }, {})).toEqual(['coast']);
  });

  it('of class D has no calls of the telephone service', () => {
    const dialled = composeAutomaticServiceCall({ from: merrow, to: coast, telephone: '5550123' });
    expect(codes(dialled, { equipmentClass: 'D' })).toEqual(['call-class-none']);
    expect(codes(dialled, { equipmentClass: 'A' })).toEqual([]);
  });

  it('is judged by whom a relay is for: one, a group, an area, all ships', () => {
    const to = (target: Parameters<typeof composeDistressRelay>[0]['to']) =>
      codes(composeDistressRelay({ from: merrow, to: target, about: alert }), { equipmentClass: 'D' });
    expect(to(coast)).toEqual([]);
    for (const target of [club, area, undefined])
      expect(to(target)).toEqual(['call-class-none', 'call-relay-cases']);
  });

  // 8: hand-held set; 972: man-overboard device (ITU-R M.585-10).
  it('and the identity of its owner go together', () => {
    expect(codes({ ...hail, from: '823299904' }, { equipmentClass: 'H' })).toEqual([]);
    expect(codes({ ...hail, from: '823299904' }, { equipmentClass: 'D' })).toEqual(['identity-station']);
    expect(codes({ ...hail, from: '823299904' })).toEqual([]);
    expect(codes(hail, { equipmentClass: 'coast' })).toContain('identity-use');
    expect(codes({ ...alert, from: '972329901' }, { equipmentClass: 'M' })).toEqual([]);
  });
});
