import { describe, expect, it } from 'vitest';
import { combineCopies, LONGEST_STREAM, rowOf, withFloor } from '../../src/burst/character-table.ts';
import { fieldPriors } from '../../src/burst/field-prior.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { copiesOf, metricsOf, tablesOf, withWords } from './heard.ts';

// A distress alert of an invented ship.
const alert = [112, 23, 29, 99, 21, 80, 105, 99, 99, 99, 99, 99, 88, 88, 100, 127];
const stream = streamOf(alert);
const END = 15;
/** What one clear word says of its own symbol and of any other, when one in a thousand is ruined (by calculation). */
const soft = (value: number) => Math.log(0.999 * Math.exp(value) + 0.001);
const RIGHT = soft(Math.log(0.99 * 1024));
const WRONG = soft(Math.log((0.01 / 127) * 1024));
const tables = tablesOf(stream);

describe('words by themselves', () => {
  it('are softened by the chance that they were ruined', () => {
    const heard = withFloor([0, 6, -40]);
    expect(heard[0]).toBeCloseTo(0, 12);
    expect(heard[1]).toBeCloseTo(Math.log(0.999 * Math.exp(6) + 0.001), 12);
    expect(heard[2]).toBeCloseTo(Math.log(0.001), 9);
  });

  it('are taken up to the longest stream, what is missing as not heard', () => {
    const short = withFloor([5]);
    expect(short).toHaveLength(128 * LONGEST_STREAM);
    expect(short.subarray(1).every((value) => value === 0)).toBe(true);
    const long = withFloor(new Float64Array(128 * LONGEST_STREAM + 500).fill(2));
    expect(long).toHaveLength(128 * LONGEST_STREAM);
    expect(long.at(-1)).toBeCloseTo(soft(2), 12);
  });
});

describe('copies added up', () => {
  it('count the format specifier four times and every other character twice', () => {
    expect(tables.character[112]).toBeCloseTo(4 * RIGHT, 9);
    expect(tables.character[113]).toBeCloseTo(4 * WRONG, 9);
    alert.slice(1).forEach((symbol, index) => {
      expect(tables.character[128 * (index + 1) + symbol]).toBeCloseTo(2 * RIGHT, 9);
      expect(tables.character[128 * (index + 1) + (symbol ^ 1)]).toBeCloseTo(2 * WRONG, 9);
    });
  });

  it('count the end of sequence twice more, which one set in a hundred leaves out', () => {
    const more = (value: number) => Math.log(0.99 * Math.exp(value) + 0.01);
    expect(tables.end[128 * END + 127]).toBeCloseTo(2 * RIGHT + more(2 * RIGHT), 9);
    expect(tables.end[128 * END + 122]).toBeCloseTo(2 * WRONG + more(2 * WRONG), 9);
  });

  it('say nothing where nothing was heard', () => {
    expect(tables.character.subarray(128 * 60).every((value) => value === 0)).toBe(true);
  });

  it('keep the words beside them', () => {
    const heard = withFloor(metricsOf(stream));
    expect(tables.heard).toEqual(heard);
    expect(tables.rows).toBe(tables.character.length / 128);
  });
});

describe('phasing', () => {
  // M.493: DX 125 six times, RX 111 to 104.
  it('is fourteen words, wherever it begins', () => {
    expect(tables.phasing).toBeCloseTo(14 * RIGHT, 9);
    expect(tables.phasingAt(0)).toBe(tables.phasing);
    const later = tablesOf([...Array.from({ length: 6 }, () => null), ...stream]);
    expect(later.phasingAt(6)).toBeCloseTo(14 * RIGHT, 9);
    expect(later.phasing).toBeLessThan(2 * RIGHT);
  });

  it.each([
    [0, 125],
    [10, 125],
    [1, 111],
    [15, 104],
  ])('has at position %i the symbol %i', (position, symbol) => {
    expect(stream[position]).toBe(symbol);
    const hit = tablesOf(withWords(stream, [position], () => 33));
    expect(hit.phasing).toBeCloseTo(13 * RIGHT + WRONG, 9);
  });

  it('is not heard behind the last word', () => {
    expect(tables.phasingAt(LONGEST_STREAM + 3)).toBe(0);
  });
});

