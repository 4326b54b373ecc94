import type { StandardSchemaV1 } from '@standard-schema/spec';
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import {
  checkIdentity,
  type IdentityKind,
  identityForms,
  identitySchema,
  parseIdentity,
} from '../../src/identity/index.ts';
import { valueOf } from '../../src/result/index.ts';
import { assigned, nineDigits } from './arbitrary.ts';

describe('identitySchema', () => {
  const ship = (value: unknown) => identitySchema({ accept: ['ship'] })['~standard'].validate(value);

  it('offers only what the field would take (invented: the last digit of a ship left off)', () => {
    const offers = (typed: string, ...schemas: readonly ReturnType<typeof identitySchema>[]) =>
      schemas.map((schema) =>
        schema['~standard'].validate(typed).issues?.map(({ message, suggestion }) => [message, suggestion]),
      );
    const count = ['Identity needs 9 digits, has 8', undefined];
    const lacks = 'Identity is missing digits: spreadsheets drop leading zeros';
    const offered = [`${lacks}; perhaps 023299914`, '023299914'];
    // A ship with a digit left out is likelier than a group without its zero, where the field takes both.
    const bare = [count, [lacks, undefined]];
    const [group, any, friend, individual] = offers(
      '23299914',
      identitySchema({ accept: ['ship-group'] }),
      identitySchema(),
      identitySchema({ accept: ['ship', 'handheld'] }),
      identitySchema({ field: { use: 'individual' } }),
    );
    expect([group, any, friend, individual]).toEqual([[offered, count], [count, offered], bare, bare]);
  });

  it('is a Standard Schema of version 1', () => {
    expect(identitySchema()['~standard']).toMatchObject({ version: 1, vendor: 'seahail' });
  });

  it('gives nine digits, or issues with code, message and suggestion', () => {
    expect(ship('232-878-000')).toEqual({ value: '232878000' });
    expect(identitySchema({ accept: ['ship', 'coast'] })['~standard'].validate('2320017')).toMatchObject({
      issues: [
        {
          code: 'identity-leading-zeros',
          suggestion: '002320017',
          message: expect.stringContaining('zeros'),
        },
      ],
    });
    expect(ship('023288998')).toMatchObject({
      issues: [{ code: 'identity-kind', expected: 'ship' }],
    });
    expect(ship(232878000)).toMatchObject({ issues: [{ code: 'identity-number' }] });
  });

  it('refuses what does not fit the field', () => {
    const own = identitySchema({ field: { use: 'own' } })['~standard'];
    expect(own.validate('232878000')).toEqual({ value: '232878000' });
    expect(own.validate('002320014')).toMatchObject({ issues: [{ code: 'identity-use' }] });
  });

  it('accepts every kind unless told otherwise, and needs one', () => {
    fc.assert(
      fc.property(assigned, (digits) => {
        expect(identitySchema()['~standard'].validate(digits)).toEqual({ value: digits });
      }),
    );
    expect(() => identitySchema({ accept: [] })).toThrow(RangeError);
  });

  it.each([
    [TypeError, 'identitySchema: expected a list of kinds to accept', { accept: 'ship-group' }],
    [TypeError, 'identitySchema: expected a list of kinds to accept', { accept: new Set(['ship']) }],
    [TypeError, 'identitySchema: expected a list of kinds to accept', { accept: {} }],
    [TypeError, 'identitySchema: expected a list of kinds to accept', { accept: null }],
    [TypeError, 'identitySchema: ', { accepts: ['ship'] }],
    [RangeError, "identitySchema: 'toString' is not a kind of identity", { accept: ['toString'] }],
    [RangeError, "identitySchema: 'yacht' is not a kind of identity", { accept: ['ship', 'yacht'] }],
    [RangeError, 'expected use', { field: { use: 'xyz' } }],
    [RangeError, 'expected station', { field: { use: 'own', station: 'mast' } }],
  ])('throws %o at once, saying %s, on %j, which no field can be', (error, message, options) => {
    const make = () =>
      identitySchema(options as unknown as NonNullable<Parameters<typeof identitySchema>[0]>);
    expect(make).toThrow(error);
    expect(make).toThrow(message);
  });

  it('takes what only asks for a look, and refuses what checkIdentity refuses', () => {
    const own = identitySchema({ field: { use: 'own' } })['~standard'];
    // Of the block that Ofcom keeps apart for portable sets (deviation: D-identity-9).
    const portable = checkIdentity(valueOf(parseIdentity('235900001')), { use: 'own' });
    expect(portable.map(({ code, grade }) => [code, grade])).toEqual([['identity-station', 'check']]);
    expect(own.validate('235900001')).toEqual({ value: '235900001' });
    expect(own.validate('002329990').issues?.[0]?.grade).toBe('error');
  });

  it('takes an option that is undefined for one left out', () => {
    const schema = identitySchema({ accept: undefined, field: undefined })['~standard'];
    expect(schema.validate('002329990')).toEqual({ value: '002329990' });
    const own = identitySchema({ field: { use: 'own', station: undefined, own: undefined } })['~standard'];
    expect(own.validate('002320014')).toMatchObject({ issues: [{ code: 'identity-use' }] });
  });

  it('never throws', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        expect(typeof ship(value)).toBe('object');
      }),
    );
  });

  it('gives JSON Schema whose pattern takes exactly the accepted kinds', () => {
    const kinds = fc.subarray(identityForms.map(({ kind }) => kind) as IdentityKind[], { minLength: 1 });
    fc.assert(
      fc.property(kinds, fc.oneof(assigned, nineDigits), (accept, digits) => {
        const schema = identitySchema({ accept })['~standard'];
        const { pattern } = schema.jsonSchema.output({ target: 'draft-2020-12' }) as { pattern: string };
        expect(new RegExp(pattern, 'u').test(digits)).toBe(!('issues' in schema.validate(digits)));
      }),
      { numRuns: 500 },
    );
  });

  // JSON Schema draft-07 §7 and 2020-12 core §8.1.1 name the addresses of their dialects; OpenAPI 3.0 has none.
  it.each([
    ['draft-2020-12', { $schema: 'https://json-schema.org/draft/2020-12/schema' }],
    ['draft-07', { $schema: 'http://json-schema.org/draft-07/schema#' }],
    ['openapi-3.0', {}],
  ])('gives JSON Schema of %s for text taken in, and for digits given out', (target, dialect) => {
    const { jsonSchema } = identitySchema({ accept: ['ship'] })['~standard'];
    expect(jsonSchema.input({ target })).toEqual({ ...dialect, type: 'string' });
    expect(jsonSchema.output({ target })).toEqual({
      ...dialect,
      type: 'string',
      pattern: '^(?:[2-7][0-9]{8})$',
    });
    expect(() => jsonSchema.output({ target: 'draft-01' })).toThrow(RangeError);
  });
});

