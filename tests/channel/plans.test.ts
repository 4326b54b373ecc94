import { describe, expect, it } from 'vitest';
import appendix18 from '../../shared/channel/appendix-18-frequencies.json' with { type: 'json' };
import canada from '../../shared/channel/canada-frequencies.json' with { type: 'json' };
import intership from '../../shared/channel/intership.json' with { type: 'json' };
import dutch from '../../shared/channel/netherlands.json' with { type: 'json' };
import swedish from '../../shared/channel/sweden.json' with { type: 'json' };
import unitedStates from '../../shared/channel/united-states-frequencies.json' with { type: 'json' };
import weather from '../../shared/channel/weather-frequencies.json' with { type: 'json' };
import { frequencyOf } from '../../src/channel/frequency-of.ts';
import {
  type Channel,
  type ChannelPlan,
  checkWorkingChannel,
  findChannel,
  parseDesignator,
} from '../../src/channel/index.ts';
import { isWorkingChannelAllowed } from '../../src/channel/working-channel.ts';
import { valueOf } from '../../src/result/index.ts';
import { oracleFrequencies } from '../oracle/channel-frequency.ts';
import {
  canadaPlan,
  internationalPlan,
  kHzOf,
  netherlandsInlandPlan,
  netherlandsSeaPlan,
  plans,
  swedenPlan,
  unitedKingdomPlan,
  unitedStatesPlan,
} from './plans.ts';

const sides = ({ shipKHz, coastKHz }: Channel) => ({ shipKHz, coastKHz });
const find = (plan: ChannelPlan, designator: string) => valueOf(findChannel(plan, designator));

describe('47 CFR 80.871(d), 2015 edition: all 57 numbers of Appendix 18', () => {
  it('are 57', () => expect(appendix18.rows).toHaveLength(57));

  it.each(appendix18.rows)('$channel: ship $ship, coast $coast', ({ channel, ship, coast, ...row }) => {
    const published = { shipKHz: kHzOf(ship), coastKHz: kHzOf(coast) };
    // 87 and 88 were pairs in that edition: WRC-15 made them single-frequency, the upper legs are AIS 1 and AIS 2.
    const expected = 'changed' in row ? { ...published, coastKHz: published.shipKHz } : published;
    expect(sides(find(internationalPlan, channel))).toEqual(expected);
    const byNumber = frequencyOf(valueOf(parseDesignator(channel)));
    expect(byNumber?.shipKHz).toBe(expected.shipKHz);
    if (coast !== null) expect(byNumber?.coastKHz).toBe(expected.coastKHz);
    if ('changed' in row) {
      expect(find(internationalPlan, `20${channel}`).coastKHz).toBe(published.coastKHz);
    }
  });

  it.each(appendix18.rows)('$channel has the same frequencies in the United Kingdom', ({ channel }) => {
    expect(sides(find(unitedKingdomPlan, channel))).toEqual(sides(find(internationalPlan, channel)));
  });
});

describe('47 CFR 80.373(f), 80.371(c) and the Coast Guard list: the United States', () => {
  it.each(unitedStates.rows)(
    '$channel: ship $ship, coast $coast ($source)',
    ({ channel, ship, coast, source }) => {
      const found = find(unitedStatesPlan, channel);
      expect(sides(found)).toEqual({ shipKHz: kHzOf(ship), coastKHz: kHzOf(coast) });
      if (!source.startsWith('second-hand')) expect(found.evidence.frequency.basis).toBe('source');
    },
  );

  it('the plan holds these rows, the weather channels and no others', () => {
    expect(unitedStatesPlan.channels).toHaveLength(unitedStates.rows.length + weather.rows.length);
  });

  it('18 channels took four-digit names in 2016 (US Coast Guard Navigation Center)', () => {
    const renamed = unitedStatesPlan.channels.flatMap(({ m1084 }) =>
      m1084?.length === 4 && m1084.startsWith('10') ? [m1084] : [],
    );
    expect(renamed.join(' ')).toBe(
      '1001 1005 1007 1018 1019 1020 1021 1022 1023 1063 1065 1066 1078 1079 1080 1081 1082 1083',
    );
  });
});

