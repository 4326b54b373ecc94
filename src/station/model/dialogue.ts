import type { Verdict } from '../../burst/index.ts';
import type { Call, NatureOfDistress } from '../../call/index.ts';
import type { StationEvents } from './event.ts';

/** Dialogues by procedure, with their fields. */
export interface Dialogues {
  /** A call that this station sends, and what becomes of it. */
  readonly outgoing: {
    readonly phase:
      | 'confirming'
      | 'waiting-channel'
      | 'sending'
      | 'waiting-answer'
      | 'retry-wait'
      | 'unanswered'
      | 'refused'
      | 'agreed'
      | 'on-channel';
    readonly call: Call;
    /** Times sent so far. */
    readonly attempts: number;
    /** Times it may be sent without a person asking again. */
    readonly allowed: number;
    readonly answer: Call | null;
    /** Working channel that was agreed or announced, ITU-R M.1084 digits. */
    readonly channel: string | null;
    /** What the master vouched for before a distress relay; `null` for every other call. Since version 3. */
    readonly because: NonNullable<StationEvents['call']['because']> | null;
  };
  /** A call that this station received, and what becomes of it. */
  readonly incoming: {
    readonly phase: 'deciding' | 'waiting-channel' | 'sending' | 'agreed' | 'on-channel' | 'shown';
    readonly call: Call;
    readonly verdict: Verdict;
    /** Times the same call was heard. */
    readonly times: number;
    /** The answer that waits or was sent. */
    readonly answer: Call | null;
    /** Whether a policy, not a person, chose the answer. */
    readonly automatic: boolean;
    readonly channel: string | null;
  };
  /** The own distress alert. There is never more than one. */
  readonly 'own-distress': {
    readonly phase:
      | 'prepared'
      | 'countdown'
      | 'waiting-channel'
      | 'sending'
      | 'waiting-acknowledgement'
      | 'acknowledged'
      | 'stopped'
      | 'interrupted'
      | 'cancel-asked'
      | 'cancel-waiting'
      | 'cancel-sending'
      | 'cancel-voice'
      | 'cancel-voice-only';
    readonly nature: NatureOfDistress;
    /** The alert or the cancellation that was sent last, or is about to be. */
    readonly call: Call | null;
    /** Distress attempts, of five calls each, begun so far. */
    readonly attempts: number;
    /** When the latest of them began, epoch milliseconds; `null` before the first. */
    readonly alertedAt: number | null;
    readonly acknowledgement: Call | null;
    /** Repeats were stopped by hand, or interrupted. */
    readonly stopped: boolean;
    /** A cancellation was asked for while the transmitter was on. */
    readonly cancelWanted: boolean;
    /** The distress call and message were spoken. */
    readonly spoken: boolean;
  };
  /** Another vessel's distress, as heard by DSC. */
  readonly 'heard-distress': {
    readonly phase:
      | 'shown'
      | 'listening'
      | 'undecided'
      | 'coast-answered'
      | 'inform-coast'
      | 'assisting'
      | 'acknowledge-asked'
      | 'acknowledge-waiting'
      | 'acknowledge-sending'
      | 'cancelled';
    /** Nine digits of the vessel in distress, `null` when unknown. */
    readonly distressed: string | null;
    /** The latest alert, relay, acknowledgement or cancellation about her. */
    readonly call: Call;
    /** The best of the verdicts. */
    readonly verdict: Verdict;
    /** Alerts heard from herself. */
    readonly alerts: number;
    /** When the last of them was heard, epoch milliseconds; `null` when none was. */
    readonly lastAlertAt: number | null;
    /** Who acknowledged by DSC, nine digits. */
    readonly acknowledgedBy: string | null;
    /** An acknowledgement of this station's own that waits or was sent. */
    readonly answer: Call | null;
  };
}

/**
 * One subject that the station is busy with, an automated procedure of M.493 with its own state:
 * `Dialogue<'outgoing'>` is of one procedure, `Dialogue` of any.
 */
export type Dialogue<Procedure extends keyof Dialogues = keyof Dialogues> = {
  [P in Procedure]: {
    readonly procedure: P;
    /** Counts up from 1 over the life of a station. */
    readonly id: number;
    /** Epoch milliseconds. */
    readonly openedAt: number;
    /** Last change of phase, epoch milliseconds. */
    readonly changedAt: number;
    /** What is waited for, and until when (epoch milliseconds). */
    readonly waits: {
      readonly [Wait in
        | 'answer'
        | 'retry'
        | 'decision'
        | 'automatic-answer'
        | 'channel-wait'
        | 'transmission-limit'
        | 'inactivity'
        | 'alert-hold'
        | 'alert-busy-limit'
        | 'voice-after-alert'
        | 'alert-repeat'
        | 'cancel-question'
        | 'distress-memory'
        | 'listen-after-alert']?: number;
    };
  } & Dialogues[P];
}[Procedure];

/** What a dialogue can wait for. */
export type WaitName = keyof Dialogue['waits'];

/** What a dialogue waits for, and until when. */
export function waitsOf({ waits }: Dialogue): readonly (readonly [wait: WaitName, until: number])[] {
  return Object.entries(waits) as [WaitName, number][];
}
