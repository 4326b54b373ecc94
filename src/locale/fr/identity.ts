import type { IdentityTexts } from '../../identity/internal.ts';
import type { Translation } from '../catalogue.ts';

export const identity: Translation<IdentityTexts> = {
  'identity-empty': ['Identité : vide', '9 chiffres'],
  'identity-not-text': ['Identité : ce n’est pas du texte', '9 chiffres'],
  'identity-number': [
    'Identité : c’est un nombre ; passer du texte, les nombres perdent les zéros de tête[ ; peut-être {suggestion}]',
    '9 chiffres',
  ],
  'identity-too-long': ['Identité : {count} caractères', '9 chiffres'],
  'identity-two-numbers': ['Identité : contient deux numéros[ ; peut-être {suggestion}]', '9 chiffres'],
  'identity-sign': ['Identité : précédée d’un signe[ ; peut-être {suggestion}]', '9 chiffres'],
  'identity-scientific': [
    'Identité : notation avec exposant, des chiffres peuvent manquer[ ; peut-être {suggestion}]',
    '9 chiffres',
  ],
  'identity-decimal': ['Identité : contient des décimales[ ; peut-être {suggestion}]', '9 chiffres'],
  'identity-imo-number': ['Identité : ressemble à un numéro OMI, pas à un MMSI', '9 chiffres'],
  'identity-call-sign': ['Identité : ressemble à un indicatif d’appel', '9 chiffres'],
  'identity-letter': [
    'Identité : contient des lettres qui ressemblent à des chiffres[ ; peut-être {suggestion}]',
    '9 chiffres',
  ],
  'identity-character': [
    'Identité : contient le caractère {character}[ ; peut-être {suggestion}]',
    '9 chiffres',
  ],
  'identity-placeholder': ['Identité : numéro d’exemple', '9 chiffres'],
  'identity-unassigned': ['Identité : aucun format attribué ne commence par {start}', '9 chiffres'],
  'identity-leading-zeros': [
    'Identité : il manque des chiffres, les tableurs suppriment les zéros de tête[ ; peut-être {suggestion}]',
    '9 chiffres',
  ],
  'identity-call-address': [
    'Identité : dix chiffres, la forme utilisée à l’émission[ ; peut-être {suggestion}]',
    '9 chiffres',
  ],
  'identity-atis': [
    'Identité : ressemble à un code ATIS de navigation intérieure[ ; peut-être {suggestion}]',
    '9 chiffres',
  ],
  'identity-atis-call-sign': [
    'Identité : ressemble à un code ATIS tiré d’un indicatif d’appel',
    '9 chiffres',
  ],
  'identity-atis-shape': [
    'Code ATIS : dix chiffres attendus, d’abord 9 et un MID',
    '10 chiffres, le premier étant 9',
  ],
  'identity-digit-count': ['Identité : il faut 9 chiffres, il y en a {count}', '9 chiffres'],
  'identity-address-shape': ['Adresse d’appel : 10 chiffres attendus', '10 chiffres'],
  'identity-use': '{reason:use}',
  'identity-own-called': 'Adresse : c’est la propre identité de la station, une autre station est attendue',
  'identity-kind': [
    'Identité : {expected} attendu, {kind:identity-kind} reçu',
    '{accepted:identity-kind& ou }',
  ],
  'identity-repeated-digit': 'Identité : neuf chiffres identiques',
  'identity-tenth-digit':
    'Adresse d’appel : se termine par {digit} et non par 0, plusieurs appareils partagent une identité ou la réception était altérée',
  'identity-address-unassigned': 'Adresse d’appel : contient {digits}, qui n’a aucun format attribué',
  'identity-station': '{reason:station}',
  'identity-mid-unallocated':
    'Identité : le MID {mid} n’est attribué à aucun pays dans la liste de {edition}',
  'identity-call-sign-digits':
    'Indicatif d’appel : neuf chiffres comme un MMSI, il doit aller dans un autre champ',
  'identity-call-sign-shape':
    'Indicatif d’appel {received} : ne ressemble pas à celui d’un navire, vérifier la licence',
  'identity-call-sign-type': 'Indicatif d’appel : texte attendu, {type} reçu',
  'identity-invisible': 'Identité lue sans les caractères invisibles',
  'identity-digits': 'Identité lue avec les chiffres d’une autre écriture',
  'identity-blanks': 'Identité lue sans les espaces',
  'identity-apostrophe': 'Identité lue sans l’apostrophe',
  'identity-label': 'Identité lue sans l’étiquette',
  'identity-thousands': 'Identité lue sans les virgules',
  'identity-separators': 'Identité lue sans les séparateurs',
  'identity-kind.ship': 'navire',
  'identity-kind.ship-group': 'groupe de navires',
  'identity-kind.coast': 'station côtière',
  'identity-kind.coast-all-national': 'toutes les stations côtières d’un pays',
  'identity-kind.coast-all': 'toutes les stations côtières',
  'identity-kind.sar-aircraft': 'aéronef',
  'identity-kind.sar-aircraft-all-national': 'tous les aéronefs d’un pays',
  'identity-kind.craft': 'embarcation d’un navire',
  'identity-kind.aton': 'aide à la navigation',
  'identity-kind.handheld': 'portatif',
  'identity-kind.ais-sart': 'émetteur AIS-SART',
  'identity-kind.mob': 'appareil d’homme à la mer',
  'identity-kind.epirb-ais': 'radiobalise EPIRB-AIS',
  'identity-kind.amrd-b': 'appareil radio autonome',
  'use.own-not-coast':
    'Identité propre : ce n’est pas une station côtière, les leurs commencent par 00 et un MID',
  'use.own-group':
    'Identité propre : commence par 0, signe d’un groupe ; celle d’un navire commence par 2 à 7',
  'use.own-coast':
    'Identité propre : commence par 00, signe des stations côtières ; celle d’un navire commence par 2 à 7',
  'use.own-aircraft-group': 'Identité propre : groupe d’aéronefs, une seule station est attendue',
  'use.own-ais': 'Identité propre : appartient à un appareil AIS, qui ne participe pas aux appels',
  'use.distressed':
    'Navire en détresse : identité qu’aucun navire, aéronef ou personne n’utilise dans les appels',
  'use.called-group':
    'Adresse : c’est un groupe, à joindre par un appel de groupe et non par un appel individuel',
  'use.called-single':
    'Adresse : ce n’est pas un groupe, l’identité d’un groupe de navires commence par un seul 0',
  'use.called-mob': 'Adresse : appareil d’homme à la mer, qui ne prend pas les appels ordinaires',
  'use.called-ais': 'Adresse : appartient à un appareil AIS, qui ne participe pas aux appels',
  'station.uk-portable':
    'Identité propre : commence par 2359, en général un portatif britannique, vérifier la licence',
  'station.ship-handheld':
    'Identité propre : celle d’un navire ; selon le pays, un portatif peut l’utiliser ou non, vérifier la licence',
  'station.handheld-fixed': 'Identité propre : pour un portatif, mais cet appareil est fixe',
  'station.craft': 'Identité propre : pour une annexe ou un engin de sauvetage, pas pour la radio du navire',
  'station.mob': 'Identité propre : pour un appareil d’homme à la mer, ce que cet appareil n’est pas',
  'station.aircraft': 'Identité propre : pour un aéronef, mais cet appareil est à bord d’un navire',
};
