/**
 * Channels in the waters of Sweden: Appendix 18 and five more.
 *
 * @packageDocumentation
 */
import { APPENDIX_18_EVIDENCE, APPENDIX_18_ROWS } from './appendix-18-rows.ts';
import type { ChannelPlan, Evidence } from './channel.ts';
import { expandPlan } from './expand-plan.ts';

const PTS: Evidence = {
  basis: 'source',
  source: 'PTS (Swedish Post and Telecom Authority), licence terms for VHF on board ships',
};
const FIVE = { by: 'ships', evidence: { frequency: PTS, use: PTS } } as const;
const NO_DIGITS = 'it has no digits for a call, and only a set with this channel can use it';

/**
 * Sweden: the international plan, with the five channels that the Swedish licence adds for Swedish waters and
 * for ships with a Swedish licence. Frequencies are kHz.
 *
 * The terms read refer to the act of 2003, which was replaced in 2022: check the licence. That coast stations
 * do not use the five channels is an interpretation.
 *
 * @example
 * ```ts
 * import { findChannel } from 'seahail/channel';
 * import { swedenPlan } from 'seahail/channel/sweden';
 * import { valueOf } from 'seahail/result';
 *
 * const { shipKHz, note } = valueOf(findChannel(swedenPlan, 'L2'));
 * console.log(shipKHz, note); // 155525 talk between leisure craft; fitted only together with L1
 * ```
 */
export const swedenPlan: ChannelPlan = /* @__PURE__ */ expandPlan({
  name: 'Sweden',
  edition:
    'Appendix 18 (WRC-15 arrangement) with five channels of the PTS licence terms under the act 2003:389',
  sources: [PTS.source, 'RR Appendix 18'],
  cautions: [
    'the licence terms read refer to the act of 2003, replaced in 2022; newer terms were not seen',
    'four-digit names that Swedish coast channels got on 1 November 2022 were not seen',
    'a channel L3 may exist: it is not in the terms read, and left out',
  ],
  callingChannels: ['16'],
  rules: [
    '155.000 to 155.975 MHz may otherwise be used on board only with special consent (PTS licence terms)',
  ],
  evidence: APPENDIX_18_EVIDENCE,
  rows: [
    ...APPENDIX_18_ROWS,
    {
      ...FIVE,
      channels: 'L1@155500',
      uses: ['intership', 'non-commercial'],
      note: 'talk between leisure craft; fitted only together with L2',
      region: 'Swedish waters, and ships with a Swedish licence',
      users: 'non-commercial',
      intership: ['restricted', 'prohibited'],
      never: NO_DIGITS,
    },
    {
      ...FIVE,
      channels: 'L2@155525',
      uses: ['intership', 'non-commercial'],
      note: 'talk between leisure craft; fitted only together with L1',
      region: 'Swedish waters, and ships with a Swedish licence',
      users: 'non-commercial',
      intership: ['restricted', 'prohibited'],
      never: NO_DIGITS,
    },
    {
      ...FIVE,
      channels: 'F1@155625,F2@155775,F3@155825',
      uses: ['intership', 'fishing'],
      note: 'talk between fishing vessels',
      region: 'Swedish waters, and ships with a Swedish licence',
      users: 'commercial',
      intership: ['prohibited', 'restricted'],
      never: 'it is for fishing vessels only, and it has no digits for a call',
    },
  ],
});
