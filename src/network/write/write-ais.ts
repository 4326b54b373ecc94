import type { AisReport } from '../../report/index.ts';
import { messagesOf, STATUS_CODES } from '../../report/internal.ts';
import { want } from '../../result/internal.ts';
import { writeVariableText } from '../field/text.ts';
import {
  AIS_AID,
  AIS_AIRCRAFT,
  AIS_CLASS_A,
  AIS_CLASS_B,
  AIS_CLASS_B_EXTENDED,
  AIS_STATIC_A,
  AIS_STATIC_B_DATA,
  AIS_STATIC_B_NAME,
  AIS_TIME,
} from '../message/layout.ts';
import type { NetworkFrame } from '../transport/frame.ts';
import { type MessageOptions, messageFrames } from './message-frames.ts';

const DAY = 86_400_000;
const NO_SIZE = { length: null, beam: null, fromStarboard: null, fromBow: null } as const;

/**
 * Writes an AIS report for a display on the network, as the parameter group of its message.
 *
 * It is for passing on what a transponder received or sent. A report does not hold everything the message had:
 * dimensions, rate of turn, destination and the like go out as not available. Never write a report for a station that
 * sent none: displays take it for a vessel. Write under an address that your node has claimed.
 *
 * @param report - as a reader gives it; its `message` decides the parameter group
 * @param options - source address, sequence counter, own or other, channel
 * @returns the frames in order; two parameter groups for a message 24 with the name and a call sign or type
 * @throws RangeError when the message has no parameter group here, the identity is not nine digits, the IMO number not
 *   seven, or the address or the counter is out of range; other numbers are not checked
 *
 * Source: public list of parameter groups of IEC 61162-3 (D-network-2).
 *
 * @example
 * ```ts
 * import { writeAisFrames } from 'seahail/network';
 *
 * const report = { message: 18, mmsi: '232999142', station: 'ship-class-b', speed: 5 } as const;
 * console.log(writeAisFrames(report, { source: 40 }).length); // 4
 * ```
 */
export function writeAisFrames(
  report: AisReport,
  options: MessageOptions & {
    /** Whether it is what the own transponder sent. */
    readonly own?: boolean | undefined;
    /** Channel it was received on; A unless given. */
    readonly channel?: 'A' | 'B' | null | undefined;
  },
): NetworkFrame[] {
  want('writeAisFrames', 'an AIS report', report, 'mmsi');
  want('writeAisFrames', 'options with source', options, 'source');
  return messagesOf(report).flatMap((message) => framesOf(message, options));
}

function framesOf(report: AisReport, options: Parameters<typeof writeAisFrames>[1]): NetworkFrame[] {
  const { own = false, channel = 'A' } = options;
  const transceiver = (own ? 2 : 0) + (channel === 'B' ? 1 : 0);
  const head = { message: report.message, repeat: 0, mmsi: Number(report.mmsi), transceiver };
  const place = {
    latitude: report.position?.latitude ?? 91,
    longitude: report.position?.longitude ?? 181,
    accuracy: report.accurate === true ? 1 : 0,
    raim: 0,
  };
  const moving = { ...head, ...place, ...motionOf(report), second: report.second ?? 60, commState: 0 };
  const { name = '', callSign = '', type = 0 } = report;
  switch (report.message) {
    case 1:
    case 2:
    case 3: {
      const status = report.status === undefined ? 15 : STATUS_CODES[report.status];
      return messageFrames(
        AIS_CLASS_A,
        { ...moving, turn: null, status, manoeuvre: 0, sequence: 0 },
        options,
      );
    }
    case 4:
    case 11: {
      const { instant } = report;
      const date = instant === undefined ? null : Math.floor(instant / DAY);
      const time = instant === undefined ? null : (instant % DAY) / 1000;
      return messageFrames(
        AIS_TIME,
        { ...head, ...place, date, time, commState: 0, fixingDevice: 0 },
        options,
      );
    }
    case 5: {
      const voyage = { etaDate: null, etaTime: null, draught: null, destination: '@'.repeat(20) };
      const fixed = { version: 0, fixingDevice: 0, dte: 1, imo: Number(report.imo ?? 0) };
      const words = { callSign: filled(callSign, 7), name: filled(name, 20), type };
      return messageFrames(AIS_STATIC_A, { ...head, ...NO_SIZE, ...voyage, ...fixed, ...words }, options);
    }
    case 9:
      return messageFrames(
        AIS_AIRCRAFT,
        { ...moving, altitude: report.altitude ?? null, regional: 0, dte: 1 },
        options,
      );
    case 18:
      return messageFrames(AIS_CLASS_B, { ...moving, ...CLASS_B_FLAGS, commStateKind: 1 }, options);
    case 19: {
      const words = { name: filled(name, 20), type, fixingDevice: 0, dte: 1 };
      return messageFrames(
        AIS_CLASS_B_EXTENDED,
        { ...moving, ...CLASS_B_FLAGS, ...NO_SIZE, ...words },
        options,
      );
    }
    case 21: {
      const flags = {
        virtual: report.virtual === true ? 1 : 0,
        offPosition: report.offPosition === true ? 1 : 0,
      };
      const rest = {
        type,
        assigned: 0,
        fixingDevice: 0,
        filling: 7,
        status: 0,
        name: writeVariableText(name),
      };
      return messageFrames(AIS_AID, { ...moving, ...NO_SIZE, ...flags, ...rest }, options);
    }
    case 24:
      if (callSign === '' && report.type === undefined)
        return messageFrames(AIS_STATIC_B_NAME, { ...head, name: filled(name, 20) }, options);
      return messageFrames(
        AIS_STATIC_B_DATA,
        {
          ...head,
          ...NO_SIZE,
          type,
          vendor: filled('', 7),
          callSign: filled(callSign, 7),
          motherShip: null,
          fixingDevice: 0,
        },
        options,
      );
    default:
      throw new RangeError(`message: expected 1 to 5, 9, 11, 18, 19, 21 or 24, got ${report.message}`);
  }
}

/** Carrier-sense unit without display, with selective calling unknown, by its message alone. */
const CLASS_B_FLAGS = {
  regional: 0,
  regionalB: 0,
  carrierSense: 1,
  display: 0,
  dsc: 0,
  band: 1,
  message22: 0,
  assigned: 0,
} as const;

function motionOf({ course, speed, heading }: AisReport): {
  course: number | null;
  speed: number | null;
  heading: number | null;
} {
  return {
    course: course === undefined ? null : radians(course),
    speed: speed === undefined ? null : (speed * 1852) / 3600,
    heading: heading === undefined ? null : radians(heading),
  };
}

function radians(degrees: number): number {
  return ((degrees % 360) * Math.PI) / 180;
}

/** AIS texts are filled with `@`: a display was seen to show other filling as letters. */
function filled(text: string, length: number): string {
  return text.slice(0, length).padEnd(length, '@');
}
