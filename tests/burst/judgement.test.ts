import { describe, expect, it } from 'vitest';
import { judge as judgeBy, type Rescore, type Tempering } from '../../src/burst/judgement.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import type { Reading, WholeCall } from '../../src/burst/whole-call.ts';

// Invented readings of three characters and their error check; every figure by calculation.
const call = [112, 5, 127, 112 ^ 5 ^ 127];
const other = [112, 9, 127, 112 ^ 9 ^ 127];
const longer = [112, 5, 1, 127, 112 ^ 5 ^ 1 ^ 127];
const reading = (characters: readonly number[], heard: number, prior = 0): Reading => ({
  characters,
  heard,
  prior,
});
const judge = (heard: WholeCall, lead: number, tempering: Tempering, rescore: Rescore | undefined) =>
  judgeBy(heard, lead, tempering, rescore, () => false);
const full: Tempering = { listed: 1, unlisted: 1 };

/** The readings, and so much weight besides that is not listed. */
function whole(readings: readonly [Reading, ...Reading[]], unlisted: number | null = null): WholeCall {
  const weights = readings.map(({ heard, prior }) => Math.exp(heard + prior));
  const sum = weights.reduce((one, two) => one + two, unlisted === null ? 0 : Math.exp(unlisted));
  return { readings, total: Math.log(sum), shares: [0.9, 0.5, 0.8, 0.25], changed: 0 };
}
/** That there is a call at all: begun at one bit in e^16, as sure as all that was heard. */
const certainty = (evidence: number) => 1 / (1 + Math.exp(-evidence));

