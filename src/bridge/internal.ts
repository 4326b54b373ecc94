/** What other modules of this library use of this one and the package does not publish. */
export type { BridgeTexts } from './texts.ts';
export { bridgeTexts } from './texts.ts';
