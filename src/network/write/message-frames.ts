import type { ParameterField, ValuesOf } from '../field/field.ts';
import { encodePayload, type ParameterGroup } from '../message/payload.ts';
import { fastPacketFrames } from '../transport/fast-packet.ts';
import { EVERYONE, encodeIdentifier, type NetworkFrame } from '../transport/frame.ts';

/** How a message is sent. */
export interface MessageOptions {
  /** Own address on the network, 0 to 251, as claimed. */
  readonly source: number;
  /** Sequence counter of a fast packet, 0 to 7: one higher for each message of a parameter group. 0 unless given. */
  readonly sequence?: number | undefined;
}

/** The frames of a message to everyone. */
export function messageFrames<const Fields extends readonly ParameterField[]>(
  layout: ParameterGroup<Fields>,
  values: ValuesOf<Fields>,
  { source, sequence = 0 }: MessageOptions,
): NetworkFrame[] {
  if (!(Number.isInteger(source) && source >= 0 && source <= 251))
    throw new RangeError(`source: expected a whole number from 0 to 251, got ${source}`);
  const address = { pgn: layout.pgn, priority: layout.priority, source, destination: EVERYONE };
  const payload = encodePayload(layout, values);
  return layout.fast
    ? fastPacketFrames(address, payload, sequence)
    : [{ id: encodeIdentifier(address), data: payload }];
}
