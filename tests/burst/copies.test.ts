import { describe, expect, it } from 'vitest';
import { compareCopies, mostLikely } from '../../src/burst/copies.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { copiesOf, metricsOf, tablesOf, type Word, withWords } from './heard.ts';

// A distress alert of an invented ship, and its error check (by calculation).
const alert = [112, 23, 29, 99, 21, 80, 105, 99, 99, 99, 99, 99, 88, 88, 100, 127];
const check = alert.reduce((sum, symbol) => sum ^ symbol, 0);
const characters = [...alert, check];
const stream = streamOf(alert);
const END = 15;
const CHECK = 16;

function report(words: readonly Word[]) {
  const metrics = metricsOf(words);
  const alone = Int16Array.from(words, (_, position) => mostLikely(metrics, 128 * position));
  return compareCopies(tablesOf(words), alone, characters);
}

const all = (source: string) => characters.map(() => source);

describe('the most likely symbol', () => {
  const row = (values: Record<number, number>) => {
    const table = new Float64Array(300).fill(-5);
    for (const [at, value] of Object.entries(values)) table[Number(at)] = value;
    return table;
  };

  it.each<[string, Record<number, number>, number]>([
    ['the one that stands out', { 30: 2, 31: 1 }, 30],
    ['the first of all', { 0: 2, 31: 1 }, 0],
    ['the last of all', { 127: 2, 31: 1 }, 127],
    ['none when two are as likely', { 30: 2, 90: 2 }, -1],
    ['none when two differ by less than arithmetic can', { 30: 2, 90: 2 + 1e-12 }, -1],
    ['none when the second is less by less than arithmetic can', { 30: 2, 90: 2 - 1e-12 }, -1],
    ['the better of two that are close', { 30: 2, 90: 2 + 1e-6 }, 90],
    ['the better of two that are close, the first', { 30: 2, 90: 2 - 1e-6 }, 30],
    ['one that is better than two alike', { 10: 1, 20: 1, 90: 2 }, 90],
    ['none when nothing was heard', {}, -1],
  ])('is %s', (_, values, symbol) => {
    expect(mostLikely(row(values), 0)).toBe(symbol);
  });

  it('is looked for in one row only', () => {
    expect(mostLikely(row({ 99: 9, 140: 2, 228: 9 }), 100)).toBe(40);
    expect(mostLikely(row({ 227: 2 }), 100)).toBe(127);
  });
});

describe('copies of a call', () => {
  it('all agree when everything came as sent', () => {
    expect(report(stream)).toEqual({
      sources: all('both-copies'),
      formatCopies: 4,
      asSent: true,
      checkHeard: true,
    });
  });

  it.each([
    ['the first', 0],
    ['the second', 1],
  ])('are one copy where %s is gone', (_, which) => {
    const gone = withWords(stream, [copiesOf(6)[which] as number], () => null);
    const sources = [...all('both-copies')];
    sources[6] = 'one-copy';
    expect(report(gone)).toEqual({ sources, formatCopies: 4, asSent: true, checkHeard: true });
  });

  // M.493: the format specifier has four copies, the end of sequence four (their places from memory).
  it('of the format specifier are counted', () => {
    const positions = [12, 14, 17, 19];
    for (let gone = 0; gone <= 3; gone++) {
      const { sources, formatCopies, asSent } = report(
        withWords(stream, positions.slice(0, gone), () => null),
      );
      expect([sources[0], formatCopies, asSent]).toEqual([
        gone === 0 ? 'both-copies' : 'one-copy',
        4 - gone,
        true,
      ]);
    }
  });

  it('of the end of sequence are four', () => {
    const positions = [...copiesOf(END), 2 * (7 + END + 2), 2 * (7 + END + 3)];
    expect(positions.map((position) => stream[position])).toEqual([127, 127, 127, 127]);
    for (const position of positions)
      expect(report(withWords(stream, [position], () => null)).sources[END]).toBe('one-copy');
    expect(report(withWords(stream, positions.slice(1), () => null)).sources[END]).toBe('one-copy');
    expect(report(withWords(stream, positions.slice(0, 2), () => null)).sources[END]).toBe('one-copy');
    const { sources, asSent } = report(withWords(stream, positions, () => null));
    expect([sources[END], asSent]).toEqual(['repaired', false]);
  });

  it('are soft where neither says it alone and both together do', () => {
    const [first, second] = copiesOf(8);
    const heard = withWords(stream, [first, second], (sent, position) => [
      sent as number,
      position === first ? 33 : 44,
    ]);
    const { sources, asSent } = report(heard);
    expect([sources[8], asSent]).toEqual(['soft', true]);
  });

  it('are repaired where even added up they say something else', () => {
    const { sources, asSent, checkHeard } = report(withWords(stream, copiesOf(8), () => 33));
    expect([sources[8], asSent, checkHeard]).toEqual(['repaired', false, true]);
    expect(sources.filter((source) => source === 'repaired')).toHaveLength(1);
  });

  it('tell whether anything was heard of the error check', () => {
    const silent = report(withWords(stream, copiesOf(CHECK), () => null));
    expect([silent.sources[CHECK], silent.asSent, silent.checkHeard]).toEqual(['repaired', false, false]);
    const wrong = report(withWords(stream, copiesOf(CHECK), () => check ^ 5));
    expect([wrong.sources[CHECK], wrong.asSent, wrong.checkHeard]).toEqual(['repaired', false, true]);
  });
});
