import type { PhaseRow, Transition } from '../../engine/procedure.ts';
import { clause } from '../../model/clause.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import type { OwnDistressTrigger, OwnDistressWait } from '../../model/trigger.ts';

/** Conditions that the table of `ownDistressTransitions` names. */
export type OwnDistressGuard =
  | 'cancel-requested'
  | 'nothing-sent'
  | 'was-acknowledged'
  | 'was-away'
  | 'was-stopped';

/** Actions that the table of `ownDistressTransitions` names. */
export type OwnDistressAction =
  | 'alarm'
  | 'ask-to-cancel'
  | 'ask-to-repeat'
  | 'ask-to-stop'
  | 'compose-alert'
  | 'compose-cancellation'
  | 'end-transmission'
  | 'keep-acknowledgement'
  | 'keep-nature'
  | 'log-cancelled'
  | 'log-cancelled-by-voice'
  | 'log-not-cancelled'
  | 'log-not-cancelled-by-voice'
  | 'log-not-sent'
  | 'log-closed'
  | 'log-sent'
  | 'log-spoken'
  | 'mark-stopped'
  | 'remind-to-speak'
  | 'send'
  | 'show-acknowledged'
  | 'show-cancel-failure'
  | 'show-countdown'
  | 'show-failure'
  | 'show-prepared'
  | 'show-relayed'
  | 'show-stopped'
  | 'show-waiting'
  | 'speak-cancellation'
  | 'speak-distress'
  | 'stop-sending'
  | 'tune-16'
  | 'unmark-cancel'
  | 'want-cancel';

export const ownDistressPhases: Readonly<
  Record<Dialogue<'own-distress'>['phase'], PhaseRow<OwnDistressWait>>
> = {
  prepared: { waits: ['inactivity'] },
  countdown: { waits: ['alert-hold'] },
  'waiting-channel': { waits: ['alert-busy-limit'] },
  sending: { waits: ['transmission-limit', 'alert-repeat'] },
  'waiting-acknowledgement': { waits: ['voice-after-alert', 'alert-repeat'] },
  acknowledged: { waits: ['distress-memory'] },
  stopped: { waits: ['distress-memory'] },
  interrupted: { waits: ['distress-memory'] },
  'cancel-asked': {
    waits: ['cancel-question'],
    keeps: ['alert-repeat', 'voice-after-alert', 'distress-memory'],
  },
  'cancel-waiting': { waits: ['alert-busy-limit'] },
  'cancel-sending': { waits: ['transmission-limit'] },
  'cancel-voice': { waits: ['inactivity'] },
  'cancel-voice-only': { waits: ['inactivity'] },
};

/** One row of the table. */
export type Row = Transition<
  Dialogue<'own-distress'>['phase'],
  OwnDistressTrigger,
  OwnDistressGuard,
  OwnDistressAction
>;

/** After a long silence nobody knows whether the alert is still true: only a person starts it again. */
const wasAway = (
  from: 'countdown' | 'waiting-channel' | 'waiting-acknowledgement',
  wait: 'alert-hold' | 'alert-busy-limit' | 'alert-repeat',
): Row => ({
  from,
  on: `${wait} over`,
  when: 'was-away',
  to: 'interrupted',
  do: ['mark-stopped', 'alarm', 'ask-to-repeat'],
  clause: clause.ownChoice,
});

/** What a person does about an alert that is no longer repeated and not acknowledged. */
const silentIn = (from: 'stopped' | 'interrupted'): readonly Row[] => [
  { from, on: 'spoken', to: from, do: ['log-spoken'], clause: clause.alert },
  { from, on: 'press', to: 'countdown', do: ['show-countdown'], clause: clause.alertAct },
  { from, on: 'describe', to: from, do: ['keep-nature'], clause: clause.alert },
  {
    from,
    on: 'acknowledged',
    to: 'acknowledged',
    do: ['keep-acknowledgement', 'show-acknowledged', 'speak-distress'],
    clause: clause.acknowledgement,
  },
  { from, on: 'cancel', to: 'cancel-asked', do: ['ask-to-cancel'], clause: clause.falseAlert },
  { from, on: 'dismiss', to: 'ended', do: ['log-closed'], clause: clause.procedures },
  { from, on: 'distress-memory over', to: 'ended', do: ['log-closed'], clause: clause.procedures },
];

