import type { Call } from '../call/index.ts';
import { centreOf, rangeAndBearing, timeToReach } from '../position/index.ts';
import { clause } from './state/clause.ts';
import type { HeardDistressDialogue, HeardDistressPhase } from './state/dialogue.ts';
import { maySend } from './state/equipment.ts';
import type { StationState } from './state/state.ts';
import { isCoastIdentity } from './turn/own-identity.ts';
import { DISTRESS_CAUTION } from './turn/turn.ts';

/** One thing to do, or to leave. */
export interface AdviceStep {
  /** English, without a final full stop. */
  readonly text: string;
  /** Document and section. */
  readonly clause: string;
}

/** Whether something is allowed, and why or why not. */
export interface Permission {
  readonly allowed: boolean;
  readonly why: string;
  readonly clause: string;
}

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

/** What the decision flow for a distress alert heard on VHF says at this stage. */
export interface DistressAdvice {
  readonly kind: 'distress-advice';
  /** Nine digits, `null` when unknown. */
  readonly distressed: string | null;
  readonly phase: HeardDistressPhase;
  /** What to do now, in order. */
  readonly now: readonly AdviceStep[];
  /** What to decide, and by which events; `null` when nothing is to be decided now. */
  readonly question: { readonly text: string; readonly answers: readonly string[] } | null;
  /** What to wait for, `null` when for nothing. */
  readonly waitFor: AdviceStep | null;
  /** Who acknowledges an alert on VHF. */
  readonly whoAcknowledges: AdviceStep;
  /** Acknowledging by voice on channel 16. */
  readonly voiceAcknowledgement: Permission;
  /** Acknowledging by DSC. */
  readonly dscAcknowledgement: Permission;
  /** Passing the alert on. */
  readonly relay: Permission;
  /** `null` when a position is missing. */
  readonly distance: DistanceToDistress | null;
  readonly caution: string;
}

/**
 * What to do about another vessel's distress at this stage: the decision flow for alerts heard on VHF, as data.
 *
 * It helps a trained person and replaces neither the training nor the law: national rules and the master's decision
 * come first.
 *
 * @param state - a state with that dialogue in it
 * @param dialogue - its number
 * @returns `null` when there is no such distress
 *
 * Source: IMO COMSAR/Circ.25 (flow chart seen for MF; for VHF with channel 16 in the place of 2182 kHz, from memory)
 * and its successor of 2022; ITU-R M.541; 47 CFR 80.1117 and 80.1121.
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
 * console.log(advice?.now[0]?.text); // Send nothing that could disturb, listen on channel 16 and inform the master
 * console.log(advice?.relay.allowed); // false
 * ```
 */
export function adviseOnDistress(state: StationState, dialogue: number): DistressAdvice | null {
  const found = state.dialogues.find(({ id }) => id === dialogue);
  return found?.procedure === 'heard-distress' ? adviceFor(state, found) : null;
}

export function adviceFor(state: StationState, dialogue: HeardDistressDialogue): DistressAdvice {
  const { phase } = dialogue;
  const acknowledged = isCoastIdentity(dialogue.acknowledgedBy);
  return {
    kind: 'distress-advice',
    distressed: dialogue.distressed,
    phase,
    now: state.settings.equipment === 'coast' ? coastSteps[phase] : shipSteps[phase],
    question: questions[phase] ?? null,
    waitFor: waits[phase] ?? null,
    whoAcknowledges: {
      text: 'As a rule a coast station or rescue co-ordination centre, and nobody else by DSC',
      clause: '47 CFR 80.1117; ITU-R M.541',
    },
    voiceAcknowledgement: voicePermission(state, phase, acknowledged),
    dscAcknowledgement: dscPermission(state, dialogue),
    relay: relayPermission(state),
    distance: distanceTo(state, dialogue.call),
    caution: DISTRESS_CAUTION,
  };
}

const listen: AdviceStep = {
  text: 'Send nothing that could disturb, listen on channel 16 and inform the master',
  clause: clause.heardAlert,
};
const follow: AdviceStep = {
  text: 'Follow the instructions of the coast station or rescue co-ordination centre',
  clause: clause.relay,
};
const record: AdviceStep = { text: 'Enter everything heard and done into the radio log', clause: clause.log };

