import { expect } from 'vitest';
import { emptyFields } from '../../src/call/fields.ts';
import { decodeFields, encodeFields } from '../../src/call/index.ts';
import { canadaPlan } from '../../src/channel/canada.ts';
import { decodeChannel, findChannel, workingChannels } from '../../src/channel/index.ts';
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
  'D-channel-2': () => {
    expect(remembered(unitedKingdomPlan, 'frequency')).toEqual(expect.arrayContaining(['0', 'M', 'M2']));
    expect(findChannel(unitedKingdomPlan, '31').ok).toBe(false);
    for (const name of ['0', 'M', 'M2'])
      expect(valueOf(findChannel(unitedKingdomPlan, name)).m1084).toBeNull();
  },
  'D-channel-4': () => {
    expect(canadaPlan.cautions.join()).toContain('unverified');
    expect(remembered(canadaPlan, 'use').length).toBeGreaterThan(30);
  },
  'D-channel-7': () => {
    expect(decodeChannel('910022')).toMatchObject({
      value: { designator: '1022' },
      notices: [{ code: 'channel-digits-old-form' }],
    });
    expect(decodeChannel('920022')).toMatchObject({ value: { designator: '2022' } });
    expect(decodeChannel('300401')).toMatchObject({ value: { kind: 'hf-channel' } });
    expect(decodeChannel('40218750')).toMatchObject({ value: { kHz: '2187.50' } });
    expect(decodeChannel('800012')).toMatchObject({ value: { kind: 'automatic-service' } });
    expect(decodeChannel('911022')).toMatchObject({ value: { kind: 'unknown' } });
    const older = { telecommand1: 100, receive: [91, 0, 22], transmit: [91, 0, 22], end: 117 };
    const { call } = decodeFields({ ...emptyFields, format: 120, ...older });
    expect(call).toMatchObject({ kind: 'individual-call', channel: '1022' });
    expect(encodeFields({ ...call, category: 'routine' } as typeof call).receive).toEqual([90, 10, 22]);
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
};
