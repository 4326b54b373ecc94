import { clause } from '../state/clause.ts';
import type { HeardDistressDialogue } from '../state/dialogue.ts';
import { isDesignated } from '../state/equipment.ts';
import type { StationState } from '../state/state.ts';
import { coastFlow } from './coast.ts';
import { dscPermission, isAboutRelay, isRelayedByCoast } from './permission.ts';
import { shipFlow } from './ship.ts';
import { type AdviceStep, record, type Stage } from './step.ts';

/** The stage of a distress for this station: a designated coast station, any other station, or the ship whose own device calls. */
export function stageOf(state: StationState, dialogue: HeardDistressDialogue): Stage {
  const stage = bareStageOf(state, dialogue);
  const { question } = stage;
  if (question === null || dscPermission(state, dialogue).allowed) return stage;
  const answers = question.answers.filter((answer) => answer !== 'acknowledge');
  return { ...stage, question: { ...question, answers } };
}

function bareStageOf(state: StationState, dialogue: HeardDistressDialogue): Stage {
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
    ...(phase === 'coast-answered' && isRelayedByCoast(dialogue) ? [answerRelay] : []),
  ];
  return { ...stage, now: [...first, ...stage.now] };
}

const report: AdviceStep = {
  text: 'Report the distress to the coastguard or rescue co-ordination centre at once; this station is not designated to acknowledge by DSC',
  clause: '47 CFR 80.103(c), 80.1119(a)',
};

const answerRelay: AdviceStep = {
  text: 'A coast station relays the distress: if you can assist, acknowledge the relay by voice on channel 16 to that station',
  clause: clause.coastRelay,
};

/**
 * A man-overboard device calls its own vessel, or her group, by a relay before it alerts everybody (M.493-16, class M,
 * from memory). deviation: D-station-14
 */
function isOwnDevice({ settings }: StationState, dialogue: HeardDistressDialogue): boolean {
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
      clause: 'ITU-R M.493-16, class M, from memory',
    },
    {
      text: 'If the person is not recovered at once, send your own distress alert: man overboard',
      clause: clause.alert,
    },
    record,
  ],
  question: { text: 'Is the person safe, or was it a false alarm?', answers: ['close', 'acknowledge'] },
  waitFor: null,
};
