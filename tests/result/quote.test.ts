import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

import { quote } from '../../src/result/quote.ts';

describe('quote', () => {
  it.each([
    ['', "''"],
    ['22A', "'22A'"],
    ['Tern of Ardle', "'Tern of Ardle'"],
    ['56°20′ N', "'56°20′ N'"],
    ['a\tb\n', "'a\\u{9}b\\u{a}'"],
    ['\u007f\u0080\u009f\u00a0', "'\\u{7f}\\u{80}\\u{9f}\u00a0'"],
    ['\ud800', "'\\u{d800}'"],
    ['⚓️🛟', "'⚓️🛟'"],
  ])('puts %j into quotes, control characters escaped', (text, quoted) => {
    expect(quote(text)).toBe(quoted);
  });

  it('leaves 40 characters as they are, and of more keeps 39 and a mark', () => {
    const text = 'Skerra Coastguard, this is Merrow, over.';
    expect(text).toHaveLength(40);
    expect(quote(text)).toBe(`'${text}'`);
    expect(quote(`${text} `)).toBe(`'${text.slice(0, 39)}…'`);
  });

  it('cuts before an escape or a pair of surrogates, never within', () => {
    expect(quote(`${'a'.repeat(36)}\n`)).toBe(`'${'a'.repeat(36)}…'`);
    expect(quote(`${'a'.repeat(34)}\n`)).toBe(`'${'a'.repeat(34)}\\u{a}'`);
    expect(quote(`${'a'.repeat(38)}🛟b`)).toBe(`'${'a'.repeat(38)}…'`);
    expect(quote(`${'a'.repeat(38)}🛟`)).toBe(`'${'a'.repeat(38)}🛟'`);
  });

  it('is never longer than 40 characters and the quotes, whatever the text', () => {
    expect(quote('\n'.repeat(40))).toBe(`'${'\\u{a}'.repeat(7)}…'`);
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        expect(quote(text).length).toBeLessThanOrEqual(42);
      }),
    );
  });
});
