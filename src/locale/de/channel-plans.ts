import type { planTexts } from '../../channel/internal.ts';
import type { Translation } from '../catalogue.ts';

export const channelPlans: Translation<typeof planTexts> = {
  'channel-text-0-5-to-1-w-set-by-hand-or-automatically-note-1':
    '0,5 bis 1 W, von Hand oder selbsttätig eingestellt (Anmerkung 1)',
  'channel-text-0-5-to-1-w-the-set-reduces-its-power-automatically-note-1':
    '0,5 bis 1 W: das Gerät senkt seine Leistung selbsttätig (Anmerkung 1)',
  'channel-text-1-w-at-most': 'höchstens 1 W',
  'channel-text-1-w-for-port-operations-on-the-st-lawrence':
    '1 W für den Hafenbetrieb auf dem Sankt-Lorenz-Strom',
  'channel-text-1-w-in-normal-use': '1 W im Normalbetrieb',
  'channel-text-1-w-normally-and-10-w-at-most-in-the-seattle-vessel-traffic-area':
    'im Verkehrsgebiet Seattle normal 1 W und höchstens 10 W',
  'channel-text-1-w-on-the-st-lawrence-and-great-lakes': '1 W auf dem Sankt-Lorenz-Strom und den Großen Seen',
  'channel-text-1-w-radiated-note-15': '1 W Strahlungsleistung (Anmerkung 15)',
  'channel-text-1-w-radiated-on-board-elsewhere-25-w-unless-a-national-rule-says-less':
    'an Bord 1 W Strahlungsleistung; sonst 25 W, sofern eine nationale Regelung nicht weniger vorschreibt',
  'channel-text-1-w-radiated-on-board-note-24-no-other-limit-is-printed':
    'an Bord 1 W Strahlungsleistung (Anmerkung 24); keine andere Grenze ist abgedruckt',
  'channel-text-1-w-radiated-to-protect-channel-16-note-27':
    '1 W Strahlungsleistung zum Schutz von Kanal 16 (Anmerkung 27)',
  'channel-text-1-w-the-set-reduces-its-power-automatically-and-the-operator-may-override-it-up-to-25-w':
    '1 W: das Gerät senkt seine Leistung selbsttätig, und der Bediener darf sie bis 25 W anheben',
  'channel-text-1-w-to-protect-channel-16': '1 W zum Schutz von Kanal 16',
  'channel-text-100-mw-e-i-r-p-aerial-at-most-1-m-above-the-sea':
    '100 mW e.i.r.p., Antenne höchstens 1 m über dem Wasser',
  'channel-text-12-5-khz-channels-must-not-disturb-06-13-15-16-17-70-ais-1-and-ais-2-note-e':
    'Kanäle mit 12,5 kHz dürfen 06, 13, 15, 16, 17, 70, AIS 1 und AIS 2 nicht stören (Anmerkung e)',
  'channel-text-12-5-w-at-most-note-22': 'höchstens 12,5 W (Anmerkung 22)',
  'channel-text-12-5-w-for-class-a-sets-1-w-2-w-or-5-w-for-class-b':
    '12,5 W für Geräte der Klasse A; 1 W, 2 W oder 5 W für Klasse B',
  'channel-text-155-000-to-155-975-mhz-may-otherwise-be-used-on-board-only-with-special-consent-pts-licence-terms':
    '155,000 bis 155,975 MHz dürfen sonst an Bord nur mit besonderer Zustimmung benutzt werden (PTS-Genehmigungsbedingungen)',
  'channel-text-a-calling-channel-move-off-it-to-talk':
    'ein Anrufkanal: zum Sprechen auf einen anderen Kanal wechseln',
  'channel-text-a-channel-l3-may-exist-it-is-not-in-the-terms-read-and-left-out':
    'ein Kanal L3 kann bestehen: er kommt in den gelesenen Bedingungen nicht vor und fehlt hier',
  'channel-text-a-channel-of-its-user': 'ein Kanal seines Benutzers',
  'channel-text-a-channel-with-no-use-stated-for-an-area-may-be-used-between-ships-industry-canada-letter-2002':
    'ein Kanal, für den in einem Gebiet nichts angegeben ist, darf zwischen Schiffen benutzt werden (Brief von Industry Canada, 2002)',
  'channel-text-a-hand-held-set-on-an-outside-aerial-gives-at-most-1-w-on-1-to-15-17-to-28-and-60-to-88-except-on-23-and-83-with-the-coastguard-note-3':
    'ein Handfunkgerät an einer Außenantenne gibt auf 1 bis 15, 17 bis 28 und 60 bis 88 höchstens 1 W ab, außer auf 23 und 83 mit der Küstenwache (Anmerkung 3)',
  'channel-text-aerial-at-most-1-m-above-the-sea': 'Antenne höchstens 1 m über dem Wasser',
  'channel-text-after-such-an-alert-16-is-the-channel-to-speak-on-note-14':
    'nach einem solchen Alarm wird auf 16 gesprochen (Anmerkung 14)',
  'channel-text-all-but-parts-of-the-lower-mississippi-and-its-approaches':
    'überall außer Teilen des unteren Mississippi und seiner Zufahrten',
  'channel-text-amendments-after-march-2025-were-not-seen-the-list-of-october-2025-is-known-at-second-hand':
    'Änderungen nach März 2025 lagen nicht vor; die Liste vom Oktober 2025 ist nur aus zweiter Hand bekannt',
  'channel-text-application-specific-messages': 'anwendungsspezifische Meldungen',
  'channel-text-at-most-in-the-seattle-vessel-traffic-area': 'höchstens, im Verkehrsgebiet Seattle',
  'channel-text-atlantic': 'Atlantik',
  'channel-text-atlantic-and-pacific': 'Atlantik und Pazifik',
  'channel-text-automatic-identification-system': 'automatisches Identifizierungssystem',
  'channel-text-between-ships-and-port-operations': 'zwischen Schiffen und Hafenbetrieb',
  'channel-text-between-ships-and-port-operations-67-search-and-rescue-on-scene-note-5-73-oil-pollution-on-the-north-sea-note-12':
    'zwischen Schiffen und Hafenbetrieb; 67 Suche und Rettung vor Ort (Anmerkung 5), 73 Ölverschmutzung auf der Nordsee (Anmerkung 12)',
  'channel-text-between-ships-and-port-operations-search-and-rescue-and-pollution-control-in-europe-and-canada':
    'zwischen Schiffen und Hafenbetrieb; Suche und Rettung und Bekämpfung von Verschmutzung in Europa und Kanada',
  'channel-text-between-ships-and-with-the-shore-rescue-and-pollution-control':
    'zwischen Schiffen und mit Land; Rettung und Bekämpfung von Verschmutzung',
  'channel-text-between-ships-fallback-for-channel-10-note-8':
    'zwischen Schiffen; Ersatz für Kanal 10 (Anmerkung 8)',
  'channel-text-between-ships-port-operations-and-ship-movement':
    'zwischen Schiffen, Hafenbetrieb und Schiffslenkung',
  'channel-text-both-coasts-and-lake-winnipeg': 'beide Küsten und der Winnipegsee',
  'channel-text-call-on-10-13-is-its-fallback-notes-7-and-8':
    'auf 10 anrufen; 13 ist der Ersatz (Anmerkungen 7 und 8)',
  'channel-text-calling-by-pleasure-craft-commercial-and-non-commercial-working':
    'Anruf durch Sportboote; gewerblicher und nicht gewerblicher Arbeitsverkehr',
  'channel-text-check-locally-whether-one-frequency-or-two-are-in-use':
    'vor Ort prüfen, ob eine oder zwei Frequenzen benutzt werden',
  'channel-text-coast-areas-1-to-9-not-assignable-in-areas-10-to-42':
    'Küstengebiete 1 bis 9; in den Gebieten 10 bis 42 nicht zuteilbar',
  'channel-text-coast-guard-and-government-commercial-in-places':
    'Küstenwache und Behörden; örtlich gewerblich',
  'channel-text-coast-guard-and-national-defence': 'Küstenwache und Landesverteidigung',
  'channel-text-coast-guard-and-other-agencies-its-working-channel-on-the-pacific-since-2009':
    'Küstenwache und andere Behörden; am Pazifik seit 2009 ihr Arbeitskanal',
  'channel-text-coast-guard-liaison': 'Verbindung mit der Küstenwache',
  'channel-text-coast-guard-liaison-and-its-safety-broadcasts-after-an-announcement-on-16':
    'Verbindung mit der Küstenwache und ihre Sicherheitsmeldungen nach Ankündigung auf 16',
  'channel-text-coast-guard-on-the-pacific-commercial-fishing-on-the-atlantic':
    'am Pazifik Küstenwache, am Atlantik gewerbliche Fischerei',
  'channel-text-coast-guard-only': 'nur Küstenwache',
  'channel-text-coast-of-british-columbia': 'Küste von British Columbia',
  'channel-text-coastguard-pollution-control-and-reserve-for-safety-broadcasts':
    'Bekämpfung von Verschmutzung durch die Küstenwache und Reserve für Sicherheitsmeldungen',
  'channel-text-coastguard-rescue-units-and-vessels-they-invite':
    'Küstenwache, Rettungseinheiten und Fahrzeuge, die sie dazu auffordern',
  'channel-text-coastguard-safety-broadcasts-and-radio-medical-advice':
    'Sicherheitsmeldungen der Küstenwache und funkärztliche Beratung',
  'channel-text-coastguard-safety-broadcasts-until-2017-since-then-as-assigned':
    'bis 2017 Sicherheitsmeldungen der Küstenwache, seither nach Zuweisung',
  'channel-text-coastguard-working-with-small-craft-and-in-rescue':
    'Küstenwache mit kleinen Fahrzeugen und bei Rettungen',
  'channel-text-commercial-and-safety-between-ships':
    'gewerblicher Verkehr und Sicherheit, zwischen Schiffen',
  'channel-text-commercial-fishing': 'gewerbliche Fischerei',
  'channel-text-commercial-fishing-on-the-atlantic': 'gewerbliche Fischerei am Atlantik',
  'channel-text-commercial-fishing-on-the-atlantic-elsewhere-between-ships-rescue-and-pollution-control':
    'am Atlantik gewerbliche Fischerei, sonst zwischen Schiffen; Rettung und Bekämpfung von Verschmutzung',
  'channel-text-commercial-talk-between-ships-bridge-to-bridge-on-the-lower-mississippi-pleasure-craft-in-puget-sound':
    'gewerblicher Verkehr zwischen Schiffen; am unteren Mississippi von Brücke zu Brücke; Sportboote im Puget Sound',
  'channel-text-commercial-talk-between-ships-fishing-vessels-and-their-aircraft':
    'gewerblicher Verkehr zwischen Schiffen, Fischereifahrzeugen und ihren Luftfahrzeugen',
  'channel-text-commercial-vessels-may-use-it-in-puget-sound-and-juan-de-fuca-only':
    'Berufsschifffahrt darf ihn nur im Puget Sound und in der Juan-de-Fuca-Straße benutzen',
  'channel-text-commercial-working': 'gewerblicher Arbeitsverkehr',
  'channel-text-commercial-working-also-with-aircraft-in-support':
    'gewerblicher Arbeitsverkehr, auch mit unterstützenden Luftfahrzeugen',
  'channel-text-commercial-working-and-rescue-and-pollution-control-with-aircraft':
    'gewerblicher Arbeitsverkehr sowie Rettung und Bekämpfung von Verschmutzung mit Luftfahrzeugen',
  'channel-text-commercial-working-between-ships-only': 'gewerblicher Arbeitsverkehr, nur zwischen Schiffen',
  'channel-text-commercial-working-non-commercial-on-the-great-lakes':
    'gewerblicher Arbeitsverkehr; auf den Großen Seen auch nicht gewerblicher',
  'channel-text-commercial-working-towing-on-the-pacific':
    'gewerblicher Arbeitsverkehr; am Pazifik Schleppverkehr',
  'channel-text-commercial-working-vessel-traffic-in-some-ports':
    'gewerblicher Arbeitsverkehr; Verkehrslenkung in einigen Häfen',
  'channel-text-continuous-marine-broadcast-in-french-28b-shares-its-frequency-with-asm-2':
    'Dauersendung für die Schifffahrt auf Französisch; 28B hat die Frequenz von ASM 2',
  'channel-text-continuous-marine-broadcast-of-weather-and-safety-messages':
    'Dauersendung mit Wetter- und Sicherheitsmeldungen für die Schifffahrt',
  'channel-text-continuous-marine-broadcast-on-a-frequency-also-meant-for-data-exchange':
    'Dauersendung für die Schifffahrt auf einer Frequenz, die auch für Datenaustausch vorgesehen ist',
  'channel-text-continuous-weather-broadcast-as-in-the-united-states':
    'Dauersendung mit Wetterberichten wie in den Vereinigten Staaten',
  'channel-text-continuous-weather-broadcast-the-wx-numbers-have-no-official-standing':
    'Dauersendung mit Wetterberichten; die WX-Nummern sind nicht amtlich',
  'channel-text-data-exchange-between-ships-from-shore-and-from-satellite':
    'Datenaustausch zwischen Schiffen, von Land und von Satelliten',
  'channel-text-data-exchange-from-ships-to-shore-and-satellite':
    'Datenaustausch von Schiffen an Land und an Satelliten',
  'channel-text-digital-selective-calling': 'digitaler Selektivruf',
  'channel-text-digital-selective-calling-for-distress-safety-and-calling':
    'digitaler Selektivruf für Not, Sicherheit und Anruf',
  'channel-text-distress-safety-and-calling': 'Not, Sicherheit und Anruf',
  'channel-text-distress-urgency-safety-and-calling': 'Not, Dringlichkeit, Sicherheit und Anruf',
  'channel-text-distress-urgency-safety-and-calling-by-voice':
    'Not, Dringlichkeit, Sicherheit und Anruf im Sprechfunk',
  'channel-text-distress-urgency-safety-and-calling-the-channel-to-speak-on-after-an-alert-note-14':
    'Not, Dringlichkeit, Sicherheit und Anruf; nach einem Alarm der Kanal zum Sprechen (Anmerkung 14)',
  'channel-text-editions-of-2017-2019-and-2021-exist-and-were-not-seen-data-use-of-24-to-28-and-84-to-86-is-not-in-this-one':
    'Ausgaben von 2017, 2019 und 2021 bestehen und lagen nicht vor: die Datennutzung von 24 bis 28 und 84 bis 86 ist hier nicht enthalten',
  'channel-text-environmental-information-from-coast-to-ship': 'Umweltinformationen von Land an Schiffe',
  'channel-text-first-channel-between-ships-and-between-ships-and-aircraft-in-search-and-rescue':
    'erster Kanal zwischen Schiffen sowie zwischen Schiffen und Luftfahrzeugen bei Suche und Rettung',
  'channel-text-first-channel-for-calling-urgency-and-safety-note-7':
    'erster Kanal für Anruf, Dringlichkeit und Sicherheit (Anmerkung 7)',
  'channel-text-fishing-industry-between-ships-and-with-the-shore':
    'Fischerei, zwischen Schiffen und mit Land',
  'channel-text-for-commercial-vessels': 'für die Berufsschifffahrt',
  'channel-text-for-communication-on-board': 'für den Funkverkehr an Bord',
  'channel-text-for-pilots-and-ports': 'für Lotsen und Häfen',
  'channel-text-for-port-operations-on-the-st-lawrence': 'für den Hafenbetrieb auf dem Sankt-Lorenz-Strom',
  'channel-text-for-port-operations-only': 'nur für den Hafenbetrieb',
  'channel-text-for-safety-traffic-only': 'nur für den Sicherheitsverkehr',
  'channel-text-for-the-fishing-industry': 'für die Fischerei',
  'channel-text-for-the-safety-of-navigation-only': 'nur für die Sicherheit der Navigation',
  'channel-text-for-the-safety-of-navigation-other-uses-by-national-rule-only':
    'für die Sicherheit der Navigation; anderes nur nach nationaler Regelung',
  'channel-text-four-digit-names-that-swedish-coast-channels-got-on-1-november-2022-were-not-seen':
    'vierstellige Bezeichnungen, die schwedische Küstenkanäle am 1. November 2022 erhielten, lagen nicht vor',
  'channel-text-frequencies-of-0-m-and-m2-are-unverified': 'Frequenzen von 0, M und M2 sind ungeprüft',
  'channel-text-government-only': 'nur Behörden',
  'channel-text-hand-held-sets-which-need-no-automatic-reduction':
    'Handfunkgeräte, die keine selbsttätige Senkung brauchen',
  'channel-text-identification-by-atis-is-required-article-9-1-i-outside-these-waters-it-may-be-off-note-28':
    'Kennung durch ATIS ist vorgeschrieben (Artikel 9(1)(i)); außerhalb dieser Gewässer darf sie abgeschaltet sein (Anmerkung 28)',
  'channel-text-identified-for-data-exchange-in-regions-1-and-3-since-1-january-2017':
    'in den Regionen 1 und 3 seit 1. Januar 2017 für Datenaustausch vorgesehen',
  'channel-text-identified-for-data-exchange-since-1-january-2017':
    'seit 1. Januar 2017 für Datenaustausch vorgesehen',
  'channel-text-in-use-as-a-pair-only-where-a-country-keeps-it':
    'als Duplexkanal nur dort in Gebrauch, wo ein Land ihn behält',
  'channel-text-it-carries-application-specific-data-messages-only':
    'er überträgt nur anwendungsspezifische Datenmeldungen',
  'channel-text-it-carries-automatic-identification-data-only':
    'er überträgt nur Daten der automatischen Identifizierung',
  'channel-text-it-carries-data-exchange-only': 'er überträgt nur Datenaustausch',
  'channel-text-it-carries-data-of-autonomous-devices-only': 'er überträgt nur Daten autonomer Geräte',
  'channel-text-it-carries-digital-selective-calls-only-never-speech':
    'er überträgt nur digitale Selektivrufe, niemals Sprache',
  'channel-text-it-carries-long-range-ais-reports-to-satellites-only':
    'er überträgt nur AIS-Meldungen großer Reichweite an Satelliten',
  'channel-text-it-guards-channel-16-and-carries-navigation-related-port-traffic-only':
    'er schützt Kanal 16 und führt nur nautischen Hafenverkehr',
  'channel-text-it-has-no-digits-for-a-call': 'er hat keine Ziffern für einen Anruf',
  'channel-text-it-has-no-digits-for-a-call-and-only-a-set-with-this-channel-can-use-it':
    'er hat keine Ziffern für einen Anruf, und nur ein Gerät mit diesem Kanal kann ihn benutzen',
  'channel-text-it-is-an-upper-leg-for-coast-stations-unless-a-national-rule-lets-ships-transmit':
    'er liegt im Oberband: für Küstenfunkstellen, sofern keine nationale Regelung Schiffe senden lässt',
  'channel-text-it-is-for-dredging-and-it-has-no-digits-for-a-call':
    'er ist für Baggerarbeiten, und er hat keine Ziffern für einen Anruf',
  'channel-text-it-is-for-fishing-vessels-only-and-it-has-no-digits-for-a-call':
    'er ist nur für Fischereifahrzeuge, und er hat keine Ziffern für einen Anruf',
  'channel-text-it-is-for-ships-to-marinas-and-clubs-and-it-has-no-digits-for-a-call':
    'er ist für Schiffe mit Yachthäfen und Clubs, und er hat keine Ziffern für einen Anruf',
  'channel-text-it-is-for-talk-with-the-coast-guard-which-chooses-it':
    'er ist für Gespräche mit der Küstenwache, die ihn wählt',
  'channel-text-it-is-mainly-for-the-government': 'er ist vor allem für Behörden',
  'channel-text-it-is-private-to-the-coastguard-and-rescue-services-and-it-has-no-digits-for-a-call':
    'er ist allein für Küstenwache und Rettungsdienste, und er hat keine Ziffern für einen Anruf',
  'channel-text-it-is-reserved-to-the-coast-guard-or-to-fishing-by-coast':
    'er ist je nach Küste der Küstenwache oder der Fischerei vorbehalten',
  'channel-text-it-is-reserved-to-the-government': 'er ist Behörden vorbehalten',
  'channel-text-its-use-differs-from-region-to-region': 'die Nutzung ist von Region zu Region verschieden',
  'channel-text-keep-it-clear-for-search-and-rescue': 'für Suche und Rettung freihalten',
  'channel-text-keep-it-clear-for-search-and-rescue-and-for-ice-breakers-and-their-aircraft':
    'für Suche und Rettung freihalten, ebenso für Eisbrecher und ihre Luftfahrzeuge',
  'channel-text-kept-for-rescue-and-pollution-control':
    'für Rettung und Bekämpfung von Verschmutzung freigehalten',
  'channel-text-kept-for-the-coastguard': 'für die Küstenwache freigehalten',
  'channel-text-long-range-ais-reports-from-ships-to-satellites-no-voice-since-14-june-2017':
    'AIS-Meldungen großer Reichweite von Schiffen an Satelliten; seit 14. Juni 2017 keine Sprache',
  'channel-text-low-power-autonomous-devices-of-group-b': 'autonome Geräte kleiner Leistung der Gruppe B',
  'channel-text-marinas-and-yacht-clubs': 'Yachthäfen und Yachtclubs',
  'channel-text-marinas-note-21': 'Yachthäfen (Anmerkung 21)',
  'channel-text-marinas-with-pleasure-craft-not-between-ships':
    'Yachthäfen mit Sportbooten, nicht zwischen Schiffen',
  'channel-text-marinas-yacht-clubs-and-race-control': 'Yachthäfen, Yachtclubs und Wettfahrtleitung',
  'channel-text-maritime-control-by-state-and-local-government':
    'Schifffahrtsaufsicht durch Bundesstaaten und Gemeinden',
  'channel-text-may-be-a-port-channel-where-you-are': 'kann am Ort ein Hafenkanal sein',
  'channel-text-may-be-a-port-or-rescue-channel-where-you-are':
    'kann am Ort ein Hafen- oder Rettungskanal sein',
  'channel-text-may-carry-data-exchange': 'kann Datenaustausch führen',
  'channel-text-mostly-inland-and-in-the-arctic': 'vor allem im Binnenland und in der Arktis',
  'channel-text-national-rules-come-before-this-table-in-their-waters':
    'nationale Regelungen gehen in ihren Gewässern dieser Tabelle vor',
  'channel-text-nautical-information': 'nautische Information',
  'channel-text-nautical-information-business-traffic-between-companies-and-sea-going-ships-note-6':
    'nautische Information; Geschäftsverkehr zwischen Firmen und Seeschiffen (Anmerkung 6)',
  'channel-text-nautical-information-designated-for-traffic-guidance-note-4':
    'nautische Information; für Verkehrsführung bestimmt (Anmerkung 4)',
  'channel-text-nautical-information-messages-to-and-from-bridges-and-locks-note-17':
    'nautische Information; Meldungen an und von Brücken und Schleusen (Anmerkung 17)',
  'channel-text-nautical-information-oil-pollution-on-the-north-sea-note-12':
    'nautische Information; Ölverschmutzung auf der Nordsee (Anmerkung 12)',
  'channel-text-nautical-information-provisioning-and-bunkering-notes-16-and-18':
    'nautische Information; Versorgung und Bunkern (Anmerkungen 16 und 18)',
  'channel-text-nautical-information-radio-medical-service-note-19':
    'nautische Information; funkärztlicher Dienst (Anmerkung 19)',
  'channel-text-nautical-information-temporary-events-note-20':
    'nautische Information; zeitweilige Veranstaltungen (Anmerkung 20)',
  'channel-text-navigation-related-port-traffic-only-also-long-range-ais-reports-from-ships-to-satellites-note-s':
    'nur nautischer Hafenverkehr; auch AIS-Meldungen großer Reichweite von Schiffen an Satelliten (Anmerkung s)',
  'channel-text-navigation-related-port-traffic-only-also-received-by-satellites-for-ais-note-30':
    'nur nautischer Hafenverkehr; von Satelliten auch für AIS empfangen (Anmerkung 30)',
  'channel-text-new-orleans-and-the-lower-mississippi-01a-also-port-arthur':
    'New Orleans und der untere Mississippi; 01A auch Port Arthur',
  'channel-text-new-orleans-houston-los-angeles-and-long-beach-seattle-47-cfr-80-383':
    'New Orleans, Houston, Los Angeles und Long Beach, Seattle (47 CFR 80.383)',
  'channel-text-no-dual-watch-note-2': 'keine Zweikanalüberwachung (Anmerkung 2)',
  'channel-text-no-limit-of-its-own-in-the-rule-read-many-lists-print-1-w':
    'keine eigene Grenze in der gelesenen Regelung; viele Listen nennen 1 W',
  'channel-text-no-power-limit-is-printed-for-the-sea': 'für die See ist keine Leistungsgrenze abgedruckt',
  'channel-text-no-selective-calls-except-distress-urgency-and-safety-calls-made-voluntarily-on-waddenzee-ijsselmeer-oosterschelde-westerschelde-and-eems-dollard-note-9':
    'keine Selektivrufe außer freiwilligen Not-, Dringlichkeits- und Sicherheitsanrufen auf Waddenzee, IJsselmeer, Oosterschelde, Westerschelde und Eems-Dollard (Anmerkung 9)',
  'channel-text-non-commercial-talk-between-ships': 'nicht gewerblicher Verkehr zwischen Schiffen',
  'channel-text-non-commercial-working': 'nicht gewerblicher Arbeitsverkehr',
  'channel-text-non-commercial-working-vessel-traffic-in-puget-sound':
    'nicht gewerblicher Arbeitsverkehr; im Puget Sound Verkehrslenkung',
  'channel-text-normal-output-not-above-1-w': 'normale Sendeleistung höchstens 1 W',
  'channel-text-normally-in-the-seattle-vessel-traffic-area': 'normal, im Verkehrsgebiet Seattle',
  'channel-text-normally-used-by-ports-or-for-work-on-board':
    'meist von Häfen oder für Arbeiten an Bord benutzt',
  'channel-text-not-for-casual-talk-in-the-puget-sound-vessel-traffic-area':
    'keine Plauderei im Verkehrsgebiet Puget Sound',
  'channel-text-not-in-zeeland-noord-brabant-and-limburg': 'nicht in Zeeland, Noord-Brabant und Limburg',
  'channel-text-not-within-25-km-of-the-dutch-coast': 'nicht näher als 25 km an der niederländischen Küste',
  'channel-text-often-assigned-to-a-port-or-a-race': 'oft einem Hafen oder einer Regatta zugewiesen',
  'channel-text-on-10-and-11-take-care-not-to-disturb-70-note-32':
    'auf 10 und 11 darauf achten, 70 nicht zu stören (Anmerkung 32)',
  'channel-text-on-board-only-and-not-on-craft-under-20-m-notes-13-and-23':
    'nur an Bord und nicht auf Fahrzeugen unter 20 m (Anmerkungen 13 und 23)',
  'channel-text-on-the-st-lawrence-and-great-lakes': 'auf dem Sankt-Lorenz-Strom und den Großen Seen',
  'channel-text-only-to-talk-with-the-coast-guard': 'nur für Gespräche mit der Küstenwache (Coast Guard)',
  'channel-text-only-to-talk-with-the-coastguard': 'nur für Gespräche mit der Küstenwache',
  'channel-text-output-0-5-to-25-w-of-hand-held-sets-0-1-to-6-w-note-1':
    'Sendeleistung 0,5 bis 25 W, bei Handfunkgeräten 0,1 bis 6 W (Anmerkung 1)',
  'channel-text-pacific': 'Pazifik',
  'channel-text-pilots-on-the-pacific-port-operations-on-the-st-lawrence-and-great-lakes':
    'am Pazifik Lotsen; auf dem Sankt-Lorenz-Strom und den Großen Seen Hafenbetrieb',
  'channel-text-pleasure-craft-marinas-and-yacht-clubs': 'Sportboote, Yachthäfen und Yachtclubs',
  'channel-text-pleasure-craft-may-use-it-on-the-great-lakes-only':
    'Sportboote dürfen ihn nur auf den Großen Seen benutzen',
  'channel-text-pleasure-craft-on-the-pacific-commercial-fishing-on-the-atlantic':
    'am Pazifik Sportboote, am Atlantik gewerbliche Fischerei',
  'channel-text-port-operations': 'Hafenbetrieb',
  'channel-text-port-operations-and-commercial-traffic-under-vessel-traffic-control':
    'Hafenbetrieb und gewerblicher Verkehr unter Verkehrslenkung',
  'channel-text-port-operations-and-on-board-at-low-power': 'Hafenbetrieb sowie an Bord mit kleiner Leistung',
  'channel-text-port-operations-and-ship-movement': 'Hafenbetrieb und Schiffslenkung',
  'channel-text-port-operations-and-ship-movement-and-on-board':
    'Hafenbetrieb und Schiffslenkung sowie an Bord',
  'channel-text-port-operations-and-ship-movement-as-assigned-no-public-correspondence-remains':
    'Hafenbetrieb und Schiffslenkung nach Zuweisung; kein öffentlicher Nachrichtenaustausch mehr',
  'channel-text-port-operations-and-ship-movement-coast-stations-on-the-upper-leg':
    'Hafenbetrieb und Schiffslenkung, Küstenfunkstellen im Oberband',
  'channel-text-port-operations-and-ship-movement-on-one-frequency':
    'Hafenbetrieb und Schiffslenkung auf einer Frequenz',
  'channel-text-port-operations-and-ship-movement-on-one-frequency-since-1-january-2019':
    'Hafenbetrieb und Schiffslenkung, seit 1. Januar 2019 auf einer Frequenz',
  'channel-text-port-operations-and-ship-movement-on-the-lower-leg-between-ships-only-by-national-rule':
    'Hafenbetrieb und Schiffslenkung im Unterband; zwischen Schiffen nur nach nationaler Regelung',
  'channel-text-port-operations-and-vessel-traffic': 'Hafenbetrieb und Verkehrslenkung',
  'channel-text-port-operations-between-ships': 'Hafenbetrieb zwischen Schiffen',
  'channel-text-port-operations-from-ship-to-coast-on-two-frequencies':
    'Hafenbetrieb zwischen Schiff und Land, auf zwei Frequenzen',
  'channel-text-port-operations-on-one-frequency': 'Hafenbetrieb auf einer Frequenz',
  'channel-text-port-operations-on-the-st-lawrence-and-great-lakes-marinas-in-british-columbia':
    'Hafenbetrieb auf dem Sankt-Lorenz-Strom und den Großen Seen; Yachthäfen in British Columbia',
  'channel-text-port-operations-pilots-race-control-and-between-ships':
    'Hafenbetrieb, Lotsen, Wettfahrtleitung und zwischen Schiffen',
  'channel-text-port-operations-ship-movement-and-navigation-only':
    'nur Hafenbetrieb, Schiffslenkung und Navigation',
  'channel-text-port-operations-ship-movement-and-public-correspondence':
    'Hafenbetrieb, Schiffslenkung und öffentlicher Nachrichtenaustausch',
  'channel-text-port-operations-ship-movement-and-public-correspondence-also-on-one-frequency-the-table-does-not-say-which':
    'Hafenbetrieb, Schiffslenkung und öffentlicher Nachrichtenaustausch; auch auf einer Frequenz, die Tabelle sagt nicht auf welcher',
  'channel-text-port-operations-vessel-traffic-at-port-arthur':
    'Hafenbetrieb; in Port Arthur Verkehrslenkung',
  'channel-text-port-operations-vessel-traffic-at-port-arthur-33-cfr-161-12-c':
    'Hafenbetrieb; in Port Arthur Verkehrslenkung (33 CFR 161.12(c))',
  'channel-text-port-operations-vessel-traffic-in-some-ports':
    'Hafenbetrieb; Verkehrslenkung in einigen Häfen',
  'channel-text-public-correspondence': 'öffentlicher Nachrichtenaustausch',
  'channel-text-public-correspondence-and-working-with-the-coast-guard':
    'öffentlicher Nachrichtenaustausch und Arbeitsverkehr mit der Küstenwache',
  'channel-text-public-correspondence-near-the-canadian-border':
    'öffentlicher Nachrichtenaustausch nahe der kanadischen Grenze',
  'channel-text-public-correspondence-on-the-lower-leg-alone':
    'öffentlicher Nachrichtenaustausch allein im Unterband',
  'channel-text-public-correspondence-through-a-coast-station':
    'öffentlicher Nachrichtenaustausch über eine Küstenfunkstelle',
  'channel-text-radio-medical-service-of-the-rescue-centre-at-den-helder-note-19':
    'funkärztlicher Dienst der Rettungsleitstelle in Den Helder (Anmerkung 19)',
  'channel-text-rescue-and-pollution-control-towing-port-operations-or-pleasure-craft-by-region':
    'je nach Region Rettung und Bekämpfung von Verschmutzung, Schleppverkehr, Hafenbetrieb oder Sportboote',
  'channel-text-safety-and-navigation-chiefly-between-ships-note-26':
    'Sicherheit und Navigation, vor allem zwischen Schiffen (Anmerkung 26)',
  'channel-text-safety-between-ships-and-rescue-work-with-coast-guard-ships-and-aircraft':
    'Sicherheit zwischen Schiffen und Rettungseinsätze mit Schiffen und Luftfahrzeugen der Küstenwache',
  'channel-text-safety-of-navigation-from-bridge-to-bridge-locks-and-bridges-come-second-vessel-traffic-at-louisville-and-valdez-33-cfr-161-12-c':
    'Sicherheit der Navigation von Brücke zu Brücke; Schleusen und Brücken nachrangig; Verkehrslenkung in Louisville und Valdez (33 CFR 161.12(c))',
  'channel-text-safety-of-navigation-from-bridge-to-bridge-vessel-traffic-in-british-columbia':
    'Sicherheit der Navigation von Brücke zu Brücke; Verkehrslenkung in British Columbia',
  'channel-text-safety-of-navigation-worldwide-chiefly-from-bridge-to-bridge-also-ship-movement-and-port-operations-where-a-national-rule-says-so':
    'Sicherheit der Navigation, weltweit, vor allem von Brücke zu Brücke; auch Schiffslenkung und Hafenbetrieb, wo eine nationale Regelung es sagt',
  'channel-text-sand-and-gravel-extraction-and-dredging': 'Sand- und Kiesgewinnung und Baggerarbeiten',
  'channel-text-search-and-rescue-on-scene-on-the-north-sea-and-the-large-inland-waters-note-5':
    'Suche und Rettung vor Ort, auf der Nordsee und den großen Binnengewässern (Anmerkung 5)',
  'channel-text-selective-calls-are-not-permitted-on-these-waters-distress-urgency-and-safety-calls-only-on-waddenzee-ijsselmeer-oosterschelde-westerschelde-and-eems-dollard-note-9':
    'Selektivrufe sind auf diesen Gewässern nicht erlaubt; Not-, Dringlichkeits- und Sicherheitsanrufe nur auf Waddenzee, IJsselmeer, Oosterschelde, Westerschelde und Eems-Dollard (Anmerkung 9)',
  'channel-text-selective-calls-for-distress-urgency-safety-and-calling':
    'Selektivrufe für Not, Dringlichkeit, Sicherheit und Anruf',
  'channel-text-selective-calls-on-named-waters-only-note-9':
    'Selektivrufe, nur auf bestimmten Gewässern (Anmerkung 9)',
  'channel-text-shared-with-aircraft-in-support-of-ships':
    'gemeinsam mit Luftfahrzeugen, die Schiffe unterstützen',
  'channel-text-ship-movement-and-vessel-traffic': 'Schiffslenkung und Schiffsverkehr',
  'channel-text-ships-do-not-transmit-on-it': 'Schiffe senden nicht darauf',
  'channel-text-short-digital-messages-may-share-voice-channels-except-where-47-cfr-80-364-bars-them':
    'kurze Datenmeldungen dürfen Sprechkanäle mitbenutzen, außer wo 47 CFR 80.364 sie ausschließt',
  'channel-text-split-in-other-countries-into-a-voice-channel-and-an-asm-data-channel':
    'in anderen Ländern in einen Sprechkanal und einen ASM-Datenkanal geteilt',
  'channel-text-split-on-1-january-2019-into-a-voice-channel-on-the-lower-leg-and-asm-data-on-the-upper':
    'am 1. Januar 2019 geteilt in einen Sprechkanal im Unterband und ASM-Daten im Oberband',
  'channel-text-swedish-waters-and-ships-with-a-swedish-licence':
    'schwedische Gewässer und Schiffe mit schwedischer Genehmigung',
  'channel-text-talk-between-fishing-vessels': 'Verkehr zwischen Fischereifahrzeugen',
  'channel-text-talk-between-fishing-vessels-which-may-be-encrypted-and-charter-vessels-of-anglers-note-29':
    'Verkehr zwischen Fischereifahrzeugen, der verschlüsselt sein darf, und Charterschiffen für Angler (Anmerkung 29)',
  'channel-text-talk-between-fishing-vessels-which-may-be-encrypted-note-29':
    'Verkehr zwischen Fischereifahrzeugen, der verschlüsselt sein darf (Anmerkung 29)',
  'channel-text-talk-between-leisure-craft-fitted-only-together-with-l1':
    'Verkehr zwischen Sportbooten; nur zusammen mit L1 eingebaut',
  'channel-text-talk-between-leisure-craft-fitted-only-together-with-l2':
    'Verkehr zwischen Sportbooten; nur zusammen mit L2 eingebaut',
  'channel-text-talk-between-ships': 'Verkehr zwischen Schiffen',
  'channel-text-talk-between-ships-also-social-provisioning-notes-10-and-16':
    'Verkehr zwischen Schiffen, auch privat; Versorgung (Anmerkungen 10 und 16)',
  'channel-text-talk-between-ships-also-social-salvage-and-towing-notes-10-and-11':
    'Verkehr zwischen Schiffen, auch privat; Bergung und Schleppen (Anmerkungen 10 und 11)',
  'channel-text-talk-between-ships-and-search-and-rescue':
    'Verkehr zwischen Schiffen sowie Suche und Rettung',
  'channel-text-talk-between-ships-and-with-aircraft-in-search-and-rescue-note-31':
    'Verkehr zwischen Schiffen und mit Luftfahrzeugen bei Suche und Rettung (Anmerkung 31)',
  'channel-text-intership-only': 'nur Verkehr zwischen Schiffen',
  'channel-text-talk-between-ships-pleasure-craft-on-the-pacific':
    'Verkehr zwischen Schiffen; am Pazifik Sportboote',
  'channel-text-talk-between-ships-safety-and-search-and-rescue-with-aircraft':
    'Verkehr zwischen Schiffen, Sicherheit sowie Suche und Rettung mit Luftfahrzeugen',
  'channel-text-talk-with-pilots-about-movement-and-docking': 'Verkehr mit Lotsen über Fahrt und Anlegen',
  'channel-text-the-arrangement-itself-was-not-seen-and-its-other-members-differ-in-power':
    'die Vereinbarung selbst lag nicht vor, und andere Mitglieder haben andere Leistungen',
  'channel-text-the-bridge-to-bridge-channel-on-the-lower-mississippi-pleasure-craft-may-use-it-in-puget-sound-and-juan-de-fuca-only':
    'am unteren Mississippi Kanal von Brücke zu Brücke; Sportboote nur im Puget Sound und in der Juan-de-Fuca-Straße',
  'channel-text-the-fallback-for-channel-10': 'der Ersatz für Kanal 10',
  'channel-text-the-licence-terms-read-refer-to-the-act-of-2003-replaced-in-2022-newer-terms-were-not-seen':
    'die gelesenen Bedingungen beziehen sich auf das 2022 ersetzte Gesetz von 2003; neuere lagen nicht vor',
  'channel-text-the-national-schedule-was-not-seen-in-full-most-uses-by-coast-are-unverified':
    'der nationale Plan lag nicht vollständig vor: die meisten Nutzungen je Küste sind ungeprüft',
  'channel-text-the-national-table-was-not-seen-in-full-most-port-uses-are-unverified':
    'die nationale Tabelle lag nicht vollständig vor: die meisten Hafennutzungen sind ungeprüft',
  'channel-text-tow-boats': 'Schleppboote',
  'channel-text-two-frequency-channels-may-not-be-used-on-one-frequency-unless-the-table-lists-it-47-cfr-80-203-b-2':
    'Duplexkanäle dürfen nicht auf einer Frequenz benutzt werden, außer die Tabelle führt sie so auf (47 CFR 80.203(b)(2))',
  'channel-text-united-kingdom-only': 'nur Vereinigtes Königreich',
  'channel-text-uses-of-the-two-frequency-channels-and-of-single-legs-are-unverified':
    'Nutzungen der Duplexkanäle und einzelner Bänder sind ungeprüft',
  'channel-text-vessel-traffic-and-pilotage': 'Verkehrslenkung und Lotsen',
  'channel-text-vessel-traffic-and-ship-movement': 'Verkehrslenkung und Schiffslenkung',
  'channel-text-vessel-traffic-on-the-pacific': 'Verkehrslenkung am Pazifik',
  'channel-text-vessel-traffic-on-the-pacific-marinas-on-the-atlantic-and-lake-winnipeg':
    'am Pazifik Verkehrslenkung; am Atlantik und auf dem Winnipegsee Yachthäfen',
  'channel-text-vessel-traffic-port-operations-and-pilotage': 'Verkehrslenkung, Hafenbetrieb und Lotsen',
  'channel-text-vessel-traffic-services-come-first': 'Verkehrslenkung hat Vorrang',
  'channel-text-vessel-traffic-services-have-rules-of-their-own-by-port-33-cfr-161-12':
    'Verkehrslenkungsdienste haben je Hafen eigene Regeln: 33 CFR 161.12',
  'channel-text-voice-only-where-the-country-still-allows-it-and-then-without-protection-from-interference':
    'Sprechfunk nur, wo das Land ihn noch erlaubt, und dann ohne Schutz vor Störungen',
  'channel-text-volunteer-coast-watch-stations-on-the-lower-leg-alone-as-remembered':
    'freiwillige Küstenbeobachter, nach der Erinnerung allein im Unterband',
  'channel-text-when-the-operator-overrides-the-reduction': 'wenn der Bediener die Senkung aufhebt',
  'channel-text-with-pilots-only': 'nur mit Lotsen',
};
