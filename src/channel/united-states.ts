/**
 * Channels in the waters of the United States.
 *
 * @packageDocumentation
 */
import type { ChannelPlan, Evidence } from './channel.ts';
import { expandPlan } from './expand-plan.ts';

const CFR_373: Evidence = { basis: 'source', source: '47 CFR 80.373(f), 2015 edition' };
const CFR_371: Evidence = { basis: 'source', source: '47 CFR 80.371(c), 2015 edition' };
const CFR_215: Evidence = { basis: 'source', source: '47 CFR 80.215, 2015 edition' };
const LIST_2025: Evidence = {
  basis: 'source',
  source: 'second-hand copy of the US Coast Guard channel list, October 2025',
};
const NWS: Evidence = { basis: 'source', source: 'US National Weather Service, marine radio page' };
const BY_LIST = { frequency: LIST_2025, use: LIST_2025 };
const BY_371 = { frequency: CFR_371, use: CFR_371 };
const OVERRIDE = '1 W: the set drops to it by itself, and the operator may override it up to 25 W';
const GOVERNMENT = 'it is reserved to the government';

/**
 * United States: 47 CFR part 80 (2015 edition) with the Coast Guard list of 2025.
 *
 * A number with A is the ship leg of the international channel used by both sides: someone on 22 does not
 * hear a station on 22A. 64A and 60 appear in one list of 2025 and not in the regulation, and are left
 * out. National rules and the licence decide. Frequencies are kHz.
 *
 * @example
 * ```ts
 * import { findChannel } from 'seahail/channel';
 * import { unitedStatesPlan } from 'seahail/channel/united-states';
 * import { valueOf } from 'seahail/result';
 *
 * const channel = valueOf(findChannel(unitedStatesPlan, '1022'));
 * console.log(channel.designator, channel.coastKHz); // 22A 157100
 * ```
 */
