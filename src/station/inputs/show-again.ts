import { sound } from '../engine/action.ts';
import { briefly } from '../engine/brief.ts';
import { ask, questionOf } from '../engine/questions.ts';
import { emit, type Turn } from '../engine/turn.ts';
import { clause } from '../model/clause.ts';
import { type Dialogue, waitsOf } from '../model/dialogue.ts';
import { adviceFor } from '../procedures/other-distress/advise.ts';
import { say } from '../texts.ts';

/**
 * After a restore: the alarms sound again, and every dialogue in hand is shown, with its question or advice. A question
 * about distress sounds the alarm, and waits as long as if it had just been asked.
 *
 * @param gap - milliseconds since the last step before the restore
 */
export function showAgain(turn: Turn, gap: number): void {
  const { state } = turn;
  state.restored = false;
  turn.clause = clause.ownChoice;
  for (const alarm of state.sounding) emit(turn, null, { kind: 'sound', alarm, lasts: 'until-silenced' });
  for (const dialogue of state.dialogues) {
    const { call, procedure } = dialogue;
    if (call !== null) {
      emit(turn, dialogue, {
        kind: 'show',
        topic: 'still-in-hand',
        ...say('station-still-in-hand', { call: briefly(call) }),
      });
    }
    if (procedure === 'heard-distress')
      emit(turn, dialogue, { kind: 'advise', advice: adviceFor(state, dialogue) });
    if (asksAboutDistress(dialogue)) {
      sound(turn, dialogue, 'distress');
      const waits = waitsOf(dialogue).map(([wait, until]) => [wait, until + Math.max(gap, 0)]);
      dialogue.waits = Object.fromEntries(waits);
    }
    ask(turn, dialogue);
  }
  turn.clause = null;
}

function asksAboutDistress(dialogue: Dialogue): boolean {
  switch (questionOf(dialogue)?.question) {
    case 'repeat-alert':
    case 'cancel-alert':
    case 'acknowledge-distress':
      return true;
    case 'send-this':
      return dialogue.call?.kind === 'distress-relay';
    default:
      return false;
  }
}
