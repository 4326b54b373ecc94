import { type ChannelPlan, findChannel, neverAssignable } from '../../channel/index.ts';
import { isWorkingChannelAllowed } from '../../channel/internal.ts';
import type { Call } from '../call.ts';
import { isNumbered } from '../element/channel-symbols.ts';
import { isAshore } from '../element/station-identity.ts';

/** Whether the two stations of a call may talk on a channel, according to a plan. */
export function isFitChannel(
  channel: string | null,
  call: Call<'individual-call'>,
  own: string,
  plan: ChannelPlan | undefined,
): boolean {
  if (channel === null) return true;
  // A coast station knows its own channels: ITU-R M.541-11 Annex 3, from memory. What carries no speech has none of them.
  const ashore = isAshore(own) || isAshore(call.from);
  const ordinary = call.category === 'routine' && !ashore;
  if (!isNumbered(channel)) return false;
  if (neverAssignable(channel, ordinary ? 'intership-non-commercial' : 'safety') !== null) return false;
  if (plan === undefined || ashore) return true;
  const found = findChannel(plan, channel);
  if (!found.ok) return false;
  const safety = call.category !== 'routine' && isWorkingChannelAllowed(found.value, 'safety');
  return safety || isWorkingChannelAllowed(found.value, 'intership-non-commercial');
}
