import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import vectors from '../../shared/channel/interleaved.json' with { type: 'json' };
import { findChannel, parseInterleavedChannel } from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { plans } from './plans.ts';

const kHz = (megahertz: string) => `${megahertz.slice(0, 3)}${megahertz.slice(4, 7)}.${megahertz.slice(7)}`;

describe('12.5 kHz channels, M.1084 Annex 4 from memory', () => {
  it.each(vectors.rows)('$channel: $ship / $coast', ({ channel, ship, coast }) => {
    const read = valueOf(parseInterleavedChannel(channel));
    if (ship !== null) expect(read.shipKHz).toBe(kHz(ship));
    if (coast !== null) expect(read.coastKHz).toBe(kHz(coast));
    expect(read.certainty).toBe(channel.length === 3 ? 'medium' : 'low');
  });

  it.each([
    // A pair, and one leg of it alone.
    ['260', '260', '60', 'as-listed', '156037.5', '160637.5', 'medium'],
    ['1260', '1260', '60', 'ship', '156037.5', '156037.5', 'low'],
    ['2260', '2260', '60', 'coast', '160637.5', '160637.5', 'low'],
    // Above a single-frequency channel: one frequency as well.
    ['209', '209', '09', 'as-listed', '156462.5', '156462.5', 'medium'],
    // As people write it.
    ['ch 260', '260', '60', 'as-listed', '156037.5', '160637.5', 'medium'],
    ['Channel 260', '260', '60', 'as-listed', '156037.5', '160637.5', 'medium'],
    ['CH260', '260', '60', 'as-listed', '156037.5', '160637.5', 'medium'],
    ['0260', '260', '60', 'as-listed', '156037.5', '160637.5', 'medium'],
  ])('%s is %s, above %s, %s', (input, text, above, leg, shipKHz, coastKHz, certainty) =>
    expect(valueOf(parseInterleavedChannel(input))).toEqual({
      kind: 'interleaved-channel',
      text,
      above,
      leg,
      shipKHz,
      coastKHz,
      certainty,
    }),
  );

  it.each(['260', '0260'])('%s: the notice has the same name as the channel', (input) =>
    expect(parseInterleavedChannel(input)).toMatchObject({
      notices: [
        {
          code: 'channel-interleaved-unsure',
          message: 'Channel 260 is read by a numbering of 12.5 kHz channels that is not confirmed',
          at: [],
          clause: 'ITU-R M.1084 Annex 4, from memory',
        },
      ],
    }),
  );

  it('says which channel it lies beside', () => {
    const read = parseInterleavedChannel('265');
    expect(read.ok && read.notices[1]).toEqual({
      code: 'channel-interleaved-protected',
      message: 'Channel 265 lies beside channel 06, which 12.5 kHz working must leave in peace',
      at: [],
      clause: 'RR Appendix 18 note e)',
    });
  });

  const codes = (input: string) => {
    const read = parseInterleavedChannel(input);
    return read.ok && read.notices.map((notice) => notice.code);
  };

  it('does not warn on an upper leg alone, 4.6 MHz away from the channels to protect there', () => {
    expect(codes('1265')).toEqual(['channel-interleaved-unsure', 'channel-interleaved-protected']);
    expect(codes('2265')).toEqual(['channel-interleaved-unsure']);
  });

  it('always says that the numbering is not confirmed', () => {
    expect(parseInterleavedChannel('260')).toMatchObject({
      notices: [{ code: 'channel-interleaved-unsure' }],
    });
  });

  // 161.975 and 162.025 MHz (47 CFR 80.371(c) notes 3 and 4, 2015 edition); that note e) names them is from memory.
  it.each([
    ['227', 'AIS 1'],
    ['2227', 'AIS 1'],
    ['2287', 'AIS 1'],
    ['228', 'AIS 2'],
    ['2228', 'AIS 2'],
  ])('%s lies beside %s', (input, name) => {
    const read = parseInterleavedChannel(input);
    expect(read.ok && read.notices[1]).toEqual({
      code: 'channel-interleaved-protected',
      message: `Channel ${input} lies beside channel ${name}, which 12.5 kHz working must leave in peace`,
      at: [],
      clause: 'RR Appendix 18 note e), from memory',
    });
  });

  it.each(['1227', '287', '1287', '1228', '286', '2286'])(
    '%s lies beside neither of the two AIS channels',
    (input) => expect(codes(input)).toEqual(['channel-interleaved-unsure']),
  );

  it('warns beside 06, 13, 15, 16, 17, 70, AIS 1 and AIS 2 (RR Appendix 18 note e)', () => {
    const warned = [...Array(88).keys()].flatMap((number) => {
      const read = parseInterleavedChannel(`2${String(number).padStart(2, '0')}`);
      return read.ok && read.notices.some((notice) => notice.code === 'channel-interleaved-protected')
        ? [number]
        : [];
    });
    // Below and above each: 65|06|66, 72|13|73, 74|15|75, 75|16|76, 76|17|77, 10|70|11.
    // With the upper legs: 2027|AIS 1|2028|AIS 2.
    expect(warned).toEqual([6, 10, 13, 15, 16, 17, 27, 28, 65, 70, 72, 74, 75, 76]);
  });

  it.each([
    ['2209', 'coast', '209'],
    ['1209', 'ship', '209'],
    ['2206', 'coast', '206'],
    ['1270', 'ship', '270'],
  ])('refuses %s, one leg of a channel with one frequency, as 1009 is refused', (input, leg, suggestion) =>
    expect(parseInterleavedChannel(input)).toEqual({
      ok: false,
      issues: [
        {
          code: 'channel-no-legs',
          message: `Channel ${suggestion} has a single frequency: there is no ${leg} leg for '${input}' to name`,
          at: [],
          expected: suggestion,
          received: `'${input}'`,
          clause: 'ITU-R M.1084 Annex 4',
          suggestion,
        },
      ],
    }),
  );

  it.each(['06', '288', '2088', '229', '200', '3260', '26', '', null, 260])('refuses %j', (input) =>
    expect(parseInterleavedChannel(input)).toMatchObject({
      ok: false,
      issues: [{ code: 'channel-interleaved-malformed' }],
    }),
  );

  it('stands in no plan', () => {
    for (const plan of plans) {
      for (const { channel } of vectors.rows) expect(findChannel(plan, channel).ok).toBe(false);
    }
  });

  it('nothing makes it throw', () => {
    fc.assert(
      fc.property(fc.oneof(fc.anything(), fc.string()), (input) => void parseInterleavedChannel(input)),
    );
  });
});
