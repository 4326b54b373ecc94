import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { NetworkFrame } from '../../src/network/index.ts';
import {
  createFastPacketAssembler,
  fastPacketFrames,
  type TornPacket,
} from '../../src/network/transport/fast-packet.ts';
import { addressOf, encodeIdentifier } from '../../src/network/transport/frame.ts';
import { framesOf, hexOf } from './support.ts';

// Source: SAE J1939-21 as restated in the Linux kernel's documentation; first row read in a recording.
describe('the identifier', () => {
  it.each([
    [0x11fb1004, { priority: 4, pgn: 129808, source: 4, destination: 255 }],
    [0x18eeff28, { priority: 6, pgn: 60928, source: 40, destination: 255 }],
    [0x18ea0c0b, { priority: 6, pgn: 59904, source: 11, destination: 12 }],
    [0x1defff01, { priority: 7, pgn: 126720, source: 1, destination: 255 }],
  ])('%i', (id, address) => {
    expect(addressOf(id)).toEqual(address);
    expect(encodeIdentifier(address)).toBe(id);
  });

  it('comes back for every identifier', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0x1fffffff }), (id) => {
        expect(encodeIdentifier(addressOf(id))).toBe(id);
      }),
    );
  });

  it.each([
    { priority: 8, pgn: 129808, source: 4, destination: 255 },
    { priority: 4, pgn: 262144, source: 4, destination: 255 },
    { priority: 4, pgn: 129808, source: 256, destination: 255 },
    { priority: 4, pgn: 129808, source: 4, destination: 12 },
    { priority: 6, pgn: 59905, source: 4, destination: 12 },
  ])('refuses %o', (address) => {
    expect(() => encodeIdentifier(address)).toThrow(RangeError);
  });
});

const address = { priority: 4, pgn: 129808, source: 3, destination: 255 };
const through = (frames: readonly NetworkFrame[]) => {
  const assembler = createFastPacketAssembler();
  const whole: string[] = [];
  let torn = 0;
  for (const frame of frames) {
    const lost: TornPacket[] = [];
    const payload = assembler.push(frame, addressOf(frame.id), lost);
    if (payload !== null) whole.push(hexOf(payload));
    torn += lost.length;
  }
  return { whole, torn: torn + assembler.flush().length };
};
const bytes = (length: number, first: number) =>
  Uint8Array.from({ length }, (_, index) => (first + index) & 0xff);

