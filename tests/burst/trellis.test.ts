import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveTrellis } from '../../src/burst/trellis.ts';
import { everySequence } from '../oracle/burst-trellis.ts';

/** Two to four positions, in each two to five symbols of some weight; the last has all that can be needed. */
const choices = fc.array(
  fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 7 }), fc.double({ min: -12, max: 5, noNaN: true })), {
    selector: ([symbol]) => symbol,
    minLength: 2,
    maxLength: 5,
  }),
  { minLength: 2, maxLength: 4 },
);
const NEVER = -500;

function weightsOf(rows: readonly (readonly (readonly [number, number])[])[]): Float64Array {
  const weights = new Float64Array(128 * rows.length).fill(NEVER);
  rows.forEach((row, position) => {
    for (const [symbol, weight] of row) weights[128 * position + symbol] = weight;
  });
  return weights;
}

/** Whether one of some sequences has a symbol at a position. */
const seenAt = (sequences: ReadonlyMap<string, number>, symbol: number, at: number) =>
  [...sequences.keys()].some((each) => Number(each.split(',')[at]) === symbol);

describe('trellis over the error check', () => {
  it('finds what trying every sequence finds: the best, the runner-up, the sum and the shares', () => {
    fc.assert(
      fc.property(
        choices,
        fc.array(fc.double({ min: -9, max: 0, noNaN: true }), { minLength: 8, maxLength: 8 }),
        (some, last) => {
          const rows = [...some, last.map((weight, symbol) => [symbol, weight] as const)];
          const expected = everySequence(rows);
          const answer = solveTrellis(weightsOf(rows), rows.length, 8);
          const [best, second] = expected.sequences;
          expect(answer.paths[0].weight).toBeCloseTo(best?.weight ?? 0, 6);
          if (second !== undefined && (best?.weight ?? 0) - second.weight < 13.9)
            expect(answer.paths[1]?.weight).toBeCloseTo(second.weight, 6);
          // Symbols left out for being far below the others may cost a little of the sum, never more than this.
          expect(answer.total).toBeLessThanOrEqual(expected.total + 1e-9);
          expect(answer.total).toBeGreaterThan(expected.total - 1e-4);
          answer.paths[0].characters.forEach((symbol, position) => {
            const agreeing = expected.sequences.filter(({ characters }) => characters[position] === symbol);
            const share = agreeing.reduce((sum, { weight }) => sum + Math.exp(weight - expected.total), 0);
            expect(answer.shares[position]).toBeCloseTo(share, 3);
          });
          for (const { characters } of answer.paths) {
            expect(characters.reduce((parity, symbol) => parity ^ symbol, 0)).toBe(0);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it('finds, for every position and symbol, the heaviest with it there, as far as that lies near the best', () => {
    fc.assert(
      fc.property(
        choices,
        fc.array(fc.double({ min: -9, max: 0, noNaN: true }), { minLength: 8, maxLength: 8 }),
        fc.integer({ min: 1, max: 40 }),
        (some, last, most) => {
          // No two sequences weigh the same.
          const rows = [...some, last.map((weight, symbol) => [symbol, weight] as const)].map((row, at) =>
            row.map(([symbol, weight]) => [symbol, weight + Math.sin(1 + 8 * at + symbol) / 100] as const),
          );
          const { sequences } = everySequence(rows);
          const [best] = sequences;
          const heaviest = new Map<string, number>();
          for (const { characters, weight } of sequences)
            if (
              characters.some((symbol, at) => !seenAt(heaviest, symbol, at)) &&
              weight > (best?.weight ?? 0) - 14
            )
              heaviest.set(characters.join(), weight);
          const answer = solveTrellis(weightsOf(rows), rows.length, most);
          const expected = [...heaviest].slice(0, most);
          expect(answer.paths.map(({ characters }) => characters.join())).toEqual(
            expected.map(([characters]) => characters),
          );
          answer.paths.forEach(({ weight }, index) => {
            expect(weight).toBeCloseTo(expected[index]?.[1] as number, 6);
          });
        },
      ),
      { numRuns: 100, seed: 5 },
    );
  });

  it('finds the best even where the heaviest symbols contradict the error check strongly', () => {
    const rows = [
      [
        [1, 0],
        [2, -40],
      ],
      [
        [4, 0],
        [5, -45],
      ],
      [
        [0, 0],
        [5, -60],
        [6, -70],
      ],
    ] as const;
    const { sequences } = everySequence(rows);
    expect(solveTrellis(weightsOf(rows), 3, 4).paths[0]).toEqual(sequences[0]);
  });
});
