import type { SpokenStation } from '../call/index.ts';
import { isAshore } from '../call/internal.ts';
import type { TimeOfDay } from '../position/index.ts';
import { blank, given, natureReported, natureSaid, type Phrases } from './phrases.ts';
import {
  type MaydayRelaySituation,
  type MaydaySituation,
  type ReceivedMaydayRelaySituation,
  type ReceivedMaydaySituation,
  type SpokenDistress,
  type SpokenLine,
  type SpokenScript,
  script,
} from './script.ts';

/** The distress call and message: Radio Regulations Nos. 32.13C and 32.13D. */
export function mayday(situation: MaydaySituation, own: SpokenStation, say: Phrases): SpokenScript {
  return script({
    title: 'Distress call and message',
    channel: '16',
    lines: [
      {
        say: 'MAYDAY, MAYDAY, MAYDAY',
        note: 'Full power; about 15 seconds after the alert, answered or not',
      },
      { say: 'THIS IS' },
      { say: say.nameThrice(own) },
      { say: say.callSign(own) },
      { say: say.mmsi(own), note: 'Where the alert went out by selective calling' },
      {
        say: `MAYDAY, ${say.name(own)}, ${say.callSign(own)}, ${say.mmsi(own)}`,
        note: 'Here the message begins',
      },
      ...message(situation, 'My position', natureSaid, 'I require immediate assistance', say),
      { say: 'OVER', note: 'Release the key and listen; repeat from the beginning when nobody answers' },
    ],
    caution:
      'Only where a vessel or person is in grave and imminent danger and needs immediate assistance, by order of the person responsible for the vessel',
    clause: 'Radio Regulations Nos. 32.13C and 32.13D, from memory; 15 s: ITU-R M.541 Annex 3',
  });
}

/** The relay of a distress: Radio Regulations No. 32.19D. */
export function maydayRelay(situation: MaydayRelaySituation, own: SpokenStation, say: Phrases): SpokenScript {
  const { distressed } = situation;
  const called =
    situation.to == null ? 'ALL STATIONS, ALL STATIONS, ALL STATIONS' : say.nameThrice(situation.to);
  const vessel: SpokenLine =
    distressed === null
      ? { say: 'MAYDAY, unidentified vessel', note: 'Here the message begins' }
      : {
          say: `MAYDAY, ${say.name(distressed)}, ${say.callSign(distressed)}, ${say.mmsi(distressed)}`,
          note: 'The vessel in distress; here the message begins',
        };
  return script({
    title: 'Distress relay',
    channel: '16',
    lines: [
      { say: 'MAYDAY RELAY, MAYDAY RELAY, MAYDAY RELAY' },
      { say: called },
      { say: 'THIS IS' },
      { say: say.nameThrice(own) },
      { say: say.callSign(own) },
      { say: say.mmsi(own), note: 'Where the relay went out by selective calling' },
      vessel,
      ...message(situation, 'Position', natureReported, 'Vessel requires immediate assistance', say),
      { say: 'OVER' },
    ],
    caution:
      'Only when the vessel in distress cannot alert herself and the person responsible for the relaying vessel judges that more help is needed; never merely because an alert was heard',
    clause: 'Radio Regulations Nos. 32.16 to 32.19F, from memory; cases: IMO COMSAR/Circ.25, 47 CFR 80.1121',
  });
}

/** The acknowledgement of a distress by voice: 47 CFR 80.1117(c), ITU-R M.541 Annex 3. */
export function receivedMayday(
  situation: ReceivedMaydaySituation,
  own: SpokenStation,
  say: Phrases,
): SpokenScript {
  const ashore = isAshore(own.mmsi ?? null);
  return script({
    title: 'Acknowledgement of a distress',
    channel: '16',
    lines: [
      { say: 'MAYDAY' },
      { say: say.nameThrice(situation.distressed), note: 'The vessel in distress' },
      { say: 'THIS IS' },
      { say: say.nameThrice(own) },
      { say: 'RECEIVED MAYDAY', ...(ashore ? {} : { note: 'Then tell a coast station or rescue centre' }) },
    ],
    caution: ashore
      ? fromAshore(situation.answered)
      : situation.answered
        ? 'Listen first: the alert has been answered already. Speak only when own vessel can help, without breaking into the traffic; then listen, and obey the station that leads it'
        : 'Listen first: a coast station answers before ships do. Near the vessel and with no coast station heard within 5 minutes, answer; then listen, and obey the station that leads the traffic',
    clause: ashore ? COAST : '47 CFR 80.1117(c), 80.1121(b); ITU-R M.541 Annex 3; IMO COMSAR/Circ.25',
  });
}

const COAST = 'ITU-R M.541 Annex 3, from memory';

/** A coast station answers first, and has the traffic in hand: ITU-R M.541 Annex 3, from memory. */
function fromAshore(answered = false): string {
  return answered
    ? 'The alert has been answered already: listen, and take up the traffic when the station that leads it or the rescue co-ordination centre asks'
    : 'At once; then lead the traffic, or pass it to the rescue co-ordination centre';
}

/** The acknowledgement of a coast station's relay by voice: ITU-R M.541 Annex 3; deviation: D-call-13. */
export function receivedMaydayRelay(
  situation: ReceivedMaydayRelaySituation,
  own: SpokenStation,
  say: Phrases,
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
    caution: isAshore(own.mmsi ?? null)
      ? fromAshore()
      : 'Only when near enough to help; otherwise keep listening on channel 16',
    clause: COAST,
  });
}

/** The cancellation of a false alert: Radio Regulations No. 32.53E. */
export function cancelAlert(time: TimeOfDay | null, own: SpokenStation, say: Phrases): SpokenScript {
  return script({
    title: 'Cancellation of a false alert',
    channel: '16',
    lines: [
      {
        say: 'ALL STATIONS, ALL STATIONS, ALL STATIONS',
        note: 'Reset the set first, so that the alert is not repeated',
      },
      { say: 'THIS IS' },
      { say: say.nameThrice(own) },
      { say: say.callSign(own) },
      { say: say.mmsi(own) },
      { say: `PLEASE CANCEL MY DISTRESS ALERT OF ${say.time(time)}` },
      { say: 'OUT', note: 'Stay on channel 16 and answer whoever calls' },
    ],
    caution:
      'At once, and on every band where the alert went out; when no coast station answers, tell one by other means',
    clause: 'Radio Regulations No. 32.53E, from memory; 47 CFR 80.335',
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
