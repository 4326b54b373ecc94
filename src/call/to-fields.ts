import type { Call } from './call.ts';
import type { CallFields } from './fields.ts';
import { callFromFields } from './from-fields.ts';
import { canonicalFields } from './kind/canonical-fields.ts';
import { same } from './same.ts';

/**
 * The fields of a call: as received while they still mean this call, else as the tables of ITU-R M.493
 * compose it. So what was received goes out again symbol by symbol, and a call changed by spreading is
 * encoded anew.
 *
 * @param call - any call
 * @returns its fields, each as the symbols sent
 * @throws TypeError, RangeError when a value has no symbols, such as an identity of eight digits
 *
 * @see {@link callFromFields}
 *
 * @example
 * ```ts
 * import { callToFields, composeTestCall } from 'seahail/call';
 *
 * const fields = callToFields(composeTestCall({ from: '232999871', to: '002329990' }));
 * console.log(fields.telecommand1); // 118
 * ```
 */
export function callToFields(call: Call): CallFields {
  const { asReceived } = call;
  if (asReceived !== undefined && same(callFromFields(asReceived).call, call)) return asReceived;
  return canonicalFields(call);
}
