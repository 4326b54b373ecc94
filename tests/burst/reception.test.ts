import { describe, expect, it } from 'vitest';
import { decodeHard } from '../../src/burst/decode-bits.ts';
import { decodeFirst } from '../../src/burst/decode-soft.ts';
import { decodeBits, decodeSoft, decodeStream, encodeCall, type Reception } from '../../src/burst/index.ts';
import { separate } from '../../src/burst/judgement.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { composeDistressAlert, composeIndividualCall } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';
import type { Success } from '../../src/result/result.ts';
import { copiesOf, metricsOf, readMetrics, type Word, withWords } from './heard.ts';

// Invented stations of the demo scenario.
const call = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
const sent = encodeCall(call);
const alert = composeDistressAlert({ from: '232999218', nature: 'sinking' });
const alertSent = encodeCall(alert);
const characters = [...sent.information.slice(1), sent.errorCheck];
const CHECK = characters.length - 1;

/** Symbols as they would be handed over: `null` where nothing was heard. */
const symbolsOf = (words: readonly Word[]) => words as readonly (number | null)[];
function received(words: readonly Word[]): Success<Reception> {
  const result = decodeStream(symbolsOf(words));
  if (!result.ok) throw new Error(result.issues[0].message);
  return result;
}
const codesOf = ({ notices }: Success<Reception>) => notices.map(({ code }) => code);
const near = (probability: number) => expect.closeTo(probability, 3);