const shipSteps: Readonly<Record<HeardDistressPhase, readonly AdviceStep[]>> = {
  shown: [
    {
      text: 'A distress call was received with errors: nothing in it is certain. Listen on channel 16',
      clause: clause.errorCheck,
    },
    record,
  ],
  listening: [
    listen,
    { text: 'Leave the acknowledgement to the coast stations', clause: '47 CFR 80.1117' },
    record,
  ],
  undecided: [
    { text: 'No acknowledgement was heard: listen for distress traffic on channel 16', clause: clause.relay },
  ],
  'coast-answered': [
    { text: 'The master decides whether this vessel is able to assist', clause: clause.relay },
    record,
  ],
  'inform-coast': [
    { text: 'Inform a coast station or rescue co-ordination centre by any means', clause: clause.relay },
    { text: 'The master decides whether this vessel is able to assist', clause: clause.relay },
    record,
  ],
  assisting: [
    {
      text: 'Acknowledge by voice on channel 16 to the vessel in distress or to the rescue co-ordination centre',
      clause: clause.relay,
    },
    follow,
    record,
  ],
  'acknowledge-asked': [
    {
      text: 'Acknowledge by DSC only to end an alert that goes on, after consulting a rescue co-ordination centre',
      clause: '47 CFR 80.1121(d)',
    },
  ],
  'acknowledge-waiting': [listen],
  'acknowledge-sending': [listen],
  cancelled: [
    {
      text: 'The vessel took her alert back. Log it and listen on channel 16 for her voice',
      clause: clause.falseAlert,
    },
    record,
  ],
};

const coastSteps: Readonly<Record<HeardDistressPhase, readonly AdviceStep[]>> = {
  ...shipSteps,
  listening: [
    { text: 'Acknowledge by DSC at once, and answer on channel 16', clause: clause.acknowledgement },
    record,
  ],
  undecided: [
    {
      text: 'The alert is not acknowledged: acknowledge by DSC, and answer on channel 16',
      clause: clause.acknowledgement,
    },
  ],
};

const questions: Partial<Readonly<Record<HeardDistressPhase, NonNullable<DistressAdvice['question']>>>> = {
  listening: {
    text: 'Is the alert acknowledged by voice, or is distress traffic heard?',
    answers: ['traffic', 'assist'],
  },
  undecided: {
    text: 'Is distress traffic heard on channel 16?',
    answers: ['traffic', 'no-traffic', 'assist'],
  },
  'coast-answered': { text: 'Is this vessel able to assist?', answers: ['assist', 'stand-by'] },
  'inform-coast': { text: 'Is this vessel able to assist?', answers: ['assist', 'stand-by', 'traffic'] },
  'acknowledge-asked': { text: 'Acknowledge by DSC?', answers: ['confirm', 'decline'] },
};

const waits: Partial<Readonly<Record<HeardDistressPhase, AdviceStep>>> = {
  listening: { text: 'Five minutes for a coast station to acknowledge', clause: '47 CFR 80.1121(b)' },
  'acknowledge-waiting': { text: 'Channel 70 to be free', clause: clause.channelUse },
};

function voicePermission(state: StationState, phase: HeardDistressPhase, acknowledged: boolean): Permission {
  if (state.settings.equipment === 'coast') {
    return {
      allowed: true,
      why: 'A coast station answers on channel 16 after its DSC acknowledgement',
      clause: clause.acknowledgement,
    };
  }
  if (acknowledged) {
    return {
      allowed: true,
      why: 'A coast station has acknowledged: answer by voice when able to assist, as it directs',
      clause: clause.relay,
    };
  }
  return phase === 'listening' || phase === 'shown'
    ? {
        allowed: false,
        why: 'Coast stations are given time first; in the vicinity the master may shorten it',
        clause: '47 CFR 80.1121(b)',
      }
    : {
        allowed: true,
        why: 'No coast station has answered: a vessel near enough acknowledges by voice on channel 16, and then tells a coast station',
        clause: '47 CFR 80.1121(b)',
      };
}

/** Whether to acknowledge by DSC: a coast station at once; class A only to end an alert that goes on without any acknowledgement. */
export function dscPermission(
  { settings }: StationState,
  { distressed, acknowledgedBy, alerts, phase }: HeardDistressDialogue,
): Permission {
  const no = (why: string, where: string = clause.acknowledgement): Permission => ({
    allowed: false,
    why,
    clause: where,
  });
  if (settings.mmsi === null) return no('No own identity is stored', clause.identity);
  if (!maySend(settings.equipment, { kind: 'distress-acknowledgement', to: { kind: 'all-ships' } })) {
    return no('This class of equipment does not acknowledge distress', clause.equipment);
  }
  if (distressed === null) return no('The identity of the vessel in distress is not known');
  if (settings.equipment === 'coast') {
    return { allowed: true, why: 'Coast stations acknowledge, by hand', clause: clause.acknowledgement };
  }
  if (acknowledgedBy !== null) return no('The alert is acknowledged already');
  if (phase !== 'undecided' && phase !== 'inform-coast')
    return no('Coast stations are given five minutes first');
  if (alerts < 2) return no('The alert is not repeated: there is nothing to stop');
  return {
    allowed: true,
    why: 'The alert goes on and nobody acknowledged: after consulting a rescue co-ordination centre',
    clause: '47 CFR 80.1121(d)',
  };
}

function relayPermission({ settings }: StationState): Permission {
  if (settings.equipment === 'coast') {
    return {
      allowed: true,
      why: 'Coast stations relay to the ships they want to reach',
      clause: clause.relay,
    };
  }
  return {
    allowed: false,
    why: 'An alert heard on VHF is no reason for a relay. One is allowed when the vessel in distress cannot alert herself, or when the master judges that more help is needed',
    clause: clause.relay,
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
