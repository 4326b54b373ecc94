import { reasons } from '../../call/index.ts';
import { quote } from '../../result/internal.ts';
import type { Cause } from '../engine/procedure.ts';
import { type Draft, emit, reject, type Turn } from '../engine/turn.ts';
import { clause } from '../model/clause.ts';
import type { Dialogue } from '../model/dialogue.ts';
import { maySend } from '../model/equipment.ts';
import type { AlertAct, PlainAct, StationEvent } from '../model/event.ts';
import { completeSettings, misfitsOf } from '../model/settings.ts';
import type { Trigger } from '../model/trigger.ts';
import { objectionToAcknowledging } from '../procedures/other-distress/other-distress.ts';
import { dscPermission } from '../procedures/other-distress/permission.ts';
import { fireOn, openDialogue } from './dialogues.ts';
import { rejectWithoutIdentity, takeChannel } from './start-call.ts';

/** A person acts on a dialogue. */
export function actOnDialogue(
  turn: Turn,
  event:
    | StationEvent<PlainAct>
    | StationEvent<'answer'>
    | StationEvent<'reject'>
    | StationEvent<'counter-propose'>,
): void {
  const dialogue = turn.state.dialogues.find(({ id }) => id === event.dialogue);
  if (dialogue === undefined) {
    reject(turn, null, 'station-no-such-dialogue', `Dialogue ${event.dialogue} does not exist`);
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
  if (event.kind === 'acknowledge' && dialogue.procedure === 'heard-distress') {
    const { allowed, why, clause: where } = dscPermission(turn.state, dialogue);
    if (!allowed) {
      reject(turn, dialogue, 'station-acknowledgement-not-allowed', `Acknowledgement: ${why}`, {
        clause: where,
      });
      return;
    }
  }
  if (acknowledges(event, dialogue)) {
    const objection = objectionToAcknowledging(turn.state, dialogue);
    if (objection !== null) {
      reject(turn, dialogue, 'station-acknowledgement-not-allowed', objection.message, {
        ...(objection.clause !== undefined && { clause: objection.clause }),
      });
      return;
    }
  }
  if (event.kind === 'reject' && !isReason(event.reason)) {
    reject(turn, dialogue, 'station-reason-missing', 'Refusal: expected one of the ten reasons', {
      received: quote(String(event.reason)),
      clause: clause.reasons,
    });
    return;
  }
  followOrReject(turn, dialogue, event.kind, {
    channel,
    ...('reason' in event && { reason: event.reason }),
  });
}

/** Whether an act leads to an acknowledgement by DSC. */
function acknowledges(
  { kind }: { readonly kind: string },
  dialogue: Dialogue,
): dialogue is Dialogue<'heard-distress'> {
  if (dialogue.procedure !== 'heard-distress') return false;
  return kind === 'acknowledge' || (kind === 'confirm' && dialogue.phase === 'acknowledge-asked');
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
    reject(turn, null, 'station-no-alert', 'Own distress alert: none is prepared or sent');
    return;
  }
  followOrReject(turn, own, alertTriggers[event.kind], 'nature' in event ? { nature: event.nature } : {});
}

/** First deliberate act of a distress alert. */
export function prepareAlert(turn: Turn, { nature }: StationEvent<'prepare-alert'>): void {
  const { state } = turn;
  const { mmsi, equipment } = state.settings;
  if (mmsi === null) {
    rejectWithoutIdentity(turn);
    return;
  }
  if (!maySend(equipment, { kind: 'distress-alert', to: { kind: 'all-stations' } })) {
    const message = `Distress alert: equipment of class ${equipment} does not send one`;
    reject(turn, null, 'station-class-cannot-send', message, { clause: clause.equipment });
    return;
  }
  const own = state.dialogues.find(({ procedure }) => procedure === 'own-distress');
  if (own !== undefined) {
    reject(turn, own, 'station-alert-in-hand', 'Distress alert: one is already in progress');
    return;
  }
  openDialogue(
    turn,
    {
      procedure: 'own-distress',
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
    const message = 'Own identity is already stored: the user cannot change it';
    reject(turn, null, 'station-identity-fixed', message, { clause: clause.identity });
  } else if (wrong === 'mmsi') {
    reject(turn, null, 'station-identity-form', 'Own identity: expected a number that one station can have', {
      received: quote(String(settings.mmsi)),
      clause: clause.identity,
    });
  } else if (wrong !== undefined) {
    const message = `Settings: ${wrong} is invalid; no setting was changed`;
    reject(turn, null, 'station-settings-form', message, { received: wrong });
  } else {
    state.settings = settings;
  }
}

function isReason(value: unknown): boolean {
  return reasons.rows.some(([, reason]) => reason === value);
}

function followOrReject(turn: Turn, dialogue: Draft<Dialogue>, trigger: Trigger, cause: Cause): void {
  if (fireOn(turn, dialogue, trigger, cause)) return;
  reject(turn, dialogue, 'station-not-now', `Dialogue ${dialogue.id}: not possible while ${dialogue.phase}`, {
    received: trigger,
  });
}
