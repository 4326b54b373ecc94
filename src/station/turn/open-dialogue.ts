import type { Dialogue } from '../state/dialogue.ts';
import { type Cause, fire } from '../state/procedure.ts';
import { MOST_DIALOGUES } from '../state/state.ts';
import { briefly } from './brief.ts';
import { heardDistress } from './heard-distress.ts';
import { incoming } from './incoming.ts';
import { outgoing } from './outgoing.ts';
import { ownDistress } from './own-distress.ts';
import { type Draft, log, type Turn } from './turn.ts';

type Base = 'id' | 'openedAt' | 'changedAt' | 'waits' | 'phase';
type Opening<D> = D extends Dialogue ? Omit<D, Base> : never;

/** Opens a dialogue and takes the first row of its table that fits. */
export function openDialogue(turn: Turn, opening: Opening<Dialogue>, on: string, cause: Cause = {}): void {
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
  let leaving: Draft<Dialogue> | null = null;
  for (const dialogue of state.dialogues) {
    if (dialogue.id === state.transmitting || dialogue.procedure === 'own-distress') continue;
    if (leaving === null || rankOf(dialogue) < rankOf(leaving)) leaving = dialogue;
  }
  if (leaving === null) return;
  const what = leaving.call === null ? leaving.procedure : briefly(leaving.call);
  log(turn, leaving, { what: 'done', text: `Put away to make room: ${what}` });
  state.dialogues = state.dialogues.filter((dialogue) => dialogue !== leaving);
}
