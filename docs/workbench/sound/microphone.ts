/** An open microphone: how many samples a second it gives, and how to close it. */
export interface Microphone {
  readonly sampleRate: number;
  close(): void;
}

/** Opens the microphone, without any of the treatment that is meant for voices. */
export async function openMicrophone(
  onSamples: (samples: Float32Array<ArrayBuffer>) => void,
): Promise<Microphone> {
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false },
  });
  const context = new AudioContext();
  await context.audioWorklet.addModule('tap.js');
  const tap = new AudioWorkletNode(context, 'tap', { numberOfOutputs: 0 });
  tap.port.onmessage = ({ data }: { readonly data: Float32Array<ArrayBuffer> }) => onSamples(data);
  context.createMediaStreamSource(stream).connect(tap);
  return {
    sampleRate: context.sampleRate,
    close() {
      for (const track of stream.getTracks()) track.stop();
      void context.close();
    },
  };
}
