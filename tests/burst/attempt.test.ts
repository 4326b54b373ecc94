import { describe, expect, it } from 'vitest';
import { randomFrom } from '../../bench/receiver/random.ts';
import { type CallHeard, joinCalls } from '../../src/burst/attempt.ts';
import { combineCopies } from '../../src/burst/character-table.ts';
import { decodeHard, givenHard } from '../../src/burst/decode-bits.ts';
import { type GivenBits, receiveWhere } from '../../src/burst/decode-soft.ts';
import { compared, related, type Tempering } from '../../src/burst/judgement.ts';
import { type Received, type Words, withLossFloor } from '../../src/burst/receive.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { type WholeCall, weighWholeCall } from '../../src/burst/whole-call.ts';
import { copiesOf } from './heard.ts';

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

/** The same call with some of its words' facts replaced; what was read from them alone follows the dot pattern. */
function inWords(call: CallHeard, words: Partial<Words>): CallHeard {
  const more = (words.lead ?? call.words.lead) - call.words.lead;
  const alone = call.alone as Received;
  return {
    ...call,
    words: { ...call.words, ...words },
    alone: { ...alone, evidence: alone.evidence + more },
  };
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
    expect(readAs([silence(call), silence(call)])).toBeNull();
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

  it('believe the doubts of the sound that any of them came from', () => {
    const temperings = (...each: readonly Tempering[]) =>
      joinCalls(each.map((tempering) => inWords(heard(ALERT), { tempering })))?.received.words.tempering;
    expect(temperings(compared, compared)).toBe(compared);
    expect(temperings(compared, related)).toBe(related);
    expect(temperings(related, compared)).toBe(related);
  });

  it('take what was heard of every dot pattern together', () => {
    const evidence = (...leads: readonly number[]) =>
      joinCalls(leads.map((lead) => inWords(heard(ALERT), { lead })))?.received.evidence as number;
    expect(evidence(7, 2) - evidence(0, 0)).toBeCloseTo(9, 6);
  });
});

// Estimates of our own (deviation: D-audio-4): of 100 bursts in the place of a call of the attempt two are any other
// call, two are one that differs in some characters, and of those each character differs with a chance of one in ten.
describe('a burst in the place of a call of an attempt', () => {
  const scored = (call: CallHeard, value: number): CallHeard => ({
    ...call,
    rescore: (streams) => streams.map(() => value),
  });
  /** Whether a burst of which so much was heard, natural log, given the call of the attempt is that call. */
  const isSame = (burst: CallHeard, value: number) =>
    joinCalls([scored(heard(ALERT), 500), scored(burst, value)], 0) !== null;
  const expectBound = (burst: CallHeard, bound: number) => {
    expect(isSame(burst, bound - 1e-6)).toBe(false);
    expect(isSame(burst, bound + 1e-6)).toBe(true);
  };

  /** What its words say of the alert with some characters changed, against the alert itself. */
  function similarity({ words: { metrics } }: CallHeard): number {
    const tables = combineCopies(withLossFloor(metrics));
    const characters = [...ALERT, ALERT.reduce((parity, symbol) => parity ^ symbol)];
    return characters.reduce((product, symbol, index) => {
      const table = index === ALERT.length - 1 ? tables.end : tables.character;
      const likelihoods = [...table.subarray(128 * index, 128 * (index + 1))].map(Math.exp);
      const mean = likelihoods.reduce((sum, each) => sum + each) / 128;
      return product * (0.9 + (0.1 * mean) / (likelihoods[symbol] as number));
    }, 1);
  }

  /** So much, natural log, must be heard of it for it to be that call, by what its words say of any other. */
  const expected = (burst: CallHeard, anyCall: number) =>
    anyCall + Math.log(0.02 / (0.96 - 0.02 * similarity(burst)));

  it('is weighed by how often it is that call, unless it is the one that is asked about', () => {
    const only = streamOf(ALERT).join();
    const surely = (): CallHeard => ({
      ...heard(ALERT),
      rescore: (streams) => streams.map((each) => (each.join() === only ? 500 : -1e5)),
    });
    const calls = [surely(), surely()];
    const evidence = (anchor?: number) => joinCalls(calls, anchor)?.received.evidence as number;
    const share = 0.96 + 0.02 * similarity(calls[0] as CallHeard);
    expect(evidence() - evidence(0)).toBeCloseTo(Math.log(share), 6);
    expect(evidence(1)).toBeCloseTo(evidence(0), 6);
  });

  it('is never left out when it is the one that is asked about, however little it fits', () => {
    const loud = heard(ALERT).words.metrics.map((value) => 3 * value);
    const call = inWords(heard(ALERT), { metrics: loud });
    const { evidence, words } = call.alone as Received;
    const asked = scored(call, expected(call, evidence + 16 - words.lead) - 1);
    const only = streamOf(OTHER).join();
    const other: CallHeard = {
      ...heard(OTHER),
      rescore: (streams) => streams.map((each) => (each.join() === only ? 500 : -200)),
    };
    expect(joinCalls([asked, other, other], 0)).toBeNull();
    expect(readAs([other, other])).toMatchObject({ read: OTHER, members: [0, 1] });
  });

  it('is that call when more was heard of it than of any other call', () => {
    const burst = heard(ALERT);
    // The odds of a call to begin at a bit, one in e to the 16th, are no part of what was heard.
    const { evidence } = burst.alone as Received;
    const bound = expected(burst, evidence + 16 - burst.words.lead);
    expectBound(burst, bound);
    expectBound(inWords(burst, { lead: 5 }), bound);
  });

  it('is weighed by what was heard of any call where it was not read alone', () => {
    const dim = { ...heard(ALERT, 0.12), alone: null };
    const tables = combineCopies(withLossFloor(dim.words.metrics));
    const { total } = weighWholeCall(tables, Number.NEGATIVE_INFINITY, 1) as WholeCall;
    expectBound(dim, expected(dim, total));
  });

  it('may be a similar call in the end of sequence too', () => {
    const burst = heard(ALERT);
    const metrics = burst.words.metrics.slice();
    for (const position of copiesOf(ALERT.length - 1)) metrics.fill(0, 128 * position, 128 * (position + 1));
    const { evidence } = burst.alone as Received;
    const dim = inWords(burst, { metrics });
    expectBound(dim, expected(dim, evidence + 16 - burst.words.lead));
  });
});
