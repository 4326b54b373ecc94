/**
 * Channels in the waters of the Netherlands, at sea and inland.
 *
 * @packageDocumentation
 */
import type { Channel, ChannelPlan, Evidence } from './channel.ts';
import { expandPlan, type PlanRow } from './expand-plan.ts';
import { GUARDS_16 } from './not-speech.ts';

const TABLE: Evidence = {
  basis: 'source',
  source: 'Netherlands, Regeling gebruik van frequentieruimte met meldingsplicht 2015, annex 2 section 2',
};
const SEA_POWER: Evidence = {
  basis: 'memory',
  source: 'common practice: an ordinary ship set gives at most 25 W',
};
const AIS_POWER: Evidence = { basis: 'memory', source: 'ITU-R M.1371' };
const EDITION = 'Regeling gebruik van frequentieruimte met meldingsplicht 2015, in force 26 February 2015';
const SOURCES = [
  'Regeling gebruik van frequentieruimte met meldingsplicht 2015 (Stcrt. 2015, 3772; BWBR0036375), annex 2 section 2, table and notes 1 to 33',
];
const CAUTIONS = [
  'editions of 2017, 2019 and 2021 exist and were not seen: data use of 24 to 28 and 84 to 86 is not in this one',
];
const HAND_HELD =
  'a hand-held set on an outside aerial gives at most 1 W on 1 to 15, 17 to 28 and 60 to 88, except on 23 and 83 with the coastguard (note 3)';
const AIS: Omit<PlanRow, 'powerRule' | 'evidence'> = {
  channels: 'AIS 1=2087=87B@161975,AIS 2=2088=88B@162025',
  uses: ['ais'],
  note: 'automatic identification system',
  service: 'ais',
  powerW: 12.5,
};

const FISHING: Omit<PlanRow, 'channels' | 'region'> = {
  uses: ['fishing', 'intership'],
  note: 'talk between fishing vessels, which may be encrypted (note 29)',
  users: 'commercial',
  by: 'ships',
  intership: ['prohibited', 'restricted'],
  never: 'it is for fishing vessels only, and it has no digits for a call',
};

const PAIR_USES: PlanRow['uses'] = ['port-operations', 'ship-movement', 'public-correspondence'];

/**
 * The Netherlands at sea. The edition is that of February 2015: check for a newer one. Frequencies are kHz.
 *
 * The table prints no power limit for the open sea; 25 W and the ranking between ships are carried over from
 * the international plan. National rules and the licence decide.
 *
 * @example
 * ```ts
 * import { findChannel } from 'seahail/channel';
 * import { netherlandsSeaPlan } from 'seahail/channel/netherlands';
 * import { valueOf } from 'seahail/result';
 *
 * console.log(netherlandsSeaPlan.edition); // Regeling gebruik van frequentieruimte met meldingsplicht 2015, in force 26 February 2015
 * console.log(valueOf(findChannel(netherlandsSeaPlan, '23')).note); // radio-medical service of the rescue centre at Den Helder (note 19)
 * ```
 */