describe('US National Weather Service: weather channels', () => {
  it.each(weather.rows)('$channel: $coast', ({ channel, coast }) => {
    for (const plan of [unitedStatesPlan, canadaPlan]) {
      expect(find(plan, channel)).toMatchObject({
        shipKHz: null,
        coastKHz: kHzOf(coast),
        mode: 'coast-broadcast',
        receiveOnly: true,
      });
    }
  });
});

describe('Canadian sources: the rows that were read', () => {
  it.each(canada.rows)('$channel: ship $ship, coast $coast ($source)', ({ channel, ship, coast }) => {
    const found = find(canadaPlan, channel);
    expect(sides(found)).toEqual({ shipKHz: kHzOf(ship), coastKHz: kHzOf(coast) });
    expect(found.evidence.frequency.basis).toBe('source');
  });
});

describe('published lists of channels for talk between ships', () => {
  it.each(intership.lists)('$plan, $talk ($source)', ({ plan: name, talk, channels }) => {
    const plan = plans.find((candidate) => candidate.name === name) as ChannelPlan;
    const fit = (channel: Channel) => {
      const { nonCommercial, commercial } = channel.intership;
      if (talk === 'any') return channel.uses.includes('intership');
      if (talk === 'preferred or allowed')
        return nonCommercial === 'preferred' || nonCommercial === 'allowed';
      if (talk === 'non-commercial, preferred') return nonCommercial === 'preferred';
      return commercial === 'preferred' || commercial === 'allowed';
    };
    const ours = plan.channels.filter(fit).map((channel) => channel.designator);
    const listed = channels.map((name) => find(plan, name).designator);
    expect(ours.sort()).toEqual(listed.sort());
  });
});

describe.each(plans)('$name', (plan) => {
  it('frequencies follow from the numbers, by Appendix 18 written out', () => {
    for (const channel of plan.channels) {
      if (channel.m1084 === null) continue;
      const oracle = oracleFrequencies(channel.m1084);
      if (channel.shipKHz !== null)
        expect([channel.designator, channel.shipKHz]).toEqual([channel.designator, oracle?.ship]);
      if (channel.coastKHz !== null)
        expect([channel.designator, channel.coastKHz]).toEqual([channel.designator, oracle?.coast]);
      expect(frequencyOf(channel)).toMatchObject({
        shipKHz: oracle?.ship,
        coastKHz: oracle?.coast,
      });
    }
  });

  it('names and aliases are unique, well formed and lead back to their channel', () => {
    const names = plan.channels.flatMap((channel) => [channel.designator, ...channel.aliases]);
    expect(names).toEqual([...new Set(names)]);
    for (const channel of plan.channels) {
      for (const name of [channel.designator, ...channel.aliases]) {
        const parsed = valueOf(parseDesignator(name));
        expect(findChannel(plan, name), name).toMatchObject({ ok: true });
        expect(find(plan, name)).toBe(channel);
        expect(valueOf(findChannel(plan, parsed))).toBe(channel);
      }
    }
  });

  it('survives JSON and structured clone', () => {
    expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
    expect(structuredClone(plan)).toEqual(plan);
  });

  it('gives the same channels each time', () => {
    expect(plan.channels).toBe(plan.channels);
  });

  it('says the same thing in all fields of a channel', () => {
    for (const channel of plan.channels) {
      const { shipKHz, coastKHz, mode } = channel;
      expect(channel.plan).toBe(plan.name);
      expect(shipKHz ?? coastKHz).toSatisfy(Number.isInteger);
      expect(channel.receiveOnly).toBe(shipKHz === null);
      expect(channel.powerLimitW === null).toBe(shipKHz === null);
      expect(channel.transmitters).toBe(
        shipKHz === null ? 'coast' : coastKHz === null ? 'ships' : 'ships-and-coast',
      );
      expect(mode === 'duplex').toBe(shipKHz !== null && coastKHz !== null && coastKHz - shipKHz === 4600);
      if (mode === 'simplex' && shipKHz !== null && coastKHz !== null) expect(coastKHz).toBe(shipKHz);
      expect(channel.assignable).toBe(channel.notAssignableReason === null);
      if (channel.receiveOnly || channel.service === 'dsc') expect(channel.assignable).toBe(false);
      expect(channel.uses.length).toBeGreaterThan(0);
      for (const text of [
        channel.note,
        channel.caution,
        channel.powerRule,
        channel.region,
        channel.notAssignableReason,
      ]) {
        if (text !== null) expect(text).toMatch(/^\S.*[^.\s]$/);
      }
    }
  });

  it('is in order of number', () => {
    const numbers = plan.channels.flatMap((channel) =>
      /^\d/.test(channel.designator) && channel.m1084 ? [Number(channel.m1084.slice(-2))] : [],
    );
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
  });

  it('keeps 75 and 76 at 1 W or for AIS (RR Appendix 18 note n, 47 CFR 80.393), 70 for calls, 16 for distress', () => {
    for (const designator of ['75', '76']) {
      const kept = plan === unitedStatesPlan ? { service: 'ais' } : { powerLimitW: 1 };
      expect(find(plan, designator)).toMatchObject({ ...kept, assignable: false });
    }
    expect(find(plan, '70')).toMatchObject({ service: 'dsc', assignable: false });
    expect(find(plan, '16')).toMatchObject({ service: 'distress', assignable: true });
  });
});

