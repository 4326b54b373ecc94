import { DISTRESS_CAUTION } from '../../engine/turn.ts';
import type { AdviceStep, DistressAdvice } from '../../model/advice.ts';
import { clause } from '../../model/clause.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import { isDesignated } from '../../model/equipment.ts';
import type { StationState } from '../../model/state.ts';
import { coastFlow, record, type Stage, shipFlow } from './flow.ts';
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
 * console.log(advice?.now[0]?.text); // Keep watch on channel 16, do not transmit, and inform the master
 * console.log(advice?.relay.allowed); // false
 * ```
 */
export function adviseOnDistress(state: StationState, dialogue: number): DistressAdvice | null {
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
    whoAcknowledges: {
      text: 'The coastguard, a rescue co-ordination centre or a designated coast station acknowledges by DSC',
      clause: '47 CFR 80.103(c), 80.1117(a); RR 2024 No. 32.27',
    },
    voiceAcknowledgement: voicePermission(state, dialogue),
    dscAcknowledgement: dscPermission(state, dialogue),
    relay: relayPermission(state, dialogue),
    relayToMany: relayToManyPermission(state),
    position: 'position' in dialogue.call ? dialogue.call.position : null,
    caution: DISTRESS_CAUTION,
  };
}

/** The stage of a distress for this station: a designated coast station, any other station, or the ship whose own device calls. */
export function stageOf(state: StationState, dialogue: Dialogue<'heard-distress'>): Stage {
  const stage = bareStageOf(state, dialogue);
  const { question } = stage;
  if (question === null || dscPermission(state, dialogue).allowed) return stage;
  const answers = question.answers.filter((answer) => answer !== 'acknowledge');
  return { ...stage, question: { ...question, answers } };
}

function bareStageOf(state: StationState, dialogue: Dialogue<'heard-distress'>): Stage {
  const { phase } = dialogue;
  const isCoast = isDesignated(state.settings);
  if (!isCoast && isOwnDevice(state, dialogue)) return ownDeviceStage;
  const flow = isCoast ? coastFlow : shipFlow;
  const stage = {
    now: flow.now[phase],
    question: flow.question[phase] ?? null,
    waitFor: flow.waitFor[phase] ?? null,
  };
  if (isCoast) return stage;
  const reports = state.settings.equipment === 'coast' && phase !== 'coast-answered' && phase !== 'cancelled';
  const first = [
    ...(reports ? [report] : []),
    ...(phase === 'coast-answered' && isRelayedByCoast(dialogue) ? [answerRelayStep] : []),
  ];
  return { ...stage, now: [...first, ...stage.now] };
}

const report: AdviceStep = {
  text: 'Report the distress to the coastguard or rescue co-ordination centre at once; this station is not designated to acknowledge by DSC',
  clause: '47 CFR 80.103(c), 80.1119(a)',
};

const answerRelayStep: AdviceStep = {
  text: 'A coast station relays the distress: if you can assist, acknowledge the relay by voice on channel 16 to that station',
  clause: clause.coastRelay,
};

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

const ownDeviceStage: Stage = {
  now: [
    {
      text: 'Your own man-overboard device is calling this vessel: look for the person, turn back and recover them',
      clause: 'ITU-R M.493-16, class M, unverified',
    },
    {
      text: 'If the person is not recovered at once, send your own distress alert: man overboard',
      clause: clause.alert,
    },
    record,
  ],
  question: { text: 'Is the person safe, or was it a false alarm?', answers: ['dismiss', 'acknowledge'] },
  waitFor: null,
};
