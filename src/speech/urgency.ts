import type { SpokenStation } from '../call/index.ts';
import { blank, called, given, type Phrases, thisIs } from './phrases.ts';
import { line, type Situation, type SpokenScript, script } from './script.ts';
import { text } from './texts.ts';

/** The urgency call and message: Radio Regulations No. 33.12. */
export function panPan(situation: Situation<'pan-pan'>, own: SpokenStation, say: Phrases): SpokenScript {
  const { position, time, medicalTransport = false } = situation;
  const at = time == null ? '' : ` at ${say.time(time)}`;
  return script({
    title: 'speech-title-urgency',
    channel: situation.channel ?? '16',
    lines: [
      line('PAN PAN, PAN PAN, PAN PAN', 'speech-say-pan-pan', 'speech-note-panne'),
      ...(medicalTransport ? [line('MEDICAL', 'speech-say-medical', 'speech-note-medical')] : []),
      called(situation.to, say),
      ...thisIs(own, say),
      line(say.mmsi(own), 'speech-own-mmsi', 'speech-note-announced'),
      line(
        `My position ${say.position(position)}${at}`,
        time == null ? 'speech-own-position' : 'speech-own-position-time',
      ),
      line(
        given(situation.message) ?? blank('message: what is wrong, and what help is needed'),
        'speech-urgent-message',
      ),
      line('OVER', 'speech-over'),
    ],
    caution: 'speech-urgency',
    clause: 'RR 2024 Nos. 33.8 to 33.12 (medical transports: 33.20), unverified; 47 CFR 80.327(f)',
  });
}

/** The safety call, and its message or the channel where it follows: Radio Regulations No. 33.35. */
export function securite(situation: Situation<'securite'>, own: SpokenStation, say: Phrases): SpokenScript {
  const message = given(situation.message);
  const { announced = false } = situation;
  const elsewhere = announced || situation.channel === '16' ? null : situation.channel;
  const warning = message ?? blank('message: what, where, and until when');
  const out = line('OUT', 'speech-out');
  return script({
    title: 'speech-title-safety',
    channel: announced ? (situation.channel ?? '16') : '16',
    lines: [
      line('SECURITE, SECURITE, SECURITE', 'speech-say-securite', 'speech-note-securite'),
      called(situation.to, say),
      ...thisIs(own, say),
      line(say.mmsi(own), 'speech-own-mmsi', 'speech-note-announced'),
      ...(elsewhere
        ? [
            line(
              `For the message listen on VHF channel ${say.digits(elsewhere)}`,
              text('speech-safety-channel', { channel: elsewhere }),
            ),
            out,
            line(warning, 'speech-safety-message', 'speech-note-on-that-channel'),
          ]
        : [line(warning, 'speech-safety-message'), out]),
    ],
    caution: 'speech-safety',
    clause: 'RR 2024 Nos. 33.32 to 33.35, unverified',
  });
}
