import fc from 'fast-check';
import { expect } from 'vitest';
import { emptyFields } from '../../src/call/fields.ts';
import { type Call, type CallFields, decodeFields } from '../../src/call/index.ts';
import { readSentences, writeSentences } from '../../src/sentence/index.ts';

const symbol = fc.integer({ min: 0, max: 127 });
const five = (arbitrary: fc.Arbitrary<number>): fc.Arbitrary<number[]> =>
  fc.array(arbitrary, { minLength: 5, maxLength: 5 });
const digits = fc.integer({ min: 0, max: 99 });
const expansion = fc.record({
  specifier: symbol,
  symbols: fc.oneof(fc.array(symbol, { maxLength: 12 }), fc.constantFrom([110], [126])),
});

/** A call of no table: any symbol in any field, most of the others as a row of the tables has them. */
const likelyFields: fc.Arbitrary<CallFields> = fc.record({
  ...Object.fromEntries(Object.entries(emptyFields).map(([key, value]) => [key, fc.constant(value)])),
  format: fc.constantFrom(102, 112, 114, 116, 120, 123),
  address: five(digits),
  category: fc.constantFrom(100, 108, 110, 112),
  self: five(digits),
  telecommand1: fc.constantFrom(100, 103, 104, 110, 112, 118, 121),
  telecommand2: fc.constantFrom(100, 110, 126),
  receive: fc.constantFrom([90, 0, 72], [126, 126, 126], null),
  transmit: fc.constantFrom([90, 0, 72], [126, 126, 126], null),
  end: fc.constantFrom(117, 122, 127),
}) as unknown as fc.Arbitrary<CallFields>;
const strangeFields: fc.Arbitrary<Partial<CallFields>> = fc.record(
  {
    format: symbol,
    address: fc.oneof(five(symbol), fc.array(symbol, { maxLength: 7 })),
    category: symbol,
    self: five(symbol),
    telecommand1: symbol,
    telecommand2: symbol,
    distressed: five(symbol),
    nature: symbol,
    position: five(symbol),
    header: fc.boolean(),
    time: fc.array(symbol, { minLength: 2, maxLength: 2 }),
    subsequent: symbol,
    receive: fc.array(symbol, { minLength: 1, maxLength: 5 }),
    telephone: fc.array(symbol, { minLength: 2, maxLength: 12 }),
    rest: fc.array(symbol, { maxLength: 3 }),
    end: symbol,
    expansion: fc.array(expansion, { maxLength: 12 }),
  },
  { requiredKeys: [] },
);

/** A call as a faulty set may send it. */
export const strangeCall: fc.Arbitrary<Call> = fc
  .tuple(likelyFields, strangeFields, fc.subarray(Object.keys(emptyFields), { minLength: 1, maxLength: 4 }))
  .map(([likely, strange, changed]) => {
    const chosen = Object.entries(strange).filter(([key]) => changed.includes(key));
    return decodeFields({ ...likely, ...Object.fromEntries(chosen) }).call;
  });

const isDistress = ({ kind }: Call): boolean => kind.startsWith('distress-');

/**
 * Writes strange calls as sentences and reads them again, both ways: none changes its kind without a notice, and
 * none becomes a distress call. Returns how many were written, refused and changed.
 *
 * The rule that a code is the last two digits of a symbol 28 to 127 and of no other: IEC 61162-1, `DSC` sentence,
 * as restated in equipment papers.
 */
export function assertStrangeCalls(
  count: number,
  seed: number,
): Record<'written' | 'refused' | 'changed', number> {
  const seen = { written: 0, refused: 0, changed: 0 };
  const property = fc.property(strangeCall, fc.constantFrom('received', 'commanded'), (call, direction) => {
    let written: ReturnType<typeof writeSentences>;
    try {
      written = writeSentences(call, { direction });
    } catch (error) {
      expect(direction).toBe('commanded');
      expect(error).toBeInstanceOf(RangeError);
      seen.refused += 1;
      return;
    }
    seen.written += 1;
    if (direction === 'commanded') expect(isDistress(call)).toBe(false);
    const [reading, ...others] = readSentences(written.sentences.join('\r\n'), { direction });
    expect(others).toEqual([]);
    if (reading?.kind !== 'call') throw new Error(`no call was read, but ${reading?.kind}`);
    if (isDistress(reading.call)) expect(isDistress(call)).toBe(true);
    if (reading.call.kind === call.kind) return;
    seen.changed += 1;
    expect([...written.notices, ...reading.notices].map(({ code }) => code)).toContain('sentence-kind-lost');
  });
  fc.assert(property, { numRuns: count, seed });
  return seen;
}
