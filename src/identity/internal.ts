/** What other modules of this library use of this one and the package does not publish. */
export { classify } from './classify.ts';
export { fieldTexts, type IdentityTexts, parseTexts } from './texts.ts';
