import type { Call } from '../call.ts';
import { awayFromVhf, isMfHf } from '../element/mf-hf.ts';
import { type Lack, placeLack } from '../element/place-symbols.ts';
import { isAshore } from '../element/station-identity.ts';
import type { CallFields } from '../fields.ts';

/** Something to mind about a call. */
export interface Caution {
  readonly text: string;
  readonly clause: string;
}

/** The cautions that belong to a kind of call. Rules differ by country; trained operators and the licence decide. */
export function cautionsOf(call: Call, own?: string): Caution[] {
  const cautions = onVhf(call, own);
  if (!isMfHf(call)) return cautions;
  return cautions.map((caution) =>
    caution === NO_RELAY ? NO_RELAY_ON_MF : { ...caution, text: awayFromVhf(caution.text) },
  );
}

function onVhf(call: Call, own: string | undefined): Caution[] {
  const mine = own !== undefined && call.from === own;
  const ashore = own !== undefined && isAshore(own);
  switch (call.kind) {
    case 'distress-alert':
      if (mine) return [IN_DANGER_ONLY, VOICE_FOLLOWS];
      if (ashore) return [COAST_AT_ONCE, ...placeCautions(call)];
      return [WATCH, COAST_ANSWERS, NO_RELAY, ...placeCautions(call)];
    case 'distress-acknowledgement':
      return [...(mine && !ashore ? [WHO_ACKNOWLEDGES] : []), WATCH, ...placeCautions(call)];
    case 'distress-relay-acknowledgement':
      return [WATCH, ...placeCautions(call)];
    case 'distress-self-cancel':
      return [CANCEL_BY_VOICE, ...placeCautions(call)];
    case 'distress-relay':
      if (mine) return [...(ashore ? [] : [RELAY_CASE]), RELAY_BY_VOICE, ...placeCautions(call)];
      return [...(ashore ? [COAST_AT_ONCE] : [WATCH, RELAY_ANSWER]), ...placeCautions(call)];
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

const COAST_AT_ONCE: Caution = {
  text: 'Acknowledge at once, by selective calling and by voice on channel 16; then lead the traffic or pass it to the rescue co-ordination centre, and log the call',
  clause: 'ITU-R M.541 Annex 3, from memory',
};

const WHO_ACKNOWLEDGES: Caution = {
  text: 'Coast stations acknowledge an alert by selective calling; a ship only after consulting a rescue co-ordination centre',
  clause: '47 CFR 80.1117(a), 80.1121(d)',
};

const NO_RELAY: Caution = {
  text: 'Do not relay an alert on VHF because it was heard',
  clause: 'IMO COMSAR/Circ.25',
};

const NO_RELAY_ON_MF: Caution = {
  text: 'Do not relay an alert on MF because it was heard; one on HF that nobody acknowledges within 5 minutes is relayed to a coast station',
  clause: 'IMO COMSAR/Circ.25; 47 CFR 80.1121(b), (c)',
};

const RELAY_CASE: Caution = {
  text: 'Only when the vessel in distress cannot alert herself and the master judges that more help is needed, never because an alert was heard',
  clause: 'IMO COMSAR/Circ.25; 47 CFR 80.1121(b), (c)',
};

const RELAY_BY_VOICE: Caution = {
  text: 'The relay follows in speech on channel 16',
  clause: 'ITU-R M.541 Annex 3, from memory',
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

const WITHOUT_PLACE: Readonly<Record<Lack, Caution>> = {
  'not-given': {
    text: 'No position was given, which does not mean that the vessel is far away',
    clause: 'ITU-R M.541-8 Annex 1',
  },
  'not-read': {
    text: 'A position was given but could not be read, which does not mean that the vessel is far away',
    clause: 'common practice, no source',
  },
  impossible: {
    text: 'What came as position is no place: take the position as not known, and do not guess it from the digits',
    clause: 'ITU-R M.493-15 Annex 1, position coordinates',
  },
};

function placeCautions(call: Extract<Call, { readonly position: unknown }>): Caution[] {
  return [call.position === null ? WITHOUT_PLACE[placeLack(call)] : COARSE];
}

function isDistress({ category, telecommand1, distressed, nature }: CallFields): boolean {
  const says = category === 112 || telecommand1 === 110 || telecommand1 === 112;
  return says || distressed !== null || nature !== null;
}
