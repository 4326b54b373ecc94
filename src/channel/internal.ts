/** What other modules of this library use of this one and the package does not publish. */
export { channelNamedBy, digitsNaming } from './call-digits.ts';
export { frequencyOf } from './frequency-of.ts';
export { planTexts } from './plan-texts.ts';
export type { ChannelTexts } from './texts.ts';
export { lookUpTexts, planCheckTexts, workingTexts } from './texts.ts';
export { isWorkingChannelAllowed } from './working-channel.ts';
