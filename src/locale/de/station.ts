import type { StationTexts } from '../../station/internal.ts';
import type { Translation } from '../catalogue.ts';
import { call } from './call.ts';

export const station: Translation<StationTexts> = {
  ...call,
  'station-identity-missing': 'Eigene Kennung ist nicht gespeichert: nichts kann gesendet werden',
  'station-identity-fixed': 'Eigene Kennung ist schon gespeichert: der Benutzer kann sie nicht ändern',
  'station-identity-form': [
    'Eigene Kennung: {expected} erwartet, {received} erhalten',
    'eine Nummer, die eine einzelne Funkstelle haben kann',
  ],
  'station-class-cannot-send':
    'Ein Gerät {equipment:of-class} sendet diese Art von Anruf nicht: {kind:call-kind}',
  'station-not-a-beginning': 'Anruf kann nicht von Hand begonnen werden: {kind:call-kind}',
  'station-not-of-procedure': 'Anruf gehört nicht zu diesem Ablauf: {kind:call-kind}',
  'station-address-missing': ['Anruf: {expected} erwartet, keine erhalten', 'eine Adresse'],
  'station-call-form': 'Anruf enthält einen Wert ohne Symbole: er kann nicht gesendet werden',
  'station-call-to-itself': 'Anruf ist an die eigene Funkstelle gerichtet',
  'station-relay-reason': [
    'Weiterleitung braucht einen Grund: niemand hat innerhalb von fünf Minuten bestätigt, oder das Fahrzeug in Not kann nicht selbst alarmieren und der Schiffsführer hält weitere Hilfe für nötig',
    'because',
  ],
  'station-relay-address': [
    'Weiterleitung eines unbestätigten Seenotalarms: {expected} erwartet. An viele nur, wenn das Fahrzeug in Not nicht selbst alarmieren kann und der Schiffsführer weitere Hilfe für nötig hält',
    'die Adresse einer Küstenfunkstelle',
  ],
  'station-relay-not-now': 'Weiterleitung: {why}',
  'station-channel-form': [
    'Kanal: {expected} erwartet, {received} erhalten',
    'ein Kanal mit Ziffern nach ITU-R M.1084',
  ],
  'station-channel-barred': 'Kanal kann nicht vorgeschlagen werden: {bar}',
  'station-reason-missing': ['Ablehnung: {expected} erwartet, {received} erhalten', 'einer der zehn Gründe'],
  'station-settings-form': 'Einstellungen: {setting} ist ungültig. Keine Einstellung wurde geändert',
  'station-event-form': ['Ereignis: {expected} erwartet', 'ein Objekt'],
  'station-event-kind': 'Ereignis hat eine unbekannte Art: {received}',
  'station-event-part': 'Ereignis „{kind}“: „{part}“ fehlt oder ist ungültig',
  'station-event-unreadable': ['Ereignis kann nicht gelesen werden', 'einfache Daten'],
  'station-alert-in-hand': 'Seenotalarm ist bereits im Gang',
  'station-no-alert': 'Kein eigener Seenotalarm ist vorbereitet oder gesendet',
  'station-no-such-dialogue': 'Vorgang {dialogue} gibt es nicht',
  'station-not-now': 'Vorgang {dialogue} lässt das in seiner Phase nicht zu: {phase}',
  'station-not-on-air': 'Vorgang {dialogue} sendet gerade nicht',
  'station-acknowledgement-not-allowed': 'Bestätigung: {why}',
  'station-fix-form': 'Position ist kein Ort auf der Erde',
  'station-state-form': ['Gespeicherter Zustand: {expected} erwartet', '{form:state-form}'],
  'station-state-newer': [
    'Gespeicherter Zustand: {expected} erwartet, {received} erhalten',
    'Version {version} oder älter',
  ],
  'station-state-repaired': 'Gespeicherter Zustand: {part} war unsinnig und wurde ersetzt oder weggelassen',
  'station-state-answer':
    'Gespeicherter Zustand: die Antwort in {part} passte nicht zum Anruf und wurde weggelassen',
  'station-state-asks':
    'Gespeicherter Zustand: {part} hätte gesendet, deshalb wird zuerst ein Mensch gefragt',
  'station-state-set-aside': 'Gespeicherter Zustand: {part} ist unmöglich und wurde beiseitegelegt',
  'station-caution-distress':
    'Davon können Menschenleben abhängen. Die Vorschriften der zuständigen Verwaltung und die Anweisungen des Schiffsführers befolgen. Hörwache auf Kanal 16 halten. Software kann sich irren: sie ersetzt weder Ausbildung noch einen ausgebildeten Funker',
  'station-caution-sending':
    'Not-, Dringlichkeits- und Sicherheitsanrufe erreichen jedes Schiff in Reichweite. Nur auf Anordnung des verantwortlichen Schiffsführers senden, und nur so, wie Zuteilungsurkunde und nationale Vorschriften es erlauben',
  'station-brief':
    '{kind:call-kind}[ von {from}][ an {to}][ {many:brief-to}][ ({category:category})][, {reason:reason}][ für Kanal {channel}]',
  'station-brief-place':
    '{kind:call-kind}[ von {from}][ an {to}][ {many:brief-to}][, für {distressed}][, {nature:nature}][, {position}][, {lack:brief-lack}][, {time} UTC]',
  'station-brief-moored': 'möglicher automatischer Alarm eines festgemachten Fahrzeugs[ von {from}]',
  'station-unidentified-vessel': 'nicht identifiziertes Fahrzeug',
  'station-unknown-station': 'unbekannte Funkstelle',
  'station-received': 'Empfangen[ ({verdict:heard-verdict})]: {call}',
  'station-received-again': 'Erneut empfangen: {call}',
  'station-received-times': '{times}-mal empfangen: {call}',
  'station-received-in-full': 'Vollständig empfangen: {call}',
  'station-received-damaged': 'Fehlerhaft empfangen, nichts veranlasst: {call}',
  'station-answer-damaged': 'Antwort fehlerhaft empfangen, nichts veranlasst: {call}',
  'station-addressed-to-others': 'An andere gerichtet: {call}',
  'station-unexpected-answer': 'Antwort auf keinen Anruf dieser Funkstelle: {call}',
  'station-answered': 'Beantwortet: {call}',
  'station-refused': 'Abgelehnt: {call}',
  'station-sent': 'Gesendet: {call}',
  'station-sent-times': '{times}-mal hintereinander gesendet: {call}',
  'station-not-sent': 'Nicht gesendet: {call}',
  'station-answer-not-sent': 'Antwort nicht gesendet: {call}',
  'station-channel-busy': 'Kanal 70 war nicht frei: der Anruf wurde nicht gesendet',
  'station-too-late': 'Kanal 70 war für eine automatische Antwort nicht rechtzeitig frei',
  'station-held': 'Notverkehr hat Vorrang: der Anruf wartet',
  'station-no-answer': 'Keine Antwort nach {attempts} von {allowed} Anrufen: {call}',
  'station-calling-again': 'Keine Antwort auf Anruf {attempt} von {allowed}: er wird wiederholt',
  'station-missed': 'Nicht beantwortet: {call}',
  'station-not-followed': 'Nicht befolgt: {call}',
  'station-closed': 'Geschlossen: {call}',
  'station-closed-unanswered': 'Ohne Antwort geschlossen: {call}',
  'station-closed-for-room': 'Aus Platzmangel geschlossen: {call}',
  'station-still-in-hand': 'Noch im Gang: {call}',
  'station-tune-16': 'Von Hand auf Kanal 16 schalten',
  'station-watch-left':
    'Das Gerät steht auf Kanal {channel}, nicht auf Kanal {watched& oder }. Die vorgeschriebene Hörwache dort mit einem anderen Empfänger halten oder zurückschalten',
  'station-finished': 'Beendet[ auf Kanal {channel}]',
  'station-closed-idle':
    'Nach langer Zeit ohne Bedienung geschlossen[. Das Gerät steht noch auf Kanal {channel}]',
  'station-position-old': 'Eigene Position ist alt: neu eingeben oder GNSS-Empfänger prüfen',
  'station-position-erased': 'Eigene Position ist zu alt zum Senden: neu eingeben oder GNSS-Empfänger prüfen',
  'station-ask-send': 'Senden: {call}?',
  'station-ask-answer': 'Beantworten: {call}?',
  'station-ask-tune': 'Umschalten[ auf Kanal {channel}]?',
  'station-ask-cancel':
    'War es ein Fehlalarm? Dann wird er mit DSC und danach über Sprechfunk auf Kanal 16 widerrufen',
  'station-ask-repeat':
    'Der eigene Seenotalarm wird nicht mehr wiederholt. Taste gedrückt halten, um ihn erneut zu senden. Widerrufen, wenn er ein Fehlalarm war',
  'station-ask-acknowledge': 'Seenotalarm mit DSC bestätigen: {vessel}?',
  'station-alert-prepared':
    'Taste gedrückt halten, um einen Seenotalarm zu senden. Nur bei ernster und unmittelbar drohender Gefahr senden, auf Anordnung des Schiffsführers',
  'station-alert-countdown': 'Taste gedrückt halten: {nature:nature}',
  'station-alert-waiting': 'Aussendung {attempts} erfolgt. Kanal 16 abhören',
  'station-alert-speak':
    'Jetzt Notanruf und Notmeldung über Sprechfunk auf Kanal 16 senden. Nicht auf eine Bestätigung warten',
  'station-alert-failed':
    'Über Sprechfunk auf Kanal 16 rufen. Auch jedes andere Mittel nutzen. Das Gerät konnte den Alarm nicht senden',
  'station-alert-acknowledged': 'Der Alarm ist bestätigt[ durch {by}]',
  'station-alert-acknowledged-damaged':
    'Eine Bestätigung wurde fehlerhaft empfangen[: {call}]. Der Alarm läuft weiter. Alarm stoppen?',
  'station-alert-relayed': 'Der Alarm wurde weitergeleitet[: {call}]',
  'station-alert-stopped':
    'Wiederholungen von Hand gestoppt. War es ein Fehlalarm, muss er noch widerrufen werden',
  'station-alert-not-sent': 'Seenotalarm nicht gesendet',
  'station-alert-spoken': 'Notanruf und Notmeldung auf Kanal 16 gesprochen',
  'station-alert-closed': 'Eigener Seenotalarm abgeschlossen',
  'station-cancel-failed':
    'Den Fehlalarm sofort über Sprechfunk auf Kanal 16 widerrufen. Das Gerät hat den Widerruf nicht gesendet',
  'station-cancelled': 'Fehlalarm mit DSC und über Sprechfunk auf Kanal 16 widerrufen',
  'station-cancelled-by-voice':
    'Fehlalarm über Sprechfunk auf Kanal 16 widerrufen. Das Gerät hat den Widerruf nicht mit DSC gesendet',
  'station-cancelled-by-dsc':
    'Den Widerruf auf Kanal 16 sprechen. Der Fehlalarm wurde nur mit DSC widerrufen',
  'station-not-cancelled':
    'Den Widerruf jetzt auf Kanal 16 sprechen. Der Fehlalarm ist NICHT widerrufen, weder mit DSC noch über Sprechfunk',
  'station-distress-traffic': 'Notverkehr auf Kanal 16, Fahrzeug in Not: {vessel}',
  'station-distress-acknowledged': 'Seenotalarm bestätigt durch {by}. Fahrzeug in Not: {vessel}',
  'station-distress-cancelled': 'Seenotalarm widerrufen durch {vessel}',
  'station-distress-closed': 'Seenotfall abgeschlossen: {vessel}',
  'station-acknowledgement-not-sent': 'Die Bestätigung wurde nicht gesendet',
  'station-acknowledged-by-voice': 'Über Sprechfunk auf Kanal 16 bestätigt: {vessel}',
  'station-assisting': 'Kann Hilfe leisten, Entscheidung des Schiffsführers: {vessel}',
  'station-not-assisting': 'Kann keine Hilfe leisten, eingetragen und Gerät zurückgesetzt: {vessel}',
  'station-nothing-more': 'Nichts mehr gehört, eingetragen und Gerät zurückgesetzt: {vessel}',
  'station-phase': '{phase:phase}',
  'brief-to.area': 'an ein Seegebiet',
  'brief-to.all-ships': 'an alle Schiffe',
  'brief-lack.position': 'keine Position',
  'heard-verdict.repaired': 'korrigiert',
  'heard-verdict.doubtful': 'zweifelhaft',
  'of-class.A': 'der Klasse A',
  'of-class.D': 'der Klasse D',
  'of-class.H': 'der Klasse H',
  'of-class.M': 'der Klasse M',
  'of-class.coast': 'einer Küstenfunkstelle',
  'state-form.plain': 'einfache Daten',
  'state-form.station': 'ein Objekt mit kind „station“',
  'state-form.version': 'eine Version',
  'phase.outgoing.confirming': 'gefragt wird, ob der Anruf wirklich gesendet werden soll',
  'phase.outgoing.waiting-channel': 'warten, bis Kanal 70 frei ist',
  'phase.outgoing.sending': 'der Anruf wird gesendet',
  'phase.outgoing.waiting-answer': 'warten auf die Antwort',
  'phase.outgoing.retry-wait': 'noch keine Antwort; der Anruf wird wiederholt',
  'phase.outgoing.unanswered': 'aufgegeben; ein neuer Versuch ist möglich',
  'phase.outgoing.refused': 'die andere Funkstelle kann nicht nachkommen',
  'phase.outgoing.agreed': 'ein Kanal ist vereinbart; gefragt wird, ob umgeschaltet werden soll',
  'phase.outgoing.on-channel': 'Gespräch auf dem Arbeitskanal',
  'phase.incoming.deciding': 'gefragt wird, wie geantwortet werden soll',
  'phase.incoming.waiting-channel': 'die Antwort wartet, bis Kanal 70 frei ist',
  'phase.incoming.sending': 'die Antwort wird gesendet',
  'phase.incoming.agreed': 'der Anruf führt auf einen Kanal; gefragt wird, ob umgeschaltet werden soll',
  'phase.incoming.on-channel': 'Gespräch auf dem Arbeitskanal',
  'phase.incoming.shown': 'zum Lesen angezeigt',
  'phase.own-distress.prepared': 'erster Schritt: die Abdeckung ist offen, noch nichts ist gesendet',
  'phase.own-distress.countdown': 'zweiter Schritt: die Taste wird gedrückt gehalten',
  'phase.own-distress.waiting-channel': 'kurzes Warten auf Kanal 70',
  'phase.own-distress.sending': 'der Seenotalarm wird gesendet',
  'phase.own-distress.waiting-acknowledgement': 'warten auf Bestätigung; der Alarm wird wiederholt',
  'phase.own-distress.acknowledged': 'mit DSC bestätigt: keine Wiederholungen mehr',
  'phase.own-distress.stopped': 'Wiederholungen von Hand gestoppt',
  'phase.own-distress.interrupted':
    'die Wiederholungen sind unterbrochen: nichts wird gesendet, bis jemand die Taste wieder gedrückt hält',
  'phase.own-distress.cancel-asked': 'gefragt wird, ob es ein Fehlalarm war',
  'phase.own-distress.cancel-waiting': 'der Widerruf wartet kurz auf Kanal 70',
  'phase.own-distress.cancel-sending': 'der Widerruf wird gesendet',
  'phase.own-distress.cancel-voice': 'der Widerruf muss jetzt auf Kanal 16 gesprochen werden',
  'phase.own-distress.cancel-voice-only':
    'das Gerät konnte den Widerruf nicht senden: er muss jetzt auf Kanal 16 gesprochen werden',
  'phase.heard-distress.shown': 'fehlerhaft empfangen: zum Lesen angezeigt',
  'phase.heard-distress.listening':
    'Hörwache auf Kanal 16; die Bestätigung bleibt den Küstenfunkstellen überlassen',
  'phase.heard-distress.undecided':
    'niemand hat innerhalb von fünf Minuten bestätigt: ist Notverkehr zu hören?',
  'phase.heard-distress.coast-answered':
    'bestätigt, oder Notverkehr läuft: kann dieses Schiff Hilfe leisten?',
  'phase.heard-distress.inform-coast':
    'kein Notverkehr, und der Alarm läuft weiter: eine Küstenfunkstelle verständigen',
  'phase.heard-distress.assisting':
    'Hilfeleistung nach Weisung der Küstenfunkstelle oder des Fahrzeugs in Not',
  'phase.heard-distress.acknowledge-asked': 'gefragt wird, ob mit DSC bestätigt werden soll',
  'phase.heard-distress.acknowledge-waiting': 'die Bestätigung wartet auf Kanal 70',
  'phase.heard-distress.acknowledge-sending': 'die Bestätigung wird gesendet',
  'phase.heard-distress.cancelled': 'das Fahrzeug hat seinen Alarm widerrufen',

  'station-log-all': 'Alles Empfangene und Veranlasste ins Funktagebuch eintragen',
  'station-errors-received':
    'Hörwache auf Kanal 16 halten. Ein Notanruf wurde fehlerhaft empfangen: nichts darin ist sicher',
  'station-listen': 'Hörwache auf Kanal 16 halten. Nicht senden. Den Schiffsführer verständigen',
  'station-leave-acknowledgement':
    'Die Bestätigung mit DSC der Seenotleitung (MRCC) oder Küstenwache überlassen',
  'station-wait-acknowledgement': 'Bis zu fünf Minuten auf eine Bestätigung warten',
  'station-listen-for-traffic':
    'Niemand hat innerhalb von fünf Minuten bestätigt. Auf Kanal 16 auf Notverkehr achten',
  'station-inform-if-silent':
    'Ist kein Notverkehr zu hören, eine Küstenfunkstelle oder Seenotleitung (MRCC) auf jedem Weg verständigen: Sprechfunk, Telefon oder, wo erlaubt, DSC-Weiterleitung nur an diese Stelle. In Gewässern der Vereinigten Staaten nicht mit DSC weiterleiten',
  'station-inform-coast':
    'Eine Küstenfunkstelle oder Seenotleitung (MRCC) auf jedem Weg verständigen: Sprechfunk, Telefon oder, wo erlaubt, DSC-Weiterleitung nur an diese Stelle. In Gewässern der Vereinigten Staaten nicht mit DSC weiterleiten',
  'station-inform-if-unacknowledged':
    'Hat keine Küstenfunkstelle bestätigt, eine auf jedem möglichen Weg verständigen',
  'station-master-decides': 'Der Schiffsführer entscheidet, ob dieses Schiff Hilfe leisten kann',
  'station-acknowledge-by-voice':
    'Über Sprechfunk auf Kanal 16 dem Fahrzeug in Not oder der Seenotleitung bestätigen',
  'station-answer-relay':
    'Eine Küstenfunkstelle leitet den Seenotalarm weiter. Wer Hilfe leisten kann, bestätigt ihr die Weiterleitung über Sprechfunk auf Kanal 16',
  'station-follow': 'Die Anweisungen der Küstenfunkstelle oder Seenotleitung befolgen',
  'station-acknowledge-to-stop':
    'Mit DSC nur bestätigen, um einen weiterlaufenden Alarm zu stoppen. Das nur in der Nähe des Fahrzeugs in Not tun. Vorher mit einer Seenotleitung oder Küstenfunkstelle Rücksprache halten',
  'station-wait-channel': 'Warten, bis Kanal 70 frei ist',
  'station-alert-withdrawn':
    'Das Fahrzeug hat seinen Alarm widerrufen. Eintragen. Auf Kanal 16 auf den Widerruf über Sprechfunk achten',
  'station-own-device':
    'Das eigene Mann-über-Bord-Gerät ruft dieses Schiff. Nach der Person Ausschau halten. Umkehren. Die Person an Bord holen',
  'station-own-device-alert':
    'Ist die Person nicht sofort wieder an Bord, den eigenen Seenotalarm senden: Mensch über Bord',
  'station-who-acknowledges':
    'Die Küstenwache, eine Seenotleitung (MRCC) oder eine dafür bestimmte Küstenfunkstelle bestätigt mit DSC',
  'station-report':
    'Den Seenotfall sofort der Seenotleitung (MRCC) oder Küstenwache melden. Diese Funkstelle ist nicht dafür bestimmt, mit DSC zu bestätigen',
  'station-coast-acknowledges':
    'Unverzüglich mit DSC bestätigen. Auf Kanal 16 antworten. In den Vereinigten Staaten der Seenotleitung zuvor eine kurze Frist lassen',
  'station-coast-unanswered': 'Niemand hat den Alarm bestätigt. Mit DSC bestätigen. Auf Kanal 16 antworten',
  'station-coast-informs': 'Die Seenotleitung verständigen',
  'station-coast-leads':
    'Die Leitung des Notverkehrs auf Kanal 16 übernehmen oder der Seenotleitung übergeben',
  'station-stops-repeats': 'Die Bestätigung beendet die Wiederholungen des Alarms',
  'station-ask-by-dsc': 'Mit DSC bestätigen?',
  'station-ask-by-dsc-or-other': 'Mit DSC bestätigen, oder bearbeitet eine andere Funkstelle den Seenotfall?',
  'station-ask-traffic-over': 'Ist der Notverkehr beendet?',
  'station-ask-heard': 'Ist eine Bestätigung über Sprechfunk oder Notverkehr zu hören?',
  'station-ask-traffic': 'Ist auf Kanal 16 Notverkehr zu hören?',
  'station-ask-assist': 'Kann dieses Schiff Hilfe leisten?',
  'station-ask-safe': 'Ist die Person in Sicherheit, oder war es ein Fehlalarm?',
  'station-voice-designated':
    'Eine dafür bestimmte Küstenfunkstelle antwortet nach ihrer DSC-Bestätigung auf Kanal 16',
  'station-voice-relayed':
    'Eine Küstenfunkstelle leitet den Seenotalarm weiter. Ihr über Sprechfunk antworten, wenn Hilfe möglich ist. Ihre Anweisungen befolgen',
  'station-voice-acknowledged':
    'Eine Küstenfunkstelle hat bestätigt. Über Sprechfunk antworten, wenn Hilfe möglich ist. Ihre Anweisungen befolgen',
  'station-voice-traffic':
    'Notverkehr läuft. Nur sprechen, wenn Hilfe möglich ist. Die Anweisungen der Funkstelle befolgen, die den Notverkehr leitet',
  'station-voice-wait':
    'Den Küstenfunkstellen Zeit zur Bestätigung lassen. In der Nähe darf der Schiffsführer die Wartezeit verkürzen',
  'station-voice-near':
    'Keine Küstenfunkstelle hat bestätigt. Ist dieses Schiff in der Nähe, über Sprechfunk auf Kanal 16 bestätigen. Eine Küstenfunkstelle verständigen',
  'station-dsc-no-identity': 'Eigene Kennung ist nicht gespeichert',
  'station-dsc-class': 'Ein Gerät dieser Klasse bestätigt keinen Seenotalarm',
  'station-dsc-relay-unsigned': 'Die Weiterleitung nennt keinen Absender',
  'station-dsc-relay-addressed': 'Die Weiterleitung ist an diese Funkstelle gerichtet',
  'station-dsc-relay-by-voice':
    'Eine Weiterleitung über Sprechfunk auf Kanal 16 der Funkstelle bestätigen, die sie gesendet hat',
  'station-dsc-unidentified': 'Die Kennung des Fahrzeugs in Not ist nicht bekannt',
  'station-dsc-not-designated':
    'Den Seenotfall der Seenotleitung (MRCC) oder Küstenwache melden. Nur die Küstenwache, eine Seenotleitung oder eine dafür bestimmte Küstenfunkstelle bestätigt mit DSC',
  'station-dsc-acknowledged': 'Der Alarm ist bestätigt',
  'station-dsc-traffic': 'Notverkehr läuft: es gibt keinen Alarm zu stoppen',
  'station-dsc-wait':
    'Hörwache auf Kanal 16 halten. Bis zu fünf Minuten warten, ob die Seenotleitung (MRCC) oder Küstenwache bestätigt',
  'station-dsc-not-repeated': 'Der Alarm wurde nicht wiederholt: es gibt nichts zu stoppen',
  'station-dsc-to-stop':
    'Der Alarm läuft weiter, und niemand hat ihn bestätigt. Nur in der Nähe des Fahrzeugs in Not bestätigen. Vorher mit einer Seenotleitung oder Küstenfunkstelle Rücksprache halten',
  'station-dsc-designated': 'Eine dafür bestimmte Küstenfunkstelle bestätigt, von Hand',
  'station-relay-withdrawn': 'Das Fahrzeug hat seinen Alarm widerrufen',
  'station-relay-in-hand':
    'Eine Küstenfunkstelle oder andere Funkstelle bearbeitet den Seenotfall. Ihre Anweisungen befolgen',
  'station-relay-errors': 'Hörwache auf Kanal 16 halten. Der Anruf wurde fehlerhaft empfangen',
  'station-relay-wait':
    'Hörwache auf Kanal 16 halten. Bestätigt innerhalb von fünf Minuten niemand, den Seenotfall an eine Küstenfunkstelle weiterleiten',
  'station-relay-ashore':
    'Niemand hat innerhalb von fünf Minuten bestätigt. Die Seenotleitung (MRCC) oder Küstenwache auf jedem möglichen Weg verständigen',
  'station-relay-to-coast':
    'Niemand hat innerhalb von fünf Minuten bestätigt. Eine Küstenfunkstelle verständigen: wo erlaubt mit einer DSC-Weiterleitung nur an diese Stelle, über Sprechfunk oder auf jedem anderen Weg. In Gewässern der Vereinigten Staaten nicht mit DSC weiterleiten',
  'station-relay-to-many-coast': 'Eine Küstenfunkstelle leitet an die Schiffe weiter, die sie erreichen muss',
  'station-relay-to-many-ship':
    'Auf UKW einen mit DSC empfangenen Alarm nicht mit DSC an alle Schiffe oder ein Seegebiet weiterleiten. Ein Schiff darf das nur, wenn das Fahrzeug in Not nicht selbst alarmieren kann und der Schiffsführer weitere Hilfe für nötig hält',

  'station-setup-identity-missing':
    'Eigene Kennung ist nicht gespeichert: das Gerät kann keine DSC-Anrufe senden',
  'station-setup-identity-form': 'Eigene Kennung {mmsi} hat nicht die Form für diese Art von Gerät',
  'station-setup-position-missing': 'Keine eigene Position: ein Seenotalarm würde ohne Position gesendet',
  'station-setup-position-future': 'Die Position ist auf die Zukunft datiert',
  'station-setup-position-old': 'Position ist {minutes} {minutes:age-minutes} alt, {source:fix-source}',
  'station-setup-time-missing': 'Das Gerät zeigt keine Uhrzeit',
  'station-setup-time-wrong': 'Uhrzeit ist um {seconds} {seconds:off-seconds} falsch',
  'station-setup-channels-missing': 'Keine Arbeitskanäle',
  'station-setup-channel-change': 'Ein DSC-Anruf kann den Kanal automatisch umschalten',
  'station-setup-watch-at-risk':
    'Ein DSC-Anruf kann das Gerät unbemerkt vom überwachten Kanal {watched& oder } wegschalten',
  'station-setup-test-missing': 'Noch kein Testanruf wurde beantwortet',
  'station-setup-test-future': 'Die letzte Antwort auf einen Testanruf ist auf die Zukunft datiert',
  'station-setup-plotter-failed': 'Eine Positionsmeldung kam nicht beim Plotter an',
  'station-setup-plotter-untested': 'Positionsmeldung an den Plotter nicht getestet',
  'station-setup-identity': 'Eigene Kennung {mmsi}',
  'station-setup-position': 'Position kommt vom GNSS-Empfänger',
  'station-setup-position-by-hand': 'Position ist {minutes} {minutes:age-minutes} alt, von Hand eingegeben',
  'station-setup-time': 'Uhrzeit stimmt auf die Minute',
  'station-setup-groups': 'Gruppen: {groups&}',
  'station-setup-no-groups': 'Keine Gruppenkennung',
  'station-setup-channels': 'Arbeitskanäle: {channels&}',
  'station-setup-by-hand': 'Kanal wird von Hand umgeschaltet[, Hörwache auf {watched&}]',
  'station-setup-tested': 'Der letzte Testanruf wurde vor {days} {days:ago-days} beantwortet',
  'station-setup-plotter': 'Eine Positionsmeldung kam beim Plotter an',
  'station-do-enter-identity':
    'Die MMSI der Zuteilungsurkunde eingeben. Die meisten Geräte nehmen sie nur einmal an',
  'station-do-compare-identity':
    'Die Kennung mit der Zuteilungsurkunde vergleichen. Ein Fachhändler kann eine falsche ändern',
  'station-do-give-position': 'Einen GNSS-Empfänger anschließen oder die Position von Hand eingeben',
  'station-do-set-clock-or-position': 'Die Uhr auf UTC stellen oder die Position neu eingeben',
  'station-do-renew-position': 'Den GNSS-Empfänger prüfen oder die Position neu eingeben',
  'station-do-enter-position-again': 'Die Position mindestens alle 4 Stunden neu eingeben',
  'station-do-give-time': 'Einen GNSS-Empfänger anschließen oder UTC eingeben',
  'station-do-set-clock': 'Die Uhr auf UTC stellen, nicht auf Ortszeit',
  'station-do-correct-group': 'Die Gruppe {group} berichtigen oder entfernen',
  'station-do-enter-channels': 'Die in diesen Gewässern erlaubten Arbeitskanäle eingeben',
  'station-do-list-watch':
    'Ist eine Hörwache auf einem anderen Kanal vorgeschrieben (Brücke zu Brücke, Verkehrssicherung), ihn als überwacht eintragen und Kanäle von Hand umschalten',
  'station-do-change-by-hand':
    'Kanäle von Hand umschalten oder die Hörwache mit einem zweiten Empfänger halten',
  'station-do-test':
    'Einen Testanruf an eine Küstenfunkstelle senden, die solche beantwortet, oder an Bekannte. Niemals mit einem Seenotalarm testen',
  'station-do-test-again': 'Die Uhr auf UTC stellen und erneut testen',
  'station-do-check-plotter': 'Die Verkabelung, die Baudrate und die Sätze prüfen, die der Plotter annimmt',
  'station-do-try-plotter':
    'Die Position von Bekannten abfragen und prüfen, ob sie auf dem Plotter erscheint',
  'fix-source.person': 'von Hand eingegeben',
  'fix-source.instrument': 'vom GNSS-Empfänger',
  'age-minutes.1': 'Minute',
  'age-minutes.*': 'Minuten',
  'off-seconds.1': 'Sekunde',
  'off-seconds.*': 'Sekunden',
  'ago-days.1': 'Tag',
  'ago-days.*': 'Tagen',
  'station-timer': '{timer:timer}',
  'timer.alert-hold': 'wie lange die Nottaste gehalten wird, bis ein Seenotalarm gesendet wird',
  'timer.alert-busy-limit': 'längstes Warten eines Seenotalarms auf freien Kanal 70',
  'timer.voice-after-alert':
    'spätester Zeitpunkt für Notanruf und Notmeldung über Sprechfunk, zu denen gleich nach der Aussendung aufgefordert wird',
  'timer.alert-repeat':
    'vom Beginn eines Seenotalarms bis zum Beginn der nächsten Aussendung, zufällig gewählt',
  'timer.attempt-length':
    'in dieser Zeit empfangene Alarme gehören zu einer Aussendung von fünf: 2,25 s und etwas Spielraum',
  'timer.listen-after-alert':
    'Hörwache auf Kanal 16 nach Empfang eines Alarms, bevor etwas anderes entschieden wird',
  'timer.answer-from-ship': 'Zeit für eine Antwort durch einen Menschen an Bord',
  'timer.answer-from-coast': 'Zeit für eine Antwort durch einen Bediener an Land',
  'timer.answer-from-set':
    'Zeit für die automatische Antwort eines Geräts auf Testanruf oder Abfrage: drei Sekunden, ein belegter Kanal und die Aussendung',
  'timer.automatic-answer':
    'eine automatische Antwort beginnt innerhalb dieser Zeit, sonst bleibt sie dem Menschen überlassen',
  'timer.second-attempt': 'vom ersten zum zweiten Anruf, wenn niemand geantwortet hat',
  'timer.third-attempt': 'vom zweiten zum dritten Anruf und zwischen späteren Anrufen',
  'timer.channel-wait': 'längstes Warten eines anderen Anrufs auf freien Kanal 70',
  'timer.transmission-limit':
    'eine Aussendung, die in dieser Zeit nicht als beendet gemeldet ist, gilt als fehlgeschlagen',
  'timer.inactivity': 'ein Anruf wird geschlossen, wenn so lange niemand etwas getan hat',
  'timer.cancel-question':
    'danach gilt keine Antwort auf die Frage, ob der eigene Alarm ein Fehlalarm war, als Nein',
  'timer.alert-memory':
    'ein Alarm desselben Fahrzeugs mit derselben Art des Notfalls, der in dieser Zeit erneut eintrifft, ist eine Wiederholung und löst keinen Ton aus',
  'timer.distress-memory': 'wie lange Notverkehr angezeigt bleibt, wenn niemand ihn schließt',
  'timer.position-warning': 'Alter der eigenen Position, ab dem gewarnt wird',
  'timer.position-erase': 'Alter der eigenen Position, ab dem sie nicht mehr gesendet wird',
};
