import { expect } from 'vitest';
import { throughPath } from '../../bench/receiver/channel.ts';
import { randomFrom } from '../../bench/receiver/random.ts';
import { createReceiver, modulate } from '../../src/audio/index.ts';
import { decodeAttempt, encodeCall } from '../../src/burst/index.ts';
import { composeDistressAlert, composeTestCall } from '../../src/call/index.ts';
import { valueOf } from '../../src/result/index.ts';

// Invented stations of the demo scenario.
const { bits, information } = encodeCall(composeTestCall({ from: '232999871', to: '002329990' }));

function clean(samples: Float32Array): { polarity: string }[] {
  const heard: { polarity: string }[] = [];
  const receiver = createReceiver({
    sampleRate: 8000,
    onReception: ({ reception, polarity }) => {
      expect(reception).toMatchObject({ information, quality: { verdict: 'clean' } });
      heard.push({ polarity });
    },
  });
  receiver.push(samples);
  receiver.flush();
  return heard;
}

export const deviations: Record<string, () => void> = {
  'D-audio-1': () => {
    const samples = modulate(bits, { sampleRate: 192_000, amplitude: 1 });
    const steps = samples.slice(1).map((sample, n) => Math.abs(sample - (samples[n] as number)));
    expect(Math.max(...steps)).toBeLessThan((2 * Math.PI * 2100) / 192_000 + 1e-6);
  },
  'D-audio-3': () => {
    // Half of the phasing cut off; and all of it so weak that a tenth of the bits, taken one by one, are wrong.
    const path = { sampleRate: 8000, ebN0Db: 12, before: 0.1, behind: 0.1, gain: 0.1 };
    const cut = throughPath(bits, path, randomFrom(5)).fill(0, 0, 800 + Math.round((80 / 1200) * 8000));
    expect(clean(cut)).toEqual([{ polarity: 'normal' }]);
    const weak = throughPath(bits, { ...path, ebN0Db: 4 }, randomFrom(6));
    expect(clean(weak)).toEqual([{ polarity: 'normal' }]);
  },
  'D-audio-4': () => {
    const alert = encodeCall(composeDistressAlert({ from: '232999218', nature: 'sinking' }));
    const other = encodeCall(composeDistressAlert({ from: '232999142', nature: 'sinking' }));
    const half = `${alert.bits.slice(0, 320)}${'?'.repeat(220)}`;
    const rest = `${'?'.repeat(140)}${alert.bits.slice(140)}`;
    const joined = valueOf(decodeAttempt([half, rest, other.bits]));
    expect(joined).toMatchObject({ information: alert.information, quality: { verdict: 'clean', calls: 2 } });
  },
};
