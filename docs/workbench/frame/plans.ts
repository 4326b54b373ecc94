import type { ChannelPlan } from 'seahail/channel';
import { canadaPlan } from 'seahail/channel/canada';
import { internationalPlan } from 'seahail/channel/international';
import { netherlandsInlandPlan, netherlandsSeaPlan } from 'seahail/channel/netherlands';
import { swedenPlan } from 'seahail/channel/sweden';
import { unitedKingdomPlan } from 'seahail/channel/united-kingdom';
import { unitedStatesPlan } from 'seahail/channel/united-states';

/** The plans by the words the pages keep in their addresses. */
const plans: ReadonlyMap<string, ChannelPlan> = new Map([
  ['international', internationalPlan],
  ['us', unitedStatesPlan],
  ['canada', canadaPlan],
  ['uk', unitedKingdomPlan],
  ['nl', netherlandsSeaPlan],
  ['nl-inland', netherlandsInlandPlan],
  ['se', swedenPlan],
]);

export const allPlans: readonly ChannelPlan[] = [...plans.values()];

/** The plan of a word; the international one for every other text. */
export function planOf(word: string | undefined): ChannelPlan {
  return plans.get(word ?? '') ?? internationalPlan;
}
