import { describe, expect, it } from 'vitest';
import { callShapes } from '../../src/burst/call-shape.ts';
import { type CharacterTables, rowOf } from '../../src/burst/character-table.ts';
import { type CharacterKind, fieldPriors } from '../../src/burst/field-prior.ts';
import { heardOfChange } from '../../src/burst/sender-change.ts';
import { streamLength, streamOf } from '../../src/burst/sequence.ts';
import { heardWithoutExpansion, trailingLikelihood } from '../../src/burst/trailing.ts';
import { solveTrellis } from '../../src/burst/trellis.ts';
import { weighWholeCall } from '../../src/burst/whole-call.ts';
import { copiesOf, tablesOf, type Word, withWords } from './heard.ts';

// A distress alert of an invented ship, and its error check (by calculation).
const alert = [112, 23, 29, 99, 21, 80, 105, 99, 99, 99, 99, 99, 88, 88, 100, 127];
const characters = [...alert, alert.reduce((sum, symbol) => sum ^ symbol, 0)];
const stream = streamOf(alert);
const END = 15;
const nothing = Array.from({ length: 60 }, () => null);
const sumOfLogs = (values: readonly number[]) => {
  const high = Math.max(...values);
  if (high === Number.NEGATIVE_INFINITY) return high;
  return high + Math.log(values.reduce((sum, value) => sum + Math.exp(value - high), 0));
};

/** A shape, with what is expected of it beside its characters, and all that was heard and expected. */
interface Prospect {
  readonly kinds: readonly CharacterKind[];
  readonly extra: number;
  readonly expected: number;
}

