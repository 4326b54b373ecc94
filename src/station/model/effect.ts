import type { Call } from '../../call/index.ts';
import type { TimeOfDay } from '../../position/index.ts';
import type { Issue } from '../../result/index.ts';
import type { Situation } from '../../speech/index.ts';
import type { DistressAdvice } from './advice.ts';
import type { AnswerKind } from './event.ts';
import type { LogEntry } from './log-entry.ts';

interface EffectBase {
  /** The dialogue it belongs to, `null` for the station as a whole. */
  readonly dialogue: number | null;
  /** Document and section that ask for it; `null` where nothing but common sense does. */
  readonly clause: string | null;
  /** What a person must bear in mind; never `null` where distress is concerned. */
  readonly caution: string | null;
}

/** Transmit on channel 70. Answer with a `sent` or `send-failed` event. */
export interface SendEffect extends EffectBase {
  readonly kind: 'send';
  readonly call: Call;
  /** How often in a row without a gap: five for a distress attempt, else one. */
  readonly times: 1 | 5;
}

/** Break off the running transmission: something more urgent waits. */
export interface StopSendingEffect extends EffectBase {
  readonly kind: 'stop-sending';
}

/** Change the voice channel. */
export interface TuneEffect extends EffectBase {
  readonly kind: 'tune';
  /** ITU-R M.1084 digits. */
  readonly channel: string;
}

/** The kinds of alarm, each with a sound of its own. */
export type AlarmKind = 'distress' | 'urgency' | 'safety' | 'routine' | 'position' | 'fault';

/** Start an alarm. */
export interface SoundEffect extends EffectBase {
  readonly kind: 'sound';
  readonly alarm: AlarmKind;
  readonly lasts: 'until-silenced' | 'short';
}

/** End an alarm. */
export interface SilenceEffect extends EffectBase {
  readonly kind: 'silence';
  readonly alarm: AlarmKind;
}

/** Tell the person something. */
export interface ShowEffect extends EffectBase {
  readonly kind: 'show';
  /** The call it is about, to be shown with names by `describeCall`; `null` when it is about none. */
  readonly call: Call | null;
  /** Stable word for programs. */
  readonly topic: ShowTopic;
  /** English, without a final full stop. */
  readonly text: string;
}

/** What a {@link ShowEffect} is about. */
export type ShowTopic =
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

/** Ask the person; the answer is one of the events listed. */
export interface AskEffect extends EffectBase {
  readonly kind: 'ask';
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
  readonly text: string;
  /** Kinds of event that answer the question. */
  readonly answers: readonly AnswerKind[];
}

/** Words are to be spoken: `spokenScript(effect.call, vessel)` of `seahail/call` gives them. */
export interface SpeakEffect extends EffectBase {
  readonly kind: 'speak';
  readonly situation: Situation['kind'];
  /** Voice channel, ITU-R M.1084 digits. */
  readonly channel: string;
  /** The call that led here. */
  readonly call: Call;
  /** UTC at which the own alert was sent, for `alertTime` of `spokenScript`: where a false one is cancelled, else `null`. */
  readonly alertTime: TimeOfDay | null;
}

/** What to do about a distress alert that was heard, by the decision flow. */
export interface AdviseEffect extends EffectBase {
  readonly kind: 'advise';
  readonly advice: DistressAdvice;
}

/** Write this into the watch log. Nothing of the log is kept in the state. */
export interface LogEffect extends EffectBase {
  readonly kind: 'log';
  readonly entry: LogEntry;
}

/** An event could not be followed; nothing was changed. */
export interface RejectEffect extends EffectBase {
  readonly kind: 'reject';
  readonly issue: Issue;
}

/** Give the station a `clock` event at this instant, instead of any asked for before; `null`: nothing is waited for. */
export interface WakeEffect extends EffectBase {
  readonly kind: 'wake';
  readonly at: number | null;
}

/** What the machine wants done. */
export type Effect =
  | SendEffect
  | StopSendingEffect
  | TuneEffect
  | SoundEffect
  | SilenceEffect
  | ShowEffect
  | AskEffect
  | SpeakEffect
  | AdviseEffect
  | LogEffect
  | RejectEffect
  | WakeEffect;
