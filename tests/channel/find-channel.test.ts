import { describe, expect, it } from 'vitest';
import { isPlan } from '../../src/channel/find-channel.ts';
import {
  type Channel,
  type ChannelPlan,
  channelsAt,
  decodeChannel,
  findChannel,
} from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { canadaPlan, internationalPlan, plans, unitedKingdomPlan, unitedStatesPlan } from './plans.ts';

const issuesOf = (...args: Parameters<typeof findChannel>) => {
  const found = findChannel(...args);
  if (found.ok) throw new Error(`${found.value.designator} was found`);
  return found.issues;
};

describe('findChannel', () => {
  it("takes a name as a plan of one's own writes it (invented)", () => {
    const [channel] = internationalPlan.channels as [Channel];
    const own: ChannelPlan = {
      ...internationalPlan,
      channels: [{ ...channel, designator: 'Harbour A', aliases: [] }],
    };
    expect(findChannel(own, 'Harbour A')).toEqual({ ok: true, value: own.channels[0], notices: [] });
    expect(valueOf(findChannel(own, ' harbour  a '))).toBe(own.channels[0]);
  });

  it('finds one channel under all its names', () => {
    for (const name of ['22A', '22 a', '1022', 'ch 22A', 'VHF 1022']) {
      expect(valueOf(findChannel(unitedStatesPlan, name)).designator).toBe('1022');
    }
    expect(valueOf(findChannel(unitedKingdomPlan, '37A')).designator).toBe('M');
    expect(valueOf(findChannel(canadaPlan, 'WX8')).designator).toBe('21B');
    expect(valueOf(findChannel(internationalPlan, '2087')).designator).toBe('AIS 1');
  });

  it('tells 22A, the leg, from 22, the pair (47 CFR 80.871(d), 80.373(f))', () => {
    const [issue] = issuesOf(internationalPlan, '22A');
    expect(issue).toMatchObject({
      code: 'channel-not-in-plan',
      received: '22A',
      params: {
        channel: '22A',
        plan: 'International',
        reading: {
          code: 'channel-by-number-leg',
          params: { leg: 'ship', number: '22', ship: '157.100' },
        },
        there: [
          {
            params: {
              channel: '22',
              frequencies: {
                code: 'channel-frequency-two',
                params: { ship: '157.100', coast: '161.700' },
              },
            },
          },
        ],
      },
    });
    expect(issue).not.toHaveProperty('suggestion');
  });

  it('offers the leg to someone who names a pair the plan has not', () => {
    const [issue] = issuesOf(unitedStatesPlan, '22');
    expect(issue.suggestion).toBe('1022');
    expect(issue.params).toMatchObject({
      there: [{ params: { channel: '1022', frequencies: { params: { ship: '157.100' } } } }],
    });
    expect(issuesOf(canadaPlan, '21')[0].suggestion).toBe('21A');
  });

  it('names the channel in the plans it is looked up in', () => {
    const issues = issuesOf(internationalPlan, '1022', { elsewhere: plans });
    expect(issues.map((issue) => issue.code)).toEqual([
      'channel-not-in-plan',
      'channel-elsewhere',
      'channel-elsewhere',
    ]);
    expect(issues[1]?.params).toMatchObject({
      channel: '1022',
      plan: 'United States',
      frequencies: { params: { ship: '157.100' } },
      note: { message: expect.stringMatching(/^Coast Guard liaison/) },
    });
  });

  it('gives a channel elsewhere that is between ships alone its one frequency (RA 264: 72)', () => {
    const without = { ...internationalPlan, channels: [] };
    expect(issuesOf(without, '72', { elsewhere: [unitedKingdomPlan] })[1]?.params).toMatchObject({
      frequencies: { code: 'channel-frequency-one', params: { ship: '156.625' } },
    });
  });

  it.each([
    [unitedStatesPlan, 'M2', { code: 'channel-by-name', params: { initial: 'M' } }],
    [unitedStatesPlan, 'P4', { code: 'channel-by-name', params: { initial: 'P' } }],
    [internationalPlan, '0', { code: 'channel-by-name', params: { initial: '0' } }],
    [internationalPlan, 'L2', { code: 'channel-by-name', params: { initial: 'L' } }],
    [internationalPlan, 'F3', { code: 'channel-by-name', params: { initial: 'F' } }],
    [unitedKingdomPlan, 'WX1', { code: 'channel-by-name', params: { initial: 'W' } }],
    [
      unitedStatesPlan,
      '60',
      { code: 'channel-by-number-two', params: { ship: '156.025', coast: '160.625' } },
    ],
  ])('explains what a foreign name is', (plan, name, reading) => {
    expect(issuesOf(plan, name)[0].params).toMatchObject({ plan: plan.name, reading });
  });

  it.each([
    [unitedStatesPlan, 'ASM 1'],
    [internationalPlan, '42'],
  ])('says no more where the name gives nothing', (plan, name) => {
    expect(issuesOf(plan, name)[0].params).toEqual({ channel: name, plan: plan.name });
  });

  it('finds 1087 in the United States', () => {
    expect(findChannel(unitedStatesPlan, '1087').ok).toBe(true);
  });

  it.each([undefined, null, {}, { channels: {} }, 'Canada', 7])(
    'gives an issue where the plan is %j',
    (plan) => {
      const noPlan = { code: 'channel-no-plan' };
      expect(findChannel(plan as ChannelPlan, '22A')).toMatchObject({ ok: false, issues: [noPlan] });
      expect(channelsAt(plan as ChannelPlan, '156.8')).toMatchObject({ ok: false, issues: [noPlan] });
      expect(
        issuesOf(internationalPlan, '22A', { elsewhere: [plan as ChannelPlan, canadaPlan] }),
      ).toMatchObject([{ code: 'channel-not-in-plan' }, { code: 'channel-elsewhere' }]);
      if (plan !== undefined)
        expect(decodeChannel('900072', plan as ChannelPlan)).toMatchObject({
          value: { digits: '900072', designator: '72', channel: null },
          notices: [noPlan],
        });
    },
  );

  it('takes options that are missing in any way', () => {
    for (const options of [null, {}, { elsewhere: undefined }, { elsewhere: null }, { elsewhere: 5 }, 'x'])
      expect(issuesOf(internationalPlan, '22A', options as unknown as undefined)).toHaveLength(1);
  });

  it("finds what was added to a plan of one's own after a look-up (invented)", () => {
    const [channel] = internationalPlan.channels as [Channel];
    const channels: Channel[] = [];
    const own: ChannelPlan = { ...internationalPlan, channels };
    expect(findChannel(own, 'Harbour A').ok).toBe(false);
    channels.push({ ...channel, designator: 'Harbour A', aliases: [] });
    expect(valueOf(findChannel(own, 'Harbour A'))).toBe(channels[0]);
  });

  it('finds the first of two channels with one name, in a plan that nobody checked (invented)', () => {
    const [one, other] = internationalPlan.channels as [Channel, Channel];
    const own = { ...internationalPlan, channels: [one, { ...other, designator: one.designator }] };
    expect(valueOf(findChannel(own, one.designator))).toBe(one);
  });

  it('finds what was changed in a plan of which a part is frozen (invented)', () => {
    const [channel] = internationalPlan.channels as [Channel];
    const pier = { ...channel, designator: 'Pier', aliases: [] };
    const channels: Channel[] = [];
    const frozenHeading = Object.freeze({ ...internationalPlan, channels });
    expect(findChannel(frozenHeading, 'Pier').ok).toBe(false);
    channels.push(pier);
    expect(valueOf(findChannel(frozenHeading, 'Pier'))).toBe(pier);

    const frozenList = { ...internationalPlan, channels: Object.freeze([pier]) };
    expect(findChannel(frozenList, 'Pier').ok).toBe(true);
    frozenList.channels = Object.freeze([]);
    expect(findChannel(frozenList, 'Pier').ok).toBe(false);
  });

  it('looks through the channels of a frozen plan once', () => {
    let read = 0;
    const plan: ChannelPlan = Object.freeze({
      ...internationalPlan,
      get channels() {
        read += 1;
        return internationalPlan.channels;
      },
    });
    findChannel(plan, '72');
    const once = read;
    for (const name of ['06', '77']) expect(findChannel(plan, name).ok).toBe(true);
    expect(read).toBe(once);
  });

  it('takes for a plan what has the fields that are read, and nothing else', () => {
    const [channel] = internationalPlan.channels as [Channel];
    const having = (change: object) => ({ ...internationalPlan, channels: [{ ...channel, ...change }] });
    expect(isPlan(having({}))).toBe(true);
    for (const change of [
      { designator: undefined },
      { designator: 72 },
      { aliases: undefined },
      { aliases: [72] },
      { uses: undefined },
      { uses: 'intership' },
      { evidence: undefined },
      { evidence: {} },
      { intership: undefined },
      { intership: {} },
    ]) {
      const plan = having(change) as unknown as ChannelPlan;
      expect(isPlan(plan), JSON.stringify(change)).toBe(false);
      expect(findChannel(plan, '72')).toMatchObject({ issues: [{ code: 'channel-plan-incomplete' }] });
      expect(findChannel(plan, channel.designator)).toMatchObject({ ok: false });
    }
    for (const given of [null, undefined, 72, { channels: [null] }]) expect(isPlan(given)).toBe(false);
  });

  it('gives an issue where the plan or the name throws when it is looked at', () => {
    const odd = {
      get text(): string {
        throw new Error('not now');
      },
    } as unknown as string;
    expect(issuesOf(internationalPlan, odd)[0].code).toBe('channel-not-text');
    const hostile = {
      get channels(): Channel[] {
        throw new Error('not now');
      },
    } as unknown as ChannelPlan;
    expect(isPlan(hostile)).toBe(false);
    expect(findChannel(hostile, '72')).toMatchObject({ ok: false, issues: [{ code: 'channel-no-plan' }] });
  });

  it('passes on what is wrong with a name', () => {
    expect(issuesOf(internationalPlan, '1016')[0].code).toBe('channel-no-legs');
    expect(issuesOf(internationalPlan, 'toString')[0].code).toBe('channel-malformed');
    expect(issuesOf(internationalPlan, '156.625 MHz')[0].code).toBe('channel-is-frequency');
  });
});
