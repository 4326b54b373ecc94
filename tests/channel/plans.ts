import { canadaPlan } from '../../src/channel/canada.ts';
import type { ChannelPlan } from '../../src/channel/index.ts';
import { internationalPlan } from '../../src/channel/international.ts';
import { netherlandsInlandPlan, netherlandsSeaPlan } from '../../src/channel/netherlands.ts';
import { swedenPlan } from '../../src/channel/sweden.ts';
import { unitedKingdomPlan } from '../../src/channel/united-kingdom.ts';
import { unitedStatesPlan } from '../../src/channel/united-states.ts';

export {
  canadaPlan,
  internationalPlan,
  netherlandsInlandPlan,
  netherlandsSeaPlan,
  swedenPlan,
  unitedKingdomPlan,
  unitedStatesPlan,
};

export const plans: readonly ChannelPlan[] = [
  internationalPlan,
  unitedStatesPlan,
  canadaPlan,
  unitedKingdomPlan,
  netherlandsSeaPlan,
  netherlandsInlandPlan,
  swedenPlan,
];

/** Every plan but that of inland waters, where no selective calls are permitted. */
export const seaPlans: readonly ChannelPlan[] = plans.filter((plan) => plan !== netherlandsInlandPlan);

/** `'156.800'` of a published table in whole kHz. */
export function kHzOf(megahertz: string | null): number | null {
  return megahertz === null ? null : Number(megahertz.replace('.', ''));
}
