import type { SpokenStation } from '../call/index.ts';
import type { TimeOfDay } from '../position/index.ts';
import { blank, given, natureReported, natureSaid, type Phrases } from './phrases.ts';
import { type Situation, type SpokenDistress, type SpokenLine, type SpokenScript, script } from './script.ts';

// Forms: Radio Regulations 2024 Article 32, read in restatements. Japan, Operation Regulations Art. 75 to 81-8, agrees.

/** The distress call and message: RR Nos. 32.13C and 32.13D. */
export function mayday(situation: Situation<'mayday'>, own: SpokenStation, say: Phrases): SpokenScript {
  return script({
    title: 'Distress call and message',
    channel: '16',
    lines: [
      {
        say: 'MAYDAY, MAYDAY, MAYDAY',
        note: 'Full power; as soon as the alert is out, at the latest about 15 seconds later, acknowledged or not',
      },
      { say: 'THIS IS' },
      { say: say.nameThrice(own) },
      { say: say.callSign(own) },
      { say: say.mmsi(own), note: 'If an alert was sent by DSC' },
      {
        say: `MAYDAY, ${say.name(own)}, ${say.callSign(own)}, ${say.mmsi(own)}`,
        note: 'The message begins',
      },
      ...message(situation, 'My position', natureSaid, 'I require immediate assistance', say),
      { say: 'OVER', note: 'Release the key and listen; repeat from the beginning if nobody answers' },
    ],
    caution:
      'Only when a vessel or person is in grave and imminent danger and needs immediate assistance, on the authority of the master',
    clause: 'RR 2024 Nos. 32.13, 32.13C and 32.13D; ITU-R M.541-11 Annex 3 §1.4.1',
  });
}

/** The relay of a distress: RR No. 32.19E, its message No. 32.19F. */
export function maydayRelay(
  situation: Situation<'mayday-relay'>,
  own: SpokenStation,
  say: Phrases,
): SpokenScript {
  const { distressed } = situation;
  const { to } = situation;
  const called: SpokenLine =
    to == null
      ? {
          say: 'ALL STATIONS, ALL STATIONS, ALL STATIONS',
          note: 'Or the name of one coast station three times: try a coast station first',
        }
      : { say: say.nameThrice(to) };
  const vessel: SpokenLine =
    distressed === null
      ? { say: 'MAYDAY, unidentified vessel', note: 'The message begins' }
      : {
          say: `MAYDAY, ${say.name(distressed)}, ${say.callSign(distressed)}, ${say.mmsi(distressed)}`,
          note: 'The vessel in distress; the message begins',
        };
  return script({
    title: 'Distress relay',
    channel: '16',
    lines: [
      { say: 'MAYDAY RELAY, MAYDAY RELAY, MAYDAY RELAY' },
      called,
      { say: 'THIS IS' },
      { say: say.nameThrice(own) },
      { say: say.callSign(own) },
      { say: say.mmsi(own), note: 'If the initial alert was sent by DSC' },
      vessel,
      ...message(situation, 'Position', natureReported, 'Vessel requires immediate assistance', say),
      { say: 'OVER' },
    ],
    caution:
      'Relay when nobody acknowledged the alert or the MAYDAY call within about 5 minutes, to a coast station first; when you see or know that a vessel in distress cannot call; or when a rescue co-ordination centre asks',
    clause: 'RR 2024 Nos. 32.16 to 32.19F; 47 CFR 80.1115(a), 80.1117(a), 80.1121(b)',
  });
}

/**
 * The acknowledgement of a distress by voice: RR No. 32.28 gives name with call sign, MMSI or other identification;
 * 47 CFR 80.1117(c) and Japan, Operation Regulations Art. 81-8(2), each identity three times.
 */
