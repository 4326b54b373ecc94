import { answersTo, type Call, type LawfulAnswer, type Reason, reasons } from '../../call/index.ts';
import { isMooredVesselAlarm } from '../../call/internal.ts';
import {
  endTransmission,
  leaveTuned,
  logDone,
  logSent,
  reportFailure,
  returnToWatch,
  show,
  sound,
  speak,
  stopTransmission,
  tell,
  transmit,
  tune,
} from '../engine/action.ts';
import { briefly } from '../engine/brief.ts';
import { sendablePosition } from '../engine/clock.ts';
import { mayAnswerAlone, mayTuneAlone, mayTuneAutomatically, type Received } from '../engine/on-air.ts';
import type { Actions, Cause, Guards, Procedure, Transition, TransitionTable } from '../engine/procedure.ts';
import { ask } from '../engine/questions.ts';
import { voiceChannelOf, WATCH_CHANNEL } from '../model/channel.ts';
import type { Dialogue } from '../model/dialogue.ts';
import type { Effects } from '../model/effect.ts';
import { policyFor } from '../model/settings.ts';
import type { StationState } from '../model/state.ts';
import { say } from '../texts.ts';

const phases: Procedure<'incoming'>['phases'] = {
  deciding: { waits: ['decision'] },
  'waiting-channel': { waits: ['automatic-answer', 'channel-wait'] },
  sending: { waits: ['transmission-limit'] },
  agreed: { waits: ['inactivity'] },
  'on-channel': { waits: ['inactivity'] },
  shown: { waits: ['inactivity'] },
};

const guards = {
  'answers-automatically': ({ state }, dialogue, cause) => {
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
  'may-reject': (turn, { call }, { reason }) =>
    reason !== undefined && answerUnable(turn.state, call, reason) !== null,
  'rejects-automatically': ({ state }, dialogue, cause) => {
    const received = receivedNow(dialogue, cause);
    return mayAnswerAlone(state, received) && refusalFor(state, received.call) !== null;
  },
  'tunes-after-answer': (turn, dialogue) => {
    const channel = channelOf(dialogue);
    return channel !== null && mayTuneAutomatically(turn.state, channel, true);
  },
  'tunes-automatically': ({ state }, dialogue, cause) => {
    const channel = channelOf(dialogue);
    return (
      channel !== null &&
      isAnnouncement(dialogue.call) &&
      policyFor(state.settings, dialogue.call) === 'automatic' &&
      mayTuneAlone(state, receivedNow(dialogue, cause), channel, false)
    );
  },
  'wants-answer': (turn, { call }) => lawfulAnswers(turn.state, call).length > 0,
} satisfies Guards<'incoming'>;

const actions = {
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
    show(
      turn,
      dialogue,
      'call-again',
      say('station-received-times', { times: dialogue.times, call: briefly(dialogue.call) }),
    );
  },
  'log-closed': (turn, dialogue) =>
    logDone(
      turn,
      dialogue,
      say(isAnnouncement(dialogue.call) ? 'station-closed' : 'station-closed-unanswered', {
        call: briefly(dialogue.call),
      }),
    ),
  'log-sent': (turn, dialogue) => {
    endTransmission(turn, dialogue);
    if (dialogue.answer !== null) logSent(turn, dialogue, dialogue.answer);
  },
  'return-to-watch': returnToWatch,
  send: (turn, dialogue) => transmit(turn, dialogue, dialogue.answer),
  show: (turn, dialogue) =>
    show(
      turn,
      dialogue,
      isAnnouncement(dialogue.call) ? 'announcement' : 'call-received',
      say('station-received', { call: briefly(dialogue.call) }),
    ),
  'show-damaged': (turn, dialogue) =>
    tell(turn, dialogue, 'damaged-call', say('station-received-damaged', { call: briefly(dialogue.call) })),
  'show-failure': (turn, dialogue) =>
    reportFailure(turn, dialogue, say('station-answer-not-sent', { call: briefly(dialogue.call) })),
  'show-missed': (turn, dialogue) =>
    tell(
      turn,
      dialogue,
      'missed-call',
      say(isAnnouncement(dialogue.call) ? 'station-not-followed' : 'station-missed', {
        call: briefly(dialogue.call),
      }),
    ),
  'show-still-tuned': leaveTuned,
  'show-too-late': (turn, dialogue) => tell(turn, dialogue, 'channel-busy', say('station-too-late', {})),
  speak: (turn, dialogue) =>
    speak(turn, dialogue, dialogue.answer ?? dialogue.call, dialogue.channel ?? WATCH_CHANNEL),
  'stop-sending': stopTransmission,
  tune: (turn, dialogue) => {
    dialogue.channel = channelOf(dialogue);
    if (dialogue.channel !== null) tune(turn, dialogue, dialogue.channel);
  },
} satisfies Actions<'incoming'>;

