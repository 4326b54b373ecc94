import { type TimerRow, timerRows } from './model/timer.ts';
import { timerMeaning } from './texts.ts';

/**
 * Every waiting time of the machine, with its source and how sure the value is.
 *
 * @see {@link transitionTable}
 *
 * @example
 * ```ts
 * import { timers } from 'seahail/station';
 *
 * const repeat = timers.find((row) => row.timer === 'alert-repeat');
 * console.log(`${repeat?.least} to ${repeat?.most} ${repeat?.unit}s`); // 3.5 to 4.5 minutes
 * ```
 */
export const timers: readonly TimerRow[] = /* @__PURE__ */ timerRows.map((row) => {
  const { message: meaning, ...said } = timerMeaning('station-timer', { timer: row.timer });
  return { ...row, ...said, meaning };
});
