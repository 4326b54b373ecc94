import { want } from '../result/internal.ts';
import { requireFinite, requireNotNegative, requirePositive } from './require-number.ts';
import { MILE } from './units.ts';

/** Miles to a root of a metre, radio: US Federal Standard 1037C, "radio horizon range", an Earth of 4/3 its radius. */
const RADIO = 2.23;
/**
 * Miles to a root of a metre, sight: American Practical Navigator, 1995 and 2002. The 1.17 for feet in the same books
 * comes to 2.12, and other tables have 2.08: refraction is not the same every day.
 */
const SIGHT = 2.07;

/**
 * How far apart two antennas may be before the Earth blocks the line between them, in a standard atmosphere; or, by sight, how
 * far away the sea horizon is, or an object that rises above it.
 *
 * It is not the range of a radio: that may be less with little power and more when the air bends the waves.
 *
 * @param height - of an antenna or an eye above the sea, metres
 * @param other - of the other antenna, or of the object seen, metres; 0 unless stated
 * @param by - `'radio'` unless stated, or `'sight'`
 * @returns metres
 * @throws RangeError when a height is negative or not finite
 *
 * Source: US Federal Standard 1037C, radio horizon range: 2.23 (√h1 + √h2) miles; American Practical Navigator, 1995
 * and 2002 editions, by sight: 2.07 √h miles.
 *
 * @see {@link estimateLink}
 *
 * @example
 * ```ts
 * import { horizonRange } from 'seahail/position';
 *
 * console.log((horizonRange(16, 4) / 1852).toFixed(2)); // 13.38
 * console.log((horizonRange(2, 0, 'sight') / 1852).toFixed(2)); // 2.93
 * ```
 */
export function horizonRange(height: number, other = 0, by: 'radio' | 'sight' = 'radio'): number {
  return (by === 'radio' ? RADIO : SIGHT) * (rootOf(height) + rootOf(other)) * MILE;
}

function rootOf(height: number): number {
  requireNotNegative('height', height);
  return Math.sqrt(height);
}

const MEGAHERTZ = 156.525;
const WAVELENGTH = 299.792458 / MEGAHERTZ;
/** 4/3 of the mean radius 6371 km, rounded as usual (ITU-R P.310). */
const EFFECTIVE_RADIUS = 8_500_000;
/** Sea water at VHF: relative permittivity and conductivity in S/m, ITU-R P.527. */
const SEA = { permittivity: 80, conductivity: 5 } as const;
/** Fading, noise on board and rough seas may take as much. */
const COMFORTABLE = 10;

/**
 * Whether a set can probably be heard at a distance, before a call is placed.
 *
 * Two rays, direct and reflected, over a smooth spherical sea; vertical polarisation at 156.525 MHz; standard
 * atmosphere; open water. Land, masts, hand-held sets close to the body, noise and unusual air are not in it, and may
 * weigh more than all that is. **Never a reason not to send a distress call**: send, and keep sending.
 *
 * @param link - power, antennas and distance
 * @returns loss, level, margin in dB, and a plain verdict
 * @throws RangeError when a number is not finite, a height is negative, or power or distance is not above zero
 *
 * Source: ITU-R P.525 (free space), P.526 (spherical Earth: distance and height terms), P.310, P.527; all from memory.
 *
 * @see {@link horizonRange}
 *
 * @example
 * ```ts
 * import { estimateLink } from 'seahail/position';
 *
 * const masthead = { height: 15 };
 * const handHeld = { height: 1.5, gain: -5 };
 * console.log(estimateLink({ watts: 25, from: masthead, to: masthead, metres: 15 * 1852 }).verdict); // likely
 * console.log(estimateLink({ watts: 1, from: handHeld, to: handHeld, metres: 15 * 1852 }).verdict); // unlikely
 * ```
 */
