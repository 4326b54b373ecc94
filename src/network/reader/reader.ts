import { symbolsOf } from '../../call/internal.ts';
import type { NetworkMessage, Reading, Readings } from '../../report/index.ts';
import type { Issue } from '../../result/index.ts';
import { quote } from '../../result/internal.ts';
import { hexOf } from '../field/text.ts';
import { CLAUSE, issue } from '../texts.ts';
import { isFast } from '../transport/fast-groups.ts';
import { createFastPacketAssembler, type TornPacket } from '../transport/fast-packet.ts';
import { addressOf, type FrameAddress, type NetworkFrame } from '../transport/frame.ts';
import { createContext, type MessageReader, other, READERS } from './message-reading.ts';

/** Options of a network reader. */
export interface NetworkReaderOptions {
  /** Own identity, nine digits: calls to one station are addressed to it, which their message does not carry. */
  readonly own?: string | undefined;
  /** Instant of receipt, epoch milliseconds, for frames without one. */
  readonly now?: number | undefined;
  /**
   * Whether a message of a parameter group that no reading has a kind for is kept as an `'other'` reading (without the
   * option) or skipped, together with what is torn of it. Most of a busy bus is of such groups.
   */
  readonly other?: 'keep' | 'skip' | undefined;
}

/** One thing that the network said. */
export type NetworkReading = Reading<keyof Readings, NetworkMessage>;

/** Reads the network frame by frame. */
export interface NetworkReader {
  /**
   * Takes the next frame.
   *
   * @param frame - as received; anything that is not a frame gives a `damaged` reading
   * @returns what the message that this frame completes says; mostly nothing
   */
  push(frame: NetworkFrame): NetworkReading[];
  /** Ends the stream: fast packets that were never whole give `damaged` readings. */
  flush(): NetworkReading[];
}

/**
 * A reader for the frames of the CAN network of IEC 61162-3. Frames of a fast packet may come in any order and more
 * than once, with other senders between; memory is bounded; nothing that arrives makes it throw.
 *
 * Only read with it. Who writes on this network needs an address of his own and answers for what other devices do
 * with his messages.
 *
 * @param options - own identity, and an instant for frames without one
 * @returns the reader
 * @throws TypeError when the own identity is not text, RangeError when it is not nine digits or the instant is not finite
 *
 * @see {@link readNetworkLog}
 *
 * @example
 * ```ts
 * import { createNetworkReader } from 'seahail/network';
 *
 * const reader = createNetworkReader();
 * const data = Uint8Array.from([0x00, 0x4b, 0x94, 0x21, 0x88, 0xf7, 0x1f, 0xfc]);
 * for (const reading of reader.push({ id: 0x09f80123, data })) console.log(reading.kind); // own-position
 * ```
 */
export function createNetworkReader(options: NetworkReaderOptions = {}): NetworkReader {
  const reader = createNumberedReader(options);
  let frames = 0;
  return {
    push: (frame) => reader.push(frame, ++frames),
    flush: () => reader.flush(frames),
  };
}

/** A reader that is told the number of each frame or line. */
export interface NumberedReader {
  push(frame: NetworkFrame, line: number): NetworkReading[];
  flush(line: number): NetworkReading[];
}

export function createNumberedReader(options: NetworkReaderOptions): NumberedReader {
  const { own, now, other: others = 'keep' } = options ?? {};
  if (own !== undefined && typeof own !== 'string')
    throw new TypeError(`own: expected text, got ${typeof own}`);
  if (own !== undefined && !/^\d{9}$/.test(own))
    throw new RangeError(`own: expected nine digits, got ${quote(own)}`);
  if (now !== undefined && !Number.isFinite(now))
    throw new RangeError(`now: expected epoch milliseconds, got ${String(now)}`);
  if (others !== 'keep' && others !== 'skip')
    throw new TypeError(
      `other: expected 'keep' or 'skip', got ${typeof others === 'string' ? quote(others) : typeof others}`,
    );
  const assembler = createFastPacketAssembler();
  const context = createContext(own === undefined ? null : symbolsOf(`${own}0`));
  const senders = new Map<number, Sender>();
  const instant = now ?? null;
  const torn: TornPacket[] = [];

  function senderOf(id: number): Sender {
    let sender = senders.get(id);
    if (sender === undefined) {
      sender = newSender(id);
      if (senders.size >= MOST_SENDERS) senders.clear();
      senders.set(id, sender);
    }
    return sender;
  }

  return {
    push(frame, line) {
      if (!isFrame(frame)) return [damaged(line, instant, '', [notFrame(frame)])];
      const sender = senderOf(frame.id);
      const { read } = sender;
      if (read === undefined && others === 'skip') return [];
      const payload = sender.fast ? assembler.push(frame, sender, torn) : frame.data;
      const lost =
        torn.length === 0 ? [] : torn.splice(0).map((packet) => tornReading(packet, line, instant));
      if (payload === null) return lost;
      const sources = [messageOf(sender, sender.label, payload)];
      const base = { line, offset: 0, at: frame.at ?? instant, notices: [], sources };
      const said = read === undefined ? other(base) : read(payload, base, context);
      if (lost.length > 0) return lost.concat(said);
      return Array.isArray(said) ? said : [said];
    },
    flush: (line) => assembler.flush().map((packet) => tornReading(packet, line, instant)),
  };
}

/** What an identifier says, worked out once. */
interface Sender extends FrameAddress {
  readonly fast: boolean;
  readonly read: MessageReader | undefined;
  /** How the line for people begins. */
  readonly label: string;
}

/** Identifiers remembered; a busy bus has some hundreds. */
const MOST_SENDERS = 4096;

function newSender(id: number): Sender {
  const address = addressOf(id);
  const { pgn } = address;
  return { ...address, fast: isFast(pgn), read: READERS.get(pgn), label: labelOf(address) };
}

function isFrame(frame: unknown): frame is NetworkFrame {
  // A getter may throw.
  try {
    const { id, data, at } = frame as NetworkFrame;
    return (
      Number.isInteger(id) &&
      id >= 0 &&
      id <= 0x1fffffff &&
      data instanceof Uint8Array &&
      data.length <= 8 &&
      (at === undefined || Number.isFinite(at))
    );
  } catch {
    return false;
  }
}

function labelOf({ pgn, source }: FrameAddress): string {
  return `PGN ${pgn} from ${source}: `;
}

function messageOf(
  { pgn, priority, source, destination }: FrameAddress,
  label: string,
  bytes: Uint8Array,
): NetworkMessage {
  const payload = hexOf(bytes);
  return { kind: 'network-message', pgn, priority, source, destination, payload, raw: label + payload };
}

function tornReading(packet: TornPacket, line: number, now: number | null): NetworkReading {
  const { pgn, source, sequence, frames, announced } = packet;
  const more = {
    at: [`PGN ${pgn}`, `source ${source}`, `sequence ${sequence}`],
    received: String(frames),
    clause: CLAUSE,
  };
  const torn =
    announced === null
      ? issue('network-packet-no-start', { pgn, source }, more)
      : issue('network-packet-torn', { pgn, source, announced }, more);
  const message = messageOf(packet, labelOf(packet), packet.payload);
  return { ...damaged(line, packet.at ?? now, message.raw, [torn]), sources: [message] };
}

function damaged(line: number, at: number | null, text: string, issues: readonly Issue[]): NetworkReading {
  return { kind: 'damaged', line, offset: 0, at, notices: [], sources: [], text, dropped: 0, issues };
}

function notFrame(value: unknown): Issue {
  return issue('network-not-a-frame', {}, { received: typeof value, clause: CLAUSE });
}
