/**
 * What a well-run station does: calls, key presses and the clock go in; what to send, tune, sound, show, ask, say and
 * log comes out.
 *
 * - {@link createStation}, {@link step}: the machine; {@link restoreStation} brings a stored one back.
 * - {@link transitionTable}, {@link phaseTable}, {@link timers}: what it runs on, as data.
 * - {@link adviseOnDistress}: what to do about another vessel's distress.
 * - {@link checkSetup}: whether a station is ready for use.
 * - {@link simulate}, {@link writeTimeLine}: several stations on one channel 70, for training and tests.
 * - {@link extendWatchLog}, {@link writeLogCsv}, {@link writeLogJson}: the watch log.
 *
 * None of it makes a transmission lawful or replaces a trained operator: national rules and the licence come first.
 *
 * Guide: [Station: what to do next?](../../docs/guide/station.md).
 *
 * @packageDocumentation
 */
export {
  adviseOnDistress,
  type DistanceToDistress,
  type DistressAdvice,
} from './advice/advise.ts';
export type { Permission } from './advice/permission.ts';
export type { AdviceStep } from './advice/step.ts';
export { checkSetup, type SetupItem, type SetupObservations } from './check-setup.ts';
export { STATION_ISSUE_CODES, type StationIssueCode } from './issue-code.ts';
export { extendWatchLog, type LogEntry, type WatchLog } from './log/watch-log.ts';
export { writeLogCsv, writeLogJson } from './log/write-log.ts';
export { type RestoreOptions, restoreStation } from './restore/restore.ts';
export type { EventWithoutTime, SimulatedPerson, WithoutAt } from './simulation/person.ts';
export { simulate } from './simulation/simulate.ts';
export type {
  ChannelLoad,
  ScriptLine,
  SimulatedMoment,
  SimulatedStation,
  SimulationOptions,
  SimulationResult,
} from './simulation/simulation.ts';
export { type TimeLineOptions, writeTimeLine } from './simulation/time-line.ts';
export type * from './state/dialogue.ts';
export type * from './state/effect.ts';
export type * from './state/event.ts';
export type {
  CallerPolicy,
  Policy,
  PolicySubject,
  SettingsChange,
  SettingsInput,
  StationSettings,
} from './state/settings.ts';
export {
  createStation,
  type HeardAlert,
  nextWake,
  type ProvisionalCall,
  type StationFix,
  type StationState,
} from './state/state.ts';
export { type Confidence, type TimerName, type TimerRow, timers } from './state/timer.ts';
export { type Step, step } from './step.ts';
export {
  type PhaseDescription,
  phaseTable,
  type TransitionRow,
  transitionTable,
} from './table/transition-table.ts';
export type { TakenTransition } from './turn/turn.ts';
