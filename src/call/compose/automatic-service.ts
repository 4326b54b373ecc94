import type { Call } from '../call.ts';
import type { TrafficOptions } from './announcement.ts';
import { channelDigits, oneOf, ownIdentity, stationAddress, want } from './arguments.ts';
import { composed } from './composed.ts';

/**
 * A call of the semi-automatic or automatic telephone service through a coast station. Few such stations are left.
 *
 * @param options - `from`: own identity; `to`: the coast station; `telephone`: 1 to 16 digits; `channel`; `end`:
 * `'request'` unless stated
 * @returns the call
 * @throws TypeError, RangeError when a value has no symbols
 *
 * Source: ITU-R M.493-16 table A1-4.9, low confidence.
 *
 * @example
 * ```ts
 * import { encodeFields, composeAutomaticServiceCall } from 'seahail/call';
 *
 * const call = composeAutomaticServiceCall({ from: '232999871', to: '002329990', telephone: '5550123' });
 * console.log(encodeFields(call).telephone); // [ 105, 5, 55, 1, 23 ]
 * ```
 */
export function composeAutomaticServiceCall(
  options: TrafficOptions & {
    readonly to: string;
    readonly telephone?: string | null | undefined;
    readonly channel?: string | null | undefined;
    readonly end?: Call<'automatic-service-call'>['end'] | undefined;
  },
): Call<'automatic-service-call'> {
  want('composeAutomaticServiceCall', 'options', options);
  return composed(
    {
      kind: 'automatic-service-call',
      to: stationAddress(options.to),
      from: ownIdentity(options.from),
      category: 'routine',
      firstTelecommand: options.firstTelecommand ?? 'telephony-duplex',
      secondTelecommand: options.secondTelecommand ?? null,
      channel: channelDigits(options.channel ?? null),
      telephone: options.telephone ?? null,
      end: oneOf('end', options.end ?? 'request', ['request', 'answer', 'end']),
    },
    options,
  );
}
