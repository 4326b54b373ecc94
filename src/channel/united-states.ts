/**
 * Channels in the waters of the United States.
 *
 * @packageDocumentation
 */
import type { ChannelPlan, Evidence } from './channel.ts';
import { expandPlan } from './expand-plan.ts';

const CFR_373: Evidence = { basis: 'source', source: '47 CFR 80.373(f), as of March 2025' };
const CFR_371: Evidence = { basis: 'source', source: '47 CFR 80.371(c), as of March 2025' };
const CFR_215: Evidence = { basis: 'source', source: '47 CFR 80.215, as of March 2025' };
const CFR_393: Evidence = { basis: 'source', source: '47 CFR 80.393, as of March 2025' };
const LIST_2025: Evidence = {
  basis: 'source',
  source: 'second-hand copy of the US Coast Guard channel list, October 2025',
};
const NWS: Evidence = { basis: 'source', source: 'US National Weather Service, marine radio page' };
const BY_LIST = { frequency: LIST_2025, use: LIST_2025, power: LIST_2025 };
const BY_371 = { frequency: CFR_371, use: CFR_371 };
const ONE_WATT = {
  powerW: 1,
  powerRule: '1 W: the set reduces its power automatically, and the operator may override it up to 25 W',
  automaticPowerReduction: true,
  conditionalPowerLimits: [
    { watts: 25, measure: 'output', when: 'when the operator overrides the reduction' },
    { watts: 25, measure: 'output', when: 'hand-held sets, which need no automatic reduction' },
  ],
  coastPowerW: 10,
} as const;
const GOVERNMENT = 'it is reserved to the government';

/**
 * United States: 47 CFR part 80 as of March 2025, with the Coast Guard list of 2025.
 *
 * Four digits come first, as the Coast Guard has announced channels since November 2024; the letter is the
 * other name (1022, 22A). Such a channel is the ship leg of the international channel, used by both sides:
 * someone on 22 does not hear a station on 1022. 64A and 60 appear in one list of 2025 and not in
 * 47 CFR 80.371(c) or 80.373(f), and are left out. National rules and the licence decide. Frequencies are kHz.
 *
 * @example
 * ```ts
 * import { findChannel } from 'seahail/channel';
 * import { unitedStatesPlan } from 'seahail/channel/united-states';
 * import { valueOf } from 'seahail/result';
 *
 * const channel = valueOf(findChannel(unitedStatesPlan, '22A'));
 * console.log(channel.designator, channel.coastKHz); // 1022 157100
 * ```
 */
