import { expect } from 'vitest';
import { plausibleLayouts, setsFromCharacters } from '../../src/burst/expansion.ts';
import { decodeStream, encodeCall, errorCheckOf, fieldsFromCharacters } from '../../src/burst/index.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { composeDistressAlert, composeTestCall } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';

// Invented stations of the demo scenario.
const test = encodeCall(composeTestCall({ from: '232999871', to: '002329990' }));
const alert = encodeCall(composeDistressAlert({ from: '232999218', nature: 'sinking' }));
const head = [120, 25, 20, 0, 10, 10, 108, 20, 80, 0, 20, 20];

export const deviations: Record<string, () => void> = {
  'D-burst-1': () => {
    expect(errorCheckOf([1, 2, 4])).toBe(7);
    expect(test.errorCheck).toBe(test.information.slice(1).reduce((sum, symbol) => sum ^ symbol, 0));
  },
  'D-burst-2': () => {
    const stream = streamOf([5, 6, 127]);
    const dx = stream.filter((_, position) => position % 2 === 0);
    const rx = stream.filter((_, position) => position % 2 === 1);
    expect(dx.slice(-4)).toEqual([127, 5 ^ 6 ^ 127, 127, 127]);
    expect(rx.slice(-2)).toEqual([127, 5 ^ 6 ^ 127]);
  },
  'D-burst-3': () => {
    const position = [13, 60, 80, 5, 21];
    for (const message of [[55, ...position, 9, 15], [...position, 9, 15], [55, ...position], position])
      expect(fieldsFromCharacters([...head, 121, 126, ...message, 122]).position).toEqual(position);
  },
  'D-burst-4': () => {
    const fields = fieldsFromCharacters([...head, 109, 126, 40, 21, 82, 0, 40, 21, 82, 0, 117]);
    expect(fields.transmit).toEqual([40, 21, 82, 0]);
  },
  'D-burst-5': () => {
    expect(plausibleLayouts.map(({ name }) => name)).toEqual([
      'continued',
      'check-without-end',
      'in-place-of-pair',
    ]);
  },
  'D-burst-6': () => {
    const sets = setsFromCharacters([101, 2, 10, 0, 106, 0, 4, 104, 1, 2, 3]);
    expect(sets.map(({ symbols }) => symbols.length)).toEqual([3, 2, 3]);
  },
  'D-burst-7': () => {
    const once = alert.stream.map((symbol, position) => ([14, 17, 19].includes(position) ? null : symbol));
    expect(valueOf(decodeStream(once)).quality.verdict).not.toBe('clean');
  },
};
