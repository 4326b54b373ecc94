// Every name a table may use: a wrong one does not compile (tests/station/names.test-d.ts).

/** What a dialogue of each procedure waits for. Those of a distress are named after their timers. */
export interface Waits {
  readonly outgoing: 'answer' | 'retry' | 'channel-wait' | 'transmission-limit' | 'inactivity';
  readonly incoming: 'decision' | 'automatic-answer' | 'channel-wait' | 'transmission-limit' | 'inactivity';
  readonly 'own-distress':
    | 'alert-hold'
    | 'alert-busy-limit'
    | 'voice-after-alert'
    | 'alert-repeat'
    | 'cancel-question'
    | 'distress-memory'
    | 'transmission-limit'
    | 'inactivity';
  readonly 'heard-distress':
    | 'listen-after-alert'
    | 'distress-memory'
    | 'channel-wait'
    | 'transmission-limit'
    | 'inactivity';
}

type OfAll = 'confirm' | 'decline' | 'dismiss' | 'channel free' | 'sent' | 'send-failed';

/** What moves a dialogue of each procedure: an act, something received, the end of a wait. */
export interface Triggers {
  readonly outgoing:
    | `${Waits['outgoing']} over`
    | OfAll
    | 'able'
    | 'unable'
    | 'answered'
    | 'answered-damaged'
    | 'call'
    | 'retry'
    | 'counter-propose';
  readonly incoming: `${Waits['incoming']} over` | OfAll | 'repeated' | 'call' | 'answer' | 'reject';
  readonly 'own-distress':
    | `${Waits['own-distress']} over`
    | OfAll
    | 'spoken'
    | 'press'
    | 'describe'
    | 'acknowledged'
    | 'cancel'
    | 'prepare'
    | 'release'
    | 'retry'
    | 'acknowledged-damaged'
    | 'relayed'
    | 'stop';
  readonly 'heard-distress':
    | `${Waits['heard-distress']} over`
    | OfAll
    | 'alert'
    | 'relay'
    | 'acknowledgement'
    | 'cancellation'
    | 'spoken'
    | 'assist'
    | 'acknowledge'
    | 'traffic'
    | 'no-traffic'
    | 'stand-by';
}

/** What moves any dialogue. */
export type Trigger = Triggers[keyof Triggers];