describe('the whole call', () => {
  const tables = tablesOf(stream);
  const whole = weighWholeCall(tables, 0);
  const [best, ...others] = whole?.readings ?? [];

  it('is the one that was sent, before any other', () => {
    expect(best?.characters).toEqual(characters);
    const weights = (whole?.readings ?? []).map(({ heard, prior }) => heard + prior);
    expect(weights).toEqual([...weights].sort((one, other) => other - one));
    expect(others.length).toBeLessThan(64);
    expect(new Set(whole?.readings.map((each) => each.characters.join())).size).toBe(others.length + 1);
  });

  it('weighs what was heard of its phasing and of every copy', () => {
    let heard = tables.phasing;
    characters.forEach((symbol, index) => {
      heard += (index === END ? tables.end : tables.character)[128 * index + symbol] as number;
    });
    expect(best?.heard).toBeCloseTo(heard, 9);
  });

  it('weighs how usual it is in every shape it may have, and what stands behind it', () => {
    const trailing = trailingLikelihood(tables, END);
    const each = callShapes()
      .filter(({ kinds }) => kinds.length === alert.length)
      .map(({ kinds, share }) =>
        kinds.reduce(
          (sum, kind, index) => sum + (fieldPriors()[kind][alert[index] as number] as number),
          Math.log(share) + trailing,
        ),
      );
    expect(best?.prior).toBeCloseTo(sumOfLogs(each), 9);
  });

  it('takes nearly all of the sum when it was heard clearly', () => {
    expect(whole?.total).toBeCloseTo((best?.heard ?? 0) + (best?.prior ?? 0), 3);
    expect(whole?.shares).toHaveLength(characters.length);
    for (const share of whole?.shares ?? []) expect(share).toBeCloseTo(1, 3);
  });

  it('has an error check that holds, in every reading', () => {
    const hit = withWords(stream, [...copiesOf(3), ...copiesOf(7)], () => null);
    const readings = weighWholeCall(tablesOf(hit), 0)?.readings ?? [];
    expect(readings).toHaveLength(64);
    for (const reading of readings)
      expect(reading.characters.reduce((parity, symbol) => parity ^ symbol, 0)).toBe(0);
  });

  it('is filled by the error check where both copies of a character are gone', () => {
    const hit = weighWholeCall(tablesOf(withWords(stream, copiesOf(3), () => null)), 0);
    expect(hit?.readings[0].characters).toEqual(characters);
  });

  it('has as little share as a character that nothing tells from others', () => {
    // Two digits that nothing was heard of: the check ties them to each other, and leaves about a hundred pairs.
    const hit = weighWholeCall(tablesOf(withWords(stream, [...copiesOf(2), ...copiesOf(3)], () => null)), 0);
    const shares = hit?.shares ?? [];
    expect(shares[2]).toBeLessThan(0.02);
    expect(shares[3]).toBeCloseTo(shares[2] ?? 0, 6);
    expect(shares[4]).toBeGreaterThan(0.99);
    expect((hit?.total ?? 0) - (hit?.readings[0].heard ?? 0) - (hit?.readings[0].prior ?? 0)).toBeGreaterThan(
      4,
    );
  });

  it('is found with more behind it than it should have', () => {
    const longer = [...alert.slice(0, -1), 33, 44, 127];
    const reading = weighWholeCall(tablesOf(streamOf(longer)), 0)?.readings[0];
    expect(reading?.characters.slice(0, -1)).toEqual(longer);
  });

  it('may have been sent with a wrong error check, two in a thousand and any of 127 as likely', () => {
    // Every copy clear, and the check of all characters another.
    const wrong = streamOf(alert, [], 3);
    const heard = tablesOf(wrong, 0.999_999);
    const weighed = weighWholeCall(heard, 0);
    const reading = weighed?.readings[0];
    expect(reading?.characters).toEqual([...alert, 3]);
    expect(reading?.prior).toBeCloseTo((best?.prior ?? 0) + Math.log(0.002 / 128), 6);
    // Little else explains what was heard.
    expect((weighed?.total ?? 0) - (reading?.heard ?? 0) - (reading?.prior ?? 0)).toBeCloseTo(0, 1);
    expect(weighed?.changed).toBeLessThan(0.001);
  });

  /** Every shape with what was heard and expected of all calls that have it, the most promising first. */
  function promising(heard: CharacterTables): Prospect[] {
    return callShapes()
      .map(({ kinds, share }) => {
        const end = kinds.length - 1;
        const trailing = trailingLikelihood(heard, end);
        const expected = kinds.reduce(
          (sum, kind, index) => sum + heard.mean(kind, index, index === end),
          Math.log(share) + heard.mean(null, end + 1, false) + trailing,
        );
        return { kinds, extra: Math.log(share) + trailing, expected };
      })
      .sort((one, other) => other.expected - one.expected);
  }

  it.each<[string, number, readonly Word[], number]>([
    ['clearly', 1, stream, 0.99],
    ['with little of it', 1, withWords(stream, [20, 22, 31, 36, 37, 41, 44], () => null), 0.6],
    ['with a wrong error check', 1, streamOf(alert, [], 3), 0.99],
    ['not at all', 1, nothing, 0.99],
    ['not at all', 3, nothing, 0.99],
  ])('heard %s: weighs %i in full and the others as they are on average', (_, most, words, surety) => {
    const heard = tablesOf(words, surety);
    const prospects = promising(heard);
    const solved = prospects.slice(0, most).map(({ kinds, extra, expected }) => {
      const rows = [...kinds, null].map((kind, index) =>
        rowOf(index === kinds.length - 1 ? heard.end : heard.character, index, kind),
      );
      const answer = solveTrellis(Float64Array.from(rows.flatMap((row) => [...row])), rows.length, 64);
      const right = answer.total + extra;
      const wrong = expected + Math.log(0.002 * (1 - Math.exp(right - Math.log(128) - expected)));
      const change = expected + heardOfChange(heard, kinds);
      return { answer, right, wrong, change, weight: answer.paths[0].weight + extra };
    });
    const changes = sumOfLogs(solved.map(({ change }) => change));
    const all = sumOfLogs([
      ...solved.flatMap(({ right, wrong }) => [right, wrong]),
      changes,
      ...prospects.slice(most).map(({ expected }) => expected),
    ]);
    const weighed = weighWholeCall(heard, Number.NEGATIVE_INFINITY, most);
    expect(weighed?.total).toBeCloseTo(heard.phasing + all, 9);
    expect(weighed?.changed).toBeCloseTo(Math.exp(changes - all), 9);
    const [heaviest] = solved.sort((one, other) => other.weight - one.weight);
    expect(weighed?.shares).toEqual(heaviest?.answer.shares);
  });

  it('is not looked for where it cannot weigh enough', () => {
    expect(weighWholeCall(tablesOf(nothing), 5)).toBeNull();
    expect(weighWholeCall(tablesOf(nothing), -10)).not.toBeNull();
    const weight = (best?.heard ?? 0) + (best?.prior ?? 0);
    expect(weighWholeCall(tables, weight - 5)?.readings[0].characters).toEqual(characters);
    expect(weighWholeCall(tables, weight + 30)).toBeNull();
  });
});

describe('what was heard behind a call', () => {
  const length = streamLength(END);

  it('is as good as nothing in silence: nothing there, or an expansion or parts of one that were not heard', () => {
    const tables = tablesOf(stream);
    expect(heardWithoutExpansion(tables, END)).toBeCloseTo(Math.log(0.6), 9);
    // 30 % of calls are taken to carry an expansion in each of the two layouts that a closing pair allows.
    expect(trailingLikelihood(tables, END)).toBeCloseTo(Math.log(0.6 + 2 * 0.3 + 0.01), 2);
  });

  it.each([0, 2, 20])('is another call that begins %i words later', (later) => {
    const gap: Word[] = Array.from({ length: later }, () => null);
    const tables = tablesOf([...stream, ...gap, ...stream]);
    const start = length + later;
    const places = (2 * tables.rows - length) / 2;
    const next = Math.log(0.1 / places) + tables.phasingAt(start) + tables.row(start / 2 + 1);
    expect(tables.phasingAt(start)).toBeGreaterThan(90);
    expect(tables.row(start / 2 + 1)).toBeGreaterThan(0);
    expect(heardWithoutExpansion(tables, END)).toBeCloseTo(next, 6);
  });

  it('is no other call where the words fall between those of this one', () => {
    const tables = tablesOf([...stream, null, ...stream]);
    expect(heardWithoutExpansion(tables, END)).toBeLessThan(15);
  });
});
