import type { CharacterTables } from './character-table.ts';
import type { CharacterSource } from './reception.ts';
import { characterPositions, endPositions } from './sequence.ts';

const SYMBOLS = 128;

/** What the copies of each character of a call say by themselves. */
export interface CopyReport {
  /** Per character, error check last. */
  readonly sources: readonly CharacterSource[];
  /** Copies of the format specifier that alone say the same. */
  readonly formatCopies: number;
  /** Whether every character, the error check included, is what its own copies added up say. */
  readonly asSent: boolean;
  /** Whether anything was heard of the error check. */
  readonly checkHeard: boolean;
}

/**
 * Compare a call with what its copies say alone and added up, without expectations and without the error check.
 *
 * @param alone - per stream position the most likely symbol, -1 when nothing was heard or two are as likely
 * @param characters - format specifier once, end of sequence, then the error check
 */
export function compareCopies(
  tables: CharacterTables,
  alone: Int16Array,
  characters: readonly number[],
): CopyReport {
  const end = characters.length - 2;
  let formatCopies = 0;
  const sources = characters.map((symbol, index): CharacterSource => {
    const positions = [...characterPositions(index), ...(index === end ? endPositions(index) : [])];
    const agreeing = positions.filter((position) => alone[position] === symbol).length;
    if (index === 0) formatCopies = agreeing;
    const table = index === end ? tables.end : tables.character;
    if (mostLikely(table, SYMBOLS * index) !== symbol) return 'repaired';
    if (agreeing === positions.length) return 'both-copies';
    return agreeing > 0 ? 'one-copy' : 'soft';
  });
  return {
    sources,
    formatCopies,
    asSent: !sources.includes('repaired'),
    checkHeard: mostLikely(tables.character, SYMBOLS * (end + 1)) !== -1,
  };
}

/** The most likely of the 128 symbols from an offset on; -1 when another is just as likely. */
export function mostLikely(table: ArrayLike<number>, offset: number): number {
  let best = 0;
  let tied = false;
  for (let symbol = 1; symbol < SYMBOLS; symbol++) {
    const more = (table[offset + symbol] as number) - (table[offset + best] as number);
    if (more > 1e-9) {
      best = symbol;
      tied = false;
    } else if (more > -1e-9) tied = true;
  }
  return tied ? -1 : best;
}