export function estimateLink(link: {
  /** Power of the transmitter: 25, 6 or 1 W as a rule. */
  readonly watts: number;
  readonly from: {
    /** Height of the antenna above the sea, metres. */
    readonly height: number;
    /** Gain of the antenna less the loss of its cable, dB over isotropic; 0 unless stated, a dipole with some cable. */
    readonly gain?: number | undefined;
  };
  readonly to: {
    /** Height of the antenna above the sea, metres. */
    readonly height: number;
    /** Gain of the antenna less the loss of its cable, dB over isotropic; 0 unless stated, a dipole with some cable. */
    readonly gain?: number | undefined;
  };
  /** Distance, metres. */
  readonly metres: number;
  /** What the receiver needs, dBm: -107 unless stated, 1 µV across 50 ohms. */
  readonly sensitivity?: number | undefined;
}): {
  /** Loss between the antennas, dB. */
  readonly loss: number;
  /** Level at the receiver, dBm. */
  readonly received: number;
  /** By how much the level exceeds what the receiver needs, dB; negative when it falls short. */
  readonly margin: number;
  /** Radio horizon of the two antennas, metres. */
  readonly horizon: number;
  /** At least 10 dB to spare, some, or none. */
  readonly verdict: 'likely' | 'doubtful' | 'unlikely';
} {
  want('estimateLink', 'two stations, watts and metres', link);
  const { watts, from, to, metres, sensitivity = -107 } = link;
  requirePositive('watts', watts);
  requirePositive('metres', metres);
  const gain = [from, to].reduce((sum, end) => sum + gainOf(end), 0);
  requireFinite('sensitivity', sensitivity);
  const horizon = horizonRange(from.height, to.height);
  const loss = seaLoss(metres, from.height, to.height);
  const received = 10 * Math.log10(watts * 1000) + gain - loss;
  const margin = received - sensitivity;
  requireFinite('gain and sensitivity', margin);
  const verdict = margin >= COMFORTABLE ? 'likely' : margin >= 0 ? 'doubtful' : 'unlikely';
  return { loss, received, margin, horizon, verdict };
}

function gainOf({ gain = 0 }: Parameters<typeof estimateLink>[0]['from']): number {
  requireFinite('gain', gain);
  return gain;
}

/**
 * Free-space loss, less the terms of distance and height of ITU-R P.526 §3.1.1. For short distances and
 * low antennas they come to the plane-Earth two-ray loss 40 log d - 20 log h1 h2. deviation: D-position-4
 */
function seaLoss(metres: number, height: number, other: number): number {
  const freeSpace = 20 * Math.log10((4 * Math.PI * metres) / WAVELENGTH);
  const x = metres * Math.cbrt(Math.PI / (WAVELENGTH * EFFECTIVE_RADIUS ** 2));
  return Math.max(freeSpace, freeSpace - distanceTerm(x) - heightTerm(height) - heightTerm(other));
}

function distanceTerm(x: number): number {
  return x < 1.6 ? -20 * Math.log10(x) - 5.6488 * x ** 1.425 : 11 + 10 * Math.log10(x) - 17.6 * x;
}

function heightTerm(height: number): number {
  const y = 2 * effectiveHeight(height) * Math.cbrt(Math.PI ** 2 / (WAVELENGTH ** 2 * EFFECTIVE_RADIUS));
  return y > 2 ? 17.6 * Math.sqrt(y - 1.1) - 5 * Math.log10(y - 1.1) - 8 : 20 * Math.log10(y + 0.1 * y ** 3);
}

/** Over the sea a vertical wave clings to the surface, which is worth some 7 m to the lowest antenna (Bullington). */
function effectiveHeight(height: number): number {
  const { permittivity, conductivity } = SEA;
  const surface =
    (WAVELENGTH / (2 * Math.PI)) * Math.sqrt(Math.hypot(permittivity + 1, 60 * WAVELENGTH * conductivity));
  return Math.hypot(height, surface);
}
