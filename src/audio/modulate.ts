import { assertStaysOffAir } from './off-air.ts';
import { requireOptions } from './require.ts';
import { BAUD, CENTRE_HZ, SHIFT_HZ, TWELFTHS_OF_ONE, TWELFTHS_OF_ZERO } from './tone.ts';

/**
 * The sound of a burst: continuous-phase shift between 1300 Hz (Y, 1) and 2100 Hz (B, 0) at 1200 baud.
 *
 * Timing and phase are computed afresh for each sample from whole numbers, so nothing drifts however long the burst
 * is or how odd the sample rate.
 *
 * **Caution.** A false distress alert starts a search. Sending one on purpose is an offence in most countries, and so
 * is transmitting on channel 70 without a licensed station and operator; one sent by mistake is cancelled at once, by
 * resetting the set and by voice on channel 16 (47 CFR 80.335). Bursts of the distress format (112) or distress
 * category are therefore refused unless `allowDistress` confirms that the sound will not reach a transmitter. To try a radio
 * on the air, use a test call (`composeTestCall` in `seahail/call`), and follow the rules of the administration.
 *
 * @param burst - what `encodeCall` made, or a string of bits; several bursts may follow one another
 * @param options - sample rate, and what else differs from the ordinary
 * @returns samples between -amplitude and +amplitude; a typed array for its size
 * @throws TypeError when there are no bits or they hold anything but 0 and 1, or the options are missing
 * @throws RangeError when an option is outside its range, or a distress burst comes without `allowDistress`
 *
 * Source: ITU-R M.493-16 Annex 1 section 1 (rate and tones), from memory of the text.
 *
 * @see {@link createReceiver}
 * @see {@link writeWav}
 *
 * @example
 * ```ts
 * import { modulate } from 'seahail/audio';
 *
 * const samples = modulate('10101010101010101010', { sampleRate: 48_000 });
 * console.log(samples.length); // 800
 * ```
 */
export function modulate(
  burst:
    | {
        readonly bits: string;
      }
    | string,
  options: {
    /** Samples per second, 8000 to 192000; need not be a whole multiple of anything. */
    readonly sampleRate: number;
    /** Peak value of a sample, above 0 to 1; 0.5 when left out. */
    readonly amplitude?: number | undefined;
    /**
     * `true` makes the tones rise by 6 dB an octave, as a frequency modulator without a pre-emphasis network of its
     * own needs it to send the standard's phase modulation: 2100 Hz at the full amplitude, 1300 Hz 4.2 dB lower.
     */
    readonly preEmphasis?: boolean | undefined;
    /** Silence before the first bit in seconds, not rounded to whole samples; 0 when left out. */
    readonly leadInSeconds?: number | undefined;
    /** Silence after the last bit in seconds; 0 when left out. */
    readonly tailSeconds?: number | undefined;
    /** Phase of the sub-carrier at the first bit in cycles, 0 when left out. */
    readonly startPhase?: number | undefined;
    /**
     * Must be `true` for bursts of the distress format or category. By setting it you confirm that the sound goes to
     * a test bench, a recording or a closed training circuit, and never to a transmitter.
     */
    readonly allowDistress?: boolean | undefined;
  },
): Float32Array {
  const bits = typeof burst === 'string' ? burst : burst?.bits;
  if (typeof bits !== 'string' || /[^01]/.test(bits)) {
    throw new TypeError("modulate: bits: expected a string of '0' and '1'");
  }
  requireOptions('modulate', options, 'sampleRate');
  const {
    sampleRate,
    amplitude = 0.5,
    leadInSeconds = 0,
    tailSeconds = 0,
    startPhase = 0,
    preEmphasis = false,
  } = options;
  inRange('sampleRate', sampleRate, 8000, 192_000);
  inRange('amplitude', amplitude, Number.MIN_VALUE, 1);
  inRange('leadInSeconds', leadInSeconds, 0, 3600);
  inRange('tailSeconds', tailSeconds, 0, 3600);
  inRange('startPhase', startPhase, -1e6, 1e6);
  if (options.allowDistress !== true) assertStaysOffAir(bits);

  const phases = phaseAtBits(bits);
  const low = preEmphasis ? (CENTRE_HZ - SHIFT_HZ) / (CENTRE_HZ + SHIFT_HZ) : 1;
  const samples = new Float32Array(
    Math.ceil((leadInSeconds + bits.length / BAUD + tailSeconds) * sampleRate - 1e-9),
  );
  const delay = leadInSeconds * sampleRate;
  for (let n = Math.ceil(delay - 1e-9); n < samples.length; n++) {
    const inBits = ((n - delay) * BAUD) / sampleRate;
    const k = Math.max(0, Math.floor(inBits));
    if (k >= bits.length) break;
    const one = bits.charCodeAt(k) === 0x31;
    const twelfths = (phases[k] as number) + (one ? TWELFTHS_OF_ONE : TWELFTHS_OF_ZERO) * (inBits - k);
    samples[n] = amplitude * (one ? low : 1) * Math.sin(2 * Math.PI * (twelfths / 12 + startPhase));
  }
  return samples;
}

/** Phase at the start of each bit in twelfths of a cycle, 0 to 11: exact, since each bit adds a whole number of them. */
function phaseAtBits(bits: string): Uint8Array {
  const phases = new Uint8Array(bits.length);
  let twelfths = 0;
  for (let k = 0; k < bits.length; k++) {
    phases[k] = twelfths;
    twelfths = (twelfths + (bits.charCodeAt(k) === 0x31 ? TWELFTHS_OF_ONE : TWELFTHS_OF_ZERO)) % 12;
  }
  return phases;
}

function inRange(name: string, value: number, least: number, most: number): void {
  if (typeof value !== 'number' || !(value >= least && value <= most)) {
    throw new RangeError(`modulate: ${name}: expected ${least} to ${most}, got ${String(value)}`);
  }
}
