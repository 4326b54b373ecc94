import type { SpokenStation } from '../call/index.ts';
import { blank, given, type Phrases } from './phrases.ts';
import { type Situation, type SpokenLine, type SpokenScript, script } from './script.ts';

/** The urgency call and message: Radio Regulations No. 33.12. */
export function panPan(situation: Situation<'pan-pan'>, own: SpokenStation, say: Phrases): SpokenScript {
  const { position, time, medicalTransport = false } = situation;
  const at = time == null ? '' : ` at ${say.time(time)}`;
  const medical: SpokenLine[] = medicalTransport
    ? [{ say: 'MEDICAL', note: 'As the French word médical; for protected medical transports only' }]
    : [];
  return script({
    title: 'Urgency call and message',
    channel: situation.channel ?? '16',
    lines: [
      { say: 'PAN PAN, PAN PAN, PAN PAN', note: 'As the French word panne' },
      ...medical,
      ...stations(situation.to, own, say),
      { say: `My position ${say.position(position)}${at}` },
      { say: given(situation.message) ?? blank('message: what is wrong, and what help is needed') },
      { say: 'OVER' },
    ],
    caution:
      'For a very urgent message about the safety of a vessel or a person, on the authority of the master; listen for at least 3 minutes afterwards on the channel used. Cancel it when it no longer applies. In grave and imminent danger send a MAYDAY',
    clause: 'RR 2024 Nos. 33.8 to 33.12 (medical transports: 33.20), unverified; 47 CFR 80.327(f)',
  });
}

/** The safety call, and its message or the channel where it follows: Radio Regulations No. 33.35. */
export function securite(situation: Situation<'securite'>, own: SpokenStation, say: Phrases): SpokenScript {
  const message = given(situation.message);
  const { announced = false } = situation;
  const elsewhere = !announced && situation.channel != null && situation.channel !== '16';
  const last: SpokenLine[] = elsewhere
    ? [{ say: `For the message listen on VHF channel ${say.digits(situation.channel)}` }, { say: 'OUT' }]
    : [{ say: message ?? blank('message: what, where, and until when') }, { say: 'OUT' }];
  return script({
    title: 'Safety call and message',
    channel: announced ? (situation.channel ?? '16') : '16',
    lines: [
      { say: 'SECURITE, SECURITE, SECURITE', note: 'As the French word sécurité' },
      ...stations(situation.to, own, say),
      ...last,
      ...(elsewhere
        ? [
            {
              say: message ?? blank('message: what, where, and until when'),
              note: 'On that channel, after the same call',
            },
          ]
        : []),
    ],
    caution: 'For navigational and weather warnings; send a long message on a working channel',
    clause: 'RR 2024 Nos. 33.32 to 33.35, unverified',
  });
}

function stations(to: SpokenStation | null | undefined, own: SpokenStation, say: Phrases): SpokenLine[] {
  return [
    { say: to == null ? 'ALL STATIONS, ALL STATIONS, ALL STATIONS' : say.nameThrice(to) },
    { say: 'THIS IS' },
    { say: say.nameThrice(own) },
    { say: say.callSign(own) },
    { say: say.mmsi(own), note: 'If the call was announced by DSC' },
  ];
}
