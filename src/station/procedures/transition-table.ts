import type { CodedText } from '../../result/index.ts';
import { type PhaseRow, rowId, type Transition } from '../engine/procedure.ts';
import type { Dialogues } from '../model/dialogue.ts';
import { type Phase, phaseMeaning } from '../texts.ts';
import { incoming } from './incoming.ts';
import { heardDistress } from './other-distress/other-distress.ts';
import { outgoing } from './outgoing.ts';
import { ownDistress } from './own-distress/own-distress.ts';

/** One row of the machine's table. */
export interface TransitionRow {
  /** Unique, e.g. `'outgoing: sending, sent, wants-answer'`: procedure, phase, event, condition. */
  readonly id: string;
  readonly procedure: keyof Dialogues;
  /** Phase before; `'new'` when the dialogue is just being opened. */
  readonly from: string;
  /** What happened: a person's act, something heard, the end of a wait (`'answer over'`). */
  readonly on: string;
  /** The row is taken only when this holds; rows of the same phase and event are tried in order. */
  readonly when: string | null;
  /** Phase after; `'ended'` when the dialogue is over. */
  readonly to: string;
  /** What is done, in order. */
  readonly actions: readonly string[];
  /** Document and section. */
  readonly clause: string;
}

/**
 * The table that the machine runs on, row by row: {@link step} does exactly what it lists.
 *
 * @see {@link phaseTable}
 * @see {@link timers}
 *
 * @example
 * ```ts
 * import { transitionTable } from 'seahail/station';
 *
 * const rows = transitionTable().filter((row) => row.procedure === 'own-distress' && row.from === 'prepared');
 * console.log(rows.map((row) => `${row.on} to ${row.to}`).slice(0, 3).join('; ')); // press to countdown; describe to prepared; cancel to ended
 * ```
 */
export function transitionTable(): readonly TransitionRow[] {
  return [
    ...rowsOf('outgoing', outgoing.transitions),
    ...rowsOf('incoming', incoming.transitions),
    ...rowsOf('own-distress', ownDistress.transitions),
    ...rowsOf('heard-distress', heardDistress.transitions),
  ];
}

/**
 * Every phase of every procedure, with its meaning.
 *
 * @see {@link transitionTable}
 *
 * @example
 * ```ts
 * import { phaseTable } from 'seahail/station';
 *
 * const row = phaseTable().find(({ phase }) => phase === 'inform-coast');
 * console.log(row?.meaning); // no traffic, and the alert continues: inform a coast station
 * ```
 */
export function phaseTable(): readonly (Pick<CodedText, 'code' | 'params'> & {
  readonly procedure: keyof Dialogues;
  readonly phase: string;
  /** English, of `code` and `params`. */
  readonly meaning: string;
  /** What is waited for in it. */
  readonly waits: readonly string[];
})[] {
  return [
    ...phasesOf('outgoing', outgoing.phases),
    ...phasesOf('incoming', incoming.phases),
    ...phasesOf('own-distress', ownDistress.phases),
    ...phasesOf('heard-distress', heardDistress.phases),
  ];
}

function rowsOf(
  procedure: keyof Dialogues,
  rows: readonly Transition<string, string, string, string>[],
): readonly TransitionRow[] {
  return rows.map((row) => ({
    id: rowId(procedure, row),
    procedure,
    from: row.from,
    on: row.on,
    when: row.when ?? null,
    to: row.to,
    actions: row.do ?? [],
    clause: row.clause,
  }));
}

function phasesOf(
  procedure: keyof Dialogues,
  phases: Readonly<Record<string, PhaseRow>>,
): readonly ReturnType<typeof phaseTable>[number][] {
  return Object.entries(phases).map(([phase, { waits }]) => {
    const { message: meaning, ...said } = phaseMeaning('station-phase', {
      phase: `${procedure}.${phase}` as Phase,
    });
    return { ...said, procedure, phase, meaning, waits };
  });
}
