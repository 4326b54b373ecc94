import type { Reading } from '../../report/index.ts';
import { want } from '../../result/internal.ts';
import { writeVariableText } from '../field/text.ts';
import { NAVIGATION, ROUTE, WAYPOINTS } from '../message/layout.ts';
import type { NetworkFrame } from '../transport/frame.ts';
import { type MessageOptions, messageFrames } from './message-frames.ts';

/**
 * Writes a waypoint for a display on the network: as the only entry of a route (PGN 129285) and of a waypoint list
 * (PGN 130074), and as the place to go to (PGN 129284) when distance and bearing are given.
 *
 * A display that steers may take PGN 129284 for an order and turn the boat. A reported position may be wrong, old or
 * cut to whole minutes. Give `from` only where a person has chosen to go there and no other node is navigating.
 * Write under an address of your own that you have claimed, never under that of another node; who builds such a
 * node answers for its certification.
 *
 * @param waypoint - position and name
 * @param options - source address, sequence counter, number, distance and bearing
 * @returns the frames in order
 * @throws RangeError when the address, the counter, the number, the position or a distance is out of range, or the name
 *   has more than 253 bytes
 *
 * Source: public list of parameter groups of IEC 61162-3; which display lists which group is not in it (D-network-2).
 *
 * @example
 * ```ts
 * import { writeWaypointFrames } from 'seahail/network';
 *
 * const position = { latitude: 56.3388, longitude: -6.502 };
 * console.log(writeWaypointFrames({ position, name: 'TERN' }, { source: 40 }).length); // 9
 * ```
 */
export function writeWaypointFrames(
  waypoint: Reading<'waypoint'>['waypoint'],
  options: MessageOptions & {
    /** Number of the waypoint, 0 to 65532; 1 unless given. */
    readonly number?: number | undefined;
    /** Distance to it in metres and bearing to it in degrees true, as computed from the own position, where known. */
    readonly from?: { readonly distance: number; readonly bearing: number } | undefined;
  },
): NetworkFrame[] {
  want('writeWaypointFrames', 'a waypoint', waypoint, 'position');
  want('writeWaypointFrames', 'options with source', options, 'source');
  const { position, name } = waypoint;
  const { number: id = 1, from } = options;
  requireBetween('number', id, 0, 65_532);
  requireBetween('latitude', position.latitude, -90, 90);
  requireBetween('longitude', position.longitude, -180, 180);
  const waypoints = [{ id, name: writeVariableText(name), ...position }];
  const list = { start: 0, count: 1, database: 0, waypoints };
  const frames = [
    ...messageFrames(
      ROUTE,
      { ...list, route: 0, direction: 3, supplementary: 3, name: writeVariableText('') },
      options,
    ),
    ...messageFrames(WAYPOINTS, { ...list, valid: 1 }, options),
  ];
  if (from === undefined) return frames;
  requireBetween('distance', from.distance, 0, 42_949_672);
  requireBetween('bearing', from.bearing, 0, 360);
  const bearing = ((from.bearing % 360) * Math.PI) / 180;
  const goTo = {
    sid: null,
    distance: from.distance,
    reference: 0,
    perpendicularCrossed: 0,
    arrival: 0,
    calculation: 0,
    etaTime: null,
    etaDate: null,
    bearingFromOrigin: null,
    bearingFromPosition: bearing,
    originNumber: null,
    destinationNumber: id,
    ...position,
    closingSpeed: null,
  };
  return [...frames, ...messageFrames(NAVIGATION, goTo, options)];
}

function requireBetween(name: string, value: number, least: number, most: number): void {
  if (!(typeof value === 'number' && value >= least && value <= most))
    throw new RangeError(`${name}: expected a number from ${least} to ${most}, got ${value}`);
}
