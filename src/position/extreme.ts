const GOLDEN = (Math.sqrt(5) - 1) / 2;
const STEPS = 4;

/**
 * The greatest value of a smooth function on a short interval, its ends included: a coarse look, then a golden-section
 * search about the best point.
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
  let low = from + (width * Math.max(0, at - 1)) / STEPS;
  let high = from + (width * Math.min(STEPS, at + 1)) / STEPS;
  let [left, right] = [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
  let [atLeft, atRight] = [value(left), value(right)];
  // Near the turning point the value changes with the square of the distance, so this is far finer than it looks.
  while (high - low > width * 1e-7) {
    if (atLeft > atRight) {
      [high, right, atRight] = [right, left, atLeft];
      left = high - GOLDEN * (high - low);
      atLeft = value(left);
    } else {
      [low, left, atLeft] = [left, right, atRight];
      right = low + GOLDEN * (high - low);
      atRight = value(right);
    }
  }
  return Math.max(best, atLeft, atRight);
}
