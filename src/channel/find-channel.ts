import { type CodedText, failure, type Issue, type Result, success } from '../result/index.ts';
import { givenInWords, safely } from '../result/internal.ts';
import type { Channel, ChannelPlan } from './channel.ts';
import { type Designator, type NumberedDesignator, parseDesignator } from './designator.ts';
import { formatMegahertz, frequenciesInWords } from './frequency.ts';
import { frequencyOf } from './frequency-of.ts';
import { plainText } from './plain-text.ts';
import { planText } from './plan-text.ts';
import { issue, text } from './texts.ts';

/**
 * The channel of a plan that goes by a name.
 *
 * A name the plan does not have is never bent to one it has: 22 and 22A are different channels, and a
 * ship on the one does not hear the other. The issue says what the name would be instead, by its
 * number, and in the plans given as `elsewhere`.
 *
 * @param plan - the plan of the waters you are in, whatever the flag
 * @param designator - text as people write it, or a designator already read
 * @param options - `elsewhere`: other plans to look the channel up in when this one lacks it
 * @returns the channel, or what is wrong with the name
 *
 * @see {@link channelsAt}
 * @see {@link channelsFor}
 * @see {@link workingChannels}
 *
 * @example
 * ```ts
 * import { findChannel } from 'seahail/channel';
 * import { internationalPlan } from 'seahail/channel/international';
 * import { unitedStatesPlan } from 'seahail/channel/united-states';
 *
 * const found = findChannel(internationalPlan, '22A', { elsewhere: [unitedStatesPlan] });
 * console.log(found.ok || found.issues.map((issue) => issue.code).join(' ')); // channel-not-in-plan channel-elsewhere
 * ```
 */
export function findChannel(
  plan: ChannelPlan,
  designator: string | Designator,
  options?: { readonly elsewhere?: readonly ChannelPlan[] | undefined },
): Result<Channel> {
  // Most names come from a plan, and most plans were asked before.
  const exact = indexes.get(plan)?.get(designator as string);
  return exact ? success(exact) : findOtherwise(plan, designator, options);
}

function findOtherwise(
  plan: ChannelPlan,
  designator: string | Designator,
  options: { readonly elsewhere?: readonly ChannelPlan[] | undefined } | undefined,
): Result<Channel> {
  const typed = safely<unknown>(
    () => (Object.hasOwn(Object(designator), 'text') ? (designator as Designator).text : designator),
    () => undefined,
  );
  const known = safely(
    () => channelTyped(plan, typed as string),
    () => undefined,
  );
  if (known) return success(known);
  if (!isPlan(plan)) return failure(noPlan(plan));
  const read = parseDesignator(typed);
  if (!read.ok) return read;
  const channel = channelNamed(plan, read.value.text);
  if (channel) return success(channel);
  // What is no plan has no channels.
  const others = [options?.elsewhere].flat() as readonly ChannelPlan[];
  const elsewhere = others.flatMap((other) => elsewhereIssue(other, read.value.text));
  return failure(notInPlan(plan, read.value), ...elsewhere);
}

/** The channel that has this name or alias, typed in any case and with any blanks between words. */
function channelTyped(plan: ChannelPlan, text: string): Channel | undefined {
  return channelNamed(plan, text) ?? channelNamed(plan, plainText(text) ?? text);
}

/** The channel that has exactly this name or alias. */
export function channelNamed(plan: ChannelPlan, text: string): Channel | undefined {
  return (indexes.get(plan) ?? indexOf(plan)).get(text);
}

/** Channels by name and alias, for each plan that was asked and can change no more. */
const indexes: WeakMap<ChannelPlan, ReadonlyMap<string, Channel>> = /* @__PURE__ */ new WeakMap();

function indexOf(plan: ChannelPlan): ReadonlyMap<string, Channel> {
  const index = new Map<string, Channel>();
  if (!isPlan(plan)) return index;
  for (const channel of plan.channels) {
    for (const name of [channel.designator, ...channel.aliases]) {
      const read = parseDesignator(name);
      for (const key of [name, plainText(name) ?? name, read.ok ? read.value.text : name])
        if (!index.has(key)) index.set(key, channel);
    }
  }
  if (Object.isFrozen(plan) && Object.isFrozen(plan.channels)) indexes.set(plan, index);
  return index;
}

