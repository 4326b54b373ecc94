import type { StandardSchemaV1 } from '@standard-schema/spec';
import { describe, expect, it } from 'vitest';
import { channelSchema, type WorkingPurpose } from '../../src/channel/index.ts';
import { internationalPlan, unitedStatesPlan } from './plans.ts';

describe('channelSchema', () => {
  const standard: StandardSchemaV1<string, string> = channelSchema(internationalPlan);
  const validate = (typed: unknown, purpose?: WorkingPurpose, plan = internationalPlan) =>
    channelSchema(plan, { purpose })['~standard'].validate(typed);

  it('is a Standard Schema', () => {
    expect(standard['~standard']).toMatchObject({ version: 1, vendor: 'seahail' });
  });

  it('is a Standard JSON Schema of text', () => {
    const { jsonSchema } = channelSchema(internationalPlan)['~standard'];
    expect(jsonSchema.output({ target: 'openapi-3.0' })).toEqual({ type: 'string' });
    expect(() => jsonSchema.output({ target: 'draft-04' })).toThrow(/^channelSchema: /);
  });

  it('gives the name that the plan writes', () => {
    expect(validate('ch 6')).toEqual({ value: '06' });
    expect(validate('22a', undefined, unitedStatesPlan)).toEqual({ value: '1022' });
  });

  it.each([undefined, null, '', '1006', 'toString'])('refuses %s', (typed) => {
    expect(validate(typed).issues?.length).toBeGreaterThan(0);
  });

  it('keeps a suggestion only where the field would take it', () => {
    // 70 carries digital selective calls only (RR Appendix 18 note j).
    expect(validate(70).issues?.[0]?.suggestion).toBe('70');
    expect(validate(70, 'safety').issues?.[0]).not.toHaveProperty('suggestion');
    expect(validate(72, 'intership-commercial').issues?.[0]?.suggestion).toBe('72');
  });

  it('refuses what the purpose rules out, and purposes that are none', () => {
    expect(validate('16', 'intership-non-commercial').issues?.[0]?.code).toBe('channel-distress-and-calling');
    expect(() => channelSchema(internationalPlan, { purpose: 'gossip' as WorkingPurpose })).toThrow(
      RangeError,
    );
    const odd = { purposes: 'safety' } as unknown as { purpose: WorkingPurpose };
    expect(() => channelSchema(internationalPlan, odd)).toThrow(
      "channelSchema: expected options purpose, got 'purposes'",
    );
  });
});
