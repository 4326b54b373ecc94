import { clause } from '../state/clause.ts';
import type { FixEvent } from '../state/event.ts';
import type { StationState } from '../state/state.ts';
import { lengthOf } from '../state/timer.ts';
import { LAST_INSTANT } from './clock.ts';
import { sound, tell } from './common-action.ts';
import type { Turn } from './turn.ts';

/** Takes a new fix; tells whether it is a place on Earth. */
export function takeFix({ state }: Turn, { position, source, fixedAt }: FixEvent): boolean {
  const { latitude, longitude } = position;
  if (!(Math.abs(latitude) <= 90 && Math.abs(longitude) <= 180)) return false;
  const at =
    fixedAt !== undefined && Math.abs(fixedAt) <= LAST_INSTANT && fixedAt <= state.now ? fixedAt : state.now;
  state.fix = { position: { latitude, longitude }, at, source, warned: false };
  return true;
}

/** Warns of a position that has become old, and forgets one that is too old to be sent (M.493-16, from memory). */
export function agePosition(turn: Turn): void {
  const { state } = turn;
  if (state.fix === null) return;
  const outer = turn.clause;
  turn.clause = clause.position;
  const age = state.now - state.fix.at;
  if (age >= lengthOf('position-erase', state.settings.timers)) {
    tell(
      turn,
      null,
      'position-erased',
      'The own position is too old and is no longer sent: enter it or see to the receiver',
    );
    sound(turn, null, 'position');
    state.fix = null;
  } else if (!state.fix.warned && age >= lengthOf('position-warning', state.settings.timers)) {
    tell(turn, null, 'position-old', 'The own position is old: enter it or see to the receiver');
    sound(turn, null, 'position');
    state.fix = { ...state.fix, warned: true };
  }
  turn.clause = outer;
}

/** When the age of the position will next matter, epoch milliseconds. */
export function positionDeadline({ fix, settings }: Pick<StationState, 'fix' | 'settings'>): number {
  if (fix === null) return Infinity;
  return fix.at + lengthOf(fix.warned ? 'position-erase' : 'position-warning', settings.timers);
}
