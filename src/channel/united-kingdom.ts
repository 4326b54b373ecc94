/**
 * Channels in the waters of the United Kingdom.
 *
 * @packageDocumentation
 */
import { APPENDIX_18_EVIDENCE, APPENDIX_18_ROWS } from './appendix-18-rows.ts';
import type { ChannelPlan, Evidence } from './channel.ts';
import { expandPlan } from './expand-plan.ts';

const MEMORY: Evidence = { basis: 'memory', source: 'United Kingdom channel table (Ofcom Of168a)' };
const RA_264: Evidence = { basis: 'source', source: 'UK Radiocommunications Agency sheet RA 264' };
const MCA_2017: Evidence = { basis: 'source', source: 'HM Coastguard announcement, September 2017' };
const WATERWAYS: Evidence = {
  basis: 'source',
  source: 'UK inland waterways association, page on VHF channels',
};

/**
 * United Kingdom: Appendix 18 with British uses, and the channels 0, M and M2 of its own.
 *
 * Frequencies of 0, M and M2 are from memory; private channels 29 to 59 are
 * licensed one by one and left out. National rules and the licence decide. Frequencies are kHz.
 *
 * @example
 * ```ts
 * import { findChannel } from 'seahail/channel';
 * import { unitedKingdomPlan } from 'seahail/channel/united-kingdom';
 * import { valueOf } from 'seahail/result';
 *
 * console.log(valueOf(findChannel(unitedKingdomPlan, 'M2')).note); // marinas, yacht clubs and race control
 * ```
 */
export const unitedKingdomPlan: ChannelPlan = /* @__PURE__ */ expandPlan({
  name: 'United Kingdom',
  edition: 'Appendix 18 (WRC-15 arrangement) with United Kingdom uses as of 2017',
  sources: [RA_264.source, MCA_2017.source, WATERWAYS.source, 'RR Appendix 18 (frequencies)'],
  cautions: [
    'the national table was not seen in full: most port uses are unverified',
    'frequencies of 0, M and M2 are unverified',
  ],
  callingChannels: ['16'],
  evidence: { ...APPENDIX_18_EVIDENCE, use: MEMORY },
  rows: [
    ...APPENDIX_18_ROWS,
    {
      channels: '01,02,03,04,05,07,18,19,20,21,22,60,61,66,78,79,81,82,83',
      uses: ['port-operations', 'ship-movement'],
      note: 'port operations and ship movement as assigned; no public correspondence remains',
    },
    {
      channels: '23',
      uses: ['port-operations', 'ship-movement'],
      note: 'coastguard safety broadcasts until 2017, since then as assigned',
      evidence: { use: MCA_2017 },
    },
    {
      channels: '84,86',
      uses: ['port-operations', 'ship-movement', 'vdes'],
      note: 'coastguard safety broadcasts until 2017, since then as assigned',
      caution: 'identified for data exchange since 1 January 2017',
      evidence: { use: MCA_2017 },
    },
    {
      channels: '62,63,64',
      uses: ['safety-broadcast', 'coast-guard-liaison'],
      note: 'coastguard safety broadcasts and radio medical advice',
      caution: 'only to talk with the coastguard',
      evidence: { use: MCA_2017 },
    },
    {
      channels: '65',
      uses: ['ship-to-coast'],
      note: 'volunteer coast-watch stations, on the lower leg alone as remembered',
      caution: 'check locally whether one frequency or two are in use',
    },
    {
      channels: '80',
      uses: ['marina', 'port-operations', 'ship-movement'],
      note: 'marinas with pleasure craft, not between ships',
      evidence: { use: WATERWAYS },
    },
    {
      channels: '06',
      uses: ['intership', 'search-and-rescue'],
      note: 'talk between ships, and search and rescue',
      by: 'ships',
      intership: 'allowed',
      caution: 'keep it clear for search and rescue',
      evidence: { use: RA_264 },
    },
    {
      channels: '08,72,77',
      uses: ['intership'],
      note: 'talk between ships',
      by: 'ships',
      intership: 'preferred',
      evidence: { use: RA_264 },
    },
    {
      channels: '09,69',
      uses: ['port-operations', 'intership', 'ship-movement'],
      note: 'port operations, pilots, race control and between ships',
      intership: 'restricted',
      caution: 'often assigned to a port or a race',
    },
    {
      channels: '10',
      uses: ['pollution-control', 'safety-broadcast', 'search-and-rescue'],
      note: 'coastguard pollution control and reserve for safety broadcasts',
      caution: 'kept for the coastguard',
      evidence: { use: MCA_2017 },
    },
    {
      channels: '67,73',
      uses: ['coast-guard-liaison', 'search-and-rescue', 'safety'],
      note: 'coastguard working with small craft and in rescue',
      caution: 'kept for the coastguard',
    },
    // deviation: D-channel-2
    {
      channels: '0=00@156000',
      uses: ['coast-guard', 'search-and-rescue'],
      note: 'coastguard, rescue units and vessels they invite',
      users: 'authority',
      never: 'it is private to the coastguard and rescue services, and it has no digits for a call',
      evidence: { frequency: MEMORY },
    },
    {
      channels: 'M=37=37A=M1@157850',
      uses: ['marina', 'non-commercial'],
      note: 'marinas and yacht clubs',
      region: 'United Kingdom only',
      never: 'it is for ships to marinas and clubs, and it has no digits for a call',
      evidence: { frequency: MEMORY, use: WATERWAYS },
    },
    {
      channels: 'M2=P4@161425',
      uses: ['marina', 'non-commercial'],
      note: 'marinas, yacht clubs and race control',
      region: 'United Kingdom only',
      never: 'it is for ships to marinas and clubs, and it has no digits for a call',
      evidence: { frequency: MEMORY, use: WATERWAYS },
    },
  ],
});
