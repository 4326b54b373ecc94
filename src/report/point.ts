import type { Coordinates } from '../position/index.ts';
import type { UtcTime } from './utc-time.ts';

/** A named place, as a `WPL` sentence carries it. */
export interface WaypointFields {
  readonly position: Coordinates;
  /** Plain text. Keep it short: how much a plotter shows is unknown, about ten characters are safe (common practice, no source). */
  readonly name: string;
}

/** A tracked target, as a `TLL` sentence carries it. */
export interface TargetFields {
  /** 0–99. */
  readonly number: number;
  readonly position: Coordinates;
  /** Plain text, short. */
  readonly name: string;
  /** UTC of the position, `null` when unknown. */
  readonly time: UtcTime | null;
  /** What the tracker says; `null` when it said something else. */
  readonly status: 'lost' | 'acquiring' | 'tracking' | null;
  /** Whether it is the reference target. */
  readonly reference: boolean;
}
