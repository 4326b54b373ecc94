const GOLDEN = (Math.sqrt(5) - 1) / 2;
/** More steps than any two numbers need: bounds far from zero never come as close as may be asked. */
const MOST_STEPS = 128;

/** Where a function with one dip between two bounds is lowest, by golden section, to the accuracy `within`. */
export function lowestOf(value: (x: number) => number, from: number, to: number, within: number): number {
  let [low, high] = [from, to];
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [value(left), value(right)];
  for (let step = 0; high - low > within && step < MOST_STEPS; step += 1) {
    if (atLeft < atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = value(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = value(right);
    }
  }
  return (low + high) / 2;
}

/** Where a function changes sign between two bounds, by halving. */
export function crossingOf(value: (x: number) => number, from: number, to: number, within: number): number {
  let [low, high] = [from, to];
  const start = value(from) <= 0;
  for (let step = 0; high - low > within && step < MOST_STEPS; step += 1) {
    const middle = (low + high) / 2;
    if (value(middle) <= 0 === start) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

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
