import type { Call } from '../../../call/index.ts';
import type { CodedText, Issue } from '../../../result/index.ts';
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
  tuneToWatch,
} from '../../engine/action.ts';
import { briefly, senderOf, vesselIn } from '../../engine/brief.ts';
import { mayFollowAlone, objectionTo } from '../../engine/on-air.ts';
import type {
  Actions,
  Cause,
  Guards,
  Procedure,
  Transition,
  TransitionTable,
} from '../../engine/procedure.ts';
import { ask } from '../../engine/questions.ts';
import { emit, type Turn } from '../../engine/turn.ts';
import { WATCH_CHANNEL } from '../../model/channel.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import { isCoastIdentity } from '../../model/equipment.ts';
import type { StationState } from '../../model/state.ts';
import { lengthOf } from '../../model/timer.ts';
import { say } from '../../texts.ts';
import { adviceFor } from './advise.ts';
import { dscPermission, isAboutRelay } from './permission.ts';

const phases: Procedure<'heard-distress'>['phases'] = {
  shown: { waits: ['listen-after-alert'] },
  listening: { waits: ['listen-after-alert', 'distress-memory'] },
  undecided: { waits: ['distress-memory'] },
  'coast-answered': { waits: ['distress-memory'] },
  'inform-coast': { waits: ['distress-memory'] },
  assisting: { waits: ['distress-memory'] },
  'acknowledge-asked': { waits: ['inactivity'], keeps: ['distress-memory'] },
  'acknowledge-waiting': { waits: ['channel-wait'], keeps: ['distress-memory'] },
  'acknowledge-sending': { waits: ['transmission-limit'], keeps: ['distress-memory'] },
  cancelled: { waits: ['inactivity'] },
};

const guards = {
  'alert-still-repeated': ({ state }, { alerts, lastAlertAt }) =>
    alerts > 1 &&
    lastAlertAt !== null &&
    state.now - lastAlertAt <= lengthOf('listen-after-alert', state.settings.timers),
  'coast-acknowledged': (_, { acknowledgedBy }) => isCoastIdentity(acknowledgedBy),
  damaged: (_, { verdict }, cause) => (cause.verdict ?? verdict) === 'doubtful',
  'from-coast': (_, { call }, cause) => isCoastIdentity((cause.call ?? call).from),
  'is-coast': ({ state }) => state.settings.equipment === 'coast',
  'known-alert': isKnownAlert,
  'states-another-nature': (_, { call }, cause) =>
    cause.verdict !== 'doubtful' && cause.call !== undefined && natureOf(cause.call) !== natureOf(call),
  'may-acknowledge': ({ state }, dialogue) => dscPermission(state, dialogue).allowed,
  'may-send': ({ state }, dialogue) => objectionToAcknowledging(state, dialogue) === null,
} satisfies Guards<'heard-distress'>;

const actions = {
  advise: (turn, dialogue) =>
    emit(turn, dialogue, { kind: 'advise', advice: adviceFor(turn.state, dialogue) }),
  alarm: (turn, dialogue) => sound(turn, dialogue, 'distress'),
  'ask-to-acknowledge': ask,
  'compose-acknowledgement': (turn, dialogue) => {
    dialogue.answer = acknowledgementOf(dialogue, turn.state.settings.mmsi);
  },
  'keep-acknowledgement': (_, dialogue, { call }) => {
    const by = (call ?? dialogue.call).from;
    if (!isCoastIdentity(dialogue.acknowledgedBy)) dialogue.acknowledgedBy = by;
  },
  'keep-call': (_, dialogue, { call, verdict = 'clean' }) => {
    if (call === undefined || (verdict === 'doubtful' && dialogue.verdict !== 'doubtful')) return;
    // The answer to somebody's relay says less than the relay, and no words belong to it.
    if (call.kind === 'distress-relay-acknowledgement') return;
    dialogue.call = call;
    dialogue.verdict = verdict;
  },
  'log-assist': (turn, dialogue) => logDone(turn, dialogue, say('station-assisting', about(dialogue))),
  'log-nothing-more': (turn, dialogue) =>
    logDone(turn, dialogue, say('station-nothing-more', about(dialogue))),
  'log-closed': (turn, dialogue) => logDone(turn, dialogue, say('station-distress-closed', about(dialogue))),
  'log-sent': (turn, dialogue) => {
    endTransmission(turn, dialogue);
    if (dialogue.answer !== null) logSent(turn, dialogue, dialogue.answer);
  },
  'log-spoken': (turn, dialogue) =>
    logDone(turn, dialogue, say('station-acknowledged-by-voice', about(dialogue))),
  'log-stand-by': (turn, dialogue) => logDone(turn, dialogue, say('station-not-assisting', about(dialogue))),
  send: (turn, dialogue) => transmit(turn, dialogue, dialogue.answer),
  'show-acknowledged': (turn, dialogue, { call }) =>
    tell(
      turn,
      dialogue,
      'acknowledged',
      say('station-distress-acknowledged', { ...about(dialogue), by: senderOf(call ?? dialogue.call) }),
      call,
    ),
  'show-cancelled': (turn, dialogue) =>
    tell(turn, dialogue, 'distress-cancelled', say('station-distress-cancelled', about(dialogue))),
  'show-damaged': (turn, dialogue, { call }) =>
    tell(
      turn,
      dialogue,
      'damaged-call',
      say('station-received-damaged', { call: briefly(call ?? dialogue.call) }),
      call,
    ),
  'show-failure': (turn, dialogue) =>
    reportFailure(turn, dialogue, say('station-acknowledgement-not-sent', {})),
  'show-heard': (turn, dialogue, { call }) =>
    show(
      turn,
      dialogue,
      'distress-heard',
      say('station-received', { call: briefly(call ?? dialogue.call) }),
      call,
    ),
  'show-repeated': (turn, dialogue, { call }) =>
    show(
      turn,
      dialogue,
      'distress-repeated',
      say('station-received-again', { call: briefly(call ?? dialogue.call) }),
      call,
    ),
  'show-traffic': (turn, dialogue) =>
    tell(turn, dialogue, 'distress-traffic', say('station-distress-traffic', about(dialogue))),
  'speak-received': (turn, dialogue) => speak(turn, dialogue, dialogue.call, WATCH_CHANNEL),
  'stop-sending': stopTransmission,
  'tune-16': (turn, dialogue, { call = dialogue.call, verdict = dialogue.verdict }) =>
    tuneToWatch(turn, dialogue, mayFollowAlone(turn.state, { call, verdict })),
} satisfies Actions<'heard-distress'>;

