import { describe, expect, it } from 'vitest';
import type { Evidence } from '../../src/channel/channel.ts';
import { expandPlan, type PlanRow, type PlanTable } from '../../src/channel/expand-plan.ts';
import type { Channel } from '../../src/channel/index.ts';

// Every table here is invented; frequencies that follow from a number are those of 47 CFR 80.871(d), 2015 edition.
const INVENTED: Evidence = { basis: 'memory', source: 'Skerra Sound harbour order' };
const evidence = { frequency: INVENTED, use: INVENTED, power: INVENTED };
const HEADING = {
  name: 'Skerra Sound',
  edition: 'invented',
  sources: [],
  cautions: [],
  callingChannels: [],
  evidence,
};
const planOf = (...rows: readonly PlanRow[]) => expandPlan({ ...HEADING, rows });
const row = (channels: string, more: Partial<PlanRow> = {}): PlanRow => ({
  channels,
  uses: ['marina'],
  note: 'boats',
  ...more,
});
const only = (channels: string, more?: Partial<PlanRow>): Channel => {
  const [channel, ...others] = planOf(row(channels, more)).channels;
  if (channel === undefined || others.length > 0) throw new Error('one channel wanted');
  return channel;
};
const names = (...rows: readonly PlanRow[]) => planOf(...rows).channels.map(({ designator }) => designator);

describe('a row of a plan', () => {
  it('that says no more than it must is a voice channel for everyone, at 25 W, not between ships', () => {
    expect(only('22')).toEqual({
      kind: 'channel',
      plan: 'Skerra Sound',
      designator: '22',
      aliases: [],
      m1084: '22',
      shipKHz: 157_100,
      coastKHz: 161_700,
      mode: 'duplex',
      service: 'voice',
      uses: ['marina'],
      note: 'boats',
      region: null,
      transmitters: 'ships-and-coast',
      receiveOnly: false,
      users: 'all',
      powerLimitW: 25,
      powerRule: null,
      automaticPowerReduction: false,
      conditionalPowerLimits: [],
      coastPowerLimitW: null,
      dataMessages: null,
      intership: { nonCommercial: 'prohibited', commercial: 'prohibited' },
      caution: null,
      assignable: true,
      notAssignableReason: null,
      selectiveCallRule: null,
      evidence,
    });
  });

  it('has its own word in everything it says', () => {
    const power: Evidence = { basis: 'source', source: 'Skerra Sound power list' };
    expect(
      only('72', {
        by: 'ships',
        region: 'north of the Sound',
        users: 'non-commercial',
        powerW: 1,
        powerRule: '1 W at the quay',
        intership: ['preferred', 'restricted'],
        caution: 'not during the regatta',
        never: 'the club keeps it to itself',
        evidence: { power },
      }),
    ).toMatchObject({
      shipKHz: 156_625,
      coastKHz: null,
      mode: 'simplex',
      region: 'north of the Sound',
      transmitters: 'ships',
      receiveOnly: false,
      users: 'non-commercial',
      powerLimitW: 1,
      powerRule: '1 W at the quay',
      intership: { nonCommercial: 'preferred', commercial: 'restricted' },
      caution: 'not during the regatta',
      assignable: false,
      notAssignableReason: 'the club keeps it to itself',
      evidence: { frequency: INVENTED, use: INVENTED, power },
    });
    expect(only('72', { intership: 'allowed' }).intership).toEqual({
      nonCommercial: 'allowed',
      commercial: 'allowed',
    });
  });

  it('for coast stations alone gives ships nothing to transmit on, and a call nothing to name', () => {
    expect(only('21B=WX8', { by: 'coast', mode: 'coast-broadcast' })).toMatchObject({
      designator: '21B',
      aliases: ['2021', 'WX8'],
      m1084: '2021',
      shipKHz: null,
      coastKHz: 161_650,
      mode: 'coast-broadcast',
      transmitters: 'coast',
      receiveOnly: true,
      powerLimitW: null,
      assignable: false,
      notAssignableReason: 'ships do not transmit on it',
    });
  });

  it.each([
    ['dsc', 'it carries digital selective calls only, never speech'],
    ['ais', 'it carries automatic identification data only'],
    ['asm', 'it carries application-specific data messages only'],
    ['vdes', 'it carries data exchange only'],
    ['data', 'it carries data of autonomous devices only'],
    ['distress', null],
  ] as const)('of the service %s is not named for speech: %s', (service, notAssignableReason) =>
    expect(only('70', { service })).toMatchObject({
      service,
      assignable: notAssignableReason === null,
      notAssignableReason,
    }),
  );
});

