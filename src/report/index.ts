/**
 * What the boat's instruments report, as either cable delivers it: calls, own position, AIS, waypoints.
 *
 * Types shared by the readers of a cable, and {@link stationUpdates}, which turns readings into updates for a directory.
 *
 * @packageDocumentation
 */
export type { AisReport, AisStation, NavigationalStatus } from './ais-report.ts';
export type { Direction } from './direction.ts';
export type { NetworkMessage } from './network-message.ts';
export type { TargetFields, WaypointFields } from './point.ts';
export type * from './reading.ts';
export type { FixQuality, ReceiverFix } from './receiver-fix.ts';
export type { Sentence, TagBlock } from './sentence.ts';
export { stationUpdates } from './station-updates.ts';
export type { UtcTime } from './utc-time.ts';
