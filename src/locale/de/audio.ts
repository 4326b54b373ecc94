import type { AudioTexts } from '../../audio/internal.ts';
import type { Translation } from '../catalogue.ts';

export const audio: Translation<AudioTexts> = {
  'audio-burst-unreadable': 'Aussendung bei Abtastwert {sample} war nicht lesbar[. {why}]',
  'audio-burst-overtaken':
    'Aussendung bei Abtastwert {sample} war nicht lesbar. Die nächste beginnt, bevor drei Zeichen empfangen waren',
  'audio-silent': ['Alle {count} Abtastwerte des Stroms waren 0', 'Ton'],
  'audio-no-samples': ['Strom endete vor dem ersten Abtastwert', 'Ton'],
  'audio-clipped': [
    'Ton ab Abtastwert {sample}: {clipped} von {count} Abtastwerten sind voll ausgesteuert. Den Eingangspegel senken',
    'Spitzen unter Vollaussteuerung',
  ],
  'audio-sample-unusable': [
    'Abtastwert {sample} ist {received} und gilt als 0: andere derselben Sekunde können auch betroffen sein',
    'eine endliche Zahl von -{limit} bis {limit}',
  ],
  'audio-wav-not-bytes': 'Eingabe ist kein Uint8Array',
  'audio-wav-not-wav': "Datei beginnt nicht mit 'RIFF', einer Größe und 'WAVE'",
  'audio-wav-header': "Chunk 'fmt ' fehlt oder ist kürzer als 16 Bytes",
  'audio-wav-no-data': "Chunk 'data' fehlt",
  'audio-wav-format': [
    'Abtastformat {format} mit {bits} Bit ist nicht lesbar',
    'ganze Zahlen mit 8, 16, 24 oder 32 Bit, oder Gleitkomma mit 32 oder 64',
  ],
  'audio-wav-channels': ['Kopf: {expected} erwartet, {received} erhalten', '1 bis {limit} Tonkanäle'],
  'audio-wav-rate': [
    'Abtastrate: {expected} Abtastwerte je Sekunde erwartet, {received} erhalten',
    '{least} bis {most}',
  ],
  'audio-wav-channel': [
    'Tonkanal {received} gibt es nicht in einer Datei mit {count} {count:sound-channels}',
    '0 bis {last}',
  ],
  'audio-wav-frame': ['Kopf gibt {received} Bytes je Frame an: {expected} wurden verwendet', '{bytes} Bytes'],
  'audio-wav-truncated':
    "Chunk 'data' gibt {declared} Bytes an und hat {received}: gelesen wurde, was da ist",
  'audio-wav-part-sample': "Chunk 'data' endet mitten in einem Abtastwert: {count} ganze wurden gelesen",
  'audio-wav-empty': "Chunk 'data' hat keine Abtastwerte",
  'audio-wav-size-unset': "Chunk 'data' gibt 0 Bytes an, und {received} folgen: sie wurden gelesen",
  'sound-channels.1': 'Kanal',
  'sound-channels.*': 'Kanälen',
};