describe('a reception', () => {
  it('shows everything of a clean call', () => {
    const result = received(sent.stream);
    expect(result.value).toEqual({
      call,
      information: sent.information,
      quality: {
        verdict: 'clean',
        probability: near(1),
        margin: 14,
        runnerUp: null,
        errorCheck: { kind: 'as-sent' },
        characters: characters.map((symbol) => ({ symbol, source: 'both-copies', probability: near(1) })),
        words: { sent: sent.stream.length, differing: 0 },
        polarity: 'normal',
        calls: 1,
        expansion: 'none',
        start: 0,
        end: sent.stream.length,
      },
    });
    expect(result.notices).toEqual([]);
  });

  it('counts words that say something else, or nothing', () => {
    const hit = withWords(sent.stream, [3, 20, 40], (_, position) => (position === 3 ? null : 33));
    expect(received(hit).value.quality.words).toEqual({ sent: sent.stream.length, differing: 3 });
  });

  it('tells where each character came from', () => {
    const one = withWords(sent.stream, [copiesOf(3)[0]], () => null);
    expect(received(one).value.quality.characters[3]).toEqual({
      symbol: characters[3],
      source: 'one-copy',
      probability: near(1),
    });
    expect(received(one).notices).toEqual([]);
  });

  it('is repaired where the error check had to fill a character, and says it is not clean', () => {
    const result = received(withWords(sent.stream, copiesOf(3), () => null));
    expect(result.value.quality).toMatchObject({
      verdict: 'repaired',
      errorCheck: { kind: 'used-for-repair' },
    });
    expect(result.value.quality.characters[3]).toEqual({
      symbol: characters[3],
      source: 'repaired',
      probability: near(1),
    });
    expect(codesOf(result)).toEqual(['burst-repaired']);
  });

  it('is repaired, not clean, where nothing was heard of the error check', () => {
    const result = received(withWords(sent.stream, copiesOf(CHECK), () => null));
    expect(result.value.call).toEqual(call);
    expect(result.value.quality).toMatchObject({ verdict: 'repaired', errorCheck: { kind: 'not-read' } });
    expect(codesOf(result)).toEqual(['burst-repaired']);
  });

  it('is repaired where a format specifier without address came once', () => {
    const result = received(withWords(alertSent.stream, [14, 17, 19], () => null));
    expect(result.value.quality).toMatchObject({ verdict: 'repaired', errorCheck: { kind: 'as-sent' } });
    expect(codesOf(result)).toEqual(['burst-repaired', 'burst-format-once']);
  });

  it('stays clean where a format specifier with address came once', () => {
    const result = received(withWords(sent.stream, [14, 17, 19], () => null));
    expect(result.value.quality.verdict).toBe('clean');
    expect(result.notices).toEqual([]);
  });

  it('leaves open what is not legible in a doubtful call, and keeps the rest', () => {
    const gone = [...copiesOf(3), ...copiesOf(4)];
    const result = received(withWords(sent.stream, gone, () => null));
    const { quality, information } = result.value;
    expect(quality.verdict).toBe('doubtful');
    expect(quality.probability).toBeLessThan(0.1);
    expect(quality.margin).toBeLessThan(1);
    expect(quality.runnerUp).toHaveLength(information.length);
    expect(quality.runnerUp?.slice(0, 2)).toEqual([120, 120]);
    expect(information).toEqual(sent.information.map((symbol, at) => (at === 4 || at === 5 ? null : symbol)));
    for (const index of [3, 4])
      expect(quality.characters[index]).toEqual({
        symbol: null,
        source: 'unread',
        probability: expect.any(Number),
      });
    expect(quality.characters[5]).toEqual({
      symbol: characters[5],
      source: 'both-copies',
      probability: expect.closeTo(1, 1),
    });
    expect(codesOf(result)[0]).toBe('burst-doubtful');
  });

  // What is expected is no reading: 126 is by far the most usual there, and was not heard.
  it('leaves open in a doubtful call what was not heard, however usual', () => {
    const gone = [3, 4, 13].flatMap(copiesOf);
    expect(characters[13]).toBe(126);
    const { quality } = received(withWords(sent.stream, gone, () => null)).value;
    expect(quality.verdict).toBe('doubtful');
    expect(quality.characters[13]).toMatchObject({ symbol: null, source: 'unread' });
  });

  it('counts start and end of a stream in symbols, in its notices too', () => {
    const late = received([null, null, null, ...sent.stream, null, null]);
    expect(late.value.quality).toMatchObject({ start: 3, end: 3 + sent.stream.length });
    const early = received(sent.stream.slice(9));
    expect(early.value.quality).toMatchObject({ start: -9, end: sent.stream.length - 9 });
    const cut = received(alertSent.stream.slice(0, 33));
    expect(cut.value.quality.end).toBe(33);
    expect(cut.notices).toContainEqual(expect.objectContaining({ code: 'burst-cut-short', at: [33] }));
  });

  it('is cut short by one word, and not by what is missing behind it', () => {
    const short = received(sent.stream.slice(0, -1));
    expect(short.value.quality).toMatchObject({ verdict: 'clean', end: sent.stream.length - 1 });
    expect(codesOf(short)).toEqual(['burst-cut-short']);
    expect(received(sent.stream).notices).toEqual([]);
  });
});

describe('hard bits', () => {
  it('are weighed by the share of wrong ones, in either polarity', () => {
    const hit = [...sent.bits];
    for (let at = 30; at < hit.length; at += 45) hit[at] = hit[at] === '1' ? '0' : '1';
    const upright = valueOf(decodeBits(hit.join('')));
    const turned = valueOf(decodeBits(hit.map((bit) => (bit === '1' ? '0' : '1')).join('')));
    expect(upright.call).toEqual(call);
    expect(turned.quality).toEqual({ ...upright.quality, polarity: 'inverted' });
    expect(turned.quality.probability).toBe(upright.quality.probability);
  });

  it('may be missing here and there', () => {
    const gaps = [...sent.bits].map((bit, at) => (at % 9 === 4 ? '?' : bit)).join('');
    expect(valueOf(decodeBits(gaps))).toMatchObject({ call, quality: { verdict: 'clean', start: 20 } });
    const nulls = [...sent.bits].map((bit, at) => (at % 9 === 4 ? null : Number(bit)));
    expect(decodeBits(nulls)).toEqual(decodeBits(gaps));
  });
});

