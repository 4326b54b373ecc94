import type { Verdict } from '../../burst/index.ts';
import type { Call } from '../../call/index.ts';
import { groundsOf } from '../engine/on-air.ts';
import type { Trigger } from '../engine/procedure.ts';
import { barOf, WATCH_CHANNEL, workingChannel } from '../model/channel.ts';
import type { Dialogue, Dialogues, WaitName } from '../model/dialogue.ts';
import { isNature, isRecord, readCall, readCount, readInstant, readText } from '../model/form.ts';
import type { StationState } from '../model/state.ts';
import { rangeOf } from '../model/timer.ts';
import { procedureOf } from '../procedures/transition-table.ts';
import { isPlausible, resumed, withoutWrongAnswer } from './resume.ts';

/**
 * A dialogue from stored data, as far as it may go on; `null` when it cannot be resumed.
 *
 * What the stored dialogue says must fit its procedure, the own identity, the class of equipment and the verdict, and
 * what would go on the air is for a person to decide first: {@link resumed}.
 */
export function readDialogue(
  stored: unknown,
  restored: Restored,
  note: (code: NoteCode) => void,
): Dialogue | null {
  const { state, gap } = restored;
  const { now } = state;
  const id = isRecord(stored) ? readCount(stored.id, 1) : null;
  if (!isRecord(stored) || id === null) return null;
  const read = readProcedure(stored, {
    id,
    openedAt: readInstant(stored.openedAt) ?? now,
    changedAt: readInstant(stored.changedAt) ?? now,
    waits: {},
  });
  if (read === null || !isPlausible(state, read)) return null;
  const honest = withoutWrongAnswer(state, read);
  if (honest !== read) note('station-state-answer');
  const dialogue = resumed(state, honest, gap, repeatOf(stored, read, state));
  if (dialogue.phase !== read.phase) note('station-state-asks');
  return { ...dialogue, waits: readWaits(stored.waits, dialogue, restored) };
}

/** The two things that are noted about a dialogue that is kept. */
export type NoteCode = 'station-state-answer' | 'station-state-asks';

/** What a dialogue needs of the rest of the stored state. */
export interface Restored {
  /** The rest of the state, without dialogues. */
  readonly state: StationState;
  /** Milliseconds since the state was stored, as far as the app vouches for its store; `null` when it does not. */
  readonly gap: number | null;
}

type Base = Pick<Dialogue, 'id' | 'openedAt' | 'changedAt' | 'waits'>;

function readProcedure(stored: Readonly<Record<string, unknown>>, base: Base): Dialogue | null {
  const call = readCall(stored.call);
  switch (stored.procedure) {
    case 'outgoing': {
      if (!isPhaseOf('outgoing', stored.phase) || call === null) return null;
      return {
        ...base,
        procedure: 'outgoing',
        phase: stored.phase,
        call,
        attempts: readCount(stored.attempts, 0) ?? 0,
        allowed: readCount(stored.allowed, 0) ?? 0,
        answer: readCall(stored.answer),
        channel: readChannel(stored.channel, call),
        because: groundsOf(stored.because),
      };
    }
    case 'incoming': {
      if (!isPhaseOf('incoming', stored.phase) || call === null) return null;
      return {
        ...base,
        procedure: 'incoming',
        phase: stored.phase,
        call,
        verdict: readVerdict(stored.verdict),
        times: readCount(stored.times, 0) ?? 0,
        answer: readCall(stored.answer),
        automatic: stored.automatic === true,
        channel: readChannel(stored.channel, call),
      };
    }
    case 'own-distress': {
      if (!isPhaseOf('own-distress', stored.phase)) return null;
      return {
        ...base,
        procedure: 'own-distress',
        phase: stored.phase,
        nature: isNature(stored.nature) ? stored.nature : 'undesignated',
        call,
        attempts: readCount(stored.attempts, 0) ?? 0,
        alertedAt: readInstant(stored.alertedAt),
        acknowledgement: readCall(stored.acknowledgement),
        stopped: stored.stopped === true,
        cancelWanted: stored.cancelWanted === true,
        spoken: stored.spoken === true,
      };
    }
    case 'heard-distress': {
      if (!isPhaseOf('heard-distress', stored.phase) || call === null) return null;
      return {
        ...base,
        procedure: 'heard-distress',
        phase: stored.phase,
        distressed: readText(stored.distressed),
        call,
        verdict: readVerdict(stored.verdict),
        alerts: readCount(stored.alerts, 0) ?? 0,
        lastAlertAt: readInstant(stored.lastAlertAt),
        acknowledgedBy: readText(stored.acknowledgedBy),
        answer: readCall(stored.answer),
      };
    }
    default:
      return null;
  }
}

/**
 * The waits of the phase, none longer than its timer. When none is left that ends the phase all of them start again, so
 * that every restored dialogue goes on and ends.
 */
function readWaits(
  stored: unknown,
  dialogue: Dialogue,
  { state: { now, settings } }: Restored,
): Dialogue['waits'] {
  const { phases, timerOf, transitions } = procedureOf(dialogue);
  const { phase } = dialogue;
  const { waits, keeps = [] } = phases[phase];
  const latest = (wait: WaitName) => now + rangeOf(timerOf(wait, dialogue), settings.timers)[1];
  const running: Partial<Record<WaitName, number>> = {};
  const isStopped = dialogue.procedure === 'own-distress' && dialogue.stopped;
  for (const wait of [...waits, ...keeps]) {
    if (isStopped && wait === 'alert-repeat') continue;
    const until = isRecord(stored) && Object.hasOwn(stored, wait) ? readInstant(stored[wait]) : null;
    if (until !== null) running[wait] = Math.min(until, latest(wait));
  }
  const over = new Set<Trigger>(Object.keys(running).map((wait) => `${wait as WaitName} over` as const));
  const ends = transitions[phase].some(
    ({ on, to = phase, when }) => to !== phase && when === undefined && over.has(on),
  );
  if (!ends) for (const wait of waits) running[wait] = latest(wait);
  return running;
}

/** Milliseconds from the last own alert to its repeat. */
function repeatOf(
  stored: Readonly<Record<string, unknown>>,
  dialogue: Dialogue,
  { settings }: StationState,
): number {
  const [least, most] = rangeOf('alert-repeat', settings.timers);
  const until = isRecord(stored.waits) ? readInstant(stored.waits['alert-repeat']) : null;
  const alertedAt = dialogue.procedure === 'own-distress' ? dialogue.alertedAt : null;
  return until === null || alertedAt === null ? least : Math.min(Math.max(until - alertedAt, 0), most);
}

function isPhaseOf<P extends keyof Dialogues>(procedure: P, value: unknown): value is Dialogues[P]['phase'] {
  return typeof value === 'string' && Object.hasOwn(procedureOf({ procedure }).phases, value);
}

/** Digits of a channel on which the talk of such a call may be, or `null`. */
function readChannel(stored: unknown, call: Call): string | null {
  const digits = readText(stored);
  const channel = digits === null ? null : workingChannel(digits);
  return channel !== null && channel === digits && (digits === WATCH_CHANNEL || barOf(call, digits) === null)
    ? digits
    : null;
}

function readVerdict(value: unknown): Verdict {
  return value === 'clean' || value === 'repaired' ? value : 'doubtful';
}
