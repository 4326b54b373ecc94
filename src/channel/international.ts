/**
 * The channels of Radio Regulations Appendix 18, for waters whose national plan is not at hand.
 *
 * @packageDocumentation
 */
import { APPENDIX_18_EVIDENCE, APPENDIX_18_ROWS } from './appendix-18-rows.ts';
import type { ChannelPlan } from './channel.ts';
import { expandPlan } from './expand-plan.ts';

/**
 * Radio Regulations Appendix 18, arrangement of WRC-15 as kept by WRC-19 and WRC-23.
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
 * console.log(channel.note); // intership only
 * ```
 */
export const internationalPlan: ChannelPlan = /* @__PURE__ */ expandPlan({
  name: 'International',
  edition: 'Radio Regulations Appendix 18, edition 2024 (WRC-15 arrangement as kept by WRC-19 and WRC-23)',
  sources: [
    'RR Appendix 18, table, as printed in 47 CFR 80.871(d) and in Dutch and Norwegian rules',
    'WRC-15 Final Acts, Appendix 18 notes x) to zz)',
    'RR Appendix 18 notes e) to w), as restated in a course text on the edition of 2024',
  ],
  cautions: [
    'uses of the two-frequency channels and of single legs are unverified',
    'national rules come before this table in their waters',
  ],
  callingChannels: ['16'],
  rules: ['12.5 kHz channels must not disturb 06, 13, 15, 16, 17, 70, AIS 1 and AIS 2 (note e)'],
  evidence: APPENDIX_18_EVIDENCE,
  rows: APPENDIX_18_ROWS,
});
