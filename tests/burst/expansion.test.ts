import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { charactersFromSets, setsFromCharacters } from '../../src/burst/expansion.ts';
import { decodeBits, decodeStream, encodeCall } from '../../src/burst/index.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import type { ExpansionSet } from '../../src/call/fields.ts';
import { type Call, composePositionReply, composePositionRequest } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';

// Specifiers and lengths of the data sets: ITU-R M.821-1, from memory.
const pair = fc.integer({ min: 0, max: 99 });
const sets: fc.Arbitrary<ExpansionSet[]> = fc
  .subarray(
    [100, 101, 102, 103, 106].map((specifier, index) => ({
      specifier,
      length: [4, 3, 2, 2, 2][index] as number,
    })),
    { minLength: 1 },
  )
  .chain((kinds) =>
    fc.tuple(
      ...kinds.map(({ specifier, length }) =>
        fc
          .oneof(
            { weight: 5, arbitrary: fc.array(pair, { minLength: length, maxLength: length }) },
            { weight: 1, arbitrary: fc.constantFrom([110], [126]) },
          )
          .map((symbols) => ({ specifier, symbols })),
      ),
    ),
  );

// Invented stations of the demo scenario.
const request = composePositionRequest({ from: '232999871', to: '232999142' });
const reply = composePositionReply({ call: request, position: null, time: null });
const basic = encodeCall(reply);

/** The call with DX symbols of our own behind its error check, RX copying them two slots later (by calculation). */
function streamWith(behind: readonly number[]): number[] {
  const message = [...basic.information, basic.errorCheck, ...behind];
  const dx = [125, 125, 125, 125, 125, 125, ...message];
  const rx = [111, 110, 109, 108, 107, 106, 105, 104, ...message.slice(0, -2)];
  return dx.flatMap((symbol, slot) => [symbol, rx[slot] as number]);
}

const parity = (symbols: readonly number[]): number => symbols.reduce((sum, symbol) => sum ^ symbol, 0);

describe('expansion', () => {
  it('comes apart into sets and together again, whatever its symbols', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 127 }), { maxLength: 40 }), (characters) => {
        expect(charactersFromSets(setsFromCharacters(characters))).toEqual(characters);
      }),
    );
    fc.assert(
      fc.property(sets, (given) => {
        expect(setsFromCharacters(charactersFromSets(given))).toEqual(given);
      }),
    );
  });

  it('goes with the call and comes back with it, whatever sets it has', () => {
    fc.assert(
      fc.property(sets, (given) => {
        const sent = charactersFromSets(given);
        const reception = valueOf(
          decodeStream(streamWith([122, 122, ...sent, 122, parity([...sent, 122]), 122, 122])),
        );
        expect(reception.quality).toMatchObject({ verdict: 'clean', expansion: 'read' });
        const again = encodeCall(reception.call);
        expect(again.expansion?.information).toEqual(sent);
        expect(again.stream).toEqual(streamWith([122, 122, ...sent, 122, parity([...sent, 122]), 122, 122]));
      }),
      { numRuns: 60 },
    );
  });

  const data = [100, 41, 25, 90, 70];

  // The layout is remembered with little confidence (deviation D-burst-5): each of these is accepted.
  it.each([
    ['with its end left out of its error check', [122, 122, ...data, 122, parity(data), 122, 122]],
    ['in place of the closing pair', [...data, 122, parity([...data, 122]), 122, 122]],
    ['with another end of sequence', [122, 122, ...data, 127, parity([...data, 127]), 127, 127]],
  ])('is read %s', (_, behind) => {
    const result = decodeStream(streamWith(behind));
    const { quality, call } = valueOf(result);
    expect(quality.expansion).toBe('read');
    expect(quality.verdict).not.toBe('doubtful');
    expect((call as Call).kind).toBe('position-reply');
    expect(encodeCall(call).expansion?.information).toEqual(data);
  });

  it('never spoils the call when it is broken', () => {
    const whole = streamWith([122, 122, ...data, 122, parity([...data, 122]), 122, 122]);
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 127 }), { minLength: 16, maxLength: 16 }), (noise) => {
        const hit = whole.map((symbol, at) =>
          at >= whole.length - 16 ? (noise[at - whole.length + 16] as number) : symbol,
        );
        const { call, quality } = valueOf(decodeStream(hit));
        expect({ ...call, asReceived: undefined, expansion: undefined }).toEqual({
          ...reply,
          asReceived: undefined,
          expansion: undefined,
        });
        expect(quality.verdict).not.toBe('doubtful');
      }),
      { numRuns: 60, endOnFailure: true },
    );
  });

  it('is said to be broken when its error check does not hold', () => {
    const wrong = [122, 122, ...data, 122, parity([...data, 122]) ^ 5, 122, 122];
    const result = decodeStream(streamWith(wrong));
    expect(valueOf(result).quality).toMatchObject({ verdict: 'clean', expansion: 'broken' });
    expect(valueOf(result).call).toEqual(reply);
    expect(result.ok && result.notices.map(({ code }) => code)).toContain('burst-expansion-broken');
  });

  it('cut off in the middle leaves the call clean', () => {
    const whole = streamWith([122, 122, ...data, 122, parity([...data, 122]), 122, 122]);
    const text = whole.map(encodeSymbol).join('');
    for (let kept = 10 * basic.stream.length; kept < text.length; kept += 7) {
      const { call, quality } = valueOf(decodeBits(text.slice(0, kept)));
      expect(call.kind).toBe('position-reply');
      expect(quality.verdict, String(kept)).toBe('clean');
    }
  });
});
