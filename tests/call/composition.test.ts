import { describe, expect, it } from 'vitest';
import {
  type Call,
  type CallFields,
  type CallKind,
  composeAutomaticServiceCall,
  compositions,
  encodeFields,
} from '../../src/call/index.ts';
import { fieldLengths } from '../../src/call/kinds.ts';
import { formatSpecifiers, symbolOfName } from '../../src/call/symbol.ts';
import { literalCompositions, literalLengths } from '../oracle/call-compositions.ts';
import { sampleCalls } from './sample-calls.ts';

const HEADER = 55;

/** The characters of a call as the shipped table orders its fields. */
function characters(call: Call): number[] {
  const fields = encodeFields(call);
  const row = compositions.find(
    (entry) => entry.kind === call.kind && symbolOfName(formatSpecifiers, entry.format) === fields.format,
  );
  const sent = (row?.order ?? []).flatMap((field) => symbolsIn(field, fields));
  return [...sent, fields.end as number];
}

function symbolsIn(field: keyof CallFields, fields: CallFields): number[] {
  if (field === 'header') return fields.header ? [HEADER] : [];
  const value = fields[field];
  if (field === 'format') return [value as number, value as number];
  return (Array.isArray(value) ? value : [value]) as number[];
}

describe('the table of compositions', () => {
  it.each(Object.entries(literalCompositions))('%s is %s (ITU-R M.493-16, from memory)', (name, line) => {
    const call = sampleCalls[name] as Call;
    expect(`${call.kind} to ${call.to?.kind}`).toBe(name);
    const sent = characters(call);
    for (const word of line.split(' ')) {
      const length = literalLengths[word];
      if (length === undefined) expect(sent.shift(), `${name}: ${word}`).toBe(Number(word));
      else expect(sent.splice(0, length)).toHaveLength(length);
    }
    expect(sent).toEqual([]);
  });

  it('counts the characters of each row', () => {
    for (const row of compositions) {
      if (row.kind === 'automatic-service-call') continue;
      const count = row.order.reduce((sum, field) => sum + (fieldLengths[field] ?? 0), 0);
      expect(row.characters, `${row.kind} ${row.format}`).toBe(count);
    }
  });

  // Nippon Foundation GMDSS training text of 1998: VHF calls take from 0.45 s; 20 bits of dots, ten of the characters
  // around the message (ITU-R M.493-16 Annex 1), ten bits each, sent twice, at 1200 bits a second.
  it('makes the alert last the published 0.45 s', () => {
    const bits =
      20 + 20 * ((compositions.find(({ kind }) => kind === 'distress-alert')?.characters ?? 0) + 10);
    expect(bits / 1200).toBe(0.45);
  });

  // The same text gives 0.63 s for the longest: a telephone call of 16 digits, one symbol for their parity, two digits
  // a symbol.
  it('makes the longest telephone call last the published 0.63 s', () => {
    const call = composeAutomaticServiceCall({
      from: '232999871',
      to: '002329990',
      telephone: '1234567890123456',
      channel: '26',
    });
    const count = characters(call).length - 1;
    expect(count).toBe(27);
    expect((20 + 20 * (count + 10)) / 1200).toBeCloseTo(0.63, 2);
  });

  it('has a row for every kind of call', () => {
    const kinds: Record<Exclude<CallKind, 'unrecognised-call'>, true> = {
      'distress-alert': true,
      'distress-acknowledgement': true,
      'distress-self-cancel': true,
      'distress-relay': true,
      'distress-relay-acknowledgement': true,
      'all-ships-call': true,
      'area-call': true,
      'group-call': true,
      'individual-call': true,
      'individual-acknowledgement': true,
      'unable-to-comply': true,
      'position-request': true,
      'position-reply': true,
      'test-call': true,
      'test-acknowledgement': true,
      'polling-call': true,
      'polling-acknowledgement': true,
      'automatic-service-call': true,
    };
    expect([...new Set(compositions.map((row) => row.kind))].sort()).toEqual(Object.keys(kinds).sort());
  });
});
