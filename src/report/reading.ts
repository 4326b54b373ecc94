import type { Call, ExpansionSet } from '../call/index.ts';
import type { ResolvedTime } from '../position/index.ts';
import type { Issue, Notice } from '../result/index.ts';
import type { AisReport } from './ais-report.ts';
import type { Direction } from './direction.ts';
import type { TargetFields, WaypointFields } from './point.ts';
import type { ReceiverFix } from './receiver-fix.ts';
import type { Sentence } from './sentence.ts';

interface ReadingBase {
  /** Line on which the (first) sentence stood, counted from 1. */
  readonly line: number;
  /** Characters, or bytes when bytes were pushed, before that line. */
  readonly offset: number;
  /**
   * When it was received, epoch milliseconds: as given with the chunk, else by the TAG block, else by the
   * last date and time in the stream, else by the option `now`, else `null`.
   */
  readonly at: number | null;
  readonly notices: readonly Notice[];
}

/** A call, from a `DSC` sentence and the `DSE` sentences that belong to it. */
export interface CallReading extends ReadingBase {
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
  readonly positionTime: ResolvedTime | null;
  /** The sentences it was read from, as they stood. */
  readonly sentences: readonly Sentence[];
}

/** A `DSE` sentence that belongs to no call: a query, or the rest of a call that was not heard. */
export interface ExpansionReading extends ReadingBase {
  readonly kind: 'expansion';
  /** Nine digits, or the field as it stood. */
  readonly station: string;
  readonly flag: 'automatic' | 'query' | 'reply' | 'unknown';
  readonly sets: readonly ExpansionSet[];
  readonly sentence: Sentence;
}

/** Own position, from `RMC`, `GLL`, `GGA` or `GNS`. */
export interface OwnFixReading extends ReadingBase {
  readonly kind: 'own-fix';
  readonly fix: ReceiverFix;
  readonly sentence: Sentence;
}

/** Date and time, from `ZDA`. */
export interface ClockReading extends ReadingBase {
  readonly kind: 'clock';
  /** Epoch milliseconds. */
  readonly instant: number;
  readonly sentence: Sentence;
}

/** A waypoint, from `WPL`. */
export interface WaypointReading extends ReadingBase {
  readonly kind: 'waypoint';
  readonly waypoint: WaypointFields;
  readonly sentence: Sentence;
}

/** A target, from `TLL`. */
export interface TargetReading extends ReadingBase {
  readonly kind: 'target';
  readonly target: TargetFields;
  readonly sentence: Sentence;
}

/** What an AIS message says of a station, from `VDM` (others) or `VDO` (own ship). */
export interface AisReading extends ReadingBase {
  readonly kind: 'ais';
  /** Whether it is what the own transponder sent. */
  readonly own: boolean;
  readonly channel: 'A' | 'B' | null;
  readonly report: AisReport;
  readonly sentences: readonly Sentence[];
}

/** A sound sentence that this library has no meaning for, or whose fields hold none. */
export interface OtherReading extends ReadingBase {
  readonly kind: 'other';
  readonly sentence: Sentence;
}

/** Something that is no sentence, or a damaged one. */
export interface DamagedReading extends ReadingBase {
  readonly kind: 'damaged';
  /** As it stood; empty when it was too long to keep. */
  readonly text: string;
  /** Characters thrown away unread because the line had no end. */
  readonly dropped: number;
  /** At least one: what is wrong with each piece it fell into, the first few of them. */
  readonly issues: readonly Issue[];
}

/** One thing that a stream said. */
export type Reading =
  | CallReading
  | ExpansionReading
  | OwnFixReading
  | ClockReading
  | WaypointReading
  | TargetReading
  | AisReading
  | OtherReading
  | DamagedReading;
