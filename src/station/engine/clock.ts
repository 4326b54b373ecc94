import type { ReportedPosition, TimeOfDay } from '../../position/index.ts';
import { toReportedPosition } from '../../position/internal.ts';
import { want } from '../../result/internal.ts';
import { clause } from '../model/clause.ts';
import { waitsOf } from '../model/dialogue.ts';
import type { StationEvent } from '../model/event.ts';
import { LAST_INSTANT, readCoordinates, readInstant } from '../model/form.ts';
import type { StationState } from '../model/state.ts';
import { lengthOf } from '../model/timer.ts';
import { say } from '../texts.ts';
import { sound, tell } from './action.ts';
import type { Turn } from './turn.ts';

/**
 * Sets the station's clock to the instant of an event.
 *
 * A clock that went back takes every instant of the state with it, so that what was waited for takes as long as it
 * should have. An instant that no calendar has leaves the clock where it was: beyond, milliseconds are lost.
 */
export function moveClock({ state }: Turn, at: number): void {
  if (!(Math.abs(at) <= LAST_INSTANT)) return;
  const shift = at - state.now;
  state.now = at;
  if (shift >= 0) return;
  for (const dialogue of state.dialogues) {
    dialogue.openedAt += shift;
    dialogue.changedAt += shift;
    dialogue.waits = Object.fromEntries(waitsOf(dialogue).map(([wait, until]) => [wait, until + shift]));
    if (dialogue.procedure === 'heard-distress' && dialogue.lastAlertAt !== null)
      dialogue.lastAlertAt += shift;
    if (dialogue.procedure === 'own-distress' && dialogue.alertedAt !== null) dialogue.alertedAt += shift;
  }
  state.heardAlerts = state.heardAlerts.map((alert) => ({ ...alert, lastAt: alert.lastAt + shift }));
  if (state.fix !== null) state.fix = { ...state.fix, at: state.fix.at + shift };
}

/** Takes a new fix. Returns whether it is a place on Earth. */
export function takeFix({ state }: Turn, fix: StationEvent<'fix'>): boolean {
  const position = readCoordinates(fix.position);
  if (position === null) return false;
  const fixedAt = readInstant(fix.fixedAt);
  const at = fixedAt !== null && fixedAt <= state.now ? fixedAt : state.now;
  state.fix = { position, at, source: fix.source, warned: false };
  return true;
}

/** Warns of a position that has become old, and forgets one that is too old to be sent (M.493-16). */
export function agePosition(turn: Turn): void {
  const { state } = turn;
  if (state.fix === null) return;
  const outer = turn.clause;
  turn.clause = clause.position;
  const age = state.now - state.fix.at;
  if (age >= lengthOf('position-erase', state.settings.timers)) {
    tell(turn, null, 'position-erased', say('station-position-erased', {}));
    sound(turn, null, 'position');
    state.fix = null;
  } else if (!state.fix.warned && age >= lengthOf('position-warning', state.settings.timers)) {
    tell(turn, null, 'position-old', say('station-position-old', {}));
    sound(turn, null, 'position');
    state.fix = { ...state.fix, warned: true };
  }
  turn.clause = outer;
}

/** When the age of the position will next matter, epoch milliseconds. */
function positionDeadline({ fix, settings }: Pick<StationState, 'fix' | 'settings'>): number {
  if (fix === null) return Infinity;
  return fix.at + lengthOf(fix.warned ? 'position-erase' : 'position-warning', settings.timers);
}

/**
 * When the station next wants a `clock` event, epoch milliseconds; `null` when it waits for nothing.
 *
 * @param state - any state
 *
 * @example
 * ```ts
 * import { createStation, nextWake } from 'seahail/station';
 *
 * console.log(nextWake(createStation({ mmsi: '232999871' }))); // null
 * ```
 */
export function nextWake(state: StationState): number | null {
  want('nextWake', 'the state of a station', state, 'dialogues');
  let soonest = positionDeadline(state);
  for (const dialogue of state.dialogues) {
    for (const [, until] of waitsOf(dialogue)) soonest = Math.min(soonest, until);
  }
  return soonest < Infinity ? soonest : null;
}

/** The own position as it goes into a call; `null` when there is none. */
export function sendablePosition({ fix }: StationState): {
  readonly position: ReportedPosition | null;
  readonly time: TimeOfDay | null;
} {
  if (fix === null) return { position: null, time: null };
  return { position: toReportedPosition(fix.position, { enhanced: true }), time: timeOfDay(fix.at) };
}

/** UTC of an instant, as calls carry it. */
export function timeOfDay(at: number): TimeOfDay {
  const minutes = Math.floor(at / 60_000);
  const minuteOfDay = ((minutes % 1440) + 1440) % 1440;
  return { hour: Math.floor(minuteOfDay / 60), minute: minuteOfDay % 60 };
}
