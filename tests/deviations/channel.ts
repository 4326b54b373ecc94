import { expect } from 'vitest';
import { canadaPlan } from '../../src/channel/canada.ts';
import {
  barredEverywhere,
  channelFromDigits,
  channelToDigits,
  findChannel,
  frequencyOf,
  parseDesignator,
  parseInterleavedChannel,
  workingChannels,
} from '../../src/channel/index.ts';
import { internationalPlan } from '../../src/channel/international.ts';
import { unitedKingdomPlan } from '../../src/channel/united-kingdom.ts';
import { unitedStatesPlan } from '../../src/channel/united-states.ts';
import { valueOf } from '../../src/result/index.ts';

/** Designators whose use, or frequency, is marked as remembered. */
const remembered = (plan: typeof canadaPlan, fact: 'frequency' | 'use') =>
  plan.channels
    .filter(({ evidence }) => evidence[fact].basis === 'memory')
    .map(({ designator }) => designator);

export const deviations: Record<string, () => void> = {
  'D-channel-1': () => {
    expect(internationalPlan.cautions.join()).toContain('WRC-23');
    expect(remembered(internationalPlan, 'use')).toEqual(
      expect.arrayContaining(['01', '24', '60', '2006', '1078']),
    );
    expect(remembered(internationalPlan, 'frequency')).not.toContain('16');
  },
  'D-channel-2': () => {
    expect(remembered(unitedKingdomPlan, 'frequency')).toEqual(expect.arrayContaining(['0', 'M', 'M2']));
    expect(findChannel(unitedKingdomPlan, '31').ok).toBe(false);
    for (const name of ['0', 'M', 'M2'])
      expect(valueOf(findChannel(unitedKingdomPlan, name)).m1084).toBeNull();
  },
  'D-channel-3': () => {
    for (const name of ['64A', '60']) expect(findChannel(unitedStatesPlan, name).ok).toBe(false);
    expect(valueOf(findChannel(unitedStatesPlan, '17')).powerLimitW).toBe(25);
    expect(valueOf(findChannel(unitedStatesPlan, '88A')).designator).toBe('88');
  },
  'D-channel-4': () => {
    expect(canadaPlan.cautions.join()).toContain('from memory');
    expect(remembered(canadaPlan, 'use').length).toBeGreaterThan(30);
  },
  'D-channel-5': () => {
    expect(valueOf(parseInterleavedChannel('260'))).toMatchObject({
      shipKHz: '156037.5',
      certainty: 'medium',
    });
    expect(valueOf(parseInterleavedChannel('1260')).certainty).toBe('low');
    expect(parseDesignator('260').ok).toBe(false);
    expect(parseInterleavedChannel('2227')).toMatchObject({
      notices: [{}, { code: 'channel-interleaved-protected' }],
    });
  },
  'D-channel-6': () => {
    expect(channelToDigits(valueOf(parseDesignator('22A')))).toBe('901022');
    expect(channelFromDigits('900022')).toMatchObject({ value: { designator: '22' } });
  },
  'D-channel-7': () => {
    expect(channelFromDigits('910022')).toMatchObject({
      value: { designator: '1022' },
      notices: [{ code: 'channel-digits-old-form' }],
    });
    expect(channelFromDigits('920022')).toMatchObject({ value: { designator: '2022' } });
    expect(channelFromDigits('300401')).toMatchObject({ value: { kind: 'hf-channel' } });
    expect(channelFromDigits('40218750')).toMatchObject({ value: { kHz: '2187.50' } });
    expect(channelFromDigits('800012')).toMatchObject({ value: { kind: 'automatic-service' } });
  },
  'D-channel-8': () => {
    for (const text of ['1006', '2016', '1037']) expect(parseDesignator(text).ok).toBe(false);
    for (const text of ['1209', '2206']) expect(parseInterleavedChannel(text).ok).toBe(false);
    expect(frequencyOf(valueOf(parseDesignator('2006')))?.shipKHz).toBe(160900);
  },
  'D-channel-9': () => {
    expect(frequencyOf(valueOf(parseDesignator('87')))).toEqual({
      mode: 'simplex',
      shipKHz: 157375,
      coastKHz: 157375,
    });
    expect(valueOf(findChannel(internationalPlan, '1088')).designator).toBe('88');
    expect(channelToDigits(valueOf(findChannel(internationalPlan, '1088')))).toBe('900088');
  },
  'D-channel-10': () => {
    expect(workingChannels(internationalPlan, 'intership-non-commercial').ranked[0]?.designator).toBe('72');
    const { ruledOut } = workingChannels(unitedStatesPlan, 'intership-non-commercial');
    expect(ruledOut.map(({ designator }) => designator)).toContain('06');
    const safety = workingChannels(canadaPlan, 'safety').ranked;
    expect(safety.slice(0, 3).map(({ designator }) => designator)).toEqual(['16', '06', '13']);
    expect(safety.find(({ designator }) => designator === '08')?.fitness).toBe('restricted');
  },
  'D-channel-11': () => {
    expect(valueOf(findChannel(internationalPlan, '78A')).designator).toBe('1078');
    expect(valueOf(findChannel(canadaPlan, '2021')).designator).toBe('21B');
  },
  'D-channel-12': () => {
    for (const digits of ['70', '75', '76', '2006', '2087', '2088', '2027', '2028', '1024', '2086'])
      expect(barredEverywhere(digits, 'safety'), digits).not.toBeNull();
    expect(barredEverywhere('16', 'intership-commercial')).not.toBeNull();
    expect(barredEverywhere('16', 'safety')).toBeNull();
    for (const digits of ['24', '86', '1027', '2078'])
      expect(barredEverywhere(digits, 'ship-to-coast'), digits).toBeNull();
  },
};
