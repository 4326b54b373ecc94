import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Issue } from '../../src/result/index.ts';
import { parseSentence, readSentences } from '../../src/sentence/index.ts';
import { line } from './arbitrary.ts';

/** Longest of our own words, and received text in quotes: at most 40 characters of it, twice. */
const MOST = 240;
const long = 'x'.repeat(900);

const lengths = (notices: readonly Issue[]): number[] =>
  notices.flatMap(({ message, received = '', expected = '' }) => [
    message.length,
    received.length,
    expected.length,
  ]);

describe('a message', () => {
  it.each([
    ['an expansion alone', line(`CDDSE,1,1,A,${long},00,1`)],
    [
      'an expansion of another station',
      line(`CDDSC,20,${long},00,21,26,,,,,B,E`) + line(`CDDSE,1,1,A,${long}y,00,1`),
    ],
    [
      'an expansion not announced',
      line(`CDDSC,20,${long},00,21,26,,,,,B,`) + line(`CDDSE,1,1,A,${long},00,1`),
    ],
    [
      'a late expansion',
      line(`CDDSC,20,${long},00,21,26,,,,,B,E`) + line('GPZDA,,,,,,') + line(`CDDSE,1,1,A,${long},00,1`),
    ],
    ['a call', line(`CDDSC,20,${long},00,21,26,,,,,B,`)],
    ['an AIS sentence', line(`AIVDM,1,1,,A,${long},0`, '!')],
    ['no sentence', `${long}\r\n`],
  ])('of %s stays short, whatever was received', (_, text) => {
    const readings = readSentences(text);
    expect(readings.some(({ notices }) => notices.length > 0) || readings[0]?.kind === 'damaged').toBe(true);
    for (const reading of readings) {
      for (const length of lengths([
        ...reading.notices,
        ...(reading.kind === 'damaged' ? reading.issues : []),
      ])) {
        expect(length).toBeLessThan(MOST);
      }
    }
  });

  it('of any line stays short', () => {
    const part = fc.constantFrom('$', '!', '\\', '*', ' ', ',', long, 'CDDSC', '20', 's:');
    fc.assert(
      fc.property(fc.array(part, { maxLength: 12 }), (parts) => {
        const result = parseSentence(parts.join(''), { unchecked: true });
        for (const length of lengths(result.ok ? result.notices : result.issues))
          expect(length).toBeLessThan(MOST);
      }),
    );
  });
});
