import { createReceiver, type Receiver } from 'seahail/audio';
import type { FromReceiver, ToReceiver } from './messages.ts';

declare const self: {
  onmessage: ((event: { readonly data: ToReceiver }) => void) | null;
  postMessage(message: FromReceiver): void;
};

let receiver: Receiver | null = null;

self.onmessage = ({ data }) => {
  switch (data.kind) {
    case 'begin':
      receiver = createReceiver({
        sampleRate: data.sampleRate,
        onReception: (heard) => self.postMessage({ kind: 'heard', heard }),
        onIssue: (issue) => self.postMessage({ kind: 'issue', issue }),
      });
      break;
    case 'samples':
      receiver?.push(data.samples);
      self.postMessage({ kind: 'taken', count: data.samples.length });
      break;
    case 'end':
      receiver?.flush();
      self.postMessage({ kind: 'ended' });
  }
};
