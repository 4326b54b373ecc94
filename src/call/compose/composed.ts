import type { Call, ExpansionData } from '../call.ts';
import { canonicalFields } from '../kind/canonical-fields.ts';

/** What every call can take along beside its message. */
export interface WithExpansion {
  /** Data sets of ITU-R M.821-1; finer minutes of a position go along by themselves. */
  readonly expansion?: ExpansionData | undefined;
}

/**
 * The call, with its expansion if there is one, once every value in it is known to have symbols.
 *
 * @throws RangeError when one has none
 */
export function composed<Kind extends Call>(call: Kind, options: WithExpansion): Kind {
  const whole = options.expansion === undefined ? call : { ...call, expansion: options.expansion };
  canonicalFields(whole);
  return whole;
}
