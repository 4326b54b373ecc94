import { describe, expect, it } from 'vitest';
import { plausibleLayouts, sentLayout } from '../../src/burst/expansion.ts';

import { notFound, receptionNotices } from '../../src/burst/notices.ts';
import type { ReceptionQuality } from '../../src/burst/reception.ts';
import type { Issue } from '../../src/result/index.ts';

type Circumstances = Parameters<typeof receptionNotices>[1];

const quality: ReceptionQuality = {
  verdict: 'clean',
  probability: 0.99999,
  margin: 14,
  runnerUp: null,
  errorCheck: { kind: 'as-sent' },
  characters: [{ symbol: 112, source: 'both-copies', probability: 1 }],
  words: { sent: 50, differing: 0 },
  polarity: 'normal',
  calls: 1,
  expansion: 'none',
  start: 20,
  end: 540,
};
const about: Circumstances = { cut: false, formatCopies: 2, expansion: { kind: 'none' } };
/** The wording is pinned in tests/locale. */
const dataOf = ({ message: _, ...data }: Issue): Omit<Issue, 'message'> => data;
const given = (other: Partial<ReceptionQuality>, more: Partial<Circumstances> = {}) =>
  receptionNotices({ ...quality, ...other }, { ...about, ...more }).map(dataOf);
const begunBy = (symbol: number | null): Partial<ReceptionQuality> => ({
  characters: [{ symbol, source: 'one-copy', probability: 1 }],
});

describe('what is told of a reception', () => {
  it('is nothing when it is clean', () => {
    expect(given({})).toEqual([]);
  });

  it('is how sure a doubtful call is, and that nothing may act on it', () => {
    expect(given({ verdict: 'doubtful', probability: 0.6213 })).toEqual([
      {
        code: 'burst-doubtful',
        grade: 'check',
        params: {},
        at: [],
        expected: 'at least 99 % sure',
        received: '62.13 %',
      },
    ]);
  });

  it('is the error check that was computed, and the one that was received', () => {
    expect(given({ verdict: 'doubtful', errorCheck: { kind: 'wrong', computed: 55, received: 56 } })).toEqual(
      [
        {
          code: 'burst-check-wrong',
          grade: 'check',
          params: { computed: 55 },
          at: ['errorCheck'],
          expected: '55',
          received: '56',
          clause: 'ITU-R M.493 error-check character, unverified',
        },
      ],
    );
  });

  it('is that a repaired call was not received cleanly; almost sure never reads as sure', () => {
    expect(given({ verdict: 'repaired', probability: 0.999999 })).toEqual([
      {
        code: 'burst-repaired',
        grade: 'check',
        params: { sure: 99.99 },
        at: [],
        clause: 'ITU-R M.493 error-check character, unverified',
      },
    ]);
  });

  it.each([112, 116])('is that format specifier %i, which needs no address, came only once', (format) => {
    expect(given(begunBy(format), { formatCopies: 1 })).toEqual([
      {
        code: 'burst-format-once',
        grade: 'check',
        params: {},
        at: ['format'],
        expected: 'two copies or more',
        received: '1',
        clause: 'ITU-R M.493 format specifier, unverified',
      },
    ]);
  });

  it.each([120, 102, 114, 123, null])('is nothing when format specifier %s came only once', (format) => {
    expect(given(begunBy(format), { formatCopies: 1 })).toEqual([]);
  });

  it('is where it was cut short', () => {
    expect(given({ end: 330 }, { cut: true })).toEqual([
      { code: 'burst-cut-short', grade: 'check', params: {}, at: [330] },
    ]);
  });

  it('is that the tones came the wrong way round', () => {
    expect(given({ polarity: 'inverted' })).toEqual([
      {
        code: 'burst-inverted',
        grade: 'note',
        params: {},
        at: [],
        clause: 'ITU-R M.493 phasing sequence',
      },
    ]);
  });

  it('is that an expansion could not be read, and that the call stands without it', () => {
    expect(given({}, { expansion: { kind: 'broken' } })).toEqual([
      {
        code: 'burst-expansion-broken',
        grade: 'check',
        params: {},
        at: ['expansion'],
      },
    ]);
  });

  it('is the layout of an expansion, when it is not the usual one', () => {
    const read = { kind: 'read', sets: [], end: 70 } as const;
    expect(given({}, { expansion: { ...read, layout: sentLayout } })).toEqual([]);
    const layout = plausibleLayouts[2] ?? sentLayout;
    expect(given({}, { expansion: { ...read, layout } })).toEqual([
      {
        code: 'burst-expansion-layout',
        grade: 'note',
        params: { usual: 'continued' },
        at: ['expansion'],
        expected: "'continued'",
        received: "'in-place-of-pair'",
      },
    ]);
  });
});

describe('where no call is found', () => {
  it('it is said how near anything came to one', () => {
    expect(dataOf(notFound(0.4567))).toEqual({
      code: 'burst-not-found',
      grade: 'error',
      params: { sure: 45.67 },
      at: [],
      expected: 'phasing and what follows it',
      clause: 'ITU-R M.493 phasing sequence',
    });
  });
});
