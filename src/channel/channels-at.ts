import { failure, type Result, success } from '../result/index.ts';
import type { Channel, ChannelPlan, ChannelUse } from './channel.ts';
import { isPlan, noPlan } from './find-channel.ts';
import { readHertz } from './frequency.ts';

/**
 * All channels of a plan that use a frequency, nearest first.
 *
 * @param plan - the plan of the waters
 * @param frequency - a number is whole kilohertz (`156800`); text is megahertz with up to three digits
 * before the decimals (`'156.8'`, `'156.800'`), kilohertz with more (`'156800'`), or names its unit
 * @param options - `toleranceKHz`: how far off a channel may lie and still count, 0 or more; default 0
 * @returns the channels, an empty list when there are none; an issue for an unreadable frequency
 * @throws RangeError when the tolerance is negative or not a number
 *
 * @see {@link channelsFor}
 * @see {@link findChannel}
 *
 * @example
 * ```ts
 * import { channelsAt } from 'seahail/channel';
 * import { canadaPlan } from 'seahail/channel/canada';
 * import { valueOf } from 'seahail/result';
 *
 * for (const { channel, side } of valueOf(channelsAt(canadaPlan, '161.65'))) console.log(channel.designator, side); // 21B coast
 * ```
 */
export function channelsAt(
  plan: ChannelPlan,
  frequency: string | number,
  { toleranceKHz = 0 }: { readonly toleranceKHz?: number | undefined } = {},
): Result<
  readonly {
    readonly kind: 'frequency-match';
    readonly channel: Channel;
    /** The side that transmits on the frequency; `'both'` on a single-frequency channel. */
    readonly side: 'ship' | 'coast' | 'both';
    /** How far the channel's frequency lies above the one asked for, hertz; 0 when they are the same. */
    readonly offsetHz: number;
  }[]
> {
  if (!(toleranceKHz >= 0))
    throw new RangeError(`channelsAt: expected toleranceKHz of 0 or more, got ${toleranceKHz}`);
  if (!isPlan(plan)) return failure(noPlan(plan));
  const hertz = readHertz(frequency);
  if (!hertz.ok) return hertz;
  const found: FrequencyMatch[] = [];
  for (const channel of plan.channels) {
    const { shipKHz, coastKHz } = channel;
    const sides =
      shipKHz === coastKHz
        ? ([['both', shipKHz]] as const)
        : ([
            ['ship', shipKHz],
            ['coast', coastKHz],
          ] as const);
    for (const [side, kHz] of sides) {
      if (kHz === null) continue;
      const offsetHz = kHz * 1000 - hertz.value;
      if (Math.abs(offsetHz) <= toleranceKHz * 1000)
        found.push({ kind: 'frequency-match', channel, side, offsetHz });
    }
  }
  return success(found.sort((a, b) => Math.abs(a.offsetHz) - Math.abs(b.offsetHz)));
}

/**
 * The channels of a plan that serve a use.
 *
 * @param plan - the plan of the waters
 * @param use - one of the uses of {@link ChannelUse}
 * @returns the channels in order of number; those that have it as their first use come first
 *
 * @see {@link channelsAt}
 * @see {@link workingChannels}
 *
 * @example
 * ```ts
 * import { channelsFor } from 'seahail/channel';
 * import { unitedStatesPlan } from 'seahail/channel/united-states';
 *
 * console.log(channelsFor(unitedStatesPlan, 'coast-guard-liaison').map((channel) => channel.designator).join(' ')); // 1022
 * ```
 */
export function channelsFor(plan: ChannelPlan, use: ChannelUse): readonly Channel[] {
  if (!isPlan(plan)) throw new TypeError(`channelsFor: ${noPlan(plan).message}`);
  const serving = plan.channels.filter((channel) => channel.uses.includes(use));
  return [
    ...serving.filter((channel) => channel.uses[0] === use),
    ...serving.filter((channel) => channel.uses[0] !== use),
  ];
}

type FrequencyMatch = Extract<ReturnType<typeof channelsAt>, { readonly ok: true }>['value'][number];
