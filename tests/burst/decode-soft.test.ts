import { describe, expect, it } from 'vitest';
import { LONGEST_STREAM } from '../../src/burst/character-table.ts';
import {
  boundedValues,
  type DecodeOptions,
  decodeFirst,
  decodeSoft,
  decodeWhere,
  type GivenBits,
  givenSoft,
  receiveWhere,
  report,
} from '../../src/burst/decode-soft.ts';
import { encodeCall } from '../../src/burst/index.ts';
import { related } from '../../src/burst/judgement.ts';
import type { Received } from '../../src/burst/receive.ts';
import { composeTestCall } from '../../src/call/index.ts';
import type { Issue } from '../../src/result/index.ts';
import { copiesOf } from './heard.ts';

/** A call that begins and ends at a bit, as likely as that. */
const received = (start: number, callProbability = 1, evidence = 0): Received =>
  ({ reception: { quality: { start, end: start + 540 } }, callProbability, evidence }) as Received;

/** Where in some bits it is looked, and what for; what is found in each stretch is given in order. */
function look(length: number, options: DecodeOptions | null, ...found: (Received | null)[]) {
  const stretches: (readonly [from: number, to: number, looked: DecodeOptions])[] = [];
  const given: GivenBits = {
    length,
    read: (from, to) => new Float64Array(to - from).fill(from),
  };
  const answer = receiveWhere(given, options, ({ bits, offset }, looked) => {
    expect(bits[0] ?? offset).toBe(offset);
    stretches.push([offset, offset + bits.length, looked]);
    return found[stretches.length - 1] ?? null;
  });
  return { stretches, answer };
}

/** Bits that a call may take beyond the end of a stretch, with those that come before it. */
const OVER = 10 * LONGEST_STREAM + 200;

describe('a call in a long row of bits', () => {
  it('is looked for in all of a short one', () => {
    const found = received(20);
    expect(look(8192, null, found)).toEqual({ stretches: [[0, 8192, { from: 0 }]], answer: found });
    expect(look(0, {})).toEqual({ stretches: [[0, 0, { from: 0 }]], answer: null });
  });

  it('is looked for in one stretch after another, which overlap by as much as a call can take', () => {
    const { stretches, answer } = look(60_000, null);
    const second = 8192 - OVER;
    const third = second - 200 + 32_768 - OVER;
    expect(answer).toBeNull();
    expect(stretches.slice(0, 3)).toEqual([
      [0, 8192, { from: 0 }],
      [second - 200, second - 200 + 32_768, { from: second }],
      [third - 200, Math.min(third - 200 + 32_768, 60_000), { from: third }],
    ]);
    expect(stretches.at(-1)?.[1]).toBe(60_000);
  });

  it('ends the search where it can be read whole in its stretch', () => {
    const whole = received(8192 - OVER - 1);
    expect(look(60_000, null, whole)).toMatchObject({ stretches: { length: 1 }, answer: whole });
    const [late, again] = [received(8192 - OVER), received(8192 - OVER)];
    const { stretches, answer } = look(60_000, null, late, again);
    expect(stretches).toHaveLength(2);
    expect(answer).toBe(again);
  });

  it('is the most likely of those that are less likely than not, when no other is found', () => {
    const [faint, best, worse] = [received(0, 0.2, -3), received(0, 0.4, -1), received(0, 0.3, -2)];
    expect(look(60_000, null, faint, best, worse).answer).toBe(best);
    expect(look(60_000, null, faint, null, worse).answer).toBe(worse);
    expect(look(60_000, null, faint, worse, received(9, 0.5)).answer).toMatchObject({ callProbability: 0.5 });
    expect(look(8000, null, faint).answer).toBe(faint);
  });

  it('is looked for from a bit on, with the bits that come before it', () => {
    expect(look(5000, { from: 900 }).stretches).toEqual([[700, 5000, { from: 900 }]]);
    expect(look(5000, { from: 900.9 }).stretches).toEqual([[700, 5000, { from: 900 }]]);
    expect(look(5000, { from: 150 }).stretches).toEqual([[0, 5000, { from: 150 }]]);
    expect(look(5000, { from: -9 }).stretches).toEqual([[0, 5000, { from: 0 }]]);
    expect(look(5000, { from: 9000 }).stretches).toEqual([[4800, 5000, { from: 9000 }]]);
  });

  it('that begins at a known bit is looked for there alone', () => {
    const late = received(39_000);
    expect(look(60_000, { start: 20_000.7, from: 3 }, late)).toEqual({
      stretches: [[19_800, 19_800 + 8192, { start: 20_000 }]],
      answer: late,
    });
    expect(look(5000, { start: -60 }).stretches).toEqual([[0, 5000, { start: -60 }]]);
  });

  it('is not looked for where a bit is none', () => {
    const issue = { code: 'burst-input' } as Issue;
    const given: GivenBits = { length: 5, read: () => issue };
    expect(receiveWhere(given, null, () => null)).toBe(issue);
    expect(decodeWhere(given, {}, () => null)).toEqual({ ok: false, issues: [issue] });
    expect(decodeWhere(issue, {}, () => null)).toEqual({ ok: false, issues: [issue] });
  });

  it.each([
    [{ start: Number.NaN }, 'start'],
    [{ from: '9' }, 'from'],
    [{ start: null, from: null }, 'start'],
  ])('is not looked for at %j', (options, at) => {
    const given = givenSoft([1, 2]) as GivenBits;
    expect(decodeWhere(given, options as DecodeOptions, () => null)).toMatchObject({
      ok: false,
      issues: [{ code: 'burst-input', at: [at] }],
    });
  });
});