export const unitedStatesPlan: ChannelPlan = /* @__PURE__ */ expandPlan({
  name: 'United States',
  edition: '47 CFR part 80, 2015 edition, with the US Coast Guard channel list of October 2025',
  sources: [
    CFR_373.source,
    CFR_371.source,
    CFR_215.source,
    '33 CFR 161.12, 2015 edition',
    LIST_2025.source,
    NWS.source,
  ],
  cautions: [
    'amendments after 2015 are known at second hand only',
    'vessel traffic services have rules of their own by port: 33 CFR 161.12',
  ],
  evidence: { frequency: CFR_373, use: CFR_373, power: CFR_215 },
  rows: [
    {
      channels: '01A,63A',
      uses: ['port-operations', 'commercial', 'vessel-traffic'],
      note: 'port operations and commercial traffic under vessel traffic control',
      region: 'New Orleans and the lower Mississippi; 01A also Port Arthur',
    },
    {
      channels: '05A',
      uses: ['port-operations', 'vessel-traffic'],
      note: 'port operations and vessel traffic',
      region: 'New Orleans, Houston, Los Angeles and Long Beach, Puget Sound',
    },
    {
      channels: '06',
      uses: ['safety', 'intership', 'search-and-rescue'],
      note: 'safety between ships, and rescue work with Coast Guard ships and aircraft',
      by: 'ships',
      caution: 'for safety traffic only',
    },
    {
      channels: '07A,10,18A,19A',
      uses: ['commercial', 'intership'],
      note: 'commercial working',
      users: 'commercial',
      intership: ['no', 'preferred'],
    },
    {
      channels: '08',
      uses: ['commercial', 'intership'],
      note: 'commercial working, between ships only',
      users: 'commercial',
      by: 'ships',
      intership: ['no', 'preferred'],
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
      intership: ['no', 'restricted'],
      caution: 'vessel traffic services come first',
    },
    {
      channels: '12,14',
      uses: ['port-operations', 'vessel-traffic'],
      note: 'port operations; vessel traffic in some ports',
    },
    {
      channels: '13',
      uses: ['navigation-safety', 'intership'],
      note: 'safety of navigation from bridge to bridge; locks and bridges come second',
      region: 'all but parts of the lower Mississippi and its approaches',
      powerW: 1,
      powerRule: OVERRIDE,
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
      note: 'port operations from ship to coast',
    },
    {
      channels: '20A',
      uses: ['port-operations', 'intership'],
      note: 'port operations between ships',
      by: 'ships',
      intership: ['no', 'restricted'],
      caution: 'for port operations only',
    },
    {
      channels: '21A,23A,83A',
      uses: ['coast-guard', 'government'],
      note: 'Coast Guard only',
      users: 'authority',
      never: GOVERNMENT,
      evidence: BY_LIST,
    },
    {
      channels: '22A',
      uses: ['coast-guard-liaison', 'safety-broadcast'],
      note: 'Coast Guard liaison, and its safety broadcasts after an announcement on 16',
      caution: 'only to talk with the Coast Guard',
    },
    {
      channels: '24,25,26,84,85,86',
      uses: ['public-correspondence', 'ship-to-coast'],
      note: 'public correspondence through a coast station',
      caution: 'to end on 1 January 2030 in favour of data',
      evidence: BY_371,
    },
    {
      channels: '27,28',
      uses: ['public-correspondence', 'ship-to-coast'],
      note: 'public correspondence through a coast station',
      caution: 'split elsewhere into a voice channel and an ASM data channel',
      evidence: BY_371,
    },
    {
      channels: '65A',
      uses: ['port-operations', 'vessel-traffic'],
      note: 'port operations; vessel traffic at Port Arthur',
    },
    { channels: '66A,73,74', uses: ['port-operations'], note: 'port operations' },
    {
      channels: '67',
      uses: ['commercial', 'intership', 'navigation-safety'],
      note: 'commercial talk between ships; bridge to bridge on the lower Mississippi; pleasure craft in Puget Sound',
      powerW: 1,
      powerRule: OVERRIDE,
      intership: 'restricted',
      caution:
        'the bridge-to-bridge channel on the lower Mississippi; pleasure craft may use it in Puget Sound and Juan de Fuca only',
    },
    {
      channels: '68,69,78A',
      uses: ['non-commercial', 'intership', 'ship-to-coast'],
      note: 'non-commercial working',
      users: 'non-commercial',
      intership: ['preferred', 'no'],
    },
    { channels: '70', uses: ['dsc'], note: 'digital selective calling', service: 'dsc' },
    {
      channels: '71',
      uses: ['non-commercial', 'intership', 'ship-to-coast'],
      note: 'non-commercial working; vessel traffic in Puget Sound',
      users: 'non-commercial',
      powerRule: '1 W normally and 10 W at most in the Seattle vessel traffic area',
      intership: ['preferred', 'no'],
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
      channels: '75,76',
      uses: ['port-operations', 'ship-movement'],
      note: 'navigation-related port operations and ship movement only',
      powerW: 1,
      powerRule: '1 W for ships with no override, 10 W for coast stations',
      never: 'it guards channel 16 and carries navigation-related port traffic only',
    },
    {
      channels: '77',
      uses: ['pilotage', 'port-operations', 'intership'],
      note: 'talk with pilots about movement and docking',
      by: 'ships',
      powerW: 1,
      powerRule: 'normal output not above 1 W',
      intership: ['no', 'restricted'],
      caution: 'with pilots only',
      evidence: { power: CFR_373 },
    },
    {
      channels: '79A,80A',
      uses: ['commercial', 'intership', 'non-commercial'],
      note: 'commercial working; non-commercial on the Great Lakes',
      intership: ['restricted', 'preferred'],
      caution: 'pleasure craft may use it on the Great Lakes only',
    },
    {
      channels: '81A,82A',
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
      intership: ['no', 'allowed'],
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
