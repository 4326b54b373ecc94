import { LONGEST_CALL } from './call-shape.ts';
import { LONGEST_EXPANSION } from './expansion.ts';
import { type CharacterKind, fieldPriors } from './field-prior.ts';
import { logSum } from './log-sum.ts';
import { LEFT_OUT, RUINED } from './loss.ts';
import {
  characterPositions,
  DX_PHASING,
  DX_PHASING_SLOTS,
  endPositions,
  RX_PHASING,
  streamLength,
} from './sequence.ts';

const SYMBOLS = 128;
/** Rows of a table: the longest call and the longest expansion after it, each with its end and error check. */
const ROWS: number = /* @__PURE__ */ (() => LONGEST_CALL + LONGEST_EXPANSION + 8)();
/** DX slots of a call before its second character. */
const SLOTS_BEFORE: number = DX_PHASING_SLOTS + 1;
/** Natural log of the share of places after a call where another begins. */
const BEGUN = /* @__PURE__ */ Math.log(1e-3);
/** Stream positions that matter. */
export const LONGEST_STREAM: number = /* @__PURE__ */ streamLength(ROWS);

/**
 * What all copies of a character say together. Every value is the natural log of a likelihood against that of
 * random bits, at `128 * index + symbol`, index 0 being the format specifier.
 */
export interface CharacterTables {
  /** Character `index`, or the error check. */
  readonly character: Float64Array;
  /** The end of sequence, if it is character `index`: with its two further copies. */
  readonly end: Float64Array;
  /** The fourteen phasing words. */
  readonly phasing: number;
  /** Count of characters in the tables. */
  readonly rows: number;
  /** The fourteen words of a next call's phasing that begins at a stream position. */
  phasingAt(position: number): number;
  /** Each word separately, at `128 * position + symbol`. */
  readonly heard: Float64Array;
  /** The same as a likelihood and not its logarithm. */
  readonly likelihood: Float64Array;
  /**
   * What was heard of a character that is one of a kind, all symbols summed by what is expected of the kind; as
   * the end of sequence when `last`. Of an error check (`null`) every symbol is as likely.
   */
  mean(kind: CharacterKind | null, index: number, last: boolean): number;
  /** The most that was heard of characters of any kind, and of calls among them, one after another from an index on. */
  row(first: number): number;
  /**
   * A next call, anywhere from a stream position on, whose words fall on those of this one; words that fall between
   * carry no characters anyhow.
   */
  nextCall(first: number): number;
}

/**
 * Soften what each word says by the chance that it was lost or ruined, and fill up to {@link LONGEST_STREAM} with
 * words that were not heard.
 *
 * @param metrics - per stream position and symbol, natural log of the likelihood against that of random bits
 * @param lost - how likely it is of each stream position that reception was lost there, 0 to 1; none by default
 */
export function withFloor(metrics: ArrayLike<number>, lost: ArrayLike<number> = []): Float64Array {
  const heard = new Float64Array(LONGEST_STREAM * SYMBOLS);
  const length = Math.min(metrics.length, heard.length);
  for (let at = 0; at < length; at++) {
    const received = (1 - RUINED) * (1 - (lost[Math.floor(at / SYMBOLS)] ?? 0));
    heard[at] = Math.log(received * Math.exp(metrics[at] as number) + 1 - received);
  }
  return heard;
}

/**
 * Add the copies of every character up.
 *
 * @param heard - from {@link withFloor}
 */
