// Strange calls: lawful ones with symbols changed, left out or added, and fields of random symbols.
// Nothing of the code under test is used but the shape of `CallFields`.
import type { Random } from '../../../bench/receiver/random.ts';
import type { CallFields } from '../../../src/call/index.ts';
import { callOf, pick } from './calls.ts';

const formats = [102, 112, 114, 116, 120, 123];
const symbol = (random: Random): number =>
  random.below(3) === 0 ? 100 + random.below(28) : random.below(128);

/** Characters, format specifier once, of a call sent by mistake or misread: up to four symbols differ. */
export function strangeCharacters(random: Random): number[] {
  const characters = callOf(random).characters.slice(1);
  for (let changes = 1 + random.below(4); changes > 0; changes -= 1) {
    const at = random.below(characters.length);
    switch (random.below(8)) {
      case 0:
        characters.splice(at, 1);
        break;
      case 1:
        characters.splice(at, 0, symbol(random));
        break;
      case 2:
        characters[0] = random.below(2) === 0 ? pick(random, formats) : symbol(random);
        break;
      default:
        characters[at] = symbol(random);
    }
  }
  return characters;
}

const many = (random: Random, count: number): number[] => Array.from({ length: count }, () => symbol(random));
const maybe = <T>(random: Random, make: () => T): T | null => (random.below(4) === 0 ? null : make());

/** Fields of random symbols, each of the width that it has in a call. */
export function strangeFields(random: Random): CallFields {
  const identity = (): number[] => [...many(random, 4).map((one) => one % 100), random.below(10) * 10];
  const oneOf = (usual: readonly number[]) => (): number =>
    random.below(3) === 0 ? symbol(random) : pick(random, usual);
  return {
    format: maybe(random, oneOf(formats)),
    address: maybe(random, random.below(3) === 0 ? () => many(random, 5) : identity),
    category: maybe(random, oneOf([100, 106, 108, 110, 112])),
    self: maybe(random, random.below(3) === 0 ? () => many(random, 5) : identity),
    telecommand1: maybe(random, oneOf([100, 101, 103, 104, 106, 109, 110, 112, 118, 121, 126])),
    telecommand2: maybe(random, oneOf([100, 102, 108, 110, 111, 126])),
    distressed: maybe(random, identity),
    nature: maybe(random, oneOf([100, 101, 105, 107, 110, 112])),
    position: maybe(random, () => many(random, 5)),
    header: random.below(2) === 0,
    time: maybe(random, () => many(random, 2)),
    subsequent: maybe(random, oneOf([100, 109, 126])),
    receive: maybe(random, () => (random.below(2) === 0 ? [90, 0, 72] : many(random, 3))),
    transmit: maybe(random, () => (random.below(2) === 0 ? [126, 126, 126] : many(random, 3))),
    telephone: random.below(8) === 0 ? [105, ...many(random, 4)] : null,
    rest: random.below(8) === 0 ? many(random, random.below(4)) : [],
    end: maybe(random, oneOf([117, 122, 127])),
    expansion: [],
  };
}
