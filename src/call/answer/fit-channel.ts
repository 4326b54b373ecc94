import { type ChannelPlan, findChannel, mayPropose } from '../../channel/index.ts';
import type { IndividualCall } from '../call.ts';
import { isAshore } from '../element/station-identity.ts';

/** Whether the two stations of a call may talk on a channel, as far as a plan tells. */
export function isFitChannel(
  channel: string | null,
  call: IndividualCall,
  own: string,
  plan: ChannelPlan | undefined,
): boolean {
  // Whatever the plan, nobody talks on 70: Radio Regulations Appendix 18 note j).
  if (channel === '70') return false;
  // A coast station knows its own channels: ITU-R M.541 Annex 3, from memory.
  if (channel === null || plan === undefined || isAshore(own) || isAshore(call.from)) return true;
  const found = findChannel(plan, channel);
  if (!found.ok) return false;
  const safety = call.category !== 'routine' && mayPropose(found.value, 'safety');
  return safety || mayPropose(found.value, 'intership-non-commercial');
}
