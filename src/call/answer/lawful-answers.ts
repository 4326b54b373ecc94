import type { ChannelPlan } from '../../channel/index.ts';
import type { ReportedPosition, TimeOfDay } from '../../position/index.ts';
import type { Call } from '../call.ts';
import { compositionOf, type EquipmentClass } from '../kinds.ts';

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
  /** For people, e.g. `'Able, on channel 72'`. */
  readonly label: string;
  readonly call: Call;
  readonly clause: string;
}

/** The answers to a call; when there are none, `none` says why. */
export interface LawfulAnswers {
  readonly answers: readonly LawfulAnswer[];
  readonly none: {
    readonly reason: string;
    readonly clause: string;
  } | null;
}

/** One answer, with the table it comes from. */
export function answer(
  meaning: LawfulAnswer['meaning'],
  label: string,
  call: Exclude<Call, Call<'unrecognised-call'>>,
): LawfulAnswer {
  return { meaning, label, call, clause: `${compositionOf(call.kind)?.clause}, unverified` };
}

/** Answers to choose from. */
export function some(...answers: readonly LawfulAnswer[]): LawfulAnswers {
  return { answers, none: null };
}

/** No DSC answer, and why. */
export function none(reason: string, clause: string): LawfulAnswers {
  return { answers: [], none: { reason, clause } };
}
