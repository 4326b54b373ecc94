import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { errorCheckOf } from '../../src/burst/error-check.ts';
import { decodeAtis, decodeBits, encodeAtis } from '../../src/burst/index.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { describeCall } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';

// Layout second-hand: restatements of ETSI EN 300 698 Annex B and ITU-R Report M.1159. The stream below was worked
// out by hand from them, with the code of the Swedish guidance; error checks by exclusive-or.
const STREAM =
  '125 111 125 110 125 109 125 108 125 107 125 106 121 105 121 104 92 121 65 121 12 92 34 65 56 12 127 34 13 56 127 127 127 13';
const stream = (bits: string) =>
  (bits.slice(20).match(/.{10}/g) ?? []).map((word) => {
    for (let symbol = 0; symbol < 128; symbol++) if (encodeSymbol(symbol) === word) return symbol;
    return null;
  });

/** A burst of 20 dots and these characters: format, pairs, end. Each goes out twice, the second two slots later. */
const burstOf = (characters: readonly number[], check = errorCheckOf(characters)): string =>
  `${'10'.repeat(10)}${streamOf(characters)
    .map((symbol, slot) => encodeSymbol(slot === 28 || slot === 33 ? check : symbol))
    .join('')}`;
/** The burst above with one of its symbols replaced by ten bits of which no symbol consists. */
const unread = (bits: string, ...slots: readonly number[]): string =>
  slots.reduce(
    (spoilt, slot) => `${spoilt.slice(0, 20 + 10 * slot)}1111111111${spoilt.slice(30 + 10 * slot)}`,
    bits,
  );
const codes = fc.stringMatching(/^9\d{9}$/);

describe('an ATIS burst', () => {
  it('is 20 dots and 34 symbols: 121 twice, five pairs, 127, the check', () => {
    const bits = encodeAtis('9265123456');
    expect(stream(bits).join(' ')).toBe(STREAM);
    expect(bits.slice(0, 20)).toBe('10'.repeat(10));
    // 300.0 ms at 1200 bits a second.
    expect(bits.length / 1200).toBeCloseTo(0.3, 6);
    expect(stream(encodeAtis('9211012345'))[28]).toBe(106);
  });

  it('is read back wherever it stands', () => {
    fc.assert(
      fc.property(
        codes,
        fc.stringMatching(/^[01]{0,40}$/),
        fc.stringMatching(/^[01]{0,40}$/),
        (code, before, after) => {
          expect(decodeAtis(before + encodeAtis(code) + after)).toMatchObject({ ok: true, value: code });
        },
      ),
      { numRuns: 50 },
    );
  });

  it('with one bit wrong is still read by the other copy, or by none: never as another code', () => {
    const bits = encodeAtis('9265123456');
    for (let at = 20; at < bits.length; at++) {
      const damaged = bits.slice(0, at) + (bits[at] === '1' ? '0' : '1') + bits.slice(at + 1);
      const read = decodeAtis(damaged);
      if (read.ok) expect(read.value).toBe('9265123456');
    }
  });

  it('is refused as a call on channel 70 by its name: kept as received, to nobody and from nobody', () => {
    fc.assert(
      fc.property(codes, (code) => {
        const read = decodeBits(encodeAtis(code));
        const { call } = valueOf(read);
        expect(call).toMatchObject({ kind: 'unrecognised-call', to: null, from: null });
        expect(read.ok && read.notices.map((notice) => notice.code)).toContain('call-atis');
        expect(describeCall(call).sentence).toContain('(ATIS), not a call');
        expect(call).toMatchObject({ asReceived: { format: 121 } });
      }),
      { numRuns: 30 },
    );
  });

  it('of anything but ten digits from 9 cannot be made, and other bits hold none', () => {
    for (const code of ['8265123456', '926512345', '92651234567', '19265123456', '', 'x', 9265123456])
      expect(() => encodeAtis(code as string)).toThrow(
        new RangeError(`encodeAtis: expected ten digits that begin with 9, got ${code}`),
      );
    for (const bits of ['', '0'.repeat(360), '10'.repeat(500)])
      expect(decodeAtis(bits)).toMatchObject({ ok: false, issues: [{ code: 'burst-atis-not-found' }] });
    for (const bits of ['012', null, 5, 10_101, {}, ['01']])
      expect(decodeAtis(bits as string)).toMatchObject({
        ok: false,
        issues: [
          { code: 'burst-input', received: typeof bits, params: { subject: 'atis', accepted: 'atis' } },
        ],
      });
  });

  it('is read from either copy of a symbol, and not without both', () => {
    const bits = encodeAtis('9265123456');
    // The first pair, 92, is symbol 16 and again symbol 21.
    for (const slot of [16, 21])
      expect(decodeAtis(unread(bits, slot))).toMatchObject({ ok: true, value: '9265123456' });
    expect(decodeAtis(unread(bits, 16, 21)).ok).toBe(false);
    // Neither dots nor phasing are needed, nor the second copy of the check.
    expect(decodeAtis(bits.slice(160, -10))).toMatchObject({ ok: true, value: '9265123456' });
    expect(decodeAtis(unread(bits.slice(0, -10), 28)).ok).toBe(false);
  });

  it.each([
    [
      'two copies that differ',
      burstOf([121, 92, 65, 12, 34, 56, 127]).replace(encodeSymbol(65), encodeSymbol(66)),
    ],
    ['a format of calls', burstOf([112, 92, 65, 12, 34, 56, 127])],
    ['an end of calls', burstOf([121, 92, 65, 12, 34, 56, 117])],
    ['a code that does not begin with 9', burstOf([121, 82, 65, 12, 34, 56, 127])],
    ['a pair above 99', burstOf([121, 92, 100, 12, 34, 56, 127])],
    ['another error check', burstOf([121, 92, 65, 12, 34, 56, 127], 14)],
  ])('with %s is none', (_, bits) => {
    expect(decodeAtis(burstOf([121, 92, 65, 12, 34, 56, 127]))).toMatchObject({
      ok: true,
      value: '9265123456',
    });
    expect(decodeAtis(bits)).toMatchObject({
      ok: false,
      issues: [{ code: 'burst-atis-not-found', clause: 'ETSI EN 300 698 Annex B, restated' }],
    });
  });
});
