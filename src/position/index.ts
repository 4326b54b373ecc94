/**
 * Where she is: what people write, what calls carry, how far and which way, and how sure.
 *
 * Guide: [Position: where is she?](../../docs/guide/position.md).
 *
 * @packageDocumentation
 */

// Coordinates, and the text that people and instruments write.

export type { Coordinates, WrittenPosition } from './coordinates.ts';
export type { PositionFormat, PositionStyle } from './format-position.ts';
export { formatPosition } from './format-position.ts';
export { parsePosition } from './parse-position.ts';
export { positionSchema } from './schema.ts';

// The position of a call: its digits, and the hour and minute that come with them.

export { toReportedPosition } from './report-position.ts';
export type {
  MinuteFraction,
  NoPosition,
  PositionDigits,
  ReportedLatitude,
  ReportedLongitude,
  ReportedPosition,
} from './reported-position.ts';
export {
  decodePosition,
  encodePosition,
  formatReportedPosition,
  refinePosition,
} from './reported-position.ts';
export type { ResolvedTime, TimeOfDay } from './time.ts';
export { resolveTime } from './time.ts';

// The places that the digits may stand for.

export type { RoundingAssumption } from './box.ts';
export { boxOf, centreOf, cornerOf } from './box.ts';
export type { GeoBox } from './geo-box.ts';
export { boxContains } from './geo-box.ts';
export { uncertaintyOf } from './uncertainty.ts';

// The area of a geographic-area call.

export type { GeographicArea } from './area.ts';
export { areaBox, areaContains, decodeArea, encodeArea } from './area.ts';

// Distance and direction on the ellipsoid: the shortest line, and the line of a held course.

export type { RangeAndBearing } from './geodesic.ts';
export { destination, rangeAndBearing } from './geodesic.ts';
export type { RhumbLine } from './rhumb.ts';
export { alongRhumb, rhumbLine } from './rhumb.ts';

// How far and which way she may be, in numbers and in words; a picture is in `seahail/position/plot`.

export type { Bounds, BoundsOptions } from './bounds.ts';
export { boundsFrom } from './bounds.ts';
export type { Sector } from './box-sector.ts';
export { describeBounds } from './describe-bounds.ts';

// Movement: after a run, to a place, to a vessel, past a vessel.

export type { ClosestApproach } from './closest-approach.ts';
export { closestApproach } from './closest-approach.ts';
export type { Run } from './dead-reckoning.ts';
export { deadReckoning } from './dead-reckoning.ts';
export type { Interception, Interceptions, Interceptor } from './intercept.ts';
export { intercept } from './intercept.ts';
export type { Current, GroundTrack, Mover } from './mover.ts';
export { overGround } from './mover.ts';
export type { Geometry } from './plane.ts';
export type { Passage } from './time-to-reach.ts';
export { timeToReach } from './time-to-reach.ts';

// Reach: horizons, and whether a set can probably be heard.

export { radioHorizon, visibleHorizon } from './horizon.ts';
export type { Link, LinkEnd, LinkEstimate } from './link.ts';
export { estimateLink } from './link.ts';

// True, magnetic and compass.

export type { CompassError } from './compass.ts';
export {
  compassToMagnetic,
  compassToTrue,
  magneticToCompass,
  magneticToTrue,
  trueToCompass,
  trueToMagnetic,
} from './compass.ts';

// Handing a position on.

export type { PointCollection, PointFeature } from './geo-json.ts';
export { toGeoJson } from './geo-json.ts';
export { toGeoUri } from './geo-uri.ts';
export { toGpx } from './gpx.ts';
export type { Waypoint } from './waypoint.ts';

// Every finding of this room.

export { POSITION_ISSUE_CODES } from './issue-code.ts';
