/**
 * The channels of Radio Regulations Appendix 18, for waters whose national plan is not at hand.
 *
 * @packageDocumentation
 */
import { APPENDIX_18_EVIDENCE, APPENDIX_18_ROWS } from './appendix-18-rows.ts';
import type { ChannelPlan } from './channel.ts';
import { expandPlan } from './expand-plan.ts';

/**
 * Radio Regulations Appendix 18, arrangement of WRC-15 as kept by WRC-19.
 *
 * National plans come first in their waters. Frequencies are kHz.
 *
 * @example
 * ```ts
 * import { findChannel } from 'seahail/channel';
 * import { internationalPlan } from 'seahail/channel/international';
 * import { valueOf } from 'seahail/result';
 *
 * const channel = valueOf(findChannel(internationalPlan, 'ch 72'));
 * console.log(channel.shipKHz); // 156625
 * console.log(channel.note); // talk between ships, its only use
 * ```
 */
export const internationalPlan: ChannelPlan = /* @__PURE__ */ expandPlan({
  name: 'International',
  edition: 'Radio Regulations Appendix 18, WRC-15 arrangement as kept by WRC-19',
  sources: [
    '47 CFR 80.871(d), 2015 edition',
    'WRC-15 Final Acts, Appendix 18 notes x) to zz)',
    'RR Appendix 18, from memory',
  ],
  cautions: [
    'uses are partly from memory of the WRC-15 and WRC-19 editions; changes of WRC-23 were not seen',
    'national rules come before this table in their waters',
  ],
  evidence: APPENDIX_18_EVIDENCE,
  rows: APPENDIX_18_ROWS,
});
