import { describe, expect, it } from 'vitest';
import { type CharacterKind, fieldPriors } from '../../src/burst/field-prior.ts';
import { decodeBits } from '../../src/burst/index.ts';
import { heardOfChange } from '../../src/burst/sender-change.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { tablesOf, type Word } from './heard.ts';

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

// The chances are estimates of our own (deviation: D-burst-10).
describe('the sum over every change of sender', () => {
  const CHANGE = 1e-4;
  const BACK = 0.01;

  /** What the copies of a character say when each sender in turn sent them, against one sender of both. */
  function ratiosOf(dx: readonly number[], rx: readonly number[], usual: readonly number[]) {
    const other = usual.map((chance) => chance / 2 + 1 / 256);
    const sum = (...factors: (readonly number[])[]) =>
      usual.reduce(
        (total, _, symbol) =>
          total + factors.reduce((product, each) => product * (each[symbol] as number), 1),
        0,
      );
    const both = sum(usual, dx, rx);
    const alike = sum(usual, other, dx, rx) / sum(usual, other) / both;
    return {
      rx: (sum(usual, dx) * sum(other, rx)) / both,
      dx: (sum(other, dx) * sum(usual, rx)) / both,
      alike,
    };
  }

  /** Every row of senders of some words, 1 for the other one, with its chance; the first word has the first sender before it. */
  function histories(words: number): { readonly senders: readonly number[]; readonly chance: number }[] {
    return Array.from({ length: 2 ** words }, (_, code) => {
      const senders = Array.from({ length: words }, (_, word) => (code >> word) & 1);
      const chance = senders.reduce((product, sender, word) => {
        const leave = (senders[word - 1] ?? 0) === 0 ? CHANGE : BACK;
        return product * (sender === (senders[word - 1] ?? 0) ? 1 - leave : leave);
      }, 1);
      return { senders, chance };
    });
  }

  const everyHistory = histories(15);

  // Format specifier twice, two characters and the error check: DX copies in words 12 to 20, RX copies five words later.
  const kinds: CharacterKind[] = ['addressedFormat', 'category', 'free'];
  const sent = streamOf([120, 108, 35]).slice(0, 27);
  it.each<[string, (word: Word, position: number) => Word]>([
    ['a copy in DX of another', (word, position) => (position === 16 ? 112 : word)],
    ['a copy in RX of another', (word, position) => (position === 23 ? 77 : word)],
    ['copies of two calls', (word, position) => (position >= 17 && position < 20 ? 9 : word)],
    ['copies that say little', (word, position) => (position % 3 === 0 ? [1, 2, 108, 120] : word)],
    ['copies that were not heard', (word, position) => (position > 18 ? null : word)],
  ])('is that of all rows of senders, with %s', (_, change) => {
    const tables = tablesOf(sent.map(change), 0.9);
    const pairs = [kinds[0], ...kinds, null].map((kind, slot) => {
      const usual =
        kind === null
          ? Array.from({ length: 128 }, () => 1 / 128)
          : [...fieldPriors()[kind as CharacterKind]].map(Math.exp);
      const word = (position: number) => [
        ...tables.likelihood.subarray(128 * position, 128 * (position + 1)),
      ];
      return ratiosOf(word(12 + 2 * slot), word(17 + 2 * slot), usual);
    });
    const expected = everyHistory.reduce((total, { senders, chance }) => {
      const weights = pairs.map(({ dx, rx, alike }, slot) => {
        const [first, second] = [senders[2 * slot], senders[2 * slot + 5]];
        if (first === second) return [1, 1] as const;
        const any = first === 1 ? dx : rx;
        return [any, Math.min(any, alike)] as const;
      });
      const product = (index: 0 | 1) => weights.reduce((all, each) => all * each[index], chance);
      return total + product(0) - product(1);
    }, 0);
    expect(heardOfChange(tables, kinds)).toBeCloseTo(Math.log(expected), 6);
  });
});
