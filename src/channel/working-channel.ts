import type { Issue, Notice } from '../result/index.ts';
import { givenInWords } from '../result/internal.ts';
import type { Channel, Evidence } from './channel.ts';
import { formatMegahertz } from './frequency.ts';
import { fitnessFor, PURPOSE_WORDS, type WorkingPurpose } from './purpose.ts';

/**
 * What speaks against naming a channel as the working channel of a call, and what to mind if it is named.
 *
 * A description of the tables, not a permission: national rules, the licence and the coast station decide.
 *
 * @param channel - a plan's channel
 * @param purpose - what it is to be used for
 * @returns one notice when the channel is ruled out; otherwise what to mind, empty when there is nothing
 * @throws TypeError when it is not a channel
 * @throws RangeError when the purpose is none of them
 *
 * @see {@link workingChannels}
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
  if (channel?.kind !== 'channel')
    throw new TypeError(`checkWorkingChannel: expected a channel, got ${givenInWords(channel)}`);
  const bar = barTo(channel, purpose);
  return bar ? [bar] : cautionsOn(channel, purpose);
}

/**
 * Whether the tables leave a channel open for a purpose: true when {@link checkWorkingChannel} has nothing
 * that rules it out, cautions aside.
 *
 * @param channel - a plan's channel
 * @param purpose - what it is to be used for
 */
export function isWorkingChannelAllowed(channel: Channel, purpose: WorkingPurpose): boolean {
  return barTo(channel, purpose) === undefined;
}

/** What rules a channel out, or undefined when nothing does. */
export function barTo(channel: Channel, purpose: WorkingPurpose): Issue | undefined {
  const { service, plan, notAssignableReason } = channel;
  if (service === 'dsc') {
    const text = 'carries digital selective calls only, never speech';
    return notice(channel, 'channel-calls-only', text, 'RR Appendix 18 note j)');
  }
  if (channel.receiveOnly)
    return notice(channel, 'channel-receive-only', `is receive only: ${notAssignableReason}`);
  if (service !== 'voice' && service !== 'distress') {
    return notice(channel, 'channel-data-only', `is not for speech: ${notAssignableReason}`);
  }
  if (!channel.assignable) {
    const code = channel.users === 'authority' ? 'channel-reserved' : 'channel-not-to-be-named';
    return notice(channel, code, `cannot be proposed in a call: ${notAssignableReason}`);
  }
  if (service === 'distress') {
    if (purpose === 'safety') return undefined;
    const text = 'is for distress, safety and calling: working talk goes to another channel';
    return notice(channel, 'channel-distress-and-calling', text);
  }
  if (channel.selectiveCallRule !== null && purpose !== 'safety') {
    return notice(channel, NO_CALLS, `cannot be proposed in a call: ${channel.selectiveCallRule}`);
  }
  if (channel.mode === 'duplex' && purpose.startsWith('intership')) return twoFrequency(channel);
  if (channel.coastKHz === null && purpose === 'ship-to-coast') {
    const text = `is between ships only: no coast station works on it in the ${plan} plan`;
    return notice(channel, 'channel-ships-only', text);
  }
  return fitnessFor(channel, purpose) === 'prohibited' ? otherUse(channel, purpose) : undefined;
}

const NO_CALLS = 'channel-selective-calls-restricted';

function twoFrequency(channel: Channel): Issue {
  const [ship, coast] = [formatMegahertz(channel.shipKHz ?? 0), formatMegahertz(channel.coastKHz ?? 0)];
  return notice(
    channel,
    'channel-two-frequency',
    `has two frequencies: the other ship listens on the coast side, ${coast} MHz, and does not hear a ship on ${ship} MHz`,
    'RR Appendix 18',
  );
}

function otherUse(channel: Channel, purpose: WorkingPurpose): Issue {
  const { plan, note, caution } = channel;
  const ordinary = purpose === 'intership-non-commercial' || purpose === 'intership-commercial';
  const code = ordinary ? 'channel-not-intership' : 'channel-other-use';
  const instead = caution === null ? note : `${note} (${caution})`;
  return notice(channel, code, `is not for ${PURPOSE_WORDS[purpose]} in the ${plan} plan: ${instead}`);
}

/** What to mind on a channel that is not ruled out. */
function cautionsOn(channel: Channel, purpose: WorkingPurpose): Issue[] {
  const { plan, caution, region, users, powerLimitW, powerRule } = channel;
  const cautions: Issue[] = [];
  const restricted = fitnessFor(channel, purpose) === 'restricted';
  if (channel.selectiveCallRule !== null) {
    cautions.push(notice(channel, NO_CALLS, `in the ${plan} plan: ${channel.selectiveCallRule}`));
  }
  if (caution !== null) {
    const code = restricted ? 'channel-restricted' : 'channel-caution';
    cautions.push(notice(channel, code, `in the ${plan} plan: ${caution}`));
  } else if (restricted && users === 'commercial') {
    cautions.push(notice(channel, 'channel-restricted', `in the ${plan} plan: for commercial vessels`));
  }
  if (region !== null) {
    cautions.push(notice(channel, 'channel-regional', `has this use in part of the waters: ${region}`));
  }
  if (powerLimitW !== null && powerLimitW < 25) {
    const text = `has a power limit: ${powerRule ?? `${powerLimitW} W`}`;
    cautions.push(notice(channel, 'channel-low-power', text, clauseOf(channel.evidence.power)));
  }
  if (purpose === 'ship-to-coast') {
    const text = 'need not be proposed: a coast station normally chooses the working channel';
    cautions.push(notice(channel, 'channel-coast-names-it', text, 'ITU-R M.541-11, unverified'));
  }
  return cautions;
}

function notice(
  channel: Channel,
  code: string,
  text: string,
  clause = clauseOf(channel.evidence.use),
): Issue {
  const { designator } = channel;
  return { code, message: `Channel ${designator} ${text}`, at: [], received: designator, clause };
}

function clauseOf({ basis, source }: Evidence): string {
  return basis === 'memory' ? `${source}, unverified` : source;
}
