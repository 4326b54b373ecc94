import { clause } from '../state/clause.ts';
import type { HeardDistressPhase } from '../state/dialogue.ts';
import type { AnswerKind } from '../state/effect.ts';

/** One thing to do, or to leave. */
export interface AdviceStep {
  /** English, without a final full stop. */
  readonly text: string;
  /** Document and section. */
  readonly clause: string;
}

/** Where a station stands in the flow: what to do, what to decide, what to wait for. */
export interface Stage {
  readonly now: readonly AdviceStep[];
  readonly question: { readonly text: string; readonly answers: readonly AnswerKind[] } | null;
  readonly waitFor: AdviceStep | null;
}

/** The flow for one kind of station, phase by phase. */
export interface Flow {
  readonly now: Readonly<Record<HeardDistressPhase, readonly AdviceStep[]>>;
  readonly question: Partial<Readonly<Record<HeardDistressPhase, NonNullable<Stage['question']>>>>;
  readonly waitFor: Partial<Readonly<Record<HeardDistressPhase, AdviceStep>>>;
}

/** For the log, at every stage. */
export const record: AdviceStep = {
  text: 'Enter everything heard and done into the radio log',
  clause: clause.log,
};

/** Nothing in it is certain. */
export const withErrors: AdviceStep = {
  text: 'A distress call was received with errors: nothing in it is certain. Listen on channel 16',
  clause: clause.errorCheck,
};

/** The end of a false alert. */
export const takenBack: AdviceStep = {
  text: 'The vessel took her alert back. Log it and listen on channel 16 for her voice',
  clause: clause.falseAlert,
};

/** What stands between a call and channel 70. */
export const channelFree: AdviceStep = { text: 'Channel 70 to be free', clause: clause.channelUse };
