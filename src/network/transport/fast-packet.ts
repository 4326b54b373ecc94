import { encodeIdentifier, type FrameAddress, type NetworkFrame } from './frame.ts';

/** A message as it was put together again: one frame, or a fast packet. */
export interface WholePacket extends FrameAddress {
  /** When its last frame was received, epoch milliseconds, or `null`. */
  readonly at: number | null;
  /** The bytes of the message, without the two or one header bytes of its frames. */
  readonly payload: Uint8Array;
}

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

/** What putting frames together yields. */
export interface Assembled {
  readonly messages: readonly WholePacket[];
  readonly torn: readonly TornPacket[];
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

const NOTHING: Assembled = { messages: [], torn: [] };

interface OpenPacket {
  readonly address: FrameAddress;
  readonly sequence: number;
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
  /** Frames that came again since, the same to the byte. */
  copies: number;
}

/** Puts fast packets together, whatever the order of their frames. */
export interface FastPacketAssembler {
  /** Takes one frame of a fast-packet parameter group. */
  push(frame: NetworkFrame, address: FrameAddress): Assembled;
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
  let count = 0;

  /** Gives up the oldest packet as long as its pause is over, or too many are open. */
  function giveUp(at: number | null, torn: TornPacket[]): void {
    for (const [key, packet] of open) {
      if (open.size <= MOST_OPEN && !isStale(packet, at, count)) break;
      open.delete(key);
      if (!packet.done) torn.push(tornOf(packet));
    }
  }

  function start(key: number, address: FrameAddress, sequence: number): OpenPacket {
    const packet: OpenPacket = {
      address,
      sequence,
      bytes: new Uint8Array(BODY * 32),
      sizes: new Uint8Array(32),
      mask: 0,
      length: -1,
      at: null,
      count,
      done: false,
      copies: 0,
    };
    // The oldest leaves first: a packet that starts over goes to the end of the line.
    open.delete(key);
    open.set(key, packet);
    return packet;
  }

  function add(packet: OpenPacket, number: number, data: Uint8Array): void {
    packet.mask |= 1 << number;
    packet.sizes[number] = data.length - 1;
    for (let index = 1; index < data.length; index++)
      packet.bytes[number * BODY + index - 1] = data[index] as number;
    if (number === 0) packet.length = data[1] as number;
  }

  return {
    push(frame, address) {
      count++;
      const { data } = frame;
      const at = frame.at ?? null;
      const header = data[0];
      const torn: TornPacket[] = [];
      if (header === undefined || ((header & 31) === 0 && data.length < 2)) {
        return { messages: [], torn: [runt(address, at, header ?? 0)] };
      }
      const number = header & 31;
      const sequence = header >>> 5;
      const key = ((sequence * 2 ** 18 + address.pgn) * 256 + address.destination) * 256 + address.source;
      let packet = open.get(key);
      if (packet !== undefined && isStale(packet, at, count)) {
        if (!packet.done) torn.push(tornOf(packet));
        packet = undefined;
      }
      if (packet !== undefined && hasFrame(packet, number)) {
        if (isCopy(packet, number, data)) {
          packet.copies |= 1 << number;
          return { messages: [], torn };
        }
        const last = packet;
        if (!last.done) torn.push(tornOf(last));
        packet = start(key, address, sequence);
        // The copies since were the beginning of this message, alike in both.
        if (last.done) keepCopies(packet, last);
      } else if (packet?.done === true) {
        return { messages: [], torn };
      } else if (packet !== undefined && number === 0 && wouldComplete(packet, data)) {
        torn.push(tornOf(packet));
        packet = start(key, address, sequence);
      }
      if (packet === undefined) {
        packet = start(key, address, sequence);
        giveUp(at, torn);
      }
      add(packet, number, data);
      packet.at = at;
      packet.count = count;
      const payload = wholePayload(packet);
      if (payload === null) return torn.length === 0 ? NOTHING : { messages: [], torn };
      packet.done = true;
      return { messages: [{ ...address, at, payload }], torn };
    },
    flush() {
      const torn = [...open.values()].filter(({ done }) => !done).map(tornOf);
      open.clear();
      return torn;
    },
  };
}

function hasFrame(packet: OpenPacket, number: number): boolean {
  return (packet.mask & (1 << number)) !== 0;
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

function keepCopies(packet: OpenPacket, done: OpenPacket): void {
  packet.bytes.set(done.bytes);
  packet.sizes.set(done.sizes);
  packet.mask = done.copies;
  if (hasFrame(packet, 0)) packet.length = done.length;
}

/** Frames that a message of this length takes. */
function framesFor(length: number): number {
  return length <= 6 ? 1 : 1 + Math.ceil((length - 6) / 7);
}

function wouldComplete(packet: OpenPacket, first: Uint8Array): boolean {
  const frames = framesFor(first[1] as number);
  return frames > 1 && frames <= 32 && hasFirst(packet.mask | 1, frames);
}

/** Whether the frames from 0 on are all there. */
function hasFirst(mask: number, frames: number): boolean {
  const needed = frames === 32 ? -1 : 2 ** frames - 1;
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
  return bytes.slice(1, 1 + length);
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
 * Cuts a payload into the frames of a fast packet. The last frame is filled up with FF.
 *
 * @param address - priority, parameter group number, source and destination
 * @param payload - at most 223 bytes
 * @param sequence - counter of the sender for this parameter group, 0 to 7, one higher for each message
 * @returns the frames in order
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
