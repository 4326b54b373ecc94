import type { ExpansionSet } from '../call/internal.ts';
import { type CharacterTables, rowOf } from './character-table.ts';
import { mostLikely } from './copies.ts';
import {
  type ExpansionLayout,
  LONGEST_EXPANSION,
  plausibleLayouts,
  sentLayout,
  setsFromCharacters,
} from './expansion.ts';
import type { CharacterKind } from './field-prior.ts';
import { logSum } from './log-sum.ts';
import { characterPositions, streamLength } from './sequence.ts';
import { solveTrellis } from './trellis.ts';

const SYMBOLS = 128;
/** Natural log of the share of calls that carry an expansion of one given length and layout. */
const SHARE = /* @__PURE__ */ Math.log(0.3 / LONGEST_EXPANSION);
/** Natural log of the share of calls followed by something that is not a whole expansion. */
const REMAINS = /* @__PURE__ */ Math.log(0.01);
/** Share of expansions after which another call begins while the decoder still looks. */
const FOLLOWED = 0.1;
/**
 * How often what follows is the rest of another call heard in step, against an expansion: that one begins with
 * any character and its error check is about more than what is left.
 */
const REST_OF_OTHER = 0.03;
/** An expansion is read when it is at least this sure: a clean call is used with it. */
const SURE = 0.9999;
/** Something unreadable is called a broken expansion when it is this sure to be one. */
const BROKEN = 0.99;
/** Share of expansions in whose front the closing pair of the call is not copied in RX. */
const UNCOPIED = 0.1;
/** Lengths that were heard this much less (natural log) than all else are not worth a trellis. */
const WORTHLESS = 8;
/** Lengths that get a trellis, at most. */
const MOST_SOLVED = 6;
/** Nor are those that were heard this much less than random bits. */
const UNLIKELY = 3;

/** What follows the basic call. */
export type ExpansionReading =
  | { readonly kind: 'none' }
  | { readonly kind: 'broken' }
  | {
      readonly kind: 'read';
      readonly sets: readonly ExpansionSet[];
      /** Stream positions up to and with the expansion's last. */
      readonly end: number;
      readonly layout: ExpansionLayout;
    };

/**
 * Looks for an expansion after a call, in every plausible layout. One counts as read only when its own error
 * check holds for its characters as received; whatever is found here, the basic call is not affected.
 *
 * @param tables - what all copies of each character say
 * @param end - index of the call's end of sequence, the format specifier counted once
 * @param without - natural log of what was heard there if it is no expansion, against random bits
 */
export function readExpansion(tables: CharacterTables, end: number, without: number): ExpansionReading {
  const { best, total } = weigh(tables, end, without);
  if (best === null || -Math.expm1(without - total) < BROKEN) return { kind: 'none' };
  if (Math.exp(best.weight - total) < SURE || !holdsAsSent(tables, best)) return { kind: 'broken' };
  const { layout, first, length } = best.attempt;
  return {
    kind: 'read',
    sets: setsFromCharacters(best.characters.slice(0, length)),
    end: streamLength(first + length),
    layout,
  };
}

/** Log-likelihood of expansions after a call, against random bits, without their error check. */
export function heardOfExpansions(tables: CharacterTables, end: number): number {
  return attemptsBehind(tables, end).reduce(
    (sum, { expected }) => logSum(sum, expected),
    heardOfRemains(tables, end),
  );
}

/** An expansion of which only some characters are left, with no end and no error check. */
function heardOfRemains(tables: CharacterTables, end: number): number {
  return REMAINS + tables.row(end + 1 + sentLayout.first);
}

function weigh(
  tables: CharacterTables,
  end: number,
  without: number,
): { readonly best: Solved | null; readonly total: number } {
  let total = logSum(without, heardOfRemains(tables, end));
  let best: Solved | null = null;
  const attempts = attemptsBehind(tables, end).sort((one, other) => other.expected - one.expected);
  for (const [rank, attempt] of attempts.entries()) {
    total = logSum(total, attempt.rest);
    if (rank >= MOST_SOLVED || attempt.expected < Math.max(total - WORTHLESS, -UNLIKELY)) {
      total = logSum(total, attempt.expected);
      continue;
    }
    const solved = solve(tables, attempt);
    total = logSum(total, solved.total);
    if (best === null || solved.weight > best.weight) best = solved;
  }
  return { best, total };
}

