// What the other rooms may use of this one, and no user needs.
export { isForStation } from './engine/on-air.ts';
export { nextRandom } from './engine/turn.ts';
export { isWaitingToSend } from './inputs/dialogues.ts';
export { LAST_INSTANT } from './model/form.ts';
export { adviceTexts, phaseTexts, type StationTexts, setupTexts, stationTexts, timerTexts } from './texts.ts';
