import type { GeographicArea } from '../../position/index.ts';
import { want } from '../../result/internal.ts';
import type { Call } from '../call.ts';
import type { FirstTelecommand, SecondTelecommand } from '../symbol.ts';
import {
  type ComposeOptions,
  channelDigits,
  composed,
  groupAddress,
  oneOf,
  ownIdentity,
  stationAddress,
  stations,
  wantOptions,
} from './arguments.ts';

/** How the traffic that a call announces will be sent. */
export interface TrafficOptions extends ComposeOptions {
  /** `'telephony-simplex'` unless stated. */
  readonly firstTelecommand?: FirstTelecommand | undefined;
  /** `'medical-transport'` or `'neutral-craft'`, where it applies. */
  readonly secondTelecommand?: SecondTelecommand | null | undefined;
}

/**
 * Urgency or safety traffic announced to all ships.
 *
 * @param options - `from`: own identity; `category`; `channel`: where the voice message follows, 16 unless stated
 * @returns the call
 * @throws TypeError, RangeError when a value has no symbols or is not for such a call
 *
 * Source: ITU-R M.493-16 table A1-4.5; urgency agrees with Japan, Radio Station Operation Regulations.
 *
 * @see {@link composeAreaCall}
 *
 * @example
 * ```ts
 * import { encodeFields, composeAllShipsCall } from 'seahail/call';
 *
 * const call = composeAllShipsCall({ from: '232999871', category: 'safety' });
 * console.log(encodeFields(call).receive); // [ 90, 0, 16 ]
 * ```
 */
export function composeAllShipsCall(
  options: TrafficOptions & {
    readonly category: 'urgency' | 'safety';
    readonly channel?: string | undefined;
  },
): Call<'all-ships-call'> {
  wantOptions(options, 'firstTelecommand', 'secondTelecommand', 'category', 'channel');
  const said = traffic(options, options.category, URGENT, options.channel ?? '16');
  return composed({ kind: 'all-ships-call', to: { kind: 'all-ships' }, ...said }, options);
}

/**
 * Urgency or safety traffic announced to the ships in a rectangle. A call of MF and HF; few VHF sets have it.
 *
 * @param options - `from`: own identity; `area`; `category`; `channel`: 16 unless stated
 * @returns the call
 * @throws TypeError, RangeError when a value has no symbols or is not for such a call
 *
 * Source: ITU-R M.493-16 table A1-4.6.
 *
 * @example
 * ```ts
 * import { encodeFields, composeAreaCall } from 'seahail/call';
 * import { decodeArea } from 'seahail/position';
 * import { valueOf } from 'seahail/result';
 *
 * const area = valueOf(decodeArea('1570070203'));
 * const call = composeAreaCall({ from: '002329990', area, category: 'safety' });
 * console.log(encodeFields(call).address); // [ 15, 70, 7, 2, 3 ]
 * ```
 */
export function composeAreaCall(
  options: TrafficOptions & {
    readonly area: GeographicArea;
    readonly category: 'urgency' | 'safety';
    readonly channel?: string | undefined;
  },
): Call<'area-call'> {
  wantOptions(options, 'firstTelecommand', 'secondTelecommand', 'area', 'category', 'channel');
  const said = traffic(options, options.category, URGENT, options.channel ?? '16');
  want('area', 'a geographic area', options.area);
  return composed({ kind: 'area-call', to: { kind: 'area', area: options.area }, ...said }, options);
}

/**
 * A call to the members of a group, which nobody answers by calling back: they come to the channel named.
 *
 * @param options - `from`: own identity; `to`: identity of the group; `channel`: where to talk; `category`: routine
 * unless stated
 * @returns the call
 * @throws TypeError, RangeError when a value has no symbols, `to` is no group, or the channel is 70, or 16 in a routine
 * call
 *
 * Source: ITU-R M.493-16 table A1-4.8.
 *
 * @see {@link composeIndividualCall}
 *
 * @example
 * ```ts
 * import { encodeFields, composeGroupCall } from 'seahail/call';
 *
 * const call = composeGroupCall({ from: '232999871', to: '023299905', channel: '77' });
 * console.log(encodeFields(call).end); // 127
 * ```
 */
export function composeGroupCall(
  options: TrafficOptions & {
    readonly to: string;
    readonly channel: string;
    readonly category?: 'routine' | 'safety' | 'urgency' | undefined;
  },
): Call<'group-call'> {
  wantOptions(options, 'firstTelecommand', 'secondTelecommand', 'to', 'channel', 'category');
  const to = groupAddress(options.to);
  const said = traffic(options, options.category ?? 'routine', ANY, options.channel);
  return composed({ kind: 'group-call', to, ...said }, options);
}

/**
 * A call to one station. Between ships the caller proposes the channel; to a coast station none need be named.
 *
 * @param options - `from`: own identity; `to`: the station; `channel`: where to talk, none unless stated;
 * `category`: routine unless stated
 * @returns the call
 * @throws TypeError, RangeError when a value has no symbols, `to` is not one station, or the channel is 70, or 16 in a
 * routine call
 *
 * Source: ITU-R M.493-16 tables A1-4.7 and A1-4.9.
 *
 * @see {@link composeIndividualAcknowledgement}
 * @see {@link composeUnableToComply}
 *
 * @example
 * ```ts
 * import { encodeFields, composeIndividualCall } from 'seahail/call';
 *
 * const call = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
 * console.log(encodeFields(call).receive); // [ 90, 0, 72 ]
 * ```
 */
export function composeIndividualCall(
  options: TrafficOptions & {
    readonly to: string;
    readonly channel?: string | null | undefined;
    readonly category?: 'routine' | 'safety' | 'urgency' | undefined;
  },
): Call<'individual-call'> {
  wantOptions(options, 'firstTelecommand', 'secondTelecommand', 'to', 'channel', 'category');
  const to = stationAddress(options.to);
  const said = traffic(options, options.category ?? 'routine', ANY, options.channel ?? null);
  return composed({ kind: 'individual-call', to, ...said }, options);
}

const URGENT = ['urgency', 'safety'] as const;
const ANY = ['routine', 'safety', 'urgency'] as const;

/** What an announcement says beside its address. */
function traffic<Category extends 'routine' | 'safety' | 'urgency'>(
  options: TrafficOptions,
  category: Category,
  allowed: readonly NoInfer<Category>[],
  channel: string | null,
) {
  const from = ownIdentity(options.from);
  oneOf('category', category, allowed);
  const digits = channelDigits(channel);
  // RR Appendix 18 note j) for 70; RR Art. 52 for working on 16, from memory.
  if (digits === '70') throw new RangeError('channel: 70 carries selective calls only, never speech');
  if (digits === '16' && category === 'routine')
    throw new RangeError('channel: a routine call expected a working channel, got 16');
  if (String(options.secondTelecommand).startsWith('acs-remaining-')) {
    throw new RangeError(
      `Second telecommand: expected one for VHF, got ${options.secondTelecommand} of the automatic connection system (MF/HF)`,
    );
  }
  return {
    from,
    category,
    firstTelecommand: options.firstTelecommand ?? 'telephony-simplex',
    secondTelecommand: options.secondTelecommand ?? null,
    channel: digits,
  } as const;
}

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
  wantOptions(options, 'firstTelecommand', 'secondTelecommand', 'to', 'telephone', 'channel', 'end');
  return composed(
    {
      kind: 'automatic-service-call',
      ...stations(options),
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
