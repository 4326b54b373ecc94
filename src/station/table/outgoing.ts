import { clause } from '../state/clause.ts';
import type { OutgoingPhase } from '../state/dialogue.ts';
import type { PhaseRow, Transition } from '../state/procedure.ts';

/** Conditions that the table of {@link outgoingTransitions} names. */
export type OutgoingGuard =
  | 'is-relay-to-station'
  | 'needs-second-thought'
  | 'wants-answer'
  | 'attempts-left'
  | 'names-channel'
  | 'tunes-by-itself';

/** Actions that the table of {@link outgoingTransitions} names. */
export type OutgoingAction =
  | 'ask-to-send'
  | 'ask-to-tune'
  | 'change-channel'
  | 'count-attempt'
  | 'keep-answer'
  | 'log-put-away'
  | 'log-sent'
  | 'renew-attempts'
  | 'return-to-watch'
  | 'send'
  | 'show-answer'
  | 'show-busy'
  | 'show-damaged'
  | 'show-failure'
  | 'show-no-answer'
  | 'show-refusal'
  | 'show-retry'
  | 'show-still-tuned'
  | 'speak'
  | 'stop-sending'
  | 'tune'
  | 'tune-16';

export const outgoingPhases: Readonly<Record<OutgoingPhase, PhaseRow>> = {
  confirming: { meaning: 'the person is asked whether the call is really to be sent', waits: ['inactivity'] },
  'waiting-channel': { meaning: 'waiting for channel 70 to be free', waits: ['channel-wait'] },
  sending: { meaning: 'the call is on the air', waits: ['transmission-limit'], keeps: [] },
  'waiting-answer': { meaning: 'waiting for the answer', waits: ['answer', 'retry'] },
  'retry-wait': { meaning: 'no answer yet; the call will be repeated', waits: ['retry'] },
  unanswered: { meaning: 'given up; the person may try again', waits: ['inactivity'] },
  refused: { meaning: 'the other station cannot comply', waits: ['inactivity'] },
  agreed: { meaning: 'a channel is agreed; the person is asked whether to tune', waits: ['inactivity'] },
  'on-channel': { meaning: 'talking on the working channel', waits: ['inactivity'] },
};

type Row = Transition<OutgoingPhase, OutgoingGuard, OutgoingAction>;

/** A relay was spoken when it had been sent, and is never repeated by itself. */
const relayAnsweredIn = (from: 'waiting-answer' | 'unanswered'): Row => ({
  from,
  on: 'able',
  when: 'is-relay-to-station',
  to: 'on-channel',
  do: ['keep-answer', 'show-answer', 'tune-16'],
  clause: clause.relay,
});

/** An answer counts in every phase between the call and the putting away. */
const answersIn = (from: 'waiting-answer' | 'retry-wait' | 'unanswered'): readonly Row[] => [
  {
    from,
    on: 'able',
    when: 'tunes-by-itself',
    to: 'on-channel',
    do: ['keep-answer', 'show-answer', 'tune', 'speak'],
    clause: clause.tuning,
  },
  {
    from,
    on: 'able',
    when: 'names-channel',
    to: 'agreed',
    do: ['keep-answer', 'show-answer', 'ask-to-tune'],
    clause: clause.tuning,
  },
  { from, on: 'able', to: 'ended', do: ['keep-answer', 'show-answer'], clause: clause.answering },
  { from, on: 'unable', to: 'refused', do: ['keep-answer', 'show-refusal'], clause: clause.reasons },
  { from, on: 'answered', to: 'ended', do: ['keep-answer', 'show-answer'], clause: clause.enquiry },
  { from, on: 'answered-damaged', to: from, do: ['show-damaged'], clause: clause.errorCheck },
];

