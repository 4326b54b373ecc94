import type { AdviceStep, DistressAdvice } from '../../model/advice.ts';
import { clause } from '../../model/clause.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import type { AnswerKind } from '../../model/event.ts';
import { type AdviceCode, advise } from '../../texts.ts';

/** A stage of the flow as it is shown: instructions, the question to answer, and what to wait for. */
export type Stage = Pick<DistressAdvice, 'now' | 'question' | 'waitFor'>;

/** One instruction, by its text and clause. */
export type Step = readonly [code: AdviceCode, clause: string];

/** A question, by its text, and the events that answer it. */
export type Question = readonly [code: AdviceCode, answers: readonly AnswerKind[]];

type ByPhase<T> = Readonly<Record<Dialogue<'heard-distress'>['phase'], T>>;

/** The flow for one kind of station, phase by phase. */
interface Flow {
  readonly now: ByPhase<readonly Step[]>;
  readonly question: Partial<ByPhase<Question>>;
  readonly waitFor: Partial<ByPhase<Step>>;
}

/** An instruction in words. */
export function stepOf([code, source]: Step): AdviceStep {
  return { ...advise(code), clause: source };
}

/** A question in words. */
export function questionOf([code, answers]: Question): NonNullable<Stage['question']> {
  return { ...advise(code), answers };
}

/** Log entry, at every stage. */
export const record: Step = ['station-log-all', clause.log];

const withErrors: Step = ['station-errors-received', clause.errorCheck];

/** The end of a false alert. */
const withdrawn: Step = ['station-alert-withdrawn', clause.falseAlert];

const channelFree: Step = ['station-wait-channel', clause.channelUse];

const acknowledge: Step = ['station-coast-acknowledges', '47 CFR 80.1119(a); RR 2024 Nos. 32.27 and 32.28'];

const inform: Step = ['station-coast-informs', '47 CFR 80.1119(a)'];

const lead: Step = ['station-coast-leads', clause.coastDuty];

/** What a designated coast station does: it acknowledges, reports and takes charge of the traffic. */
export const coastFlow: Flow = {
  now: {
    shown: [withErrors, record],
    listening: [acknowledge, inform, record],
    undecided: [['station-coast-unanswered', clause.acknowledgement], inform, record],
    'coast-answered': [lead, record],
    'inform-coast': [acknowledge, inform, lead, record],
    assisting: [lead, record],
    'acknowledge-asked': [['station-stops-repeats', clause.acknowledgement]],
    'acknowledge-waiting': [lead],
    'acknowledge-sending': [lead],
    cancelled: [withdrawn, record],
  },
  question: {
    listening: ['station-ask-by-dsc', ['acknowledge', 'traffic']],
    undecided: ['station-ask-by-dsc-or-other', ['acknowledge', 'traffic', 'no-traffic']],
    'coast-answered': ['station-ask-traffic-over', ['dismiss', 'acknowledge']],
    'inform-coast': ['station-ask-by-dsc', ['acknowledge', 'traffic', 'dismiss']],
    'acknowledge-asked': ['station-ask-by-dsc', ['confirm', 'decline']],
  },
  waitFor: {
    'acknowledge-waiting': channelFree,
  },
};

const listen: Step = ['station-listen', clause.heardAlert];

const decide: Step = ['station-master-decides', clause.flow];

/** What a ship does: flow chart of MSC.1/Circ.1657. */
export const shipFlow: Flow = {
  now: {
    shown: [withErrors, record],
    listening: [listen, ['station-leave-acknowledgement', '47 CFR 80.1117(a)'], record],
    undecided: [
      ['station-listen-for-traffic', clause.flow],
      ['station-inform-if-silent', clause.relay],
    ],
    'coast-answered': [decide, record],
    'inform-coast': [['station-inform-coast', clause.relay], decide, record],
    assisting: [
      ['station-acknowledge-by-voice', clause.acknowledgement],
      ['station-inform-if-unacknowledged', 'RR 2024 No. 32.29A'],
      ['station-follow', clause.flow],
      record,
    ],
    'acknowledge-asked': [['station-acknowledge-to-stop', 'MSC.1/Circ.1657; 47 CFR 80.1121(d)']],
    'acknowledge-waiting': [listen],
    'acknowledge-sending': [listen],
    cancelled: [withdrawn, record],
  },
  question: {
    listening: ['station-ask-heard', ['traffic', 'assist']],
    undecided: ['station-ask-traffic', ['traffic', 'no-traffic', 'assist']],
    'coast-answered': ['station-ask-assist', ['assist', 'stand-by']],
    'inform-coast': ['station-ask-assist', ['assist', 'stand-by', 'traffic']],
    'acknowledge-asked': ['station-ask-by-dsc', ['confirm', 'decline']],
  },
  waitFor: {
    listening: ['station-wait-acknowledgement', 'RR 2024 No. 32.16; 47 CFR 80.1121(b)'],
    'acknowledge-waiting': channelFree,
  },
};
