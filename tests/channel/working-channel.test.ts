import { describe, expect, it } from 'vitest';
import {
  type Channel,
  type ChannelPlan,
  checkWorkingChannel,
  findChannel,
  type WorkingPurpose,
} from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { canadaPlan, internationalPlan, unitedKingdomPlan, unitedStatesPlan } from './plans.ts';

const find = (plan: ChannelPlan, designator: string) => valueOf(findChannel(plan, designator));

/** `[code, channel, purpose, plan, message, clause]`: the one thing that rules the channel out. */
type Bar = readonly [string, string, WorkingPurpose, ChannelPlan, string, string];

describe('what rules a channel out, in words and with the clause', () => {
  it.each<Bar>([
    [
      'channel-calls-only',
      '70',
      'safety',
      internationalPlan,
      'Channel 70 carries digital selective calls only, never speech',
      'RR Appendix 18 note j)',
    ],
    [
      'channel-receive-only',
      'WX1',
      'ship-to-coast',
      unitedStatesPlan,
      'Channel WX1 is receive only: ships do not transmit on it',
      'US National Weather Service, marine radio page',
    ],
    [
      'channel-data-only',
      'AIS 1',
      'intership-commercial',
      internationalPlan,
      'Channel AIS 1 is not for speech: it carries automatic identification data only',
      'RR Appendix 18, table',
    ],
    [
      'channel-reserved',
      '17',
      'intership-commercial',
      unitedStatesPlan,
      'Channel 17 cannot be proposed in a call: it is reserved to the government',
      '47 CFR 80.373(f), as of March 2025',
    ],
    [
      'channel-not-to-be-named',
      '76',
      'ship-to-coast',
      internationalPlan,
      'Channel 76 cannot be proposed in a call: it guards channel 16 and carries navigation-related port traffic only',
      'RR Appendix 18 note n)',
    ],
    [
      'channel-distress-and-calling',
      '16',
      'intership-non-commercial',
      internationalPlan,
      'Channel 16 is for distress, safety and calling: working talk goes to another channel',
      'RR Appendix 18, unverified',
    ],
    [
      'channel-two-frequency',
      '26',
      'intership-navigation',
      internationalPlan,
      'Channel 26 has two frequencies: the other ship listens on the coast side, 161.900 MHz, and does not hear a ship on 157.300 MHz',
      'RR Appendix 18',
    ],
    [
      'channel-ships-only',
      '72',
      'ship-to-coast',
      unitedKingdomPlan,
      'Channel 72 is between ships only: no coast station works on it in the United Kingdom plan',
      'UK Radiocommunications Agency sheet RA 264',
    ],
    [
      'channel-not-intership',
      '12',
      'intership-non-commercial',
      internationalPlan,
      'Channel 12 is not for non-commercial talk between ships in the International plan: port operations and ship movement',
      'RR Appendix 18, table',
    ],
    [
      'channel-not-intership',
      '06',
      'intership-commercial',
      unitedStatesPlan,
      'Channel 06 is not for commercial talk between ships in the United States plan: safety between ships, and rescue work with Coast Guard ships and aircraft (for safety traffic only)',
      '47 CFR 80.373(f), as of March 2025',
    ],
    [
      'channel-other-use',
      '77',
      'safety',
      internationalPlan,
      'Channel 77 is not for distress, urgency and safety traffic in the International plan: talk between ships, its only use',
      'RR Appendix 18, table',
    ],
    [
      'channel-other-use',
      '13',
      'ship-to-coast',
      internationalPlan,
      'Channel 13 is not for talk between ship and coast in the International plan: safety of navigation, worldwide, chiefly from bridge to bridge; also ship movement and port operations where a national rule says so (for the safety of navigation; other uses by national rule only)',
      'RR Appendix 18 note k)',
    ],
    [
      'channel-other-use',
      '72',
      'intership-navigation',
      internationalPlan,
      'Channel 72 is not for the safety of navigation between ships in the International plan: talk between ships, its only use',
      'RR Appendix 18, table',
    ],
  ])('%s: channel %s for %s', (code, designator, purpose, plan, message, clause) =>
    expect(checkWorkingChannel(find(plan, designator), purpose)).toEqual([
      { code, message, at: [], received: designator, clause },
    ]),
  );

  it('nothing on 16 for safety traffic', () => {
    expect(checkWorkingChannel(find(internationalPlan, '16'), 'safety')).toEqual([]);
  });
});

describe('what to mind on a channel that serves, in words and with the clause', () => {
  it('a caution, more if the channel is for particular reasons only, and a power limit', () => {
    const at: string[] = [];
    const received = '15';
    expect(checkWorkingChannel(find(internationalPlan, '15'), 'intership-non-commercial')).toEqual([
      {
        code: 'channel-restricted',
        message: 'Channel 15 in the International plan: normally used by ports or on board',
        at,
        received,
        clause: 'RR Appendix 18, table',
      },
      {
        code: 'channel-low-power',
        message:
          'Channel 15 has a power limit: 1 W radiated on board; elsewhere 25 W unless a national rule says less',
        at,
        received,
        clause: 'RR Appendix 18 note g)',
      },
    ]);
    expect(checkWorkingChannel(find(internationalPlan, '06'), 'intership-commercial')).toEqual([
      {
        code: 'channel-caution',
        message:
          'Channel 06 in the International plan: keep it clear for search and rescue, and for ice-breakers and their aircraft',
        at,
        received: '06',
        clause: 'RR Appendix 18, table',
      },
    ]);
  });

  it('for whom it is, where the purpose does not say so', () => {
    expect(checkWorkingChannel(find(canadaPlan, '08'), 'safety')[0]).toEqual({
      code: 'channel-restricted',
      message: 'Channel 08 in the Canada plan: for commercial vessels',
      at: [],
      received: '08',
      clause: 'ISED RBR-2 schedule, unverified',
    });
  });

  it('the part of the waters, and that the coast station names the channel', () => {
    expect(checkWorkingChannel(find(canadaPlan, '08'), 'intership-commercial')).toEqual([
      {
        code: 'channel-regional',
        message: 'Channel 08 has this use in part of the waters: both coasts and Lake Winnipeg',
        at: [],
        received: '08',
        clause: 'ISED RBR-2 schedule, unverified',
      },
    ]);
    expect(checkWorkingChannel(find(internationalPlan, '01'), 'ship-to-coast')).toEqual([
      {
        code: 'channel-coast-names-it',
        message: 'Channel 01 need not be proposed: a coast station normally chooses the working channel',
        at: [],
        received: '01',
        clause: 'ITU-R M.541-11, unverified',
      },
    ]);
  });

  it('a power limit in watts where the plan has no words for it, and none at the 25 W of an ordinary set (invented)', () => {
    const limited = (powerLimitW: number): Channel => ({
      ...find(internationalPlan, '72'),
      powerLimitW,
      powerRule: null,
    });
    expect(checkWorkingChannel(limited(5), 'intership-commercial').map((notice) => notice.message)).toEqual([
      'Channel 72 has a power limit: 5 W',
    ]);
    expect(checkWorkingChannel(limited(25), 'intership-commercial')).toEqual([]);
  });
});
