import type { BurstTexts } from '../../burst/internal.ts';
import type { Translation } from '../catalogue.ts';

export const burst: Translation<BurstTexts> = {
  'burst-input': [
    '{subject:burst-subject}[ {which}] : {expected} attendu, {received} reçu',
    '{accepted:burst-accepted}',
  ],
  'burst-not-found': ['Aucun appel lisible (sûr à {sure} % au mieux)', 'la mise en phase et ce qui la suit'],
  'burst-atis-not-found': 'Aucune émission ATIS trouvée',
  'burst-check-wrong': [
    'Caractère de contrôle d’erreur : {expected} attendu, {received} reçu. Montrer l’appel comme reçu avec erreur. Ne pas agir d’après lui',
    '{computed}',
  ],
  'burst-doubtful': [
    'Appel sûr à {received} seulement. Le montrer comme reçu avec erreur. Ne pas agir d’après lui',
    'sûr à 99 % au moins',
  ],
  'burst-repaired':
    'Appel sûr à {sure} %, mais pas reçu sans erreur. Ne jamais agir automatiquement d’après lui',
  'burst-format-once': [
    'Spécificateur de format d’un appel sans adresse : {expected} attendues, {received} reçue',
    'deux copies ou plus',
  ],
  'burst-cut-short': 'L’entrée se termine avant l’appel',
  'burst-expansion-broken': 'Extension après l’appel illisible : l’appel lui-même n’est pas touché',
  'burst-inverted': 'Chaque bit est inversé : les deux tonalités sont échangées au récepteur',
  'burst-expansion-layout': ['Extension : disposition {expected} attendue, {received} reçue', "'{usual}'"],
  'burst-subject.bits': 'Suite de bits',
  'burst-subject.bit': 'Bit n°',
  'burst-subject.soft-bits': 'Valeurs souples',
  'burst-subject.symbols': 'Suite de symboles',
  'burst-subject.symbol': 'Symbole n°',
  'burst-subject.calls': 'Appels',
  'burst-subject.atis': 'Bits ATIS',
  'burst-subject.option': 'L’option',
  'burst-accepted.bits': "un texte de '0', '1' et '?' ou un tableau de 0, 1 et null",
  'burst-accepted.bit': "0, 1 ou manquant ('?' dans un texte, null dans un tableau)",
  'burst-accepted.numbers': 'un tableau de nombres',
  'burst-accepted.symbols': 'un tableau d’entiers de 0 à 127 et null',
  'burst-accepted.symbol': 'un entier de 0 à 127 ou null',
  'burst-accepted.calls': 'un tableau de 1 à 5 appels',
  'burst-accepted.atis': 'un texte de 0 et 1',
  'burst-accepted.number': 'un nombre fini',
  'burst-accepted.kinds': 'bits, soft-bits ou symbols',
};
