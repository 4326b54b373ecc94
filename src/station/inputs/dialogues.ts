import { briefly } from '../engine/brief.ts';
import { type Cause, fire } from '../engine/procedure.ts';
import { type Draft, log, type Turn } from '../engine/turn.ts';
import type { Dialogue } from '../model/dialogue.ts';
import { MOST_DIALOGUES } from '../model/state.ts';
import type { Trigger } from '../model/trigger.ts';
import { procedureOf } from '../procedures/transition-table.ts';
import { say } from '../texts.ts';

/** Takes the first row that fits in the table of the dialogue's own procedure. Returns whether one did. */
export function fireOn(turn: Turn, dialogue: Draft<Dialogue>, on: Trigger, cause: Cause = {}): boolean {
  return fire(turn, procedureOf(dialogue), dialogue, dialogue.phase, on, cause);
}

type Opening<D> = D extends Dialogue ? Omit<D, 'id' | 'openedAt' | 'changedAt' | 'waits'> : never;

/** Opens a dialogue and takes the first row of its table that fits. */
export function openDialogue(turn: Turn, opening: Opening<Dialogue>, on: Trigger, cause: Cause = {}): void {
  makeRoom(turn);
  const { state } = turn;
  const times = { openedAt: state.now, changedAt: state.now };
  const dialogue: Draft<Dialogue> = { ...opening, id: state.nextDialogue++, ...times, waits: {} };
  state.dialogues.push(dialogue);
  fire(turn, procedureOf(dialogue), dialogue, 'new', on, cause);
}

/** What matters more to the person: the own distress, another's, everything else. */
export function rankOf(dialogue: Dialogue): number {
  if (dialogue.procedure === 'own-distress') return 2;
  return dialogue.procedure === 'heard-distress' ? 1 : 0;
}

/** Memory is bounded: the oldest dialogue of the lowest rank that is not on the air goes, and the log says so. */
function makeRoom(turn: Turn): void {
  const { state } = turn;
  if (state.dialogues.length < MOST_DIALOGUES) return;
  let leaving: Draft<Exclude<Dialogue, Dialogue<'own-distress'>>> | null = null;
  for (const dialogue of state.dialogues) {
    if (dialogue.id === state.transmitting || dialogue.procedure === 'own-distress') continue;
    if (leaving === null || rankOf(dialogue) < rankOf(leaving)) leaving = dialogue;
  }
  if (leaving === null) return;
  log(turn, leaving, { what: 'done', ...say('station-closed-for-room', { call: briefly(leaving.call) }) });
  state.dialogues = state.dialogues.filter((dialogue) => dialogue !== leaving);
}
