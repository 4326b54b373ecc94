import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findPhasing, phasingAt } from '../../src/burst/phasing.ts';
import { slotBits } from '../oracle/burst-stream.ts';

// A distress alert of an invented ship. Twenty bits of dot pattern, 160 of phasing, of which 20 are the format's.
const sent = slotBits([112, 23, 29, 99, 21, 80, 105, 99, 99, 99, 99, 99, 88, 88, 100, 127]);
const SURETY = 3;
const bitsOf = (text: string): Float64Array =>
  Float64Array.from(text, (bit) => (bit === '1' ? SURETY : bit === '0' ? -SURETY : 0));
/** What a right bit says, against a random one; what a wrong one does (by calculation). */
const RIGHT = Math.log(2 / (1 + Math.exp(-SURETY)));
const WRONG = Math.log(2 / (1 + Math.exp(SURETY)));
/**
 * What fourteen words say together (by calculation, every way of losing them added up): each has so many wrong bits,
 * or `null` when it was not heard. Reception is lost at first in 15 of 100 bursts, from word to word in 4 of 1000, and
 * comes back in 8 of 100; two words of 100 are worthless by themselves.
 */
function evidenceOf(wrongBits: readonly (number | null)[]): number {
  const words = wrongBits.map((wrong) =>
    wrong === null ? 1 : 0.98 * Math.exp((10 - wrong) * RIGHT + wrong * WRONG) + 0.02,
  );
  let sum = 0;
  for (let pattern = 0; pattern < 1 << words.length; pattern++) {
    const isLost = (word: number) => ((pattern >> word) & 1) === 1;
    let product = isLost(0) ? 0.15 : 0.85;
    words.forEach((word, index) => {
      if (!isLost(index)) product *= word;
      if (index === 0) return;
      if (isLost(index - 1)) product *= isLost(index) ? 0.92 : 0.08;
      else product *= isLost(index) ? 0.004 : 0.996;
    });
    sum += product;
  }
  return Math.log(sum);
}
const all = new Array<number>(14).fill(0);
const ALL = evidenceOf(all);
const turned = (text: string) => text.replace(/[01]/g, (bit) => (bit === '1' ? '0' : '1'));
const silence = (length: number) => '?'.repeat(length);

describe('phasing at a place', () => {
  it('is the fourteen words that every call begins with, and the dots before them', () => {
    const { start, sign, evidence, lead } = phasingAt(bitsOf(sent), 20);
    expect([start, sign]).toEqual([20, 1]);
    expect(evidence).toBeCloseTo(ALL, 6);
    expect(lead).toBeCloseTo(20 * RIGHT, 9);
  });

  it('is read with the tones the wrong way round', () => {
    const { sign, evidence, lead } = phasingAt(bitsOf(turned(sent)), 20);
    expect(sign).toBe(-1);
    expect(evidence).toBeCloseTo(ALL, 6);
    expect(lead).toBeCloseTo(20 * RIGHT, 9);
  });

  it('takes no part from the words of the format specifier, which are not known', () => {
    const bits = bitsOf(sent);
    for (const word of [12, 14]) bits.fill(0, 20 + 10 * word, 30 + 10 * word);
    expect(phasingAt(bits, 20).evidence).toBeCloseTo(ALL, 6);
    for (const word of [0, 1, 2, 10, 11, 13, 15]) {
      const hit = bitsOf(sent);
      hit.fill(0, 20 + 10 * word, 30 + 10 * word);
      const place = word < 12 ? word : (word + 11) / 2;
      expect(phasingAt(hit, 20).evidence).toBeCloseTo(
        evidenceOf(all.map((_, index) => (index === place ? null : 0))),
        6,
      );
    }
  });

  it('loses by each wrong bit', () => {
    const bits = bitsOf(sent);
    bits[25] = -(bits[25] as number);
    expect(phasingAt(bits, 20).evidence).toBeCloseTo(evidenceOf([1, ...all.slice(1)]), 6);
  });

  it('is upright where nothing tells', () => {
    const { sign, evidence, lead } = phasingAt(bitsOf(silence(300)), 20);
    expect([sign, lead]).toEqual([1, 0]);
    expect(evidence).toBeCloseTo(0, 9);
  });

  it('counts dots of either polarity, those that are there, and never holds their lack against a call', () => {
    const phasing = sent.slice(20);
    expect(phasingAt(bitsOf('01'.repeat(10) + phasing), 20).lead).toBeCloseTo(20 * RIGHT, 9);
    expect(phasingAt(bitsOf('10'.repeat(50) + phasing), 100).lead).toBeCloseTo(20 * RIGHT, 9);
    expect(phasingAt(bitsOf(`1010101${phasing}`), 7).lead).toBeCloseTo(7 * RIGHT, 9);
    expect(phasingAt(bitsOf(`010101${phasing}`), 6).lead).toBeCloseTo(6 * RIGHT, 9);
    expect(phasingAt(bitsOf('1'.repeat(20) + phasing), 20).lead).toBeCloseTo(-Math.LN2, 9);
    expect(phasingAt(bitsOf(phasing), 0).lead).toBe(0);
    // One dot of each ten wrong: by so much less.
    expect(phasingAt(bitsOf(`11101010101110101010${phasing}`), 20).lead).toBeCloseTo(
      18 * RIGHT + 2 * WRONG,
      9,
    );
  });
});