type Row = Transition<'incoming', keyof typeof guards, keyof typeof actions>;

/** A caller who calls again has not received the answer. */
const answeredAgain: readonly Row[] = [
  {
    on: 'repeated',
    when: 'answers-automatically',
    to: 'waiting-channel',
    do: ['count-call', 'answer-by-policy'],
    clause: 'answering',
  },
  {
    on: 'repeated',
    when: 'wants-answer',
    to: 'deciding',
    do: ['count-call', 'ask-to-answer'],
    clause: 'answering',
  },
  { on: 'repeated', do: ['count-call'], clause: 'alarms' },
];

const transitions: TransitionTable<'incoming', keyof typeof guards, keyof typeof actions> = {
  new: [
    { on: 'call', when: 'damaged', to: 'shown', do: ['show-damaged'], clause: 'errorCheck' },
    {
      on: 'call',
      when: 'answers-automatically',
      to: 'waiting-channel',
      do: ['alarm', 'show', 'answer-by-policy'],
      clause: 'answering',
    },
    {
      on: 'call',
      when: 'rejects-automatically',
      to: 'waiting-channel',
      do: ['show', 'answer-by-policy'],
      clause: 'reasons',
    },
    {
      on: 'call',
      when: 'wants-answer',
      to: 'deciding',
      do: ['alarm', 'show', 'ask-to-answer'],
      clause: 'answering',
    },
    {
      on: 'call',
      when: 'tunes-automatically',
      to: 'on-channel',
      do: ['alarm', 'show', 'tune'],
      clause: 'tuning',
    },
    {
      on: 'call',
      when: 'leads-to-channel',
      to: 'agreed',
      do: ['alarm', 'show', 'ask-to-tune'],
      clause: 'announcement',
    },
    { on: 'call', to: 'shown', do: ['alarm', 'show'], clause: 'alarms' },
  ],
  deciding: [
    { on: 'answer', when: 'may-answer', to: 'waiting-channel', do: ['answer-able'], clause: 'answering' },
    { on: 'reject', when: 'may-reject', to: 'waiting-channel', do: ['answer-unable'], clause: 'reasons' },
    { on: 'repeated', do: ['count-call'], clause: 'alarms' },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'decision over', to: 'ended', do: ['show-missed'], clause: 'answering' },
  ],
  'waiting-channel': [
    { on: 'channel free', to: 'sending', do: ['send'], clause: 'channelUse' },
    { on: 'repeated', do: ['count-call'], clause: 'alarms' },
    {
      on: 'automatic-answer over',
      when: 'is-automatic',
      to: 'deciding',
      do: ['show-too-late', 'ask-to-answer'],
      clause: 'answering',
    },
    { on: 'channel-wait over', to: 'ended', do: ['show-missed'], clause: 'channelUse' },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  ],
  sending: [
    {
      on: 'sent',
      when: 'tunes-after-answer',
      to: 'on-channel',
      do: ['log-sent', 'tune', 'speak'],
      clause: 'tuning',
    },
    { on: 'sent', when: 'leads-to-channel', to: 'agreed', do: ['log-sent', 'ask-to-tune'], clause: 'tuning' },
    { on: 'sent', to: 'ended', do: ['log-sent'], clause: 'answering' },
    { on: 'repeated', do: ['count-call'], clause: 'alarms' },
    { on: 'send-failed', to: 'deciding', do: ['show-failure', 'ask-to-answer'], clause: 'procedures' },
    {
      on: 'transmission-limit over',
      to: 'deciding',
      do: ['stop-sending', 'show-failure', 'ask-to-answer'],
      clause: 'procedures',
    },
  ],
  agreed: [
    { on: 'confirm', to: 'on-channel', do: ['tune', 'speak'], clause: 'tuning' },
    { on: 'decline', to: 'ended', do: ['log-closed'], clause: 'tuning' },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'inactivity over', to: 'ended', do: ['show-missed'], clause: 'procedures' },
    ...answeredAgain,
  ],
  'on-channel': [
    { on: 'dismiss', to: 'ended', do: ['return-to-watch'], clause: 'procedures' },
    { on: 'inactivity over', to: 'ended', do: ['show-still-tuned'], clause: 'procedures' },
    ...answeredAgain,
  ],
  shown: [
    { on: 'repeated', do: ['count-call'], clause: 'alarms' },
    { on: 'dismiss', to: 'ended', clause: 'procedures' },
    { on: 'inactivity over', to: 'ended', clause: 'procedures' },
  ],
};

