/**
 * Channels in the waters of Canada.
 *
 * @packageDocumentation
 */
import type { ChannelPlan, Evidence } from './channel.ts';
import { expandPlan } from './expand-plan.ts';
import { GUARDS_16 } from './not-speech.ts';

const MEMORY: Evidence = { basis: 'memory', source: 'ISED RBR-2 schedule' };
const APPENDIX_18: Evidence = { basis: 'source', source: 'RR Appendix 18, table' };
const BOATING: Evidence = { basis: 'source', source: 'Canadian boating course, channel list' };
const GREAT_LAKES: Evidence = {
  basis: 'source',
  source: 'ISED ship-station schedule, Great Lakes rows as quoted in 2013',
};
const PAIRS: Evidence = { basis: 'source', source: 'ISED Arrangement A, Attachment F' };
const TP_782: Evidence = { basis: 'source', source: 'Transport Canada TP 782' };
const RAMN: Evidence = {
  basis: 'source',
  source: 'Canadian Coast Guard, Radio Aids to Marine Navigation (Pacific) 2009',
};
const WEATHERADIO: Evidence = { basis: 'memory', source: 'Environment Canada, Weatheradio frequencies' };
const GOVERNMENT = 'it is reserved to the government';

/**
 * Canada: the weakest of the tables. The national schedule was not seen as a whole; most uses by coast
 * are from memory. National rules and the licence decide. Frequencies are kHz.
 *
 * A number with B is the upper leg alone: ships listen and do not transmit.
 *
 * @example
 * ```ts
 * import { findChannel } from 'seahail/channel';
 * import { canadaPlan } from 'seahail/channel/canada';
 * import { valueOf } from 'seahail/result';
 *
 * const channel = valueOf(findChannel(canadaPlan, '21B'));
 * console.log(channel.coastKHz, channel.receiveOnly); // 161650 true
 * ```
 */
