import type { HeardBurst } from 'seahail/audio';
import type { Issue } from 'seahail/result';

/** What the receiver's worker is told. */
export type ToReceiver =
  | { readonly kind: 'begin'; readonly sampleRate: number }
  | { readonly kind: 'samples'; readonly samples: Float32Array }
  | { readonly kind: 'end' };

/** Its messages. */
export type FromReceiver =
  | { readonly kind: 'heard'; readonly heard: HeardBurst }
  | { readonly kind: 'issue'; readonly issue: Issue }
  | { readonly kind: 'taken'; readonly count: number }
  | { readonly kind: 'ended' };
