// What the other rooms may use of this one, and no user needs.
export { isForStation } from './engine/for-station.ts';
export { nextRandom } from './engine/random.ts';
export { isWaitingToSend } from './inputs/queue.ts';
export { LAST_INSTANT } from './model/plain.ts';
export { adviceTexts, phaseTexts, type StationTexts, setupTexts, stationTexts, timerTexts } from './texts.ts';
