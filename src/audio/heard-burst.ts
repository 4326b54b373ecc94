import type { Reception } from '../burst/index.ts';
import type { Received } from '../burst/internal.ts';
import type { Notice } from '../result/index.ts';
import type { Fit } from './estimate/fit-space.ts';
import { PER_BIT } from './front-end/bit-filter.ts';
import { BASEBAND_RATE } from './front-end/front-end.ts';
import { BAUD } from './tone.ts';

/** A burst that was heard: the call in it, how sure that is, and how it sounded. Plain data. */
export interface HeardBurst {
  readonly kind: 'heard-burst';
  /**
   * Number of the call in this stream, from 1. A later burst with the same number is the same call, sent again in the same
   * attempt, and its reception joins what was heard of it. Keep the surest.
   */
  readonly event: number;
  /** The call and how sure it is. Act automatically only on verdict `clean`. */
  readonly reception: Reception;
  /** Other notices of the decoder. */
  readonly notices: readonly Notice[];
  /** Where the dot pattern begins, in samples since the stream began; not rounded, and negative when it was cut off. */
  readonly startSample: number;
  /** Just after the last bit of the call and its expansion, in samples since the stream began. */
  readonly endSample: number;
  /** Level of the tones in dB, 0 for a sine of amplitude 1. */
  readonly levelDb: number;
  /** How much stronger 2100 Hz is than 1300 Hz in dB: about 4 after a discriminator without de-emphasis. */
  readonly toneBalanceDb: number;
  /** By how many hertz both tones lie too high. The standard allows a tone 10 Hz. */
  readonly toneOffsetHz: number;
  /** By how many parts per million the bits come too fast, the sound card's own error included. */
  readonly clockErrorPpm: number;
  /** Energy per bit over noise density, estimated, in dB. Above about 30 dB the receiver finds little but its own faults. */
  readonly ebN0Db: number;
  /** The same as signal-to-noise ratio in 3 kHz, in dB: 4 dB less. */
  readonly snrDb: number;
  /** `inverted` when the two tones came the wrong way round. */
  readonly polarity: 'normal' | 'inverted';
}

const DOT_BITS = 20;

/** Where the dot pattern of a burst begins, in samples of the input. */
export function startSampleOf(fit: Fit, sampleRate: number): number {
  return sampleAt(fit, -DOT_BITS, sampleRate);
}

/** A received burst: its call, its place in the stream, and how it sounded. */
export function heardBurst(
  fit: Fit,
  event: number,
  { reception, notices }: Pick<Received, 'reception' | 'notices'>,
  sampleRate: number,
): HeardBurst {
  const power = (fit.one * fit.one + fit.zero * fit.zero) / 2;
  const ebN0Db = decibels(power / fit.noise);
  return {
    kind: 'heard-burst',
    event,
    reception,
    notices,
    startSample: startSampleOf(fit, sampleRate),
    endSample: sampleAt(fit, reception.quality.end, sampleRate),
    levelDb: decibels(power),
    toneBalanceDb: 2 * decibels(fit.zero / fit.one) * (fit.mirror ? -1 : 1),
    toneOffsetHz: fit.mirror ? -fit.offset : fit.offset,
    clockErrorPpm: (PER_BIT / fit.perBit - 1) * 1e6,
    ebN0Db,
    snrDb: ebN0Db + decibels(BAUD / 3000),
    polarity: fit.mirror ? 'inverted' : 'normal',
  };
}

/** Where a bit begins, bit 0 being the first of the phasing. */
function sampleAt(fit: Fit, bit: number, sampleRate: number): number {
  return ((fit.start + bit * fit.perBit) * sampleRate) / BASEBAND_RATE;
}

function decibels(ratio: number): number {
  return 10 * Math.log10(ratio);
}
