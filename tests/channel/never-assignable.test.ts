import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkWorkingChannel,
  findChannel,
  neverAssignable,
  planText,
  type WorkingPurpose,
} from '../../src/channel/index.ts';
import { isWorkingChannelAllowed } from '../../src/channel/working-channel.ts';
import { plans } from './plans.ts';

const purposes: readonly WorkingPurpose[] = [
  'intership-non-commercial',
  'intership-commercial',
  'intership-navigation',
  'ship-to-coast',
  'safety',
];
const ordinary = purposes.filter((purpose) => purpose !== 'safety');
const codeOf = (digits: string, purpose: WorkingPurpose) => neverAssignable(digits, purpose)?.code;
const everyNumber = [...Array(100).keys()].flatMap((number) =>
  ['', '10', '20'].map((prefix) => `${prefix}${String(number).padStart(2, '0')}`),
);

describe('channels that no call may name, in any waters', () => {
  // RR Appendix 18 notes j), n), r), w), as restated; AIS: 47 CFR 80.371(c) notes 3 and 4; ASM: WRC-15 Final
  // Acts, note z).
  it.each([
    ['70', 'channel-calls-only'],
    ['75 76', 'channel-not-to-be-named'],
    ['2087 2088 AIS1 AIS2', 'channel-data-only'],
    ['2027 2028 ASM1 ASM2', 'channel-data-only'],
    ['1024 1025 1026 1084 1085 1086 2024 2025 2026 2084 2085 2086 2006', 'channel-data-only'],
  ])('%s: %s, whatever the purpose', (names, code) => {
    for (const name of names.split(' ')) {
      for (const purpose of purposes) expect(codeOf(name, purpose), name).toBe(code);
    }
  });

  it('16 for anything but distress, urgency and safety (RR Appendix 18)', () => {
    for (const purpose of ordinary) expect(codeOf('16', purpose)).toBe('channel-distress-and-calling');
    expect(neverAssignable('16', 'safety')).toBeNull();
    expect(neverAssignable('0016', 'intership-non-commercial')).toMatchObject({
      code: 'channel-distress-and-calling',
      params: { channel: '16' },
      at: [],
      received: '16',
      clause: 'RR Appendix 18',
    });
  });

  it('says why, in the words of the plans', () => {
    const params = (name: string) => neverAssignable(name, 'intership-commercial')?.params;
    expect(params('70')).toEqual({ channel: '70' });
    expect(params('ais 1')).toEqual({
      channel: 'AIS 1',
      reason: planText('it carries automatic identification data only'),
    });
    expect(params('76')).toEqual({
      channel: '76',
      reason: planText('it guards channel 16 and carries navigation-related port traffic only'),
    });
  });

  it('says nothing against channels that are a matter of the plan', () => {
    for (const name of ['06', '13', '24', '86', '27', '1027', '87', '1088', '22', '1022', '2078', '37', 'M2'])
      expect(neverAssignable(name, 'intership-non-commercial'), name).toBeNull();
  });

  it('no plan leaves open what is barred everywhere, and the plan that has it bars it by the same code', () => {
    for (const name of everyNumber) {
      for (const purpose of purposes) {
        const bar = neverAssignable(name, purpose);
        if (bar === null) continue;
        for (const plan of plans) {
          const found = findChannel(plan, name);
          if (!found.ok) continue;
          expect(isWorkingChannelAllowed(found.value, purpose), `${plan.name} ${name}`).toBe(false);
          // Canada listens to weather on 25B, which is 2025: barred there as receive only.
          // In the United States 75 and 76 carry AIS alone.
          if (!found.value.receiveOnly && found.value.service !== 'ais')
            expect(checkWorkingChannel(found.value, purpose)[0]?.code).toBe(bar.code);
        }
      }
    }
  });

  it('passes on what is wrong with a name, and wants a purpose there is', () => {
    expect(codeOf('1016', 'safety')).toBe('channel-no-legs');
    expect(codeOf('99', 'safety')).toBe('channel-number-range');
    expect(codeOf('260', 'safety')).toBe('channel-interleaved');
    for (const given of ['chat', 'toString'])
      expect(() => neverAssignable('72', given as WorkingPurpose)).toThrow(RangeError);
    fc.assert(fc.property(fc.anything(), (input) => void neverAssignable(input as string, 'safety')));
  });
});
