import type { Call } from '../../call/index.ts';
import { show, sound } from '../engine/action.ts';
import { briefly } from '../engine/brief.ts';
import { mayAnswerAlone, mayRepeatAlone, objectionTo } from '../engine/on-air.ts';
import { ask, questionOf } from '../engine/questions.ts';
import { emit, type Turn } from '../engine/turn.ts';
import { barOf } from '../model/channel.ts';
import { clause } from '../model/clause.ts';
import { type Dialogue, waitsOf } from '../model/dialogue.ts';
import { maySend } from '../model/equipment.ts';
import { policyFor } from '../model/settings.ts';
import type { StationState } from '../model/state.ts';
import { adviceFor } from '../procedures/other-distress/advise.ts';
import { objectionToAcknowledging } from '../procedures/other-distress/other-distress.ts';
import { fitsQuestion, isFromCalled } from '../procedures/outgoing.ts';
import { say } from '../texts.ts';

/** Whether a stored dialogue could have come about: its call fits its procedure, the own identity and the class. */
export function isPlausible(state: StationState, dialogue: Dialogue): boolean {
  const { mmsi, equipment } = state.settings;
  const { call } = dialogue;
  switch (dialogue.procedure) {
    case 'outgoing':
      return objectionTo(state, dialogue, dialogue.call) === null && leadsSomewhere(dialogue.call);
    case 'incoming':
      return !dialogue.call.kind.startsWith('distress-');
    case 'own-distress':
      return (
        mmsi !== null &&
        maySend(equipment, { kind: 'distress-alert', to: { kind: 'all-stations' } }) &&
        (call === null || objectionTo(state, dialogue, call) === null)
      );
    case 'heard-distress':
      return dialogue.call.kind.startsWith('distress-') && subjectOf(dialogue.call) === dialogue.distressed;
  }
}

/** The dialogue without an answer or acknowledgement that does not belong to it; the same one when all fits. */
export function withoutWrongAnswer(state: StationState, dialogue: Dialogue): Dialogue {
  switch (dialogue.procedure) {
    case 'outgoing': {
      const { answer, call } = dialogue;
      const fits = answer === null || (fitsQuestion(call, answer) && isFromCalled(call, answer));
      return fits ? dialogue : { ...dialogue, answer: null };
    }
    case 'incoming': {
      const { answer, automatic, call } = dialogue;
      const chosen =
        !automatic || (mayAnswerAlone(state, dialogue) && policyFor(state.settings, call) !== 'by-hand');
      const fits = answer === null ? !automatic : chosen && objectionTo(state, dialogue, answer) === null;
      return fits ? dialogue : { ...dialogue, answer: null, automatic: false };
    }
    case 'own-distress': {
      const { acknowledgement } = dialogue;
      const { mmsi } = state.settings;
      const fits =
        acknowledgement === null ||
        (acknowledgement.kind === 'distress-acknowledgement' &&
          acknowledgement.distressed === mmsi &&
          acknowledgement.from !== mmsi);
      return fits ? dialogue : { ...dialogue, acknowledgement: null };
    }
    case 'heard-distress': {
      const { answer } = dialogue;
      const fits = answer === null || objectionTo(state, dialogue, answer) === null;
      return fits ? dialogue : { ...dialogue, answer: null };
    }
  }
}

/**
 * How a stored dialogue goes on. What would go on the air with nobody asked is put to a person instead, unless the app
 * vouches for its store; distress is put to the person even then, but for an own alert in hand whose next repeat is not
 * further away than it was made for.
 *
 * @param gap - milliseconds since the state was stored, `null` when the app does not vouch for its store
 * @param repeat - milliseconds from the last own alert to its repeat
 */
export function resumed(
  state: StationState,
  dialogue: Dialogue,
  gap: number | null,
  repeat: number,
): Dialogue {
  switch (dialogue.procedure) {
    case 'outgoing':
      return resumedOutgoing(dialogue, gap !== null);
    case 'incoming':
      return resumedIncoming(dialogue, gap !== null);
    case 'own-distress':
      return resumedOwnDistress(dialogue, gap !== null && mayRepeatAlone(gap, repeat));
    case 'heard-distress':
      return resumedHeardDistress(state, dialogue);
  }
}

