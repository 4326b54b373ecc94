import { describe, expect, it } from 'vitest';
import type { CharacterKind } from '../../src/burst/field-prior.ts';
import { decodeBits } from '../../src/burst/index.ts';
import { heardOfChange } from '../../src/burst/sender-change.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { tablesOf } from './heard.ts';

// Two invented ships cancel their alerts in the same instant (M.493 order of such a call).
const one = [116, 112, 23, 29, 99, 87, 10, 110, 23, 29, 99, 87, 10, 107, 15, 62, 0, 6, 30, 9, 15, 100, 127];
const other = [
  116, 112, 23, 29, 99, 14, 20, 110, 23, 29, 99, 14, 20, 103, 99, 99, 99, 99, 99, 14, 0, 100, 127,
];
const mixed = (at: number, until = Number.POSITIVE_INFINITY) =>
  streamOf(one).map((symbol, index) =>
    index < at || index >= until ? symbol : (streamOf(other)[index] as number),
  );
const bitsOf = (stream: readonly number[]) => '10'.repeat(10) + stream.map(encodeSymbol).join('');
const kinds = Array.from({ length: one.length }, (): CharacterKind => 'free');
const heard = (stream: readonly number[]) => heardOfChange(tablesOf(stream, 0.9999), kinds);

describe('a change of sender on the way', () => {
  it('is not heard where there is one sender', () => {
    // Not as often as one in 128 calls has the right error check by chance.
    expect(heard(streamOf(one))).toBeLessThan(-Math.log(128));
  });

  // The copy in DX of a character comes five words before the one in RX: at a change, two or three of them are of two calls.
  it.each([39, 44, 47])('is heard at word %i, by what the copies say', (at) => {
    expect(heard(mixed(at))).toBeGreaterThan(Math.log(128));
  });

  it('is heard where the first sender comes back', () => {
    expect(heard(mixed(39, 47))).toBeGreaterThan(2 * Math.log(128));
  });

  it('is heard where the tones are turned over on the way', () => {
    // Turned over, a word is that of 127 less its symbol (M.493: seven bits, then the number of zeros among them).
    expect(encodeSymbol(99).replace(/./g, (bit) => String(1 - Number(bit)))).toBe(encodeSymbol(127 - 99));
    const turned = streamOf(one).map((symbol, index) => (index >= 40 && index < 49 ? 127 - symbol : symbol));
    expect(heard(turned)).toBeGreaterThan(2 * Math.log(128));
  });

  // In each of these, what is read of the copies by choice satisfies the error check.
  it.each([39, 40, 41, 42, 43, 44, 45])('at word %i leaves in doubt a call that neither has sent', (at) => {
    const result = decodeBits(bitsOf(mixed(at)));
    expect(result.ok && result.value.quality.verdict).toBe('doubtful');
  });

  it('leaves repaired a call in which one is little likely (words as a click spoils them)', () => {
    const spoilt = streamOf(one).map((symbol, index) =>
      [18, 23, 25].includes(index) ? symbol ^ 21 : symbol,
    );
    expect(decodeBits(bitsOf(spoilt))).toMatchObject({ value: { quality: { verdict: 'repaired' } } });
  });

  it('does not keep the call from being clean that was sent whole', () => {
    const result = decodeBits(bitsOf([...streamOf(one), ...streamOf(other).slice(-6)]));
    expect(result).toMatchObject({ value: { quality: { verdict: 'clean' } } });
  });
});
