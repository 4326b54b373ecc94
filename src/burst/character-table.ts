import { LONGEST_CALL } from './call-shape.ts';
import { LONGEST_EXPANSION } from './expansion.ts';
import { type CharacterKind, fieldPriors } from './field-prior.ts';
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
  /**
   * What was heard of a character that is one of a kind, all symbols summed by what is expected of the kind; as
   * the end of sequence when `last`. Of an error check (`null`) every symbol is as likely.
   */
  mean(kind: CharacterKind | null, index: number, last: boolean): number;
  /** The most that was heard of characters of any kind, one after another from an index on. */
  row(first: number): number;
}

/**
 * Soften what each word says by the chance that it was lost or ruined, and fill up to {@link LONGEST_STREAM} with
 * words that were not heard.
 *
 * @param metrics - per stream position and symbol, natural log of the likelihood against that of random bits
 * @param lost - how likely it is of each stream position that reception was lost there, 0 to 1; none by default
 */
export function soften(metrics: ArrayLike<number>, lost: ArrayLike<number> = []): Float64Array {
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
 * @param heard - from {@link soften}
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
  const row = (first: number): number => {
    let most = 0;
    let sum = 0;
    for (let index = first; index < ROWS; index++) {
      sum += mean('free', index, false);
      most = Math.max(most, sum);
    }
    return most;
  };
  const phasingAt = (position: number): number =>
    phasingPlaces.reduce((sum, at) => sum + (heard[SYMBOLS * position + at] ?? 0), 0);
  return { character, end, phasing: phasingAt(0), rows: ROWS, phasingAt, heard, mean, row };
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
