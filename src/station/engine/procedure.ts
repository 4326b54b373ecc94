import type { Verdict } from '../../burst/index.ts';
import type { Call, NatureOfDistress, Reason } from '../../call/index.ts';
import type { Dialogue, WaitName } from '../model/dialogue.ts';
import type { TimerName } from '../model/timer.ts';
import type { Trigger } from '../model/trigger.ts';
import { type Draft, drawLength, type Turn } from './turn.ts';

/** What made a trigger fire, as far as guards and actions need it. */
export interface Cause {
  readonly call?: Call;
  readonly verdict?: Verdict;
  readonly channel?: string | undefined;
  readonly reason?: Reason;
  readonly nature?: NatureOfDistress;
  /** By how much a wait ended late, milliseconds. */
  readonly late?: number;
}

/** One row of a transition table. */
export interface Transition<
  Phase extends string,
  On extends string,
  Guard extends string,
  Action extends string,
> {
  /** `'new'`: the dialogue is just being opened. */
  readonly from: Phase | 'new';
  readonly on: On;
  /** The row is taken only when this holds; rows are tried in order. */
  readonly when?: Guard;
  readonly to: Phase | 'ended';
  readonly do?: readonly Action[];
  readonly clause: string;
}

/** What is waited for in a phase; what it means is a term of the texts. */
export interface PhaseRow<Wait extends string = string> {
  /** Waits that run in this phase: those that ran before go on, the others start. */
  readonly waits: readonly Wait[];
  /** Waits that go on when they ran before, but do not start here. */
  readonly keeps?: readonly Wait[];
}

/** One automated procedure: its table as data, and the functions that the words of the table stand for. */
export interface Procedure<
  D extends Dialogue,
  Wait extends WaitName,
  On extends Trigger,
  Guard extends string,
  Action extends string,
> {
  readonly name: D['procedure'];
  readonly phases: Readonly<Record<D['phase'], PhaseRow<Wait>>>;
  readonly transitions: readonly Transition<D['phase'], On, Guard, Action>[];
  readonly guards: Readonly<Record<Guard, (turn: Turn, dialogue: D, cause: Cause) => boolean>>;
  readonly actions: Readonly<Record<Action, (turn: Turn, dialogue: Draft<D>, cause: Cause) => void>>;
  /** The timer of a wait, where the two names differ. */
  readonly timerOf: (wait: Wait, dialogue: D) => TimerName;
}

/** Name of a row, for tests, docs and training: `'outgoing: sending, sent, wants-answer'`. */
export function rowId(procedure: string, row: Transition<string, string, string, string>): string {
  return `${procedure}: ${row.from}, ${row.on}${row.when === undefined ? '' : `, ${row.when}`}`;
}

/**
 * Takes the first row that fits.
 *
 * @param from - `'new'` when the dialogue is just being opened, else its phase
 * @returns whether a row did
 */
export function fire<
  D extends Dialogue,
  Wait extends WaitName,
  On extends Trigger,
  Guard extends string,
  Action extends string,
>(
  turn: Turn,
  procedure: Procedure<D, Wait, On, Guard, Action>,
  dialogue: Draft<D>,
  from: D['phase'] | 'new',
  on: Trigger,
  cause: Cause = {},
): boolean {
  for (const row of procedure.transitions) {
    if (row.from !== from || row.on !== on) continue;
    if (row.when !== undefined && !procedure.guards[row.when](turn, dialogue, cause)) continue;
    const outer = turn.clause;
    turn.clause = row.clause;
    turn.transitions.push({ dialogue: dialogue.id, row: rowId(procedure.name, row) });
    if (row.to !== 'ended' && row.to !== from) enter(turn, procedure, dialogue, row.to);
    for (const action of row.do ?? []) procedure.actions[action](turn, dialogue, cause);
    if (row.to === 'ended') endDialogue(turn, dialogue.id);
    turn.clause = outer;
    return true;
  }
  return false;
}

function enter<
  D extends Dialogue,
  Wait extends WaitName,
  On extends Trigger,
  Guard extends string,
  Action extends string,
>(turn: Turn, procedure: Procedure<D, Wait, On, Guard, Action>, dialogue: Draft<D>, phase: D['phase']): void {
  const { now } = turn.state;
  const { waits, keeps = [] } = procedure.phases[phase];
  const running: Partial<Record<WaitName, number>> = {};
  for (const wait of keeps) {
    const until = dialogue.waits[wait];
    if (until !== undefined) running[wait] = until;
  }
  for (const wait of waits) {
    running[wait] = dialogue.waits[wait] ?? now + drawLength(turn, procedure.timerOf(wait, dialogue));
  }
  dialogue.waits = running;
  dialogue.phase = phase;
  dialogue.changedAt = now;
}

function endDialogue({ state }: Turn, id: number): void {
  state.dialogues = state.dialogues.filter((dialogue) => dialogue.id !== id);
  if (state.transmitting === id) state.transmitting = null;
}
