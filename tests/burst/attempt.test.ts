import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../bench/receiver/random.ts';
import { type CallHeard, joinCalls } from '../../src/burst/attempt.ts';
import { decodeHard, givenHard } from '../../src/burst/decode-bits.ts';
import { type GivenBits, receiveWhere } from '../../src/burst/decode-soft.ts';
import type { Received } from '../../src/burst/receive.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';

// Chances are estimates of our own (deviation: D-audio-4); what is pinned here holds for any small ones.

/** Characters of a distress alert: identity, nature, position, time, telecommand, end of sequence. */
const ALERT = [112, 23, 29, 99, 21, 80, 105, 5, 62, 0, 6, 30, 12, 34, 100, 127];
/** Another vessel. */
const OTHER = [112, 23, 29, 99, 87, 10, 101, 5, 61, 59, 6, 31, 7, 20, 100, 127];
/** One digit of the longitude is another. */
const CHANGED = ALERT.map((symbol, index) => (index === 11 ? 31 : symbol));

/** A call of whose bits a share came wrong. */
function heard(characters: readonly number[], share = 0, random = randomFrom(5)): CallHeard {
  const bits = [...streamOf(characters).map(encodeSymbol).join('')]
    .map((bit) => (random.even() < share ? (bit === '1' ? '0' : '1') : bit))
    .join('');
  const alone = receiveWhere(givenHard(bits) as GivenBits, null, decodeHard) as Received;
  return { words: alone.words, rescore: undefined, alone };
}

/** The same place of the sound, in which nothing was heard. */
function silence(call: CallHeard): CallHeard {
  const metrics = new Float64Array(call.words.metrics.length);
  return { words: { ...call.words, metrics, lead: 0 }, rescore: undefined, alone: null };
}

const readAs = (calls: readonly CallHeard[], anchor?: number) => {
  const joined = joinCalls(calls, anchor);
  if (joined === null) return null;
  const { information, quality } = joined.received.reception;
  return { read: information.slice(1), members: joined.members, calls: quality.calls };
};

describe('calls of an attempt', () => {
  it('are one call when they say the same', () => {
    expect(readAs([heard(ALERT), heard(ALERT), heard(ALERT)])).toEqual({
      read: ALERT,
      members: [0, 1, 2],
      calls: 3,
    });
  });

  it('make surer what each of them leaves in doubt', () => {
    const random = randomFrom(11);
    const calls = [1, 2, 3].map(() => heard(ALERT, 0.12, random));
    const joined = joinCalls(calls)?.received.reception;
    expect(joined?.information.slice(1)).toEqual(ALERT);
    for (const { alone } of calls)
      expect(joined?.quality.probability).toBeGreaterThan(alone?.reception.quality.probability as number);
  });

  it.each([
    ['another vessel', OTHER],
    ['one character changed', CHANGED],
  ])('leave out a call of %s', (_, odd) => {
    const calls = [heard(ALERT), heard(odd), heard(ALERT)];
    expect(readAs(calls)).toEqual({ read: ALERT, members: [0, 2], calls: 2 });
    expect(readAs(calls, 0)).toEqual({ read: ALERT, members: [0, 2], calls: 2 });
    // No other is the call that is asked about.
    expect(readAs(calls, 1)).toBeNull();
    expect(readAs([heard(odd), heard(ALERT)])).toBeNull();
  });

  it('are those that the call in question belongs to, although others are more', () => {
    const calls = [heard(OTHER), heard(ALERT), heard(OTHER), heard(ALERT), heard(OTHER)];
    expect(readAs(calls)).toEqual({ read: OTHER, members: [0, 2, 4], calls: 3 });
    expect(readAs(calls, 3)).toEqual({ read: ALERT, members: [1, 3], calls: 2 });
  });

  it('do not count one of which nothing was heard, and are none with it alone', () => {
    const call = heard(ALERT);
    expect(readAs([call, silence(call), heard(ALERT)])).toEqual({ read: ALERT, members: [0, 2], calls: 2 });
    expect(readAs([call, silence(call)])).toBeNull();
    expect(readAs([call])).toBeNull();
    expect(readAs([])).toBeNull();
  });

  it('trust the call that is asked about in full, and every other only so far', () => {
    const random = randomFrom(23);
    const calls = [heard(ALERT, 0.13, random), heard(ALERT, 0.13, random)];
    const sure = (anchor?: number) =>
      joinCalls(calls, anchor)?.received.reception.quality.probability as number;
    expect(sure(0)).toBeGreaterThan(sure());
    expect(sure(1)).toBeGreaterThan(sure());
  });
});
