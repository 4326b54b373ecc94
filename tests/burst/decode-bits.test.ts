import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrongShare } from '../../src/burst/decode-bits.ts';
import { decodeBits, decodeSoft, decodeStream, encodeCall } from '../../src/burst/index.ts';
import type { Received } from '../../src/burst/receive.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { composeDistressAlert, composeTestCall } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { anyCall } from './compositions.ts';
import { readMetrics } from './heard.ts';

// Invented stations of the demo scenario.
const test = composeTestCall({ from: '232999871', to: '002329990' });
const alert = composeDistressAlert({ from: '232999218', nature: 'sinking' });
const bits = fc.string({ unit: fc.constantFrom('0', '1'), maxLength: 300 });

describe('bits of a call in a longer stream', () => {
  it('are found wherever they stand', () => {
    fc.assert(
      fc.property(anyCall, bits, bits, (call, before, after) => {
        const burst = encodeCall(call);
        const { call: read, quality } = valueOf(decodeBits(before + burst.bits + after));
        expect(read).toEqual(call);
        expect(quality).toMatchObject({
          verdict: 'clean',
          start: before.length + 20,
          end: before.length + burst.bits.length,
        });
      }),
    );
  });

  it('are found with the tones the wrong way round, and that is said', () => {
    fc.assert(
      fc.property(anyCall, (call) => {
        const turned = [...encodeCall(call).bits].map((bit) => (bit === '1' ? 0 : 1));
        const result = decodeBits(turned);
        expect(valueOf(result).call).toEqual(call);
        expect(valueOf(result).quality).toMatchObject({ verdict: 'clean', polarity: 'inverted' });
        expect(result.ok && result.notices.some(({ code }) => code === 'burst-inverted')).toBe(true);
      }),
      { numRuns: 30 },
    );
  });

  it('may have a dot pattern of either polarity (M.493, from memory), or none', () => {
    const { bits: sent } = encodeCall(test);
    for (const lead of ['01'.repeat(10), '', '10'.repeat(100)])
      expect(valueOf(decodeBits(lead + sent.slice(20))).quality).toMatchObject({
        verdict: 'clean',
        start: lead.length,
      });
  });

  it('are read one call after another, as five in a row in a distress attempt', () => {
    // Japan, Notification 567 of 1990: no gap between one alert and the dots of the next.
    const attempt = encodeCall(alert).bits.repeat(5);
    let from = 0;
    const starts: number[] = [];
    for (let result = decodeBits(attempt); result.ok; result = decodeBits(attempt, { from })) {
      expect(result.value.call).toEqual(alert);
      expect(result.value.quality).toMatchObject({ verdict: 'clean', expansion: 'none' });
      starts.push(result.value.quality.start);
      from = result.value.quality.end;
    }
    expect(starts).toEqual([20, 560, 1100, 1640, 2180]);
  });

  it('are read when some are wrong, and never called clean when the check was needed', () => {
    fc.assert(
      fc.property(anyCall, fc.array(fc.nat(), { minLength: 5, maxLength: 12 }), (call, hits) => {
        const sent = [...encodeCall(call).bits];
        for (const hit of hits) sent[hit % sent.length] = sent[hit % sent.length] === '1' ? '0' : '1';
        const { call: read, quality } = valueOf(decodeBits(sent.join('')));
        expect(read).toEqual(call);
        expect(quality.verdict === 'clean').toBe(
          quality.verdict === 'clean' && quality.errorCheck.kind === 'as-sent',
        );
        expect(quality.probability).toBeGreaterThan(0.99);
      }),
    );
  });

  it('may begin late, with three words of phasing left', () => {
    // The least that the Recommendation asks for (M.493, from memory): three right phasing words.
    const { bits: sent } = encodeCall(test);
    const { call, quality } = valueOf(decodeBits(sent.slice(20 + 90)));
    expect(call).toEqual(test);
    expect(quality).toMatchObject({ verdict: 'clean', start: -90 });
  });

  it('ending early give what can be told, in doubt, and say so', () => {
    const { bits: sent } = encodeCall(alert);
    const result = decodeBits(sent.slice(0, 330));
    expect(result.ok).toBe(true);
    if (!result.ok) return;
    const { quality, call, information } = result.value;
    expect(quality.verdict).toBe('doubtful');
    expect(call).toMatchObject({ kind: 'distress-alert', from: '232999218', nature: 'sinking' });
    expect(information).toContain(null);
    expect(quality.end).toBe(330);
    expect(result.notices.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['burst-doubtful', 'burst-cut-short']),
    );
  });

  it('make up nothing that was never heard: phasing alone is no call', () => {
    const { bits: sent } = encodeCall(test);
    for (let length = 60; length <= 180; length += 10)
      expect(decodeBits(sent.slice(0, length)).ok).toBe(false);
    const { quality, information } = valueOf(decodeBits(sent.slice(0, 300)));
    expect(quality.verdict).toBe('doubtful');
    expect(information.slice(0, 4)).toEqual([120, 120, 0, 23]);
    expect(information.at(-3)).toBeNull();
  });

  it('make a reception that survives JSON and structured clone', () => {
    fc.assert(
      fc.property(anyCall, (call) => {
        const result = decodeBits(encodeCall(call).bits);
        expect(JSON.parse(JSON.stringify(result))).toEqual(result);
        expect(structuredClone(result)).toEqual(result);
      }),
      { numRuns: 30 },
    );
  });
});

