import type { Issue, Notice } from '../result/index.ts';
import type { Channel, ChannelUse, Fitness } from './channel.ts';
import { formatMegahertz } from './frequency.ts';

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

/**
 * What speaks against naming a channel as the working channel of a call, and what to mind if it is named.
 *
 * A description of the tables, not a permission: national rules, the licence and the coast station decide.
 *
 * @param channel - a plan's channel
 * @param purpose - what it is wanted for
 * @returns notices with their clauses, those that rule the channel out first; empty when nothing is to be said
 *
 * @example
 * ```ts
 * import { checkWorkingChannel, findChannel } from 'seahail/channel';
 * import { internationalPlan } from 'seahail/channel/international';
 * import { valueOf } from 'seahail/result';
 *
 * const channel = valueOf(findChannel(internationalPlan, '70'));
 * console.log(checkWorkingChannel(channel, 'intership-non-commercial')[0]?.code); // channel-calls-only
 * ```
 */
export function checkWorkingChannel(channel: Channel, purpose: WorkingPurpose): readonly Notice[] {
  return [...barsTo(channel, purpose), ...cautionsOn(channel, purpose)];
}

/**
 * Whether the tables leave a channel open for a purpose: true when {@link checkWorkingChannel} has nothing
 * that rules it out, cautions aside.
 *
 * @param channel - a plan's channel
 * @param purpose - what it is wanted for
 *
 * @example
 * ```ts
 * import { findChannel, mayPropose } from 'seahail/channel';
 * import { internationalPlan } from 'seahail/channel/international';
 * import { valueOf } from 'seahail/result';
 *
 * console.log(mayPropose(valueOf(findChannel(internationalPlan, '72')), 'intership-non-commercial')); // true
 * console.log(mayPropose(valueOf(findChannel(internationalPlan, '22')), 'intership-non-commercial')); // false
 * ```
 */
export function mayPropose(channel: Channel, purpose: WorkingPurpose): boolean {
  return barsTo(channel, purpose).length === 0;
}

/** How the plan ranks a channel for a purpose, by its uses alone. */
export function fitnessFor(channel: Channel, purpose: WorkingPurpose): Fitness {
  if (purpose === 'intership-non-commercial') return channel.intership.nonCommercial;
  if (purpose === 'intership-commercial') return channel.intership.commercial;
  const { first, also } = USES[purpose];
  if (channel.uses.some((use) => first.includes(use)))
    return channel.caution === null || purpose !== 'ship-to-coast' ? 'preferred' : 'restricted';
  return channel.uses.some((use) => also.includes(use)) ? 'allowed' : 'no';
}

/** What rules a channel out, worst first. */
export function barsTo(channel: Channel, purpose: WorkingPurpose): Issue[] {
  const { designator, plan } = channel;
  if (channel.service === 'dsc') {
    return [
      notice(
        channel,
        'channel-calls-only',
        `channel ${designator} carries digital selective calls only, never speech`,
        'RR Appendix 18 note j)',
      ),
    ];
  }
  if (channel.receiveOnly) {
    return [
      notice(
        channel,
        'channel-receive-only',
        `channel ${designator} is receive only: ${channel.notNamedBecause}`,
        clauseOf(channel),
      ),
    ];
  }
  if (channel.service !== 'voice' && channel.service !== 'distress') {
    return [
      notice(
        channel,
        'channel-data-only',
        `channel ${designator} is not for speech: ${channel.notNamedBecause}`,
        clauseOf(channel),
      ),
    ];
  }
  if (!channel.mayBeNamed) {
    const code = channel.users === 'authority' ? 'channel-reserved' : 'channel-not-to-be-named';
    return [
      notice(
        channel,
        code,
        `channel ${designator} is not to be named in a call: ${channel.notNamedBecause}`,
        clauseOf(channel),
      ),
    ];
  }
  if (channel.service === 'distress') {
    if (purpose === 'safety') return [];
    return [
      notice(
        channel,
        'channel-distress-and-calling',
        `channel ${designator} is for distress, safety and calling: a working channel is another one`,
        clauseOf(channel),
      ),
    ];
  }
  const bars: Issue[] = [];
  if (channel.mode === 'duplex' && purpose.startsWith('intership')) bars.push(twoFrequency(channel));
  if (channel.coastKHz === null && purpose === 'ship-to-coast') {
    bars.push(
      notice(
        channel,
        'channel-ships-only',
        `channel ${designator} is between ships only: no coast station works on it in the ${plan} plan`,
        clauseOf(channel),
      ),
    );
  }
  if (bars.length === 0 && fitnessFor(channel, purpose) === 'no') bars.push(otherUse(channel, purpose));
  return bars;
}

