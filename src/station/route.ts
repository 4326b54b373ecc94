import type { Call } from '../call/index.ts';
import { briefly } from './brief.ts';
import { tell } from './common-action.ts';
import type { Dialogue, HeardDistressDialogue, OutgoingDialogue } from './dialogue.ts';
import type { HeardEvent } from './event.ts';
import { fireOn } from './fire-on.ts';
import { addresseeOf } from './for-station.ts';
import { openDialogue } from './open-dialogue.ts';
import { isCoastIdentity } from './own-identity.ts';
import { MOST_ALERTS } from './state.ts';
import { lengthOf } from './timer.ts';
import { type Draft, log, type Turn } from './turn.ts';

/** Takes a received call to the dialogue it belongs to, or opens one for it. */
export function hear(turn: Turn, { call, verdict }: HeardEvent): void {
  const { settings } = turn.state;
  const forUs = addresseeOf(turn.state, call);
  if (!forUs) {
    if (settings.logOthers)
      log(turn, null, { what: 'heard', text: `For others: ${briefly(call)}`, call, verdict });
    return;
  }
  const trigger = distressTrigger(call);
  const quality = verdict === 'clean' ? '' : ` (${verdict})`;
  log(turn, null, { what: 'heard', text: `Heard${quality}: ${briefly(call)}`, call, verdict });
  if (trigger !== null) hearDistress(turn, { call, verdict }, trigger);
  else if (!isOwnEcho(turn, call)) hearOther(turn, { call, verdict });
}

type Heard = Pick<HeardEvent, 'call' | 'verdict'>;
type DistressTrigger = 'alert' | 'relay' | 'acknowledgement' | 'cancellation';

function distressTrigger(call: Call): DistressTrigger | null {
  switch (call.kind) {
    case 'distress-alert':
      return 'alert';
    case 'distress-relay':
      return 'relay';
    case 'distress-acknowledgement':
    case 'distress-relay-acknowledgement':
      return 'acknowledgement';
    case 'distress-self-cancel':
      return 'cancellation';
    default:
      return null;
  }
}

function isOwnEcho({ state }: Turn, call: Call): boolean {
  return call.from !== null && call.from === state.settings.mmsi;
}

function hearDistress(turn: Turn, heard: Heard, trigger: DistressTrigger): void {
  const { call, verdict } = heard;
  const { state } = turn;
  if (answerRelay(turn, heard)) return;
  const distressed = 'distressed' in call ? call.distressed : call.from;
  const own = state.dialogues.find(({ procedure }) => procedure === 'own-distress');
  if (own !== undefined && distressed !== null && distressed === state.settings.mmsi) {
    if (!isOwnEcho(turn, call)) fireOn(turn, own, ownTrigger(call, verdict), heard);
    return;
  }
  const known = state.dialogues.find(
    (dialogue): dialogue is Draft<HeardDistressDialogue> =>
      dialogue.procedure === 'heard-distress' && isSameDistress(dialogue, distressed, call),
  );
  const isGoodAlert = trigger === 'alert' && verdict !== 'doubtful';
  if (known === undefined) {
    openDialogue(
      turn,
      {
        procedure: 'heard-distress',
        distressed,
        call,
        verdict,
        alerts: isGoodAlert ? 1 : 0,
        lastAlertAt: isGoodAlert ? state.now : null,
        acknowledgedBy: null,
        answer: null,
      },
      trigger,
      heard,
    );
  } else {
    const sameAttempt = isGoodAlert && isOfSameAttempt(turn, known, call);
    if (isGoodAlert) {
      if (!sameAttempt) known.alerts++;
      known.lastAlertAt = state.now;
    }
    if (!sameAttempt || known.verdict !== 'clean') fireOn(turn, known, trigger, heard);
  }
  if (verdict !== 'doubtful' && (trigger === 'alert' || trigger === 'relay'))
    rememberAlert(turn, distressed, call);
}

/** An attempt is five alerts in a row that say the same: hearing more than one of them is no repeat. */
function isOfSameAttempt({ state }: Turn, known: HeardDistressDialogue, call: Call): boolean {
  const { lastAlertAt } = known;
  const nature = (of: Call) => ('nature' in of ? of.nature : null);
  return (
    lastAlertAt !== null &&
    state.now - lastAlertAt < lengthOf('attempt-length', state.settings.timers) &&
    nature(call) === nature(known.call)
  );
}

