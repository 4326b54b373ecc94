import { type Branches, normalise, PHASES, step, stepBack, wander } from './phase-trellis.ts';

const SYMBOLS = 128;
const INFORMATION_BITS = 7;
const BITS = 10;

/** Zeros among the seven information bits of each symbol: the value of its three check bits. */
const ZEROS: Uint8Array = /* @__PURE__ */ Uint8Array.from({ length: SYMBOLS }, (_, symbol) => {
  let zeros = INFORMATION_BITS;
  for (let rest = symbol; rest > 0; rest &= rest - 1) zeros--;
  return zeros;
});

/** Working space of {@link smoothWords} for so many words. */
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
export function smoothWords(
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
    wander(backward, (j + 1) * PHASES, other, 0, BITS);
    checkBitsBack(branches, j, other, byZeros);
    informationBack(branches, j, known[j], space, backward, j * PHASES);
    normalise(backward, j * PHASES);
  }

  forward.fill(1 / PHASES, 0, PHASES);
  const top = tree[INFORMATION_BITS] as Float64Array;
  for (let j = 0; j < words; j++) {
    grow(branches, j, forward, tree);
    wander(backward, (j + 1) * PHASES, other, 0, BITS);
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
    wander(moved, 0, forward, (j + 1) * PHASES, BITS);
    normalise(forward, (j + 1) * PHASES);
  }
}

/** ln P(sound | these symbols) for a stream known from its first word, phase unknown, against ten free bits a word. */
export function likelihoodOfStream(branches: Branches, words: number, symbols: readonly number[]): number {
  const { likelihood } = branches;
  let now = new Float64Array(PHASES).fill(1 / PHASES);
  let next = new Float64Array(PHASES);
  let sum = 0;
  for (let j = 0; j < words; j++) {
    const symbol = symbols[j];
    for (let bit = 0; bit < BITS; bit++) {
      const k = j * BITS + bit;
      next.fill(0);
      if (symbol === undefined) {
        step(now, 0, likelihood, 2 * k * PHASES, 0, next, 0);
        step(now, 0, likelihood, (2 * k + 1) * PHASES, 1, next, 0);
        sum -= Math.LN2;
      } else {
        const value = bitOf(symbol, bit);
        step(now, 0, likelihood, (2 * k + value) * PHASES, value, next, 0);
      }
      [now, next] = [next, now];
    }
    wander(now, 0, next, 0, BITS);
    [now, next] = [next, now];
    sum += normalise(now, 0);
  }
  return sum;
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