describe('Netherlands, Regeling 2015, annex 2 section 2: every row', () => {
  it('66 rows', () => expect(dutch.rows).toHaveLength(66));

  it.each(dutch.rows)('$channel', (row) => {
    const published = { shipKHz: kHzOf(row.ship), coastKHz: kHzOf(row.coast) };
    const [sea, inland] = [netherlandsSeaPlan, netherlandsInlandPlan].map((plan) =>
      findChannel(plan, row.channel),
    );
    expect([sea?.ok, inland?.ok]).toEqual([row.waters !== 'inland', row.waters !== 'sea']);
    if (sea?.ok) {
      const { uses, note, mode } = sea.value;
      const fishing = row.notes.includes(29) && row.channel.length === 3;
      expect(sides(sea.value)).toEqual(fishing ? { ...published, coastKHz: null } : published);
      // 13 is for navigation first: common practice, no source for the order of the uses.
      expect(uses.filter((use) => use !== 'navigation-safety')).toEqual(row.seaUses);
      expect(note.includes('also on one frequency') || note.includes('radio-medical')).toBe(
        row.oneFrequencyToo,
      );
      expect(mode === 'duplex').toBe(row.coast !== null && row.coast !== row.ship);
    }
    if (inland?.ok) {
      const { uses, note, powerLimitW, powerRule, automaticPowerReduction } = inland.value;
      expect(sides(inland.value)).toEqual(published);
      expect(uses).toEqual(expect.arrayContaining(row.inlandColumns));
      expect(uses.includes('vessel-traffic')).toBe(row.notes.includes(4));
      const [least, most] = row.inlandWatts;
      expect(powerLimitW).toBe(most ?? 25);
      if (typeof least === 'number') expect(powerRule).toContain('0.5 to 1 W');
      expect(automaticPowerReduction).toBe(row.automaticReduction === true);
      for (const number of row.notes.filter((each) =>
        [4, 5, 6, 7, 8, 9, 10, 11, 14, 16, 17, 18, 19, 20, 21].includes(each),
      ))
        expect(note, `note ${number}`).toMatch(new RegExp(`\\(notes? .*\\b${number}\\b.*\\)`));
    }
  });

  it('no plan has a row more', () => {
    const rowsOf = (waters: string) =>
      dutch.rows.filter((row) => row.waters === waters || row.waters === 'both');
    expect(netherlandsSeaPlan.channels).toHaveLength(rowsOf('sea').length);
    expect(netherlandsInlandPlan.channels).toHaveLength(rowsOf('inland').length);
  });

  it('19 channels are designated for traffic guidance (note 4), 5 for bridges and locks (note 17)', () => {
    expect(dutch.rows.filter(({ notes }) => notes.includes(4))).toHaveLength(19);
    expect(dutch.rows.filter(({ notes }) => notes.includes(17))).toHaveLength(5);
  });

  it('note 1 puts every numbered voice channel but 16 in one of its two power lists', () => {
    const automatic = netherlandsInlandPlan.channels.filter((channel) => channel.automaticPowerReduction);
    expect(automatic.map(({ designator }) => designator).sort()).toEqual(dutch.automaticReductionList);
    for (const { designator, service, powerRule } of netherlandsInlandPlan.channels)
      if (/^\d\d$/.test(designator) && service === 'voice')
        expect(powerRule, designator).toMatch(/^0\.5 to 1 W.*\(note 1\)$/);
    expect(find(netherlandsInlandPlan, '16')).toMatchObject({ powerLimitW: 25, powerRule: null });
  });

  it('every pair differs by 4.600 MHz, and numbered rows agree with Appendix 18', () => {
    for (const { channel, ship, coast } of dutch.rows) {
      if (coast !== null && coast !== ship)
        expect((kHzOf(coast) as number) - (kHzOf(ship) as number)).toBe(4600);
      const row = appendix18.rows.find((each) => each.channel === channel);
      if (row) expect([channel, ship]).toEqual([channel, row.ship]);
      if (row && !('changed' in row)) expect([channel, coast]).toEqual([channel, row.coast]);
    }
  });

  it('inland no call may name a channel for talk, and one for safety only with the waters named (note 9)', () => {
    for (const channel of netherlandsInlandPlan.channels) {
      for (const purpose of ['intership-non-commercial', 'intership-commercial', 'ship-to-coast'] as const)
        expect(isWorkingChannelAllowed(channel, purpose), channel.designator).toBe(false);
    }
    const talk = checkWorkingChannel(find(netherlandsInlandPlan, '77'), 'intership-non-commercial');
    expect(talk).toMatchObject([{ code: 'channel-selective-calls-restricted' }]);
    const [caution] = checkWorkingChannel(find(netherlandsInlandPlan, '16'), 'safety');
    expect(caution).toMatchObject({
      code: 'channel-safety-calls-only',
      grade: 'caution',
      params: {
        rule: {
          message: expect.stringContaining(
            'Waddenzee, IJsselmeer, Oosterschelde, Westerschelde and Eems-Dollard',
          ),
        },
      },
    });
    expect(isWorkingChannelAllowed(find(netherlandsSeaPlan, '77'), 'intership-non-commercial')).toBe(true);
  });

  it('calls on 10, with 13 as fallback (notes 7 and 8), and at sea on 16', () => {
    expect(netherlandsInlandPlan.callingChannels).toEqual(['10', '13']);
    expect(netherlandsSeaPlan.callingChannels).toEqual(['16']);
    for (const plan of plans)
      for (const name of plan.callingChannels) expect(findChannel(plan, name).ok).toBe(true);
  });

  it('prints the date of its edition', () => {
    for (const plan of [netherlandsSeaPlan, netherlandsInlandPlan])
      expect(plan.edition).toContain('26 February 2015');
    expect(swedenPlan.edition).toContain('2003:389');
  });
});

