import type { Issue, Notice } from '../result/index.ts';
import { givenInWords, type ParamsOf } from '../result/internal.ts';
import type { Channel, Evidence } from './channel.ts';
import { formatMegahertz } from './frequency.ts';
import { neverAssignable } from './never-assignable.ts';
import { planText } from './plan-text.ts';
import { fitnessFor, type WorkingPurpose } from './purpose.ts';
import { workingIssue, type workingTexts } from './texts.ts';

/**
 * What speaks against naming a channel as the working channel of a call, and what to mind if it is named.
 *
 * A description of the tables, not a permission: national rules, the licence and the coast station decide.
 *
 * @param channel - a plan's channel
 * @param purpose - what it is to be used for
 * @returns one notice of grade `'error'` when the channel is ruled out; otherwise what to mind, empty when there is
 * nothing
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
  const { designator, service, plan, selectiveCallRule: rule } = channel;
  const common = { channel: designator };
  const why = { ...common, reason: planText(channel.notAssignableReason ?? channel.note) };
  const by = (clause = clauseOf(channel.evidence.use)) => ({ received: designator, clause });
  if (service === 'dsc') return workingIssue('channel-calls-only', common, by('RR Appendix 18 note j)'));
  if (channel.receiveOnly) return workingIssue('channel-receive-only', why, by());
  if (service !== 'voice' && service !== 'distress') return workingIssue('channel-data-only', why, by());
  if (!channel.assignable) {
    const code = channel.users === 'authority' ? 'channel-reserved' : 'channel-not-to-be-named';
    return workingIssue(code, why, by());
  }
  // A plan of one's own may say nothing of it.
  const never =
    channel.m1084 === null || service === 'distress' ? null : neverAssignable(channel.m1084, purpose);
  if (never !== null) return never;
  if (service === 'distress') {
    return purpose === 'safety' ? undefined : workingIssue('channel-distress-and-calling', common, by());
  }
  if (rule !== null && purpose !== 'safety') {
    const params = { ...common, rule: planText(rule) };
    return workingIssue('channel-selective-calls-restricted', params, by());
  }
  if (channel.mode === 'duplex' && purpose.startsWith('intership')) {
    const [ship, coast] = [formatMegahertz(channel.shipKHz ?? 0), formatMegahertz(channel.coastKHz ?? 0)];
    return workingIssue('channel-two-frequency', { ...common, ship, coast }, by('RR Appendix 18'));
  }
  if (channel.coastKHz === null && purpose === 'ship-to-coast') {
    return workingIssue('channel-ships-only', { ...common, plan }, by());
  }
  if (fitnessFor(channel, purpose) !== 'prohibited') return undefined;
  const ordinary = purpose === 'intership-non-commercial' || purpose === 'intership-commercial';
  const code = ordinary ? 'channel-not-intership' : 'channel-other-use';
  return workingIssue(code, { ...common, purpose, ...useOf(channel) }, by());
}

/** The plan of a channel, what the channel is for there, and the caution on it. */
export function useOf({ plan, note, caution }: Channel): ParamsOf<typeof workingTexts, 'channel-use'> {
  return { plan, note: planText(note), ...(caution !== null && { caution: planText(caution) }) };
}

/** What to mind on a channel that is not ruled out. */
function cautionsOn(channel: Channel, purpose: WorkingPurpose): Issue[] {
  const { designator, plan, region, users, powerLimitW, powerRule, selectiveCallRule: rule } = channel;
  const common = { channel: designator };
  const by = (clause = clauseOf(channel.evidence.use)) => ({ received: designator, clause });
  const cautions: Issue[] = [];
  const restricted = fitnessFor(channel, purpose) === 'restricted';
  if (rule !== null) {
    cautions.push(workingIssue('channel-safety-calls-only', { ...common, plan, rule: planText(rule) }, by()));
  }
  const caution = channel.caution ?? (restricted && users === 'commercial' ? 'for commercial vessels' : null);
  if (caution !== null) {
    const code = restricted ? 'channel-restricted' : 'channel-caution';
    cautions.push(workingIssue(code, { ...common, plan, caution: planText(caution) }, by()));
  }
  if (region !== null) {
    cautions.push(workingIssue('channel-regional', { ...common, region: planText(region) }, by()));
  }
  if (powerLimitW !== null && powerLimitW < 25) {
    const limit = powerRule === null ? `${powerLimitW} W` : planText(powerRule);
    const clause = clauseOf(channel.evidence.power);
    cautions.push(workingIssue('channel-low-power', { ...common, limit }, by(clause)));
  }
  if (purpose === 'ship-to-coast') {
    cautions.push(workingIssue('channel-coast-names-it', common, by('ITU-R M.541-11, unverified')));
  }
  return cautions;
}

function clauseOf({ basis, source }: Evidence): string {
  return basis === 'memory' ? `${source}, unverified` : source;
}
