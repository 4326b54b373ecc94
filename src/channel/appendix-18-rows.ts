import type { Evidence } from './channel.ts';
import type { PlanRow } from './expand-plan.ts';
import { GUARDS_16 } from './not-speech.ts';

/* Seen printed in national rules: frequencies in 47 CFR 80.871(d), uses in a Norwegian and a Dutch table. */
const TABLE: Evidence = { basis: 'source', source: 'RR Appendix 18, table' };
const note = (letter: string): Evidence => ({ basis: 'source', source: `RR Appendix 18 note ${letter})` });
const WRC_15: Evidence = { basis: 'source', source: 'WRC-15 Final Acts, RR Appendix 18 notes z) and zz)' };
const FROM_MEMORY: Evidence = { basis: 'memory', source: 'RR Appendix 18' };
const ARITHMETIC: Evidence = {
  basis: 'memory',
  source: 'ITU-R M.1084 Annex 4, by arithmetic from RR Appendix 18',
};
const LEG = { frequency: ARITHMETIC, use: FROM_MEMORY };

/**
 * Radio Regulations Appendix 18, arrangement of WRC-15 as kept by WRC-19 and WRC-23.
 *
 * Frequencies follow from the numbers; all 57 were compared with 47 CFR 80.871(d), 2015 edition. Uses come from a
 * Norwegian and a Dutch national table; notes from the Final Acts of WRC-15 and from restatements that cite WRC-23.
 */
