import type { Coordinates } from '../position/index.ts';
import { horizonRange } from '../position/internal.ts';
import type { SimulatedStation } from './simulation.ts';
import type { Jams, Transmission } from './transmission.ts';

/** What is on channel 70, and how long it was in use. Instants are milliseconds of simulated time. */
export interface Air {
  /** Bursts without a gap between them go on the air. */
  readonly begin: (bursts: readonly Transmission[], now: number) => void;
  /** The last of them is over. */
  readonly end: (now: number) => void;
  /** When something else was on a receiver's air while a transmission was. */
  readonly jams: (receiver: number, transmission: Transmission) => Jams;
  /** For how long at least one station transmitted. */
  readonly timeInUse: (now: number) => number;
}

/** Longer than any row of bursts: what ended before cannot fall together with what is still on the air. */
const MEMORY = 10_000;

/**
 * An empty channel.
 *
 * @param hearers - for each station, those that its signals reach
 */
export function createAir(hearers: readonly (readonly number[])[]): Air {
  let recent: Transmission[] = [];
  let onAir = 0;
  let inUseSince = 0;
  let inUse = 0;
  return {
    begin: (bursts, now) => {
      recent = recent.filter(({ end }) => end > now - MEMORY);
      recent.push(...bursts);
      if (onAir++ === 0) inUseSince = now;
    },
    end: (now) => {
      if (--onAir === 0) inUse += now - inUseSince;
    },
    jams: (receiver, transmission) =>
      recent
        .filter(
          (other) =>
            other !== transmission &&
            other.start < transmission.end &&
            other.end > transmission.start &&
            // A station that transmits hears nothing.
            (other.sender === receiver || (hearers[other.sender] ?? []).includes(receiver)),
        )
        .map(({ start, end }) => [start, end] as const),
    timeInUse: (now) => inUse + (onAir > 0 ? now - inUseSince : 0),
  };
}

const EARTH_RADIUS = 6_371_009;

/**
 * For each station, those whose signals reach it: within the radio horizon of both antennas, and nothing else counted.
 *
 * Distances are on a sphere, half a per cent off at the most: the horizon itself is no sharper.
 */
export function whoHearsWhom(
  antennas: readonly Pick<SimulatedStation, 'position' | 'antennaHeight'>[],
): readonly (readonly number[])[] {
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
