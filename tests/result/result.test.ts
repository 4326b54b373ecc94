import { describe, expect, it } from 'vitest';
import { failure, type Issue, type Result, success, valueOf } from '../../src/result/index.ts';
import { failures } from '../../src/result/result.ts';

const first: Issue = { code: 'call-first', grade: 'error', params: {}, message: 'first thing', at: [] };
const second: Issue = { ...first, code: 'call-second', message: 'second thing', at: ['field', 0] };

describe('results', () => {
  it('are plain data', () => {
    expect(success(7)).toEqual({ ok: true, value: 7, notices: [] });
    expect(success(7, [first])).toEqual({ ok: true, value: 7, notices: [first] });
    expect(failure(first, second)).toEqual({ ok: false, issues: [first, second] });
    expect(failures([first, second])).toEqual(failure(first, second));
  });

  it('have one issue at least where they fail', () => {
    expect(() => failures([])).toThrow(new RangeError('failures: expected at least one issue'));
    for (const given of [undefined, null, first])
      expect(() => failures(given as unknown as Issue[])).toThrow(
        new TypeError('failures: expected a list of issues'),
      );
  });
});

describe('valueOf', () => {
  it('gives the value, or throws what the first issue says with all of them', () => {
    expect(valueOf(success(7, [first]))).toBe(7);
    expect(() => valueOf(failure(first, second))).toThrow(
      expect.objectContaining({ message: 'first thing', issues: [first, second] }),
    );
  });

  it('refuses what is no result', () => {
    for (const given of [undefined, null, 7, {}, Promise.resolve(success(7))])
      expect(() => valueOf(given as unknown as Result<number>)).toThrow(
        new TypeError('valueOf: expected a result, as a parse…, find… or decode… function returns it'),
      );
  });
});
