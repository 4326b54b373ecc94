/**
 * From bursts to sound and back: the waveform of any call, a receiver for weak ones, and WAV files.
 *
 * **Caution.** A distress call that goes on the air without distress starts a search, and sent on purpose is an offence in
 * most countries. Try radios with test calls; see {@link modulate}.
 *
 * - {@link modulate}: the sound of a burst
 * - {@link createReceiver}: a stream of samples in, {@link HeardBurst} out
 * - {@link receiveWav}: every call in a file; {@link readWav}, {@link writeWav}: files
 *
 * Guide: [Audio: what does it sound like?](../../docs/guide/audio.md).
 *
 * @packageDocumentation
 */

export type { SoundLevel } from './front-end/sample-guard.ts';
export type { HeardBurst } from './heard-burst.ts';

export { modulate } from './modulate.ts';
export type { WavReception } from './receive-wav.ts';
export { receiveWav } from './receive-wav.ts';
export type { Receiver } from './receiver.ts';
export { createReceiver } from './receiver.ts';
export type { WavSound } from './wav/read.ts';
export { readWav } from './wav/read.ts';

export { writeWav } from './wav/write.ts';
