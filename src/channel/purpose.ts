import type { Channel, ChannelUse, Fitness } from './channel.ts';

/**
 * What a working channel is wanted for.
 *
 * - `'intership-non-commercial'`: two ships, ordinary talk, at least one of them a pleasure craft
 * - `'intership-commercial'`: two ships, ordinary talk in the course of business
 * - `'intership-navigation'`: two ships, about passing each other safely
 * - `'ship-to-coast'`: a ship and a coast station, port or marina
 * - `'safety'`: distress, urgency and safety traffic
 */
export type WorkingPurpose =
  | 'intership-non-commercial'
  | 'intership-commercial'
  | 'intership-navigation'
  | 'ship-to-coast'
  | 'safety';

/** The purposes in words, for messages. */
export const PURPOSE_WORDS: { readonly [purpose in WorkingPurpose]: string } = {
  'intership-non-commercial': 'non-commercial talk between ships',
  'intership-commercial': 'commercial talk between ships',
  'intership-navigation': 'the safety of navigation between ships',
  'ship-to-coast': 'talk between ship and coast',
  safety: 'distress, urgency and safety traffic',
};

/** Throws on a purpose that is none of them. */
export function wantPurpose(purpose: WorkingPurpose): void {
  if (Object.hasOwn(PURPOSE_WORDS, purpose)) return;
  throw new RangeError(
    `purpose: one of ${Object.keys(PURPOSE_WORDS).join(', ')} is needed, not '${purpose}'`,
  );
}

/** How the plan ranks a channel for a purpose, by its uses alone. */
export function fitnessFor(channel: Channel, purpose: WorkingPurpose): Fitness {
  if (purpose === 'intership-non-commercial') return channel.intership.nonCommercial;
  if (purpose === 'intership-commercial') return channel.intership.commercial;
  wantPurpose(purpose);
  const { first, also, unless } = USES[purpose];
  const serves = (uses: readonly ChannelUse[]) => channel.uses.some((use) => uses.includes(use));
  if (serves(unless) || !(serves(first) || serves(also))) return 'no';
  // The caution on 13 is that it is for navigation only: no reason to step back when that is the purpose.
  const meantForIt = purpose === 'intership-navigation' && channel.uses[0] === 'navigation-safety';
  if (channel.caution !== null && !meantForIt) return 'restricted';
  return serves(first) ? 'preferred' : 'allowed';
}

/** Uses that make a channel right for a purpose, uses that merely admit it, and uses that keep it away. */
const USES: {
  readonly [purpose in Exclude<WorkingPurpose, 'intership-non-commercial' | 'intership-commercial'>]: {
    readonly first: readonly ChannelUse[];
    readonly also: readonly ChannelUse[];
    readonly unless: readonly ChannelUse[];
  };
} = {
  'intership-navigation': {
    first: ['navigation-safety'],
    also: ['safety'],
    unless: ['coast-guard-liaison'],
  },
  'ship-to-coast': {
    first: ['ship-to-coast', 'public-correspondence', 'marina', 'coast-guard-liaison'],
    also: ['port-operations', 'ship-movement', 'vessel-traffic'],
    unless: ['navigation-safety'],
  },
  safety: {
    first: ['distress-safety-calling'],
    also: ['safety', 'search-and-rescue', 'navigation-safety', 'coast-guard-liaison', 'pollution-control'],
    unless: [],
  },
};
