import { want } from '../result/internal.ts';
import type { Coordinates } from './coordinates.ts';
import { deadReckoning } from './dead-reckoning.ts';
import { rangeAndBearing } from './geodesic.ts';
import {
  type Current,
  directionOf,
  type Mover,
  type Plane,
  streamOf,
  vectorOf,
  velocityOf,
} from './mover.ts';
import { isPlane, onPlane, rhumbLine } from './sailings.ts';
import { crossingOf, lowestOf } from './search.ts';
import { MILE } from './units.ts';

/** Every way to meet, the earliest first. */
export interface Interceptions {
  /** Which geometry found the times. */
  readonly geometry: 'plane' | 'ellipsoid';
  /** None, one, or two when own ship is the slower. */
  readonly solutions: readonly {
    /** Seconds from now until both are at the same place. */
    readonly seconds: number;
    /** Where that is. */
    readonly position: Coordinates;
    /** Own run over the ground, metres. */
    readonly metres: number;
    /** Degrees true over the ground; `null` when already there. */
    readonly track: number | null;
    /** Degrees true to steer through the water; `null` when already there. */
    readonly steer: number | null;
  }[];
  /** Own speed is only just enough: the two solutions have become one. */
  readonly tangent: boolean;
}

/** The search on the ellipsoid follows the faster vessel no farther than a thousand miles. */
const FARTHEST_RUN = 1000 * MILE;
const STEPS = 600;
/** Seconds to which the search finds a time. */
const NEAR = 1e-4;
/** Relative to the square of what is under the root, and in metres: two solutions closer than this are one. */
const TANGENT = 1e-9;
const TOUCH = 0.01;

/**
 * The course to meet a vessel that holds her course and speed.
 *
 * Within 20 miles of range and of all runs, and up to latitude 75°, the times come from plane geometry, corrected for the
 * shape of the Earth; beyond, from a search on the ellipsoid, which leaves out meetings more than 1000 miles away. The
 * target's course and speed are as old as the report they come from: an aid for those who then look, listen and keep
 * clear.
 *
 * @param own - own position, speed and current
 * @param target - the other vessel; give her `current` only when her course and speed are those through the water
 * @returns both solutions, one, or none
 * @throws RangeError when coordinates are out of range or a number is not finite
 *
 * Source: relative-motion triangle, Maneuvering Board Manual (Pub. 217).
 *
 * @see {@link closestApproach}
 * @see {@link timeToReach}
 *
 * @example
 * ```ts
 * import { intercept } from 'seahail/position';
 *
 * const own = { position: { latitude: 56.3, longitude: -6.5 }, speed: 18 };
 * const bounty = { position: { latitude: 56.38, longitude: -6.24 }, course: 180, speed: 12 };
 * const [first] = intercept(own, bounty).solutions;
 * console.log(Math.round((first?.seconds ?? 0) / 60), Math.round(first?.steer ?? 0)); // 29 97
 * ```
 */
export function intercept(
  own: {
    readonly position: Coordinates;
    /** Knots through the water. */
    readonly speed: number;
    /** What the water adds to own way. */
    readonly current?: Current | undefined;
  },
  target: Mover,
): Interceptions {
  want('intercept', 'own vessel with its position', own, 'position');
  want('intercept', 'a target with its position', target, 'position');
  const range = rangeAndBearing(own.position, target.position).metres;
  const stream = streamOf(own.current);
  const ground = velocityOf(target);
  const speed = vectorOf(0, own.speed).north;
  const drifting = { east: ground.east - stream.east, north: ground.north - stream.north };
  const plane = planeTimes(onPlane(own.position, target.position), drifting, speed);
  const times = plane.tangent ? plane.times : plane.times.map((seconds) => corrected(own, target, seconds));
  const solutions = times.map((seconds) => solution(own, target, seconds));
  const targetSpeed = Math.hypot(ground.east, ground.north);
  const runs = times.map((seconds, i) => Math.max(seconds * targetSpeed, solutions[i]?.metres ?? 0));
  const places = [own.position, target.position, ...solutions.map(({ position }) => position)];
  const fastest = Math.max(targetSpeed, speed + Math.hypot(stream.east, stream.north));
  if (fastest === 0 || isPlane(places, range, Math.max(0, ...runs))) {
    return { geometry: 'plane', solutions, tangent: plane.tangent };
  }
  const found = searchedTimes(own, target, FARTHEST_RUN / fastest);
  return {
    geometry: 'ellipsoid',
    solutions: found.times.map((seconds) => solution(own, target, seconds)),
    tangent: found.tangent,
  };
}

