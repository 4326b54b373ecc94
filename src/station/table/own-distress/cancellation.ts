import { clause } from '../../state/clause.ts';
import type { Row } from './words.ts';

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
    on: 'alert-repeat over',
    when: 'was-away',
    to: 'interrupted',
    do: ['mark-stopped', 'alarm', 'ask-to-repeat'],
    clause: clause.ownChoice,
  },
  // Without an answer the alert stands, and goes on as if nobody had asked.
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
    on: 'close',
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
    on: 'close',
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
