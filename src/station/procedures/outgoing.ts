import type { Call } from '../../call/index.ts';
import {
  endTransmission,
  leaveTuned,
  logDone,
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
} from '../engine/action.ts';
import { briefly } from '../engine/brief.ts';
import { mayFollowAlone, mayTuneAlone, mayTuneAutomatically, type Received } from '../engine/on-air.ts';
import type {
  Actions,
  Guards,
  Procedure,
  Transition,
  TransitionTable,
  Triggers,
} from '../engine/procedure.ts';
import { ask } from '../engine/questions.ts';
import type { Draft, Turn } from '../engine/turn.ts';
import { voiceChannelOf, WATCH_CHANNEL } from '../model/channel.ts';
import type { Dialogue } from '../model/dialogue.ts';
import { isCoastIdentity } from '../model/equipment.ts';
import { say } from '../texts.ts';

const phases: Procedure<'outgoing'>['phases'] = {
  confirming: { waits: ['inactivity'] },
  'waiting-channel': { waits: ['channel-wait'] },
  sending: { waits: ['transmission-limit'] },
  'waiting-answer': { waits: ['answer', 'retry'] },
  'retry-wait': { waits: ['retry'] },
  unanswered: { waits: ['inactivity'] },
  refused: { waits: ['inactivity'] },
  agreed: { waits: ['inactivity'] },
  'on-channel': { waits: ['inactivity'] },
};

const guards = {
  'is-relay-to-station': (_, { call }) => isRelayToStation(call),
  'needs-second-thought': (_, { call }) =>
    call.kind === 'distress-relay' || call.kind === 'all-ships-call' || call.kind === 'area-call',
  'wants-answer': (_, { call }) => wantsAnswer(call),
  'attempts-left': (_, { attempts, allowed }) => attempts < allowed,
  'names-channel': (_, { call }, cause) => voiceChannelOf(cause.call ?? call) !== null,
  'tunes-automatically': ({ state }, { call }, { call: answer, verdict = 'doubtful' }) => {
    const channel = voiceChannelOf(answer ?? call);
    if (channel === null) return false;
    const wasAskedFor = channel === voiceChannelOf(call) || isCoast(call);
    return answer === undefined
      ? mayTuneAutomatically(state, channel, wasAskedFor)
      : mayTuneAlone(state, { call: answer, verdict }, channel, wasAskedFor);
  },
} satisfies Guards<'outgoing'>;

const actions = {
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
  'log-closed': (turn, dialogue) =>
    logDone(turn, dialogue, say('station-closed', { call: briefly(dialogue.call) })),
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
    if (call !== undefined)
      tell(turn, dialogue, topic, say('station-answered', { call: briefly(call) }), call);
  },
  'show-busy': (turn, dialogue) => tell(turn, dialogue, 'channel-busy', say('station-channel-busy', {})),
  'show-damaged': (turn, dialogue, { call }) => {
    if (call !== undefined) {
      tell(turn, dialogue, 'damaged-call', say('station-answer-damaged', { call: briefly(call) }), call);
    }
  },
  'show-failure': (turn, dialogue) =>
    reportFailure(turn, dialogue, say('station-not-sent', { call: briefly(dialogue.call) })),
  'show-no-answer': (turn, dialogue) => {
    sound(turn, dialogue, 'routine');
    const { attempts, allowed, call } = dialogue;
    const text = say('station-no-answer', { attempts, allowed, call: briefly(call) });
    tell(turn, dialogue, 'no-answer', text);
  },
  'show-refusal': (turn, dialogue, { call }) => {
    sound(turn, dialogue, 'routine');
    if (call !== undefined)
      tell(turn, dialogue, 'refused', say('station-refused', { call: briefly(call) }), call);
  },
  'show-retry': (turn, dialogue) => {
    const { attempts: attempt, allowed } = dialogue;
    tell(turn, dialogue, 'no-answer', say('station-calling-again', { attempt, allowed }));
  },
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
} satisfies Actions<'outgoing'>;

