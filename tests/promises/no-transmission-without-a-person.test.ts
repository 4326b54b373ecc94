import { describe, expect, it } from 'vitest';
import { alphabet, attackStation, explore } from './station-histories.ts';

// Promised in docs/guide/station.md and in the comments of `step` and `restoreStation`: no distress, no answer and no
// retuning without a person or a clean call to this very station; a step never throws; every dialogue ends.
const DEPTH = 4;

describe('nothing goes on the air without a person', () => {
  it(`in any sequence of up to ${DEPTH} of ${Object.keys(alphabet).length} events, restores included`, () => {
    const { states, steps } = explore(DEPTH);
    console.log(`station: ${states} states reached by ${steps} steps, up to ${DEPTH} events deep`);
    expect(states).toBeGreaterThan(5000);
  }, 300_000);

  it('in random histories, with spoilt states brought back', () => {
    const { events, restores, spoilt, sent } = attackStation({ events: 20_000, seed: 1 });
    expect(events).toBeGreaterThanOrEqual(20_000);
    expect(Math.min(restores, spoilt, sent)).toBeGreaterThan(100);
  }, 120_000);
});
