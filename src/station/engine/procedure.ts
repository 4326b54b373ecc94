import type { Verdict } from '../../burst/index.ts';
import type { Call, NatureOfDistress, Reason } from '../../call/index.ts';
import { clause } from '../model/clause.ts';
import type { Dialogue, Dialogues, WaitName } from '../model/dialogue.ts';
import type { TimerName } from '../model/timer.ts';
import { type Draft, drawLength, type Turn } from './turn.ts';

// Every name a table may use: a wrong one does not compile (tests/station/names.test-d.ts).

/** What a dialogue of each procedure waits for. Those of a distress are named after their timers. */
export interface Waits {
  readonly outgoing: 'answer' | 'retry' | 'channel-wait' | 'transmission-limit' | 'inactivity';
  readonly incoming: 'decision' | 'automatic-answer' | 'channel-wait' | 'transmission-limit' | 'inactivity';
  readonly 'own-distress':
    | 'alert-hold'
    | 'alert-busy-limit'
    | 'voice-after-alert'
    | 'alert-repeat'
    | 'cancel-question'
    | 'distress-memory'
    | 'transmission-limit'
    | 'inactivity';
  readonly 'heard-distress':
    | 'listen-after-alert'
    | 'distress-memory'
    | 'channel-wait'
    | 'transmission-limit'
    | 'inactivity';
}

type OfAll = 'confirm' | 'decline' | 'dismiss' | 'channel free' | 'sent' | 'send-failed';

/** What moves a dialogue of each procedure: an act, something received, the end of a wait. */
export interface Triggers {
  readonly outgoing:
    | `${Waits['outgoing']} over`
    | OfAll
    | 'able'
    | 'unable'
    | 'answered'
    | 'answered-damaged'
    | 'call'
    | 'retry'
    | 'counter-propose';
  readonly incoming: `${Waits['incoming']} over` | OfAll | 'repeated' | 'call' | 'answer' | 'reject';
  readonly 'own-distress':
    | `${Waits['own-distress']} over`
    | OfAll
    | 'spoken'
    | 'press'
    | 'describe'
    | 'acknowledged'
    | 'cancel'
    | 'prepare'
    | 'release'
    | 'retry'
    | 'acknowledged-damaged'
    | 'relayed'
    | 'stop';
  readonly 'heard-distress':
    | `${Waits['heard-distress']} over`
    | OfAll
    | 'alert'
    | 'relay'
    | 'acknowledgement'
    | 'cancellation'
    | 'spoken'
    | 'assist'
    | 'acknowledge'
    | 'traffic'
    | 'no-traffic'
    | 'stand-by';
}

/** What moves any dialogue. */
export type Trigger = Triggers[keyof Triggers];

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

/** One row of a transition table: what happens in a phase. */
export interface Transition<
  P extends keyof Dialogues = keyof Dialogues,
  Guard extends string = string,
  Action extends string = string,
> {
  readonly on: Triggers[P];
  /** The row is taken only when this holds; rows are tried in order. */
  readonly when?: Guard;
  /** The phase after; the same one when absent. */
  readonly to?: Dialogues[P]['phase'] | 'ended';
  readonly do?: readonly Action[];
  readonly clause: keyof typeof clause;
}

/** The rows of each phase; `new` are those of a dialogue that is just being opened. */
export type TransitionTable<
  P extends keyof Dialogues = keyof Dialogues,
  Guard extends string = string,
  Action extends string = string,
> = Readonly<Record<Dialogues[P]['phase'] | 'new', readonly Transition<P, Guard, Action>[]>>;

/** What is waited for in a phase; what it means is a term of the texts. */
export interface PhaseRow<Wait extends WaitName = WaitName> {
  /** Waits that run in this phase: those that ran before go on, the others start. */
  readonly waits: readonly Wait[];
  /** Waits that go on when they ran before, but do not start here. */
  readonly keeps?: readonly Wait[];
}

/** The conditions that a table names. */
export type Guards<P extends keyof Dialogues = keyof Dialogues> = Readonly<
  Record<string, (turn: Turn, dialogue: Dialogue<P>, cause: Cause) => boolean>
>;

/** The actions that a table names. */
export type Actions<P extends keyof Dialogues = keyof Dialogues> = Readonly<
  Record<string, (turn: Turn, dialogue: Draft<Dialogue<P>>, cause: Cause) => void>
>;

/** One automated procedure: its table as data, and the functions that the words of the table stand for. */
export interface Procedure<P extends keyof Dialogues = keyof Dialogues> {
  readonly phases: Readonly<Record<Dialogues[P]['phase'], PhaseRow<Waits[P]>>>;
  readonly transitions: TransitionTable<P>;
  readonly guards: Guards<P>;
  readonly actions: Actions<P>;
  /** The timer of a wait, where the two names differ. */
  readonly timerOf: (wait: Waits[P], dialogue: Dialogue<P>) => TimerName;
}

/** Name of a row, for tests, docs and training: `'outgoing: sending, sent, wants-answer'`. */
export function rowId(procedure: string, from: string, { on, when }: Transition): string {
  return `${procedure}: ${from}, ${on}${when === undefined ? '' : `, ${when}`}`;
}

/**
 * Takes the first row that fits.
 *
 * @param from - `'new'` when the dialogue is just being opened, else its phase
 * @returns whether a row did
 */
export function fire(
  turn: Turn,
  procedure: Procedure,
  dialogue: Draft<Dialogue>,
  from: Dialogue['phase'] | 'new',
  on: Trigger,
  cause: Cause,
): boolean {
  const row = procedure.transitions[from].find(
    (each) =>
      each.on === on && (each.when === undefined || procedure.guards[each.when]?.(turn, dialogue, cause)),
  );
  if (row === undefined) return false;
  const outer = turn.clause;
  turn.clause = clause[row.clause];
  turn.transitions.push({ dialogue: dialogue.id, row: rowId(dialogue.procedure, from, row) });
  if (row.to !== undefined && row.to !== 'ended' && row.to !== from) enter(turn, procedure, dialogue, row.to);
  for (const action of row.do ?? []) procedure.actions[action]?.(turn, dialogue, cause);
  if (row.to === 'ended') endDialogue(turn, dialogue.id);
  turn.clause = outer;
  return true;
}

function enter(
  turn: Turn,
  { phases, timerOf }: Procedure,
  dialogue: Draft<Dialogue>,
  phase: Dialogue['phase'],
): void {
  const { now } = turn.state;
  const { waits, keeps = [] } = phases[phase];
  const running: Partial<Record<WaitName, number>> = {};
  for (const wait of keeps) {
    const until = dialogue.waits[wait];
    if (until !== undefined) running[wait] = until;
  }
  for (const wait of waits) {
    running[wait] = dialogue.waits[wait] ?? now + drawLength(turn, timerOf(wait, dialogue));
  }
  Object.assign(dialogue, { waits: running, phase, changedAt: now });
}

function endDialogue({ state }: Turn, id: number): void {
  state.dialogues = state.dialogues.filter((dialogue) => dialogue.id !== id);
  if (state.transmitting === id) state.transmitting = null;
}
