import type { Notice } from '../result/index.ts';
import type { CodeOf } from '../result/internal.ts';
import type { Channel } from './channel.ts';
import { parseDesignator } from './designator.ts';
import { GUARDS_16, NOT_SPEECH } from './not-speech.ts';
import { planText } from './plan-text.ts';
import { type WorkingPurpose, wantPurpose } from './purpose.ts';
import { workingIssue, type workingTexts } from './texts.ts';

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
  const { m1084, text } = read.value;
  const bar = BARS.find(({ digits }) => digits.split(' ').some((each) => each === m1084));
  if (bar === undefined || (bar.code === 'channel-distress-and-calling' && purpose === 'safety')) return null;
  const { code, carries, reason = carries && NOT_SPEECH[carries], clause } = bar;
  const params = { channel: text, ...(reason !== undefined && { reason: planText(reason) }) };
  return workingIssue(code, params as never, { received: text, clause });
}

interface Bar {
  /** Digits of ITU-R M.1084, parted by blanks. */
  readonly digits: string;
  readonly code: CodeOf<typeof workingTexts>;
  readonly reason?: string;
  /** Service of a channel that carries data only, which is the reason then. */
  readonly carries?: Channel['service'];
  readonly clause: string;
}

/**
 * RR Appendix 18 in the arrangement of WRC-15, which WRC-19 and WRC-23 kept.
 */
const BARS: readonly Bar[] = [
  { digits: '70', code: 'channel-calls-only', clause: 'RR Appendix 18 note j)' },
  { digits: '16', code: 'channel-distress-and-calling', clause: 'RR Appendix 18' },
  {
    digits: '75 76',
    code: 'channel-not-to-be-named',
    reason: GUARDS_16,
    clause: 'RR Appendix 18 note n)',
  },
  {
    digits: '2087 2088',
    code: 'channel-data-only',
    carries: 'ais',
    clause: 'RR Appendix 18, AIS 1 and AIS 2',
  },
  {
    digits: '2027 2028',
    code: 'channel-data-only',
    carries: 'asm',
    clause: 'WRC-15 Final Acts, RR Appendix 18 notes z) and zz)',
  },
  {
    digits: '1024 1025 1026 1084 1085 1086 2024 2025 2026 2084 2085 2086',
    code: 'channel-data-only',
    carries: 'vdes',
    clause: 'RR Appendix 18 note w)',
  },
  {
    digits: '2006',
    code: 'channel-data-only',
    carries: 'data',
    clause: 'RR Appendix 18 note r)',
  },
];
