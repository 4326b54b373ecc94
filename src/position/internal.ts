/** What other modules of this library use of this one: apart from its index so that none of it loads geodesy. */
export { areaContains, geographicArea, geographicAreaDigits } from './area.ts';
export { centreOf, cornerOf } from './box.ts';
export { radioHorizon } from './horizon.ts';
export { reportPosition } from './report-position.ts';
export {
  formatReportedPosition,
  refinePosition,
  reportedPosition,
  reportedPositionDigits,
} from './reported-position.ts';
export { resolveTime } from './time.ts';