export const canadaPlan: ChannelPlan = /* @__PURE__ */ expandPlan({
  name: 'Canada',
  edition: 'as remembered from ISED RBR-2, with extracts read up to 2017',
  sources: [
    BOATING.source,
    GREAT_LAKES.source,
    PAIRS.source,
    TP_782.source,
    RAMN.source,
    APPENDIX_18.source,
    'ISED RBR-2, unverified',
  ],
  cautions: [
    'the national schedule was not seen in full: most uses by coast are unverified',
    'a channel with no use stated for an area may be used between ships (Industry Canada letter, 2002)',
  ],
  callingChannels: ['16'],
  evidence: { frequency: APPENDIX_18, use: MEMORY, power: MEMORY },
  // deviation: D-channel-4
  rows: [
    {
      channels: '01,02,03,23,60,64',
      uses: ['public-correspondence', 'ship-to-coast'],
      note: 'public correspondence',
      region: 'mostly inland and in the Arctic',
      evidence: { use: BOATING },
    },
    {
      channels: '04A,61A,62A',
      uses: ['coast-guard', 'fishing'],
      note: 'Coast Guard on the Pacific, commercial fishing on the Atlantic',
      never: 'it is reserved to the Coast Guard or to fishing, by coast',
    },
    {
      channels: '05A',
      uses: ['vessel-traffic', 'ship-movement'],
      note: 'ship movement and vessel traffic',
      region: 'coast of British Columbia',
    },
    {
      channels: '06',
      uses: ['intership', 'safety', 'search-and-rescue'],
      note: 'talk between ships, safety, and search and rescue with aircraft',
      by: 'ships',
      intership: 'allowed',
      caution: 'keep it clear for search and rescue',
      evidence: { use: GREAT_LAKES },
    },
    {
      channels: '07A',
      uses: ['commercial', 'intership'],
      note: 'commercial working',
      users: 'commercial',
      intership: ['prohibited', 'allowed'],
    },
    {
      channels: '18A',
      uses: ['commercial', 'intership', 'towing'],
      note: 'commercial working; towing on the Pacific',
      users: 'commercial',
      intership: ['prohibited', 'allowed'],
    },
    {
      channels: '08',
      uses: ['commercial', 'intership', 'safety'],
      note: 'commercial and safety, between ships',
      region: 'both coasts and Lake Winnipeg',
      users: 'commercial',
      by: 'ships',
      intership: ['prohibited', 'allowed'],
    },
    {
      channels: '09',
      uses: ['commercial', 'intership', 'aircraft-support'],
      note: 'commercial working, also with aircraft in support',
      region: 'Atlantic and Pacific',
      intership: ['prohibited', 'restricted'],
      caution: 'shared with aircraft in support of ships',
    },
    {
      channels: '10',
      uses: ['commercial', 'intership', 'search-and-rescue', 'pollution-control'],
      note: 'commercial working, and rescue and pollution control with aircraft',
      intership: ['prohibited', 'restricted'],
      caution: 'kept for rescue and pollution control',
      evidence: { use: GREAT_LAKES },
    },
    {
      channels: '11',
      uses: ['vessel-traffic', 'pilotage'],
      note: 'vessel traffic and pilotage',
      evidence: { use: GREAT_LAKES },
    },
    {
      channels: '12,14',
      uses: ['vessel-traffic', 'port-operations', 'pilotage'],
      note: 'vessel traffic, port operations and pilotage',
      evidence: { use: GREAT_LAKES },
    },
    {
      channels: '13',
      uses: ['navigation-safety', 'vessel-traffic'],
      note: 'safety of navigation from bridge to bridge; vessel traffic in British Columbia',
      powerW: 1,
      powerRule: '1 W in normal use',
      caution: 'for the safety of navigation only',
      evidence: { use: GREAT_LAKES },
    },
    {
      channels: '15',
      uses: ['port-operations', 'ship-movement', 'on-board'],
      note: 'port operations and ship movement, and on board',
      powerW: 1,
      powerRule: '1 W at most',
      evidence: { use: GREAT_LAKES, power: GREAT_LAKES },
    },
    {
      channels: '17',
      uses: ['port-operations', 'ship-movement', 'on-board'],
      note: 'port operations and ship movement, and on board',
      powerW: 1,
      powerRule: '1 W at most',
      evidence: { use: GREAT_LAKES },
    },
    {
      channels: '16',
      uses: ['distress-safety-calling'],
      note: 'distress, safety and calling',
      service: 'distress',
      evidence: { use: GREAT_LAKES },
    },
    {
      channels: '19A',
      uses: ['coast-guard', 'government', 'commercial'],
      note: 'Coast Guard and government; commercial in places',
      never: 'it is mainly for the government',
    },
    { channels: '20', uses: ['port-operations', 'ship-to-coast'], note: 'port operations', powerW: 1 },
    {
      channels: '21A',
      uses: ['coast-guard'],
      note: 'Coast Guard only',
      users: 'authority',
      never: GOVERNMENT,
    },
    {
      channels: '81A,82A',
      uses: ['government', 'coast-guard'],
      note: 'Coast Guard and national defence',
      users: 'authority',
      never: GOVERNMENT,
    },
    {
      channels: '83A',
      uses: ['coast-guard', 'coast-guard-liaison'],
      note: 'Coast Guard and other agencies; its working channel on the Pacific since 2009',
      users: 'authority',
      never: 'it is for talk with the Coast Guard, which chooses it',
      evidence: { frequency: RAMN, use: RAMN },
    },
    {
      channels: '22A',
      uses: ['coast-guard-liaison'],
      note: 'Coast Guard liaison',
      caution: 'only to talk with the Coast Guard',
      evidence: { use: BOATING },
    },
    {
      channels: '21B=2021=WX8,83B=2083=WX9',
      uses: ['weather-broadcast', 'safety-broadcast'],
      note: 'continuous marine broadcast of weather and safety messages',
      service: 'weather',
      by: 'coast',
      mode: 'coast-broadcast',
      evidence: { frequency: TP_782, use: TP_782 },
    },
    {
      channels: '23B,28B',
      uses: ['weather-broadcast'],
      note: 'continuous marine broadcast in French; 28B shares its frequency with ASM 2',
      service: 'weather',
      by: 'coast',
      mode: 'coast-broadcast',
      evidence: { use: BOATING },
    },
    {
      channels: '25B',
      uses: ['weather-broadcast'],
      note: 'continuous marine broadcast, on a frequency also meant for data exchange',
      service: 'weather',
      by: 'coast',
      mode: 'coast-broadcast',
    },
    {
      channels: '26,86',
      uses: ['public-correspondence', 'ship-to-coast'],
      note: 'public correspondence, and working with the Coast Guard',
      evidence: { frequency: PAIRS },
    },
    {
      channels: '27,28',
      uses: ['public-correspondence', 'ship-to-coast'],
      note: 'public correspondence, and working with the Coast Guard',
      caution: 'split in other countries into a voice channel and an ASM data channel',
      evidence: { frequency: PAIRS },
    },
    {
      channels: '24,25,84,85',
      uses: ['public-correspondence', 'ship-to-coast'],
      note: 'public correspondence, and working with the Coast Guard',
      caution: 'may carry data exchange',
      evidence: { frequency: PAIRS },
    },
    {
      channels: '63A',
      uses: ['towing', 'commercial'],
      note: 'tow boats',
      region: 'coast of British Columbia',
    },
    { channels: '64A', uses: ['fishing'], note: 'commercial fishing', region: 'Atlantic' },
    {
      channels: '65A',
      uses: ['search-and-rescue', 'pollution-control', 'port-operations', 'non-commercial'],
      note: 'rescue and pollution control, towing, port operations or pleasure craft, by region',
      powerRule: '1 W for port operations on the St Lawrence',
      conditionalPowerLimits: [
        { watts: 1, measure: 'output', when: 'for port operations on the St Lawrence' },
      ],
      intership: 'restricted',
      caution: 'its use differs from region to region',
      evidence: { use: BOATING },
    },
    {
      channels: '66A',
      uses: ['port-operations', 'marina'],
      note: 'port operations on the St Lawrence and Great Lakes; marinas in British Columbia',
      powerW: 1,
    },
    {
      channels: '67',
      uses: ['intership', 'commercial', 'non-commercial', 'search-and-rescue', 'pollution-control'],
      note: 'between ships and with the shore; rescue and pollution control',
      intership: 'allowed',
      caution: 'commercial fishing on the Atlantic',
    },
    {
      channels: '68',
      uses: ['non-commercial', 'marina', 'intership'],
      note: 'pleasure craft, marinas and yacht clubs',
      users: 'non-commercial',
      intership: ['preferred', 'prohibited'],
      evidence: { use: BOATING },
    },
    {
      channels: '69',
      uses: ['non-commercial', 'fishing', 'intership'],
      note: 'pleasure craft on the Pacific, commercial fishing on the Atlantic',
      intership: 'allowed',
      caution: 'commercial fishing on the Atlantic',
    },
    {
      channels: '70',
      uses: ['dsc'],
      note: 'digital selective calling',
      service: 'dsc',
      evidence: { use: BOATING },
    },
    {
      channels: '71',
      uses: ['vessel-traffic', 'ship-movement', 'marina'],
      note: 'vessel traffic on the Pacific; marinas on the Atlantic and Lake Winnipeg',
      intership: ['restricted', 'prohibited'],
      caution: 'vessel traffic on the Pacific',
    },
    {
      channels: '72',
      uses: ['intership', 'non-commercial', 'aircraft-support'],
      note: 'talk between ships; pleasure craft on the Pacific',
      by: 'ships',
      intership: ['preferred', 'allowed'],
    },
    {
      channels: '73',
      uses: ['fishing', 'non-commercial', 'intership', 'search-and-rescue', 'pollution-control'],
      note: 'commercial fishing on the Atlantic, elsewhere between ships; rescue and pollution control',
      intership: 'restricted',
      caution: 'kept for rescue and pollution control',
    },
    { channels: '74', uses: ['vessel-traffic', 'ship-movement'], note: 'vessel traffic and ship movement' },
    {
      channels: '75,76',
      uses: ['port-operations', 'ship-movement'],
      note: 'port operations, ship movement and navigation only',
      powerW: 1,
      powerRule: '1 W, to protect channel 16',
      never: GUARDS_16,
    },
    {
      channels: '77',
      uses: ['pilotage', 'port-operations', 'intership'],
      note: 'pilots on the Pacific; port operations on the St Lawrence and Great Lakes',
      by: 'ships',
      powerRule: '1 W on the St Lawrence and Great Lakes',
      conditionalPowerLimits: [{ watts: 1, measure: 'output', when: 'on the St Lawrence and Great Lakes' }],
      intership: ['prohibited', 'restricted'],
      caution: 'for pilots and ports',
    },
    {
      channels: '78A,79A,80A',
      uses: ['fishing', 'intership'],
      note: 'fishing industry, between ships and with the shore',
      region: 'Pacific',
      intership: ['prohibited', 'restricted'],
      caution: 'for the fishing industry',
    },
    {
      channels: '87=1087=87A,88=1088=88A',
      uses: ['port-operations', 'ship-movement'],
      note: 'port operations and ship movement on one frequency',
    },
    {
      channels: 'AIS 1=2087=87B@161975,AIS 2=2088=88B@162025',
      uses: ['ais'],
      note: 'automatic identification system',
      service: 'ais',
      powerW: 12.5,
      evidence: { frequency: APPENDIX_18 },
    },
    {
      channels: 'WX1@162550,WX2@162400,WX3@162475,WX4@162425,WX5@162450,WX6@162500,WX7@162525',
      uses: ['weather-broadcast'],
      note: 'continuous weather broadcast, as in the United States',
      service: 'weather',
      by: 'coast',
      mode: 'coast-broadcast',
      evidence: { frequency: WEATHERADIO },
    },
  ],
});