describe('recipe: zod', () => {
  const ShipMmsi = z.string().transform((text, context) => {
    const result = parseIdentity(text);
    if (result.ok) return result.value.mmsi;
    for (const { message, suggestion } of result.issues) {
      context.issues.push({ code: 'custom', message, input: text, params: { suggestion } });
    }
    return z.NEVER;
  });
  const Boat = z.object({ name: z.string(), mmsi: ShipMmsi });

  it('reads, and gives issues with path and suggestion', () => {
    expect(Boat.parse({ name: 'Merrow', mmsi: '232 999 871' })).toEqual({
      name: 'Merrow',
      mmsi: '232999871',
    });
    const eaten = Boat.safeParse({ name: 'Skerra Coastguard', mmsi: '2329990' });
    expect(eaten.error?.issues).toMatchObject([{ path: ['mmsi'], params: { suggestion: '002329990' } }]);
  });

  it('refines where the text shall stay as typed', () => {
    const Typed = z.string().refine((text) => parseIdentity(text).ok, { error: 'nine digits wanted' });
    expect(Typed.safeParse('232 999 871').data).toBe('232 999 871');
    expect(Typed.safeParse('232').success).toBe(false);
  });
});

describe('recipe: valibot', () => {
  const ShipMmsi = v.pipe(
    v.string(),
    v.rawTransform(({ dataset, addIssue, NEVER }) => {
      const result = parseIdentity(dataset.value);
      if (result.ok) return result.value.mmsi;
      for (const { message, expected, received } of result.issues) {
        addIssue({ message, ...(expected && { expected }), ...(received && { received }) });
      }
      return NEVER;
    }),
  );
  const Boat = v.object({ name: v.string(), mmsi: ShipMmsi });

  it('reads, and gives issues with path', () => {
    expect(v.parse(Boat, { name: 'Merrow', mmsi: 'MMSI 232999871' })).toEqual({
      name: 'Merrow',
      mmsi: '232999871',
    });
    const wrong = v.safeParse(Boat, { name: 'Merrow', mmsi: '02329998' });
    expect(wrong.issues?.map((issue) => v.getDotPath(issue))).toEqual(['mmsi']);
    expect(wrong.issues?.[0].message).toBe('Identity needs 9 digits, has 8');
  });
});

