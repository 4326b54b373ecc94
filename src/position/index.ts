/**
 * Where she is: what people write, what calls carry, how far and which way, and how sure.
 *
 * Guide: [Position: where is she?](../../docs/guide/position.md).
 *
 * @packageDocumentation
 */

// Coordinates, and the text that people and instruments write.

export type { Coordinates, WrittenPosition } from './coordinates.ts';

export { formatPosition } from './format-position.ts';
export { parsePosition } from './parse-position.ts';
export { positionSchema } from './schema.ts';

// The position of a call: its digits, and the hour and minute that come with them.

export { toReportedPosition } from './report-position.ts';
export type { NoPosition, ReportedPosition } from './reported-position.ts';
export {
  decodePosition,
  encodePosition,
  formatReportedPosition,
} from './reported-position.ts';
export type { TimeOfDay } from './time.ts';
export { resolveTime } from './time.ts';

// The places that the digits may stand for.

export type { RoundingAssumption } from './box.ts';
export { boxOf, centreOf } from './box.ts';
export { uncertaintyOf } from './box-geodesy.ts';
export type { GeoBox } from './geo-box.ts';
export { boxContains } from './geo-box.ts';

// The area of a geographic-area call.

export type { GeographicArea } from './area.ts';
export { decodeArea, encodeArea } from './area.ts';

// Distance and direction on the ellipsoid: the shortest line, and the line of a held course.

export type { RangeAndBearing } from './geodesic.ts';
export { destination, rangeAndBearing } from './geodesic.ts';

// How far and which way she may be, in numbers and in words; a picture is in `seahail/position/plot`.

export type { Bounds } from './bounds.ts';
export { boundsFrom, boundsText, describeBounds } from './bounds.ts';

// Movement: after a run, to a place, to a vessel, past a vessel.

export type { ClosestApproach } from './closest-approach.ts';
export { closestApproach } from './closest-approach.ts';

export { deadReckoning } from './dead-reckoning.ts';
export type { Interceptions } from './intercept.ts';
export { intercept } from './intercept.ts';
export type { Current, Mover } from './mover.ts';

export { timeToReach } from './time-to-reach.ts';

// Reach: horizons, and whether a set can probably be heard.

export { estimateLink, horizonRange } from './link.ts';

// True, magnetic and compass.

export {
  compassToTrue,
  trueToCompass,
} from './compass.ts';

// Handing a position on.

export type { PointCollection, Waypoint } from './waypoint.ts';
export { toGeoJson, toGeoUri, toGpx } from './waypoint.ts';
