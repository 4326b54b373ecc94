import type { Call } from '../../call/index.ts';
import type { Received } from '../engine/on-air.ts';
import type { Triggers } from '../engine/procedure.ts';
import type { Draft, Turn } from '../engine/turn.ts';
import type { Dialogue } from '../model/dialogue.ts';
import { isCoastIdentity } from '../model/equipment.ts';
import type { StationEvent } from '../model/event.ts';
import { MOST_ALERTS } from '../model/state.ts';
import { lengthOf } from '../model/timer.ts';
import { answerTrigger, findQuestion } from '../procedures/outgoing.ts';
import { fireOn, openDialogue } from './dialogues.ts';

/** What a call says about a distress. */
export type DistressTrigger = 'alert' | 'relay' | 'acknowledgement' | 'cancellation';

/** What a call says about a distress, `null` when nothing. */
export function distressTrigger(call: Call): DistressTrigger | null {
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

/** Takes a call about a distress to the dialogue of that vessel, the own one included, or opens one for it. */
export function hearDistress(turn: Turn, heard: Received, trigger: DistressTrigger): void {
  const { call, verdict } = heard;
  const { state } = turn;
  if (answerRelay(turn, heard)) return;
  const distressed = 'distressed' in call ? call.distressed : call.from;
  endRelays(turn, heard, distressed);
  const own = state.dialogues.find(({ procedure }) => procedure === 'own-distress');
  if (own !== undefined && distressed !== null && distressed === state.settings.mmsi) {
    if (call.from !== state.settings.mmsi) fireOn(turn, own, ownTrigger(call, verdict), heard);
    return;
  }
  const known = state.dialogues.find(
    (dialogue): dialogue is Draft<Dialogue<'heard-distress'>> =>
      dialogue.procedure === 'heard-distress' && isSameDistress(dialogue, distressed, call),
  );
  const isGoodAlert = trigger === 'alert' && verdict !== 'doubtful';
  if (known === undefined) {
    openDialogue(
      turn,
      {
        procedure: 'heard-distress',
        phase: 'shown',
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
    if (!sameAttempt || known.verdict !== 'clean' || isFiner(call, known.call))
      fireOn(turn, known, trigger, heard);
  }
  if (verdict !== 'doubtful' && (trigger === 'alert' || trigger === 'relay'))
    rememberAlert(turn, distressed, call);
}

/** An attempt is five alerts in a row that say the same: receiving more than one of them is not a repeat. */
function isOfSameAttempt({ state }: Turn, known: Dialogue<'heard-distress'>, call: Call): boolean {
  const { lastAlertAt } = known;
  const nature = (of: Call) => ('nature' in of ? of.nature : null);
  return (
    lastAlertAt !== null &&
    state.now - lastAlertAt < lengthOf('attempt-length', state.settings.timers) &&
    nature(call) === nature(known.call)
  );
}

/** Whether the same alert now says the place to a fraction of a minute: its expansion came in after it. */
function isFiner(call: Call, known: Call): boolean {
  const fraction = (of: Call) => ('position' in of ? of.position?.fraction : undefined);
  return fraction(call) !== undefined && fraction(known) === undefined;
}

/** For an unidentified vessel, only nature and position show whether it is the same one. */
function isSameDistress(
  dialogue: Dialogue<'heard-distress'>,
  distressed: string | null,
  call: Call,
): boolean {
  if (distressed !== null || dialogue.distressed !== null) return dialogue.distressed === distressed;
  if (!('nature' in call && 'nature' in dialogue.call)) return false;
  const place = (of: typeof call) => JSON.stringify([of.nature, of.position]);
  return place(call) === place(dialogue.call);
}

/** Only a clean acknowledgement stops the own alert automatically. deviation: D-station-10 */
function ownTrigger(call: Call, verdict: StationEvent<'received'>['verdict']): Triggers['own-distress'] {
  if (call.kind !== 'distress-acknowledgement') return 'relayed';
  return verdict === 'clean' ? 'acknowledged' : 'acknowledged-damaged';
}

/** The answer to a relay that this station sent to one coast station. */
function answerRelay(turn: Turn, heard: Received): boolean {
  if (heard.call.kind !== 'distress-relay-acknowledgement') return false;
  const asked = findQuestion(turn, heard.call);
  return asked !== undefined && fireOn(turn, asked, answerTrigger(heard), heard);
}

/** A relay has done its work when a coast station acknowledges that distress, in whatever form. */
function endRelays(turn: Turn, heard: Received, distressed: string | null): void {
  const { call, verdict } = heard;
  if (call.kind !== 'distress-acknowledgement' || verdict === 'doubtful') return;
  if (distressed === null || !isCoastIdentity(call.from)) return;
  for (const dialogue of [...turn.state.dialogues]) {
    if (dialogue.procedure !== 'outgoing' || dialogue.call.kind !== 'distress-relay') continue;
    if (dialogue.call.distressed === distressed) fireOn(turn, dialogue, 'answered', heard);
  }
}

function rememberAlert({ state }: Turn, distressed: string | null, call: Call): void {
  const nature = 'nature' in call ? call.nature : null;
  const others = state.heardAlerts.filter(
    (known) => known.distressed !== distressed || known.nature !== nature,
  );
  state.heardAlerts = [...others, { distressed, nature, lastAt: state.now }].slice(-MOST_ALERTS);
}
