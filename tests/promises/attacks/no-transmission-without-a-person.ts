// A station explored: every sequence of a small alphabet of events, restores included, equal states merged; and random
// histories with restores of whole and of spoilt states (docs/guide/station.md, `step`, `restoreStation`):
//
// - no distress, no answer and no retuning without a person or a clean call for this very station;
// - `step` never throws;
// - every dialogue ends.
import type { Attack } from '../support/attack.ts';
import { alphabet, attackStation, explore } from '../support/station-worlds.ts';

/** Events of `npm run attack`. */
export const usual = 1_000_000;

export const attack: Attack = ({ seed, count }) => {
  // One event more makes about ten times as many states.
  const depth = count < 1_000_000 ? 3 : 4;
  try {
    const { states, steps } = explore(depth);
    const letters = Object.keys(alphabet).length;
    const explored = { 'events in the alphabet': letters, depth, 'states reached': states, steps };
    return { counts: { ...explored, ...attackStation({ events: count, seed }) }, breaks: [] };
  } catch (error) {
    const how = error instanceof Error ? error.message : String(error);
    return { counts: { breaks: 1 }, breaks: [{ what: how.split(' at ')[0] ?? how, how }] };
  }
};
