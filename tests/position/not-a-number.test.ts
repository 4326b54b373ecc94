import { describe, expect, it } from 'vitest';
import { areaContains } from '../../src/position/area.ts';
import {
  boundsFrom,
  boxContains,
  type Coordinates,
  closestApproach,
  compassToTrue,
  deadReckoning,
  decodeArea,
  destination,
  estimateLink,
  formatPosition,
  horizonRange,
  intercept,
  rangeAndBearing,
  resolveTime,
  timeToReach,
  toGeoJson,
  toGeoUri,
  toGpx,
  toReportedPosition,
  trueToCompass,
} from '../../src/position/index.ts';
import { overGround } from '../../src/position/mover.ts';
import { plotBearings } from '../../src/position/plot/index.ts';
import { rhumbLine } from '../../src/position/sailings.ts';
import { valueOf } from '../../src/result/index.ts';

// JSON makes null of a NaN (ECMA-262, SerializeJSONProperty), and arithmetic makes 0 of a null: a lost fix must not
// become a place in the Gulf of Guinea.

const merrow = { latitude: 56.3667, longitude: -6.4 };
const now = Date.UTC(2026, 5, 1, 14, 4);
const tern = toReportedPosition({ latitude: 56.3, longitude: -6.5 });
const area = valueOf(decodeArea('1570070203'));
const box = { south: -90, west: -180, north: 90, east: 180 };
const mover = { position: merrow, course: 0, speed: 6 };
const mast = { height: 15 };

