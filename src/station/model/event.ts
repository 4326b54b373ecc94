import type { Verdict } from '../../burst/index.ts';
import type { Call, NatureOfDistress, Reason } from '../../call/index.ts';
import type { Coordinates } from '../../position/index.ts';
import type { SettingsChange } from './settings.ts';

/** Kinds of event by which a person answers a question; `'refuse'` needs a reason as well. */
export type AnswerKind = (ActEvent | AnswerEvent | RefuseEvent | AlertActEvent)['kind'];

interface At {
  /** When, epoch milliseconds by the station's own clock. */
  readonly at: number;
}

interface OnDialogue extends At {
  /** Number of the dialogue that is meant. */
  readonly dialogue: number;
}

/** Time goes by. Give one when the last `wake` effect asked for it; early or late ones do no harm. */
export interface ClockEvent extends At {
  readonly kind: 'clock';
}

/** A call was received. */
export interface HeardEvent extends At {
  readonly kind: 'heard';
  readonly call: Call;
  readonly verdict: Verdict;
  /** Which call of its source it is, when the source counts them: `event` of a reading of `seahail/sentence`. */
  readonly event?: number | string;
  /**
   * `'provisional'` when another reading of the same `event` follows, with what its expansion adds. It is acted on at
   * once, and the final one completes it: it is neither a second call nor a second answer. `'final'` when absent.
   */
  readonly stage?: 'provisional' | 'final';
}

/** Channel 70 became busy or free. The own transmission does not count. */
export interface ChannelEvent extends At {
  readonly kind: 'channel';
  readonly busy: boolean;
}

/** The voice channel was changed, by the person or in following a `tune` effect. */
export interface TunedEvent extends At {
  readonly kind: 'tuned';
  /** ITU-R M.1084 digits. */
  readonly channel: string;
}

/** The transmission that a `send` effect asked for is over. */
export interface SentEvent extends OnDialogue {
  readonly kind: 'sent';
}

/** The transmission that a `send` effect asked for did not happen. */
export interface SendFailedEvent extends OnDialogue {
  readonly kind: 'send-failed';
}

/** The own position, from an instrument or typed in. */
export interface FixEvent extends At {
  readonly kind: 'fix';
  readonly position: Coordinates;
  readonly source: 'instrument' | 'person';
  /** When the station was there, epoch milliseconds; `at` when absent. */
  readonly fixedAt?: number;
}

/** The owner changed the settings; what is left out stays. An identity that is stored once stays too. */
export interface SettingsEvent extends At {
  readonly kind: 'settings';
  readonly settings: SettingsChange;
}

/**
 * Why a ship relays a distress by DSC.
 *
 * - Both of the first form allow a relay to anybody (MSC.1/Circ.1657, 47 CFR 80.1121(b)).
 * - The second form allows a relay to one coast station (RR 2024 Nos. 32.16, 32.19B), where national rules allow it; in
 *   United States waters use voice or any other means instead.
 */
export type RelayGrounds =
  | {
      /** The vessel in distress is not able to send the alert. */
      readonly cannotAlertHerself: true;
      /** The master of this ship judges that more help is needed. */
      readonly moreHelpNeeded: true;
    }
  | {
      /** Nobody acknowledged the alert or MAYDAY call within five minutes, and no distress traffic is heard. */
      readonly unanswered: true;
    };

/** A person starts a call. `from` is filled in by the station. */
export interface CallEvent extends At {
  readonly kind: 'call';
  readonly call: Call;
  /** How often to try, the first time counted, 1 to 3. Usual: 3 to a coast station, 2 to a ship, 1 for tests and polling; always 1 for a relay. */
  readonly attempts?: number;
  /** What the master of a ship confirms before a distress relay. */
  readonly because?: RelayGrounds;
}

/** A person answers a call: able to comply, on the channel proposed or another; or grants a position. */
export interface AnswerEvent extends OnDialogue {
  readonly kind: 'answer';
  /** Working channel in ITU-R M.1084 digits, to offer another than the one proposed. */
  readonly channel?: string;
}

/** A person refuses a call. */
export interface RefuseEvent extends OnDialogue {
  readonly kind: 'refuse';
  readonly reason: Reason;
}

/** A person calls again, proposing another channel. */
export interface OfferEvent extends OnDialogue {
  readonly kind: 'offer';
  /** Working channel in ITU-R M.1084 digits. */
  readonly channel: string;
}

/** A person's act on one dialogue that needs no more than itself. */
export interface ActEvent extends OnDialogue {
  readonly kind: PlainAct;
}

/**
 * - `'confirm'`, `'decline'`: answer to an `ask` effect.
 * - `'retry'`: try again now.
 * - `'close'`: put the dialogue away.
 * - `'select'`: make the dialogue the active one.
 * - `'spoken'`: the words that a `speak` effect asked for were spoken.
 * - `'assist'`, `'stand-by'`: the master decided that this vessel can help, or cannot.
 * - `'traffic'`, `'no-traffic'`: distress traffic, or an acknowledgement by voice, is heard on channel 16; or none is.
 * - `'acknowledge'`: acknowledge an alert by DSC; for coast stations, and under conditions for class A.
 */
export type PlainAct =
  | 'confirm'
  | 'decline'
  | 'retry'
  | 'close'
  | 'select'
  | 'spoken'
  | 'assist'
  | 'stand-by'
  | 'traffic'
  | 'no-traffic'
  | 'acknowledge';

/** A person silences every alarm. */
export interface SilenceEvent extends At {
  readonly kind: 'silence';
}

/** First deliberate act of a distress alert: the cover lifted, the nature chosen or left out. */
export interface PrepareAlertEvent extends At {
  readonly kind: 'prepare-alert';
  /** `'undesignated'` when absent. */
  readonly nature?: NatureOfDistress;
}

/**
 * A person's act on the own alert.
 *
 * - `'press-alert'`, `'release-alert'`: second deliberate act, the key held until the alert goes out.
 * - `'stop-alert'`: no more repeats, though nobody acknowledged.
 * - `'cancel-alert'`: the alert was false and is to be taken back.
 */
export interface AlertActEvent extends At {
  readonly kind: 'press-alert' | 'release-alert' | 'stop-alert' | 'cancel-alert';
}

/** The nature of the own distress changed; the next attempt carries it. */
export interface DescribeAlertEvent extends At {
  readonly kind: 'describe-alert';
  readonly nature: NatureOfDistress;
}

/** A person adds to the log. */
export interface NoteEvent extends At {
  readonly kind: 'note';
  readonly text: string;
  /** Number of the earlier entry that this one corrects. */
  readonly corrects?: number;
}

/** Everything that can happen to a station. */
export type StationEvent =
  | ClockEvent
  | HeardEvent
  | ChannelEvent
  | TunedEvent
  | SentEvent
  | SendFailedEvent
  | FixEvent
  | SettingsEvent
  | CallEvent
  | AnswerEvent
  | RefuseEvent
  | OfferEvent
  | ActEvent
  | SilenceEvent
  | PrepareAlertEvent
  | AlertActEvent
  | DescribeAlertEvent
  | NoteEvent;

/** Each event of a station without its instant, so that the union stays a union. */
export type WithoutAt<T> = T extends StationEvent ? Omit<T, 'at'> : never;

/** An event without its instant, which the player adds. */
export type EventWithoutTime = WithoutAt<StationEvent>;
