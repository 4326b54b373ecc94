import type { PositionTexts } from '../../position/internal.ts';
import type { Translation } from '../catalogue.ts';

export const position: Translation<PositionTexts> = {
  'position-minutes': ['Position : {expected} attendu, {received} reçu', 'minutes inférieures à 60'],
  'position-latitude-range': ['Position : {expected} attendu, {received} reçu', 'latitude jusqu’à 90 degrés'],
  'position-longitude-range': [
    'Position : {expected} attendu, {received} reçu',
    'longitude jusqu’à 180 degrés',
  ],
  'position-not-text': ['Position : {expected} attendu, {received} reçu', 'texte'],
  'position-too-long': ['Position : {expected} attendus, {count} reçus', '200 caractères au plus'],
  'position-character': [
    'Position : {expected} attendus, {received} reçu',
    'chiffres, symboles, signes et N, S, E ou W',
  ],
  'position-word': ['Position : {expected} attendu, {received} reçu', 'N, S, E ou W ou une unité'],
  'position-number': [
    'Position : {expected} attendu, {received} reçu',
    'un seul séparateur décimal par nombre',
  ],
  'position-form': ['Position : {expected} attendues', 'latitude et longitude, chacune d’un à trois nombres'],
  'position-labels': [
    'Position : {expected} attendu',
    'un libellé pour la latitude et un pour la longitude, ou aucun',
  ],
  'position-hemisphere': ['Position : {expected} attendu, {received} reçu', 'un de N ou S et un de E ou W'],
  'position-no-hemisphere': [
    'Position : {expected} attendus, ni l’un ni l’autre reçu',
    'N ou S et E ou W, ou des signes',
  ],
  'position-sign-and-letter': [
    'Position : {expected} attendu, les deux reçus',
    'un signe ou une lettre d’hémisphère',
  ],
  'position-label-and-letter': [
    'Position : {expected} attendus, {received} reçu',
    'des libellés qui concordent avec les lettres',
  ],
  'position-letter-o': [
    'Position : {expected} attendu, {received} reçu',
    'W ou E au lieu de O, qui est l’ouest pour les uns et l’est pour les autres',
  ],
  'position-dash': [
    'Position : {expected} attendu, {received} reçu',
    'lettres d’hémisphère, ou une espace avant le signe moins',
  ],
  'position-comma': [
    'Position : {expected} attendue, {received} reçu',
    'une virgule qui ne se lit que d’une façon',
  ],
  'position-packed': [
    'Position : {expected} attendu, {received} reçu',
    'les chiffres de l’ISO 6709, ou une espace entre les coordonnées',
  ],
  'position-decimals': [
    'Position : {expected} attendues, {received} reçu',
    'des décimales dans la dernière partie seulement',
  ],
  'position-seconds': ['Position : {expected} attendu, {received} reçu', 'secondes inférieures à 60'],
  'position-geo-crs': ['Position : {expected} attendu, {received} reçu', 'wgs84'],
  'position-geo-rest': 'Position lue sans {received}',
  'position-digits': ['Position : {expected} attendus, {received} reçu', 'dix chiffres'],
  'position-quadrant': ['Position : {expected} attendu, {received} reçu', 'quadrant 0, 1, 2 ou 3'],
  'position-fraction-digits': ['Position : {expected} attendus, {received} reçu', 'huit chiffres de minutes'],
  'position-area-digits': ['Zone : {expected} attendus, {received} reçu', 'dix chiffres'],
  'position-fraction-alone': [
    'Position : {expected} attendu, {received} reçu',
    'pas de décimales après dix neuf, qui ne donnent aucune position',
  ],
  'position-area-past-pole': ['Zone : {expected} attendue, {received} reçu', 'une zone qui s’arrête au pôle'],
  'position-area-empty': ['Zone : {expected} attendue, {received} reçu', 'une zone à deux côtés'],
  'position-bounds': '{parts}',
  'position-bounds-within': 'à {far} milles marins au plus',
  'position-bounds-at': 'à {far} milles marins',
  'position-bounds-between': 'entre {near} et {far} milles marins',
  'position-bounds-bearing': 'relèvement {from} degrés vrais',
  'position-bounds-sector': 'relèvement de {from} à {to} degrés vrais',
  'position-bounds-no-bearing': 'relèvement inconnu',
  'position-bounds-no-time': 'heure de la position inconnue',
  'position-bounds-ahead': 'heure de la position en avance sur l’horloge',
  'position-bounds-new': 'position de moins d’une minute',
  'position-bounds-minutes': 'position vieille de {minutes} {minutes:fix-minutes}',
  'position-bounds-hours': 'position vieille de {hours} h {minutes} min',
  'position-bounds-still': 'sans tenir compte du déplacement depuis la position',
  'fix-minutes.1': 'minute',
  'fix-minutes.*': 'minutes',
  'position-plot-caution':
    'Positions telles que signalées dans les appels, elles peuvent être anciennes ou fausses. Ceci n’est pas un radar : ne pas l’utiliser pour éviter les abordages',
  'position-plot-title': 'Positions signalées',
  'position-plot-own-ship': 'propre navire',
  'position-plot-middle': 'Au centre : {name}, {position}',
  'position-plot-rings': 'Le nord est en haut. Cercles tous les {miles}',
  'position-plot-no-position': 'pas de position',
  'position-plot-station': '{name} : {where}',
  'position-plot-distress': 'En détresse : {name} : {where}',
  'position-plot-outside': '{where}, hors de l’image',
};