describe('a stream of symbols', () => {
  it('that ends a word early lacks that word, whatever it would have been', () => {
    // A routine individual call between the demo's stations whose error check, the last word, is 1 (by calculation).
    const information = [120, 23, 29, 99, 14, 20, 100, 23, 29, 99, 87, 10, 100, 126, 90, 0, 10, 90, 0];
    const last = [...information, 117].reduce((sum, symbol) => sum ^ symbol, 1);
    const whole = streamOf([...information, last, 117]);
    expect(whole.at(-1)).toBe(1);
    expect(last).toBeLessThan(100);
    const result = received(whole.slice(0, -1));
    expect(codesOf(result)).toContain('burst-cut-short');
    const lacking = { sent: whole.length, differing: 1 };
    expect(result.value.quality.words).toEqual(lacking);
    const metrics = metricsOf(whole.slice(0, -1));
    expect(valueOf(readMetrics(metrics)).quality.words).toEqual(lacking);
  });

  it('is told to be cut short at a symbol, and to be the wrong way round nowhere', () => {
    const result = received(sent.stream.slice(0, -2).map((symbol) => 127 - symbol));
    expect(result.notices).toEqual([
      expect.objectContaining({ code: 'burst-cut-short', at: [sent.stream.length - 2] }),
      expect.objectContaining({ code: 'burst-inverted', at: [] }),
    ]);
  });
});

describe('where to look', () => {
  const llrs = [...sent.bits, ...alertSent.bits].map((bit) => (bit === '1' ? 4 : -4));
  const second = sent.bits.length + 20;

  it('is from the front, or from a given index on', () => {
    expect(valueOf(decodeSoft(llrs)).quality.start).toBe(20);
    expect(valueOf(decodeSoft(llrs, { from: sent.bits.length })).quality.start).toBe(second);
    for (const from of [0, -5]) expect(valueOf(decodeSoft(llrs, { from })).quality.start).toBe(20);
    // A lost number is no reason to begin again at the front: a loop over calls would not end.
    expect(decodeSoft(llrs, { from: Number.NaN }).ok).toBe(false);
    expect(valueOf(decodeSoft(llrs, { from: sent.bits.length + 0.7 })).quality.start).toBe(second);
  });

  it('is a given index and no other', () => {
    expect(valueOf(decodeSoft(llrs, { start: second })).call).toEqual(alert);
    expect(valueOf(decodeSoft(llrs, { start: second + 0.9 })).call).toEqual(alert);
    expect(decodeSoft(llrs, { start: 37 }).ok).toBe(false);
    expect(decodeSoft(llrs, { start: Number.POSITIVE_INFINITY }).ok).toBe(false);
  });

  it('is in order: a doubtful call first, and the clear one behind it next', () => {
    const broken = llrs.map((value, at) => (at < sent.bits.length && at > 300 ? 0 : value));
    const first = valueOf(decodeSoft(broken)).quality;
    expect(first).toMatchObject({ verdict: 'doubtful', start: 20 });
    expect(first.end).toBeLessThanOrEqual(second);
    const next = valueOf(decodeSoft(broken, { from: first.end })).quality;
    expect(next).toMatchObject({ verdict: 'clean', start: second });
  });

  it('passes over half a word of phasing with nothing behind it', () => {
    const start = llrs.slice(20, 35);
    const silence = new Array<number>(700).fill(0);
    const result = decodeSoft([...start.map((value) => 3 * value), ...silence]);
    expect(result).toMatchObject({
      ok: false,
      issues: [{ code: 'burst-not-found', params: { sure: 0 } }],
    });
    const { quality } = valueOf(decodeSoft([...start.map((value) => 3 * value), ...silence, ...llrs]));
    expect(quality).toMatchObject({ verdict: 'clean', start: 735 });
  });

  it('gives the doubtful call when there is no other', () => {
    const broken = llrs.slice(0, 300);
    expect(valueOf(decodeSoft(broken)).quality).toMatchObject({ verdict: 'doubtful', start: 20, end: 300 });
  });
});