export function receivedMayday(
  situation: Situation<'received-mayday'>,
  own: SpokenStation,
  say: Phrases,
  designated: boolean,
): SpokenScript {
  return script({
    title: 'Acknowledgement of a distress',
    channel: '16',
    lines: [
      { say: 'MAYDAY' },
      { say: say.nameThrice(situation.distressed), note: 'The vessel in distress' },
      { say: say.signOrMmsi(situation.distressed) },
      { say: 'THIS IS' },
      { say: say.nameThrice(own) },
      { say: say.callSign(own) },
      {
        say: 'RECEIVED MAYDAY',
        ...(designated ? {} : { note: 'Then inform a coast station or rescue co-ordination centre' }),
      },
    ],
    caution: designated
      ? fromDesignated(situation.answered)
      : situation.answered
        ? `Listen first: the distress has been acknowledged. Speak only if you can help, without interrupting the traffic; ${THEN_OBEY}`
        : `Listen first. If you are near the vessel and hear no coast station, acknowledge; ${THEN_OBEY}. If nobody acknowledges within 5 minutes, pass the distress on to a coast station by any means`,
    clause: designated
      ? 'RR 2024 No. 32.28; ITU-R M.541-11 Annex 3; 47 CFR 80.1119(a)'
      : 'RR 2024 Nos. 32.16 and 32.28; MSC.1/Circ.1657; 47 CFR 80.1117(c), 80.1121(b)',
  });
}

const THEN_OBEY = 'then listen, and obey the station that controls the traffic';

/** A designated coast station answers first and takes charge of the traffic. */
function fromDesignated(answered = false): string {
  return answered
    ? 'The distress has been acknowledged: listen, and take charge of the traffic when the station that controls it or the rescue co-ordination centre asks'
    : 'Without delay (in the United States leave the rescue co-ordination centre a short interval first); then inform the rescue co-ordination centre, and take charge of the traffic or hand it over';
}

/**
 * The acknowledgement of a relay by voice, with the words MAYDAY RELAY: ITU-R M.541-11 Annex 3 §1.5, of a relay from
 * another ship §1.6.
 */
export function receivedMaydayRelay(
  situation: Situation<'received-mayday-relay'>,
  own: SpokenStation,
  say: Phrases,
  designated: boolean,
): SpokenScript {
  return script({
    title: 'Acknowledgement of a distress relay',
    channel: '16',
    lines: [
      { say: 'MAYDAY RELAY' },
      { say: say.nameThrice(situation.from), note: 'The station that sent the relay' },
      { say: 'THIS IS' },
      { say: say.nameThrice(own) },
      { say: 'RECEIVED MAYDAY RELAY' },
    ],
    caution: designated
      ? fromDesignated()
      : 'Only if you are near enough to help; otherwise keep watch on channel 16',
    clause: 'ITU-R M.541-11 Annex 3 §1.5 and §1.6',
  });
}

/** The cancellation of a false alert: RR No. 32.53E. */
export function cancelAlert(time: TimeOfDay | null, own: SpokenStation, say: Phrases): SpokenScript {
  return script({
    title: 'Cancellation of a false alert',
    channel: '16',
    lines: [
      {
        say: 'ALL STATIONS, ALL STATIONS, ALL STATIONS',
        note: 'First stop the repeats: cancel on the radio; if it gives no guidance, switch it off, and on again after 10 seconds',
      },
      { say: 'THIS IS' },
      { say: say.nameThrice(own) },
      { say: say.callSign(own) },
      { say: say.mmsi(own) },
      { say: `PLEASE CANCEL MY DISTRESS ALERT OF ${say.time(time)}` },
      { say: 'OUT', note: 'Keep watch on channel 16 and answer any station that calls' },
    ],
    caution:
      'At once, on every band on which the alert was sent. If no coast station answers, inform one by other means',
    clause: 'RR 2024 Nos. 32.53B to 32.53E and Resolution 349 (Rev.WRC-23); 47 CFR 80.335(a)',
  });
}

function message(
  distress: SpokenDistress,
  opening: string,
  natures: typeof natureSaid,
  assistance: string,
  say: Phrases,
): SpokenLine[] {
  const at = distress.time == null ? '' : ` at ${say.time(distress.time)}`;
  const nature = distress.nature == null ? blank('nature of distress') : natures[distress.nature];
  const persons =
    distress.personsOnBoard == null ? blank('number') : say.digits(String(distress.personsOnBoard));
  const information = given(distress.information);
  return [
    { say: `${opening} ${say.position(distress.position)}${at}` },
    { say: nature },
    { say: given(distress.assistance) ?? assistance },
    { say: `${persons} ${distress.personsOnBoard === 1 ? 'person' : 'persons'} on board` },
    ...(information === null ? [] : [{ say: information }]),
  ];
}
