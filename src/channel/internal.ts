/** What other modules of this library use of this one and the package does not publish. */
export { channelNamedBy, digitsNaming } from './call-digits.ts';
export { frequencyOf } from './frequency-of.ts';
export { isWorkingChannelAllowed } from './working-channel.ts';
