import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import forms from '../../shared/identity/forms.json' with { type: 'json' };
import { isMmsi } from '../../src/identity/classify.ts';
import { identityForms, mmsi, parseIdentity } from '../../src/identity/index.ts';
import { kindByTheBook } from '../oracle/identity.ts';
import { assigned, fromPattern, hostile, nineDigits } from './arbitrary.ts';

describe('forms of an identity', () => {
  it.each(forms.valid)('$mmsi is $kind ($source)', ({ source: _source, reason: _reason, ...identity }) => {
    expect(parseIdentity(identity.mmsi)).toStrictEqual({ ok: true, value: identity, notices: [] });
    expect(isMmsi(identity.mmsi)).toBe(true);
  });

  it.each(forms.unassigned)('$digits has no form: $reason', ({ digits }) => {
    expect(parseIdentity(digits)).toMatchObject({ ok: false });
    expect(isMmsi(digits)).toBe(false);
    expect(() => mmsi(digits)).toThrow(RangeError);
  });

  it('has a vector and a row of the table for every kind', () => {
    const kinds = identityForms.map((form) => form.kind);
    expect(new Set(kinds).size).toBe(14);
    expect([...new Set(forms.valid.map(({ kind }) => kind))].sort()).toEqual([...kinds].sort());
  });

  it('groups the free forms in Annex 2 §2, where identities may occur twice (ITU-R M.585-10, restated)', () => {
    const free = identityForms.filter(({ unique }) => !unique);
    expect(free.map(({ pattern }) => pattern.slice(0, 3))).toEqual(['970', '972', '974', '979']);
    for (const { clause } of free) expect(clause).toBe('ITU-R M.585-10 Annex 2 §2');
    for (const { pattern, holder } of free)
      expect(holder).toContain(pattern.startsWith('979') ? 'six pseudo-random digits' : '00 for tests');
  });

  it.each(identityForms)('reads $pattern as $kind', ({ kind, pattern }) => {
    const national: Record<string, string> = { coast: '0000', 'sar-aircraft': '000' };
    fc.assert(
      fc.property(fromPattern(pattern), (digits) => {
        const whole = national[kind];
        fc.pre(whole === undefined || !digits.endsWith(whole));
        const result = parseIdentity(digits);
        expect(result.ok && result.value.kind).toBe(kind);
      }),
    );
  });

  it('agrees with the standard read literally', () => {
    fc.assert(
      fc.property(fc.oneof(nineDigits, assigned), (digits) => {
        const result = parseIdentity(digits);
        expect(result.ok ? result.value.kind : 'unassigned').toBe(kindByTheBook(digits));
      }),
      { numRuns: 5000 },
    );
  });

  it('agrees with the standard read literally for every first five digits', () => {
    for (let head = 0; head < 100_000; head++) {
      const digits = `${String(head).padStart(5, '0')}1234`;
      expect(isMmsi(digits)).toBe(kindByTheBook(digits) !== 'unassigned');
    }
  });

  it('takes only nine ASCII digits for a machine identity', () => {
    for (const text of [...hostile, '', '232 878 000', '2328780000', '232878000\n', '２３２８７８０００']) {
      expect(isMmsi(text)).toBe(false);
      expect(() => mmsi(text)).toThrow(RangeError);
    }
    expect(isMmsi(232878000)).toBe(false);
    expect(isMmsi(['232878000'])).toBe(false);
    expect(mmsi('232878000')).toBe('232878000');
  });
});
