import type { Call } from '../../../call/index.ts';
import type { CodedText, Issue } from '../../../result/index.ts';
import {
  endTransmission,
  logSent,
  reportFailure,
  sound,
  speak,
  stopTransmission,
  tell,
  transmit,
  tuneToWatch,
} from '../../engine/action.ts';
import { briefly, senderOf, vesselIn } from '../../engine/brief.ts';
import { mayFollowAlone, objectionTo } from '../../engine/on-air.ts';
import type { Cause, Procedure } from '../../engine/procedure.ts';
import { ask } from '../../engine/questions.ts';
import { emit, log, type Turn } from '../../engine/turn.ts';
import { WATCH_CHANNEL } from '../../model/channel.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import { isCoastIdentity } from '../../model/own-identity.ts';
import type { StationState } from '../../model/state.ts';
import { lengthOf } from '../../model/timer.ts';
import type { HeardDistressTrigger, HeardDistressWait } from '../../model/trigger.ts';
import { say } from '../../texts.ts';
import { adviceFor } from './advise.ts';
import { dscPermission, isAboutRelay } from './permission.ts';
import { type HeardDistressAction, type HeardDistressGuard, heardDistressPhases } from './phases.ts';
import { heardDistressTransitions } from './rows.ts';

/** Another vessel's distress. */
export const heardDistress: Procedure<
  Dialogue<'heard-distress'>,
  HeardDistressWait,
  HeardDistressTrigger,
  HeardDistressGuard,
  HeardDistressAction
> = {
  name: 'heard-distress',
  phases: heardDistressPhases,
  transitions: heardDistressTransitions,
  timerOf: (wait) => wait,
  guards: {
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
  },
  actions: {
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
    'log-assist': (turn, dialogue) =>
      log(turn, dialogue, { what: 'done', ...say('station-assisting', about(dialogue)) }),
    'log-nothing-more': (turn, dialogue) =>
      log(turn, dialogue, { what: 'done', ...say('station-nothing-more', about(dialogue)) }),
    'log-closed': (turn, dialogue) =>
      log(turn, dialogue, { what: 'done', ...say('station-distress-closed', about(dialogue)) }),
    'log-sent': (turn, dialogue) => {
      endTransmission(turn, dialogue);
      if (dialogue.answer !== null) logSent(turn, dialogue, dialogue.answer);
    },
    'log-spoken': (turn, dialogue) =>
      log(turn, dialogue, { what: 'done', ...say('station-acknowledged-by-voice', about(dialogue)) }),
    'log-stand-by': (turn, dialogue) =>
      log(turn, dialogue, { what: 'done', ...say('station-not-assisting', about(dialogue)) }),
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
      emit(turn, dialogue, {
        kind: 'show',
        topic: 'distress-heard',
        ...say('station-received', { call: briefly(call ?? dialogue.call) }),
        call,
      }),
    'show-repeated': (turn, dialogue, { call }) =>
      emit(turn, dialogue, {
        kind: 'show',
        topic: 'distress-repeated',
        ...say('station-received-again', { call: briefly(call ?? dialogue.call) }),
        call,
      }),
    'show-traffic': (turn, dialogue) =>
      tell(turn, dialogue, 'distress-traffic', say('station-distress-traffic', about(dialogue))),
    'speak-received': (turn, dialogue) => speak(turn, dialogue, dialogue.call, WATCH_CHANNEL),
    'stop-sending': stopTransmission,
    'tune-16': (turn, dialogue, { call = dialogue.call, verdict = dialogue.verdict }) =>
      tuneToWatch(turn, dialogue, mayFollowAlone(turn.state, { call, verdict })),
  },
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
