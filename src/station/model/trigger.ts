// Every name a table may use: a wrong one does not compile (tests/station/names.test-d.ts).

/** Waits of a call that this station sends. */
export type OutgoingWait = 'answer' | 'retry' | 'channel-wait' | 'transmission-limit' | 'inactivity';

/** Waits of a call that this station received. */
export type IncomingWait =
  | 'decision'
  | 'automatic-answer'
  | 'channel-wait'
  | 'transmission-limit'
  | 'inactivity';

/** Waits of the own distress alert, each named after its timer. */
export type OwnDistressWait =
  | 'alert-hold'
  | 'alert-busy-limit'
  | 'voice-after-alert'
  | 'alert-repeat'
  | 'cancel-question'
  | 'distress-memory'
  | 'transmission-limit'
  | 'inactivity';

/** Waits of another vessel's distress, each named after its timer. */
export type HeardDistressWait =
  | 'listen-after-alert'
  | 'distress-memory'
  | 'channel-wait'
  | 'transmission-limit'
  | 'inactivity';

/** What moves a call that this station sends. */
export type OutgoingTrigger =
  | `${OutgoingWait} over`
  | 'able'
  | 'unable'
  | 'answered'
  | 'answered-damaged'
  | 'call'
  | 'confirm'
  | 'decline'
  | 'dismiss'
  | 'channel free'
  | 'sent'
  | 'send-failed'
  | 'retry'
  | 'counter-propose';

/** What moves a call that this station received. */
export type IncomingTrigger =
  | `${IncomingWait} over`
  | 'repeated'
  | 'call'
  | 'answer'
  | 'reject'
  | 'dismiss'
  | 'channel free'
  | 'sent'
  | 'send-failed'
  | 'confirm'
  | 'decline';

/** What moves the own distress alert. */
export type OwnDistressTrigger =
  | `${OwnDistressWait} over`
  | 'spoken'
  | 'press'
  | 'describe'
  | 'acknowledged'
  | 'cancel'
  | 'dismiss'
  | 'prepare'
  | 'release'
  | 'channel free'
  | 'sent'
  | 'send-failed'
  | 'retry'
  | 'acknowledged-damaged'
  | 'relayed'
  | 'stop'
  | 'confirm'
  | 'decline';

/** What moves another vessel's distress. */
export type HeardDistressTrigger =
  | `${HeardDistressWait} over`
  | 'alert'
  | 'relay'
  | 'acknowledgement'
  | 'cancellation'
  | 'dismiss'
  | 'spoken'
  | 'assist'
  | 'acknowledge'
  | 'traffic'
  | 'no-traffic'
  | 'stand-by'
  | 'confirm'
  | 'decline'
  | 'channel free'
  | 'sent'
  | 'send-failed';

/** What moves any dialogue: an act, something received, the end of a wait. */
export type Trigger = OutgoingTrigger | IncomingTrigger | OwnDistressTrigger | HeardDistressTrigger;
