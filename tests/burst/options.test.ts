import { describe, expect, it } from 'vitest';
import { decodeBits, decodeSoft, decodeStream, encodeCall } from '../../src/burst/index.ts';
import { composeIndividualCall } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { metricsOf, readMetrics } from './heard.ts';

// Invented stations of the demo scenario.
const { bits, stream } = encodeCall(
  composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' }),
);
const soft = [...bits].map((bit) => (bit === '1' ? 4 : -4));
const metrics = metricsOf(stream);

const wrong = (which: string, received: string) => ({
  ok: false,
  issues: [
    {
      code: 'burst-input',
      grade: 'error',
      params: { subject: 'option', which, accepted: 'number' },
      message: expect.any(String),
      at: [which],
      expected: 'a finite number',
      received,
    },
  ],
});

const unfit: readonly [given: unknown, received: string][] = [
  [Number.NaN, 'NaN'],
  [Number.NEGATIVE_INFINITY, '-Infinity'],
  ['27', "'27'"],
  [null, 'null'],
  [27n, 'bigint'],
  [Symbol('27'), 'symbol'],
  [{}, 'object'],
];

describe('options', () => {
  it.each(unfit)('are numbers where numbers are wanted, not %s', (given, received) => {
    const number = given as number;
    expect(decodeBits(bits, { start: number })).toEqual(wrong('start', received));
    expect(decodeBits(bits, { from: number })).toEqual(wrong('from', received));
    expect(decodeSoft(soft, { start: number })).toEqual(wrong('start', received));
    expect(decodeSoft(soft, { from: number })).toEqual(wrong('from', received));
  });

  it('say where a call may be searched, to the whole bit', () => {
    for (const start of [20, 20.9]) expect(valueOf(decodeBits(bits, { start })).quality.start).toBe(20);
    for (const start of [-1e300, 1e300, 1e9]) expect(decodeBits(bits, { start }).ok).toBe(false);
    for (const from of [0, 20, -7]) expect(valueOf(decodeBits(bits, { from })).quality.start).toBe(20);
    expect(decodeBits(bits, { from: 1e300 }).ok).toBe(false);
  });

  it('are left out, undefined or null alike', () => {
    const none = null as unknown as undefined;
    for (const options of [undefined, none, {}, { start: undefined, from: undefined }]) {
      expect(decodeBits(bits, options)).toEqual(decodeBits(bits));
      expect(decodeSoft(soft, options)).toEqual(decodeSoft(soft));
    }
  });
});

describe('a second look', () => {
  it('that says nothing, or nothing of use, about a reading leaves it as it was', () => {
    const asHeard = (answer: unknown) => readMetrics(metrics, { rescore: () => answer as readonly number[] });
    const first = asHeard([]);
    expect(valueOf(first).quality.verdict).toBe('clean');
    for (const answer of [undefined, null, 'none', [Number.NaN], [undefined], ['1']])
      expect(asHeard(answer)).toEqual(first);
  });

  it('that finds every reading impossible finds no call', () => {
    const rescore = (streams: readonly unknown[]) => streams.map(() => Number.NEGATIVE_INFINITY);
    expect(readMetrics(metrics, { rescore })).toMatchObject({
      ok: false,
      issues: [{ code: 'burst-not-found' }],
    });
  });
});

describe('symbols', () => {
  it('may stand in a typed array', () => {
    for (const list of [Uint8Array, Int16Array, Float32Array, Float64Array])
      expect(decodeStream(list.from(stream))).toEqual(decodeStream(stream));
    expect(decodeStream(new Float32Array([125, 111.5]))).toMatchObject({
      ok: false,
      issues: [{ code: 'burst-input', at: [1], received: '111.5' }],
    });
    expect(decodeStream(new BigUint64Array(2) as unknown as Uint8Array)).toMatchObject({
      ok: false,
      issues: [{ code: 'burst-input', at: [0], received: 'bigint' }],
    });
  });
});
