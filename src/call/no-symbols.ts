import { valueTerms } from './terms.ts';

type Name<Key> = Key extends `call-value.${infer Value}` ? Value : never;

export type ValueName = Name<keyof typeof valueTerms>;

/** What makes a notice of an error about a value without symbols; `received` is how the value is shown. */
export interface NoSymbols {
  readonly value: ValueName;
  readonly received?: string;
}

// Beside the errors, so that a program that catches one finds a plain RangeError.
const known = /* @__PURE__ */ new WeakMap<Error, NoSymbols>();

/** An error about a value without symbols; `error` is one that says more, or that another module threw. */
export function noSymbols(value: ValueName, received?: string, error?: unknown): unknown {
  const reason = error ?? new RangeError(`${valueTerms[`call-value.${value}`]}, got ${received}`);
  if (reason instanceof RangeError) known.set(reason, { value, ...(received !== undefined && { received }) });
  return reason;
}

/** Which value has no symbols, `undefined` for an error about something else. */
export function whyNoSymbols(error: unknown): NoSymbols | undefined {
  return error instanceof Error ? known.get(error) : undefined;
}
