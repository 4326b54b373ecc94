import type { Verdict } from '../../burst/index.ts';
import type { Call } from '../../call/index.ts';
import type { OutgoingDialogue } from '../state/dialogue.ts';
import { isCoastIdentity } from './own-identity.ts';
import type { Draft, Turn } from './turn.ts';

/** A call and how well it was received. */
export interface Heard {
  readonly call: Call;
  readonly verdict: Verdict;
}

/**
 * The call of this station that an answer belongs to: one that still waits rather than one that is over, one of the
 * answer's own category rather than another, and the latest of several.
 */
export function findQuestion({ state }: Turn, answer: Call): Draft<OutgoingDialogue> | undefined {
  const fitting = state.dialogues.filter(
    (dialogue): dialogue is Draft<OutgoingDialogue> =>
      dialogue.procedure === 'outgoing' &&
      dialogue.attempts > 0 &&
      fitsQuestion(dialogue.call, answer) &&
      isFromCalled(dialogue.call, answer),
  );
  const waiting = fitting.filter(({ phase }) => phase === 'waiting-answer' || phase === 'retry-wait');
  const among = waiting.length > 0 ? waiting : fitting;
  return among.findLast(({ call }) => categoryOf(call) === categoryOf(answer)) ?? among.at(-1);
}

function categoryOf(call: Call): unknown {
  return 'category' in call ? call.category : null;
}

/** Whether an answer is of the kind that a call asks for. */
export function fitsQuestion(question: Call, answer: Call): boolean {
  switch (answer.kind) {
    case 'individual-acknowledgement':
      return question.kind === 'individual-call';
    case 'position-reply':
      return question.kind === 'position-request';
    case 'test-acknowledgement':
      return question.kind === 'test-call';
    case 'polling-acknowledgement':
      return question.kind === 'polling-call';
    case 'distress-relay-acknowledgement':
      return question.kind === 'distress-relay';
    default:
      return 'category' in question && question.to?.kind === 'station';
  }
}

/** A group of coast stations has an identity of its own, and one of them answers under hers. */
export function isFromCalled(question: Call, answer: Call): boolean {
  if (question.to?.kind !== 'station' || answer.from === null) return false;
  const called = question.to.mmsi;
  return called === answer.from || (isCoastIdentity(called) && isCoastIdentity(answer.from));
}

/** What an answer is to the call it belongs to. */
export function answerTrigger({ call, verdict }: Heard): string {
  if (verdict === 'doubtful') return 'answered-damaged';
  switch (call.kind) {
    case 'individual-acknowledgement':
    case 'distress-relay-acknowledgement':
      return 'able';
    case 'unable-to-comply':
      return 'unable';
    default:
      return 'answered';
  }
}