describe('PTS licence terms: the five channels of Sweden', () => {
  it.each(swedish.rows)('$channel: $frequency, $users', ({ channel, frequency, users }) => {
    const found = find(swedenPlan, channel);
    expect(found).toMatchObject({ shipKHz: kHzOf(frequency), transmitters: 'ships', assignable: false });
    expect(found.note).toContain(users);
    expect(found.region).toContain('Swedish waters');
    expect(found.evidence.frequency.source).toContain('PTS');
  });

  it('come on top of the international plan, and nothing else does', () => {
    const names = ({ channels }: ChannelPlan) => channels.map(({ designator }) => designator);
    expect(names(swedenPlan)).toEqual([
      ...names(internationalPlan),
      ...swedish.rows.map(({ channel }) => channel),
    ]);
  });

  it('F2 and F3 are the Dutch 55L and 56L', () => {
    expect(find(swedenPlan, 'F2').shipKHz).toBe(find(netherlandsSeaPlan, '55L').shipKHz);
    expect(find(swedenPlan, 'F3').shipKHz).toBe(find(netherlandsSeaPlan, '56L').shipKHz);
  });
});

describe('the United States as of November 2024', () => {
  it('75 and 76 are AIS 3 and AIS 4, no voice since 14 June 2017 (47 CFR 80.393, 82 FR 27213)', () => {
    for (const [number, name] of [
      ['75', 'AIS 3'],
      ['76', 'AIS 4'],
    ] as const) {
      const channel = find(unitedStatesPlan, number);
      expect(channel).toMatchObject({ designator: name, service: 'ais', uses: ['ais'], assignable: false });
      expect(channel.evidence.use.source).toContain('80.393');
    }
  });

  it('four digits first, the letter as the other name (US Coast Guard MSIB 07-24)', () => {
    expect(find(unitedStatesPlan, '22A')).toMatchObject({ designator: '1022', aliases: ['22A'] });
    expect(find(unitedStatesPlan, '1022')).toBe(find(unitedStatesPlan, '22A'));
  });

  it('digital messages may share voice channels but these (47 CFR 80.364, 81 FR 90747)', () => {
    const barred = '01A 63A 05A 65A 06 66A 67 70 12 13 73 14 74 15 75 16 76 17 77 20A 22A AIS1 AIS2'.split(
      ' ',
    );
    for (const name of barred) expect(find(unitedStatesPlan, name).dataMessages, name).toBe('prohibited');
    for (const name of ['68', '69', '72', '07A', '20', '24'])
      expect(find(unitedStatesPlan, name).dataMessages).toBe('permitted');
    const prohibited = unitedStatesPlan.channels.filter(({ dataMessages }) => dataMessages === 'prohibited');
    expect(prohibited).toHaveLength(barred.length);
  });

  it('vessel traffic on 13 at Louisville and Valdez, on 73 at Port Arthur (33 CFR 161.12(c))', () => {
    expect(find(unitedStatesPlan, '13').note).toMatch(/vessel traffic at Louisville and Valdez/);
    expect(find(unitedStatesPlan, '73').note).toMatch(/vessel traffic at Port Arthur/);
    for (const name of ['13', '73']) expect(find(unitedStatesPlan, name).uses).toContain('vessel-traffic');
  });

  it('pair 25 not assignable in areas 10 to 42; no channel is said to end in 2030 (47 CFR 80.371(c))', () => {
    expect(find(unitedStatesPlan, '25').region).toContain('areas 10 to 42');
    expect(JSON.stringify(unitedStatesPlan.channels)).not.toContain('2030');
  });

  it('64A and 60 are in no rule (47 CFR 80.371(c), 80.373(f)), and 17 has no limit of its own', () => {
    for (const name of ['64A', '60']) expect(findChannel(unitedStatesPlan, name).ok).toBe(false);
    expect(find(unitedStatesPlan, '17').powerLimitW).toBe(25);
  });

  it('coast stations 50 W, 10 W on 13 and 67 (47 CFR 80.215)', () => {
    expect(find(unitedStatesPlan, '22A').coastPowerLimitW).toBe(50);
    for (const name of ['13', '67'])
      expect(find(unitedStatesPlan, name)).toMatchObject({
        coastPowerLimitW: 10,
        automaticPowerReduction: true,
      });
    for (const name of ['08', 'WX1', 'AIS 1', '21A'])
      expect(find(unitedStatesPlan, name).coastPowerLimitW).toBeNull();
  });

  it('13 and 67 up to 25 W by override and on hand-helds; 71 1 W and 10 W at Seattle (47 CFR 80.215(g)(4), 80.373(f) note 18)', () => {
    const watts = (name: string) =>
      find(unitedStatesPlan, name).conditionalPowerLimits.map((limit) => limit.watts);
    expect(watts('13')).toEqual([25, 25]);
    expect(watts('71')).toEqual([1, 10]);
  });
});

