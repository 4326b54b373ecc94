import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { decodeBits, decodeStream, encodeCall } from '../../src/burst/index.ts';
import { decodeCharacters, encodeCharacters } from '../../src/burst/information.ts';
import { emptyFields } from '../../src/call/fields.ts';
import { type CallFields, decodeFields } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';

interface Worked {
  readonly name: string;
  readonly fields: Partial<CallFields>;
  readonly information: number[];
  readonly errorCheck: number;
  readonly expansion?: { readonly information: number[]; readonly errorCheck: number };
  readonly stream: number[];
  readonly bits: string;
}

// Sources of each composition stand beside it in the file.
const { sequences } = JSON.parse(
  readFileSync(new URL('../../shared/burst/worked-sequences.json', import.meta.url), 'utf8'),
) as { sequences: Worked[] };

describe.each(sequences.map((worked) => [worked.name, worked] as const))(
  'worked sequence %s',
  (_, worked) => {
    const fields: CallFields = {
      ...emptyFields,
      ...worked.fields,
      expansion: worked.expansion ? [{ specifier: 100, symbols: worked.expansion.information.slice(1) }] : [],
    };
    const { call } = decodeFields(fields);
    const characters = worked.information.slice(1);

    it('comes apart into its fields and together again', () => {
      expect({ ...decodeCharacters(characters), expansion: fields.expansion }).toEqual(fields);
      expect(encodeCharacters(fields)).toEqual(characters);
    });

    it('is encoded symbol for symbol and bit for bit', () => {
      const burst = encodeCall(call);
      expect(burst.information).toEqual(worked.information);
      expect(burst.errorCheck).toBe(worked.errorCheck);
      expect(burst.expansion).toEqual(worked.expansion);
      expect(burst.stream).toEqual(worked.stream);
      expect(burst.bits).toBe(worked.bits);
    });

    it('is decoded from its bits', () => {
      const reception = valueOf(decodeBits(worked.bits));
      expect(reception.call).toEqual(call);
      expect(reception.information).toEqual(worked.information);
      expect(reception.quality).toMatchObject({
        verdict: 'clean',
        errorCheck: { kind: 'as-sent' },
        polarity: 'normal',
        expansion: worked.expansion ? 'read' : 'none',
        start: 20,
        end: worked.bits.length,
      });
    });

    it('is decoded from its symbols', () => {
      const reception = valueOf(decodeStream(worked.stream));
      expect(reception.call).toEqual(call);
      expect(reception.quality).toMatchObject({ verdict: 'clean', start: 0, end: worked.stream.length });
    });
  },
);
