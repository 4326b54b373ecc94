import type { Dialogue } from '../state/dialogue.ts';
import { type Cause, fire } from '../state/procedure.ts';
import { heardDistress } from './heard-distress.ts';
import { incoming } from './incoming.ts';
import { outgoing } from './outgoing.ts';
import { ownDistress } from './own-distress.ts';
import type { Draft, Turn } from './turn.ts';

/** Takes the first row that fits in the table of the dialogue's own procedure; tells whether one did. */
export function fireOn(turn: Turn, dialogue: Draft<Dialogue>, on: string, cause: Cause = {}): boolean {
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
