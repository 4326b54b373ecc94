import type { Call } from '../call.ts';
import { type ComposeOptions, composed, oneOf, stations, wantOptions } from './arguments.ts';

/**
 * Asks a station for its position. The radio of the other station may answer automatically if its owner allows it.
 *
 * @param options - `from`; `to`: the station asked; `category`: safety unless stated, routine for sets of an older kind; `finer`: ask
 * for decimals of the minute too
 * @returns the request
 * @throws TypeError, RangeError when an identity is not for its place
 *
 * Source: ITU-R M.493-16 table A1-4.7 and M.821-1.
 *
 * @see {@link composePositionReply}
 *
 * @example
 * ```ts
 * import { encodeFields, composePositionRequest } from 'seahail/call';
 *
 * const fields = encodeFields(composePositionRequest({ from: '232999871', to: '232999142' }));
 * console.log(fields.category, fields.telecommand1, fields.end); // 108 121 117
 * ```
 */
export function composePositionRequest(
  options: ComposeOptions & {
    readonly to: string;
    readonly category?: 'safety' | 'routine';
    readonly finer?: boolean | undefined;
  },
): Call<'position-request'> {
  wantOptions(options, 'to', 'category', 'finer');
  const { finer = false } = options;
  const requested = [100, ...(options.expansion?.requested ?? [])];
  const expansion = finer ? { ...options.expansion, requested: [...new Set(requested)] } : options.expansion;
  return composed(
    {
      kind: 'position-request',
      ...stations(options),
      category: oneOf('category', options.category ?? 'safety', ['safety', 'routine']),
    },
    { expansion },
  );
}

/**
 * A test call, which the sets of most coast stations answer by themselves. It is no call for a talk.
 *
 * @param options - `from`; `to`: the station asked
 * @returns the test call
 * @throws TypeError, RangeError when an identity is not for its place
 *
 * Source: Japan, MPT Notification 567 of 1990, figure 5; ITU-R M.493-16 table A1-4.7.
 *
 * @see {@link composeTestAcknowledgement}
 *
 * @example
 * ```ts
 * import { encodeFields, composeTestCall } from 'seahail/call';
 *
 * console.log(encodeFields(composeTestCall({ from: '232999871', to: '002329990' })).telecommand1); // 118
 * ```
 */
export function composeTestCall(options: ComposeOptions & { readonly to: string }): Call<'test-call'> {
  wantOptions(options, 'to');
  return composed({ kind: 'test-call', ...stations(options), category: 'safety' }, options);
}

/**
 * Asks whether a station is in range.
 *
 * @param options - `from`; `to`: the station asked
 * @returns the polling call
 * @throws TypeError, RangeError when an identity is not for its place
 *
 * Source: ITU-R M.493-16 table A1-4.9.
 *
 * @see {@link composePollingAcknowledgement}
 *
 * @example
 * ```ts
 * import { encodeFields, composePollingCall } from 'seahail/call';
 *
 * console.log(encodeFields(composePollingCall({ from: '232999871', to: '232999142' })).telecommand1); // 103
 * ```
 */
export function composePollingCall(options: ComposeOptions & { readonly to: string }): Call<'polling-call'> {
  wantOptions(options, 'to');
  return composed({ kind: 'polling-call', ...stations(options), category: 'routine' }, options);
}
