/** What other modules of this library use of this one and the package does not publish. */
export type { AudioTexts } from './texts.ts';
export { audioTexts, wavTexts } from './texts.ts';
