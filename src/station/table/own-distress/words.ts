import type { OwnDistressPhase } from '../../state/dialogue.ts';
import type { PhaseRow, Transition } from '../../state/procedure.ts';

/** Conditions that the table of `ownDistressTransitions` names. */
export type OwnDistressGuard =
  | 'cancel-wanted'
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
  | 'log-put-away'
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

export const ownDistressPhases: Readonly<Record<OwnDistressPhase, PhaseRow>> = {
  prepared: { meaning: 'first act done: the cover is open, nothing is sent yet', waits: ['inactivity'] },
  countdown: { meaning: 'second act: the key is being held', waits: ['alert-hold'] },
  'waiting-channel': { meaning: 'waiting for channel 70, not for long', waits: ['alert-busy-limit'] },
  sending: { meaning: 'the distress attempt is on the air', waits: ['transmission-limit', 'alert-repeat'] },
  'waiting-acknowledgement': {
    meaning: 'waiting for an acknowledgement; the attempt will be repeated',
    waits: ['voice-after-alert', 'alert-repeat'],
  },
  acknowledged: { meaning: 'acknowledged by DSC: no more repeats', waits: ['distress-memory'] },
  stopped: { meaning: 'repeats were stopped by hand', waits: ['distress-memory'] },
  interrupted: {
    meaning: 'the repeats were interrupted: nothing is sent until a person holds the key again',
    waits: ['distress-memory'],
  },
  'cancel-asked': {
    meaning: 'the person is asked whether the alert was false',
    waits: ['cancel-question'],
    keeps: ['alert-repeat', 'voice-after-alert', 'distress-memory'],
  },
  'cancel-waiting': {
    meaning: 'the cancellation waits for channel 70, not for long',
    waits: ['alert-busy-limit'],
  },
  'cancel-sending': { meaning: 'the cancellation is on the air', waits: ['transmission-limit'] },
  'cancel-voice': { meaning: 'the cancellation must now be spoken on channel 16', waits: ['inactivity'] },
  'cancel-voice-only': {
    meaning: 'the set could not send the cancellation: it must now be spoken on channel 16',
    waits: ['inactivity'],
  },
};

/** One row of the table. */
export type Row = Transition<OwnDistressPhase, OwnDistressGuard, OwnDistressAction>;
