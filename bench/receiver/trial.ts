import { createReceiver, type HeardBurst } from '../../src/audio/index.ts';
import type { Verdict } from '../../src/burst/index.ts';
import type { SentCall } from './random-call.ts';

/** How a reading stands to what was sent: the same, the same with characters left open, or something else. */
export type Match = 'right' | 'open' | 'wrong';

/** What became of one burst. */
export interface Outcome {
  /** Whether the call sent was read, and with which verdict; null when it was not. */
  readonly right: Verdict | null;
  /** Verdict and stated probability of everything reported. */
  readonly reports: readonly {
    readonly verdict: Verdict;
    readonly probability: number;
    readonly right: boolean;
  }[];
  readonly heard: readonly HeardBurst[];
}

/** Lets the receiver hear some samples in which one call was sent. */
export function hear(samples: Float32Array, sampleRate: number, sent: SentCall): Outcome {
  const heard: HeardBurst[] = [];
  const receiver = createReceiver({ sampleRate, onReception: (burst) => heard.push(burst) });
  receiver.push(samples);
  receiver.flush();
  const reports = heard.map(({ reception: { information, quality } }) => ({
    verdict: quality.verdict,
    probability: quality.probability,
    match: matchOf(information, sent.information),
  }));
  return { right: reports.find(({ match }) => match === 'right')?.verdict ?? null, reports, heard };
}

function matchOf(read: readonly (number | null)[], sent: readonly number[]): Match {
  if (String(read) === String(sent)) return 'right';
  const agrees =
    read.length === sent.length && read.every((symbol, n) => symbol === null || symbol === sent[n]);
  return agrees ? 'open' : 'wrong';
}

/** Success as the project counts it: the right call, clean or repaired. */
export function succeeded({ right }: Outcome): boolean {
  return right === 'clean' || right === 'repaired';
}
