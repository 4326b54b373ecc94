/** What other modules of this library use of this one: apart from its index so that none of it loads geodesy. */
export { areaContains, decodeArea, encodeArea } from './area.ts';
export { centreOf, cornerOf } from './box.ts';
export { horizonRange } from './link.ts';
export { toReportedPosition } from './report-position.ts';
export {
  decodePosition,
  encodePosition,
  formatReportedPosition,
  refinePosition,
} from './reported-position.ts';
export { boundsTexts, digitTexts, type PositionTexts, plotTexts, rangeTexts, writtenTexts } from './texts.ts';
export { resolveTime } from './time.ts';
