import type { Call } from '../../call/index.ts';
import { neverAssignable, parseDesignator } from '../../channel/index.ts';
import type { Notice } from '../../result/index.ts';

/** The channel on which ships keep watch by voice: distress, safety and calling (Radio Regulations Appendix 18). */
export const WATCH_CHANNEL = '16';

/** The digits by which a call names a channel, from any of its names; `null` for one that no call can name. */
export function workingChannel(name: unknown): string | null {
  const read = parseDesignator(name);
  return read.ok ? read.value.m1084 : null;
}

/** What speaks against talking on a channel in any waters, after a call of this urgency. */
export function barOf(call: Call, channel: string): Notice | null {
  const urgent = 'category' in call && call.category !== null && URGENT.includes(call.category);
  return neverAssignable(channel, urgent ? 'safety' : 'intership-non-commercial');
}

const URGENT: readonly string[] = ['safety', 'urgency', 'distress'];
