import type { Call, Reason } from '../../call/index.ts';
import { isMooredVesselAlarm } from '../../call/internal.ts';
import type { IncomingDialogue } from '../state/dialogue.ts';
import type { AlarmKind } from '../state/effect.ts';
import type { Cause, Procedure } from '../state/procedure.ts';
import { policyFor } from '../state/settings.ts';
import type { StationState } from '../state/state.ts';
import {
  type IncomingAction,
  type IncomingGuard,
  incomingPhases,
  incomingTransitions,
} from '../table/incoming.ts';
import { answerAble, answerUnable, mayAnswer } from './answer.ts';
import { briefly } from './brief.ts';
import {
  endTransmission,
  leaveTuned,
  logSent,
  reportFailure,
  returnToWatch,
  sound,
  speak,
  stopTransmission,
  tell,
  transmit,
  tune,
  WATCH_CHANNEL,
} from './common-action.ts';
import { mayAnswerAlone, mayTuneAlone, type Received } from './on-air.ts';
import { ask } from './questions.ts';
import { emit, log } from './turn.ts';
import { mayTuneByItself, voiceChannelOf } from './working-channel.ts';

/** Receiving a call, distress aside. */
export const incoming: Procedure<IncomingDialogue, IncomingGuard, IncomingAction> = {
  name: 'incoming',
  phases: incomingPhases,
  transitions: incomingTransitions,
  timerOf: (wait) => {
    switch (wait) {
      case 'decision':
        return 'answer-from-ship';
      case 'automatic-answer':
        return 'automatic-answer';
      case 'channel-wait':
        return 'channel-wait';
      case 'transmission-limit':
        return 'transmission-limit';
      default:
        return 'inactivity';
    }
  },
  guards: {
    'answers-by-itself': ({ state }, dialogue, cause) => {
      const received = receivedNow(dialogue, cause);
      const { call } = received;
      return (
        mayAnswerAlone(state, received) &&
        policyFor(state.settings, call) === 'automatic' &&
        isOnKnownChannel(state, call) &&
        answerAble(state, call) !== null
      );
    },
    damaged: (_, { verdict }) => verdict === 'doubtful',
    'is-automatic': (_, { automatic }) => automatic,
    'leads-to-channel': (_, dialogue) => channelOf(dialogue) !== null,
    'may-answer': (turn, { call }, { channel }) => answerAble(turn.state, call, channel) !== null,
    'may-refuse': (turn, { call }, { reason }) =>
      reason !== undefined && answerUnable(turn.state, call, reason) !== null,
    'refuses-by-itself': ({ state }, dialogue, cause) => {
      const received = receivedNow(dialogue, cause);
      return mayAnswerAlone(state, received) && refusalFor(state, received.call) !== null;
    },
    'tunes-after-answer': (turn, dialogue) => {
      const channel = channelOf(dialogue);
      return channel !== null && mayTuneByItself(turn.state, channel, true);
    },
    'tunes-by-itself': ({ state }, dialogue, cause) => {
      const channel = channelOf(dialogue);
      return (
        channel !== null &&
        isAnnouncement(dialogue.call) &&
        policyFor(state.settings, dialogue.call) === 'automatic' &&
        mayTuneAlone(state, receivedNow(dialogue, cause), channel, false)
      );
    },
    'wants-answer': (turn, { call }) => mayAnswer(turn.state, call),
  },
  actions: {
    alarm: (turn, dialogue) => sound(turn, dialogue, alarmFor(dialogue.call)),
    'answer-able': (turn, dialogue, { channel }) => {
      dialogue.answer = answerAble(turn.state, dialogue.call, channel);
      dialogue.automatic = false;
    },
    'answer-by-policy': ({ state }, dialogue) => {
      dialogue.answer = refusalFor(state, dialogue.call) ?? answerAble(state, dialogue.call);
      dialogue.automatic = true;
    },
    'answer-unable': (turn, dialogue, { reason }) => {
      if (reason !== undefined) dialogue.answer = answerUnable(turn.state, dialogue.call, reason);
      dialogue.automatic = false;
    },
    'ask-to-answer': (turn, dialogue) => {
      dialogue.automatic = false;
      ask(turn, dialogue);
    },
    'ask-to-tune': (turn, dialogue) => {
      dialogue.channel = channelOf(dialogue);
      ask(turn, dialogue);
    },
    'count-call': (turn, dialogue, { call, verdict }) => {
      dialogue.times++;
      if (call !== undefined && (verdict === 'clean' || dialogue.verdict !== 'clean')) {
        dialogue.call = call;
        dialogue.verdict = verdict ?? dialogue.verdict;
      }
      emit(turn, dialogue, {
        kind: 'show',
        topic: 'call-again',
        text: `Heard ${dialogue.times} times: ${briefly(dialogue.call)}`,
      });
    },
    'log-put-away': (turn, dialogue) =>
      log(turn, dialogue, {
        what: 'done',
        text: `Put away${isAnnouncement(dialogue.call) ? '' : ' without an answer'}: ${briefly(dialogue.call)}`,
      }),
    'log-sent': (turn, dialogue) => {
      endTransmission(turn, dialogue);
      if (dialogue.answer !== null) logSent(turn, dialogue, dialogue.answer);
    },
    'return-to-watch': returnToWatch,
    send: (turn, dialogue) => transmit(turn, dialogue, dialogue.answer),
    show: (turn, dialogue) =>
      emit(turn, dialogue, {
        kind: 'show',
        topic: isAnnouncement(dialogue.call) ? 'announcement' : 'call-received',
        text: `Received: ${briefly(dialogue.call)}`,
      }),
    'show-damaged': (turn, dialogue) =>
      tell(turn, dialogue, 'damaged-call', `Received with errors, nothing done: ${briefly(dialogue.call)}`),
    'show-failure': (turn, dialogue) =>
      reportFailure(turn, dialogue, `Answer not sent: ${briefly(dialogue.call)}`),
    'show-missed': (turn, dialogue) =>
      tell(
        turn,
        dialogue,
        'missed-call',
        `${isAnnouncement(dialogue.call) ? 'Not followed' : 'Not answered'}: ${briefly(dialogue.call)}`,
      ),
    'show-still-tuned': leaveTuned,
    'show-too-late': (turn, dialogue) =>
      tell(turn, dialogue, 'channel-busy', 'Channel 70 was not free in time for an automatic answer'),
    speak: (turn, dialogue) =>
      speak(turn, dialogue, dialogue.answer ?? dialogue.call, dialogue.channel ?? WATCH_CHANNEL),
    'stop-sending': stopTransmission,
    tune: (turn, dialogue) => {
      dialogue.channel = channelOf(dialogue);
      if (dialogue.channel !== null) tune(turn, dialogue, dialogue.channel);
    },
  },
};