type Interceptor = Parameters<typeof intercept>[0];

/**
 * Positive roots of (u² - S²) t² + 2 (p·u) t + p² = 0: the circle that own ship can reach, drifting with the water,
 * grows over the target, who moves with velocity `u` through that water.
 */
function planeTimes(p: Plane, u: Plane, speed: number): { times: readonly number[]; tangent: boolean } {
  const a = u.east ** 2 + u.north ** 2 - speed ** 2;
  const b = p.east * u.east + p.north * u.north;
  const c = p.east ** 2 + p.north ** 2;
  if (c === 0) return { times: [0], tangent: false };
  const discriminant = b ** 2 - a * c;
  if (a > 0 && Math.abs(discriminant) <= TANGENT * b ** 2) {
    return b < 0 ? { times: [-b / a], tangent: true } : { times: [], tangent: false };
  }
  if (discriminant < 0) return { times: [], tangent: false };
  // The half that adds loses no digits; the other root follows from the product of the two.
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant));
  const roots = [q / a, c / q].filter((root) => root > 0 && root < Infinity);
  return { times: roots.sort((one, other) => one - other), tangent: false };
}

/** A time from the plane, corrected by what own ship is still short of the target on the ellipsoid then. */
function corrected(own: Interceptor, target: Mover, planned: number): number {
  let seconds = planned;
  for (let i = 0; i < 3; i += 1) {
    const short = shortOf(own, target, seconds);
    const slope = shortOf(own, target, seconds + 1) - short;
    const better = seconds - short / slope;
    // Where the two solutions are close together a tangent line leads astray.
    if (!(Math.abs(better - planned) <= 0.05 * planned)) return planned;
    seconds = better;
  }
  return seconds;
}

/** Metres by which own ship cannot yet be where the target is; negative when she could be there before. */
function shortOf(own: Interceptor, target: Mover, seconds: number): number {
  const way = wayThroughWater(own, placeOf(target, seconds), seconds);
  return Math.hypot(way.east, way.north) - vectorOf(0, own.speed).north * seconds;
}

/** Times at which own ship can be where the target is, from steps that grow with time. */
function searchedTimes(
  own: Interceptor,
  target: Mover,
  horizon: number,
): { times: readonly number[]; tangent: boolean } {
  const short = (seconds: number) => shortOf(own, target, seconds);
  const time = (step: number) => horizon * (step / STEPS) ** 3;
  const times: number[] = [];
  let tangent = false;
  let [earlier, before] = [Infinity, short(0)];
  for (let i = 1; i <= STEPS; i += 1) {
    const now = short(time(i));
    const start = time(Math.max(0, i - 2));
    if (now <= 0 !== before <= 0) {
      times.push(crossingOf(short, time(i - 1), time(i), NEAR));
    } else if (now > 0 && before <= earlier && before < now) {
      // Between two steps the target may come within reach and leave it again.
      const lowest = lowestOf(short, start, time(i), NEAR);
      const gap = short(lowest);
      if (Math.abs(gap) <= TOUCH) {
        times.push(lowest);
        tangent = true;
      } else if (gap < 0) {
        times.push(crossingOf(short, start, lowest, NEAR), crossingOf(short, lowest, time(i), NEAR));
      }
    }
    [earlier, before] = [before, now];
  }
  return { times, tangent };
}

function solution(own: Interceptor, target: Mover, seconds: number): Interceptions['solutions'][number] {
  const position = placeOf(target, seconds);
  const { metres, course } = rhumbLine(own.position, position);
  const way = wayThroughWater(own, position, seconds);
  const moves = Math.hypot(way.east, way.north) > TOUCH;
  return { seconds, position, metres, track: course, steer: moves ? directionOf(way) : null };
}

/** What own ship must run through the water to be at a place after a time: the ground run less what the stream does. */
function wayThroughWater(own: Interceptor, to: Coordinates, seconds: number): Plane {
  const { metres, course } = rhumbLine(own.position, to);
  const angle = ((course ?? 0) * Math.PI) / 180;
  const stream = streamOf(own.current);
  return {
    east: metres * Math.sin(angle) - stream.east * seconds,
    north: metres * Math.cos(angle) - stream.north * seconds,
  };
}

function placeOf(target: Mover, seconds: number): Coordinates {
  return deadReckoning(target.position, { ...target, seconds });
}
