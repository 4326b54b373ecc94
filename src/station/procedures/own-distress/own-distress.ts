import type { Call, NatureOfDistress } from '../../../call/index.ts';
import {
  endTransmission,
  logSent,
  reportFailure,
  sound,
  speak,
  stopTransmission,
  tell,
  transmit,
  tune,
} from '../../engine/action.ts';
import { briefly, senderOf } from '../../engine/brief.ts';
import { sendablePosition, timeOfDay } from '../../engine/clock.ts';
import { mayRepeatAlone } from '../../engine/on-air.ts';
import type { Procedure } from '../../engine/procedure.ts';
import { ask } from '../../engine/questions.ts';
import { emit, log } from '../../engine/turn.ts';
import { WATCH_CHANNEL } from '../../model/channel.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import type { StationState } from '../../model/state.ts';
import { lengthOf } from '../../model/timer.ts';
import type { OwnDistressTrigger, OwnDistressWait } from '../../model/trigger.ts';
import { say } from '../../texts.ts';
import {
  type OwnDistressAction,
  type OwnDistressGuard,
  ownDistressPhases,
  ownDistressTransitions,
} from './rows.ts';

/** The own distress alert. */
export const ownDistress: Procedure<
  Dialogue<'own-distress'>,
  OwnDistressWait,
  OwnDistressTrigger,
  OwnDistressGuard,
  OwnDistressAction
> = {
  name: 'own-distress',
  phases: ownDistressPhases,
  transitions: ownDistressTransitions,
  timerOf: (wait) => wait,
  guards: {
    'cancel-requested': (_, { cancelWanted }) => cancelWanted,
    'nothing-sent': (_, { attempts }) => attempts === 0,
    'was-acknowledged': (_, { acknowledgement }) => acknowledgement !== null,
    'was-away': ({ state }, _, { late = 0 }) =>
      !mayRepeatAlone(late, lengthOf('alert-repeat', state.settings.timers)),
    'was-stopped': (_, { stopped }) => stopped,
  },
  actions: {
    alarm: (turn, dialogue) => sound(turn, dialogue, 'distress'),
    'ask-to-cancel': ask,
    'ask-to-repeat': ask,
    'ask-to-stop': (turn, dialogue, { call }) => {
      const text = say(
        'station-alert-acknowledged-damaged',
        call === undefined ? {} : { call: briefly(call) },
      );
      emit(turn, dialogue, { kind: 'show', topic: 'acknowledgement-doubtful', ...text, call });
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
    'log-cancelled': (turn, dialogue) =>
      log(turn, dialogue, { what: 'done', ...say('station-cancelled', {}) }),
    'log-cancelled-by-voice': (turn, dialogue) =>
      log(turn, dialogue, { what: 'done', ...say('station-cancelled-by-voice', {}) }),
    'log-not-cancelled': (turn, dialogue) =>
      tell(turn, dialogue, 'alert-not-cancelled', say('station-not-cancelled', {})),
    'log-not-cancelled-by-voice': (turn, dialogue) =>
      tell(turn, dialogue, 'distress-cancelled', say('station-cancelled-by-dsc', {})),
    'log-not-sent': (turn, dialogue) =>
      log(turn, dialogue, { what: 'done', ...say('station-alert-not-sent', {}) }),
    'log-closed': (turn, dialogue) =>
      log(turn, dialogue, { what: 'done', ...say('station-alert-closed', {}) }),
    'log-sent': (turn, dialogue) => {
      const { call } = dialogue;
      if (call !== null) logSent(turn, dialogue, call, timesOf(call));
    },
    'log-spoken': (turn, dialogue) => {
      dialogue.spoken = true;
      log(turn, dialogue, { what: 'done', ...say('station-alert-spoken', {}) });
    },
    'mark-stopped': (_, dialogue) => {
      dialogue.stopped = true;
    },
    'remind-to-speak': (turn, dialogue) => {
      if (dialogue.spoken) return;
      emit(turn, dialogue, {
        kind: 'show',
        topic: 'waiting-for-acknowledgement',
        ...say('station-alert-speak', {}),
      });
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
    'show-cancel-failure': (turn, dialogue) =>
      reportFailure(turn, dialogue, say('station-cancel-failed', {})),
    'show-countdown': (turn, dialogue) =>
      emit(turn, dialogue, {
        kind: 'show',
        topic: 'alert-countdown',
        ...say('station-alert-countdown', { nature: dialogue.nature }),
      }),
    'show-failure': (turn, dialogue) => reportFailure(turn, dialogue, say('station-alert-failed', {})),
    'show-prepared': (turn, dialogue) =>
      emit(turn, dialogue, {
        kind: 'show',
        topic: 'alert-prepared',
        ...say('station-alert-prepared', {}),
      }),
    'show-relayed': (turn, dialogue, { call }) =>
      tell(
        turn,
        dialogue,
        'distress-traffic',
        say('station-alert-relayed', call === undefined ? {} : { call: briefly(call) }),
        call,
      ),
    'show-stopped': (turn, dialogue) =>
      tell(turn, dialogue, 'alert-stopped', say('station-alert-stopped', {})),
    'show-waiting': (turn, dialogue) =>
      emit(turn, dialogue, {
        kind: 'show',
        topic: 'waiting-for-acknowledgement',
        ...say('station-alert-waiting', { attempts: dialogue.attempts }),
      }),
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
  },
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
