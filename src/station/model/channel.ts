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
  return neverAssignable(channel, isUrgent(call) ? 'safety' : 'intership-non-commercial');
}

/**
 * The voice channel that a call leads to, ITU-R M.1084 digits; `null` when it leads to none, or to one that no such
 * talk may use in any waters.
 *
 * Distress traffic is on 16, and urgency and safety traffic too unless the call names another channel.
 */
export function voiceChannelOf(call: Call): string | null {
  if (call.kind === 'distress-relay' || call.kind === 'distress-relay-acknowledgement') return WATCH_CHANNEL;
  if (!('channel' in call) || call.kind === 'unable-to-comply') return null;
  if (call.channel !== null) {
    const channel = workingChannel(call.channel);
    return channel === null || barOf(call, channel) !== null ? null : channel;
  }
  return isUrgent(call) ? WATCH_CHANNEL : null;
}

/** Whether a call is of a category before routine. */
function isUrgent(call: Call): boolean {
  return 'category' in call && call.category !== null && URGENT.includes(call.category);
}

const URGENT: readonly string[] = ['safety', 'urgency', 'distress'];
