import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Call } from '../../src/call/index.ts';
import { createNetworkReader, type NetworkFrame, writeCallFrames } from '../../src/network/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { sampleCalls } from '../call/sample-calls.ts';
import { framesOf } from './support.ts';

const OWN = '232999142';
const samples = Object.entries(sampleCalls);

const read = (frames: readonly NetworkFrame[]) => {
  const reader = createNetworkReader({ own: OWN });
  return [...frames.flatMap((frame) => reader.push(frame)), ...reader.flush()];
};
/** What a display can know of a call: what its message says when it arrives alone and in order. */
const readAlone = (call: Call): Call => {
  const [reading] = read(valueOf(writeCallFrames(call, { source: 3 })));
  if (reading?.kind !== 'call') throw new Error(`expected a call, got ${reading?.kind}`);
  return reading.call;
};

/** Fields that PGN 129808 has no place for, by what a call is. Public list of parameter groups; D-network-3. */
const unsayable = (call: Call): readonly string[] => {
  const lost = [];
  const to = call.to?.kind;
  if (to === 'area') lost.push('from');
  // A call to one station is taken to be for the own one; a group is not named.
  if (to === 'station' || to === 'group') lost.push('to');
  if ('nature' in call && call.kind !== 'distress-alert') lost.push('nature');
  return lost;
};
const without = (call: Call, names: readonly string[]) =>
  Object.fromEntries(Object.entries(call).filter(([name]) => !names.includes(name)));

describe('every call that the cable can express', () => {
  it.each(samples)('%s comes back but for what the message has no place for', (_, call) => {
    const lost = unsayable(call);
    expect(without(readAlone(call), lost)).toEqual(without(call, lost));
  });

  it('comes out once when whole, and nothing else does', () => {
    const sent = fc.record({
      sample: fc.nat({ max: samples.length - 1 }),
      source: fc.integer({ min: 0, max: 3 }),
      sequence: fc.integer({ min: 0, max: 7 }),
      lost: fc.integer({ min: -12, max: 8 }),
    });
    const list = fc.uniqueArray(sent, {
      selector: ({ source, sequence }) => source * 8 + sequence,
      minLength: 1,
      maxLength: 8,
    });
    const noise = fc.array(
      fc.record({
        pgn: fc.constantFrom(127245, 127250, 129029),
        data: fc.uint8Array({ minLength: 8, maxLength: 8 }),
      }),
      { maxLength: 20 },
    );
    fc.assert(
      fc.property(list, noise, fc.infiniteStream(fc.nat()), (calls, others, random) => {
        const next = (below: number) => (random.next().value as number) % below;
        const messages = calls.map(({ sample, source, sequence, lost }) => {
          const call = (samples[sample] as (typeof samples)[number])[1];
          const frames = valueOf(writeCallFrames(call, { source, sequence }));
          const kept = frames.filter((_, number) => number !== lost);
          // Where the first frame comes last it is taken for that of the next message (D-network-1).
          const order = shuffled(kept, next);
          if (order.at(-1) === frames[0]) order.reverse();
          return { call, whole: kept.length === frames.length, frames: order };
        });
        const elsewhere = others.map(({ pgn, data }) => ({ id: 2 * 2 ** 26 + pgn * 256 + 9, data }));
        const frames = merged([...messages.map((message) => message.frames), elsewhere], next);
        const repeated = frames.flatMap((frame) => (next(5) === 0 ? [frame, frame] : [frame]));
        const heard = read(repeated).flatMap((reading) => (reading.kind === 'call' ? [reading.call] : []));
        const expected = messages.filter(({ whole }) => whole).map(({ call }) => readAlone(call));
        const sorted = (list: readonly Call[]) => list.map((call) => JSON.stringify(call)).sort();
        expect(sorted(heard)).toEqual(sorted(expected));
      }),
    );
  });
});

function shuffled<T>(list: readonly T[], next: (below: number) => number): T[] {
  const out = [...list];
  for (let index = out.length - 1; index > 0; index--) {
    const other = next(index + 1);
    [out[index], out[other]] = [out[other] as T, out[index] as T];
  }
  return out;
}

/** One list of all, each list in its own order. */
function merged(
  lists: readonly (readonly NetworkFrame[])[],
  next: (below: number) => number,
): NetworkFrame[] {
  const rest = lists.filter((list) => list.length > 0).map((list) => [...list]);
  const out: NetworkFrame[] = [];
  while (rest.length > 0) {
    const place = next(rest.length);
    const list = rest[place] as NetworkFrame[];
    out.push(list.shift() as NetworkFrame);
    if (list.length === 0) rest.splice(place, 1);
  }
  return out;
}

describe('many frames', () => {
  /** Frames of senders that change all the time; a third of the fast packets lack a frame. */
  function* bus(count: number): Generator<NetworkFrame> {
    for (let message = 0, sent = 0; sent < count; message++) {
      const source = (message * 7) % 252;
      const payload = Uint8Array.from({ length: 30 }, (_, index) => (message + index) & 0xff);
      const frames = framesOf({ pgn: 129029 + (message % 11), source }, payload, message % 8);
      for (const [number, frame] of frames.entries()) {
        if (message % 3 === 0 && number === 1) continue;
        sent++;
        yield { ...frame, at: sent };
      }
      sent++;
      yield {
        id: 2 * 2 ** 26 + (127000 + (message % 500)) * 256 + source,
        data: payload.slice(0, 8),
        at: sent,
      };
    }
  }

  /** Bytes that the reader looks at: a count that no clock disturbs. */
  const workOf = (count: number): number => {
    let looks = 0;
    const reader = createNetworkReader();
    for (const { id, data, at } of bus(count)) {
      const counted = new Proxy(data, {
        get(target, name) {
          if (typeof name === 'string' && /^\d/.test(name)) looks++;
          const value = Reflect.get(target, name, target);
          return typeof value === 'function' ? value.bind(target) : value;
        },
      });
      reader.push({ id, data: counted, ...(at === undefined ? {} : { at }) });
    }
    return looks;
  };

  it('take work in proportion to their number', () => {
    const [one, eight] = [workOf(4000), workOf(32_000)];
    expect(one).toBeGreaterThan(4000);
    expect(eight).toBeLessThanOrEqual(10 * one);
  });

  it('leave nothing open but the newest', () => {
    const reader = createNetworkReader();
    for (const frame of bus(20_000)) reader.push(frame);
    // One message in three is torn, and one takes about six milliseconds: at most 750 ms of them wait.
    expect(reader.flush().length).toBeLessThanOrEqual(45);
  });
});