type Row = Transition<'outgoing', keyof typeof guards, keyof typeof actions>;

/** A relay is followed by voice when it has been sent, and is never repeated automatically. */
const relayAnswered: Row = {
  on: 'able',
  when: 'is-relay-to-station',
  to: 'on-channel',
  do: ['keep-answer', 'show-answer', 'tune-16'],
  clause: 'relay',
};

/** An answer counts in every phase until the dialogue is closed. */
const answered: readonly Row[] = [
  {
    on: 'able',
    when: 'tunes-automatically',
    to: 'on-channel',
    do: ['keep-answer', 'show-answer', 'tune', 'speak'],
    clause: 'tuning',
  },
  {
    on: 'able',
    when: 'names-channel',
    to: 'agreed',
    do: ['keep-answer', 'show-answer', 'ask-to-tune'],
    clause: 'tuning',
  },
  { on: 'able', to: 'ended', do: ['keep-answer', 'show-answer'], clause: 'answering' },
  { on: 'unable', to: 'refused', do: ['keep-answer', 'show-refusal'], clause: 'reasons' },
  { on: 'answered', to: 'ended', do: ['keep-answer', 'show-answer'], clause: 'enquiry' },
  { on: 'answered-damaged', do: ['show-damaged'], clause: 'errorCheck' },
];

const transitions: TransitionTable<'outgoing', keyof typeof guards, keyof typeof actions> = {
  new: [
    { on: 'call', when: 'needs-second-thought', to: 'confirming', do: ['ask-to-send'], clause: 'relay' },
    { on: 'call', to: 'waiting-channel', clause: 'channelUse' },
  ],
  confirming: [
    { on: 'confirm', to: 'waiting-channel', clause: 'channelUse' },
    { on: 'decline', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'inactivity over', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  ],
  'waiting-channel': [
    { on: 'channel free', to: 'sending', do: ['count-attempt', 'send'], clause: 'channelUse' },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'channel-wait over', to: 'unanswered', do: ['show-busy'], clause: 'channelUse' },
  ],
  sending: [
    // A relay is spoken in any case; without an answer it is for the person to send it again.
    {
      on: 'sent',
      when: 'is-relay-to-station',
      to: 'waiting-answer',
      do: ['log-sent', 'tune-16', 'speak'],
      clause: 'relay',
    },
    { on: 'sent', when: 'wants-answer', to: 'waiting-answer', do: ['log-sent'], clause: 'calling' },
    {
      on: 'sent',
      when: 'tunes-automatically',
      to: 'on-channel',
      do: ['log-sent', 'tune', 'speak'],
      clause: 'announcement',
    },
    {
      on: 'sent',
      when: 'names-channel',
      to: 'agreed',
      do: ['log-sent', 'ask-to-tune'],
      clause: 'announcement',
    },
    { on: 'sent', to: 'ended', do: ['log-sent'], clause: 'announcement' },
    { on: 'send-failed', to: 'unanswered', do: ['show-failure'], clause: 'procedures' },
    {
      on: 'transmission-limit over',
      to: 'unanswered',
      do: ['stop-sending', 'show-failure'],
      clause: 'procedures',
    },
  ],
  'waiting-answer': [
    relayAnswered,
    ...answered,
    { on: 'answer over', when: 'attempts-left', to: 'retry-wait', do: ['show-retry'], clause: 'calling' },
    { on: 'answer over', to: 'unanswered', do: ['show-no-answer'], clause: 'calling' },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  ],
  'retry-wait': [
    ...answered,
    { on: 'retry over', to: 'waiting-channel', clause: 'calling' },
    { on: 'retry', to: 'waiting-channel', clause: 'calling' },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  ],
  unanswered: [
    relayAnswered,
    ...answered,
    { on: 'retry', to: 'waiting-channel', do: ['renew-attempts'], clause: 'calling' },
    {
      on: 'counter-propose',
      to: 'waiting-channel',
      do: ['renew-attempts', 'change-channel'],
      clause: 'calling',
    },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'inactivity over', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  ],
  refused: [
    { on: 'retry', to: 'waiting-channel', do: ['renew-attempts'], clause: 'calling' },
    {
      on: 'counter-propose',
      to: 'waiting-channel',
      do: ['renew-attempts', 'change-channel'],
      clause: 'reasons',
    },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'inactivity over', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  ],
  agreed: [
    { on: 'confirm', to: 'on-channel', do: ['tune', 'speak'], clause: 'tuning' },
    { on: 'decline', to: 'ended', do: ['log-closed'], clause: 'tuning' },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'inactivity over', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  ],
  'on-channel': [
    { on: 'dismiss', to: 'ended', do: ['return-to-watch'], clause: 'procedures' },
    { on: 'inactivity over', to: 'ended', do: ['show-still-tuned'], clause: 'procedures' },
  ],
};

