import type { Random } from './random.ts';

/** Frequency-shift index of the VHF signal: 800 Hz between the tones at 1200 baud. */
const INDEX = 800 / 1200;
const CROSS = Math.sin(Math.PI * INDEX) / (Math.PI * INDEX);

/**
 * Log-likelihood per bit of a receiver that knows the phase runs on over `span` bits but not the carrier's phase,
 * for continuous-phase keying in white noise with perfect timing.
 *
 * The two tones' correlations per bit are drawn directly: they are all that such a receiver uses.
 *
 * @param bits - 0 and 1
 * @param ratio - Eb/N0, not in dB
 * @param span - odd count of bits looked at together
 */
export function receivedBits(bits: Uint8Array, ratio: number, span: number, random: Random): Float32Array {
  const count = bits.length;
  // Real and imaginary part of bit k's correlation with tone t, at 2 * (2 * k + t); tone 1 is the lower one.
  const correlation = new Float64Array(4 * count);
  let phase = 2 * Math.PI * random.next();
  const deviation = Math.sqrt(1 / (2 * ratio));
  for (let bit = 0; bit < count; bit++) {
    const sent = bits[bit] as number;
    const turn = sent === 1 ? -1 : 1;
    const noise = [random.normal(), random.normal(), random.normal(), random.normal()] as const;
    for (let tone = 0; tone < 2; tone++) {
      const same = tone === sent;
      // The other tone's correlation: the overlap of two tones 2/3 of a turn apart, turned half that far.
      const angle = phase + (same ? 0 : turn * Math.PI * INDEX);
      const size = same ? 1 : CROSS;
      const at = 2 * (2 * bit + tone);
      // Noise of tone 0 is drawn, that of tone 1 has the tones' overlap with it.
      let real = noise[0];
      let imaginary = noise[1];
      if (tone === 1) {
        const cosine = CROSS * Math.cos(Math.PI * INDEX);
        const sine = CROSS * Math.sin(Math.PI * INDEX);
        const rest = Math.sqrt(1 - CROSS * CROSS);
        [real, imaginary] = [
          cosine * real - sine * imaginary + rest * noise[2],
          sine * real + cosine * imaginary + rest * noise[3],
        ];
      }
      correlation[at] = size * Math.cos(angle) + deviation * real;
      correlation[at + 1] = size * Math.sin(angle) + deviation * imaginary;
    }
    phase += turn * Math.PI * INDEX;
  }
  return likelihoods(correlation, count, ratio, span);
}

/** Log-likelihood per bit of two opposite signals, every bit by itself: here the decoder's own model holds exactly. */
export function separateBits(bits: Uint8Array, ratio: number, random: Random): Float32Array {
  const scale = 4 * ratio;
  const deviation = Math.sqrt(1 / (2 * ratio));
  return Float32Array.from(bits, (bit) => scale * ((bit === 1 ? 1 : -1) + deviation * random.normal()));
}

function likelihoods(correlation: Float64Array, count: number, ratio: number, span: number): Float32Array {
  const half = (span - 1) / 2;
  const out = new Float32Array(count);
  for (let bit = 0; bit < count; bit++) {
    const first = Math.max(0, bit - half);
    const last = Math.min(count - 1, bit + half);
    const length = last - first + 1;
    let one = Number.NEGATIVE_INFINITY;
    let zero = Number.NEGATIVE_INFINITY;
    for (let pattern = 0; pattern < 1 << length; pattern++) {
      let real = 0;
      let imaginary = 0;
      let angle = 0;
      for (let index = 0; index < length; index++) {
        const value = (pattern >> index) & 1;
        const at = 2 * (2 * (first + index) + value);
        const cosine = Math.cos(angle);
        const sine = Math.sin(angle);
        real += (correlation[at] as number) * cosine + (correlation[at + 1] as number) * sine;
        imaginary += (correlation[at + 1] as number) * cosine - (correlation[at] as number) * sine;
        angle += (value === 1 ? -1 : 1) * Math.PI * INDEX;
      }
      const weight = logBessel(2 * ratio * Math.hypot(real, imaginary));
      if (((pattern >> (bit - first)) & 1) === 1) one = logSum(one, weight);
      else zero = logSum(zero, weight);
    }
    out[bit] = one - zero;
  }
  return out;
}

function logSum(one: number, other: number): number {
  const high = Math.max(one, other);
  return high === Number.NEGATIVE_INFINITY ? high : high + Math.log1p(Math.exp(Math.min(one, other) - high));
}

/** Natural log of the modified Bessel function I0, by Abramowitz and Stegun 9.8.1 and 9.8.2. */
function logBessel(x: number): number {
  if (x < 3.75) {
    const t = (x / 3.75) ** 2;
    return Math.log(
      1 +
        t *
          (3.5156229 + t * (3.0899424 + t * (1.2067492 + t * (0.2659732 + t * (0.0360768 + t * 0.0045813))))),
    );
  }
  const t = 3.75 / x;
  const series =
    0.39894228 +
    t *
      (0.01328592 +
        t *
          (0.00225319 +
            t *
              (-0.00157565 +
                t *
                  (0.00916281 + t * (-0.02057706 + t * (0.02635537 + t * (-0.01647633 + t * 0.00392377)))))));
  return x - 0.5 * Math.log(x) + Math.log(series);
}