describe('Appendix 18 notes of WRC-15', () => {
  it.each([
    ['24', '1 January 2017', 'w)'],
    ['27', '1 January 2019', 'z)'],
    ['87', '1 January 2019', 'zz)'],
  ])('%s since %s, note %s', (name, date, letter) => {
    const { note, evidence } = find(internationalPlan, name);
    expect(note).toContain(date);
    expect(evidence.use.source).toContain(letter);
  });

  it('13 also by national rule (k), 75 and 76 for AIS to satellites (s), 2006 at 100 mW and 1 m (r)', () => {
    expect(find(internationalPlan, '13').note).toContain('where a national rule says so');
    expect(find(internationalPlan, '75').uses).toContain('ais');
    expect(find(internationalPlan, '2006')).toMatchObject({
      powerLimitW: 0.1,
      powerRule: '100 mW e.i.r.p., aerial at most 1 m above the sea',
    });
  });
});

describe('national rules cite their own country', () => {
  it.each(plans)('$name', (plan) => {
    const foreign = plan === unitedStatesPlan ? /Ofcom|ISED|PTS/ : /CFR|FCC|US |United States/;
    for (const { designator, evidence } of plan.channels)
      for (const { source } of Object.values(evidence)) expect(source, designator).not.toMatch(foreign);
    if (plan !== internationalPlan) expect(plan.sources.join()).not.toMatch(foreign);
  });

  it('Canada broadcasts safety messages on 83B as on 21B', () => {
    for (const name of ['21B', '83B']) expect(find(canadaPlan, name).uses).toContain('safety-broadcast');
  });
});