describe('what a table says of all its channels', () => {
  const under = (table: Partial<PlanTable>, channels: string, more?: Partial<PlanRow>): Channel => {
    const [channel] = expandPlan({ ...HEADING, ...table, rows: [row(channels, more)] }).channels;
    return channel as Channel;
  };

  it('its power limit of coast stations holds on channels of speech, unless the row has its own', () => {
    const watts = (more: Partial<PlanRow>, channels = '72') =>
      under({ coastPowerW: 50 }, channels, more).coastPowerLimitW;
    expect(watts({})).toBe(50);
    expect(watts({ by: 'coast' })).toBe(50);
    expect(watts({ service: 'distress' }, '16')).toBe(50);
    for (const service of ['dsc', 'ais', 'data'] as const) expect(watts({ service }, '70')).toBeNull();
    expect(watts({ by: 'ships' })).toBeNull();
    expect(watts({ by: 'ships', coastPowerW: 10 })).toBeNull();
    expect(watts({ coastPowerW: 10 })).toBe(10);
    expect(watts({ coastPowerW: null })).toBeNull();
    expect(only('72', { coastPowerW: 10 }).coastPowerLimitW).toBe(10);
  });

  it('digital messages may share its channels of speech between ships and all, but those it excepts', () => {
    const share = (channels: string, more: Partial<PlanRow> = {}) =>
      under({ noDataMessagesOn: ['06', '70'] }, channels, more).dataMessages;
    expect(share('72')).toBe('permitted');
    expect(share('72', { by: 'ships', users: 'commercial' })).toBe('permitted');
    expect(share('06')).toBe('prohibited');
    expect(share('70', { service: 'dsc' })).toBe('prohibited');
    expect(share('16', { service: 'distress' })).toBeNull();
    expect(share('21B', { by: 'coast' })).toBeNull();
    expect(share('83', { users: 'authority' })).toBeNull();
    expect(under({ noDataMessagesOn: [] }, '06').dataMessages).toBe('permitted');
  });

  it('its rule on selective calls is that of each channel', () => {
    const selectiveCallRule = 'no calls in the inner harbour';
    expect(under({ selectiveCallRule }, '72')).toMatchObject({ selectiveCallRule });
  });
});

describe('the designators of a row', () => {
  it.each([
    // [in the table, aliases, digits, ship, coast]
    ['01', [], '01', 156_050, 160_650],
    ['28', [], '28', 157_400, 162_000],
    ['60', [], '60', 156_025, 160_625],
    ['16', [], '16', 156_800, 156_800],
    ['88=1088=88A', ['1088', '88A'], '88', 157_425, 157_425],
    ['22A', ['1022'], '1022', 157_100, 157_100],
    ['1022', ['22A'], '1022', 157_100, 157_100],
    ['22A=Liaison=1022', ['Liaison', '1022'], '1022', 157_100, 157_100],
    ['07A', ['1007'], '1007', 156_350, 156_350],
    ['1007', ['07A'], '1007', 156_350, 156_350],
    ['2078', ['78B'], '2078', 161_525, 161_525],
    ['78B', ['2078'], '2078', 161_525, 161_525],
    // 2006 has no letter form (RR Appendix 18, from memory).
    ['2006', [], '2006', 160_900, 160_900],
    // Names and private numbers go by the frequency the table gives.
    ['AIS 1=2087=87B@161975', ['2087', '87B'], '2087', 161_975, 161_975],
    ['M=37A@157850', ['37A'], null, 157_850, 157_850],
    ['37@157850', [], null, 157_850, 157_850],
    ['Pier 22@157100', [], null, 157_100, 157_100],
    ['22 North@157100', [], null, 157_100, 157_100],
    // A pair that the table gives one frequency of its own, and a name that it gives two.
    ['22@157100', [], '22', 157_100, 157_100],
    ['31@157550/162150', [], null, 157_550, 162_150],
  ])('%s: aliases %j, digits %s, %d and %d kHz', (entry, aliases, m1084, shipKHz, coastKHz) =>
    expect(only(entry)).toMatchObject({
      designator: entry.split(/[=@]/)[0],
      aliases,
      m1084,
      shipKHz,
      coastKHz,
      mode: shipKHz === coastKHz ? 'simplex' : 'duplex',
    }),
  );

  it('come out in order of number, one leg behind the pair, names last as the table has them', () => {
    expect(
      names(row('22 North@157100,60,2022,Pier 22@157100'), row('AIS 1@161975,22A,02,22'), row('0@156000')),
    ).toEqual(['02', '22', '22A', '2022', '60', '22 North', 'Pier 22', 'AIS 1', '0']);
    expect(names(row('22B,22A,23,22'))).toEqual(['22', '22A', '22B', '23']);
  });

  it('of a later row replace those of an earlier one', () => {
    const { channels } = planOf(row('22,23'), row('22', { note: 'ferries' }));
    expect(channels.map(({ designator, note }) => [designator, note])).toEqual([
      ['22', 'ferries'],
      ['23', 'boats'],
    ]);
  });
});

it('the heading of a table is the heading of its plan, and its channels are the same each time', () => {
  const heading = {
    name: 'Skerra Sound',
    edition: 'invented',
    sources: ['a'],
    cautions: ['b'],
    callingChannels: ['16'],
    rules: ['c'],
  };
  const plan = expandPlan({ ...heading, evidence, rows: [row('22')] });
  expect(plan).toMatchObject({ kind: 'channel-plan', ...heading });
  expect(plan).not.toHaveProperty('rows');
  expect(plan.channels).toBe(plan.channels);
  expect(planOf(row('22')).rules).toEqual([]);
});
