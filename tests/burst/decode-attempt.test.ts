import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSurer } from '../../src/burst/decode-attempt.ts';
import { decodeAttempt, decodeBits, encodeCall } from '../../src/burst/index.ts';
import type { ReceptionQuality } from '../../src/burst/reception.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { composeDistressAlert } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';

// An attempt is five alerts, the same to the bit, the next dot pattern behind the last symbol without a gap: Japan, Notification
// 567 of 1990; ITU-R M.493-16 Annex 1, from memory.

/** Characters of a distress alert: identity, nature, position, time, telecommand, end of sequence. */
const ALERT = [112, 23, 29, 99, 21, 80, 105, 5, 62, 0, 6, 30, 12, 34, 100, 127];
const OTHER = [112, 0, 23, 29, 99, 90, 101, 5, 61, 59, 6, 31, 7, 20, 100, 127];
/** One digit of the longitude is another. */
const CHANGED = ALERT.map((symbol, index) => (index === 11 ? 31 : symbol));
const bitsOf = (characters: readonly number[]): string => streamOf(characters).map(encodeSymbol).join('');
const informationOf = (characters: readonly number[]): number[] => [112, ...characters];

/** Bits of which a share is wrong, by a generator of its own (Park and Miller, 1988). */
function withErrors(bits: string, share: number, seed: number): string {
  let state = seed;
  return [...bits]
    .map((bit) => {
      state = (state * 16_807) % 2_147_483_647;
      return state / 2_147_483_647 < share ? (bit === '1' ? '0' : '1') : bit;
    })
    .join('');
}