describe('power and silence, as published', () => {
  it('United States 13 and 67 drop to 1 W (47 CFR 80.215(g)), 77 as well (80.373(f) note 4)', () => {
    for (const designator of ['13', '67', '77'])
      expect(find(unitedStatesPlan, designator).powerLimitW).toBe(1);
  });

  it('United States 15 has a blank ship column (47 CFR 80.373(f) note 13)', () => {
    expect(find(unitedStatesPlan, '15')).toMatchObject({ receiveOnly: true, powerLimitW: null });
  });

  it('15 and 17 are limited to 1 W on board (RR Appendix 18 note g)', () => {
    for (const designator of ['15', '17']) {
      expect(find(internationalPlan, designator)).toMatchObject({
        powerLimitW: 1,
        evidence: { power: { basis: 'source' } },
      });
    }
  });
});

describe('a plan is the same for everybody', () => {
  it.each(plans)('nothing of $name can be changed', (plan) => {
    const [channel] = plan.channels as Channel[];
    expect(() => (plan.channels as Channel[]).reverse()).toThrow(TypeError);
    expect(() => (plan.channels as Channel[]).push(channel as Channel)).toThrow(TypeError);
    expect(() => Object.assign(plan, { name: 'other' })).toThrow(TypeError);
    expect(() => Object.assign(plan, { channels: [] })).toThrow(TypeError);
    const frozen = (value: unknown): boolean =>
      typeof value !== 'object' ||
      value === null ||
      (Object.isFrozen(value) && Object.values(value).every((part) => frozen(part)));
    expect(frozen(plan)).toBe(true);
    expect(structuredClone(plan)).toEqual(plan);
  });
});
