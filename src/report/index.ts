/**
 * What the boat's instruments report, as either cable delivers it: calls, own position, AIS, waypoints.
 *
 * Types shared by the readers of a cable, and {@link stationUpdates}, which turns readings into updates for a directory.
 *
 * @packageDocumentation
 */
export type { AisReport } from './ais-report.ts';
export type { GnssFix } from './gnss-fix.ts';
export type { Reading, Readings } from './reading.ts';
export type { NetworkMessage, Sentence } from './source.ts';
export { stationUpdates } from './station-updates.ts';
