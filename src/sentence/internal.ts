/** What other modules of this library use of this one and the package does not publish. */
export { faultTexts } from './fault/texts.ts';
export { type SentenceTexts, sentenceTexts, writingTexts } from './texts.ts';
