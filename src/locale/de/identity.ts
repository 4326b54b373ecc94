import type { IdentityTexts } from '../../identity/internal.ts';
import type { Translation } from '../catalogue.ts';

export const identity: Translation<IdentityTexts> = {
  'identity-empty': ['Kennung ist leer', '9 Ziffern'],
  'identity-not-text': ['Kennung ist kein Text', '9 Ziffern'],
  'identity-number': [
    'Kennung ist eine Zahl: als Text übergeben, Zahlen verlieren führende Nullen[; vielleicht {suggestion}]',
    '9 Ziffern',
  ],
  'identity-too-long': ['Kennung hat {count} Zeichen', '9 Ziffern'],
  'identity-two-numbers': ['Kennung enthält zwei Nummern[; vielleicht {suggestion}]', '9 Ziffern'],
  'identity-sign': ['Kennung hat ein Vorzeichen[; vielleicht {suggestion}]', '9 Ziffern'],
  'identity-scientific': [
    'Kennung steht in Exponentenschreibweise: Ziffern können fehlen[; vielleicht {suggestion}]',
    '9 Ziffern',
  ],
  'identity-decimal': ['Kennung hat Nachkommastellen[; vielleicht {suggestion}]', '9 Ziffern'],
  'identity-imo-number': ['Kennung sieht nach einer IMO-Nummer aus, nicht nach einer MMSI', '9 Ziffern'],
  'identity-call-sign': ['Kennung sieht nach einem Rufzeichen aus', '9 Ziffern'],
  'identity-letter': [
    'Kennung enthält Buchstaben, die wie Ziffern aussehen[; vielleicht {suggestion}]',
    '9 Ziffern',
  ],
  'identity-character': ['Kennung enthält das Zeichen {character}[; vielleicht {suggestion}]', '9 Ziffern'],
  'identity-placeholder': ['Kennung ist ein Platzhalter', '9 Ziffern'],
  'identity-unassigned': ['Kennung hat kein vergebenes Format: keines beginnt mit {start}', '9 Ziffern'],
  'identity-leading-zeros': [
    'Kennung fehlen Ziffern: Tabellenprogramme lassen führende Nullen weg[; vielleicht {suggestion}]',
    '9 Ziffern',
  ],
  'identity-call-address': [
    'Kennung hat zehn Ziffern wie bei der Aussendung[; vielleicht {suggestion}]',
    '9 Ziffern',
  ],
  'identity-atis': [
    'Kennung sieht nach einem ATIS-Code der Binnenschifffahrt aus[; vielleicht {suggestion}]',
    '9 Ziffern',
  ],
  'identity-atis-call-sign': [
    'Kennung sieht nach einem ATIS-Code der Binnenschifffahrt aus einem Rufzeichen aus',
    '9 Ziffern',
  ],
  'identity-atis-shape': [
    'ATIS-Code: zehn Ziffern erwartet, zuerst 9 und eine MID',
    '10 Ziffern, die erste eine 9',
  ],
  'identity-digit-count': ['Kennung braucht 9 Ziffern, hat {count}', '9 Ziffern'],
  'identity-address-shape': ['Rufadresse: 10 Ziffern erwartet', '10 Ziffern'],
  'identity-use': '{reason:use}',
  'identity-own-called': 'Adresse ist die eigene Kennung: eine andere Funkstelle erwartet',
  'identity-kind': [
    'Kennung: {expected} erwartet, {kind:identity-kind} erhalten',
    '{accepted:identity-kind& oder }',
  ],
  'identity-repeated-digit': 'Kennung hat neun gleiche Ziffern',
  'identity-tenth-digit':
    'Rufadresse endet mit {digit} statt 0: mehrere Geräte teilen sich eine Kennung, oder sie wurde gestört empfangen',
  'identity-address-unassigned': 'Rufadresse enthält {digits}, was kein vergebenes Format hat',
  'identity-station': '{reason:station}',
  'identity-mid-unallocated':
    'Kennung hat die MID {mid}, die nach der Liste vom {edition} keinem Land zugeteilt ist',
  'identity-call-sign-digits': 'Rufzeichen hat neun Ziffern wie eine MMSI: es gehört in ein anderes Feld',
  'identity-call-sign-shape':
    'Rufzeichen {received} sieht nicht nach dem eines Schiffes aus: Zuteilungsurkunde prüfen',
  'identity-call-sign-type': 'Rufzeichen: Text erwartet, {type} erhalten',
  'identity-invisible': 'Kennung ohne unsichtbare Zeichen gelesen',
  'identity-digits': 'Kennung mit Ziffern einer anderen Schrift gelesen',
  'identity-blanks': 'Kennung ohne Leerzeichen gelesen',
  'identity-apostrophe': 'Kennung ohne Apostroph gelesen',
  'identity-label': 'Kennung ohne Beschriftung gelesen',
  'identity-thousands': 'Kennung ohne Kommas gelesen',
  'identity-separators': 'Kennung ohne Trennzeichen gelesen',
  'identity-kind.ship': 'Schiff',
  'identity-kind.ship-group': 'Schiffsgruppe',
  'identity-kind.coast': 'Küstenfunkstelle',
  'identity-kind.coast-all-national': 'alle Küstenfunkstellen eines Landes',
  'identity-kind.coast-all': 'alle Küstenfunkstellen',
  'identity-kind.sar-aircraft': 'Luftfahrzeug',
  'identity-kind.sar-aircraft-all-national': 'alle Luftfahrzeuge eines Landes',
  'identity-kind.craft': 'Beiboot eines Schiffes',
  'identity-kind.aton': 'Schifffahrtszeichen',
  'identity-kind.handheld': 'Handfunkgerät',
  'identity-kind.ais-sart': 'AIS-SART-Sender',
  'identity-kind.mob': 'Mann-über-Bord-Gerät',
  'identity-kind.epirb-ais': 'EPIRB-AIS-Bake',
  'identity-kind.amrd-b': 'autonomes Funkgerät',
  'use.own-not-coast': 'Eigene Kennung ist keine Küstenfunkstelle: deren beginnen mit 00 und einer MID',
  'use.own-group':
    'Eigene Kennung beginnt mit 0, dem Zeichen einer Gruppe: die eines Schiffes beginnt mit 2 bis 7',
  'use.own-coast':
    'Eigene Kennung beginnt mit 00, dem Zeichen einer Küstenfunkstelle: die eines Schiffes beginnt mit 2 bis 7',
  'use.own-aircraft-group':
    'Eigene Kennung ist eine Gruppe von Luftfahrzeugen: eine einzelne Funkstelle erwartet',
  'use.own-ais': 'Eigene Kennung gehört zu einem AIS-Gerät, das an Anrufen nicht teilnimmt',
  'use.distressed':
    'Fahrzeug in Not hat eine Kennung, die kein Fahrzeug, Luftfahrzeug oder Mensch in Anrufen verwendet',
  'use.called-group':
    'Adresse ist eine Gruppe: ein Gruppenanruf erreicht sie, kein Anruf an eine einzelne Funkstelle',
  'use.called-single': 'Adresse ist keine Gruppe: die Kennung einer Schiffsgruppe beginnt mit einer 0',
  'use.called-mob': 'Adresse ist ein Mann-über-Bord-Gerät, das keine gewöhnlichen Anrufe annimmt',
  'use.called-ais': 'Adresse gehört zu einem AIS-Gerät, das an Anrufen nicht teilnimmt',
  'station.uk-portable':
    'Eigene Kennung beginnt mit 2359, meist ein britisches Handfunkgerät: Zuteilungsurkunde prüfen',
  'station.ship-handheld':
    'Eigene Kennung ist die eines Schiffes: ob ein Handfunkgerät sie führen darf, ist von Land zu Land verschieden, Zuteilungsurkunde prüfen',
  'station.handheld-fixed': 'Eigene Kennung ist für ein Handfunkgerät, dieses Gerät ist fest eingebaut',
  'station.craft':
    'Eigene Kennung ist für ein Beiboot oder Rettungsmittel, nicht für die Funkanlage des Schiffes',
  'station.mob': 'Eigene Kennung ist für ein Mann-über-Bord-Gerät, dieses Gerät ist keines',
  'station.aircraft': 'Eigene Kennung ist für ein Luftfahrzeug, dieses Gerät ist an Bord eines Schiffes',
};
