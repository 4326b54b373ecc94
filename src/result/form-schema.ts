import type { Issue } from './issue.ts';
import type { Result } from './result.ts';

/**
 * A schema for one field of a form, from text to a value: what libraries for forms, routers, procedures and
 * environments take that follow Standard Schema v1 and Standard JSON Schema v1.
 */
export interface FormSchema<Output> {
  readonly '~standard': {
    readonly version: 1;
    readonly vendor: 'seahail';
    /** Gives the value, or what is wrong with the text. Validates at once, without a promise; issues have all fields of {@link Issue}. */
    readonly validate: (
      value: unknown,
    ) =>
      | { readonly value: Output; readonly issues?: undefined }
      | { readonly issues: readonly [Issue, ...Issue[]] };
    /** For the type checker only. */
    readonly types?: { readonly input: string; readonly output: Output } | undefined;
    /** JSON Schema (draft 2020-12, draft-07 or OpenAPI 3.0) of the text and of the value. */
    readonly jsonSchema: {
      /** Of the text. */
      readonly input: (options: { readonly target: string }) => Record<string, unknown>;
      /** Of the value. */
      readonly output: (options: { readonly target: string }) => Record<string, unknown>;
    };
  };
}

/**
 * Makes the schema of a field from a function that reads it. A suggestion is kept only where the field would take it.
 *
 * @param name - of the function that makes the schema, for its errors
 * @param read - the value of a text, with every demand of the field
 * @param output - JSON Schema of the value
 */
export function formSchema<Output>(
  name: string,
  read: (value: unknown) => Result<Output>,
  output: Readonly<Record<string, unknown>>,
): FormSchema<Output> {
  return {
    '~standard': {
      version: 1,
      vendor: 'seahail',
      validate: (value) => {
        const result = read(value);
        return result.ok
          ? { value: result.value }
          : { issues: eachOf(result.issues, (issue) => withFittingOffer(issue, read)) };
      },
      jsonSchema: {
        input: ({ target }) => jsonSchema(name, target, { type: 'string' }),
        output: ({ target }) => jsonSchema(name, target, output),
      },
    },
  };
}

/** The same number of issues: at least one. */
function eachOf(
  [first, ...others]: readonly [Issue, ...Issue[]],
  change: (issue: Issue) => Issue,
): [Issue, ...Issue[]] {
  return [change(first), ...others.map(change)];
}

/** The issue without its suggestion, where the field would refuse that as well: an offer must lead somewhere. */
function withFittingOffer(issue: Issue, read: (value: unknown) => Result<unknown>): Issue {
  const { suggestion, ...bare } = issue;
  if (suggestion === undefined || read(suggestion).ok) return issue;
  return { ...bare, message: issue.message.replace(`; perhaps ${suggestion}`, '') };
}

function jsonSchema(
  name: string,
  target: string,
  schema: Readonly<Record<string, unknown>>,
): Record<string, unknown> {
  switch (target) {
    case 'draft-2020-12':
      return { $schema: 'https://json-schema.org/draft/2020-12/schema', ...schema };
    case 'draft-07':
      return { $schema: 'http://json-schema.org/draft-07/schema#', ...schema };
    case 'openapi-3.0':
      return { ...schema };
    default:
      throw new RangeError(
        `${name}: expected JSON Schema draft-2020-12, draft-07 or openapi-3.0, got ${String(target)}`,
      );
  }
}
