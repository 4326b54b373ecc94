import { describe, expect, it } from 'vitest';
import code from '../../shared/burst/ten-bit-code.json' with { type: 'json' };
import worked from '../../shared/burst/worked-sequences.json' with { type: 'json' };
import { bitsOf, check, stream, tenBits } from './support/air.ts';

// Sources of both files: shared/README.md.
describe('the attackers’ own encoder', () => {
  it('gives the published ten-bit code', () => {
    for (const { symbol, bits } of code.rows) expect(tenBits(symbol).join('')).toBe(bits);
    expect(code.rows).toHaveLength(128);
  });

  it.each(worked.sequences.map((sequence) => [sequence.name, sequence] as const))(
    'gives the worked sequence %s',
    (_, sequence) => {
      const expansion = (sequence as { expansion?: { information: number[] } }).expansion?.information;
      const call = { characters: sequence.information, expansion };
      expect(check(call.characters)).toBe(sequence.errorCheck);
      expect(stream(call)).toEqual(sequence.stream);
      expect([...bitsOf(call)].join('')).toBe(sequence.bits);
    },
  );
});
