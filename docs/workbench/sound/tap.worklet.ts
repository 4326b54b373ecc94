// Runs beside the browser's sound path and hands the samples of the first channel on, as they come.
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, processor: new () => AudioWorkletProcessor): void;

class Tap extends AudioWorkletProcessor {
  process(inputs: readonly (readonly Float32Array[])[]): boolean {
    const samples = inputs[0]?.[0];
    if (samples !== undefined) this.port.postMessage(samples.slice());
    return true;
  }
}

registerProcessor('tap', Tap);
