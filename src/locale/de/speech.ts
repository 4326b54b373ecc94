import type { SpeechTexts } from '../../speech/internal.ts';
import type { Translation } from '../catalogue.ts';

type Own = Omit<SpeechTexts, 'terms'>;

/** The terms are those of calls. */
export const speech: Translation<Own> = {
  'speech-only-in-danger':
    'Einen Notanruf nur senden, wenn ein Fahrzeug oder eine Person in ernster und unmittelbar drohender Gefahr ist und sofort Hilfe braucht, auf Anordnung des Schiffsführers',
  'speech-when-to-relay':
    'Weiterleiten, wenn innerhalb von etwa 5 Minuten niemand den Alarm oder den MAYDAY-Anruf bestätigt hat. Weiterleiten auch, wenn ein Fahrzeug in Not erkennbar nicht selbst rufen kann oder eine Seenotleitung (MRCC) es verlangt. Zuerst eine Küstenfunkstelle versuchen',
  'speech-acknowledge-when-near':
    'Zuerst hören. Wer nahe beim Fahrzeug ist und keine Küstenfunkstelle bestätigen hört, bestätigt selbst. Dann hören und die Anweisungen der Funkstelle befolgen, die den Notverkehr leitet. Wenn innerhalb von 5 Minuten niemand bestätigt, den Seenotfall auf jedem Weg an eine Küstenfunkstelle weiterleiten',
  'speech-already-acknowledged':
    'Zuerst hören: der Seenotalarm ist schon bestätigt. Nur sprechen, wenn Hilfe möglich ist, ohne den Notverkehr zu unterbrechen. Dann hören und die Anweisungen der Funkstelle befolgen, die den Notverkehr leitet',
  'speech-coast-acknowledges':
    'Unverzüglich bestätigen. In den Vereinigten Staaten zuerst der Seenotleitung (MRCC) eine kurze Frist lassen. Danach die Seenotleitung verständigen. Die Leitung des Notverkehrs übernehmen oder übergeben',
  'speech-coast-listens':
    'Hören: der Seenotalarm ist schon bestätigt. Die Leitung des Notverkehrs übernehmen, wenn die leitende Funkstelle oder die Seenotleitung (MRCC) es verlangt',
  'speech-relay-when-near':
    'Nur bestätigen, wenn das eigene Schiff nahe genug ist, um zu helfen. Sonst Hörwache {where:distress-voice} halten',
  'speech-cancel-at-once':
    'Sofort widerrufen, auf jedem Band, auf dem der Alarm gesendet wurde. Antwortet keine Küstenfunkstelle, eine auf anderem Weg verständigen',
  'speech-urgency':
    'Für eine sehr dringende Meldung über die Sicherheit eines Fahrzeugs oder einer Person, auf Anordnung des Schiffsführers. Danach mindestens 3 Minuten auf dem benutzten Kanal hören. Widerrufen, wenn sie nicht mehr gilt. Bei ernster und unmittelbar drohender Gefahr MAYDAY senden',
  'speech-safety':
    'Für nautische Warnungen und Wetterwarnungen. Eine lange Meldung auf einem Arbeitskanal senden',
  'speech-manners':
    'Kleine Leistung benutzen, wo sie genügt. Kurz fassen. Nur einen Arbeitskanal benutzen. Kanal 16 und 70 frei halten',
  'speech-radio-check':
    'Einen Arbeitskanal benutzen. Höchstens 10 Sekunden am Stück senden. Die DSC-Funktion mit einem DSC-Testanruf prüfen, ohne Sprache',
  'speech-watch-after-acknowledgement': 'Nach der Bestätigung Hörwache {where:distress-voice} halten',
  'speech-alert-cancelled':
    'Den Widerruf über Sprechfunk {where:distress-voice} abhören: das Fahrzeug hat seinen Alarm widerrufen',
  'speech-relay-acknowledged': 'Hören {where:distress-voice}: die Weiterleitung wurde bestätigt',
  'speech-nothing-follows': 'Auf diesen Anruf folgt kein Sprechfunk',
  'speech-not-speech': 'Der folgende Verkehr ist kein Sprechfunk',
  'speech-listen': 'Auf dem Kanal hören, den der Anruf angibt',
  'speech-listen-for-pan-pan':
    'Auf dem Kanal hören, den der Anruf angibt. Der Rufende beginnt mit PAN PAN und sagt, wer antworten soll',
  'speech-listen-for-securite':
    'Auf dem Kanal hören, den der Anruf angibt. Der Rufende beginnt mit SECURITE und sagt, ob eine Antwort erwartet wird',
  'speech-on-the-band': 'Sprechen {where:distress-voice}. {caution}',
  'speech-title-distress': 'Notanruf und Notmeldung',
  'speech-title-relay': 'Weiterleitung einer Notmeldung',
  'speech-title-received': 'Bestätigung einer Notmeldung',
  'speech-title-relay-received': 'Bestätigung der Weiterleitung einer Notmeldung',
  'speech-title-cancel': 'Widerruf eines Fehlalarms',
  'speech-title-urgency': 'Dringlichkeitsanruf und Dringlichkeitsmeldung',
  'speech-title-safety': 'Sicherheitsanruf und Sicherheitsmeldung',
  'speech-title-caller': 'Erste Worte: der Rufende beginnt',
  'speech-title-called': 'Erste Worte: die gerufene Funkstelle antwortet',
  'speech-title-radio-check': 'Funkprobe',
  'speech-title-nothing': 'Nichts zu sprechen',
  'speech-note-at-once':
    'Volle Leistung benutzen. Beginnen, sobald der Alarm gesendet ist, spätestens etwa 15 Sekunden danach, ob bestätigt oder nicht',
  'speech-note-alerted': 'Wenn ein Alarm mit DSC gesendet wurde',
  'speech-note-message': 'Die Meldung beginnt',
  'speech-note-repeat': 'Die Sprechtaste loslassen und hören. Von vorn wiederholen, wenn niemand antwortet',
  'speech-note-coast-first':
    'Oder dreimal der Name einer Küstenfunkstelle: zuerst eine Küstenfunkstelle versuchen',
  'speech-note-vessel': 'Das Fahrzeug in Not',
  'speech-note-vessel-message': 'Das Fahrzeug in Not. Die Meldung beginnt',
  'speech-note-inform': 'Dann eine Küstenfunkstelle oder Seenotleitung (MRCC) verständigen',
  'speech-note-relay-sender': 'Die Funkstelle, die die Weiterleitung gesendet hat',
  'speech-note-stop-repeats':
    'Zuerst die Wiederholungen beenden: am Gerät widerrufen. Wenn es keine Anleitung gibt, ausschalten und nach 10 Sekunden wieder einschalten',
  'speech-note-keep-watch': 'Hörwache {where:distress-voice} halten und jeder Funkstelle antworten, die ruft',
  'speech-note-panne': 'Wie das französische Wort panne',
  'speech-note-medical': 'Wie das französische Wort médical. Nur für geschützte Sanitätstransporte',
  'speech-note-securite': 'Wie das französische Wort sécurité',
  'speech-note-announced': 'Wenn der Anruf mit DSC angekündigt wurde',
  'speech-note-on-that-channel': 'Auf diesem Kanal, nach demselben Anruf',
  'speech-note-listen-first': 'Auf dem vereinbarten Kanal. Zuerst hören und warten, solange andere sprechen',
  'speech-note-members': 'Dann antworten die Mitglieder, eines nach dem anderen',
  'speech-note-wait': 'Warten, bis der Rufende beginnt',
  'speech-note-figure': 'Oder eine andere Zahl, von eins (schlecht) bis fünf (sehr gut)',
  'speech-say-mayday-thrice': 'Dreimal MAYDAY sagen',
  'speech-say-mayday': 'Einmal MAYDAY sagen',
  'speech-say-relay-thrice': 'Dreimal MAYDAY RELAY sagen',
  'speech-say-relay': 'Einmal MAYDAY RELAY sagen',
  'speech-say-pan-pan': 'Dreimal PAN PAN sagen',
  'speech-say-medical': 'Sagen, dass dies ein Sanitätstransport ist',
  'speech-say-securite': 'Dreimal SECURITE sagen',
  'speech-call-all': 'Dreimal alle Funkstellen rufen',
  'speech-call-thrice': 'Dreimal den Namen der gerufenen Funkstelle sagen',
  'speech-call-once': 'Einmal den Namen der gerufenen Funkstelle sagen',
  'speech-say-this-is': 'Sagen, dass der Name des Rufenden folgt',
  'speech-own-thrice': 'Dreimal den eigenen Namen sagen',
  'speech-own-twice': 'Zweimal den eigenen Namen sagen',
  'speech-own-once': 'Einmal den eigenen Namen sagen',
  'speech-own-sign': 'Das eigene Rufzeichen buchstabieren',
  'speech-own-mmsi': 'Die eigene MMSI sagen, Ziffer für Ziffer',
  'speech-own-name-sign': 'Den eigenen Namen sagen und das Rufzeichen buchstabieren',
  'speech-own-message': 'Die Meldung beginnen: MAYDAY, eigener Name, Rufzeichen und MMSI',
  'speech-vessel-message':
    'Die Meldung beginnen: MAYDAY, dann Name, Rufzeichen und MMSI des Fahrzeugs in Not',
  'speech-unidentified-message': 'Die Meldung beginnen: MAYDAY eines nicht identifizierten Fahrzeugs',
  'speech-vessel-thrice': 'Dreimal den Namen des Fahrzeugs in Not sagen',
  'speech-vessel-sign': 'Rufzeichen oder MMSI des Fahrzeugs in Not sagen',
  'speech-sender-thrice': 'Dreimal den Namen der Funkstelle sagen, die die Weiterleitung gesendet hat',
  'speech-own-position': 'Die eigene Position sagen',
  'speech-own-position-time': 'Die eigene Position und ihre Uhrzeit in UTC sagen',
  'speech-vessel-position': 'Die Position des Fahrzeugs in Not sagen',
  'speech-vessel-position-time': 'Die Position des Fahrzeugs in Not und ihre Uhrzeit in UTC sagen',
  'speech-own-nature': 'Sagen, was passiert ist[: {nature:nature}]',
  'speech-vessel-nature': 'Sagen, was dem Fahrzeug in Not passiert ist[: {nature:nature}]',
  'speech-own-assistance': 'Um sofortige Hilfe bitten',
  'speech-vessel-assistance': 'Sagen, dass das Fahrzeug sofort Hilfe braucht',
  'speech-other-assistance': 'Sagen, welche Hilfe nötig ist',
  'speech-persons': 'Sagen, wie viele Personen an Bord sind',
  'speech-information': 'Sagen, was der Rettung sonst noch hilft',
  'speech-received': 'Sagen, dass der MAYDAY-Ruf empfangen wurde',
  'speech-relay-received': 'Sagen, dass die Weiterleitung empfangen wurde',
  'speech-cancel':
    'Den eigenen Seenotalarm gegenüber allen Funkstellen widerrufen, mit der Uhrzeit, zu der er gesendet wurde',
  'speech-urgent-message': 'Sagen, was passiert ist und welche Hilfe nötig ist',
  'speech-safety-message': 'Die Warnung durchgeben: was, wo und bis wann',
  'speech-safety-channel': 'Sagen, auf welchem Kanal die Meldung folgt: {channel}',
  'speech-over': 'Beenden und um Antwort bitten',
  'speech-out': 'Beenden: keine Antwort erwartet',
  'speech-other-answers': 'Die gerufene Funkstelle sagt den Namen des Rufenden und ihren eigenen',
  'speech-other-calls': 'Der Rufende sagt den Namen der gerufenen Funkstelle, dann zweimal den eigenen',
  'speech-name-caller': 'Einmal den Namen des Rufenden sagen',
  'speech-ask-readability': 'Fragen, wie gut man empfangen wird',
  'speech-other-reads': 'Die andere Funkstelle sagt, wie gut sie empfängt',
  'speech-thank': 'Der anderen Funkstelle mit Namen danken und beenden',
};
