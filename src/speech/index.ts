/**
 * The words to speak on the voice channel, after a call or in a situation: a prompt for a person, not a replacement
 * for training.
 *
 * @packageDocumentation
 */
export type { Situation, Situations, SpokenScript } from './script.ts';
export { spell } from './spell.ts';
export { spokenScript } from './spoken-script.ts';
