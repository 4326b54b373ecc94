import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Call, decodeFields, encodeFields, natures, reasons } from '../../src/call/index.ts';
import { categories, firstTelecommands, secondTelecommands } from '../../src/call/symbol.ts';
import { sampleCalls } from './sample-calls.ts';

// Values are random; what is held is that composing and reading are each other's opposite.
const digits = (count: number) => fc.stringMatching(new RegExp(`^\\d{${count}}$`));
const identity = fc.option(digits(9));
const name = <Name extends string>(table: { readonly rows: readonly (readonly [number, Name])[] }) =>
  fc.constantFrom(...table.rows.map((row) => row[1]));
const whole = (most: number) => fc.integer({ min: 0, max: most });
const position = fc.option(
  fc.record(
    {
      kind: fc.constant('reported-position' as const),
      latitude: fc.record({ hemisphere: fc.constantFrom('N', 'S'), degrees: whole(89), minutes: whole(59) }),
      longitude: fc.record({
        hemisphere: fc.constantFrom('E', 'W'),
        degrees: whole(179),
        minutes: whole(59),
      }),
      fraction: fc.record({ latitude: whole(9999), longitude: whole(9999) }),
    },
    { requiredKeys: ['kind', 'latitude', 'longitude'] },
  ),
);
const tenths = (most: number) => whole(most).map((value) => value / 10);
const expansion = fc.record(
  {
    source: digits(6),
    speed: tenths(9999),
    course: tenths(3599),
    stationName: fc.string({ maxLength: 10 }),
    personsOnBoard: whole(9999),
  },
  { requiredKeys: ['speed'] },
);
const values = fc.record({
  from: identity,
  mmsi: identity,
  distressed: identity,
  nature: name(natures),
  position,
  time: fc.option(fc.record({ hour: whole(23), minute: whole(59) })),
  subsequent: fc.option(name(firstTelecommands)),
  category: name(categories),
  firstTelecommand: fc.option(fc.constantFrom('telephony-simplex', 'telephony-duplex', 'data')),
  secondTelecommand: fc.option(name(secondTelecommands)),
  reason: fc.option(name(reasons)),
  channel: fc.option(fc.constantFrom('06', '72', '1022', '2078', '260')),
  expansion,
});

/** A sample call with every value it carries replaced by a random one. */
function withValues(sample: Call, random: Record<string, unknown>): Call {
  const call: Record<string, unknown> = { ...sample, expansion: random.expansion };
  for (const key of Object.keys(sample)) if (key in random) call[key] = random[key];
  if (sample.to !== null && 'mmsi' in sample.to) call.to = { ...sample.to, mmsi: random.mmsi };
  if (sample.kind === 'distress-self-cancel') {
    call.from = '232999871';
    call.distressed = '232999871';
  }
  if (sample.kind === 'distress-acknowledgement' && call.from === call.distressed) call.distressed = null;
  return call as unknown as Call;
}

describe('any call that can be composed', () => {
  it.each(Object.entries(sampleCalls))('%s is read as the same call', (_, sample) => {
    fc.assert(
      fc.property(values, (random) => {
        const call = withValues(sample, random);
        expect(decodeFields(encodeFields(call)).call).toEqual(call);
      }),
    );
  });
});