/** The call at hand: the one that was just received, else the one that opened the dialogue. */
function receivedNow({ call, verdict }: IncomingDialogue, cause: Cause): Received {
  return cause.call === undefined
    ? { call, verdict }
    : { call: cause.call, verdict: cause.verdict ?? 'doubtful' };
}

/** "Able to comply" is said by itself only for a channel that the owner has chosen. */
function isOnKnownChannel({ settings }: StationState, call: Call): boolean {
  if (call.kind !== 'individual-call') return true;
  const channel = voiceChannelOf(call);
  return channel !== null && settings.channels.includes(channel);
}

function refusalFor(state: StationState, call: Call): Call | null {
  const policy = policyFor(state.settings, call);
  if (policy === 'automatic' || policy === 'by-hand') return null;
  return answerUnable(state, call, policy.slice('refuse-'.length) as Reason);
}

function isAnnouncement(call: Call): boolean {
  return call.kind === 'group-call' || call.kind === 'area-call' || call.kind === 'all-ships-call';
}

function channelOf({ answer, call }: IncomingDialogue): string | null {
  return voiceChannelOf(answer ?? call);
}

function alarmFor(call: Call): AlarmKind {
  // 47 CFR 80.179(e): the call is routine in form, a fire or a sinking in fact.
  if (isMooredVesselAlarm(call)) return 'urgency';
  if (!isAnnouncement(call) && call.kind !== 'individual-call') return 'routine';
  if (!('category' in call)) return 'routine';
  return call.category === 'distress' || call.category === 'urgency' || call.category === 'safety'
    ? call.category
    : 'routine';
}
