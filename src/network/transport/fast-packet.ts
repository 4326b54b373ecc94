import { encodeIdentifier, type FrameAddress, type NetworkFrame } from './frame.ts';

/** A fast packet that was never whole. */
export interface TornPacket extends FrameAddress {
  readonly at: number | null;
  /** Sequence counter, 0 to 7. */
  readonly sequence: number;
  /** Frames that arrived. */
  readonly frames: number;
  /** Frames that the first one announces, or `null` when the first one is missing. */
  readonly announced: number | null;
  /** What arrived, in frame order, with the header bytes left out. */
  readonly payload: Uint8Array;
}

/** The most bytes that a fast packet carries: 6 in the first frame and 7 in each of 31 others. */
export const MOST_PAYLOAD = 223;

/** Bytes of a frame after its first. */
const BODY = 7;

/** A frame this much later than the one before belongs to another message. deviation: D-network-1 */
const PAUSE_MS = 750;
/** The same for frames without an instant: about as many frames as a full bus carries in the pause. */
const PAUSE_FRAMES = 1200;
/** Packets kept open at once. Six were the most in recordings of a busy bus; more only cost memory. */
const MOST_OPEN = 256;

interface OpenPacket {
  address: FrameAddress;
  sequence: number;
  /** What follows the first byte of each frame, seven bytes a frame: the length, then the payload. */
  readonly bytes: Uint8Array;
  /** How many of the seven each frame had. */
  readonly sizes: Uint8Array;
  /** Bit n is set when frame n has arrived. */
  mask: number;
  /** Total length from the first frame, or -1. */
  length: number;
  at: number | null;
  /** Count of frames on the bus when the last one arrived. */
  count: number;
  /** Set once it was given out: frames that come again are copies. */
  done: boolean;
  /**
   * Frames that came again since it was done, the same to the byte. They may be the beginning of the next message, so
   * that one starts with them; there the bits say which frames another one may still take the place of.
   */
  copies: number;
}

/** Puts fast packets together, whatever the order of their frames. */
export interface FastPacketAssembler {
  /**
   * Takes one frame of a fast-packet parameter group.
   *
   * @param frame - the frame
   * @param address - what its identifier says
   * @param torn - packets that it shows to be torn are added here
   * @returns the payload that it completes, valid until the next frame, or `null`
   */
  push(frame: NetworkFrame, address: FrameAddress, torn: TornPacket[]): Uint8Array | null;
  /** Gives up what is still open. */
  flush(): readonly TornPacket[];
}

/**
 * A packet is known by source, destination, parameter group and sequence counter. Frames may come in any order
 * and more than once. Three rules keep parts of two messages apart: a different frame under a number already
 * there starts over, so does a pause, and a first frame that would complete a packet at once is taken for the
 * beginning of another one.
 */
export function createFastPacketAssembler(): FastPacketAssembler {
  const open = new Map<number, OpenPacket>();
  // Packets given up: their memory serves again.
  const spare: OpenPacket[] = [];
  let count = 0;

  /** Gives up the oldest packet as long as its pause is over, or too many are open. */
  function giveUp(at: number | null, torn: TornPacket[]): void {
    for (const [key, packet] of open) {
      if (open.size <= MOST_OPEN && !isStale(packet, at, count)) break;
      open.delete(key);
      if (!packet.done) torn.push(tornOf(packet));
      packet.done = true;
      spare.push(packet);
    }
  }

  function restart(key: number, packet: OpenPacket, address: FrameAddress, torn: TornPacket[]): void {
    if (!packet.done) torn.push(tornOf(packet));
    const kept = packet.done ? packet.copies : 0;
    packet.address = address;
    packet.mask = kept;
    packet.copies = kept;
    if (!has(kept, 0)) packet.length = -1;
    packet.done = false;
    // The oldest leaves first: a packet that starts over goes to the end of the line.
    open.delete(key);
    open.set(key, packet);
  }

  return {
    push(frame, address, torn) {
      count++;
      const { data } = frame;
      const at = frame.at ?? null;
      const header = data[0];
      if (header === undefined || ((header & 31) === 0 && data.length < 2)) {
        torn.push(runt(address, at, header ?? 0));
        return null;
      }
      const number = header & 31;
      const sequence = header >>> 5;
      // Parameter group, destination and source, with the sequence counter in place of the priority.
      const key = (frame.id & 0x3ffffff) | (sequence << 26);
      let packet = open.get(key);
      if (packet === undefined || isStale(packet, at, count)) {
        packet ??= spare.pop() ?? emptyPacket();
        packet.sequence = sequence;
        packet.copies = 0;
        restart(key, packet, address, torn);
        packet.at = at;
        packet.count = count;
        giveUp(at, torn);
      } else if (has(packet.mask, number)) {
        const mayGiveWay = !packet.done && has(packet.copies, number);
        if (isCopy(packet, number, data)) {
          packet.copies = packet.done ? packet.copies | (1 << number) : packet.copies & ~(1 << number);
          return null;
        }
        if (!mayGiveWay) restart(key, packet, address, torn);
      } else if (packet.done) return null;
      else if (number === 0 && wouldComplete(packet, data)) restart(key, packet, address, torn);
      add(packet, number, data);
      packet.at = at;
      packet.count = count;
      const payload = wholePayload(packet);
      if (payload !== null) {
        packet.done = true;
        packet.copies = 0;
      }
      return payload;
    },
    flush() {
      const torn = [...open.values()].filter(({ done }) => !done).map(tornOf);
      open.clear();
      return torn;
    },
  };
}

