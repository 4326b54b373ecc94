import type { Verdict } from '../../burst/index.ts';
import type { Call } from '../../call/index.ts';
import type { Coordinates } from '../../position/index.ts';
import type { StationText } from './advice.ts';

/** One line of the watch log. An entry is never changed; a later one may correct it. */
export interface LogEntry extends Partial<Pick<StationText, 'code' | 'params'>> {
  readonly kind: 'log-entry';
  /** 1, 2, 3 …, without a gap. The order of entries, even when the clock was set back. */
  readonly number: number;
  /** Epoch milliseconds. */
  readonly at: number;
  readonly what: 'received' | 'sent' | 'done' | 'note' | 'correction';
  /** English of `code` and `params`, without a final full stop; without a code what a person wrote. */
  readonly text: string;
  /** The dialogue it belongs to. */
  readonly dialogue: number | null;
  /** Own position at the time, as last known; `null` when unknown. */
  readonly position: Coordinates | null;
  readonly call?: Call;
  readonly verdict?: Verdict;
  /** Number of the entry that this one corrects. */
  readonly corrects?: number;
}