/** What becomes of a call that this station sends. */
export const outgoingTransitions: readonly Row[] = [
  {
    from: 'new',
    on: 'call',
    when: 'needs-second-thought',
    to: 'confirming',
    do: ['ask-to-send'],
    clause: clause.relay,
  },
  { from: 'new', on: 'call', to: 'waiting-channel', clause: clause.channelUse },

  { from: 'confirming', on: 'confirm', to: 'waiting-channel', clause: clause.channelUse },
  { from: 'confirming', on: 'decline', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  { from: 'confirming', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  { from: 'confirming', on: 'inactivity over', to: 'ended', do: ['log-put-away'], clause: clause.procedures },

  {
    from: 'waiting-channel',
    on: 'channel free',
    to: 'sending',
    do: ['count-attempt', 'send'],
    clause: clause.channelUse,
  },
  { from: 'waiting-channel', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  {
    from: 'waiting-channel',
    on: 'channel-wait over',
    to: 'unanswered',
    do: ['show-busy'],
    clause: clause.channelUse,
  },

  // A relay is spoken in any case; without an answer it is for the person to send it again.
  {
    from: 'sending',
    on: 'sent',
    when: 'is-relay-to-station',
    to: 'waiting-answer',
    do: ['log-sent', 'tune-16', 'speak'],
    clause: clause.relay,
  },
  {
    from: 'sending',
    on: 'sent',
    when: 'wants-answer',
    to: 'waiting-answer',
    do: ['log-sent'],
    clause: clause.calling,
  },
  {
    from: 'sending',
    on: 'sent',
    when: 'tunes-by-itself',
    to: 'on-channel',
    do: ['log-sent', 'tune', 'speak'],
    clause: clause.announcement,
  },
  {
    from: 'sending',
    on: 'sent',
    when: 'names-channel',
    to: 'agreed',
    do: ['log-sent', 'ask-to-tune'],
    clause: clause.announcement,
  },
  { from: 'sending', on: 'sent', to: 'ended', do: ['log-sent'], clause: clause.announcement },
  { from: 'sending', on: 'send-failed', to: 'unanswered', do: ['show-failure'], clause: clause.procedures },
  {
    from: 'sending',
    on: 'transmission-limit over',
    to: 'unanswered',
    do: ['stop-sending', 'show-failure'],
    clause: clause.procedures,
  },

  relayAnsweredIn('waiting-answer'),
  ...answersIn('waiting-answer'),
  {
    from: 'waiting-answer',
    on: 'answer over',
    when: 'attempts-left',
    to: 'retry-wait',
    do: ['show-retry'],
    clause: clause.calling,
  },
  {
    from: 'waiting-answer',
    on: 'answer over',
    to: 'unanswered',
    do: ['show-no-answer'],
    clause: clause.calling,
  },
  { from: 'waiting-answer', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },

  ...answersIn('retry-wait'),
  { from: 'retry-wait', on: 'retry over', to: 'waiting-channel', clause: clause.calling },
  { from: 'retry-wait', on: 'retry', to: 'waiting-channel', clause: clause.calling },
  { from: 'retry-wait', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },

  relayAnsweredIn('unanswered'),
  ...answersIn('unanswered'),
  { from: 'unanswered', on: 'retry', to: 'waiting-channel', do: ['renew-attempts'], clause: clause.calling },
  {
    from: 'unanswered',
    on: 'offer',
    to: 'waiting-channel',
    do: ['renew-attempts', 'change-channel'],
    clause: clause.calling,
  },
  { from: 'unanswered', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  { from: 'unanswered', on: 'inactivity over', to: 'ended', do: ['log-put-away'], clause: clause.procedures },

  { from: 'refused', on: 'retry', to: 'waiting-channel', do: ['renew-attempts'], clause: clause.calling },
  {
    from: 'refused',
    on: 'offer',
    to: 'waiting-channel',
    do: ['renew-attempts', 'change-channel'],
    clause: clause.reasons,
  },
  { from: 'refused', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  { from: 'refused', on: 'inactivity over', to: 'ended', do: ['log-put-away'], clause: clause.procedures },

  { from: 'agreed', on: 'confirm', to: 'on-channel', do: ['tune', 'speak'], clause: clause.tuning },
  { from: 'agreed', on: 'decline', to: 'ended', do: ['log-put-away'], clause: clause.tuning },
  { from: 'agreed', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  { from: 'agreed', on: 'inactivity over', to: 'ended', do: ['log-put-away'], clause: clause.procedures },

  { from: 'on-channel', on: 'close', to: 'ended', do: ['return-to-watch'], clause: clause.procedures },
  {
    from: 'on-channel',
    on: 'inactivity over',
    to: 'ended',
    do: ['show-still-tuned'],
    clause: clause.procedures,
  },
];
