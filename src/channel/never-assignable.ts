import type { Issue, Notice } from '../result/index.ts';
import { parseDesignator } from './designator.ts';
import { type WorkingPurpose, wantPurpose } from './purpose.ts';

/**
 * What speaks against naming a channel in a call in any waters, plan or no plan: channel 70, the guards of
 * channel 16, channels that carry data only, and 16 itself for anything but safety traffic.
 *
 * No finding is no permission: whether the waters have the channel, and what for, is a question to their
 * plan, which {@link checkWorkingChannel} asks.
 *
 * @param designator - digits of ITU-R M.1084 as a call carries them, `'2087'`, or any name of the channel
 * @param purpose - what the channel is to be used for
 * @returns why no call may name it, or `null`; for text that names no channel, what is wrong with the text
 * @throws RangeError when the purpose is none of them
 *
 * Source: RR Appendix 18 notes j), n), r), w), z) and zz), as printed in the Final Acts of WRC-15 and restated since.
 *
 * @example
 * ```ts
 * import { neverAssignable } from 'seahail/channel';
 *
 * console.log(neverAssignable('2087', 'intership-non-commercial')?.code); // channel-data-only
 * console.log(neverAssignable('16', 'ship-to-coast')?.code, neverAssignable('16', 'safety')); // channel-distress-and-calling null
 * ```
 */
export function neverAssignable(designator: string, purpose: WorkingPurpose): Notice | null {
  wantPurpose(purpose);
  const read = parseDesignator(designator);
  if (!read.ok) return read.issues[0];
  const bar = BARS.find(({ digits }) => digits.split(' ').includes(read.value.m1084 ?? ''));
  if (bar === undefined || (bar.code === 'channel-distress-and-calling' && purpose === 'safety')) return null;
  const { text } = read.value;
  return {
    code: bar.code,
    message: `Channel ${text} ${bar.why}`,
    at: [],
    received: text,
    clause: bar.clause,
  };
}

interface Bar extends Required<Pick<Issue, 'code' | 'clause'>> {
  /** Digits of ITU-R M.1084, parted by blanks. */
  readonly digits: string;
  readonly why: string;
}

/**
 * RR Appendix 18 in the arrangement of WRC-15, which WRC-19 and WRC-23 kept.
 */
const BARS: readonly Bar[] = [
  {
    digits: '70',
    code: 'channel-calls-only',
    why: 'carries digital selective calls only, never speech',
    clause: 'RR Appendix 18 note j)',
  },
  {
    digits: '16',
    code: 'channel-distress-and-calling',
    why: 'is for distress, safety and calling: working talk goes to another channel',
    clause: 'RR Appendix 18',
  },
  {
    digits: '75 76',
    code: 'channel-not-to-be-named',
    why: 'cannot be proposed in a call: it guards channel 16 and carries navigation-related port traffic only',
    clause: 'RR Appendix 18 note n)',
  },
  {
    digits: '2087 2088',
    code: 'channel-data-only',
    why: 'is not for speech: it carries automatic identification data only',
    clause: 'RR Appendix 18, AIS 1 and AIS 2',
  },
  {
    digits: '2027 2028',
    code: 'channel-data-only',
    why: 'is not for speech: it carries application-specific data messages only',
    clause: 'WRC-15 Final Acts, RR Appendix 18 notes z) and zz)',
  },
  {
    digits: '1024 1025 1026 1084 1085 1086 2024 2025 2026 2084 2085 2086',
    code: 'channel-data-only',
    why: 'is not for speech: it carries data exchange only',
    clause: 'RR Appendix 18 note w)',
  },
  {
    digits: '2006',
    code: 'channel-data-only',
    why: 'is not for speech: it carries data of autonomous devices only',
    clause: 'RR Appendix 18 note r)',
  },
];
