import type { planTexts } from '../../channel/internal.ts';
import type { Translation } from '../catalogue.ts';

export const channelPlans: Translation<typeof planTexts> = {
  'channel-text-0-5-to-1-w-set-by-hand-or-automatically-note-1':
    '0,5 à 1 W, réglage manuel ou automatique (note 1)',
  'channel-text-0-5-to-1-w-the-set-reduces-its-power-automatically-note-1':
    '0,5 à 1 W : l’appareil réduit sa puissance automatiquement (note 1)',
  'channel-text-1-w-at-most': '1 W au plus',
  'channel-text-1-w-for-port-operations-on-the-st-lawrence':
    '1 W pour les opérations portuaires sur le Saint-Laurent',
  'channel-text-1-w-in-normal-use': '1 W en usage normal',
  'channel-text-1-w-normally-and-10-w-at-most-in-the-seattle-vessel-traffic-area':
    '1 W en usage normal et 10 W au plus dans la zone de trafic de Seattle',
  'channel-text-1-w-on-the-st-lawrence-and-great-lakes': '1 W sur le Saint-Laurent et les Grands Lacs',
  'channel-text-1-w-radiated-note-15': '1 W rayonné (note 15)',
  'channel-text-1-w-radiated-on-board-elsewhere-25-w-unless-a-national-rule-says-less':
    '1 W rayonné à bord ; ailleurs 25 W sauf si une règle nationale prévoit moins',
  'channel-text-1-w-radiated-on-board-note-24-no-other-limit-is-printed':
    '1 W rayonné à bord (note 24) ; aucune autre limite n’est imprimée',
  'channel-text-1-w-radiated-to-protect-channel-16-note-27':
    '1 W rayonné, pour protéger la voie 16 (note 27)',
  'channel-text-1-w-the-set-reduces-its-power-automatically-and-the-operator-may-override-it-up-to-25-w':
    '1 W : l’appareil réduit sa puissance automatiquement, et l’opérateur peut la relever jusqu’à 25 W',
  'channel-text-1-w-to-protect-channel-16': '1 W, pour protéger la voie 16',
  'channel-text-100-mw-e-i-r-p-aerial-at-most-1-m-above-the-sea':
    '100 mW p.i.r.e., antenne à 1 m au plus au-dessus de la mer',
  'channel-text-12-5-khz-channels-must-not-disturb-06-13-15-16-17-70-ais-1-and-ais-2-note-e':
    'les voies à 12,5 kHz ne doivent pas brouiller 06, 13, 15, 16, 17, 70, AIS 1 et AIS 2 (note e)',
  'channel-text-12-5-w-at-most-note-22': '12,5 W au plus (note 22)',
  'channel-text-12-5-w-for-class-a-sets-1-w-2-w-or-5-w-for-class-b':
    '12,5 W pour les appareils de classe A ; 1 W, 2 W ou 5 W pour la classe B',
  'channel-text-155-000-to-155-975-mhz-may-otherwise-be-used-on-board-only-with-special-consent-pts-licence-terms':
    '155,000 à 155,975 MHz ne peuvent sinon être utilisés à bord qu’avec un accord particulier (conditions de licence PTS)',
  'channel-text-a-calling-channel-move-off-it-to-talk': 'voie d’appel : changer de voie pour parler',
  'channel-text-a-channel-l3-may-exist-it-is-not-in-the-terms-read-and-left-out':
    'une voie L3 existe peut-être : elle ne figure pas dans les conditions lues et est omise ici',
  'channel-text-a-channel-of-its-user': 'une voie de son utilisateur',
  'channel-text-a-channel-with-no-use-stated-for-an-area-may-be-used-between-ships-industry-canada-letter-2002':
    'une voie sans usage indiqué pour une zone peut servir entre navires (lettre d’Industrie Canada, 2002)',
  'channel-text-a-hand-held-set-on-an-outside-aerial-gives-at-most-1-w-on-1-to-15-17-to-28-and-60-to-88-except-on-23-and-83-with-the-coastguard-note-3':
    'un portatif sur une antenne extérieure émet au plus 1 W sur 1 à 15, 17 à 28 et 60 à 88, sauf sur 23 et 83 avec les garde-côtes (note 3)',
  'channel-text-aerial-at-most-1-m-above-the-sea': 'antenne à 1 m au plus au-dessus de la mer',
  'channel-text-after-such-an-alert-16-is-the-channel-to-speak-on-note-14':
    'après une telle alerte, on parle sur la voie 16 (note 14)',
  'channel-text-all-but-parts-of-the-lower-mississippi-and-its-approaches':
    'partout sauf certaines parties du bas Mississippi et ses accès',
  'channel-text-amendments-after-march-2025-were-not-seen-the-list-of-october-2025-is-known-at-second-hand':
    'les modifications après mars 2025 n’ont pas été vues ; la liste d’octobre 2025 n’est connue que de seconde main',
  'channel-text-application-specific-messages': 'messages propres à une application',
  'channel-text-at-most-in-the-seattle-vessel-traffic-area': 'au plus, dans la zone de trafic de Seattle',
  'channel-text-atlantic': 'Atlantique',
  'channel-text-atlantic-and-pacific': 'Atlantique et Pacifique',
  'channel-text-automatic-identification-system': 'système d’identification automatique',
  'channel-text-between-ships-and-port-operations': 'entre navires et opérations portuaires',
  'channel-text-between-ships-and-port-operations-67-search-and-rescue-on-scene-note-5-73-oil-pollution-on-the-north-sea-note-12':
    'entre navires et opérations portuaires ; 67 recherche et sauvetage sur zone (note 5), 73 pollution par hydrocarbures en mer du Nord (note 12)',
  'channel-text-between-ships-and-port-operations-search-and-rescue-and-pollution-control-in-europe-and-canada':
    'entre navires et opérations portuaires ; recherche et sauvetage et lutte contre la pollution en Europe et au Canada',
  'channel-text-between-ships-and-with-the-shore-rescue-and-pollution-control':
    'entre navires et vers la terre ; sauvetage et lutte contre la pollution',
  'channel-text-between-ships-fallback-for-channel-10-note-8':
    'entre navires ; secours de la voie 10 (note 8)',
  'channel-text-between-ships-port-operations-and-ship-movement':
    'entre navires, opérations portuaires et mouvement des navires',
  'channel-text-both-coasts-and-lake-winnipeg': 'les deux côtes et le lac Winnipeg',
  'channel-text-call-on-10-13-is-its-fallback-notes-7-and-8':
    'appeler sur 10 ; 13 est sa voie de secours (notes 7 et 8)',
  'channel-text-calling-by-pleasure-craft-commercial-and-non-commercial-working':
    'appel par la plaisance ; trafic de travail commercial et non commercial',
  'channel-text-check-locally-whether-one-frequency-or-two-are-in-use':
    'vérifier sur place si une ou deux fréquences sont utilisées',
  'channel-text-coast-areas-1-to-9-not-assignable-in-areas-10-to-42':
    'zones côtières 1 à 9 ; non attribuable dans les zones 10 à 42',
  'channel-text-coast-guard-and-government-commercial-in-places':
    'garde-côtes et administration ; commercial par endroits',
  'channel-text-coast-guard-and-national-defence': 'garde-côtes et défense nationale',
  'channel-text-coast-guard-and-other-agencies-its-working-channel-on-the-pacific-since-2009':
    'garde-côtes et autres services ; leur voie de travail sur le Pacifique depuis 2009',
  'channel-text-coast-guard-liaison': 'liaison avec les garde-côtes',
  'channel-text-coast-guard-liaison-and-its-safety-broadcasts-after-an-announcement-on-16':
    'liaison avec les garde-côtes, et leurs avis de sécurité après annonce sur 16',
  'channel-text-coast-guard-on-the-pacific-commercial-fishing-on-the-atlantic':
    'garde-côtes sur le Pacifique, pêche professionnelle sur l’Atlantique',
  'channel-text-coast-guard-only': 'garde-côtes seulement',
  'channel-text-coast-of-british-columbia': 'côte de la Colombie-Britannique',
  'channel-text-coastguard-pollution-control-and-reserve-for-safety-broadcasts':
    'lutte contre la pollution par les garde-côtes et réserve pour les avis de sécurité',
  'channel-text-coastguard-rescue-units-and-vessels-they-invite':
    'garde-côtes, moyens de sauvetage et navires qu’ils y invitent',
  'channel-text-coastguard-safety-broadcasts-and-radio-medical-advice':
    'avis de sécurité des garde-côtes et consultation radiomédicale',
  'channel-text-coastguard-safety-broadcasts-until-2017-since-then-as-assigned':
    'avis de sécurité des garde-côtes jusqu’en 2017, depuis selon attribution',
  'channel-text-coastguard-working-with-small-craft-and-in-rescue':
    'garde-côtes avec les petites embarcations et lors des sauvetages',
  'channel-text-commercial-and-safety-between-ships': 'trafic commercial et sécurité, entre navires',
  'channel-text-commercial-fishing': 'pêche professionnelle',
  'channel-text-commercial-fishing-on-the-atlantic': 'pêche professionnelle sur l’Atlantique',
  'channel-text-commercial-fishing-on-the-atlantic-elsewhere-between-ships-rescue-and-pollution-control':
    'pêche professionnelle sur l’Atlantique, ailleurs entre navires ; sauvetage et lutte contre la pollution',
  'channel-text-commercial-talk-between-ships-bridge-to-bridge-on-the-lower-mississippi-pleasure-craft-in-puget-sound':
    'trafic commercial entre navires ; de passerelle à passerelle sur le bas Mississippi ; plaisance dans le Puget Sound',
  'channel-text-commercial-talk-between-ships-fishing-vessels-and-their-aircraft':
    'trafic commercial entre navires, navires de pêche et leurs aéronefs',
  'channel-text-commercial-vessels-may-use-it-in-puget-sound-and-juan-de-fuca-only':
    'navires de commerce seulement dans le Puget Sound et le détroit de Juan de Fuca',
  'channel-text-commercial-working': 'trafic de travail commercial',
  'channel-text-commercial-working-also-with-aircraft-in-support':
    'trafic de travail commercial, aussi avec des aéronefs d’assistance',
  'channel-text-commercial-working-and-rescue-and-pollution-control-with-aircraft':
    'trafic de travail commercial, sauvetage et lutte contre la pollution avec des aéronefs',
  'channel-text-commercial-working-between-ships-only':
    'trafic de travail commercial, entre navires seulement',
  'channel-text-commercial-working-non-commercial-on-the-great-lakes':
    'trafic de travail commercial ; non commercial sur les Grands Lacs',
  'channel-text-commercial-working-towing-on-the-pacific':
    'trafic de travail commercial ; remorquage sur le Pacifique',
  'channel-text-commercial-working-vessel-traffic-in-some-ports':
    'trafic de travail commercial ; trafic maritime dans certains ports',
  'channel-text-continuous-marine-broadcast-in-french-28b-shares-its-frequency-with-asm-2':
    'diffusion maritime continue en français ; 28B a la même fréquence que ASM 2',
  'channel-text-continuous-marine-broadcast-of-weather-and-safety-messages':
    'diffusion maritime continue de la météo et des avis de sécurité',
  'channel-text-continuous-marine-broadcast-on-a-frequency-also-meant-for-data-exchange':
    'diffusion maritime continue, sur une fréquence prévue aussi pour l’échange de données',
  'channel-text-continuous-weather-broadcast-as-in-the-united-states':
    'diffusion météo continue, comme aux États-Unis',
  'channel-text-continuous-weather-broadcast-the-wx-numbers-have-no-official-standing':
    'diffusion météo continue ; les numéros WX n’ont rien d’officiel',
  'channel-text-data-exchange-between-ships-from-shore-and-from-satellite':
    'échange de données entre navires, depuis la terre et depuis les satellites',
  'channel-text-data-exchange-from-ships-to-shore-and-satellite':
    'échange de données des navires vers la terre et les satellites',
  'channel-text-digital-selective-calling': 'appel sélectif numérique',
  'channel-text-digital-selective-calling-for-distress-safety-and-calling':
    'appel sélectif numérique pour la détresse, la sécurité et l’appel',
  'channel-text-distress-safety-and-calling': 'détresse, sécurité et appel',
  'channel-text-distress-urgency-safety-and-calling': 'détresse, urgence, sécurité et appel',
  'channel-text-distress-urgency-safety-and-calling-by-voice':
    'détresse, urgence, sécurité et appel à la voix',
  'channel-text-distress-urgency-safety-and-calling-the-channel-to-speak-on-after-an-alert-note-14':
    'détresse, urgence, sécurité et appel ; la voie où parler après une alerte (note 14)',
  'channel-text-editions-of-2017-2019-and-2021-exist-and-were-not-seen-data-use-of-24-to-28-and-84-to-86-is-not-in-this-one':
    'des éditions de 2017, 2019 et 2021 existent et n’ont pas été vues : les données sur 24 à 28 et 84 à 86 ne figurent pas dans celle-ci',
  'channel-text-environmental-information-from-coast-to-ship':
    'informations sur l’environnement de la côte vers les navires',
  'channel-text-first-channel-between-ships-and-between-ships-and-aircraft-in-search-and-rescue':
    'première voie entre navires, et entre navires et aéronefs en recherche et sauvetage',
  'channel-text-first-channel-for-calling-urgency-and-safety-note-7':
    'première voie d’appel, d’urgence et de sécurité (note 7)',
  'channel-text-fishing-industry-between-ships-and-with-the-shore': 'pêche, entre navires et vers la terre',
  'channel-text-for-commercial-vessels': 'pour les navires de commerce',
  'channel-text-for-communication-on-board': 'pour les communications à bord',
  'channel-text-for-pilots-and-ports': 'pour les pilotes et les ports',
  'channel-text-for-port-operations-on-the-st-lawrence':
    'pour les opérations portuaires sur le Saint-Laurent',
  'channel-text-for-port-operations-only': 'pour les opérations portuaires seulement',
  'channel-text-for-safety-traffic-only': 'pour le trafic de sécurité seulement',
  'channel-text-for-the-fishing-industry': 'pour la pêche',
  'channel-text-for-the-safety-of-navigation-only': 'pour la sécurité de la navigation seulement',
  'channel-text-for-the-safety-of-navigation-other-uses-by-national-rule-only':
    'pour la sécurité de la navigation ; autres usages seulement selon une règle nationale',
  'channel-text-four-digit-names-that-swedish-coast-channels-got-on-1-november-2022-were-not-seen':
    'les noms à quatre chiffres donnés le 1er novembre 2022 à des voies côtières suédoises n’ont pas été vus',
  'channel-text-frequencies-of-0-m-and-m2-are-unverified':
    'les fréquences de 0, M et M2 ne sont pas vérifiées',
  'channel-text-government-only': 'administration seulement',
  'channel-text-hand-held-sets-which-need-no-automatic-reduction':
    'portatifs, qui n’ont pas besoin de réduction automatique',
  'channel-text-identification-by-atis-is-required-article-9-1-i-outside-these-waters-it-may-be-off-note-28':
    'l’identification par ATIS est obligatoire (article 9(1)(i)) ; hors de ces eaux elle peut être coupée (note 28)',
  'channel-text-identified-for-data-exchange-in-regions-1-and-3-since-1-january-2017':
    'prévue pour l’échange de données, en Régions 1 et 3 depuis le 1er janvier 2017',
  'channel-text-identified-for-data-exchange-since-1-january-2017':
    'prévue pour l’échange de données depuis le 1er janvier 2017',
  'channel-text-in-use-as-a-pair-only-where-a-country-keeps-it':
    'utilisée en duplex seulement là où un pays la conserve',
  'channel-text-it-carries-application-specific-data-messages-only':
    'elle ne porte que des messages de données propres à une application',
  'channel-text-it-carries-automatic-identification-data-only':
    'elle ne porte que les données d’identification automatique',
  'channel-text-it-carries-data-exchange-only': 'elle ne porte que l’échange de données',
  'channel-text-it-carries-data-of-autonomous-devices-only':
    'elle ne porte que les données d’appareils autonomes',
  'channel-text-it-carries-digital-selective-calls-only-never-speech':
    'elle ne porte que des appels sélectifs numériques, jamais de parole',
  'channel-text-it-carries-long-range-ais-reports-to-satellites-only':
    'elle ne porte que des comptes rendus AIS à longue portée vers les satellites',
  'channel-text-it-guards-channel-16-and-carries-navigation-related-port-traffic-only':
    'elle protège la voie 16 et ne porte que le trafic portuaire lié à la navigation',
  'channel-text-it-has-no-digits-for-a-call': 'elle n’a pas de chiffres pour un appel',
  'channel-text-it-has-no-digits-for-a-call-and-only-a-set-with-this-channel-can-use-it':
    'elle n’a pas de chiffres pour un appel, et seul un appareil doté de cette voie peut l’utiliser',
  'channel-text-it-is-an-upper-leg-for-coast-stations-unless-a-national-rule-lets-ships-transmit':
    'fréquence supérieure, pour les stations côtières, sauf si une règle nationale y laisse émettre les navires',
  'channel-text-it-is-for-dredging-and-it-has-no-digits-for-a-call':
    'elle est pour le dragage, et elle n’a pas de chiffres pour un appel',
  'channel-text-it-is-for-fishing-vessels-only-and-it-has-no-digits-for-a-call':
    'elle est pour les seuls navires de pêche, et elle n’a pas de chiffres pour un appel',
  'channel-text-it-is-for-ships-to-marinas-and-clubs-and-it-has-no-digits-for-a-call':
    'elle est pour les navires avec les ports de plaisance et les clubs, et elle n’a pas de chiffres pour un appel',
  'channel-text-it-is-for-talk-with-the-coast-guard-which-chooses-it':
    'elle sert à parler aux garde-côtes, qui la choisissent',
  'channel-text-it-is-mainly-for-the-government': 'elle est surtout pour l’administration',
  'channel-text-it-is-private-to-the-coastguard-and-rescue-services-and-it-has-no-digits-for-a-call':
    'elle est propre aux garde-côtes et aux services de sauvetage, et elle n’a pas de chiffres pour un appel',
  'channel-text-it-is-reserved-to-the-coast-guard-or-to-fishing-by-coast':
    'elle est réservée aux garde-côtes ou à la pêche, selon la côte',
  'channel-text-it-is-reserved-to-the-government': 'elle est réservée à l’administration',
  'channel-text-its-use-differs-from-region-to-region': 'son usage diffère d’une région à l’autre',
  'channel-text-keep-it-clear-for-search-and-rescue': 'la laisser libre pour la recherche et le sauvetage',
  'channel-text-keep-it-clear-for-search-and-rescue-and-for-ice-breakers-and-their-aircraft':
    'la laisser libre pour la recherche et le sauvetage, et pour les brise-glaces et leurs aéronefs',
  'channel-text-kept-for-rescue-and-pollution-control':
    'réservée au sauvetage et à la lutte contre la pollution',
  'channel-text-kept-for-the-coastguard': 'réservée aux garde-côtes',
  'channel-text-long-range-ais-reports-from-ships-to-satellites-no-voice-since-14-june-2017':
    'comptes rendus AIS à longue portée des navires vers les satellites ; plus de parole depuis le 14 juin 2017',
  'channel-text-low-power-autonomous-devices-of-group-b':
    'appareils autonomes de faible puissance du groupe B',
  'channel-text-marinas-and-yacht-clubs': 'ports de plaisance et clubs nautiques',
  'channel-text-marinas-note-21': 'ports de plaisance (note 21)',
  'channel-text-marinas-with-pleasure-craft-not-between-ships':
    'ports de plaisance avec la plaisance, pas entre navires',
  'channel-text-marinas-yacht-clubs-and-race-control':
    'ports de plaisance, clubs nautiques et comités de course',
  'channel-text-maritime-control-by-state-and-local-government':
    'contrôle maritime par les États fédérés et les communes',
  'channel-text-may-be-a-port-channel-where-you-are': 'peut être localement une voie de port',
  'channel-text-may-be-a-port-or-rescue-channel-where-you-are':
    'peut être localement une voie de port ou de sauvetage',
  'channel-text-may-carry-data-exchange': 'peut servir à l’échange de données',
  'channel-text-mostly-inland-and-in-the-arctic': 'surtout à l’intérieur et dans l’Arctique',
  'channel-text-national-rules-come-before-this-table-in-their-waters':
    'les règles nationales priment sur ce tableau dans leurs eaux',
  'channel-text-nautical-information': 'informations nautiques',
  'channel-text-nautical-information-business-traffic-between-companies-and-sea-going-ships-note-6':
    'informations nautiques ; trafic commercial entre entreprises et navires de mer (note 6)',
  'channel-text-nautical-information-designated-for-traffic-guidance-note-4':
    'informations nautiques ; désignée pour l’assistance au trafic (note 4)',
  'channel-text-nautical-information-messages-to-and-from-bridges-and-locks-note-17':
    'informations nautiques ; messages échangés avec les ponts et les écluses (note 17)',
  'channel-text-nautical-information-oil-pollution-on-the-north-sea-note-12':
    'informations nautiques ; pollution par hydrocarbures en mer du Nord (note 12)',
  'channel-text-nautical-information-provisioning-and-bunkering-notes-16-and-18':
    'informations nautiques ; approvisionnement et soutage (notes 16 et 18)',
  'channel-text-nautical-information-radio-medical-service-note-19':
    'informations nautiques ; service radiomédical (note 19)',
  'channel-text-nautical-information-temporary-events-note-20':
    'informations nautiques ; manifestations temporaires (note 20)',
  'channel-text-navigation-related-port-traffic-only-also-long-range-ais-reports-from-ships-to-satellites-note-s':
    'trafic portuaire lié à la navigation seulement ; aussi comptes rendus AIS à longue portée des navires vers les satellites (note s)',
  'channel-text-navigation-related-port-traffic-only-also-received-by-satellites-for-ais-note-30':
    'trafic portuaire lié à la navigation seulement ; reçue aussi par des satellites pour l’AIS (note 30)',
  'channel-text-new-orleans-and-the-lower-mississippi-01a-also-port-arthur':
    'La Nouvelle-Orléans et le bas Mississippi ; 01A aussi Port Arthur',
  'channel-text-new-orleans-houston-los-angeles-and-long-beach-seattle-47-cfr-80-383':
    'La Nouvelle-Orléans, Houston, Los Angeles et Long Beach, Seattle (47 CFR 80.383)',
  'channel-text-no-dual-watch-note-2': 'pas de double veille (note 2)',
  'channel-text-no-limit-of-its-own-in-the-rule-read-many-lists-print-1-w':
    'pas de limite propre dans la règle lue ; beaucoup de listes donnent 1 W',
  'channel-text-no-power-limit-is-printed-for-the-sea':
    'aucune limite de puissance n’est imprimée pour la mer',
  'channel-text-no-selective-calls-except-distress-urgency-and-safety-calls-made-voluntarily-on-waddenzee-ijsselmeer-oosterschelde-westerschelde-and-eems-dollard-note-9':
    'pas d’appels sélectifs, sauf des appels volontaires de détresse, d’urgence et de sécurité sur Waddenzee, IJsselmeer, Oosterschelde, Westerschelde et Eems-Dollard (note 9)',
  'channel-text-non-commercial-talk-between-ships': 'trafic non commercial entre navires',
  'channel-text-non-commercial-working': 'trafic de travail non commercial',
  'channel-text-non-commercial-working-vessel-traffic-in-puget-sound':
    'trafic de travail non commercial ; trafic maritime dans le Puget Sound',
  'channel-text-normal-output-not-above-1-w': 'puissance normale de 1 W au plus',
  'channel-text-normally-in-the-seattle-vessel-traffic-area':
    'en usage normal, dans la zone de trafic de Seattle',
  'channel-text-normally-used-by-ports-or-for-work-on-board':
    'utilisée en général par les ports ou pour le travail à bord',
  'channel-text-not-for-casual-talk-in-the-puget-sound-vessel-traffic-area':
    'pas de conversation ordinaire dans la zone de trafic du Puget Sound',
  'channel-text-not-in-zeeland-noord-brabant-and-limburg':
    'pas en Zélande, au Brabant-Septentrional ni au Limbourg',
  'channel-text-not-within-25-km-of-the-dutch-coast': 'pas à moins de 25 km de la côte néerlandaise',
  'channel-text-often-assigned-to-a-port-or-a-race': 'souvent attribuée à un port ou à une régate',
  'channel-text-on-10-and-11-take-care-not-to-disturb-70-note-32':
    'sur 10 et 11, veiller à ne pas brouiller 70 (note 32)',
  'channel-text-on-board-only-and-not-on-craft-under-20-m-notes-13-and-23':
    'à bord seulement, et pas sur les bateaux de moins de 20 m (notes 13 et 23)',
  'channel-text-on-the-st-lawrence-and-great-lakes': 'sur le Saint-Laurent et les Grands Lacs',
  'channel-text-only-to-talk-with-the-coast-guard': 'seulement pour parler aux garde-côtes (Coast Guard)',
  'channel-text-only-to-talk-with-the-coastguard': 'seulement pour parler aux garde-côtes',
  'channel-text-output-0-5-to-25-w-of-hand-held-sets-0-1-to-6-w-note-1':
    'puissance de 0,5 à 25 W, pour les portatifs de 0,1 à 6 W (note 1)',
  'channel-text-pacific': 'Pacifique',
  'channel-text-pilots-on-the-pacific-port-operations-on-the-st-lawrence-and-great-lakes':
    'pilotes sur le Pacifique ; opérations portuaires sur le Saint-Laurent et les Grands Lacs',
  'channel-text-pleasure-craft-marinas-and-yacht-clubs': 'plaisance, ports de plaisance et clubs nautiques',
  'channel-text-pleasure-craft-may-use-it-on-the-great-lakes-only':
    'navires de plaisance seulement sur les Grands Lacs',
  'channel-text-pleasure-craft-on-the-pacific-commercial-fishing-on-the-atlantic':
    'plaisance sur le Pacifique, pêche professionnelle sur l’Atlantique',
  'channel-text-port-operations': 'opérations portuaires',
  'channel-text-port-operations-and-commercial-traffic-under-vessel-traffic-control':
    'opérations portuaires et trafic commercial sous contrôle du trafic maritime',
  'channel-text-port-operations-and-on-board-at-low-power':
    'opérations portuaires, et à bord à faible puissance',
  'channel-text-port-operations-and-ship-movement': 'opérations portuaires et mouvement des navires',
  'channel-text-port-operations-and-ship-movement-and-on-board':
    'opérations portuaires et mouvement des navires, et à bord',
  'channel-text-port-operations-and-ship-movement-as-assigned-no-public-correspondence-remains':
    'opérations portuaires et mouvement des navires selon attribution ; plus de correspondance publique',
  'channel-text-port-operations-and-ship-movement-coast-stations-on-the-upper-leg':
    'opérations portuaires et mouvement des navires, stations côtières sur la fréquence supérieure',
  'channel-text-port-operations-and-ship-movement-on-one-frequency':
    'opérations portuaires et mouvement des navires sur une seule fréquence',
  'channel-text-port-operations-and-ship-movement-on-one-frequency-since-1-january-2019':
    'opérations portuaires et mouvement des navires, sur une seule fréquence depuis le 1er janvier 2019',
  'channel-text-port-operations-and-ship-movement-on-the-lower-leg-between-ships-only-by-national-rule':
    'opérations portuaires et mouvement des navires sur la fréquence inférieure ; entre navires seulement selon une règle nationale',
  'channel-text-port-operations-and-vessel-traffic': 'opérations portuaires et trafic maritime',
  'channel-text-port-operations-between-ships': 'opérations portuaires entre navires',
  'channel-text-port-operations-from-ship-to-coast-on-two-frequencies':
    'opérations portuaires du navire vers la côte, sur deux fréquences',
  'channel-text-port-operations-on-one-frequency': 'opérations portuaires sur une seule fréquence',
  'channel-text-port-operations-on-the-st-lawrence-and-great-lakes-marinas-in-british-columbia':
    'opérations portuaires sur le Saint-Laurent et les Grands Lacs ; ports de plaisance en Colombie-Britannique',
  'channel-text-port-operations-pilots-race-control-and-between-ships':
    'opérations portuaires, pilotes, comités de course et entre navires',
  'channel-text-port-operations-ship-movement-and-navigation-only':
    'opérations portuaires, mouvement des navires et navigation seulement',
  'channel-text-port-operations-ship-movement-and-public-correspondence':
    'opérations portuaires, mouvement des navires et correspondance publique',
  'channel-text-port-operations-ship-movement-and-public-correspondence-also-on-one-frequency-the-table-does-not-say-which':
    'opérations portuaires, mouvement des navires et correspondance publique ; aussi sur une seule fréquence, le tableau ne dit pas laquelle',
  'channel-text-port-operations-vessel-traffic-at-port-arthur':
    'opérations portuaires ; trafic maritime à Port Arthur',
  'channel-text-port-operations-vessel-traffic-at-port-arthur-33-cfr-161-12-c':
    'opérations portuaires ; trafic maritime à Port Arthur (33 CFR 161.12(c))',
  'channel-text-port-operations-vessel-traffic-in-some-ports':
    'opérations portuaires ; trafic maritime dans certains ports',
  'channel-text-public-correspondence': 'correspondance publique',
  'channel-text-public-correspondence-and-working-with-the-coast-guard':
    'correspondance publique, et travail avec les garde-côtes',
  'channel-text-public-correspondence-near-the-canadian-border':
    'correspondance publique près de la frontière canadienne',
  'channel-text-public-correspondence-on-the-lower-leg-alone':
    'correspondance publique sur la seule fréquence inférieure',
  'channel-text-public-correspondence-through-a-coast-station':
    'correspondance publique par une station côtière',
  'channel-text-radio-medical-service-of-the-rescue-centre-at-den-helder-note-19':
    'service radiomédical du centre de sauvetage de Den Helder (note 19)',
  'channel-text-rescue-and-pollution-control-towing-port-operations-or-pleasure-craft-by-region':
    'sauvetage et lutte contre la pollution, remorquage, opérations portuaires ou plaisance, selon la région',
  'channel-text-safety-and-navigation-chiefly-between-ships-note-26':
    'sécurité et navigation, surtout entre navires (note 26)',
  'channel-text-safety-between-ships-and-rescue-work-with-coast-guard-ships-and-aircraft':
    'sécurité entre navires, et sauvetage avec les navires et aéronefs des garde-côtes',
  'channel-text-safety-of-navigation-from-bridge-to-bridge-locks-and-bridges-come-second-vessel-traffic-at-louisville-and-valdez-33-cfr-161-12-c':
    'sécurité de la navigation de passerelle à passerelle ; écluses et ponts en second ; trafic maritime à Louisville et Valdez (33 CFR 161.12(c))',
  'channel-text-safety-of-navigation-from-bridge-to-bridge-vessel-traffic-in-british-columbia':
    'sécurité de la navigation de passerelle à passerelle ; trafic maritime en Colombie-Britannique',
  'channel-text-safety-of-navigation-worldwide-chiefly-from-bridge-to-bridge-also-ship-movement-and-port-operations-where-a-national-rule-says-so':
    'sécurité de la navigation, dans le monde entier, surtout de passerelle à passerelle ; aussi mouvement des navires et opérations portuaires là où une règle nationale le dit',
  'channel-text-sand-and-gravel-extraction-and-dredging': 'extraction de sable et de gravier et dragage',
  'channel-text-search-and-rescue-on-scene-on-the-north-sea-and-the-large-inland-waters-note-5':
    'recherche et sauvetage sur zone, en mer du Nord et sur les grandes eaux intérieures (note 5)',
  'channel-text-selective-calls-are-not-permitted-on-these-waters-distress-urgency-and-safety-calls-only-on-waddenzee-ijsselmeer-oosterschelde-westerschelde-and-eems-dollard-note-9':
    'les appels sélectifs ne sont pas autorisés sur ces eaux ; appels de détresse, d’urgence et de sécurité seulement sur Waddenzee, IJsselmeer, Oosterschelde, Westerschelde et Eems-Dollard (note 9)',
  'channel-text-selective-calls-for-distress-urgency-safety-and-calling':
    'appels sélectifs de détresse, d’urgence, de sécurité et d’appel',
  'channel-text-selective-calls-on-named-waters-only-note-9':
    'appels sélectifs, sur les seules eaux désignées (note 9)',
  'channel-text-shared-with-aircraft-in-support-of-ships':
    'partagée avec les aéronefs qui assistent les navires',
  'channel-text-ship-movement-and-vessel-traffic': 'mouvement des navires et trafic maritime',
  'channel-text-ships-do-not-transmit-on-it': 'les navires n’y émettent pas',
  'channel-text-short-digital-messages-may-share-voice-channels-except-where-47-cfr-80-364-bars-them':
    'de courts messages numériques peuvent partager les voies de parole, sauf là où 47 CFR 80.364 l’exclut',
  'channel-text-split-in-other-countries-into-a-voice-channel-and-an-asm-data-channel':
    'divisée dans d’autres pays en une voie de parole et une voie de données ASM',
  'channel-text-split-on-1-january-2019-into-a-voice-channel-on-the-lower-leg-and-asm-data-on-the-upper':
    'divisée le 1er janvier 2019 en une voie de parole sur la fréquence inférieure et des données ASM sur la supérieure',
  'channel-text-swedish-waters-and-ships-with-a-swedish-licence':
    'eaux suédoises, et navires sous licence suédoise',
  'channel-text-talk-between-fishing-vessels': 'trafic entre navires de pêche',
  'channel-text-talk-between-fishing-vessels-which-may-be-encrypted-and-charter-vessels-of-anglers-note-29':
    'trafic entre navires de pêche, qui peut être chiffré, et navires affrétés de pêcheurs à la ligne (note 29)',
  'channel-text-talk-between-fishing-vessels-which-may-be-encrypted-note-29':
    'trafic entre navires de pêche, qui peut être chiffré (note 29)',
  'channel-text-talk-between-leisure-craft-fitted-only-together-with-l1':
    'trafic entre navires de plaisance ; installée seulement avec L1',
  'channel-text-talk-between-leisure-craft-fitted-only-together-with-l2':
    'trafic entre navires de plaisance ; installée seulement avec L2',
  'channel-text-talk-between-ships': 'trafic entre navires',
  'channel-text-talk-between-ships-also-social-provisioning-notes-10-and-16':
    'trafic entre navires, aussi privé ; approvisionnement (notes 10 et 16)',
  'channel-text-talk-between-ships-also-social-salvage-and-towing-notes-10-and-11':
    'trafic entre navires, aussi privé ; assistance et remorquage (notes 10 et 11)',
  'channel-text-talk-between-ships-and-search-and-rescue': 'trafic entre navires, et recherche et sauvetage',
  'channel-text-talk-between-ships-and-with-aircraft-in-search-and-rescue-note-31':
    'trafic entre navires, et avec les aéronefs en recherche et sauvetage (note 31)',
  'channel-text-intership-only': 'trafic entre navires, son seul usage',
  'channel-text-talk-between-ships-pleasure-craft-on-the-pacific':
    'trafic entre navires ; plaisance sur le Pacifique',
  'channel-text-talk-between-ships-safety-and-search-and-rescue-with-aircraft':
    'trafic entre navires, sécurité, et recherche et sauvetage avec des aéronefs',
  'channel-text-talk-with-pilots-about-movement-and-docking':
    'trafic avec les pilotes sur les mouvements et l’accostage',
  'channel-text-the-arrangement-itself-was-not-seen-and-its-other-members-differ-in-power':
    'l’arrangement lui-même n’a pas été vu, et ses autres membres ont d’autres puissances',
  'channel-text-the-bridge-to-bridge-channel-on-the-lower-mississippi-pleasure-craft-may-use-it-in-puget-sound-and-juan-de-fuca-only':
    'voie de passerelle à passerelle sur le bas Mississippi ; plaisance seulement dans le Puget Sound et le détroit de Juan de Fuca',
  'channel-text-the-fallback-for-channel-10': 'la voie de secours de la voie 10',
  'channel-text-the-licence-terms-read-refer-to-the-act-of-2003-replaced-in-2022-newer-terms-were-not-seen':
    'les conditions de licence lues renvoient à la loi de 2003, remplacée en 2022 ; de plus récentes n’ont pas été vues',
  'channel-text-the-national-schedule-was-not-seen-in-full-most-uses-by-coast-are-unverified':
    'le plan national n’a pas été vu en entier : la plupart des usages par côte ne sont pas vérifiés',
  'channel-text-the-national-table-was-not-seen-in-full-most-port-uses-are-unverified':
    'le tableau national n’a pas été vu en entier : la plupart des usages portuaires ne sont pas vérifiés',
  'channel-text-tow-boats': 'remorqueurs',
  'channel-text-two-frequency-channels-may-not-be-used-on-one-frequency-unless-the-table-lists-it-47-cfr-80-203-b-2':
    'les voies à deux fréquences ne peuvent servir sur une seule fréquence que si le tableau les indique ainsi (47 CFR 80.203(b)(2))',
  'channel-text-united-kingdom-only': 'Royaume-Uni seulement',
  'channel-text-uses-of-the-two-frequency-channels-and-of-single-legs-are-unverified':
    'les usages des voies à deux fréquences et des fréquences isolées ne sont pas vérifiés',
  'channel-text-vessel-traffic-and-pilotage': 'trafic maritime et pilotage',
  'channel-text-vessel-traffic-and-ship-movement': 'trafic maritime et mouvement des navires',
  'channel-text-vessel-traffic-on-the-pacific': 'trafic maritime sur le Pacifique',
  'channel-text-vessel-traffic-on-the-pacific-marinas-on-the-atlantic-and-lake-winnipeg':
    'trafic maritime sur le Pacifique ; ports de plaisance sur l’Atlantique et le lac Winnipeg',
  'channel-text-vessel-traffic-port-operations-and-pilotage':
    'trafic maritime, opérations portuaires et pilotage',
  'channel-text-vessel-traffic-services-come-first': 'les services de trafic maritime sont prioritaires',
  'channel-text-vessel-traffic-services-have-rules-of-their-own-by-port-33-cfr-161-12':
    'les services de trafic maritime ont leurs propres règles par port : 33 CFR 161.12',
  'channel-text-voice-only-where-the-country-still-allows-it-and-then-without-protection-from-interference':
    'parole seulement là où le pays la permet encore, et alors sans protection contre les brouillages',
  'channel-text-volunteer-coast-watch-stations-on-the-lower-leg-alone-as-remembered':
    'veilleurs côtiers bénévoles, sur la seule fréquence inférieure d’après la mémoire',
  'channel-text-when-the-operator-overrides-the-reduction': 'quand l’opérateur lève la réduction',
  'channel-text-with-pilots-only': 'avec les pilotes seulement',
};
