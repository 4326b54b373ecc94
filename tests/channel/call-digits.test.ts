import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import vectors from '../../shared/channel/call-digits.json' with { type: 'json' };
import { channelNamedBy } from '../../src/channel/call-digits.ts';
import { type ChannelPlan, decodeChannel, encodeChannel, parseDesignator } from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { canadaPlan, internationalPlan, plans, unitedStatesPlan } from './plans.ts';

describe('M.493 channel information, from memory', () => {
  it.each(vectors.rows)('$channel is $digits', ({ channel, digits }) => {
    const designator = valueOf(parseDesignator(channel));
    expect(encodeChannel(designator)).toBe(digits);
    const read = valueOf(decodeChannel(digits));
    expect(read).toMatchObject({ kind: 'vhf-channel', digits, channel: null });
    expect(read.kind === 'vhf-channel' && valueOf(parseDesignator(read.designator)).m1084).toBe(
      designator.m1084,
    );
  });

  it.each(plans)('every channel of $name that has digits comes back from them', (plan) => {
    for (const channel of plan.channels) {
      if (channel.m1084 === null) {
        expect(() => encodeChannel(channel)).toThrow(RangeError);
        continue;
      }
      const digits = encodeChannel(channel);
      expect(digits).toMatch(/^90\d{4}$/);
      const read = valueOf(decodeChannel(digits, plan));
      expect(read.kind === 'vhf-channel' && read.channel).toBe(channel);
    }
  });

  it('reports 900022 as 22, and what the plan has in its place', () => {
    const read = decodeChannel('900022', unitedStatesPlan);
    expect(read).toMatchObject({
      ok: true,
      value: { designator: '22', channel: null },
      notices: [{ code: 'channel-digits-single-leg-only', suggestion: '1022' }],
    });
    expect(decodeChannel('900022', internationalPlan)).toMatchObject({
      value: { channel: { designator: '22' } },
      notices: [],
    });
  });

  it('says what a plan has in the place of a channel only where that is one leg ships may use', () => {
    const noticesOf = (digits: string, plan: ChannelPlan) => {
      const read = decodeChannel(digits, plan);
      if (!read.ok) throw new Error(read.issues[0].message);
      return read.notices;
    };
    expect(noticesOf('900022', unitedStatesPlan)).toMatchObject([
      {
        code: 'channel-digits-single-leg-only',
        grade: 'check',
        params: { channel: '22', plan: 'United States' },
        at: [],
        received: '22',
        clause: unitedStatesPlan.edition,
        suggestion: '1022',
      },
    ]);
    // A leg that was named is meant: nothing stands in its place. Ships only listen on 83B.
    const onlyUpperLegs: ChannelPlan = {
      ...canadaPlan,
      channels: canadaPlan.channels.filter(({ receiveOnly }) => receiveOnly),
    };
    expect(noticesOf('901026', unitedStatesPlan)).toMatchObject([{ code: 'channel-not-in-plan' }]);
    expect(noticesOf('900083', canadaPlan)).toMatchObject([{ suggestion: '83A' }]);
    const [without] = noticesOf('900083', onlyUpperLegs);
    expect(without).toMatchObject({ code: 'channel-not-in-plan' });
    expect(without?.suggestion).toBeUndefined();
  });

  it('finds the leg that stands in the second digit in the plan as well', () => {
    expect(decodeChannel('910022', unitedStatesPlan)).toMatchObject({
      value: { designator: '1022', channel: { designator: '1022' } },
      notices: [{ code: 'channel-digits-old-form' }],
    });
    expect(decodeChannel('920021', canadaPlan)).toMatchObject({
      value: { designator: '2021', channel: { designator: '21B' } },
      notices: [{ code: 'channel-digits-old-form' }],
    });
  });

  it('names a channel only by six digits, with no nought but that of 01 to 09 before it', () => {
    const named = ['900006', '900072', '901022', '900260', '910022', '920022', '900000'].map(channelNamedBy);
    expect(named).toEqual(['06', '72', '1022', '260', '1022', '2022', '0000']);
    // Eight digits are a frequency in steps of 10 Hz: their last or first six are no channel.
    for (const digits of ['40900072', '90007240', '40910022', '91002240', '930022', '021820'])
      expect(channelNamedBy(digits), digits).toBeNull();
  });

  it('keeps channels that no table has', () => {
    expect(decodeChannel('900099')).toMatchObject({
      ok: true,
      value: { designator: '99' },
      notices: [{ code: 'channel-number-range', received: "'0099'" }],
    });
    expect(decodeChannel('901006')).toMatchObject({
      ok: true,
      value: { designator: '1006' },
      notices: [{ code: 'channel-no-legs' }],
    });
    expect(decodeChannel('900260')).toMatchObject({
      ok: true,
      value: { designator: '260' },
      notices: [{ code: 'channel-interleaved' }],
    });
    expect(decodeChannel('900000')).toMatchObject({
      ok: true,
      value: { designator: '0000', channel: null },
    });
    expect(decodeChannel('900060', unitedStatesPlan)).toMatchObject({
      value: { designator: '60', channel: null },
      notices: [{ code: 'channel-not-in-plan' }],
    });
  });
});

