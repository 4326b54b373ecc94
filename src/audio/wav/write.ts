import { requireOptions, requireSamples } from '../require.ts';
import type { WavFormat, WavSound } from './read.ts';

const WIDTH: Readonly<Record<WavFormat, number>> = {
  int8: 1,
  int16: 2,
  int24: 3,
  int32: 4,
  float32: 4,
  float64: 8,
};

/**
 * A WAV file of one channel.
 *
 * @param samples - full scale 1; what lies beyond is held at full scale in the integer formats
 * @param options - sample rate and format
 * @returns the bytes of the file
 * @throws TypeError when there is no array of samples, or the options are missing
 * @throws RangeError when the sample rate is not a whole number in range, the format is none of those, or the file would be larger than its header can say
 *
 * Source: Multimedia Programming Interface and Data Specifications 1.0 (1991), RIFF and WAVE, from memory.
 *
 * @see {@link readWav}
 * @see {@link modulate}
 *
 * @example
 * ```ts
 * import { modulate, writeWav } from 'seahail/audio';
 *
 * const file = writeWav(modulate('1010', { sampleRate: 8000 }), { sampleRate: 8000, format: 'float32' });
 * console.log(file.length); // 166
 * ```
 */
export function writeWav(
  samples: ArrayLike<number>,
  options: {
    /** Samples per second, a whole number from 1 to 4294967295. */
    readonly sampleRate: number;
    /** How samples are stored; 16-bit integers when left out. */
    readonly format?: WavSound['format'] | undefined;
  },
): Uint8Array {
  requireSamples('writeWav', samples);
  requireOptions('writeWav', options, 'sampleRate');
  const { sampleRate, format = 'int16' } = options;
  if (!Number.isInteger(sampleRate) || sampleRate < 1 || sampleRate > 0xffffffff) {
    throw new RangeError(
      `writeWav: sampleRate: expected a whole number from 1 to 4294967295, got ${String(sampleRate)}`,
    );
  }
  if (!Object.hasOwn(WIDTH, format))
    throw new RangeError(
      `writeWav: format: expected one of ${Object.keys(WIDTH).join(', ')}, got ${String(format)}`,
    );
  const width = WIDTH[format];
  const size = samples.length * width;
  const padded = size + (size & 1);
  const isFloat = format === 'float32' || format === 'float64';
  // Other formats than plain integers carry the length of an (empty) extension and the count of samples.
  const headerSize = isFloat ? 18 : 16;
  const factSize = isFloat ? 12 : 0;
  const total = 12 + 8 + headerSize + factSize + 8 + padded;
  if (total - 8 > 0xffffffff) throw new RangeError('writeWav: a WAV file holds at most 4 GiB');
  const bytes = new Uint8Array(total);
  const view = new DataView(bytes.buffer);
  let at = 0;
  const text = (name: string): void => {
    for (const character of name) view.setUint8(at++, character.charCodeAt(0));
  };
  const long = (value: number): void => {
    view.setUint32(at, value, true);
    at += 4;
  };
  const short = (value: number): void => {
    view.setUint16(at, value, true);
    at += 2;
  };
  text('RIFF');
  long(total - 8);
  text('WAVEfmt ');
  long(headerSize);
  short(isFloat ? 3 : 1);
  short(1);
  long(sampleRate);
  long((sampleRate * width) % 0x1_0000_0000);
  short(width);
  short(8 * width);
  if (isFloat) {
    short(0);
    text('fact');
    long(4);
    long(samples.length);
  }
  text('data');
  long(size);
  for (let n = 0; n < samples.length; n++, at += width) put(view, at, samples[n] as number, format);
  return bytes;
}

function put(view: DataView, at: number, sample: number, format: WavFormat): void {
  if (format === 'int8') view.setUint8(at, rounded(sample, 128) + 128);
  else if (format === 'int16') view.setInt16(at, rounded(sample, 32_768), true);
  else if (format === 'int24') {
    const value = rounded(sample, 8_388_608);
    view.setUint16(at, value & 0xffff, true);
    view.setInt8(at + 2, value >> 16);
  } else if (format === 'int32') view.setInt32(at, rounded(sample, 2_147_483_648), true);
  else if (format === 'float32') view.setFloat32(at, sample, true);
  else view.setFloat64(at, sample, true);
}

/** The nearest integer that fits; what is no number is silence. */
function rounded(sample: number, scale: number): number {
  return Math.max(-scale, Math.min(scale - 1, Math.round(sample * scale))) || 0;
}
