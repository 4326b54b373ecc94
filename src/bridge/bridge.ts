import {
  type NetworkFrame,
  type NetworkReading,
  writeAisFrames,
  writeCallFrames,
  writeOwnPositionFrames,
  writeWaypointFrames,
} from '../network/index.ts';
import type { Reading, Readings } from '../report/index.ts';
import type { Notice } from '../result/index.ts';
import { requireOptions } from '../result/internal.ts';
import { writeAisSentences, writeOwnPosition, writeSentences, writeWaypoint } from '../sentence/index.ts';
import { notice } from './texts.ts';

const CLAUSE = 'common practice';

/** Carries readings from cable to cable. */
export interface Bridge {
  /** Writes what a serial reader gave as frames. */
  sentencesToNetwork(reading: Reading): {
    /** In order; none when nothing is carried. */
    readonly frames: readonly NetworkFrame[];
    readonly notices: readonly Notice[];
  };
  /** Writes what a network reader gave as sentences. */
  networkToSentences(reading: NetworkReading): {
    /** Without line ends, in order; none when nothing is carried. */
    readonly sentences: readonly string[];
    readonly notices: readonly Notice[];
  };
}

/**
 * A bridge between the two cables: calls, own position, waypoints and AIS go across; for anything else, and for what
 * the other side cannot express, a notice says so. A call goes across when its reading is final.
 *
 * Join two cables in one direction only, or what went across comes back. The network may steer the boat and a radio
 * sends the position it is given in a distress alert: carry only what the instruments of this vessel said.
 *
 * @param options - own address on the network
 * @returns the bridge, which counts the messages of each parameter group
 *
 * @example
 * ```ts
 * import { createBridge } from 'seahail/bridge';
 * import { readSentences } from 'seahail/sentence';
 *
 * const bridge = createBridge({ source: 40 });
 * const [reading] = readSentences('$CDDSC,20,2329991420,08,21,26,,,,,R,*2D\r\n');
 * if (reading) console.log(bridge.sentencesToNetwork(reading).frames.length); // 9
 * ```
 */
export function createBridge(
  options: {
    /** Own address on the network, 0 to 251, as claimed; needed to write frames. */
    readonly source?: number | undefined;
  } = {},
): Bridge {
  const { source } = requireOptions('createBridge', options, ['source']);
  let sequence = -1;
  const next = (): { source: number; sequence: number } => {
    if (source === undefined) throw new RangeError('source: expected an address on the network, got none');
    sequence = (sequence + 1) % 8;
    return { source, sequence };
  };
  return {
    sentencesToNetwork(reading) {
      const done = attempt(reading.kind, () => framesOf(reading, next));
      return { frames: done.out, notices: done.notices };
    },
    networkToSentences(reading) {
      const done = attempt(reading.kind, () => sentencesOf(reading));
      return { sentences: done.out, notices: done.notices };
    },
  };
}

interface Carried<Out> {
  readonly out: readonly Out[];
  readonly notices: readonly Notice[];
}

/** Writers refuse values that no cable has; what was received may hold such values. */
function attempt<Out>(kind: keyof Readings, write: () => Carried<Out>): Carried<Out> {
  try {
    return write();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    // The words of the error are for a programmer: they are beside the text, not in it.
    const more = { received: error.message, clause: CLAUSE };
    return { out: [], notices: [notice('bridge-refused', { kind }, more)] };
  }
}

function framesOf(reading: Reading, next: () => { source: number; sequence: number }): Carried<NetworkFrame> {
  switch (reading.kind) {
    case 'call': {
      if (reading.stage !== 'final') return { out: [], notices: [] };
      if (reading.direction !== 'received')
        return { out: [], notices: [notice('bridge-commanded-call', {}, { clause: CLAUSE })] };
      const at = reading.at ?? undefined;
      const written = writeCallFrames(reading.call, { ...next(), receivedAt: at });
      return written.ok
        ? { out: written.value, notices: written.notices }
        : { out: [], notices: written.issues };
    }
    case 'own-position':
      return { out: writeOwnPositionFrames(reading.fix, next()), notices: [] };
    case 'waypoint':
      return { out: writeWaypointFrames(reading.waypoint, next()), notices: [] };
    case 'ais':
      return {
        out: writeAisFrames(reading.report, { ...next(), own: reading.own, channel: reading.channel }),
        notices: [aisWithout()],
      };
    default:
      return notCarried(reading.kind);
  }
}

function sentencesOf(reading: NetworkReading): Carried<string> {
  switch (reading.kind) {
    case 'call': {
      const { sentences, notices } = writeSentences(reading.call, { direction: 'received' });
      return { out: sentences, notices };
    }
    case 'own-position':
      return { out: [writeOwnPosition(reading.fix)], notices: [] };
    case 'waypoint':
      return { out: [writeWaypoint(reading.waypoint)], notices: [] };
    case 'ais':
      return {
        out: writeAisSentences(reading.report, { own: reading.own, channel: reading.channel }),
        notices: [aisWithout()],
      };
    default:
      return notCarried(reading.kind);
  }
}

function notCarried<Out>(kind: keyof Readings): Carried<Out> {
  return { out: [], notices: [notice('bridge-not-carried', { kind }, { clause: CLAUSE })] };
}

function aisWithout(): Notice {
  return notice('bridge-partly-carried', {}, { clause: CLAUSE });
}
