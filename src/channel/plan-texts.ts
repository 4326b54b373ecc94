/**
 * Every text in the tables of the plans, for the catalogues of `seahail/locale`; the code is that of `planText`. The
 * tables do not import it: a plan stays small, and its texts are read where the channels are.
 */
export const planTexts = {
  said: {
    'channel-text-0-5-to-1-w-set-by-hand-or-automatically-note-1':
      '0.5 to 1 W, set by hand or automatically (note 1)',
    'channel-text-0-5-to-1-w-the-set-reduces-its-power-automatically-note-1':
      '0.5 to 1 W: the set reduces its power automatically (note 1)',
    'channel-text-1-w-at-most': '1 W at most',
    'channel-text-1-w-for-port-operations-on-the-st-lawrence': '1 W for port operations on the St Lawrence',
    'channel-text-1-w-in-normal-use': '1 W in normal use',
    'channel-text-1-w-normally-and-10-w-at-most-in-the-seattle-vessel-traffic-area':
      '1 W normally and 10 W at most in the Seattle vessel traffic area',
    'channel-text-1-w-on-the-st-lawrence-and-great-lakes': '1 W on the St Lawrence and Great Lakes',
    'channel-text-1-w-radiated-note-15': '1 W radiated (note 15)',
    'channel-text-1-w-radiated-on-board-elsewhere-25-w-unless-a-national-rule-says-less':
      '1 W radiated on board; elsewhere 25 W unless a national rule says less',
    'channel-text-1-w-radiated-on-board-note-24-no-other-limit-is-printed':
      '1 W radiated on board (note 24); no other limit is printed',
    'channel-text-1-w-radiated-to-protect-channel-16-note-27':
      '1 W radiated, to protect channel 16 (note 27)',
    'channel-text-1-w-the-set-reduces-its-power-automatically-and-the-operator-may-override-it-up-to-25-w':
      '1 W: the set reduces its power automatically, and the operator may override it up to 25 W',
    'channel-text-1-w-to-protect-channel-16': '1 W, to protect channel 16',
    'channel-text-100-mw-e-i-r-p-aerial-at-most-1-m-above-the-sea':
      '100 mW e.i.r.p., aerial at most 1 m above the sea',
    'channel-text-12-5-khz-channels-must-not-disturb-06-13-15-16-17-70-ais-1-and-ais-2-note-e':
      '12.5 kHz channels must not disturb 06, 13, 15, 16, 17, 70, AIS 1 and AIS 2 (note e)',
    'channel-text-12-5-w-at-most-note-22': '12.5 W at most (note 22)',
    'channel-text-12-5-w-for-class-a-sets-1-w-2-w-or-5-w-for-class-b':
      '12.5 W for class A sets; 1 W, 2 W or 5 W for class B',
    'channel-text-155-000-to-155-975-mhz-may-otherwise-be-used-on-board-only-with-special-consent-pts-licence-terms':
      '155.000 to 155.975 MHz may otherwise be used on board only with special consent (PTS licence terms)',
    'channel-text-a-calling-channel-move-off-it-to-talk': 'a calling channel: move off it to talk',
    'channel-text-a-channel-l3-may-exist-it-is-not-in-the-terms-read-and-left-out':
      'a channel L3 may exist: it is not in the terms read, and left out',
    'channel-text-a-channel-of-its-user': 'a channel of its user',
    'channel-text-a-channel-with-no-use-stated-for-an-area-may-be-used-between-ships-industry-canada-letter-2002':
      'a channel with no use stated for an area may be used between ships (Industry Canada letter, 2002)',
    'channel-text-a-hand-held-set-on-an-outside-aerial-gives-at-most-1-w-on-1-to-15-17-to-28-and-60-to-88-except-on-23-and-83-with-the-coastguard-note-3':
      'a hand-held set on an outside aerial gives at most 1 W on 1 to 15, 17 to 28 and 60 to 88, except on 23 and 83 with the coastguard (note 3)',
    'channel-text-aerial-at-most-1-m-above-the-sea': 'aerial at most 1 m above the sea',
    'channel-text-after-such-an-alert-16-is-the-channel-to-speak-on-note-14':
      'after such an alert 16 is the channel to speak on (note 14)',
    'channel-text-all-but-parts-of-the-lower-mississippi-and-its-approaches':
      'all but parts of the lower Mississippi and its approaches',
    'channel-text-amendments-after-march-2025-were-not-seen-the-list-of-october-2025-is-known-at-second-hand':
      'amendments after March 2025 were not seen; the list of October 2025 is known at second hand',
    'channel-text-application-specific-messages': 'application-specific messages',
    'channel-text-at-most-in-the-seattle-vessel-traffic-area': 'at most, in the Seattle vessel traffic area',
    'channel-text-atlantic': 'Atlantic',
    'channel-text-atlantic-and-pacific': 'Atlantic and Pacific',
    'channel-text-automatic-identification-system': 'automatic identification system',
    'channel-text-between-ships-and-port-operations': 'between ships and port operations',
    'channel-text-between-ships-and-port-operations-67-search-and-rescue-on-scene-note-5-73-oil-pollution-on-the-north-sea-note-12':
      'between ships and port operations; 67 search and rescue on scene (note 5), 73 oil pollution on the North Sea (note 12)',
    'channel-text-between-ships-and-port-operations-search-and-rescue-and-pollution-control-in-europe-and-canada':
      'between ships and port operations; search and rescue and pollution control in Europe and Canada',
    'channel-text-between-ships-and-with-the-shore-rescue-and-pollution-control':
      'between ships and with the shore; rescue and pollution control',
    'channel-text-between-ships-fallback-for-channel-10-note-8':
      'between ships; fallback for channel 10 (note 8)',
    'channel-text-between-ships-port-operations-and-ship-movement':
      'between ships, port operations and ship movement',
    'channel-text-both-coasts-and-lake-winnipeg': 'both coasts and Lake Winnipeg',
    'channel-text-call-on-10-13-is-its-fallback-notes-7-and-8':
      'call on 10; 13 is its fallback (notes 7 and 8)',
    'channel-text-calling-by-pleasure-craft-commercial-and-non-commercial-working':
      'calling by pleasure craft; commercial and non-commercial working',
    'channel-text-check-locally-whether-one-frequency-or-two-are-in-use':
      'check locally whether one frequency or two are in use',
    'channel-text-coast-areas-1-to-9-not-assignable-in-areas-10-to-42':
      'coast areas 1 to 9; not assignable in areas 10 to 42',
    'channel-text-coast-guard-and-government-commercial-in-places':
      'Coast Guard and government; commercial in places',
    'channel-text-coast-guard-and-national-defence': 'Coast Guard and national defence',
    'channel-text-coast-guard-and-other-agencies-its-working-channel-on-the-pacific-since-2009':
      'Coast Guard and other agencies; its working channel on the Pacific since 2009',
    'channel-text-coast-guard-liaison': 'Coast Guard liaison',
    'channel-text-coast-guard-liaison-and-its-safety-broadcasts-after-an-announcement-on-16':
      'Coast Guard liaison, and its safety broadcasts after an announcement on 16',
    'channel-text-coast-guard-on-the-pacific-commercial-fishing-on-the-atlantic':
      'Coast Guard on the Pacific, commercial fishing on the Atlantic',
    'channel-text-coast-guard-only': 'Coast Guard only',
    'channel-text-coast-of-british-columbia': 'coast of British Columbia',
    'channel-text-coastguard-pollution-control-and-reserve-for-safety-broadcasts':
      'coastguard pollution control and reserve for safety broadcasts',
    'channel-text-coastguard-rescue-units-and-vessels-they-invite':
      'coastguard, rescue units and vessels they invite',
    'channel-text-coastguard-safety-broadcasts-and-radio-medical-advice':
      'coastguard safety broadcasts and radio medical advice',
    'channel-text-coastguard-safety-broadcasts-until-2017-since-then-as-assigned':
      'coastguard safety broadcasts until 2017, since then as assigned',
    'channel-text-coastguard-working-with-small-craft-and-in-rescue':
      'coastguard working with small craft and in rescue',
    'channel-text-commercial-and-safety-between-ships': 'commercial and safety, between ships',
    'channel-text-commercial-fishing': 'commercial fishing',
    'channel-text-commercial-fishing-on-the-atlantic': 'commercial fishing on the Atlantic',
    'channel-text-commercial-fishing-on-the-atlantic-elsewhere-between-ships-rescue-and-pollution-control':
      'commercial fishing on the Atlantic, elsewhere between ships; rescue and pollution control',
    'channel-text-commercial-talk-between-ships-bridge-to-bridge-on-the-lower-mississippi-pleasure-craft-in-puget-sound':
      'commercial talk between ships; bridge to bridge on the lower Mississippi; pleasure craft in Puget Sound',
    'channel-text-commercial-talk-between-ships-fishing-vessels-and-their-aircraft':
      'commercial talk between ships, fishing vessels and their aircraft',
    'channel-text-commercial-vessels-may-use-it-in-puget-sound-and-juan-de-fuca-only':
      'commercial vessels may use it in Puget Sound and Juan de Fuca only',
    'channel-text-commercial-working': 'commercial working',
    'channel-text-commercial-working-also-with-aircraft-in-support':
      'commercial working, also with aircraft in support',
    'channel-text-commercial-working-and-rescue-and-pollution-control-with-aircraft':
      'commercial working, and rescue and pollution control with aircraft',
    'channel-text-commercial-working-between-ships-only': 'commercial working, between ships only',
    'channel-text-commercial-working-non-commercial-on-the-great-lakes':
      'commercial working; non-commercial on the Great Lakes',
    'channel-text-commercial-working-towing-on-the-pacific': 'commercial working; towing on the Pacific',
    'channel-text-commercial-working-vessel-traffic-in-some-ports':
      'commercial working; vessel traffic in some ports',
    'channel-text-continuous-marine-broadcast-in-french-28b-shares-its-frequency-with-asm-2':
      'continuous marine broadcast in French; 28B shares its frequency with ASM 2',
    'channel-text-continuous-marine-broadcast-of-weather-and-safety-messages':
      'continuous marine broadcast of weather and safety messages',
    'channel-text-continuous-marine-broadcast-on-a-frequency-also-meant-for-data-exchange':
      'continuous marine broadcast, on a frequency also meant for data exchange',
    'channel-text-continuous-weather-broadcast-as-in-the-united-states':
      'continuous weather broadcast, as in the United States',
    'channel-text-continuous-weather-broadcast-the-wx-numbers-have-no-official-standing':
      'continuous weather broadcast; the WX numbers have no official standing',
    'channel-text-data-exchange-between-ships-from-shore-and-from-satellite':
      'data exchange between ships, from shore and from satellite',
    'channel-text-data-exchange-from-ships-to-shore-and-satellite':
      'data exchange from ships to shore and satellite',
    'channel-text-digital-selective-calling': 'digital selective calling',
    'channel-text-digital-selective-calling-for-distress-safety-and-calling':
      'digital selective calling for distress, safety and calling',
    'channel-text-distress-safety-and-calling': 'distress, safety and calling',
    'channel-text-distress-urgency-safety-and-calling': 'distress, urgency, safety and calling',
    'channel-text-distress-urgency-safety-and-calling-by-voice':
      'distress, urgency, safety and calling by voice',
    'channel-text-distress-urgency-safety-and-calling-the-channel-to-speak-on-after-an-alert-note-14':
      'distress, urgency, safety and calling; the channel to speak on after an alert (note 14)',
    'channel-text-editions-of-2017-2019-and-2021-exist-and-were-not-seen-data-use-of-24-to-28-and-84-to-86-is-not-in-this-one':
      'editions of 2017, 2019 and 2021 exist and were not seen: data use of 24 to 28 and 84 to 86 is not in this one',
    'channel-text-environmental-information-from-coast-to-ship':
      'environmental information from coast to ship',
    'channel-text-first-channel-between-ships-and-between-ships-and-aircraft-in-search-and-rescue':
      'first channel between ships, and between ships and aircraft in search and rescue',
    'channel-text-first-channel-for-calling-urgency-and-safety-note-7':
      'first channel for calling, urgency and safety (note 7)',
    'channel-text-fishing-industry-between-ships-and-with-the-shore':
      'fishing industry, between ships and with the shore',
    'channel-text-for-commercial-vessels': 'for commercial vessels',
    'channel-text-for-communication-on-board': 'for communication on board',
    'channel-text-for-pilots-and-ports': 'for pilots and ports',
    'channel-text-for-port-operations-on-the-st-lawrence': 'for port operations on the St Lawrence',
    'channel-text-for-port-operations-only': 'for port operations only',
    'channel-text-for-safety-traffic-only': 'for safety traffic only',
    'channel-text-for-the-fishing-industry': 'for the fishing industry',
    'channel-text-for-the-safety-of-navigation-only': 'for the safety of navigation only',
    'channel-text-for-the-safety-of-navigation-other-uses-by-national-rule-only':
      'for the safety of navigation; other uses by national rule only',
    'channel-text-four-digit-names-that-swedish-coast-channels-got-on-1-november-2022-were-not-seen':
      'four-digit names that Swedish coast channels got on 1 November 2022 were not seen',
    'channel-text-frequencies-of-0-m-and-m2-are-unverified': 'frequencies of 0, M and M2 are unverified',
    'channel-text-government-only': 'government only',
    'channel-text-hand-held-sets-which-need-no-automatic-reduction':
      'hand-held sets, which need no automatic reduction',
    'channel-text-identification-by-atis-is-required-article-9-1-i-outside-these-waters-it-may-be-off-note-28':
      'identification by ATIS is required (article 9(1)(i)); outside these waters it may be off (note 28)',
    'channel-text-identified-for-data-exchange-in-regions-1-and-3-since-1-january-2017':
      'identified for data exchange, in Regions 1 and 3 since 1 January 2017',
    'channel-text-identified-for-data-exchange-since-1-january-2017':
      'identified for data exchange since 1 January 2017',
    'channel-text-in-use-as-a-pair-only-where-a-country-keeps-it':
      'in use as a pair only where a country keeps it',
    'channel-text-it-carries-application-specific-data-messages-only':
      'it carries application-specific data messages only',
    'channel-text-it-carries-automatic-identification-data-only':
      'it carries automatic identification data only',
    'channel-text-it-carries-data-exchange-only': 'it carries data exchange only',
    'channel-text-it-carries-data-of-autonomous-devices-only': 'it carries data of autonomous devices only',
    'channel-text-it-carries-digital-selective-calls-only-never-speech':
      'it carries digital selective calls only, never speech',
    'channel-text-it-carries-long-range-ais-reports-to-satellites-only':
      'it carries long-range AIS reports to satellites only',
    'channel-text-it-guards-channel-16-and-carries-navigation-related-port-traffic-only':
      'it guards channel 16 and carries navigation-related port traffic only',
    'channel-text-it-has-no-digits-for-a-call': 'it has no digits for a call',
    'channel-text-it-has-no-digits-for-a-call-and-only-a-set-with-this-channel-can-use-it':
      'it has no digits for a call, and only a set with this channel can use it',
    'channel-text-it-is-an-upper-leg-for-coast-stations-unless-a-national-rule-lets-ships-transmit':
      'it is an upper leg, for coast stations unless a national rule lets ships transmit',
    'channel-text-it-is-for-dredging-and-it-has-no-digits-for-a-call':
      'it is for dredging, and it has no digits for a call',
    'channel-text-it-is-for-fishing-vessels-only-and-it-has-no-digits-for-a-call':
      'it is for fishing vessels only, and it has no digits for a call',
    'channel-text-it-is-for-ships-to-marinas-and-clubs-and-it-has-no-digits-for-a-call':
      'it is for ships to marinas and clubs, and it has no digits for a call',
    'channel-text-it-is-for-talk-with-the-coast-guard-which-chooses-it':
      'it is for talk with the Coast Guard, which chooses it',
    'channel-text-it-is-mainly-for-the-government': 'it is mainly for the government',
    'channel-text-it-is-private-to-the-coastguard-and-rescue-services-and-it-has-no-digits-for-a-call':
      'it is private to the coastguard and rescue services, and it has no digits for a call',
    'channel-text-it-is-reserved-to-the-coast-guard-or-to-fishing-by-coast':
      'it is reserved to the Coast Guard or to fishing, by coast',
    'channel-text-it-is-reserved-to-the-government': 'it is reserved to the government',
    'channel-text-its-use-differs-from-region-to-region': 'its use differs from region to region',
    'channel-text-keep-it-clear-for-search-and-rescue': 'keep it clear for search and rescue',
    'channel-text-keep-it-clear-for-search-and-rescue-and-for-ice-breakers-and-their-aircraft':
      'keep it clear for search and rescue, and for ice-breakers and their aircraft',
    'channel-text-kept-for-rescue-and-pollution-control': 'kept for rescue and pollution control',
    'channel-text-kept-for-the-coastguard': 'kept for the coastguard',
    'channel-text-long-range-ais-reports-from-ships-to-satellites-no-voice-since-14-june-2017':
      'long-range AIS reports from ships to satellites; no voice since 14 June 2017',
    'channel-text-low-power-autonomous-devices-of-group-b': 'low-power autonomous devices of group B',
    'channel-text-marinas-and-yacht-clubs': 'marinas and yacht clubs',
    'channel-text-marinas-note-21': 'marinas (note 21)',
    'channel-text-marinas-with-pleasure-craft-not-between-ships':
      'marinas with pleasure craft, not between ships',
    'channel-text-marinas-yacht-clubs-and-race-control': 'marinas, yacht clubs and race control',
    'channel-text-maritime-control-by-state-and-local-government':
      'maritime control by state and local government',
    'channel-text-may-be-a-port-channel-where-you-are': 'may be a port channel where you are',
    'channel-text-may-be-a-port-or-rescue-channel-where-you-are':
      'may be a port or rescue channel where you are',
    'channel-text-may-carry-data-exchange': 'may carry data exchange',
    'channel-text-mostly-inland-and-in-the-arctic': 'mostly inland and in the Arctic',
    'channel-text-national-rules-come-before-this-table-in-their-waters':
      'national rules come before this table in their waters',
    'channel-text-nautical-information': 'nautical information',
    'channel-text-nautical-information-business-traffic-between-companies-and-sea-going-ships-note-6':
      'nautical information; business traffic between companies and sea-going ships (note 6)',
    'channel-text-nautical-information-designated-for-traffic-guidance-note-4':
      'nautical information; designated for traffic guidance (note 4)',
    'channel-text-nautical-information-messages-to-and-from-bridges-and-locks-note-17':
      'nautical information; messages to and from bridges and locks (note 17)',
    'channel-text-nautical-information-oil-pollution-on-the-north-sea-note-12':
      'nautical information; oil pollution on the North Sea (note 12)',
    'channel-text-nautical-information-provisioning-and-bunkering-notes-16-and-18':
      'nautical information; provisioning and bunkering (notes 16 and 18)',
    'channel-text-nautical-information-radio-medical-service-note-19':
      'nautical information; radio-medical service (note 19)',
    'channel-text-nautical-information-temporary-events-note-20':
      'nautical information; temporary events (note 20)',
    'channel-text-navigation-related-port-traffic-only-also-long-range-ais-reports-from-ships-to-satellites-note-s':
      'navigation-related port traffic only; also long-range AIS reports from ships to satellites (note s)',
    'channel-text-navigation-related-port-traffic-only-also-received-by-satellites-for-ais-note-30':
      'navigation-related port traffic only; also received by satellites for AIS (note 30)',
    'channel-text-new-orleans-and-the-lower-mississippi-01a-also-port-arthur':
      'New Orleans and the lower Mississippi; 01A also Port Arthur',
    'channel-text-new-orleans-houston-los-angeles-and-long-beach-seattle-47-cfr-80-383':
      'New Orleans, Houston, Los Angeles and Long Beach, Seattle (47 CFR 80.383)',
    'channel-text-no-dual-watch-note-2': 'no dual watch (note 2)',
    'channel-text-no-limit-of-its-own-in-the-rule-read-many-lists-print-1-w':
      'no limit of its own in the rule read; many lists print 1 W',
    'channel-text-no-power-limit-is-printed-for-the-sea': 'no power limit is printed for the sea',
    'channel-text-no-selective-calls-except-distress-urgency-and-safety-calls-made-voluntarily-on-waddenzee-ijsselmeer-oosterschelde-westerschelde-and-eems-dollard-note-9':
      'no selective calls, except distress, urgency and safety calls, made voluntarily, on Waddenzee, IJsselmeer, Oosterschelde, Westerschelde and Eems-Dollard (note 9)',
    'channel-text-non-commercial-talk-between-ships': 'non-commercial talk between ships',
    'channel-text-non-commercial-working': 'non-commercial working',
    'channel-text-non-commercial-working-vessel-traffic-in-puget-sound':
      'non-commercial working; vessel traffic in Puget Sound',
    'channel-text-normal-output-not-above-1-w': 'normal output not above 1 W',
    'channel-text-normally-in-the-seattle-vessel-traffic-area':
      'normally, in the Seattle vessel traffic area',
    'channel-text-normally-used-by-ports-or-for-work-on-board': 'normally used by ports or for work on board',
    'channel-text-not-for-casual-talk-in-the-puget-sound-vessel-traffic-area':
      'not for casual talk in the Puget Sound vessel traffic area',
    'channel-text-not-in-zeeland-noord-brabant-and-limburg': 'not in Zeeland, Noord-Brabant and Limburg',
    'channel-text-not-within-25-km-of-the-dutch-coast': 'not within 25 km of the Dutch coast',
    'channel-text-often-assigned-to-a-port-or-a-race': 'often assigned to a port or a race',
    'channel-text-on-10-and-11-take-care-not-to-disturb-70-note-32':
      'on 10 and 11 take care not to disturb 70 (note 32)',
    'channel-text-on-board-only-and-not-on-craft-under-20-m-notes-13-and-23':
      'on board only, and not on craft under 20 m (notes 13 and 23)',
    'channel-text-on-the-st-lawrence-and-great-lakes': 'on the St Lawrence and Great Lakes',
    'channel-text-only-to-talk-with-the-coast-guard': 'only to talk with the Coast Guard',
    'channel-text-only-to-talk-with-the-coastguard': 'only to talk with the coastguard',
    'channel-text-output-0-5-to-25-w-of-hand-held-sets-0-1-to-6-w-note-1':
      'output 0.5 to 25 W, of hand-held sets 0.1 to 6 W (note 1)',
    'channel-text-pacific': 'Pacific',
    'channel-text-pilots-on-the-pacific-port-operations-on-the-st-lawrence-and-great-lakes':
      'pilots on the Pacific; port operations on the St Lawrence and Great Lakes',
    'channel-text-pleasure-craft-marinas-and-yacht-clubs': 'pleasure craft, marinas and yacht clubs',
    'channel-text-pleasure-craft-may-use-it-on-the-great-lakes-only':
      'pleasure craft may use it on the Great Lakes only',
    'channel-text-pleasure-craft-on-the-pacific-commercial-fishing-on-the-atlantic':
      'pleasure craft on the Pacific, commercial fishing on the Atlantic',
    'channel-text-port-operations': 'port operations',
    'channel-text-port-operations-and-commercial-traffic-under-vessel-traffic-control':
      'port operations and commercial traffic under vessel traffic control',
    'channel-text-port-operations-and-on-board-at-low-power': 'port operations, and on board at low power',
    'channel-text-port-operations-and-ship-movement': 'port operations and ship movement',
    'channel-text-port-operations-and-ship-movement-and-on-board':
      'port operations and ship movement, and on board',
    'channel-text-port-operations-and-ship-movement-as-assigned-no-public-correspondence-remains':
      'port operations and ship movement as assigned; no public correspondence remains',
    'channel-text-port-operations-and-ship-movement-coast-stations-on-the-upper-leg':
      'port operations and ship movement, coast stations on the upper leg',
    'channel-text-port-operations-and-ship-movement-on-one-frequency':
      'port operations and ship movement on one frequency',
    'channel-text-port-operations-and-ship-movement-on-one-frequency-since-1-january-2019':
      'port operations and ship movement, on one frequency since 1 January 2019',
    'channel-text-port-operations-and-ship-movement-on-the-lower-leg-between-ships-only-by-national-rule':
      'port operations and ship movement on the lower leg; between ships only by national rule',
    'channel-text-port-operations-and-vessel-traffic': 'port operations and vessel traffic',
    'channel-text-port-operations-between-ships': 'port operations between ships',
    'channel-text-port-operations-from-ship-to-coast-on-two-frequencies':
      'port operations from ship to coast, on two frequencies',
    'channel-text-port-operations-on-one-frequency': 'port operations on one frequency',
    'channel-text-port-operations-on-the-st-lawrence-and-great-lakes-marinas-in-british-columbia':
      'port operations on the St Lawrence and Great Lakes; marinas in British Columbia',
    'channel-text-port-operations-pilots-race-control-and-between-ships':
      'port operations, pilots, race control and between ships',
    'channel-text-port-operations-ship-movement-and-navigation-only':
      'port operations, ship movement and navigation only',
    'channel-text-port-operations-ship-movement-and-public-correspondence':
      'port operations, ship movement and public correspondence',
    'channel-text-port-operations-ship-movement-and-public-correspondence-also-on-one-frequency-the-table-does-not-say-which':
      'port operations, ship movement and public correspondence; also on one frequency, the table does not say which',
    'channel-text-port-operations-vessel-traffic-at-port-arthur':
      'port operations; vessel traffic at Port Arthur',
    'channel-text-port-operations-vessel-traffic-at-port-arthur-33-cfr-161-12-c':
      'port operations; vessel traffic at Port Arthur (33 CFR 161.12(c))',
    'channel-text-port-operations-vessel-traffic-in-some-ports':
      'port operations; vessel traffic in some ports',
    'channel-text-public-correspondence': 'public correspondence',
    'channel-text-public-correspondence-and-working-with-the-coast-guard':
      'public correspondence, and working with the Coast Guard',
    'channel-text-public-correspondence-near-the-canadian-border':
      'public correspondence near the Canadian border',
    'channel-text-public-correspondence-on-the-lower-leg-alone':
      'public correspondence on the lower leg alone',
    'channel-text-public-correspondence-through-a-coast-station':
      'public correspondence through a coast station',
    'channel-text-radio-medical-service-of-the-rescue-centre-at-den-helder-note-19':
      'radio-medical service of the rescue centre at Den Helder (note 19)',
    'channel-text-rescue-and-pollution-control-towing-port-operations-or-pleasure-craft-by-region':
      'rescue and pollution control, towing, port operations or pleasure craft, by region',
    'channel-text-safety-and-navigation-chiefly-between-ships-note-26':
      'safety and navigation, chiefly between ships (note 26)',
    'channel-text-safety-between-ships-and-rescue-work-with-coast-guard-ships-and-aircraft':
      'safety between ships, and rescue work with Coast Guard ships and aircraft',
    'channel-text-safety-of-navigation-from-bridge-to-bridge-locks-and-bridges-come-second-vessel-traffic-at-louisville-and-valdez-33-cfr-161-12-c':
      'safety of navigation from bridge to bridge; locks and bridges come second; vessel traffic at Louisville and Valdez (33 CFR 161.12(c))',
    'channel-text-safety-of-navigation-from-bridge-to-bridge-vessel-traffic-in-british-columbia':
      'safety of navigation from bridge to bridge; vessel traffic in British Columbia',
    'channel-text-safety-of-navigation-worldwide-chiefly-from-bridge-to-bridge-also-ship-movement-and-port-operations-where-a-national-rule-says-so':
      'safety of navigation, worldwide, chiefly from bridge to bridge; also ship movement and port operations where a national rule says so',
    'channel-text-sand-and-gravel-extraction-and-dredging': 'sand and gravel extraction and dredging',
    'channel-text-search-and-rescue-on-scene-on-the-north-sea-and-the-large-inland-waters-note-5':
      'search and rescue on scene, on the North Sea and the large inland waters (note 5)',
    'channel-text-selective-calls-are-not-permitted-on-these-waters-distress-urgency-and-safety-calls-only-on-waddenzee-ijsselmeer-oosterschelde-westerschelde-and-eems-dollard-note-9':
      'selective calls are not permitted on these waters; distress, urgency and safety calls only on Waddenzee, IJsselmeer, Oosterschelde, Westerschelde and Eems-Dollard (note 9)',
    'channel-text-selective-calls-for-distress-urgency-safety-and-calling':
      'selective calls for distress, urgency, safety and calling',
    'channel-text-selective-calls-on-named-waters-only-note-9':
      'selective calls, on named waters only (note 9)',
    'channel-text-shared-with-aircraft-in-support-of-ships': 'shared with aircraft in support of ships',
    'channel-text-ship-movement-and-vessel-traffic': 'ship movement and vessel traffic',
    'channel-text-ships-do-not-transmit-on-it': 'ships do not transmit on it',
    'channel-text-short-digital-messages-may-share-voice-channels-except-where-47-cfr-80-364-bars-them':
      'short digital messages may share voice channels, except where 47 CFR 80.364 bars them',
    'channel-text-split-in-other-countries-into-a-voice-channel-and-an-asm-data-channel':
      'split in other countries into a voice channel and an ASM data channel',
    'channel-text-split-on-1-january-2019-into-a-voice-channel-on-the-lower-leg-and-asm-data-on-the-upper':
      'split on 1 January 2019 into a voice channel on the lower leg and ASM data on the upper',
    'channel-text-swedish-waters-and-ships-with-a-swedish-licence':
      'Swedish waters, and ships with a Swedish licence',
    'channel-text-talk-between-fishing-vessels': 'talk between fishing vessels',
    'channel-text-talk-between-fishing-vessels-which-may-be-encrypted-and-charter-vessels-of-anglers-note-29':
      'talk between fishing vessels, which may be encrypted, and charter vessels of anglers (note 29)',
    'channel-text-talk-between-fishing-vessels-which-may-be-encrypted-note-29':
      'talk between fishing vessels, which may be encrypted (note 29)',
    'channel-text-talk-between-leisure-craft-fitted-only-together-with-l1':
      'talk between leisure craft; fitted only together with L1',
    'channel-text-talk-between-leisure-craft-fitted-only-together-with-l2':
      'talk between leisure craft; fitted only together with L2',
    'channel-text-talk-between-ships': 'talk between ships',
    'channel-text-talk-between-ships-also-social-provisioning-notes-10-and-16':
      'talk between ships, also social; provisioning (notes 10 and 16)',
    'channel-text-talk-between-ships-also-social-salvage-and-towing-notes-10-and-11':
      'talk between ships, also social; salvage and towing (notes 10 and 11)',
    'channel-text-talk-between-ships-and-search-and-rescue': 'talk between ships, and search and rescue',
    'channel-text-talk-between-ships-and-with-aircraft-in-search-and-rescue-note-31':
      'talk between ships, and with aircraft in search and rescue (note 31)',
    'channel-text-intership-only': 'intership only',
    'channel-text-talk-between-ships-pleasure-craft-on-the-pacific':
      'talk between ships; pleasure craft on the Pacific',
    'channel-text-talk-between-ships-safety-and-search-and-rescue-with-aircraft':
      'talk between ships, safety, and search and rescue with aircraft',
    'channel-text-talk-with-pilots-about-movement-and-docking': 'talk with pilots about movement and docking',
    'channel-text-the-arrangement-itself-was-not-seen-and-its-other-members-differ-in-power':
      'the arrangement itself was not seen, and its other members differ in power',
    'channel-text-the-bridge-to-bridge-channel-on-the-lower-mississippi-pleasure-craft-may-use-it-in-puget-sound-and-juan-de-fuca-only':
      'the bridge-to-bridge channel on the lower Mississippi; pleasure craft may use it in Puget Sound and Juan de Fuca only',
    'channel-text-the-fallback-for-channel-10': 'the fallback for channel 10',
    'channel-text-the-licence-terms-read-refer-to-the-act-of-2003-replaced-in-2022-newer-terms-were-not-seen':
      'the licence terms read refer to the act of 2003, replaced in 2022; newer terms were not seen',
    'channel-text-the-national-schedule-was-not-seen-in-full-most-uses-by-coast-are-unverified':
      'the national schedule was not seen in full: most uses by coast are unverified',
    'channel-text-the-national-table-was-not-seen-in-full-most-port-uses-are-unverified':
      'the national table was not seen in full: most port uses are unverified',
    'channel-text-tow-boats': 'tow boats',
    'channel-text-two-frequency-channels-may-not-be-used-on-one-frequency-unless-the-table-lists-it-47-cfr-80-203-b-2':
      'two-frequency channels may not be used on one frequency unless the table lists it (47 CFR 80.203(b)(2))',
    'channel-text-united-kingdom-only': 'United Kingdom only',
    'channel-text-uses-of-the-two-frequency-channels-and-of-single-legs-are-unverified':
      'uses of the two-frequency channels and of single legs are unverified',
    'channel-text-vessel-traffic-and-pilotage': 'vessel traffic and pilotage',
    'channel-text-vessel-traffic-and-ship-movement': 'vessel traffic and ship movement',
    'channel-text-vessel-traffic-on-the-pacific': 'vessel traffic on the Pacific',
    'channel-text-vessel-traffic-on-the-pacific-marinas-on-the-atlantic-and-lake-winnipeg':
      'vessel traffic on the Pacific; marinas on the Atlantic and Lake Winnipeg',
    'channel-text-vessel-traffic-port-operations-and-pilotage':
      'vessel traffic, port operations and pilotage',
    'channel-text-vessel-traffic-services-come-first': 'vessel traffic services come first',
    'channel-text-vessel-traffic-services-have-rules-of-their-own-by-port-33-cfr-161-12':
      'vessel traffic services have rules of their own by port: 33 CFR 161.12',
    'channel-text-voice-only-where-the-country-still-allows-it-and-then-without-protection-from-interference':
      'voice only where the country still allows it, and then without protection from interference',
    'channel-text-volunteer-coast-watch-stations-on-the-lower-leg-alone-as-remembered':
      'volunteer coast-watch stations, on the lower leg alone as remembered',
    'channel-text-when-the-operator-overrides-the-reduction': 'when the operator overrides the reduction',
    'channel-text-with-pilots-only': 'with pilots only',
  },
};
