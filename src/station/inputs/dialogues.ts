import { briefly } from '../engine/brief.ts';
import { type Cause, fire } from '../engine/procedure.ts';
import { type Draft, log, type Turn } from '../engine/turn.ts';
import type { Dialogue } from '../model/dialogue.ts';
import { MOST_DIALOGUES } from '../model/state.ts';
import type { Trigger } from '../model/trigger.ts';
import { incoming } from '../procedures/incoming.ts';
import { heardDistress } from '../procedures/other-distress/other-distress.ts';
import { outgoing } from '../procedures/outgoing.ts';
import { ownDistress } from '../procedures/own-distress/own-distress.ts';
import { say } from '../texts.ts';

/** Takes the first row that fits in the table of the dialogue's own procedure. Returns whether one did. */
export function fireOn(turn: Turn, dialogue: Draft<Dialogue>, on: Trigger, cause: Cause = {}): boolean {
  switch (dialogue.procedure) {
    case 'outgoing':
      return fire(turn, outgoing, dialogue, dialogue.phase, on, cause);
    case 'incoming':
      return fire(turn, incoming, dialogue, dialogue.phase, on, cause);
    case 'own-distress':
      return fire(turn, ownDistress, dialogue, dialogue.phase, on, cause);
    case 'heard-distress':
      return fire(turn, heardDistress, dialogue, dialogue.phase, on, cause);
  }
}

type Base = 'id' | 'openedAt' | 'changedAt' | 'waits' | 'phase';

type Opening<D> = D extends Dialogue ? Omit<D, Base> : never;

/** Opens a dialogue and takes the first row of its table that fits. */
export function openDialogue(turn: Turn, opening: Opening<Dialogue>, on: Trigger, cause: Cause = {}): void {
  makeRoom(turn);
  const { state } = turn;
  const base = { id: state.nextDialogue++, openedAt: state.now, changedAt: state.now, waits: {} };
  switch (opening.procedure) {
    case 'outgoing': {
      const dialogue = { ...opening, ...base, phase: 'waiting-channel' as const };
      state.dialogues.push(dialogue);
      fire(turn, outgoing, dialogue, 'new', on, cause);
      return;
    }
    case 'incoming': {
      const dialogue = { ...opening, ...base, phase: 'shown' as const };
      state.dialogues.push(dialogue);
      fire(turn, incoming, dialogue, 'new', on, cause);
      return;
    }
    case 'own-distress': {
      const dialogue = { ...opening, ...base, phase: 'prepared' as const };
      state.dialogues.push(dialogue);
      fire(turn, ownDistress, dialogue, 'new', on, cause);
      return;
    }
    case 'heard-distress': {
      const dialogue = { ...opening, ...base, phase: 'shown' as const };
      state.dialogues.push(dialogue);
      fire(turn, heardDistress, dialogue, 'new', on, cause);
    }
  }
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