describe('recipe: form resolver that keeps only issues with a path', () => {
  /** As form libraries do it: errors by field; an issue without a path belongs to no field and is dropped. */
  const resolve = async (schema: StandardSchemaV1, values: unknown): Promise<unknown> => {
    const outcome = await schema['~standard'].validate(values);
    if (outcome.issues === undefined) return { values: outcome.value, errors: {} };
    const errors: Record<string, string> = {};
    for (const { path = [], message } of outcome.issues) {
      const field = path.map((step) => String(typeof step === 'object' ? step.key : step)).join('.');
      if (field !== '') errors[field] ??= message;
    }
    return { values: {}, errors };
  };

  /** The recipe: an object schema that gives each field's issues the field's name as path. */
  const formSchema = (
    fields: Record<string, StandardSchemaV1>,
  ): StandardSchemaV1<Record<string, unknown>> => ({
    '~standard': {
      version: 1,
      vendor: 'own form',
      validate: async (input) => {
        const given = new Map(Object.entries(Object(input) as Record<string, unknown>));
        const values: [string, unknown][] = [];
        const issues: StandardSchemaV1.Issue[] = [];
        for (const [name, schema] of Object.entries(fields)) {
          const outcome = await schema['~standard'].validate(given.get(name));
          if (outcome.issues === undefined) values.push([name, outcome.value]);
          else
            issues.push(
              ...outcome.issues.map((issue) => ({ ...issue, path: [name, ...(issue.path ?? [])] })),
            );
        }
        return issues.length > 0 ? { issues } : { value: Object.fromEntries(values) };
      },
    },
  });

  it('loses the issues of a bare field', async () => {
    expect(await resolve(identitySchema(), '23')).toEqual({ values: {}, errors: {} });
  });

  it('shows the issues of an object schema at their fields', async () => {
    const form = formSchema({
      own: identitySchema({ accept: ['ship'] }),
      club: identitySchema({ accept: ['ship-group'] }),
    });
    expect(await resolve(form, { own: '232 999 871', club: '023299905' })).toEqual({
      values: { own: '232999871', club: '023299905' },
      errors: {},
    });
    expect(await resolve(form, { own: '023299905', club: '23299905' })).toEqual({
      values: {},
      errors: {
        own: 'Identity: expected ship, got group of ships',
        club: 'Identity is missing digits: spreadsheets drop leading zeros; perhaps 023299905',
      },
    });
  });

  it('shows them also through an object schema of a library', async () => {
    const form = z.object({
      own: z.string().refine((text) => parseIdentity(text).ok, {
        error: ({ input }) => {
          const result = parseIdentity(input);
          return result.ok ? '' : result.issues[0].message;
        },
      }),
    });
    expect(await resolve(form, { own: '23' })).toEqual({
      values: {},
      errors: { own: 'Identity needs 9 digits, has 2' },
    });
  });
});
