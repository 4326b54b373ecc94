import type { Random } from './random.ts';

/**
 * The characters of an invented call: format specifier once, end of sequence last.
 *
 * `22` is an individual call with two channel elements; with its error check it has 22 distinct characters.
 * `30` has eight more two-digit characters before the end, which no composition has: it is the model call of a
 * study of what receivers can reach. `alert`, `reply`, `relay` and `all-ships` are compositions of M.493.
 */
export function randomCall(
  kind: '22' | '30' | 'alert' | 'reply' | 'relay' | 'all-ships',
  random: Random,
): number[] {
  const identity = (): number[] => [
    random.integer(20, 77),
    pair(),
    pair(),
    pair(),
    10 * random.integer(0, 9),
  ];
  const pair = (): number => random.integer(0, 99);
  const position = (): number[] => [random.integer(0, 39), pair(), pair(), pair(), pair()];
  const time = (): number[] => [random.integer(0, 23), random.integer(0, 59)];
  const channel = (): number[] => [90, 0, random.integer(1, 88)];
  const nature = (): number => random.integer(100, 110);
  const category = (): number => random.pick([100, 100, 108, 110]);
  const end = (): number => random.pick([117, 122]);
  switch (kind) {
    case 'alert':
      return [112, ...identity(), nature(), ...position(), ...time(), 100, 127];
    case 'all-ships':
      return [116, random.pick([108, 110]), ...identity(), 100, 126, ...channel(), 126, 126, 126, 127];
    case 'reply':
      return [120, ...identity(), 108, ...identity(), 121, 126, 55, ...position(), ...time(), 122];
    case 'relay':
      return [
        120,
        ...identity(),
        112,
        ...identity(),
        112,
        ...identity(),
        nature(),
        ...position(),
        ...time(),
        100,
        end(),
      ];
    default: {
      const free = kind === '30' ? Array.from({ length: 8 }, pair) : [];
      return [
        120,
        ...identity(),
        category(),
        ...identity(),
        100,
        126,
        ...channel(),
        ...channel(),
        ...free,
        end(),
      ];
    }
  }
}
