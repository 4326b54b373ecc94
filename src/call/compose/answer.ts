import type { ReportedPosition, TimeOfDay } from '../../position/index.ts';
import type { Call, CallAddress } from '../call.ts';
import { type Reason, reasons } from '../symbol.ts';
import {
  type ComposeOptions,
  channelDigits,
  composed,
  ofKind,
  oneOf,
  ownIdentity,
  stationAddress,
  stations,
  wantOptions,
} from './arguments.ts';

/** How to answer a call. */
export interface AnswerOptions<Asked extends Call> extends Pick<ComposeOptions, 'expansion'> {
  /** The call that is answered: its sender becomes the address, its category is kept. */
  readonly call: Asked;
  /** Own identity; the address of the call unless stated. */
  readonly from?: string | undefined;
}

/**
 * The answer "able to comply", on the channel of the call or another.
 *
 * @param options - `call`: the call answered; `channel`: another channel than the one proposed
 * @returns the answer
 * @throws TypeError, RangeError when the call names no sender or a value has no symbols
 *
 * Source: ITU-R M.493-16 tables A1-4.7 and A1-4.9.
 *
 * @example
 * ```ts
 * import { composeIndividualAcknowledgement, composeIndividualCall } from 'seahail/call';
 *
 * const call = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
 * const answer = composeIndividualAcknowledgement({ call, channel: '77' });
 * console.log(answer.from, answer.channel); // 232999142 77
 * ```
 */
export function composeIndividualAcknowledgement(
  options: AnswerOptions<Call<'individual-call'>> & { readonly channel?: string | undefined },
): Call<'individual-acknowledgement'> {
  wantOptions(options, 'call', 'channel');
  const { channel } = options;
  const call = ofKind('call', options.call, ['individual-call']);
  const elements =
    channel === undefined
      ? { channel: call.channel, ...(call.frequencies && { frequencies: call.frequencies }) }
      : { channel: channelDigits(channel) };
  return composed(
    {
      kind: 'individual-acknowledgement',
      ...parties(options),
      category: call.category ?? 'routine',
      firstTelecommand: call.firstTelecommand,
      secondTelecommand: call.secondTelecommand,
      ...elements,
    },
    options,
  );
}

/**
 * The answer "unable to comply", with its reason.
 *
 * @param options - `call`: the call answered; `reason`: `'no-reason'` unless stated
 * @returns the answer, which names no channel
 * @throws TypeError, RangeError when the call names no sender or the reason is none of the ten
 *
 * Source: ITU-R M.493-16 tables A1-4.7 and A1-4.9; reasons with first telecommand 104 only: Japan, MPT
 * Notification 567 of 1990.
 *
 * @example
 * ```ts
 * import { encodeFields, composeIndividualCall, composeUnableToComply } from 'seahail/call';
 *
 * const call = composeIndividualCall({ from: '232999871', to: '232999142', channel: '72' });
 * const fields = encodeFields(composeUnableToComply({ call, reason: 'busy' }));
 * console.log(fields.telecommand1, fields.telecommand2); // 104 102
 * ```
 */
export function composeUnableToComply(
  options: AnswerOptions<Call<'individual-call'> | Call<'position-request'>> & {
    readonly reason?: Reason | undefined;
  },
): Call<'unable-to-comply'> {
  wantOptions(options, 'call', 'reason');
  const call = ofKind('call', options.call, ['individual-call', 'position-request']);
  return composed(
    {
      kind: 'unable-to-comply',
      ...parties(options),
      category: call.category ?? (call.kind === 'position-request' ? 'safety' : 'routine'),
      reason: oneOf(
        'reason',
        options.reason ?? 'no-reason',
        reasons.rows.map(([, name]) => name),
      ),
      channel: null,
    },
    options,
  );
}

/**
 * Own position: in answer to a request, or sent unsolicited with `from` and `to`.
 *
 * @param options - `call`: the request answered, or `from` and `to`; `position` and `time`
 * @returns the report; in the category of the request, safety when unsolicited
 * @throws TypeError, RangeError when a station is missing or a value has no symbols
 *
 * Source: ITU-R M.493-16 table A1-4.7.
 *
 * @see {@link composePositionRequest}
 *
 * @example
 * ```ts
 * import { composePositionReply, composePositionRequest } from 'seahail/call';
 * import { toReportedPosition } from 'seahail/position';
 *
 * const call = composePositionRequest({ from: '232999871', to: '232999142' });
 * const position = toReportedPosition({ latitude: 56.338833, longitude: -6.502 });
 * const reply = composePositionReply({ call, position, time: { hour: 9, minute: 15 } });
 * console.log(reply.to.mmsi, reply.unsolicited); // 232999871 false
 * ```
 */
export function composePositionReply(
  options: {
    /** `null`, ten 9s on the air, unless stated. */
    readonly position?: ReportedPosition | null | undefined;
    /** UTC of the position; `null`, 8888 on the air, unless stated. */
    readonly time?: TimeOfDay | null | undefined;
  } & (AnswerOptions<Call<'position-request'>> | (ComposeOptions & { readonly to: string })),
): Call<'position-reply'> {
  wantOptions(options, 'call', 'to', 'position', 'time');
  const asked = 'call' in options;
  if (asked) ofKind('call', options.call, ['position-request']);
  return composed(
    {
      kind: 'position-reply',
      ...(asked ? parties(options) : stations(options)),
      category: (asked ? options.call.category : null) ?? 'safety',
      position: options.position ?? null,
      time: options.time ?? null,
      unsolicited: !asked,
    },
    options,
  );
}

/**
 * The answer to a test call.
 *
 * @param options - `call`: the test call answered
 * @returns the answer
 * @throws TypeError, RangeError when the call names no sender
 *
 * Source: Japan, MPT Notification 567 of 1990, figure 5; ITU-R M.493-16 table A1-4.7.
 *
 * @example
 * ```ts
 * import { encodeFields, composeTestAcknowledgement, composeTestCall } from 'seahail/call';
 *
 * const call = composeTestCall({ from: '232999871', to: '002329990' });
 * console.log(encodeFields(composeTestAcknowledgement({ call })).end); // 122
 * ```
 */
export function composeTestAcknowledgement(
  options: AnswerOptions<Call<'test-call'>>,
): Call<'test-acknowledgement'> {
  wantOptions(options, 'call');
  const call = ofKind('call', options.call, ['test-call']);
  return composed(
    { kind: 'test-acknowledgement', ...parties(options), category: call.category ?? 'safety' },
    options,
  );
}

/**
 * The answer to polling.
 *
 * @param options - `call`: the polling call answered
 * @returns the answer
 * @throws TypeError, RangeError when the call names no sender
 *
 * Source: ITU-R M.493-16 table A1-4.9.
 *
 * @example
 * ```ts
 * import { composePollingAcknowledgement, composePollingCall } from 'seahail/call';
 *
 * const call = composePollingCall({ from: '232999871', to: '232999142' });
 * console.log(composePollingAcknowledgement({ call }).from); // 232999142
 * ```
 */
export function composePollingAcknowledgement(
  options: AnswerOptions<Call<'polling-call'>>,
): Call<'polling-acknowledgement'> {
  wantOptions(options, 'call');
  const call = ofKind('call', options.call, ['polling-call']);
  return composed(
    { kind: 'polling-acknowledgement', ...parties(options), category: call.category ?? 'routine' },
    options,
  );
}

function parties(options: AnswerOptions<Call & { readonly to: CallAddress<'station'> }>) {
  return {
    to: stationAddress(options.call.from),
    from: ownIdentity(options.from ?? options.call.to.mmsi),
  };
}
