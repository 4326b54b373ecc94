import type { CodedText } from '../../result/index.ts';
import { type Procedure, rowId } from '../engine/procedure.ts';
import { clause } from '../model/clause.ts';
import type { Dialogue, Dialogues } from '../model/dialogue.ts';
import { type Phase, phaseMeaning } from '../texts.ts';
import { incoming } from './incoming.ts';
import { heardDistress } from './other-distress/other-distress.ts';
import { outgoing } from './outgoing.ts';
import { ownDistress } from './own-distress.ts';

const procedures: { readonly [P in keyof Dialogues]: Procedure<P> } = {
  outgoing,
  incoming,
  'own-distress': ownDistress,
  'heard-distress': heardDistress,
};

/** The procedure of a dialogue: the types cannot say that one belongs to the other. */
export function procedureOf({ procedure }: Pick<Dialogue, 'procedure'>): Procedure {
  return procedures[procedure] as unknown as Procedure;
}

const names = /* @__PURE__ */ Object.keys(procedures) as (keyof Dialogues)[];

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
  return names.flatMap((procedure) =>
    Object.entries(procedureOf({ procedure }).transitions).flatMap(([from, rows]) =>
      rows.map((row) => ({
        id: rowId(procedure, from, row),
        procedure,
        from,
        on: row.on,
        when: row.when ?? null,
        to: row.to ?? from,
        actions: row.do ?? [],
        clause: clause[row.clause],
      })),
    ),
  );
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
  return names.flatMap((procedure) =>
    Object.entries(procedureOf({ procedure }).phases).map(([phase, { waits }]) => {
      const { message: meaning, ...said } = phaseMeaning('station-phase', {
        phase: `${procedure}.${phase}` as Phase,
      });
      return { ...said, procedure, phase, meaning, waits };
    }),
  );
}
