import type { Dialogue } from '../model/dialogue.ts';
import type { Effect } from '../model/effect.ts';
import type { AnswerKind } from '../model/event.ts';
import type { StationState } from '../model/state.ts';
import { briefly } from './brief.ts';
import { emit, type Turn } from './turn.ts';

type Question = Pick<Effect<'ask'>, 'question' | 'text' | 'answers'> & { readonly caution?: string };

const YES_OR_NO: readonly AnswerKind[] = ['confirm', 'decline'];

/** What the person is asked in the phase a dialogue is in, `null` when nothing. */
export function questionOf(dialogue: Dialogue): Question | null {
  switch (dialogue.procedure) {
    case 'outgoing':
      if (dialogue.phase === 'confirming') {
        const text = `Send the ${briefly(dialogue.call)}?`;
        return { question: 'send-this', text, answers: YES_OR_NO, caution: SEND_CAUTION };
      }
      return dialogue.phase === 'agreed' ? tuneTo(dialogue.channel) : null;
    case 'incoming':
      if (dialogue.phase === 'deciding') {
        const text = `Answer the ${briefly(dialogue.call)}?`;
        return { question: 'answer-call', text, answers: ['answer', 'reject', 'dismiss'] };
      }
      return dialogue.phase === 'agreed' ? tuneTo(dialogue.channel) : null;
    case 'own-distress':
      if (dialogue.phase === 'cancel-asked') {
        const text = 'Was the alert false? If so it is cancelled by DSC and then by voice on channel 16';
        return { question: 'cancel-alert', text, answers: YES_OR_NO };
      }
      return dialogue.phase === 'interrupted' ? REPEAT : null;
    case 'heard-distress': {
      if (dialogue.phase !== 'acknowledge-asked') return null;
      const text = `Acknowledge the distress of ${dialogue.distressed ?? 'an unidentified vessel'} by DSC?`;
      return { question: 'acknowledge-distress', text, answers: YES_OR_NO };
    }
  }
}

/**
 * The questions that wait for a person's answer, in order of their dialogues: for a display that was opened late, or a
 * station that was just restored.
 *
 * @param state - any state
 * @returns one for each dialogue that asks; what to decide about another vessel's distress is in `adviseOnDistress`
 *
 * @see {@link restoreStation}
 * @see {@link adviseOnDistress}
 *
 * @example
 * ```ts
 * import { composePositionRequest } from 'seahail/call';
 * import { createStation, openQuestions, step } from 'seahail/station';
 *
 * const call = composePositionRequest({ from: '232999142', to: '232999871' });
 * const merrow = createStation({ mmsi: '232999871' });
 * const { state } = step(merrow, { kind: 'received', at: Date.UTC(2026, 5, 1, 18, 0), call, verdict: 'clean' });
 * for (const { question, dialogue } of openQuestions(state)) console.log(question, dialogue); // answer-call 1
 * ```
 */
export function openQuestions({
  dialogues,
}: StationState): readonly Pick<
  Effect<'ask'>,
  'kind' | 'dialogue' | 'call' | 'question' | 'text' | 'answers'
>[] {
  return dialogues.flatMap((dialogue) => {
    const asked = questionOf(dialogue);
    if (asked === null) return [];
    const { caution: _, ...question } = asked;
    return [{ kind: 'ask', dialogue: dialogue.id, call: dialogue.call, ...question } as const];
  });
}

/** Asks it. */
export function ask(turn: Turn, dialogue: Dialogue): void {
  const asked = questionOf(dialogue);
  if (asked === null) return;
  const { caution, ...question } = asked;
  emit(turn, dialogue, { kind: 'ask', ...question }, caution);
}

const SEND_CAUTION =
  'Distress, urgency and safety calls reach every ship in range. Send one only on the authority of the person responsible for the vessel, and as your licence and national rules allow';

const REPEAT: Question = {
  question: 'repeat-alert',
  text: 'The own distress alert is no longer repeated. Hold the key to send it again, or cancel it if it was false',
  answers: ['press-alert', 'cancel-alert', 'stop-alert'],
};

function tuneTo(channel: string | null): Question {
  return { question: 'tune-to', text: `Tune to channel ${channel}?`, answers: YES_OR_NO };
}
