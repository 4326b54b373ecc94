import type { NetworkFrame } from '../transport/frame.ts';

/** Link type CAN_SOCKETCAN of the list of link-layer header types. */
const CAN_SOCKETCAN = 227;
const FILE_HEADER = 24;
const RECORD_HEADER = 16;
/** Identifier, length and padding before the data. */
const CAN_HEADER = 8;
/** Flags of the identifier: extended, remote, error (Linux `can.h`). */
const [EXTENDED, REMOTE, ERROR] = [0x80000000, 0x40000000, 0x20000000] as const;

/** Why a capture file cannot be read, or where it stops. */
export type CaptureFault = 'link-type' | 'cut-off';

export interface Capture {
  /** In order; `null` for a record that is no frame of the network. */
  readonly frames: Iterable<NetworkFrame | null>;
  readonly fault: CaptureFault | null;
}

/**
 * Reads a capture file of link type 227 (CAN over SocketCAN).
 *
 * Source: libpcap file format, magic numbers of microseconds and nanoseconds, as its manual page gives them; the
 * link-layer header is the SocketCAN frame with its identifier in network byte order.
 *
 * @returns `null` when the bytes are no capture file
 */
export function readCapture(bytes: Uint8Array): Capture | null {
  if (bytes.length < FILE_HEADER) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const magic = view.getUint32(0, true);
  const little = magic === 0xa1b2c3d4 || magic === 0xa1b23c4d;
  const ticks = magic === 0xa1b2c3d4 || magic === 0xd4c3b2a1 ? 1e3 : 1e6;
  if (!little && magic !== 0xd4c3b2a1 && magic !== 0x4d3cb2a1) return null;
  if ((view.getUint32(20, little) & 0xffff) !== CAN_SOCKETCAN) return { frames: [], fault: 'link-type' };
  const end = lastWhole(view, little);
  return {
    frames: { [Symbol.iterator]: () => records(bytes, view, little, ticks) },
    fault: end === bytes.length ? null : 'cut-off',
  };
}

/** Where the last whole record ends. */
function lastWhole(view: DataView, little: boolean): number {
  let at = FILE_HEADER;
  while (at + RECORD_HEADER <= view.byteLength) {
    const next = at + RECORD_HEADER + view.getUint32(at + 8, little);
    if (next > view.byteLength) break;
    at = next;
  }
  return at;
}

function* records(
  bytes: Uint8Array,
  view: DataView,
  little: boolean,
  ticks: number,
): Generator<NetworkFrame | null> {
  for (let at = FILE_HEADER; at + RECORD_HEADER <= bytes.length; ) {
    const length = view.getUint32(at + 8, little);
    const from = at + RECORD_HEADER;
    if (from + length > bytes.length) return;
    const instant = view.getUint32(at, little) * 1000 + view.getUint32(at + 4, little) / ticks;
    at = from + length;
    yield length < CAN_HEADER ? null : frameAt(bytes, view, from, length, instant);
  }
}

function frameAt(
  bytes: Uint8Array,
  view: DataView,
  from: number,
  length: number,
  at: number,
): NetworkFrame | null {
  const flagged = view.getUint32(from, false);
  const size = bytes[from + 4] as number;
  const plain = (flagged & EXTENDED) !== 0 && (flagged & (REMOTE | ERROR)) === 0;
  if (!plain || size > 8 || CAN_HEADER + size > length) return null;
  const data = bytes.slice(from + CAN_HEADER, from + CAN_HEADER + size);
  return { id: flagged & 0x1fffffff, data, at };
}
