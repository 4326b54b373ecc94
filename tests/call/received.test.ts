import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CallFields, decodeFields, encodeFields } from '../../src/call/index.ts';
import { expandFields, readFields } from '../../src/call/internal.ts';
import { anyFields } from './arbitrary.ts';
import { sampleCalls } from './sample-calls.ts';
import { workedSequences } from './worked-sequences.ts';

interface Received {
  readonly name: string;
  readonly from: string;
  readonly change: Partial<CallFields>;
  readonly call: Record<string, unknown>;
  readonly notices: readonly string[];
  readonly source: string;
}

const path = join(import.meta.dirname, '../../shared/call/received.json');
const { calls } = JSON.parse(readFileSync(path, 'utf8')) as { readonly calls: readonly Received[] };

describe('a call as it may be received', () => {
  it.each(calls.map((row) => [row.name, row.source, row] as const))('%s (%s)', (_, __, row) => {
    const worked = workedSequences.find((sequence) => sequence.name === row.from);
    const fields = { ...worked?.fields, ...row.change } as CallFields;
    const { call, notices } = decodeFields(fields);
    expect(call).toMatchObject(row.call);
    expect(notices.map((notice) => notice.code)).toEqual(row.notices);
    expect(encodeFields(call)).toEqual(fields);
  });

  it('names the field, what was received and the clause in every notice', () => {
    for (const { from, change } of calls) {
      const worked = workedSequences.find((sequence) => sequence.name === from);
      for (const notice of decodeFields({ ...worked?.fields, ...change } as CallFields).notices) {
        expect(notice.at).toHaveLength(1);
        expect(notice.received).toMatch(/\S/);
        expect(notice.clause).toMatch(/ITU-R M\.\d/);
        expect(notice.message).toMatch(/^[A-Z].* .*[^.]$/);
      }
    }
  });
});

// Two ways to the same reading: fields as they are, and an expansion added to fields that were read without it.
it('an expansion that comes later is read as one that came with the call', () => {
  const samples = fc.constantFrom(...Object.values(sampleCalls).map((call) => encodeFields(call)));
  fc.assert(
    fc.property(fc.oneof(samples, anyFields), anyFields, (fields, { expansion }) => {
      const later = expandFields(readFields({ ...fields, expansion: [] }), expansion);
      expect(later).toEqual(readFields({ ...fields, expansion }));
      expect(encodeFields(later.call)).toEqual(encodeFields(readFields({ ...fields, expansion }).call));
    }),
    { numRuns: 500 },
  );
});
