import { lowestOf } from './search.ts';

const STEPS = 4;
/** Of the interval. Near the turning point the value changes with the square of the distance, so this is far finer than it looks. */
const FINE = 1e-7;

/**
 * The greatest value of a smooth function on a short interval, its ends included: a coarse look, then a closer one about
 * the best point.
 */
export function extremeOf(value: (x: number) => number, from: number, to: number): number {
  const width = to - from;
  let best = value(from);
  if (width === 0) return best;
  let at = 0;
  for (let i = 1; i <= STEPS; i += 1) {
    const here = value(i === STEPS ? to : from + (width * i) / STEPS);
    if (here > best) [best, at] = [here, i];
  }
  const low = from + (width * Math.max(0, at - 1)) / STEPS;
  const high = from + (width * Math.min(STEPS, at + 1)) / STEPS;
  return Math.max(best, value(lowestOf((x) => -value(x), low, high, width * FINE)));
}
