import { describe, expect, it } from 'vitest';
import {
  type Channel,
  type ChannelPlan,
  checkWorkingChannel,
  findChannel,
  planText,
  type WorkingPurpose,
} from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';
import {
  canadaPlan,
  internationalPlan,
  netherlandsInlandPlan,
  unitedKingdomPlan,
  unitedStatesPlan,
} from './plans.ts';

const find = (plan: ChannelPlan, designator: string) => valueOf(findChannel(plan, designator));

// Codes and params; the wording is in english/channel.txt.

/** `[code, channel, purpose, plan, params beside the channel, clause]`: the one thing that rules the channel out. */
type Bar = readonly [string, string, WorkingPurpose, ChannelPlan, object, string];

describe('what rules a channel out, in words and with the clause', () => {
  it.each<Bar>([
    ['channel-calls-only', '70', 'safety', internationalPlan, {}, 'RR Appendix 18 note j)'],
    [
      'channel-receive-only',
      'WX1',
      'ship-to-coast',
      unitedStatesPlan,
      { reason: planText('ships do not transmit on it') },
      'US National Weather Service, marine radio page',
    ],
    [
      'channel-data-only',
      'AIS 1',
      'intership-commercial',
      internationalPlan,
      { reason: planText('it carries automatic identification data only') },
      'RR Appendix 18, table',
    ],
    [
      'channel-reserved',
      '17',
      'intership-commercial',
      unitedStatesPlan,
      { reason: planText('it is reserved to the government') },
      '47 CFR 80.373(f), as of March 2025',
    ],
    [
      'channel-not-to-be-named',
      '76',
      'ship-to-coast',
      internationalPlan,
      { reason: planText('it guards channel 16 and carries navigation-related port traffic only') },
      'RR Appendix 18 note n)',
    ],
    [
      'channel-distress-and-calling',
      '16',
      'intership-non-commercial',
      internationalPlan,
      {},
      'RR Appendix 18, unverified',
    ],
    [
      'channel-two-frequency',
      '26',
      'intership-navigation',
      internationalPlan,
      { coast: '161.900', ship: '157.300' },
      'RR Appendix 18',
    ],
    [
      'channel-ships-only',
      '72',
      'ship-to-coast',
      unitedKingdomPlan,
      { plan: 'United Kingdom' },
      'UK Radiocommunications Agency sheet RA 264',
    ],
    [
      'channel-not-intership',
      '12',
      'intership-non-commercial',
      internationalPlan,
      {
        purpose: 'intership-non-commercial',
        plan: 'International',
        note: planText('port operations and ship movement'),
      },
      'RR Appendix 18, table',
    ],
    [
      'channel-not-intership',
      '06',
      'intership-commercial',
      unitedStatesPlan,
      {
        purpose: 'intership-commercial',
        plan: 'United States',
        note: planText('safety between ships, and rescue work with Coast Guard ships and aircraft'),
        caution: planText('for safety traffic only'),
      },
      '47 CFR 80.373(f), as of March 2025',
    ],
    [
      'channel-other-use',
      '77',
      'safety',
      internationalPlan,
      {
        purpose: 'safety',
        plan: 'International',
        note: planText('intership only'),
      },
      'RR Appendix 18, table',
    ],
    [
      'channel-other-use',
      '13',
      'ship-to-coast',
      internationalPlan,
      {
        purpose: 'ship-to-coast',
        plan: 'International',
        note: planText(
          'safety of navigation, worldwide, chiefly from bridge to bridge; also ship movement and port operations where a national rule says so',
        ),
        caution: planText('for the safety of navigation; other uses by national rule only'),
      },
      'RR Appendix 18 note k)',
    ],
    [
      'channel-other-use',
      '72',
      'intership-navigation',
      internationalPlan,
      {
        purpose: 'intership-navigation',
        plan: 'International',
        note: planText('intership only'),
      },
      'RR Appendix 18, table',
    ],
  ])('%s: channel %s for %s', (code, designator, purpose, plan, params, clause) => {
    const bars = checkWorkingChannel(find(plan, designator), purpose);
    expect(bars).toMatchObject([{ code, grade: 'error', at: [], received: designator, clause }]);
    expect(bars[0]?.params).toEqual({ channel: designator, ...params });
  });

  it('nothing on 16 for safety traffic', () => {
    expect(checkWorkingChannel(find(internationalPlan, '16'), 'safety')).toEqual([]);
  });

  it('the rule against selective calls on inland waters, but for safety traffic (Regeling 2015, note 9)', () => {
    const ten = find(netherlandsInlandPlan, '10');
    const rule = planText(ten.selectiveCallRule as string);
    expect(checkWorkingChannel(ten, 'intership-commercial')[0]).toMatchObject({
      code: 'channel-selective-calls-restricted',
      params: { channel: '10', rule },
    });
    expect(checkWorkingChannel(ten, 'safety')[0]?.code).not.toBe('channel-selective-calls-restricted');
    const open = { ...ten, uses: ['safety'] } satisfies Channel;
    expect(checkWorkingChannel(open, 'safety')[0]).toMatchObject({
      code: 'channel-safety-calls-only',
      params: { channel: '10', plan: netherlandsInlandPlan.name, rule },
    });
  });

  it('what it is for, where it has no reason of its own (invented)', () => {
    const told = (change: Partial<Channel>) =>
      checkWorkingChannel({ ...find(internationalPlan, '72'), note: 'harbour news', ...change }, 'safety');
    expect(told({ receiveOnly: true, shipKHz: null })).toMatchObject([
      { code: 'channel-receive-only', params: { channel: '72', reason: planText('harbour news') } },
    ]);
    expect(told({ service: 'data' })).toMatchObject([
      { code: 'channel-data-only', params: { channel: '72', reason: planText('harbour news') } },
    ]);
  });

  it('nothing that is no channel: the program is told', () => {
    for (const [given, words] of [
      [undefined, 'undefined'],
      [null, 'null'],
      ['72', "'72'"],
      [findChannel(internationalPlan, '72'), 'a result: look at .ok first, then use .value'],
    ])
      expect(() => checkWorkingChannel(given as unknown as Channel, 'safety')).toThrow(
        `checkWorkingChannel: expected a channel, got ${words}`,
      );
  });
});

