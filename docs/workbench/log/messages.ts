import type { NetworkFaultReport, NetworkReading } from 'seahail/network';
import type { Reading } from 'seahail/report';
import type { Notice } from 'seahail/result';
import type { FaultReport } from 'seahail/sentence';

/** What the reader's worker is told. */
export type ToLogReader =
  | {
      readonly kind: 'read';
      readonly source: string | Blob;
      readonly direction: Reading<'call'>['direction'];
      readonly own?: string;
      readonly unchecked: boolean;
      /** Whether positions are also written as waypoints into the repaired log. */
      readonly waypoints: boolean;
    }
  | { readonly kind: 'more'; readonly list: ListName; readonly from: number }
  | { readonly kind: 'repaired-log' };

/** Which of the three lists. */
export type ListName = 'calls' | 'faults' | 'repaired';

/** A call of the log, with how often the same was sent again. */
export interface CallEntry {
  readonly reading: Pick<Reading<'call'>, 'line' | 'at' | 'call'>;
  /** The lines or messages that it came in. */
  readonly raw: readonly string[];
  readonly again: number;
}

/** A line that is no sound sentence, or a sound one that somebody should look at. */
export interface FaultEntry {
  readonly line: number;
  readonly text: string;
  readonly issues: readonly Notice[];
  readonly damaged: boolean;
}

/** A line as it came and as it goes on; `was` is `null` for a line put in. */
export interface RepairedEntry {
  readonly line: number;
  readonly was: string | null;
  readonly now: string;
  readonly faults: readonly string[];
}

/** One thing that a log of either cable says. */
export type LogReading = Reading | NetworkReading;

/** How many of each kind of reading there are. */
export type Counts = Readonly<Partial<Record<LogReading['kind'], number>>>;

/** The lists, or a piece of one. */
export interface Entries {
  readonly calls: readonly CallEntry[];
  readonly faults: readonly FaultEntry[];
  readonly repaired: readonly RepairedEntry[];
}

/** A place in the log that can be drawn: the latest of one station. */
export interface PlaceEntry {
  /** Nine digits, `null` when not known. */
  readonly station: string | null;
  /** Told of by a distress call, and the alert not taken back since. */
  readonly distress: boolean;
  readonly text: string;
  readonly time: string;
}

/** When a call came, for the drawing of all of them. */
export interface Mark {
  /** Epoch milliseconds, `null` when not known. */
  readonly at: number | null;
  readonly line: number;
  readonly distress: boolean;
}

/** Messages of the worker. */
export type FromLogReader =
  | { readonly kind: 'progress'; readonly done: number; readonly lines: number }
  | {
      readonly kind: 'read';
      readonly cable: 'serial' | 'network';
      /** Whether only the beginning was read. */
      readonly cut: boolean;
      readonly lines: number;
      readonly counts: Counts;
      readonly totals: Readonly<Record<ListName, number>>;
      readonly first: Entries;
      readonly places: readonly PlaceEntry[];
      /** The calls along the log, the first thousands of them. */
      readonly marks: readonly Mark[];
      readonly own: string;
      /** Instant of the last thing received, epoch milliseconds. */
      readonly last: number | null;
      /** What a technician would look at, in order. */
      readonly report: FaultReport | NetworkFaultReport;
      /** Whether only the beginning was looked through for it. */
      readonly reportCut: boolean;
    }
  | { readonly kind: 'repaired-log'; readonly log: Blob }
  | { readonly kind: 'piece'; readonly list: ListName; readonly entries: Entries[ListName] };

/** How many entries travel at a time. */
export const PIECE = 25;
