/** What other modules of this library use of this one and the package does not publish. */
export { situationOf } from './situation-of.ts';
export type { SpeechTexts } from './texts.ts';
export { speechTexts } from './texts.ts';
