import type { Verdict } from '../../burst/index.ts';
import type { Call, NatureOfDistress, Reason } from '../../call/index.ts';
import type { Coordinates } from '../../position/index.ts';
import type { SettingsChange } from './settings.ts';

/** Events by kind, with their fields. */
export interface StationEvents {
  /** The clock advances. Give one when the last `wake` effect asked for it; early or late ones do no harm. */
  readonly clock: object;
  /** A call was received. */
  readonly received: {
    readonly call: Call;
    readonly verdict: Verdict;
    /** Which call of its source it is, when the source counts them: `event` of a reading of `seahail/sentence`. */
    readonly event?: number | string;
    /**
     * `'provisional'` when another reading of the same `event` follows, with what its expansion adds. It is acted on at
     * once, and the final one completes it: it is neither a second call nor a second answer. `'final'` when absent.
     */
    readonly stage?: 'provisional' | 'final';
  };
  /** Channel 70 became busy or free. The own transmission does not count. */
  readonly channel: {
    readonly busy: boolean;
  };
  /** The voice channel was changed, by the person or in following a `tune` effect. */
  readonly tuned: {
    /** ITU-R M.1084 digits. */
    readonly channel: string;
  };
  /** The transmission that a `send` effect asked for is over. */
  readonly sent: {
    /** Number of the dialogue that is meant. */
    readonly dialogue: number;
  };
  /** The transmission that a `send` effect asked for did not happen. */
  readonly 'send-failed': {
    /** Number of the dialogue that is meant. */
    readonly dialogue: number;
  };
  /** The own position, from an instrument or typed in. */
  readonly fix: {
    readonly position: Coordinates;
    readonly source: 'instrument' | 'person';
    /** When the station was there, epoch milliseconds; `at` when absent. */
    readonly fixedAt?: number;
  };
  /** The owner changed the settings; what is left out stays. An identity that is stored once stays too. */
  readonly settings: {
    readonly settings: SettingsChange;
  };
  /** A person starts a call. `from` is filled in by the station. */
  readonly call: {
    readonly call: Call;
    /** How often to try, the first time counted, 1 to 3. Usual: 3 to a coast station, 2 to a ship, 1 for tests and polling; always 1 for a relay. */
    readonly attempts?: number;
    /**
     * What the master of a ship confirms before a distress relay by DSC.
     *
     * - Both of the first form allow a relay to anybody (MSC.1/Circ.1657, 47 CFR 80.1121(b)).
     * - The second form allows a relay to one coast station (RR 2024 Nos. 32.16, 32.19B), where national rules allow it;
     *   in United States waters use voice or any other means instead.
     */
    readonly because?:
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
  };
  /** A person answers a call: able to comply, on the channel proposed or another; or grants a position. */
  readonly answer: {
    /** Number of the dialogue that is meant. */
    readonly dialogue: number;
    /** Working channel in ITU-R M.1084 digits, to offer another than the one proposed. */
    readonly channel?: string;
  };
  /** A person rejects a call: unable to comply, with the reason. */
  readonly reject: {
    /** Number of the dialogue that is meant. */
    readonly dialogue: number;
    readonly reason: Reason;
  };
  /** A person calls again, proposing another channel. */
  readonly 'counter-propose': {
    /** Number of the dialogue that is meant. */
    readonly dialogue: number;
    /** Working channel in ITU-R M.1084 digits. */
    readonly channel: string;
  };
  /** Yes to an `ask` effect. */
  readonly confirm: { readonly dialogue: number };
  /** No to an `ask` effect. */
  readonly decline: { readonly dialogue: number };
  /** Try again now. */
  readonly retry: { readonly dialogue: number };
  /** Dismiss the dialogue: it leaves the display. */
  readonly dismiss: { readonly dialogue: number };
  /** Make the dialogue the active one. */
  readonly select: { readonly dialogue: number };
  /** The words that a `speak` effect asked for were spoken. */
  readonly spoken: { readonly dialogue: number };
  /** The master decided that this vessel can help. */
  readonly assist: { readonly dialogue: number };
  /** The master decided that this vessel cannot help. */
  readonly 'stand-by': { readonly dialogue: number };
  /** Distress traffic, or an acknowledgement by voice, is heard on channel 16. */
  readonly traffic: { readonly dialogue: number };
  /** Neither is heard on channel 16. */
  readonly 'no-traffic': { readonly dialogue: number };
  /** Acknowledge an alert by DSC; for coast stations, and under conditions for class A. */
  readonly acknowledge: { readonly dialogue: number };
  /** A person silences every alarm. */
  readonly silence: object;
  /** First deliberate act of a distress alert: the cover lifted, the nature chosen or left out. */
  readonly 'prepare-alert': {
    /** `'undesignated'` when absent. */
    readonly nature?: NatureOfDistress;
  };
  /** Second deliberate act of a distress alert: the key is pressed, and held until the alert goes out. */
  readonly 'press-alert': object;
  /** The key is released. */
  readonly 'release-alert': object;
  /** No more repeats of the own alert, though nobody acknowledged. */
  readonly 'stop-alert': object;
  /** The own alert was false and is to be cancelled. */
  readonly 'cancel-alert': object;
  /** The nature of the own distress changed; the next attempt carries it. */
  readonly 'describe-alert': {
    readonly nature: NatureOfDistress;
  };
  /** A person adds to the log. */
  readonly note: {
    readonly text: string;
    /** Number of the earlier entry that this one corrects. */
    readonly corrects?: number;
  };
}

/** An event without its instant, as a script or a player of one holds it. */
export type EventWithoutTime<Kind extends keyof StationEvents = keyof StationEvents> = {
  [K in Kind]: { readonly kind: K } & StationEvents[K];
}[Kind];

/** Everything that can happen to a station: `StationEvent<'clock'>` is one kind, `StationEvent` any. */
export type StationEvent<Kind extends keyof StationEvents = keyof StationEvents> = {
  [K in Kind]: {
    readonly kind: K;
    /** When, epoch milliseconds by the station's own clock. */
    readonly at: number;
  } & StationEvents[K];
}[Kind];

/** Kinds of event by which a person answers a question; `'reject'` needs a reason as well. */
export type AnswerKind =
  | 'confirm'
  | 'decline'
  | 'retry'
  | 'dismiss'
  | 'select'
  | 'spoken'
  | 'assist'
  | 'stand-by'
  | 'traffic'
  | 'no-traffic'
  | 'acknowledge'
  | 'answer'
  | 'reject'
  | 'press-alert'
  | 'release-alert'
  | 'stop-alert'
  | 'cancel-alert';

/** A person's act on the own alert. */
export type AlertAct = 'press-alert' | 'release-alert' | 'stop-alert' | 'cancel-alert';

/** A person's act on one dialogue that needs no more than itself. */
export type PlainAct = Exclude<AnswerKind, 'answer' | 'reject' | AlertAct>;