/** Uses that make a channel right for a purpose, and uses that merely admit it. */
const USES: {
  readonly [purpose in Exclude<WorkingPurpose, 'intership-non-commercial' | 'intership-commercial'>]: {
    readonly first: readonly ChannelUse[];
    readonly also: readonly ChannelUse[];
  };
} = {
  'intership-navigation': { first: ['navigation-safety'], also: ['safety'] },
  'ship-to-coast': {
    first: ['ship-to-coast', 'public-correspondence', 'marina', 'coast-guard-liaison'],
    also: ['port-operations', 'ship-movement', 'vessel-traffic'],
  },
  safety: {
    first: ['distress-safety-calling'],
    also: ['safety', 'search-and-rescue', 'navigation-safety', 'coast-guard-liaison', 'pollution-control'],
  },
};

function twoFrequency(channel: Channel): Issue {
  const [ship, coast] = [formatMegahertz(channel.shipKHz ?? 0), formatMegahertz(channel.coastKHz ?? 0)];
  return notice(
    channel,
    'channel-two-frequency',
    `channel ${channel.designator} has two frequencies: the other ship listens on the coast side, ${coast} MHz, and does not hear a ship on ${ship} MHz`,
    'RR Appendix 18',
  );
}

function otherUse(channel: Channel, purpose: WorkingPurpose): Issue {
  const intership = purpose === 'intership-non-commercial' || purpose === 'intership-commercial';
  const reason = intership && channel.caution !== null ? channel.caution : channel.note;
  const [code, wanted] = intership
    ? ([
        'channel-not-intership',
        `${purpose === 'intership-commercial' ? 'commercial' : 'non-commercial'} talk between ships`,
      ] as const)
    : (['channel-other-use', WANTED[purpose]] as const);
  return notice(
    channel,
    code,
    `channel ${channel.designator} is not for ${wanted} in the ${channel.plan} plan: ${reason}`,
    clauseOf(channel),
  );
}

const WANTED: { readonly [purpose in WorkingPurpose]?: string } = {
  'intership-navigation': 'the safety of navigation between ships',
  'ship-to-coast': 'talk between ship and coast',
  safety: 'distress, urgency and safety traffic',
};

/** What to mind on a channel that is not ruled out. */
function cautionsOn(channel: Channel, purpose: WorkingPurpose): Issue[] {
  if (!mayPropose(channel, purpose)) return [];
  const { designator } = channel;
  const cautions: Issue[] = [];
  if (channel.caution !== null) {
    const code = fitnessFor(channel, purpose) === 'restricted' ? 'channel-restricted' : 'channel-caution';
    cautions.push(
      notice(
        channel,
        code,
        `channel ${designator} in the ${channel.plan} plan: ${channel.caution}`,
        clauseOf(channel),
      ),
    );
  }
  if (channel.region !== null) {
    cautions.push(
      notice(
        channel,
        'channel-regional',
        `channel ${designator} has this use in part of the waters: ${channel.region}`,
        clauseOf(channel),
      ),
    );
  }
  if (channel.powerLimitW !== null && channel.powerLimitW < 25) {
    const rule = channel.powerRule ?? `${channel.powerLimitW} W`;
    cautions.push(
      notice(
        channel,
        'channel-low-power',
        `channel ${designator} has a power limit: ${rule}`,
        channel.evidence.power.source,
      ),
    );
  }
  if (purpose === 'ship-to-coast') {
    cautions.push(
      notice(
        channel,
        'channel-coast-names-it',
        'a coast station normally names the working channel itself: a proposal is optional',
        'ITU-R M.541, from memory',
      ),
    );
  }
  return cautions;
}

function clauseOf(channel: Channel): string {
  const { basis, source } = channel.evidence.use;
  return basis === 'memory' ? `${source}, from memory` : source;
}

function notice(channel: Channel, code: string, message: string, clause: string): Issue {
  return { code, message, at: [], received: channel.designator, clause };
}
