import type { Call } from '../call.ts';
import { awayFromVhf, isMfHf } from '../element/mf-hf.ts';
import { isMooredVesselAlarm } from '../element/moored-vessel.ts';
import { type Lack, placeLack } from '../element/place-symbols.ts';
import { isAshore } from '../element/station-identity.ts';
import type { CallFields } from '../fields.ts';

/** What to observe about a call. */
export interface Caution {
  readonly text: string;
  readonly clause: string;
}

/** Who reads a caution. */
export interface CautionReader {
  /** Own identity, nine digits. */
  readonly own?: string | undefined;
  /** Own coast station is designated to acknowledge distress by DSC; not unless stated. */
  readonly designated?: boolean | undefined;
}

/** The cautions that belong to a kind of call. Rules differ by country; trained operators and the licence decide. */
export function cautionsOf(call: Call, { own, designated = false }: CautionReader = {}): Caution[] {
  const cautions = onVhf(call, own, designated);
  if (!isMfHf(call)) return cautions;
  return cautions.map((caution) =>
    caution === PASS_ON ? PASS_ON_MF_HF : { ...caution, text: awayFromVhf(caution.text) },
  );
}

function onVhf(call: Call, own: string | undefined, designated: boolean): Caution[] {
  const mine = own !== undefined && call.from === own;
  const ashore = own !== undefined && isAshore(own);
  switch (call.kind) {
    case 'distress-alert':
      if (mine) return [IN_DANGER_ONLY, VOICE_FOLLOWS];
      if (ashore)
        return [...(designated ? [DESIGNATED_ANSWERS] : [WATCH, REPORT_ASHORE]), ...placeCautions(call)];
      return [WATCH, COAST_ANSWERS, PASS_ON, ...placeCautions(call)];
    case 'distress-acknowledgement':
      return [...(mine && !designated ? [WHO_ACKNOWLEDGES] : []), WATCH, ...placeCautions(call)];
    case 'distress-relay-acknowledgement':
      return [WATCH, ...placeCautions(call)];
    case 'distress-self-cancel':
      return [CANCEL_BY_VOICE, ...placeCautions(call)];
    case 'distress-relay':
      if (mine) return [...(ashore ? [] : [RELAY_CASES]), RELAY_BY_VOICE, ...placeCautions(call)];
      if (ashore)
        return [...(designated ? [DESIGNATED_ANSWERS] : [WATCH, REPORT_ASHORE]), ...placeCautions(call)];
      return [WATCH, RELAY_ANSWER, ...placeCautions(call)];
    case 'position-reply':
      return placeCautions(call);
    case 'unrecognised-call':
      return isDistress(call.asReceived) ? [MAY_BE_DISTRESS] : [];
    case 'individual-call':
      if (isMooredVesselAlarm(call)) return [MOORED_VESSEL];
      return call.category === 'distress' ? [WATCH] : [];
    default:
      return 'category' in call && call.category === 'distress' ? [WATCH] : [];
  }
}

// Radio Regulations 2024, ITU-R M.541-11 and MSC.1/Circ.1657 were read in restatements; 47 CFR part 80 itself.
const IN_DANGER_ONLY: Caution = {
  text: 'Only in grave and imminent danger, on the authority of the master, never as a test. Cancel a false alert at once by voice on channel 16',
  clause: 'RR 2024 Art. 32 and No. 32.53E; 47 CFR 80.335(a)',
};

const VOICE_FOLLOWS: Caution = {
  text: 'Send the distress call and message by voice on channel 16 as soon as the alert is out, acknowledged or not',
  clause: 'RR 2024 No. 32.13; ITU-R M.541-11 Annex 3 §1.4.1',
};

const WATCH: Caution = {
  text: 'Keep watch on channel 16, do not transmit over distress traffic, inform the master, and log the call',
  clause: 'ITU-R M.541-11 Annex 3; 47 CFR 80.1121(a)',
};

const COAST_ANSWERS: Caution = {
  text: 'Leave the DSC acknowledgement to the coastguard. If you are near the vessel and hear no coast station, acknowledge by voice on channel 16 and inform a coast station',
  clause: '47 CFR 80.1117(a), 80.1121(b)',
};

const DESIGNATED_ANSWERS: Caution = {
  text: 'Acknowledge without delay by DSC and by voice on channel 16 (in the United States leave the rescue co-ordination centre a short interval first). Then inform the rescue co-ordination centre, take charge of the traffic or hand it over, and log the call',
  clause: 'RR 2024 No. 32.27; 47 CFR 80.1119(a)',
};