describe('what is no call', () => {
  it('gives a clear issue, whatever it is', () => {
    const inputs: unknown[] = [
      undefined,
      null,
      5,
      {},
      'no bits',
      [2],
      ['x'],
      [Number.NaN],
      new Float32Array([0.5]),
    ];
    for (const input of inputs) {
      const result = decodeBits(input as string);
      expect(result.ok).toBe(false);
      expect(!result.ok && result.issues[0].code).toBe('burst-input');
    }
    for (const input of [undefined, null, 5, {}, 'text']) {
      expect(decodeSoft(input as unknown as number[]).ok).toBe(false);
      expect(decodeStream(input as unknown as number[]).ok).toBe(false);
    }
    expect(decodeStream([128]).ok).toBe(false);
    for (const empty of [decodeBits(''), decodeBits([]), decodeSoft([]), decodeStream([]), readMetrics([])])
      expect(!empty.ok && empty.issues[0].code).toBe('burst-not-found');
  });

  it('never throws for any soft values, and finds no call in them', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.double(), fc.constantFrom(Number.NaN, Infinity, -Infinity, 0)), {
          maxLength: 900,
        }),
        (llrs) => {
          const result = decodeSoft(llrs);
          if (result.ok) expect(result.value.quality.verdict).not.toBe('clean');
        },
      ),
      { numRuns: 60 },
    );
    for (const start of [Number.NaN, Infinity, -1e9, 1e9, 3.7])
      expect(decodeSoft(new Float32Array(700), { start }).ok).toBe(false);
  });

  it('takes any symbols with gaps without throwing', () => {
    const symbol = fc.option(fc.integer({ min: 0, max: 127 }));
    fc.assert(
      fc.property(fc.array(symbol, { maxLength: 90 }), (symbols) => {
        const result = decodeStream(symbols);
        if (result.ok) expect(result.value.quality.verdict).not.toBe('clean');
      }),
      { numRuns: 60 },
    );
  });

  it('finds nothing in 200 000 random bits', () => {
    let state = 12345;
    const random = Array.from({ length: 200_000 }, () => {
      state = (Math.imul(state, 1103515245) + 12345) >>> 0;
      return (state >>> 30) & 1;
    });
    expect(decodeBits(random).ok).toBe(false);
  });

  it('finds nothing in dots, one tone or silence', () => {
    for (const text of [
      '10'.repeat(500),
      '1'.repeat(1000),
      '0'.repeat(1000),
      '?'.repeat(1000),
      '1111111000'.repeat(100),
    ])
      expect(decodeBits(text).ok, text.slice(0, 10)).toBe(false);
  });
});

describe('the share of bits that came wrong', () => {
  const stream = [125, 111, 125, 110];
  const sent = [...stream.map(encodeSymbol).join('')].map((bit) => (bit === '1' ? 1 : -1));
  /** Bits received with five others before them, of which those at some places are wrong. */
  const hard = (...wrong: readonly number[]) =>
    Float64Array.from([1, 1, 1, 1, 1, ...sent.map((bit, at) => (wrong.includes(at) ? -bit : bit))]);
  const share = (bits: Float64Array, received = [1, 1, 1, 1], start = 105, polarity = 'normal') =>
    wrongShare(bits, 100, {
      reception: { quality: { start, polarity } },
      stream,
      received: Float64Array.from(received),
    } as unknown as Received);

  it('is counted against the call that was read, half a bit for what is not known', () => {
    expect(share(hard())).toBeCloseTo(0.5 / 41, 12);
    expect(share(hard(3, 17, 39))).toBeCloseTo(3.5 / 41, 12);
  });

  it('is counted the other way round where the tones were', () => {
    const turned = hard(3, 17).map((bit) => -bit);
    expect(share(turned, [1, 1, 1, 1], 105, 'inverted')).toBeCloseTo(2.5 / 41, 12);
  });

  it('counts each word as far as it was received, and no bit that was not heard', () => {
    expect(share(hard(3, 17, 39), [1, 0.5, 0, 0.25])).toBeCloseTo((1.75 + 0.5) / (17.5 + 1), 12);
    const bits = hard(3, 17);
    bits[5 + 17] = 0;
    expect(share(bits)).toBeCloseTo(1.5 / 40, 12);
    // The last words lie behind what came in, the first before it.
    expect(share(hard(3).slice(0, 25))).toBeCloseTo(1.5 / 21, 12);
    expect(share(hard().slice(15), [1, 1, 1, 1], 90)).toBeCloseTo(0.5 / 31, 12);
  });

  it('is less than a half', () => {
    expect(share(hard().map((bit) => -bit))).toBe(0.45);
  });
});
