import type { SpokenStation } from '../call/index.ts';
import type { TimeOfDay } from '../position/index.ts';
import { blank, called, given, natureReported, natureSaid, type Phrases, thisIs } from './phrases.ts';
import {
  line,
  type Situation,
  type Situations,
  type SpokenLine,
  type SpokenScript,
  script,
} from './script.ts';
import { type Plain, text } from './texts.ts';

// Forms: Radio Regulations 2024 Article 32, read in restatements. Japan, Operation Regulations Art. 75 to 81-8, agrees.

/** The distress call and message: RR Nos. 32.13C and 32.13D. */
export function mayday(situation: Situation<'mayday'>, own: SpokenStation, say: Phrases): SpokenScript {
  return script({
    title: 'speech-title-distress',
    channel: '16',
    lines: [
      line('MAYDAY, MAYDAY, MAYDAY', 'speech-say-mayday-thrice', 'speech-note-at-once'),
      ...thisIs(own, say),
      line(say.mmsi(own), 'speech-own-mmsi', 'speech-note-alerted'),
      line(`MAYDAY, ${identified(own, say)}`, 'speech-own-message', 'speech-note-message'),
      ...message(situation, 'own', say),
      line('OVER', 'speech-over', 'speech-note-repeat'),
    ],
    caution: 'speech-only-in-danger',
    clause: 'RR 2024 Nos. 32.13, 32.13C and 32.13D; ITU-R M.541-11 Annex 3 §1.4.1',
  });
}

/** The relay of a distress: RR No. 32.19E, its message No. 32.19F. */
export function maydayRelay(
  situation: Situation<'mayday-relay'>,
  own: SpokenStation,
  say: Phrases,
): SpokenScript {
  const { distressed, to } = situation;
  return script({
    title: 'speech-title-relay',
    channel: '16',
    lines: [
      line('MAYDAY RELAY, MAYDAY RELAY, MAYDAY RELAY', 'speech-say-relay-thrice'),
      called(to, say, 'speech-note-coast-first'),
      ...thisIs(own, say),
      line(say.mmsi(own), 'speech-own-mmsi', 'speech-note-alerted'),
      distressed === null
        ? line('MAYDAY, unidentified vessel', 'speech-unidentified-message', 'speech-note-message')
        : line(
            `MAYDAY, ${identified(distressed, say)}`,
            'speech-vessel-message',
            'speech-note-vessel-message',
          ),
      ...message(situation, 'vessel', say),
      line('OVER', 'speech-over'),
    ],
    caution: 'speech-when-to-relay',
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
  const { distressed, answered = false } = situation;
  return script({
    title: 'speech-title-received',
    channel: '16',
    lines: [
      line('MAYDAY', 'speech-say-mayday'),
      line(say.nameThrice(distressed), 'speech-vessel-thrice', 'speech-note-vessel'),
      line(say.signOrMmsi(distressed), 'speech-vessel-sign'),
      ...thisIs(own, say),
      line('RECEIVED MAYDAY', 'speech-received', designated ? undefined : 'speech-note-inform'),
    ],
    caution: designated
      ? fromDesignated(answered)
      : answered
        ? 'speech-already-acknowledged'
        : 'speech-acknowledge-when-near',
    clause: designated
      ? 'RR 2024 No. 32.28; ITU-R M.541-11 Annex 3; 47 CFR 80.1119(a)'
      : 'RR 2024 Nos. 32.16 and 32.28; MSC.1/Circ.1657; 47 CFR 80.1117(c), 80.1121(b)',
  });
}

/** A designated coast station answers first and takes charge of the traffic. */
function fromDesignated(answered: boolean): Plain {
  return answered ? 'speech-coast-listens' : 'speech-coast-acknowledges';
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
    title: 'speech-title-relay-received',
    channel: '16',
    lines: [
      line('MAYDAY RELAY', 'speech-say-relay'),
      line(say.nameThrice(situation.from), 'speech-sender-thrice', 'speech-note-relay-sender'),
      line('THIS IS', 'speech-say-this-is'),
      line(say.nameThrice(own), 'speech-own-thrice'),
      line('RECEIVED MAYDAY RELAY', 'speech-relay-received'),
    ],
    caution: designated ? fromDesignated(false) : 'speech-relay-when-near',
    clause: 'ITU-R M.541-11 Annex 3 §1.5 and §1.6',
  });
}

/** The cancellation of a false alert: RR No. 32.53E. */
export function cancelAlert(time: TimeOfDay | null, own: SpokenStation, say: Phrases): SpokenScript {
  return script({
    title: 'speech-title-cancel',
    channel: '16',
    lines: [
      called(null, say, 'speech-note-stop-repeats'),
      ...thisIs(own, say),
      line(say.mmsi(own), 'speech-own-mmsi'),
      line(`PLEASE CANCEL MY DISTRESS ALERT OF ${say.time(time)}`, 'speech-cancel'),
      line('OUT', 'speech-out', 'speech-note-keep-watch'),
    ],
    caution: 'speech-cancel-at-once',
    clause: 'RR 2024 Nos. 32.53B to 32.53E and Resolution 349 (Rev.WRC-23); 47 CFR 80.335(a)',
  });
}

/** The message of the own vessel, and that of another. */
const MESSAGES = {
  own: {
    opening: 'My position',
    position: 'speech-own-position',
    timed: 'speech-own-position-time',
    natures: natureSaid,
    nature: 'speech-own-nature',
    request: 'I require immediate assistance',
    assistance: 'speech-own-assistance',
  },
  vessel: {
    opening: 'Position',
    position: 'speech-vessel-position',
    timed: 'speech-vessel-position-time',
    natures: natureReported,
    nature: 'speech-vessel-nature',
    request: 'Vessel requires immediate assistance',
    assistance: 'speech-vessel-assistance',
  },
} as const;

function message(distress: Situations['mayday'], whose: keyof typeof MESSAGES, say: Phrases): SpokenLine[] {
  const words = MESSAGES[whose];
  const { position, time, nature, personsOnBoard } = distress;
  const at = time == null ? '' : ` at ${say.time(time)}`;
  const named = nature == null ? blank('nature of distress') : words.natures[nature];
  const persons = personsOnBoard == null ? blank('number') : say.digits(String(personsOnBoard));
  const assistance = given(distress.assistance);
  const information = given(distress.information);
  return [
    line(`${words.opening} ${say.position(position)}${at}`, time == null ? words.position : words.timed),
    line(named, text(words.nature, nature == null || named.startsWith('[') ? {} : { nature })),
    assistance === null ? line(words.request, words.assistance) : line(assistance, 'speech-other-assistance'),
    line(`${persons} ${personsOnBoard === 1 ? 'person' : 'persons'} on board`, 'speech-persons'),
    ...(information === null ? [] : [line(information, 'speech-information')]),
  ];
}

function identified(station: SpokenStation, say: Phrases): string {
  return `${say.name(station)}, ${say.callSign(station)}, ${say.mmsi(station)}`;
}
