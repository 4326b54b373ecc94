import type { Call, ExpansionSet } from '../call/index.ts';
import type { ResolvedTime } from '../position/index.ts';
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
  readonly positionTime: ResolvedTime | null;
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
  | OtherReading<Source>
  | DamagedReading<Source>;
