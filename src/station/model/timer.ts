import type { CodedText } from '../../result/index.ts';
import { timerMeaning } from '../texts.ts';
import { clause } from './clause.ts';

/** Name of a timer of `timers`. */
export type TimerName =
  | 'alert-hold'
  | 'alert-busy-limit'
  | 'voice-after-alert'
  | 'alert-repeat'
  | 'attempt-length'
  | 'listen-after-alert'
  | 'answer-from-ship'
  | 'answer-from-coast'
  | 'answer-from-set'
  | 'automatic-answer'
  | 'second-attempt'
  | 'third-attempt'
  | 'channel-wait'
  | 'transmission-limit'
  | 'inactivity'
  | 'cancel-question'
  | 'alert-memory'
  | 'distress-memory'
  | 'position-warning'
  | 'position-erase';

/** One waiting time of the machine. */
export interface TimerRow extends Pick<CodedText, 'code' | 'params'> {
  readonly timer: TimerName;
  /** Least value, in `unit`. */
  readonly least: number;
  /** Greatest value, in `unit`; more than `least` only where a standard wants a random time. */
  readonly most: number;
  readonly unit: 'second' | 'minute' | 'hour';
  readonly confidence: 'high' | 'medium' | 'low' | 'own-choice';
  /** Document the value is taken from. */
  readonly clause: string;
  /** What is waited for: English, of `code` and `params`. */
  readonly meaning: string;
}

/** The waiting times without what each is for: a station needs none of the words. */
const rows: Readonly<
  Record<TimerName, Pick<TimerRow, 'least' | 'unit' | 'confidence' | 'clause'> & { readonly most?: number }>
> = {
  'alert-hold': { least: 3, unit: 'second', confidence: 'high', clause: clause.alertAct },
  // deviation: D-station-1
  'alert-busy-limit': { least: 1, unit: 'second', confidence: 'medium', clause: clause.busyLimit },
  'voice-after-alert': {
    least: 15,
    unit: 'second',
    confidence: 'medium',
    clause: 'UK maritime authority, procedure summary of about 2000; RR 2024 No. 32.13 asks for no wait',
  },
  // deviation: D-station-2
  'alert-repeat': { least: 3.5, most: 4.5, unit: 'minute', confidence: 'high', clause: clause.alert },
  'attempt-length': { least: 10, unit: 'second', confidence: 'own-choice', clause: clause.ownChoice },
  'listen-after-alert': { least: 5, unit: 'minute', confidence: 'high', clause: clause.heardAlert },
  'answer-from-ship': { least: 5, unit: 'minute', confidence: 'high', clause: clause.answering },
  'answer-from-coast': { least: 4.5, unit: 'minute', confidence: 'high', clause: clause.answering },
  // deviation: D-station-3
  'answer-from-set': { least: 15, unit: 'second', confidence: 'own-choice', clause: clause.ownChoice },
  // deviation: D-station-7
  'automatic-answer': { least: 3, unit: 'second', confidence: 'medium', clause: clause.answering },
  'second-attempt': { least: 5, unit: 'minute', confidence: 'medium', clause: clause.calling },
  'third-attempt': { least: 15, unit: 'minute', confidence: 'medium', clause: clause.calling },
  'channel-wait': { least: 10, unit: 'minute', confidence: 'own-choice', clause: clause.ownChoice },
  'transmission-limit': { least: 5, unit: 'second', confidence: 'own-choice', clause: clause.ownChoice },
  // deviation: D-station-8
  inactivity: { least: 10, unit: 'minute', confidence: 'medium', clause: clause.procedures },
  'cancel-question': { least: 1, unit: 'minute', confidence: 'own-choice', clause: clause.ownChoice },
  // deviation: D-station-4
  'alert-memory': { least: 10, unit: 'minute', confidence: 'own-choice', clause: clause.ownChoice },
  'distress-memory': { least: 48, unit: 'hour', confidence: 'medium', clause: clause.procedures },
  'position-warning': { least: 4, unit: 'hour', confidence: 'medium', clause: clause.position },
  'position-erase': { least: 23.5, unit: 'hour', confidence: 'medium', clause: clause.position },
};

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
export const timers: readonly TimerRow[] = /* @__PURE__ */ Object.entries(rows).map(([name, row]) => {
  const timer = name as TimerName;
  const { message: meaning, ...said } = timerMeaning('station-timer', { timer });
  return { timer, most: row.least, ...row, ...said, meaning };
});

/** Whether a timer has that name. */
export function isTimer(name: string): boolean {
  return Object.hasOwn(rows, name);
}

const MILLISECONDS = { second: 1000, minute: 60_000, hour: 3_600_000 } as const;

/** Least and greatest length of a timer in milliseconds, after the settings' own values. */
export function rangeOf(
  timer: TimerName,
  changed: Partial<Record<TimerName, number>> = {},
): readonly [least: number, most: number] {
  const own = Object.hasOwn(changed, timer) ? changed[timer] : undefined;
  if (own !== undefined && own >= 1 && own < Infinity) return [own, own];
  const { least, most = least, unit } = rows[timer];
  return [least * MILLISECONDS[unit], most * MILLISECONDS[unit]];
}

/** Length of a timer without a random part, in milliseconds. */
export function lengthOf(timer: TimerName, changed?: Partial<Record<TimerName, number>>): number {
  return rangeOf(timer, changed)[0];
}
