import type { ReportedPosition } from '../../position/index.ts';
import type { CodedText } from '../../result/index.ts';
import type { StationText } from '../texts.ts';
import type { Dialogue } from './dialogue.ts';
import type { AnswerKind } from './event.ts';

/** Advice of the decision flow for a distress alert received on VHF, at this stage. */
export interface DistressAdvice {
  readonly kind: 'distress-advice';
  /** Nine digits, `null` when unknown. */
  readonly distressed: string | null;
  readonly phase: Dialogue<'heard-distress'>['phase'];
  /** Steps to take now, in order. */
  readonly now: readonly AdviceStep[];
  /** The question to answer, and the events that answer it; `null` when there is none now. */
  readonly question: (StationText & { readonly answers: readonly AnswerKind[] }) | null;
  /** The event to wait for, `null` when none. */
  readonly waitFor: AdviceStep | null;
  /** Who acknowledges an alert on VHF. */
  readonly whoAcknowledges: AdviceStep;
  /** Acknowledging by voice on channel 16. */
  readonly voiceAcknowledgement: Permission;
  /** Acknowledging by DSC. */
  readonly dscAcknowledgement: Permission;
  /** A DSC relay to one coast station. Passing the distress on by voice or any other means is never forbidden. */
  readonly relay: Permission;
  /** A DSC relay to all ships, a group or an area. */
  readonly relayToMany: Permission;
  /** Position of the vessel in distress as received, for `rangeAndBearing` of `seahail/position`; `null` when unknown. */
  readonly position: ReportedPosition | null;
  readonly caution: StationText;
}

/** Whether something is allowed, and why or why not. */
export interface Permission extends Pick<CodedText, 'code' | 'params'> {
  readonly allowed: boolean;
  /** English, of `code` and `params`, without a final full stop; `translate({ ...permission, text: why }, catalogue)`. */
  readonly why: string;
  readonly clause: string;
}

/** One instruction. */
export interface AdviceStep extends StationText {
  /** Document and section. */
  readonly clause: string;
}
