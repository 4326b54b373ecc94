import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeAtis, decodeBits, encodeAtis } from '../../src/burst/index.ts';
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
    for (const code of ['8265123456', '926512345', '92651234567', '', 'x'])
      expect(() => encodeAtis(code)).toThrow(RangeError);
    for (const bits of ['', '0'.repeat(360), '10'.repeat(500)])
      expect(decodeAtis(bits)).toMatchObject({ ok: false, issues: [{ code: 'burst-atis-not-found' }] });
    for (const bits of ['012', null, 5, {}])
      expect(decodeAtis(bits as string)).toMatchObject({ ok: false, issues: [{ code: 'burst-input' }] });
  });
});
