import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import decimals from '../../shared/identity/decimal-digits.json' with { type: 'json' };
import writing from '../../shared/identity/writing.json' with { type: 'json' };
import { isMmsi } from '../../src/identity/classify.ts';
import { parseIdentity } from '../../src/identity/index.ts';
import { imoNumberByTheBook } from '../oracle/identity.ts';
import { assigned, hostile, nineDigits } from './arbitrary.ts';

const codesOf = (input: unknown): readonly string[] => {
  const result = parseIdentity(input);
  return (result.ok ? result.notices : result.issues).map(({ code }) => code);
};

describe('parseIdentity', () => {
  it.each(writing.read)('reads $input: $reason', ({ input, mmsi, notices }) => {
    const result = parseIdentity(input);
    expect(result.ok && result.value.mmsi).toBe(mmsi);
    expect(codesOf(input)).toEqual(notices);
  });

  it.each(writing.asked)('asks about $input: $reason', ({ input, issues }) => {
    const result = parseIdentity(input);
    expect(result.ok).toBe(false);
    if (result.ok) return;
    expect(
      result.issues.map(({ code, suggestion }) =>
        suggestion === undefined ? { code } : { code, suggestion },
      ),
    ).toEqual(issues);
  });

  it.each(writing.refused)('refuses $input: $reason', ({ input, code }) => {
    const result = parseIdentity(input);
    expect(result).toMatchObject({ ok: false, issues: [{ code }] });
    if (!result.ok) expect(result.issues.some((issue) => 'suggestion' in issue)).toBe(false);
  });

  it('takes no number for text, and offers what it may have been', () => {
    const readings = (input: number): unknown => {
      const result = parseIdentity(input);
      return result.ok ? 'read' : result.issues.map(({ code, suggestion }) => [code, suggestion]);
    };
    expect(readings(232089001)).toEqual([['identity-number', '232089001']]);
    expect(readings(2320017)).toEqual([['identity-number', '002320017']]);
    expect(readings(23208591)).toEqual([['identity-number', '023208591']]);
    expect(readings(9990000)).toEqual([['identity-number', '009990000']]);
    // 630785 is what the octal-looking source literal 002320001 becomes in old scripts: no reading, and none is made up.
    for (const number of [
      630785,
      0,
      -232089001,
      232089001.5,
      Number.NaN,
      Number.POSITIVE_INFINITY,
      1e300,
      5e-324,
    ]) {
      expect(readings(number)).toEqual([['identity-number', undefined]]);
    }
    expect(readings(7654329)).toEqual([
      ['identity-number', '007654329'],
      ['identity-imo-number', undefined],
    ]);
  });

  it('refuses everything else that is no text', () => {
    expect(codesOf(undefined)).toEqual(['identity-empty']);
    expect(codesOf(null)).toEqual(['identity-empty']);
    const { proxy, revoke } = Proxy.revocable({}, {});
    revoke();
    const unfriendly = {
      toString: () => {
        throw new Error('asked');
      },
      [Symbol.toPrimitive]: () => {
        throw new Error('asked');
      },
    };
    for (const value of [
      true,
      1n,
      Symbol('x'),
      {},
      [],
      ['232089001'],
      Object('232089001'),
      () => 1,
      proxy,
      unfriendly,
    ]) {
      expect(codesOf(value)).toEqual(['identity-not-text']);
    }
  });

  it('never throws, and answers in plain data, whatever it is given', () => {
    fc.assert(
      fc.property(fc.oneof(fc.anything(), fc.string({ unit: 'binary' }), fc.double()), (input) => {
        const result = parseIdentity(input);
        expect(structuredClone(result)).toEqual(result);
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
        if (!result.ok)
          for (const { suggestion } of result.issues)
            expect(suggestion === undefined || isMmsi(suggestion)).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('never reads other digits than were written, in another order, or more or fewer', () => {
    const pieces = fc.constantFrom(
      ...'0123456789',
      ...'0023',
      ' ',
      '-',
      '.',
      ',',
      "'",
      '+',
      'e',
      'O',
      'l',
      'MMSI ',
      '/',
      '\u200b',
      '２',
      '²',
      '\u202e',
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 16 }), (written) => {
        const result = parseIdentity(written.join(''));
        if (result.ok)
          expect(result.value.mmsi).toBe(
            written
              .join('')
              .replaceAll('２', '2')
              .replace(/[^0-9]/g, ''),
          );
      }),
      { numRuns: 5000 },
    );
  });

  it('reads an identity the same however it is grouped, and says so', () => {
    const gap = fc.constantFrom('', '', ' ', '\u00a0', '-', '.', '\u2011', ' - ');
    fc.assert(
      fc.property(assigned, fc.array(gap, { minLength: 9, maxLength: 9 }), (digits, gaps) => {
        const text = [...digits].map((digit, place) => (place === 0 ? digit : gaps[place] + digit)).join('');
        fc.pre(!/^\d{7,}\.\d+$/.test(text.replace(/\s/g, ''))); // that could be a decimal part
        const result = parseIdentity(text);
        expect(result.ok && result.value.mmsi).toBe(digits);
        const tidied = codesOf(text).some((code) => code !== 'identity-repeated-digit');
        expect(tidied).toBe(text !== digits);
      }),
    );
  });

  it('offers back what a spreadsheet took away', () => {
    fc.assert(
      fc.property(assigned, (digits) => {
        const left = String(Number(digits));
        fc.pre(/^(0[2-7]|00[2-7]|009990000)/.test(digits));
        const result = parseIdentity(left);
        expect(result.ok ? [] : result.issues.map(({ suggestion }) => suggestion)).toContain(digits);
      }),
    );
  });

  it('knows IMO numbers by their check digit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9_999_999 }), (number) => {
        const digits = String(number).padStart(7, '0');
        expect(codesOf(digits).includes('identity-imo-number')).toBe(imoNumberByTheBook(digits));
      }),
      { numRuns: 2000 },
    );
  });

  it.each(decimals.zeros)('reads the run of decimal digits from %s', (name) => {
    const zero = Number.parseInt(name.slice(2), 16);
    const text = [2, 3, 4, 5, 6, 7, 8, 9, 1, 0]
      .slice(0, 9)
      .map((digit) => String.fromCodePoint(zero + digit))
      .join('');
    const result = parseIdentity(text);
    expect(result.ok && result.value.mmsi).toBe('234567891');
  });

  it('survives names of properties that every object has', () => {
    for (const name of hostile) expect(codesOf(name)).toEqual(['identity-character']);
  });

  it('ends for texts of ten million characters', () => {
    for (const piece of [
      ' ',
      '0',
      '-',
      '232089001 ',
      "'",
      'MMSI ',
      '1,234',
      '\u0660',
      '\u200b',
      'e',
      '.',
      '2 ',
    ]) {
      const text = piece.repeat(Math.ceil(10_000_000 / piece.length));
      expect(codesOf(text)).toEqual(['identity-too-long']);
      expect(codesOf(text.slice(0, 200)).length).toBeGreaterThan(0);
    }
  });

  it('says the digits wanted, the text found and the clause with each issue', () => {
    const result = parseIdentity('23');
    expect(result).toMatchObject({
      ok: false,
      issues: [
        {
          code: 'identity-digit-count',
          grade: 'error',
          params: { count: 2 },
          at: [],
          expected: '9 digits',
          received: "'23'",
          clause: 'ITU-R M.585-10',
        },
      ],
    });
  });

  it('names a mark that stands alone beside the digits', () => {
    for (const text of ['232999871.', 'MMSI: 232999871.']) {
      expect(parseIdentity(text)).toMatchObject({
        ok: false,
        issues: [
          {
            code: 'identity-character',
            params: { character: "'.'" },
            suggestion: '232999871',
          },
        ],
      });
    }
  });

  it('gives unassigned digits no identity', () => {
    fc.assert(
      fc.property(nineDigits, (digits) => {
        fc.pre(!isMmsi(digits));
        expect(['identity-unassigned', 'identity-placeholder']).toContain(codesOf(digits)[0]);
      }),
    );
  });
});