/** Receiving a call, distress aside. */
export const incoming: Procedure<'incoming'> = {
  phases,
  transitions,
  guards,
  actions,
  timerOf: (wait) => (wait === 'decision' ? 'answer-from-ship' : wait),
};

/** The call at hand: the one that was just received, else the one that opened the dialogue. */
function receivedNow({ call, verdict }: Dialogue<'incoming'>, cause: Cause): Received {
  return cause.call === undefined
    ? { call, verdict }
    : { call: cause.call, verdict: cause.verdict ?? 'doubtful' };
}

/** "Able to comply" is sent automatically only for a channel that the owner has chosen. */
function isOnKnownChannel({ settings }: StationState, call: Call): boolean {
  if (call.kind !== 'individual-call') return true;
  const channel = voiceChannelOf(call);
  return channel !== null && settings.channels.includes(channel);
}

function refusalFor(state: StationState, call: Call): Call | null {
  const policy = policyFor(state.settings, call);
  const row = reasons.rows.find(([, reason]) => policy === `reject-${reason}`);
  return row === undefined ? null : answerUnable(state, call, row[1]);
}

function isAnnouncement(call: Call): boolean {
  return call.kind === 'group-call' || call.kind === 'area-call' || call.kind === 'all-ships-call';
}

function channelOf({ answer, call }: Dialogue<'incoming'>): string | null {
  return voiceChannelOf(answer ?? call);
}

function alarmFor(call: Call): Effects['sound']['alarm'] {
  // 47 CFR 80.179(e): the call is routine in form, a fire or a sinking in fact.
  if (isMooredVesselAlarm(call)) return 'urgency';
  if (!isAnnouncement(call) && call.kind !== 'individual-call') return 'routine';
  if (!('category' in call)) return 'routine';
  return call.category === 'distress' || call.category === 'urgency' || call.category === 'safety'
    ? call.category
    : 'routine';
}

const ableMeanings: readonly LawfulAnswer['meaning'][] = ['able', 'position', 'test', 'polling'];

/**
 * The answer "able to comply" to a call, on the channel proposed or another.
 *
 * @returns `null` when the call needs no answer, nobody is known to answer, or this station may not send one
 */
function answerAble(state: StationState, call: Call, channel?: string): Call | null {
  const proposed = 'channel' in call ? call.channel : null;
  const { equipment, channels } = state.settings;
  // Only a coast station chooses the channel when the caller proposed none.
  const other = channel ?? (proposed === null && equipment === 'coast' ? channels[0] : undefined);
  const answer = lawfulAnswers(state, call, other).find(({ meaning }) =>
    other === undefined || other === proposed
      ? ableMeanings.includes(meaning)
      : meaning === 'able-on-another-channel' ||
        (call.kind !== 'individual-call' && ableMeanings.includes(meaning)),
  );
  return answer?.call ?? null;
}

/** The answer "unable to comply" to a call, with its reason; `null` as for {@link answerAble}. */
function answerUnable(state: StationState, call: Call, reason: Reason): Call | null {
  const answer = lawfulAnswers(state, call).find(
    ({ call: own }) => own.kind === 'unable-to-comply' && own.reason === reason,
  );
  return answer?.call ?? null;
}

/** The answers to a call that this station may send, able or not. */
function lawfulAnswers(state: StationState, call: Call, other?: string): readonly LawfulAnswer[] {
  const { mmsi, equipment } = state.settings;
  if (mmsi === null) return [];
  const channels = other === undefined ? [] : [other];
  const station = { own: mmsi, equipmentClass: equipment, ...sendablePosition(state), channels };
  return answersTo(call, station).answers;
}
