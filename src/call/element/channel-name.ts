import { type ChannelPlan, findChannel, parseDesignator } from '../../channel/index.ts';

/** Whether the digits of a call name a channel: those of ITU-R M.1084, which 99 and the private 29 to 59 are not. */
export function namesChannel(channel: string): boolean {
  const read = parseDesignator(channel);
  return read.ok && read.value.m1084 === channel;
}

/** What people of the waters call a channel, `'78A'` for 1078 in the United States; its digits without a plan. */
export function channelName(channel: string, plan: ChannelPlan | undefined): string {
  const found = plan === undefined ? null : findChannel(plan, channel);
  return found?.ok ? found.value.designator : channel;
}