/** Sending a call, distress alerts aside. */
export const outgoing: Procedure<'outgoing'> = {
  phases,
  transitions,
  guards,
  actions,
  timerOf: (wait, { call, attempts }) => {
    switch (wait) {
      case 'answer':
        if (call.kind === 'test-call' || call.kind === 'polling-call') return 'answer-from-set';
        return isCoast(call) ? 'answer-from-coast' : 'answer-from-ship';
      case 'retry':
        return attempts < 2 ? 'second-attempt' : 'third-attempt';
      default:
        return wait;
    }
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

/**
 * The call of this station that an answer belongs to: one that still waits rather than one that is over, one of the
 * answer's own category rather than another, and the latest of several.
 */
export function findQuestion({ state }: Turn, answer: Call): Draft<Dialogue<'outgoing'>> | undefined {
  const fitting = state.dialogues.filter(
    (dialogue): dialogue is Draft<Dialogue<'outgoing'>> =>
      dialogue.procedure === 'outgoing' &&
      dialogue.attempts > 0 &&
      fitsQuestion(dialogue.call, answer) &&
      isFromCalled(dialogue.call, answer),
  );
  const waiting = fitting.filter(({ phase }) => phase === 'waiting-answer' || phase === 'retry-wait');
  const among = waiting.length > 0 ? waiting : fitting;
  return among.findLast(({ call }) => categoryOf(call) === categoryOf(answer)) ?? among.at(-1);
}

function categoryOf(call: Call): unknown {
  return 'category' in call ? call.category : null;
}

/** The kind of call that each kind of answer belongs to; others belong to more than one. */
const asked: Readonly<Partial<Record<Call['kind'], Call['kind']>>> = {
  'individual-acknowledgement': 'individual-call',
  'position-reply': 'position-request',
  'test-acknowledgement': 'test-call',
  'polling-acknowledgement': 'polling-call',
  'distress-relay-acknowledgement': 'distress-relay',
};

/** Whether an answer is of the kind that a call asks for. */
export function fitsQuestion(question: Call, answer: Call): boolean {
  const kind = asked[answer.kind];
  if (kind !== undefined) return question.kind === kind;
  return 'category' in question && question.to?.kind === 'station';
}

/** A group of coast stations has an identity of its own, and one of them answers under hers. */
export function isFromCalled(question: Call, answer: Call): boolean {
  if (question.to?.kind !== 'station' || answer.from === null) return false;
  const called = question.to.mmsi;
  return called === answer.from || (isCoastIdentity(called) && isCoastIdentity(answer.from));
}

/** What an answer is to the call it belongs to. */
export function answerTrigger({ call, verdict }: Received): Triggers['outgoing'] {
  if (verdict === 'doubtful') return 'answered-damaged';
  switch (call.kind) {
    case 'individual-acknowledgement':
    case 'distress-relay-acknowledgement':
      return 'able';
    case 'unable-to-comply':
      return 'unable';
    default:
      return 'answered';
  }
}
