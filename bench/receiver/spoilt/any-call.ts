import { encodeSymbol } from '../../../src/burst/symbol-code.ts';
import type { Random } from '../random.ts';
import type { SentCall } from '../random-call.ts';

type Make = (random: Random) => readonly number[];

const pick = <T>(random: Random, list: readonly T[]): T => list[random.below(list.length)] as T;
const pair = (random: Random): number => random.below(100);
const ship = (random: Random): number[] => [
  20 + random.below(58),
  pair(random),
  pair(random),
  pair(random),
  10 * random.below(10),
];
const coast = (random: Random): number[] => [0, ...ship(random).slice(0, 3), 10 * random.below(10)];
const place = (random: Random): number[] =>
  random.even() < 0.25
    ? [99, 99, 99, 99, 99]
    : [random.below(4) * 10 + random.below(9), pair(random), pair(random), pair(random), pair(random)];
const time = (random: Random): number[] =>
  random.even() < 0.25 ? [88, 88] : [random.below(24), random.below(60)];
const channel = (random: Random): number[] =>
  random.even() < 0.4 ? FILLERS : [90, 0, pick(random, [6, 8, 10, 13, 67, 69, 72, 73, 77])];
const nature = (random: Random): number =>
  pick(random, [100, 101, 102, 103, 104, 105, 106, 107, 108, 110, 112]);
const FILLERS = [126, 126, 126];

/** Calls as M.493-15 Annex 1 tables 4.1 to 4.10 have them (from memory), format specifier once, end of sequence last. */
const KINDS: Readonly<Record<string, Make>> = {
  alert: (r) => [112, ...ship(r), nature(r), ...place(r), ...time(r), 100, 127],
  'distress acknowledgement': (r) => [
    ...[116, 112, ...coast(r), 110, ...ship(r), nature(r), ...place(r), ...time(r), 100, 127],
  ],
  'self-cancel': (r) => {
    const own = ship(r);
    return [116, 112, ...own, 110, ...own, nature(r), ...place(r), ...time(r), 100, 127];
  },
  'relay to all': (r) => [
    ...[116, 112, ...ship(r), 112, ...ship(r), nature(r), ...place(r), ...time(r), 100, 127],
  ],
  'relay to one': (r) => [
    ...[120, ...coast(r), 112, ...ship(r), 112, ...ship(r), nature(r), ...place(r), ...time(r), 100],
    pick(r, [117, 122]),
  ],
  'all ships': (r) => [116, pick(r, [108, 110]), ...ship(r), 100, 126, ...channel(r), ...FILLERS, 127],
  group: (r) => [114, ...coast(r), 100, ...ship(r), 100, 126, ...channel(r), ...FILLERS, 127],
  individual: (r) => [
    ...[120, ...ship(r), pick(r, [100, 108, 110]), ...ship(r), pick(r, [100, 101])],
    ...[126, ...channel(r), ...channel(r), pick(r, [117, 122])],
  ],
  unable: (r) => [
    ...[120, ...ship(r), 100, ...ship(r), 104, 100 + r.below(10), ...channel(r), ...FILLERS, 122],
  ],
  test: (r) => [120, ...coast(r), 108, ...ship(r), 118, 126, ...FILLERS, ...FILLERS, pick(r, [117, 122])],
  'position request': (r) => [120, ...ship(r), 108, ...ship(r), 121, 126, ...FILLERS, ...FILLERS, 117],
  'position reply': (r) => [120, ...ship(r), 108, ...ship(r), 121, 126, 55, ...place(r), ...time(r), 122],
  polling: (r) => [120, ...ship(r), 100, ...ship(r), 103, 126, ...FILLERS, ...FILLERS, pick(r, [117, 122])],
};

const DOTS = '10101010101010101010';
const PHASING_RX = [111, 110, 109, 108, 107, 106, 105, 104];

/** A call of any kind; the identities are random, no station's in particular. */
export function anyCall(random: Random): SentCall & { readonly kind: string } {
  const kind = pick(random, Object.keys(KINDS));
  const characters = (KINDS[kind] as Make)(random);
  return {
    kind,
    ...asSent(
      characters,
      characters.reduce((sum, symbol) => sum ^ symbol, 0),
    ),
  };
}

/** The burst of some characters, whatever their error check: written without the encoder under test. */
export function asSent(characters: readonly number[], check: number): SentCall {
  const [format = 0] = characters;
  const end = characters.at(-1) as number;
  const message = [format, ...characters, check, end, end];
  const dx = [...Array.from({ length: 6 }, () => 125), ...message];
  const rx = [...PHASING_RX, ...message];
  const stream = dx.flatMap((symbol, slot) => [symbol, rx[slot] as number]);
  return {
    information: [format, ...characters],
    stream,
    bits: DOTS + stream.map(encodeSymbol).join(''),
  };
}
