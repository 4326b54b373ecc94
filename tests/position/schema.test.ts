import type { StandardSchemaV1 } from '@standard-schema/spec';
import { describe, expect, it } from 'vitest';
import { positionSchema, type WrittenPosition } from '../../src/position/index.ts';

describe('positionSchema', () => {
  const { validate, jsonSchema } = positionSchema()['~standard'];

  it('is a Standard Schema that reads what people write', () => {
    const standard: StandardSchemaV1<string, WrittenPosition> = positionSchema();
    expect(standard['~standard'].validate('56.5, -6.25')).toEqual({
      value: { latitude: 56.5, longitude: -6.25, step: 0.1 },
    });
  });

  it.each([undefined, null, 5, '', '56', 'toString', '95 N 6 W'])('refuses %s', (value) => {
    expect(validate(value).issues?.length).toBeGreaterThan(0);
  });

  it('offers only what it would take', () => {
    expect(validate('56,5').issues?.[0]?.suggestion).toBe('56, 5');
    for (const typed of ['95, 6', '6, 95', '-6.5, 156.3', '156.3, -6.5', '2300 0600']) {
      const offer = validate(typed).issues?.[0]?.suggestion;
      if (offer !== undefined) expect(validate(offer).issues).toBeUndefined();
    }
  });

  it('describes coordinates', () => {
    expect(jsonSchema.output({ target: 'openapi-3.0' })).toMatchObject({
      required: ['latitude', 'longitude', 'step'],
    });
    expect(jsonSchema.input({ target: 'draft-2020-12' })['type']).toBe('string');
  });
});
