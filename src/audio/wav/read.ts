import { failure, type Issue, type Notice, type Result, success } from '../../result/index.ts';
import { type ParamsOf, safely } from '../../result/internal.ts';
import { type WavCode, wavIssue, type wavTexts } from '../texts.ts';
import { chunksOf, textAt } from './chunk.ts';

/** Content of a WAV file. Plain data but for its samples: for JSON take those out first. */
export interface WavSound {
  readonly kind: 'wav-sound';
  /** Samples per second. */
  readonly sampleRate: number;
  /** Number of channels in the file. */
  readonly channelCount: number;
  /** The channel that was read, counted from 0. */
  readonly channel: number;
  readonly format: 'int8' | 'int16' | 'int24' | 'int32' | 'float32' | 'float64';
  /**
   * Samples of that channel, full scale 1. A typed array for its size: structured clone takes it, JSON makes an object
   * with a name for each sample of it.
   */
  readonly samples: Float32Array;
}

/** How samples are stored: integers of 8 bits (unsigned) to 32 bits, or floating point. */
export type WavFormat = WavSound['format'];

const PCM = 1;
const IEEE_FLOAT = 3;
const EXTENSIBLE = 0xfffe;

const MOST_CHANNELS = 1024;
/** The field has 32 bits. */
const MOST_RATE = 0xffffffff;

/** Layout of a format within the bytes of a sample. */
const FORMATS: readonly { readonly tag: number; readonly bits: number; readonly format: WavFormat }[] = [
  { tag: PCM, bits: 8, format: 'int8' },
  { tag: PCM, bits: 16, format: 'int16' },
  { tag: PCM, bits: 24, format: 'int24' },
  { tag: PCM, bits: 32, format: 'int32' },
  { tag: IEEE_FLOAT, bits: 32, format: 'float32' },
  { tag: IEEE_FLOAT, bits: 64, format: 'float64' },
];

/**
 * Reads one channel of a WAV file: integers of 8, 16, 24 or 32 bits, floating point of 32 or 64, plain or extensible header.
 *
 * A file that was cut off, or whose sizes are wrong or were never filled in, gives the samples that are there, with a
 * notice; so does one without any.
 *
 * @param bytes - the whole file
 * @param options - which channel
 * @returns the samples, or the issues that prevent reading them
 *
 * Source: Multimedia Programming Interface and Data Specifications 1.0 (1991), RIFF and WAVE; Multiple Channel Audio Data and
 * WAVE Files (2001) for the extensible header; both from memory.
 *
 * @see {@link writeWav}
 * @see {@link createReceiver}
 *
 * @example
 * ```ts
 * import { readWav, writeWav } from 'seahail/audio';
 *
 * const file = writeWav(new Float32Array([0, 0.5, -0.5]), { sampleRate: 48_000 });
 * const sound = readWav(file);
 * if (sound.ok) console.log(sound.value.sampleRate, sound.value.format, sound.value.samples.length); // 48000 int16 3
 * ```
 */
export function readWav(
  bytes: Uint8Array,
  options: {
    /** Channel to read, counted from 0; the first when left out. */
    readonly channel?: number | undefined;
  } = {},
): Result<WavSound> {
  const view = viewOf(bytes);
  if (view === null) return failure(about('audio-wav-not-bytes', {}));
  if (bytes.length < 12 || textAt(view, 0) !== 'RIFF' || textAt(view, 8) !== 'WAVE') {
    return failure(about('audio-wav-not-wav', {}));
  }
  const notices: Notice[] = [];
  const chunks = chunksOf(view);
  const header = chunks.find(({ name }) => name === 'fmt ');
  const data = chunks.find(({ name }) => name === 'data');
  if (header === undefined || header.end - header.start < 16) {
    return failure(about('audio-wav-header', {}, ['fmt ']));
  }
  if (data === undefined) return failure(about('audio-wav-no-data', {}, ['data']));

  const layout = layoutOf(view, header.start, header.end);
  if (!layout.ok) return layout;
  const { sampleRate, channelCount, format, frame, width } = layout.value;
  notices.push(...layout.notices);
  // A caller without types may give null for no options.
  const channel = options?.channel ?? 0;
  if (!Number.isInteger(channel) || channel < 0 || channel >= channelCount) {
    const given = typeof channel === 'number' ? String(channel) : typeof channel;
    return failure(
      wavIssue(
        'audio-wav-channel',
        { count: channelCount, last: channelCount - 1 },
        { at: ['channel'], received: given },
      ),
    );
  }
  const size = data.end - data.start;
  const count = Math.floor(size / frame);
  notices.push(...sizeNotices(data.declared, size, count, count * frame));
  const samples = new Float32Array(count);
  for (let n = 0; n < count; n++)
    samples[n] = sampleAt(view, data.start + n * frame + channel * width, format);
  return success({ kind: 'wav-sound', sampleRate, channelCount, channel, format, samples }, notices);
}

