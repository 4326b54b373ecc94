import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeBits, decodeStream } from '../../src/burst/index.ts';
import { decodeCharacters } from '../../src/burst/information.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import { decodeFields } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { anyCharacters } from './compositions.ts';
import { copiesOf } from './heard.ts';

// ITU-R M.493, from memory: the error check is the exclusive-or of the characters before it. By calculation here.
const checkOf = (characters: readonly number[]) => characters.reduce((sum, symbol) => sum ^ symbol, 0);

describe('a call whose error check is wrong', () => {
  it('is shown as received, with the check received and the check computed, and is never acted on', () => {
    fc.assert(
      fc.property(anyCharacters, fc.integer({ min: 1, max: 127 }), (characters, difference) => {
        const computed = checkOf(characters);
        const received = computed ^ difference;
        const stream = streamOf(characters, [], received);
        for (const result of [decodeStream(stream), decodeBits(stream.map(encodeSymbol).join(''))]) {
          const { call, information, quality } = valueOf(result);
          expect(quality.verdict).toBe('doubtful');
          expect(quality.errorCheck).toEqual({ kind: 'wrong', received, computed });
          expect(information.slice(1)).toEqual(characters);
          expect(call.kind).toBe(decodeFields(decodeCharacters(characters)).call.kind);
          expect(result.ok && result.notices.map(({ code }) => code)).toContain('burst-check-wrong');
          expect(quality.probability).toBeLessThan(0.1);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('because one character came wrong in both copies is shown as received', () => {
    fc.assert(
      fc.property(anyCharacters, fc.nat(), fc.integer({ min: 0, max: 99 }), (characters, place, other) => {
        const at = 1 + (place % (characters.length - 2));
        fc.pre(characters[at] !== other);
        const hit = streamOf(characters).map((symbol, position) =>
          copiesOf(at).includes(position) ? other : symbol,
        );
        const { information, quality } = valueOf(decodeStream(hit));
        expect(quality.verdict).toBe('doubtful');
        const received = characters.map((symbol, index) => (index === at ? other : symbol));
        expect(information.slice(1)).toEqual(received);
        expect(quality.errorCheck).toEqual({
          kind: 'wrong',
          received: checkOf(characters),
          computed: checkOf(received),
        });
      }),
      { numRuns: 60 },
    );
  });
});
