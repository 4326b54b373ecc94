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
export {
  decodePosition,
  encodePosition,
  formatReportedPosition,
  type NoPosition,
  type ReportedPosition,
} from './reported-position.ts';
export { resolveTime, type TimeOfDay } from './time.ts';

// The places that the digits may stand for.

export { boxOf, centreOf, type RoundingAssumption } from './box.ts';
export { uncertaintyOf } from './box-geodesy.ts';
export { boxContains, type GeoBox } from './geo-box.ts';

// The area of a geographic-area call.

export { decodeArea, encodeArea, type GeographicArea } from './area.ts';

// Distance and direction on the ellipsoid: the shortest line, and the line of a held course.

export { destination, type RangeAndBearing, rangeAndBearing } from './geodesic.ts';

// How far and which way she may be, in numbers and in words; a picture is in `seahail/position/plot`.

export { type Bounds, boundsFrom, boundsText, describeBounds } from './bounds.ts';

// Movement: after a run, to a place, to a vessel, past a vessel.

export { type ClosestApproach, closestApproach } from './closest-approach.ts';

export { deadReckoning } from './dead-reckoning.ts';
export { type Interceptions, intercept } from './intercept.ts';
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

export { type PointCollection, toGeoJson, toGeoUri, toGpx, type Waypoint } from './waypoint.ts';
