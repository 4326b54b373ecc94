/**
 * Marine VHF channels: names, frequencies, what each is for, and which one two stations can talk on.
 *
 * The plans are entries of their own, so that no table is loaded unless it is used: `seahail/channel/international`,
 * `seahail/channel/united-states`, `seahail/channel/canada`, `seahail/channel/united-kingdom`,
 * `seahail/channel/netherlands`, `seahail/channel/sweden`. Use the plan
 * of the waters you are in. Tables describe; national rules and the licence decide.
 *
 * Guide: [Channel: where do we talk?](../../docs/guide/channel.md).
 *
 * @packageDocumentation
 */

/* What a plan holds. */

export type { Channel, ChannelPlan, ChannelUse } from './channel.ts';

/* A plan of your own. */

export type { OwnChannelOptions, OwnPlan } from './define-plan.ts';
export { definePlan, duplexChannel, parsePlan, simplexChannel } from './define-plan.ts';
export { planText } from './plan-text.ts';

/* From what people write to a channel of a plan. */

export type { Designator } from './designator.ts';
export { parseDesignator } from './designator.ts';
export { findChannel } from './find-channel.ts';
export { channelSchema } from './schema.ts';

/* Frequencies: by number, of a channel, and back. */

export { channelsAt, channelsFor } from './channels-at.ts';
export { formatMegahertz } from './frequency.ts';

/* Which channel to name in a call. */

export { neverAssignable } from './never-assignable.ts';
export type { WorkingPurpose } from './purpose.ts';
export { checkWorkingChannel } from './working-channel.ts';
export type { WorkingChannels } from './working-channels.ts';
export { workingChannels } from './working-channels.ts';

/* Channels and frequencies in the digits of a call. */

export { decodeChannel, encodeChannel } from './call-digits.ts';
