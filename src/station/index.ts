/**
 * What a well-run station does: calls, key presses and the clock go in; what to send, tune, sound, show, say and log
 * comes out.
 *
 * @packageDocumentation
 */
export { adviseOnDistress } from './advice.ts';
export { createStation, nextWake, type StationState } from './state.ts';
export { type Step, step } from './step.ts';
export { type Confidence, type TimerName, type TimerRow, timers } from './timer.ts';
export {
  type PhaseDescription,
  phaseTable,
  type TransitionRow,
  transitionTable,
} from './transition-table.ts';
