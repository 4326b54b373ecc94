import { want } from '../../../result/internal.ts';
import { distressCaution } from '../../engine/turn.ts';
import type { DistressAdvice } from '../../model/advice.ts';
import { clause } from '../../model/clause.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import { isDesignated } from '../../model/equipment.ts';
import type { StationState } from '../../model/state.ts';
import {
  coastFlow,
  type Question,
  questionOf,
  record,
  type Stage,
  type Step,
  shipFlow,
  stepOf,
} from './flow.ts';
import {
  dscPermission,
  isAboutRelay,
  isRelayedByCoast,
  relayPermission,
  relayToManyPermission,
  voicePermission,
} from './permission.ts';

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
 * const { state } = step(merrow, { kind: 'received', at: Date.UTC(2026, 5, 1, 18, 0), call, verdict: 'clean' });
 * const advice = adviseOnDistress(state, 1);
 * console.log(advice?.now[0]?.text); // Keep watch on channel 16. Do not transmit. Inform the master
 * console.log(advice?.relay.allowed); // false
 * ```
 */
export function adviseOnDistress(state: StationState, dialogue: number): DistressAdvice | null {
  want('adviseOnDistress', 'the state of a station', state, 'dialogues');
  const found = state.dialogues.find(({ id }) => id === dialogue);
  return found?.procedure === 'heard-distress' ? adviceFor(state, found) : null;
}

/** The same for a given dialogue. */
export function adviceFor(state: StationState, dialogue: Dialogue<'heard-distress'>): DistressAdvice {
  const { distressed, phase } = dialogue;
  return {
    kind: 'distress-advice',
    distressed,
    phase,
    ...stageOf(state, dialogue),
    whoAcknowledges: stepOf(['station-who-acknowledges', '47 CFR 80.103(c), 80.1117(a); RR 2024 No. 32.27']),
    voiceAcknowledgement: voicePermission(state, dialogue),
    dscAcknowledgement: dscPermission(state, dialogue),
    relay: relayPermission(state, dialogue),
    relayToMany: relayToManyPermission(state),
    position: 'position' in dialogue.call ? dialogue.call.position : null,
    caution: distressCaution(),
  };
}

/** The stage of a distress for this station: a designated coast station, any other station, or the ship whose own device calls. */
function stageOf(state: StationState, dialogue: Dialogue<'heard-distress'>): Stage {
  const [now, asked, waitFor] = flowOf(state, dialogue);
  const question = asked === undefined ? null : questionOf(asked);
  const mayAcknowledge = dscPermission(state, dialogue).allowed;
  return {
    now: now.map(stepOf),
    question: question && {
      ...question,
      answers: question.answers.filter((answer) => mayAcknowledge || answer !== 'acknowledge'),
    },
    waitFor: waitFor === undefined ? null : stepOf(waitFor),
  };
}

function flowOf(
  state: StationState,
  dialogue: Dialogue<'heard-distress'>,
): readonly [now: readonly Step[], question?: Question | undefined, waitFor?: Step | undefined] {
  const { phase } = dialogue;
  const isCoast = isDesignated(state.settings);
  if (!isCoast && isOwnDevice(state, dialogue)) return [ownDevice, ownDeviceQuestion];
  const { now, question, waitFor } = isCoast ? coastFlow : shipFlow;
  const reports =
    !isCoast && state.settings.equipment === 'coast' && phase !== 'coast-answered' && phase !== 'cancelled';
  const relayed = !isCoast && phase === 'coast-answered' && isRelayedByCoast(dialogue);
  const first = [...(reports ? [report] : []), ...(relayed ? [answerRelay] : [])];
  return [[...first, ...now[phase]], question[phase], waitFor[phase]];
}

const report: Step = ['station-report', '47 CFR 80.103(c), 80.1119(a)'];

const answerRelay: Step = ['station-answer-relay', clause.coastRelay];

/**
 * A man-overboard device calls its own vessel, or her group, by a relay before it alerts everybody (M.493-16, class M,
 * from memory). deviation: D-station-14
 */
function isOwnDevice({ settings }: StationState, dialogue: Dialogue<'heard-distress'>): boolean {
  const { phase, call } = dialogue;
  if (phase !== 'listening' && phase !== 'undecided') return false;
  if (!isAboutRelay(dialogue) || call.from?.startsWith('972') !== true) return false;
  const { to } = dialogue.call;
  if (to.kind === 'station') return to.mmsi === settings.mmsi;
  return to.kind === 'group' && to.mmsi !== null && settings.groups.includes(to.mmsi);
}

const ownDevice: readonly Step[] = [
  ['station-own-device', 'ITU-R M.493-16, class M, unverified'],
  ['station-own-device-alert', clause.alert],
  record,
];

const ownDeviceQuestion: Question = ['station-ask-safe', ['dismiss', 'acknowledge']];
