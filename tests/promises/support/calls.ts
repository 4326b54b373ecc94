// Random calls as symbols, by the table of compositions of ITU-R M.493 (national restatements of the distress calls;
// the rest from memory). Nothing of the code under test is used.
import type { Random } from '../../../bench/receiver/random.ts';
import type { Airborne } from './air.ts';

export const pick = <T>(random: Random, from: readonly T[]): T => from[random.below(from.length)] as T;

/** Five symbols of an identity: nine digits and a 0. */
export function symbolsOfIdentity(mmsi: string): number[] {
  return (`${mmsi}0`.match(/../g) as string[]).map(Number);
}

export function digits(random: Random, count: number): string {
  return Array.from({ length: count }, () => random.below(10)).join('');
}

const mids = ['232', '235', '211', '244', '257', '316', '338', '366', '503', '563'];
export const shipOf = (random: Random): string => `${pick(random, mids)}${digits(random, 6)}`;
export const coastOf = (random: Random): string => `00${pick(random, mids)}${digits(random, 4)}`;
export const groupOf = (random: Random): string => `0${pick(random, mids)}${digits(random, 5)}`;
const stationOf = (random: Random): string => (random.below(5) === 0 ? coastOf(random) : shipOf(random));

function positionOf(random: Random): number[] {
  if (random.below(4) === 0) return [99, 99, 99, 99, 99];
  const two = (below: number): string => String(random.below(below)).padStart(2, '0');
  const text = `${random.below(4)}${two(90)}${two(60)}${String(random.below(180)).padStart(3, '0')}${two(60)}`;
  return (text.match(/../g) as string[]).map(Number);
}

const timeOf = (random: Random): number[] =>
  random.below(4) === 0 ? [88, 88] : [random.below(24), random.below(60)];

const natureSymbols = [100, 101, 102, 103, 104, 105, 106, 107, 108, 109, 110, 112];
const reasonSymbols = [100, 101, 102, 103, 104, 105, 106, 107, 108, 109];
const workingChannels = [6, 8, 9, 10, 13, 15, 17, 67, 69, 72, 73, 77];
const nothing = [126, 126, 126];

/** Both elements of a channel proposal: repeated, given once, or left out. */
function channelOf(random: Random): number[] {
  const channel = [90, 0, pick(random, workingChannels)];
  return pick(random, [
    [...channel, ...channel],
    [...channel, ...nothing],
    [...nothing, ...nothing],
  ]);
}

function areaOf(random: Random): number[] {
  const text = `${random.below(4)}${String(random.below(60)).padStart(2, '0')}${String(random.below(170)).padStart(3, '0')}${String(1 + random.below(9)).padStart(2, '0')}${String(1 + random.below(9)).padStart(2, '0')}`;
  return (text.match(/../g) as string[]).map(Number);
}

/** A lawful call and the name of its kind. */
export interface SentCall extends Airborne {
  readonly kind: string;
}

const enhanced = (random: Random): number[] => [100, ...Array.from({ length: 4 }, () => random.below(100))];

type Composer = (random: Random) => readonly number[];
const distressTail: Composer = (random) => [
  pick(random, natureSymbols),
  ...positionOf(random),
  ...timeOf(random),
  100,
];
const identity = (mmsi: string): number[] => symbolsOfIdentity(mmsi);

/** Each kind: its characters without the doubling of the format specifier. */
export const compositions: Readonly<Record<string, Composer>> = {
  'distress-alert': (random) => [112, ...identity(shipOf(random)), ...distressTail(random), 127],
  'distress-acknowledgement': (random) => [
    116,
    112,
    ...identity(coastOf(random)),
    110,
    ...identity(shipOf(random)),
    ...distressTail(random),
    127,
  ],
  'distress-self-cancel': (random) => {
    const ship = identity(shipOf(random));
    return [116, 112, ...ship, 110, ...ship, ...distressTail(random), 127];
  },
  'distress-relay': (random) => {
    const about = [112, ...identity(shipOf(random)), ...distressTail(random)];
    const from = [112, ...identity(stationOf(random))];
    return random.below(2) === 0
      ? [116, ...from, ...about, 127]
      : [120, ...identity(coastOf(random)), ...from, ...about, 117];
  },
  'distress-relay-acknowledgement': (random) => [
    120,
    ...identity(shipOf(random)),
    112,
    ...identity(coastOf(random)),
    112,
    ...identity(shipOf(random)),
    ...distressTail(random),
    122,
  ],
  'all-ships-call': (random) => [
    116,
    pick(random, [108, 110]),
    ...identity(stationOf(random)),
    100,
    126,
    90,
    0,
    16,
    ...pick(random, [nothing, [90, 0, 16]]),
    127,
  ],
  'area-call': (random) => [
    102,
    ...areaOf(random),
    pick(random, [108, 110]),
    ...identity(stationOf(random)),
    100,
    126,
    90,
    0,
    16,
    ...nothing,
    127,
  ],
  'group-call': (random) => [
    114,
    ...identity(groupOf(random)),
    100,
    ...identity(shipOf(random)),
    100,
    126,
    ...channelOf(random),
    127,
  ],
  'individual-call': (random) => [
    120,
    ...identity(stationOf(random)),
    pick(random, [100, 108, 110]),
    ...identity(shipOf(random)),
    100,
    126,
    ...channelOf(random),
    117,
  ],
  'individual-acknowledgement': (random) => [
    120,
    ...identity(shipOf(random)),
    pick(random, [100, 108, 110]),
    ...identity(stationOf(random)),
    100,
    126,
    ...channelOf(random),
    122,
  ],
  'unable-to-comply': (random) => [
    120,
    ...identity(shipOf(random)),
    100,
    ...identity(stationOf(random)),
    104,
    pick(random, reasonSymbols),
    ...nothing,
    ...nothing,
    122,
  ],
  'position-request': (random) => enquiry(random, 108, 121, 117),
  'position-reply': (random) => [
    120,
    ...identity(shipOf(random)),
    108,
    ...identity(shipOf(random)),
    121,
    126,
    55,
    ...positionOf(random),
    ...timeOf(random),
    122,
  ],
  'test-call': (random) => enquiry(random, 108, 118, 117),
  'test-acknowledgement': (random) => enquiry(random, 108, 118, 122),
  'polling-call': (random) => enquiry(random, 100, 103, 117),
  'polling-acknowledgement': (random) => enquiry(random, 100, 103, 122),
};

function enquiry(random: Random, category: number, telecommand: number, end: number): number[] {
  return [
    120,
    ...identity(stationOf(random)),
    category,
    ...identity(shipOf(random)),
    telecommand,
    126,
    ...nothing,
    ...nothing,
    end,
  ];
}

export const kinds: readonly string[] = Object.keys(compositions);

/** A lawful call of a random kind, or of one kind; every fifth that may have one carries finer coordinates behind it. */
export function callOf(random: Random, kind: string = pick(random, kinds)): SentCall {
  const [format, ...rest] = (compositions[kind] as Composer)(random) as [number, ...number[]];
  const carries = kind === 'distress-alert' || kind === 'position-reply';
  const expansion = carries && random.below(5) === 0 ? enhanced(random) : undefined;
  return { kind, characters: [format, format, ...rest], expansion };
}
