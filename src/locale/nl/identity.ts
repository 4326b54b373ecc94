import type { IdentityTexts } from '../../identity/internal.ts';
import type { Translation } from '../catalogue.ts';

export const identity: Translation<IdentityTexts> = {
  'identity-empty': ['Identiteit is leeg', '9 cijfers'],
  'identity-not-text': ['Identiteit is geen tekst', '9 cijfers'],
  'identity-number': [
    'Identiteit is een getal: geef tekst, getallen verliezen voorloopnullen[; misschien {suggestion}]',
    '9 cijfers',
  ],
  'identity-too-long': ['Identiteit heeft {count} tekens', '9 cijfers'],
  'identity-two-numbers': ['Identiteit bevat twee nummers[; misschien {suggestion}]', '9 cijfers'],
  'identity-sign': ['Identiteit heeft een plus- of minteken[; misschien {suggestion}]', '9 cijfers'],
  'identity-scientific': [
    'Identiteit heeft een exponent: er kunnen cijfers ontbreken[; misschien {suggestion}]',
    '9 cijfers',
  ],
  'identity-decimal': ['Identiteit heeft decimalen[; misschien {suggestion}]', '9 cijfers'],
  'identity-imo-number': ['Identiteit lijkt een IMO-nummer, geen MMSI', '9 cijfers'],
  'identity-call-sign': ['Identiteit lijkt op roepletters', '9 cijfers'],
  'identity-letter': [
    'Identiteit bevat letters die op cijfers lijken[; misschien {suggestion}]',
    '9 cijfers',
  ],
  'identity-character': ['Identiteit bevat het teken {character}[; misschien {suggestion}]', '9 cijfers'],
  'identity-placeholder': ['Identiteit is een voorbeeldnummer', '9 cijfers'],
  'identity-unassigned': [
    'Identiteit heeft geen toegewezen vorm: geen enkele begint met {start}',
    '9 cijfers',
  ],
  'identity-leading-zeros': [
    'Identiteit mist cijfers: rekenbladen laten voorloopnullen weg[; misschien {suggestion}]',
    '9 cijfers',
  ],
  'identity-call-address': [
    'Identiteit heeft tien cijfers, de vorm bij uitzending[; misschien {suggestion}]',
    '9 cijfers',
  ],
  'identity-atis': [
    'Identiteit lijkt een ATIS-code van de binnenvaart[; misschien {suggestion}]',
    '9 cijfers',
  ],
  'identity-atis-call-sign': ['Identiteit lijkt een ATIS-code van roepletters', '9 cijfers'],
  'identity-atis-shape': [
    'ATIS-code: verwacht tien cijfers, eerst 9 en een MID',
    '10 cijfers, het eerste een 9',
  ],
  'identity-digit-count': ['Identiteit heeft 9 cijfers nodig, er zijn er {count}', '9 cijfers'],
  'identity-address-shape': ['Oproepadres: verwacht 10 cijfers', '10 cijfers'],
  'identity-use': '{reason:use}',
  'identity-own-called': 'Adres is de eigen identiteit: verwacht een ander station',
  'identity-kind': [
    'Identiteit: verwacht {expected}, gekregen {kind:identity-kind}',
    '{accepted:identity-kind& of }',
  ],
  'identity-repeated-digit': 'Identiteit heeft negen gelijke cijfers',
  'identity-tenth-digit':
    'Oproepadres eindigt op {digit}, niet op 0: meerdere radio’s delen één identiteit, of de ontvangst was gestoord',
  'identity-address-unassigned': 'Oproepadres bevat {digits}, dat geen toegewezen vorm heeft',
  'identity-station': '{reason:station}',
  'identity-mid-unallocated':
    'Identiteit heeft de MID {mid}, die in de lijst van {edition} aan geen land is toegewezen',
  'identity-call-sign-digits':
    'Roepletters hebben negen cijfers, zoals een MMSI: dit hoort in een ander veld',
  'identity-call-sign-shape':
    'Roepletters {received} lijken niet op die van een schip: controleer de registratie',
  'identity-call-sign-type': 'Roepletters: verwacht tekst, gekregen {type}',
  'identity-invisible': 'Identiteit gelezen zonder onzichtbare tekens',
  'identity-digits': 'Identiteit gelezen met cijfers van een ander schrift',
  'identity-blanks': 'Identiteit gelezen zonder spaties',
  'identity-apostrophe': 'Identiteit gelezen zonder apostrof',
  'identity-label': 'Identiteit gelezen zonder het opschrift',
  'identity-thousands': 'Identiteit gelezen zonder komma’s',
  'identity-separators': 'Identiteit gelezen zonder scheidingstekens',
  'identity-kind.ship': 'schip',
  'identity-kind.ship-group': 'groep schepen',
  'identity-kind.coast': 'kuststation',
  'identity-kind.coast-all-national': 'alle kuststations van een land',
  'identity-kind.coast-all': 'alle kuststations',
  'identity-kind.sar-aircraft': 'luchtvaartuig',
  'identity-kind.sar-aircraft-all-national': 'alle luchtvaartuigen van een land',
  'identity-kind.craft': 'vaartuig van een moederschip',
  'identity-kind.aton': 'navigatiehulpmiddel',
  'identity-kind.handheld': 'portofoon',
  'identity-kind.ais-sart': 'AIS-SART-zender',
  'identity-kind.mob': 'man-over-boord-apparaat',
  'identity-kind.epirb-ais': 'EPIRB-AIS-baken',
  'identity-kind.amrd-b': 'autonoom radioapparaat',
  'use.own-not-coast': 'Eigen identiteit is geen kuststation: die beginnen met 00 en een MID',
  'use.own-group':
    'Eigen identiteit begint met 0, het teken van een groep: die van een schip begint met 2 tot 7',
  'use.own-coast':
    'Eigen identiteit begint met 00, het teken van kuststations: die van een schip begint met 2 tot 7',
  'use.own-aircraft-group': 'Eigen identiteit is een groep luchtvaartuigen: verwacht één station',
  'use.own-ais': 'Eigen identiteit hoort bij een AIS-apparaat, dat niet aan oproepen deelneemt',
  'use.distressed':
    'Vaartuig in nood heeft een identiteit die geen vaartuig, luchtvaartuig of persoon in oproepen gebruikt',
  'use.called-group': 'Adres is een groep: een groepsoproep bereikt haar, geen oproep aan één station',
  'use.called-single': 'Adres is geen groep: de identiteit van een groep schepen begint met één 0',
  'use.called-mob': 'Adres is een man-over-boord-apparaat, dat geen gewone oproepen aanneemt',
  'use.called-ais': 'Adres hoort bij een AIS-apparaat, dat niet aan oproepen deelneemt',
  'station.uk-portable':
    'Eigen identiteit begint met 2359, meestal een Britse portofoon: controleer de registratie',
  'station.ship-handheld':
    'Eigen identiteit is die van een schip: per land verschilt of een portofoon die mag gebruiken, controleer de registratie',
  'station.handheld-fixed': 'Eigen identiteit is voor een portofoon, maar deze radio is vast ingebouwd',
  'station.craft': 'Eigen identiteit is voor een bijboot of reddingsmiddel, niet voor de radio van het schip',
  'station.mob': 'Eigen identiteit is voor een man-over-boord-apparaat, maar deze radio is er geen',
  'station.aircraft':
    'Eigen identiteit is voor een luchtvaartuig, maar deze radio is aan boord van een vaartuig',
};