/** The alert, from the first act to the end of its repeats: ITU-R M.541. */
export const alertRows: readonly Row[] = [
  { from: 'new', on: 'prepare', to: 'prepared', do: ['show-prepared'], clause: clause.alertAct },

  { from: 'prepared', on: 'press', to: 'countdown', do: ['show-countdown'], clause: clause.alertAct },
  { from: 'prepared', on: 'describe', to: 'prepared', do: ['keep-nature'], clause: clause.alert },
  { from: 'prepared', on: 'cancel', to: 'ended', do: ['log-not-sent'], clause: clause.alertAct },
  { from: 'prepared', on: 'dismiss', to: 'ended', do: ['log-not-sent'], clause: clause.alertAct },
  { from: 'prepared', on: 'inactivity over', to: 'ended', do: ['log-not-sent'], clause: clause.procedures },

  { from: 'countdown', on: 'release', when: 'was-acknowledged', to: 'acknowledged', clause: clause.alertAct },
  { from: 'countdown', on: 'release', when: 'was-stopped', to: 'stopped', clause: clause.alertAct },
  { from: 'countdown', on: 'release', to: 'prepared', do: ['show-prepared'], clause: clause.alertAct },
  { from: 'countdown', on: 'describe', to: 'countdown', do: ['keep-nature'], clause: clause.alert },
  wasAway('countdown', 'alert-hold'),
  { from: 'countdown', on: 'alert-hold over', to: 'waiting-channel', clause: clause.alertAct },

  {
    from: 'waiting-channel',
    on: 'channel free',
    to: 'sending',
    do: ['compose-alert', 'send'],
    clause: clause.alert,
  },
  wasAway('waiting-channel', 'alert-busy-limit'),
  {
    from: 'waiting-channel',
    on: 'alert-busy-limit over',
    to: 'sending',
    do: ['compose-alert', 'send'],
    clause: 'ETSI EN 300 338, unverified',
  },
  {
    from: 'waiting-channel',
    on: 'describe',
    to: 'waiting-channel',
    do: ['keep-nature'],
    clause: clause.alert,
  },
  {
    from: 'waiting-channel',
    on: 'acknowledged',
    to: 'acknowledged',
    do: ['keep-acknowledgement', 'show-acknowledged', 'speak-distress'],
    clause: clause.acknowledgement,
  },
  {
    from: 'waiting-channel',
    on: 'cancel',
    when: 'nothing-sent',
    to: 'ended',
    do: ['log-not-sent'],
    clause: clause.falseAlert,
  },
  {
    from: 'waiting-channel',
    on: 'cancel',
    to: 'cancel-asked',
    do: ['ask-to-cancel'],
    clause: clause.falseAlert,
  },

  {
    from: 'sending',
    on: 'sent',
    when: 'cancel-requested',
    to: 'cancel-asked',
    do: ['end-transmission', 'log-sent', 'unmark-cancel', 'ask-to-cancel'],
    clause: clause.falseAlert,
  },
  {
    from: 'sending',
    on: 'sent',
    to: 'waiting-acknowledgement',
    do: ['end-transmission', 'log-sent', 'tune-16', 'show-waiting', 'speak-distress'],
    clause: clause.alert,
  },
  { from: 'sending', on: 'describe', to: 'sending', do: ['keep-nature'], clause: clause.alert },
  { from: 'sending', on: 'cancel', to: 'sending', do: ['want-cancel'], clause: clause.falseAlert },
  {
    from: 'sending',
    on: 'acknowledged',
    to: 'acknowledged',
    do: ['stop-sending', 'keep-acknowledgement', 'tune-16', 'show-acknowledged', 'speak-distress'],
    clause: clause.acknowledgement,
  },
  // Whether a failed attempt went out in part is not known: a cancellation is still asked for.
  {
    from: 'sending',
    on: 'send-failed',
    when: 'cancel-requested',
    to: 'cancel-asked',
    do: ['show-failure', 'unmark-cancel', 'ask-to-cancel'],
    clause: clause.falseAlert,
  },
  {
    from: 'sending',
    on: 'send-failed',
    to: 'waiting-acknowledgement',
    do: ['show-failure', 'tune-16', 'speak-distress'],
    clause: clause.alert,
  },
  {
    from: 'sending',
    on: 'transmission-limit over',
    when: 'cancel-requested',
    to: 'cancel-asked',
    do: ['stop-sending', 'show-failure', 'unmark-cancel', 'ask-to-cancel'],
    clause: clause.falseAlert,
  },
  {
    from: 'sending',
    on: 'transmission-limit over',
    to: 'waiting-acknowledgement',
    do: ['stop-sending', 'show-failure', 'tune-16', 'speak-distress'],
    clause: clause.alert,
  },

  {
    from: 'waiting-acknowledgement',
    on: 'voice-after-alert over',
    to: 'waiting-acknowledgement',
    do: ['remind-to-speak'],
    clause: clause.alert,
  },
  wasAway('waiting-acknowledgement', 'alert-repeat'),
  { from: 'waiting-acknowledgement', on: 'alert-repeat over', to: 'waiting-channel', clause: clause.alert },
  { from: 'waiting-acknowledgement', on: 'retry', to: 'waiting-channel', clause: clause.alert },
  {
    from: 'waiting-acknowledgement',
    on: 'acknowledged',
    to: 'acknowledged',
    do: ['keep-acknowledgement', 'show-acknowledged', 'speak-distress'],
    clause: clause.acknowledgement,
  },
  {
    from: 'waiting-acknowledgement',
    on: 'acknowledged-damaged',
    to: 'waiting-acknowledgement',
    do: ['ask-to-stop'],
    clause: clause.errorCheck,
  },
  {
    from: 'waiting-acknowledgement',
    on: 'relayed',
    to: 'waiting-acknowledgement',
    do: ['show-relayed'],
    clause: clause.acknowledgement,
  },
  {
    from: 'waiting-acknowledgement',
    on: 'describe',
    to: 'waiting-acknowledgement',
    do: ['keep-nature'],
    clause: clause.alert,
  },
  {
    from: 'waiting-acknowledgement',
    on: 'spoken',
    to: 'waiting-acknowledgement',
    do: ['log-spoken'],
    clause: clause.alert,
  },
  {
    from: 'waiting-acknowledgement',
    on: 'stop',
    to: 'stopped',
    do: ['mark-stopped', 'show-stopped'],
    clause: clause.alert,
  },
  {
    from: 'waiting-acknowledgement',
    on: 'cancel',
    to: 'cancel-asked',
    do: ['ask-to-cancel'],
    clause: clause.falseAlert,
  },

  { from: 'acknowledged', on: 'spoken', to: 'acknowledged', do: ['log-spoken'], clause: clause.alert },
  { from: 'acknowledged', on: 'press', to: 'countdown', do: ['show-countdown'], clause: clause.alertAct },
  { from: 'acknowledged', on: 'describe', to: 'acknowledged', do: ['keep-nature'], clause: clause.alert },
  {
    from: 'acknowledged',
    on: 'cancel',
    to: 'cancel-asked',
    do: ['ask-to-cancel'],
    clause: clause.falseAlert,
  },
  { from: 'acknowledged', on: 'dismiss', to: 'ended', do: ['log-closed'], clause: clause.procedures },
  {
    from: 'acknowledged',
    on: 'distress-memory over',
    to: 'ended',
    do: ['log-closed'],
    clause: clause.procedures,
  },

  ...silentIn('stopped'),
  ...silentIn('interrupted'),
  { from: 'interrupted', on: 'stop', to: 'stopped', do: ['show-stopped'], clause: clause.alert },
];

