import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Call } from '../../src/call/call.ts';
import { type CallFields, emptyFields } from '../../src/call/fields.ts';

/** One call of `shared/call/worked-sequences.json`, its absent fields filled in. */
export interface WorkedSequence {
  readonly name: string;
  readonly clause: string;
  readonly restated?: string;
  readonly characters: number;
  readonly call: Call;
  readonly fields: CallFields;
}

const path = join(import.meta.dirname, '../../shared/call/worked-sequences.json');
const file = JSON.parse(readFileSync(path, 'utf8')) as { readonly sequences: readonly WorkedSequence[] };

/** The worked calls, each with its source. */
export const workedSequences: readonly WorkedSequence[] = file.sequences.map((row) => ({
  ...row,
  fields: { ...emptyFields, ...row.fields },
}));
