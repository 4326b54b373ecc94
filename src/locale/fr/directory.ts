import type { DirectoryTexts } from '../../directory/internal.ts';
import type { Translation } from '../catalogue.ts';

export const directory: Translation<DirectoryTexts> = {
  'directory-csv-header': [
    'Liste : aucune colonne d’identités dans la première ligne',
    'une colonne nommée mmsi',
  ],
  'directory-json-shape': ['Texte : ce n’est pas un répertoire enregistré', 'le JSON d’un répertoire'],
  'directory-vcard-none': ['Texte : ne contient aucune vCard', 'BEGIN:VCARD'],
  'directory-csv-quotes': 'Ligne : guillemets qui n’entourent pas un champ entier, la ligne est omise',
  'directory-csv-short': 'Ligne : se termine avant l’identité et est omise',
  'directory-csv-twice':
    'Ligne : répète l’identité de la ligne {line}, un numéro appartient à une seule station',
  'directory-csv-time': ['Heure : {expected} attendu, {received} reçu', 'un instant ISO 8601 avec fuseau'],
  'directory-group': ['Groupe : {expected} attendue, {received} reçu', 'l’identité d’un groupe'],
  'directory-json-station': 'Station enregistrée : identité non valable, la station est omise',
  'directory-json-field': 'Champ enregistré : non valable, il est omis',
  'directory-vcard-begin': 'Carte : commence avant la fin de la précédente',
  'directory-vcard-end': 'Carte : n’a pas de fin',
  'directory-vcard-line': 'Ligne : ce n’est pas une propriété vCard',
  'directory-vcard-version': ['Version de la carte : {expected} attendu, {received} reçu', '4.0'],
  'directory-vcard-identity': 'Carte : pas de X-MMSI, la carte est omise',
  'directory-more-notices': '{count} {count:more-findings}',
  'more-findings.1': 'autre constatation n’est pas affichée',
  'more-findings.*': 'autres constatations ne sont pas affichées',
};
