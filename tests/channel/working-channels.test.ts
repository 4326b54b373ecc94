import { describe, expect, it } from 'vitest';
import {
  type Channel,
  type ChannelPlan,
  checkWorkingChannel,
  findChannel,
  planText,
  type WorkingPurpose,
  workingChannels,
} from '../../src/channel/index.ts';
import { isWorkingChannelAllowed } from '../../src/channel/working-channel.ts';
import { valueOf } from '../../src/result/index.ts';
import {
  canadaPlan,
  internationalPlan,
  plans,
  seaPlans,
  unitedKingdomPlan,
  unitedStatesPlan,
} from './plans.ts';

const purposes: readonly WorkingPurpose[] = [
  'intership-non-commercial',
  'intership-commercial',
  'intership-navigation',
  'ship-to-coast',
  'safety',
];
const ranking = (given: ChannelPlan | readonly ChannelPlan[], purpose: WorkingPurpose) =>
  workingChannels(given, purpose).ranked.map((entry) => entry.designator);
const barAgainst = (
  given: ChannelPlan | readonly ChannelPlan[],
  purpose: WorkingPurpose,
  designator: string,
) => workingChannels(given, purpose).ruledOut.find((entry) => entry.designator === designator)?.notices[0];
const codes = (plan: ChannelPlan, designator: string, purpose: WorkingPurpose) =>
  checkWorkingChannel(valueOf(findChannel(plan, designator)), purpose).map((notice) => notice.code);
/** Every choice of one plan or more, each with every other. */
const choices = seaPlans.flatMap((one, place) => [
  [one],
  ...seaPlans.slice(place + 1).map((other) => [one, other]),
]);

describe('talk between two ships', () => {
  it('names the purposes to one who gives another', () => {
    for (const given of ['chat', 'toString']) {
      expect(() => workingChannels(unitedKingdomPlan, given as WorkingPurpose)).toThrow(
        `purpose: expected one of ${purposes.join(', ')}, got '${given}'`,
      );
    }
  });

  it('72 comes first under every plan, every two plans and all of them', () => {
    for (const choice of [...choices, seaPlans]) {
      expect(ranking(choice, 'intership-non-commercial')[0], choice.map(({ name }) => name).join()).toBe(
        '72',
      );
    }
  });

  it('international: 72, 08 and 77, then 06, then those shared with ports (Norwegian table of Appendix 18 use)', () => {
    expect(ranking(internationalPlan, 'intership-non-commercial')).toEqual([
      '72',
      '08',
      '77',
      '06',
      '09',
      '10',
      '67',
      '69',
      '73',
      '15',
      '17',
    ]);
  });

  it('United Kingdom: 06, 08, 72 and 77 before all others (RA 264)', () => {
    expect(ranking(unitedKingdomPlan, 'intership-non-commercial').slice(0, 4).sort()).toEqual([
      '06',
      '08',
      '72',
      '77',
    ]);
  });

  it('United States: 68, 69, 71, 72, 1078 first for pleasure craft (47 CFR 80.373(f))', () => {
    expect(ranking(unitedStatesPlan, 'intership-non-commercial').slice(0, 5)).toEqual([
      '72',
      '68',
      '69',
      '71',
      '1078',
    ]);
  });

  it('all plans leave commercial vessels 08', () => {
    expect(ranking(seaPlans, 'intership-commercial')[0]).toBe('08');
  });

  it('06 is acceptable and never first', () => {
    for (const plan of [internationalPlan, unitedKingdomPlan, canadaPlan]) {
      expect(ranking(plan, 'intership-non-commercial').indexOf('06')).toBeGreaterThan(0);
      expect(codes(plan, '06', 'intership-non-commercial')).toContain('channel-caution');
    }
    expect(barAgainst(unitedStatesPlan, 'intership-non-commercial', '06')?.params).toMatchObject({
      caution: planText('for safety traffic only'),
    });
  });

  it('never holds a two-frequency channel: the other ship listens on the coast side', () => {
    for (const choice of choices) {
      for (const purpose of purposes.filter((name) => name.startsWith('intership'))) {
        for (const { channels } of workingChannels(choice, purpose).ranked) {
          for (const channel of channels) expect(channel.mode).toBe('simplex');
        }
      }
    }
    expect(barAgainst(internationalPlan, 'intership-non-commercial', '26')).toMatchObject({
      code: 'channel-two-frequency',
      params: { coast: '161.900', ship: '157.300' },
    });
  });

  it.each([
    [internationalPlan, '70', 'channel-calls-only', {}],
    [internationalPlan, '16', 'channel-distress-and-calling', {}],
    [
      internationalPlan,
      '75',
      'channel-not-to-be-named',
      { reason: 'it guards channel 16 and carries navigation-related port traffic only' },
    ],
    [
      internationalPlan,
      'AIS 1',
      'channel-data-only',
      { reason: 'it carries automatic identification data only' },
    ],
    [internationalPlan, '2078', 'channel-receive-only', {}],
    [
      internationalPlan,
      '13',
      'channel-not-intership',
      { caution: 'for the safety of navigation; other uses by national rule only' },
    ],
    [unitedStatesPlan, '17', 'channel-reserved', { reason: 'it is reserved to the government' }],
    [unitedStatesPlan, 'WX1', 'channel-receive-only', { reason: 'ships do not transmit on it' }],
    [
      unitedKingdomPlan,
      'M',
      'channel-not-to-be-named',
      { reason: 'it is for ships to marinas and clubs, and it has no digits for a call' },
    ],
    [unitedStatesPlan, '1022', 'channel-not-intership', { caution: 'only to talk with the Coast Guard' }],
  ])('gives a plain reason against every other channel: %#', (plan, designator, code, texts) => {
    const bar = barAgainst(plan, 'intership-non-commercial', designator);
    const params = Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, planText(text)]));
    expect(bar).toMatchObject({ code, grade: 'error', params: { channel: designator, ...params } });
  });

  it('says where the same number means something else', () => {
    const both = [internationalPlan, unitedStatesPlan];
    expect(barAgainst(both, 'intership-commercial', '1007')).toMatchObject({
      code: 'channel-meaning-differs',
      params: {
        channel: '1007',
        plan: 'International',
        other: '07',
        frequencies: {
          code: 'channel-frequency-two',
          params: { ship: '156.350', coast: '160.950' },
        },
      },
    });
    expect(barAgainst(both, 'intership-non-commercial', '77')).toMatchObject({
      code: 'channel-not-intership',
      params: { plan: 'United States', caution: planText('with pilots only') },
    });
    expect(barAgainst(both, 'intership-non-commercial', '15')?.code).toBe('channel-receive-only');
    expect(
      barAgainst([unitedStatesPlan, unitedKingdomPlan], 'intership-non-commercial', '1078')?.params,
    ).toMatchObject({ plan: 'United Kingdom' });
  });
});

