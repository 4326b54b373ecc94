// What is worked out about the motion of vessels comes to an end with any numbers, after a bounded amount of work: an
// answer without NaN or -0, or a TypeError or RangeError (doc comments of `seahail/position`; DEVELOPERS.md, rules 3
// and 10). Work is counted, not timed; a search that never ends would never be counted, and the run with it.
import { type Random, randomFrom } from '../../../bench/receiver/random.ts';
import {
  boundsFrom,
  type Coordinates,
  closestApproach,
  deadReckoning,
  destination,
  horizonRange,
  intercept,
  type Mover,
  rangeAndBearing,
  timeToReach,
} from '../../../src/position/index.ts';
import { type Attack, notebook } from '../support/attack.ts';
import { pick } from '../support/calls.ts';
import { countingWork } from '../support/work.ts';

/** Questions of `npm run attack`. */
export const usual = 20_000;

/** Steps of code and elements looked at, at most. A search over a day on the ellipsoid takes about a tenth. */
const MOST_WORK = 3_000_000;

/** Numbers that end no search: tiny, huge, equal but for the last bit, none at all. */
function number(random: Random, usualMost: number): number {
  const wild = [
    0,
    -0,
    5e-324,
    1e-300,
    1e-12,
    8e-6,
    7.9e-6,
    1e-3,
    1,
    Number.EPSILON,
    1e6,
    1e15,
    1e300,
    Number.MAX_VALUE,
    -1e-9,
    -1,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    Number.NEGATIVE_INFINITY,
  ];
  const plain = random.even() * usualMost;
  if (random.below(3) > 0) return plain;
  const one = pick(random, wild);
  return random.below(3) === 0 ? plain + one : one;
}

function place(random: Random): Coordinates {
  const edge = random.below(4) === 0;
  const latitude = edge ? pick(random, [90, -90, 89.9999999, 0, -0, 60]) : 180 * random.even() - 90;
  const longitude = edge ? pick(random, [180, -180, 179.9999999, 0, -0, 540]) : 360 * random.even() - 180;
  return random.below(12) === 0 ? { latitude: number(random, 90), longitude } : { latitude, longitude };
}

/** Two places: anywhere, the same, near each other, or opposite. */
function places(random: Random): [Coordinates, Coordinates] {
  const first = place(random);
  const by = pick(random, [0, 1e-12, 1e-6, 0.01, 0.5]);
  switch (random.below(4)) {
    case 0:
      return [first, place(random)];
    case 1:
      return [first, { latitude: -first.latitude, longitude: first.longitude + 180 - by }];
    default:
      return [first, { latitude: first.latitude + by, longitude: first.longitude - by }];
  }
}

const currentOf = (random: Random): { set: number; drift: number } | undefined =>
  random.below(2) === 0 ? undefined : { set: number(random, 360), drift: number(random, 5) };
const mover = (random: Random, position: Coordinates): Mover => ({
  position,
  course: number(random, 360),
  speed: number(random, 30),
  current: currentOf(random),
});

const questions: Readonly<Record<string, (random: Random) => unknown>> = {
  intercept: (random) => {
    const [own, other] = places(random);
    const target = mover(random, other);
    // Own speed at times just that of the target.
    const speed =
      random.below(3) === 0 ? target.speed * (1 + pick(random, [0, 1e-15, -1e-9])) : number(random, 30);
    return intercept({ position: own, speed, current: currentOf(random) }, target);
  },
  closestApproach: (random) => {
    const [own, other] = places(random);
    return closestApproach(mover(random, own), mover(random, other));
  },
  timeToReach: (random) => {
    const [own, other] = places(random);
    return timeToReach(own, other, { speed: number(random, 30), current: currentOf(random) });
  },
  deadReckoning: (random) => {
    const { position, course, speed, current } = mover(random, place(random));
    const line = pick(random, ['rhumb', 'geodesic'] as const);
    return deadReckoning(position, { course, speed, current, line, seconds: number(random, 86_400) });
  },
  rangeAndBearing: (random) => rangeAndBearing(...places(random)),
  destination: (random) => destination(place(random), number(random, 360), number(random, 1e6)),
  horizonRange: (random) => horizonRange(number(random, 30), number(random, 30)),
  boundsFrom: (random) => {
    const [own, other] = places(random);
    const now = number(random, 1e9);
    const at = random.below(6) === 0 ? null : now - number(random, 1e6);
    return boundsFrom(own, other, { at, now, speed: number(random, 30), uncertainty: number(random, 2000) });
  },
};

/** Where an answer holds a number that JSON loses. */
function lost(value: unknown, at = ''): string | null {
  if (typeof value === 'number')
    return Number.isFinite(value) && !Object.is(value, -0)
      ? null
      : `${at} ${Object.is(value, -0) ? '-0' : value}`;
  if (value === null || typeof value !== 'object') return null;
  for (const [key, one] of Object.entries(value)) {
    const found = lost(one, `${at}.${key}`);
    if (found !== null) return found;
  }
  return null;
}

export const attack: Attack = ({ seed, count }) => {
  const notes = notebook();
  const most: Record<string, number> = {};
  const names = Object.keys(questions);
  countingWork((workOf) => {
    for (let tried = 0; tried < count; tried += 1) {
      const name = names[tried % names.length] as string;
      const how = `${name}, seed ${seed}, try ${tried}`;
      notes.count('questions');
      const work = workOf(() => {
        try {
          const found = lost(
            (questions[name] as (random: Random) => unknown)(randomFrom(seed * 1_000_003 + tried)),
          );
          if (found !== null) notes.broken(`no number that lasts: ${name}`, `${how}:${found}`);
        } catch (error) {
          notes.count('refused');
          if (!(error instanceof TypeError || error instanceof RangeError))
            notes.broken(`another error: ${name}`, `${how}: ${String(error)}`);
        }
      });
      most[name] = Math.max(most[name] ?? 0, work);
      if (work > MOST_WORK) notes.broken(`too much work: ${name}`, `${how}: ${work}`);
    }
  });
  return notes.outcome(
    Object.fromEntries(Object.entries(most).map(([name, work]) => [`most work of ${name}`, work])),
  );
};
