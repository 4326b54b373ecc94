/**
 * The CAN network between radio and display: frames of IEC 61162-3 in, readings and calls out, and back.
 *
 * What a radio passes on as PGN 129808 becomes the same `Call` as a `DSC` sentence gives.
 *
 * Guide: [Network: what does the bus say?](../../docs/guide/network.md).
 *
 * @packageDocumentation
 */

// Reading frames and logs.

export { formatFrameLine, readFrameLine } from './log/candump.ts';
export { isNetworkLog, readNetworkLog } from './log/read-log.ts';
export {
  createNetworkReader,
  type NetworkReader,
  type NetworkReaderOptions,
  type NetworkReading,
} from './reader/reader.ts';

// Writing calls and waypoints, and what a node of its own needs.

export type { MessageOptions } from './write/message-frames.ts';
export { writeAisFrames } from './write/write-ais.ts';
export { writeCallFrames } from './write/write-call.ts';
export { writeNodeFrames } from './write/write-node.ts';
export { writeOwnPositionFrames } from './write/write-own-position.ts';
export { writeWaypointFrames } from './write/write-waypoint.ts';

// Why a display shows nothing.

export { NETWORK_FAULTS, type NetworkFaultId } from './fault/fault-list.ts';
export { findNetworkFaults, type NetworkFaultReport } from './fault/find-faults.ts';

// One frame at a time.

export type { NetworkFrame } from './transport/frame.ts';

// The layout of each parameter group, for pages and for messages that readings have no kind for.

export type { ParameterField, ParameterValue } from './field/field.ts';
export { decodeMessage } from './message/decode-message.ts';
export { PARAMETER_GROUPS } from './message/layout.ts';
export type { ParameterGroup } from './message/payload.ts';