export const netherlandsSeaPlan: ChannelPlan = /* @__PURE__ */ expandPlan({
  name: 'Netherlands, sea',
  edition: EDITION,
  sources: SOURCES,
  cautions: [...CAUTIONS, 'no power limit is printed for the sea'],
  callingChannels: ['16'],
  rules: [HAND_HELD, 'on 10 and 11 take care not to disturb 70 (note 32)'],
  evidence: { frequency: TABLE, use: TABLE, power: SEA_POWER },
  rows: [
    {
      channels: '60,01,61,02,62,03,63,04,64,05,65,66,07,18,80,21,81,22,82,24,84,25,85,26,86',
      uses: PAIR_USES,
      note: 'port operations, ship movement and public correspondence; also on one frequency, the table does not say which',
    },
    {
      channels: '78,19,79,20,27,28',
      uses: PAIR_USES,
      note: 'port operations, ship movement and public correspondence',
    },
    {
      channels: '23,83',
      uses: PAIR_USES,
      note: 'radio-medical service of the rescue centre at Den Helder (note 19)',
    },
    {
      channels: '06',
      uses: ['intership', 'search-and-rescue'],
      note: 'talk between ships, and with aircraft in search and rescue (note 31)',
      by: 'ships',
      intership: 'allowed',
      caution: 'keep it clear for search and rescue',
    },
    {
      channels: '08,72,77',
      uses: ['intership'],
      note: 'talk between ships',
      by: 'ships',
      intership: 'preferred',
    },
    {
      channels: '09,69',
      uses: ['intership', 'port-operations', 'ship-movement'],
      note: 'between ships, port operations and ship movement',
      intership: 'allowed',
      caution: 'may be a port channel where you are',
    },
    {
      channels: '10,67,73',
      uses: ['intership', 'port-operations', 'ship-movement', 'search-and-rescue', 'pollution-control'],
      note: 'between ships and port operations; 67 search and rescue on scene (note 5), 73 oil pollution on the North Sea (note 12)',
      intership: 'allowed',
      caution: 'may be a port or rescue channel where you are',
    },
    {
      channels: '68,11,71,12,14,74',
      uses: ['port-operations', 'ship-movement'],
      note: 'port operations and ship movement',
    },
    {
      channels: '13',
      uses: ['navigation-safety', 'intership', 'port-operations', 'ship-movement'],
      note: 'safety and navigation, chiefly between ships (note 26)',
      caution: 'for the safety of navigation only',
    },
    {
      channels: '15,17',
      uses: ['intership', 'port-operations', 'ship-movement'],
      note: 'between ships, port operations and ship movement',
      powerW: 1,
      powerRule: '1 W radiated on board (note 24); no other limit is printed',
      conditionalPowerLimits: [{ watts: 1, measure: 'radiated', when: 'for communication on board' }],
      intership: 'restricted',
      caution: 'normally used by ports or for work on board',
      evidence: { power: TABLE },
    },
    {
      channels: '16',
      uses: ['distress-safety-calling'],
      note: 'distress, urgency, safety and calling',
      service: 'distress',
    },
    {
      channels: '70',
      uses: ['dsc'],
      note: 'selective calls for distress, urgency, safety and calling',
      service: 'dsc',
    },
    {
      channels: '75,76',
      uses: ['port-operations', 'ship-movement'],
      note: 'navigation-related port traffic only; also received by satellites for AIS (note 30)',
      powerW: 1,
      powerRule: '1 W radiated, to protect channel 16 (note 27)',
      never: GUARDS_16,
      evidence: { power: TABLE },
    },
    {
      channels: '87=1087=87A,88=1088=88A',
      uses: ['port-operations', 'ship-movement'],
      note: 'port operations on one frequency',
    },
    { ...AIS, evidence: { power: AIS_POWER } },
    { ...FISHING, channels: '55L@155775,56L@155825', region: 'not within 25 km of the Dutch coast' },
    { ...FISHING, channels: '14H@161300' },
    {
      ...FISHING,
      channels: '16H@161400',
      note: 'talk between fishing vessels, which may be encrypted, and charter vessels of anglers (note 29)',
    },
  ],
});

/** Note 1: fifteen channels on which the set itself reduces its power. */
const AUTOMATIC = {
  powerW: 1,
  powerRule: '0.5 to 1 W: the set reduces its power automatically (note 1)',
  automaticPowerReduction: true,
} as const;

/** Note 1: the other numbered channels except 16. */
const BY_HAND = { powerW: 1, powerRule: '0.5 to 1 W, set by hand or automatically (note 1)' } as const;

const information = (channels: string, note: string, use?: Channel['uses'][number]): PlanRow => ({
  channels,
  uses: use === undefined ? ['nautical-information'] : ['nautical-information', use],
  note: `nautical information${note}`,
  ...BY_HAND,
});
const BUSINESS = '; business traffic between companies and sea-going ships (note 6)';

/**
 * The Netherlands, inland waters of the regional arrangement on the inland waterway radiotelephone service.
 *
 * Selective calls are not permitted here, except that distress, urgency and safety calls may be made on five
 * named waters, so no channel can be proposed for ordinary talk by a call: call by voice, on 10 first. The
 * edition is that of February 2015: check for a newer one. Other countries of the arrangement differ.
 *
 * @example
 * ```ts
 * import { channelsFor, findChannel } from 'seahail/channel';
 * import { netherlandsInlandPlan } from 'seahail/channel/netherlands';
 * import { valueOf } from 'seahail/result';
 *
 * console.log(netherlandsInlandPlan.callingChannels); // [ '10', '13' ]
 * console.log(channelsFor(netherlandsInlandPlan, 'marina')[0]?.designator); // 31
 * console.log(valueOf(findChannel(netherlandsInlandPlan, '77')).powerRule); // 0.5 to 1 W: the set reduces its power automatically (note 1)
 * ```
 */
