import type { Channel, ChannelUse, Fitness } from './channel.ts';

/**
 * The purpose of a working channel.
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

const PURPOSES: readonly string[] = [
  'intership-non-commercial',
  'intership-commercial',
  'intership-navigation',
  'ship-to-coast',
  'safety',
] satisfies readonly WorkingPurpose[];

/** Throws on a purpose that is none of them. */
export function wantPurpose(purpose: WorkingPurpose): void {
  if (PURPOSES.includes(purpose)) return;
  throw new RangeError(`purpose: expected one of ${PURPOSES.join(', ')}, got '${purpose}'`);
}

/** How the plan ranks a channel for a purpose, by its uses alone. */
export function fitnessFor(channel: Channel, purpose: WorkingPurpose): Fitness {
  if (purpose === 'intership-non-commercial') return channel.intership.nonCommercial;
  if (purpose === 'intership-commercial') return channel.intership.commercial;
  wantPurpose(purpose);
  const { first, also, unless, keptFor } = USES[purpose];
  const serves = (uses: readonly ChannelUse[]) => channel.uses.some((use) => uses.includes(use));
  if (serves(unless) || !(serves(first) || serves(also))) return 'prohibited';
  const { caution, region, users, m1084 } = channel;
  // The purpose does not say where, or on what kind of vessel.
  const steppedBack = caution !== null || region !== null || users === 'commercial';
  // deviation: D-channel-10
  if (steppedBack && !keptFor.some((digits) => digits === m1084)) return 'restricted';
  return serves(first) ? 'preferred' : 'allowed';
}

/**
 * Uses that make a channel right for a purpose, uses that merely admit it, and uses that keep it away.
 *
 * The cautions on 06 and 13 keep ordinary talk off what RR Appendix 18 notes f) and k) have them for, in all waters:
 * search and rescue, and the safety of navigation. They are no reason to step back when that is the purpose.
 */
const USES: {
  readonly [purpose in Exclude<WorkingPurpose, 'intership-non-commercial' | 'intership-commercial'>]: {
    readonly first: readonly ChannelUse[];
    readonly also: readonly ChannelUse[];
    readonly unless: readonly ChannelUse[];
    /** Digits of channels whose caution is this very purpose. */
    readonly keptFor: readonly string[];
  };
} = {
  'intership-navigation': {
    first: ['navigation-safety'],
    also: ['safety'],
    unless: ['coast-guard-liaison'],
    keptFor: ['13'],
  },
  'ship-to-coast': {
    first: ['ship-to-coast', 'public-correspondence', 'marina', 'coast-guard-liaison'],
    also: ['port-operations', 'ship-movement', 'vessel-traffic', 'nautical-information'],
    unless: ['navigation-safety'],
    keptFor: [],
  },
  safety: {
    first: ['distress-safety-calling'],
    also: ['safety', 'search-and-rescue', 'navigation-safety', 'coast-guard-liaison', 'pollution-control'],
    unless: [],
    keptFor: ['06', '13'],
  },
};
