import { describe, expect, it } from 'vitest';
import appendix18 from '../../shared/channel/appendix-18-frequencies.json' with { type: 'json' };
import canada from '../../shared/channel/canada-frequencies.json' with { type: 'json' };
import intership from '../../shared/channel/intership.json' with { type: 'json' };
import unitedStates from '../../shared/channel/united-states-frequencies.json' with { type: 'json' };
import weather from '../../shared/channel/weather-frequencies.json' with { type: 'json' };
import {
  type Channel,
  type ChannelPlan,
  findChannel,
  frequencyOf,
  parseDesignator,
} from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { oracleFrequencies } from '../oracle/channel-frequency.ts';
import { canadaPlan, internationalPlan, kHzOf, plans, unitedKingdomPlan, unitedStatesPlan } from './plans.ts';

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
    expect(ours.sort()).toEqual([...channels].sort());
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
      expect(
        frequencyOf({ kind: 'named-channel', text: channel.designator, m1084: channel.m1084 }),
      ).toMatchObject({
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
      expect(channel.mayBeNamed).toBe(channel.notNamedBecause === null);
      if (channel.receiveOnly || channel.service === 'dsc') expect(channel.mayBeNamed).toBe(false);
      expect(channel.uses.length).toBeGreaterThan(0);
      for (const text of [
        channel.note,
        channel.caution,
        channel.powerRule,
        channel.region,
        channel.notNamedBecause,
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

  it('keeps 75 and 76 at 1 W (RR Appendix 18 note n, 47 CFR 80.373(f) note 18), 70 for calls, 16 for distress', () => {
    for (const designator of ['75', '76'])
      expect(find(plan, designator)).toMatchObject({ powerLimitW: 1, mayBeNamed: false });
    expect(find(plan, '70')).toMatchObject({ service: 'dsc', mayBeNamed: false });
    expect(find(plan, '16')).toMatchObject({ service: 'distress', mayBeNamed: true });
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
