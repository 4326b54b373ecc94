import { describe, expect, it } from 'vitest';
import { plausibleLayouts, sentLayout } from '../../src/burst/expansion.ts';

import { notFound, receptionNotices } from '../../src/burst/notices.ts';
import type { ReceptionQuality } from '../../src/burst/reception.ts';

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
const given = (other: Partial<ReceptionQuality>, more: Partial<Circumstances> = {}) =>
  receptionNotices({ ...quality, ...other }, { ...about, ...more });
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
        message: 'the call is only 62.13 % sure: show it as received in error and do not act on it',
        at: [],
        expected: 'at least 99 % sure',
        received: '62.13 %',
      },
    ]);
  });

  it('is that a repaired call was not received cleanly; almost sure never reads as sure', () => {
    expect(given({ verdict: 'repaired', probability: 0.999999 })).toEqual([
      {
        code: 'burst-repaired',
        message: 'the call is 99.99 % sure but not received cleanly: never act on it automatically',
        at: [],
        clause: 'ITU-R M.493 error-check character, unverified',
      },
    ]);
  });

  it.each([112, 116])('is that format specifier %i, which needs no address, came only once', (format) => {
    expect(given(begunBy(format), { formatCopies: 1 })).toEqual([
      {
        code: 'burst-format-once',
        message: 'the format specifier of a call without an address must be received twice, and was not',
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
      { code: 'burst-cut-short', message: 'the input ends before the call does', at: [330] },
    ]);
  });

  it('is that the tones came the wrong way round', () => {
    expect(given({ polarity: 'inverted' })).toEqual([
      {
        code: 'burst-inverted',
        message: 'every bit is inverted: the two tones are swapped at the receiver',
        at: [],
        clause: 'ITU-R M.493 phasing sequence',
      },
    ]);
  });

  it('is that an expansion could not be read, and that the call stands without it', () => {
    expect(given({}, { expansion: { kind: 'broken' } })).toEqual([
      {
        code: 'burst-expansion-broken',
        message: 'an expansion follows the call and could not be read; the call itself is not affected',
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
        message: "the expansion stood in the layout 'in-place-of-pair'",
        at: ['expansion'],
        expected: "'continued'",
        received: "'in-place-of-pair'",
      },
    ]);
  });
});

describe('where no call is found', () => {
  it('it is said how near anything came to one', () => {
    expect(notFound(0.4567)).toEqual({
      code: 'burst-not-found',
      message: 'no call could be read (45.67 % sure at best)',
      at: [],
      expected: 'phasing and what follows it',
      clause: 'ITU-R M.493 phasing sequence',
    });
  });
});
