import { type Coordinates, fullAngle } from './coordinates.ts';
import { requireFinite, requireNotNegative } from './require-number.ts';
import { MILE } from './units.ts';

/** A stream that carries a vessel along. */
export interface Current {
  /** Degrees true towards which it flows. */
  readonly set: number;
  /** Its speed in knots. */
  readonly drift: number;
}

/** A vessel that holds her course and speed. */
export interface Mover {
  readonly position: Coordinates;
  /** Degrees true: through the water when `current` is given, else over the ground. */
  readonly course: number;
  /** Knots: through the water when `current` is given, else over the ground. */
  readonly speed: number;
  /** What the water adds. Leave it out when course and speed come from a fix over the ground. */
  readonly current?: Current | undefined;
}

/** East and north, in metres or metres per second. */
export interface Plane {
  readonly east: number;
  readonly north: number;
}

/**
 * Course and speed over the ground of a vessel in a current.
 *
 * @throws RangeError when a number is not finite or a speed is negative
 */
export function overGround(mover: Omit<Mover, 'position'>): {
  /** Degrees true; `null` when there is no way over the ground. */
  readonly course: number | null;
  /** Knots. */
  readonly speed: number;
} {
  const { east, north } = velocityOf(mover);
  // Without a current nothing is added, and nothing is lost in the sum.
  if (mover.current === undefined && mover.speed > 0) {
    return { course: fullAngle(mover.course), speed: mover.speed };
  }
  const speed = (Math.hypot(east, north) * 3600) / MILE;
  // What is left of two opposite vectors in the last bits is no way and has no direction.
  if (speed < 1e-9) return { course: null, speed: 0 };
  return { course: directionOf({ east, north }), speed: Number(speed.toPrecision(15)) };
}

/** Velocity over the ground in metres per second. */
export function velocityOf({ course, speed, current }: Omit<Mover, 'position'>): Plane {
  const water = vectorOf(course, speed);
  const stream = streamOf(current);
  return { east: water.east + stream.east, north: water.north + stream.north };
}

/** Velocity of the water in metres per second. */
export function streamOf(current: Current | undefined): Plane {
  return current === undefined ? { east: 0, north: 0 } : vectorOf(current.set, current.drift);
}

/** A velocity in metres per second from degrees true and knots. */
export function vectorOf(degrees: number, knots: number): Plane {
  requireFinite('course', degrees);
  requireNotNegative('speed', knots);
  const metres = (knots * MILE) / 3600;
  const angle = (degrees * Math.PI) / 180;
  return { east: metres * Math.sin(angle), north: metres * Math.cos(angle) };
}

/** Degrees true of a vector that is not zero. */
export function directionOf({ east, north }: Plane): number {
  return fullAngle((Math.atan2(east, north) * 180) / Math.PI);
}
