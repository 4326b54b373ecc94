import { describe, expect, it } from 'vitest';
import { decodeSoft, decodeStream, encodeCall } from '../../src/burst/index.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { composeDistressAlert, composeIndividualCall } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { readMetrics } from './heard.ts';

// Invented stations of the demo scenario.
const call = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
const { stream, information } = encodeCall(call);
const alert = encodeCall(composeDistressAlert({ from: '232999218', nature: 'sinking' }));

/** Words of a stream, each as sure as `surety`, those at some positions replaced. */
function metricsOf(symbols: readonly number[], surety: number): Float32Array {
  const metrics = new Float32Array(128 * symbols.length).fill(Math.log((1 - surety) / 127 / (1 / 1024)));
  symbols.forEach((symbol, position) => {
    metrics[128 * position + symbol] = Math.log(surety / (1 / 1024));
  });
  return metrics;
}

/** Stream positions of character `index`, format specifier once (M.493: slot k of DX, slot k + 2 of RX). */
const copies = (index: number): [number, number] => [2 * (7 + index), 2 * (9 + index) + 1];

describe('verdict', () => {
  it('is clean when everything came as sent', () => {
    const { quality } = valueOf(decodeStream(stream));
    expect(quality.verdict).toBe('clean');
    expect(quality.errorCheck.kind).toBe('as-sent');
    expect(quality.characters.every(({ source }) => source === 'both-copies')).toBe(true);
    expect(quality.words).toEqual({ sent: 62, differing: 0 });
    expect(quality.runnerUp).toBeNull();
  });

  it('stays clean with one copy of a character, and says so', () => {
    const [first] = copies(3);
    const { quality } = valueOf(decodeStream(stream.map((symbol, at) => (at === first ? null : symbol))));
    expect(quality.verdict).toBe('clean');
    expect(quality.characters[3]?.source).toBe('one-copy');
  });

  // M.493: the error check fills one open character; such a call is never acted on (advice by calculation).
  it('is not clean when both copies of a character are gone and the error check fills it', () => {
    const hit = stream.map((symbol, at) => (copies(9).includes(at) ? null : symbol));
    const { quality, call: read } = valueOf(decodeStream(hit));
    expect(read).toEqual(call);
    expect(quality.errorCheck.kind).toBe('used-for-repair');
    expect(quality.characters[9]?.source).toBe('repaired');
    expect(quality.verdict).not.toBe('clean');
  });

  it('is not clean when nothing of the error check was heard', () => {
    const hit = stream.map((symbol, at) => (copies(21).includes(at) ? null : symbol));
    const { quality, call: read } = valueOf(decodeStream(hit));
    expect(read).toEqual(call);
    expect(quality.errorCheck.kind).toBe('not-read');
    expect(quality.verdict).not.toBe('clean');
  });

  it('is not clean when two characters differ between their copies', () => {
    const hit = [...stream];
    for (const index of [2, 8]) hit[copies(index)[1]] = 33;
    const { quality, call: read } = valueOf(decodeStream(hit));
    expect(quality.verdict).not.toBe('clean');
    expect(quality.errorCheck.kind).toBe('used-for-repair');
    if (quality.verdict === 'repaired') expect(read).toEqual(call);
  });

  it('is doubtful with two characters gone, and leaves them open', () => {
    const gone = [...copies(2), ...copies(8)];
    const result = decodeStream(stream.map((symbol, at) => (gone.includes(at) ? null : symbol)));
    const { quality, information: read } = valueOf(result);
    expect(quality.verdict).toBe('doubtful');
    expect(read[3]).toBeNull();
    expect(read[9]).toBeNull();
    expect(read.filter((symbol) => symbol === null)).toHaveLength(2);
    expect(read[1]).toBe(information[1]);
    expect(result.ok && result.notices.map(({ code }) => code)).toContain('burst-doubtful');
  });

  it.each([
    ['repaired', 0.55],
    ['repaired', 0.45],
    ['doubtful', 0.4],
    ['doubtful', 0.3],
  ] as const)(
    'is %s where every character is as sent, and all together are not sure enough (%d)',
    (verdict, faint) => {
      const { quality, call: read } = valueOf(
        readMetrics(metricsOf(stream, 0.99).map((value) => faint * value)),
      );
      expect(quality.errorCheck.kind).toBe('as-sent');
      if (verdict === 'repaired') {
        expect(read).toEqual(call);
        expect(quality.probability).toBeGreaterThanOrEqual(0.99);
        expect(quality.probability).toBeLessThan(0.9999);
      } else expect(quality.probability).toBeLessThan(0.99);
      expect(quality.verdict).toBe(verdict);
    },
  );

  // M.493: four copies of the end of sequence.
  it('leaves an end of sequence in a doubtful call that was heard in its further copies only', () => {
    const gone = [...copies(2), ...copies(8), ...copies(20)];
    const { quality, information: read } = valueOf(
      decodeStream(stream.map((symbol, at) => (gone.includes(at) ? null : symbol))),
    );
    expect(quality.verdict).toBe('doubtful');
    expect(read[3]).toBeNull();
    expect(read.at(-1)).toBe(117);
  });

  // M.493, from memory: the format specifier of a call without an address must be received twice.
  it('is not clean when the format specifier of an alert came only once', () => {
    const result = decodeStream(
      alert.stream.map((symbol, at) => ([14, 17, 19].includes(at) ? null : symbol)),
    );
    expect(valueOf(result).call.kind).toBe('distress-alert');
    expect(valueOf(result).quality.verdict).not.toBe('clean');
    expect(result.ok && result.notices.map(({ code }) => code)).toContain('burst-format-once');
    const twice = decodeStream(alert.stream.map((symbol, at) => ([14, 17].includes(at) ? null : symbol)));
    expect(valueOf(twice).quality.verdict).toBe('clean');
  });
});