type Row = Transition<'heard-distress', keyof typeof guards, keyof typeof actions>;

/** Received with errors: nothing in it is certain. */
const damaged: Omit<Row, 'on'> = { when: 'damaged', do: ['show-damaged'], clause: 'errorCheck' };

/** A good reception after a damaged one, or after a cancellation, starts the flow. */
const heardWell: Row = {
  on: 'alert',
  to: 'listening',
  do: ['alarm', 'keep-call', 'show-heard', 'tune-16', 'advise'],
  clause: 'heardAlert',
};

const cancelled: Row = {
  on: 'cancellation',
  to: 'cancelled',
  do: ['keep-call', 'show-cancelled'],
  clause: 'falseAlert',
};

const traffic: Row = {
  on: 'traffic',
  to: 'coast-answered',
  do: ['show-traffic', 'advise'],
  clause: 'heardAlert',
};

/**
 * A coast station that relays has the distress in hand, and asks ships for help: as good as its acknowledgement.
 * Japan, Operation Regulations Art. 81-5(4); 47 CFR 80.1121(e).
 */
const relayedByCoast: Row = {
  on: 'relay',
  when: 'from-coast',
  to: 'coast-answered',
  do: ['alarm', 'keep-call', 'show-heard', 'tune-16', 'advise'],
  clause: 'coastRelay',
};

const answered: Row = {
  on: 'acknowledgement',
  do: ['keep-call', 'keep-acknowledgement', 'show-acknowledged', 'advise'],
  clause: 'acknowledgement',
};

const coastAnswered: Row = { ...answered, to: 'coast-answered' };

/** What more is heard about a vessel whose distress is in hand; `stays` where a coast station changes nothing more. */
const heardInHand = (stays: boolean): readonly Row[] => [
  {
    on: 'alert',
    when: 'states-another-nature',
    do: ['alarm', 'keep-call', 'show-heard', 'advise'],
    clause: 'alarms',
  },
  { on: 'alert', do: ['keep-call', 'show-repeated'], clause: 'heardAlert' },
  { on: 'relay', ...damaged },
  ...(stays ? [] : [relayedByCoast]),
  { on: 'relay', do: ['keep-call', 'show-repeated'], clause: 'relay' },
  { on: 'acknowledgement', ...damaged },
  { ...(stays ? answered : coastAnswered), when: 'from-coast' },
  {
    on: 'acknowledgement',
    do: ['keep-call', 'keep-acknowledgement', 'show-acknowledged'],
    clause: 'acknowledgement',
  },
  { on: 'cancellation', ...damaged },
  cancelled,
  { on: 'spoken', do: ['log-spoken'], clause: 'log' },
  { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'heardAlert' },
];

/** Without a decision the distress stays before the person for two days. */
const forgotten: Row = { on: 'distress-memory over', to: 'ended', do: ['log-closed'], clause: 'procedures' };

