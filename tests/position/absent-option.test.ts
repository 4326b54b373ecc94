import { expect, it } from 'vitest';
import {
  boundsFrom,
  closestApproach,
  deadReckoning,
  estimateLink,
  formatPosition,
  intercept,
  resolveTime,
  timeToReach,
  toGeoJson,
  toGeoUri,
  toGpx,
  toReportedPosition,
} from '../../src/position/index.ts';
import { overGround } from '../../src/position/mover.ts';
import { plotBearings } from '../../src/position/plot/index.ts';

const merrow = { latitude: 56.3667, longitude: -6.4 };
const ardle = { latitude: 56.4333, longitude: -6.5 };
const now = Date.UTC(2026, 5, 1, 14, 4);
const at = now - 840_000;
const tern = toReportedPosition(ardle);
const run = { course: 40, speed: 6, seconds: 600 };
const own = { position: merrow, course: 0, speed: 8 };
const other = { position: ardle, course: 200, speed: 5 };
const mast = { height: 15 };
const waypoint = { position: merrow, name: 'Merrow' };
const blank = { time: undefined, description: undefined, source: undefined, type: undefined };
const doubts = { speed: undefined, clockDoubtSeconds: undefined, ownDoubt: undefined, assumption: undefined };
const labels = { title: undefined, ownName: undefined, reach: undefined, id: undefined };
const current = undefined;

// The compiler reads this file with exactOptionalPropertyTypes: that it compiles is half of the test.
it.each<[string, unknown, unknown]>([
  ['formatPosition', formatPosition(merrow, { style: undefined, digits: undefined }), formatPosition(merrow)],
  ['toReportedPosition', toReportedPosition(merrow, { enhanced: undefined }), toReportedPosition(merrow)],
  ['boundsFrom', boundsFrom(merrow, tern, { at, now, ...doubts }), boundsFrom(merrow, tern, { at, now })],
  [
    'plotBearings',
    plotBearings(merrow, [{ name: 'Tern', bounds: null, distress: undefined }], labels),
    plotBearings(merrow, [{ name: 'Tern', bounds: null }]),
  ],
  ['deadReckoning', deadReckoning(merrow, { ...run, current, line: undefined }), deadReckoning(merrow, run)],
  ['overGround', overGround({ ...own, current }), overGround(own)],
  ['intercept', intercept({ ...own, current }, { ...other, current }), intercept(own, other)],
  [
    'closestApproach',
    closestApproach({ ...own, current }, { ...other, current }),
    closestApproach(own, other),
  ],
  [
    'timeToReach',
    timeToReach(merrow, ardle, { speed: 6, current }),
    timeToReach(merrow, ardle, { speed: 6 }),
  ],
  [
    'estimateLink',
    estimateLink({
      watts: 25,
      from: { ...mast, gain: undefined },
      to: mast,
      metres: 1852,
      sensitivity: undefined,
    }),
    estimateLink({ watts: 25, from: mast, to: mast, metres: 1852 }),
  ],
  [
    'resolveTime',
    resolveTime({ hour: 14, minute: 0 }, now, { clockDoubtSeconds: undefined }),
    resolveTime({ hour: 14, minute: 0 }, now),
  ],
  ['toGeoUri', toGeoUri(merrow, { uncertainty: undefined }), toGeoUri(merrow)],
  [
    'toGpx',
    toGpx([{ ...waypoint, ...blank, uncertainty: undefined }], { creator: 'example' }),
    toGpx([waypoint], { creator: 'example' }),
  ],
  ['toGeoJson', toGeoJson([{ ...waypoint, ...blank, uncertainty: undefined }]), toGeoJson([waypoint])],
])('%s takes an option that is undefined for one left out', (_, given, without) =>
  expect(given).toStrictEqual(without),
);