describe('decodeAttempt', () => {
  it('reads five calls together of which none can be read alone', () => {
    let together = 0;
    let alone = 0;
    for (let trial = 0; trial < 3; trial++) {
      const calls = [1, 2, 3, 4, 5].map((n) => withErrors(bitsOf(ALERT), 0.16, 1000 * trial + 77 * n + 5));
      const result = decodeAttempt(calls);
      if (result.ok && result.value.quality.verdict !== 'doubtful') {
        expect(result.value.information).toEqual(informationOf(ALERT));
        expect(result.value.quality.calls).toBeGreaterThan(1);
        together++;
      }
      for (const call of calls) {
        const one = decodeBits(call);
        if (one.ok && one.value.quality.verdict !== 'doubtful') alone++;
      }
    }
    expect(together).toBeGreaterThanOrEqual(2);
    expect(alone).toBeLessThanOrEqual(2);
  });

  it('puts a call together from two halves', () => {
    const bits = bitsOf(ALERT);
    const halves = [`${bits.slice(0, 300)}${'?'.repeat(220)}`, `${'?'.repeat(120)}${bits.slice(120)}`];
    const { information, quality } = valueOf(decodeAttempt(halves));
    expect(information).toEqual(informationOf(ALERT));
    expect(quality).toMatchObject({ verdict: 'clean', calls: 2 });
  });

  it('never mixes two vessels that take turns', () => {
    for (let trial = 0; trial < 2; trial++) {
      for (const share of [0, 0.07, 0.13]) {
        const calls = [ALERT, OTHER, ALERT, OTHER, ALERT].map((characters, n) =>
          withErrors(bitsOf(characters), share, 991 * trial + 31 * n + 3),
        );
        const result = decodeAttempt(calls);
        if (!result.ok || result.value.quality.verdict === 'doubtful') continue;
        const { information, quality } = result.value;
        expect([informationOf(ALERT), informationOf(OTHER)]).toContainEqual(information);
        expect(quality.calls).toBeLessThanOrEqual(
          String(information) === String(informationOf(ALERT)) ? 3 : 2,
        );
      }
    }
  });

  it('leaves out a call with one character different', () => {
    for (const share of [0, 0.04]) {
      const calls = [ALERT, ALERT, CHANGED, ALERT].map((characters, n) =>
        withErrors(bitsOf(characters), share, 17 * n + 7),
      );
      const { information, quality } = valueOf(decodeAttempt(calls));
      expect(information).toEqual(informationOf(ALERT));
      expect(quality).toMatchObject({ verdict: 'clean', calls: 3 });
    }
  });

  it('gives what one call alone says when the others say nothing', () => {
    const noise = withErrors('0'.repeat(520), 0.5, 99);
    const { information, quality } = valueOf(decodeAttempt([noise, bitsOf(ALERT), '?'.repeat(520)]));
    expect(information).toEqual(informationOf(ALERT));
    expect(quality).toMatchObject({ verdict: 'clean', calls: 1 });
    expect(decodeAttempt([noise, noise])).toMatchObject({ ok: false, issues: [{ code: 'burst-not-found' }] });
  });

  it('takes soft bits and symbols as well', () => {
    const { stream, bits } = encodeCall(composeDistressAlert({ from: '232999218' }));
    const soft = [...bits].map((bit) => (bit === '1' ? 2 : -2));
    expect(valueOf(decodeAttempt([soft, soft], { as: 'soft-bits' })).quality).toMatchObject({
      verdict: 'clean',
      calls: 2,
    });
    const lost = (from: number): (number | null)[] =>
      stream.map((symbol, n) => (n >= from && n < from + 20 ? null : symbol));
    expect(valueOf(decodeAttempt([lost(18), lost(38)], { as: 'symbols' })).quality).toMatchObject({
      verdict: 'clean',
      calls: 2,
    });
  });

  it('names what it cannot read', () => {
    const bits = bitsOf(ALERT);
    const issueOf = (calls: unknown, options?: unknown): unknown => {
      const result = decodeAttempt(calls as string[], options as { as: 'bits' });
      if (result.ok) return null;
      const { code, params, at, received } = result.issues[0];
      return [code, params, at, received];
    };
    const calls = { subject: 'calls', accepted: 'calls' };
    const none = { subject: 'bits', accepted: 'bits' };
    const bit = { subject: 'bit', which: 2, accepted: 'bit' };
    const as = { subject: 'option', which: 'as', accepted: 'kinds' };
    expect(issueOf(null)).toEqual(['burst-input', calls, [], 'null']);
    expect(issueOf('0101')).toEqual(['burst-input', calls, [], "'0101'"]);
    expect(issueOf([])).toEqual(['burst-input', calls, [], '0']);
    expect(issueOf(new Array(6).fill(bits))).toEqual(['burst-input', calls, [], '6']);
    expect(issueOf([bits], { as: 'sound' })).toEqual(['burst-input', as, ['as'], "'sound'"]);
    expect(issueOf([bits, 7])).toEqual(['burst-input', none, [1], '7']);
    expect(issueOf([bits, '01x'])).toEqual(['burst-input', bit, [1, 2], "'x'"]);
  });

  it('reads one call alone, with options left out or null', () => {
    const one = decodeAttempt([bitsOf(ALERT)], null as never);
    expect(one).toEqual(decodeAttempt([bitsOf(ALERT)]));
    expect(valueOf(one).quality).toMatchObject({ verdict: 'clean', calls: 1 });
  });

  it('never throws', () => {
    fc.assert(
      fc.property(fc.anything(), fc.anything(), (calls, options) => {
        decodeAttempt(calls as string[], options as { as: 'bits' });
      }),
    );
  });
});

describe('of two receptions', () => {
  const quality = (verdict: string, probability: number, calls = 1) =>
    ({ verdict, probability, calls }) as ReceptionQuality;

  it.each([
    ['clean', 0.9999, 'repaired', 1],
    ['repaired', 0.99, 'doubtful', 1],
    ['clean', 0.9999, 'doubtful', 1],
    ['repaired', 0.998, 'repaired', 0.997],
  ])('the one that is %s at %d is surer than the one that is %s at %d', (...[one, p, other, q]) => {
    expect(isSurer(quality(one, p), quality(other, q))).toBe(true);
    expect(isSurer(quality(other, q), quality(one, p))).toBe(false);
  });

  it('neither is surer when they are alike', () => {
    expect(isSurer(quality('clean', 1), quality('clean', 1))).toBe(false);
  });

  it('one that was joined is left only for a better verdict', () => {
    expect(isSurer(quality('repaired', 1), quality('repaired', 0.99, 2))).toBe(false);
    expect(isSurer(quality('clean', 1), quality('repaired', 1, 2))).toBe(true);
  });
});
