import type { AudioTexts } from '../../audio/internal.ts';
import type { Translation } from '../catalogue.ts';

export const audio: Translation<AudioTexts> = {
  'audio-burst-unreadable': 'Uitzending bij monster {sample} was onleesbaar[. {why}]',
  'audio-burst-overtaken':
    'Uitzending bij monster {sample} was onleesbaar. De volgende begint voordat drie tekens ontvangen zijn',
  'audio-silent': ['Alle {count} monsters van de stroom waren 0', 'geluid'],
  'audio-no-samples': ['Stroom eindigde voor het eerste monster', 'geluid'],
  'audio-clipped': [
    'Geluid vanaf monster {sample}: {clipped} van {count} monsters zijn vol uitgestuurd. Zet het ingangsniveau lager',
    'pieken onder vol uitgestuurd',
  ],
  'audio-sample-unusable': [
    'Monster {sample} is {received} en geldt als 0: andere in dezelfde seconde mogelijk ook',
    'een eindig getal van -{limit} tot {limit}',
  ],
  'audio-wav-not-bytes': 'Invoer is geen Uint8Array',
  'audio-wav-not-wav': "Bestand begint niet met 'RIFF', een grootte en 'WAVE'",
  'audio-wav-header': "Blok 'fmt ' ontbreekt of is korter dan 16 bytes",
  'audio-wav-no-data': "Blok 'data' ontbreekt",
  'audio-wav-format': [
    'Monsterformaat {format} met {bits} bits is onleesbaar',
    'gehele getallen van 8, 16, 24 of 32 bits, of drijvende komma van 32 of 64',
  ],
  'audio-wav-channels': ['Kop: verwacht {expected}, gekregen {received}', '1 tot {limit} geluidskanalen'],
  'audio-wav-rate': [
    'Bemonsteringsfrequentie: verwacht {expected} monsters per seconde, gekregen {received}',
    '{least} tot {most}',
  ],
  'audio-wav-channel': [
    'Geluidskanaal {received} zit niet in een bestand met {count} {count:sound-channels}',
    '0 tot {last}',
  ],
  'audio-wav-frame': ['Kop geeft {received} bytes per frame: {expected} zijn gebruikt', '{bytes} bytes'],
  'audio-wav-truncated': "Blok 'data' meldt {declared} bytes en bevat er {received}: wat er is, is gelezen",
  'audio-wav-part-sample': "Blok 'data' eindigt midden in een monster: {count} hele zijn gelezen",
  'audio-wav-empty': "Blok 'data' bevat geen monsters",
  'audio-wav-size-unset': "Blok 'data' meldt 0 bytes en er volgen {received}: die zijn gelezen",
  'sound-channels.1': 'kanaal',
  'sound-channels.*': 'kanalen',
};
