import { givenInWords } from '../result/internal.ts';
import { areaBox, type GeographicArea } from './area.ts';
import { type Coordinates, requireCoordinates, signedAngle, type WrittenPosition } from './coordinates.ts';
import { boxBetween, type GeoBox } from './geo-box.ts';
import { type ReportedPosition, requireReported } from './reported-position.ts';
import { requireNotNegative } from './require-number.ts';

/**
 * How the sending set came from its fix to the digits. It cannot be heard on the air, so it is always an assumption.
 *
 * - `'truncated'`: the rest was cut off. What M.493 with the expansion of M.821 implies, and the usual reading.
 * - `'rounded'`: the nearest step was sent.
 * - `'unknown'`: either; the places of both together.
 */
export type RoundingAssumption = 'truncated' | 'rounded' | 'unknown';

// Cut minutes follow from the decimals of M.821, which are added to them; M.493 itself was not at hand.
// deviation: D-position-2
/** In steps of the last digit: how far the true magnitude may lie below and above the printed one. */
const SPREAD = {
  truncated: [0, 1],
  rounded: [-0.5, 0.5],
  unknown: [-0.5, 1],
} as const satisfies Record<RoundingAssumption, readonly [number, number]>;

/** The place that the printed digits name. It is a corner of the box of possible places, not their middle. */
export function cornerOf(position: ReportedPosition): Coordinates {
  requireReported(position);
  const on = (axis: Axis) =>
    (signOf(position[axis]) * stepsOf(position, axis)) / stepsPerDegree(position) + 0;
  return { latitude: on('latitude'), longitude: on('longitude') };
}

/**
 * The middle of the places that a reported position may stand for: half a step outward from the digits when they
 * were cut off.
 *
 * @param position - what a call carried
 * @param assumption - how the digits were made, `'truncated'` unless stated
 * @returns the middle of {@link boxOf}
 *
 * @see {@link uncertaintyOf}
 *
 * @example
 * ```ts
 * import { centreOf, formatPosition, decodePosition } from 'seahail/position';
 * import { valueOf } from 'seahail/result';
 *
 * const position = valueOf(decodePosition('1562000630'));
 * if (position.kind === 'reported-position') {
 *   console.log(formatPosition(centreOf(position))); // 56°20.50′ N 006°30.50′ W
 *   console.log(formatPosition(centreOf(position, 'rounded'))); // 56°20.00′ N 006°30.00′ W
 * }
 * ```
 */
export function centreOf(
  position: ReportedPosition,
  assumption: RoundingAssumption = 'truncated',
): Coordinates {
  const [south, north] = edgesOf(position, 'latitude', assumption);
  const [west, east] = edgesOf(position, 'longitude', assumption);
  const longitude = (west + east) / 2;
  return {
    latitude: (south + north) / 2 + 0,
    longitude: Math.abs(longitude) <= 180 ? longitude + 0 : signedAngle(longitude),
  };
}

/**
 * All places that a reported position may stand for: one minute (or one ten-thousandth) outward from the digits, away
 * from the equator and Greenwich in the direction of the hemisphere letters, when they were cut off.
 *
 * A set that rounds a signed number may lose the sign of zero, so under `'rounded'` and `'unknown'` the box of a zero
 * reaches half a step across the equator or Greenwich, and that of 180° half a step across the 180th meridian. No box
 * reaches past a pole.
 *
 * A written position, as `parsePosition` gives it, has the step of its last digit. An area is its own box, cut off at
 * the south pole.
 *
 * @param position - what a call carried, or what a person wrote, or the area of a call
 * @param assumption - how the digits were made, `'truncated'` unless stated
 * @returns the box, edges included
 *
 * @see {@link centreOf}
 * @see {@link uncertaintyOf}
 *
 * @example
 * ```ts
 * import { boxOf, toReportedPosition } from 'seahail/position';
 *
 * const box = boxOf(toReportedPosition({ latitude: 56.349, longitude: -6.509 }));
 * console.log(((box.south % 1) * 60).toFixed(1), ((box.north % 1) * 60).toFixed(1)); // 20.0 21.0
 * ```
 */
export function boxOf(
  position: ReportedPosition | WrittenPosition | GeographicArea,
  assumption: RoundingAssumption = 'truncated',
): GeoBox {
  if (isArea(position)) return areaBox(position);
  if (isWritten(position)) return boxOfWritten(position, assumption);
  const [south, north] = edgesOf(position, 'latitude', assumption);
  const [west, east] = edgesOf(position, 'longitude', assumption);
  return boxBetween(south, west, north, east);
}

function isArea(position: ReportedPosition | WrittenPosition | GeographicArea): position is GeographicArea {
  return (position as Partial<GeographicArea> | null | undefined)?.kind === 'geographic-area';
}

function isWritten(position: ReportedPosition | WrittenPosition): position is WrittenPosition {
  return typeof (position as Partial<WrittenPosition> | null | undefined)?.step === 'number';
}

function spreadOf(assumption: RoundingAssumption): readonly [number, number] {
  if (Object.hasOwn(SPREAD, assumption)) return SPREAD[assumption];
  throw new RangeError(
    `rounding: expected ${Object.keys(SPREAD).join(', ')}, got ${givenInWords(assumption)}`,
  );
}

function boxOfWritten(position: WrittenPosition, assumption: RoundingAssumption): GeoBox {
  const { latitude, longitude } = requireCoordinates(position);
  requireNotNegative('step', position.step);
  const [least, most] = spreadOf(assumption).map((steps) => steps * position.step) as [number, number];
  // A zero has lost its sign.
  const around = (degrees: number): readonly [number, number] =>
    degrees > 0
      ? [degrees + least, degrees + most]
      : degrees < 0
        ? [degrees - most, degrees - least]
        : [-most, most];
  const [south, north] = around(latitude);
  const [west, east] = around(longitude);
  return boxBetween(Math.max(-90, south), west, Math.min(90, north), east);
}

type Axis = 'latitude' | 'longitude';

function edgesOf(
  position: ReportedPosition,
  axis: Axis,
  assumption: RoundingAssumption,
): readonly [number, number] {
  const [least, most] = spreadOf(assumption);
  const steps = stepsOf(position, axis);
  const scale = stepsPerDegree(position);
  const limit = axis === 'latitude' ? 90 : assumption === 'truncated' ? 180 : 181;
  const [near, far] = [(steps + least) / scale, Math.min(limit, (steps + most) / scale)];
  return signOf(position[axis]) > 0 ? [near + 0, far] : [-far, -near + 0];
}

function stepsPerDegree(position: ReportedPosition): number {
  return position.fraction === undefined ? 60 : 600_000;
}

function stepsOf(position: ReportedPosition, axis: Axis): number {
  const { [axis]: part, fraction } = requireReported(position);
  const minutes = part.degrees * 60 + part.minutes;
  return fraction === undefined ? minutes : minutes * 10_000 + fraction[axis];
}

function signOf({ hemisphere }: ReportedPosition['latitude'] | ReportedPosition['longitude']): 1 | -1 {
  return hemisphere === 'N' || hemisphere === 'E' ? 1 : -1;
}
