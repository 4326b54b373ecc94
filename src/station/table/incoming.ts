import { clause } from '../state/clause.ts';
import type { IncomingPhase } from '../state/dialogue.ts';
import type { PhaseRow, Transition } from '../state/procedure.ts';

/** Conditions that the table of {@link incomingTransitions} names. */
export type IncomingGuard =
  | 'answers-by-itself'
  | 'damaged'
  | 'is-automatic'
  | 'leads-to-channel'
  | 'may-answer'
  | 'may-refuse'
  | 'refuses-by-itself'
  | 'tunes-after-answer'
  | 'tunes-by-itself'
  | 'wants-answer';

/** Actions that the table of {@link incomingTransitions} names. */
export type IncomingAction =
  | 'alarm'
  | 'answer-able'
  | 'answer-by-policy'
  | 'answer-unable'
  | 'ask-to-answer'
  | 'ask-to-tune'
  | 'count-call'
  | 'log-put-away'
  | 'log-sent'
  | 'return-to-watch'
  | 'send'
  | 'show'
  | 'show-damaged'
  | 'show-failure'
  | 'show-missed'
  | 'show-still-tuned'
  | 'show-too-late'
  | 'speak'
  | 'stop-sending'
  | 'tune';

export const incomingPhases: Readonly<Record<IncomingPhase, PhaseRow>> = {
  deciding: { meaning: 'the person is asked how to answer', waits: ['decision'] },
  'waiting-channel': {
    meaning: 'the answer waits for channel 70 to be free',
    waits: ['automatic-answer', 'channel-wait'],
  },
  sending: { meaning: 'the answer is on the air', waits: ['transmission-limit'] },
  agreed: {
    meaning: 'the call leads to a channel; the person is asked whether to tune',
    waits: ['inactivity'],
  },
  'on-channel': { meaning: 'talking on the working channel', waits: ['inactivity'] },
  shown: { meaning: 'for the person to read', waits: ['inactivity'] },
};

type Row = Transition<IncomingPhase, IncomingGuard, IncomingAction>;

/** A caller who calls again has not heard the answer. */
const answeredAgain = (from: 'agreed' | 'on-channel'): readonly Row[] => [
  {
    from,
    on: 'repeated',
    when: 'answers-by-itself',
    to: 'waiting-channel',
    do: ['count-call', 'answer-by-policy'],
    clause: clause.answering,
  },
  {
    from,
    on: 'repeated',
    when: 'wants-answer',
    to: 'deciding',
    do: ['count-call', 'ask-to-answer'],
    clause: clause.answering,
  },
  { from, on: 'repeated', to: from, do: ['count-call'], clause: clause.alarms },
];

/** What becomes of a call that this station receives. */
export const incomingTransitions: readonly Row[] = [
  { from: 'new', on: 'call', when: 'damaged', to: 'shown', do: ['show-damaged'], clause: clause.errorCheck },
  {
    from: 'new',
    on: 'call',
    when: 'answers-by-itself',
    to: 'waiting-channel',
    do: ['alarm', 'show', 'answer-by-policy'],
    clause: clause.answering,
  },
  {
    from: 'new',
    on: 'call',
    when: 'refuses-by-itself',
    to: 'waiting-channel',
    do: ['show', 'answer-by-policy'],
    clause: clause.reasons,
  },
  {
    from: 'new',
    on: 'call',
    when: 'wants-answer',
    to: 'deciding',
    do: ['alarm', 'show', 'ask-to-answer'],
    clause: clause.answering,
  },
  {
    from: 'new',
    on: 'call',
    when: 'tunes-by-itself',
    to: 'on-channel',
    do: ['alarm', 'show', 'tune'],
    clause: clause.tuning,
  },
  {
    from: 'new',
    on: 'call',
    when: 'leads-to-channel',
    to: 'agreed',
    do: ['alarm', 'show', 'ask-to-tune'],
    clause: clause.announcement,
  },
  { from: 'new', on: 'call', to: 'shown', do: ['alarm', 'show'], clause: clause.alarms },

  {
    from: 'deciding',
    on: 'answer',
    when: 'may-answer',
    to: 'waiting-channel',
    do: ['answer-able'],
    clause: clause.answering,
  },
  {
    from: 'deciding',
    on: 'refuse',
    when: 'may-refuse',
    to: 'waiting-channel',
    do: ['answer-unable'],
    clause: clause.reasons,
  },
  { from: 'deciding', on: 'repeated', to: 'deciding', do: ['count-call'], clause: clause.alarms },
  { from: 'deciding', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  { from: 'deciding', on: 'decision over', to: 'ended', do: ['show-missed'], clause: clause.answering },

  { from: 'waiting-channel', on: 'channel free', to: 'sending', do: ['send'], clause: clause.channelUse },
  {
    from: 'waiting-channel',
    on: 'repeated',
    to: 'waiting-channel',
    do: ['count-call'],
    clause: clause.alarms,
  },
  {
    from: 'waiting-channel',
    on: 'automatic-answer over',
    when: 'is-automatic',
    to: 'deciding',
    do: ['show-too-late', 'ask-to-answer'],
    clause: clause.answering,
  },
  {
    from: 'waiting-channel',
    on: 'channel-wait over',
    to: 'ended',
    do: ['show-missed'],
    clause: clause.channelUse,
  },
  { from: 'waiting-channel', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },

  {
    from: 'sending',
    on: 'sent',
    when: 'tunes-after-answer',
    to: 'on-channel',
    do: ['log-sent', 'tune', 'speak'],
    clause: clause.tuning,
  },
  {
    from: 'sending',
    on: 'sent',
    when: 'leads-to-channel',
    to: 'agreed',
    do: ['log-sent', 'ask-to-tune'],
    clause: clause.tuning,
  },
  { from: 'sending', on: 'sent', to: 'ended', do: ['log-sent'], clause: clause.answering },
  { from: 'sending', on: 'repeated', to: 'sending', do: ['count-call'], clause: clause.alarms },
  {
    from: 'sending',
    on: 'send-failed',
    to: 'deciding',
    do: ['show-failure', 'ask-to-answer'],
    clause: clause.procedures,
  },
  {
    from: 'sending',
    on: 'transmission-limit over',
    to: 'deciding',
    do: ['stop-sending', 'show-failure', 'ask-to-answer'],
    clause: clause.procedures,
  },

  { from: 'agreed', on: 'confirm', to: 'on-channel', do: ['tune', 'speak'], clause: clause.tuning },
  { from: 'agreed', on: 'decline', to: 'ended', do: ['log-put-away'], clause: clause.tuning },
  { from: 'agreed', on: 'close', to: 'ended', do: ['log-put-away'], clause: clause.procedures },
  { from: 'agreed', on: 'inactivity over', to: 'ended', do: ['show-missed'], clause: clause.procedures },
  ...answeredAgain('agreed'),

  { from: 'on-channel', on: 'close', to: 'ended', do: ['return-to-watch'], clause: clause.procedures },
  {
    from: 'on-channel',
    on: 'inactivity over',
    to: 'ended',
    do: ['show-still-tuned'],
    clause: clause.procedures,
  },
  ...answeredAgain('on-channel'),

  { from: 'shown', on: 'repeated', to: 'shown', do: ['count-call'], clause: clause.alarms },
  { from: 'shown', on: 'close', to: 'ended', clause: clause.procedures },
  { from: 'shown', on: 'inactivity over', to: 'ended', clause: clause.procedures },
];
