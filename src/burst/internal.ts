// What the other rooms may use of this one, and no user needs.
export { type CallHeard, type JoinedCalls, joinCalls, MOST_CALLS, withCalls } from './attempt.ts';
export { report } from './decode-soft.ts';
export { hearCall } from './hear-call.ts';
export type { Received } from './receive.ts';
export { decodeSymbol, encodeSymbol } from './symbol-code.ts';
export type { BurstTexts } from './texts.ts';
export { burstTexts } from './texts.ts';