export const APPENDIX_18_ROWS: readonly PlanRow[] = [
  {
    channels: '01,02,03,04,05,07,18,19,20,21,22,23,60,61,62,63,64,65,66,78,79,80,81,82,83',
    uses: ['port-operations', 'ship-movement', 'public-correspondence'],
    note: 'port operations, ship movement and public correspondence',
    evidence: { use: FROM_MEMORY },
  },
  {
    channels: '24,25,26,84,85,86',
    uses: ['port-operations', 'ship-movement', 'public-correspondence', 'vdes'],
    note: 'identified for data exchange, in Regions 1 and 3 since 1 January 2017',
    caution: 'voice only where the country still allows it, and then without protection from interference',
    evidence: { use: /* @__PURE__ */ note('w') },
  },
  {
    channels: '27,28',
    uses: ['port-operations', 'ship-movement', 'public-correspondence'],
    note: 'split on 1 January 2019 into a voice channel on the lower leg and ASM data on the upper',
    caution: 'in use as a pair only where a country keeps it',
    evidence: { use: WRC_15 },
  },
  {
    channels: '1027,1028,87=1087=87A,88=1088=88A',
    uses: ['port-operations', 'ship-movement'],
    note: 'port operations and ship movement, on one frequency since 1 January 2019',
    evidence: { frequency: WRC_15, use: WRC_15 },
  },
  {
    channels: '06',
    uses: ['intership', 'search-and-rescue'],
    note: 'first channel between ships, and between ships and aircraft in search and rescue',
    by: 'ships',
    intership: 'allowed',
    caution: 'keep it clear for search and rescue, and for ice-breakers and their aircraft',
  },
  {
    channels: '08,72,77',
    uses: ['intership'],
    note: 'intership only',
    by: 'ships',
    intership: 'preferred',
  },
  {
    channels: '10,67,73',
    uses: ['intership', 'port-operations', 'ship-movement', 'search-and-rescue', 'pollution-control'],
    note: 'between ships and port operations; search and rescue and pollution control in Europe and Canada',
    intership: 'allowed',
    caution: 'may be a port or rescue channel where you are',
  },
  {
    channels: '09,69',
    uses: ['intership', 'port-operations', 'ship-movement'],
    note: 'between ships and port operations',
    intership: 'allowed',
    caution: 'may be a port channel where you are',
  },
  {
    channels: '11,12,14,68,71,74',
    uses: ['port-operations', 'ship-movement'],
    note: 'port operations and ship movement',
  },
  {
    channels: '13',
    uses: ['navigation-safety', 'intership', 'port-operations', 'ship-movement'],
    note: 'safety of navigation, worldwide, chiefly from bridge to bridge; also ship movement and port operations where a national rule says so',
    caution: 'for the safety of navigation; other uses by national rule only',
    evidence: { use: /* @__PURE__ */ note('k') },
  },
  {
    channels: '15,17',
    uses: ['intership', 'on-board', 'port-operations', 'ship-movement'],
    note: 'port operations, and on board at low power',
    powerW: 1,
    powerRule: '1 W radiated on board; elsewhere 25 W unless a national rule says less',
    conditionalPowerLimits: [{ watts: 1, measure: 'radiated', when: 'for communication on board' }],
    intership: 'restricted',
    caution: 'normally used by ports or for work on board',
    evidence: { power: /* @__PURE__ */ note('g') },
  },
  {
    channels: '16',
    uses: ['distress-safety-calling'],
    note: 'distress, urgency, safety and calling by voice',
    service: 'distress',
    evidence: { use: FROM_MEMORY },
  },
  {
    channels: '70',
    uses: ['dsc'],
    note: 'digital selective calling for distress, safety and calling',
    service: 'dsc',
    evidence: { use: FROM_MEMORY },
  },
  {
    channels: '75,76',
    uses: ['port-operations', 'ship-movement', 'ais'],
    note: 'navigation-related port traffic only; also long-range AIS reports from ships to satellites (note s)',
    powerW: 1,
    powerRule: '1 W, to protect channel 16',
    never: GUARDS_16,
    evidence: { use: /* @__PURE__ */ note('n'), power: /* @__PURE__ */ note('n') },
  },
  {
    channels: '1019,1020,1078,1079',
    uses: ['port-operations', 'ship-movement'],
    note: 'port operations and ship movement on the lower leg; between ships only by national rule',
    evidence: LEG,
  },
  {
    channels: '2019,2020,2078,2079',
    uses: ['port-operations', 'ship-movement'],
    note: 'port operations and ship movement, coast stations on the upper leg',
    by: 'coast',
    never: 'it is an upper leg, for coast stations unless a national rule lets ships transmit',
    evidence: LEG,
  },
  {
    channels: '1024,1025,1026,1084,1085,1086',
    uses: ['vdes'],
    note: 'data exchange from ships to shore and satellite',
    service: 'vdes',
    evidence: LEG,
  },
  {
    channels: '2024,2025,2026,2084,2085,2086',
    uses: ['vdes'],
    note: 'data exchange between ships, from shore and from satellite',
    service: 'vdes',
    evidence: LEG,
  },
  {
    channels: 'ASM 1=2027=27B@161950,ASM 2=2028=28B@162000',
    uses: ['asm'],
    note: 'application-specific messages',
    service: 'asm',
    evidence: { frequency: WRC_15, use: WRC_15 },
  },
  {
    channels: 'AIS 1=2087=87B@161975,AIS 2=2088=88B@162025',
    uses: ['ais'],
    note: 'automatic identification system',
    service: 'ais',
    powerW: 12.5,
    powerRule: '12.5 W for class A sets; 1 W, 2 W or 5 W for class B',
    evidence: { frequency: TABLE, use: TABLE, power: { basis: 'memory', source: 'ITU-R M.1371' } },
  },
  {
    channels: '2006',
    uses: ['autonomous-devices'],
    note: 'low-power autonomous devices of group B',
    service: 'data',
    powerW: 0.1,
    powerRule: '100 mW e.i.r.p., aerial at most 1 m above the sea',
    conditionalPowerLimits: [{ watts: 0.1, measure: 'radiated', when: 'aerial at most 1 m above the sea' }],
    evidence: {
      frequency: /* @__PURE__ */ note('r'),
      use: /* @__PURE__ */ note('r'),
      power: /* @__PURE__ */ note('r'),
    },
  },
];

/** Evidence of a row above that names none of its own. */
export const APPENDIX_18_EVIDENCE: {
  readonly frequency: Evidence;
  readonly use: Evidence;
  readonly power: Evidence;
} = {
  frequency: TABLE,
  use: TABLE,
  power: { basis: 'memory', source: 'common practice: an ordinary ship set gives at most 25 W' },
};
