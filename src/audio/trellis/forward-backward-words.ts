import { type Branches, normalise, PHASES, step, stepBack, walkPhase } from './phase-trellis.ts';

const SYMBOLS = 128;
const INFORMATION_BITS = 7;
const BITS = 10;

/** Zeros among the seven information bits of each symbol: the value of its three check bits. */
const ZEROS: Uint8Array = /* @__PURE__ */ Uint8Array.from({ length: SYMBOLS }, (_, symbol) => {
  let zeros = INFORMATION_BITS;
  for (let rest = symbol; rest > 0; rest &= rest - 1) zeros--;
  return zeros;
});

/** Working space of {@link forwardBackwardWords} for so many words. */
export interface WordSpace {
  readonly forward: Float64Array;
  readonly backward: Float64Array;
  readonly tree: readonly Float64Array[];
  readonly byZeros: Float64Array;
  readonly chance: Float64Array;
}

export function createWordSpace(words: number): WordSpace {
  return {
    forward: new Float64Array((words + 1) * PHASES),
    backward: new Float64Array((words + 1) * PHASES),
    tree: Array.from({ length: INFORMATION_BITS + 1 }, (_, depth) => new Float64Array(PHASES << depth)),
    byZeros: new Float64Array(8 * PHASES),
    chance: new Float64Array(SYMBOLS),
  };
}

/**
 * How likely each of the 128 ten-bit words makes the sound at each place of the stream, given what comes before and
 * after: natural logarithm against ten free bits, `metrics[128 * j + symbol]`.
 *
 * A phase-continuous receiver errs in pairs of neighbouring bits (the phase must come back), which single bit
 * values cannot tell; whole words can.
 *
 * @param known - the symbol of each word known beforehand, from the first on; the others may be any of the 128
 */
export function forwardBackwardWords(
  branches: Branches,
  words: number,
  known: readonly (number | undefined)[],
  space: WordSpace,
  metrics: Float32Array,
): void {
  const { forward, backward, tree, byZeros } = space;
  const moved = new Float64Array(PHASES);
  const other = new Float64Array(PHASES);

  backward.fill(1 / PHASES, words * PHASES, (words + 1) * PHASES);
  for (let j = words - 1; j >= 0; j--) {
    walkPhase(backward, (j + 1) * PHASES, other, 0, BITS);
    checkBitsBack(branches, j, other, byZeros);
    informationBack(branches, j, known[j], space, backward, j * PHASES);
    normalise(backward, j * PHASES);
  }

  forward.fill(1 / PHASES, 0, PHASES);
  const top = tree[INFORMATION_BITS] as Float64Array;
  for (let j = 0; j < words; j++) {
    grow(branches, j, forward, tree);
    walkPhase(backward, (j + 1) * PHASES, other, 0, BITS);
    checkBitsBack(branches, j, other, byZeros);
    const free = freeBits(branches, j, forward, other);
    for (let symbol = 0; symbol < SYMBOLS; symbol++) {
      const z = (ZEROS[symbol] as number) * PHASES;
      const v = symbol * PHASES;
      let sum = 0;
      for (let s = 0; s < PHASES; s++) sum += (top[v + s] as number) * (byZeros[z + s] as number);
      metrics[SYMBOLS * j + symbol] = Math.log((sum + 1e-280) / (free + 1e-280));
    }
    byZeros.fill(0);
    const given = known[j];
    for (let symbol = 0; symbol < SYMBOLS; symbol++) {
      if (given !== undefined && symbol !== given) continue;
      const z = (ZEROS[symbol] as number) * PHASES;
      const v = symbol * PHASES;
      for (let s = 0; s < PHASES; s++) byZeros[z + s] = (byZeros[z + s] as number) + (top[v + s] as number);
    }
    checkBitsOn(branches, j, byZeros, moved);
    walkPhase(moved, 0, forward, (j + 1) * PHASES, BITS);
    normalise(forward, (j + 1) * PHASES);
  }
}

/** Chance that reception is lost from one word to the next, that it comes back, and that it is lost at first. */
const LOSE = 4e-3;
const REGAIN = 0.08;
const LOST_AT_FIRST = 0.15;

