import { describe, expect, it } from 'vitest';
import {
  type Call,
  type CallFields,
  type CallKind,
  callToFields,
  compositionOf,
  compositions,
  fieldLengths,
} from '../../src/call/index.ts';
import { literalCompositions, literalLengths } from '../oracle/call-compositions.ts';
import { sampleCalls } from './sample-calls.ts';

const HEADER = 55;

/** The characters of a call as the shipped table orders its fields. */
function characters(call: Call): number[] {
  const fields = callToFields(call);
  const row = compositions.find(
    (entry) => entry.kind === call.kind && symbolsOf(entry.format) === fields.format,
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

function symbolsOf(format: string): number {
  const symbols: Record<string, number> = {
    area: 102,
    distress: 112,
    group: 114,
    'all-ships': 116,
    individual: 120,
  };
  return symbols[format] ?? -1;
}

describe('the table of compositions', () => {
  it.each(Object.entries(literalCompositions))('%s is %s (ITU-R M.493-15, from memory)', (name, line) => {
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
  // around the message (ITU-R M.493-15 Annex 1), ten bits each, sent twice, at 1200 bits a second.
  it('makes the alert last the published 0.45 s', () => {
    const bits = 20 + 20 * ((compositionOf('distress-alert')?.characters ?? 0) + 10);
    expect(bits / 1200).toBe(0.45);
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
