import type { Verdict } from '../../burst/index.ts';
import {
  type Call,
  callFromFields,
  callToFields,
  compositions,
  type NatureOfDistress,
  natures,
} from '../../call/index.ts';
import type { Dialogue } from '../state/dialogue.ts';
import type { PhaseRow, Procedure, Transition } from '../state/procedure.ts';
import { rangeOf, type TimerName } from '../state/timer.ts';
import { heardDistress } from '../turn/heard-distress.ts';
import { incoming } from '../turn/incoming.ts';
import { outgoing } from '../turn/outgoing.ts';
import { ownDistress } from '../turn/own-distress.ts';
import { isRecord, readInstant, readText } from './read-plain.ts';

/** A dialogue from stored data; `null` when it cannot be gone on with. */
export function readDialogue(stored: unknown, restored: Restored): Dialogue | null {
  const { now } = restored;
  if (!isRecord(stored) || !isCount(stored.id, 1)) return null;
  const dialogue = readProcedure(stored, {
    id: stored.id,
    openedAt: readInstant(stored.openedAt) ?? now,
    changedAt: readInstant(stored.changedAt) ?? now,
    waits: {},
  });
  return dialogue === null ? null : { ...dialogue, waits: readWaits(stored.waits, dialogue, restored) };
}

/** What a dialogue needs of the rest of the stored state. */
export interface Restored {
  readonly now: number;
  readonly timers: Readonly<Partial<Record<TimerName, number>>>;
}

type Base = Pick<Dialogue, 'id' | 'openedAt' | 'changedAt' | 'waits'>;

function readProcedure(stored: Readonly<Record<string, unknown>>, base: Base): Dialogue | null {
  const call = readCall(stored.call);
  switch (stored.procedure) {
    case 'outgoing': {
      if (!isPhaseOf(outgoing.phases, stored.phase) || call === null) return null;
      return {
        ...base,
        procedure: 'outgoing',
        phase: stored.phase,
        call,
        attempts: readCount(stored.attempts),
        allowed: readCount(stored.allowed),
        answer: readCall(stored.answer),
        channel: readText(stored.channel),
      };
    }
    case 'incoming': {
      if (!isPhaseOf(incoming.phases, stored.phase) || call === null) return null;
      return {
        ...base,
        procedure: 'incoming',
        phase: stored.phase,
        call,
        verdict: readVerdict(stored.verdict),
        times: readCount(stored.times),
        answer: readCall(stored.answer),
        automatic: stored.automatic === true,
        channel: readText(stored.channel),
      };
    }
    case 'own-distress': {
      if (!isPhaseOf(ownDistress.phases, stored.phase)) return null;
      return {
        ...base,
        procedure: 'own-distress',
        phase: stored.phase,
        nature: isNature(stored.nature) ? stored.nature : 'undesignated',
        call,
        attempts: readCount(stored.attempts),
        alertedAt: readInstant(stored.alertedAt),
        acknowledgement: readCall(stored.acknowledgement),
        stopped: stored.stopped === true,
        cancelWanted: stored.cancelWanted === true,
        spoken: stored.spoken === true,
      };
    }
    case 'heard-distress': {
      if (!isPhaseOf(heardDistress.phases, stored.phase) || call === null) return null;
      return {
        ...base,
        procedure: 'heard-distress',
        phase: stored.phase,
        distressed: readText(stored.distressed),
        call,
        verdict: readVerdict(stored.verdict),
        alerts: readCount(stored.alerts),
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
 * The waits of the phase, none longer than its timer. When none is left that ends the phase all of them start anew, so
 * that every restored dialogue goes on and ends.
 */
function readWaits(
  stored: unknown,
  dialogue: Dialogue,
  { now, timers }: Restored,
): Readonly<Record<string, number>> {
  const { row, timerOf, rows } = tableOf(dialogue);
  const latest = (wait: string) => now + rangeOf(timerOf(wait), timers)[1];
  const running: Record<string, number> = {};
  for (const wait of [...row.waits, ...(row.keeps ?? [])]) {
    const until = isRecord(stored) && Object.hasOwn(stored, wait) ? readInstant(stored[wait]) : null;
    if (until !== null) running[wait] = Math.min(until, latest(wait));
  }
  const ends = rows.some(
    ({ from, on, to, when }) =>
      from === dialogue.phase &&
      to !== from &&
      when === undefined &&
      Object.hasOwn(running, on.replace(/ over$/, '')),
  );
  if (!ends) for (const wait of row.waits) running[wait] = latest(wait);
  return running;
}

interface Table {
  readonly row: PhaseRow;
  readonly rows: readonly Transition<string, string, string>[];
  readonly timerOf: (wait: string) => TimerName;
}

function tableOf(dialogue: Dialogue): Table {
  switch (dialogue.procedure) {
    case 'outgoing':
      return tableOfProcedure(outgoing, dialogue);
    case 'incoming':
      return tableOfProcedure(incoming, dialogue);
    case 'own-distress':
      return tableOfProcedure(ownDistress, dialogue);
    case 'heard-distress':
      return tableOfProcedure(heardDistress, dialogue);
  }
}

function tableOfProcedure<D extends Dialogue, Guard extends string, Action extends string>(
  { phases, transitions, timerOf }: Procedure<D, Guard, Action>,
  dialogue: D,
): Table {
  const phase: D['phase'] = dialogue.phase;
  return { row: phases[phase], rows: transitions, timerOf: (wait) => timerOf(wait, dialogue) };
}

function isPhaseOf<Phase extends string>(
  phases: Readonly<Record<Phase, PhaseRow>>,
  value: unknown,
): value is Phase {
  return typeof value === 'string' && Object.hasOwn(phases, value);
}

/** A call of a known kind, if its symbols say the same again: then everything in it is as the types say. */
function readCall(stored: unknown): Call | null {
  if (!isRecord(stored) || !kinds.has(stored.kind)) return null;
  const call = stored as unknown as Call;
  try {
    const said: Readonly<Record<string, unknown>> = { ...callFromFields(callToFields(call)).call };
    const holds = Object.entries(stored).every(
      ([key, value]) => key === 'kind' || key === 'asReceived' || !(key in said) || isSame(value, said[key]),
    );
    return holds ? call : null;
  } catch {
    return null;
  }
}

const kinds: ReadonlySet<unknown> = /* @__PURE__ */ new Set([
  'unrecognised-call',
  ...compositions.map(({ kind }) => kind),
]);

/** Whether two plain values are the same, with what is undefined left out of account. */
function isSame(one: unknown, other: unknown): boolean {
  if (!isRecord(one) || !isRecord(other)) {
    return Array.isArray(one) && Array.isArray(other)
      ? one.length === other.length && one.every((entry, index) => isSame(entry, other[index]))
      : one === other;
  }
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].every((key) => isSame(one[key], other[key]));
}

function isCount(value: unknown, least: number): value is number {
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= least;
}

function readCount(value: unknown): number {
  return isCount(value, 0) ? value : 0;
}

function readVerdict(value: unknown): Verdict {
  return value === 'clean' || value === 'repaired' ? value : 'doubtful';
}

function isNature(value: unknown): value is NatureOfDistress {
  return natures.rows.some(([, nature]) => nature === value);
}
