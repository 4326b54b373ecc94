import { clause } from '../state/clause.ts';
import type { HeardDistressPhase } from '../state/dialogue.ts';
import type { AnswerKind } from '../state/effect.ts';

/** One instruction. */
export interface AdviceStep {
  /** English, without a final full stop. */
  readonly text: string;
  /** Document and section. */
  readonly clause: string;
}

/** A stage of the flow: instructions, the question to answer, and what to wait for. */
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

/** Log entry, at every stage. */
export const record: AdviceStep = {
  text: 'Log everything received and done',
  clause: clause.log,
};

/** After a reception with errors. */
export const withErrors: AdviceStep = {
  text: 'Keep watch on channel 16. A distress call was received with errors: nothing in it is certain',
  clause: clause.errorCheck,
};

/** The end of a false alert. */
export const takenBack: AdviceStep = {
  text: 'The vessel cancelled her alert. Log it and listen on channel 16 for the voice cancellation',
  clause: clause.falseAlert,
};

/** A call waits for channel 70. */
export const channelFree: AdviceStep = { text: 'Channel 70 to be free', clause: clause.channelUse };
