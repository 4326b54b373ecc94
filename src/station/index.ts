/**
 * What a well-run station does: calls, key presses and the clock go in; what to send, tune, sound, show, ask, say and
 * log comes out.
 *
 * - {@link createStation}, {@link step}: the machine; {@link restoreStation} reads a stored one, {@link openQuestions} what waits for a person.
 * - {@link transitionTable}, {@link phaseTable}, {@link timers}: what it runs on, as data.
 * - {@link adviseOnDistress}: what to do about another vessel's distress.
 * - {@link checkSetup}: whether a station is ready for use.
 * - `seahail/simulation`: several stations on one channel 70, for training and tests.
 * - {@link extendWatchLog}, {@link writeLogCsv}, {@link writeLogJson}: the watch log.
 *
 * None of it makes a transmission lawful or replaces a trained operator: national rules and the licence come first.
 *
 * Guide: [Station: what to do next?](../../docs/guide/station.md).
 *
 * @packageDocumentation
 */
export { checkSetup } from './check-setup.ts';
export { nextWake } from './engine/clock.ts';
export { openQuestions } from './engine/questions.ts';
export type { StationStep } from './engine/turn.ts';
export { extendWatchLog, type LogEntry, writeLogCsv, writeLogJson } from './log/watch-log.ts';
export type { AdviceStep, DistressAdvice, Permission } from './model/advice.ts';
export type { Dialogue, Dialogues } from './model/dialogue.ts';
export type { Effect, Effects } from './model/effect.ts';
export type { AnswerKind, EventWithoutTime, StationEvent, StationEvents } from './model/event.ts';
export type { Policy, SettingsChange, SettingsInput, StationSettings } from './model/settings.ts';
export { createStation, type StationState } from './model/state.ts';
export { type TimerName, type TimerRow, timers } from './model/timer.ts';
export { adviseOnDistress } from './procedures/other-distress/advise.ts';
export { phaseTable, type TransitionRow, transitionTable } from './procedures/transition-table.ts';
export { restoreStation } from './restore/restore.ts';
export { step } from './step.ts';
export type { StationText } from './texts.ts';
