import type { Call } from '../../call/index.ts';
import { logDone } from '../engine/action.ts';
import { briefly } from '../engine/brief.ts';
import { isOwnAlertOut } from '../engine/on-air.ts';
import { type Cause, fire, type Trigger } from '../engine/procedure.ts';
import { type Draft, emit, type Turn } from '../engine/turn.ts';
import type { Dialogue } from '../model/dialogue.ts';
import { MOST_DIALOGUES, type StationState } from '../model/state.ts';
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
  logDone(turn, leaving, say('station-closed-for-room', { call: briefly(leaving.call) }));
  state.dialogues = state.dialogues.filter((dialogue) => dialogue !== leaving);
}

/** Puts the most urgent waiting call on the air, if channel 70 and the transmitter are free. */
export function sendNext(turn: Turn): void {
  const { state } = turn;
  if (state.channelBusy || state.transmitting !== null) return;
  let next: Draft<Dialogue> | null = null;
  for (const dialogue of state.dialogues) {
    if (!isWaitingToSend(dialogue) || isHeldBack(state, dialogue)) continue;
    if (next === null || urgencyOf(dialogue) < urgencyOf(next)) next = dialogue;
  }
  if (next !== null) fireOn(turn, next, 'channel free');
}

/** Breaks off another call of this station that is on the air: distress does not wait for it. */
export function makeWay(turn: Turn, dialogue: Dialogue): void {
  const { state } = turn;
  const other = state.dialogues.find(({ id }) => id === state.transmitting && id !== dialogue.id);
  if (other === undefined) return;
  emit(turn, other, { kind: 'stop-sending' });
  state.transmitting = null;
  fireOn(turn, other, 'send-failed');
}

/** Whether a dialogue has a call that waits for channel 70. */
export function isWaitingToSend({ phase }: Dialogue): boolean {
  return phase === 'waiting-channel' || phase === 'cancel-waiting' || phase === 'acknowledge-waiting';
}

/** Distress first, then answers, then calls by category: 0 is the most urgent. */
function urgencyOf(dialogue: Dialogue): number {
  switch (dialogue.procedure) {
    case 'own-distress':
      return 0;
    case 'heard-distress':
      return 1;
    case 'incoming':
      return 3;
    case 'outgoing':
      if (dialogue.call.kind === 'distress-relay') return 1;
      if (!('category' in dialogue.call)) return 5;
      return dialogue.call.category === 'urgency' ? 2 : dialogue.call.category === 'safety' ? 4 : 5;
  }
}

/**
 * Transmissions that may disturb distress traffic wait (ITU-R M.541-11; 47 CFR 80.1121(a)): everything but distress
 * while the own alert is out and not acknowledged, and in the five minutes after an alert was heard everything but
 * urgency and safety calls, answers included. Tests and position requests bear the category safety, and are none.
 * deviation: D-station-9
 */
export function isHeldBack(state: StationState, dialogue: Dialogue): boolean {
  if (dialogue.procedure === 'own-distress' || dialogue.procedure === 'heard-distress') return false;
  if (dialogue.call.kind === 'distress-relay') return false;
  if (isOwnAlertOut(state) && state.dialogues.some(isUnacknowledged)) return true;
  return !isSafetyTraffic(dialogue.call) && state.dialogues.some(({ phase }) => phase === 'listening');
}

function isSafetyTraffic(call: Call): boolean {
  const announces =
    call.kind === 'all-ships-call' || call.kind === 'area-call' || call.kind === 'individual-call';
  return announces && (call.category === 'urgency' || call.category === 'safety');
}

function isUnacknowledged({ procedure, phase }: Dialogue): boolean {
  return (
    procedure === 'own-distress' &&
    phase !== 'acknowledged' &&
    phase !== 'stopped' &&
    phase !== 'cancel-voice' &&
    phase !== 'cancel-voice-only'
  );
}