describe('metrics per word', () => {
  it('are read as bits are', () => {
    const { call: read, quality } = valueOf(readMetrics(metricsOf(stream, 0.99)));
    expect(read).toEqual(call);
    expect(quality).toMatchObject({ verdict: 'clean', start: 0, end: 10 * stream.length });
  });

  it('find no call where nothing was heard', () => {
    expect(readMetrics(new Float32Array(128 * 100)).ok).toBe(false);
  });

  it('ask the receiver once about whole streams and follow its answer', () => {
    const asked: (readonly number[])[] = [];
    const hit = [...stream];
    for (const index of [2, 8]) hit[copies(index)[1]] = (hit[copies(index)[1]] as number) ^ 5;
    const result = readMetrics(metricsOf(hit, 0.95), {
      rescore: (streams) => {
        asked.push(...streams);
        return streams.map((candidate) => (candidate.join() === stream.join() ? 300 : 250));
      },
    });
    expect(asked.length).toBeGreaterThan(1);
    expect(asked.length).toBeLessThanOrEqual(64);
    expect(new Set(asked.map((each) => each.join())).size).toBe(asked.length);
    expect(valueOf(result).call).toEqual(call);
  });

  it('are believed in full when the receiver has compared whole streams, and less when it has not', () => {
    const hit = metricsOf(stream, 0.99);
    for (const at of copies(9)) hit.fill(0, 128 * at, 128 * (at + 1));
    const { quality } = valueOf(readMetrics(hit));
    const again = valueOf(readMetrics(hit, { rescore: () => [] })).quality;
    quality.characters.forEach(({ symbol }, index) => {
      if (symbol !== null) expect(again.characters[index]?.symbol).toBe(symbol);
    });
    expect(again.probability).toBeGreaterThan(quality.probability);
  });

  it('agree with soft bits, which are made into the same', () => {
    const llrs = [...stream.map(encodeSymbol).join('')].map((bit) => (bit === '1' ? 3 : -3));
    expect(valueOf(decodeSoft(llrs, { start: 0 })).quality.verdict).toBe('clean');
  });
});
