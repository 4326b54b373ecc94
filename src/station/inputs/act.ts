import { reasons } from '../../call/index.ts';
import type { CodedText, Issue } from '../../result/index.ts';
import { quote } from '../../result/internal.ts';
import { classCannotSend, identityMissing } from '../engine/on-air.ts';
import type { Cause, Trigger } from '../engine/procedure.ts';
import { type Draft, emit, reject, type Turn } from '../engine/turn.ts';
import { clause } from '../model/clause.ts';
import type { Dialogue } from '../model/dialogue.ts';
import { maySend } from '../model/equipment.ts';
import type { AlertAct, PlainAct, StationEvent } from '../model/event.ts';
import { completeSettings, misfitsOf } from '../model/settings.ts';
import type { StationState } from '../model/state.ts';
import { objectionToAcknowledging } from '../procedures/other-distress/other-distress.ts';
import { asCoded, dscPermission } from '../procedures/other-distress/permission.ts';
import { issue } from '../texts.ts';
import { fireOn, openDialogue } from './dialogues.ts';
import { takeChannel } from './start-call.ts';

type DialogueAct = StationEvent<PlainAct | 'answer' | 'reject' | 'counter-propose'>;

/** A person acts on a dialogue. */
export function actOnDialogue(turn: Turn, event: DialogueAct): void {
  const dialogue = turn.state.dialogues.find(({ id }) => id === event.dialogue);
  if (dialogue === undefined) {
    reject(turn, null, issue('station-no-such-dialogue', { dialogue: String(event.dialogue) }));
    return;
  }
  const named = 'channel' in event ? event.channel : undefined;
  const call = dialogue.call;
  const channel = named === undefined || call === null ? undefined : takeChannel(turn, call, named);
  if (channel === null) return;
  if (event.kind === 'select') {
    turn.state.active = dialogue.id;
    return;
  }
  const objection = objectionToAct(turn.state, event, dialogue);
  if (objection !== null) {
    reject(turn, dialogue, objection);
    return;
  }
  followOrReject(turn, dialogue, event.kind, {
    channel,
    ...('reason' in event && { reason: event.reason }),
  });
}

/** A refusal needs its reason, and what leads to an acknowledgement by DSC has to be allowed. */
function objectionToAct(state: StationState, event: DialogueAct, dialogue: Dialogue): Issue | null {
  if (event.kind === 'reject' && !reasons.rows.some(([, reason]) => reason === event.reason)) {
    const more = { received: quote(String(event.reason)), clause: clause.reasons };
    return issue('station-reason-missing', {}, more);
  }
  if (dialogue.procedure !== 'heard-distress') return null;
  if (event.kind === 'acknowledge') {
    const permission = dscPermission(state, dialogue);
    if (!permission.allowed) return notAllowed(asCoded(permission), permission.clause);
  } else if (event.kind !== 'confirm' || dialogue.phase !== 'acknowledge-asked') return null;
  const objection = objectionToAcknowledging(state, dialogue);
  return objection && notAllowed(objection, objection.clause);
}

function notAllowed(why: CodedText, source?: string): Issue {
  const more = source === undefined ? {} : { clause: source };
  return issue('station-acknowledgement-not-allowed', { why }, more);
}

const alertTriggers = {
  'press-alert': 'press',
  'release-alert': 'release',
  'stop-alert': 'stop',
  'cancel-alert': 'cancel',
  'describe-alert': 'describe',
} as const satisfies Record<(StationEvent<AlertAct> | StationEvent<'describe-alert'>)['kind'], Trigger>;

/** A person acts on the own alert. */
export function actOnAlert(turn: Turn, event: StationEvent<AlertAct> | StationEvent<'describe-alert'>): void {
  const own = turn.state.dialogues.find(({ procedure }) => procedure === 'own-distress');
  if (own === undefined) {
    reject(turn, null, issue('station-no-alert', {}));
    return;
  }
  followOrReject(turn, own, alertTriggers[event.kind], 'nature' in event ? { nature: event.nature } : {});
}

/** First deliberate act of a distress alert. */
export function prepareAlert(turn: Turn, { nature }: StationEvent<'prepare-alert'>): void {
  const { state } = turn;
  const { mmsi, equipment } = state.settings;
  if (mmsi === null) {
    reject(turn, null, identityMissing());
    return;
  }
  if (!maySend(equipment, { kind: 'distress-alert', to: { kind: 'all-stations' } })) {
    reject(turn, null, classCannotSend(equipment, 'distress-alert'));
    return;
  }
  const own = state.dialogues.find(({ procedure }) => procedure === 'own-distress');
  if (own !== undefined) {
    reject(turn, own, issue('station-alert-in-hand', {}));
    return;
  }
  openDialogue(
    turn,
    {
      procedure: 'own-distress',
      phase: 'prepared',
      nature: nature ?? 'undesignated',
      call: null,
      attempts: 0,
      alertedAt: null,
      acknowledgement: null,
      stopped: false,
      cancelWanted: false,
      spoken: false,
    },
    'prepare',
  );
}

/** A person silences every alarm. */
export function silence(turn: Turn): void {
  for (const alarm of turn.state.sounding) emit(turn, null, { kind: 'silence', alarm });
  turn.state.sounding = [];
}

/** The owner changes the settings; a stored identity stays (M.493-16). */
export function changeSettings(turn: Turn, event: StationEvent<'settings'>): void {
  const { state } = turn;
  const stored = state.settings.mmsi;
  const settings = completeSettings(event.settings, state.settings);
  const [wrong] = misfitsOf(settings);
  if (stored !== null && settings.mmsi !== stored) {
    reject(turn, null, issue('station-identity-fixed', {}, { clause: clause.identity }));
  } else if (wrong === 'mmsi') {
    const more = { received: quote(String(settings.mmsi)), clause: clause.identity };
    reject(turn, null, issue('station-identity-form', {}, more));
  } else if (wrong !== undefined) {
    reject(turn, null, issue('station-settings-form', { setting: wrong }, { at: [wrong] }));
  } else {
    state.settings = settings;
  }
}

function followOrReject(turn: Turn, dialogue: Draft<Dialogue>, trigger: Trigger, cause: Cause): void {
  if (fireOn(turn, dialogue, trigger, cause)) return;
  const where = { dialogue: dialogue.id, phase: dialogue.phase };
  reject(turn, dialogue, issue('station-not-now', where, { received: trigger }));
}
