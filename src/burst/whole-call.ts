import { type CallShape, callShapes } from './call-shape.ts';
import { type CharacterTables, rowOf } from './character-table.ts';
import { fieldPriors } from './field-prior.ts';
import { logSum } from './log-sum.ts';
import { heardOfChange } from './sender-change.ts';
import { trailingLikelihood } from './trailing.ts';
import { solveTrellis } from './trellis.ts';

const SYMBOLS = 128;
/** Shapes of which this much less (natural log) was heard than of all others are not worth a trellis. */
const WORTHLESS = 12;
/** Shapes that get a trellis, at most: in a call cut short many are alike. */
export const MOST_SOLVED = 8;
/** Readings kept for comparison, at most. */
const LIST_LENGTH = 64;
/** Natural log of the share of calls whose error check is wrong as sent, or wrong alike in both its copies. */
const WRONG_CHECK = /* @__PURE__ */ Math.log(2e-3);

/** One reading of the whole call. */
export interface Reading {
  /**
   * Format specifier once, up to and with the end of sequence, then the error check: exclusive-or zero, unless what
   * was received is best explained by a wrong check.
   */
  readonly characters: readonly number[];
  /** Natural log of what was heard given this call, against random bits. */
  readonly heard: number;
  /** Natural log of the prior of exactly this call, and of what follows it. */
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
  /** Share of the sum, 0 to 1, of calls in which the sender changes on the way. */
  readonly changed: number;
}

/**
 * Weigh every call that may have been sent: all copies, the field expectations and the error check as one code.
 *
 * @param tables - what all copies of each character say
 * @param least - natural log of the weight below which a call is not worth looking for
 * @param most - how many shapes are looked into
 * @returns `null` when no call can weigh that much
 */
export function weighWholeCall(
  tables: CharacterTables,
  least: number,
  most: number = MOST_SOLVED,
): WholeCall | null {
  const promising = byPromise(tables);
  const found = new Map<string, readonly number[]>();
  let total = Number.NEGATIVE_INFINITY;
  let best = Number.NEGATIVE_INFINITY;
  let shares: readonly number[] = [];
  let changed = Number.NEGATIVE_INFINITY;
  let solved = 0;
  for (const { shape, expected, trailing } of promising) {
    // What is not worth a trellis still counts, as what it weighs on average.
    if (solved === most || expected < Math.max(total - WORTHLESS, least - tables.phasing))
      total = logSum(total, expected);
    else {
      solved++;
      const extra = Math.log(shape.share) + trailing;
      const weights = weightsOf(tables, shape);
      const answer = solveTrellis(weights, shape.kinds.length + 1, LIST_LENGTH);
      total = logSum(total, answer.total + extra);
      // Of all calls, whatever their check, those whose check is right are one in 128 and weighed already.
      const wrong = -Math.expm1(Math.min(answer.total + extra - Math.log(SYMBOLS) - expected, 0));
      if (wrong > 0) total = logSum(total, expected + Math.log(wrong) + WRONG_CHECK);
      changed = logSum(changed, expected + heardOfChange(tables, shape.kinds));
      for (const { characters } of answer.paths) found.set(characters.join(), characters);
      const plain = plainReading(weights);
      found.set(plain.join(), plain);
      const weight = answer.paths[0].weight + extra;
      if (weight > best) ({ shares } = answer);
      best = Math.max(best, weight);
    }
  }
  const readings = [...found.values()].map((characters) => ({
    characters,
    heard: tables.phasing + heardOf(tables, characters),
    prior: priorOf(characters, promising),
  }));
  readings.sort((one, other) => other.heard + other.prior - one.heard - one.prior);
  const [first, ...others] = readings.slice(0, LIST_LENGTH);
  if (first === undefined) return null;
  const all = logSum(total, changed);
  return {
    readings: [first, ...others],
    total: tables.phasing + all,
    shares,
    changed: Math.exp(changed - all),
  };
}

/** A shape and what was heard of all calls that have it. */
interface Prospect {
  readonly shape: CallShape;
  /** Natural log of what was heard and expected, the error check left aside. */
  readonly expected: number;
  /** The part of it that follows the call. */
  readonly trailing: number;
}

/** Every shape, the most promising first. */
function byPromise(tables: CharacterTables): Prospect[] {
  const known = new Map<number, number>();
  const prospects = callShapes().map((shape) => {
    const end = shape.kinds.length - 1;
    const trailing = known.get(end) ?? trailingLikelihood(tables, end);
    known.set(end, trailing);
    let expected = Math.log(shape.share) + tables.mean(null, end + 1, false) + trailing;
    shape.kinds.forEach((kind, index) => {
      expected += tables.mean(kind, index, index === end);
    });
    return { shape, expected, trailing };
  });
  return prospects.sort((one, other) => other.expected - one.expected);
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

/** The heaviest symbol of each row, whatever the error check says. */
function plainReading(weights: Float64Array): number[] {
  const characters: number[] = [];
  for (let row = 0; row < weights.length; row += SYMBOLS) {
    let best = 0;
    for (let symbol = 1; symbol < SYMBOLS; symbol++)
      if ((weights[row + symbol] as number) > (weights[row + best] as number)) best = symbol;
    characters.push(best);
  }
  return characters;
}

function heardOf(tables: CharacterTables, characters: readonly number[]): number {
  const end = characters.length - 2;
  let sum = 0;
  characters.forEach((symbol, index) => {
    sum += (index === end ? tables.end : tables.character)[SYMBOLS * index + symbol] as number;
  });
  return sum;
}

function priorOf(characters: readonly number[], prospects: readonly Prospect[]): number {
  const priors = fieldPriors();
  let prior = Number.NEGATIVE_INFINITY;
  for (const { shape, trailing } of prospects) {
    if (shape.kinds.length !== characters.length - 1) continue;
    let each = Math.log(shape.share) + trailing;
    shape.kinds.forEach((kind, index) => {
      each += priors[kind][characters[index] as number] as number;
    });
    prior = logSum(prior, each);
  }
  return holds(characters) ? prior : prior + WRONG_CHECK - Math.log(SYMBOLS);
}

/** Whether the error check, the last of some characters, is that of the others. */
export function holds(characters: readonly number[]): boolean {
  return characters.reduce((parity, symbol) => parity ^ symbol, 0) === 0;
}