/** Taking back a false alert, by DSC and by voice: ITU-R M.541-11; 47 CFR 80.335. */
export const cancellationRows: readonly Row[] = [
  {
    from: 'cancel-asked',
    on: 'confirm',
    to: 'cancel-waiting',
    do: ['compose-cancellation'],
    clause: clause.falseAlert,
  },
  {
    from: 'cancel-asked',
    on: 'decline',
    when: 'was-acknowledged',
    to: 'acknowledged',
    do: ['speak-distress'],
    clause: clause.falseAlert,
  },
  { from: 'cancel-asked', on: 'decline', when: 'was-stopped', to: 'stopped', clause: clause.falseAlert },
  { from: 'cancel-asked', on: 'decline', to: 'waiting-acknowledgement', clause: clause.falseAlert },
  {
    from: 'cancel-asked',
    on: 'cancel-question over',
    when: 'was-acknowledged',
    to: 'acknowledged',
    do: ['speak-distress'],
    clause: clause.procedures,
  },
  {
    from: 'cancel-asked',
    on: 'cancel-question over',
    when: 'was-stopped',
    to: 'stopped',
    clause: clause.procedures,
  },
  {
    from: 'cancel-asked',
    on: 'cancel-question over',
    to: 'waiting-acknowledgement',
    clause: clause.procedures,
  },
  // An acknowledgement ended the repeats while the question was open.
  {
    from: 'cancel-asked',
    on: 'alert-repeat over',
    when: 'was-acknowledged',
    to: 'cancel-asked',
    clause: clause.acknowledgement,
  },
  {
    from: 'cancel-asked',
    on: 'stop',
    to: 'stopped',
    do: ['mark-stopped', 'show-stopped'],
    clause: clause.alert,
  },
  {
    from: 'cancel-asked',
    on: 'alert-repeat over',
    when: 'was-away',
    to: 'interrupted',
    do: ['mark-stopped', 'alarm', 'ask-to-repeat'],
    clause: clause.ownChoice,
  },
  // Without an answer the alert remains valid, and its repeats go on as if nobody had asked.
  { from: 'cancel-asked', on: 'alert-repeat over', to: 'waiting-channel', clause: clause.alert },
  {
    from: 'cancel-asked',
    on: 'acknowledged',
    to: 'cancel-asked',
    do: ['keep-acknowledgement', 'show-acknowledged'],
    clause: clause.acknowledgement,
  },

  // RR 2024 Nos. 32.53B to 32.53E: by DSC where able, always by voice; 47 CFR 80.335(a) names the voice only.
  {
    from: 'cancel-waiting',
    on: 'channel free',
    to: 'cancel-sending',
    do: ['send'],
    clause: clause.falseAlert,
  },
  {
    from: 'cancel-waiting',
    on: 'alert-busy-limit over',
    when: 'was-away',
    to: 'cancel-asked',
    do: ['mark-stopped', 'alarm', 'ask-to-cancel'],
    clause: clause.ownChoice,
  },
  {
    from: 'cancel-waiting',
    on: 'alert-busy-limit over',
    to: 'cancel-sending',
    do: ['send'],
    clause: clause.falseAlert,
  },

  {
    from: 'cancel-sending',
    on: 'sent',
    to: 'cancel-voice',
    do: ['end-transmission', 'log-sent', 'tune-16', 'speak-cancellation'],
    clause: clause.falseAlert,
  },
  {
    from: 'cancel-sending',
    on: 'send-failed',
    to: 'cancel-voice-only',
    do: ['show-cancel-failure', 'tune-16', 'speak-cancellation'],
    clause: clause.falseAlert,
  },
  {
    from: 'cancel-sending',
    on: 'transmission-limit over',
    to: 'cancel-voice-only',
    do: ['stop-sending', 'show-cancel-failure', 'tune-16', 'speak-cancellation'],
    clause: clause.falseAlert,
  },

  { from: 'cancel-voice', on: 'spoken', to: 'ended', do: ['log-cancelled'], clause: clause.falseAlert },
  {
    from: 'cancel-voice',
    on: 'dismiss',
    to: 'ended',
    do: ['log-not-cancelled-by-voice'],
    clause: clause.falseAlert,
  },
  {
    from: 'cancel-voice',
    on: 'inactivity over',
    to: 'ended',
    do: ['log-not-cancelled-by-voice'],
    clause: clause.falseAlert,
  },

  {
    from: 'cancel-voice-only',
    on: 'spoken',
    to: 'ended',
    do: ['log-cancelled-by-voice'],
    clause: clause.falseAlert,
  },
  {
    from: 'cancel-voice-only',
    on: 'dismiss',
    to: 'ended',
    do: ['log-not-cancelled'],
    clause: clause.falseAlert,
  },
  {
    from: 'cancel-voice-only',
    on: 'inactivity over',
    to: 'ended',
    do: ['log-not-cancelled'],
    clause: clause.falseAlert,
  },
];

/** Transitions of the own distress alert. */
export const ownDistressTransitions: readonly Row[] = [...alertRows, ...cancellationRows];
