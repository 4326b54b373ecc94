import type { DirectoryTexts } from '../../directory/internal.ts';
import type { Translation } from '../catalogue.ts';

export const directory: Translation<DirectoryTexts> = {
  'directory-csv-header': [
    'Liste hat in ihrer ersten Zeile keine Spalte für Kennungen',
    'eine Spalte mit dem Namen mmsi',
  ],
  'directory-json-shape': ['Text ist kein gespeichertes Verzeichnis', 'JSON eines Verzeichnisses'],
  'directory-vcard-none': ['Text enthält keine vCard', 'BEGIN:VCARD'],
  'directory-csv-quotes':
    'Zeile hat Anführungszeichen, die kein ganzes Feld umschließen: die Zeile wird ausgelassen',
  'directory-csv-short': 'Zeile endet vor der Kennung und wird ausgelassen',
  'directory-csv-twice':
    'Zeile wiederholt die Kennung der Zeile {line}: eine Nummer gehört zu einer Funkstelle',
  'directory-csv-time': [
    'Zeit: {expected} erwartet, {received} erhalten',
    'ein Zeitpunkt nach ISO 8601 mit Zeitzone',
  ],
  'directory-group': ['Gruppe: {expected} erwartet, {received} erhalten', 'die Kennung einer Gruppe'],
  'directory-json-station': 'Gespeicherte Funkstelle hat keine gültige Kennung und wird ausgelassen',
  'directory-json-field': 'Gespeichertes Feld ist nicht gültig und wird ausgelassen',
  'directory-vcard-begin': 'Karte beginnt, bevor die vorige geendet hat',
  'directory-vcard-end': 'Karte hat kein Ende',
  'directory-vcard-line': 'Zeile ist keine Eigenschaft einer vCard',
  'directory-vcard-version': ['Version der Karte: {expected} erwartet, {received} erhalten', '4.0'],
  'directory-vcard-identity': 'Karte hat kein X-MMSI und wird ausgelassen',
  'directory-more-notices': '{count} {count:more-findings} nicht aufgeführt',
  'more-findings.1': 'weiterer Befund ist',
  'more-findings.*': 'weitere Befunde sind',
};
