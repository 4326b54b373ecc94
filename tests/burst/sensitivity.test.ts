import { describe, expect, it } from 'vitest';
import { receivedBits } from '../../bench/burst/phase-continuous.ts';
import { randomFrom } from '../../bench/burst/random.ts';
import { randomCall } from '../../bench/burst/random-call.ts';
import { decodeBits, decodeSoft, type Reception } from '../../src/burst/index.ts';
import { streamOf } from '../../src/burst/sequence.ts';
import { encodeSymbol } from '../../src/burst/symbol-code.ts';
import type { Result } from '../../src/result/index.ts';

// A small part of bench/burst with fixed seeds; the shares wanted were measured there and leave room for chance.
const kinds = ['22', '30', 'alert', 'reply', 'relay', 'all-ships'] as const;
const EACH = 12;

/** How many of some random calls came out clean or repaired and right, and how many clean and wrong. */
function tally(
  seed: number,
  receive: (bits: Uint8Array, random: ReturnType<typeof randomFrom>) => Result<Reception>,
) {
  const random = randomFrom(seed);
  let right = 0;
  let wrong = 0;
  for (const kind of kinds)
    for (let call = 0; call < EACH; call++) {
      const characters = randomCall(kind, random);
      const bits = Uint8Array.from(streamOf(characters).map(encodeSymbol).join(''), Number);
      const result = receive(bits, random);
      if (!result.ok || result.value.quality.verdict === 'doubtful') continue;
      if (result.value.information.slice(1).join() === characters.join()) right++;
      else if (result.value.quality.verdict === 'clean') wrong++;
    }
  return { share: right / (kinds.length * EACH), wrong };
}

describe('whole calls from weak signals', () => {
  it('are read from hard bits of which one in a hundred is wrong', () => {
    const { share, wrong } = tally(1, (bits, random) =>
      decodeBits(bits.map((bit) => bit ^ (random.next() < 0.01 ? 1 : 0))),
    );
    expect(share).toBe(1);
    expect(wrong).toBe(0);
  });

  it('are read from hard bits of which one in fifty is wrong', () => {
    const { share, wrong } = tally(2, (bits, random) =>
      decodeBits(bits.map((bit) => bit ^ (random.next() < 0.02 ? 1 : 0))),
    );
    expect(share).toBeGreaterThan(0.95);
    expect(wrong).toBe(0);
  });

  it('are read from soft bits of a phase-continuous receiver at 5 dB', () => {
    const { share, wrong } = tally(3, (bits, random) => decodeSoft(receivedBits(bits, 10 ** 0.5, 3, random)));
    expect(share).toBeGreaterThan(0.9);
    expect(wrong).toBe(0);
  });
});
