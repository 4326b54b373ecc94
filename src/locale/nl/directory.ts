import type { DirectoryTexts } from '../../directory/internal.ts';
import type { Translation } from '../catalogue.ts';

export const directory: Translation<DirectoryTexts> = {
  'directory-csv-header': [
    'Lijst heeft in de eerste regel geen kolom voor identiteiten',
    'een kolom met de naam mmsi',
  ],
  'directory-json-shape': ['Tekst is geen opgeslagen adresboek', 'JSON van een adresboek'],
  'directory-vcard-none': ['Tekst bevat geen vCard', 'BEGIN:VCARD'],
  'directory-csv-quotes': 'Rij heeft aanhalingstekens die geen heel veld omsluiten: de regel is weggelaten',
  'directory-csv-short': 'Rij eindigt voor de identiteit en is weggelaten',
  'directory-csv-twice': 'Rij herhaalt de identiteit van regel {line}: één nummer hoort bij één station',
  'directory-csv-time': [
    'Tijd: verwacht {expected}, gekregen {received}',
    'een tijdstip volgens ISO 8601 met tijdzone',
  ],
  'directory-group': ['Groep: verwacht {expected}, gekregen {received}', 'de identiteit van een groep'],
  'directory-json-station': 'Opgeslagen station heeft geen geldige identiteit en is weggelaten',
  'directory-json-field': 'Opgeslagen veld is niet geldig en is weggelaten',
  'directory-vcard-begin': 'Kaart begint voordat de vorige is geëindigd',
  'directory-vcard-end': 'Kaart heeft geen einde',
  'directory-vcard-line': 'Regel is geen eigenschap van een vCard',
  'directory-vcard-version': ['Versie van de kaart: verwacht {expected}, gekregen {received}', '4.0'],
  'directory-vcard-identity': 'Kaart heeft geen X-MMSI en is weggelaten',
  'directory-more-notices': 'Nog {count} {count:more-findings} niet getoond',
  'more-findings.1': 'bevinding is',
  'more-findings.*': 'bevindingen zijn',
};