describe('the first call of a stretch', () => {
  // Invented ships; bits of dots, phasing and call.
  const friend = encodeCall(composeTestCall({ from: '232999871', to: '232999142' })).bits;
  const coast = encodeCall(composeTestCall({ from: '232999871', to: '002329990' })).bits;
  const OFFSET = 1000;
  const first = (text: string, options: DecodeOptions = {}) => {
    const bits = Float64Array.from(text, (bit) => (bit === '1' ? 3 : bit === '0' ? -3 : 0));
    const reception = decodeFirst({ bits, offset: OFFSET }, related, options)?.reception;
    return [reception?.quality.verdict, reception?.information[5], reception?.quality.start];
  };
  /** The call with the words of its third and ninth character not heard. */
  const open = [...friend].map((bit, at) =>
    [2, 8].flatMap(copiesOf).includes(Math.floor((at - 20) / 10)) ? '?' : bit,
  );
  const doubtful = open.join('');

  it('is given although another is surer, when that begins behind it', () => {
    expect(first(doubtful)).toEqual(['doubtful', 14, OFFSET + 20]);
    expect(first(doubtful + coast)).toEqual(['doubtful', 14, OFFSET + 20]);
    expect(first(friend + coast)).toEqual(['clean', 14, OFFSET + 20]);
  });

  it('gives way to a surer one that begins before its end', () => {
    const cut = friend.slice(0, 330);
    expect(first(cut)[0]).toBe('doubtful');
    expect(first(cut + coast)).toEqual(['clean', 99, OFFSET + 350]);
  });

  it('is looked for from a bit on, or at one', () => {
    const second = OFFSET + friend.length;
    expect(first(friend + coast, { from: second })).toEqual(['clean', 99, second + 20]);
    expect(first(friend + coast, { from: 5 })).toEqual(['clean', 14, OFFSET + 20]);
    expect(first(friend + coast, { start: second + 20 })).toEqual(['clean', 99, second + 20]);
    expect(first('?'.repeat(700), { from: 5 })).toEqual([undefined, undefined, undefined]);
  });
});

describe('what was found', () => {
  it('is reported when it is more likely than not', () => {
    const { reception } = received(3);
    const notices: never[] = [];
    expect(report({ ...received(3, 0.5), reception, notices })).toEqual({
      ok: true,
      value: reception,
      notices,
    });
    expect(report({ ...received(3, 0.499), notices })).toMatchObject({
      ok: false,
      issues: [{ code: 'burst-not-found', params: { sure: 49.9 } }],
    });
    expect(report(null)).toMatchObject({
      ok: false,
      issues: [{ code: 'burst-not-found', params: { sure: 0 } }],
    });
  });
});

describe('soft bits', () => {
  it('are no surer than receivers can be, and not heard where they are no number', () => {
    const given = [
      99,
      3.5,
      -3.5,
      -99,
      Number.POSITIVE_INFINITY,
      Number.NEGATIVE_INFINITY,
      Number.NaN,
      '7',
      null,
    ];
    expect([...boundedValues(given, 0, 9)]).toEqual([12, 3.5, -3.5, -12, 12, -12, 0, 0, 0]);
    expect([...boundedValues(given, 1, 3)]).toEqual([3.5, -3.5]);
    expect([...((givenSoft(given) as GivenBits).read(2, 5) as Float64Array)]).toEqual([-3.5, -12, 12]);
    expect(decodeSoft([Number.NaN, 1])).toMatchObject({ issues: [{ code: 'burst-not-found' }] });
  });
});
