/** A time of day, UTC, as positioning sentences carry it. */
export interface UtcTime {
  /** 0–23. */
  readonly hour: number;
  /** 0–59. */
  readonly minute: number;
  /** 0 up to but not including 61: a leap second is 60. */
  readonly second: number;
}
