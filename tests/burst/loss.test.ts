import { describe, expect, it } from 'vitest';
import { heardOfStream, lostShares, receivedShares } from '../../src/burst/loss.ts';
import { metricsOf, type Word } from './heard.ts';

// Two states with memory (E. N. Gilbert, Bell System Technical Journal 39, 1960), every row of states added up. The
// chances are estimates of our own, no source.
const FIRST = 0.15;
const LOSE = 0.004;
const REGAIN = 0.08;
const soft = (metric: number) => 0.999 * Math.exp(metric) + 0.001;

/** Every row of states of some words, with its chance. */
function* rows(
  words: number,
): Generator<{ readonly isLost: (word: number) => boolean; readonly chance: number }> {
  for (let pattern = 0; pattern < 2 ** words; pattern++) {
    const isLost = (word: number) => ((pattern >> word) & 1) === 1;
    let chance = isLost(0) ? FIRST : 1 - FIRST;
    for (let word = 1; word < words; word++) {
      const leave = isLost(word - 1) ? REGAIN : LOSE;
      chance *= isLost(word) === isLost(word - 1) ? 1 - leave : leave;
    }
    yield { isLost, chance };
  }
}

/** Likelihood of words, each so likely when it was received, against random bits. */
function likelihoodOf(evidence: readonly number[]): number {
  let sum = 0;
  for (const { isLost, chance } of rows(evidence.length))
    sum += evidence.reduce((product, each, word) => (isLost(word) ? product : product * each), chance);
  return sum;
}

const stream = [125, 111, 125, 110, 9, 77, 9, 120, 35, 35];
const words: Word[] = [125, 111, 3, 110, [8, 9], null, 9, 120, 36, 35];

describe('what was heard of a stream', () => {
  const metrics = metricsOf(words, 0.9);
  const evidence = stream.map((symbol, position) => soft(metrics[128 * position + symbol] as number));

  it('adds up every way of losing words, and the two ways of ending', () => {
    // One set in a hundred leaves out the two further copies of the end of sequence, the fourth and second word from the end.
    const without = evidence.map((each, position) => ([6, 8].includes(position) ? 1 : each));
    const sum = 0.99 * likelihoodOf(evidence) + 0.01 * likelihoodOf(without);
    expect(heardOfStream(metrics, stream)).toBeCloseTo(Math.log(sum), 9);
  });

  it('has nothing against words that did not come in', () => {
    const cut = evidence.map((each, position) => (position < 7 ? each : 1));
    const without = cut.map((each, position) => (position === 6 ? 1 : each));
    const sum = 0.99 * likelihoodOf(cut) + 0.01 * likelihoodOf(without);
    expect(heardOfStream(metrics.slice(0, 128 * 7), stream)).toBeCloseTo(Math.log(sum), 9);
  });

  it('says of each word how likely it was received', () => {
    const all = likelihoodOf(evidence);
    const expected = stream.map((_, position) => {
      let received = 0;
      for (const { isLost, chance } of rows(stream.length))
        if (!isLost(position))
          received += evidence.reduce(
            (product, each, word) => (isLost(word) ? product : product * each),
            chance,
          );
      return received / all;
    });
    const shares = receivedShares(metrics, stream);
    expect(shares).toHaveLength(stream.length);
    for (const [position, share] of shares.entries())
      expect(share).toBeCloseTo(expected[position] as number, 9);
    // A word that did not come in is judged by its neighbours.
    expect(receivedShares(metrics.slice(0, 128 * 9), stream)).toHaveLength(stream.length);
    expect(receivedShares(new Float64Array(0), [9])[0]).toBeCloseTo(1 - FIRST, 12);
  });
});

describe('how likely a word was lost', () => {
  // M.493: phasing in words 0 to 11 and 13, 15; the first DX copies of characters in 12, 14 and 16, the RX copy of 12 in 17.
  const PHASING = [125, 111, 125, 110, 125, 109, 125, 108, 125, 107, 125, 106, null, 105, null, 104];
  const COUNT = 18;
  const burst = PHASING.map((symbol, position): Word => symbol ?? (position === 12 ? 9 : 77));

  /** Likelihood of a word received: of phasing its one symbol, of a character by its other copy too. */
  function evidenceOf(metrics: Float64Array): number[] {
    const row = (position: number) =>
      [...metrics.subarray(128 * position, 128 * (position + 1))].map(Math.exp);
    const sum = (values: readonly number[]) => values.reduce((one, other) => one + other, 0);
    return Array.from({ length: COUNT }, (_, position) => {
      const known = PHASING[position] ?? null;
      if (known !== null) return soft(metrics[128 * position + known] as number);
      const own = row(position);
      const other = ({ 12: 17, 17: 12 } as Record<number, number>)[position];
      const alone = sum(own) / 128;
      if (other === undefined) return 0.999 * alone + 0.001;
      const copy = row(other);
      const together = sum(own.map((each, symbol) => each * (copy[symbol] as number))) / sum(copy);
      return 0.999 * (0.2 * alone + 0.8 * together) + 0.001;
    });
  }

  it.each<[string, readonly Word[]]>([
    ['all of it heard', [...burst, 35, 9]],
    ['the second copy another', [...burst, 35, 10]],
    ['several words wrong', [...burst, 35, [9, 10]].map((word, at) => (at > 2 && at < 9 ? 50 : word))],
    ['the beginning not heard', [...burst, 35, 9].map((word, at) => (at < 7 ? null : word))],
    ['the end wrong', [...burst, 35, 9].map((word, at) => (at > 9 ? 1 : word))],
  ])('is judged by all the others: %s', (_, heard) => {
    const metrics = metricsOf(heard, 0.9);
    const evidence = evidenceOf(metrics);
    const lost = new Array<number>(COUNT).fill(0);
    const all = new Array<number>(COUNT).fill(0);
    for (const { isLost, chance } of rows(COUNT)) {
      let product = chance;
      for (let word = 0; word < COUNT; word++) if (!isLost(word)) product *= evidence[word] as number;
      for (let word = 0; word < COUNT; word++) {
        const others = isLost(word) ? product : product / (evidence[word] as number);
        all[word] = (all[word] as number) + others;
        if (isLost(word)) lost[word] = (lost[word] as number) + others;
      }
    }
    const shares = lostShares(metrics);
    expect(shares).toHaveLength(COUNT);
    for (const [word, share] of shares.entries())
      expect(share / ((lost[word] as number) / (all[word] as number))).toBeCloseTo(1, 6);
  });

  it('is that at the first word where nothing came in, and counts whole words alone', () => {
    expect(lostShares(new Float64Array(0))).toHaveLength(0);
    expect(lostShares(new Float64Array(128 * 2 + 127))).toHaveLength(2);
    expect(lostShares(new Float64Array(128))[0]).toBeCloseTo(FIRST, 12);
  });
});
