import type { SentenceTexts } from '../../sentence/internal.ts';
import type { Translation } from '../catalogue.ts';

const field = '{formatter}, Feld {field}: {expected} erwartet, {received} erhalten';

export const sentence: Translation<SentenceTexts> = {
  'sentence-not-text': ['Eingabe: {expected} erwartet, {received} erhalten', '{accepted:sentence-input}'],
  'sentence-no-start': [
    'Zeile: {expected} erwartet, {received} erhalten',
    'ein $ oder ! als Anfang eines Satzes',
  ],
  'sentence-line-endless': [
    'Zeile: {expected} erwartet, {received} Zeichen ohne den Anfang eines Satzes erhalten',
    'ein Zeilenende innerhalb von {limit} Zeichen',
  ],
  'sentence-address': [
    'Adresse: {expected} erwartet, {received} erhalten',
    'zwei Zeichen Talker, drei Zeichen Satzkennung, oder P und ein Herstellerkürzel',
  ],
  'sentence-checksum-wrong': ['Prüfsumme: {expected} erwartet, {received} erhalten', "'*{computed}'"],
  'sentence-checksum-impossible':
    'Prüfsumme {received} ist ungültig: der Satz enthält ein Zeichen über FF hexadezimal',
  'sentence-checksum-malformed': [
    'Prüfsumme: ein Stern und zwei hexadezimale Ziffern erwartet, {received} erhalten',
    "['*{computed}']",
  ],
  'sentence-checksum-missing': ['Satz {received} hat keine Prüfsumme', '[*{computed}]'],
  'sentence-unchecked': ['Satz {received} hat keine Prüfsumme: er kann unvollständig sein', '[*{computed}]'],
  'sentence-blank-damage': [
    'Satz {received}: die Prüfsumme stimmt nur ohne die Leerzeichen, sie kamen nach dem Senden hinein',
    'kein Leerzeichen',
  ],
  'sentence-fields-missing': [
    'DSC-Satz: {expected} erwartet, {received} erhalten, die fehlenden gelten als leer',
    '{limit} Felder',
  ],
  'sentence-fields-surplus': [
    'DSC-Satz: {expected} erwartet, {received} erhalten, die übrigen werden ignoriert',
    '{limit} Felder',
  ],
  'sentence-code': [field, 'zwei Ziffern'],
  'sentence-identity': [field, 'neun Ziffern und eine 0'],
  'sentence-address-unexpected': [field, 'ein leeres Feld'],
  'sentence-area': [field, 'zehn Ziffern'],
  'sentence-area-or-identity': [
    '{formatter}, Feld {field}: {received} ist als Gebiet gelesen und kann eine Funkstelle sein',
    'ein Gebiet',
  ],
  'sentence-place': [field, '10 Ziffern einer Position oder 6, 8, 12 oder 16 einer Frequenz'],
  'sentence-time': [field, 'vier Ziffern, Stunde und Minute UTC'],
  'sentence-ship-unexpected': [field, 'leere Felder'],
  'sentence-acknowledgement': [field, 'R, B oder S'],
  'sentence-expansion-mark': [field, 'E oder nichts'],
  'sentence-expansion-count': [field, 'eine Anzahl von 1 bis 9 und eine Nummer bis dahin'],
  'sentence-expansion-flag': [field, 'A, Q oder R'],
  'sentence-expansion-code': [field, 'zwei Ziffern'],
  'sentence-expansion-data': [field, 'so viele Ziffern, wie der Datensatz hat'],
  'sentence-expansion-missing': [
    'Erweiterung: keiner ihrer DSE-Sätze kam, der Anruf bleibt, wie er ist',
    'DSE-Sätze direkt nach dem Anruf',
  ],
  'sentence-expansion-incomplete': [
    'Erweiterung: nur {received} ihrer DSE-Sätze kam an, angewendet: {applied:expansion-set}',
    'DSE-Sätze direkt nach dem Anruf',
  ],
  'sentence-expansion-unannounced': [
    'Erweiterung für {station} wurde angewendet, obwohl der Anruf sie nicht ankündigte',
    'Kennzeichen E',
  ],
  'sentence-expansion-late': [
    'Erweiterung für {station} folgte ihrem Anruf nicht direkt: dazwischen {received} {received:sentences}',
    'der unmittelbar nächste Satz',
  ],
  'sentence-expansion-alone': 'Erweiterung für {received} passt zu keinem gelesenen Anruf',
  'sentence-expansion-other-station': [
    'Erweiterung für {received} wird auf den Anruf von {expected} nicht angewendet',
    '{waiting}',
  ],
  'sentence-content-lost':
    '{content:lost-content}: ein DSC-Satz kann dies nicht übertragen, {count:symbols} {received}',
  'sentence-expansion-lost':
    'Erweiterung: ein DSE-Satz kann Datensatz {specifier} mit {count} {count:symbols} nicht übertragen',
  'sentence-kind-lost': ['Der DSC-Satz dieses Anrufs ({expected}) liest sich als {received}', '{written}'],
  'sentence-fix-not-valid': [
    '{formatter}, Feld {field}: {received} ist als ungültig markiert und wird nicht verwendet',
    'eine gültige Position',
  ],
  'sentence-fix-simulated': [
    '{formatter}, Feld {field}: {received} ist simuliert und wird nicht verwendet',
    'eine gültige Position',
  ],
  'sentence-fix-unreadable': [field, 'Form ddmm.mm,N,dddmm.mm,E'],
  'sentence-fix-manual': [
    '{formatter}, Feld {field}: {received} wurde von Hand eingegeben',
    'eine gemessene Position',
  ],
  'sentence-fix-estimated': [
    '{formatter}, Feld {field}: {received} ist gekoppelt, nicht gemessen',
    'eine gemessene Position',
  ],
  'sentence-ais-count': 'AIS-Satz {received} ist nicht lesbar: die Zählung der Teile ist fehlerhaft',
  'sentence-ais-payload': 'AIS-Satz {received} ist nicht lesbar: die Nutzdaten sind fehlerhaft',
  'sentence-ais-incomplete': 'AIS-Satz {received} ist Teil einer Nachricht, deren andere Teile fehlen',
  'sentence-ais-short': [
    'AIS-Nachricht {message}: {expected} erwartet, {received} {received:bits} erhalten',
    'mindestens {least} Bit',
  ],
  'sentence-ais-identity': 'AIS-Kennung {received} hat mehr als neun Ziffern',
  'sentence-ais-position': 'AIS-Position {received} liegt außerhalb des Bereichs und entfällt',
  'sentence-leading-characters': 'Zeichen {received} vor dem Satz werden ignoriert',
  'sentence-trailing-characters': 'Zeichen {received} nach der Prüfsumme werden ignoriert',
  'sentence-tag-unclosed': [
    'TAG-Block {received} hat keinen zweiten umgekehrten Schrägstrich und wird ignoriert',
    'ein umgekehrter Schrägstrich vor dem Satz',
  ],
  'sentence-tag-checksum': [
    'TAG-Block {received} endet nicht mit seiner Prüfsumme und wird ignoriert',
    '[*{computed}]',
  ],
  'sentence-checksum-lower-case': ['Prüfsumme {received} ist klein geschrieben', "'{capitals}'"],
  'sentence-length': [
    'Satz: {expected} samt Zeilenende erwartet, {received} erhalten',
    'höchstens {limit} Zeichen',
  ],
  'sentence-blank-sent': ['Feld {field} wurde mit Leerzeichen am Rand gesendet, {received}', '{trimmed}'],
  'sentence-legacy-layout': [
    'DSC-Satz: {expected} erwartet, {received} erhalten, die Kennung steht vorn wie im älteren Aufbau',
    '{limit} Felder',
  ],
  'sentence-identity-nine-digits': [field, "'{identity}0'"],
  'sentence-ais-unread': 'AIS-Nachricht {received} wird nicht unterstützt',
  'sentence-input.text': 'Text',
  'sentence-input.stream': 'Text oder ein Uint8Array',
  'lost-content.format': 'Formatkennung',
  'lost-content.address': 'Adresse',
  'lost-content.category': 'Kategorie',
  'lost-content.self': 'Eigene Kennung',
  'lost-content.telecommand1': 'Erstes Telekommando',
  'lost-content.telecommand2': 'Zweites Telekommando',
  'lost-content.distressed': 'Fahrzeug in Not',
  'lost-content.nature': 'Art des Notfalls',
  'lost-content.position': 'Position',
  'lost-content.time': 'Uhrzeit der Position',
  'lost-content.subsequent': 'Art des folgenden Verkehrs',
  'lost-content.receive': 'Erstes Frequenz- oder Kanalelement',
  'lost-content.transmit': 'Zweites Frequenz- oder Kanalelement',
  'lost-content.telephone': 'Telefonnummer',
  'lost-content.rest': 'Rest der Nachricht',
  'lost-content.end': 'Ende der Sequenz',
  'expansion-set.100': 'Nachkommastellen der Position',
  'expansion-set.101': 'Quelle der Position',
  'expansion-set.102': 'Fahrt',
  'expansion-set.103': 'Kurs',
  'expansion-set.104': 'Name',
  'expansion-set.105': 'genaueres Gebiet',
  'expansion-set.106': 'Personen an Bord',
  'expansion-set.none': 'nichts',
  'expansion-set.*': 'ein anderer Datensatz',
  'sentences.1': 'Satz',
  'sentences.*': 'Sätze',
  'symbols.1': 'Symbol',
  'symbols.*': 'Symbole',
  'bits.1': 'Bit',
  'bits.*': 'Bit',
  'sentence-why': '{fault:sentence-why}',
  'sentence-remedy': '{fault:sentence-remedy}',
  'sentence-outside': '{check:sentence-outside}',
  'sentence-report-clean':
    'Kein Fehler gefunden; Sätze: {sentences}, Anrufe: {calls}. Anzeige und ihre Einstellungen prüfen',
  'sentence-report-faults':
    '{faults} Fehler gefunden; Sätze: {sentences}, Anrufe: {calls}. Beginnen mit: {first}',
  'sentence-seen-no-byte': 'Kein Byte',
  'sentence-seen-blank': 'Nur Leerzeichen und Zeilenenden',
  'sentence-seen-foreign': '{foreign} von {count} Bytes können in keinem Satz stehen',
  'sentence-seen-slow':
    '{foreign} von {count} Bytes können in keinem Satz stehen, die meisten wie von einer langsamen Leitung an einer schnellen Schnittstelle',
  'sentence-seen-checksum': "{line} (berechnet '*{computed}', angegeben {stated})",
  'sentence-seen-no-checksum':
    '{line} (keine Prüfsumme möglich: ein Zeichen über FF hexadezimal, angegeben {stated})',
  'sentence-seen-alike': '{count} Prüfsummen, jede um {difference} falsch',
  'sentence-seen-no-call': 'Sätze: {sentences}, aber kein DSC',
  'sentence-seen-no-reply': 'Anrufe: {calls}, aber keine Positionsantwort[ von {station}]',
  'sentence-seen-repeat': 'Noch einmal dasselbe, bisher {count}-mal',
  'sentence-seen-no-expansion': 'Keine Erweiterung angekündigt und keine empfangen',
  'sentence-seen-zero-decimals': 'Alle acht Nachkommastellen sind 0',
  'sentence-seen-empty-position': 'Eine Positionsantwort mit leerer Position',
  'sentence-seen-minute-off': '{position}, eine Minute neben {source:minute-source}',
  'sentence-seen-hours-before': '{hours} {hours:hours} vor dem Empfang',
  'sentence-seen-hours-after': '{hours} {hours:hours} nach dem Empfang',
  'sentence-why.no-data': 'Über die Leitung kam überhaupt nichts',
  'sentence-remedy.no-data':
    'Das Adernpaar von den Sendeklemmen (Talker) des Funkgeräts verfolgen: dort muss etwas angeschlossen sein, nicht nur am Positionseingang. Prüfen, ob A und B richtig herum sind und ein einpoliger Talker seine Rückleitung hat. Prüfen, ob die Schnittstelle eingeschaltet ist',
  'sentence-why.wrong-speed':
    'Das ist kein Text: Schnittstelle und Talker laufen verschieden schnell, oder A und B sind vertauscht',
  'sentence-remedy.wrong-speed':
    'An der Anzeige 4800 und dann 38 400 bit/s versuchen, mit 8 Datenbits ohne Parität: Funkgeräte mit AIS-Empfang nutzen oft für alles die schnellere Rate. Ergibt keine Rate Text, A und B tauschen',
  'sentence-why.no-sentence':
    'Es kommen Zeilen, aber keine ist ein Satz: ein anderes Format, oder der Text wurde unterwegs verändert',
  'sentence-remedy.no-sentence':
    'Die erste Zeile mit einem Satz vergleichen: er beginnt mit $ oder !, hat Großbuchstaben in der Adresse und Kommas zwischen den Feldern. Prüfen, welches Gerät an der Leitung ist und wie sein Ausgang eingestellt ist',
  'sentence-why.too-long': 'Ein Satz darf 82 Zeichen haben; ein strenger Empfänger verwirft einen längeren',
  'sentence-remedy.too-long':
    'Den Talker weniger Nachkommastellen senden lassen oder einen Empfänger nehmen, der längere Sätze annimmt',
  'sentence-why.tag-block':
    'Die Zeile beginnt mit einem TAG-Block, und ein Empfänger, der TAG-Blöcke nicht lesen kann, verwirft die ganze Zeile',
  'sentence-remedy.tag-block': 'TAG-Blöcke beim Absender abschalten oder vor der Anzeige entfernen',
  'sentence-why.blank-damage':
    'Die Prüfsumme stimmt nur ohne die Leerzeichen: der Text wurde nach dem Verlassen des Funkgeräts beschädigt',
  'sentence-remedy.blank-damage':
    'Das Funkgerät ist nicht schuld: Leerzeichen entfernen oder neu aufzeichnen, direkt und nicht über Webseite oder Terminal',
  'sentence-why.blank-sent':
    'Der Talker sendet Leerzeichen in einem Feld; ein strenger Empfänger erkennt das Feld nicht',
  'sentence-remedy.blank-sent':
    'Die Leerzeichen unterwegs entfernen und den Hersteller des Funkgeräts nach neuer Firmware fragen',
  'sentence-why.checksum-wrong': 'Der Satz wurde unterwegs verändert, und jeder Empfänger verwirft ihn',
  'sentence-remedy.checksum-wrong':
    'Die Ursachen nacheinander ausschließen: Störungen, schlechte Masse, ein zweiter Talker am Adernpaar, eine leicht falsche Datenrate. Eine gleichbleibende Abweichung weist auf ein Gerät, das Sätze bearbeitet',
  'sentence-why.rewritten-between':
    'Jede angegebene Prüfsumme weicht von der berechneten in denselben Bits ab: der Text wurde unterwegs geändert, die Prüfsumme nicht',
  'sentence-remedy.rewritten-between':
    'Das Gerät zwischen Funkgerät und Anzeige suchen, das Sätze umschreibt, und es entfernen oder richtig einstellen',
  'sentence-why.checksum-missing':
    'Ein Empfänger kann einen Satz ohne Prüfsumme ablehnen, und nichts zeigt, ob er vollständig ankam',
  'sentence-remedy.checksum-missing': 'Die Prüfsumme am Talker oder am Gerät dazwischen einschalten',
  'sentence-why.checksum-lower-case':
    'Die Prüfsumme ist klein geschrieben; ein strenger Empfänger erwartet Großbuchstaben',
  'sentence-remedy.checksum-lower-case':
    'Die Prüfsumme unterwegs groß schreiben und dem Hersteller des Talkers Bescheid geben',
  'sentence-why.calls-filtered':
    'Es kommen Sätze, aber kein Anruf: keiner wurde empfangen, oder ein Gerät verwirft sie',
  'sentence-remedy.calls-filtered':
    'DSC- und DSE-Sätze in jedem Multiplexer, Gateway und jeder Schnittstelle zulassen oder das Funkgerät direkt an die Anzeige anschließen. Ein Gerät, das 38 400 auf 4800 bit/s umsetzt, kann sie verwerfen',
  'sentence-why.reply-missing': 'Es kamen Anrufe, aber nicht die erwartete Position',
  'sentence-remedy.reply-missing':
    'Prüfen, ob das Funkgerät die Antwort zeigt. Wenn ja, nach einem Gerät suchen, das Sätze verwirft. Wenn nein, hat das andere Fahrzeug die Anfrage vielleicht nicht empfangen, oder sein Funkgerät wartet auf die Bedienung: nach einer Weile noch einmal fragen, oder über Sprechfunk',
  'sentence-why.legacy-layout':
    'Die Felder stehen wie in einer älteren Ausgabe, die Adresse zuerst, und ein Empfänger liest sie falsch',
  'sentence-remedy.legacy-layout':
    'Einen Empfänger nehmen, der den älteren Aufbau liest, oder den Satz umschreiben',
  'sentence-why.fields-missing':
    'Am Ende fehlen leere Felder, und ein Empfänger, der elf erwartet, verwirft den Satz',
  'sentence-remedy.fields-missing':
    'Die leeren Felder unterwegs ergänzen und dem Hersteller des Talkers Bescheid geben',
  'sentence-why.talker': 'Die Talker-Kennung ist nicht CD, und manche Anzeigen nehmen nur CDDSC an',
  'sentence-remedy.talker': 'Talker-Kennung und Prüfsumme unterwegs umschreiben',
  'sentence-why.leading-zero-lost':
    'Einem Feld fehlen Ziffern, wie wenn ein Programm Text als Zahl behandelt und führende Nullen verliert',
  'sentence-remedy.leading-zero-lost':
    'Das Gerät oder Programm suchen und entfernen. Keine Null ergänzen: nichts zeigt, welche Ziffer fehlt',
  'sentence-why.bad-position':
    'Die Ziffern sind kein Ort auf der Erde, und eine sorgfältige Anzeige zeichnet nichts',
  'sentence-remedy.bad-position':
    'Die Position verwerfen und den Anruf behalten. Die Funkstelle noch einmal fragen, wenn es wichtig ist über Sprechfunk',
  'sentence-why.no-fix':
    'Die andere Funkstelle hat keine Position: die Antwort ist gültig, und es gibt nichts zu zeichnen',
  'sentence-remedy.no-fix':
    'Über Sprechfunk fragen: das andere Funkgerät hat keine Satellitenposition oder hat sie verloren',
  'sentence-why.no-time':
    'Die Position hat keine Uhrzeit, und manche Anzeigen verwerfen eine solche Position',
  'sentence-remedy.no-time': 'Sie mit unbekanntem Alter eintragen: sie kann alt sein',
  'sentence-why.expansion-missing':
    'Nachkommastellen wurden angekündigt und kamen nicht vollständig an: die Position kann auf ganze Minuten gekürzt sein',
  'sentence-remedy.expansion-missing':
    'DSE-Sätze durchlassen, länger warten oder die Position noch einmal anfragen',
  'sentence-why.expansion-late':
    'Zwischen Anruf und Nachkommastellen kamen andere Sätze; ein Empfänger, der nur den nächsten Satz liest, verpasst sie',
  'sentence-remedy.expansion-late':
    'Dem Funkgerät eine eigene Schnittstelle geben oder das Paar unterwegs zusammenführen',
  'sentence-why.expansion-unannounced':
    'Es kamen Nachkommastellen, obwohl der Anruf sie nicht ankündigte; ein Empfänger, der sich auf das Kennzeichen verlässt, ignoriert sie',
  'sentence-remedy.expansion-unannounced':
    'Sie über die Kennung zuordnen und dem Hersteller des Funkgeräts Bescheid geben',
  'sentence-why.expansion-mismatch':
    'Nachkommastellen einer Funkstelle folgen auf den Anruf einer anderen: verbunden zeigten sie ein Schiff am falschen Ort',
  'sentence-remedy.expansion-mismatch':
    'Sie nie verbinden. Nach einem verlorenen Anruf suchen oder nach einem Gerät, das die Reihenfolge ändert',
  'sentence-why.no-expansion':
    'Die Position ist auf ganze Minuten gekürzt: das Schiff kann anderthalb Seemeilen von der Marke entfernt sein',
  'sentence-remedy.no-expansion':
    'Ein Feld zeichnen, keinen Punkt. Noch einmal fragen: kommen nie Nachkommastellen, sendet das andere Funkgerät keine',
  'sentence-why.identity-nine-digits':
    'Der Kennung fehlt die angehängte Null; ein strenger Empfänger erwartet zehn Ziffern',
  'sentence-remedy.identity-nine-digits': 'Die Null unterwegs anhängen',
  'sentence-why.identity-last-digit':
    'Zehn Ziffern, die nicht auf 0 enden, sind keine ergänzte Kennung und passen zu keinem anderen Eintrag des Schiffes',
  'sentence-remedy.identity-last-digit':
    'Alle zehn Ziffern behalten. Die Funkstelle nach ihrer Kennung fragen',
  'sentence-why.own-call': 'Das Funkgerät meldet auch die eigenen Anrufe, und sie sehen aus wie empfangene',
  'sentence-remedy.own-call': 'Anrufe der eigenen Kennung ignorieren',
  'sentence-why.refused': 'Die Antwort ist eine Ablehnung oder leer: sie hat keine Position',
  'sentence-remedy.refused':
    'Über Sprechfunk anrufen und fragen: viele Funkgeräte lassen sich auf Antworten, Nachfragen oder Ablehnen einstellen',
  'sentence-why.polled':
    'Polling fragt nur, ob eine Funkstelle in Reichweite ist: die Antwort hat keine Position',
  'sentence-remedy.polled': 'Stattdessen eine Positionsabfrage senden',
  'sentence-why.category':
    'Positionsanrufe sind Sicherheitsanrufe; eine Anzeige, die die Kategorie prüft, ignoriert diesen',
  'sentence-remedy.category': 'Positionsanrufe am ersten Telekommando 21 erkennen, nicht an der Kategorie',
  'sentence-why.acknowledgement':
    'Die Position kam unaufgefordert, und eine Anzeige, die eine Antwort erwartet, ignoriert sie',
  'sentence-remedy.acknowledgement': 'Sie als Meldung eintragen',
  'sentence-why.duplicates':
    'Derselbe Seenotalarm oder dieselbe Meldung kam mehrmals und zeichnet jedes Mal eine Marke',
  'sentence-remedy.duplicates': 'Gleichlautendes derselben Funkstelle zu einem Ereignis zusammenfassen',
  'sentence-why.wrong-quadrant':
    'Die gemeldete Position liegt weit außerhalb der UKW-Reichweite und wäre mit der anderen Halbkugel nahe',
  'sentence-remedy.wrong-quadrant':
    'Nicht danach steuern: der Absender oder ein Gerät dazwischen hat die Quadrantenziffer falsch',
  'sentence-why.minutes-rounded':
    'Der Absender rundet die Minuten und hängt die Nachkommastellen trotzdem an: die Marke liegt eine Minute daneben',
  'sentence-remedy.minutes-rounded':
    'Mit AIS vergleichen oder das Fahrzeug fragen. Die Position nicht stillschweigend berichtigen',
  'sentence-why.wrong-time':
    'Die Uhrzeit der Position liegt Stunden neben der Empfangszeit: als Ortszeit eingegeben, oder alt',
  'sentence-remedy.wrong-time':
    'Das Alter als unbekannt behandeln und die Funkstelle nach ihrer Uhrzeit in UTC fragen',
  'sentence-outside.accepted':
    'Welche Sätze die Anzeige annimmt: siehe Handbuch. Manche Anzeigen zeichnen Seenotalarme und keine anderen Anrufe; WPL oder TLL kann stattdessen gehen',
  'sentence-outside.network':
    'Ob das Funkgerät Anrufe über ein anderes Bordnetz sendet und nicht über diese Leitung',
  'sentence-outside.tenth-digit':
    'Was die Anzeige mit der zehnten Ziffer einer Kennung macht: eine angehängte Null in der Karte stört nur das Auge, aber Listen stimmen dann nicht überein',
  'sentence-outside.other-vessel':
    'Ob das andere Fahrzeug die Anfrage empfing und ob sein Funkgerät auf Antworten, Nachfragen oder Ablehnen steht',
  'minute-source.ais': 'der AIS-Position',
  'minute-source.report': 'der letzten Meldung',
  'faults.1': 'Fehler',
  'faults.*': 'Fehler',
  'calls.1': 'Anruf',
  'calls.*': 'Anrufe',
  'hours.1': 'Stunde',
  'hours.*': 'Stunden',
};
