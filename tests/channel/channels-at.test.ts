import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { channelsAt, channelsFor, findChannel, formatMegahertz } from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { canadaPlan, internationalPlan, plans, unitedKingdomPlan, unitedStatesPlan } from './plans.ts';

const names = (...args: Parameters<typeof channelsAt>) =>
  valueOf(channelsAt(...args)).map(({ channel, side }) => `${channel.designator} ${side}`);

const channel = (designator: string) => valueOf(findChannel(internationalPlan, designator));

describe('channelsAt', () => {
  it.each([
    '156.8',
    '156.800',
    '156,8',
    '156.8 MHz',
    '156800',
    '156800 kHz',
    '156800.0',
    '156800.0000 kHz',
    156800,
    '１５６.８',
  ])('%s is channel 16, both sides (47 CFR 80.871(d))', (frequency) =>
    expect(names(internationalPlan, frequency)).toEqual(['16 both']),
  );

  it('tells the sides of a pair', () => {
    expect(names(internationalPlan, '157.100')).toEqual(['22 ship']);
    expect(names(internationalPlan, '161.700')).toEqual(['22 coast']);
    expect(names(internationalPlan, '156.3')).toEqual(['06 ship']);
  });

  it('goes by the unit where one is named: 156 MHz is channel 0 of the United Kingdom, from memory', () => {
    expect(names(unitedKingdomPlan, '156 MHz')).toEqual(['0 both']);
    expect(names(unitedKingdomPlan, '156 kHz')).toEqual([]);
  });

  it('gives every channel on a frequency', () => {
    expect(names(unitedStatesPlan, '157.000')).toEqual(['20 ship', '1020 ship']);
    expect(names(internationalPlan, '156.950')).toEqual(['19 ship', '1019 both']);
    expect(names(canadaPlan, '161.75')).toEqual(['23 coast', '23B coast']);
  });

  it('finds nothing between channels without a tolerance, and the nearest first with one', () => {
    expect(names(internationalPlan, '156.8125')).toEqual([]);
    expect(names(internationalPlan, '156.810', { toleranceKHz: 15 })).toEqual(['16 both', '76 both']);
    expect(valueOf(channelsAt(internationalPlan, '156.7995', { toleranceKHz: 1 }))[0]?.offsetHz).toBe(500);
  });

  it('gives whole matches, the nearest first, with the distance upwards from the frequency asked for', () => {
    const matches = valueOf(channelsAt(internationalPlan, '156.820', { toleranceKHz: 20 }));
    expect(matches).toEqual([
      { kind: 'frequency-match', channel: channel('76'), side: 'both', offsetHz: 5_000 },
      { kind: 'frequency-match', channel: channel('16'), side: 'both', offsetHz: -20_000 },
    ]);
  });

  it('takes a tolerance that is undefined for none', () => {
    expect(names(internationalPlan, '156.8', { toleranceKHz: undefined })).toEqual(['16 both']);
  });

  it('finds nothing at either end of the readable range, least of all the silent side of a channel', () => {
    for (const frequency of [0, '0', 999_999, '999999'])
      expect(names(internationalPlan, frequency)).toEqual([]);
  });

  it.each([
    '',
    '156.8.0',
    'ch 16',
    '156.8 GHz',
    '-156.8',
    '1e5',
    '12345678',
    '156.8000001',
    '156800.0005 kHz',
    `156.8${' '.repeat(40)}MHz`,
    '0'.repeat(41),
  ])('refuses %j', (frequency) =>
    expect(channelsAt(internationalPlan, frequency)).toMatchObject({
      ok: false,
      issues: [{ code: 'channel-frequency-malformed' }],
    }),
  );

  it.each([156.8, Number.NaN, Number.POSITIVE_INFINITY, -5, 156_800_000])(
    'refuses the number %s: whole kilohertz wanted',
    (frequency) =>
      expect(channelsAt(internationalPlan, frequency)).toMatchObject({
        ok: false,
        issues: [{ code: 'channel-frequency-number' }],
      }),
  );

  it('throws on a tolerance that is none', () => {
    expect(() => channelsAt(internationalPlan, '156.8', { toleranceKHz: -1 })).toThrow(RangeError);
    expect(() => channelsAt(internationalPlan, '156.8', { toleranceKHz: Number.NaN })).toThrow(RangeError);
  });

  it('finds every channel of every plan by both its frequencies, in every notation', () => {
    for (const plan of plans) {
      for (const channel of plan.channels) {
        for (const kHz of [channel.shipKHz, channel.coastKHz]) {
          if (kHz === null) continue;
          for (const notation of [kHz, String(kHz), formatMegahertz(kHz)]) {
            expect(valueOf(channelsAt(plan, notation)).map((match) => match.channel)).toContain(channel);
          }
        }
      }
    }
  });

  it('nothing makes it throw', () => {
    fc.assert(
      fc.property(fc.oneof(fc.anything(), fc.string(), fc.double()), (input) => {
        expect(typeof channelsAt(internationalPlan, input as string).ok).toBe('boolean');
      }),
    );
  });
});

describe('formatMegahertz', () => {
  it('prints three decimals', () => {
    expect([156800, 157425, 5, 0, 999_999].map(formatMegahertz)).toEqual([
      '156.800',
      '157.425',
      '0.005',
      '0.000',
      '999.999',
    ]);
  });

  it.each([156.8, -1, Number.NaN, 1_000_000])('throws on %s', (kHz) =>
    expect(() => formatMegahertz(kHz)).toThrow(RangeError),
  );
});

describe('channelsFor', () => {
  it('gives first what the channel is chiefly for', () => {
    expect(channelsFor(internationalPlan, 'navigation-safety').map((channel) => channel.designator)).toEqual([
      '13',
    ]);
    expect(channelsFor(unitedStatesPlan, 'navigation-safety').map((channel) => channel.designator)).toEqual([
      '13',
      '67',
    ]);
    expect(channelsFor(unitedStatesPlan, 'weather-broadcast')).toHaveLength(7);
    expect(channelsFor(internationalPlan, 'toString' as 'dsc')).toEqual([]);
  });
});
