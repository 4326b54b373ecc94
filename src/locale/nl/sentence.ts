import type { SentenceTexts } from '../../sentence/internal.ts';
import type { Translation } from '../catalogue.ts';

const field = '{formatter}, veld {field}: verwacht {expected}, gekregen {received}';

export const sentence: Translation<SentenceTexts> = {
  'sentence-not-text': ['Invoer: verwacht {expected}, gekregen {received}', '{accepted:sentence-input}'],
  'sentence-no-start': [
    'Regel: verwacht {expected}, gekregen {received}',
    'een $ of ! als begin van een zin',
  ],
  'sentence-line-endless': [
    'Regel: verwacht {expected}, gekregen {received} tekens zonder begin van een zin',
    'een regeleinde binnen {limit} tekens',
  ],
  'sentence-address': [
    'Adres: verwacht {expected}, gekregen {received}',
    'twee tekens voor de zender en drie voor de zin, of P en een fabrikantcode',
  ],
  'sentence-checksum-wrong': ['Controlesom: verwacht {expected}, gekregen {received}', "'*{computed}'"],
  'sentence-checksum-impossible':
    'Controlesom {received} is ongeldig: de zin heeft een teken boven FF hexadecimaal',
  'sentence-checksum-malformed': [
    'Controlesom: verwacht een ster en twee hexadecimale cijfers, gekregen {received}',
    "['*{computed}']",
  ],
  'sentence-checksum-missing': ['Zin {received} heeft geen controlesom', '[*{computed}]'],
  'sentence-unchecked': ['Zin {received} heeft geen controlesom: hij kan onvolledig zijn', '[*{computed}]'],
  'sentence-blank-damage': [
    'Zin {received}: de controlesom klopt alleen zonder de spaties, die na het zenden zijn toegevoegd',
    'geen spatie',
  ],
  'sentence-fields-missing': [
    'DSC-zin: verwacht {expected}, gekregen {received}, de ontbrekende gelden als leeg',
    '{limit} velden',
  ],
  'sentence-fields-surplus': [
    'DSC-zin: verwacht {expected}, gekregen {received}, de overige worden genegeerd',
    '{limit} velden',
  ],
  'sentence-code': [field, 'twee cijfers'],
  'sentence-identity': [field, 'negen cijfers en een 0'],
  'sentence-address-unexpected': [field, 'een leeg veld'],
  'sentence-area': [field, 'tien cijfers'],
  'sentence-area-or-identity': [
    '{formatter}, veld {field}: {received} is gelezen als gebied en kan een station zijn',
    'een gebied',
  ],
  'sentence-place': [field, '10 cijfers van een positie, of 6, 8, 12 of 16 van een frequentie'],
  'sentence-time': [field, 'vier cijfers, uren en minuten UTC'],
  'sentence-ship-unexpected': [field, 'lege velden'],
  'sentence-acknowledgement': [field, 'R, B of S'],
  'sentence-expansion-mark': [field, 'E of niets'],
  'sentence-expansion-count': [field, 'een aantal van 1 tot 9 en een nummer tot daaraan'],
  'sentence-expansion-flag': [field, 'A, Q of R'],
  'sentence-expansion-code': [field, 'twee cijfers'],
  'sentence-expansion-data': [field, 'zoveel cijfers als de gegevensset heeft'],
  'sentence-expansion-missing': [
    'Uitbreiding: geen van de DSE-zinnen kwam, de oproep blijft zoals hij is',
    'DSE-zinnen direct na de oproep',
  ],
  'sentence-expansion-incomplete': [
    'Uitbreiding: slechts {received} van de DSE-zinnen kwam, toegepast: {applied:expansion-set}',
    'DSE-zinnen direct na de oproep',
  ],
  'sentence-expansion-unannounced': [
    'Uitbreiding voor {station} is toegepast, hoewel de oproep die niet aankondigde',
    'het teken E',
  ],
  'sentence-expansion-late': [
    'Uitbreiding voor {station} volgde niet direct op de oproep: {received} {received:sentences} ertussen',
    'de eerstvolgende zin',
  ],
  'sentence-expansion-alone': 'Uitbreiding voor {received} hoort bij geen gelezen oproep',
  'sentence-expansion-other-station': [
    'Uitbreiding voor {received} is niet toegepast op de oproep van {expected}',
    '{waiting}',
  ],
  'sentence-content-lost':
    '{content:lost-content}: een DSC-zin kan dit niet overbrengen, {count:symbols} {received}',
  'sentence-expansion-lost':
    'Uitbreiding: een DSE-zin kan gegevensset {specifier} van {count} {count:symbols} niet overbrengen',
  'sentence-kind-lost': ['De DSC-zin van deze oproep ({expected}) leest als {received}', '{written}'],
  'sentence-fix-not-valid': [
    '{formatter}, veld {field}: {received} is gemarkeerd als ongeldig en wordt niet gebruikt',
    'een geldige positie',
  ],
  'sentence-fix-simulated': [
    '{formatter}, veld {field}: {received} is gesimuleerd en wordt niet gebruikt',
    'een geldige positie',
  ],
  'sentence-fix-unreadable': [field, 'de vorm ddmm.mm,N,dddmm.mm,E'],
  'sentence-fix-manual': [
    '{formatter}, veld {field}: {received} is met de hand ingevoerd',
    'een gemeten positie',
  ],
  'sentence-fix-estimated': [
    '{formatter}, veld {field}: {received} is gegist bestek, geen meting',
    'een gemeten positie',
  ],
  'sentence-ais-count': 'AIS-zin {received} is onleesbaar: de telling van de delen is onjuist gevormd',
  'sentence-ais-payload': 'AIS-zin {received} is onleesbaar: de inhoud is onjuist gevormd',
  'sentence-ais-incomplete': 'AIS-zin {received} is deel van een bericht waarvan de andere delen ontbreken',
  'sentence-ais-short': [
    'AIS-bericht {message}: verwacht {expected}, gekregen {received} {received:bits}',
    'minstens {least} bits',
  ],
  'sentence-ais-identity': 'AIS-identiteit {received} heeft meer dan negen cijfers',
  'sentence-ais-position': 'AIS-positie {received} valt buiten het bereik en is weggelaten',
  'sentence-leading-characters': 'Tekens {received} voor de zin zijn genegeerd',
  'sentence-trailing-characters': 'Tekens {received} na de controlesom zijn genegeerd',
  'sentence-tag-unclosed': [
    'TAG-blok {received} heeft geen tweede backslash en is genegeerd',
    'een backslash voor de zin',
  ],
  'sentence-tag-checksum': [
    'TAG-blok {received} eindigt niet op zijn controlesom en is genegeerd',
    '[*{computed}]',
  ],
  'sentence-checksum-lower-case': ['Controlesom {received} is in kleine letters', "'{capitals}'"],
  'sentence-length': [
    'Zin: verwacht {expected} met het regeleinde, gekregen {received}',
    'hoogstens {limit} tekens',
  ],
  'sentence-blank-sent': ['Veld {field} is gezonden met spaties eromheen, {received}', '{trimmed}'],
  'sentence-legacy-layout': [
    'DSC-zin: verwacht {expected}, gekregen {received}, de identiteit staat vooraan zoals in de oudere indeling',
    '{limit} velden',
  ],
  'sentence-identity-nine-digits': [field, "'{identity}0'"],
  'sentence-ais-unread': 'AIS-bericht {received} wordt niet ondersteund',
  'sentence-input.text': 'tekst',
  'sentence-input.stream': 'tekst of een Uint8Array',
  'lost-content.format': 'Formaataanduiding',
  'lost-content.address': 'Adres',
  'lost-content.category': 'Categorie',
  'lost-content.self': 'Eigen identiteit',
  'lost-content.telecommand1': 'Eerste telecommando',
  'lost-content.telecommand2': 'Tweede telecommando',
  'lost-content.distressed': 'Vaartuig in nood',
  'lost-content.nature': 'Aard van de nood',
  'lost-content.position': 'Positie',
  'lost-content.time': 'Tijd van de positie',
  'lost-content.subsequent': 'Soort vervolgverkeer',
  'lost-content.receive': 'Eerste frequentie- of kanaalelement',
  'lost-content.transmit': 'Tweede frequentie- of kanaalelement',
  'lost-content.telephone': 'Telefoonnummer',
  'lost-content.rest': 'Rest van het bericht',
  'lost-content.end': 'Einde van de reeks',
  'expansion-set.100': 'decimalen van de positie',
  'expansion-set.101': 'bron van de positie',
  'expansion-set.102': 'snelheid',
  'expansion-set.103': 'koers',
  'expansion-set.104': 'naam',
  'expansion-set.105': 'nauwkeuriger gebied',
  'expansion-set.106': 'personen aan boord',
  'expansion-set.none': 'niets',
  'expansion-set.*': 'een andere gegevensset',
  'sentences.1': 'zin',
  'sentences.*': 'zinnen',
  'symbols.1': 'symbool',
  'symbols.*': 'symbolen',
  'bits.1': 'bit',
  'bits.*': 'bits',
  'sentence-why': '{fault:sentence-why}',
  'sentence-remedy': '{fault:sentence-remedy}',
  'sentence-outside': '{check:sentence-outside}',
  'sentence-report-clean':
    'Geen fout gevonden in {sentences} {sentences:sentences} met {calls} {calls:calls}: controleer het scherm en de instellingen ervan',
  'sentence-report-faults':
    '{faults} {faults:faults} gevonden in {sentences} {sentences:sentences} met {calls} {calls:calls}: begin met {first}',
  'sentence-seen-no-byte': 'Geen byte',
  'sentence-seen-blank': 'Alleen spaties en regeleinden',
  'sentence-seen-foreign': '{foreign} van {count} bytes kunnen niet in een zin staan',
  'sentence-seen-slow':
    '{foreign} van {count} bytes kunnen niet in een zin staan, de meeste zoals een trage lijn er voor een snelle poort uitziet',
  'sentence-seen-checksum': "{line} (berekend '*{computed}', vermeld {stated})",
  'sentence-seen-no-checksum':
    '{line} (geen controlesom mogelijk: een teken boven FF hexadecimaal, vermeld {stated})',
  'sentence-seen-alike': '{count} controlesommen, elk {difference} ernaast',
  'sentence-seen-no-call': '{sentences} {sentences:sentences}, maar geen DSC',
  'sentence-seen-no-reply': '{calls} {calls:calls}, maar geen positieantwoord[ van {station}]',
  'sentence-seen-repeat': 'Nogmaals hetzelfde, {count} keer tot nu toe',
  'sentence-seen-no-expansion': 'Geen uitbreiding aangekondigd en geen ontvangen',
  'sentence-seen-zero-decimals': 'Alle acht decimalen zijn 0',
  'sentence-seen-empty-position': 'Een positieantwoord met een lege positie',
  'sentence-seen-minute-off': '{position}, een minuut naast {source:minute-source}',
  'sentence-seen-hours-before': '{hours} {hours:hours} voor de ontvangst',
  'sentence-seen-hours-after': '{hours} {hours:hours} na de ontvangst',
  'sentence-why.no-data': 'Er kwam helemaal niets over de lijn',
  'sentence-remedy.no-data':
    'Volg het aderpaar vanaf de zendklemmen van de marifoon: daar moet iets op zijn aangesloten, niet alleen op de positie-ingang. Controleer of A en B goed zitten en of een enkelzijdige zender zijn retour heeft. Controleer of de poort aanstaat',
  'sentence-why.wrong-speed':
    'Dit is geen tekst: de poort en de zender lopen op verschillende snelheden, of A en B zijn verwisseld',
  'sentence-remedy.wrong-speed':
    'Probeer 4800 en dan 38 400 bit/s op het scherm, met 8 databits zonder pariteit: marifoons met AIS-ontvangst gebruiken vaak de hogere snelheid voor alles. Geeft geen snelheid tekst, verwissel dan A en B',
  'sentence-why.no-sentence':
    'Er komen regels maar geen is een zin: een ander formaat, of tekst die onderweg is veranderd',
  'sentence-remedy.no-sentence':
    'Vergelijk de eerste regel met een zin: die begint met $ of !, heeft hoofdletters in het adres en komma’s tussen de velden. Controleer welk apparaat op de lijn zit en hoe de uitgang is ingesteld',
  'sentence-why.too-long': 'Een zin mag 82 tekens hebben; een strenge ontvanger laat een langere vallen',
  'sentence-remedy.too-long':
    'Laat de zender minder decimalen sturen, of gebruik een ontvanger die langere zinnen aanneemt',
  'sentence-why.tag-block':
    'De regel begint met een TAG-blok, en een ontvanger die geen TAG-blokken kan lezen laat de hele regel vallen',
  'sentence-remedy.tag-block': 'Zet TAG-blokken uit bij de afzender, of haal ze weg voor het scherm',
  'sentence-why.blank-damage':
    'De controlesom klopt alleen zonder de spaties: de tekst is beschadigd nadat hij de marifoon verliet',
  'sentence-remedy.blank-damage':
    'De marifoon heeft geen schuld: haal de spaties weg, of neem opnieuw op, rechtstreeks en niet via een webpagina of terminal',
  'sentence-why.blank-sent':
    'De zender stuurt spaties in een veld; een strenge ontvanger herkent het veld niet',
  'sentence-remedy.blank-sent':
    'Haal de spaties onderweg weg, en vraag de fabrikant van de marifoon om nieuwe firmware',
  'sentence-why.checksum-wrong': 'De zin is onderweg veranderd, en elke ontvanger laat hem vallen',
  'sentence-remedy.checksum-wrong':
    'Sluit de oorzaken een voor een uit: storing, slechte massa, een tweede zender op het paar, een iets verkeerde poortsnelheid. Een vast verschil wijst op een apparaat dat zinnen bewerkt',
  'sentence-why.rewritten-between':
    'Elke vermelde controlesom wijkt in dezelfde bits af van de berekende: de tekst is onderweg veranderd en de controlesom niet',
  'sentence-remedy.rewritten-between':
    'Zoek het apparaat tussen marifoon en scherm dat zinnen herschrijft, en haal het weg of stel het goed in',
  'sentence-why.checksum-missing':
    'Een ontvanger kan een zin zonder controlesom weigeren, en niets toont of hij heel is aangekomen',
  'sentence-remedy.checksum-missing': 'Zet de controlesom aan bij de zender of bij het apparaat ertussen',
  'sentence-why.checksum-lower-case':
    'De controlesom is in kleine letters; een strenge ontvanger verwacht hoofdletters',
  'sentence-remedy.checksum-lower-case':
    'Schrijf de controlesom onderweg in hoofdletters, en meld het de fabrikant van de zender',
  'sentence-why.calls-filtered':
    'Er komen zinnen maar geen oproep: er is er geen ontvangen, of een apparaat laat ze vallen',
  'sentence-remedy.calls-filtered':
    'Laat DSC- en DSE-zinnen toe in elke multiplexer, gateway en poortinstelling, of sluit de marifoon rechtstreeks op het scherm aan. Een apparaat dat 38 400 naar 4800 bit/s omzet kan ze laten vallen',
  'sentence-why.reply-missing': 'Er kwamen oproepen, maar niet de verwachte positie',
  'sentence-remedy.reply-missing':
    'Controleer of de marifoon het antwoord toont. Zo ja, zoek een apparaat dat zinnen laat vallen. Zo nee, dan heeft het andere vaartuig de vraag misschien niet ontvangen, of wacht zijn marifoon op de bediener: vraag het later nog eens, of per spraak',
  'sentence-why.legacy-layout':
    'De velden staan in de volgorde van een oudere uitgave, het adres eerst, en een ontvanger leest ze verkeerd',
  'sentence-remedy.legacy-layout': 'Gebruik een ontvanger die de oudere indeling leest, of herschrijf de zin',
  'sentence-why.fields-missing':
    'Aan het eind ontbreken lege velden, en een ontvanger die er elf verwacht laat de zin vallen',
  'sentence-remedy.fields-missing': 'Vul de lege velden onderweg aan, en meld het de fabrikant van de zender',
  'sentence-why.talker': 'De zender is niet CD, en sommige schermen nemen alleen CDDSC aan',
  'sentence-remedy.talker': 'Herschrijf onderweg de zender en de controlesom',
  'sentence-why.leading-zero-lost':
    'Een veld mist cijfers, zoals wanneer een programma tekst als getal behandelt en voorloopnullen verliest',
  'sentence-remedy.leading-zero-lost':
    'Zoek het apparaat of programma en haal het weg. Vul geen nul in: niets toont welk cijfer ontbreekt',
  'sentence-why.bad-position': 'De cijfers zijn geen plaats op aarde, en een zorgvuldig scherm tekent niets',
  'sentence-remedy.bad-position':
    'Verwerp de positie en bewaar de oproep. Vraag het station nogmaals, per spraak als het ertoe doet',
  'sentence-why.no-fix':
    'Het andere station heeft geen positie: het antwoord is geldig en er is niets te tekenen',
  'sentence-remedy.no-fix':
    'Vraag het per spraak: de andere marifoon heeft geen satellietpositie, of is die kwijt',
  'sentence-why.no-time': 'De positie heeft geen tijd, en sommige schermen laten zo’n positie vallen',
  'sentence-remedy.no-time': 'Zet haar uit met onbekende leeftijd: zij kan oud zijn',
  'sentence-why.expansion-missing':
    'Decimalen waren aangekondigd en kwamen niet volledig aan: de positie kan op hele minuten staan',
  'sentence-remedy.expansion-missing': 'Laat DSE-zinnen door, wacht langer, of vraag de positie nogmaals',
  'sentence-why.expansion-late':
    'Tussen een oproep en zijn decimalen kwamen andere zinnen; een ontvanger die alleen de volgende zin leest mist ze',
  'sentence-remedy.expansion-late': 'Geef de marifoon een eigen poort, of voeg het paar onderweg samen',
  'sentence-why.expansion-unannounced':
    'Er kwamen decimalen hoewel de oproep ze niet aankondigde; een ontvanger die op het teken vertrouwt negeert ze',
  'sentence-remedy.expansion-unannounced':
    'Voeg ze samen op identiteit, en meld het de fabrikant van de marifoon',
  'sentence-why.expansion-mismatch':
    'Decimalen van het ene station volgen op de oproep van het andere: samengevoegd tonen ze een schip op de verkeerde plaats',
  'sentence-remedy.expansion-mismatch':
    'Voeg ze nooit samen. Zoek een verloren oproep of een apparaat dat de volgorde verandert',
  'sentence-why.no-expansion':
    'De positie is op hele minuten afgekapt: het schip kan anderhalve zeemijl van het merkteken zijn',
  'sentence-remedy.no-expansion':
    'Teken een vak, geen punt. Vraag nogmaals: komen er nooit decimalen, dan zendt de andere marifoon ze niet',
  'sentence-why.identity-nine-digits':
    'De identiteit mist haar aanvullende nul; een strenge ontvanger verwacht tien cijfers',
  'sentence-remedy.identity-nine-digits': 'Voeg de nul onderweg toe',
  'sentence-why.identity-last-digit':
    'Tien cijfers die niet op 0 eindigen zijn geen aangevulde identiteit, en passen bij geen ander gegeven van het schip',
  'sentence-remedy.identity-last-digit': 'Bewaar alle tien cijfers. Vraag het station naar zijn identiteit',
  'sentence-why.own-call': 'De marifoon meldt ook de eigen oproepen, en die lijken op ontvangen oproepen',
  'sentence-remedy.own-call': 'Negeer oproepen van de eigen identiteit',
  'sentence-why.refused': 'Het antwoord is een weigering of is leeg: het heeft geen positie',
  'sentence-remedy.refused':
    'Roep op per spraak en vraag het: veel marifoons zijn in te stellen op antwoorden, navragen of weigeren',
  'sentence-why.polled':
    'Polling vraagt alleen of een station binnen bereik is: het antwoord heeft geen positie',
  'sentence-remedy.polled': 'Zend in plaats daarvan een positieverzoek',
  'sentence-why.category':
    'Positieoproepen zijn veiligheidsoproepen; een scherm dat de categorie controleert negeert deze',
  'sentence-remedy.category': 'Herken positieoproepen aan het eerste telecommando, 21, niet aan de categorie',
  'sentence-why.acknowledgement':
    'De positie kwam ongevraagd, en een scherm dat een antwoord verwacht negeert haar',
  'sentence-remedy.acknowledgement': 'Zet haar uit als melding',
  'sentence-why.duplicates':
    'Hetzelfde noodalarm of dezelfde melding kwam meermaals, en tekent telkens een merkteken',
  'sentence-remedy.duplicates': 'Voeg samen tot één gebeurtenis wat hetzelfde zegt over hetzelfde station',
  'sentence-why.wrong-quadrant':
    'De gemelde positie ligt ver buiten marifoonbereik, en zou met het andere halfrond dichtbij zijn',
  'sentence-remedy.wrong-quadrant':
    'Stuur er niet op: de afzender of een apparaat ertussen heeft het kwadrantcijfer verkeerd',
  'sentence-why.minutes-rounded':
    'De afzender rondt de minuten af en voegt ook de decimalen toe: het merkteken zit een minuut ernaast',
  'sentence-remedy.minutes-rounded':
    'Vergelijk met AIS of vraag het vaartuig. Verbeter de positie niet stilzwijgend',
  'sentence-why.wrong-time':
    'De tijd van de positie scheelt uren met de ontvangsttijd: ingevoerd als plaatselijke tijd, of oud',
  'sentence-remedy.wrong-time':
    'Behandel de leeftijd als onbekend, en vraag het station naar zijn tijd in UTC',
  'sentence-outside.accepted':
    'Welke zinnen het scherm aanneemt: zie de handleiding. Sommige schermen tekenen noodalarmen en geen andere oproepen; WPL of TLL kan in plaats daarvan werken',
  'sentence-outside.network':
    'Of de marifoon oproepen over een ander netwerk aan boord zendt en niet over deze lijn',
  'sentence-outside.tenth-digit':
    'Wat het scherm doet met het tiende cijfer van een identiteit: een extra nul op de kaart is alleen lelijk, maar lijsten kloppen dan niet',
  'sentence-outside.other-vessel':
    'Of het andere vaartuig de vraag heeft ontvangen, en of zijn marifoon staat op antwoorden, navragen of weigeren',
  'minute-source.ais': 'de AIS-positie',
  'minute-source.report': 'de laatste melding',
  'faults.1': 'fout',
  'faults.*': 'fouten',
  'calls.1': 'oproep',
  'calls.*': 'oproepen',
  'hours.1': 'uur',
  'hours.*': 'uur',
};
