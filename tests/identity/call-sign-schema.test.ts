import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { callSignSchema } from '../../src/identity/index.ts';

describe('callSignSchema', () => {
  const { validate, jsonSchema } = callSignSchema()['~standard'];

  // Radio Regulations 19.55, from memory: two characters and a letter, then digits or letters.
  it('takes a call sign however it is typed', () => {
    expect(validate('3ejh2')).toEqual({ value: '3EJH2' });
    expect(validate(' 2ZZ M8 ')).toEqual({ value: '2ZZM8' });
  });

  it.each([undefined, null, 5, '', '232999871', 'Merrow 2', {}])('refuses %s', (value) => {
    expect(validate(value).issues?.length).toBe(1);
  });

  it('describes what comes out', () => {
    const pattern = jsonSchema.output({ target: 'draft-07' })['pattern'] as string;
    expect(new RegExp(pattern).test('2ZZM8')).toBe(true);
    expect(() => jsonSchema.output({ target: 'draft-01' })).toThrow(RangeError);
    expect(z.string().regex(new RegExp(pattern)).safeParse('2zzm8').success).toBe(false);
  });
});