describe('judging what was heard', () => {
  it('of one reading asks only whether there is a call', () => {
    const judged = judge(whole([reading(call, 20, -2)]), 1, full, undefined);
    expect(judged).toMatchObject({ runnerUp: null, margin: 14, reading: { characters: call } });
    expect(judged.evidence).toBeCloseTo(20 - 2 - 16 + 1, 9);
    expect(judged.callProbability).toBeCloseTo(certainty(3), 9);
    expect(judged.probability).toBeCloseTo(certainty(3), 9);
    for (const each of judged.characterProbabilities) expect(each).toBeCloseTo(certainty(3), 9);
    expect(judged.characterProbabilities).toHaveLength(4);
  });

  it('weighs two readings and all that are not listed against each other', () => {
    const judged = judge(whole([reading(call, 33, -3), reading(other, 30, -2)], 27), 0, full, undefined);
    const [one, two, rest] = [1, Math.exp(-2), Math.exp(-3)];
    const sum = one + two + rest;
    const there = certainty(30 + Math.log(sum) - 16);
    expect(judged.reading.characters).toEqual(call);
    expect(judged.runnerUp?.characters).toEqual(other);
    expect(judged.margin).toBeCloseTo(2, 9);
    expect(judged.evidence).toBeCloseTo(14 + Math.log(sum), 9);
    expect(judged.probability).toBeCloseTo((there * one) / sum, 9);
    // Both readings agree in the first and the third character; of those not listed, a share does in each.
    const agreeing = [one + two + 0.9 * rest, one + 0.5 * rest, one + two + 0.8 * rest, one + 0.25 * rest];
    judged.characterProbabilities.forEach((probability, index) => {
      expect(probability).toBeCloseTo((there * (agreeing[index] as number)) / sum, 9);
    });
  });

  it('takes no character of a reading of another length for the same', () => {
    const judged = judge(whole([reading(call, 30), reading(longer, 29)]), 0, full, undefined);
    const sum = 1 + Math.exp(-1);
    const there = certainty(14 + Math.log(sum));
    for (const each of judged.characterProbabilities) expect(each).toBeCloseTo(there / sum, 9);
  });

  it('believes differences only as far as it may', () => {
    const tempering: Tempering = { listed: 0.5, unlisted: 0.25 };
    const judged = judge(whole([reading(call, 40), reading(other, 38)], 36), 0, tempering, undefined);
    const sum = 1 + Math.exp(-1) + Math.exp(-1);
    expect(judged.probability).toBeCloseTo(1 / sum, 6);
    expect(judged.margin).toBeCloseTo(2, 9);
  });

  it.each([
    [14, 14, true],
    [13.5, 13.5, true],
    [14.5, 14, false],
  ])('names a runner-up that is %d behind with margin %d: %s', (behind, margin, named) => {
    const judged = judge(whole([reading(call, 64), reading(other, 64 - behind)]), 0, full, undefined);
    expect(judged.margin).toBe(margin);
    expect(judged.runnerUp !== null).toBe(named);
  });

  it('follows a second look at the listed readings, which is taken once', () => {
    const asked: (readonly (readonly number[])[])[] = [];
    const judged = judge(whole([reading(call, 30, -1), reading(other, 29, -2)], 27), 0, full, (streams) => {
      asked.push(streams);
      return [40, 45];
    });
    expect(asked).toEqual([[streamOf(call.slice(0, -1)), streamOf(other.slice(0, -1))]]);
    expect(judged.reading).toEqual({ characters: other, heard: 45, prior: -2 });
    expect(judged.runnerUp).toEqual({ characters: call, heard: 40, prior: -1 });
    expect(judged.margin).toBeCloseTo(4, 9);
    // What is not listed gains what the listed ones gained together.
    const before = Math.log(Math.exp(29) + Math.exp(27));
    const after = Math.log(Math.exp(43) + Math.exp(39));
    const sum = 1 + Math.exp(-4) + Math.exp(27 + after - before - 43);
    expect(judged.probability).toBeCloseTo(1 / sum, 9);
  });

  it('keeps what was heard first where a second look says nothing', () => {
    const judged = judge(whole([reading(call, 30), reading(other, 29)]), 0, full, () => [28]);
    expect(judged.reading).toEqual(reading(other, 29));
    expect(judged.runnerUp).toEqual(reading(call, 28));
  });

  describe('whose error check is wrong', () => {
    // As it came in: the error check is that of neither call.
    const received = [112, 9, 127, 1];

    it('shows it where the call stays in doubt and it is what was received', () => {
      const asked: (readonly number[])[][] = [];
      const readings = [reading(call, 40), reading(other, 36), reading(received, 34)] as const;
      const judged = judgeBy(
        whole([...readings]),
        0,
        full,
        undefined,
        (...each) => asked.push([...each]) > 0,
      );
      // Neither of one whose error check is right.
      expect(asked).toEqual([[received, call]]);
      expect(judged.reading).toBe(readings[2]);
      expect(judged.runnerUp).toBe(readings[0]);
      expect(judged.margin).toBe(0);
      const [one, two, three] = [1, Math.exp(-4), Math.exp(-6)];
      const sum = one + two + three;
      // Some one of its four characters is wrong, each as likely.
      expect(judged.probability).toBeCloseTo(three / 4 / sum, 9);
      const agreeing = [sum, two + three, sum, three];
      judged.characterProbabilities.forEach((probability, index) => {
        expect(probability).toBeCloseTo((0.75 * (agreeing[index] as number)) / sum, 9);
      });
    });

    it.each([
      ['is not what was received', 38, false],
      ['leaves no doubt', 34, true],
    ])('does not show one that %s', (_, heard, isAsReceived) => {
      const readings = [reading(call, 40), reading(received, heard)] as const;
      const judged = judgeBy(whole([...readings]), 0, full, undefined, () => isAsReceived);
      expect(judged.reading).toBe(readings[0]);
    });

    it('shows it where it is doubtful that there is a call at all', () => {
      const readings = [reading(call, 19), reading(received, 9)] as const;
      const judged = judgeBy(whole([...readings]), 0, full, undefined, () => true);
      expect(judged.reading).toBe(readings[1]);
    });
  });
});
