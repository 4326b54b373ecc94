import { clause } from './clause.ts';

/** Name of a timer of {@link timers}. */
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
export interface TimerRow {
  readonly timer: TimerName;
  /** Least value, in `unit`. */
  readonly least: number;
  /** Greatest value, in `unit`; more than `least` only where a standard wants a random time. */
  readonly most: number;
  readonly unit: 'second' | 'minute' | 'hour';
  readonly confidence: 'high' | 'medium' | 'low' | 'own-choice';
  /** Document the value is taken from. */
  readonly clause: string;
  /** What is waited for. */
  readonly meaning: string;
}

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
export const timers: readonly TimerRow[] = [
  {
    timer: 'alert-hold',
    least: 3,
    most: 3,
    unit: 'second',
    confidence: 'high',
    clause: clause.alertAct,
    meaning: 'how long the distress key is held before an alert goes out',
  },
  {
    // deviation: D-station-1
    timer: 'alert-busy-limit',
    least: 1,
    most: 1,
    unit: 'second',
    confidence: 'medium',
    clause: 'ETSI EN 300 338, unverified',
    meaning: 'longest wait of a distress alert for channel 70 to be free',
  },
  {
    timer: 'voice-after-alert',
    least: 15,
    most: 15,
    unit: 'second',
    confidence: 'medium',
    clause: 'UK maritime authority, procedure summary of about 2000; RR 2024 No. 32.13 asks for no wait',
    meaning:
      'latest moment for the distress call and message by voice, which are asked for as soon as the alert is out',
  },
  {
    // deviation: D-station-2
    timer: 'alert-repeat',
    least: 3.5,
    most: 4.5,
    unit: 'minute',
    confidence: 'high',
    clause: clause.alert,
    meaning: 'from the start of one distress attempt to the start of the next, at random',
  },
  {
    timer: 'attempt-length',
    least: 10,
    most: 10,
    unit: 'second',
    confidence: 'own-choice',
    clause: clause.ownChoice,
    meaning: 'alerts received within this time belong to one attempt of five: 2.25 s, and some allowance',
  },
  {
    timer: 'listen-after-alert',
    least: 5,
    most: 5,
    unit: 'minute',
    confidence: 'high',
    clause: clause.heardAlert,
    meaning: 'listening on channel 16 after an alert was received, before anything else is decided',
  },
  {
    timer: 'answer-from-ship',
    least: 5,
    most: 5,
    unit: 'minute',
    confidence: 'high',
    clause: clause.answering,
    meaning: 'time for a person aboard to answer',
  },
  {
    timer: 'answer-from-coast',
    least: 4.5,
    most: 4.5,
    unit: 'minute',
    confidence: 'high',
    clause: clause.answering,
    meaning: 'time for an operator ashore to answer',
  },
  {
    // deviation: D-station-3
    timer: 'answer-from-set',
    least: 15,
    most: 15,
    unit: 'second',
    confidence: 'own-choice',
    clause: clause.ownChoice,
    meaning:
      'time for a radio to answer a test call or polling automatically: three seconds, a busy channel and the burst',
  },
  {
    // deviation: D-station-7
    timer: 'automatic-answer',
    least: 3,
    most: 3,
    unit: 'second',
    confidence: 'medium',
    clause: clause.answering,
    meaning: 'an automatic answer starts within this time, or it is left to the person',
  },
  {
    timer: 'second-attempt',
    least: 5,
    most: 5,
    unit: 'minute',
    confidence: 'medium',
    clause: clause.calling,
    meaning: 'from the first call to the second when nobody answered',
  },
  {
    timer: 'third-attempt',
    least: 15,
    most: 15,
    unit: 'minute',
    confidence: 'medium',
    clause: clause.calling,
    meaning: 'from the second call to the third, and between later calls',
  },
  {
    timer: 'channel-wait',
    least: 10,
    most: 10,
    unit: 'minute',
    confidence: 'own-choice',
    clause: clause.ownChoice,
    meaning: 'longest wait of a call other than distress for channel 70 to be free',
  },
  {
    timer: 'transmission-limit',
    least: 5,
    most: 5,
    unit: 'second',
    confidence: 'own-choice',
    clause: clause.ownChoice,
    meaning: 'a transmission not reported as finished within this time counts as failed',
  },
  {
    // deviation: D-station-8
    timer: 'inactivity',
    least: 10,
    most: 10,
    unit: 'minute',
    confidence: 'medium',
    clause: clause.procedures,
    meaning: 'a call is closed when the person has not acted for this long',
  },
  {
    timer: 'cancel-question',
    least: 1,
    most: 1,
    unit: 'minute',
    confidence: 'own-choice',
    clause: clause.ownChoice,
    meaning: 'after this, no answer to the question whether the own alert was false counts as no',
  },
  {
    // deviation: D-station-4
    timer: 'alert-memory',
    least: 10,
    most: 10,
    unit: 'minute',
    confidence: 'own-choice',
    clause: clause.ownChoice,
    meaning:
      'an alert from the same vessel with the same nature, received again within this time, is a repeat and sounds no alarm',
  },
  {
    timer: 'distress-memory',
    least: 48,
    most: 48,
    unit: 'hour',
    confidence: 'medium',
    clause: clause.procedures,
    meaning: 'how long distress traffic stays on display unless the person closes it',
  },
  {
    timer: 'position-warning',
    least: 4,
    most: 4,
    unit: 'hour',
    confidence: 'medium',
    clause: clause.position,
    meaning: 'age of the own position at which the person is warned',
  },
  {
    timer: 'position-erase',
    least: 23.5,
    most: 23.5,
    unit: 'hour',
    confidence: 'medium',
    clause: clause.position,
    meaning: 'age of the own position at which it is no longer sent',
  },
];

const MILLISECONDS = { second: 1000, minute: 60_000, hour: 3_600_000 } as const;

/** Least and greatest length of a timer in milliseconds, after the settings' own values. */
export function rangeOf(
  timer: TimerName,
  changed: Partial<Record<TimerName, number>> = {},
): readonly [least: number, most: number] {
  const own = Object.hasOwn(changed, timer) ? changed[timer] : undefined;
  if (own !== undefined && own >= 1 && own < Infinity) return [own, own];
  const row = timers.find((candidate) => candidate.timer === timer) as TimerRow;
  return [row.least * MILLISECONDS[row.unit], row.most * MILLISECONDS[row.unit]];
}

/** Length of a timer without a random part, in milliseconds. */
export function lengthOf(timer: TimerName, changed?: Partial<Record<TimerName, number>>): number {
  return rangeOf(timer, changed)[0];
}