export function combineCopies(heard: Float64Array): CharacterTables {
  const character = new Float64Array(ROWS * SYMBOLS);
  const end = new Float64Array(ROWS * SYMBOLS);
  for (let row = 0; row < ROWS; row++) {
    for (const position of characterPositions(row)) addRow(character, row, heard, position);
    for (const position of endPositions(row)) addRow(end, row, heard, position);
  }
  for (let at = 0; at < ROWS * SYMBOLS; at++)
    end[at] = (character[at] as number) + Math.log((1 - LEFT_OUT) * Math.exp(end[at] as number) + LEFT_OUT);
  const characterKinds = Object.keys(fieldPriors());
  const known = new Float64Array(ROWS * 2 * (characterKinds.length + 1)).fill(Number.NaN);
  const mean = (kind: CharacterKind | null, index: number, last: boolean): number => {
    const column =
      2 * (kind === null ? characterKinds.length : characterKinds.indexOf(kind)) + (last ? 1 : 0);
    const at = ROWS * column + index;
    if (Number.isNaN(known[at])) known[at] = meanOf(last ? end : character, index, kind);
    return known[at] as number;
  };
  const phasingAt = (position: number): number =>
    phasingPlaces.reduce((sum, at) => sum + (heard[SYMBOLS * position + at] ?? 0), 0);
  const row = rowsFrom((index) => mean('free', index, false), phasingAt);
  const nextCall = nextCalls(phasingAt, row);
  return {
    character,
    end,
    phasing: phasingAt(0),
    rows: ROWS,
    phasingAt,
    heard,
    likelihood: heard.map(Math.exp),
    mean,
    row,
    nextCall,
  };
}

/** The most that was heard from each index on: characters, and calls that begin among them. */
function rowsFrom(
  free: (index: number) => number,
  phasingAt: (position: number) => number,
): (first: number) => number {
  let most: Float64Array | undefined;
  return (first) => {
    if (most === undefined) {
      most = new Float64Array(ROWS + SLOTS_BEFORE + 2);
      for (let index = ROWS - 1; index >= 0; index--) {
        // Phasing begins in the DX slot of this character; what the next call says begins after its format specifier.
        const next =
          BEGUN + phasingAt(2 * (SLOTS_BEFORE + index)) + (most[index + SLOTS_BEFORE + 1] as number);
        most[index] = Math.max(0, free(index) + (most[index + 1] as number), next);
      }
    }
    return most[first] ?? 0;
  };
}

/** What was heard of a next call that begins at a stream position or after it, each place as likely. */
function nextCalls(
  phasingAt: (position: number) => number,
  row: (first: number) => number,
): (first: number) => number {
  let sums: Float64Array | undefined;
  return (first: number): number => {
    const place = Math.ceil(first / 2);
    if (place >= ROWS) return Number.NEGATIVE_INFINITY;
    if (sums === undefined) {
      sums = new Float64Array(ROWS + 1).fill(Number.NEGATIVE_INFINITY);
      for (let each = ROWS - 1; each >= 0; each--) {
        const phasing = phasingAt(2 * each);
        const heard = phasing > 0 ? phasing + row(each + 1) : Number.NEGATIVE_INFINITY;
        sums[each] = logSum(sums[each + 1] as number, heard);
      }
    }
    return (sums[place] as number) - Math.log(ROWS - place);
  };
}

/** One row, with what is expected of its kind added. */
export function rowOf(table: Float64Array, index: number, kind: CharacterKind | null): Float64Array {
  const row = table.slice(SYMBOLS * index, SYMBOLS * (index + 1));
  if (kind === null) return row;
  const prior = fieldPriors()[kind];
  for (let symbol = 0; symbol < SYMBOLS; symbol++)
    row[symbol] = (row[symbol] as number) + (prior[symbol] as number);
  return row;
}

function meanOf(table: Float64Array, index: number, kind: CharacterKind | null): number {
  const prior = kind === null ? null : fieldPriors()[kind];
  let sum = 0;
  for (let symbol = 0; symbol < SYMBOLS; symbol++)
    sum += Math.exp(
      (table[SYMBOLS * index + symbol] as number) + (prior === null ? 0 : (prior[symbol] as number)),
    );
  return Math.log(prior === null ? sum / SYMBOLS : sum);
}

/** Where the fourteen right phasing words stand in a table of stream positions. */
const phasingPlaces: readonly number[] = /* @__PURE__ */ (() => [
  ...Array.from({ length: DX_PHASING_SLOTS }, (_, slot) => SYMBOLS * 2 * slot + DX_PHASING),
  ...RX_PHASING.map((symbol, slot) => SYMBOLS * (2 * slot + 1) + symbol),
])();

function addRow(table: Float64Array, row: number, heard: Float64Array, position: number): void {
  for (let symbol = 0; symbol < SYMBOLS; symbol++) {
    const at = SYMBOLS * row + symbol;
    table[at] = (table[at] as number) + (heard[SYMBOLS * position + symbol] as number);
  }
}