export const unitedStatesPlan: ChannelPlan = /* @__PURE__ */ expandPlan({
  name: 'United States',
  edition: '47 CFR part 80 as of March 2025, with the US Coast Guard channel list of October 2025',
  sources: [
    CFR_373.source,
    CFR_371.source,
    CFR_215.source,
    CFR_393.source,
    '47 CFR 80.364 and 80.383, as of March 2025',
    '33 CFR 161.12(c)',
    'US Coast Guard, Marine Safety Information Bulletin 07-24 (four-digit channel numbers)',
    LIST_2025.source,
    NWS.source,
  ],
  cautions: [
    'amendments after March 2025 were not seen; the list of October 2025 is known at second hand',
    'vessel traffic services have rules of their own by port: 33 CFR 161.12',
  ],
  callingChannels: ['16', '09'],
  rules: [
    'short digital messages may share voice channels, except where 47 CFR 80.364 bars them',
    'two-frequency channels may not be used on one frequency unless the table lists it (47 CFR 80.203(b)(2))',
  ],
  coastPowerW: 50,
  // 47 CFR 80.364, 81 FR 90747 of 15 December 2016.
  noDataMessagesOn: [
    '1001',
    '1063',
    '1005',
    '1065',
    '06',
    '1066',
    '67',
    '70',
    '12',
    '13',
    '73',
    '14',
    '74',
    '15',
    'AIS 3',
    '16',
    'AIS 4',
    '17',
    '77',
    '1020',
    '1022',
    'AIS 1',
    'AIS 2',
  ],
  evidence: { frequency: CFR_373, use: CFR_373, power: CFR_215 },
  rows: [
    {
      channels: '1001,1063',
      uses: ['port-operations', 'commercial', 'vessel-traffic'],
      note: 'port operations and commercial traffic under vessel traffic control',
      region: 'New Orleans and the lower Mississippi; 01A also Port Arthur',
    },
    {
      channels: '1005',
      uses: ['port-operations', 'vessel-traffic'],
      note: 'port operations and vessel traffic',
      region: 'New Orleans, Houston, Los Angeles and Long Beach, Seattle (47 CFR 80.383)',
    },
    {
      channels: '06',
      uses: ['safety', 'intership', 'search-and-rescue'],
      note: 'safety between ships, and rescue work with Coast Guard ships and aircraft',
      by: 'ships',
      caution: 'for safety traffic only',
    },
    {
      channels: '1007,10,1018,1019',
      uses: ['commercial', 'intership'],
      note: 'commercial working',
      users: 'commercial',
      intership: ['prohibited', 'preferred'],
    },
    {
      channels: '08',
      uses: ['commercial', 'intership'],
      note: 'commercial working, between ships only',
      users: 'commercial',
      by: 'ships',
      intership: ['prohibited', 'preferred'],
    },
    {
      channels: '09',
      uses: ['calling', 'commercial', 'non-commercial', 'intership'],
      note: 'calling by pleasure craft; commercial and non-commercial working',
      intership: 'restricted',
      caution: 'a calling channel: move off it to talk',
    },
    {
      channels: '11',
      uses: ['commercial', 'vessel-traffic'],
      note: 'commercial working; vessel traffic in some ports',
      users: 'commercial',
      intership: ['prohibited', 'restricted'],
      caution: 'vessel traffic services come first',
    },
    {
      channels: '12,14',
      uses: ['port-operations', 'vessel-traffic'],
      note: 'port operations; vessel traffic in some ports',
    },
    {
      channels: '13',
      uses: ['navigation-safety', 'intership', 'vessel-traffic'],
      note: 'safety of navigation from bridge to bridge; locks and bridges come second; vessel traffic at Louisville and Valdez (33 CFR 161.12(c))',
      region: 'all but parts of the lower Mississippi and its approaches',
      ...ONE_WATT,
      caution: 'for the safety of navigation only',
    },
    {
      channels: '15',
      uses: ['environmental-broadcast'],
      note: 'environmental information from coast to ship',
      by: 'coast',
      mode: 'coast-broadcast',
    },
    {
      channels: '16',
      uses: ['distress-safety-calling'],
      note: 'distress, safety and calling',
      service: 'distress',
    },
    {
      channels: '17',
      uses: ['government'],
      note: 'maritime control by state and local government',
      users: 'authority',
      powerRule: 'no limit of its own in the rule read; many lists print 1 W',
      never: GOVERNMENT,
    },
    {
      channels: '20',
      uses: ['port-operations', 'ship-to-coast'],
      note: 'port operations from ship to coast, on two frequencies',
    },
    {
      channels: '1020',
      uses: ['port-operations', 'intership'],
      note: 'port operations between ships',
      by: 'ships',
      intership: ['prohibited', 'restricted'],
      caution: 'for port operations only',
    },
    {
      channels: '1021,1023,1083',
      coastPowerW: null,
      uses: ['coast-guard', 'government'],
      note: 'Coast Guard only',
      users: 'authority',
      never: GOVERNMENT,
      evidence: BY_LIST,
    },
    {
      channels: '1022',
      uses: ['coast-guard-liaison', 'safety-broadcast'],
      note: 'Coast Guard liaison, and its safety broadcasts after an announcement on 16',
      caution: 'only to talk with the Coast Guard',
    },
    {
      channels: '24,26,84,85,86',
      uses: ['public-correspondence', 'ship-to-coast'],
      note: 'public correspondence through a coast station',
      evidence: BY_371,
    },
    {
      channels: '25',
      uses: ['public-correspondence', 'ship-to-coast'],
      note: 'public correspondence through a coast station',
      region: 'coast areas 1 to 9; not assignable in areas 10 to 42',
      evidence: BY_371,
    },
    {
      channels: '27,28',
      uses: ['public-correspondence', 'ship-to-coast'],
      note: 'public correspondence through a coast station',
      caution: 'split in other countries into a voice channel and an ASM data channel',
      evidence: BY_371,
    },
    {
      channels: '1065',
      uses: ['port-operations', 'vessel-traffic'],
      note: 'port operations; vessel traffic at Port Arthur',
    },
    { channels: '1066,74', uses: ['port-operations'], note: 'port operations' },
    {
      channels: '73',
      uses: ['port-operations', 'vessel-traffic'],
      note: 'port operations; vessel traffic at Port Arthur (33 CFR 161.12(c))',
    },
    {
      channels: '67',
      uses: ['commercial', 'intership', 'navigation-safety'],
      note: 'commercial talk between ships; bridge to bridge on the lower Mississippi; pleasure craft in Puget Sound',
      ...ONE_WATT,
      intership: 'restricted',
      caution:
        'the bridge-to-bridge channel on the lower Mississippi; pleasure craft may use it in Puget Sound and Juan de Fuca only',
    },
    {
      channels: '68,69,1078',
      uses: ['non-commercial', 'intership', 'ship-to-coast'],
      note: 'non-commercial working',
      users: 'non-commercial',
      intership: ['preferred', 'prohibited'],
    },
    { channels: '70', uses: ['dsc'], note: 'digital selective calling', service: 'dsc' },
    {
      channels: '71',
      uses: ['non-commercial', 'intership', 'ship-to-coast'],
      note: 'non-commercial working; vessel traffic in Puget Sound',
      users: 'non-commercial',
      powerRule: '1 W normally and 10 W at most in the Seattle vessel traffic area',
      conditionalPowerLimits: [
        { watts: 1, measure: 'output', when: 'normally, in the Seattle vessel traffic area' },
        { watts: 10, measure: 'output', when: 'at most, in the Seattle vessel traffic area' },
      ],
      intership: ['preferred', 'prohibited'],
      caution: 'not for casual talk in the Puget Sound vessel traffic area',
    },
    {
      channels: '72',
      uses: ['non-commercial', 'intership'],
      note: 'non-commercial talk between ships',
      users: 'non-commercial',
      by: 'ships',
      intership: ['preferred', 'restricted'],
      caution: 'commercial vessels may use it in Puget Sound and Juan de Fuca only',
    },
    {
      // 82 FR 27213 of 14 June 2017.
      channels: 'AIS 3=75@156775,AIS 4=76@156825',
      uses: ['ais'],
      note: 'long-range AIS reports from ships to satellites; no voice since 14 June 2017',
      service: 'ais',
      by: 'ships',
      powerW: 12.5,
      never: 'it carries long-range AIS reports to satellites only',
      evidence: { frequency: CFR_393, use: CFR_393, power: { basis: 'memory', source: 'ITU-R M.1371' } },
    },
    {
      channels: '77',
      uses: ['pilotage', 'port-operations', 'intership'],
      note: 'talk with pilots about movement and docking',
      by: 'ships',
      powerW: 1,
      powerRule: 'normal output not above 1 W',
      intership: ['prohibited', 'restricted'],
      caution: 'with pilots only',
      evidence: { power: CFR_373 },
    },
    {
      channels: '1079,1080',
      uses: ['commercial', 'intership', 'non-commercial'],
      note: 'commercial working; non-commercial on the Great Lakes',
      intership: ['restricted', 'preferred'],
      caution: 'pleasure craft may use it on the Great Lakes only',
    },
    {
      channels: '1081,1082',
      coastPowerW: null,
      uses: ['government'],
      note: 'government only',
      users: 'authority',
      never: GOVERNMENT,
      evidence: BY_LIST,
    },
    {
      channels: '87=1087=87A',
      uses: ['public-correspondence'],
      note: 'public correspondence on the lower leg alone',
      evidence: BY_LIST,
    },
    {
      channels: '88=1088=88A',
      uses: ['commercial', 'intership', 'public-correspondence'],
      note: 'commercial talk between ships, fishing vessels and their aircraft',
      users: 'commercial',
      intership: ['prohibited', 'allowed'],
      caution: 'public correspondence near the Canadian border',
    },
    {
      channels: 'AIS 1=2087=87B@161975,AIS 2=2088=88B@162025',
      uses: ['ais'],
      note: 'automatic identification system',
      service: 'ais',
      powerW: 12.5,
      evidence: { ...BY_371, power: { basis: 'memory', source: 'ITU-R M.1371' } },
    },
    {
      channels: 'WX1@162550,WX2@162400,WX3@162475,WX4@162425,WX5@162450,WX6@162500,WX7@162525',
      uses: ['weather-broadcast'],
      note: 'continuous weather broadcast; the WX numbers have no official standing',
      service: 'weather',
      by: 'coast',
      mode: 'coast-broadcast',
      evidence: { frequency: NWS, use: NWS },
    },
  ],
});