describe('hard bits in error', () => {
  // The log-likelihood of a bit that is wrong with probability p is ln((1 - p) / p); p as the call itself shows it.
  it.each([0, 7, 31])('are weighed by the share of them that came wrong: %i', (count) => {
    const ones = sent.stream.map(encodeSymbol).join('');
    const every = Math.floor(ones.length / Math.max(count, 1));
    const wrong = new Set(Array.from({ length: count }, (_, index) => every * index + (index % 9)));
    const hard = Float64Array.from(ones, (bit, at) => ((bit === '1') === wrong.has(at) ? -1 : 1));
    const share = (count + 0.5) / (ones.length + 1);
    const weighed = hard.map((bit) => bit * Math.log((1 - share) / share));
    const stretch = { bits: hard, offset: 0 };
    const found = decodeHard(stretch, {})?.reception;
    const told = decodeFirst({ bits: weighed, offset: 0 }, separate, { start: 0 })?.reception;
    expect(found?.call).toEqual(call);
    expect(found?.quality.verdict).toBe(told?.quality.verdict);
    expect(found?.quality.probability).toBeCloseTo(told?.quality.probability ?? 0, 4);
    expect(found?.quality.margin).toBeCloseTo(told?.quality.margin ?? 0, 1);
  });
});

describe('soft values', () => {
  it('that are too sure count no more than the surest, and those that are no numbers not at all', () => {
    const soft = (sure: number, gap: unknown) =>
      [...sent.bits].map((bit, at) => (at % 11 === 5 ? gap : bit === '1' ? sure : -sure)) as number[];
    const usual = decodeSoft(soft(12, 0));
    expect(decodeSoft(soft(1e300, 0))).toEqual(usual);
    expect(decodeSoft(soft(Number.POSITIVE_INFINITY, Number.NaN))).toEqual(usual);
    expect(decodeSoft(soft(12, '9'))).toEqual(usual);
    expect(decodeSoft(soft(12, null))).toEqual(usual);
    expect(decodeSoft(Float32Array.from(soft(12, 0)))).toEqual(usual);
    expect(decodeSoft(soft(3, 0))).not.toEqual(usual);
  });

  it('are believed less than bits that are wrong each by itself', () => {
    const hit = withWords(sent.stream, copiesOf(3), () => null) as (number | null)[];
    const hard = valueOf(decodeStream(hit)).quality.probability;
    const soft = valueOf(readMetrics(metricsOf(hit, 0.9))).quality.probability;
    expect(soft).toBeLessThan(hard);
  });
});

describe('metrics per word', () => {
  it('end where they end, whole words only', () => {
    const metrics = metricsOf(sent.stream);
    const cut = readMetrics(metrics.slice(0, 128 * 50 + 60));
    expect(valueOf(cut).quality.end).toBe(500);
    expect(cut.ok && cut.notices).toContainEqual(
      expect.objectContaining({ code: 'burst-cut-short', at: [500] }),
    );
    expect(valueOf(readMetrics([...metrics])).quality).toMatchObject({
      polarity: 'normal',
      start: 0,
      end: 10 * sent.stream.length,
    });
  });

  it('make a call likelier by what was heard of the dots before it', () => {
    const faint = new Float64Array(128 * sent.stream.length);
    for (let at = 0; at < 16; at++) faint[128 * at + (sent.stream[at] as number)] = -0.3;
    for (let at = 16; at < 40; at++) faint[128 * at + (sent.stream[at] as number)] = 2.5;
    const at = (lead?: number) => readMetrics(faint, lead === undefined ? {} : { lead });
    expect(at().ok).toBe(false);
    expect(at(4)).not.toEqual(at());
    expect(at(0)).toEqual(at());
    expect(at(12).ok).toBe(true);
  });
});
