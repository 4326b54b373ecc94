import { type Issue, quote } from '../result/index.ts';
import { checkIdentity, type IdentityField, wantField } from './check.ts';
import type { Identity, IdentityKind, Mmsi } from './identity.ts';
import { parseIdentity } from './parse.ts';
import type {
  StandardJsonSchemaConverter,
  StandardJsonSchemaOptions,
  StandardSchema,
  StandardSchemaProps,
} from './standard-schema.ts';

/** What an {@link identitySchema} lets through. */
export interface IdentitySchemaOptions {
  /** The wanted kinds; all kinds where left out. */
  readonly accept?: readonly IdentityKind[] | undefined;
  /** The field the identity is for; refuses what {@link checkIdentity} refuses there. */
  readonly field?: IdentityField | undefined;
}

/** A Standard Schema from text to {@link Mmsi} that also gives JSON Schema. */
export interface IdentitySchema extends StandardSchema<string, Mmsi> {
  readonly '~standard': IdentitySchemaProps;
}

/** The one property of an {@link IdentitySchema}. Validation is synchronous; its issues carry all fields of {@link Issue}. */
export interface IdentitySchemaProps extends StandardSchemaProps<string, Mmsi> {
  readonly vendor: 'seahail';
  /** Gives the nine digits, or what is wrong with the value. */
  readonly validate: (
    value: unknown,
  ) => { readonly value: Mmsi; readonly issues?: undefined } | { readonly issues: readonly Issue[] };
  readonly jsonSchema: StandardJsonSchemaConverter;
}

/**
 * A schema for one identity, for libraries that take Standard Schema v1: forms, routers, procedures, environment.
 *
 * The schema is for one value, so its issues have no path. Form libraries that drop issues without a path need it
 * inside the schema of an object: with your schema library, let a string field refine through {@link parseIdentity}.
 *
 * An issue has a `suggestion` only where the field would take it.
 *
 * @param options - wanted kinds and field
 * @returns the schema; its output is nine digits, whatever way the person wrote them
 * @throws TypeError when `accept` is no list
 * @throws RangeError when `accept` is empty or names a kind that is none, or the field is none
 *
 * Source: Standard Schema v1.
 *
 * @see {@link checkIdentity}
 *
 * @example
 * ```ts
 * import { identitySchema } from 'seahail/identity';
 *
 * const shipField = identitySchema({ accept: ['ship'] });
 * console.log(shipField['~standard'].validate('232-999-871')); // { value: '232999871' }
 * ```
 */
export function identitySchema(options: IdentitySchemaOptions = {}): IdentitySchema {
  const { accept, field } = options;
  // Text has an includes of its own: 'ship-group' would let ships through.
  if (accept !== undefined && !Array.isArray(accept))
    throw new TypeError('identitySchema: a list of kinds to accept is needed');
  if (accept?.length === 0) throw new RangeError('identitySchema: at least one kind to accept is needed');
  const odd = accept?.find((kind) => !Object.hasOwn(shapes, kind));
  if (odd !== undefined) throw new RangeError(`identitySchema: ${quote(`${odd}`)} is no kind of identity`);
  if (field !== undefined) wantField(field);
  return {
    '~standard': {
      version: 1,
      vendor: 'seahail',
      validate: (value) => {
        const parsed = parseIdentity(value);
        if (!parsed.ok) return { issues: fitting(parsed.issues, options) };
        const issues = issuesHere(parsed.value, options);
        return issues.length === 0 ? { value: parsed.value.mmsi } : { issues };
      },
      jsonSchema: {
        input: (wanted) => jsonSchema(wanted, { type: 'string' }),
        output: (wanted) => jsonSchema(wanted, { type: 'string', pattern: patternOf(accept) }),
      },
    },
  };
}

/** What speaks against an identity in this field. */
function issuesHere(identity: Identity, { accept, field }: IdentitySchemaOptions): readonly Issue[] {
  if (accept !== undefined && !accept.includes(identity.kind)) {
    return [unwanted(identity.mmsi, identity.kind, accept)];
  }
  const checked = field === undefined ? undefined : checkIdentity(identity, field);
  return checked === undefined || checked.ok ? [] : checked.issues;
}

/** The issues with offers that the field would take; where it takes no ships, eight digits lack no digit of one. */
function fitting(issues: readonly Issue[], options: IdentitySchemaOptions): readonly Issue[] {
  const offering = issues.map((issue) => withFittingOffer(issue, options));
  const takesShips =
    issuesHere({ kind: 'ship', mmsi: '200000000' as Mmsi, mid: '200' }, options).length === 0;
  if (takesShips) return offering;
  return offering.sort((a, b) => Number(a.suggestion === undefined) - Number(b.suggestion === undefined));
}

/** The issue without its suggestion, where the field would refuse that as well: an offer must lead somewhere. */
function withFittingOffer(issue: Issue, options: IdentitySchemaOptions): Issue {
  const { suggestion, ...bare } = issue;
  if (suggestion === undefined) return issue;
  const offered = parseIdentity(suggestion);
  if (offered.ok && issuesHere(offered.value, options).length === 0) return issue;
  return { ...bare, message: issue.message.replace(`; ${suggestion} may be meant`, '') };
}

function unwanted(mmsi: Mmsi, kind: IdentityKind, accept: readonly IdentityKind[]): Issue {
  const expected = accept.join(' or ');
  return {
    code: 'identity-kind',
    message: `Identity is of kind ${kind}, not ${expected}`,
    at: [],
    expected,
    received: `'${mmsi}'`,
    clause: 'ITU-R M.585-10',
  };
}

function jsonSchema(
  options: StandardJsonSchemaOptions,
  schema: Record<string, unknown>,
): Record<string, unknown> {
  switch (options.target) {
    case 'draft-2020-12':
      return { $schema: 'https://json-schema.org/draft/2020-12/schema', ...schema };
    case 'draft-07':
      return { $schema: 'http://json-schema.org/draft-07/schema#', ...schema };
    case 'openapi-3.0':
      return schema;
    default:
      throw new RangeError('identitySchema: JSON Schema draft-2020-12, draft-07 or openapi-3.0 wanted');
  }
}

const shapes: Readonly<Record<IdentityKind, string>> = {
  ship: '[2-7][0-9]{8}',
  'ship-group': '0[2-7][0-9]{7}',
  coast: '00[2-7][0-9]{2}(?!0000)[0-9]{4}',
  'coast-all-national': '00[2-7][0-9]{2}0000',
  'coast-all': '009990000',
  'sar-aircraft': '111[2-7][0-9]{2}(?!000)[0-9]{3}',
  'sar-aircraft-all-national': '111[2-7][0-9]{2}000',
  craft: '98[2-7][0-9]{6}',
  aton: '99[2-7][0-9]{6}',
  handheld: '8[2-7][0-9]{7}',
  'ais-sart': '970[0-9]{6}',
  mob: '972[0-9]{6}',
  'epirb-ais': '974[0-9]{6}',
  'amrd-b': '979[0-9]{6}',
};

function patternOf(accept: readonly IdentityKind[] = Object.keys(shapes) as IdentityKind[]): string {
  return `^(?:${accept.map((kind) => shapes[kind]).join('|')})$`;
}