describe('what to mind on a channel that serves, in words and with the clause', () => {
  it('a caution, more if the channel is for particular reasons only, and a power limit', () => {
    const at: string[] = [];
    const received = '15';
    expect(checkWorkingChannel(find(internationalPlan, '15'), 'intership-non-commercial')).toMatchObject([
      {
        code: 'channel-restricted',
        grade: 'check',
        params: {
          channel: '15',
          plan: 'International',
          caution: planText('normally used by ports or for work on board'),
        },
        at,
        received,
        clause: 'RR Appendix 18, table',
      },
      {
        code: 'channel-low-power',
        grade: 'caution',
        params: {
          channel: '15',
          limit: planText('1 W radiated on board; elsewhere 25 W unless a national rule says less'),
        },
        at,
        received,
        clause: 'RR Appendix 18 note g)',
      },
    ]);
    expect(checkWorkingChannel(find(internationalPlan, '06'), 'intership-commercial')).toMatchObject([
      {
        code: 'channel-caution',
        grade: 'caution',
        params: {
          channel: '06',
          plan: 'International',
          caution: planText('keep it clear for search and rescue, and for ice-breakers and their aircraft'),
        },
        at,
        received: '06',
        clause: 'RR Appendix 18, table',
      },
    ]);
  });

  it('for whom it is, where the purpose does not say so', () => {
    expect(checkWorkingChannel(find(canadaPlan, '08'), 'safety')[0]).toMatchObject({
      code: 'channel-restricted',
      params: { channel: '08', plan: 'Canada', caution: planText('for commercial vessels') },
      at: [],
      received: '08',
      clause: 'ISED RBR-2 schedule, unverified',
    });
  });

  it('for whom it is, on a channel without a caution (invented)', () => {
    const pier = (users: Channel['users'], region: string | null): Channel => ({
      ...find(internationalPlan, '12'),
      uses: ['ship-to-coast'],
      users,
      region,
    });
    const codes = (channel: Channel) => checkWorkingChannel(channel, 'ship-to-coast').map(({ code }) => code);
    expect(codes(pier('commercial', null))).toEqual(['channel-restricted', 'channel-coast-names-it']);
    expect(codes(pier('all', null))).toEqual(['channel-coast-names-it']);
    expect(codes(pier('all', 'north of the Sound'))).toEqual(['channel-regional', 'channel-coast-names-it']);
  });

  it('the part of the waters, and that the coast station names the channel', () => {
    expect(checkWorkingChannel(find(canadaPlan, '08'), 'intership-commercial')).toMatchObject([
      {
        code: 'channel-regional',
        grade: 'check',
        params: { channel: '08', region: planText('both coasts and Lake Winnipeg') },
        at: [],
        received: '08',
        clause: 'ISED RBR-2 schedule, unverified',
      },
    ]);
    expect(checkWorkingChannel(find(internationalPlan, '01'), 'ship-to-coast')).toMatchObject([
      {
        code: 'channel-coast-names-it',
        grade: 'note',
        params: { channel: '01' },
        at: [],
        received: '01',
        clause: 'ITU-R M.541-11, unverified',
      },
    ]);
  });

  it('a power limit in watts where the plan has no words for it, and none at the 25 W of an ordinary set (invented)', () => {
    const limited = (powerLimitW: number | null): Channel => ({
      ...find(internationalPlan, '72'),
      powerLimitW,
      powerRule: null,
    });
    expect(checkWorkingChannel(limited(5), 'intership-commercial')).toMatchObject([
      { code: 'channel-low-power', params: { channel: '72', limit: '5 W' } },
    ]);
    for (const ordinary of [25, null])
      expect(checkWorkingChannel(limited(ordinary), 'intership-commercial')).toEqual([]);
  });
});
