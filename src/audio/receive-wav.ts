import { failure, type Issue, type Notice, type Result, success } from '../result/index.ts';
import type { HeardBurst } from './heard-burst.ts';
import { createReceiver } from './receiver.ts';
import { wavIssue } from './texts.ts';
import { readWav } from './wav/read.ts';

/** Every call in a WAV file. Plain data. */
export interface WavReception {
  readonly kind: 'wav-reception';
  /** Samples per second. */
  readonly sampleRate: number;
  /** Number of channels in the file. */
  readonly channelCount: number;
  /** Channels that were searched, counted from 0. */
  readonly searched: readonly number[];
  /** In order of their start. */
  readonly bursts: readonly {
    /** Channels in which the same call was heard at the same instant, counted from 0, the one with least noise first. */
    readonly channels: readonly number[];
    /** The burst as it was heard in the first of them; its `event` counts the calls of that channel. */
    readonly burst: HeardBurst;
  }[];
}

/** Samples per second that can be received. */
const [LEAST_RATE, MOST_RATE] = [8000, 192_000];
/** Seconds by which the starts of one burst may differ between channels. */
const SAME_INSTANT_S = 0.01;

/**
 * Receives every call in a WAV file, in all of its channels or in one.
 *
 * A recorder may keep the radio on either channel, or two radios apart: each channel is received separately, and a call
 * that is in several of them at the same instant is given once.
 *
 * @param bytes - the whole file
 * @param options - one channel, to leave the others out
 * @returns the bursts, with the notices of the file and of the sound; or why the file cannot be read
 *
 * @see {@link readWav}
 * @see {@link createReceiver}
 *
 * @example
 * ```ts
 * import { modulate, receiveWav, writeWav } from 'seahail/audio';
 * import { encodeCall } from 'seahail/burst';
 * import { composeTestCall } from 'seahail/call';
 * import { valueOf } from 'seahail/result';
 *
 * const call = composeTestCall({ from: '232999871', to: '002329990' });
 * const file = writeWav(modulate(encodeCall(call), { sampleRate: 22_050 }), { sampleRate: 22_050 });
 * const [first] = valueOf(receiveWav(file)).bursts;
 * console.log(first?.channels, first?.burst.reception.call.kind); // [ 0 ] test-call
 * ```
 */
export function receiveWav(
  bytes: Uint8Array,
  options: NonNullable<Parameters<typeof readWav>[1]> = {},
): Result<WavReception> {
  const first = readWav(bytes, options);
  if (!first.ok) return first;
  const { sampleRate, channelCount } = first.value;
  if (sampleRate < LEAST_RATE || sampleRate > MOST_RATE) return failure(wrongRate(sampleRate));
  const only = options?.channel;
  const searched =
    only === undefined ? Array.from({ length: channelCount }, (_, channel) => channel) : [only];
  const notices: Notice[] = [...first.notices];
  const bursts: WavReception['bursts'][number][] = [];
  for (const channel of searched) {
    const sound = channel === first.value.channel ? first : readWav(bytes, { channel });
    if (!sound.ok) continue;
    const receiver = createReceiver({
      sampleRate,
      onReception: (burst) => addTo(bursts, { channels: [channel], burst }, SAME_INSTANT_S * sampleRate),
      onIssue: (issue) => notices.push({ ...issue, at: ['channel', channel, ...issue.at] }),
    });
    receiver.push(sound.value.samples);
    receiver.flush();
  }
  bursts.sort((one, other) => one.burst.startSample - other.burst.startSample);
  return success({ kind: 'wav-reception', sampleRate, channelCount, searched, bursts }, notices);
}

/** Adds a burst, or its channel to the same burst heard in another. */
function addTo(
  bursts: WavReception['bursts'][number][],
  one: WavReception['bursts'][number],
  reach: number,
): void {
  const at = bursts.findIndex(
    ({ burst }) =>
      Math.abs(burst.startSample - one.burst.startSample) < reach &&
      burst.reception.information.join() === one.burst.reception.information.join(),
  );
  const known = bursts[at];
  const [channel] = one.channels;
  if (known === undefined) bursts.push(one);
  // Of an attempt the same burst is reported once more, surer, when the calls after it are joined.
  else if (known.channels[0] === channel) bursts[at] = { ...known, burst: one.burst };
  else if (known.channels.includes(channel as number)) return;
  else if (one.burst.ebN0Db > known.burst.ebN0Db)
    bursts[at] = { channels: [...one.channels, ...known.channels], burst: one.burst };
  else bursts[at] = { channels: [...known.channels, ...one.channels], burst: known.burst };
}

function wrongRate(rate: number): Issue {
  return wavIssue(
    'audio-wav-rate',
    { least: LEAST_RATE, most: MOST_RATE },
    { at: ['fmt ', 'rate'], received: String(rate) },
  );
}