describe('other purposes', () => {
  it('navigation: 13 first (RR Appendix 18 note k, 47 CFR 80.373(f))', () => {
    for (const choice of choices) expect(ranking(choice, 'intership-navigation')[0]).toBe('13');
  });

  // By use and caution of each row in the tables; deviation D-channel-10 on the order.
  it.each<[ChannelPlan, WorkingPurpose, preferred: string, allowed: string, restricted: string]>([
    [internationalPlan, 'intership-navigation', '13', '', ''],
    // 1022 is kept for liaison with the Coast Guard, and 06 and 67 carry a caution.
    [unitedStatesPlan, 'intership-navigation', '13', '', '06 67'],
    // 08 is for commercial vessels, and on both coasts only.
    [canadaPlan, 'intership-navigation', '13', '', '06 08'],
    // 06 and 13 are kept clear for just this (RR Appendix 18 notes f) and k)); 10, 67 and 73 may be a port's.
    [internationalPlan, 'safety', '16', '06 13', '10 67 73'],
    [unitedKingdomPlan, 'safety', '16', '06 13', '10 62 63 64 67 73'],
    [unitedStatesPlan, 'safety', '16', '06 13', '1022 67'],
    [canadaPlan, 'safety', '16', '06 13', '08 10 22A 65A 67 73'],
    // 01 to 03, 23, 60 and 64 mostly inland and in the Arctic, 05A in British Columbia.
    [
      canadaPlan,
      'ship-to-coast',
      '20 26 66A 68 86',
      '11 12 14 15 17 74 87 88',
      '01 02 03 05A 22A 23 24 25 27 28 60 64 65A 71 84 85',
    ],
    [
      unitedStatesPlan,
      'ship-to-coast',
      '20 24 26 68 69 1078 84 85 86 87',
      '12 14 1065 1066 73 74',
      '1001 1005 11 1022 25 27 28 1063 71 88',
    ],
  ])('all that serve, by how well', (plan, purpose, preferred, allowed, restricted) => {
    const { ranked } = workingChannels(plan, purpose);
    const those = (fitness: string) =>
      ranked.flatMap((entry) => (entry.fitness === fitness ? [entry.designator] : [])).join(' ');
    expect([those('preferred'), those('allowed'), those('restricted')]).toEqual([
      preferred,
      allowed,
      restricted,
    ]);
  });

  it('safety: 16 first', () => {
    for (const choice of [...choices, seaPlans]) expect(ranking(choice, 'safety')[0]).toBe('16');
  });

  it('ship to coast: pairs serve, channels between ships do not, and the coast station names the channel', () => {
    const { ranked } = workingChannels(internationalPlan, 'ship-to-coast');
    const entry = ranked.find(({ designator }) => designator === '26');
    expect(entry?.notices.map((notice) => notice.code)).toContain('channel-coast-names-it');
    expect(entry?.fitness).toBe('restricted');
    expect(barAgainst(internationalPlan, 'ship-to-coast', '72')?.code).toBe('channel-ships-only');
    expect(ranking(unitedKingdomPlan, 'ship-to-coast')).toContain('80');
    expect(ranking(unitedStatesPlan, 'ship-to-coast')).toContain('1022');
  });
});

