/** Symbols further than this below the heaviest of their position are left out at first. */
const REACH = 20;
/** How far below the sum of the heaviest symbols the best sequence may lie for that to be good enough. */
const SLACK = 6;
/** So far below the best sequence (natural log), every other is found. */
export const TRELLIS_REACH = 14;
const STATES = 128;

/** One sequence of characters whose error check holds, and its weight. */
export interface Path {
  readonly characters: readonly number[];
  /** Sum of its natural-log weights. */
  readonly weight: number;
}

/** What the trellis found among all sequences whose error check holds. */
export interface TrellisAnswer {
  /** The heaviest sequence first. After it, for every position and symbol, the heaviest with that symbol there. */
  readonly paths: readonly [Path, ...Path[]];
  /** Natural log of the sum of the exponentials of all weights. */
  readonly total: number;
  /** For each character of the heaviest sequence, its share of the sum. */
  readonly shares: readonly number[];
}

/**
 * Find the heaviest sequences of symbols whose exclusive-or is zero, and the sum over all such sequences.
 *
 * The error check is part of the code here: 128 states hold the parity so far. The first path is the most
 * likely whole call and the second the runner-up, both exactly, as long as the runner-up lies within
 * {@link TRELLIS_REACH} of the best; one that lies further off is left out.
 *
 * @param weights - `weights[128 * position + symbol]`, natural log
 * @param length - count of positions, the error-check character last
 * @param most - how many paths to return
 */
export function solveTrellis(weights: Float64Array, length: number, most: number): TrellisAnswer {
  let kept = keep(weights, length, REACH);
  let forward = sweep(kept, length, 1);
  if ((forward.heaviest[length * STATES] as number) < Math.exp(-SLACK)) {
    kept = keep(weights, length, Number.POSITIVE_INFINITY);
    forward = sweep(kept, length, 1);
  }
  const best = forward.heaviest[length * STATES] as number;
  const backward = sweep(kept, length, -1);
  const sum = forward.sum[length * STATES] as number;
  const main = trace(forward, backward, length, length, 0);
  const shares = main.map((symbol, position) => {
    let share = 0;
    for (let state = 0; state < STATES; state++)
      share +=
        (forward.sum[position * STATES + state] as number) *
        (backward.sum[(position + 1) * STATES + (state ^ symbol)] as number);
    return (share * kept.share(position, symbol)) / sum;
  });
  const paths: [Path, ...Path[]] = [{ characters: main, weight: kept.top + Math.log(best) }];
  const seen = new Set([main.join()]);
  for (const sidetrack of sidetracks(kept, forward, backward, main, best * Math.exp(-TRELLIS_REACH))) {
    if (paths.length >= most) break;
    const characters = trace(
      forward,
      backward,
      length,
      sidetrack.position,
      sidetrack.state,
      sidetrack.symbol,
    );
    const key = characters.join();
    if (seen.has(key)) continue;
    seen.add(key);
    paths.push({ characters, weight: kept.top + Math.log(sidetrack.value) });
  }
  return { paths, total: kept.top + Math.log(sum), shares };
}

/** The symbols worth following at each position, with their weights relative to the position's heaviest. */
interface Kept {
  readonly first: Int32Array;
  readonly symbol: Uint8Array;
  readonly relative: Float64Array;
  /** Sum over positions of the heaviest weight. */
  readonly top: number;
  share(position: number, symbol: number): number;
}

function keep(weights: Float64Array, length: number, reach: number): Kept {
  const first = new Int32Array(length + 1);
  const symbol = new Uint8Array(length * STATES);
  const relative = new Float64Array(length * STATES);
  let count = 0;
  let top = 0;
  for (let position = 0; position < length; position++) {
    let heaviest = Number.NEGATIVE_INFINITY;
    for (let s = 0; s < STATES; s++) heaviest = Math.max(heaviest, weights[position * STATES + s] as number);
    for (let s = 0; s < STATES; s++) {
      const below = (weights[position * STATES + s] as number) - heaviest;
      if (below < -reach) continue;
      symbol[count] = s;
      relative[count++] = Math.exp(below);
    }
    top += heaviest;
    first[position + 1] = count;
  }
  const share = (position: number, sought: number): number => {
    for (let at = first[position] as number; at < (first[position + 1] as number); at++)
      if (symbol[at] === sought) return relative[at] as number;
    return 0;
  };
  return { first, symbol, relative, top, share };
}