/** What the master can decide as long as no decision was made. */
const decided: readonly Row[] = [
  { on: 'assist', to: 'assisting', do: ['log-assist', 'speak-received', 'advise'], clause: 'heardAlert' },
  {
    on: 'acknowledge',
    when: 'may-acknowledge',
    to: 'acknowledge-asked',
    do: ['ask-to-acknowledge'],
    clause: 'acknowledgement',
  },
];

/** Calls that come in while an acknowledgement is under way are kept, and change nothing else. */
const heardMeanwhile = (...relayed: readonly Row[]): readonly Row[] => [
  { on: 'alert', do: ['keep-call', 'show-repeated'], clause: 'heardAlert' },
  { on: 'relay', ...damaged },
  ...relayed,
  { on: 'relay', do: ['keep-call', 'show-repeated'], clause: 'relay' },
  { on: 'acknowledgement', ...damaged },
  { on: 'cancellation', ...damaged },
];

/** The flow of MSC.1/Circ.1657. */
const transitions: TransitionTable<'heard-distress', keyof typeof guards, keyof typeof actions> = {
  new: [
    { on: 'alert', when: 'damaged', to: 'shown', do: ['alarm', 'show-damaged'], clause: 'errorCheck' },
    { on: 'alert', when: 'known-alert', to: 'listening', do: ['show-repeated', 'advise'], clause: 'alarms' },
    { on: 'alert', to: 'listening', do: ['alarm', 'show-heard', 'tune-16', 'advise'], clause: 'heardAlert' },
    { on: 'relay', when: 'damaged', to: 'shown', do: ['alarm', 'show-damaged'], clause: 'errorCheck' },
    { ...relayedByCoast, do: ['alarm', 'show-heard', 'tune-16', 'advise'] },
    { on: 'relay', when: 'known-alert', to: 'listening', do: ['show-repeated', 'advise'], clause: 'alarms' },
    { on: 'relay', to: 'listening', do: ['alarm', 'show-heard', 'tune-16', 'advise'], clause: 'heardAlert' },
    {
      on: 'acknowledgement',
      when: 'damaged',
      to: 'shown',
      do: ['alarm', 'show-damaged'],
      clause: 'errorCheck',
    },
    {
      on: 'acknowledgement',
      when: 'from-coast',
      to: 'coast-answered',
      do: ['alarm', 'keep-acknowledgement', 'show-acknowledged', 'tune-16', 'advise'],
      clause: 'heardAlert',
    },
    {
      on: 'acknowledgement',
      to: 'listening',
      do: ['alarm', 'keep-acknowledgement', 'show-acknowledged', 'tune-16', 'advise'],
      clause: 'heardAlert',
    },
    { on: 'cancellation', when: 'damaged', to: 'shown', do: ['show-damaged'], clause: 'errorCheck' },
    { on: 'cancellation', to: 'cancelled', do: ['show-cancelled'], clause: 'falseAlert' },
  ],
  shown: [
    { on: 'alert', ...damaged },
    heardWell,
    { on: 'relay', ...damaged },
    relayedByCoast,
    {
      on: 'relay',
      to: 'listening',
      do: ['alarm', 'keep-call', 'show-heard', 'tune-16', 'advise'],
      clause: 'heardAlert',
    },
    { on: 'acknowledgement', ...damaged },
    {
      on: 'acknowledgement',
      when: 'from-coast',
      to: 'coast-answered',
      do: ['keep-call', 'keep-acknowledgement', 'show-acknowledged', 'tune-16', 'advise'],
      clause: 'heardAlert',
    },
    {
      on: 'acknowledgement',
      to: 'listening',
      do: ['keep-call', 'keep-acknowledgement', 'show-acknowledged', 'tune-16', 'advise'],
      clause: 'heardAlert',
    },
    { on: 'cancellation', ...damaged },
    cancelled,
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'listen-after-alert over', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  ],
  cancelled: [
    { on: 'cancellation', do: ['keep-call'], clause: 'falseAlert' },
    { on: 'alert', ...damaged },
    heardWell,
    { on: 'dismiss', to: 'ended', do: ['log-closed'], clause: 'procedures' },
    { on: 'inactivity over', to: 'ended', do: ['log-closed'], clause: 'procedures' },
  ],
  listening: [
    ...heardInHand(false),
    ...decided,
    traffic,
    {
      on: 'listen-after-alert over',
      when: 'coast-acknowledged',
      to: 'coast-answered',
      do: ['advise'],
      clause: 'heardAlert',
    },
    { on: 'listen-after-alert over', to: 'undecided', do: ['advise'], clause: 'heardAlert' },
  ],
  undecided: [
    ...heardInHand(false),
    forgotten,
    ...decided,
    traffic,
    {
      on: 'no-traffic',
      when: 'alert-still-repeated',
      to: 'inform-coast',
      do: ['advise'],
      clause: 'heardAlert',
    },
    { on: 'no-traffic', to: 'ended', do: ['log-nothing-more'], clause: 'heardAlert' },
  ],
  'coast-answered': [
    ...heardInHand(true),
    forgotten,
    ...decided,
    { on: 'stand-by', to: 'ended', do: ['log-stand-by'], clause: 'heardAlert' },
  ],
  'inform-coast': [
    ...heardInHand(false),
    forgotten,
    ...decided,
    traffic,
    { on: 'stand-by', to: 'ended', do: ['log-stand-by'], clause: 'heardAlert' },
  ],
  assisting: [...heardInHand(true), forgotten],
  'acknowledge-asked': [
    ...heardMeanwhile(relayedByCoast),
    {
      on: 'confirm',
      when: 'may-send',
      to: 'acknowledge-waiting',
      do: ['compose-acknowledgement'],
      clause: 'acknowledgement',
    },
    { on: 'decline', to: 'undecided', do: ['advise'], clause: 'acknowledgement' },
    coastAnswered,
    cancelled,
    { on: 'inactivity over', to: 'undecided', do: ['advise'], clause: 'procedures' },
  ],
  'acknowledge-waiting': [
    ...heardMeanwhile(relayedByCoast),
    { on: 'channel free', to: 'acknowledge-sending', do: ['send'], clause: 'acknowledgement' },
    coastAnswered,
    cancelled,
    { on: 'dismiss', to: 'undecided', do: ['advise'], clause: 'procedures' },
    { on: 'channel-wait over', to: 'undecided', do: ['advise'], clause: 'acknowledgement' },
  ],
  'acknowledge-sending': [
    // What is on the air already is not broken off for a relay.
    ...heardMeanwhile(),
    {
      on: 'sent',
      when: 'is-coast',
      to: 'coast-answered',
      do: ['log-sent', 'speak-received', 'advise'],
      clause: 'acknowledgement',
    },
    { on: 'sent', to: 'assisting', do: ['log-sent', 'speak-received', 'advise'], clause: 'acknowledgement' },
    { on: 'send-failed', to: 'undecided', do: ['show-failure', 'advise'], clause: 'acknowledgement' },
    {
      on: 'transmission-limit over',
      to: 'undecided',
      do: ['stop-sending', 'show-failure', 'advise'],
      clause: 'acknowledgement',
    },
  ],
};

