import { expect } from 'vitest';
import { plausibleLayouts, setsFromCharacters } from '../../src/burst/expansion.ts';
import { decodeStream, encodeAtis, encodeCall } from '../../src/burst/index.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { composeDistressAlert } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';

// Invented stations of the demo scenario.
const alert = encodeCall(composeDistressAlert({ from: '232999218', nature: 'sinking' }));

export const deviations: Record<string, () => void> = {
  'D-burst-9': () => {
    expect(encodeAtis('9265123456')).toHaveLength(20 + 34 * 10);
    expect(encodeAtis('9265123456').slice(140, 150)).toBe(encodeSymbol(121));
  },
  'D-burst-2': () => {
    const stream = streamOf([5, 6, 127]);
    const dx = stream.filter((_, position) => position % 2 === 0);
    const rx = stream.filter((_, position) => position % 2 === 1);
    expect(dx.slice(-4)).toEqual([127, 5 ^ 6 ^ 127, 127, 127]);
    expect(rx.slice(-2)).toEqual([127, 5 ^ 6 ^ 127]);
  },
  'D-burst-5': () => {
    expect(plausibleLayouts.map(({ name }) => name)).toEqual([
      'continued',
      'check-without-end',
      'in-place-of-pair',
    ]);
  },
  'D-burst-6': () => {
    const area = [12, 34, 56, 78, 1, 0, 2, 0, 0, 62, 12, 34];
    const sets = setsFromCharacters([101, 2, 10, 0, 105, ...area, 106, 0, 4, 104, 1, 2, 3]);
    expect(sets.map(({ symbols }) => symbols.length)).toEqual([3, 12, 2, 3]);
  },
  'D-burst-7': () => {
    const once = alert.stream.map((symbol, position) => ([14, 17, 19].includes(position) ? null : symbol));
    expect(valueOf(decodeStream(once)).quality.verdict).not.toBe('clean');
  },
  'D-burst-8': () => {
    // An alert with one character too many, its error check right.
    const longer = [...alert.information.slice(1, -1), 44, 127];
    const { quality } = valueOf(decodeStream(streamOf(longer)));
    expect(quality.errorCheck.kind).toBe('as-sent');
    expect(quality.verdict).toBe('repaired');
  },
  'D-burst-10': () => {
    // Two alerts are cancelled in the same instant; a choice among the copies at word 42 satisfies the error check.
    const ship = [23, 29, 99, 87, 10];
    const second = [23, 29, 99, 14, 20];
    const one = streamOf([116, 112, ...ship, 110, ...ship, 107, 15, 62, 0, 6, 30, 9, 15, 100, 127]);
    const other = streamOf([116, 112, ...second, 110, ...second, 103, 99, 99, 99, 99, 99, 14, 0, 100, 127]);
    const mixed = [...one.slice(0, 42), ...other.slice(42)];
    expect(valueOf(decodeStream(mixed)).quality.verdict).toBe('doubtful');
  },
};
