import { type CallShape, callShapes } from './call-shape.ts';
import { type CharacterTables, rowOf } from './character-table.ts';
import { heardBehind, mostBehind } from './expansion-reading.ts';
import { fieldPriors } from './field-prior.ts';
import { logSum } from './log-sum.ts';
import { solveTrellis } from './trellis.ts';

const SYMBOLS = 128;
/** Shapes whose bound lies this far (natural log) below the best call are not worth a trellis. */
const WORTHLESS = 20;
/** Shapes that are solved, at most: in noise many look alike. */
const MOST_SHAPES = 24;
/** Readings kept for comparison, at most. */
const LIST_LENGTH = 16;

/** One reading of the whole call. */
export interface Reading {
  /** Format specifier once, up to and with the end of sequence, then the error check: exclusive-or zero. */
  readonly characters: readonly number[];
  /** Natural log of what was heard given this call, against random bits. */
  readonly heard: number;
  /** Natural log of how likely just this call is before anything is heard, and of what stands behind it. */
  readonly prior: number;
}

/** What the words say about the whole call. */
export interface WholeCall {
  /** Most likely first. */
  readonly readings: readonly [Reading, ...Reading[]];
  /** Natural log of what was heard and expected, summed over every call that was weighed, listed or not. */
  readonly total: number;
  /** For each character of the first reading, the share of the calls of its shape that have it; error check last. */
  readonly shares: readonly number[];
}

/**
 * Weigh every call that may have been sent: all copies, the field expectations and the error check as one code.
 *
 * @param tables - what all copies of each character say
 * @param least - natural log of the weight below which a call is not worth looking for
 * @returns `null` when no call can weigh that much
 */
export function weighWholeCall(tables: CharacterTables, least: number): WholeCall | null {
  const tried: CallShape[] = [];
  const found = new Map<string, readonly number[]>();
  const behind = new Map<number, number>();
  let total = Number.NEGATIVE_INFINITY;
  let best = Number.NEGATIVE_INFINITY;
  let shares: readonly number[] = [];
  for (const { shape, bound } of byPromise(tables)) {
    if (bound < Math.max(best - WORTHLESS, least - tables.phasing) || tried.length === MOST_SHAPES) break;
    const end = shape.kinds.length - 1;
    const after = behind.get(end) ?? heardBehind(tables, end);
    behind.set(end, after);
    const answer = solveTrellis(weightsOf(tables, shape), end + 2, LIST_LENGTH);
    const weight = (answer.paths[0]?.weight ?? Number.NEGATIVE_INFINITY) + Math.log(shape.share) + after;
    if (weight > best) {
      best = weight;
      shares = answer.shares;
    }
    total = logSum(total, answer.total + Math.log(shape.share) + after);
    for (const { characters } of answer.paths) found.set(characters.join(), characters);
    tried.push(shape);
  }
  const readings = [...found.values()].map((characters) => ({
    characters,
    heard: tables.phasing + heardOf(tables, characters),
    prior: priorOf(characters, tried) + (behind.get(characters.length - 2) ?? 0),
  }));
  readings.sort((one, other) => other.heard + other.prior - one.heard - one.prior);
  const [first, ...others] = readings.slice(0, LIST_LENGTH);
  return first === undefined ? null : { readings: [first, ...others], total: tables.phasing + total, shares };
}

/** Every shape with the greatest weight that a call of it can have when the error check is left aside. */
function byPromise(tables: CharacterTables): { readonly shape: CallShape; readonly bound: number }[] {
  const most = new Map<number, number>();
  const bounds = callShapes.map((shape) => {
    const end = shape.kinds.length - 1;
    const after = most.get(end) ?? mostBehind(tables, end);
    most.set(end, after);
    let bound = Math.log(shape.share) + tables.greatest(null, end + 1, false) + after;
    shape.kinds.forEach((kind, index) => {
      bound += tables.greatest(kind, index, index === end);
    });
    return { shape, bound };
  });
  return bounds.sort((one, other) => other.bound - one.bound);
}

/** What was heard and expected of each character of a shape; of the error check nothing is expected. */
function weightsOf(tables: CharacterTables, { kinds }: CallShape): Float64Array {
  const weights = new Float64Array(SYMBOLS * (kinds.length + 1));
  kinds.forEach((kind, index) => {
    const table = index === kinds.length - 1 ? tables.end : tables.character;
    weights.set(rowOf(table, index, kind), SYMBOLS * index);
  });
  weights.set(rowOf(tables.character, kinds.length, null), SYMBOLS * kinds.length);
  return weights;
}

function heardOf(tables: CharacterTables, characters: readonly number[]): number {
  const end = characters.length - 2;
  let sum = 0;
  characters.forEach((symbol, index) => {
    sum += (index === end ? tables.end : tables.character)[SYMBOLS * index + symbol] as number;
  });
  return sum;
}

function priorOf(characters: readonly number[], shapes: readonly CallShape[]): number {
  let prior = Number.NEGATIVE_INFINITY;
  for (const { kinds, share } of shapes) {
    if (kinds.length !== characters.length - 1) continue;
    const each = kinds.reduce(
      (sum, kind, index) => sum + (fieldPriors[kind][characters[index] as number] as number),
      0,
    );
    prior = logSum(prior, Math.log(share) + each);
  }
  return prior;
}