/** Each takes one value, in the place of a number. */
const doors: Record<string, (value: number) => unknown> = {
  'formatPosition latitude': (latitude) => formatPosition({ ...merrow, latitude }),
  'formatPosition longitude': (longitude) => formatPosition({ ...merrow, longitude }),
  'formatPosition digits': (digits) => formatPosition(merrow, { digits }),
  'toReportedPosition latitude': (latitude) => toReportedPosition({ ...merrow, latitude }),
  'rangeAndBearing from': (latitude) => rangeAndBearing({ ...merrow, latitude }, merrow),
  'rangeAndBearing to': (longitude) => rangeAndBearing(merrow, { ...merrow, longitude }),
  'destination bearing': (bearing) => destination(merrow, bearing, 1),
  'destination metres': (metres) => destination(merrow, 0, metres),
  'rhumbLine from': (latitude) => rhumbLine({ ...merrow, latitude }, merrow),
  'deadReckoning course': (course) => deadReckoning(merrow, { course, speed: 6, seconds: 60 }),
  'deadReckoning speed': (speed) => deadReckoning(merrow, { course: 0, speed, seconds: 60 }),
  'deadReckoning seconds': (seconds) => deadReckoning(merrow, { course: 0, speed: 6, seconds }),
  'overGround set': (set) => overGround({ course: 0, speed: 6, current: { set, drift: 1 } }),
  'overGround drift': (drift) => overGround({ course: 0, speed: 6, current: { set: 0, drift } }),
  'timeToReach speed': (speed) => timeToReach(merrow, { latitude: 56.5, longitude: -6.4 }, { speed }),
  'intercept speed': (speed) => intercept({ position: merrow, speed }, mover),
  'closestApproach speed': (speed) => closestApproach({ ...mover, speed }, mover),
  'boundsFrom own': (latitude) => boundsFrom({ ...merrow, latitude }, tern, { at: now, now }),
  'boundsFrom now': (value) => boundsFrom(merrow, tern, { at: now, now: value }),
  'boundsFrom speed': (speed) => boundsFrom(merrow, tern, { at: now, now, speed }),
  'boundsFrom clockDoubtSeconds': (clockDoubtSeconds) =>
    boundsFrom(merrow, tern, { at: now, now, clockDoubtSeconds }),
  'boundsFrom ownDoubt': (ownDoubt) => boundsFrom(merrow, tern, { at: now, now, ownDoubt }),
  'boxContains latitude': (latitude) => boxContains(box, { ...merrow, latitude }),
  'areaContains longitude': (longitude) => areaContains(area, { ...merrow, longitude }),
  'plotBearings own': (latitude) => plotBearings({ ...merrow, latitude }, []),
  'plotBearings reach': (reach) => plotBearings(merrow, [], { reach }),
  'horizonRange height': (height) => horizonRange(height, 4),
  'horizonRange eye': (eye) => horizonRange(eye, 0, 'sight'),
  'estimateLink watts': (watts) => estimateLink({ watts, from: mast, to: mast, metres: 1852 }),
  'estimateLink metres': (metres) => estimateLink({ watts: 25, from: mast, to: mast, metres }),
  'estimateLink gain': (gain) => estimateLink({ watts: 25, from: mast, to: { ...mast, gain }, metres: 1852 }),
  'estimateLink sensitivity': (sensitivity) =>
    estimateLink({ watts: 25, from: mast, to: mast, metres: 1852, sensitivity }),
  'compassToTrue magnetic': (bearing) => compassToTrue(bearing, { variation: 5 }),
  'compassToTrue variation': (variation) => compassToTrue(5, { variation }),
  'compassToTrue deviation alone': (deviation) => compassToTrue(5, { variation: 0, deviation }),
  'compassToTrue deviation': (deviation) => compassToTrue(5, { variation: 5, deviation }),
  'trueToCompass variation': (variation) => trueToCompass(5, { variation, deviation: 5 }),
  'resolveTime hour': (hour) => resolveTime({ hour, minute: 0 }, now),
  'resolveTime receivedAt': (receivedAt) => resolveTime({ hour: 1, minute: 0 }, receivedAt),
  'resolveTime clockDoubtSeconds': (clockDoubtSeconds) =>
    resolveTime({ hour: 1, minute: 0 }, now, { clockDoubtSeconds }),
  'toGeoUri longitude': (longitude) => toGeoUri({ ...merrow, longitude }),
  'toGeoUri uncertainty': (uncertainty) => toGeoUri(merrow, { uncertainty }),
  'toGpx latitude': (latitude) =>
    toGpx([{ position: { ...merrow, latitude }, name: '' }], { creator: 'example' }),
  'toGpx time': (time) => toGpx([{ position: merrow, name: '', time }], { creator: 'example' }),
  'toGeoJson time': (time) => toGeoJson([{ position: merrow, name: '', time }]),
  'toGeoJson uncertainty': (uncertainty) => toGeoJson([{ position: merrow, name: '', uncertainty }]),
};

describe.each(Object.entries(doors))('%s', (name, door) => {
  it('takes numbers alone', () => {
    for (const value of [null, '5', '', [], [5], true, Number.NaN]) {
      // The first two have a default, which null may stand for: neither is a fact about the world. A time that is null
      // is not known, and is left out.
      const open = ['plotBearings reach', 'formatPosition digits', 'toGpx time', 'toGeoJson time'];
      if (open.includes(name) && value === null) continue;
      expect(() => door(value as unknown as number), JSON.stringify(value)).toThrow(RangeError);
    }
    expect(() => door(5)).not.toThrow();
  });
});

it('the message shows what was given instead', () => {
  const lost = JSON.parse('{"latitude":null,"longitude":null}') as Coordinates;
  expect(() => formatPosition(lost)).toThrow('latitude: expected -90 to 90, got null');
  expect(() => destination(merrow, 0, '5' as unknown as number)).toThrow(
    "metres: expected zero or more, got '5'",
  );
});

it('an instant of the fix that is null is a fix without a time', () => {
  expect(boundsFrom(merrow, tern, { at: null, now }).age).toBeNull();
  for (const at of [undefined, '5', Number.NaN])
    expect(() => boundsFrom(merrow, tern, { at: at as number, now })).toThrow(RangeError);
});