describe('an answer under two plans', () => {
  const both = [internationalPlan, unitedStatesPlan];
  const find = (plan: ChannelPlan, designator: string) => valueOf(findChannel(plan, designator));

  it('says what was asked', () => {
    expect(workingChannels(both, 'safety')).toMatchObject({
      kind: 'working-channels',
      purpose: 'safety',
      plans: ['International', 'United States'],
    });
  });

  it('gives a channel that serves with the least any plan says of it, and the reason plan by plan', () => {
    const { ranked } = workingChannels(both, 'intership-non-commercial');
    const entry = ranked.find(({ designator }) => designator === '67');
    const channels = both.map((plan) => find(plan, '67'));
    expect(entry).toEqual({
      kind: 'working-channel',
      onSets: [],
      designator: '67',
      channels,
      fitness: 'restricted',
      reason:
        'International: between ships and port operations; search and rescue and pollution control in Europe and Canada (may be a port or rescue channel where you are); ' +
        `United States: ${channels[1]?.note} (${channels[1]?.caution})`,
      code: 'channel-serves',
      params: {
        reasons: channels.map(({ plan, note, caution }) => ({
          code: 'channel-use',
          params: { plan, note: planText(note), caution: planText(caution ?? '') },
          message: `${plan}: ${note} (${caution})`,
        })),
      },
      notices: channels.flatMap((channel) => checkWorkingChannel(channel, 'intership-non-commercial')),
    });
    expect(ranked[0]?.reason).toBe(
      `International: intership only; United States: ${find(unitedStatesPlan, '72').note} (${find(unitedStatesPlan, '72').caution})`,
    );
  });

  it('gives a channel that does not serve with all that speaks against it', () => {
    const ruledOut = (designator: string) =>
      workingChannels(both, 'ship-to-coast').ruledOut.find((entry) => entry.designator === designator);
    expect(ruledOut('01')?.reason).toBe(ruledOut('01')?.notices[0].message);
    expect(ruledOut('01')).toMatchObject({
      kind: 'ruled-out-channel',
      designator: '01',
      channels: [find(internationalPlan, '01')],
      notices: [
        {
          code: 'channel-meaning-differs',
          grade: 'error',
          params: {
            channel: '01',
            plan: 'United States',
            other: '1001',
            frequencies: { code: 'channel-frequency-one', params: { ship: '156.050' } },
          },
          at: [],
          received: '01',
          clause: unitedStatesPlan.edition,
        },
      ],
    });
    expect(ruledOut('60')?.notices).toMatchObject([
      {
        code: 'channel-not-in-plan',
        params: { channel: '60', plan: 'United States' },
        at: [],
        received: '60',
        clause: unitedStatesPlan.edition,
      },
    ]);
    expect(ruledOut('WX1')?.notices.map((notice) => notice.code)).toEqual([
      'channel-receive-only',
      'channel-not-in-plan',
    ]);
  });
});

