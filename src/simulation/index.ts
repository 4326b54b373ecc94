/**
 * Several stations on one channel 70, for training and tests.
 *
 * - {@link simulate}: stations, people who act, bursts that collide, and a horizon.
 * - {@link writeTimeLine}: what happened, as a log book reads.
 *
 * A made-up world: figures from it are no forecast of real traffic.
 *
 * Guide: [Station: what to do next?](../../docs/guide/station.md).
 *
 * @packageDocumentation
 */

export { simulate } from './simulate.ts';
export type { ScriptLine, SimulatedStation, SimulationResult } from './simulation.ts';
export { writeTimeLine } from './time-line.ts';
