import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { errorCheckOf } from '../../src/burst/index.ts';
import { decodeSymbol, encodeSymbol } from '../../src/burst/symbol-code.ts';
import { tenBits } from '../oracle/burst-code.ts';

const { rows } = JSON.parse(
  readFileSync(new URL('../../shared/burst/ten-bit-code.json', import.meta.url), 'utf8'),
) as { rows: { symbol: number; bits: string }[] };

describe('ten-bit code', () => {
  // Rows 00-45: Nippon Foundation library, GMDSS equipment-inspection training text of 2002; the rest by its rule.
  it.each(rows.map(({ symbol, bits }) => [symbol, bits] as const))('symbol %i is %s', (symbol, bits) => {
    expect(encodeSymbol(symbol)).toBe(bits);
    expect(decodeSymbol(bits)).toBe(symbol);
    expect(tenBits(symbol)).toBe(bits);
  });

  it('has all 128 symbols', () => {
    expect(rows.map(({ symbol }) => symbol)).toEqual(Array.from({ length: 128 }, (_, symbol) => symbol));
  });

  it('finds every single wrong bit, and no more than the rule allows of others', () => {
    const words = Array.from({ length: 1024 }, (_, word) => word.toString(2).padStart(10, '0'));
    const valid = words.filter((word) => decodeSymbol(word) !== null);
    expect(valid).toHaveLength(128);
    for (const word of valid)
      for (let bit = 0; bit < 10; bit++) {
        const turned = `${word.slice(0, bit)}${word[bit] === '1' ? '0' : '1'}${word.slice(bit + 1)}`;
        expect(decodeSymbol(turned)).toBeNull();
      }
  });

  it('turns symbol n into 127 - n when the tones are the wrong way round (by calculation)', () => {
    for (let symbol = 0; symbol < 128; symbol++) {
      const turned = [...encodeSymbol(symbol)].map((bit) => (bit === '1' ? '0' : '1')).join('');
      expect(decodeSymbol(turned)).toBe(127 - symbol);
    }
  });

  it.each([
    '',
    '1010101010',
    '0101010101',
    '111100001',
    '11110000111',
    '1111000x11',
    '111100x1111000011',
    '1symbolsym',
    'x1111000011',
    'symbolsymb',
  ])('takes %j for no symbol', (bits) => {
    expect(decodeSymbol(bits)).toBeNull();
  });

  it('takes what is no text for no symbol either', () => {
    for (const given of [undefined, null, 1_111_000_011, ['1111000011'], {}, Symbol('1111000011')])
      expect(decodeSymbol(given as unknown as string)).toBeNull();
  });

  it.each([-1, 128, 1.5, Number.NaN])('refuses to encode %d', (symbol) => {
    expect(() => encodeSymbol(symbol)).toThrow(RangeError);
  });

  it.each([300, 'a', -5, 1.5, null, undefined, Symbol('5')])('has no parity with %s in it', (given) => {
    expect(() => errorCheckOf([112, given as number])).toThrow(
      new RangeError(`a symbol is an integer from 0 to 127, not ${String(given)}`),
    );
  });

  it.each(['112', 112, null])('has no parity of %j, which is no list', (given) => {
    expect(() => errorCheckOf(given as unknown as number[])).toThrow(
      new TypeError(`errorCheckOf: expected a list of symbols, got ${typeof given}`),
    );
  });
});
