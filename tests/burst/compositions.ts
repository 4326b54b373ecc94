import fc from 'fast-check';
import { decodeCharacters } from '../../src/burst/information.ts';
import { type Call, type Composition, compositions, decodeFields } from '../../src/call/index.ts';
import {
  categories,
  endsOfSequence,
  firstTelecommands,
  formatSpecifiers,
  symbolOfName,
} from '../../src/call/symbol.ts';

const pair = fc.integer({ min: 0, max: 99 });
const ship = fc
  .tuple(fc.integer({ min: 20, max: 77 }), pair, pair, pair, fc.integer({ min: 0, max: 9 }))
  .map(([first, second, third, fourth, ninth]) => [first, second, third, fourth, ninth * 10]);
const group = ship.map(([first, ...others]) => [Math.floor((first as number) / 10), ...others]);
const place = fc.oneof(
  fc.constant<number[]>([99, 99, 99, 99, 99]),
  fc
    .record({
      latitude: fc.integer({ min: 0, max: 89 }),
      longitude: fc.integer({ min: 0, max: 179 }),
      quadrant: pair,
      minutes: pair,
    })
    .map(({ latitude, longitude, quadrant, minutes }) => {
      const two = (number: number) => String(number).padStart(2, '0');
      const digits = `${quadrant % 4}${two(latitude)}${two(minutes % 60)}${String(longitude).padStart(3, '0')}${two((minutes * 7) % 60)}`;
      return (digits.match(/../g) as string[]).map(Number);
    }),
);
const time = fc.oneof(
  fc.constant<number[]>([88, 88]),
  fc.tuple(fc.integer({ min: 0, max: 23 }), fc.integer({ min: 0, max: 59 })),
);
const channel = fc.oneof(
  fc.constant<number[]>([126, 126, 126]),
  fc.constantFrom(6, 8, 13, 16, 67, 72, 77).map((number) => [90, 0, number]),
);

/** The symbols that a field of a composition may have, by its name. */
function symbolsOfField(name: string, composition: Composition): fc.Arbitrary<number[]> {
  switch (name) {
    case 'format':
      return fc.constant([symbolOfName(formatSpecifiers, composition.format)]);
    case 'address':
      return composition.format === 'group'
        ? group
        : composition.format === 'area'
          ? fc.constant([5, 60, 63, 2, 3])
          : ship;
    case 'self':
    case 'distressed':
      return ship;
    case 'category':
      return fc.constantFrom(
        ...composition.categories.map((category) => [symbolOfName(categories, category)]),
      );
    case 'telecommand1':
      return fc.constantFrom(
        ...composition.telecommands.map((command) => [symbolOfName(firstTelecommands, command)]),
      );
    case 'telecommand2':
      return fc.constant([composition.kind === 'unable-to-comply' ? 102 : 126]);
    case 'nature':
      return fc.integer({ min: 100, max: 110 }).map((symbol) => [symbol]);
    case 'header':
      return fc.constant([55]);
    case 'position':
      return place;
    case 'time':
      return time;
    case 'subsequent':
      return fc.constant([100]);
    case 'telephone':
      return fc.array(pair, { minLength: 1, maxLength: 8 }).map((digits) => [106, ...digits]);
    default:
      return channel;
  }
}

/** Characters of any call in the tables, format specifier once, end of sequence last. All identities are invented. */
export const anyCharacters: fc.Arbitrary<number[]> = fc.constantFrom(...compositions).chain((composition) => {
  const fields = composition.order.map((name) => symbolsOfField(name, composition));
  const end = symbolOfName(endsOfSequence, composition.end);
  return fc.tuple(...fields).map((symbols) => [...symbols.flat(), end]);
});

/** Any call in the tables. */
export const anyCall: fc.Arbitrary<Call> = anyCharacters.map(
  (characters) => decodeFields(decodeCharacters(characters)).call,
);
