import type { Coordinates } from '../position/index.ts';
import { horizonRange } from '../position/internal.ts';

/** Where an antenna is. */
export interface Antenna {
  readonly position: Coordinates;
  /** Metres above the sea. */
  readonly antennaHeight: number;
}

const EARTH_RADIUS = 6_371_009;

/**
 * For each station, those whose signals reach it: within the radio horizon of both antennas, and nothing else counted.
 *
 * Distances are on a sphere, half a per cent off at the most: the horizon itself is no sharper.
 */
export function whoHearsWhom(antennas: readonly Antenna[]): readonly (readonly number[])[] {
  const places = antennas.map(({ position }) => onSphere(position));
  const horizons = antennas.map(({ antennaHeight }) => horizonRange(antennaHeight, 0));
  return antennas.map((_, one) =>
    antennas.flatMap((_, other) => {
      if (one === other) return [];
      const range = (horizons[one] as number) + (horizons[other] as number);
      return distance(places[one] as Vector, places[other] as Vector) <= range ? [other] : [];
    }),
  );
}

type Vector = readonly [number, number, number];

function onSphere({ latitude, longitude }: Coordinates): Vector {
  const [phi, lambda] = [(latitude * Math.PI) / 180, (longitude * Math.PI) / 180];
  return [Math.cos(phi) * Math.cos(lambda), Math.cos(phi) * Math.sin(lambda), Math.sin(phi)];
}

function distance(one: Vector, other: Vector): number {
  const chord = Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);
  return 2 * EARTH_RADIUS * Math.asin(Math.min(1, chord / 2));
}
