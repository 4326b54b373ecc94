/** What other modules of this library use of this one and the package does not publish. */
export { classify } from './classify.ts';
export type { IdentityTexts } from './texts.ts';
export { fieldTexts, parseTexts } from './texts.ts';
