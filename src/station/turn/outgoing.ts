import type { Call } from '../../call/index.ts';
import type { OutgoingDialogue } from '../state/dialogue.ts';
import type { Procedure } from '../state/procedure.ts';
import {
  type OutgoingAction,
  type OutgoingGuard,
  outgoingPhases,
  outgoingTransitions,
} from '../table/outgoing.ts';
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
  tuneToWatch,
  WATCH_CHANNEL,
} from './common-action.ts';
import { mayFollowAlone, mayTuneAlone } from './on-air.ts';
import { isCoastIdentity } from './own-identity.ts';
import { ask } from './questions.ts';
import { log } from './turn.ts';
import { mayTuneByItself, voiceChannelOf } from './working-channel.ts';

/** Sending a call, distress alerts aside. */
export const outgoing: Procedure<OutgoingDialogue, OutgoingGuard, OutgoingAction> = {
  name: 'outgoing',
  phases: outgoingPhases,
  transitions: outgoingTransitions,
  timerOf: (wait, { call, attempts }) => {
    switch (wait) {
      case 'answer':
        if (call.kind === 'test-call' || call.kind === 'polling-call') return 'answer-from-set';
        return isCoast(call) ? 'answer-from-coast' : 'answer-from-ship';
      case 'retry':
        return attempts < 2 ? 'second-attempt' : 'third-attempt';
      case 'channel-wait':
        return 'channel-wait';
      case 'transmission-limit':
        return 'transmission-limit';
      default:
        return 'inactivity';
    }
  },
  guards: {
    'is-relay-to-station': (_, { call }) => isRelayToStation(call),
    'needs-second-thought': (_, { call }) =>
      call.kind === 'distress-relay' || call.kind === 'all-ships-call' || call.kind === 'area-call',
    'wants-answer': (_, { call }) => wantsAnswer(call),
    'attempts-left': (_, { attempts, allowed }) => attempts < allowed,
    'names-channel': (_, { call }, cause) => voiceChannelOf(cause.call ?? call) !== null,
    'tunes-by-itself': ({ state }, { call }, { call: answer, verdict = 'doubtful' }) => {
      const channel = voiceChannelOf(answer ?? call);
      if (channel === null) return false;
      const wasAskedFor = channel === voiceChannelOf(call) || isCoast(call);
      return answer === undefined
        ? mayTuneByItself(state, channel, wasAskedFor)
        : mayTuneAlone(state, { call: answer, verdict }, channel, wasAskedFor);
    },
  },
  actions: {
    'ask-to-send': ask,
    'ask-to-tune': (turn, dialogue, cause) => {
      dialogue.channel = voiceChannelOf(cause.call ?? dialogue.call);
      ask(turn, dialogue);
    },
    'change-channel': (_, dialogue, { channel }) => {
      const { call } = dialogue;
      if ('channel' in call && channel !== undefined) {
        const { asReceived: _received, ...meaning } = call;
        dialogue.call = { ...meaning, channel };
      }
    },
    'count-attempt': (_, dialogue) => {
      dialogue.attempts++;
    },
    'keep-answer': (_, dialogue, { call }) => {
      dialogue.answer = call ?? null;
    },
    'log-put-away': (turn, dialogue) =>
      log(turn, dialogue, { what: 'done', text: `Put away: ${briefly(dialogue.call)}` }),
    'log-sent': (turn, dialogue) => {
      endTransmission(turn, dialogue);
      logSent(turn, dialogue, dialogue.call);
    },
    'renew-attempts': (_, dialogue) => {
      dialogue.allowed = dialogue.attempts + 1;
      dialogue.answer = null;
    },
    'return-to-watch': returnToWatch,
    send: (turn, dialogue) => transmit(turn, dialogue, dialogue.call),
    'show-answer': (turn, dialogue, { call }) => {
      sound(turn, dialogue, 'routine');
      const topic = call?.kind === 'position-reply' ? 'position-received' : 'answered';
      if (call !== undefined) tell(turn, dialogue, topic, `Answered: ${briefly(call)}`, call);
    },
    'show-busy': (turn, dialogue) =>
      tell(turn, dialogue, 'channel-busy', 'Channel 70 was not free: the call was not sent'),
    'show-damaged': (turn, dialogue, { call }) => {
      if (call !== undefined) {
        tell(
          turn,
          dialogue,
          'damaged-call',
          `Answer received with errors, nothing done: ${briefly(call)}`,
          call,
        );
      }
    },
    'show-failure': (turn, dialogue) => reportFailure(turn, dialogue, `Not sent: ${briefly(dialogue.call)}`),
    'show-no-answer': (turn, dialogue) => {
      sound(turn, dialogue, 'routine');
      tell(
        turn,
        dialogue,
        'no-answer',
        `No answer after ${dialogue.attempts} of ${dialogue.allowed} calls: ${briefly(dialogue.call)}`,
      );
    },
    'show-refusal': (turn, dialogue, { call }) => {
      sound(turn, dialogue, 'routine');
      if (call !== undefined) tell(turn, dialogue, 'refused', `Refused: ${briefly(call)}`, call);
    },
    'show-retry': (turn, dialogue) =>
      tell(
        turn,
        dialogue,
        'no-answer',
        `No answer to call ${dialogue.attempts} of ${dialogue.allowed}: it will be repeated`,
      ),
    'show-still-tuned': leaveTuned,
    speak: (turn, dialogue) => {
      const { answer, call, channel } = dialogue;
      const subject = answer?.kind === 'individual-acknowledgement' ? answer : call;
      speak(turn, dialogue, subject, channel ?? WATCH_CHANNEL);
    },
    'stop-sending': stopTransmission,
    tune: (turn, dialogue, cause) => {
      dialogue.channel ??= voiceChannelOf(cause.call ?? dialogue.call);
      if (dialogue.channel !== null) tune(turn, dialogue, dialogue.channel);
    },
    'tune-16': (turn, dialogue, { call, verdict = 'doubtful' }) => {
      dialogue.channel = WATCH_CHANNEL;
      tuneToWatch(turn, dialogue, call === undefined || mayFollowAlone(turn.state, { call, verdict }));
    },
  },
};

function wantsAnswer(call: Call): boolean {
  switch (call.kind) {
    case 'individual-call':
    case 'position-request':
    case 'test-call':
    case 'polling-call':
      return true;
    default:
      return isRelayToStation(call);
  }
}

function isRelayToStation(call: Call): boolean {
  return call.kind === 'distress-relay' && call.to.kind === 'station';
}

function isCoast(call: Call): boolean {
  return call.to?.kind === 'station' && isCoastIdentity(call.to.mmsi);
}
