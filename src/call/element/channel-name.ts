import { type ChannelPlan, findChannel } from '../../channel/index.ts';

/** What people of the waters call a channel, `'78A'` for 1078 in the United States; its digits without a plan. */
export function channelName(channel: string, plan: ChannelPlan | undefined): string {
  const found = plan === undefined ? null : findChannel(plan, channel);
  return found?.ok ? found.value.designator : channel;
}
