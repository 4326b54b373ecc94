import type { CharacterTables } from './character-table.ts';
import { heardOfExpansions } from './expansion-reading.ts';
import { logSum } from './log-sum.ts';
import { streamLength } from './sequence.ts';

/** Natural log of the share of calls with nothing after them. */
const NOTHING = /* @__PURE__ */ Math.log(0.6);
/** Natural log of the share of calls after which another begins while the decoder still looks. */
const FOLLOWED = /* @__PURE__ */ Math.log(0.1);

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
  return logSum(NOTHING, FOLLOWED + tables.nextCall(streamLength(end)));
}
