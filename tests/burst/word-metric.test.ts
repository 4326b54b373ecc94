import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { logSum } from '../../src/burst/log-sum.ts';
import { softplus, wordMetric } from '../../src/burst/word-metric.ts';
import { tenBits } from '../oracle/burst-code.ts';

/** By the definition: each bit's likelihood against a half, multiplied. */
function literally(bits: readonly number[], symbol: number): number {
  return [...tenBits(symbol)].reduce((product, bit, index) => {
    const one = 1 / (1 + Math.exp(-(bits[index] ?? 0)));
    return product * 2 * (bit === '1' ? one : 1 - one);
  }, 1);
}

const llr = fc.double({ min: -12, max: 12, noNaN: true });

describe('what ten bits say about each symbol', () => {
  it('is the product of what each bit says, in either polarity and anywhere in a row', () => {
    fc.assert(
      fc.property(
        fc.array(llr, { minLength: 14, maxLength: 14 }),
        fc.constantFrom(1 as const, -1 as const),
        fc.integer({ min: 0, max: 4 }),
        (bits, sign, at) => {
          const out = new Float64Array(256).fill(7);
          wordMetric(bits, at, sign, out, 64);
          const word = bits.slice(at, at + 10).map((bit) => sign * bit);
          for (let symbol = 0; symbol < 128; symbol++)
            expect(out[64 + symbol]).toBeCloseTo(Math.log(literally(word, symbol)), 6);
          expect([out[63], out[192]]).toEqual([7, 7]);
        },
      ),
    );
  });

  it('is nothing where nothing was heard, before the first bit and behind the last', () => {
    const out = new Float64Array(128);
    wordMetric([0, 0, 0], 0, 1, out, 0);
    expect([...out].every((value) => Math.abs(value) < 1e-12)).toBe(true);
    wordMetric([3, -3], -40, 1, out, 0);
    expect([...out].every((value) => Math.abs(value) < 1e-12)).toBe(true);
  });

  it('counts the bits that are there when the word is cut off', () => {
    const out = new Float64Array(128);
    const heard = [...tenBits(77)].slice(4).map((bit) => (bit === '1' ? 5 : -5));
    wordMetric(heard, -4, 1, out, 0);
    expect(out[77]).toBeCloseTo(6 * Math.log(2 / (1 + Math.exp(-5))), 9);
    expect(Math.max(...out)).toBe(out[77]);
  });
});

describe('logarithms of sums', () => {
  it.each([
    [0, 0, Math.LN2],
    [Math.log(3), Math.log(5), Math.log(8)],
    [Math.log(5), Math.log(3), Math.log(8)],
    [1000, 1000, 1000 + Math.LN2],
    [-1000, 0, 0],
    [Number.NEGATIVE_INFINITY, 2, 2],
    [2, Number.NEGATIVE_INFINITY, 2],
    [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY],
  ])('logSum(%d, %d) is %d', (one, other, sum) => {
    expect(logSum(one, other)).toBeCloseTo(sum, 12);
  });

  it.each([
    [0, Math.LN2],
    [Math.log(2), Math.log(3)],
    [-Math.log(2), Math.log(1.5)],
    [1000, 1000],
    [-1000, 0],
  ])('softplus(%d) is %d', (x, value) => {
    expect(softplus(x)).toBeCloseTo(value, 12);
  });
});
