import type { Call } from '../call/index.ts';
import type { ExpansionSet } from '../call/internal.ts';
import type { Coordinates, resolveTime } from '../position/index.ts';
import type { Issue, Notice } from '../result/index.ts';
import type { AisReport } from './ais-report.ts';
import type { Direction } from './direction.ts';
import type { TargetFields, WaypointFields } from './point.ts';
import type { ReceiverFix } from './receiver-fix.ts';
import type { Sentence } from './sentence.ts';

/** What every reading has. */
export interface ReadingBase<Source> {
  /** Line or frame that it begins with, counted from 1. */
  readonly line: number;
  /** Characters before that line, bytes when bytes were pushed; 0 for frames. */
  readonly offset: number;
  /**
   * When it was received, epoch milliseconds: as given with the chunk, else by the TAG block, else by the
   * last date and time in the stream, else by the option `now`, else `null`.
   */
  readonly at: number | null;
  readonly notices: readonly Notice[];
  /** What it was read from, as received, in order; empty when nothing could be kept. */
  readonly sources: readonly Source[];
}

/** A call, from a `DSC` sentence and the `DSE` sentences that belong to it. */
export interface CallReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'call';
  /**
   * Number of the call in this stream, from 1. A later reading with the same number is about the same call:
   * finer (its expansion came) or the same again (`repeat`). Keep the latest.
   */
  readonly event: number;
  /** 0 the first time; 1, 2 … when the same alert or report was sent again. */
  readonly repeat: number;
  /** `'provisional'` while an announced expansion is still awaited: another reading of the event will follow. */
  readonly stage: 'provisional' | 'final';
  readonly call: Call;
  readonly direction: Direction;
  /** Talker of the `DSC` sentence. */
  readonly talker: string;
  /** The time of the call's position with its date, when both a time and an instant of receipt are known. */
  readonly positionTime: ReturnType<typeof resolveTime> | null;
}

/** A `DSE` sentence that belongs to no call: a query, or the rest of a call that was not heard. */
export interface ExpansionReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'expansion';
  /** Nine digits, or the field as it stood. */
  readonly station: string;
  readonly flag: 'automatic' | 'query' | 'reply' | 'unknown';
  readonly sets: readonly ExpansionSet[];
}

/** Own position, from `RMC`, `GLL`, `GGA` or `GNS`. */
export interface OwnFixReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'own-fix';
  readonly fix: ReceiverFix;
}

/** Date and time, from `ZDA`. */
export interface ClockReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'clock';
  /** Epoch milliseconds. */
  readonly instant: number;
}

/** A waypoint, from `WPL`. */
export interface WaypointReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'waypoint';
  readonly waypoint: WaypointFields;
}

/** A target, from `TLL`. */
export interface TargetReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'target';
  readonly target: TargetFields;
}

/** What an AIS message says of a station, from `VDM` (others) or `VDO` (own ship). */
export interface AisReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'ais';
  /** Whether it is what the own transponder sent. */
  readonly own: boolean;
  readonly channel: 'A' | 'B' | null;
  readonly report: AisReport;
}

/**
 * Course, speed, heading or magnetic variation of the own vessel, as one message has them; what it does not have, or
 * marks as not available, is absent.
 */
export interface MotionReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'motion';
  /** Course over ground, degrees true. */
  readonly course?: number;
  /** Course over ground, degrees magnetic. */
  readonly magneticCourse?: number;
  /** Speed over ground, knots. */
  readonly speed?: number;
  /** Degrees true. */
  readonly heading?: number;
  /** Degrees magnetic. */
  readonly magneticHeading?: number;
  /** Degrees, east positive. */
  readonly variation?: number;
}

/** What a VHF radio is set to. */
export interface RadioReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'radio';
  /** Frequency that it receives on, kHz, or `null`. */
  readonly receiveKHz: number | null;
  /** Frequency that it transmits on, kHz, or `null`. */
  readonly transmitKHz: number | null;
  /** Channel as the radio writes it, e.g. `'16'` or `'900016'`. */
  readonly channel: string | null;
  /** Watts. */
  readonly power: number | null;
}

/** A man-overboard device or button. */
export interface ManOverboardReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'man-overboard';
  /** `'activated'` by the device or a button, `'test'`, or `null` for anything else. */
  readonly status: 'activated' | 'test' | null;
  readonly position: Coordinates | null;
  /** Epoch milliseconds of the position, or `null`. */
  readonly instant: number | null;
  /** Identity of the vessel it belongs to: nine digits, or `null`. */
  readonly mmsi: string | null;
}

/** A safety related text that AIS carries (ITU-R M.1371, messages 12 and 14). */
export interface SafetyTextReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'safety-text';
  /** Nine digits. */
  readonly from: string;
  /** Nine digits, or `null` for everyone. */
  readonly to: string | null;
  readonly text: string;
}

/** Who a node of the network is. */
export interface NodeReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'node';
  /** Its address, 0 to 251; 254 when it has none. */
  readonly source: number;
  /** The eight bytes of its NAME as sixteen hexadecimal digits, highest first, or `null` in other messages. */
  readonly name: string | null;
  /** Maker, function and class by the numbers of their public lists, or `null`. */
  readonly manufacturer: number | null;
  readonly function: number | null;
  readonly deviceClass: number | null;
  /** Model, from the product information, or `null`. */
  readonly model: string | null;
}

/** A sound sentence that this library has no meaning for, or whose fields hold none. */
export interface OtherReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'other';
}

/** Something that is no sentence, or a damaged one. */
export interface DamagedReading<Source = Sentence> extends ReadingBase<Source> {
  readonly kind: 'damaged';
  /** As it stood; empty when it was too long to keep. */
  readonly text: string;
  /** Characters thrown away unread because the line had no end. */
  readonly dropped: number;
  /** At least one: what is wrong with each piece it fell into, the first few of them. */
  readonly issues: readonly Issue[];
}

/** One thing that a stream said. */
export type Reading<Source = Sentence> =
  | CallReading<Source>
  | ExpansionReading<Source>
  | OwnFixReading<Source>
  | ClockReading<Source>
  | WaypointReading<Source>
  | TargetReading<Source>
  | AisReading<Source>
  | MotionReading<Source>
  | RadioReading<Source>
  | ManOverboardReading<Source>
  | SafetyTextReading<Source>
  | NodeReading<Source>
  | OtherReading<Source>
  | DamagedReading<Source>;
