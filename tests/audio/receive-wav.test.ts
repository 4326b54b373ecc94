import { describe, expect, it } from 'vitest';
import { throughPath } from '../../bench/receiver/channel.ts';
import { randomFrom } from '../../bench/receiver/random.ts';
import { modulate, receiveWav, writeWav } from '../../src/audio/index.ts';
import { encodeCall } from '../../src/burst/index.ts';
import { composeDistressAlert, composePositionRequest, composeTestCall } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';

// Invented stations of the demo scenario.
const sampleRate = 8000;
const sound = (call: Parameters<typeof encodeCall>[0], leadInSeconds = 0.1) =>
  modulate(encodeCall(call), { sampleRate, leadInSeconds, tailSeconds: 0.2 });
const test = composeTestCall({ from: '232999871', to: '002329990' });
const request = composePositionRequest({ from: '232999871', to: '232999142' });

/** A file of several channels: RIFF and WAVE of 1991, from memory; samples of 16 bits, one of each channel in turn. */
function fileOf(channels: readonly Float32Array[], rate = sampleRate): Uint8Array {
  const count = Math.max(...channels.map(({ length }) => length));
  const frame = 2 * channels.length;
  const mono = writeWav(new Float32Array(count * channels.length), { sampleRate: 8000 });
  const view = new DataView(mono.buffer, mono.byteOffset, mono.byteLength);
  view.setUint16(22, channels.length, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, rate * frame, true);
  view.setUint16(32, frame, true);
  channels.forEach((samples, channel) => {
    samples.forEach((sample, n) => {
      view.setInt16(44 + frame * n + 2 * channel, Math.round(32_767 * sample), true);
    });
  });
  return mono;
}
const kinds = (file: Uint8Array, channel?: number) =>
  valueOf(receiveWav(file, { channel })).bursts.map(
    ({ channels, burst }) => `${channels.join()}: ${burst.reception.call.kind}`,
  );
const silence = new Float32Array(8000);

describe('the calls in a file', () => {
  it('are given once though a later call of their attempt makes them surer', () => {
    const { bits } = encodeCall(composeDistressAlert({ from: '232999218', nature: 'sinking' }));
    const path = { sampleRate, ebN0Db: -4, gain: 0.1, before: 0.1, behind: 0.1 };
    for (const seed of [1, 2]) {
      const samples = throughPath(bits.repeat(5), path, randomFrom(seed));
      const { bursts } = valueOf(receiveWav(writeWav(samples, { sampleRate })));
      expect(bursts.length).toBeGreaterThan(0);
      for (const { channels } of bursts) expect(channels).toEqual([0]);
    }
  });

  it('are found on whichever channel they are', () => {
    expect(kinds(fileOf([silence, sound(test)]))).toEqual(['1: test-call']);
    expect(kinds(fileOf([sound(test), silence, silence]))).toEqual(['0: test-call']);
  });

  it('are given once when several channels have them, and apart when they are two', () => {
    const weak = sound(test).map((sample, n) => 0.2 * sample + 0.02 * Math.sin(n * n));
    expect(kinds(fileOf([weak, sound(test)]))).toEqual(['1,0: test-call']);
    expect(kinds(fileOf([sound(request, 0.3), sound(test)]))).toEqual([
      '1: test-call',
      '0: position-request',
    ]);
  });

  it('are looked for in one channel when one is wanted', () => {
    const file = fileOf([sound(request), sound(test)]);
    expect(kinds(file, 0)).toEqual(['0: position-request']);
    expect(valueOf(receiveWav(file, { channel: 1 })).searched).toEqual([1]);
    expect(receiveWav(file, { channel: 2 })).toMatchObject({
      ok: false,
      issues: [{ code: 'audio-wav-channel' }],
    });
  });

  it('cannot be looked for at a rate that no receiver takes, nor in a codec', () => {
    expect(receiveWav(fileOf([silence], 6000))).toMatchObject({
      ok: false,
      issues: [{ code: 'audio-wav-rate' }],
    });
    const aLaw = fileOf([silence]);
    aLaw[20] = 6;
    expect(receiveWav(aLaw)).toMatchObject({ ok: false, issues: [{ code: 'audio-wav-format' }] });
    expect(receiveWav(Uint8Array.of(1, 2))).toMatchObject({
      ok: false,
      issues: [{ code: 'audio-wav-not-wav' }],
    });
  });
});
