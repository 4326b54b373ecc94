import type { Call } from '../../call/index.ts';
import type { TimeOfDay } from '../../position/index.ts';
import type { Issue } from '../../result/index.ts';
import type { Situation } from '../../speech/index.ts';
import type { LogEntry } from '../log/watch-log.ts';
import type { StationText } from '../texts.ts';
import type { DistressAdvice } from './advice.ts';
import type { AnswerKind } from './event.ts';

/** Effects by kind, with their fields. */
export interface Effects {
  /** Transmit on channel 70. Answer with a `sent` or `send-failed` event. */
  readonly send: {
    readonly call: Call;
    /** How often in a row without a gap: five for a distress attempt, else one. */
    readonly times: 1 | 5;
  };
  /** Break off the running transmission: something more urgent waits. */
  readonly 'stop-sending': object;
  /** Change the voice channel. */
  readonly tune: {
    /** ITU-R M.1084 digits. */
    readonly channel: string;
  };
  /** Start an alarm. */
  readonly sound: {
    /** Each has a sound of its own. */
    readonly alarm: 'distress' | 'urgency' | 'safety' | 'routine' | 'position' | 'fault';
    readonly lasts: 'until-silenced' | 'short';
  };
  /** End an alarm. */
  readonly silence: {
    readonly alarm: Effects['sound']['alarm'];
  };
  /** Tell the person something. */
  readonly show: StationText & {
    /** The call it is about, to be shown with names by `describeCall`; `null` when it is about none. */
    readonly call: Call | null;
    /** Stable word for programs. */
    readonly topic:
      | 'acknowledged'
      | 'acknowledgement-doubtful'
      | 'alert-countdown'
      | 'alert-not-cancelled'
      | 'alert-prepared'
      | 'alert-stopped'
      | 'announcement'
      | 'answered'
      | 'call-again'
      | 'call-received'
      | 'channel-busy'
      | 'damaged-call'
      | 'distress-cancelled'
      | 'distress-heard'
      | 'distress-repeated'
      | 'distress-traffic'
      | 'held-for-distress'
      | 'missed-call'
      | 'no-answer'
      | 'position-erased'
      | 'position-old'
      | 'position-received'
      | 'received-in-full'
      | 'refused'
      | 'still-in-hand'
      | 'still-on-channel'
      | 'transmission-failed'
      | 'tune-by-hand'
      | 'unexpected-answer'
      | 'watch-left'
      | 'waiting-for-acknowledgement';
  };
  /** Ask the person; the answer is one of the events listed. */
  readonly ask: StationText & {
    /** The dialogue that is asked about; give it back with the answer. */
    readonly dialogue: number;
    /** The call that is asked about, to be shown with names by `describeCall`; `null` for an own alert not yet sent. */
    readonly call: Call | null;
    readonly question:
      | 'send-this'
      | 'answer-call'
      | 'tune-to'
      | 'cancel-alert'
      | 'stop-alert'
      | 'repeat-alert'
      | 'acknowledge-distress';
    /** Kinds of event that answer the question. */
    readonly answers: readonly AnswerKind[];
  };
  /** Words are to be spoken: `spokenScript(effect.call, vessel)` of `seahail/speech` gives them. */
  readonly speak: {
    readonly situation: Situation['kind'];
    /** Voice channel, ITU-R M.1084 digits. */
    readonly channel: string;
    /** The call that led here. */
    readonly call: Call;
    /** UTC at which the own alert was sent, for `alertTime` of `spokenScript`: where a false one is cancelled, else `null`. */
    readonly alertTime: TimeOfDay | null;
  };
  /** Advice on another vessel's distress alert, by the decision flow. */
  readonly advise: {
    readonly advice: DistressAdvice;
  };
  /** Write this into the watch log. Nothing of the log is kept in the state. */
  readonly log: {
    readonly entry: LogEntry;
  };
  /** An event could not be followed; nothing was changed. */
  readonly issue: {
    readonly issue: Issue;
  };
  /** Give the station a `clock` event at this instant, instead of any asked for before; `null`: nothing is waited for. */
  readonly wake: {
    readonly at: number | null;
  };
}

/** An action that the station asks its program to take: `Effect<'send'>` is one kind, `Effect` any. */
export type Effect<Kind extends keyof Effects = keyof Effects> = {
  [K in Kind]: {
    readonly kind: K;
    /** The dialogue it belongs to, `null` for the station as a whole. */
    readonly dialogue: number | null;
    /** Document and section that ask for it; `null` where nothing but common sense does. */
    readonly clause: string | null;
    /** The caution to show; never `null` where distress is concerned. */
    readonly caution: StationText | null;
  } & Effects[K];
}[Kind];
