/**
 * Where she is: what people write, what calls carry, how far and which way, and how sure.
 *
 * @packageDocumentation
 */

// The area of a geographic-area call.
export type { GeographicArea } from './area.ts';
export { areaBox, areaContains, geographicArea, geographicAreaDigits } from './area.ts';
// How sure: least and greatest range, bearing sector, area.
export type { Bounds, BoundsOptions } from './bounds.ts';
export { boundsFrom } from './bounds.ts';
// The position of a call: digits, decimals, the places it may stand for, its time.
export type { RoundingAssumption } from './box.ts';
export { boxOf, centreOf, cornerOf } from './box.ts';
export type { Sector } from './box-sector.ts';
export type { ClosestApproach } from './closest-approach.ts';
export { closestApproach } from './closest-approach.ts';
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
// Coordinates and text.
export type { Coordinates } from './coordinates.ts';
// Movement: along a held course, with a current, to a place, to a vessel, past a vessel.
export type { Run } from './dead-reckoning.ts';
export { deadReckoning } from './dead-reckoning.ts';
export { describeBounds } from './describe-bounds.ts';
export type { PositionFormat, PositionStyle } from './format-position.ts';
export { formatPosition } from './format-position.ts';
export type { GeoBox } from './geo-box.ts';
export { boxContains } from './geo-box.ts';
// Handing a position on.
export type { PointCollection, PointFeature } from './geo-json.ts';
export { toGeoJson } from './geo-json.ts';
export { toGeoUri } from './geo-uri.ts';
// Distance and direction on the ellipsoid.
export type { RangeAndBearing } from './geodesic.ts';
export { destination, rangeAndBearing } from './geodesic.ts';
export { toGpx } from './gpx.ts';
// Reach: horizons, and whether a set can probably be heard.
export { radioHorizon, visibleHorizon } from './horizon.ts';
export type { Interception, Interceptions, Interceptor } from './intercept.ts';
export { intercept } from './intercept.ts';
// Every finding of this room.
export type { PositionIssueCode } from './issue-code.ts';
export { POSITION_ISSUE_CODES } from './issue-code.ts';
export type { Link, LinkEnd, LinkEstimate } from './link.ts';
export { estimateLink } from './link.ts';
export type { Current, GroundTrack, Mover } from './mover.ts';
export { overGround } from './mover.ts';
export { parsePosition } from './parse-position.ts';
export type { Geometry } from './plane.ts';
// A picture of it.
export type { PlotOptions, PlottedStation } from './plot.ts';
export { plotBearings } from './plot.ts';
export { reportPosition } from './report-position.ts';
export type {
  MinuteFraction,
  NoPosition,
  PositionDigits,
  ReportedLatitude,
  ReportedLongitude,
  ReportedPosition,
} from './reported-position.ts';
export {
  formatReportedPosition,
  refinePosition,
  reportedPosition,
  reportedPositionDigits,
} from './reported-position.ts';
export type { RhumbLine } from './rhumb.ts';
export { alongRhumb, rhumbLine } from './rhumb.ts';
export type { ResolvedTime, TimeOfDay } from './time.ts';
export { resolveTime } from './time.ts';
export type { Passage } from './time-to-reach.ts';
export { timeToReach } from './time-to-reach.ts';
export { uncertaintyOf } from './uncertainty.ts';
export type { Waypoint } from './waypoint.ts';
