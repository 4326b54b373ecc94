import { expect } from 'vitest';
import { createNetworkReader } from '../../src/network/index.ts';
import { isFast } from '../../src/network/transport/fast-groups.ts';
import { framesOf } from '../network/support.ts';

// Invented stations of the demo scenario.
const bytes = (natureOrTelecommand: number, distressed: readonly number[]) =>
  Uint8Array.from([
    ...[116, 112, 0, 23, 29, 99, 0, natureOrTelecommand, 100],
    ...new Array<number>(12).fill(0xff),
    ...[2, 1],
    ...[0xff, 0xff, 0xff, 0x7f, 0xff, 0xff, 0xff, 0x7f, 0xff, 0xff, 0xff, 0xff],
    ...distressed,
    ...[127, 0xfc],
    ...new Array<number>(20).fill(0xff),
  ]);
const fieldsOf = (payload: Uint8Array) => {
  const reader = createNetworkReader();
  const [reading] = framesOf({ pgn: 129808 }, payload).flatMap((frame) => reader.push(frame));
  return reading?.kind === 'call' ? reading.call : null;
};

export const deviations: Record<string, () => void> = {
  'D-network-1': () => {
    const [first, ...rest] = framesOf({ pgn: 129808 }, bytes(100, [23, 29, 99, 21, 80]));
    const kinds = (gap: number) => {
      const reader = createNetworkReader();
      if (first === undefined) throw new Error('no frame');
      return [{ ...first, at: 0 }, ...rest.map((frame) => ({ ...frame, at: gap }))].flatMap((frame) =>
        reader.push(frame).map(({ kind }) => kind),
      );
    };
    expect(kinds(750)).toEqual(['call']);
    expect(kinds(751)).not.toContain('call');
  },
  'D-network-2': () => {
    expect([129808, 129029, 126720, 130816].map(isFast)).toEqual([true, true, true, true]);
    expect([129025, 127250, 65280].map(isFast)).toEqual([false, false, false]);
  },
  'D-network-3': () => {
    const vessel = [23, 29, 99, 21, 80];
    expect(fieldsOf(bytes(112, vessel))?.kind).toBe('distress-relay');
    expect(fieldsOf(bytes(101, vessel))?.kind).toBe('unrecognised-call');
    expect(fieldsOf(bytes(110, [255, 255, 255, 255, 255]))?.kind).toBe('unrecognised-call');
  },
};
