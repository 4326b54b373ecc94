import type { SpeechTexts } from '../../speech/internal.ts';
import type { Translation } from '../catalogue.ts';

type Own = Omit<SpeechTexts, 'terms'>;

/** The terms are those of calls. */
export const speech: Translation<Own> = {
  'speech-only-in-danger':
    'Zend alleen een noodoproep uit als een schip of persoon in ernstig en onmiddellijk gevaar is en direct hulp nodig heeft, op gezag van de schipper',
  'speech-when-to-relay':
    'Geef door als niemand het alarm of de MAYDAY-oproep binnen ongeveer 5 minuten heeft bevestigd. Geef ook door als u ziet of weet dat een schip in nood niet kan oproepen, of op verzoek van een reddingscoördinatiecentrum (MRCC). Probeer eerst een kuststation',
  'speech-acknowledge-when-near':
    'Luister eerst. Bent u dicht bij het schip en hoort u geen kuststation bevestigen, bevestig dan zelf. Luister daarna en volg de aanwijzingen van het station dat het noodverkeer leidt. Bevestigt niemand binnen 5 minuten, geef het noodgeval dan op elke manier door aan een kuststation',
  'speech-already-acknowledged':
    'Luister eerst: het noodalarm is al bevestigd. Spreek alleen als u kunt helpen, zonder het noodverkeer te onderbreken. Luister daarna en volg de aanwijzingen van het station dat het noodverkeer leidt',
  'speech-coast-acknowledges':
    'Bevestig onmiddellijk. Geef in de Verenigde Staten het reddingscoördinatiecentrum (MRCC) eerst kort de gelegenheid. Waarschuw daarna het reddingscoördinatiecentrum. Neem de leiding van het verkeer of draag die over',
  'speech-coast-listens':
    'Luister: het noodalarm is al bevestigd. Neem de leiding van het verkeer als het leidende station of het reddingscoördinatiecentrum (MRCC) dat vraagt',
  'speech-relay-when-near':
    'Bevestig alleen als u dichtbij genoeg bent om te helpen. Luister anders uit {where:distress-voice}',
  'speech-cancel-at-once':
    'Annuleer meteen, op elke band waarop het alarm is uitgezonden. Antwoordt geen kuststation, waarschuw er dan een op een andere manier',
  'speech-urgency':
    'Voor een zeer dringend bericht over de veiligheid van een schip of persoon, op gezag van de schipper. Luister daarna minstens 3 minuten op het gebruikte kanaal. Annuleer het als het niet meer geldt. Zend bij ernstig en onmiddellijk gevaar MAYDAY uit',
  'speech-safety': 'Voor navigatie- en weerwaarschuwingen. Zend een lang bericht op een werkkanaal uit',
  'speech-manners':
    'Gebruik laag vermogen waar dat genoeg is. Wees kort. Gebruik alleen een werkkanaal. Houd kanaal 16 en 70 vrij',
  'speech-radio-check':
    'Gebruik een werkkanaal. Zend hoogstens 10 seconden achtereen. Test de DSC-functie met een DSC-testoproep, zonder spraak',
  'speech-watch-after-acknowledgement': 'Luister na de bevestiging uit {where:distress-voice}',
  'speech-alert-cancelled':
    'Luister {where:distress-voice} naar de annulering via spraak: het schip heeft zijn alarm geannuleerd',
  'speech-relay-acknowledged': 'Luister {where:distress-voice}: de relay is bevestigd',
  'speech-nothing-follows': 'Op deze oproep volgt geen spraakbericht',
  'speech-not-speech': 'Het verkeer dat volgt, is geen spraak',
  'speech-listen': 'Luister op het kanaal uit de oproep',
  'speech-listen-for-pan-pan':
    'Luister op het kanaal uit de oproep. De oproeper begint met PAN PAN en zegt wie moet antwoorden',
  'speech-listen-for-securite':
    'Luister op het kanaal uit de oproep. De oproeper begint met SECURITE en zegt of een antwoord wordt verwacht',
  'speech-on-the-band': 'Spreek {where:distress-voice}. {caution}',
  'speech-title-distress': 'Noodoproep en noodbericht',
  'speech-title-relay': 'Relay van een noodbericht',
  'speech-title-received': 'Bevestiging van een noodbericht',
  'speech-title-relay-received': 'Bevestiging van een relay',
  'speech-title-cancel': 'Annulering van een vals alarm',
  'speech-title-urgency': 'Spoedoproep en spoedbericht',
  'speech-title-safety': 'Veiligheidsoproep en veiligheidsbericht',
  'speech-title-caller': 'Eerste woorden: de oproeper begint',
  'speech-title-called': 'Eerste woorden: het opgeroepen station antwoordt',
  'speech-title-radio-check': 'Radiocheck',
  'speech-title-nothing': 'Niets te zeggen',
  'speech-note-at-once':
    'Gebruik vol vermogen. Begin zodra het alarm is verzonden, uiterlijk ongeveer 15 seconden later, bevestigd of niet',
  'speech-note-alerted': 'Als er een alarm met DSC is uitgezonden',
  'speech-note-message': 'Het bericht begint',
  'speech-note-repeat': 'Laat de zendknop los en luister. Herhaal vanaf het begin als niemand antwoordt',
  'speech-note-coast-first': 'Of drie keer de naam van één kuststation: probeer eerst een kuststation',
  'speech-note-vessel': 'Het schip in nood',
  'speech-note-vessel-message': 'Het schip in nood. Het bericht begint',
  'speech-note-inform': 'Waarschuw daarna een kuststation of reddingscoördinatiecentrum (MRCC)',
  'speech-note-relay-sender': 'Het station dat de relay uitzond',
  'speech-note-stop-repeats':
    'Stop eerst de herhalingen: annuleer op het toestel. Geeft het geen aanwijzingen, zet het dan uit en na 10 seconden weer aan',
  'speech-note-keep-watch': 'Luister uit {where:distress-voice} en antwoord elk station dat oproept',
  'speech-note-panne': 'Zoals het Franse woord panne',
  'speech-note-medical': 'Zoals het Franse woord médical. Alleen voor beschermde medische transporten',
  'speech-note-securite': 'Zoals het Franse woord sécurité',
  'speech-note-announced': 'Als de oproep met DSC is aangekondigd',
  'speech-note-on-that-channel': 'Op dat kanaal, na dezelfde oproep',
  'speech-note-listen-first': 'Op het afgesproken kanaal. Luister eerst, en wacht zolang anderen spreken',
  'speech-note-members': 'Daarna antwoorden de leden, een voor een',
  'speech-note-wait': 'Wacht tot de oproeper begint',
  'speech-note-figure': 'Of een ander cijfer, van een (slecht) tot vijf (uitstekend)',
  'speech-say-mayday-thrice': 'Zeg drie keer MAYDAY',
  'speech-say-mayday': 'Zeg één keer MAYDAY',
  'speech-say-relay-thrice': 'Zeg drie keer MAYDAY RELAY',
  'speech-say-relay': 'Zeg één keer MAYDAY RELAY',
  'speech-say-pan-pan': 'Zeg drie keer PAN PAN',
  'speech-say-medical': 'Zeg dat dit een medisch transport is',
  'speech-say-securite': 'Zeg drie keer SECURITE',
  'speech-call-all': 'Roep drie keer alle stations op',
  'speech-call-thrice': 'Zeg drie keer de naam van het opgeroepen station',
  'speech-call-once': 'Zeg één keer de naam van het opgeroepen station',
  'speech-say-this-is': 'Zeg dat de naam van de oproeper volgt',
  'speech-own-thrice': 'Zeg drie keer uw eigen naam',
  'speech-own-twice': 'Zeg twee keer uw eigen naam',
  'speech-own-once': 'Zeg één keer uw eigen naam',
  'speech-own-sign': 'Spel uw eigen roepletters',
  'speech-own-mmsi': 'Zeg uw eigen MMSI, cijfer voor cijfer',
  'speech-own-name-sign': 'Zeg uw eigen naam en spel uw roepletters',
  'speech-own-message': 'Begin het bericht: MAYDAY, uw eigen naam, roepletters en MMSI',
  'speech-vessel-message': 'Begin het bericht: MAYDAY, dan naam, roepletters en MMSI van het schip in nood',
  'speech-unidentified-message': 'Begin het bericht: MAYDAY van een niet-geïdentificeerd schip',
  'speech-vessel-thrice': 'Zeg drie keer de naam van het schip in nood',
  'speech-vessel-sign': 'Zeg de roepletters of de MMSI van het schip in nood',
  'speech-sender-thrice': 'Zeg drie keer de naam van het station dat de relay uitzond',
  'speech-own-position': 'Zeg uw positie',
  'speech-own-position-time': 'Zeg uw positie en de tijd daarvan in UTC',
  'speech-vessel-position': 'Zeg de positie van het schip in nood',
  'speech-vessel-position-time': 'Zeg de positie van het schip in nood en de tijd daarvan in UTC',
  'speech-own-nature': 'Zeg wat er aan de hand is[: {nature:nature}]',
  'speech-vessel-nature': 'Zeg wat er met het schip in nood aan de hand is[: {nature:nature}]',
  'speech-own-assistance': 'Vraag om onmiddellijke hulp',
  'speech-vessel-assistance': 'Zeg dat het schip onmiddellijk hulp nodig heeft',
  'speech-other-assistance': 'Zeg welke hulp nodig is',
  'speech-persons': 'Zeg hoeveel personen aan boord zijn',
  'speech-information': 'Zeg wat de redding nog meer kan helpen',
  'speech-received': 'Zeg dat u de MAYDAY hebt ontvangen',
  'speech-relay-received': 'Zeg dat u de relay hebt ontvangen',
  'speech-cancel': 'Vraag alle stations uw noodalarm te annuleren, met de tijd waarop het is uitgezonden',
  'speech-urgent-message': 'Zeg wat er aan de hand is en welke hulp u nodig hebt',
  'speech-safety-message': 'Geef de waarschuwing: wat, waar en tot wanneer',
  'speech-safety-channel': 'Zeg op welk kanaal het bericht volgt: {channel}',
  'speech-over': 'Sluit af en vraag om antwoord',
  'speech-out': 'Sluit af: geen antwoord verwacht',
  'speech-other-answers': 'Het opgeroepen station zegt de naam van de oproeper en zijn eigen naam',
  'speech-other-calls': 'De oproeper zegt de naam van het opgeroepen station, dan twee keer zijn eigen naam',
  'speech-name-caller': 'Zeg één keer de naam van de oproeper',
  'speech-ask-readability': 'Vraag hoe goed u wordt ontvangen',
  'speech-other-reads': 'Het andere station zegt hoe goed het ontvangt',
  'speech-thank': 'Bedank het andere station bij naam en sluit af',
};
