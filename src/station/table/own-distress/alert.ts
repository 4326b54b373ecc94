import { clause } from '../../state/clause.ts';
import type { Row } from './words.ts';

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
  { from, on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  { from, on: 'distress-memory over', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
];

/** The alert, from the first act to the end of its repeats: ITU-R M.541. */
export const alertRows: readonly Row[] = [
  { from: 'new', on: 'prepare', to: 'prepared', do: ['show-prepared'], clause: clause.alertAct },

  { from: 'prepared', on: 'press', to: 'countdown', do: ['show-countdown'], clause: clause.alertAct },
  { from: 'prepared', on: 'describe', to: 'prepared', do: ['keep-nature'], clause: clause.alert },
  { from: 'prepared', on: 'cancel', to: 'ended', do: ['log-not-sent'], clause: clause.alertAct },
  { from: 'prepared', on: 'close', to: 'ended', do: ['log-not-sent'], clause: clause.alertAct },
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
    clause: 'ETSI EN 300 338, from memory',
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
    when: 'cancel-wanted',
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
    when: 'cancel-wanted',
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
    when: 'cancel-wanted',
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
  { from: 'acknowledged', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  {
    from: 'acknowledged',
    on: 'distress-memory over',
    to: 'ended',
    do: ['log-put-away'],
    clause: clause.procedures,
  },

  ...silentIn('stopped'),
  ...silentIn('interrupted'),
  { from: 'interrupted', on: 'stop', to: 'stopped', do: ['show-stopped'], clause: clause.alert },
];