/** For each position and parity: sum over, and heaviest of, the sequences that lead there from one side. */
interface Sweep {
  readonly sum: Float64Array;
  readonly heaviest: Float64Array;
  /** Symbol by which the heaviest arrives. */
  readonly by: Uint8Array;
}

function sweep(kept: Kept, length: number, direction: 1 | -1): Sweep {
  const sum = new Float64Array((length + 1) * STATES);
  const heaviest = new Float64Array((length + 1) * STATES);
  const by = new Uint8Array((length + 1) * STATES);
  const start = direction === 1 ? 0 : length;
  sum[start * STATES] = 1;
  heaviest[start * STATES] = 1;
  for (let step = 0; step < length; step++) {
    const node = start + direction * step;
    const position = direction === 1 ? node : node - 1;
    const from = node * STATES;
    const to = (node + direction) * STATES;
    const low = kept.first[position] as number;
    const high = kept.first[position + 1] as number;
    for (let state = 0; state < STATES; state++) {
      const sumHere = sum[from + state] as number;
      if (sumHere === 0) continue;
      const heaviestHere = heaviest[from + state] as number;
      for (let at = low; at < high; at++) {
        const symbol = kept.symbol[at] as number;
        const relative = kept.relative[at] as number;
        const target = to + (state ^ symbol);
        sum[target] = (sum[target] as number) + sumHere * relative;
        const value = heaviestHere * relative;
        if (value > (heaviest[target] as number)) {
          heaviest[target] = value;
          by[target] = symbol;
        }
      }
    }
  }
  return { sum, heaviest, by };
}

/** Through which symbol and parity the heaviest sequence with that symbol at that position goes. */
interface Sidetrack {
  readonly value: number;
  readonly position: number;
  readonly state: number;
  readonly symbol: number;
}

/** For every position and symbol off the main path, the heaviest sequence that has it there, heaviest first. */
function sidetracks(
  kept: Kept,
  forward: Sweep,
  backward: Sweep,
  main: readonly number[],
  floor: number,
): Sidetrack[] {
  const found: Sidetrack[] = [];
  main.forEach((mainSymbol, position) => {
    const before = position * STATES;
    const after = before + STATES;
    for (let at = kept.first[position] as number; at < (kept.first[position + 1] as number); at++) {
      const symbol = kept.symbol[at] as number;
      if (symbol === mainSymbol) continue;
      let value = 0;
      let through = 0;
      for (let state = 0; state < STATES; state++) {
        const here =
          (forward.heaviest[before + state] as number) *
          (backward.heaviest[after + (state ^ symbol)] as number);
        if (here > value) {
          value = here;
          through = state;
        }
      }
      value *= kept.relative[at] as number;
      if (value >= floor) found.push({ value, position, state: through, symbol });
    }
  });
  return found.sort((one, other) => other.value - one.value);
}

/** The heaviest sequence through a node, by way of `symbol` from there when it is given. */
function trace(
  forward: Sweep,
  backward: Sweep,
  length: number,
  node: number,
  state: number,
  symbol?: number,
): number[] {
  const characters: number[] = new Array(length);
  let parity = state;
  for (let at = node; at > 0; at--) {
    characters[at - 1] = forward.by[at * STATES + parity] as number;
    parity ^= characters[at - 1] as number;
  }
  if (symbol === undefined) return characters;
  characters[node] = symbol;
  parity = state ^ symbol;
  for (let at = node + 1; at < length; at++) {
    characters[at] = backward.by[at * STATES + parity] as number;
    parity ^= characters[at] as number;
  }
  return characters;
}