/** Of a vessel unknown only the nature and the position can tell whether it is the same. */
function isSameDistress(dialogue: HeardDistressDialogue, distressed: string | null, call: Call): boolean {
  if (distressed !== null || dialogue.distressed !== null) return dialogue.distressed === distressed;
  if (!('nature' in call && 'nature' in dialogue.call)) return false;
  const place = (of: typeof call) => JSON.stringify([of.nature, of.position]);
  return place(call) === place(dialogue.call);
}

/** Only a clean acknowledgement stops the own alert by itself. deviation: D-station-10 */
function ownTrigger(call: Call, verdict: HeardEvent['verdict']): string {
  if (call.kind !== 'distress-acknowledgement') return 'relayed';
  return verdict === 'clean' ? 'acknowledged' : 'acknowledged-damaged';
}

/** The answer to a relay that this station sent to one coast station. */
function answerRelay(turn: Turn, heard: Heard): boolean {
  if (heard.call.kind !== 'distress-relay-acknowledgement') return false;
  const asked = findAsked(turn, heard.call);
  return asked !== undefined && fireOn(turn, asked, answerTrigger(heard), heard);
}

function rememberAlert({ state }: Turn, distressed: string | null, call: Call): void {
  const nature = 'nature' in call ? call.nature : null;
  const others = state.heardAlerts.filter(
    (known) => known.distressed !== distressed || known.nature !== nature,
  );
  state.heardAlerts = [...others, { distressed, nature, lastAt: state.now }].slice(-MOST_ALERTS);
}

function hearOther(turn: Turn, heard: Heard): void {
  const { call, verdict } = heard;
  const { state } = turn;
  if (isAnswer(call)) {
    const asked = findAsked(turn, call);
    if (asked !== undefined && fireOn(turn, asked, answerTrigger(heard), heard)) return;
    tell(turn, null, 'unexpected-answer', `An answer that nothing waits for: ${briefly(call)}`);
    return;
  }
  const again = state.dialogues.find((dialogue) => isSameCall(dialogue, call));
  if (again !== undefined && verdict !== 'doubtful' && fireOn(turn, again, 'repeated', heard)) return;
  openDialogue(
    turn,
    { procedure: 'incoming', call, verdict, times: 1, answer: null, automatic: false, channel: null },
    'call',
    heard,
  );
}

function isAnswer(call: Call): boolean {
  switch (call.kind) {
    case 'individual-acknowledgement':
    case 'unable-to-comply':
    case 'test-acknowledgement':
    case 'polling-acknowledgement':
      return true;
    case 'position-reply':
      return !call.unasked;
    default:
      return false;
  }
}

function answerTrigger({ call, verdict }: Heard): string {
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

function findAsked({ state }: Turn, answer: Call): Draft<OutgoingDialogue> | undefined {
  return state.dialogues.find(
    (dialogue): dialogue is Draft<OutgoingDialogue> =>
      dialogue.procedure === 'outgoing' &&
      dialogue.attempts > 0 &&
      fitsQuestion(dialogue.call, answer) &&
      isFromCalled(dialogue.call, answer),
  );
}

function fitsQuestion(question: Call, answer: Call): boolean {
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
function isFromCalled(question: Call, answer: Call): boolean {
  if (question.to?.kind !== 'station' || answer.from === null) return false;
  const called = question.to.mmsi;
  return called === answer.from || (isCoastIdentity(called) && isCoastIdentity(answer.from));
}

/** The same caller with the same wish: another channel or category makes it another call. */
function isSameCall(dialogue: Dialogue, call: Call): boolean {
  if (dialogue.procedure !== 'incoming' || dialogue.verdict === 'doubtful' || call.from === null)
    return false;
  const wish = (of: Call) => [
    of.kind,
    of.from,
    'category' in of ? of.category : null,
    'channel' in of ? of.channel : null,
  ];
  return wish(dialogue.call).join() === wish(call).join();
}