/** Another vessel's distress. */
export const heardDistress: Procedure<'heard-distress'> = {
  phases,
  transitions,
  guards,
  actions,
  timerOf: (wait) => wait,
};

function about({ distressed }: Dialogue<'heard-distress'>): { readonly vessel: string | CodedText } {
  return { vessel: vesselIn(distressed) };
}

/** Whether this is a repeat of an alert that has sounded already. */
function isKnownAlert({ state }: Turn, dialogue: Dialogue<'heard-distress'>, cause: Cause): boolean {
  const call = cause.call ?? dialogue.call;
  const nature = natureOf(call);
  const limit = lengthOf('alert-memory', state.settings.timers);
  return state.heardAlerts.some(
    (known) =>
      known.distressed !== null &&
      known.distressed === dialogue.distressed &&
      known.nature === nature &&
      state.now - known.lastAt <= limit,
  );
}

function natureOf(call: Call): string | null {
  return 'nature' in call ? call.nature : null;
}

/** What keeps the acknowledgement of a distress off the air, `null` when nothing does. */
export function objectionToAcknowledging(
  state: Pick<StationState, 'settings'>,
  dialogue: Dialogue<'heard-distress'>,
): Issue | null {
  return objectionTo(state, dialogue, acknowledgementOf(dialogue, state.settings.mmsi));
}

/** Put together from what was received, which no composer has to accept. */
function acknowledgementOf(dialogue: Dialogue<'heard-distress'>, own: string | null): Call {
  const { call, distressed } = dialogue;
  const details = 'nature' in call ? call : null;
  const about = {
    from: own,
    distressed,
    nature: details?.nature ?? null,
    position: details?.position ?? null,
    time: details?.time ?? null,
  };
  if (!isAboutRelay(dialogue)) {
    const to = { kind: 'all-ships' } as const;
    return { kind: 'distress-acknowledgement', to, ...about, subsequent: 'telephony-simplex' };
  }
  // To the station that sent the relay, or to all ships when the relay was for many: M.493 table 4.4.
  const { from, to, subsequent } = dialogue.call;
  return {
    kind: 'distress-relay-acknowledgement',
    to: to.kind === 'station' ? { kind: 'station', mmsi: from } : { kind: 'all-ships' },
    ...about,
    nature: details?.nature ?? 'undesignated',
    subsequent,
  };
}
