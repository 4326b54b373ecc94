import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../bench/receiver/random.ts';
import { anyCall } from '../../bench/receiver/spoilt/any-call.ts';
import { decodeBits } from '../../src/burst/index.ts';

// Bursts of every kind with seeds: shares wanted were measured and leave room for chance.
const random = randomFrom(11);
const noise = (count: number) => Array.from({ length: count }, () => String(random.below(2))).join('');
const isRight = (bits: string, information: readonly number[]) => {
  const result = decodeBits(bits);
  return {
    found: result.ok && result.value.information.join() === information.join(),
    clean: result.ok && result.value.quality.verdict === 'clean',
  };
};
function shareOf(
  count: number,
  spoil: (bits: string) => string,
): { right: number; clean: number; wrong: number } {
  let [right, clean, wrong] = [0, 0, 0];
  for (let trial = 0; trial < count; trial++) {
    const { bits, information } = anyCall(random);
    const { found, clean: isClean } = isRight(spoil(bits), information);
    if (found) right++;
    if (isClean) clean++;
    if (isClean && !found) wrong++;
  }
  return { right, clean, wrong };
}
const replaced = (bits: string, from: number, by: string) =>
  bits.slice(0, from) + by + bits.slice(from + by.length);

describe('a burst with spoilt phasing', () => {
  it('is found and clean when its first eight words are foreign bits', () => {
    const { clean, wrong } = shareOf(12, (bits) => noise(60) + replaced(bits, 0, noise(100)));
    expect(clean).toBe(12);
    expect(wrong).toBe(0);
  });

  // Fourteen words are known; the format specifier stands between the last of them.
  it.each([10, 8, 7])('is found when %i of its fourteen words are left, anywhere', (left) => {
    const words = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 13, 15];
    const { right, wrong } = shareOf(8, (bits) => {
      const lost = [...words];
      while (lost.length > 14 - left) lost.splice(random.below(lost.length), 1);
      return lost.reduce((all, word) => replaced(all, 20 + 10 * word, noise(10)), bits);
    });
    expect(right).toBeGreaterThanOrEqual(7);
    expect(wrong).toBe(0);
  });
});

describe('a burst of wrong bits', () => {
  it('over five words costs no more than five words that were not heard', () => {
    const { clean, wrong } = shareOf(24, (bits) =>
      replaced(bits, 180 + 10 * random.below((bits.length - 260) / 10), noise(50)),
    );
    expect(clean).toBeGreaterThanOrEqual(22);
    expect(wrong).toBe(0);
  });
});

describe('a burst whose tail is lost', () => {
  it('is never clean and wrong, whatever follows', () => {
    const { wrong, clean } = shareOf(16, (bits) => {
      const at = bits.length - random.below(200);
      return bits.slice(0, at) + noise(bits.length + 100 - at);
    });
    expect(wrong).toBe(0);
    expect(clean).toBeGreaterThan(1);
  });
});