/** What is to be said of a data chunk that says `declared` bytes, has `size`, and of them `used` in whole samples. */
function sizeNotices(declared: number, size: number, count: number, used: number): Notice[] {
  const notices: Notice[] = [];
  const at = ['data'];
  // A recorder writes 0 at first, and corrects it at the end unless it is cut off; a stream says as much as can be said.
  if (declared === 0 && size > 0) notices.push(about('audio-wav-size-unset', {}, at, size));
  if (declared > size && declared !== 0xffffffff)
    notices.push(about('audio-wav-truncated', { declared }, at, size));
  else if (used !== size) notices.push(about('audio-wav-part-sample', { count }, at));
  else if (count === 0) notices.push(about('audio-wav-empty', {}, at));
  return notices;
}

interface Layout {
  readonly sampleRate: number;
  readonly channelCount: number;
  readonly format: WavFormat;
  /** Bytes of one sample of all channels, and of one channel. */
  readonly frame: number;
  readonly width: number;
}

function layoutOf(view: DataView, start: number, end: number): Result<Layout> {
  const outerTag = view.getUint16(start, true);
  const channelCount = view.getUint16(start + 2, true);
  const sampleRate = view.getUint32(start + 4, true);
  const frame = view.getUint16(start + 12, true);
  const bits = view.getUint16(start + 14, true);
  // In the extensible header the old tag is the beginning of a sixteen-byte name, 24 bytes on.
  const tag = outerTag === EXTENSIBLE && end - start >= 40 ? view.getUint16(start + 24, true) : outerTag;
  const known = FORMATS.find((entry) => entry.tag === tag && entry.bits === bits);
  if (known === undefined) {
    return failure(about('audio-wav-format', { format: tag, bits }, ['fmt '], `${tag}, ${bits}`));
  }
  if (channelCount < 1 || channelCount > MOST_CHANNELS) {
    return failure(about('audio-wav-channels', { limit: MOST_CHANNELS }, ['fmt ', 'channels'], channelCount));
  }
  if (sampleRate < 1)
    return failure(about('audio-wav-rate', { least: 1, most: MOST_RATE }, ['fmt ', 'rate'], sampleRate));
  const width = bits / 8;
  const notices =
    frame === width * channelCount
      ? []
      : [about('audio-wav-frame', { bytes: width * channelCount }, ['fmt ', 'frame'], frame)];
  return success(
    { sampleRate, channelCount, format: known.format, frame: width * channelCount, width },
    notices,
  );
}

function sampleAt(view: DataView, at: number, format: WavFormat): number {
  switch (format) {
    case 'int8':
      return (view.getUint8(at) - 128) / 128;
    case 'int16':
      return view.getInt16(at, true) / 32_768;
    case 'int24':
      return ((view.getInt8(at + 2) << 16) | view.getUint16(at, true)) / 8_388_608;
    case 'int32':
      return view.getInt32(at, true) / 2_147_483_648;
    case 'float32':
      return view.getFloat32(at, true);
    case 'float64':
      return view.getFloat64(at, true);
  }
}

function about<Code extends WavCode>(
  code: Code,
  params: ParamsOf<typeof wavTexts, Code>,
  at: Issue['at'] = [],
  received?: string | number,
): Issue {
  const more = { at, clause: 'RIFF and WAVE, 1991' };
  return wavIssue(code, params, received === undefined ? more : { ...more, received: String(received) });
}

/** `null` for anything but bytes, those of a buffer that was handed on included. */
function viewOf(given: unknown): DataView | null {
  return safely(
    () =>
      given instanceof Uint8Array ? new DataView(given.buffer, given.byteOffset, given.byteLength) : null,
    () => null,
  );
}