describe('other elements, from memory', () => {
  it.each([
    ['', { kind: 'no-information', digits: '' }],
    ['000005', { kind: 'frequency', digits: '000005', kHz: '0.5' }],
    ['126126126', { kind: 'no-information', digits: '' }],
    ['021820', { kind: 'frequency', digits: '021820', kHz: '2182.0' }],
    ['021875', { kind: 'frequency', digits: '021875', kHz: '2187.5' }],
    ['299999', { kind: 'frequency', digits: '299999', kHz: '29999.9' }],
    ['40218750', { kind: 'frequency', digits: '40218750', kHz: '2187.50' }],
    ['300401', { kind: 'hf-channel', digits: '300401', number: '00401' }],
    ['800012', { kind: 'automatic-service', digits: '800012' }],
  ])('%j', (digits, element) => expect(valueOf(decodeChannel(digits))).toEqual(element));

  it('gives a notice where the meaning is not known', () => {
    for (const digits of ['512345', '700000', '400123']) {
      expect(decodeChannel(digits)).toMatchObject({
        value: { kind: 'unknown', digits },
        notices: [{ code: 'channel-digits-unknown' }],
      });
    }
    expect(decodeChannel('930022')).toMatchObject({
      value: { kind: 'unknown', digits: '930022' },
      notices: [{ code: 'channel-digits-second' }],
    });
  });

  it.each(['9', '90002', '9000222', '90002A', '90 00 22', '12345678', '９０００２２', '126'])(
    'refuses %j',
    (digits) =>
      expect(decodeChannel(digits)).toMatchObject({
        ok: false,
        issues: [{ code: 'channel-digits-malformed' }],
      }),
  );
});

describe('properties', () => {
  it('any six digits are read, kept as they were, and never throw', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 999_999 }),
        fc.constantFrom(undefined, ...plans),
        (number, plan) => {
          const digits = String(number).padStart(6, '0');
          const read = decodeChannel(digits, plan);
          expect(read.ok && read.value.digits).toBe(digits);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it('every channel number that is read is written back to the same digits', () => {
    for (let number = 0; number <= 9999; number += 1) {
      const digits = `90${String(number).padStart(4, '0')}`;
      const read = valueOf(decodeChannel(digits));
      if (read.kind !== 'vhf-channel') throw new Error(digits);
      const designator = parseDesignator(read.designator);
      if (designator.ok && designator.value.m1084 !== null)
        expect(encodeChannel(designator.value)).toBe(digits);
    }
  });

  it('nothing makes it throw', () => {
    fc.assert(
      fc.property(fc.oneof(fc.anything(), fc.string()), (input) => {
        expect(typeof decodeChannel(input as string, internationalPlan).ok).toBe('boolean');
      }),
    );
  });
});
