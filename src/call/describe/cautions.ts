import type { Call } from '../call.ts';
import type { CallFields } from '../fields.ts';

/** Something to mind about a call. */
export interface Caution {
  readonly text: string;
  readonly clause: string;
}

/** The cautions that belong to a kind of call. Rules differ by country; trained operators and the licence decide. */
export function cautionsOf(call: Call, own?: string): Caution[] {
  switch (call.kind) {
    case 'distress-alert':
      if (own !== undefined && call.from === own) return [IN_DANGER_ONLY, VOICE_FOLLOWS];
      return [WATCH, COAST_ANSWERS, NO_RELAY, ...placeCautions(call)];
    case 'distress-acknowledgement':
    case 'distress-relay-acknowledgement':
      return [WATCH, ...placeCautions(call)];
    case 'distress-self-cancel':
      return [CANCEL_BY_VOICE, ...placeCautions(call)];
    case 'distress-relay':
      return [WATCH, RELAY_ANSWER, ...placeCautions(call)];
    case 'position-reply':
      return placeCautions(call);
    case 'unrecognised-call':
      return isDistress(call.asReceived) ? [MAY_BE_DISTRESS] : [];
    default:
      return 'category' in call && call.category === 'distress' ? [WATCH] : [];
  }
}

const IN_DANGER_ONLY: Caution = {
  text: 'Only in grave and imminent danger, by order of the person responsible for the vessel, and never as a test; a false alert is cancelled at once in speech on channel 16',
  clause: 'Radio Regulations Art. 32, from memory; 47 CFR 80.335',
};

const VOICE_FOLLOWS: Caution = {
  text: 'The distress call and message follow in speech on channel 16, answered or not',
  clause: 'ITU-R M.541 Annex 3',
};

const WATCH: Caution = {
  text: 'Keep watch on channel 16, do not transmit over distress traffic, tell the master, and log the call',
  clause: '47 CFR 80.1121(a); Radio Regulations Art. 32, from memory',
};

const COAST_ANSWERS: Caution = {
  text: 'Leave the acknowledgement by selective calling to a coast station; near the vessel and with no coast station heard, acknowledge by voice on channel 16 and tell a coast station',
  clause: '47 CFR 80.1117(a), 80.1121(b)',
};

const NO_RELAY: Caution = {
  text: 'Do not relay an alert on VHF because it was heard',
  clause: 'IMO COMSAR/Circ.25',
};

const CANCEL_BY_VOICE: Caution = {
  text: 'The cancellation by selective calling is followed at once by one in speech on channel 16',
  clause: '47 CFR 80.335',
};

const RELAY_ANSWER: Caution = {
  text: 'Acknowledge a relay from a coast station by voice on channel 16',
  clause: 'ITU-R M.541 Annex 3, from memory',
};

const MAY_BE_DISTRESS: Caution = {
  text: 'Part of a call that speaks of distress was received: keep watch on channel 16',
  clause: 'common practice, no source',
};

const COARSE: Caution = {
  text: 'The position may be cut to whole minutes, typed by hand or hours old: do not steer by it alone',
  clause: 'ITU-R M.493-15 (whole minutes), M.821-1; 4 h and 23.5 h limits from memory',
};

const UNKNOWN: Caution = {
  text: 'No position was given, which does not mean that the vessel is far away',
  clause: 'ITU-R M.541-8 Annex 1',
};

function placeCautions(call: { readonly position: unknown }): Caution[] {
  return [call.position === null ? UNKNOWN : COARSE];
}

function isDistress({ category, telecommand1, distressed, nature }: CallFields): boolean {
  const says = category === 112 || telecommand1 === 110 || telecommand1 === 112;
  return says || distressed !== null || nature !== null;
}
