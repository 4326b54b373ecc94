import type { CharacterTables } from './character-table.ts';
import { heardOfExpansions } from './expansion-reading.ts';
import { logSum } from './log-sum.ts';
import { streamLength } from './sequence.ts';

/** Natural log of the share of calls with nothing after them. */
const NOTHING = /* @__PURE__ */ Math.log(0.6);
/** Share of calls after which another begins while the decoder still looks. */
const FOLLOWED = 0.1;

/**
 * Log-likelihood of what follows a call, against random bits: nothing, an expansion, or another call.
 *
 * Without this, a reading that takes what follows for part of the call would seem to explain more.
 *
 * @param end - index of the call's end of sequence, the format specifier counted once
 */
export function trailingLikelihood(tables: CharacterTables, end: number): number {
  return logSum(heardWithoutExpansion(tables, end), heardOfExpansions(tables, end));
}

/** The same, no expansion being there. */
export function heardWithoutExpansion(tables: CharacterTables, end: number): number {
  return logSum(NOTHING, heardOfNextCall(tables, end));
}

/** A next call whose words fall on those of this one; words that fall between carry no characters anyhow. */
function heardOfNextCall(tables: CharacterTables, end: number): number {
  const first = streamLength(end);
  const last = 2 * tables.rows;
  const share = Math.log((2 * FOLLOWED) / (last - first));
  let sum = Number.NEGATIVE_INFINITY;
  for (let start = first; start < last; start += 2) {
    const phasing = tables.phasingAt(start);
    if (phasing > 0) sum = logSum(sum, share + phasing + tables.row(start / 2 + 1));
  }
  return sum;
}
