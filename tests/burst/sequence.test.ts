import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeStream, encodeCall } from '../../src/burst/index.ts';
import { decodeCharacters } from '../../src/burst/information.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { decodeFields } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { slotBits, slotStream } from '../oracle/burst-stream.ts';
import { anyCall, anyCharacters } from './compositions.ts';

describe('sequence of a call', () => {
  it('is the literal one, slot by slot and bit by bit', () => {
    fc.assert(
      fc.property(anyCharacters, (characters) => {
        expect(streamOf(characters)).toEqual(slotStream(characters));
        expect(encodeCall(decodeFields(decodeCharacters(characters)).call).bits).toBe(slotBits(characters));
      }),
    );
  });

  it('sends every kind of call so that it comes back the same, clean', () => {
    fc.assert(
      fc.property(anyCall, (call) => {
        const { stream, information } = encodeCall(call);
        const reception = valueOf(decodeStream(stream));
        expect(reception.call).toEqual(call);
        expect(reception.information).toEqual(information);
        expect(reception.quality.verdict).toBe('clean');
      }),
      { numRuns: 150 },
    );
  });

  // Japan, Notification 567 of 1990, figure 1 notes: a character comes again after four others, so that a burst of five
  // symbols leaves one copy of each (by calculation).
  it('leaves every character whole when any five symbols in a row are hit', () => {
    fc.assert(
      fc.property(anyCall, fc.nat(), (call, where) => {
        const { stream } = encodeCall(call);
        const first = where % (stream.length - 4);
        const hit = stream.map((symbol, position) =>
          position >= first && position < first + 5 ? null : symbol,
        );
        const reception = valueOf(decodeStream(hit));
        expect(reception.call).toEqual(call);
        expect(reception.quality.verdict).toBe('clean');
      }),
      { numRuns: 150 },
    );
  });
});
