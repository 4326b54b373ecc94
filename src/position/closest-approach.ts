import { want } from '../result/internal.ts';
import type { Coordinates } from './coordinates.ts';
import { deadReckoning } from './dead-reckoning.ts';
import { rangeAndBearing } from './geodesic.ts';
import { type Mover, type Plane, velocityOf } from './mover.ts';
import { isPlane, onPlane } from './sailings.ts';
import { lowestOf } from './search.ts';

/** When and how close two vessels pass, if both hold on. */
export interface ClosestApproach {
  /** Which geometry found the time. */
  readonly geometry: 'plane' | 'ellipsoid';
  /** Seconds from now; negative when it is past and the range is opening; `null` when neither moves against the other. */
  readonly seconds: number | null;
  /** Range at that time, metres. */
  readonly metres: number;
  /** Degrees true from own ship to the other at that time; `null` when they meet. */
  readonly bearing: number | null;
  /** Range now, metres. */
  readonly range: number;
}

/** How far the search on the ellipsoid follows the faster vessel either way, metres. */
const FARTHEST_RUN = 10_000_000;
const STEPS = 400;
/** Metres per second below which two vessels are not moving against each other. */
const STILL = 1e-6;

/**
 * Closest approach of two vessels that hold course and speed, and its time.
 *
 * Within 20 miles of range and of run, and up to latitude 75°, the time comes from plane geometry, laid a second time
 * where they pass; the range it leads to is within 10 m of the least on the ellipsoid. Beyond, it comes from a search on
 * the ellipsoid that follows the faster vessel for up to 10 000 km. The range is always that on the ellipsoid. When two
 * vessels hardly move against each other the time is as vague as the word. A reported course and speed is old and coarse:
 * this is no substitute for plotting, for a look-out, or for the collision regulations.
 *
 * @param own - own ship
 * @param other - the other vessel
 * @returns time, range and bearing
 * @throws RangeError when coordinates are out of range or a number is not finite
 *
 * Source: relative-motion triangle, Maneuvering Board Manual (Pub. 217).
 *
 * @see {@link intercept}
 * @see {@link timeToReach}
 *
 * @example
 * ```ts
 * import { closestApproach } from 'seahail/position';
 *
 * const merrow = { position: { latitude: 56.3, longitude: -6.5 }, course: 0, speed: 6 };
 * const tern = { position: { latitude: 56.4, longitude: -6.4 }, course: 270, speed: 8 };
 * const pass = closestApproach(merrow, tern);
 * console.log(Math.round((pass.seconds ?? 0) / 60), (pass.metres / 1852).toFixed(1)); // 38 2.8
 * ```
 */
export function closestApproach(own: Mover, other: Mover): ClosestApproach {
  want('closestApproach', 'own vessel with its position', own, 'position');
  want('closestApproach', 'other vessel with its position', other, 'position');
  const range = rangeAndBearing(own.position, other.position).metres;
  const velocity = { own: velocityOf(own), other: velocityOf(other) };
  const relative = {
    east: velocity.other.east - velocity.own.east,
    north: velocity.other.north - velocity.own.north,
  };
  const speed = Math.hypot(relative.east, relative.north);
  const faster = Math.max(
    Math.hypot(velocity.own.east, velocity.own.north),
    Math.hypot(velocity.other.east, velocity.other.north),
  );
  if (speed < STILL) return at(own, other, { geometry: 'plane', seconds: null, range });
  let seconds = planeTime(onPlane(own.position, other.position), relative);
  // Once more on the paper laid where they pass, which is not where they are now.
  seconds += planeTime(onPlane(...placesAt(own, other, seconds)), relative);
  const ends = [own.position, other.position, ...placesAt(own, other, seconds)];
  if (isPlane(ends, range, Math.abs(seconds) * faster)) {
    return at(own, other, { geometry: 'plane', seconds, range });
  }
  const horizon = Math.min((1.5 * range) / speed, FARTHEST_RUN / faster);
  return at(own, other, { geometry: 'ellipsoid', seconds: searchedTime(own, other, horizon), range });
}

/** Time of closest approach of a point at `p` with velocity `v` to the origin: -(p·v)/(v·v). */
function planeTime(p: Plane, v: Plane): number {
  return -(p.east * v.east + p.north * v.north) / (v.east ** 2 + v.north ** 2) + 0;
}

/** Least range within the horizon either way: a look at even steps, then a closer one about the best. */
function searchedTime(own: Mover, other: Mover, horizon: number): number {
  const rangeAt = (seconds: number) => {
    const [here, there] = placesAt(own, other, seconds);
    return rangeAndBearing(here, there).metres;
  };
  let [best, least] = [0, rangeAt(0)];
  const step = horizon / STEPS;
  for (let i = -STEPS; i <= STEPS; i += 1) {
    const metres = rangeAt(i * step);
    if (metres < least) [best, least] = [i * step, metres];
  }
  return lowestOf(rangeAt, best - step, best + step, 1e-3);
}

function placesAt(own: Mover, other: Mover, seconds: number): readonly [Coordinates, Coordinates] {
  return [
    deadReckoning(own.position, { ...own, seconds }),
    deadReckoning(other.position, { ...other, seconds }),
  ];
}

function at(
  own: Mover,
  other: Mover,
  found: { geometry: 'plane' | 'ellipsoid'; seconds: number | null; range: number },
): ClosestApproach {
  const [here, there] = placesAt(own, other, found.seconds ?? 0);
  const { metres, bearing } = rangeAndBearing(here, there);
  // A tenth of a metre has no direction worth a name.
  return { ...found, metres, bearing: metres < 0.1 ? null : bearing };
}