describe('a fast packet', () => {
  it('is cut as its public description says', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 223 }), fc.integer({ min: 0, max: 7 }), (payload, sequence) => {
        expect(fastPacketFrames(address, payload, sequence)).toEqual(
          framesOf({ pgn: 129808 }, payload, sequence),
        );
      }),
    );
  });

  it('has 223 bytes at most', () => {
    expect(fastPacketFrames(address, new Uint8Array(223), 0)).toHaveLength(32);
    expect(() => fastPacketFrames(address, new Uint8Array(224), 0)).toThrow(RangeError);
  });

  it('comes out once when its frames are shuffled, lost, repeated and mixed with those of others', () => {
    const message = fc.record({
      source: fc.integer({ min: 0, max: 3 }),
      sequence: fc.integer({ min: 0, max: 7 }),
      payload: fc.uint8Array({ minLength: 1, maxLength: 80 }),
      lost: fc.integer({ min: -20, max: 12 }),
    });
    const messages = fc.uniqueArray(message, {
      selector: ({ source, sequence }) => source * 8 + sequence,
      minLength: 1,
      maxLength: 6,
    });
    fc.assert(
      fc.property(messages, fc.infiniteStream(fc.nat()), (list, random) => {
        const next = (below: number) => (random.next().value as number) % below;
        const sent = list.flatMap(({ source, sequence, payload, lost }) =>
          framesOf({ pgn: 129808, source }, payload, sequence).filter((_, index) => index !== lost),
        );
        const mixed = [...sent, ...sent.filter(() => next(4) === 0)];
        for (let index = mixed.length - 1; index > 0; index--) {
          const other = next(index + 1);
          [mixed[index], mixed[other]] = [mixed[other] as NetworkFrame, mixed[index] as NetworkFrame];
        }
        const { whole } = through(mixed);
        for (const { source, sequence, payload } of list) {
          const frames = framesOf({ pgn: 129808, source }, payload, sequence);
          const order = mixed.filter(
            ({ id, data }) => id === frames[0]?.id && (data[0] as number) >> 5 === sequence,
          );
          const firsts = new Map(order.map((frame, index) => [frame.data[0], index] as const).reverse());
          const arrived = frames.every(({ data }) => firsts.has(data[0]));
          const firstIsLast =
            frames.length > 1 && Math.max(...firsts.values()) === firsts.get(frames[0]?.data[0]);
          const times = whole.filter((hex) => hex === hexOf(payload)).length;
          if (arrived && !firstIsLast) expect(times).toBeGreaterThanOrEqual(1);
        }
        // Nothing false, and nothing twice: every payload that came out was sent, and no sender's came out again.
        expect(whole.length).toBeLessThanOrEqual(list.length);
        for (const hex of whole) expect(list.map(({ payload }) => hexOf(payload))).toContain(hex);
      }),
    );
  });

  it('gives nothing false when messages follow each other and lose frames', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 7, max: 60 }), fc.integer({ min: -4, max: 9 })), {
          maxLength: 30,
        }),
        (list) => {
          const sent = list.map(([length], index) => bytes(length, index * 31));
          const frames = list.flatMap(([, lost], index) =>
            framesOf({ pgn: 129808 }, sent[index] as Uint8Array, index % 8)
              .filter((_, number) => number !== lost)
              .map((frame) => ({ ...frame, at: index * 100 })),
          );
          const { whole } = through(frames);
          const expected = list.flatMap(([length, lost], index) =>
            lost < 0 || lost >= framesOf({ pgn: 1 }, bytes(length, 0)).length
              ? [hexOf(sent[index] as Uint8Array)]
              : [],
          );
          expect(whole).toEqual(expected);
        },
      ),
    );
  });

  it('is not made of the rest of one packet and the first frame of the next', () => {
    const [, ...rest] = framesOf({ pgn: 129808 }, bytes(20, 0), 5);
    const [first] = framesOf({ pgn: 129808 }, bytes(20, 100), 5);
    expect(through([...rest, first as NetworkFrame]).whole).toEqual([]);
  });

  it('is dropped when the next frame comes after the pause', () => {
    const [first, ...rest] = framesOf({ pgn: 129808 }, bytes(20, 0));
    const late = rest.map((frame) => ({ ...frame, at: 751 }));
    expect(through([{ ...(first as NetworkFrame), at: 0 }, ...late])).toEqual({ whole: [], torn: 2 });
    const inTime = rest.map((frame) => ({ ...frame, at: 750 }));
    expect(through([{ ...(first as NetworkFrame), at: 0 }, ...inTime]).whole).toHaveLength(1);
  });

  it('is given up when another one begins after its pause, and not before', () => {
    const assembler = createFastPacketAssembler();
    const tornAt = (source: number, at: number) => {
      const [first] = framesOf({ pgn: 129808, source }, bytes(20, 0));
      const frame = { ...(first as NetworkFrame), at };
      const torn: TornPacket[] = [];
      assembler.push(frame, addressOf(frame.id), torn);
      return torn.map((packet) => packet.source);
    };
    expect([tornAt(3, 0), tornAt(4, 750), tornAt(5, 751), tornAt(6, 5000)]).toEqual([[], [], [3], [4, 5]]);
  });

  it('is given up after 1200 frames where no frame has an instant', () => {
    const [first, ...rest] = framesOf({ pgn: 129808 }, bytes(20, 0)) as [NetworkFrame, ...NetworkFrame[]];
    const between = (count: number) =>
      Array.from({ length: count }, (_, index) => {
        const [frame] = framesOf({ pgn: 129029, source: 9 }, bytes(6, index), index % 8);
        return frame as NetworkFrame;
      });
    const isWhole = (count: number) =>
      through([first, ...between(count), ...rest]).whole.includes(hexOf(bytes(20, 0)));
    expect([isWhole(1199), isWhole(1200)]).toEqual([true, false]);
  });

  it('says what arrived of a torn one, in frame order', () => {
    const assembler = createFastPacketAssembler();
    const frames = framesOf({ pgn: 129808 }, bytes(20, 0));
    for (const number of [2, 0]) {
      const frame = frames[number] as NetworkFrame;
      assembler.push(frame, addressOf(frame.id), []);
    }
    expect(assembler.flush()).toMatchObject([
      { frames: 2, announced: 3, payload: Uint8Array.from([...bytes(6, 0), ...bytes(7, 13)]) },
    ]);
  });

  it('with a short frame in the middle is not whole', () => {
    const [first, middle, last] = framesOf({ pgn: 129808 }, bytes(20, 0)) as [
      NetworkFrame,
      NetworkFrame,
      NetworkFrame,
    ];
    const short = { ...middle, data: middle.data.slice(0, 7) };
    expect(through([first, short, last])).toEqual({ whole: [], torn: 1 });
    expect(through([first, middle, { ...last, data: last.data.slice(0, 8) }]).whole).toHaveLength(1);
  });

  it('is not given again for a frame repeated after its end', () => {
    const frames = framesOf({ pgn: 129808 }, bytes(20, 0)).map((frame) => ({ ...frame, at: 0 }));
    const repeated = { ...(frames[1] as NetworkFrame), at: 29 };
    expect(through([...frames, repeated])).toEqual({ whole: [hexOf(bytes(20, 0))], torn: 0 });
  });

  it('is read whole after a repeated frame of the one before, under the same counter', () => {
    const [last, next] = [bytes(20, 0), bytes(20, 100)].map((payload) => framesOf({ pgn: 129808 }, payload));
    const frames = [...(last as NetworkFrame[]), (last as NetworkFrame[])[1] as NetworkFrame];
    expect(through([...frames, ...(next as NetworkFrame[])])).toEqual({
      whole: [hexOf(bytes(20, 0)), hexOf(bytes(20, 100))],
      torn: 0,
    });
  });

  it('is read under a counter that stays the same for two messages', () => {
    const both = [bytes(20, 0), Uint8Array.from([...bytes(6, 0), ...bytes(14, 50)])];
    const frames = both.flatMap((payload) => framesOf({ pgn: 129808 }, payload, 5));
    expect(through(frames).whole).toEqual(both.map(hexOf));
  });

  it('ignores the filling of the last frame, whatever it is', () => {
    const frames = framesOf({ pgn: 129808 }, bytes(8, 0));
    const zeros = frames.map(({ id, data }) => ({
      id,
      data: data.map((byte) => (byte === 0xff ? 0 : byte)),
    }));
    expect(through(zeros).whole).toEqual([hexOf(bytes(8, 0))]);
  });

  it('keeps few packets open, whatever comes', () => {
    const assembler = createFastPacketAssembler();
    const torn: TornPacket[] = [];
    for (let index = 0; index < 20_000; index++) {
      const [first] = framesOf({ pgn: 129808 + (index % 300), source: index % 251 }, bytes(20, 0), index % 8);
      assembler.push(first as NetworkFrame, addressOf((first as NetworkFrame).id), torn);
    }
    const left = assembler.flush().length;
    expect(left).toBeLessThanOrEqual(256);
    expect(torn.length + left).toBe(20_000);
  });
});
