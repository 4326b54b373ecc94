import { expect, it } from 'vitest';
import type { Attack } from './attack.ts';

/** The short run of an attack as a test. `SEED=7 npm test` tries others. */
export function holds(promise: string, attack: Attack, count: number): void {
  it(`holds: ${promise}`, { timeout: 300_000 }, async () => {
    const { counts, breaks } = await attack({ seed: Number(process.env.SEED ?? 1), count });
    expect(breaks.map(({ what, how }) => `${what}: ${how}`)).toEqual([]);
    // An attack that tries nothing holds nothing.
    expect(Object.values(counts).some((value) => typeof value === 'number' && value > 0)).toBe(true);
  });
}
