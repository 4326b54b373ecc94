/** Samples with white noise added, so that the tones stand `snrDb` over the noise in 3 kHz. The same every time. */
export function withNoise(
  samples: Float32Array,
  sampleRate: number,
  snrDb: number,
): Float32Array<ArrayBuffer> {
  const spread = Math.sqrt((0.125 / 10 ** (snrDb / 10)) * (sampleRate / 2 / 3000));
  const random = generator(70);
  return Float32Array.from(samples, (sample) => {
    const radius = Math.sqrt(-2 * Math.log(1 - random()));
    return sample + spread * radius * Math.cos(2 * Math.PI * random());
  });
}

/** The same samples as the browser's own sound path gives them at another rate. */
export async function throughSoundPath(
  samples: Float32Array<ArrayBuffer>,
  from: number,
  to: number,
): Promise<Float32Array<ArrayBuffer>> {
  const context = new OfflineAudioContext(1, Math.ceil((samples.length * to) / from), to);
  const buffer = context.createBuffer(1, samples.length, from);
  buffer.copyToChannel(samples, 0);
  const source = context.createBufferSource();
  source.buffer = buffer;
  source.connect(context.destination);
  source.start();
  const rendered = await context.startRendering();
  return rendered.getChannelData(0);
}

/** Numbers from 0 up to 1, the same sequence for the same seed. */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}
