import type { StationTexts } from '../../station/internal.ts';
import type { Translation } from '../catalogue.ts';
import { call } from './call.ts';

export const station: Translation<StationTexts> = {
  ...call,
  'station-identity-missing': 'Eigen identiteit is niet opgeslagen: er kan niets worden uitgezonden',
  'station-identity-fixed': 'Eigen identiteit is al opgeslagen: de gebruiker kan die niet wijzigen',
  'station-identity-form': [
    'Eigen identiteit: verwacht {expected}, ontvangen {received}',
    'een nummer dat één station kan hebben',
  ],
  'station-class-cannot-send':
    'Apparatuur {equipment:of-class} zendt dit soort oproep niet uit: {kind:call-kind}',
  'station-not-a-beginning': 'Oproep kan niet met de hand worden gestart: {kind:call-kind}',
  'station-not-of-procedure': 'Oproep hoort niet bij deze procedure: {kind:call-kind}',
  'station-address-missing': ['Oproep: verwacht {expected}, geen ontvangen', 'een adres'],
  'station-call-form': 'Oproep bevat een waarde zonder symbolen: hij kan niet worden uitgezonden',
  'station-call-to-itself': 'Oproep is aan dit station zelf gericht',
  'station-relay-reason': [
    'Relay heeft een reden nodig: niemand heeft binnen vijf minuten bevestigd, of het schip in nood kan zelf niet alarmeren en de schipper acht meer hulp nodig',
    'because',
  ],
  'station-relay-address': [
    'Relay van een niet bevestigd noodalarm: verwacht {expected}. Aan velen alleen als het schip in nood zelf niet kan alarmeren en de schipper meer hulp nodig acht',
    'het adres van één kuststation',
  ],
  'station-relay-not-now': 'Relay van noodalarm: {why}',
  'station-channel-form': [
    'Kanaal: verwacht {expected}, ontvangen {received}',
    'een kanaal met cijfers volgens ITU-R M.1084',
  ],
  'station-channel-barred': 'Kanaal kan niet worden voorgesteld: {bar}',
  'station-reason-missing': [
    'Weigering: verwacht {expected}, ontvangen {received}',
    'een van de tien redenen',
  ],
  'station-settings-form': 'Instellingen: {setting} is ongeldig. Er is geen instelling gewijzigd',
  'station-event-form': ['Gebeurtenis: verwacht {expected}', 'een object'],
  'station-event-kind': 'Gebeurtenis is van een onbekende soort: {received}',
  'station-event-part': 'Gebeurtenis "{kind}": "{part}" ontbreekt of is ongeldig',
  'station-event-unreadable': ['Gebeurtenis kan niet worden gelezen', 'gewone gegevens'],
  'station-alert-in-hand': 'Er loopt al een eigen noodalarm',
  'station-no-alert': 'Er is geen eigen noodalarm voorbereid of uitgezonden',
  'station-no-such-dialogue': 'Dialoog {dialogue} bestaat niet',
  'station-not-now': 'Dialoog {dialogue} staat dit in zijn fase niet toe: {phase}',
  'station-not-on-air': 'Dialoog {dialogue} zendt nu niets uit',
  'station-acknowledgement-not-allowed': 'Bevestiging: {why}',
  'station-fix-form': 'Positie is geen plaats op aarde',
  'station-state-form': ['Opgeslagen toestand: verwacht {expected}', '{form:state-form}'],
  'station-state-newer': [
    'Opgeslagen toestand: verwacht {expected}, ontvangen {received}',
    'versie {version} of ouder',
  ],
  'station-state-repaired': 'Opgeslagen toestand: {part} was onzinnig en is vervangen of weggelaten',
  'station-state-answer':
    'Opgeslagen toestand: het antwoord in {part} paste niet bij de oproep en is weggelaten',
  'station-state-asks':
    'Opgeslagen toestand: {part} zou hebben uitgezonden, daarom wordt het eerst aan iemand gevraagd',
  'station-state-set-aside': 'Opgeslagen toestand: {part} is onmogelijk en is terzijde gelegd',
  'station-caution-distress':
    'Er kunnen levens van afhangen. Volg de regels van de bevoegde instantie en de orders van de schipper. Luister uit op kanaal 16. Software kan fout zijn: ze vervangt geen opleiding en geen opgeleide marifonist',
  'station-caution-sending':
    'Nood-, spoed- en veiligheidsoproepen bereiken elk schip binnen bereik. Zend er alleen een uit op gezag van wie verantwoordelijk is voor het schip, en zoals de vergunning en de nationale regels het toestaan',
  'station-brief':
    '{kind:call-kind}[ van {from}][ aan {to}][ {many:brief-to}][ ({category:category})][, {reason:reason}][ voor kanaal {channel}]',
  'station-brief-place':
    '{kind:call-kind}[ van {from}][ aan {to}][ {many:brief-to}][, voor {distressed}][, {nature:nature}][, {position}][, {lack:brief-lack}][, {time} UTC]',
  'station-brief-moored': 'mogelijk automatisch alarm van een afgemeerd schip[, {from}]',
  'station-unidentified-vessel': 'een niet-geïdentificeerd schip',
  'station-unknown-station': 'een onbekend station',
  'station-received': 'Ontvangen[ ({verdict:heard-verdict})]: {call}',
  'station-received-again': 'Opnieuw ontvangen: {call}',
  'station-received-times': '{times} keer ontvangen: {call}',
  'station-received-in-full': 'Volledig ontvangen: {call}',
  'station-received-damaged': 'Met fouten ontvangen, niets gedaan: {call}',
  'station-answer-damaged': 'Antwoord met fouten ontvangen, niets gedaan: {call}',
  'station-addressed-to-others': 'Aan anderen gericht: {call}',
  'station-unexpected-answer': 'Antwoord op geen enkele oproep van dit station: {call}',
  'station-answered': 'Beantwoord: {call}',
  'station-refused': 'Geweigerd: {call}',
  'station-sent': 'Uitgezonden: {call}',
  'station-sent-times': '{times} keer achter elkaar uitgezonden: {call}',
  'station-not-sent': 'Niet uitgezonden: {call}',
  'station-answer-not-sent': 'Antwoord niet uitgezonden: {call}',
  'station-channel-busy': 'Kanaal 70 was niet vrij: de oproep is niet uitgezonden',
  'station-too-late': 'Kanaal 70 was niet op tijd vrij voor een automatisch antwoord',
  'station-held': 'Noodverkeer gaat voor: de oproep wacht',
  'station-no-answer': 'Geen antwoord na {attempts} van {allowed} oproepen: {call}',
  'station-calling-again': 'Geen antwoord op oproep {attempt} van {allowed}: hij wordt herhaald',
  'station-missed': 'Niet beantwoord: {call}',
  'station-not-followed': 'Niet opgevolgd: {call}',
  'station-closed': 'Afgesloten: {call}',
  'station-closed-unanswered': 'Afgesloten zonder antwoord: {call}',
  'station-closed-for-room': 'Afgesloten om ruimte te maken: {call}',
  'station-still-in-hand': 'Nog bezig: {call}',
  'station-tune-16': 'Schakel met de hand naar kanaal 16',
  'station-watch-left':
    'De marifoon staat op kanaal {channel}, niet op kanaal {watched& of }. Houd daar de verplichte luisterwacht met een andere ontvanger, of schakel terug',
  'station-finished': 'Afgelopen[ op kanaal {channel}]',
  'station-closed-idle':
    'Afgesloten na lange tijd zonder bediening[. De marifoon staat nog op kanaal {channel}]',
  'station-position-old': 'Eigen positie is oud: voer die opnieuw in of controleer de GNSS-ontvanger',
  'station-position-erased':
    'Eigen positie is te oud om uit te zenden: voer die opnieuw in of controleer de GNSS-ontvanger',
  'station-ask-send': 'Uitzenden: {call}?',
  'station-ask-answer': 'Beantwoorden: {call}?',
  'station-ask-tune': 'Omschakelen[ naar kanaal {channel}]?',
  'station-ask-cancel':
    'Was het alarm vals? Dan wordt het met DSC en daarna via spraak op kanaal 16 geannuleerd',
  'station-ask-repeat':
    'Het eigen noodalarm wordt niet meer herhaald. Houd de toets ingedrukt om het opnieuw uit te zenden. Annuleer het als het vals was',
  'station-ask-acknowledge': 'Noodalarm met DSC bevestigen, schip in nood: {vessel}?',
  'station-alert-prepared':
    'Houd de toets ingedrukt om een noodalarm uit te zenden. Doe dat alleen bij ernstig en onmiddellijk gevaar, op gezag van de schipper',
  'station-alert-countdown': 'Houd de toets ingedrukt: {nature:nature}',
  'station-alert-waiting': 'Poging {attempts} uitgezonden. Luister uit op kanaal 16',
  'station-alert-speak':
    'Zend nu de noodoproep en het noodbericht via spraak uit op kanaal 16. Wacht niet op een bevestiging',
  'station-alert-failed':
    'Roep via spraak op kanaal 16. Gebruik ook elk ander middel. De marifoon kon het alarm niet uitzenden',
  'station-alert-acknowledged': 'Het alarm is bevestigd[ door {by}]',
  'station-alert-acknowledged-damaged':
    'Er is een bevestiging met fouten ontvangen[: {call}]. Het alarm gaat door. Stoppen?',
  'station-alert-relayed': 'Het alarm is doorgegeven[: {call}]',
  'station-alert-stopped':
    'Herhalingen met de hand gestopt. Als het alarm vals was, moet het nog worden geannuleerd',
  'station-alert-not-sent': 'Noodalarm niet uitgezonden',
  'station-alert-spoken': 'Noodoproep en noodbericht gesproken op kanaal 16',
  'station-alert-closed': 'Eigen noodalarm afgesloten',
  'station-cancel-failed':
    'Annuleer het valse alarm meteen via spraak op kanaal 16. De marifoon heeft de annulering niet uitgezonden',
  'station-cancelled': 'Vals alarm geannuleerd met DSC en via spraak op kanaal 16',
  'station-cancelled-by-voice':
    'Vals alarm geannuleerd via spraak op kanaal 16. De marifoon heeft de annulering niet met DSC uitgezonden',
  'station-cancelled-by-dsc':
    'Spreek de annulering uit op kanaal 16. Het valse alarm is alleen met DSC geannuleerd',
  'station-not-cancelled':
    'Spreek de annulering nu uit op kanaal 16. Het valse alarm is NIET geannuleerd, met DSC noch via spraak',
  'station-distress-traffic': 'Noodverkeer op kanaal 16, schip in nood: {vessel}',
  'station-distress-acknowledged': 'Noodalarm bevestigd door {by}. Schip in nood: {vessel}',
  'station-distress-cancelled': 'Noodalarm geannuleerd door {vessel}',
  'station-distress-closed': 'Noodgeval afgesloten: {vessel}',
  'station-acknowledgement-not-sent': 'De bevestiging is niet uitgezonden',
  'station-acknowledged-by-voice': 'Via spraak bevestigd op kanaal 16: {vessel}',
  'station-assisting': 'Kan hulp verlenen, besluit van de schipper: {vessel}',
  'station-not-assisting': 'Kan geen hulp verlenen, genoteerd, marifoon teruggezet: {vessel}',
  'station-nothing-more': 'Niets meer gehoord, genoteerd, marifoon teruggezet: {vessel}',
  'station-phase': '{phase:phase}',
  'brief-to.area': 'aan een gebied',
  'brief-to.all-ships': 'aan alle schepen',
  'brief-lack.position': 'geen positie',
  'heard-verdict.repaired': 'gecorrigeerd',
  'heard-verdict.doubtful': 'twijfelachtig',
  'of-class.A': 'van klasse A',
  'of-class.D': 'van klasse D',
  'of-class.H': 'van klasse H',
  'of-class.M': 'van klasse M',
  'of-class.coast': 'van een kuststation',
  'state-form.plain': 'gewone gegevens',
  'state-form.station': 'een object met kind "station"',
  'state-form.version': 'een versie',
  'phase.outgoing.confirming': 'er wordt gevraagd of de oproep echt moet worden uitgezonden',
  'phase.outgoing.waiting-channel': 'wachten tot kanaal 70 vrij is',
  'phase.outgoing.sending': 'de oproep wordt uitgezonden',
  'phase.outgoing.waiting-answer': 'wachten op het antwoord',
  'phase.outgoing.retry-wait': 'nog geen antwoord; de oproep wordt herhaald',
  'phase.outgoing.unanswered': 'opgegeven; opnieuw proberen kan',
  'phase.outgoing.refused': 'het andere station kan niet voldoen',
  'phase.outgoing.agreed': 'er is een kanaal afgesproken; er wordt gevraagd of erheen geschakeld moet worden',
  'phase.outgoing.on-channel': 'gesprek op het werkkanaal',
  'phase.incoming.deciding': 'er wordt gevraagd hoe te antwoorden',
  'phase.incoming.waiting-channel': 'het antwoord wacht tot kanaal 70 vrij is',
  'phase.incoming.sending': 'het antwoord wordt uitgezonden',
  'phase.incoming.agreed':
    'de oproep leidt naar een kanaal; er wordt gevraagd of erheen geschakeld moet worden',
  'phase.incoming.on-channel': 'gesprek op het werkkanaal',
  'phase.incoming.shown': 'getoond om te lezen',
  'phase.own-distress.prepared': 'eerste handeling gedaan: het klepje is open, er is nog niets uitgezonden',
  'phase.own-distress.countdown': 'tweede handeling: de toets wordt ingedrukt gehouden',
  'phase.own-distress.waiting-channel': 'kort wachten op kanaal 70',
  'phase.own-distress.sending': 'het noodalarm wordt uitgezonden',
  'phase.own-distress.waiting-acknowledgement': 'wachten op een bevestiging; het noodalarm wordt herhaald',
  'phase.own-distress.acknowledged': 'bevestigd met DSC: geen herhalingen meer',
  'phase.own-distress.stopped': 'de herhalingen zijn met de hand gestopt',
  'phase.own-distress.interrupted':
    'de herhalingen zijn onderbroken: er wordt niets uitgezonden tot iemand de toets weer ingedrukt houdt',
  'phase.own-distress.cancel-asked': 'er wordt gevraagd of het alarm vals was',
  'phase.own-distress.cancel-waiting': 'de annulering wacht kort op kanaal 70',
  'phase.own-distress.cancel-sending': 'de annulering wordt uitgezonden',
  'phase.own-distress.cancel-voice': 'de annulering moet nu worden uitgesproken op kanaal 16',
  'phase.own-distress.cancel-voice-only':
    'de marifoon kon de annulering niet uitzenden: die moet nu worden uitgesproken op kanaal 16',
  'phase.heard-distress.shown': 'met fouten ontvangen: getoond om te lezen',
  'phase.heard-distress.listening':
    'uitluisteren op kanaal 16; de bevestiging wordt aan kuststations overgelaten',
  'phase.heard-distress.undecided':
    'niemand heeft binnen vijf minuten bevestigd: is er noodverkeer te horen?',
  'phase.heard-distress.coast-answered':
    'bevestigd, of er is noodverkeer gaande: kan dit schip hulp verlenen?',
  'phase.heard-distress.inform-coast': 'geen noodverkeer, en het alarm gaat door: waarschuw een kuststation',
  'phase.heard-distress.assisting':
    'hulp verlenen volgens de aanwijzingen van het kuststation of het schip in nood',
  'phase.heard-distress.acknowledge-asked': 'er wordt gevraagd of met DSC bevestigd moet worden',
  'phase.heard-distress.acknowledge-waiting': 'de bevestiging wacht op kanaal 70',
  'phase.heard-distress.acknowledge-sending': 'de bevestiging wordt uitgezonden',
  'phase.heard-distress.cancelled': 'het schip heeft zijn alarm geannuleerd',

  'station-log-all': 'Noteer alles wat is ontvangen en gedaan',
  'station-errors-received':
    'Luister uit op kanaal 16. Er is een noodoproep met fouten ontvangen: niets daarin is zeker',
  'station-listen': 'Luister uit op kanaal 16. Zend niet uit. Waarschuw de schipper',
  'station-leave-acknowledgement': 'Laat de bevestiging met DSC aan de Kustwacht over',
  'station-wait-acknowledgement': 'Wacht hoogstens vijf minuten op een bevestiging',
  'station-listen-for-traffic':
    'Niemand heeft binnen vijf minuten bevestigd. Luister op kanaal 16 of er noodverkeer is',
  'station-inform-if-silent':
    'Hoort u geen noodverkeer, waarschuw dan op elke manier een kuststation of MRCC: via spraak, per telefoon of, als de regels dat toestaan, met een DSC-relay aan dat station alleen. In wateren van de Verenigde Staten niet met DSC doorgeven',
  'station-inform-coast':
    'Waarschuw een kuststation of reddingscoördinatiecentrum (MRCC) op elke mogelijke manier: via spraak, per telefoon of, als de regels dat toestaan, met een DSC-relay aan dat station alleen. In wateren van de Verenigde Staten niet met DSC doorgeven',
  'station-inform-if-unacknowledged':
    'Als geen kuststation heeft bevestigd, waarschuw er dan een op elke mogelijke manier',
  'station-master-decides': 'De schipper besluit of dit schip hulp kan verlenen',
  'station-acknowledge-by-voice':
    'Bevestig via spraak op kanaal 16 aan het schip in nood of aan het reddingscoördinatiecentrum (MRCC)',
  'station-answer-relay':
    'Een kuststation geeft het noodalarm door. Kan dit schip hulp verlenen, bevestig de relay dan via spraak op kanaal 16 aan dat station',
  'station-follow': 'Volg de aanwijzingen van het kuststation of reddingscoördinatiecentrum',
  'station-acknowledge-to-stop':
    'Bevestig alleen met DSC om een alarm te stoppen dat doorgaat. Doe dat alleen in de buurt van het schip in nood. Overleg eerst met een reddingscoördinatiecentrum of kuststation',
  'station-wait-channel': 'Wacht tot kanaal 70 vrij is',
  'station-alert-withdrawn':
    'Het schip heeft zijn alarm geannuleerd. Noteer dat. Luister op kanaal 16 naar de gesproken annulering',
  'station-own-device':
    'Het eigen man-overboordbaken roept dit schip op. Kijk uit naar de drenkeling. Keer om. Haal de drenkeling aan boord',
  'station-own-device-alert':
    'Is de drenkeling niet meteen aan boord, zend dan het eigen noodalarm uit: man overboord',
  'station-who-acknowledges':
    'De Kustwacht, een reddingscoördinatiecentrum (MRCC) of een daartoe aangewezen kuststation bevestigt met DSC',
  'station-report':
    'Meld het noodgeval meteen aan de Kustwacht of het reddingscoördinatiecentrum (MRCC). Dit station is niet aangewezen om met DSC te bevestigen',
  'station-coast-acknowledges':
    'Bevestig onverwijld met DSC. Antwoord op kanaal 16. Geef in de Verenigde Staten het reddingscoördinatiecentrum eerst kort de gelegenheid',
  'station-coast-unanswered': 'Niemand heeft het alarm bevestigd. Bevestig met DSC. Antwoord op kanaal 16',
  'station-coast-informs': 'Waarschuw het reddingscoördinatiecentrum',
  'station-coast-leads':
    'Neem de leiding van het noodverkeer op kanaal 16, of draag die over aan het reddingscoördinatiecentrum (MRCC)',
  'station-stops-repeats': 'De bevestiging stopt de herhalingen van het alarm',
  'station-ask-by-dsc': 'Bevestigen met DSC?',
  'station-ask-by-dsc-or-other': 'Bevestigen met DSC, of behandelt een ander station het noodgeval?',
  'station-ask-traffic-over': 'Is het noodverkeer voorbij?',
  'station-ask-heard': 'Is er een gesproken bevestiging of noodverkeer te horen?',
  'station-ask-traffic': 'Is er noodverkeer te horen op kanaal 16?',
  'station-ask-assist': 'Kan dit schip hulp verlenen?',
  'station-ask-safe': 'Is de drenkeling veilig, of was het vals alarm?',
  'station-voice-designated':
    'Een daartoe aangewezen kuststation antwoordt op kanaal 16 na zijn bevestiging met DSC',
  'station-voice-relayed':
    'Een kuststation geeft het noodalarm door. Antwoord via spraak als dit schip hulp kan verlenen. Volg de aanwijzingen van dat station',
  'station-voice-acknowledged':
    'Een kuststation heeft bevestigd. Antwoord via spraak als dit schip hulp kan verlenen. Volg de aanwijzingen van dat station',
  'station-voice-traffic':
    'Er is noodverkeer gaande. Spreek alleen als dit schip hulp kan verlenen. Volg de aanwijzingen van het station dat het noodverkeer leidt',
  'station-voice-wait':
    'Geef kuststations tijd om te bevestigen. In de buurt mag de schipper de wachttijd verkorten',
  'station-voice-near':
    'Geen kuststation heeft bevestigd. Is dit schip in de buurt, bevestig dan via spraak op kanaal 16. Waarschuw een kuststation',
  'station-dsc-no-identity': 'Eigen identiteit is niet opgeslagen',
  'station-dsc-class': 'Apparatuur van deze klasse bevestigt geen noodalarm',
  'station-dsc-relay-unsigned': 'De relay noemt geen afzender',
  'station-dsc-relay-addressed': 'De relay is aan dit station gericht',
  'station-dsc-relay-by-voice': 'Bevestig een relay via spraak op kanaal 16 aan het station dat hem uitzond',
  'station-dsc-unidentified': 'De identiteit van het schip in nood is niet bekend',
  'station-dsc-not-designated':
    'Meld het noodgeval aan de Kustwacht. Alleen de Kustwacht, een reddingscoördinatiecentrum of een daartoe aangewezen kuststation bevestigt met DSC',
  'station-dsc-acknowledged': 'Het alarm is bevestigd',
  'station-dsc-traffic': 'Er is noodverkeer gaande: er is geen alarm om te stoppen',
  'station-dsc-wait': 'Luister uit op kanaal 16. Wacht tot vijf minuten op de bevestiging van de Kustwacht',
  'station-dsc-not-repeated': 'Het alarm is niet herhaald: er valt niets te stoppen',
  'station-dsc-to-stop':
    'Het alarm gaat door en niemand heeft het bevestigd. Bevestig alleen in de buurt van het schip in nood. Overleg eerst met een reddingscoördinatiecentrum of kuststation',
  'station-dsc-designated': 'Een daartoe aangewezen kuststation bevestigt, met de hand',
  'station-relay-withdrawn': 'Het schip heeft zijn alarm geannuleerd',
  'station-relay-in-hand':
    'Een kuststation of ander station behandelt het noodgeval. Volg de aanwijzingen van dat station',
  'station-relay-errors': 'Luister uit op kanaal 16. De oproep is met fouten ontvangen',
  'station-relay-wait':
    'Luister uit op kanaal 16. Bevestigt niemand binnen vijf minuten, geef het noodgeval dan door aan één kuststation',
  'station-relay-ashore':
    'Niemand heeft binnen vijf minuten bevestigd. Waarschuw de Kustwacht of het reddingscoördinatiecentrum op elke mogelijke manier',
  'station-relay-to-coast':
    'Niemand heeft binnen vijf minuten bevestigd. Waarschuw één kuststation: als de regels dat toestaan met een DSC-relay aan dat station alleen, via spraak of op elke andere manier. In wateren van de Verenigde Staten niet met DSC doorgeven',
  'station-relay-to-many-coast': 'Een kuststation geeft door aan de schepen die het moet bereiken',
  'station-relay-to-many-ship':
    'Geef op VHF een met DSC ontvangen alarm niet met DSC door aan alle schepen of een gebied. Een schip mag dat alleen als het schip in nood zelf niet kan alarmeren en de schipper meer hulp nodig acht',

  'station-setup-identity-missing':
    'Eigen identiteit is niet opgeslagen: de marifoon kan geen DSC-oproepen uitzenden',
  'station-setup-identity-form': 'Eigen identiteit {mmsi} heeft niet de vorm voor dit soort marifoon',
  'station-setup-position-missing': 'Geen eigen positie: een noodalarm zou zonder positie uitgaan',
  'station-setup-position-future': 'De positie is in de toekomst gedateerd',
  'station-setup-position-old': 'Positie is {minutes} {minutes:age-minutes} oud, {source:fix-source}',
  'station-setup-time-missing': 'De marifoon toont geen tijd',
  'station-setup-time-wrong': 'Tijd is {seconds} {seconds:off-seconds} verkeerd',
  'station-setup-channels-missing': 'Geen werkkanalen',
  'station-setup-channel-change': 'Een DSC-oproep kan het kanaal automatisch omschakelen',
  'station-setup-watch-at-risk':
    'Een DSC-oproep kan de marifoon ongemerkt van het uitgeluisterde kanaal {watched& of } halen',
  'station-setup-test-missing': 'Er is nog geen testoproep beantwoord',
  'station-setup-test-future': 'Het laatste antwoord op een testoproep is in de toekomst gedateerd',
  'station-setup-plotter-failed': 'Een positiemelding bereikte de plotter niet',
  'station-setup-plotter-untested': 'Positiemelding naar de plotter niet getest',
  'station-setup-identity': 'Eigen identiteit {mmsi}',
  'station-setup-position': 'Positie komt van de GNSS-ontvanger',
  'station-setup-position-by-hand': 'Positie is {minutes} {minutes:age-minutes} oud, met de hand ingevoerd',
  'station-setup-time': 'Tijd klopt op de minuut',
  'station-setup-groups': 'Groepen: {groups&}',
  'station-setup-no-groups': 'Geen groepsidentiteit',
  'station-setup-channels': 'Werkkanalen: {channels&}',
  'station-setup-by-hand': 'Kanaal wordt met de hand omgeschakeld[, uitluisteren op {watched&}]',
  'station-setup-tested': 'De laatste testoproep werd {days} {days:ago-days} geleden beantwoord',
  'station-setup-plotter': 'Een positiemelding bereikte de plotter',
  'station-do-enter-identity':
    'Voer de MMSI van de vergunning in. De meeste marifoons nemen hem maar één keer aan',
  'station-do-compare-identity':
    'Vergelijk de identiteit met de vergunning. Een dealer kan een verkeerde wijzigen',
  'station-do-give-position': 'Sluit een GNSS-ontvanger aan, of voer de positie met de hand in',
  'station-do-set-clock-or-position': 'Zet de klok op UTC, of voer de positie opnieuw in',
  'station-do-renew-position': 'Controleer de GNSS-ontvanger, of voer de positie opnieuw in',
  'station-do-enter-position-again': 'Voer de positie minstens elke 4 uur opnieuw in',
  'station-do-give-time': 'Sluit een GNSS-ontvanger aan, of voer UTC in',
  'station-do-set-clock': 'Zet de klok op UTC, niet op plaatselijke tijd',
  'station-do-correct-group': 'Verbeter of verwijder de groep {group}',
  'station-do-enter-channels': 'Voer de werkkanalen in die in deze wateren zijn toegestaan',
  'station-do-list-watch':
    'Is uitluisteren op een ander kanaal verplicht (brug-brug, verkeersbegeleiding), zet dat kanaal dan in de lijst en schakel met de hand om',
  'station-do-change-by-hand': 'Schakel met de hand om, of luister uit met een tweede ontvanger',
  'station-do-test':
    'Zend een testoproep aan een kuststation dat daarop antwoordt, of aan een bekende. Test nooit met een noodalarm',
  'station-do-test-again': 'Zet de klok op UTC en test opnieuw',
  'station-do-check-plotter': 'Controleer de bekabeling, de baudrate en de zinnen die de plotter aanneemt',
  'station-do-try-plotter': 'Vraag de positie van een bekende op en kijk of die op de plotter verschijnt',
  'fix-source.person': 'met de hand ingevoerd',
  'fix-source.instrument': 'van de GNSS-ontvanger',
  'age-minutes.1': 'minuut',
  'age-minutes.*': 'minuten',
  'off-seconds.1': 'seconde',
  'off-seconds.*': 'seconden',
  'ago-days.1': 'dag',
  'ago-days.*': 'dagen',
  'station-timer': '{timer:timer}',
  'timer.alert-hold': 'hoe lang de noodtoets wordt ingedrukt voordat een noodalarm uitgaat',
  'timer.alert-busy-limit': 'langste wachttijd van een noodalarm tot kanaal 70 vrij is',
  'timer.voice-after-alert':
    'uiterste moment voor noodoproep en noodbericht via spraak, waarom gevraagd wordt zodra het alarm is uitgezonden',
  'timer.alert-repeat':
    'van het begin van een noodalarm tot het begin van de volgende poging, willekeurig gekozen',
  'timer.attempt-length':
    'alarmen die binnen deze tijd worden ontvangen, horen bij één poging van vijf: 2,25 s en enige speling',
  'timer.listen-after-alert':
    'uitluisteren op kanaal 16 na ontvangst van een alarm, voordat iets anders wordt besloten',
  'timer.answer-from-ship': 'tijd voor iemand aan boord om te antwoorden',
  'timer.answer-from-coast': 'tijd voor een operator aan de wal om te antwoorden',
  'timer.answer-from-set':
    'tijd voor een toestel om automatisch op een testoproep of bereikbaarheidsvraag te antwoorden: drie seconden, een bezet kanaal en de uitzending',
  'timer.automatic-answer':
    'een automatisch antwoord begint binnen deze tijd, anders wordt het aan de gebruiker overgelaten',
  'timer.second-attempt': 'van de eerste naar de tweede oproep als niemand antwoordde',
  'timer.third-attempt': 'van de tweede naar de derde oproep, en tussen latere oproepen',
  'timer.channel-wait': 'langste wachttijd van een andere oproep tot kanaal 70 vrij is',
  'timer.transmission-limit':
    'een uitzending die binnen deze tijd niet als beëindigd is gemeld, geldt als mislukt',
  'timer.inactivity': 'een oproep wordt afgesloten als er zo lang niets mee is gedaan',
  'timer.cancel-question': 'daarna geldt geen antwoord op de vraag of het eigen alarm vals was als nee',
  'timer.alert-memory':
    'een alarm van hetzelfde schip met dezelfde aard dat binnen deze tijd opnieuw komt, is een herhaling en geeft geen geluid',
  'timer.distress-memory': 'hoe lang noodverkeer zichtbaar blijft als niemand het afsluit',
  'timer.position-warning': 'leeftijd van de eigen positie waarbij wordt gewaarschuwd',
  'timer.position-erase': 'leeftijd van de eigen positie waarbij die niet meer wordt uitgezonden',
};
