import type { planTexts } from '../../channel/internal.ts';
import type { Translation } from '../catalogue.ts';

export const channelPlans: Translation<typeof planTexts> = {
  'channel-text-0-5-to-1-w-set-by-hand-or-automatically-note-1':
    '0,5 tot 1 W, met de hand of automatisch ingesteld (noot 1)',
  'channel-text-0-5-to-1-w-the-set-reduces-its-power-automatically-note-1':
    '0,5 tot 1 W: de radio verlaagt het vermogen automatisch (noot 1)',
  'channel-text-1-w-at-most': 'hoogstens 1 W',
  'channel-text-1-w-for-port-operations-on-the-st-lawrence': '1 W voor havenverkeer op de Saint Lawrence',
  'channel-text-1-w-in-normal-use': '1 W bij normaal gebruik',
  'channel-text-1-w-normally-and-10-w-at-most-in-the-seattle-vessel-traffic-area':
    '1 W normaal en hoogstens 10 W in het verkeersgebied Seattle',
  'channel-text-1-w-on-the-st-lawrence-and-great-lakes': '1 W op de Saint Lawrence en de Grote Meren',
  'channel-text-1-w-radiated-note-15': '1 W uitgestraald (noot 15)',
  'channel-text-1-w-radiated-on-board-elsewhere-25-w-unless-a-national-rule-says-less':
    '1 W uitgestraald aan boord; elders 25 W, tenzij nationale regels minder voorschrijven',
  'channel-text-1-w-radiated-on-board-note-24-no-other-limit-is-printed':
    '1 W uitgestraald aan boord (noot 24); een andere grens is niet afgedrukt',
  'channel-text-1-w-radiated-to-protect-channel-16-note-27':
    '1 W uitgestraald, om kanaal 16 te beschermen (noot 27)',
  'channel-text-1-w-the-set-reduces-its-power-automatically-and-the-operator-may-override-it-up-to-25-w':
    '1 W: de radio verlaagt het vermogen automatisch, en de bediener mag het tot 25 W verhogen',
  'channel-text-1-w-to-protect-channel-16': '1 W, om kanaal 16 te beschermen',
  'channel-text-100-mw-e-i-r-p-aerial-at-most-1-m-above-the-sea':
    '100 mW e.i.r.p., antenne hoogstens 1 m boven zee',
  'channel-text-12-5-khz-channels-must-not-disturb-06-13-15-16-17-70-ais-1-and-ais-2-note-e':
    'kanalen van 12,5 kHz mogen 06, 13, 15, 16, 17, 70, AIS 1 en AIS 2 niet storen (noot e)',
  'channel-text-12-5-w-at-most-note-22': 'hoogstens 12,5 W (noot 22)',
  'channel-text-12-5-w-for-class-a-sets-1-w-2-w-or-5-w-for-class-b':
    '12,5 W voor klasse A; 1 W, 2 W of 5 W voor klasse B',
  'channel-text-155-000-to-155-975-mhz-may-otherwise-be-used-on-board-only-with-special-consent-pts-licence-terms':
    '155,000 tot 155,975 MHz mag verder aan boord alleen worden gebruikt na bijzondere toestemming (vergunningsvoorwaarden PTS)',
  'channel-text-a-calling-channel-move-off-it-to-talk':
    'een oproepkanaal: ga naar een ander kanaal om te praten',
  'channel-text-a-channel-l3-may-exist-it-is-not-in-the-terms-read-and-left-out':
    'er bestaat mogelijk een kanaal L3: het staat niet in de gelezen voorwaarden en is weggelaten',
  'channel-text-a-channel-of-its-user': 'een kanaal van de gebruiker',
  'channel-text-a-channel-with-no-use-stated-for-an-area-may-be-used-between-ships-industry-canada-letter-2002':
    'een kanaal waarvoor in een gebied geen gebruik is genoemd, mag tussen schepen worden gebruikt (brief van Industry Canada, 2002)',
  'channel-text-a-hand-held-set-on-an-outside-aerial-gives-at-most-1-w-on-1-to-15-17-to-28-and-60-to-88-except-on-23-and-83-with-the-coastguard-note-3':
    'een portofoon op een buitenantenne geeft hoogstens 1 W op 1 tot 15, 17 tot 28 en 60 tot 88, behalve op 23 en 83 met de kustwacht (noot 3)',
  'channel-text-aerial-at-most-1-m-above-the-sea': 'antenne hoogstens 1 m boven zee',
  'channel-text-after-such-an-alert-16-is-the-channel-to-speak-on-note-14':
    'na zo’n alarm wordt op 16 gesproken (noot 14)',
  'channel-text-all-but-parts-of-the-lower-mississippi-and-its-approaches':
    'overal behalve delen van de beneden-Mississippi en de toegangen ervan',
  'channel-text-amendments-after-march-2025-were-not-seen-the-list-of-october-2025-is-known-at-second-hand':
    'wijzigingen na maart 2025 zijn niet gezien; de lijst van oktober 2025 is alleen uit de tweede hand bekend',
  'channel-text-application-specific-messages': 'toepassingsgebonden berichten',
  'channel-text-at-most-in-the-seattle-vessel-traffic-area': 'hoogstens, in het verkeersgebied Seattle',
  'channel-text-atlantic': 'Atlantische kust',
  'channel-text-atlantic-and-pacific': 'Atlantische kust en Stille Oceaan',
  'channel-text-automatic-identification-system': 'automatisch identificatiesysteem',
  'channel-text-between-ships-and-port-operations': 'tussen schepen en havenverkeer',
  'channel-text-between-ships-and-port-operations-67-search-and-rescue-on-scene-note-5-73-oil-pollution-on-the-north-sea-note-12':
    'tussen schepen en havenverkeer; 67 opsporing en redding ter plaatse (noot 5), 73 olieverontreiniging op de Noordzee (noot 12)',
  'channel-text-between-ships-and-port-operations-search-and-rescue-and-pollution-control-in-europe-and-canada':
    'tussen schepen en havenverkeer; opsporing en redding en bestrijding van verontreiniging in Europa en Canada',
  'channel-text-between-ships-and-with-the-shore-rescue-and-pollution-control':
    'tussen schepen en naar de wal; redding en bestrijding van verontreiniging',
  'channel-text-between-ships-fallback-for-channel-10-note-8':
    'tussen schepen; reserve voor kanaal 10 (noot 8)',
  'channel-text-between-ships-port-operations-and-ship-movement':
    'tussen schepen, havenverkeer en scheepsbewegingen',
  'channel-text-both-coasts-and-lake-winnipeg': 'beide kusten en het Winnipegmeer',
  'channel-text-call-on-10-13-is-its-fallback-notes-7-and-8':
    'roep op 10 op; 13 is de reserve (noten 7 en 8)',
  'channel-text-calling-by-pleasure-craft-commercial-and-non-commercial-working':
    'oproepen door pleziervaart; zakelijk en niet-zakelijk werkverkeer',
  'channel-text-check-locally-whether-one-frequency-or-two-are-in-use':
    'ga ter plaatse na of één of twee frequenties in gebruik zijn',
  'channel-text-coast-areas-1-to-9-not-assignable-in-areas-10-to-42':
    'kustgebieden 1 tot 9; niet toewijsbaar in gebieden 10 tot 42',
  'channel-text-coast-guard-and-government-commercial-in-places':
    'kustwacht en overheid; plaatselijk zakelijk',
  'channel-text-coast-guard-and-national-defence': 'kustwacht en landsverdediging',
  'channel-text-coast-guard-and-other-agencies-its-working-channel-on-the-pacific-since-2009':
    'kustwacht en andere diensten; sinds 2009 haar werkkanaal aan de Stille Oceaan',
  'channel-text-coast-guard-liaison': 'verbinding met de kustwacht',
  'channel-text-coast-guard-liaison-and-its-safety-broadcasts-after-an-announcement-on-16':
    'verbinding met de kustwacht, en haar veiligheidsberichten na aankondiging op 16',
  'channel-text-coast-guard-on-the-pacific-commercial-fishing-on-the-atlantic':
    'kustwacht aan de Stille Oceaan, beroepsvisserij aan de Atlantische kust',
  'channel-text-coast-guard-only': 'alleen kustwacht',
  'channel-text-coast-of-british-columbia': 'kust van Brits-Columbia',
  'channel-text-coastguard-pollution-control-and-reserve-for-safety-broadcasts':
    'bestrijding van verontreiniging door de kustwacht en reserve voor veiligheidsberichten',
  'channel-text-coastguard-rescue-units-and-vessels-they-invite':
    'kustwacht, reddingseenheden en vaartuigen die zij uitnodigen',
  'channel-text-coastguard-safety-broadcasts-and-radio-medical-advice':
    'veiligheidsberichten van de kustwacht en radiomedisch advies',
  'channel-text-coastguard-safety-broadcasts-until-2017-since-then-as-assigned':
    'tot 2017 veiligheidsberichten van de kustwacht, sindsdien naar toewijzing',
  'channel-text-coastguard-working-with-small-craft-and-in-rescue':
    'kustwacht met kleine vaartuigen en bij reddingen',
  'channel-text-commercial-and-safety-between-ships': 'zakelijk verkeer en veiligheid, tussen schepen',
  'channel-text-commercial-fishing': 'beroepsvisserij',
  'channel-text-commercial-fishing-on-the-atlantic': 'beroepsvisserij aan de Atlantische kust',
  'channel-text-commercial-fishing-on-the-atlantic-elsewhere-between-ships-rescue-and-pollution-control':
    'beroepsvisserij aan de Atlantische kust, elders tussen schepen; redding en bestrijding van verontreiniging',
  'channel-text-commercial-talk-between-ships-bridge-to-bridge-on-the-lower-mississippi-pleasure-craft-in-puget-sound':
    'zakelijk verkeer tussen schepen; brug-tot-brug op de beneden-Mississippi; pleziervaart in Puget Sound',
  'channel-text-commercial-talk-between-ships-fishing-vessels-and-their-aircraft':
    'zakelijk verkeer tussen schepen, vissersschepen en hun luchtvaartuigen',
  'channel-text-commercial-vessels-may-use-it-in-puget-sound-and-juan-de-fuca-only':
    'beroepsvaart mag het alleen in Puget Sound en Straat Juan de Fuca gebruiken',
  'channel-text-commercial-working': 'zakelijk werkverkeer',
  'channel-text-commercial-working-also-with-aircraft-in-support':
    'zakelijk werkverkeer, ook met bijstaande luchtvaartuigen',
  'channel-text-commercial-working-and-rescue-and-pollution-control-with-aircraft':
    'zakelijk werkverkeer, en redding en bestrijding van verontreiniging met luchtvaartuigen',
  'channel-text-commercial-working-between-ships-only': 'zakelijk werkverkeer, alleen tussen schepen',
  'channel-text-commercial-working-non-commercial-on-the-great-lakes':
    'zakelijk werkverkeer; niet-zakelijk op de Grote Meren',
  'channel-text-commercial-working-towing-on-the-pacific':
    'zakelijk werkverkeer; slepen aan de Stille Oceaan',
  'channel-text-commercial-working-vessel-traffic-in-some-ports':
    'zakelijk werkverkeer; verkeersbegeleiding in sommige havens',
  'channel-text-continuous-marine-broadcast-in-french-28b-shares-its-frequency-with-asm-2':
    'doorlopende uitzending voor de scheepvaart in het Frans; 28B heeft dezelfde frequentie als ASM 2',
  'channel-text-continuous-marine-broadcast-of-weather-and-safety-messages':
    'doorlopende uitzending van weer- en veiligheidsberichten voor de scheepvaart',
  'channel-text-continuous-marine-broadcast-on-a-frequency-also-meant-for-data-exchange':
    'doorlopende uitzending voor de scheepvaart, op een frequentie die ook voor gegevensuitwisseling bestemd is',
  'channel-text-continuous-weather-broadcast-as-in-the-united-states':
    'doorlopende uitzending van weerberichten, zoals in de Verenigde Staten',
  'channel-text-continuous-weather-broadcast-the-wx-numbers-have-no-official-standing':
    'doorlopende uitzending van weerberichten; de WX-nummers zijn niet officieel',
  'channel-text-data-exchange-between-ships-from-shore-and-from-satellite':
    'gegevensuitwisseling tussen schepen, vanaf de wal en vanaf satellieten',
  'channel-text-data-exchange-from-ships-to-shore-and-satellite':
    'gegevensuitwisseling van schepen naar de wal en naar satellieten',
  'channel-text-digital-selective-calling': 'digitale selectieve oproep',
  'channel-text-digital-selective-calling-for-distress-safety-and-calling':
    'digitale selectieve oproep voor nood, veiligheid en oproepen',
  'channel-text-distress-safety-and-calling': 'nood, veiligheid en oproepen',
  'channel-text-distress-urgency-safety-and-calling': 'nood, spoed, veiligheid en oproepen',
  'channel-text-distress-urgency-safety-and-calling-by-voice':
    'nood, spoed, veiligheid en oproepen met spraak',
  'channel-text-distress-urgency-safety-and-calling-the-channel-to-speak-on-after-an-alert-note-14':
    'nood, spoed, veiligheid en oproepen; na een alarm het kanaal om te praten (noot 14)',
  'channel-text-editions-of-2017-2019-and-2021-exist-and-were-not-seen-data-use-of-24-to-28-and-84-to-86-is-not-in-this-one':
    'uitgaven van 2017, 2019 en 2021 bestaan en zijn niet gezien: datagebruik van 24 tot 28 en 84 tot 86 staat hier niet in',
  'channel-text-environmental-information-from-coast-to-ship': 'milieu-informatie van de wal naar schepen',
  'channel-text-first-channel-between-ships-and-between-ships-and-aircraft-in-search-and-rescue':
    'eerste kanaal tussen schepen, en tussen schepen en luchtvaartuigen bij opsporing en redding',
  'channel-text-first-channel-for-calling-urgency-and-safety-note-7':
    'eerste kanaal voor oproepen, spoed en veiligheid (noot 7)',
  'channel-text-fishing-industry-between-ships-and-with-the-shore': 'visserij, tussen schepen en naar de wal',
  'channel-text-for-commercial-vessels': 'voor de beroepsvaart',
  'channel-text-for-communication-on-board': 'voor verkeer aan boord',
  'channel-text-for-pilots-and-ports': 'voor loodsen en havens',
  'channel-text-for-port-operations-on-the-st-lawrence': 'voor havenverkeer op de Saint Lawrence',
  'channel-text-for-port-operations-only': 'alleen voor havenverkeer',
  'channel-text-for-safety-traffic-only': 'alleen voor veiligheidsverkeer',
  'channel-text-for-the-fishing-industry': 'voor de visserij',
  'channel-text-for-the-safety-of-navigation-only': 'alleen voor de veiligheid van de navigatie',
  'channel-text-for-the-safety-of-navigation-other-uses-by-national-rule-only':
    'voor de veiligheid van de navigatie; ander gebruik alleen volgens nationale regels',
  'channel-text-four-digit-names-that-swedish-coast-channels-got-on-1-november-2022-were-not-seen':
    'namen van vier cijfers die Zweedse kustkanalen op 1 november 2022 kregen, zijn niet gezien',
  'channel-text-frequencies-of-0-m-and-m2-are-unverified': 'frequenties van 0, M en M2 zijn niet nagegaan',
  'channel-text-government-only': 'alleen overheid',
  'channel-text-hand-held-sets-which-need-no-automatic-reduction':
    'portofoons, die geen automatische verlaging nodig hebben',
  'channel-text-identification-by-atis-is-required-article-9-1-i-outside-these-waters-it-may-be-off-note-28':
    'identificatie met ATIS is verplicht (artikel 9(1)(i)); buiten deze wateren mag die uit staan (noot 28)',
  'channel-text-identified-for-data-exchange-in-regions-1-and-3-since-1-january-2017':
    'bestemd voor gegevensuitwisseling, in Regio 1 en 3 sinds 1 januari 2017',
  'channel-text-identified-for-data-exchange-since-1-january-2017':
    'sinds 1 januari 2017 bestemd voor gegevensuitwisseling',
  'channel-text-in-use-as-a-pair-only-where-a-country-keeps-it':
    'alleen als duplexkanaal in gebruik waar een land het zo houdt',
  'channel-text-it-carries-application-specific-data-messages-only':
    'het draagt alleen toepassingsgebonden databerichten',
  'channel-text-it-carries-automatic-identification-data-only':
    'het draagt alleen gegevens van automatische identificatie',
  'channel-text-it-carries-data-exchange-only': 'het draagt alleen gegevensuitwisseling',
  'channel-text-it-carries-data-of-autonomous-devices-only':
    'het draagt alleen gegevens van autonome apparaten',
  'channel-text-it-carries-digital-selective-calls-only-never-speech':
    'het draagt alleen digitale selectieve oproepen, nooit spraak',
  'channel-text-it-carries-long-range-ais-reports-to-satellites-only':
    'het draagt alleen AIS-meldingen over lange afstand aan satellieten',
  'channel-text-it-guards-channel-16-and-carries-navigation-related-port-traffic-only':
    'het beschermt kanaal 16 en draagt alleen nautisch havenverkeer',
  'channel-text-it-has-no-digits-for-a-call': 'het heeft geen cijfers voor een oproep',
  'channel-text-it-has-no-digits-for-a-call-and-only-a-set-with-this-channel-can-use-it':
    'het heeft geen cijfers voor een oproep, en alleen een radio die dit kanaal heeft kan het gebruiken',
  'channel-text-it-is-an-upper-leg-for-coast-stations-unless-a-national-rule-lets-ships-transmit':
    'het ligt aan de walzijde: voor kuststations, tenzij nationale regels schepen laten zenden',
  'channel-text-it-is-for-dredging-and-it-has-no-digits-for-a-call':
    'het is voor baggerwerk, en het heeft geen cijfers voor een oproep',
  'channel-text-it-is-for-fishing-vessels-only-and-it-has-no-digits-for-a-call':
    'het is alleen voor vissersschepen, en het heeft geen cijfers voor een oproep',
  'channel-text-it-is-for-ships-to-marinas-and-clubs-and-it-has-no-digits-for-a-call':
    'het is voor schepen met jachthavens en clubs, en het heeft geen cijfers voor een oproep',
  'channel-text-it-is-for-talk-with-the-coast-guard-which-chooses-it':
    'het is om met de kustwacht te praten, die het kiest',
  'channel-text-it-is-mainly-for-the-government': 'het is vooral voor de overheid',
  'channel-text-it-is-private-to-the-coastguard-and-rescue-services-and-it-has-no-digits-for-a-call':
    'het is alleen voor de kustwacht en reddingsdiensten, en het heeft geen cijfers voor een oproep',
  'channel-text-it-is-reserved-to-the-coast-guard-or-to-fishing-by-coast':
    'het is per kust voorbehouden aan de kustwacht of de visserij',
  'channel-text-it-is-reserved-to-the-government': 'het is voorbehouden aan de overheid',
  'channel-text-its-use-differs-from-region-to-region': 'het gebruik verschilt per gebied',
  'channel-text-keep-it-clear-for-search-and-rescue': 'houd het vrij voor opsporing en redding',
  'channel-text-keep-it-clear-for-search-and-rescue-and-for-ice-breakers-and-their-aircraft':
    'houd het vrij voor opsporing en redding, en voor ijsbrekers en hun luchtvaartuigen',
  'channel-text-kept-for-rescue-and-pollution-control':
    'vrijgehouden voor redding en bestrijding van verontreiniging',
  'channel-text-kept-for-the-coastguard': 'vrijgehouden voor de kustwacht',
  'channel-text-long-range-ais-reports-from-ships-to-satellites-no-voice-since-14-june-2017':
    'AIS-meldingen over lange afstand van schepen aan satellieten; geen spraak sinds 14 juni 2017',
  'channel-text-low-power-autonomous-devices-of-group-b': 'autonome apparaten met klein vermogen van groep B',
  'channel-text-marinas-and-yacht-clubs': 'jachthavens en watersportverenigingen',
  'channel-text-marinas-note-21': 'jachthavens (noot 21)',
  'channel-text-marinas-with-pleasure-craft-not-between-ships':
    'jachthavens met pleziervaart, niet tussen schepen',
  'channel-text-marinas-yacht-clubs-and-race-control':
    'jachthavens, watersportverenigingen en wedstrijdleiding',
  'channel-text-maritime-control-by-state-and-local-government':
    'toezicht op de scheepvaart door staten en gemeenten',
  'channel-text-may-be-a-port-channel-where-you-are': 'kan ter plaatse een havenkanaal zijn',
  'channel-text-may-be-a-port-or-rescue-channel-where-you-are':
    'kan ter plaatse een haven- of reddingskanaal zijn',
  'channel-text-may-carry-data-exchange': 'kan voor gegevensuitwisseling dienen',
  'channel-text-mostly-inland-and-in-the-arctic': 'vooral in het binnenland en het Noordpoolgebied',
  'channel-text-national-rules-come-before-this-table-in-their-waters':
    'nationale regels gaan in hun wateren voor deze tabel',
  'channel-text-nautical-information': 'nautische informatie',
  'channel-text-nautical-information-business-traffic-between-companies-and-sea-going-ships-note-6':
    'nautische informatie; zakelijk verkeer tussen bedrijven en zeeschepen (noot 6)',
  'channel-text-nautical-information-designated-for-traffic-guidance-note-4':
    'nautische informatie; aangewezen voor verkeersbegeleiding (noot 4)',
  'channel-text-nautical-information-messages-to-and-from-bridges-and-locks-note-17':
    'nautische informatie; berichten van en naar bruggen en sluizen (noot 17)',
  'channel-text-nautical-information-oil-pollution-on-the-north-sea-note-12':
    'nautische informatie; olieverontreiniging op de Noordzee (noot 12)',
  'channel-text-nautical-information-provisioning-and-bunkering-notes-16-and-18':
    'nautische informatie; bevoorrading en bunkeren (noten 16 en 18)',
  'channel-text-nautical-information-radio-medical-service-note-19':
    'nautische informatie; radiomedische dienst (noot 19)',
  'channel-text-nautical-information-temporary-events-note-20':
    'nautische informatie; tijdelijke evenementen (noot 20)',
  'channel-text-navigation-related-port-traffic-only-also-long-range-ais-reports-from-ships-to-satellites-note-s':
    'alleen nautisch havenverkeer; ook AIS-meldingen over lange afstand van schepen aan satellieten (noot s)',
  'channel-text-navigation-related-port-traffic-only-also-received-by-satellites-for-ais-note-30':
    'alleen nautisch havenverkeer; door satellieten ook voor AIS ontvangen (noot 30)',
  'channel-text-new-orleans-and-the-lower-mississippi-01a-also-port-arthur':
    'New Orleans en de beneden-Mississippi; 01A ook Port Arthur',
  'channel-text-new-orleans-houston-los-angeles-and-long-beach-seattle-47-cfr-80-383':
    'New Orleans, Houston, Los Angeles en Long Beach, Seattle (47 CFR 80.383)',
  'channel-text-no-dual-watch-note-2': 'geen dubbele uitluistering (noot 2)',
  'channel-text-no-limit-of-its-own-in-the-rule-read-many-lists-print-1-w':
    'geen eigen grens in de gelezen regel; veel lijsten noemen 1 W',
  'channel-text-no-power-limit-is-printed-for-the-sea': 'voor de zee is geen vermogensgrens afgedrukt',
  'channel-text-no-selective-calls-except-distress-urgency-and-safety-calls-made-voluntarily-on-waddenzee-ijsselmeer-oosterschelde-westerschelde-and-eems-dollard-note-9':
    'geen selectieve oproepen, behalve vrijwillige oproepen voor nood, spoed en veiligheid, op Waddenzee, IJsselmeer, Oosterschelde, Westerschelde en Eems-Dollard (noot 9)',
  'channel-text-non-commercial-talk-between-ships': 'niet-zakelijk verkeer tussen schepen',
  'channel-text-non-commercial-working': 'niet-zakelijk werkverkeer',
  'channel-text-non-commercial-working-vessel-traffic-in-puget-sound':
    'niet-zakelijk werkverkeer; verkeersbegeleiding in Puget Sound',
  'channel-text-normal-output-not-above-1-w': 'normaal vermogen hoogstens 1 W',
  'channel-text-normally-in-the-seattle-vessel-traffic-area': 'normaal, in het verkeersgebied Seattle',
  'channel-text-normally-used-by-ports-or-for-work-on-board':
    'meestal in gebruik bij havens of voor werk aan boord',
  'channel-text-not-for-casual-talk-in-the-puget-sound-vessel-traffic-area':
    'geen gewone gesprekken in het verkeersgebied Puget Sound',
  'channel-text-not-in-zeeland-noord-brabant-and-limburg': 'niet in Zeeland, Noord-Brabant en Limburg',
  'channel-text-not-within-25-km-of-the-dutch-coast': 'niet binnen 25 km van de Nederlandse kust',
  'channel-text-often-assigned-to-a-port-or-a-race': 'vaak toegewezen aan een haven of een wedstrijd',
  'channel-text-on-10-and-11-take-care-not-to-disturb-70-note-32':
    'let op 10 en 11 op dat 70 niet wordt gestoord (noot 32)',
  'channel-text-on-board-only-and-not-on-craft-under-20-m-notes-13-and-23':
    'alleen aan boord, en niet op vaartuigen korter dan 20 m (noten 13 en 23)',
  'channel-text-on-the-st-lawrence-and-great-lakes': 'op de Saint Lawrence en de Grote Meren',
  'channel-text-only-to-talk-with-the-coast-guard': 'alleen om met de kustwacht (Coast Guard) te praten',
  'channel-text-only-to-talk-with-the-coastguard': 'alleen om met de kustwacht te praten',
  'channel-text-output-0-5-to-25-w-of-hand-held-sets-0-1-to-6-w-note-1':
    'vermogen 0,5 tot 25 W, van portofoons 0,1 tot 6 W (noot 1)',
  'channel-text-pacific': 'Stille Oceaan',
  'channel-text-pilots-on-the-pacific-port-operations-on-the-st-lawrence-and-great-lakes':
    'loodsen aan de Stille Oceaan; havenverkeer op de Saint Lawrence en de Grote Meren',
  'channel-text-pleasure-craft-marinas-and-yacht-clubs':
    'pleziervaart, jachthavens en watersportverenigingen',
  'channel-text-pleasure-craft-may-use-it-on-the-great-lakes-only':
    'pleziervaart mag het alleen op de Grote Meren gebruiken',
  'channel-text-pleasure-craft-on-the-pacific-commercial-fishing-on-the-atlantic':
    'pleziervaart aan de Stille Oceaan, beroepsvisserij aan de Atlantische kust',
  'channel-text-port-operations': 'havenverkeer',
  'channel-text-port-operations-and-commercial-traffic-under-vessel-traffic-control':
    'havenverkeer en zakelijk verkeer onder verkeersbegeleiding',
  'channel-text-port-operations-and-on-board-at-low-power': 'havenverkeer, en aan boord met klein vermogen',
  'channel-text-port-operations-and-ship-movement': 'havenverkeer en scheepsbewegingen',
  'channel-text-port-operations-and-ship-movement-and-on-board':
    'havenverkeer en scheepsbewegingen, en aan boord',
  'channel-text-port-operations-and-ship-movement-as-assigned-no-public-correspondence-remains':
    'havenverkeer en scheepsbewegingen naar toewijzing; geen openbaar berichtenverkeer meer',
  'channel-text-port-operations-and-ship-movement-coast-stations-on-the-upper-leg':
    'havenverkeer en scheepsbewegingen, kuststations op de walzijde',
  'channel-text-port-operations-and-ship-movement-on-one-frequency':
    'havenverkeer en scheepsbewegingen op één frequentie',
  'channel-text-port-operations-and-ship-movement-on-one-frequency-since-1-january-2019':
    'havenverkeer en scheepsbewegingen, op één frequentie sinds 1 januari 2019',
  'channel-text-port-operations-and-ship-movement-on-the-lower-leg-between-ships-only-by-national-rule':
    'havenverkeer en scheepsbewegingen op de scheepszijde; tussen schepen alleen volgens nationale regels',
  'channel-text-port-operations-and-vessel-traffic': 'havenverkeer en verkeersbegeleiding',
  'channel-text-port-operations-between-ships': 'havenverkeer tussen schepen',
  'channel-text-port-operations-from-ship-to-coast-on-two-frequencies':
    'havenverkeer van schip naar wal, op twee frequenties',
  'channel-text-port-operations-on-one-frequency': 'havenverkeer op één frequentie',
  'channel-text-port-operations-on-the-st-lawrence-and-great-lakes-marinas-in-british-columbia':
    'havenverkeer op de Saint Lawrence en de Grote Meren; jachthavens in Brits-Columbia',
  'channel-text-port-operations-pilots-race-control-and-between-ships':
    'havenverkeer, loodsen, wedstrijdleiding en tussen schepen',
  'channel-text-port-operations-ship-movement-and-navigation-only':
    'alleen havenverkeer, scheepsbewegingen en navigatie',
  'channel-text-port-operations-ship-movement-and-public-correspondence':
    'havenverkeer, scheepsbewegingen en openbaar berichtenverkeer',
  'channel-text-port-operations-ship-movement-and-public-correspondence-also-on-one-frequency-the-table-does-not-say-which':
    'havenverkeer, scheepsbewegingen en openbaar berichtenverkeer; ook op één frequentie, de tabel zegt niet welke',
  'channel-text-port-operations-vessel-traffic-at-port-arthur':
    'havenverkeer; verkeersbegeleiding bij Port Arthur',
  'channel-text-port-operations-vessel-traffic-at-port-arthur-33-cfr-161-12-c':
    'havenverkeer; verkeersbegeleiding bij Port Arthur (33 CFR 161.12(c))',
  'channel-text-port-operations-vessel-traffic-in-some-ports':
    'havenverkeer; verkeersbegeleiding in sommige havens',
  'channel-text-public-correspondence': 'openbaar berichtenverkeer',
  'channel-text-public-correspondence-and-working-with-the-coast-guard':
    'openbaar berichtenverkeer, en werkverkeer met de kustwacht',
  'channel-text-public-correspondence-near-the-canadian-border':
    'openbaar berichtenverkeer bij de Canadese grens',
  'channel-text-public-correspondence-on-the-lower-leg-alone':
    'openbaar berichtenverkeer op de scheepszijde alleen',
  'channel-text-public-correspondence-through-a-coast-station':
    'openbaar berichtenverkeer via een kuststation',
  'channel-text-radio-medical-service-of-the-rescue-centre-at-den-helder-note-19':
    'radiomedische dienst van het reddingscentrum in Den Helder (noot 19)',
  'channel-text-rescue-and-pollution-control-towing-port-operations-or-pleasure-craft-by-region':
    'redding en bestrijding van verontreiniging, slepen, havenverkeer of pleziervaart, per gebied',
  'channel-text-safety-and-navigation-chiefly-between-ships-note-26':
    'veiligheid en navigatie, vooral tussen schepen (noot 26)',
  'channel-text-safety-between-ships-and-rescue-work-with-coast-guard-ships-and-aircraft':
    'veiligheid tussen schepen, en reddingswerk met schepen en luchtvaartuigen van de kustwacht',
  'channel-text-safety-of-navigation-from-bridge-to-bridge-locks-and-bridges-come-second-vessel-traffic-at-louisville-and-valdez-33-cfr-161-12-c':
    'veiligheid van de navigatie van brug tot brug; sluizen en bruggen komen daarna; verkeersbegeleiding bij Louisville en Valdez (33 CFR 161.12(c))',
  'channel-text-safety-of-navigation-from-bridge-to-bridge-vessel-traffic-in-british-columbia':
    'veiligheid van de navigatie van brug tot brug; verkeersbegeleiding in Brits-Columbia',
  'channel-text-safety-of-navigation-worldwide-chiefly-from-bridge-to-bridge-also-ship-movement-and-port-operations-where-a-national-rule-says-so':
    'veiligheid van de navigatie, wereldwijd, vooral van brug tot brug; ook scheepsbewegingen en havenverkeer waar nationale regels dat zeggen',
  'channel-text-sand-and-gravel-extraction-and-dredging': 'zand- en grindwinning en baggerwerk',
  'channel-text-search-and-rescue-on-scene-on-the-north-sea-and-the-large-inland-waters-note-5':
    'opsporing en redding ter plaatse, op de Noordzee en de grote binnenwateren (noot 5)',
  'channel-text-selective-calls-are-not-permitted-on-these-waters-distress-urgency-and-safety-calls-only-on-waddenzee-ijsselmeer-oosterschelde-westerschelde-and-eems-dollard-note-9':
    'selectieve oproepen zijn op deze wateren niet toegestaan; oproepen voor nood, spoed en veiligheid alleen op Waddenzee, IJsselmeer, Oosterschelde, Westerschelde en Eems-Dollard (noot 9)',
  'channel-text-selective-calls-for-distress-urgency-safety-and-calling':
    'selectieve oproepen voor nood, spoed, veiligheid en oproepen',
  'channel-text-selective-calls-on-named-waters-only-note-9':
    'selectieve oproepen, alleen op genoemde wateren (noot 9)',
  'channel-text-shared-with-aircraft-in-support-of-ships':
    'gedeeld door luchtvaartuigen die schepen bijstaan',
  'channel-text-ship-movement-and-vessel-traffic': 'scheepsbewegingen en verkeersbegeleiding',
  'channel-text-ships-do-not-transmit-on-it': 'schepen zenden er niet op',
  'channel-text-short-digital-messages-may-share-voice-channels-except-where-47-cfr-80-364-bars-them':
    'korte digitale berichten mogen spraakkanalen delen, behalve waar 47 CFR 80.364 ze uitsluit',
  'channel-text-split-in-other-countries-into-a-voice-channel-and-an-asm-data-channel':
    'in andere landen gesplitst in een spraakkanaal en een ASM-datakanaal',
  'channel-text-split-on-1-january-2019-into-a-voice-channel-on-the-lower-leg-and-asm-data-on-the-upper':
    'op 1 januari 2019 gesplitst in een spraakkanaal op de scheepszijde en ASM-data op de walzijde',
  'channel-text-swedish-waters-and-ships-with-a-swedish-licence':
    'Zweedse wateren, en schepen met een Zweedse vergunning',
  'channel-text-talk-between-fishing-vessels': 'verkeer tussen vissersschepen',
  'channel-text-talk-between-fishing-vessels-which-may-be-encrypted-and-charter-vessels-of-anglers-note-29':
    'verkeer tussen vissersschepen, dat versleuteld mag zijn, en charterschepen voor sportvissers (noot 29)',
  'channel-text-talk-between-fishing-vessels-which-may-be-encrypted-note-29':
    'verkeer tussen vissersschepen, dat versleuteld mag zijn (noot 29)',
  'channel-text-talk-between-leisure-craft-fitted-only-together-with-l1':
    'verkeer tussen pleziervaartuigen; alleen samen ingebouwd met L1',
  'channel-text-talk-between-leisure-craft-fitted-only-together-with-l2':
    'verkeer tussen pleziervaartuigen; alleen samen ingebouwd met L2',
  'channel-text-talk-between-ships': 'verkeer tussen schepen',
  'channel-text-talk-between-ships-also-social-provisioning-notes-10-and-16':
    'verkeer tussen schepen, ook sociaal; bevoorrading (noten 10 en 16)',
  'channel-text-talk-between-ships-also-social-salvage-and-towing-notes-10-and-11':
    'verkeer tussen schepen, ook sociaal; berging en slepen (noten 10 en 11)',
  'channel-text-talk-between-ships-and-search-and-rescue': 'verkeer tussen schepen, en opsporing en redding',
  'channel-text-talk-between-ships-and-with-aircraft-in-search-and-rescue-note-31':
    'verkeer tussen schepen, en met luchtvaartuigen bij opsporing en redding (noot 31)',
  'channel-text-intership-only': 'verkeer tussen schepen, het enige gebruik',
  'channel-text-talk-between-ships-pleasure-craft-on-the-pacific':
    'verkeer tussen schepen; pleziervaart aan de Stille Oceaan',
  'channel-text-talk-between-ships-safety-and-search-and-rescue-with-aircraft':
    'verkeer tussen schepen, veiligheid, en opsporing en redding met luchtvaartuigen',
  'channel-text-talk-with-pilots-about-movement-and-docking': 'verkeer met loodsen over varen en aanleggen',
  'channel-text-the-arrangement-itself-was-not-seen-and-its-other-members-differ-in-power':
    'de overeenkomst zelf is niet gezien, en andere leden hebben andere vermogens',
  'channel-text-the-bridge-to-bridge-channel-on-the-lower-mississippi-pleasure-craft-may-use-it-in-puget-sound-and-juan-de-fuca-only':
    'het brug-tot-brugkanaal op de beneden-Mississippi; pleziervaart alleen in Puget Sound en Straat Juan de Fuca',
  'channel-text-the-fallback-for-channel-10': 'het reservekanaal voor 10',
  'channel-text-the-licence-terms-read-refer-to-the-act-of-2003-replaced-in-2022-newer-terms-were-not-seen':
    'de gelezen voorwaarden gaan uit van de wet van 2003, in 2022 vervangen; nieuwere voorwaarden zijn niet gezien',
  'channel-text-the-national-schedule-was-not-seen-in-full-most-uses-by-coast-are-unverified':
    'het nationale plan is niet volledig gezien: het meeste gebruik per kust is niet nagegaan',
  'channel-text-the-national-table-was-not-seen-in-full-most-port-uses-are-unverified':
    'de nationale tabel is niet volledig gezien: het meeste havengebruik is niet nagegaan',
  'channel-text-tow-boats': 'sleepboten',
  'channel-text-two-frequency-channels-may-not-be-used-on-one-frequency-unless-the-table-lists-it-47-cfr-80-203-b-2':
    'duplexkanalen mogen niet op één frequentie worden gebruikt, tenzij de tabel ze zo noemt (47 CFR 80.203(b)(2))',
  'channel-text-united-kingdom-only': 'alleen Verenigd Koninkrijk',
  'channel-text-uses-of-the-two-frequency-channels-and-of-single-legs-are-unverified':
    'gebruik van duplexkanalen en van enkele zijden is niet nagegaan',
  'channel-text-vessel-traffic-and-pilotage': 'verkeersbegeleiding en loodsen',
  'channel-text-vessel-traffic-and-ship-movement': 'verkeersbegeleiding en scheepsbewegingen',
  'channel-text-vessel-traffic-on-the-pacific': 'verkeersbegeleiding aan de Stille Oceaan',
  'channel-text-vessel-traffic-on-the-pacific-marinas-on-the-atlantic-and-lake-winnipeg':
    'verkeersbegeleiding aan de Stille Oceaan; jachthavens aan de Atlantische kust en het Winnipegmeer',
  'channel-text-vessel-traffic-port-operations-and-pilotage': 'verkeersbegeleiding, havenverkeer en loodsen',
  'channel-text-vessel-traffic-services-come-first': 'verkeersbegeleiding gaat voor',
  'channel-text-vessel-traffic-services-have-rules-of-their-own-by-port-33-cfr-161-12':
    'verkeersbegeleiding heeft per haven eigen regels: 33 CFR 161.12',
  'channel-text-voice-only-where-the-country-still-allows-it-and-then-without-protection-from-interference':
    'spraak alleen waar het land die nog toestaat, en dan zonder bescherming tegen storing',
  'channel-text-volunteer-coast-watch-stations-on-the-lower-leg-alone-as-remembered':
    'vrijwillige kustwaarnemers, naar herinnering op de scheepszijde alleen',
  'channel-text-when-the-operator-overrides-the-reduction': 'als de bediener de verlaging opheft',
  'channel-text-with-pilots-only': 'alleen met loodsen',
};
