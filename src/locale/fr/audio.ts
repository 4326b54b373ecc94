import type { AudioTexts } from '../../audio/internal.ts';
import type { Translation } from '../catalogue.ts';

export const audio: Translation<AudioTexts> = {
  'audio-burst-unreadable': 'Émission à l’échantillon {sample} : illisible[. {why}]',
  'audio-burst-overtaken':
    'Émission à l’échantillon {sample} : illisible. La suivante commence avant la réception de trois caractères',
  'audio-silent': ['Les {count} échantillons du flux étaient tous 0', 'du son'],
  'audio-no-samples': ['Le flux s’est terminé avant son premier échantillon', 'du son'],
  'audio-clipped': [
    'Son depuis l’échantillon {sample} : {clipped} échantillons sur {count} sont à pleine échelle. Baisser le niveau d’entrée',
    'des crêtes sous la pleine échelle',
  ],
  'audio-sample-unusable': [
    'Échantillon {sample} : {received}, pris pour 0 ; d’autres de la même seconde peuvent l’être aussi',
    'un nombre fini de -{limit} à {limit}',
  ],
  'audio-wav-not-bytes': 'L’entrée n’est pas un Uint8Array',
  'audio-wav-not-wav': "Le fichier ne commence pas par 'RIFF', une taille et 'WAVE'",
  'audio-wav-header': "Bloc 'fmt ' absent ou plus court que 16 octets",
  'audio-wav-no-data': "Bloc 'data' absent",
  'audio-wav-format': [
    'Format d’échantillon {format} à {bits} bits : illisible',
    'entiers de 8, 16, 24 ou 32 bits, ou virgule flottante de 32 ou 64',
  ],
  'audio-wav-channels': ['En-tête : {expected} attendus, {received} reçu', '1 à {limit} canaux'],
  'audio-wav-rate': [
    'Fréquence d’échantillonnage : {expected} échantillons par seconde attendus, {received} reçu',
    '{least} à {most}',
  ],
  'audio-wav-channel': [
    'Canal {received} absent d’un fichier de {count} {count:sound-channels}',
    '0 à {last}',
  ],
  'audio-wav-frame': [
    'L’en-tête indique {received} octets par trame : {expected} ont été utilisés',
    '{bytes} octets',
  ],
  'audio-wav-truncated':
    "Bloc 'data' : {declared} octets annoncés, {received} présents ; ce qui est là a été lu",
  'audio-wav-part-sample': "Bloc 'data' terminé au milieu d’un échantillon : {count} entiers ont été lus",
  'audio-wav-empty': "Bloc 'data' sans échantillon",
  'audio-wav-size-unset': "Bloc 'data' : 0 octet annoncé, {received} suivent et ont été lus",
  'sound-channels.1': 'canal',
  'sound-channels.*': 'canaux',
};
