/**
 * The words to speak on the voice channel, after a call or in a situation: a prompt for a person, not a replacement
 * for training.
 *
 * @packageDocumentation
 */
export type { Situation, Situations, SpokenDistress, SpokenLine, SpokenScript } from './script.ts';
export { type FigureWords, spell } from './spell.ts';
export { type SpokenScriptOptions, spokenScript } from './spoken-script.ts';