/** An expansion of one length in one layout, not yet decoded. */
interface Attempt {
  readonly layout: ExpansionLayout;
  /** Index of its first character, on the scale of the call. */
  readonly first: number;
  readonly length: number;
  /** Weight of the words before it, with how usual its length and layout are. */
  readonly gap: number;
  /** What was heard of all expansions of this length and layout, the error check left aside. */
  readonly expected: number;
  /** What was heard there of the rest of another call, of the same length. */
  readonly rest: number;
}

interface Solved {
  readonly attempt: Attempt;
  /** Characters, end of sequence, error check. */
  readonly characters: readonly number[];
  readonly weight: number;
  readonly total: number;
}

function attemptsBehind(tables: CharacterTables, end: number): Attempt[] {
  return plausibleLayouts.flatMap((layout) => {
    const first = end + 1 + layout.first;
    const before = SHARE + gapOf(tables, end, layout);
    const other =
      Math.log(REST_OF_OTHER) + tables.mean(null, first, false) - tables.mean(kindOf(0), first, false);
    let sum = 0;
    return Array.from({ length: LONGEST_EXPANSION }, (_, index) => {
      sum += tables.mean(kindOf(index), first + index, false);
      const last = first + index + 1;
      const closing = tables.mean('anyEnd', last, true) + tables.mean(null, last + 1, false);
      const gap = before + logSum(0, Math.log(FOLLOWED) + tables.nextCall(streamLength(last)));
      const expected = gap + sum + closing;
      return { layout, first, length: index + 1, gap, expected, rest: expected + other };
    });
  });
}

/** What the words between call and expansion say for a layout, beyond what the call itself made of them. */
function gapOf(tables: CharacterTables, end: number, layout: ExpansionLayout): number {
  // Where the expansion takes the place of the closing pair, the call must not count that pair as its own.
  if (!layout.closesCall) return tables.mean('anyEnd', end, false) - tables.mean('anyEnd', end, true);
  const closing = mostLikely(tables.end, SYMBOLS * end);
  const [, first = 0] = characterPositions(end + 2);
  const [, second = 0] = characterPositions(end + 3);
  const copies =
    (tables.heard[SYMBOLS * first + closing] ?? 0) + (tables.heard[SYMBOLS * second + closing] ?? 0);
  return Math.log((1 - UNCOPIED) * Math.exp(copies) + UNCOPIED);
}

function kindOf(index: number): CharacterKind {
  return index === 0 ? 'expansionSpecifier' : 'free';
}

function solve(tables: CharacterTables, attempt: Attempt): Solved {
  const { layout, first, length, gap } = attempt;
  const rows = Array.from({ length }, (_, index) => rowOf(tables.character, first + index, kindOf(index)));
  const end = rowOf(tables.end, first + length, 'anyEnd');
  const check = rowOf(tables.character, first + length + 1, null);
  const counted = layout.countsEnd ? [...rows, end, check] : [...rows, check];
  const weights = new Float64Array(SYMBOLS * counted.length);
  counted.forEach((row, index) => {
    weights.set(row, SYMBOLS * index);
  });
  const answer = solveTrellis(weights, counted.length, 1);
  const [path] = answer.paths;
  const characters = [...path.characters];
  const weight = gap + path.weight;
  const total = gap + answer.total;
  if (layout.countsEnd) return { attempt, characters, weight, total };
  const last = mostLikely(end, 0);
  characters.splice(length, 0, last);
  return { attempt, characters, weight: weight + (end[last] ?? 0), total: total + end.reduce(logSum) };
}

/** Whether every character's own copies, added up, say what was read. */
function holdsAsSent(tables: CharacterTables, { attempt: { first, length }, characters }: Solved): boolean {
  return characters.every((symbol, index) => {
    const table = index === length ? tables.end : tables.character;
    return mostLikely(table, SYMBOLS * (first + index)) === symbol;
  });
}