describe('places where phasing may begin', () => {
  const starts = (text: string, from = 0) => [...findPhasing(bitsOf(text), from)].map(({ start }) => start);

  it('are one for each call, in order, each as it is looked at by itself', () => {
    const twice = bitsOf(sent + silence(130) + sent);
    const second = sent.length + 130 + 20;
    const places = [...findPhasing(twice, 0)].filter(({ evidence }) => evidence > 80);
    expect(places).toEqual([phasingAt(twice, 20), phasingAt(twice, second)]);
  });

  it('are none in silence, in dots and in too few bits', () => {
    expect(starts(silence(1000))).toEqual([]);
    expect(starts('10'.repeat(500))).toEqual([]);
    expect(starts('')).toEqual([]);
    expect(starts('1'.repeat(29))).toEqual([]);
  });

  it('are the best of those that resemble each other', () => {
    // The words of phasing come twenty bits apart, so that it resembles itself when shifted by two of them.
    expect(starts(silence(80) + sent.slice(0, 180) + silence(80))).toEqual([100]);
    expect(starts(turned(silence(80) + sent.slice(0, 180) + silence(80)))).toEqual([100]);
  });

  // The least that the Recommendation asks for (M.493, from memory): three right phasing words, thirty bits.
  it('begin where the last thirty bits of phasing are all that is left', () => {
    const phasing = sent.slice(20, 180);
    expect(starts(phasing.slice(130))).toEqual([-130]);
    expect(starts(phasing.slice(131) + silence(50))).toEqual([]);
  });

  it('end where the first thirty bits of phasing are all that is left', () => {
    const phasing = sent.slice(20, 180);
    expect(starts(silence(200) + phasing.slice(0, 30))).toEqual([200]);
    expect(starts(silence(200) + phasing.slice(0, 29))).not.toContain(200);
  });

  it('are looked for from a place on, with phasing cut off there', () => {
    const two = silence(10) + sent + sent;
    const first = 30;
    expect(starts(two, first + 130)[0]).toBe(first);
    expect(starts(two, first + 131)).not.toContain(first);
  });

  it('find it wherever it stands', () => {
    fc.assert(
      fc.property(fc.nat({ max: 400 }), fc.boolean(), (before, wrongWay) => {
        const text = silence(before) + sent;
        const places = [...findPhasing(bitsOf(wrongWay ? turned(text) : text), 0)];
        const best = places.reduce((one, other) => (other.evidence > one.evidence ? other : one));
        expect([best.start, best.sign]).toEqual([before + 20, wrongWay ? -1 : 1]);
      }),
      { numRuns: 30 },
    );
  });
});