describe('the order of channels that serve (D-channel-10; the plans here are invented)', () => {
  type Fit = Channel['intership']['nonCommercial'];
  /** The international plan with 09 to 12 and 72 alone, each as fit as told: a stand-in for a harbour's own plan. */
  const planOf = (
    fitness: Record<string, Fit>,
    more: Record<string, Partial<Channel>> = {},
  ): ChannelPlan => ({
    ...internationalPlan,
    channels: internationalPlan.channels.flatMap((channel) => {
      const nonCommercial = fitness[channel.designator];
      if (nonCommercial === undefined) return [];
      return [
        { ...channel, intership: { nonCommercial, commercial: 'prohibited' }, ...more[channel.designator] },
      ];
    }),
  });
  const order = (...given: ChannelPlan[]) => ranking(given, 'intership-non-commercial').join(' ');

  it('goes by the least any plan says before what the plans say together', () => {
    expect(
      order(
        planOf({ '09': 'preferred', '10': 'allowed' }),
        planOf({ '09': 'preferred', '10': 'allowed' }),
        planOf({ '09': 'restricted', '10': 'allowed' }),
      ),
    ).toBe('10 09');
    const least = [...Array(4).keys()].map(() => planOf({ '09': 'preferred', '10': 'allowed' }));
    expect(order(...least, planOf({ '09': 'restricted', '10': 'allowed' }))).toBe('10 09');
  });

  it('then by what the plans say together, before 72', () => {
    expect(
      order(planOf({ '10': 'preferred', '72': 'allowed' }), planOf({ '10': 'allowed', '72': 'allowed' })),
    ).toBe('10 72');
  });

  it('then 72, then channels for ships alone under every plan, then by number', () => {
    const all = {
      '09': 'allowed',
      '10': 'allowed',
      '11': 'allowed',
      '12': 'allowed',
      '72': 'allowed',
    } as const;
    const ships = { transmitters: 'ships' } as const;
    expect(order(planOf(all))).toBe('72 09 10 11 12');
    // 72 is 72 under whatever name another plan has it.
    const renamed = planOf(all, { '11': ships, '72': { designator: 'Sound 1' } });
    expect(order(planOf(all, { '11': ships }), renamed)).toBe('72 11 09 10 12');
    expect(order(planOf(all, { '11': ships }))).toBe('72 11 09 10 12');
    expect(order(planOf(all, { '11': ships, '12': ships }), planOf(all, { '12': ships }))).toBe(
      '72 12 09 10 11',
    );
  });
});

describe.each(purposes)('workingChannels for %s', (purpose) => {
  it('holds every channel of every plan exactly once, each with a reason', () => {
    for (const choice of choices) {
      const sorted = workingChannels(choice, purpose);
      const entries = [...sorted.ranked, ...sorted.ruledOut];
      const held = entries.flatMap((entry) => entry.channels);
      expect(held).toHaveLength(choice.reduce((sum, plan) => sum + plan.channels.length, 0));
      expect(new Set(held)).toEqual(new Set(choice.flatMap((plan) => plan.channels)));
      for (const entry of entries) expect(entry.reason).toMatch(/^\S.*[^.\s]$/);
      for (const entry of sorted.ranked) expect(entry.channels).toHaveLength(choice.length);
      expect(structuredClone(sorted)).toEqual(sorted);
    }
  });

  it('agrees with checkWorkingChannel and isWorkingChannelAllowed under one plan', () => {
    for (const plan of plans) {
      const { ranked, ruledOut } = workingChannels(plan, purpose);
      for (const { channels } of ranked)
        expect(channels.every((channel) => isWorkingChannelAllowed(channel, purpose))).toBe(true);
      for (const { channels, notices } of ruledOut) {
        for (const channel of channels) {
          expect(isWorkingChannelAllowed(channel, purpose)).toBe(false);
          expect(checkWorkingChannel(channel, purpose)).toEqual(notices);
        }
      }
    }
  });

  it('never ranks a channel that must not be named', () => {
    for (const choice of choices) {
      for (const { channels } of workingChannels(choice, purpose).ranked) {
        for (const channel of channels)
          expect(channel).toMatchObject({ assignable: true, receiveOnly: false });
      }
    }
  });
});

describe('checkWorkingChannel', () => {
  it('has nothing to say against 72', () => {
    for (const plan of [internationalPlan, unitedKingdomPlan, canadaPlan])
      expect(codes(plan, '72', 'intership-non-commercial')).toEqual([]);
  });

  it('names the clause', () => {
    for (const plan of plans) {
      for (const channel of plan.channels) {
        for (const purpose of purposes) {
          for (const notice of checkWorkingChannel(channel, purpose))
            expect(notice.clause, notice.message).toBeTruthy();
        }
      }
    }
  });

  it('cautions about power, region and local use', () => {
    expect(codes(internationalPlan, '15', 'intership-non-commercial')).toEqual([
      'channel-restricted',
      'channel-low-power',
    ]);
    expect(codes(canadaPlan, '08', 'intership-commercial')).toEqual(['channel-regional']);
    expect(codes(unitedStatesPlan, '67', 'intership-non-commercial')).toEqual([
      'channel-restricted',
      'channel-low-power',
    ]);
  });

  it('throws where a set is given under another name', () => {
    const odd = { set: [unitedStatesPlan] } as unknown as Parameters<typeof workingChannels>[2];
    expect(() => workingChannels(internationalPlan, 'safety', odd)).toThrow(
      "workingChannels: expected options sets, got 'set'",
    );
  });

  it('throws where no plan is given', () => {
    expect(() => workingChannels([], 'safety')).toThrow(RangeError);
  });
});