/**
 * How likely whole streams make the sound: ln P(sound | symbols), phase unknown, against free bits throughout.
 *
 * Reception may be lost for some words or for good (two states with memory): where it is lost, bits are free. After the
 * last symbol they are free too.
 *
 * @returns a function of the symbols, the first word's first
 */
export function streamLikelihood(branches: Branches, words: number): (symbols: readonly number[]) => number {
  const { likelihood } = branches;
  let now = new Float64Array(PHASES);
  let next = new Float64Array(PHASES);
  const runFree = (j: number, from: Float64Array): void => {
    now.set(from);
    for (let k = j * BITS; k < (j + 1) * BITS; k++) {
      next.fill(0);
      step(now, 0, likelihood, 2 * k * PHASES, 0, next, 0);
      step(now, 0, likelihood, (2 * k + 1) * PHASES, 1, next, 0);
      [now, next] = [next, now];
    }
    walkPhase(now, 0, from, 0, BITS);
  };
  const runKnown = (j: number, symbol: number, from: Float64Array): void => {
    now.set(from);
    for (let bit = 0; bit < BITS; bit++) {
      const value = bitOf(symbol, bit);
      next.fill(0);
      step(now, 0, likelihood, (2 * (j * BITS + bit) + value) * PHASES, value, next, 0);
      [now, next] = [next, now];
    }
    walkPhase(now, 0, from, 0, BITS);
  };

  // What is heard from word j on when its bits are free: by phase, and as a logarithm.
  const backward = new Float64Array((words + 1) * PHASES).fill(1 / PHASES);
  const rest = new Float64Array(words + 1);
  for (let j = words - 1; j >= 0; j--) {
    walkPhase(backward, (j + 1) * PHASES, now, 0, BITS);
    for (let k = (j + 1) * BITS - 1; k >= j * BITS; k--) {
      next.fill(0);
      stepBack(now, 0, likelihood, 2 * k * PHASES, 0, next, 0);
      stepBack(now, 0, likelihood, (2 * k + 1) * PHASES, 1, next, 0);
      [now, next] = [next, now];
    }
    backward.set(now, j * PHASES);
    rest[j] = (rest[j + 1] as number) + normalise(backward, j * PHASES) - BITS * Math.LN2;
  }
  const onFrom = (j: number, phases: Float64Array): number => {
    let sum = 0;
    for (let s = 0; s < PHASES; s++) sum += (phases[s] as number) * (backward[j * PHASES + s] as number);
    return Math.log(sum) + (rest[j] as number);
  };
  const free = onFrom(0, new Float64Array(PHASES).fill(1 / PHASES));

  return (symbols) => {
    const received = new Float64Array(PHASES).fill((1 - LOST_AT_FIRST) / PHASES);
    const lost = new Float64Array(PHASES).fill(LOST_AT_FIRST / PHASES);
    const length = Math.min(words, symbols.length);
    let sum = 0;
    for (let j = 0; j < length; j++) {
      runKnown(j, symbols[j] as number, received);
      runFree(j, lost);
      let total = 0;
      for (let s = 0; s < PHASES; s++) {
        const here = received[s] as number;
        const gone = (lost[s] as number) / (1 << BITS);
        received[s] = (1 - LOSE) * here + REGAIN * gone;
        lost[s] = LOSE * here + (1 - REGAIN) * gone;
        total += here + gone;
      }
      for (let s = 0; s < PHASES; s++) {
        received[s] = (received[s] as number) / total;
        lost[s] = (lost[s] as number) / total;
      }
      sum += Math.log(total);
    }
    for (let s = 0; s < PHASES; s++) received[s] = (received[s] as number) + (lost[s] as number);
    return sum + onFrom(length, received) - free;
  };
}

/** Bit 0 to 9 of the ten-bit word of a symbol: information least significant first, then the count of zeros. */
function bitOf(symbol: number, bit: number): number {
  return bit < INFORMATION_BITS ? (symbol >> bit) & 1 : ((ZEROS[symbol] as number) >> (BITS - 1 - bit)) & 1;
}

