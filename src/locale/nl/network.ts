import type { NetworkTexts } from '../../network/internal.ts';
import type { Translation } from '../catalogue.ts';

export const network: Translation<NetworkTexts> = {
  'network-not-a-frame': [
    'Frame: verwacht {expected}, gekregen {received}',
    'een kenmerk van 29 bits en hoogstens 8 bytes',
  ],
  'network-packet-torn': [
    'Fast packet van PGN {pgn} van {source}: verwacht {expected}, gekregen {received}',
    '{announced} frames',
  ],
  'network-packet-no-start': [
    'Fast packet van PGN {pgn} van {source}: verwacht {expected}, gekregen {received} {received:frames} erna',
    'een eerste frame',
  ],
  'network-log-not-text': ['Log: verwacht {expected}, gekregen {received}', 'tekst of bytes'],
  'network-log-line': ['Regel: verwacht {expected}, gekregen {received}', 'een CAN-frame uit een tekstlog'],
  'network-log-link-type': ['Capturebestand: verwacht {expected}, gekregen een ander', 'linktype 227'],
  'network-log-cut-off': 'Capturebestand eindigt midden in een record',
  'network-message-short': ['PGN {pgn} eindigt voor het laatste veld, na {received} bytes', 'alle velden'],
  'network-identity-tenth-digit': [
    'PGN {pgn}, {field}: geen identiteit met haar tiende cijfer; verwacht {expected}, gekregen {received}',
    'vijf getallen van twee cijfers, het laatste cijfer 0',
  ],
  'network-ais-identity': [
    'PGN {pgn}, {field}: geen identiteit; verwacht {expected}, gekregen {received}',
    'negen cijfers',
  ],
  'network-distress-one-field': [
    'PGN {pgn}, {field}: gelezen als {meaning:distress-field}; verwacht {expected}, gekregen {received}',
    'een aard van de nood en een telecommando, die dit veld delen',
  ],
  'network-distress-nature-lost': [
    'PGN {pgn}, {field}: draagt het telecommando {received} en verliest de aard van de nood {nature}',
    'een van beide',
  ],
  'network-position-range': [
    'PGN {pgn}, {field}: geen positie; verwacht {expected}, gekregen {received}',
    'hoogstens 90 en 180 graden',
  ],
  'network-position-half': [
    'PGN {pgn}, {field}: een halve positie; verwacht {expected}, gekregen alleen {received}',
    'breedte en lengte',
  ],
  'network-frequency': [
    'PGN {pgn}, {field}: niet gebruikt; verwacht {expected}, gekregen {received}',
    'zes cijfers',
  ],
  'network-telephone-unexpected': [
    'PGN {pgn}, {field}: niet gebruikt; verwacht {expected}, gekregen {received}',
    'hoogstens 16 cijfers in een automatische oproep',
  ],
  'network-text-cut-off': [
    'PGN {pgn}, {field}: korter dan vermeld en niet gebruikt; verwacht {expected}, gekregen {received}',
    '{length} bytes',
  ],
  'network-date-early': [
    'PGN {pgn}, {field}: 1024 weken te vroeg en niet gebruikt; verwacht {expected}, gekregen {received}',
    'de datum van het log',
  ],
  'distress-field.telecommand': 'het telecommando',
  'distress-field.nature': 'de aard van de nood',
  'frames.1': 'frame',
  'frames.*': 'frames',
  'network-why': '{fault:network-why}',
  'network-remedy': '{fault:network-remedy}',
  'network-outside': '{check:network-outside}',
  'network-seen-no-frames': 'Geen frame in {count} {count:lines}',
  'network-seen-format': 'Formaataanduiding {format}',
  'network-seen-no-category': 'Formaataanduiding {format}, geen categorie',
  'network-seen-repeat': 'Oproep {event} van het log, {count} keer geschreven tot nu toe',
  'network-seen-names': 'Adres {address}: {count} NAMEs',
  'network-seen-address': 'Adres {address}',
  'network-seen-positions': 'PGN {pgn} van de adressen {addresses& en }',
  'network-seen-radio': 'Een knoop van apparaatklasse {deviceClass}, communicatie',
  'network-why.no-frames':
    'Geen frame gevonden: de poort is dicht, de bitsnelheid klopt niet, of het bestand heeft een ander formaat',
  'network-remedy.no-frames': 'Open de poort op 250 kbit/s en sla het log op met een algemeen CAN-hulpmiddel',
  'network-why.not-frames': 'Regels die geen frames zijn gaan verloren met alles wat erin stond',
  'network-remedy.not-frames': 'Sla het log nogmaals op, rechtstreeks van de poort',
  'network-why.packet-torn': 'Elk scherm laat een bericht van meerdere frames vallen als er een ontbreekt',
  'network-remedy.packet-torn':
    'Zoek een gateway die frames van volgorde verandert, een bus zonder twee afsluitweerstanden, of een overbelaste bus',
  'network-why.no-call-message':
    'Er zit een marifoon op de bus en geen oproep kwam als PGN 129808: oudere toestellen geven oproepen door in een eigen groep, of alleen over hun seriële poort',
  'network-remedy.no-call-message':
    'Zoek PGN 129808 in de handleiding van de marifoon, en sluit de seriële poort aan als die ontbreekt',
  'network-why.two-digit-codes':
    'Het bericht heeft de codes van twee cijfers uit een seriële zin in plaats van symbolen 100 tot 127: een scherm herkent zo geen noodalarm',
  'network-remedy.two-digit-codes': 'Meld het de fabrikant van de omzetter',
  'network-why.identity-code':
    'Een identiteit is geen vijf getallen van twee cijfers eindigend op 0: als één getal of BCD geschreven noemt zij een station dat niet opriep',
  'network-remedy.identity-code':
    'Vertrouw de identiteit op het scherm niet. Meld het de fabrikant van de omzetter',
  'network-why.category-lost':
    'Een oproep zonder categorie lijkt op een routineoproep: een spoed- of veiligheidsoproep geeft geen alarm',
  'network-remedy.category-lost': 'Kijk op de marifoon zelf. Meld het de fabrikant van de omzetter',
  'network-why.message-cut-off':
    'Het bericht of een tekst erin eindigt voor zijn lengte: decimalen van de positie, naam of koers kunnen ontbreken',
  'network-remedy.message-cut-off': 'Vergelijk met wat de marifoon toont. Meld het de fabrikant ervan',
  'network-why.date-early':
    'De datum is 1024 weken te vroeg, zoals een oude GNSS-ontvanger haar zet: een scherm kan de oproep voor oud houden',
  'network-remedy.date-early': 'Vervang of vernieuw de ontvanger die de klok van de bus zet',
  'network-why.call-repeated': 'Eén oproep is meer dan eens geschreven: een lijst toont hem dubbel',
  'network-remedy.call-repeated': 'Tel oproepen op hun inhoud, niet op hun berichtnummer',
  'network-why.no-address-claim': 'Een knoop zendt zonder adresclaim: sommige schermen negeren zo’n knoop',
  'network-remedy.no-address-claim':
    'Vraag alle knopen om hun adresclaim, of log vanaf het inschakelen van de bus',
  'network-why.address-disputed':
    'Twee knopen claimen één adres, of één NAME claimt steeds opnieuw: schermen kunnen beide negeren',
  'network-remedy.address-disputed': 'Schakel knopen een voor een uit tot de claims ophouden',
  'network-why.two-positions': 'Twee knopen zenden de eigen positie: een scherm kan de verkeerde nemen',
  'network-remedy.two-positions': 'Kies de bron in de instellingen van het scherm',
  'network-why.own-report-as-target':
    'De eigen AIS-melding is gemarkeerd als ontvangen: het eigen vaartuig verschijnt als doel naast zichzelf',
  'network-remedy.own-report-as-target':
    'Stel de eigen identiteit in op het scherm. Meld het de fabrikant van de transponder',
  'network-why.waypoint-not-listed':
    'Een bestemming is verzonden zonder waypoint met die naam: een scherm kan erop sturen zonder haar te tonen in de lijst',
  'network-remedy.waypoint-not-listed': 'Zend er PGN 129285 of 130074 bij',
  'network-outside.accepted':
    'Of het scherm PGN 129808 wel aanneemt: de handleiding noemt de parametergroepen die het ontvangt',
  'network-outside.gateway': 'Of een gateway tussen twee bussen PGN 129808 doorgeeft',
  'network-outside.other-vessel':
    'Of het andere vaartuig de vraag hoorde, en of zijn marifoon antwoordt, navraagt of weigert',
  'lines.1': 'regel',
  'lines.*': 'regels',
};
