import workerText from 'worker:./receive.worker.ts';
import type { HeardBurst } from 'seahail/audio';
import type { Issue } from 'seahail/result';
import { ownIssue } from '../frame/own-issue.ts';
import { startWorker } from '../frame/worker.ts';
import type { FromReceiver, ToReceiver } from './messages.ts';

/** Callbacks of a listener. */
export interface Ears {
  readonly onHeard: (heard: HeardBurst) => void;
  readonly onIssue: (issue: Issue) => void;
  /** Share of what was given that has been listened through, 0 to 1. */
  readonly onProgress?: (done: number) => void;
}

/** A listener in a worker of its own. */
export interface Listener {
  push(samples: Float32Array<ArrayBuffer>): void;
  end(): Promise<void>;
  stop(): void;
}

/** Starts to listen. The samples given are handed over, not copied. */
export function listen(sampleRate: number, { onHeard, onIssue, onProgress }: Ears): Listener {
  const worker = startWorker(workerText);
  const tell = (message: ToReceiver, hand: Transferable[] = []): void => worker.postMessage(message, hand);
  let [given, taken] = [0, 0];
  let done = (): void => {};
  worker.onmessage = ({ data }: { readonly data: FromReceiver }) => {
    if (data.kind === 'heard') onHeard(data.heard);
    else if (data.kind === 'issue') onIssue(data.issue);
    else if (data.kind === 'taken') {
      taken += data.count;
      onProgress?.(taken / given);
    } else {
      worker.terminate();
      done();
    }
  };
  worker.onerror = ({ message }) => {
    onIssue(ownIssue('listener-failed', `The listener failed: ${message}`));
    worker.terminate();
    done();
  };
  tell({ kind: 'begin', sampleRate });
  return {
    push(samples) {
      given += samples.length;
      tell({ kind: 'samples', samples }, [samples.buffer]);
    },
    end() {
      tell({ kind: 'end' });
      return new Promise((resolve) => {
        done = resolve;
      });
    },
    stop() {
      worker.terminate();
      done();
    },
  };
}

/** Everything heard in one piece of sound. */
export async function listenThrough(
  samples: Float32Array<ArrayBuffer>,
  sampleRate: number,
  onProgress?: (done: number) => void,
): Promise<{ readonly heard: readonly HeardBurst[]; readonly issues: readonly Issue[] }> {
  const heard: HeardBurst[] = [];
  const issues: Issue[] = [];
  const listener = listen(sampleRate, {
    onHeard: (each) => heard.push(each),
    onIssue: (each) => issues.push(each),
    ...(onProgress !== undefined && { onProgress }),
  });
  // Pieces of a second, so that progress can be told.
  for (let at = 0; at < samples.length; at += sampleRate) listener.push(samples.slice(at, at + sampleRate));
  await listener.end();
  return { heard, issues };
}
