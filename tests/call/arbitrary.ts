import fc from 'fast-check';
import { type CallFields, emptyFields } from '../../src/call/fields.ts';

/** Fields as a faulty radio, line or program might deliver them: every symbol, gaps, wrong lengths, numbers that are none. */
const symbol: fc.Arbitrary<number | null> = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 0, max: 127 }) },
  { weight: 1, arbitrary: fc.constant(null) },
  { weight: 1, arbitrary: fc.constantFrom(-1, 128, 1.5, 1e9) },
);
const likely = (...symbols: number[]): fc.Arbitrary<number | null> =>
  fc.oneof({ weight: 4, arbitrary: fc.constantFrom(...symbols) }, { weight: 1, arbitrary: symbol });
const symbols = (...lengths: number[]): fc.Arbitrary<(number | null)[] | null> =>
  fc.oneof(
    fc.constantFrom(...lengths).chain((length) =>
      fc.oneof(
        fc.array(fc.integer({ min: 0, max: 99 }), { minLength: length, maxLength: length }),
        fc.constantFrom(88, 99, 126).map((fill) => Array<number>(length).fill(fill)),
      ),
    ),
    fc.array(symbol, { maxLength: 7 }),
    fc.constant(null),
  );
const place = fc
  .tuple(
    fc.integer({ min: 0, max: 3 }),
    fc.integer({ min: 0, max: 89 }),
    fc.integer({ min: 0, max: 59 }),
    fc.integer({ min: 0, max: 179 }),
    fc.integer({ min: 0, max: 59 }),
  )
  .map(([quadrant, ...rest]) => {
    const [latitude, north, longitude, east] = rest.map((value) => String(value).padStart(2, '0'));
    const digits = `${quadrant}${latitude}${north}${(longitude as string).padStart(3, '0')}${east}`;
    return [0, 2, 4, 6, 8].map((at) => Number(digits.slice(at, at + 2)));
  });
const element = fc.oneof(
  fc.tuple(fc.constant(90), fc.constantFrom(0, 10, 20), fc.integer({ min: 0, max: 88 })),
  symbols(3, 4),
);
const set = fc.oneof(
  fc.record({
    specifier: fc.oneof(fc.integer({ min: 100, max: 107 }), fc.integer()),
    symbols: fc.oneof(
      fc.array(fc.integer({ min: 0, max: 99 }), { minLength: 2, maxLength: 5 }),
      fc.constantFrom([110], [126]),
      fc.array(symbol, { maxLength: 5 }),
    ),
  }),
  fc.record({
    specifier: fc.integer({ min: 100, max: 107 }),
    symbols: fc.array(symbol, { maxLength: 3 }),
    text: fc.string(),
  }),
);

/** Any fields at all, calls of the tables likely among them. */
export const anyFields: fc.Arbitrary<CallFields> = fc.record({
  format: likely(102, 112, 114, 116, 120, 123),
  address: symbols(5),
  category: likely(100, 106, 108, 110, 112),
  self: symbols(5),
  telecommand1: likely(100, 103, 104, 110, 112, 118, 121, 126),
  telecommand2: likely(126, 100, 102, 110),
  distressed: symbols(5),
  nature: fc.oneof(fc.constant(null), likely(100, 107, 110)),
  position: fc.oneof(fc.constant(null), place, symbols(5)),
  header: fc.boolean(),
  time: fc.oneof(fc.constant(null), symbols(2)),
  subsequent: fc.oneof(fc.constant(null), likely(100, 126)),
  receive: element,
  transmit: element,
  telephone: fc.oneof(
    fc.constant(null),
    symbols(3, 5).map((digits) => (digits === null ? null : [105, ...digits])),
  ),
  rest: fc.array(symbol, { maxLength: 3 }),
  end: likely(117, 122, 127),
  expansion: fc.array(set, { maxLength: 3 }),
});

/** Fields of a table row with one of them replaced by anything. */
export function mutated(rows: readonly CallFields[]): fc.Arbitrary<CallFields> {
  const keys = Object.keys(emptyFields) as (keyof CallFields)[];
  return fc
    .tuple(fc.constantFrom(...rows), fc.subarray(keys, { minLength: 1, maxLength: 3 }), anyFields)
    .map(([row, changed, other]) => ({
      ...row,
      ...Object.fromEntries(changed.map((key) => [key, other[key]])),
    }));
}
