import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Call } from '../../src/call/call.ts';
import { decodeFields, encodeFields } from '../../src/call/convert.ts';
import { anyFields, mutated } from './arbitrary.ts';
import { workedSequences } from './worked-sequences.ts';

const workedFields = workedSequences.map((row) => row.fields);
const anything = fc.oneof(anyFields, mutated(workedFields));

describe.each(workedSequences.map((row) => [row.name, row] as const))('%s', (_, row) => {
  const source = row.restated === undefined ? row.clause : `${row.clause}; ${row.restated}`;

  it(`means what ${source} says, without a notice`, () => {
    expect(decodeFields(row.fields)).toEqual({ call: row.call, notices: [] });
  });

  it(`is composed as ${source} says`, () => {
    expect(encodeFields(row.call)).toEqual(row.fields);
  });
});

describe('a call and its fields', () => {
  it('give the same fields back, whatever was received', () => {
    fc.assert(
      fc.property(anything, (fields) => {
        expect(encodeFields(decodeFields(fields).call)).toEqual(fields);
      }),
      { numRuns: 2000 },
    );
  });

  it('survive JSON and structured clone, and still give the same fields back', () => {
    fc.assert(
      fc.property(anything, (fields) => {
        const { call } = decodeFields(fields);
        const copy = JSON.parse(JSON.stringify(call)) as Call;
        expect(copy).toEqual(call);
        expect(encodeFields(copy)).toEqual(fields);
        expect(structuredClone(call)).toEqual(call);
      }),
      { numRuns: 500 },
    );
  });

  it('are read the same a second time', () => {
    fc.assert(
      fc.property(anything, (fields) => {
        const first = decodeFields(fields);
        expect(decodeFields(encodeFields(first.call))).toEqual(first);
      }),
      { numRuns: 500 },
    );
  });

  it('carry nothing beside the call when the tables compose it so', () => {
    for (const { fields } of workedSequences)
      expect(decodeFields(fields).call).not.toHaveProperty('asReceived');
  });

  it('are encoded anew when a call was changed by spreading', () => {
    const request = workedSequences.find((row) => row.name === 'individual-routine-request');
    const received = { ...request?.fields, transmit: [126, 126, 126] };
    const { call } = decodeFields(received as (typeof workedFields)[number]);
    expect(encodeFields(call).transmit).toEqual([126, 126, 126]);
    const changed = { ...call, channel: '77' } as Call;
    expect(encodeFields(changed)).toMatchObject({ receive: [90, 0, 77], transmit: [90, 0, 77] });
  });
});