export const netherlandsInlandPlan: ChannelPlan = /* @__PURE__ */ expandPlan({
  name: 'Netherlands, inland',
  edition: EDITION,
  sources: SOURCES,
  cautions: [...CAUTIONS, 'the arrangement itself was not seen, and its other members differ in power'],
  callingChannels: ['10', '13'],
  rules: [
    'call on 10; 13 is its fallback (notes 7 and 8)',
    'no selective calls, except distress, urgency and safety calls, made voluntarily, on Waddenzee, IJsselmeer, Oosterschelde, Westerschelde and Eems-Dollard (note 9)',
    'after such an alert 16 is the channel to speak on (note 14)',
    'identification by ATIS is required (article 9(1)(i)); outside these waters it may be off (note 28)',
    'output 0.5 to 25 W, of hand-held sets 0.1 to 6 W (note 1)',
    'no dual watch (note 2)',
    HAND_HELD,
  ],
  selectiveCallRule:
    'selective calls are not permitted on these waters; distress, urgency and safety calls only on Waddenzee, IJsselmeer, Oosterschelde, Westerschelde and Eems-Dollard (note 9)',
  evidence: { frequency: TABLE, use: TABLE, power: TABLE },
  rows: [
    information(
      '60,01,61,02,62,03,63,04,05,65,07,68,69,79,80,21,81,25,27',
      '; designated for traffic guidance (note 4)',
      'vessel-traffic',
    ),
    information('64,66,78,19,24,26,86,28', ''),
    information('18,20,22,84,85', '; messages to and from bridges and locks (note 17)'),
    information('82', '; provisioning and bunkering (notes 16 and 18)'),
    information('23,83', '; radio-medical service (note 19)'),
    information('73', '; oil pollution on the North Sea (note 12)', 'pollution-control'),
    information('09,87=1087=87A', BUSINESS, 'commercial'),
    { ...information('76', BUSINESS, 'commercial'), ...AUTOMATIC, never: GUARDS_16 },
    information('88=1088=88A', '; temporary events (note 20)'),
    {
      channels: '67',
      uses: ['search-and-rescue'],
      note: 'search and rescue on scene, on the North Sea and the large inland waters (note 5)',
      ...BY_HAND,
    },
    {
      channels: '06,08',
      uses: ['intership'],
      note: 'talk between ships',
      intership: 'allowed',
      by: 'ships',
      ...AUTOMATIC,
    },
    {
      channels: '72',
      uses: ['intership', 'towing'],
      note: 'talk between ships, also social; salvage and towing (notes 10 and 11)',
      intership: 'preferred',
      by: 'ships',
      ...AUTOMATIC,
    },
    {
      channels: '77',
      uses: ['intership'],
      note: 'talk between ships, also social; provisioning (notes 10 and 16)',
      intership: 'preferred',
      by: 'ships',
      ...AUTOMATIC,
    },
    {
      channels: '10',
      uses: ['calling', 'safety', 'intership'],
      note: 'first channel for calling, urgency and safety (note 7)',
      intership: 'restricted',
      caution: 'a calling channel: move off it to talk',
      ...AUTOMATIC,
    },
    {
      channels: '13',
      uses: ['navigation-safety', 'calling', 'intership'],
      note: 'between ships; fallback for channel 10 (note 8)',
      intership: 'restricted',
      caution: 'the fallback for channel 10',
      ...AUTOMATIC,
    },
    { channels: '11,12,14,71,74', uses: ['port-operations'], note: 'port operations', ...AUTOMATIC },
    { channels: '75', uses: ['port-operations'], note: 'port operations', ...AUTOMATIC, never: GUARDS_16 },
    {
      channels: '15,17',
      uses: ['on-board'],
      note: 'on board only, and not on craft under 20 m (notes 13 and 23)',
      ...AUTOMATIC,
    },
    {
      channels: '16',
      uses: ['distress-safety-calling'],
      note: 'distress, urgency, safety and calling; the channel to speak on after an alert (note 14)',
      service: 'distress',
    },
    {
      channels: '70',
      uses: ['dsc'],
      note: 'selective calls, on named waters only (note 9)',
      service: 'dsc',
    },
    {
      channels: '12H@161200',
      uses: ['dredging'],
      note: 'sand and gravel extraction and dredging',
      users: 'commercial',
      powerW: 1,
      powerRule: '1 W radiated (note 15)',
      never: 'it is for dredging, and it has no digits for a call',
    },
    {
      channels: '13H@161250',
      uses: ['dredging'],
      note: 'sand and gravel extraction and dredging',
      region: 'not in Zeeland, Noord-Brabant and Limburg',
      users: 'commercial',
      powerW: 1,
      powerRule: '1 W radiated (note 15)',
      never: 'it is for dredging, and it has no digits for a call',
    },
    {
      channels: '31@157550/162150',
      uses: ['marina', 'ship-to-coast'],
      note: 'marinas (note 21)',
      ...BY_HAND,
      never: 'it has no digits for a call',
    },
    { ...AIS, powerRule: '12.5 W at most (note 22)' },
  ],
});
