import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import designators from '../../shared/channel/designators.json' with { type: 'json' };
import { findChannel, parseDesignator } from '../../src/channel/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { plans } from './plans.ts';

describe('names of channels as people write them', () => {
  it.each(designators.read)("'$input' is $text ($source)", ({ input, text }) => {
    expect(valueOf(parseDesignator(input)).text).toBe(text);
  });

  it.each(designators.refused)("'$input' gives $code: $reason", ({ input, code }) => {
    const parsed = parseDesignator(input);
    expect(parsed).toMatchObject({ ok: false, issues: [{ code }] });
  });
});

describe('M.1084 Annex 4, from memory', () => {
  it.each([
    ['22', 'as-listed', '22'],
    ['0022', 'as-listed', '22'],
    ['22A', 'ship', '1022'],
    ['1022', 'ship', '1022'],
    ['21B', 'coast', '2021'],
    ['2006', 'coast', '2006'],
    ['87', 'as-listed', '87'],
    ['1087', 'ship', '1087'],
  ])('%s: %s, %s', (text, leg, m1084) => {
    expect(valueOf(parseDesignator(text))).toMatchObject({ leg, m1084 });
  });

  it('AIS and ASM channels are upper legs (47 CFR 80.371(c) notes 3 and 4; WRC-15 note z)', () => {
    expect(valueOf(parseDesignator('ais 1'))).toEqual({
      kind: 'named-channel',
      text: 'AIS 1',
      m1084: '2087',
    });
    expect(['AIS 1', 'AIS 2', 'ASM 1', 'ASM 2'].map((name) => valueOf(parseDesignator(name)).m1084)).toEqual([
      '2087',
      '2088',
      '2027',
      '2028',
    ]);
  });

  it('never drops a suffix or prefix', () => {
    for (let number = 1; number <= 88; number += 1) {
      const digits = String(number).padStart(2, '0');
      for (const text of [`${digits}A`, `${digits}B`, `10${digits}`, `20${digits}`]) {
        const parsed = parseDesignator(text);
        if (parsed.ok)
          expect(parsed.value).toMatchObject({ number, leg: /A|^10/.test(text) ? 'ship' : 'coast' });
      }
    }
  });

  it('gives a notice for the private numbers 29 to 59, and for no others', () => {
    for (const text of ['29', '37', '59']) {
      expect(parseDesignator(text)).toMatchObject({
        ok: true,
        value: { text, m1084: null },
        notices: [{ code: 'channel-private-number' }],
      });
    }
    for (const text of ['28', '60']) expect(parseDesignator(text)).toMatchObject({ ok: true, notices: [] });
  });

  it('offers the single frequency for a leg that does not exist', () => {
    expect(parseDesignator('1006')).toMatchObject({ ok: false, issues: [{ suggestion: '06' }] });
  });

  it('wants text, and offers a reading of a whole number', () => {
    expect(parseDesignator(6)).toMatchObject({
      ok: false,
      issues: [{ code: 'channel-not-text', suggestion: '06' }],
    });
    expect(parseDesignator(1)).toMatchObject({ issues: [{ suggestion: '01' }] });
    expect(parseDesignator(88)).toMatchObject({ issues: [{ suggestion: '88' }] });
    for (const input of [null, undefined, {}, [], 6.5, 0, 89, 1022, true]) {
      const parsed = parseDesignator(input);
      expect(parsed).toMatchObject({ ok: false, issues: [{ code: 'channel-not-text' }] });
      expect(parsed.ok || parsed.issues[0].suggestion).toBeUndefined();
    }
  });
});

describe('properties', () => {
  const digits = fc.integer({ min: 0, max: 9999 }).map(String);
  const anyName = fc
    .tuple(
      fc.constantFrom('', '0', '10', '20', 'ch ', 'AIS', 'WX'),
      digits,
      fc.constantFrom('', 'A', 'B', ' a'),
    )
    .map((parts) => parts.join(''));

  it('what was read reads the same again', () => {
    fc.assert(
      fc.property(fc.oneof(anyName, digits), (text) => {
        const parsed = parseDesignator(text);
        if (parsed.ok) expect(valueOf(parseDesignator(parsed.value.text))).toEqual(parsed.value);
      }),
      { numRuns: 500 },
    );
  });

  it('nothing makes it throw, prototype names included', () => {
    const names = fc.constantFrom('__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf');
    fc.assert(
      fc.property(
        fc.oneof(fc.anything(), fc.string({ unit: 'binary' }), names, fc.record({ text: fc.anything() })),
        (input) => {
          const parsed = parseDesignator(input);
          expect(structuredClone(parsed)).toEqual(parsed);
          for (const plan of plans) expect(typeof findChannel(plan, input as string).ok).toBe('boolean');
        },
      ),
    );
  });

  it('refuses ten million characters at once', () => {
    expect(parseDesignator('1'.repeat(10_000_000)).ok).toBe(false);
    expect(parseDesignator(' '.repeat(10_000_000)).ok).toBe(false);
  });
});