const REPORT_ASHORE: Caution = {
  text: 'Report the call to the coastguard at once, by telephone or any other means. Only the coastguard, a rescue co-ordination centre or a designated coast station acknowledges by DSC',
  clause: '47 CFR 80.103(c), 80.1119(a)',
};

const WHO_ACKNOWLEDGES: Caution = {
  text: 'The coastguard, a rescue co-ordination centre or a designated coast station acknowledges an alert by DSC. A ship does so only to stop an alert that goes on, from a vessel in the vicinity, after consulting a rescue co-ordination centre or coast station',
  clause: 'MSC.1/Circ.1657; 47 CFR 80.103(c), 80.1121(d)',
};

const PASS_ON: Caution = {
  text: 'If nobody acknowledges within 5 minutes, pass the distress on to one coast station: by DSC where your rules allow it, by voice or by any other means (in United States waters not by DSC). Do not send a DSC relay to all ships or to an area for an alert that you received by DSC',
  clause: 'RR 2024 Nos. 32.16, 32.17, 32.19B and 32.19G; MSC.1/Circ.1657; 47 CFR 80.1117(a), 80.1121(b)',
};

const PASS_ON_MF_HF: Caution = {
  text: 'If nobody acknowledges within 5 minutes, pass the distress on to one coast station: on HF by a DSC relay, on MF by DSC where your rules allow it, by voice or by any other means. Do not send a DSC relay to all ships or to an area on MF for an alert that you received by DSC',
  clause: 'RR 2024 Nos. 32.16, 32.17, 32.19B and 32.19G; MSC.1/Circ.1657; 47 CFR 80.1121(b), (c)',
};

const RELAY_CASES: Caution = {
  text: 'A ship relays a distress that nobody acknowledged within 5 minutes, or of a vessel that cannot alert herself, or when a rescue co-ordination centre asks. Address one coast station. Address all ships only when the vessel cannot alert herself and the master judges that more help is needed',
  clause: 'RR 2024 Nos. 32.16 to 32.19H; MSC.1/Circ.1657; 47 CFR 80.1115(a), 80.1121(b)',
};

const RELAY_BY_VOICE: Caution = {
  text: 'Send the relay by voice on channel 16 as well',
  clause: 'RR 2024 Nos. 32.19E and 32.19F',
};

const CANCEL_BY_VOICE: Caution = {
  text: 'Cancel the alert by voice on channel 16 at once, with the time at which it was sent',
  clause: 'RR 2024 Nos. 32.53B to 32.53E; 47 CFR 80.335(a)',
};

const RELAY_ANSWER: Caution = {
  text: 'Acknowledge a relay from a coast station or another ship by voice on channel 16',
  clause: 'ITU-R M.541-11 Annex 3 §1.5 and §1.6',
};

const MAY_BE_DISTRESS: Caution = {
  text: 'Part of a call about distress was received: keep watch on channel 16',
  clause: 'common practice, no source',
};

const MOORED_VESSEL: Caution = {
  text: 'This may be the automatic alarm of a moored vessel (fire, flooding, collision, grounding, listing, sinking or adrift); it does not say which danger. Check the vessel or alert those who can. No DSC answer is provided for',
  clause: '47 CFR 80.179(e)',
};

const COARSE: Caution = {
  text: 'The position may be cut off to whole minutes, typed by hand or hours old: do not navigate by it alone',
  clause: 'ITU-R M.493-16 §8.1; 47 CFR 80.1073(b)(6) and 80.1085(c) (at least every 4 hours)',
};

const WITHOUT_PLACE: Readonly<Record<Lack, Caution>> = {
  'not-given': {
    text: 'No position was given; the vessel may still be near',
    clause: 'ITU-R M.541-11 Annex 1',
  },
  'not-read': {
    text: 'A position was given but could not be read; the vessel may still be near',
    clause: 'common practice, no source',
  },
  impossible: {
    text: 'The position received is impossible: treat it as unknown, and do not guess it from the digits',
    clause: 'ITU-R M.493-16 Annex 1, position coordinates',
  },
};

function placeCautions(call: Extract<Call, { readonly position: unknown }>): Caution[] {
  return [call.position === null ? WITHOUT_PLACE[placeLack(call)] : COARSE];
}

function isDistress({ category, telecommand1, distressed, nature }: CallFields): boolean {
  const says = category === 112 || telecommand1 === 110 || telecommand1 === 112;
  return says || distressed !== null || nature !== null;
}
