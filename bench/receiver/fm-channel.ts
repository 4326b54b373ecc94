import type { Random } from './random.ts';

/** A burst through a VHF radio channel. */
export interface RadioPath {
  /** Carrier-to-noise ratio in dB, noise counted in 15 kHz. */
  readonly carrierToNoiseDb: number;
  /** Whether the receiver takes back the 6 dB an octave that phase modulation has. */
  readonly deEmphasis: boolean;
  /** Fades of a second (Doppler spread in hertz) of a carrier that comes over many paths (Rayleigh); none when left out. */
  readonly fadingHz?: number;
  /** Seconds of carrier without modulation before, and of noise alone before that and behind. */
  readonly before: number;
  readonly behind: number;
}

/** Samples per second of the radio signal around its carrier, and of the audio made from it. */
const RADIO_RATE = 96_000;
export const AUDIO_RATE = 48_000;

/** IMO GMDSS Manual section 3.4: phase modulation, index 2.0, for both tones alike. */
const INDEX = 2;
const NOISE_BAND_HZ = 15_000;

/**
 * The sound that comes out of an FM receiver: phase-modulated carrier, white complex noise, a channel filter 15 kHz wide, a
 * limiter and discriminator (the phase step from sample to sample, clicks and all), the audio filter. Before and behind the
 * burst there is no carrier, as with an open squelch.
 */
export function throughRadio(bits: string, path: RadioPath, random: Random): Float32Array {
  const carrier = 0.02;
  const count = Math.ceil((path.before + carrier + bits.length / 1200 + path.behind) * RADIO_RATE);
  // Carrier power 1: noise power in the whole rate, half to each part.
  const sigma = Math.sqrt((10 ** (-path.carrierToNoiseDb / 10) * RADIO_RATE) / NOISE_BAND_HZ / 2);
  const re = new Float64Array(count);
  const im = new Float64Array(count);
  let phase = 2 * Math.PI * random.even();
  const turn = 2 * Math.PI * random.even();
  const fading = path.fadingHz === undefined ? null : rayleigh(path.fadingHz, random);
  for (let n = 0; n < count; n++) {
    const time = n / RADIO_RATE - path.before;
    re[n] = sigma * random.normal();
    im[n] = sigma * random.normal();
    if (time < 0 || time > carrier + bits.length / 1200) continue;
    const bit = Math.floor((time - carrier) * 1200);
    const modulation = bit < 0 ? 0 : INDEX * Math.sin(phase);
    // 80 radio samples to a bit: the tone changes exactly between two of them.
    if (bit >= 0) phase += (2 * Math.PI * (bits[bit] === '1' ? 1300 : 2100)) / RADIO_RATE;
    const [size, angle] = fading === null ? [1, 0] : fading(time);
    re[n] = (re[n] as number) + size * Math.cos(modulation + turn + angle);
    im[n] = (im[n] as number) + size * Math.sin(modulation + turn + angle);
  }
  const channel = lowPass(NOISE_BAND_HZ / 2, 121);
  const [a, b] = [filtered(re, channel, 1), filtered(im, channel, 1)];
  const steps = new Float64Array(count);
  for (let n = 1; n < count; n++) {
    const cross = (b[n] as number) * (a[n - 1] as number) - (a[n] as number) * (b[n - 1] as number);
    const along = (a[n] as number) * (a[n - 1] as number) + (b[n] as number) * (b[n - 1] as number);
    steps[n] = Math.atan2(cross, along);
  }
  const audio = filtered(steps, lowPass(4000, 121), RADIO_RATE / AUDIO_RATE);
  if (path.deEmphasis) {
    // 6 dB an octave above 300 Hz.
    const keep = Math.exp((-2 * Math.PI * 300) / AUDIO_RATE);
    let last = 0;
    for (let n = 0; n < audio.length; n++) {
      last = keep * last + (1 - keep) * 4 * (audio[n] as number);
      audio[n] = last;
    }
  }
  return Float32Array.from(audio);
}

/** Size and angle of the sum of many equal waves from all directions (Clarke, 1968), mean power 1. */
function rayleigh(dopplerHz: number, random: Random): (time: number) => [number, number] {
  const waves = Array.from({ length: 24 }, () => {
    const direction = 2 * Math.PI * random.even();
    return { turn: 2 * Math.PI * dopplerHz * Math.cos(direction), phase: 2 * Math.PI * random.even() };
  });
  return (time) => {
    let re = 0;
    let im = 0;
    for (const { turn, phase } of waves) {
      re += Math.cos(turn * time + phase);
      im += Math.sin(turn * time + phase);
    }
    return [Math.hypot(re, im) / Math.sqrt(waves.length), Math.atan2(im, re)];
  };
}

/** Low-pass filter by a Blackman window, at the radio rate. */
function lowPass(edgeHz: number, taps: number): Float64Array {
  const middle = (taps - 1) / 2;
  const kernel = Float64Array.from({ length: taps }, (_, n) => {
    const x = (2 * edgeHz * (n - middle)) / RADIO_RATE;
    const sinc = x === 0 ? 1 : Math.sin(Math.PI * x) / (Math.PI * x);
    return (
      sinc *
      (0.42 +
        0.5 * Math.cos((Math.PI * (n - middle)) / middle) +
        0.08 * Math.cos((2 * Math.PI * (n - middle)) / middle))
    );
  });
  const sum = kernel.reduce((total, tap) => total + tap, 0);
  return kernel.map((tap) => tap / sum);
}

/** Filtered without delay, every `keep`th sample kept. */
function filtered(samples: Float64Array, kernel: Float64Array, keep: number): Float64Array {
  const middle = (kernel.length - 1) / 2;
  const out = new Float64Array(Math.floor(samples.length / keep));
  for (let m = 0; m < out.length; m++) {
    let sum = 0;
    const first = m * keep - middle;
    for (let k = Math.max(0, -first); k < kernel.length && first + k < samples.length; k++) {
      sum += (kernel[k] as number) * (samples[first + k] as number);
    }
    out[m] = sum;
  }
  return out;
}