describe('what was heard of a kind of character', () => {
  const prior = (kind: keyof ReturnType<typeof fieldPriors>, symbol: number) =>
    fieldPriors()[kind][symbol] as number;

  it('is every symbol by what is expected of the kind', () => {
    let sum = 0;
    for (let symbol = 0; symbol < 128; symbol++)
      sum += Math.exp((tables.character[128 * 6 + symbol] as number) + prior('nature', symbol));
    expect(tables.mean('nature', 6, false)).toBeCloseTo(Math.log(sum), 9);
    expect(tables.mean('nature', 6, false)).toBe(tables.mean('nature', 6, false));
    expect(tables.mean('nature', 6, false)).toBeCloseTo(2 * RIGHT + prior('nature', 105), 3);
  });

  it('is with all four copies as the end of sequence', () => {
    expect(tables.mean('anyEnd', END, true)).toBeCloseTo(
      (tables.end[128 * END + 127] as number) + prior('anyEnd', 127),
      3,
    );
    expect(tables.mean('anyEnd', END, false)).toBeCloseTo(2 * RIGHT + prior('anyEnd', 127), 3);
  });

  it('is the same for every symbol of an error check', () => {
    expect(tables.mean(null, 16, false)).toBeCloseTo(2 * RIGHT - Math.log(128), 3);
    expect(tables.mean(null, 60, false)).toBeCloseTo(0, 9);
    expect(tables.mean('pair', 60, false)).toBeCloseTo(0, 9);
  });

  it('is kept apart for each kind and place', () => {
    const given = [
      tables.mean('pair', 2, false),
      tables.mean('pair', 3, false),
      tables.mean('nature', 2, false),
      tables.mean(null, 2, false),
      tables.mean('pair', 2, true),
    ];
    const fresh = tablesOf(stream);
    expect([
      fresh.mean('pair', 2, true),
      fresh.mean(null, 2, false),
      fresh.mean('nature', 2, false),
      fresh.mean('pair', 3, false),
      fresh.mean('pair', 2, false),
    ]).toEqual([...given].reverse());
    expect(new Set(given).size).toBe(5);
  });

  it('is the most of one run of characters from a place on', () => {
    const free = (index: number) => tables.mean('free', index, false);
    const run = Array.from({ length: 15 }, (_, index) => free(2 + index)).reduce(
      (sum, each) => sum + each,
      0,
    );
    // Behind the error check the closing pair and silence follow: nothing that could be more.
    expect(tables.row(2)).toBeGreaterThanOrEqual(run);
    expect(tables.row(40)).toBe(0);
    // A word that says something unheard of ends the run.
    const [first, second] = [copiesOf(20), copiesOf(21)];
    const words = Array.from({ length: 70 }, (_, at) =>
      first.includes(at) ? 7 : second.includes(at) ? (at === second[0] ? 1 : 2) : null,
    );
    const some = tablesOf(words, 0.9999);
    expect(some.mean('free', 21, false)).toBeLessThan(0);
    expect(some.row(19)).toBeCloseTo(some.mean('free', 20, false), 9);
    expect(some.row(21)).toBe(0);
  });
});

describe('a row', () => {
  it('is what was heard with what is expected', () => {
    const row = rowOf(tables.character, 6, 'nature');
    expect(row).toHaveLength(128);
    row.forEach((value, symbol) => {
      expect(value).toBe(
        (tables.character[128 * 6 + symbol] as number) + (fieldPriors().nature[symbol] as number),
      );
    });
    expect(rowOf(tables.end, END, null)).toEqual(tables.end.slice(128 * END, 128 * (END + 1)));
    expect(combineCopies(tables.heard).character[128 * 6 + 105]).toBe(tables.character[128 * 6 + 105]);
  });
});
