/** Two pieces of work on the same input, each giving a number that depends on all of it. */
export interface Pair {
  readonly subject: () => number;
  readonly yardstick: () => number;
}

/** One line of the table. */
export interface Figure {
  readonly what: string;
  readonly beside: string;
  /** How many times as long as what stands beside it. */
  readonly ratio: number;
  /** The most that the ratio should be. */
  readonly goal?: number;
  /** For what is paid once: milliseconds more than what stands beside it, and the most that should be. */
  readonly extraMs?: number;
  readonly extraGoalMs?: number;
}

/** Long enough for the compiler to settle on a busy machine too. */
const WARM_UP_MS = 500;
const SLICE_MS = 4;
/** Rounds of each measurement: as many as fit into a second and a half, but not too few nor too many. */
const LEAST_ROUNDS = 7;
const MOST_ROUNDS = 60;
const ENOUGH_MS = 1500;

/**
 * Time of the subject over time of the yardstick: both in short slices by turns, so that whatever else the machine
 * does slows both, and the median over the rounds, so that a slice that was interrupted does not count.
 */
export function ratioOf({ subject, yardstick }: Pair): number {
  const repeats = [repeatsOf(subject), repeatsOf(yardstick)] as const;
  const ratios: number[] = [];
  const begun = performance.now();
  for (let round = 0; round < MOST_ROUNDS; round++) {
    if (round >= LEAST_ROUNDS && performance.now() - begun > ENOUGH_MS) break;
    // Who goes first changes, for the sake of collected garbage and warm caches.
    const first = round % 2 === 0 ? timeOf(subject, repeats[0]) : 0;
    const plain = timeOf(yardstick, repeats[1]);
    ratios.push((first || timeOf(subject, repeats[0])) / plain);
  }
  return median(ratios);
}

export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1] as number;
}

/** How often some work is to be done to fill a slice, once the compiler has done with it. */
function repeatsOf(work: () => number): number {
  const begun = performance.now();
  let count = 1;
  while (performance.now() - begun < WARM_UP_MS) {
    timeOf(work, count);
    count = Math.min(2 * count, 1000);
  }
  return Math.max(1, Math.round(SLICE_MS / timeOf(work, count)));
}

/** Milliseconds for each time. */
function timeOf(work: () => number, repeats: number): number {
  let sum = 0;
  const begun = performance.now();
  for (let count = 0; count < repeats; count++) sum += work();
  const spent = performance.now() - begun;
  // A number that is always there, but that no compiler can tell: nothing of the work may be left out.
  if (Number.isNaN(sum)) throw new Error('the work gave no number');
  return spent / repeats;
}