/**
 * Whether a value has what the functions of this room read of a plan: programs without types hand in what they like.
 * {@link parsePlan} looks at every field.
 */
export function isPlan(value: unknown): value is ChannelPlan {
  const hasChannels = (): boolean => {
    const { channels } = value as ChannelPlan;
    return Array.isArray(channels) && channels.every(isChannel);
  };
  return safely(hasChannels, () => false);
}

function isChannel({ designator, aliases, uses, evidence, intership }: Channel): boolean {
  return (
    typeof designator === 'string' &&
    aliases.every((alias) => typeof alias === 'string') &&
    Array.isArray(uses) &&
    typeof evidence.use === 'object' &&
    typeof intership.nonCommercial === 'string'
  );
}

/** What there is to say of a value that is not a plan. */
export function noPlan(value: unknown): Issue {
  const isNear = safely(
    () => Array.isArray((value as ChannelPlan).channels),
    () => false,
  );
  const code = isNear ? 'channel-plan-incomplete' : 'channel-no-plan';
  return issue(code, {}, { received: givenInWords(value), clause: 'common practice' });
}

/** The channels of a plan that share a number, whichever leg they use. */
export function channelsNumbered(plan: ChannelPlan, number: number): readonly Channel[] {
  const digits = String(number).padStart(2, '0');
  return plan.channels.filter((channel) => channel.m1084?.slice(-2) === digits);
}

function notInPlan(plan: ChannelPlan, designator: Designator): Issue {
  const isNumber = designator.kind === 'numbered-channel';
  const siblings = isNumber ? channelsNumbered(plan, designator.number) : [];
  const there = siblings.map((channel) =>
    text('channel-there', { channel: channel.designator, frequencies: frequenciesInWords(channel) }),
  );
  // Offered only from the pair to its leg: 22 can only mean 22A where no other 22 exists.
  // The other way round the two sides would listen on different frequencies.
  const suggestion =
    designator.m1084?.length === 2 ? siblings.find((channel) => !channel.receiveOnly)?.designator : undefined;
  return absent(plan, designator.text, {
    reading: isNumber ? byNumber(designator) : byName(designator.text),
    there: there.length > 0 ? there : undefined,
    suggestion,
  });
}

/** What there is to say of a channel that a plan does not have, by whatever name. */
export function absent(
  plan: ChannelPlan,
  channel: string,
  more: {
    readonly reading?: CodedText | undefined;
    readonly there?: readonly CodedText[] | undefined;
    readonly suggestion?: string | undefined;
  } = {},
): Issue {
  const { reading, there, suggestion } = more;
  return issue(
    'channel-not-in-plan',
    { channel, plan: plan.name, ...(reading && { reading }), ...(there && { there }) },
    { received: channel, clause: plan.edition, ...(suggestion !== undefined && { suggestion }) },
  );
}

/** What the number itself says, by arithmetic. */
function byNumber(designator: NumberedDesignator): CodedText | undefined {
  const frequencies = frequencyOf(designator);
  if (frequencies === null) return undefined;
  const [ship, coast] = [formatMegahertz(frequencies.shipKHz), formatMegahertz(frequencies.coastKHz)];
  const { leg } = designator;
  if (frequencies.mode === 'duplex') return text('channel-by-number-two', { ship, coast });
  if (leg === 'as-listed') return text('channel-by-number-one', { ship });
  const number = String(designator.number).padStart(2, '0');
  return text('channel-by-number-leg', { leg, number, ship });
}

/** What the named channels are. */
function byName(name: string): CodedText | undefined {
  const initial = INITIALS.find((each) => name.startsWith(each));
  return initial && text('channel-by-name', { initial });
}

const INITIALS = ['W', 'M', 'P', 'L', 'F', '0'] as const;

function elsewhereIssue(other: ChannelPlan, name: string): Issue[] {
  const channel = channelNamed(other, name);
  if (!channel) return [];
  const params = {
    channel: name,
    plan: other.name,
    frequencies: frequenciesInWords(channel),
    note: planText(channel.note),
  };
  return [issue('channel-elsewhere', params, { received: name, clause: other.edition })];
}
