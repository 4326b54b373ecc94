import type { ChannelPlan } from '../../channel/index.ts';
import type { ReportedPosition, TimeOfDay } from '../../position/index.ts';
import type { Param } from '../../result/index.ts';
import { type CodeOf, type ParamsOf, textMaker } from '../../result/internal.ts';
import type { Call } from '../call.ts';
import { type ComposedCall, calls } from '../call-table.ts';
import type { EquipmentClass } from '../kinds.ts';
import { answerTexts } from '../texts.ts';

/** Own station, for its answers. */
export interface AnsweringStation {
  /** Own identity, nine digits. */
  readonly own: string;
  /** Own coast station is designated to acknowledge distress by DSC (47 CFR 80.103(c)); not unless stated. */
  readonly designated?: boolean | undefined;
  /** Class of own equipment: what it does not send is not offered. Unless stated, a ship is taken for class D where the call is about distress. */
  readonly equipmentClass?: EquipmentClass | undefined;
  /** Own position, when a position may be given. */
  readonly position?: ReportedPosition | null | undefined;
  /** UTC of the position. */
  readonly time?: TimeOfDay | null | undefined;
  /** Other channels to offer, best first, e.g. from `workingChannels`. */
  readonly channels?: readonly string[] | undefined;
  /** Plan of the waters: channels on which it does not let two ships talk are then not offered, and labels use its names. */
  readonly plan?: ChannelPlan | undefined;
}

/** One lawful answer, ready to send. */
export interface LawfulAnswer {
  readonly meaning:
    | 'able'
    | 'able-on-another-channel'
    | 'unable'
    | 'position'
    | 'test'
    | 'polling'
    | 'distress-acknowledgement'
    | 'relay-acknowledgement';
  /** For people, e.g. `'Able to comply, channel 72'`. */
  readonly label: string;
  /** Stable kebab-case name of the label; `translate` of `seahail/locale` says it in another language. */
  readonly code: string;
  /** The data in the label, by name. */
  readonly params: Readonly<Record<string, Param>>;
  readonly call: Call;
  readonly clause: string;
}

/** The answers to a call; when there are none, `none` says why. */
export interface LawfulAnswers {
  readonly answers: readonly LawfulAnswer[];
  readonly none: {
    readonly reason: string;
    /** Stable kebab-case name of the reason; `translate` of `seahail/locale` says it in another language. */
    readonly code: string;
    readonly params: Readonly<Record<string, Param>>;
    readonly clause: string;
  } | null;
}

/** One answer, with the table it comes from. */
export function answer<Code extends CodeOf<typeof answerTexts>>(
  meaning: LawfulAnswer['meaning'],
  label: Code,
  params: ParamsOf<typeof answerTexts, Code>,
  call: ComposedCall,
): LawfulAnswer {
  const { message, ...coded } = text(label, params);
  const clause = `${calls.rowOf(call).clause}, unverified`;
  return { meaning, label: message, ...coded, call, clause };
}

export function some(...answers: readonly LawfulAnswer[]): LawfulAnswers {
  return { answers, none: null };
}

export function none(
  why: Extract<CodeOf<typeof answerTexts>, `call-no-answer-${string}`>,
  clause: string,
): LawfulAnswers {
  const { message, ...coded } = text(why, {});
  return { answers: [], none: { reason: message, ...coded, clause } };
}

const text = /* @__PURE__ */ textMaker(answerTexts);
