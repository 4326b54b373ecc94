import { type Call, encodeFields } from '../../call/index.ts';
import { type Notice, type Result, success } from '../../result/index.ts';
import { want } from '../../result/internal.ts';
import { writeDscCall } from '../message/dsc-call.ts';
import { DSC_CALL } from '../message/layout.ts';
import type { NetworkFrame } from '../transport/frame.ts';
import { type MessageOptions, messageFrames } from './message-frames.ts';

/**
 * Writes a received call as the frames of PGN 129808, for a display on the network.
 *
 * It makes the display believe that a radio received this call: write only calls that were received, under an address of
 * your own that you have claimed, never under that of another node. A display raises an alarm for a distress alert.
 * Who builds such a node answers for its certification; this function does not claim an address.
 *
 * @param call - a call as received
 * @param options - source address, sequence counter, instant of receipt
 * @returns the frames in order, with notices about what the message has no place for
 * @throws RangeError when the address or the counter is out of range, or the call has a value without symbols
 *
 * Source: public list of parameter groups of IEC 61162-3. deviation: D-network-3
 *
 * @see {@link createNetworkReader}
 *
 * @example
 * ```ts
 * import { composePositionReply } from 'seahail/call';
 * import { writeCallFrames } from 'seahail/network';
 * import { valueOf } from 'seahail/result';
 *
 * const call = composePositionReply({ from: '232999142', to: '232999871', position: null, time: null });
 * console.log(valueOf(writeCallFrames(call, { source: 40 })).length); // 9
 * ```
 */
export function writeCallFrames(
  call: Call,
  options: MessageOptions & {
    /** When the radio received it, epoch milliseconds. */
    readonly receivedAt?: number | undefined;
  },
): Result<readonly NetworkFrame[]> {
  want('writeCallFrames', 'options with source', options, 'source');
  const { values, notices } = writeDscCall(encodeFields(call), options.receivedAt ?? null);
  return success<readonly NetworkFrame[]>(
    messageFrames(DSC_CALL, values, options),
    notices satisfies Notice[],
  );
}
