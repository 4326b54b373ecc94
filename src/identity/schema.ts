import { type FormSchema, type Issue, type Result, success } from '../result/index.ts';
import { failures, formSchema, quote, requireOptions } from '../result/internal.ts';
import { checkIdentity, type IdentityField, wantField } from './check.ts';
import type { Identity, IdentityKind, Mmsi } from './identity.ts';
import { parseIdentity } from './parse.ts';
import { issue } from './texts.ts';

/**
 * A schema for one identity, for libraries that take Standard Schema v1: forms, routers, procedures, environment.
 *
 * The schema is for one value, so its issues have no path. Form libraries that drop issues without a path need it
 * inside the schema of an object: with your schema library, let a string field refine through {@link parseIdentity}.
 *
 * An issue has a `suggestion` only where the field would take it.
 *
 * @param options - accepted kinds and field
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
export function identitySchema(
  options: {
    /** The accepted kinds; all kinds when left out. */
    readonly accept?: readonly IdentityKind[] | undefined;
    /** The field the identity is for; refuses what {@link checkIdentity} refuses there. */
    readonly field?: IdentityField | undefined;
  } = {},
): FormSchema<Mmsi> {
  const { accept, field } = requireOptions('identitySchema', options, ['accept', 'field']);
  // Text has an includes of its own: 'ship-group' would let ships through.
  if (accept !== undefined && !Array.isArray(accept))
    throw new TypeError('identitySchema: expected a list of kinds to accept');
  if (accept?.length === 0) throw new RangeError('identitySchema: expected at least one kind to accept');
  const odd = accept?.find((kind) => !Object.hasOwn(shapes, kind));
  if (odd !== undefined) throw new RangeError(`identitySchema: ${quote(`${odd}`)} is not a kind of identity`);
  if (field !== undefined) wantField(field);
  const read = (value: unknown): Result<Mmsi> => {
    const parsed = parseIdentity(value);
    if (!parsed.ok) return failures(likelierFirst(parsed.issues, options));
    const issues = issuesHere(parsed.value, options);
    return issues.length === 0 ? success(parsed.value.mmsi) : failures(issues);
  };
  return formSchema('identitySchema', read, { type: 'string', pattern: patternOf(accept) });
}

/** Objections to an identity in this field. */
function issuesHere(
  identity: Identity,
  { accept, field }: NonNullable<Parameters<typeof identitySchema>[0]>,
): readonly Issue[] {
  if (accept !== undefined && !accept.includes(identity.kind)) {
    return [unwanted(identity.mmsi, identity.kind, accept)];
  }
  return field === undefined ? [] : checkIdentity(identity, field).filter(({ grade }) => grade === 'error');
}

/** Where the field takes no ships, eight digits lack no digit of one: what has a suggestion comes first. */
function likelierFirst(
  issues: readonly Issue[],
  options: NonNullable<Parameters<typeof identitySchema>[0]>,
): readonly Issue[] {
  const ship: Identity = { kind: 'ship', mmsi: '200000000' as Mmsi, mid: '200' };
  if (issuesHere(ship, options).length === 0) return issues;
  const offers = ({ suggestion }: Issue): boolean => {
    const offered = parseIdentity(suggestion);
    return offered.ok && issuesHere(offered.value, options).length === 0;
  };
  return [...issues].sort((a, b) => Number(offers(b)) - Number(offers(a)));
}

function unwanted(mmsi: Mmsi, kind: IdentityKind, accept: readonly IdentityKind[]): Issue {
  return issue(
    'identity-kind',
    { kind, accepted: accept },
    { received: `'${mmsi}'`, clause: 'ITU-R M.585-10' },
  );
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
