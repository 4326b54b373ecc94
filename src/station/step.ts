import type { Issue } from '../result/index.ts';
import { tuneByHand } from './engine/action.ts';
import { agePosition, moveClock, nextWake, takeFix } from './engine/clock.ts';
import { emit, log, reject, type StationStep, type Turn } from './engine/turn.ts';
import { actOnAlert, actOnDialogue, changeSettings, prepareAlert, silence } from './inputs/act.ts';
import { fireOn, makeWay, rankOf, sendNext } from './inputs/dialogues.ts';
import { malformationOf } from './inputs/event-form.ts';
import { hear } from './inputs/receive-call.ts';
import { beginCall } from './inputs/start-call.ts';
import { type WaitName, waitsOf } from './model/dialogue.ts';
import type { StationEvent } from './model/event.ts';
import type { StationState } from './model/state.ts';
import { showAgain } from './restore/resume.ts';
import { issue } from './texts.ts';

/**
 * What a station does about an event. Pure: the same state and event give the same step, and neither is changed.
 *
 * It never throws and drops no event: one that cannot be followed gives a `issue` effect that says why.
 * A clock that jumps back takes all waits with it; one that jumps forward ends each wait once.
 *
 * The machine asks for transmissions; it does not make them lawful. Sending needs a licensed station and a trained
 * operator, and national rules come first.
 *
 * @param state - from {@link createStation}, {@link restoreStation} or an earlier step
 * @param event - what happened
 * @returns the new state, the effects to carry out and the transitions taken
 *
 * @see {@link nextWake}
 * @see {@link transitionTable}
 *
 * @example
 * ```ts
 * import { composeTestCall } from 'seahail/call';
 * import { createStation, step } from 'seahail/station';
 *
 * const tern = createStation({ mmsi: '232999142' });
 * const call = composeTestCall({ from: '232999871', to: '232999142' });
 * const { effects } = step(tern, { kind: 'received', at: Date.UTC(2026, 5, 1), call, verdict: 'clean' });
 * const send = effects.find((effect) => effect.kind === 'send');
 * console.log(send?.call.kind); // test-acknowledgement
 * ```
 */
export function step(state: StationState, event: StationEvent): StationStep {
  try {
    const wrong = malformationOf(event);
    return wrong === null ? take(turnOf(state), event) : refuse(state, wrong);
  } catch {
    // Plain JavaScript can hand in what no check foresees, such as a property that throws when it is read.
    return refuse(state, issue('station-event-unreadable', {}));
  }
}

function turnOf(state: StationState): Turn {
  return {
    state: { ...state, dialogues: state.dialogues.map((dialogue) => ({ ...dialogue })) },
    effects: [],
    transitions: [],
    failed: [],
    clause: null,
  };
}

/** Nothing is changed, and the reason is given. */
function refuse(state: StationState, wrong: Issue): StationStep {
  return {
    state,
    effects: [{ kind: 'issue', issue: wrong, dialogue: null, clause: null, caution: null }],
    transitions: [],
  };
}

function take(turn: Turn, event: StationEvent): StationStep {
  const before = turn.state.now;
  moveClock(turn, event.at);
  const newest = turn.state.nextDialogue;
  if (turn.state.restored) showAgain(turn, turn.state.now - before);
  agePosition(turn);
  follow(turn, event);
  agePosition(turn);
  endWaits(turn);
  sendAll(turn);
  chooseActive(turn, newest);
  askToWake(turn);
  return { state: turn.state, effects: turn.effects, transitions: turn.transitions };
}

/** Sends what waits. A call that is barred from the air has failed, and lets the next one have its turn. */
function sendAll(turn: Turn): void {
  do {
    for (const id of turn.failed.splice(0)) {
      const dialogue = turn.state.dialogues.find((each) => each.id === id);
      if (dialogue !== undefined) fireOn(turn, dialogue, 'send-failed');
    }
    sendNext(turn);
  } while (turn.failed.length > 0);
}

function follow(turn: Turn, event: StationEvent): void {
  switch (event.kind) {
    case 'clock':
      break;
    case 'received':
      hear(turn, event);
      break;
    case 'channel':
      turn.state.channelBusy = event.busy;
      break;
    case 'tuned':
      tuneByHand(turn, event.channel);
      break;
    case 'sent':
    case 'send-failed':
      endTransmission(turn, event);
      break;
    case 'fix':
      if (!takeFix(turn, event)) reject(turn, null, issue('station-fix-form', {}));
      break;
    case 'settings':
      changeSettings(turn, event);
      break;
    case 'call':
      beginCall(turn, event);
      break;
    case 'prepare-alert':
      prepareAlert(turn, event);
      break;
    case 'press-alert':
    case 'release-alert':
    case 'stop-alert':
    case 'cancel-alert':
    case 'describe-alert':
      actOnAlert(turn, event);
      break;
    case 'silence':
      silence(turn);
      break;
    case 'note':
      log(turn, null, {
        what: event.corrects === undefined ? 'note' : 'correction',
        text: event.text,
        ...(event.corrects !== undefined && { corrects: event.corrects }),
      });
      break;
    default:
      actOnDialogue(turn, event);
      break;
  }
}

function endTransmission(turn: Turn, event: StationEvent<'sent'> | StationEvent<'send-failed'>): void {
  const { state } = turn;
  const dialogue = state.dialogues.find(({ id }) => id === event.dialogue && id === state.transmitting);
  if (dialogue === undefined) {
    const { dialogue: id, kind: received } = event;
    reject(turn, null, issue('station-not-on-air', { dialogue: String(id) }, { received }));
    return;
  }
  fireOn(turn, dialogue, event.kind);
}

/** Ends every wait whose time has come, the earliest first, each once. */
function endWaits(turn: Turn): void {
  for (;;) {
    const due = earliestDue(turn);
    if (due === null) return;
    const { dialogue, wait } = due;
    const { [wait]: _over, ...others } = dialogue.waits;
    dialogue.waits = others;
    if (wait === 'alert-busy-limit') makeWay(turn, dialogue);
    fireOn(turn, dialogue, `${wait} over`, { late: turn.state.now - due.until });
  }
}

interface Due {
  readonly dialogue: Turn['state']['dialogues'][number];
  readonly wait: WaitName;
  readonly until: number;
}

function earliestDue({ state }: Turn): Due | null {
  let due: Due | null = null;
  for (const dialogue of state.dialogues) {
    for (const [wait, until] of waitsOf(dialogue)) {
      if (until <= state.now && (due === null || until < due.until)) due = { dialogue, wait, until };
    }
  }
  return due;
}

/** A new dialogue comes before the person unless something more important is there; the others are on hold. */
function chooseActive({ state }: Turn, newest: number): void {
  const current = state.dialogues.find(({ id }) => id === state.active);
  let best = current;
  for (const dialogue of state.dialogues) {
    const isNew = dialogue.id >= newest;
    if (best === undefined || ((isNew || current === undefined) && rankOf(dialogue) > rankOf(best)))
      best = dialogue;
  }
  state.active = best?.id ?? null;
}

/** Asks for the next clock event when it is another than the one asked for last. */
function askToWake(turn: Turn): void {
  const at = nextWake(turn.state);
  if (at === turn.state.wakeAt) return;
  turn.state.wakeAt = at;
  emit(turn, null, { kind: 'wake', at });
}
