// The interfaces of Standard Schema v1 and Standard JSON Schema v1, an open specification that provides for copies.

/** A schema that libraries for forms, routes and procedures accept, after the open Standard Schema specification. */
export interface StandardSchema<Input = unknown, Output = Input> {
  readonly '~standard': StandardSchemaProps<Input, Output>;
}

/** The one property of a {@link StandardSchema}. */
export interface StandardSchemaProps<Input = unknown, Output = Input> {
  readonly version: 1;
  readonly vendor: string;
  /** Gives the value as read, or what is wrong with it. */
  readonly validate: (
    value: unknown,
    options?: StandardSchemaOptions | undefined,
  ) => StandardSchemaResult<Output> | Promise<StandardSchemaResult<Output>>;
  /** For the type checker only. */
  readonly types?: StandardSchemaTypes<Input, Output> | undefined;
}

/** Room for options of the calling library; none is used here. */
export interface StandardSchemaOptions {
  readonly libraryOptions?: Record<string, unknown> | undefined;
}

/** Input and output type of a schema, for the type checker only. */
export interface StandardSchemaTypes<Input = unknown, Output = Input> {
  readonly input: Input;
  readonly output: Output;
}

/** Outcome of validation. */
export type StandardSchemaResult<Output> = StandardSchemaSuccess<Output> | StandardSchemaFailure;

/** Validation went well. */
export interface StandardSchemaSuccess<Output> {
  readonly value: Output;
  readonly issues?: undefined;
}

/** Validation found something. */
export interface StandardSchemaFailure {
  readonly issues: ReadonlyArray<StandardSchemaIssue>;
}

/** One finding of a validation. */
export interface StandardSchemaIssue {
  readonly message: string;
  readonly path?: ReadonlyArray<PropertyKey | StandardSchemaPathSegment> | undefined;
}

/** One step of a path, where a library does not use the bare key. */
export interface StandardSchemaPathSegment {
  readonly key: PropertyKey;
}

/** Gives JSON Schema for either side of a schema, after the open Standard JSON Schema specification. */
export interface StandardJsonSchemaConverter {
  /** JSON Schema of what is taken in. */
  readonly input: (options: StandardJsonSchemaOptions) => Record<string, unknown>;
  /** JSON Schema of what comes out. */
  readonly output: (options: StandardJsonSchemaOptions) => Record<string, unknown>;
}

/** Which JSON Schema is wanted. */
export interface StandardJsonSchemaOptions {
  readonly target: 'draft-2020-12' | 'draft-07' | 'openapi-3.0' | ({} & string);
  readonly libraryOptions?: Record<string, unknown> | undefined;
}
