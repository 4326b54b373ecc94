import type { NetworkTexts } from '../../network/internal.ts';
import type { Translation } from '../catalogue.ts';

export const network: Translation<NetworkTexts> = {
  'network-not-a-frame': [
    'Frame: {expected} erwartet, {received} erhalten',
    'eine 29-Bit-Kennung und bis zu 8 Bytes',
  ],
  'network-packet-torn': [
    'Fast Packet der PGN {pgn} von {source}: {expected} erwartet, {received} erhalten',
    '{announced} Frames',
  ],
  'network-packet-no-start': [
    'Fast Packet der PGN {pgn} von {source}: {expected} erwartet, {received} {received:frames} danach erhalten',
    'ein erster Frame',
  ],
  'network-log-not-text': ['Log: {expected} erwartet, {received} erhalten', 'Text oder Bytes'],
  'network-log-line': [
    'Zeile: {expected} erwartet, {received} erhalten',
    'ein CAN-Frame einer Textaufzeichnung',
  ],
  'network-log-link-type': ['Capture-Datei: {expected} erwartet, anderen erhalten', 'Verbindungstyp 227'],
  'network-log-cut-off': 'Capture-Datei endet mitten in einem Datensatz',
  'network-message-short': ['PGN {pgn} endet vor dem letzten Feld, nach {received} Bytes', 'alle Felder'],
  'network-identity-tenth-digit': [
    'PGN {pgn}, {field}: keine Kennung mit ihrer zehnten Ziffer; {expected} erwartet, {received} erhalten',
    'fünf Zahlen zu je zwei Ziffern, die letzte Ziffer 0',
  ],
  'network-ais-identity': [
    'PGN {pgn}, {field}: keine Kennung; {expected} erwartet, {received} erhalten',
    'neun Ziffern',
  ],
  'network-distress-one-field': [
    'PGN {pgn}, {field}: gelesen als {meaning:distress-field}; {expected} erwartet, {received} erhalten',
    'Art des Notfalls und Telekommando, die sich dieses Feld teilen,',
  ],
  'network-distress-nature-lost': [
    'PGN {pgn}, {field}: überträgt das Telekommando {received} und verliert die Art des Notfalls {nature}',
    'eines von beiden',
  ],
  'network-position-range': [
    'PGN {pgn}, {field}: keine Position; {expected} erwartet, {received} erhalten',
    'höchstens 90 und 180 Grad',
  ],
  'network-position-half': [
    'PGN {pgn}, {field}: halbe Position; {expected} erwartet, nur {received} erhalten',
    'Breite und Länge',
  ],
  'network-frequency': [
    'PGN {pgn}, {field}: wird nicht verwendet; {expected} erwartet, {received} erhalten',
    'sechs Ziffern',
  ],
  'network-telephone-unexpected': [
    'PGN {pgn}, {field}: wird nicht verwendet; {expected} erwartet, {received} erhalten',
    'bis zu 16 Ziffern in einem automatischen Anruf',
  ],
  'network-text-cut-off': [
    'PGN {pgn}, {field}: kürzer als angegeben, wird nicht verwendet; {expected} erwartet, {received} erhalten',
    '{length} Bytes',
  ],
  'network-date-early': [
    'PGN {pgn}, {field}: 1024 Wochen zu früh, wird nicht verwendet; {expected} erwartet, {received} erhalten',
    'das Datum der Aufzeichnung',
  ],
  'distress-field.telecommand': 'Telekommando',
  'distress-field.nature': 'Art des Notfalls',
  'frames.1': 'Frame',
  'frames.*': 'Frames',
  'network-why': '{fault:network-why}',
  'network-remedy': '{fault:network-remedy}',
  'network-outside': '{check:network-outside}',
  'network-seen-no-frames': 'Kein Frame in {count} {count:lines}',
  'network-seen-format': 'Formatkennung {format}',
  'network-seen-no-category': 'Formatkennung {format}, keine Kategorie',
  'network-seen-repeat': 'Anruf {event} der Aufzeichnung, bisher {count}-mal geschrieben',
  'network-seen-names': 'Adresse {address}: {count} NAMEs',
  'network-seen-address': 'Adresse {address}',
  'network-seen-positions': 'PGN {pgn} von den Adressen {addresses& und }',
  'network-seen-radio': 'Ein Knoten der Geräteklasse {deviceClass}, Kommunikation',
  'network-why.no-frames':
    'Kein Frame gefunden: die Schnittstelle ist geschlossen, die Bitrate falsch, oder die Datei hat ein anderes Format',
  'network-remedy.no-frames':
    'Die Schnittstelle mit 250 kbit/s öffnen und mit einem allgemeinen CAN-Werkzeug aufzeichnen',
  'network-why.not-frames': 'Zeilen, die keine Frames sind, gehen mit allem verloren, was sie enthielten',
  'network-remedy.not-frames': 'Noch einmal direkt von der Schnittstelle aufzeichnen',
  'network-why.packet-torn': 'Jede Anzeige verwirft eine Nachricht aus mehreren Frames, wenn einer fehlt',
  'network-remedy.packet-torn':
    'Nach einem Gateway suchen, das Frames umordnet, nach einem Bus ohne zwei Abschlusswiderstände oder einem überlasteten',
  'network-why.no-call-message':
    'Ein Funkgerät ist am Bus, und kein Anruf kam als PGN 129808: ältere Geräte geben Anrufe in einer eigenen Gruppe weiter oder nur seriell',
  'network-remedy.no-call-message':
    'Im Handbuch des Funkgeräts nach PGN 129808 sehen und seine serielle Schnittstelle anschließen, wenn es keine hat',
  'network-why.two-digit-codes':
    'Die Nachricht enthält die zweistelligen Codes eines seriellen Satzes statt der Symbole 100 bis 127: die Anzeige erkennt keinen Seenotalarm',
  'network-remedy.two-digit-codes': 'Dem Hersteller des Umsetzers Bescheid geben',
  'network-why.identity-code':
    'Eine Kennung ist nicht fünf zweistellige Zahlen mit 0 am Ende: als eine Zahl oder BCD geschrieben, nennt sie eine Funkstelle, die nicht anrief',
  'network-remedy.identity-code':
    'Der Kennung auf der Anzeige nicht trauen. Dem Hersteller des Umsetzers Bescheid geben',
  'network-why.category-lost':
    'Ein Anruf ohne Kategorie sieht aus wie ein Routineanruf: ein Dringlichkeits- oder Sicherheitsanruf löst keinen Alarm aus',
  'network-remedy.category-lost':
    'Am Funkgerät selbst nachsehen. Dem Hersteller des Umsetzers Bescheid geben',
  'network-why.message-cut-off':
    'Die Nachricht oder ein Text darin endet vor ihrer Länge: Nachkommastellen der Position, Name oder Kurs können fehlen',
  'network-remedy.message-cut-off':
    'Mit dem vergleichen, was das Funkgerät zeigt. Seinem Hersteller Bescheid geben',
  'network-why.date-early':
    'Das Datum liegt 1024 Wochen zu früh, wie ein alter GNSS-Empfänger es setzt: eine Anzeige kann den Anruf für alt halten',
  'network-remedy.date-early': 'Den Empfänger ersetzen oder aktualisieren, der die Uhr des Busses stellt',
  'network-why.call-repeated': 'Ein Anruf wurde mehr als einmal geschrieben: eine Liste zeigt ihn doppelt',
  'network-remedy.call-repeated': 'Anrufe nach ihrem Inhalt zählen, nicht nach ihrer Nachrichtennummer',
  'network-why.no-address-claim':
    'Ein Knoten sendet ohne Adressanspruch: manche Anzeigen ignorieren einen solchen Knoten',
  'network-remedy.no-address-claim':
    'Alle Knoten nach ihrem Adressanspruch fragen oder vom Einschalten des Busses an aufzeichnen',
  'network-why.address-disputed':
    'Zwei Knoten beanspruchen eine Adresse, oder ein NAME beansprucht immer wieder: Anzeigen können beide ignorieren',
  'network-remedy.address-disputed': 'Knoten einen nach dem anderen abschalten, bis die Ansprüche aufhören',
  'network-why.two-positions': 'Zwei Knoten senden die eigene Position: eine Anzeige kann die falsche nehmen',
  'network-remedy.two-positions': 'Die Quelle in den Einstellungen der Anzeige wählen',
  'network-why.own-report-as-target':
    'Die eigene AIS-Meldung ist als empfangen markiert: das eigene Fahrzeug erscheint als Ziel neben sich selbst',
  'network-remedy.own-report-as-target':
    'Die eigene Kennung in der Anzeige einstellen. Dem Hersteller des Transponders Bescheid geben',
  'network-why.waypoint-not-listed':
    'Ein Ziel wurde ohne Wegpunkt dieses Namens gesendet: eine Anzeige kann darauf steuern, ohne es aufzulisten',
  'network-remedy.waypoint-not-listed': 'PGN 129285 oder 130074 dazu senden',
  'network-outside.accepted':
    'Ob die Anzeige PGN 129808 überhaupt annimmt: ihr Handbuch nennt die Parametergruppen, die sie empfängt',
  'network-outside.gateway': 'Ob ein Gateway zwischen zwei Bussen PGN 129808 weitergibt',
  'network-outside.other-vessel':
    'Ob das andere Fahrzeug die Anfrage hörte und ob sein Funkgerät antwortet, nachfragt oder ablehnt',
  'lines.1': 'Zeile',
  'lines.*': 'Zeilen',
};
