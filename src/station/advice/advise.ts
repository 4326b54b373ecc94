import type { Call } from '../../call/index.ts';
import { rangeAndBearing, timeToReach } from '../../position/index.ts';
import { centreOf } from '../../position/internal.ts';
import type { HeardDistressDialogue, HeardDistressPhase } from '../state/dialogue.ts';
import type { AnswerKind } from '../state/effect.ts';
import type { StationState } from '../state/state.ts';
import { DISTRESS_CAUTION } from '../turn/turn.ts';
import {
  dscPermission,
  type Permission,
  relayPermission,
  relayToManyPermission,
  voicePermission,
} from './permission.ts';
import { stageOf } from './stage.ts';
import type { AdviceStep } from './step.ts';

/** How far away the vessel in distress is. */
export interface DistanceToDistress {
  readonly metres: number;
  /** Degrees true from the own position; `null` when the two places are the same. */
  readonly bearing: number | null;
  /** Seconds at the speed of the settings on one course, which may lead over land; `null` without a speed. */
  readonly seconds: number | null;
  /** Epoch milliseconds of the own position used. */
  readonly ownPositionAt: number;
}

/** Advice of the decision flow for a distress alert received on VHF, at this stage. */
export interface DistressAdvice {
  readonly kind: 'distress-advice';
  /** Nine digits, `null` when unknown. */
  readonly distressed: string | null;
  readonly phase: HeardDistressPhase;
  /** What to do now, in order. */
  readonly now: readonly AdviceStep[];
  /** The question to answer, and the events that answer it; `null` when there is none now. */
  readonly question: { readonly text: string; readonly answers: readonly AnswerKind[] } | null;
  /** What to wait for, `null` when for nothing. */
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
  /** `null` when a position is missing. */
  readonly distance: DistanceToDistress | null;
  readonly caution: string;
}

/**
 * Advice about another vessel's distress at this stage: the decision flow for alerts received on VHF, as data.
 *
 * It helps a trained person and replaces neither the training nor the law: national rules and the master's decision
 * come first.
 *
 * @param state - a state with that dialogue in it
 * @param dialogue - its number
 * @returns `null` when there is no such distress
 *
 * Source: MSC.1/Circ.1657 (the chart of the circular before it was seen for MF; for VHF with channel 16 in the place of
 * 2182 kHz, from memory); RR 2024 Nos. 32.16 to 32.29A; ITU-R M.541-11 Annex 3; 47 CFR 80.103(c), 80.1117 and 80.1121.
 *
 * @see {@link step}
 *
 * @example
 * ```ts
 * import { composeDistressAlert } from 'seahail/call';
 * import { adviseOnDistress, createStation, step } from 'seahail/station';
 *
 * const call = composeDistressAlert({ from: '232999218', nature: 'flooding' });
 * const merrow = createStation({ mmsi: '232999871' });
 * const { state } = step(merrow, { kind: 'heard', at: Date.UTC(2026, 5, 1, 18, 0), call, verdict: 'clean' });
 * const advice = adviseOnDistress(state, 1);
 * console.log(advice?.now[0]?.text); // Keep watch on channel 16, do not transmit, and inform the master
 * console.log(advice?.relay.allowed); // false
 * ```
 */
export function adviseOnDistress(state: StationState, dialogue: number): DistressAdvice | null {
  const found = state.dialogues.find(({ id }) => id === dialogue);
  return found?.procedure === 'heard-distress' ? adviceFor(state, found) : null;
}

/** The same for a given dialogue. */
export function adviceFor(state: StationState, dialogue: HeardDistressDialogue): DistressAdvice {
  const { distressed, phase } = dialogue;
  return {
    kind: 'distress-advice',
    distressed,
    phase,
    ...stageOf(state, dialogue),
    whoAcknowledges: {
      text: 'The coastguard, a rescue co-ordination centre or a designated coast station acknowledges by DSC',
      clause: '47 CFR 80.103(c), 80.1117(a); RR 2024 No. 32.27',
    },
    voiceAcknowledgement: voicePermission(state, dialogue),
    dscAcknowledgement: dscPermission(state, dialogue),
    relay: relayPermission(state, dialogue),
    relayToMany: relayToManyPermission(state),
    distance: distanceTo(state, dialogue.call),
    caution: DISTRESS_CAUTION,
  };
}

function distanceTo({ fix, settings }: StationState, call: Call): DistanceToDistress | null {
  if (fix === null || !('position' in call) || call.position === null) return null;
  const there = centreOf(call.position);
  const { metres, bearing } = rangeAndBearing(fix.position, there);
  const { speed } = settings;
  const passage = speed > 0 && speed < Infinity ? timeToReach(fix.position, there, { speed }) : null;
  return { metres, bearing, seconds: passage?.seconds ?? null, ownPositionAt: fix.at };
}