function emptyPacket(): OpenPacket {
  return {
    address: { priority: 0, pgn: 0, source: 0, destination: 0 },
    sequence: 0,
    bytes: new Uint8Array(BODY * 32),
    sizes: new Uint8Array(32),
    mask: 0,
    length: -1,
    at: null,
    count: 0,
    done: true,
    copies: 0,
  };
}

function add(packet: OpenPacket, number: number, data: Uint8Array): void {
  const { bytes, sizes } = packet;
  packet.mask |= 1 << number;
  sizes[number] = data.length - 1;
  const from = number * BODY - 1;
  for (let index = 1; index < data.length; index++) bytes[from + index] = data[index] as number;
  if (number === 0) packet.length = data[1] as number;
}

function has(mask: number, number: number): boolean {
  return (mask & (1 << number)) !== 0;
}

function isStale(packet: OpenPacket, at: number | null, count: number): boolean {
  if (at !== null && packet.at !== null) return Math.abs(at - packet.at) > PAUSE_MS;
  return count - packet.count > PAUSE_FRAMES;
}

function isCopy(packet: OpenPacket, number: number, data: Uint8Array): boolean {
  if (packet.sizes[number] !== data.length - 1) return false;
  for (let index = 1; index < data.length; index++)
    if (packet.bytes[number * BODY + index - 1] !== data[index]) return false;
  return true;
}

/** Frames that a message of this length takes. */
function framesFor(length: number): number {
  // Six bytes in the first, seven in each of the others.
  return Math.floor(length / 7) + 1;
}

function wouldComplete(packet: OpenPacket, first: Uint8Array): boolean {
  const frames = framesFor(first[1] as number);
  return frames > 1 && frames <= 32 && hasFirst(packet.mask | 1, frames);
}

/** Whether the frames from 0 on are all there. */
function hasFirst(mask: number, frames: number): boolean {
  const needed = frames === 32 ? -1 : (1 << frames) - 1;
  return (mask & needed) === needed;
}

function wholePayload({ length, mask, bytes, sizes }: OpenPacket): Uint8Array | null {
  if (length < 0 || length > MOST_PAYLOAD) return null;
  const frames = framesFor(length);
  if (!hasFirst(mask, frames)) return null;
  for (let number = 0; number < frames; number++) {
    // A short frame would shift all that follows it.
    if ((sizes[number] as number) < Math.min(BODY, 1 + length - number * BODY)) return null;
  }
  return bytes.subarray(1, 1 + length);
}

function tornOf({ address, at, sequence, bytes, sizes, mask, length }: OpenPacket): TornPacket {
  const kept = Array.from({ length: 32 }, (_, number) => number).filter((number) => (mask >>> number) & 1);
  return {
    ...address,
    at,
    sequence,
    frames: kept.length,
    announced: length < 0 ? null : framesFor(length),
    payload: Uint8Array.from(
      kept.flatMap((number) => [
        ...bytes.subarray(number * BODY + (number === 0 ? 1 : 0), number * BODY + (sizes[number] as number)),
      ]),
    ),
  };
}

/** A frame without room for the header bytes. */
function runt(address: FrameAddress, at: number | null, header: number): TornPacket {
  return { ...address, at, sequence: header >>> 5, frames: 1, announced: null, payload: new Uint8Array(0) };
}

/**
 * Cuts a payload of at most 223 bytes into the frames of a fast packet; the last one is filled up with FF. `sequence` is
 * the counter of the sender for this parameter group, 0 to 7, one higher for each message.
 *
 * @throws RangeError when the payload is too long or the counter out of range
 */
export function fastPacketFrames(
  address: FrameAddress,
  payload: Uint8Array,
  sequence: number,
): NetworkFrame[] {
  if (payload.length > MOST_PAYLOAD)
    throw new RangeError(`payload: expected at most ${MOST_PAYLOAD} bytes, got ${payload.length}`);
  if (!(Number.isInteger(sequence) && sequence >= 0 && sequence <= 7))
    throw new RangeError(`sequence: expected a whole number from 0 to 7, got ${sequence}`);
  const id = encodeIdentifier(address);
  const frames: NetworkFrame[] = [];
  let sent = 0;
  for (let number = 0; number < framesFor(payload.length); number++) {
    const data = new Uint8Array(8).fill(0xff);
    data[0] = sequence * 32 + number;
    if (number === 0) data[1] = payload.length;
    const from = number === 0 ? 2 : 1;
    data.set(payload.subarray(sent, sent + 8 - from), from);
    sent += 8 - from;
    frames.push({ id, data });
  }
  return frames;
}