/** The phases after each of the 2, 4 ... 128 beginnings of word j; the row of a beginning is the number its bits make. */
function grow(branches: Branches, j: number, forward: Float64Array, tree: readonly Float64Array[]): void {
  (tree[0] as Float64Array).set(forward.subarray(j * PHASES, (j + 1) * PHASES));
  for (let depth = 0; depth < INFORMATION_BITS; depth++) {
    const from = tree[depth] as Float64Array;
    const to = tree[depth + 1] as Float64Array;
    to.fill(0);
    const row = 2 * (j * BITS + depth) * PHASES;
    for (let node = 0; node < 1 << depth; node++) {
      step(from, node * PHASES, branches.likelihood, row, 0, to, node * PHASES);
      step(from, node * PHASES, branches.likelihood, row + PHASES, 1, to, (node | (1 << depth)) * PHASES);
    }
  }
}

/** From what follows word j back through its check bits, for each count of zeros. */
function checkBitsBack(branches: Branches, j: number, after: Float64Array, byZeros: Float64Array): void {
  let now = new Float64Array(PHASES);
  let next = new Float64Array(PHASES);
  for (let zeros = 0; zeros < 8; zeros++) {
    now.set(after);
    for (let bit = BITS - 1; bit >= INFORMATION_BITS; bit--) {
      const value = (zeros >> (BITS - 1 - bit)) & 1;
      next.fill(0);
      stepBack(now, 0, branches.likelihood, (2 * (j * BITS + bit) + value) * PHASES, value, next, 0);
      [now, next] = [next, now];
    }
    byZeros.set(now, zeros * PHASES);
  }
}

/** From the phases after the information bits, by count of zeros, on through the check bits of word j. */
function checkBitsOn(branches: Branches, j: number, byZeros: Float64Array, into: Float64Array): void {
  let now = new Float64Array(PHASES);
  let next = new Float64Array(PHASES);
  into.fill(0);
  for (let zeros = 0; zeros < 8; zeros++) {
    now.set(byZeros.subarray(zeros * PHASES, (zeros + 1) * PHASES));
    for (let bit = INFORMATION_BITS; bit < BITS; bit++) {
      const value = (zeros >> (BITS - 1 - bit)) & 1;
      next.fill(0);
      step(now, 0, branches.likelihood, (2 * (j * BITS + bit) + value) * PHASES, value, next, 0);
      [now, next] = [next, now];
    }
    for (let s = 0; s < PHASES; s++) into[s] = (into[s] as number) + (now[s] as number);
  }
}

/** From `byZeros` back through the information bits of word j: all words, or the known one. */
function informationBack(
  branches: Branches,
  j: number,
  given: number | undefined,
  space: WordSpace,
  into: Float64Array,
  at: number,
): void {
  const { tree, byZeros } = space;
  const top = tree[INFORMATION_BITS] as Float64Array;
  for (let symbol = 0; symbol < SYMBOLS; symbol++) {
    const z = (ZEROS[symbol] as number) * PHASES;
    if (given === undefined || symbol === given) top.set(byZeros.subarray(z, z + PHASES), symbol * PHASES);
    else top.fill(0, symbol * PHASES, (symbol + 1) * PHASES);
  }
  for (let depth = INFORMATION_BITS - 1; depth >= 0; depth--) {
    const from = tree[depth + 1] as Float64Array;
    const to = tree[depth] as Float64Array;
    to.fill(0);
    const row = 2 * (j * BITS + depth) * PHASES;
    for (let node = 0; node < 1 << depth; node++) {
      stepBack(from, node * PHASES, branches.likelihood, row, 0, to, node * PHASES);
      stepBack(from, (node | (1 << depth)) * PHASES, branches.likelihood, row + PHASES, 1, to, node * PHASES);
    }
  }
  into.set(tree[0] as Float64Array, at);
}

/** Mean likelihood of word j over all 1024 runs of ten bits. */
function freeBits(branches: Branches, j: number, forward: Float64Array, after: Float64Array): number {
  let now = forward.slice(j * PHASES, (j + 1) * PHASES);
  let next = new Float64Array(PHASES);
  for (let bit = 0; bit < BITS; bit++) {
    const row = 2 * (j * BITS + bit) * PHASES;
    next.fill(0);
    step(now, 0, branches.likelihood, row, 0, next, 0);
    step(now, 0, branches.likelihood, row + PHASES, 1, next, 0);
    [now, next] = [next, now];
  }
  let sum = 0;
  for (let s = 0; s < PHASES; s++) sum += (now[s] as number) * (after[s] as number);
  return sum / (1 << BITS);
}
