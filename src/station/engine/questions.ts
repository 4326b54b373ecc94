import { want } from '../../result/internal.ts';
import type { Dialogue } from '../model/dialogue.ts';
import type { Effect } from '../model/effect.ts';
import type { AnswerKind } from '../model/event.ts';
import type { StationState } from '../model/state.ts';
import { say } from '../texts.ts';
import { briefly, vesselIn } from './brief.ts';
import { emit, type Turn } from './turn.ts';

type Question = Pick<Effect<'ask'>, 'question' | 'code' | 'params' | 'text' | 'answers'>;

const YES_OR_NO: readonly AnswerKind[] = ['confirm', 'decline'];

/** What the person is asked in the phase a dialogue is in, `null` when nothing. */
export function questionOf(dialogue: Dialogue): Question | null {
  switch (dialogue.procedure) {
    case 'outgoing':
      if (dialogue.phase === 'confirming') {
        const text = say('station-ask-send', { call: briefly(dialogue.call) });
        return { question: 'send-this', ...text, answers: YES_OR_NO };
      }
      return dialogue.phase === 'agreed' ? tuneTo(dialogue.channel) : null;
    case 'incoming':
      if (dialogue.phase === 'deciding') {
        const text = say('station-ask-answer', { call: briefly(dialogue.call) });
        return { question: 'answer-call', ...text, answers: ['answer', 'reject', 'dismiss'] };
      }
      return dialogue.phase === 'agreed' ? tuneTo(dialogue.channel) : null;
    case 'own-distress':
      if (dialogue.phase === 'cancel-asked') {
        return { question: 'cancel-alert', ...say('station-ask-cancel', {}), answers: YES_OR_NO };
      }
      return dialogue.phase === 'interrupted' ? repeat() : null;
    case 'heard-distress': {
      if (dialogue.phase !== 'acknowledge-asked') return null;
      const text = say('station-ask-acknowledge', { vessel: vesselIn(dialogue.distressed) });
      return { question: 'acknowledge-distress', ...text, answers: YES_OR_NO };
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
export function openQuestions(
  state: StationState,
): readonly Pick<
  Effect<'ask'>,
  'kind' | 'dialogue' | 'call' | 'question' | 'code' | 'params' | 'text' | 'answers'
>[] {
  want('openQuestions', 'the state of a station', state, 'dialogues');
  return state.dialogues.flatMap((dialogue) => {
    const question = questionOf(dialogue);
    if (question === null) return [];
    return [{ kind: 'ask', dialogue: dialogue.id, call: dialogue.call, ...question } as const];
  });
}

/** Asks it. */
export function ask(turn: Turn, dialogue: Dialogue): void {
  const question = questionOf(dialogue);
  if (question === null) return;
  const caution = question.question === 'send-this' ? say('station-caution-sending', {}) : null;
  emit(turn, dialogue, { kind: 'ask', ...question }, caution);
}

function repeat(): Question {
  const answers = ['press-alert', 'cancel-alert', 'stop-alert'] as const;
  return { question: 'repeat-alert', ...say('station-ask-repeat', {}), answers };
}

function tuneTo(channel: string | null): Question {
  const text = say('station-ask-tune', channel === null ? {} : { channel });
  return { question: 'tune-to', ...text, answers: YES_OR_NO };
}