function resumedOutgoing(dialogue: Dialogue<'outgoing'>, vouched: boolean): Dialogue<'outgoing'> {
  const { attempts, call, phase } = dialogue;
  const goesOn = vouched && call.kind !== 'distress-relay';
  const sends = phase === 'waiting-channel' || phase === 'sending' || phase === 'retry-wait';
  if (goesOn) return { ...dialogue, allowed: Math.min(dialogue.allowed, attempts + MOST_ATTEMPTS) };
  // Once, when a person says so; otherwise not again.
  const asks = sends || phase === 'confirming';
  return { ...dialogue, allowed: asks ? attempts + 1 : attempts, phase: asks ? 'confirming' : phase };
}

/** No call is repeated more often without a person. */
const MOST_ATTEMPTS = 3;

function resumedIncoming(dialogue: Dialogue<'incoming'>, vouched: boolean): Dialogue<'incoming'> {
  const { answer, phase } = dialogue;
  const sends = phase === 'waiting-channel' || phase === 'sending';
  return !sends || (vouched && answer !== null)
    ? dialogue
    : { ...dialogue, phase: 'deciding', answer: null, automatic: false };
}

function resumedOwnDistress(dialogue: Dialogue<'own-distress'>, goesOn: boolean): Dialogue<'own-distress'> {
  const { acknowledgement, alertedAt, attempts, cancelWanted, phase, stopped } = dialogue;
  switch (phase) {
    // Nobody knows whether the key is still held.
    case 'countdown':
      if (acknowledgement !== null) return { ...dialogue, phase: 'acknowledged' };
      if (stopped) return { ...dialogue, phase: 'stopped' };
      return attempts > 0 ? interrupted(dialogue) : { ...dialogue, phase: 'prepared' };
    case 'waiting-channel':
      return goesOn ? dialogue : interrupted(dialogue);
    case 'sending':
    case 'waiting-acknowledgement':
      if (goesOn && attempts > 0 && alertedAt !== null) return dialogue;
      return cancelWanted ? cancelAsked(dialogue) : interrupted(dialogue);
    case 'cancel-asked':
    case 'cancel-waiting':
    case 'cancel-sending':
      return goesOn && attempts > 0 && alertedAt !== null ? dialogue : cancelAsked(dialogue);
    default:
      return dialogue;
  }
}

function interrupted(dialogue: Dialogue<'own-distress'>): Dialogue<'own-distress'> {
  return { ...dialogue, phase: 'interrupted', stopped: true };
}

function cancelAsked(dialogue: Dialogue<'own-distress'>): Dialogue<'own-distress'> {
  return { ...dialogue, phase: 'cancel-asked', stopped: true, cancelWanted: false };
}

function resumedHeardDistress(
  state: StationState,
  dialogue: Dialogue<'heard-distress'>,
): Dialogue<'heard-distress'> {
  switch (dialogue.phase) {
    case 'acknowledge-asked':
    case 'acknowledge-waiting':
    case 'acknowledge-sending': {
      const maySendOne = objectionToAcknowledging(state, dialogue) === null;
      return { ...dialogue, phase: maySendOne ? 'acknowledge-asked' : 'undecided', answer: null };
    }
    default:
      return dialogue;
  }
}

/** Whether a call names somebody to send it to, and no channel that no such talk may use. */
function leadsSomewhere(call: Call): boolean {
  if (call.to === null || ('mmsi' in call.to && call.to.mmsi === null)) return false;
  return !('channel' in call) || call.channel === null || barOf(call, call.channel) === null;
}

function subjectOf(call: Call): string | null {
  return 'distressed' in call ? call.distressed : call.from;
}

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
      show(turn, dialogue, 'still-in-hand', say('station-still-in-hand', { call: briefly(call) }));
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
