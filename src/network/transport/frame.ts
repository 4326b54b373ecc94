/** One frame as it was on the bus: classical CAN with a 29-bit identifier. */
export interface NetworkFrame {
  /** The 29-bit identifier, without the flag bits that drivers put above it. */
  readonly id: number;
  /** Up to eight bytes. */
  readonly data: Uint8Array;
  /** When it was received, epoch milliseconds; fractions are kept. Omitted when not known. */
  readonly at?: number;
}

/** What the identifier of a frame says. */
export interface FrameAddress {
  /** 0 (highest) to 7. */
  readonly priority: number;
  /** Parameter group number, 0 to 262143. */
  readonly pgn: number;
  /** Source address, 0 to 255: 0 to 251 are usable, 254 has no address, 255 is everyone. */
  readonly source: number;
  /** Destination address; 255 for everyone. */
  readonly destination: number;
}

/** Destination that addresses every node. */
export const EVERYONE = 255;

/** PDU formats below this carry a destination in place of the low byte of the parameter group number. */
const FIRST_BROADCAST_FORMAT = 240;

/**
 * Splits a 29-bit identifier; bits above the 29th are ignored.
 *
 * Source: SAE J1939-21 and ISO 11783-3, as restated in the documentation of the Linux kernel (`j1939`).
 */
export function addressOf(id: number): FrameAddress {
  const format = (id >>> 16) & 0xff;
  const specific = (id >>> 8) & 0xff;
  const addressed = format < FIRST_BROADCAST_FORMAT;
  return {
    priority: (id >>> 26) & 7,
    pgn: ((id >>> 8) & 0x3ff00) + (addressed ? 0 : specific),
    source: id & 0xff,
    destination: addressed ? specific : EVERYONE,
  };
}

/**
 * Builds a 29-bit identifier.
 *
 * @throws RangeError when a number is out of range, or a destination other than 255 is given for a parameter
 *   group that everyone receives
 */
export function encodeIdentifier({ priority, pgn, source, destination }: FrameAddress): number {
  requireWhole('priority', priority, 7);
  requireWhole('pgn', pgn, 0x3ffff);
  requireWhole('source', source, 255);
  requireWhole('destination', destination, 255);
  const addressed = ((pgn >>> 8) & 0xff) < FIRST_BROADCAST_FORMAT;
  if (addressed && (pgn & 0xff) !== 0)
    throw new RangeError(`pgn: expected a low byte of 0 for an addressed group, got ${pgn}`);
  if (!addressed && destination !== EVERYONE)
    throw new RangeError(`destination: expected 255 for PGN ${pgn}, got ${destination}`);
  return priority * 2 ** 26 + pgn * 256 + (addressed ? destination * 256 : 0) + source;
}

function requireWhole(name: string, value: number, most: number): void {
  if (!(Number.isInteger(value) && value >= 0 && value <= most))
    throw new RangeError(
      `${name}: expected a whole number from 0 to ${most}, got ${typeof value === 'number' ? value : typeof value}`,
    );
}
