import { describe, expect, it } from 'vitest';
import { createNetworkReader, type NetworkReading } from '../../src/network/index.ts';
import { bytesOf, framesOf } from './support.ts';
import { payloadOf } from './vectors.ts';

const read = (pgn: number, hex: string): NetworkReading => {
  const [reading] = createNetworkReader().push({ id: 2 * 2 ** 26 + pgn * 256 + 3, data: bytesOf(hex) });
  return reading as NetworkReading;
};

// Layouts: public list of parameter groups of IEC 61162-3, version 1.300; bytes put together by hand.
describe('heading and course', () => {
  it.each([
    // 1.5708 rad and -0.0436 rad, in steps of 0.0001; the last two bits are the reference.
    [127250, 'ff5c3dff7f4cfefc', { heading: 90, variation: -2.498 }],
    [127250, 'ff5c3dff7f4cfefd', { magneticHeading: 90, variation: -2.498 }],
    [127250, 'ff5c3dff7fff7ffe', {}],
    [127250, 'ffffffff7f4cfefc', { variation: -2.498 }],
    // 3.1416 rad, and 5.14 m/s in steps of 0.01: 5.14 × 3600 / 1852 knots.
    [129026, 'fffcb87a0202ffff', { course: 180, speed: 9.991 }],
    [129026, 'fffdb87a0202ffff', { magneticCourse: 180, speed: 9.991 }],
    [129026, 'ffffb87a0202ffff', { speed: 9.991 }],
    [129026, 'fffcb87affffffff', { course: 180 }],
  ])('of PGN %i %s', (pgn, hex, says) => {
    const { kind, line, offset, at, notices, sources, ...rest } = read(pgn, hex) as NetworkReading & {
      kind: 'motion';
    };
    expect([kind, rest]).toEqual(['motion', says]);
    expect([line, offset, at, notices, sources.length]).toEqual([1, 0, null, [], 1]);
  });
});

describe('the time of the network', () => {
  // Days since 1970 (20605 is 2026-06-01) and steps of 0.0001 s (51 030 s is 14:10:30).
  it.each([
    [126992, 'fff07d50608f6a1e'],
    [129033, '7d50608f6a1e0000'],
  ])('by PGN %i', (pgn, hex) => {
    expect(read(pgn, hex)).toMatchObject({ kind: 'clock', instant: Date.UTC(2026, 5, 1, 14, 10, 30) });
  });

  it.each([
    [126992, 'fff07d50ffffffff'],
    [129033, 'ffff608f6a1e0000'],
  ])('that PGN %i does not know is no clock', (pgn, hex) => {
    expect(read(pgn, hex).kind).toBe('other');
  });
});

describe('one call or two', () => {
  const events = (id: string, instants: readonly number[]) => {
    const reader = createNetworkReader();
    return instants
      .flatMap((at, sequence) =>
        framesOf({ pgn: 129808 }, payloadOf(id), sequence).flatMap((frame) => reader.push({ ...frame, at })),
      )
      .map((reading) => reading.kind === 'call' && [reading.event, reading.repeat]);
  };
  const halfDay = 43_200_000;

  it('the same request within ten seconds is one, later it is another', () => {
    expect(events('position-request', [0, 10_000, 20_001])).toEqual([
      [1, 0],
      [1, 1],
      [2, 0],
    ]);
  });

  it('a distress alert that still comes is the same for half a day', () => {
    expect(events('distress-alert', [0, 3_600_000, 3_600_000 + halfDay, 3_600_001 + 2 * halfDay])).toEqual([
      [1, 0],
      [1, 1],
      [1, 2],
      [2, 0],
    ]);
  });
});
