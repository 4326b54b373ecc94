import type { Call, NatureOfDistress } from '../../call/index.ts';
import {
  endTransmission,
  logDone,
  logSent,
  reportFailure,
  show,
  sound,
  speak,
  stopTransmission,
  tell,
  transmit,
  tune,
} from '../engine/action.ts';
import { briefly, senderOf } from '../engine/brief.ts';
import { sendablePosition, timeOfDay } from '../engine/clock.ts';
import { mayRepeatAlone } from '../engine/on-air.ts';
import type { Actions, Guards, Procedure, Transition, TransitionTable } from '../engine/procedure.ts';
import { ask } from '../engine/questions.ts';
import { emit } from '../engine/turn.ts';
import { WATCH_CHANNEL } from '../model/channel.ts';
import type { StationState } from '../model/state.ts';
import { lengthOf } from '../model/timer.ts';
import { say } from '../texts.ts';

const phases: Procedure<'own-distress'>['phases'] = {
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

const guards = {
  'cancel-requested': (_, { cancelWanted }) => cancelWanted,
  'nothing-sent': (_, { attempts }) => attempts === 0,
  'was-acknowledged': (_, { acknowledgement }) => acknowledgement !== null,
  'was-away': ({ state }, _, { late = 0 }) =>
    !mayRepeatAlone(late, lengthOf('alert-repeat', state.settings.timers)),
  'was-stopped': (_, { stopped }) => stopped,
} satisfies Guards<'own-distress'>;

const actions = {
  alarm: (turn, dialogue) => sound(turn, dialogue, 'distress'),
  'ask-to-cancel': ask,
  'ask-to-repeat': ask,
  'ask-to-stop': (turn, dialogue, { call }) => {
    const text = say('station-alert-acknowledged-damaged', call === undefined ? {} : { call: briefly(call) });
    show(turn, dialogue, 'acknowledgement-doubtful', text, call);
    emit(turn, dialogue, { kind: 'ask', question: 'stop-alert', ...text, answers: ['stop-alert'], call });
  },
  'compose-alert': (turn, dialogue) => {
    dialogue.call = alertOf(turn.state, dialogue.nature);
    dialogue.attempts++;
    dialogue.alertedAt = turn.state.now;
    dialogue.acknowledgement = null;
    dialogue.stopped = false;
    dialogue.cancelWanted = false;
  },
  'compose-cancellation': (turn, dialogue) => {
    dialogue.call = cancellationOf(turn.state, dialogue.call, dialogue.nature);
  },
  'end-transmission': endTransmission,
  'keep-acknowledgement': (_, dialogue, { call }) => {
    if (call !== undefined) dialogue.acknowledgement = call;
  },
  'keep-nature': (_, dialogue, { nature }) => {
    if (nature !== undefined) dialogue.nature = nature;
  },
  'log-cancelled': (turn, dialogue) => logDone(turn, dialogue, say('station-cancelled', {})),
  'log-cancelled-by-voice': (turn, dialogue) =>
    logDone(turn, dialogue, say('station-cancelled-by-voice', {})),
  'log-not-cancelled': (turn, dialogue) =>
    tell(turn, dialogue, 'alert-not-cancelled', say('station-not-cancelled', {})),
  'log-not-cancelled-by-voice': (turn, dialogue) =>
    tell(turn, dialogue, 'distress-cancelled', say('station-cancelled-by-dsc', {})),
  'log-not-sent': (turn, dialogue) => logDone(turn, dialogue, say('station-alert-not-sent', {})),
  'log-closed': (turn, dialogue) => logDone(turn, dialogue, say('station-alert-closed', {})),
  'log-sent': (turn, dialogue) => {
    const { call } = dialogue;
    if (call !== null) logSent(turn, dialogue, call, timesOf(call));
  },
  'log-spoken': (turn, dialogue) => {
    dialogue.spoken = true;
    logDone(turn, dialogue, say('station-alert-spoken', {}));
  },
  'mark-stopped': (_, dialogue) => {
    dialogue.stopped = true;
  },
  'remind-to-speak': (turn, dialogue) => {
    if (dialogue.spoken) return;
    show(turn, dialogue, 'waiting-for-acknowledgement', say('station-alert-speak', {}));
  },
  send: (turn, dialogue) => {
    const { call } = dialogue;
    transmit(turn, dialogue, call, call === null ? 1 : timesOf(call));
  },
  'show-acknowledged': (turn, dialogue, { call }) => {
    sound(turn, dialogue, 'distress');
    tell(
      turn,
      dialogue,
      'acknowledged',
      say('station-alert-acknowledged', call === undefined ? {} : { by: senderOf(call) }),
      call,
    );
  },
  'show-cancel-failure': (turn, dialogue) => reportFailure(turn, dialogue, say('station-cancel-failed', {})),
  'show-countdown': (turn, dialogue) =>
    show(turn, dialogue, 'alert-countdown', say('station-alert-countdown', { nature: dialogue.nature })),
  'show-failure': (turn, dialogue) => reportFailure(turn, dialogue, say('station-alert-failed', {})),
  'show-prepared': (turn, dialogue) =>
    show(turn, dialogue, 'alert-prepared', say('station-alert-prepared', {})),
  'show-relayed': (turn, dialogue, { call }) =>
    tell(
      turn,
      dialogue,
      'distress-traffic',
      say('station-alert-relayed', call === undefined ? {} : { call: briefly(call) }),
      call,
    ),
  'show-stopped': (turn, dialogue) => tell(turn, dialogue, 'alert-stopped', say('station-alert-stopped', {})),
  'show-waiting': (turn, dialogue) =>
    show(
      turn,
      dialogue,
      'waiting-for-acknowledgement',
      say('station-alert-waiting', { attempts: dialogue.attempts }),
    ),
  'speak-cancellation': (turn, dialogue) => {
    const { alertedAt, call } = dialogue;
    if (call === null) return;
    speak(turn, dialogue, call, WATCH_CHANNEL, alertedAt === null ? null : timeOfDay(alertedAt));
  },
  'speak-distress': (turn, dialogue) => {
    if (dialogue.call !== null && !dialogue.spoken) speak(turn, dialogue, dialogue.call, WATCH_CHANNEL);
  },
  'stop-sending': stopTransmission,
  'tune-16': (turn, dialogue) => tune(turn, dialogue, WATCH_CHANNEL),
  'unmark-cancel': (_, dialogue) => {
    dialogue.cancelWanted = false;
  },
  'want-cancel': (_, dialogue) => {
    dialogue.cancelWanted = true;
  },
} satisfies Actions<'own-distress'>;

type Row = Transition<'own-distress', keyof typeof guards, keyof typeof actions>;

/** After a long silence nobody knows whether the alert is still true: only a person starts it again. */
const wasAway: Omit<Row, 'on'> = {
  when: 'was-away',
  to: 'interrupted',
  do: ['mark-stopped', 'alarm', 'ask-to-repeat'],
  clause: 'ownChoice',
};

const acknowledged: Row = {
  on: 'acknowledged',
  to: 'acknowledged',
  do: ['keep-acknowledgement', 'show-acknowledged', 'speak-distress'],
  clause: 'acknowledgement',
};

/** What a person does about an alert that is no longer repeated and not acknowledged. */
const silent: readonly Row[] = [
  { on: 'spoken', do: ['log-spoken'], clause: 'alert' },
  { on: 'press', to: 'countdown', do: ['show-countdown'], clause: 'alertAct' },
  { on: 'describe', do: ['keep-nature'], clause: 'alert' },
  acknowledged,
  { on: 'cancel', to: 'cancel-asked', do: ['ask-to-cancel'], clause: 'falseAlert' },
  { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  { on: 'distress-memory over', to: 'ended', do: ['log-closed'], clause: 'procedures' },
];

/** The alert, from the first act to the end of its repeats (ITU-R M.541), and its cancellation. */
const transitions: TransitionTable<'own-distress', keyof typeof guards, keyof typeof actions> = {
  new: [{ on: 'prepare', to: 'prepared', do: ['show-prepared'], clause: 'alertAct' }],
  prepared: [
    { on: 'press', to: 'countdown', do: ['show-countdown'], clause: 'alertAct' },
    { on: 'describe', do: ['keep-nature'], clause: 'alert' },
    { on: 'cancel', to: 'ended', do: ['log-not-sent'], clause: 'alertAct' },
    { on: 'dismiss', to: 'ended', do: ['log-not-sent'], clause: 'alertAct' },
    { on: 'inactivity over', to: 'ended', do: ['log-not-sent'], clause: 'procedures' },
  ],
  countdown: [
    { on: 'release', when: 'was-acknowledged', to: 'acknowledged', clause: 'alertAct' },
    { on: 'release', when: 'was-stopped', to: 'stopped', clause: 'alertAct' },
    { on: 'release', to: 'prepared', do: ['show-prepared'], clause: 'alertAct' },
    { on: 'describe', do: ['keep-nature'], clause: 'alert' },
    { on: 'alert-hold over', ...wasAway },
    { on: 'alert-hold over', to: 'waiting-channel', clause: 'alertAct' },
  ],
  'waiting-channel': [
    { on: 'channel free', to: 'sending', do: ['compose-alert', 'send'], clause: 'alert' },
    { on: 'alert-busy-limit over', ...wasAway },
    { on: 'alert-busy-limit over', to: 'sending', do: ['compose-alert', 'send'], clause: 'busyLimit' },
    { on: 'describe', do: ['keep-nature'], clause: 'alert' },
    acknowledged,
    { on: 'cancel', when: 'nothing-sent', to: 'ended', do: ['log-not-sent'], clause: 'falseAlert' },
    { on: 'cancel', to: 'cancel-asked', do: ['ask-to-cancel'], clause: 'falseAlert' },
  ],
  sending: [
    {
      on: 'sent',
      when: 'cancel-requested',
      to: 'cancel-asked',
      do: ['end-transmission', 'log-sent', 'unmark-cancel', 'ask-to-cancel'],
      clause: 'falseAlert',
    },
    {
      on: 'sent',
      to: 'waiting-acknowledgement',
      do: ['end-transmission', 'log-sent', 'tune-16', 'show-waiting', 'speak-distress'],
      clause: 'alert',
    },
    { on: 'describe', do: ['keep-nature'], clause: 'alert' },
    { on: 'cancel', do: ['want-cancel'], clause: 'falseAlert' },
    {
      on: 'acknowledged',
      to: 'acknowledged',
      do: ['stop-sending', 'keep-acknowledgement', 'tune-16', 'show-acknowledged', 'speak-distress'],
      clause: 'acknowledgement',
    },
    // Whether a failed attempt went out in part is not known: a cancellation is still asked for.
    {
      on: 'send-failed',
      when: 'cancel-requested',
      to: 'cancel-asked',
      do: ['show-failure', 'unmark-cancel', 'ask-to-cancel'],
      clause: 'falseAlert',
    },
    {
      on: 'send-failed',
      to: 'waiting-acknowledgement',
      do: ['show-failure', 'tune-16', 'speak-distress'],
      clause: 'alert',
    },
    {
      on: 'transmission-limit over',
      when: 'cancel-requested',
      to: 'cancel-asked',
      do: ['stop-sending', 'show-failure', 'unmark-cancel', 'ask-to-cancel'],
      clause: 'falseAlert',
    },
    {
      on: 'transmission-limit over',
      to: 'waiting-acknowledgement',
      do: ['stop-sending', 'show-failure', 'tune-16', 'speak-distress'],
      clause: 'alert',
    },
  ],
  'waiting-acknowledgement': [
    { on: 'voice-after-alert over', do: ['remind-to-speak'], clause: 'alert' },
    { on: 'alert-repeat over', ...wasAway },
    { on: 'alert-repeat over', to: 'waiting-channel', clause: 'alert' },
    { on: 'retry', to: 'waiting-channel', clause: 'alert' },
    acknowledged,
    { on: 'acknowledged-damaged', do: ['ask-to-stop'], clause: 'errorCheck' },
    { on: 'relayed', do: ['show-relayed'], clause: 'acknowledgement' },
    { on: 'describe', do: ['keep-nature'], clause: 'alert' },
    { on: 'spoken', do: ['log-spoken'], clause: 'alert' },
    { on: 'stop', to: 'stopped', do: ['mark-stopped', 'show-stopped'], clause: 'alert' },
    { on: 'cancel', to: 'cancel-asked', do: ['ask-to-cancel'], clause: 'falseAlert' },
  ],
  acknowledged: [
    { on: 'spoken', do: ['log-spoken'], clause: 'alert' },
    { on: 'press', to: 'countdown', do: ['show-countdown'], clause: 'alertAct' },
    { on: 'describe', do: ['keep-nature'], clause: 'alert' },
    { on: 'cancel', to: 'cancel-asked', do: ['ask-to-cancel'], clause: 'falseAlert' },
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'distress-memory over', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  ],
  stopped: silent,
  interrupted: [...silent, { on: 'stop', to: 'stopped', do: ['show-stopped'], clause: 'alert' }],
  // Taking back a false alert, by DSC and by voice: ITU-R M.541-11; 47 CFR 80.335.
  'cancel-asked': [
    { on: 'confirm', to: 'cancel-waiting', do: ['compose-cancellation'], clause: 'falseAlert' },
    {
      on: 'decline',
      when: 'was-acknowledged',
      to: 'acknowledged',
      do: ['speak-distress'],
      clause: 'falseAlert',
    },
    { on: 'decline', when: 'was-stopped', to: 'stopped', clause: 'falseAlert' },
    { on: 'decline', to: 'waiting-acknowledgement', clause: 'falseAlert' },
    {
      on: 'cancel-question over',
      when: 'was-acknowledged',
      to: 'acknowledged',
      do: ['speak-distress'],
      clause: 'procedures',
    },
    { on: 'cancel-question over', when: 'was-stopped', to: 'stopped', clause: 'procedures' },
    { on: 'cancel-question over', to: 'waiting-acknowledgement', clause: 'procedures' },
    // An acknowledgement ended the repeats while the question was open.
    { on: 'alert-repeat over', when: 'was-acknowledged', clause: 'acknowledgement' },
    { on: 'stop', to: 'stopped', do: ['mark-stopped', 'show-stopped'], clause: 'alert' },
    { on: 'alert-repeat over', ...wasAway },
    // Without an answer the alert remains valid, and its repeats go on as if nobody had asked.
    { on: 'alert-repeat over', to: 'waiting-channel', clause: 'alert' },
    { on: 'acknowledged', do: ['keep-acknowledgement', 'show-acknowledged'], clause: 'acknowledgement' },
  ],
  // RR 2024 Nos. 32.53B to 32.53E: by DSC where able, always by voice; 47 CFR 80.335(a) names the voice only.
  'cancel-waiting': [
    { on: 'channel free', to: 'cancel-sending', do: ['send'], clause: 'falseAlert' },
    {
      on: 'alert-busy-limit over',
      when: 'was-away',
      to: 'cancel-asked',
      do: ['mark-stopped', 'alarm', 'ask-to-cancel'],
      clause: 'ownChoice',
    },
    { on: 'alert-busy-limit over', to: 'cancel-sending', do: ['send'], clause: 'falseAlert' },
  ],
  'cancel-sending': [
    {
      on: 'sent',
      to: 'cancel-voice',
      do: ['end-transmission', 'log-sent', 'tune-16', 'speak-cancellation'],
      clause: 'falseAlert',
    },
    {
      on: 'send-failed',
      to: 'cancel-voice-only',
      do: ['show-cancel-failure', 'tune-16', 'speak-cancellation'],
      clause: 'falseAlert',
    },
    {
      on: 'transmission-limit over',
      to: 'cancel-voice-only',
      do: ['stop-sending', 'show-cancel-failure', 'tune-16', 'speak-cancellation'],
      clause: 'falseAlert',
    },
  ],
  'cancel-voice': [
    { on: 'spoken', to: 'ended', do: ['log-cancelled'], clause: 'falseAlert' },
    { on: 'dismiss', to: 'ended', do: ['log-not-cancelled-by-voice'], clause: 'falseAlert' },
    { on: 'inactivity over', to: 'ended', do: ['log-not-cancelled-by-voice'], clause: 'falseAlert' },
  ],
  'cancel-voice-only': [
    { on: 'spoken', to: 'ended', do: ['log-cancelled-by-voice'], clause: 'falseAlert' },
    { on: 'dismiss', to: 'ended', do: ['log-not-cancelled'], clause: 'falseAlert' },
    { on: 'inactivity over', to: 'ended', do: ['log-not-cancelled'], clause: 'falseAlert' },
  ],
};

/** The own distress alert. */
export const ownDistress: Procedure<'own-distress'> = {
  phases,
  transitions,
  guards,
  actions,
  timerOf: (wait) => wait,
};

// ITU-R M.541: an attempt on VHF is five alerts in a row. A cancellation is a single call.
function timesOf(call: Call): 1 | 5 {
  return call.kind === 'distress-alert' ? 5 : 1;
}

/** The alert with what is known at this moment; unknown position and time go out as nines and eights. */
function alertOf(state: StationState, nature: NatureOfDistress): Call {
  return {
    kind: 'distress-alert',
    to: { kind: 'all-stations' },
    from: state.settings.mmsi,
    nature,
    ...sendablePosition(state),
    subsequent: 'telephony-simplex',
  };
}

/** A self-cancellation repeats what the last alert said: M.493-16. */
function cancellationOf(state: StationState, alert: Call | null, nature: NatureOfDistress): Call {
  const said = alert?.kind === 'distress-alert' ? alert : null;
  return {
    kind: 'distress-self-cancel',
    to: { kind: 'all-ships' },
    from: state.settings.mmsi,
    distressed: state.settings.mmsi,
    nature: said?.nature ?? nature,
    position: said?.position ?? null,
    time: said?.time ?? null,
    subsequent: 'telephony-simplex',
  };
}
